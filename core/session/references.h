// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/ids.h"
#include "base/result.h"
#include "session/stored_swings.h"
#include "store/library.h"

namespace plumbmark::session {

/// A stored swing that another one can be laid beside, and why it stands where it does in the list.
struct Reference {
    enum class Why {
        own_best,    ///< the player's own with the greatest share of good checks
        same_lesson, ///< the player's own, hit in the same lesson
        other_day,   ///< the player's own, from another lesson
        other_club,  ///< the player's own, same kind of shot with another club
        other_player ///< somebody else's, same kind of shot and club
    };
    Why why = Why::other_day;
    base::Id clip{base::Id::Bytes{}}, lesson{base::Id::Bytes{}};
    std::string playerName, day;
    int number = 0; ///< of the shot in its lesson, from 1
    SwingKind kind;
    int good = 0, told = 0; ///< checks with the state "good", and with any state but "cannot tell"
};

/// What a swing can be compared with: swings of its view and kind of shot whose film is on this device, the
/// player's own best first, then the player's others (same club before other clubs, newest first), then those
/// of other players with the same club. The best: greatest share of good among the told checks, where at
/// least half as many are told as in the fullest one; the newer of two alike (common practice, no source).
/// Never the swing itself, nor another clip of its film. Errors (input): "book.no_such_thing"; those of
/// store::Library.
base::Result<std::vector<Reference>> referencesFor(store::Library& library, const base::Id& clip);

} // namespace plumbmark::session
