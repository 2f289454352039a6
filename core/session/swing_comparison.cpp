// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/swing_comparison.h"

#include <algorithm>

#include "measure/measurement.h"

namespace plumbmark::session {

comparison::Side sideOf(const analysis::Outcome& o) {
    return {o.track, o.moments, o.shaft, o.scene, o.context, o.timeScale};
}

namespace {

/// Matching is good to about a step of its 240-a-second grid.
base::Seconds matchSigma(const analysis::Outcome& o) {
    return base::Seconds{1.0 / 240.0 / std::max(o.timeScale.realPerShown, 1e-3)};
}

} // namespace

base::Result<SwingComparison> SwingComparison::make(const analysis::Outcome& first,
                                                    const analysis::Outcome& second,
                                                    comparison::Feature matchedBy) {
    if (first.track.empty() || second.track.empty()) {
        return base::inputError(
            "compare.moments",
            "One of the clips shows no swing that could be followed; choose another clip.");
    }
    auto match = comparison::matchSwings(sideOf(first), sideOf(second), matchedBy);
    if (!match) {
        return match.error();
    }
    SwingComparison out(std::move(*match));
    marks::Moments there;
    for (const auto& moment : first.moments) {
        MatchedMoment m{moment.id, moment.time, out.match_.inSecond(moment.time), std::nullopt};
        if (const auto* own = marks::find(second.moments, moment.id)) {
            m.own = own->time;
        }
        if (m.matched) {
            there.push_back({moment.id, *m.matched, matchSigma(second), "same position"});
        }
        out.moments_.push_back(m);
    }
    // A measurement since address needs the second swing's own rest where the match does not reach it.
    for (const auto id : {marks::MomentId::address, marks::MomentId::impact}) {
        if (const auto* own = marks::find(second.moments, id); own && !marks::find(there, id)) {
            there.push_back(*own);
        }
    }
    std::stable_sort(there.begin(), there.end(),
                     [](const auto& a, const auto& b) { return a.time < b.time; });
    auto numbers = measure::measureAll({second.track, there, second.shaft, second.ball, second.scene,
                                        second.context, second.timeScale, second.hit});
    // Numbers of the whole swing belong to each swing's own moments.
    std::erase_if(numbers, [](const auto& m) { return !m.moment; });
    std::copy_if(second.measurements.begin(), second.measurements.end(), std::back_inserter(numbers),
                 [](const auto& m) { return !m.moment; });
    out.rows_ = comparison::differences(first.measurements, numbers, matchedBy);
    const auto order = [](const comparison::Difference& d) {
        return d.moment ? static_cast<int>(*d.moment) : marks::kMomentCount;
    };
    std::stable_sort(out.rows_.begin(), out.rows_.end(),
                     [&](const auto& a, const auto& b) { return order(a) < order(b); });
    out.warnings_ = comparison::cameraWarnings(sideOf(first), sideOf(second));
    return out;
}

} // namespace plumbmark::session
