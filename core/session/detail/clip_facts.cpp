// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/detail/clip_facts.h"

#include <algorithm>
#include <set>

namespace plumbmark::session::detail {

namespace kind = records::kind;

std::optional<Place> placeOf(std::string_view kindName, const records::Object& body) {
    std::optional<std::string> name;
    if (kindName == kind::mark) {
        if (const auto mark = records::markOf(body)) {
            name = std::to_string(mark->frame) + "/" + std::string(marks::landmarkName(mark->landmark));
        }
    } else if (kindName == kind::moment) {
        if (const auto moment = records::momentOf(body)) {
            name = std::string(marks::momentName(moment->id));
        }
    } else if (kindName == kind::drawing) {
        if (const auto drawing = records::drawingOf(body)) {
            name = drawing->name;
        }
    }
    return name ? std::optional(Place{std::string(kindName), *name}) : std::nullopt;
}

records::Object takenBack(const Place& place) {
    if (place.kind == kind::mark) {
        const std::size_t slash = place.name.find('/');
        return records::bodyOf(
            records::MarkFact{std::atoi(place.name.c_str()),
                              marks::landmarkFromName(std::string_view(place.name).substr(slash + 1))
                                  .value_or(marks::Landmark::nose),
                              std::nullopt, 2.0, /*removed=*/true});
    }
    if (place.kind == kind::moment) {
        return records::bodyOf(records::MomentFact{
            marks::momentFromName(place.name).value_or(marks::MomentId::address), {}, {}, /*removed=*/true});
    }
    records::Drawing drawing;
    drawing.name = place.name;
    drawing.removed = true;
    return records::bodyOf(drawing);
}

bool isTakenBack(const records::Object& body) {
    return records::booleanMember(body, "removed").value_or(false);
}

records::Object withoutStep(records::Object body) {
    if (const auto it = body.find(kStep); it != body.end()) {
        body.erase(it);
    }
    return body;
}

Standing standing(std::string_view kindName, const std::vector<records::Fact>& facts) {
    Standing all;
    std::set<Place> differs;
    for (const records::Fact& fact : records::heads(facts)) { // oldest first: the newest stays
        const auto place = placeOf(kindName, fact.body);
        if (!place) {
            continue;
        }
        all.facts[*place].push_back(fact.id);
        const auto before = all.newest.find(*place);
        if (before != all.newest.end() && !(withoutStep(before->second.body) == withoutStep(fact.body))) {
            differs.insert(*place);
        }
        all.newest.insert_or_assign(*place, fact);
    }
    all.disputed.assign(differs.begin(), differs.end());
    return all;
}

marks::HandMarks handMarksOf(const Standing& standing) {
    marks::HandMarks marks;
    for (const auto& [place, fact] : standing.newest) {
        if (const auto mark = records::markOf(fact.body); mark && !mark->removed) {
            marks.push_back({mark->frame, mark->landmark, mark->at, mark->sigma});
        }
    }
    std::sort(marks.begin(), marks.end(), [](const marks::HandMark& a, const marks::HandMark& b) {
        return std::pair(a.frame, a.landmark) < std::pair(b.frame, b.landmark);
    });
    return marks;
}

marks::Moments momentsOf(const Standing& standing) {
    marks::Moments moments;
    for (const auto& [place, fact] : standing.newest) {
        if (const auto moment = records::momentOf(fact.body); moment && !moment->removed) {
            moments.push_back({moment->id, moment->time, moment->sigma, "hand mark"});
        }
    }
    return moments;
}

std::vector<records::Drawing> drawingsOf(const Standing& standing) {
    // In the order they were made: the last one lies on top.
    std::vector<const records::Fact*> facts;
    for (const auto& [place, fact] : standing.newest) {
        facts.push_back(&fact);
    }
    std::sort(facts.begin(), facts.end(),
              [](const records::Fact* a, const records::Fact* b) { return records::earlier(a->at, b->at); });
    std::vector<records::Drawing> drawings;
    for (const records::Fact* fact : facts) {
        if (auto drawing = records::drawingOf(fact->body); drawing && !drawing->removed) {
            drawings.push_back(std::move(*drawing));
        }
    }
    return drawings;
}

records::Clip clipOf(const store::Library::Film& film, const video::ClipInfo& info, marks::View view,
                     marks::Hand hand, bool mirrored) {
    records::Clip clip;
    clip.sha256 = film.sha256;
    clip.bytes = film.bytes;
    clip.view = view;
    clip.hand = hand;
    clip.mirrored = mirrored;
    clip.width = info.width;
    clip.height = info.height;
    clip.frames = info.frames;
    clip.durationSeconds = info.duration.value();
    clip.playbackFps = info.playbackFps;
    clip.captureFps = info.captureFps;
    return clip;
}

} // namespace plumbmark::session::detail
