// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/clock.h"
#include "base/ids.h"
#include "base/result.h"
#include "coaching/body_card.h"
#include "records/coaching_kinds.h"
#include "records/kinds.h"
#include "store/library.h"

namespace plumbmark::session {

/// A player's body card, pain log and practice log. All of it hangs on the player and never travels with a
/// lesson file.
class BodyBook {
  public:
    explicit BodyBook(store::Library& library, const base::Clock& clock = base::systemClock())
        : library_(&library), clock_(&clock) {}

    /// Empty where none was filled in.
    base::Result<records::BodyCard> card(const base::Id& player);
    base::Result<void> keep(const base::Id& player, const records::BodyCard& card);

    /// Errors (input): "record.bad_value" for a region that is not known, a level outside 0..10, a bad day.
    base::Result<void> log(const base::Id& player, const records::Pain& pain);
    base::Result<void> log(const base::Id& player, const records::Practice& practice);
    base::Result<std::vector<records::Pain>> pains(const base::Id& player);         ///< oldest first
    base::Result<std::vector<records::Practice>> practices(const base::Id& player); ///< oldest first

    struct Load {
        std::string day; ///< first day of what is counted
        int rehearsals = 0, balls = 0, rounds = 0;
    };
    /// Counts of each day with something logged, oldest first.
    base::Result<std::vector<Load>> days(const base::Id& player);
    /// The last seven days, today included.
    base::Result<Load> week(const base::Id& player);

    /// Everything together, as judging, cautions and plan ask for it. Pain counts as "now" when its newest
    /// entry of the region is at most two days old and above 0, as "before" when it is older. A condition
    /// (replaced joint, surgery, pregnancy, bone or heart) without a clearance asks first.
    base::Result<coaching::BodyCard> forCoaching(const base::Id& player);

    [[nodiscard]] static const std::vector<std::string>& regions();

  private:
    store::Library* library_;
    const base::Clock* clock_;
};

} // namespace plumbmark::session
