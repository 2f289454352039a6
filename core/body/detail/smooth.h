// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "base/geometry.h"

namespace plumbmark::body::detail {

/// One look at a point, real seconds.
struct Sample {
    double time = 0.0;
    base::Vec2 at;
    double sigma = 1.0; ///< px
};

struct Smoothed {
    base::Vec2 at;
    double sigma = 0.0; ///< px: of the fit, including how far the samples lie off it
};

struct SmoothOptions {
    double reach = 0.06;       ///< seconds to either side that count (at least three samples are taken)
    double largestGap = 0.16;  ///< no answer farther than this from every sample
    double edge = 0.05;        ///< answers this far outside the first and last sample
    std::optional<double> cut; ///< samples on the other side of this time never count
};

/// Zero-lag smoothing and interpolation in one: a parabola fitted to the samples around each asked time
/// (tricube weights), refitted without what lies far off (Cleveland 1979, J Am Stat Assoc 74:829, robust
/// local regression). `samples` and `times` rise in time.
[[nodiscard]] std::vector<std::optional<Smoothed>>
smooth(const std::vector<Sample>& samples, const std::vector<double>& times, const SmoothOptions& options);

} // namespace plumbmark::body::detail
