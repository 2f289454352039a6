// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <deque>
#include <optional>
#include <vector>

#include "base/geometry.h"
#include "base/quantity.h"
#include "video/frame.h"

namespace plumbmark::capture {

/// How much of the picture moved in the 30 ms before `time`. Shares of the whole picture, 0..1.
struct MotionSample {
    base::Seconds time;
    double area = 0.0;   ///< moving cells / all cells, in the middle three quarters of the width
    double centre = 0.5; ///< mean place of the moving cells across the picture, share of its width
    base::Box box; ///< around the moving cells, in shares of width and height; empty where nothing moved
};

/// Looks at a coarse picture of each frame (cell means, 96 cells across) and compares it with the one 30 ms
/// before, so that the answer does not depend on the camera's rate. The bar for "moved" follows the sensor's
/// noise, and a change of the whole picture's brightness (exposure, flicker) is taken out first.
/// Costs well under a millisecond a frame.
class MotionWatch {
  public:
    /// Nothing for the first frames.
    std::optional<MotionSample> push(const video::Frame& frame);

  private:
    struct Coarse {
        base::Seconds time;
        std::vector<float> cells;
    };
    std::deque<Coarse> before_;
    int columns_ = 0, rows_ = 0;
    double noise_ = 1.0;
};

} // namespace plumbmark::capture
