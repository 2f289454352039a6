// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "body/observation.h"

namespace plumbmark::body::detail {

/// What the silhouette says about the trunk and the head; all in picture pixels.

/// Stretch of the line through `at` along unit `along` that lies inside the silhouette and holds `at`.
struct Stretch {
    double from = 0.0, to = 0.0; ///< along `along`, from <= 0 <= to
};
[[nodiscard]] std::optional<Stretch> stretchAt(const Observation& o, base::Vec2 at, base::Vec2 along,
                                               double limit);

/// A piece of an arm; where it lies at the trunk's outline, that outline is the arm's, not the trunk's.
struct Limb {
    base::Vec2 a, b;
    double thick = 0.0; ///< px, half
};

/// The trunk's outline across the line low -> high (guesses of mid-hip and mid-shoulder), by robust lines
/// through the silhouette's edges and middles, levels spoiled by an arm left out. Offsets are px across the
/// line, + to the right of low -> high on the screen, at the two ends.
struct TrunkShape {
    struct Line {
        double low = 0.0, high = 0.0;
        double scatter = 0.0; ///< px, median distance of the levels from the line
        int levels = 0;
    };
    std::optional<Line> middle, right, left;
    double width = 0.0; ///< px, median cross stretch
};
[[nodiscard]] TrunkShape trunkShape(const Observation& o, base::Vec2 low, base::Vec2 high,
                                    const std::vector<Limb>& arms);

/// Where the trunk's middle line, followed up from the hips, passes the shoulders' height: x in px.
struct TrunkTop {
    double x = 0.0;
    double sigma = 0.0; ///< px; grows with how far the line was followed beyond the last row that shows it
};
/// From the rows between `hips` and `shoulders` (the network's middles) with no arm at either edge: whichever
/// way a trunk of oval section turns, the middle of its outline stays over its axis. Nothing where fewer than
/// five rows are clean, or none in the upper half.
[[nodiscard]] std::optional<TrunkTop> trunkTop(const Observation& o, base::Vec2 hips, base::Vec2 shoulders,
                                               const std::vector<Limb>& arms, double stature);

/// Outline of the head: from `centre` (a guess inside the head) along `up` (unit, neck to crown) and across
/// it.
struct HeadOutline {
    base::Vec2 crown, left, right; ///< left / right of `up`
};
/// The two side edges of the head, each for itself: nothing on a side where the outline runs on into an arm
/// or something behind the player.
struct HeadSides {
    std::optional<base::Vec2> left, right; ///< of `up`
};
[[nodiscard]] HeadSides headSides(const Observation& o, base::Vec2 centre, base::Vec2 up, double stature);
[[nodiscard]] std::optional<HeadOutline> headOutline(const Observation& o, base::Vec2 centre, base::Vec2 up,
                                                     double stature);

/// The outline point of the pelvis farthest toward `side` (-1 picture left, +1 right), among the rows within
/// `band` px of `hip` that belong to the stretch through the hips.
[[nodiscard]] std::optional<base::Vec2> pelvisEdge(const Observation& o, base::Vec2 hip, int side,
                                                   double band, double limit);

} // namespace plumbmark::body::detail
