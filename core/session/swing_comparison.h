// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "analysis/analysis.h"
#include "base/quantity.h"
#include "base/result.h"
#include "comparison/difference.h"
#include "comparison/match.h"
#include "comparison/overlay.h"

namespace plumbmark::session {

/// A swing as comparing sees it; borrows from the outcome.
[[nodiscard]] comparison::Side sideOf(const analysis::Outcome& outcome);

/// A key moment of the first swing and where the second swing is in the same position.
struct MatchedMoment {
    marks::MomentId id = marks::MomentId::address;
    base::Seconds first;                  ///< presentation seconds of the first clip
    std::optional<base::Seconds> matched; ///< in the second clip; nothing outside what both show
    std::optional<base::Seconds> own;     ///< the second swing's own moment of that name
};

/// Two swings side by side at the same positions. Pure: no library, no pixels.
///
/// Numbers of a moment are read in the second swing where it is in the first swing's position (by the chosen
/// feature), not at the second swing's own moment of that name; numbers of the whole swing are each swing's
/// own. A left-hander and a right-hander, mirrored or not, share lead and trail and so compare directly.
class SwingComparison {
  public:
    /// Errors: those of comparison::matchSwings.
    static base::Result<SwingComparison> make(const analysis::Outcome& first, const analysis::Outcome& second,
                                              comparison::Feature matchedBy);

    [[nodiscard]] const comparison::Match& match() const { return match_; }
    [[nodiscard]] comparison::Feature matchedBy() const { return match_.feature(); }
    [[nodiscard]] const std::vector<MatchedMoment>& moments() const { return moments_; }
    /// In the order of a swing's moments, whole-swing numbers last. Never a quantity that matching used.
    [[nodiscard]] const std::vector<comparison::Difference>& rows() const { return rows_; }
    /// Cameras and clubs that cannot be compared, each with the numbers that suffer.
    [[nodiscard]] const std::vector<std::string>& warnings() const { return warnings_; }

    /// "Find this position in the other swing", sub-frame; nothing outside what both swings show.
    [[nodiscard]] std::optional<base::Seconds> inSecond(base::Seconds first) const {
        return match_.inSecond(first);
    }
    [[nodiscard]] std::optional<base::Seconds> inFirst(base::Seconds second) const {
        return match_.inFirst(second);
    }

  private:
    explicit SwingComparison(comparison::Match match) : match_(std::move(match)) {}
    comparison::Match match_;
    std::vector<MatchedMoment> moments_;
    std::vector<comparison::Difference> rows_;
    std::vector<std::string> warnings_;
};

} // namespace plumbmark::session
