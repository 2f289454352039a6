// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <span>

#include "base/geometry.h"
#include "scene/scene.h"
#include "video/frame.h"

namespace plumbmark::scene {

/// Watches whether the ground moves in the picture while a clip streams by.
///
/// Corners outside the player are tracked from ONE reference frame (the first one fed) into every fed frame,
/// so errors do not add up along the clip; each frame's similarity is fitted robustly. Works on at most 960
/// px of the longer side. Feed frames in presentation order with any stride: every 4th at 120 frames/s is
/// plenty, and while still() holds an even wider stride does.
class GroundWatch {
  public:
    GroundWatch();
    ~GroundWatch();
    GroundWatch(GroundWatch&&) noexcept;
    GroundWatch& operator=(GroundWatch&&) noexcept;

    /// `moving`: boxes around whatever moves by itself in this frame (player and club), full-size picture px.
    void add(const video::Frame& frame, std::span<const base::Box> moving);

    /// No fed frame's ground lies more than 1 px off the reference (full-size px).
    [[nodiscard]] bool still() const;

    /// One step per frame of the clip, interpolated between the fed frames; a still camera, or a picture
    /// without anything to hold on to, gives the empty motion (identity). `frames`: frames in the clip.
    [[nodiscard]] GroundMotion finish(int frames) const;

    /// Where the last placed frame's ground lies: carries its points to the reference frame. Identity at first.
    [[nodiscard]] GroundMotion::Step latest() const;

    /// Share of fed frames whose ground could be placed, 0..1; under 0.5 the caller should warn.
    [[nodiscard]] double placedShare() const;

  private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace plumbmark::scene
