// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <vector>

namespace plumbmark::club::detail {

/// One frame's gain for each direction (bin b covers b - 180 degrees), any scale where 1 is a clear shaft.
struct PathFrame {
    double realSeconds = 0.0;
    std::array<float, 360> gain{};
};

/// The path of angle over time with the greatest sum of gains less the cost of turning and of changing the
/// turning speed; one unwrapped angle per frame, degrees. States are (angle, step), so a dropout is crossed
/// at the speed the shaft had. Angles are quantised to `binDegrees` returned through the path itself (1 to 4
/// degrees, by frame rate). Memory: 20 kB for each of `blockNodes` steps of 8 ms, 80 kB for each block; a
/// clip longer than one block takes twice the time. The answer does not depend on it.
struct Path {
    std::vector<double> angle;
    std::vector<double> degreesPerSecond; ///< real time
    double binDegrees = 1.0;
};
[[nodiscard]] Path bestPath(std::span<const PathFrame> frames, double jumpCost, int blockNodes = 512);

} // namespace plumbmark::club::detail
