// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <deque>
#include <optional>
#include <span>

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
/// the trail side of the chest's middle (a finish is on the lead side), and keep still for a second and more.
/// Told when the hold ends. Pure; memory is bounded by the last 20 s of looks.
class HoldWatch {
  public:
    explicit HoldWatch(marks::ShotContext context, std::optional<double> rollDegrees = std::nullopt)
        : context_(context), roll_(rollDegrees) {}
    /// `swings`: hits known so far; what is held just before and after one belongs to it.
    std::optional<Hold> push(const body::Observation& seen, int width, int height,
                             std::span<const base::Seconds> swings = {});
    static constexpr double kLeastSeconds = 1.0;

  private:
    std::deque<body::Observation> looks_;
    std::optional<std::size_t> since_; ///< index of the first held look
    marks::ShotContext context_;
    std::optional<double> roll_;
};

} // namespace plumbmark::session
