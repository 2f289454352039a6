// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <deque>
#include <optional>
#include <vector>

#include "analysis/analysis.h"
#include "body/observation.h"
#include "marks/player.h"

namespace plumbmark::session {

/// A position at the top that was held without hitting a ball.
struct Hold {
    base::Seconds from, to;    ///< camera time
    analysis::Outcome outcome; ///< numbers at the held position, as its moment "top"
};

/// Notices held positions in the looks of a running camera: the hands are above the middle of the trunk, on
/// the trail side of the chest's middle (a finish is on the lead side), and keep still for a second and more
/// after an address was seen (who walks by carrying a club has none).
/// Told when the hold ends. Pure; memory is bounded by the last 20 s of looks.
class HoldWatch {
  public:
    explicit HoldWatch(marks::ShotContext context, std::optional<double> rollDegrees = std::nullopt)
        : context_(context), roll_(rollDegrees) {}
    std::optional<Hold> push(const body::Observation& seen, int width, int height);
    static constexpr double kLeastSeconds = 1.0;

  private:
    [[nodiscard]] std::optional<std::size_t> addressBefore(std::size_t held) const;
    [[nodiscard]] Hold conclude(std::size_t held, std::size_t address, int width, int height) const;

    std::deque<body::Observation> looks_;
    std::optional<std::size_t> since_; ///< index of the first held look
    base::Vec2 hands_, heldAt_;        ///< without jitter: at the last look, and where the hold began
    marks::ShotContext context_;
    std::optional<double> roll_;
};

/// Which holds were rehearsals: one with a hit just before or after it belongs to that swing. A hold is kept
/// back until no such hit can come any more and every one that came has been judged.
class HoldSorter {
  public:
    void held(Hold hold) { holds_.push_back(std::move(hold)); }
    void hit(base::Seconds time); ///< a take was cut out; it may prove to be no swing
    void judged(base::Seconds hit, bool isSwing);
    /// The rehearsals that are sure at `now` (camera time; nothing: no more hits will come), oldest first.
    std::vector<Hold> rehearsals(std::optional<base::Seconds> now);

    static constexpr double kHitBefore = 1.5; ///< seconds before the hold in which a hit makes it a swing's
    static constexpr double kHitAfter = 0.8;  ///< and after it: a pause at the top, then the way down
    static constexpr double kToldAfter = 1.6; ///< so long after a hit its take is cut out

  private:
    struct Hit {
        base::Seconds time;
        std::optional<bool> isSwing; ///< nothing: not judged yet
    };
    std::vector<Hold> holds_;
    std::vector<Hit> hits_; ///< the last few
};

} // namespace plumbmark::session
