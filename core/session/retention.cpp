// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/retention.h"

#include <algorithm>
#include <map>

#include "records/consent.h"
#include "session/lesson_exchange.h"

namespace plumbmark::session {

base::Result<std::vector<Overdue>> Retention::overdue() {
    constexpr base::UnixMs kDay = 24LL * 3600 * 1000;
    const std::string today = base::isoDate(clock_->now());
    const auto lessons = library_->lessons();
    if (!lessons) {
        return lessons.error();
    }
    LessonExchange exchange(*library_, *clock_);
    std::map<base::Id, records::Age> ages;
    std::vector<Overdue> found;
    for (const store::LessonRow& lesson : *lessons) {
        const auto taught = base::fromIso(lesson.day);
        if (!taught) {
            continue;
        }
        auto age = ages.find(lesson.player);
        if (age == ages.end()) {
            const auto told = exchange.ageOf(lesson.player);
            if (!told) {
                return told.error();
            }
            age = ages.emplace(lesson.player, *told).first;
        }
        const int days = age->second == records::Age::adult ? kKeepFilmsDays : kKeepMinorsFilmsDays;
        const std::string since = base::isoDate(*taught + (days + 1) * kDay);
        if (since > today) {
            continue;
        }
        const auto shots = library_->shots(lesson.id);
        if (!shots) {
            return shots.error();
        }
        for (const store::ShotRow& shot : *shots) {
            const auto clips = library_->clips(shot.id);
            if (!clips) {
                return clips.error();
            }
            for (const store::ClipRow& clip : *clips) {
                if (clip.filmHere) {
                    found.push_back({clip.id, lesson.playerName, lesson.title, lesson.day, since,
                                     age->second == records::Age::minor,
                                     age->second == records::Age::unknown});
                }
            }
        }
    }
    std::stable_sort(found.begin(), found.end(), [](const Overdue& a, const Overdue& b) {
        return a.minor != b.minor ? a.minor : a.since < b.since;
    });
    return found;
}

} // namespace plumbmark::session
