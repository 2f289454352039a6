// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "marks/player.h"
#include "measure/measurement.h"

namespace plumbmark::coaching {

/// Ordered: good < watch < work on it; unknown = "cannot tell".
enum class State { good, watch, work, unknown };
[[nodiscard]] std::string_view stateName(State state);    ///< "good", "watch", "work", "unknown"
[[nodiscard]] State stateFromName(std::string_view name); ///< unknown for every other word

/// Shares of "watch" and "work on it" on one side of the good range.
struct SideShares {
    double watch = 0.0, work = 0.0;
};

struct CheckpointResult {
    std::string id;
    std::string label; ///< words of the trade, for screens
    std::optional<marks::MomentId> moment;
    std::string measurement; ///< id of the measurement that decides
    State state = State::unknown;
    double good = 0.0, watch = 0.0, work = 0.0; ///< shares, sum 1 unless nothing was measured
    SideShares low, high; ///< the same shares by side: causes ask on which one the value lies
    bool judged = false;  ///< false: nothing measured, or no range for this player
    std::optional<base::Measured> value;
    std::optional<double> goodLow, goodHigh; ///< the range used, in the measurement's unit
    std::string rangeSource;                 ///< "common practice", ... from the playbook
    std::string help; ///< good/watch/work: advice in hand units; unknown: what would help
};

struct Caution {
    std::string id;    ///< "lead_hip", "lower_back", ...
    std::string grade; ///< "several studies", "weak", "coach's experience"
    std::string seen;  ///< what was seen, with its number and sigma
    std::string ease;  ///< what eases it now
    std::string words; ///< the usual words: never a diagnosis, see a licensed professional
};

} // namespace plumbmark::coaching
