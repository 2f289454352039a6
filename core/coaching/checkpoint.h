// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "marks/player.h"
#include "measure/measurement.h"

namespace plumbmark::coaching {

class Playbook;

/// Ordered: good < watch < work on it; unknown = "cannot tell".
enum class State { good, watch, work, unknown };
[[nodiscard]] std::string_view stateName(State state); ///< "good", "watch", "work", "unknown"

struct CheckpointResult {
    std::string id;
    std::string label; ///< words of the trade, for screens
    std::optional<marks::MomentId> moment;
    std::string measurement; ///< id of the measurement that decides
    State state = State::unknown;
    double good = 0.0, watch = 0.0, work = 0.0; ///< shares, sum 1 unless nothing was measured
    std::optional<base::Measured> value;
    std::optional<double> goodLow, goodHigh; ///< the range used, in the measurement's unit
    std::string rangeSource;                 ///< "common practice", ... from the playbook
    std::string help; ///< good/watch/work: advice in hand units; unknown: what would help
};

/// What the student's body card says, as far as it changes judging and cautions. Everything may be unknown.
struct BodyCard {
    std::optional<int> ageYears; ///< under 18: a child, no adult ranges
    std::vector<std::string>
        limitedJoints; ///< stiff, replaced or fused: "lead_hip", "lower_back", "trail_knee", ...
    std::vector<std::string> painNow;    ///< regions, same names
    std::vector<std::string> painBefore; ///< earlier trouble, same names
    std::optional<double> statureMetres; ///< turns statures into centimetres in the advice
    [[nodiscard]] bool child() const { return ageYears && *ageYears < 18; }
};

/// Every checkpoint of the playbook that fits view, club and kind of shot, in the playbook's order.
///
/// The value is taken as normally distributed (value, sigma). Its shares of the good range, of the band
/// between good and work, and of the rest give the state: the most probable one, and "cannot tell" only when
/// good and work each hold more than 15 %, when nothing was measured, or when the body card forbids adult
/// ranges. A range narrower than two sigma of its measurement is widened to that and the help says so.
[[nodiscard]] std::vector<CheckpointResult> judge(const Playbook& playbook,
                                                  const std::vector<measure::Measurement>& measurements,
                                                  const marks::ShotContext& context, const BodyCard& card);

struct Caution {
    std::string id;    ///< "lead_hip", "lower_back", ...
    std::string grade; ///< "several studies", "weak", "coach's experience"
    std::string seen;  ///< what was seen, with its number and sigma
    std::string ease;  ///< what eases it now
    std::string words; ///< the usual words: never a diagnosis, see a licensed professional
};

/// Body cautions over the swings of one session, newest last; a single swing is a set of one and is worded as
/// "seen in one swing". Signs that need "3 of 5" say how many of the last five swings showed them. Logged
/// pain alone raises its region's caution. No caution is not a clean bill (see cautionsFooter).
[[nodiscard]] std::vector<Caution> cautions(std::span<const std::vector<measure::Measurement>> swings,
                                            const BodyCard& card);
/// The sentence that belongs under every list of cautions, empty lists too.
[[nodiscard]] std::string_view cautionsFooter();

} // namespace plumbmark::coaching
