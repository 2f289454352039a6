// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/swing_desk.h"

#include <algorithm>

#include "session/clip_intake.h"
#include "session/detail/clip_marks.h"
#include "video/clip.h"

namespace plumbmark::session {
namespace {

marks::HandMarks::iterator findMark(marks::HandMarks& marks, int frame, marks::Landmark landmark) {
    return std::find_if(marks.begin(), marks.end(), [&](const marks::HandMark& mark) {
        return mark.frame == frame && mark.landmark == landmark;
    });
}

/// Puts the value at its place in the list; nothing or `removed` takes it away.
void put(marks::HandMarks& marks, int frame, marks::Landmark landmark,
         const std::optional<records::MarkFact>& value) {
    const auto it = findMark(marks, frame, landmark);
    if (!value || value->removed) {
        if (it != marks.end()) {
            marks.erase(it);
        }
        return;
    }
    const marks::HandMark mark{frame, landmark, value->at, value->sigma};
    if (it == marks.end()) {
        marks.push_back(mark);
    } else {
        *it = mark;
    }
}

} // namespace

base::Result<bool> SwingDesk::open(const base::Id& id, const base::Progress& progress,
                                   std::optional<analysis::Analysed> known) {
    auto row = library_->clip(id);
    if (!row) {
        return row.error();
    }
    if (!*row) {
        return base::inputError("book.no_such_thing",
                                "It is not in the library (any more); choose again from the list.");
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
    }
    const auto facts = library_->factsOf(id, records::kind::mark);
    if (!facts) {
        return facts.error();
    }
    // From here on nothing fails: the desk changes as a whole.
    detail::StandingMarks standing = detail::standingMarks(*facts);
    marks_ = std::move(standing.marks);
    disputed_ = std::move(standing.disputed);
    clip_ = std::move(*row);
    path_ = (*fact)->path;
    path_.push_back(id);
    evidence_ = std::move(known->evidence);
    outcome_ = std::move(known->outcome);
    drag_.reset();
    undo_.clear();
    redo_.clear();
    return true;
}

std::filesystem::path SwingDesk::film() const {
    return clip_ ? clip_->file : std::filesystem::path();
}

void SwingDesk::recompute() {
    if (evidence_ != nullptr) {
        outcome_ = analysis::recompute(*evidence_, marks_);
    }
}

std::optional<records::MarkFact> SwingDesk::standing(int frame, marks::Landmark landmark) const {
    const auto it = std::find_if(marks_.begin(), marks_.end(), [&](const marks::HandMark& mark) {
        return mark.frame == frame && mark.landmark == landmark;
    });
    if (it == marks_.end()) {
        return std::nullopt;
    }
    return records::MarkFact{frame, landmark, it->at, it->sigma, false};
}

base::Result<void> SwingDesk::store(int frame, marks::Landmark landmark,
                                    std::optional<records::MarkFact> value) {
    const auto facts = library_->factsOf(clip_->id, records::kind::mark);
    if (!facts) {
        return facts.error();
    }
    const detail::StandingMarks standing = detail::standingMarks(*facts);
    const auto seen = standing.facts.find({frame, landmark});
    const records::MarkFact fact =
        value.value_or(records::MarkFact{frame, landmark, std::nullopt, 2.0, /*removed=*/true});
    return library_->add(
        {library_->make(records::kind::mark, path_, bodyOf(fact),
                        seen == standing.facts.end() ? std::vector<base::Id>() : seen->second)});
}

/// Stores one finished gesture. On an error everything is as it was before the gesture.
base::Result<void> SwingDesk::gesture(int frame, marks::Landmark landmark,
                                      std::optional<records::MarkFact> after) {
    Gesture gesture{frame, landmark, standing(frame, landmark), after};
    if (auto stored = store(frame, landmark, std::move(after)); !stored) {
        return stored;
    }
    put(marks_, frame, landmark, gesture.after);
    std::erase(disputed_, std::pair(frame, landmark)); // the new mark has seen both
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
        put(marks_, drag_->frame, drag_->landmark, drag_->now);
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
    if (auto stored = gesture(drag.frame, drag.landmark, drag.now); !stored) {
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
    auto done = gesture(frame, landmark, records::MarkFact{frame, landmark, std::nullopt, 2.0, false});
    if (done) {
        recompute();
    }
    return done;
}

base::Result<void> SwingDesk::release(int frame, marks::Landmark landmark) {
    if (!isOpen() || drag_ || !standing(frame, landmark)) {
        return {};
    }
    auto done = gesture(frame, landmark, std::nullopt);
    if (done) {
        recompute();
    }
    return done;
}

base::Result<void> SwingDesk::undo() {
    if (undo_.empty() || drag_) {
        return {};
    }
    const Gesture& last = undo_.back();
    if (auto stored = store(last.frame, last.landmark, last.before); !stored) {
        return stored;
    }
    put(marks_, last.frame, last.landmark, last.before);
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
    if (auto stored = store(next.frame, next.landmark, next.after); !stored) {
        return stored;
    }
    put(marks_, next.frame, next.landmark, next.after);
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
