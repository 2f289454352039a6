// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "base/geometry.h"
#include "base/quantity.h"

namespace plumbmark::body {

/// The pose network's 33 body points in its own order. Left and right are the PERSON'S as the network sees
/// them (swapped in a mirrored clip); `track.h` maps them to lead and trail.
enum class Point : unsigned char {
    nose,
    left_eye_inner,
    left_eye,
    left_eye_outer,
    right_eye_inner,
    right_eye,
    right_eye_outer,
    left_ear,
    right_ear,
    mouth_left,
    mouth_right,
    left_shoulder,
    right_shoulder,
    left_elbow,
    right_elbow,
    left_wrist,
    right_wrist,
    left_pinky,
    right_pinky,
    left_index,
    right_index,
    left_thumb,
    right_thumb,
    left_hip,
    right_hip,
    left_knee,
    right_knee,
    left_ankle,
    right_ankle,
    left_heel,
    right_heel,
    left_toe,
    right_toe,
};
inline constexpr std::size_t kPointCount = 33;

/// A turned square of the picture that the network looks at (and, inverted, the way back).
/// `turn`: clockwise on the screen, radians; 0 = upright. Crop coordinates are 0..1, (0.5, 0.5) = centre.
struct Region {
    base::Vec2 centre; ///< px
    double size = 0.0; ///< side, px
    double turn = 0.0;
    [[nodiscard]] base::Vec2 toPicture(base::Vec2 crop) const;
    [[nodiscard]] base::Vec2 toCrop(base::Vec2 picture) const;
    /// Unit vector in the picture of "up" in the crop.
    [[nodiscard]] base::Vec2 up() const;
};

/// The person's silhouette: for each of `kRows` rows of the crop, the stretches inside it.
/// Edges are where the network's probability passes one half, to a fraction of a mask pixel.
class Silhouette {
  public:
    static constexpr int kRows = 256;
    struct Span {
        float from = 0.0F, to = 0.0F;
    }; ///< 0..kRows along the row
    Silhouette() = default;
    /// `logOdds` of "person": kRows x kRows, row by row. The edge is where it passes 0.
    explicit Silhouette(const float* logOdds);
    [[nodiscard]] bool empty() const { return spans_.empty(); }
    [[nodiscard]] const Span* begin(int row) const {
        return spans_.data() + first_[static_cast<std::size_t>(row)];
    }
    [[nodiscard]] const Span* end(int row) const {
        return spans_.data() + first_[static_cast<std::size_t>(row) + 1];
    }
    [[nodiscard]] bool contains(base::Vec2 crop) const; ///< crop coordinates 0..1

  private:
    std::vector<Span> spans_;
    std::array<std::size_t, kRows + 1> first_{};
};

struct PosePoint {
    base::Vec2 direct;       ///< px: the network's own coordinate
    base::Vec2 peak;         ///< px: centroid of the heat map around its peak
    double spread = 0.0;     ///< px: one sigma of the heat map around `peak`
    double visibility = 0.0; ///< 0..1
    double depth = 0.0;      ///< px; smaller = nearer the camera; about the mid-hip
    std::array<double, 3>
        metric{}; ///< metres about the mid-hip, in axes of the crop (x right, y down, z away)
};

/// What the network saw in one frame: all that is kept, no pixels.
struct Observation {
    int frame = 0;
    base::Seconds time;
    double presence = 0.0; ///< 0..1: is somebody there; kept ones have 0.5, or less with clear joints
    std::array<PosePoint, kPointCount> points;
    Region region;
    Silhouette silhouette;
    base::Box box; ///< px: around the silhouette and the points (for leaving the player out)

    [[nodiscard]] const PosePoint& operator[](Point p) const { return points[static_cast<std::size_t>(p)]; }
};

} // namespace plumbmark::body
