// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

namespace plumbmark::measure {

/// Second-order low-pass y[n] = b0 x[n] + b1 x[n-1] + b2 x[n-2] - a1 y[n-1] - a2 y[n-2].
struct Biquad {
    double b0 = 1.0, b1 = 0.0, b2 = 0.0, a1 = 0.0, a2 = 0.0;
};
/// Butterworth, bilinear transform. `passes` 2 (forward and back): the PRE-WARPED TANGENT is divided by
/// (2^(1/passes) - 1)^(1/4) = 0.802 (Winter 2009, 3.4.4.2), so that the gain after both passes is 0.7071 at
/// `cutoffHz`. Dividing the frequency instead misses that by warping (0.779 at 6 Hz and 30 samples/s).
/// 0 < cutoffHz < sampleHz / 2; anything else gives the filter that changes nothing.
[[nodiscard]] Biquad butterworth(double cutoffHz, double sampleHz, int passes = 1);

/// Forward and back over the whole series: no shift in time. Ends are padded by odd reflection, so a constant
/// and a straight line come out unchanged. Never filter across the hit: cut the series there.
[[nodiscard]] std::vector<double> zeroLagButterworth(std::span<const double> series, double cutoffHz,
                                                     double sampleHz);

/// Weights of a Savitzky-Golay filter (Anal Chem 36:1627, 1964): window of 2 half + 1 samples `spacing`
/// apart, polynomial of `degree`, derivative of order `derivative` (0 smooths), read at offset `at` samples
/// from the window's middle. Empty when degree >= window or derivative > degree.
[[nodiscard]] std::vector<double> savitzkyGolayWeights(int half, int degree, int derivative,
                                                       double spacing = 1.0, int at = 0);
/// Applies it; near the ends the polynomial of the first or last full window is read off its middle. A series
/// shorter than the window comes back unchanged (smoothing) or as zeros (derivatives).
[[nodiscard]] std::vector<double> savitzkyGolay(std::span<const double> series, int half, int degree,
                                                int derivative, double spacing);

} // namespace plumbmark::measure
