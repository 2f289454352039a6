// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "body/detail/shape.h"

namespace plumbmark::body::detail {

/// One look at the pelvis from the front.
struct PelvisLook {
    double time = 0.0; ///< real seconds
    const Observation* seen = nullptr;
    base::Vec2 hips, hands;      ///< px: the network's mid-hip and middle of the wrists
    base::Vec2 shoulders, knees; ///< px: middles, for how trunk and thighs lean
    std::vector<Limb> arms;
};

/// Middle of the pelvis' outline across the picture, px.
struct PelvisMiddle {
    double x = 0.0;
    double sigma = 0.0; ///< one sigma, px
    /// Width of the outline against the widest clean looks, by the median of the rows; nothing where an arm
    /// hides an edge.
    std::optional<double> width;
};

/// Where the middle of the pelvis stands in every look, from the silhouette: whichever way a body of oval
/// section turns, the middle of its outline stays over its axis. Rows above the hips are freed of the trunk's
/// lean, those below of the thighs'. Rows where an arm lies at an edge are left out; where one edge is left
/// (coming down the trail arm always hides the other) the width of the nearest clean looks is taken for it;
/// where none is left the network's own mid-hip speaks, corrected as in the looks around (carry.h). Nothing
/// in a look when no look of the clip shows the pelvis. `stature`: px.
[[nodiscard]] std::vector<std::optional<PelvisMiddle>> pelvisMiddles(const std::vector<PelvisLook>& looks,
                                                                     double stature);

} // namespace plumbmark::body::detail
