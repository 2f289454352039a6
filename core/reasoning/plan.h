// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "coaching/body_card.h"
#include "coaching/checkpoint.h"
#include "coaching/playbook.h"
#include "comparison/swing_set.h"
#include "reasoning/explain.h"

namespace plumbmark::reasoning {

/// One priority as it stands on the student's sheet.
struct Priority {
    std::string node, label, feel, drill, how, dose;
    std::string trains;            ///< "position", "range", "speed"
    std::string checkpoint, guard; ///< ids; guard may be empty
    std::string amount;   ///< the deciding checkpoint's advice in hand units; empty: not measured now
    std::string conflict; ///< what it may cost; empty: nothing known
    int rehearsalSets = 0, ballSets = 0; ///< of about ten each
};

struct PlanDraft {
    std::vector<Priority> priorities; ///< at most two
    std::vector<std::string> notes;   ///< why a dose is smaller, why there is none, what collides
    int lookAgainDays = 7;
};

/// Drafts a plan for the departures in `order` (the coach's word, or the first cause and the heaviest rival
/// outside its chain); those without a remedy are passed over with a note.
///
/// Dose: sets of about ten, slow rehearsals before balls. The body card takes away: a condition that asks for
/// a clearance and has none: no plan at all; pain of 4 or more of 10 now: no balls; a drill that works a
/// region with pain or a caution: half the sets (at least one) and no balls with pain there; a clinician's
/// limit on balls caps the sets; too much volume this week: at most one set of balls. The numbers are common
/// practice, no source.
[[nodiscard]] PlanDraft draftPlan(const coaching::Playbook& playbook, const std::vector<std::string>& order,
                                  const std::vector<coaching::CheckpointResult>& checkpoints,
                                  const std::vector<coaching::Caution>& cautions,
                                  const coaching::BodyCard& card);

/// "2 sets of 10 slow rehearsals without a ball, then 1 set of 10 balls at half speed, a minute's rest ...".
[[nodiscard]] std::string doseText(const coaching::Drill& drill, int rehearsalSets, int ballSets);

/// What the program itself would work on: the first cause, then the heaviest rival that is there and not in
/// its chain. Empty where nothing was found.
[[nodiscard]] std::vector<std::string> proposedOrder(const Explanation& explanation);

/// Before / try / after: does changing `node` move what it is said to cause?
struct TrialResult {
    enum class Result { strengthened, dropped, undecided } result = Result::undecided;
    bool guardHeld = true;          ///< nothing says that the guard got worse beyond doubt
    std::vector<std::string> moved; ///< ids of measurements that moved beyond doubt, before to try
    std::string sentence;
};
[[nodiscard]] std::string_view resultName(TrialResult::Result result); ///< "strengthened", ...
/// strengthened: the node's own measurement moved beyond doubt to the good side and so did at least one of
/// the departures it tends to cause; dropped: it moved and none of those that were there did; undecided: it
/// did not move, there was nothing to move, or a set has fewer than three swings.
[[nodiscard]] TrialResult judgeTrial(const coaching::Playbook& playbook, std::string_view node,
                                     const marks::ShotContext& context,
                                     const std::vector<comparison::SwingNumbers>& before,
                                     const std::vector<comparison::SwingNumbers>& tried,
                                     const coaching::BodyCard& card = {});
/// The weight that a player's trials give a node: 1.5 for each strengthened, 0.5 for each dropped, within
/// 0.25 .. 2.25 (common practice, no source).
[[nodiscard]] double weightAfter(double before, TrialResult::Result result);

} // namespace plumbmark::reasoning
