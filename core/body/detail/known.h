// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <vector>

namespace plumbmark::body::detail {

/// A quantity known in some looks, told in all: straight between the nearest looks that know it.
struct Known {
    std::vector<double> time, value;
    struct At {
        double value = 0.0;
        double gap = 0.0; ///< seconds to the nearest look that knows it
    };
    [[nodiscard]] std::optional<At> at(double t) const {
        if (time.empty()) {
            return std::nullopt;
        }
        const auto next = std::lower_bound(time.begin(), time.end(), t) - time.begin();
        const auto n = static_cast<std::ptrdiff_t>(time.size());
        if (next == 0 || next == n) {
            const auto only = static_cast<std::size_t>(next == 0 ? 0 : n - 1);
            return At{value[only], std::abs(time[only] - t)};
        }
        const auto b = static_cast<std::size_t>(next), a = b - 1;
        const double k = (t - time[a]) / std::max(1e-9, time[b] - time[a]);
        return At{value[a] + (value[b] - value[a]) * k, std::min(t - time[a], time[b] - t)};
    }
};

} // namespace plumbmark::body::detail
