// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "coaching/body_card.h"
#include "coaching/checkpoint.h"
#include "coaching/playbook.h"
#include "marks/player.h"
#include "measure/measurement.h"

namespace plumbmark::coaching {

/// Shares of the three states for a normally distributed value; they sum to 1.
struct Shares {
    double good = 0.0, watch = 0.0, work = 0.0;
    SideShares low, high; ///< watch and work by the side on which the value lies
};
/// good = inside the good range, work = beyond a work edge, watch = the rest (both sides). An absent edge is
/// open. Integrals of the normal distribution by erfc; sigma > 0.
[[nodiscard]] Shares sharesOf(const Range& range, double value, double sigma);

/// The range with no band narrower than two sigma of the measurement: the good band is widened about its
/// middle, and each work edge moved out until its watch band is as wide. True in `changed` when anything
/// moved.
struct Widened {
    Range range;
    bool changed = false;
};
[[nodiscard]] Widened widen(const Range& range, double sigma);

/// Every checkpoint of the playbook that fits view, club and kind of shot, in the playbook's order.
///
/// The state is the most probable one; "cannot tell" only when good and work each hold more than 15 %, when
/// nothing was measured, or when the body card forbids adult ranges (children; limited joints of that row).
/// A row that is at most "watch" gives its work share to watch.
[[nodiscard]] std::vector<CheckpointResult> judge(const Playbook& playbook,
                                                  const std::vector<measure::Measurement>& measurements,
                                                  const marks::ShotContext& context, const BodyCard& card);

} // namespace plumbmark::coaching
