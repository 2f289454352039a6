// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/detail/clip_marks.h"

#include "session/detail/clip_facts.h"

namespace plumbmark::session::detail {

StandingMarks standingMarks(const std::vector<records::Fact>& facts) {
    const Standing all = standing(records::kind::mark, facts);
    StandingMarks marks;
    marks.marks = handMarksOf(all);
    for (const auto& [place, ids] : all.facts) {
        const auto mark = records::markOf(all.newest.at(place).body);
        marks.facts[{mark->frame, mark->landmark}] = ids;
    }
    for (const Place& place : all.disputed) {
        const auto mark = records::markOf(all.newest.at(place).body);
        marks.disputed.emplace_back(mark->frame, mark->landmark);
    }
    return marks;
}

} // namespace plumbmark::session::detail
