// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace plumbmark::coaching {

/// What the student's body card says, as far as it changes judging and cautions. Everything may be unknown.
/// Regions: "lead_hip", "trail_hip", "lower_back", "lead_knee", "trail_knee", "lead_wrist", "trail_wrist",
/// "lead_elbow", "trail_elbow", "lead_shoulder", "trail_shoulder", "neck", "trail_ankle", "lead_ankle".
struct BodyCard {
    std::optional<int> ageYears;            ///< under 18: a child, no adult ranges
    std::vector<std::string> limitedJoints; ///< stiff, replaced or fused regions
    std::vector<std::string> painNow;       ///< regions
    std::vector<std::string> painBefore;    ///< earlier trouble, regions
    std::optional<double> statureMetres;    ///< turns statures into centimetres in the advice
    std::optional<int> ballsThisWeek;       ///< full swings logged in the last seven days
    std::optional<int> roundsThisWeek;
    std::optional<int> mostBalls; ///< a day, as a clinician limited it
    int worstPain = 0;            ///< 0-10 numeric scale, now
    bool askFirst = false; ///< replacement, surgery, pregnancy, bone or heart condition without a clearance
    [[nodiscard]] bool child() const { return ageYears && *ageYears < 18; }
};

} // namespace plumbmark::coaching
