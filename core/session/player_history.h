// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/clock.h"
#include "base/ids.h"
#include "base/progress.h"
#include "base/result.h"
#include "coaching/body_card.h"
#include "coaching/playbook.h"
#include "comparison/swing_set.h"
#include "session/coach_desk.h"
#include "session/stored_swings.h"
#include "store/library.h"

namespace plumbmark::session {

/// A swing of a player with the lesson it was made in.
struct FiledSwing {
    base::Id lesson{base::Id::Bytes{}};
    std::string day; ///< ISO 8601, of the lesson
    StoredSwing swing;
};

/// One number that can be followed, and in how many lessons it was told.
struct TrendChoice {
    std::string measurement;
    std::optional<marks::MomentId> moment;
    int lessons = 0;
    bool judged = false; ///< a checkpoint decides by it
};

/// One lesson's swings of one kind.
struct TrendPoint {
    base::Id lesson{base::Id::Bytes{}};
    std::string day;
    comparison::Spread spread; ///< median, range, swing-to-swing spread
    /// Of the lesson's mean: swing-to-swing spread and the measurement's own error together, as
    /// comparison::changeBetween takes them: sqrt(s^2 / n + m^2). One swing shows no spread: then only m.
    double sigma = 0.0;
};
struct Trend {
    TrendChoice what;
    base::Unit unit = base::Unit::ratio;
    std::vector<TrendPoint> points; ///< oldest first
    /// The range that the newest of these swings is judged by; nothing where no checkpoint decides by this
    /// number or the body card takes adult ranges away.
    std::optional<double> goodLow, goodHigh;
    std::string rangeSource;
    /// First lesson against newest; nothing with fewer than comparison::kFewestSwings swings in either.
    std::optional<comparison::Change> change;
    int leftOut = 0; ///< values of other versions of the method than the newest: not comparable
};

/// All measured swings of a player over all lessons: to be filed, and to be followed over time.
class PlayerHistory {
  public:
    /// Reads a player's lessons; some tenths of a millisecond a swing, so run it on a worker. Nothing when
    /// cancelled. Errors: those of the library.
    static base::Result<std::optional<PlayerHistory>> read(store::Library& library, const base::Id& player,
                                                           const base::Progress& progress = {},
                                                           const base::Clock& clock = base::systemClock());

    [[nodiscard]] const std::vector<FiledSwing>& swings() const { return swings_; } ///< newest day first
    /// Kinds of swing, the most frequent first.
    [[nodiscard]] std::vector<SwingKind> kinds() const;
    /// Numbers that at least one swing of the kind tells: those that a checkpoint decides by first.
    [[nodiscard]] std::vector<TrendChoice> choices(const coaching::Playbook& playbook,
                                                   const SwingKind& kind) const;
    [[nodiscard]] Trend trend(const coaching::Playbook& playbook, const SwingKind& kind,
                              const TrendChoice& what) const;

  private:
    std::vector<FiledSwing> swings_;
    coaching::BodyCard card_;
};

/// What the next lesson opens with. While no lesson of `today` (ISO 8601) is there: the newest lesson's plan
/// and what was practised since; where that lesson made none, and once today's lesson is there, as
/// CoachDesk::followUp tells it. Empty for a player without lessons.
base::Result<FollowUp> nextLessonOpener(store::Library& library, CoachDesk& desk, const base::Id& player,
                                        const std::string& today);

} // namespace plumbmark::session
