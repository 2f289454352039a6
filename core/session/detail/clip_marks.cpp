// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/detail/clip_marks.h"

#include <algorithm>

namespace plumbmark::session::detail {

StandingMarks standingMarks(const std::vector<records::Fact>& facts) {
    StandingMarks standing;
    std::map<MarkPlace, records::Fact> newest;
    std::map<MarkPlace, bool> differs;
    for (const records::Fact& fact : records::heads(facts)) { // oldest first: the newest stays
        const auto mark = records::markOf(fact.body);
        if (!mark) {
            continue;
        }
        const MarkPlace place{mark->frame, mark->landmark};
        standing.facts[place].push_back(fact.id);
        const auto before = newest.find(place);
        if (before != newest.end() && !(before->second.body == fact.body)) {
            differs[place] = true;
        }
        newest.insert_or_assign(place, fact);
    }
    for (const auto& [place, fact] : newest) {
        const auto mark = records::markOf(fact.body);
        if (mark && !mark->removed) {
            standing.marks.push_back({mark->frame, mark->landmark, mark->at, mark->sigma});
        }
    }
    for (const auto& [place, differ] : differs) {
        standing.disputed.push_back(place);
    }
    return standing;
}

} // namespace plumbmark::session::detail
