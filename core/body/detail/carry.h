// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

namespace plumbmark::body::detail {

/// Where the middle of a joint pair stands across the picture in one look, told by two that err differently.
struct TwoTold {
    double time = 0.0;    ///< real seconds, rising
    double network = 0.0; ///< px: there in every look, off by a bias that lasts for a while
    double bias = 0.0;    ///< px, one sigma of that bias in this pose
    /// The outline's own answer where it can be trusted: right on average, some looks missing, some astray.
    struct Outline {
        double at = 0.0;
        double sigma = 0.0;
    };
    std::optional<Outline> outline;
};

struct CarrySettings {
    double grain = 0.0;   ///< px: how far the network's answers scatter from look to look
    double lasting = 0.1; ///< seconds over which the network's bias forgets itself
    /// px^2 / s^3: spectral density of the middle's acceleration, which is taken for white noise.
    double jerk = 1.0;
};

/// The most likely course of the middle: the network's bias is learnt where the outline speaks and carried to
/// the looks where it does not, and the middle itself moves no more wildly than a body does. Least squares
/// over all looks at once (position and bias of each look), looks far off reweighted as under a t
/// distribution (four degrees of freedom; Lange, Little and Taylor 1989, J Am Stat Assoc 84:881). px per
/// look.
[[nodiscard]] std::vector<double> carryMiddle(const std::vector<TwoTold>& looks,
                                              const CarrySettings& settings);

} // namespace plumbmark::body::detail
