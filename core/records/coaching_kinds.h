// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "records/fact.h"

/// Bodies of the facts that reasoning leaves behind: body card, explanation, the coach's word, try it.
namespace plumbmark::records {

/// What the student says of the body. Regions as in coaching::BodyCard. Hangs on the player, so it never
/// travels with a lesson file.
struct BodyCard {
    std::string day; ///< ISO 8601, when it was asked
    std::optional<int> birthYear;
    std::vector<std::string> painBefore, limitedJoints, replacedJoints, surgery;
    std::optional<bool> pregnant, boneOrHeart; ///< a bone or heart condition
    std::optional<bool> cleared;               ///< by a clinician, for full swings
    std::string clearedDay;
    std::optional<int> mostBalls; ///< a day
    std::optional<bool> guardianConsent;
    std::string note;
    std::string warmUpDay = {}; ///< ISO 8601, the last day a warm-up of ten minutes was done
};

struct ExplanationFact {
    std::string verdict;            ///< "found", "nothing found", "cannot tell"
    std::vector<std::string> chain; ///< nodes, the proposal first; empty where nothing was proposed
    struct Rival {
        std::string node;
        double probability = 0.0, share = 0.0;
    };
    std::vector<Rival> rivals;      ///< the proposal among them
    std::vector<std::string> clips; ///< ids of what it was read from
    int playbook = 0;               ///< version
};

struct CoachWord {
    std::string word;               ///< "accept", "reorder", "overrule"
    std::string proposal;           ///< id of the explanation fact it answers; empty: none was made
    std::vector<std::string> nodes; ///< in the coach's order
    std::string note;
};

struct Trial {
    std::string node;
    std::string result; ///< "strengthened", "dropped", "undecided"
    bool guardHeld = true;
    std::vector<std::string> before, tried, after; ///< clip ids
    std::vector<std::string> moved;                ///< measurements that moved beyond doubt
};

[[nodiscard]] Object bodyOf(const BodyCard& value);
[[nodiscard]] Object bodyOf(const ExplanationFact& value);
[[nodiscard]] Object bodyOf(const CoachWord& value);
[[nodiscard]] Object bodyOf(const Trial& value);
[[nodiscard]] BodyCard bodyCardOf(const Object& body);
[[nodiscard]] ExplanationFact explanationOf(const Object& body);
[[nodiscard]] std::optional<CoachWord> coachWordOf(const Object& body); ///< nothing for a word not known
[[nodiscard]] std::optional<Trial> trialOf(const Object& body);         ///< nothing without a node

} // namespace plumbmark::records
