// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "body/observation.h"

namespace plumbmark::body::detail {

/// What the silhouette says about the trunk and the head; all in picture pixels.

/// Stretch of the line through `at` along unit `along` that lies inside the silhouette and holds `at`.
struct Stretch {
    double from = 0.0, to = 0.0; ///< along `along`, from <= 0 <= to
};
[[nodiscard]] std::optional<Stretch> stretchAt(const Observation& o, base::Vec2 at, base::Vec2 along,
                                               double limit);

/// Middle line of the trunk between a hip-height and a shoulder-height point (both guesses), by a robust line
/// through the middles of the silhouette's cross stretches.
struct Midline {
    base::Vec2 low, high;               ///< beside the two guesses, moved across only
    double lowOff = 0.0, highOff = 0.0; ///< px moved, + to the right of low -> high
    double scatter = 0.0;               ///< px, of the middles about the line
    double width = 0.0;                 ///< px, median cross stretch
    int levels = 0;                     ///< how many cross stretches agreed
    /// The same for the outline's edge on the right (+1) and left (-1) of low -> high, at low and high.
    double rightLow = 0.0, rightHigh = 0.0, leftLow = 0.0, leftHigh = 0.0;
};
[[nodiscard]] std::optional<Midline> trunkMidline(const Observation& o, base::Vec2 low, base::Vec2 high);

/// Outline of the head: from `centre` (a guess inside the head) along `up` (unit, neck to crown) and across
/// it.
struct HeadOutline {
    base::Vec2 crown, left, right; ///< left / right of `up`
};
[[nodiscard]] std::optional<HeadOutline> headOutline(const Observation& o, base::Vec2 centre, base::Vec2 up,
                                                     double stature);

/// The outline point of the pelvis farthest toward `side` (-1 picture left, +1 right), among the rows within
/// `band` px of `hip` that belong to the stretch through the hips.
[[nodiscard]] std::optional<base::Vec2> pelvisEdge(const Observation& o, base::Vec2 hip, int side,
                                                   double band, double limit);

} // namespace plumbmark::body::detail
