// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/stored_swings.h"

#include <algorithm>

#include "session/demonstration.h"
#include "session/lesson_book.h"

namespace plumbmark::session {

base::Result<std::vector<StoredSwing>> storedSwings(store::Library& library, const base::Id& lesson) {
    std::vector<StoredSwing> out;
    LessonBook book(library);
    const auto shots = book.shots(lesson);
    if (!shots) {
        return shots.error();
    }
    for (const auto& shot : *shots) {
        const auto shown = isDemonstration(library, shot.id);
        if (!shown) {
            return shown.error();
        }
        if (*shown) {
            continue;
        }
        const auto clips = book.clips(shot.id);
        if (!clips) {
            return clips.error();
        }
        for (const auto& clip : *clips) {
            auto findings = book.findings(clip.id);
            if (!findings) {
                return findings.error();
            }
            if (!*findings) {
                continue;
            }
            StoredSwing s{shot.id, clip.id, shot.number, {}, shot.shot, std::move((*findings)->measurements)};
            s.context.view = clip.clip.view;
            s.context.hand = clip.clip.hand;
            s.context.mirrored = clip.clip.mirrored;
            s.context.statureMetres = clip.clip.statureMetres;
            s.context.cameraDistanceMetres = clip.clip.cameraDistanceMetres;
            s.context.shot = shot.shot.kind;
            s.context.club = shot.shot.club;
            out.push_back(std::move(s));
        }
    }
    return out;
}

SwingKind kindOf(const StoredSwing& swing) {
    return {swing.context.view, swing.context.shot, swing.context.club};
}

std::vector<StoredSwing> ofKind(const std::vector<StoredSwing>& swings, const SwingKind& kind) {
    std::vector<StoredSwing> out;
    std::copy_if(swings.begin(), swings.end(), std::back_inserter(out),
                 [&](const auto& s) { return kindOf(s) == kind; });
    return out;
}

std::optional<SwingKind> commonKind(const std::vector<StoredSwing>& first,
                                    const std::vector<StoredSwing>& second) {
    std::optional<SwingKind> best;
    std::size_t most = 0;
    for (const auto& s : first) {
        const SwingKind kind = kindOf(s);
        const std::size_t n = std::min(ofKind(first, kind).size(), ofKind(second, kind).size());
        if (n > most) {
            most = n;
            best = kind;
        }
    }
    return best;
}

std::vector<comparison::SwingNumbers> numbersOf(const std::vector<StoredSwing>& swings) {
    std::vector<comparison::SwingNumbers> out;
    for (const auto& s : swings) {
        out.push_back(s.measurements);
    }
    return out;
}

} // namespace plumbmark::session
