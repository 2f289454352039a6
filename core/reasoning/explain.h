// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/measured.h"
#include "coaching/checkpoint.h"
#include "coaching/playbook.h"
#include "comparison/swing_set.h"
#include "marks/moment.h"

/// Which departure comes first and explains others. Pure: numbers and playbook in, words and shares out.
namespace plumbmark::reasoning {

/// What the coach told of the ball, in the words of the shot record; nothing: not told.
struct BallSeen {
    std::optional<std::string> start{}, curve{}, height{}, contact{}, place{};
};

/// Is a node there?
///
/// P(one evidence) from a checkpoint = its share of "work on it" on the asked side plus half its share of
/// "watch" there: a slight departure is half a departure. From the ball: 0.95 when the coach told that word,
/// 0.05 when another one. P(node) = the greatest of its evidences (the least where all are needed); evidence
/// that was not measured is left out, all needed and one not measured: unknown.
enum class Presence {
    there,     ///< P >= 0.6
    not_there, ///< P <= 0.3
    unclear,   ///< between
    unknown,   ///< nothing measured
};
[[nodiscard]] std::string_view
presenceName(Presence presence); ///< "there", "not there", "unclear", "cannot tell"
inline constexpr double kThere = 0.6, kNotThere = 0.3;

struct NodeState {
    std::string id, label;
    coaching::Stage stage = coaching::Stage::set_up;
    bool fault = true;
    Presence presence = Presence::unknown;
    std::optional<double> probability;
    // The evidence that decided, for showing: absent for the ball and where nothing was measured.
    std::string checkpoint, measurement;
    std::optional<marks::MomentId> moment;
    std::optional<base::Measured> value;
    std::string ball;       ///< "contact: thin"
    bool measurable = true; ///< false: the program has no measurement for it yet
};

/// One step of a chain: the node and the tendency that leads to it (nothing for the first).
struct Link {
    std::string node;
    std::optional<coaching::Grade> grade;
    std::string source;
};

struct Cause {
    std::string node;
    double weight = 0.0;
    double share = 0.0;      ///< of all causes proposed and rival; they sum to 1
    std::vector<Link> chain; ///< begins with the node itself; only nodes that are there
};

enum class Verdict {
    found,
    nothing_found, ///< most of what these views can show was told, and nothing is there or unclear
    cannot_tell,   ///< too little was told, or some departures are unclear: then they are the rivals
};
[[nodiscard]] std::string_view verdictName(Verdict verdict); ///< "found", "nothing found", "cannot tell"

struct Explanation {
    Verdict verdict = Verdict::cannot_tell;
    std::optional<Cause> first;       ///< the earliest well-supported node
    std::vector<Cause> rivals;        ///< other causes that are there, heaviest first
    std::vector<std::string> perhaps; ///< faults whose presence is unclear
    /// Faults that tend to cause what is seen and could not be told: the answer may lie there.
    std::vector<std::string> open;
    std::vector<NodeState> nodes; ///< all, in the playbook's order
    [[nodiscard]] const NodeState* node(std::string_view id) const;
};

/// Weights of nodes for one player, from earlier tests; 1 where nothing was tried.
using PlayerWeights = std::map<std::string, double, std::less<>>;

/// S(a -> b): several schools 0.7, one school 0.5, disputed 0.25; along a path the product, between two nodes
/// the best path that passes no node known not to be there. A convention, common practice, no source.
[[nodiscard]] double strengthOf(coaching::Grade grade);

/// For each fault c that is there or unclear (the ball's flight excepted):
///   explains(c) = 1 - product over every other node e that is there or unclear of (1 - S(c -> e) P(e))
///   weight(c)   = P(c) (0.2 + 0.8 explains(c)) w(c),    share(c) = weight(c) / sum of weights
/// w is the player's own weight. The first cause is the earliest (by stage, then by weight) whose weight is
/// at least half the greatest. Earliest is a good first guess, not proof: rivals are always there to be seen.
[[nodiscard]] Explanation explain(const coaching::Playbook& playbook,
                                  const std::vector<coaching::CheckpointResult>& checkpoints,
                                  const BallSeen& ball, const PlayerWeights& weights = {});

/// The student's own explanation, held against what was found.
struct BeliefAnswer {
    enum class Answer { yes, not_this, cannot_tell } answer = Answer::cannot_tell;
    std::string node;     ///< what it was understood as; empty: nothing the playbook knows
    std::string sentence; ///< for the student
};
[[nodiscard]] std::string_view answerName(BeliefAnswer::Answer answer); ///< "yes", "not this", "cannot tell"
/// Finds nodes by the words students use for them (case does not matter; the longest word that fits decides).
[[nodiscard]] BeliefAnswer answerBelief(const coaching::Playbook& playbook, const Explanation& explanation,
                                        std::string_view belief);

/// Several swings of one kind as one set of numbers: the mean, with
/// sigma^2 = spread^2 / n + (measurement sigma)^2. One swing stays as it is.
[[nodiscard]] std::vector<measure::Measurement> together(const std::vector<comparison::SwingNumbers>& swings);

} // namespace plumbmark::reasoning
