// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/retention.h"

#include <algorithm>
#include <map>

#include "records/consent.h"
#include "records/merge.h"

namespace plumbmark::session {

base::Result<std::vector<Overdue>> Retention::overdue() {
    constexpr base::UnixMs kDay = 24LL * 3600 * 1000;
    const std::string today = base::isoDate(clock_->now());
    const auto lessons = library_->lessons();
    if (!lessons) {
        return lessons.error();
    }
    std::map<base::Id, bool> minors;
    std::vector<Overdue> found;
    for (const store::LessonRow& lesson : *lessons) {
        const auto taught = base::fromIso(lesson.day);
        if (!taught) {
            continue;
        }
        auto minor = minors.find(lesson.player);
        if (minor == minors.end()) {
            const auto consents = library_->factsOf(lesson.player, records::kind::consent);
            if (!consents) {
                return consents.error();
            }
            const auto standing = records::heads(*consents);
            const bool any = std::any_of(standing.begin(), standing.end(), [](const records::Fact& fact) {
                return records::consentOf(fact.body).minor;
            });
            minor = minors.emplace(lesson.player, any).first;
        }
        const int days = minor->second ? kKeepMinorsFilmsDays : kKeepFilmsDays;
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
                    found.push_back(
                        {clip.id, lesson.playerName, lesson.title, lesson.day, since, minor->second});
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
