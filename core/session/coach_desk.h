// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "base/clock.h"
#include "base/ids.h"
#include "base/result.h"
#include "coaching/playbook.h"
#include "comparison/swing_set.h"
#include "reasoning/explain.h"
#include "reasoning/plan.h"
#include "records/coaching_kinds.h"
#include "session/body_book.h"
#include "session/stored_swings.h"
#include "store/library.h"

namespace plumbmark::session {

/// What a lesson's swings say together.
struct Reasoned {
    base::Id lesson{base::Id::Bytes{}}, player{base::Id::Bytes{}};
    SwingKind kind; ///< of the swings taken (its view is that of most of them)
    std::vector<StoredSwing> swings;
    std::vector<coaching::CheckpointResult> checkpoints; ///< of all views filmed
    reasoning::Explanation explanation;
    std::string wish, belief;
    std::optional<reasoning::BeliefAnswer> answer;
    std::vector<coaching::Caution> cautions;
    coaching::BodyCard card;
    std::optional<records::CoachWord> word; ///< what counts where it is there
    std::vector<std::string> order;         ///< the coach's order, else the proposal's
    reasoning::PlanDraft plan;              ///< drafted for `order`
};

/// Where in the lesson's films a departure is to be seen.
struct Sight {
    base::Id clip{base::Id::Bytes{}};
    int number = 0; ///< of its shot in the lesson, from 1
    std::filesystem::path film;
    std::optional<marks::MomentId> moment; ///< nothing: a number of the whole swing
    base::Seconds time; ///< presentation time of the moment; of the first frame without one
};

/// What the next lesson opens with.
struct FollowUp {
    std::optional<records::Plan> plan; ///< nothing: no plan was made before
    std::string planDay;
    int rehearsals = 0, balls = 0, rounds = 0; ///< since that day
    std::optional<SwingKind> kind;             ///< swings compared: nothing when there are none of one kind
    std::vector<comparison::SetRow> changed, notChanged; ///< that lesson against this one
    std::vector<records::Pain> pains;                    ///< since that day
};

/// Causes, the coach's word, try it and plan of a lesson. Every call blocks for some milliseconds.
class CoachDesk {
  public:
    /// The playbook is borrowed.
    CoachDesk(store::Library& library, const coaching::Playbook& playbook,
              const base::Clock& clock = base::systemClock())
        : library_(&library), playbook_(&playbook), clock_(&clock), body_(library, clock) {}

    /// Takes the measured swings of the lesson's most frequent kind of shot and club, each view's swings
    /// together. Errors (input): "book.no_such_thing", "explain.no_swings".
    base::Result<Reasoned> reason(const base::Id& lesson);

    /// Keeps the program's proposal as a fact; the id is what a coach's word answers.
    base::Result<base::Id> keepProposal(const Reasoned& reasoned);
    /// Keeps the proposal and the coach's word beside it. `nodes` in the coach's order; accept: the
    /// proposal's. Errors (input): "playbook.no_such_node".
    base::Result<void> say(const Reasoned& reasoned, const std::string& word,
                           const std::vector<std::string>& nodes, const std::string& note = {});

    /// Three sets of shots of this lesson (numbers from 1): judged, kept, and weighing on this player from
    /// now on. Error (input): "explain.no_swings" for a set without measured swings.
    base::Result<reasoning::TrialResult> tryIt(const base::Id& lesson, const std::string& node,
                                               const std::vector<int>& before, const std::vector<int>& tried,
                                               const std::vector<int>& after);
    base::Result<reasoning::PlayerWeights> weights(const base::Id& player);

    /// The newest swing of the lesson that shows the node's deciding number and whose film is here; nothing
    /// for what only the ball told, or what nothing measured.
    base::Result<std::optional<Sight>> sight(const Reasoned& reasoned, const reasoning::NodeState& node);

    /// The coach's own dose for one priority, in sets of about ten: 0 to 10 each, one at least together.
    /// Errors (input): "plan.dose" outside that; "plan.protected" for more than the draft where body card,
    /// pain or a caution made the draft smaller.
    base::Result<void> setDose(Reasoned& reasoned, std::size_t priority, int rehearsalSets, int ballSets);

    /// Gives the draft the doses of a plan that was kept before, where it is for the same departures.
    void takeDoses(Reasoned& reasoned, const records::Plan& kept);

    /// Keeps the draft as the lesson's plan.
    base::Result<void> keepPlan(const Reasoned& reasoned);
    base::Result<std::optional<records::Plan>> plan(const base::Id& lesson);

    /// The newest earlier lesson of the player that has a plan, against this one.
    base::Result<FollowUp> followUp(const base::Id& lesson);
    /// What was practised and what hurt since `story.planDay`, into `story`.
    base::Result<void> addSince(const base::Id& player, FollowUp& story);

    [[nodiscard]] BodyBook& body() { return body_; }

  private:
    store::Library* library_;
    const coaching::Playbook* playbook_;
    const base::Clock* clock_;
    BodyBook body_;
};

} // namespace plumbmark::session
