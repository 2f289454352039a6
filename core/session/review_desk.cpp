// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/review_desk.h"

#include <algorithm>

#include "session/clip_intake.h"
#include "session/lesson_book.h"
#include "session/swing_desk.h"

namespace plumbmark::session {
namespace {

coaching::State stateNamed(const std::string& name) {
    for (const auto state : {coaching::State::good, coaching::State::watch, coaching::State::work}) {
        if (coaching::stateName(state) == name) {
            return state;
        }
    }
    return coaching::State::unknown;
}

/// What the coach saw and perhaps accepted goes before what was computed a moment ago: key moments, numbers
/// and the states of checkpoints. Words and ranges stay those of the playbook.
void tellStanding(const records::Findings& standing, analysis::Outcome& outcome) {
    outcome.moments = standing.moments;
    outcome.measurements = standing.measurements;
    for (coaching::CheckpointResult& checkpoint : outcome.checkpoints) {
        const auto it =
            std::find_if(standing.checkpoints.begin(), standing.checkpoints.end(), [&](const auto& c) {
                return c.id == checkpoint.id && c.moment == checkpoint.moment;
            });
        if (it == standing.checkpoints.end()) {
            continue;
        }
        checkpoint.state = stateNamed(it->state);
        checkpoint.good = it->good;
        checkpoint.watch = it->watch;
        checkpoint.work = it->work;
        const auto* m = measure::find(standing.measurements, checkpoint.measurement, checkpoint.moment);
        checkpoint.value = m != nullptr ? m->value : std::nullopt;
    }
}

} // namespace

base::Result<std::vector<exporting::TableRow>> ReviewDesk::numbers(std::optional<base::Id> player,
                                                                   std::optional<base::Id> lesson) {
    LessonBook book(*library_);
    auto lessons = book.lessons({}, player);
    if (!lessons) {
        return lessons.error();
    }
    std::stable_sort(lessons->begin(), lessons->end(),
                     [](const auto& a, const auto& b) { return a.day < b.day; });
    std::vector<exporting::TableRow> rows;
    for (const store::LessonRow& row : *lessons) {
        if (lesson && row.id != *lesson) {
            continue;
        }
        const auto shots = book.shots(row.id);
        if (!shots) {
            return shots.error();
        }
        for (const store::ShotRow& shot : *shots) {
            const auto clips = book.clips(shot.id);
            if (!clips) {
                return clips.error();
            }
            for (const store::ClipRow& clip : *clips) {
                const auto findings = book.findings(clip.id);
                const auto request = requestFor(*library_, clip.id);
                if (!findings || !request) {
                    return findings ? request.error() : findings.error();
                }
                if (!*findings) {
                    continue;
                }
                for (const auto& measurement : (*findings)->measurements) {
                    rows.push_back({row.playerName, row.day, row.title, row.id.hex(), clip.id.hex(),
                                    shot.number, request->context, measurement});
                }
            }
        }
    }
    return rows;
}

base::Result<std::vector<ReviewDesk::Choice>> ReviewDesk::clips(const base::Id& lesson) {
    LessonBook book(*library_);
    const auto shots = book.shots(lesson);
    if (!shots) {
        return shots.error();
    }
    std::vector<Choice> choices;
    for (const store::ShotRow& shot : *shots) {
        const auto clips = book.clips(shot.id);
        if (!clips) {
            return clips.error();
        }
        for (const store::ClipRow& clip : *clips) {
            choices.push_back({shot.number, clip.id, clip.clip.view, clip.filmHere});
        }
    }
    return choices;
}

base::Result<std::optional<analysis::Outcome>> ReviewDesk::measured(const base::Id& clip,
                                                                    const base::Progress& progress) {
    SwingDesk desk(*library_, network_);
    const auto opened = desk.open(clip, progress);
    if (!opened) {
        return opened.error();
    }
    if (!*opened) {
        return std::optional<analysis::Outcome>();
    }
    analysis::Outcome outcome = desk.outcome();
    LessonBook book(*library_);
    const auto findings = book.findings(clip);
    if (!findings) {
        return findings.error();
    }
    if (*findings) {
        tellStanding(**findings, outcome);
    }
    return std::optional(std::move(outcome));
}

} // namespace plumbmark::session
