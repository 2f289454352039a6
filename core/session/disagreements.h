// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/clock.h"
#include "base/ids.h"
#include "base/result.h"
#include "store/library.h"

namespace plumbmark::session {

/// Something that two devices put differently without having seen each other: a field of a player, lesson,
/// shot or clip, a mark, key moment or drawing in a clip, or what a player agreed to. All versions are kept;
/// the newest is shown (of consents the strictest counts) until a person settles it.
struct Disagreement {
    enum class Subject { player, lesson, shot, clip };
    Subject subject = Subject::player;
    base::Id about{base::Id::Bytes{}};   ///< the player, lesson, shot or clip
    std::string playerName, lessonTitle; ///< where to find it; the title is empty for a player
    std::string kind;                    ///< "set", "mark", "moment", "drawing", "consent"
    std::string what; ///< field, "74/lead_hip", "top", a drawing's name; empty for a consent
    struct Version {
        base::Id fact{base::Id::Bytes{}};
        std::string text; ///< what it says, short and plain; numbers with a point
        base::UnixMs made = 0;
        bool here = false; ///< this device said so
    };
    std::vector<Version> versions; ///< newest first, two or more
};

/// Lists them and settles them.
class Disagreements {
  public:
    explicit Disagreements(store::Library& library) : library_(&library) {}

    /// Only things that the library's lists mark as "needs you" are looked into. Errors of store::Library.
    base::Result<std::vector<Disagreement>> all();
    /// The version that holds from now on: one new fact that names all versions it settles; they stay in the
    /// history, and every device that hears of it is settled too. Errors (input): "settle.none" (no such
    /// version, or settled already).
    base::Result<void> settle(const base::Id& version);

  private:
    store::Library* library_;
};

} // namespace plumbmark::session
