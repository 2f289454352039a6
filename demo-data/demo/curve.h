// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

namespace plumbmark::demo {

struct Key {
    double time = 0.0; ///< s
    double value = 0.0;
    std::optional<double> slope =
        std::nullopt; ///< per second; nothing: chosen so that the curve does not overshoot
};

/// A smooth function of time through keys. Monotone cubic pieces between keys, flat before the first and
/// after the last, then smoothed by a Gaussian of `sigma` seconds so that speeds are continuous as well. The
/// smoothing moves values a little: whoever needs an exact value at a time solves for the key.
class Curve {
  public:
    Curve() = default;
    Curve(std::vector<Key> keys, double start, double end, double sigma);
    [[nodiscard]] double at(double time) const;

  private:
    double start_ = 0.0;
    std::vector<double> table_; ///< one value per millisecond
};

} // namespace plumbmark::demo
