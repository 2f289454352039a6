// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/references.h"

#include <algorithm>

#include "session/detail/no_such_thing.h"
#include "session/lesson_book.h"

namespace plumbmark::session {
namespace {

constexpr std::size_t kMostOfOthers = 40;

/// Best first.
bool better(const Reference& a, const Reference& b) {
    const auto left = static_cast<long>(a.good) * b.told, right = static_cast<long>(b.good) * a.told;
    return left != right ? left > right : a.day > b.day;
}

} // namespace

base::Result<std::vector<Reference>> referencesFor(store::Library& library, const base::Id& clip) {
    const auto row = library.clip(clip);
    const auto entity = library.entity(clip);
    if (!row || !entity) {
        return row ? entity.error() : row.error();
    }
    if (!*row || !*entity || (*entity)->path.size() < 3) {
        return detail::noSuchThing();
    }
    const base::Id player = (*entity)->path[0], lesson = (*entity)->path[1];
    LessonBook book(library);
    const auto shot = book.shot((*row)->shot);
    if (!shot) {
        return shot.error();
    }
    const SwingKind kind{(*row)->clip.view, shot->kind, shot->club};
    const auto lessons = library.lessons();
    if (!lessons) {
        return lessons.error();
    }
    std::vector<Reference> own, ownOtherClub, others;
    for (const auto& l : *lessons) {
        const bool mine = l.player == player;
        if (!mine && others.size() >= kMostOfOthers) {
            continue;
        }
        const auto shots = book.shots(l.id);
        if (!shots) {
            return shots.error();
        }
        for (const auto& s : *shots) {
            const bool sameClub = s.shot.club == kind.club;
            if (s.shot.kind != kind.shot || (!mine && !sameClub)) {
                continue;
            }
            const auto clips = book.clips(s.id);
            if (!clips) {
                return clips.error();
            }
            for (const auto& c : *clips) {
                if (c.id == clip || c.clip.view != kind.view || !c.filmHere ||
                    c.clip.sha256 == (*row)->clip.sha256) {
                    continue;
                }
                const auto findings = book.findings(c.id);
                if (!findings) {
                    return findings.error();
                }
                if (!*findings) {
                    continue;
                }
                Reference r;
                r.clip = c.id;
                r.lesson = l.id;
                r.playerName = l.playerName;
                r.day = l.day;
                r.number = s.number;
                r.kind = {c.clip.view, s.shot.kind, s.shot.club};
                for (const auto& check : (*findings)->checkpoints) {
                    r.good += check.state == "good" ? 1 : 0;
                    r.told +=
                        check.state == "good" || check.state == "watch" || check.state == "work" ? 1 : 0;
                }
                r.why = !mine            ? Reference::Why::other_player
                        : !sameClub      ? Reference::Why::other_club
                        : l.id == lesson ? Reference::Why::same_lesson
                                         : Reference::Why::other_day;
                (!mine ? others : sameClub ? own : ownOtherClub).push_back(std::move(r));
            }
        }
    }
    int fullest = 0;
    for (const auto& r : own) {
        fullest = std::max(fullest, r.told);
    }
    auto best = own.end();
    for (auto it = own.begin(); it != own.end(); ++it) {
        if (it->told > 0 && 2 * it->told >= fullest && (best == own.end() || better(*it, *best))) {
            best = it;
        }
    }
    if (best != own.end()) {
        best->why = Reference::Why::own_best;
        std::rotate(own.begin(), best, best + 1);
    }
    own.insert(own.end(), ownOtherClub.begin(), ownOtherClub.end());
    own.insert(own.end(), others.begin(), others.end());
    return own;
}

} // namespace plumbmark::session
