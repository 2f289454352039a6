// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/swing_desk.h"

#include <algorithm>
#include <iterator>

#include "session/clip_intake.h"
#include "session/detail/clip_facts.h"
#include "session/detail/evidence_cache.h"
#include "session/detail/no_such_thing.h"
#include "video/clip.h"

namespace plumbmark::session {
namespace {

using detail::Place;

void put(marks::HandMarks& marks, const records::MarkFact& value) {
    const auto it = std::find_if(marks.begin(), marks.end(), [&](const marks::HandMark& mark) {
        return mark.frame == value.frame && mark.landmark == value.landmark;
    });
    const marks::HandMark mark{value.frame, value.landmark, value.at, value.sigma};
    if (it == marks.end()) {
        marks.push_back(mark);
    } else {
        *it = mark;
    }
}

Place placeOfMark(int frame, marks::Landmark landmark) {
    return *detail::placeOf(records::kind::mark,
                            bodyOf(records::MarkFact{frame, landmark, std::nullopt, 2.0, true}));
}

} // namespace

base::Result<bool> SwingDesk::open(const base::Id& id, const base::Progress& progress,
                                   std::optional<analysis::Analysed> known) {
    auto row = library_->clip(id);
    if (!row) {
        return row.error();
    }
    if (!*row) {
        return detail::noSuchThing();
    }
    const auto fact = library_->fact(id);
    if (!fact) {
        return fact.error();
    }
    const auto request = requestFor(*library_, id);
    if (!request) {
        return request.error();
    }
    if (!known) {
        if (!(*row)->filmHere) {
            return base::inputError("film.missing",
                                    "The film of this swing did not come with the lesson; ask for the "
                                    "lesson with its films.");
        }
        const std::string& sha256 = (*row)->film;
        if (auto kept = detail::keptEvidence(*library_, sha256, network_, *request)) {
            known = analysis::Analysed{analysis::recompute(*kept, request->handMarks, request->momentFixes),
                                       std::move(kept)};
        } else {
            auto clip = video::Clip::open((*row)->file);
            if (!clip) {
                return clip.error();
            }
            auto analysed = analysis::analyse(**clip, network_, *request, progress);
            if (!analysed) {
                return analysed.error();
            }
            if (!*analysed) {
                return false;
            }
            known = std::move(*analysed);
            detail::keepEvidence(*library_, sha256, network_, *request, *known->evidence);
        }
    }
    std::vector<records::Fact> facts;
    for (const std::string_view kind : {records::kind::mark, records::kind::moment, records::kind::drawing}) {
        auto some = library_->factsOf(id, kind);
        if (!some) {
            return some.error();
        }
        facts.insert(facts.end(), some->begin(), some->end());
    }
    // From here on nothing fails: the desk changes as a whole.
    readFacts(facts);
    clip_ = std::move(*row);
    path_ = (*fact)->path;
    path_.push_back(id);
    evidence_ = std::move(known->evidence);
    outcome_ = std::move(known->outcome);
    drag_.reset();
    return true;
}

std::filesystem::path SwingDesk::film() const {
    return clip_ ? clip_->file : std::filesystem::path();
}

/// What stands now, and the gestures of this device that can be taken back, oldest first.
void SwingDesk::readFacts(const std::vector<records::Fact>& facts) {
    const auto ofKind = [&](std::string_view kind) {
        std::vector<records::Fact> some;
        std::copy_if(facts.begin(), facts.end(), std::back_inserter(some),
                     [&](const records::Fact& fact) { return fact.kind == kind; });
        return detail::standing(kind, some);
    };
    const detail::Standing marks = ofKind(records::kind::mark);
    const detail::Standing moments = ofKind(records::kind::moment);
    const detail::Standing drawings = ofKind(records::kind::drawing);
    marks_ = detail::handMarksOf(marks);
    fixes_ = detail::momentsOf(moments);
    drawings_ = detail::drawingsOf(drawings);
    disputed_.clear();
    for (const Place& place : marks.disputed) {
        const auto mark = records::markOf(marks.newest.at(place).body);
        disputed_.emplace_back(mark->frame, mark->landmark);
    }
    bodies_.clear();
    for (const detail::Standing* all : {&marks, &moments, &drawings}) {
        for (const auto& [place, fact] : all->newest) {
            if (!detail::isTakenBack(fact.body)) {
                bodies_[place] = detail::withoutStep(fact.body);
            }
        }
    }

    undo_.clear();
    redo_.clear();
    std::vector<const records::Fact*> steps;
    for (const records::Fact& fact : facts) {
        if (fact.at.device == library_->device() && records::textMember(fact.body, detail::kStep)) {
            steps.push_back(&fact);
        }
    }
    std::sort(steps.begin(), steps.end(),
              [](const records::Fact* a, const records::Fact* b) { return records::earlier(a->at, b->at); });
    const auto said = [&](const base::Id& id) -> std::optional<records::Object> {
        const auto it = std::find_if(facts.begin(), facts.end(),
                                     [&](const records::Fact& fact) { return fact.id == id; });
        if (it == facts.end() || detail::isTakenBack(it->body)) {
            return std::nullopt;
        }
        return detail::withoutStep(it->body);
    };
    for (const records::Fact* fact : steps) {
        const auto place = detail::placeOf(fact->kind, fact->body);
        const std::string step = *records::textMember(fact->body, detail::kStep);
        if (!place) {
            continue;
        }
        if (step == "undo" && !undo_.empty()) {
            redo_.push_back(std::move(undo_.back()));
            undo_.pop_back();
        } else if (step == "redo" && !redo_.empty()) {
            undo_.push_back(std::move(redo_.back()));
            redo_.pop_back();
        } else if (step == "do") {
            // Of two versions that were replaced together the one that was in use is the last by stamp.
            const records::Fact* before = nullptr;
            for (const records::Fact& other : facts) {
                if (std::find(fact->replaces.begin(), fact->replaces.end(), other.id) !=
                        fact->replaces.end() &&
                    (before == nullptr || records::earlier(before->at, other.at))) {
                    before = &other;
                }
            }
            undo_.push_back({*place, before == nullptr ? std::nullopt : said(before->id), said(fact->id)});
            redo_.clear();
        }
    }
}

void SwingDesk::recompute() {
    if (evidence_ != nullptr) {
        outcome_ = analysis::recompute(*evidence_, marks_, fixes_);
    }
}

std::optional<records::Object> SwingDesk::standing(const Place& place) const {
    const auto it = bodies_.find(place);
    return it == bodies_.end() ? std::nullopt : std::optional(it->second);
}

/// In memory only: the body (or nothing) stands at the place from now on.
void SwingDesk::put(const Place& place, const std::optional<records::Object>& body) {
    if (body) {
        bodies_[place] = *body;
    } else {
        bodies_.erase(place);
    }
    if (place.kind == records::kind::mark) {
        marks_.clear();
        for (const auto& [at, said] : bodies_) {
            if (at.kind == records::kind::mark) {
                session::put(marks_, *records::markOf(said));
            }
        }
    } else if (place.kind == records::kind::moment) {
        fixes_.clear();
        for (const auto& [at, said] : bodies_) {
            if (at.kind == records::kind::moment) {
                const auto fix = records::momentOf(said);
                fixes_.push_back({fix->id, fix->time, fix->sigma, "hand mark"});
            }
        }
    } else {
        // One that is there keeps its place in the pile.
        const auto it = std::find_if(drawings_.begin(), drawings_.end(),
                                     [&](const records::Drawing& d) { return d.name == place.name; });
        const auto drawing = body ? records::drawingOf(*body) : std::nullopt;
        if (it != drawings_.end() && drawing) {
            *it = *drawing;
        } else if (it != drawings_.end()) {
            drawings_.erase(it);
        } else if (drawing) {
            drawings_.push_back(*drawing);
        }
    }
}

base::Result<void> SwingDesk::store(const Place& place, const std::optional<records::Object>& body,
                                    std::string_view step) {
    const auto facts = library_->factsOf(clip_->id, place.kind);
    if (!facts) {
        return facts.error();
    }
    const detail::Standing standing = detail::standing(place.kind, *facts);
    const auto seen = standing.facts.find(place);
    records::Object said = body.value_or(detail::takenBack(place));
    said.insert_or_assign(std::string(detail::kStep), std::string(step));
    return library_->add(
        {library_->make(place.kind, path_, std::move(said),
                        seen == standing.facts.end() ? std::vector<base::Id>() : seen->second)});
}

/// Stores one finished gesture. On an error everything is as it was before the gesture.
base::Result<void> SwingDesk::gesture(const Place& place, std::optional<records::Object> after) {
    Gesture gesture{place, standing(place), std::move(after)};
    if (auto stored = store(place, gesture.after, "do"); !stored) {
        return stored;
    }
    put(place, gesture.after);
    std::erase_if(disputed_,
                  [&](const auto& d) { return placeOfMark(d.first, d.second) == place; }); // has seen both
    undo_.push_back(std::move(gesture));
    redo_.clear();
    return {};
}

void SwingDesk::beginDrag(int frame, marks::Landmark landmark) {
    if (!isOpen() || drag_ || frame < 0 || frame >= clip_->clip.frames) {
        return;
    }
    drag_ = Drag{frame, landmark, std::nullopt, marks_, outcome_};
}

const analysis::Outcome& SwingDesk::moveDrag(base::Vec2 to, double sigmaPixels) {
    if (drag_) {
        drag_->now =
            records::MarkFact{drag_->frame, drag_->landmark, to, sigmaPixels > 0 ? sigmaPixels : 2.0, false};
        session::put(marks_, *drag_->now);
        recompute();
    }
    return outcome_;
}

base::Result<void> SwingDesk::finishDrag() {
    if (!drag_) {
        return {};
    }
    Drag drag = std::move(*drag_);
    drag_.reset();
    marks_ = drag.marksBefore;
    if (!drag.now) {
        return {}; // touched but not moved
    }
    if (auto stored = gesture(placeOfMark(drag.frame, drag.landmark), bodyOf(*drag.now)); !stored) {
        outcome_ = std::move(drag.outcomeBefore);
        return stored;
    }
    return {}; // the outcome is the last move's
}

void SwingDesk::cancelDrag() {
    if (drag_) {
        marks_ = std::move(drag_->marksBefore);
        outcome_ = std::move(drag_->outcomeBefore);
        drag_.reset();
    }
}

base::Result<void> SwingDesk::hide(int frame, marks::Landmark landmark) {
    if (!isOpen() || drag_ || frame < 0 || frame >= clip_->clip.frames) {
        return {};
    }
    auto done = gesture(placeOfMark(frame, landmark),
                        bodyOf(records::MarkFact{frame, landmark, std::nullopt, 2.0, false}));
    if (done) {
        recompute();
    }
    return done;
}

base::Result<void> SwingDesk::release(int frame, marks::Landmark landmark) {
    if (!isOpen() || drag_ || !standing(placeOfMark(frame, landmark))) {
        return {};
    }
    auto done = gesture(placeOfMark(frame, landmark), std::nullopt);
    if (done) {
        recompute();
    }
    return done;
}

base::Result<void> SwingDesk::fixMoment(marks::MomentId moment, int frame) {
    const marks::Track& track = outcome_.track;
    if (!isOpen() || drag_ || frame < 0 || frame >= static_cast<int>(track.size())) {
        return {};
    }
    const auto at = [&](int i) { return track[static_cast<std::size_t>(i)].time; };
    const int last = static_cast<int>(track.size()) - 1;
    const int from = std::max(0, frame - 1), to = std::min(last, frame + 1);
    // The person chose among frames: the moment lies within half a frame of this one.
    const base::Seconds gap = to > from ? (at(to) - at(from)) / (to - from) : base::Seconds{1.0 / 30.0};
    const records::MomentFact fact{moment, at(frame), gap * 0.5, false};
    const records::Object body = bodyOf(fact);
    const Place place = *detail::placeOf(records::kind::moment, body);
    if (standing(place) == body) {
        return {}; // it says so already
    }
    auto done = gesture(place, body);
    if (done) {
        recompute();
    }
    return done;
}

base::Result<void> SwingDesk::freeMoment(marks::MomentId moment) {
    const Place place{std::string(records::kind::moment), std::string(marks::momentName(moment))};
    if (!isOpen() || drag_ || !standing(place)) {
        return {};
    }
    auto done = gesture(place, std::nullopt);
    if (done) {
        recompute();
    }
    return done;
}

base::Result<void> SwingDesk::draw(const records::Drawing& drawing) {
    if (!isOpen() || drag_) {
        return {};
    }
    const records::Object body = bodyOf(drawing);
    const auto place = detail::placeOf(records::kind::drawing, body);
    if (!place || drawing.removed) {
        return base::inputError("record.bad_value", "This drawing is not finished; draw it again.");
    }
    return gesture(*place, body);
}

base::Result<void> SwingDesk::wipe(const std::string& name) {
    const Place place{std::string(records::kind::drawing), name};
    if (!isOpen() || drag_ || !standing(place)) {
        return {};
    }
    return gesture(place, std::nullopt);
}

base::Result<void> SwingDesk::undo() {
    if (undo_.empty() || drag_) {
        return {};
    }
    const Gesture& last = undo_.back();
    if (auto stored = store(last.place, last.before, "undo"); !stored) {
        return stored;
    }
    put(last.place, last.before);
    redo_.push_back(last);
    undo_.pop_back();
    recompute();
    return {};
}

base::Result<void> SwingDesk::redo() {
    if (redo_.empty() || drag_) {
        return {};
    }
    const Gesture& next = redo_.back();
    if (auto stored = store(next.place, next.after, "redo"); !stored) {
        return stored;
    }
    put(next.place, next.after);
    undo_.push_back(next);
    redo_.pop_back();
    recompute();
    return {};
}

base::Result<std::optional<base::Id>> SwingDesk::keepFindings(bool accept) {
    if (!isOpen() || drag_) {
        return std::optional<base::Id>();
    }
    const auto stored = library_->factsOf(clip_->id, records::kind::findings);
    const auto accepted = library_->factsOf(clip_->id, records::kind::accept);
    if (!stored || !accepted) {
        return stored ? accepted.error() : stored.error();
    }
    const records::Object body = bodyOf(findingsOf(outcome_));
    const auto before = records::heads(*stored);
    std::vector<records::Fact> facts;
    base::Id id{base::Id::Bytes{}};
    if (!before.empty() && before.back().body == body) {
        id = before.back().id;
    } else {
        std::vector<base::Id> replaces;
        for (const records::Fact& fact : before) {
            replaces.push_back(fact.id);
        }
        facts.push_back(library_->make(records::kind::findings, path_, body, replaces));
        id = facts.back().id;
    }
    if (accept) {
        std::vector<base::Id> replaces;
        bool already = false;
        for (const records::Fact& fact : records::heads(*accepted)) {
            replaces.push_back(fact.id);
            already = records::textMember(fact.body, "findings") == id.hex();
        }
        if (!already || replaces.size() > 1) {
            facts.push_back(library_->make(records::kind::accept, path_, {{"findings", id.hex()}}, replaces));
        }
    }
    if (!facts.empty()) {
        if (auto added = library_->add(facts); !added) {
            return added.error();
        }
    }
    return std::optional(id);
}

base::Result<void> SwingDesk::saveFindings() {
    const auto kept = keepFindings(false);
    return kept ? base::Result<void>() : base::Result<void>(kept.error());
}

base::Result<void> SwingDesk::acceptFindings() {
    const auto kept = keepFindings(true);
    return kept ? base::Result<void>() : base::Result<void>(kept.error());
}

} // namespace plumbmark::session
