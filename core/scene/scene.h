// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/geometry.h"
#include "base/quantity.h"

namespace plumbmark::scene {

/// Direction of true up in the upright picture. angle: + when true up is turned clockwise from the picture's
/// up.
struct Vertical {
    double angleDegrees = 0.0;
    double sigmaDegrees = 1.0;
    std::string source =
        "assumed"; ///< "told" (tilt sensor), "plumb" (edge marked by hand), "edges", "assumed"
    /// Unit vector of true up in picture coordinates (y down): (0, -1) at angle 0.
    [[nodiscard]] base::Vec2 up() const;
    /// Unit vector along level ground toward the picture's right: (1, 0) at angle 0.
    [[nodiscard]] base::Vec2 right() const;
};
/// Camera turned clockwise by `roll` as seen from behind it: the picture's content turns counter-clockwise.
[[nodiscard]] Vertical fromRoll(base::Degrees roll);
/// From two points on an edge that is plumb in the world (any order). sigma from the edge's length at 1 px of
/// placing error per end. Two equal points give the assumed vertical.
[[nodiscard]] Vertical fromPlumbEdge(base::Vec2 a, base::Vec2 b);
/// Nothing is known: a phone held or clamped by eye.
[[nodiscard]] Vertical assumedVertical();

/// How long things are in the picture, at the player's depth.
struct Scale {
    double pixelsPerStature = 0.0;
    double relativeSigma = 0.05;
    std::optional<double> pixelsPerMetre; ///< only where something of known length was told or seen
    std::string source = "body";          ///< "body", "stature", "club", "ball", "stick"
};

/// Where the ground went in the picture while the camera moved: for each frame a similarity that carries a
/// frame's point to the reference frame. Identity where the camera stood still.
class GroundMotion {
  public:
    struct Step {
        double a = 1.0, b = 0.0, tx = 0.0, ty = 0.0;
    }; ///< x' = a x - b y + tx, y' = b x + a y + ty
    GroundMotion() = default;
    GroundMotion(std::vector<Step> perFrame, double sigmaPixels)
        : steps_(std::move(perFrame)), sigma_(sigmaPixels) {}
    [[nodiscard]] base::Vec2 toReference(int frame, base::Vec2 inFrame) const;
    [[nodiscard]] base::Vec2 fromReference(int frame, base::Vec2 inReference) const;
    [[nodiscard]] double sigmaPixels() const { return sigma_; }
    [[nodiscard]] bool moved() const; ///< some frame's ground lies more than 2 px off the reference
    [[nodiscard]] const std::vector<Step>& steps() const { return steps_; }

  private:
    std::vector<Step> steps_; ///< empty: still camera
    double sigma_ = 0.0;
};

struct Scene {
    Vertical vertical;
    Scale scale;
    GroundMotion ground;
    int width = 0, height = 0;            ///< picture, px
    double yawSigmaDegrees = 5.0;         ///< camera's unknown turn off square to the target line
    std::optional<double> focalPixels;    ///< where known; else a phone's main lens is assumed
    std::optional<double> distanceMetres; ///< camera to player
    /// Known part of the camera's turn (a stick on the target line): + when things nearer the camera than the
    /// player look shifted toward the picture's right. yawSigmaDegrees is what stays unknown.
    double yawDegrees = 0.0;

    /// focalPixels, or a phone's main lens in video mode (0.76 of the longer picture side).
    [[nodiscard]] double focal() const;
    [[nodiscard]] double focalRelativeSigma() const { return focalPixels ? 0.02 : 0.10; }
};

} // namespace plumbmark::scene
