// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "reasoning/explain.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <functional>
#include <set>

namespace plumbmark::reasoning {
namespace {

using coaching::Evidence;
using coaching::Playbook;
using coaching::Stage;

constexpr double kTold = 0.95;  // what a coach told of the ball is taken as right this often
constexpr double kAlone = 0.2;  // weight of a departure that explains nothing else
constexpr double kEnough = 0.5; // of the greatest weight: well supported

const std::optional<std::string>& fieldOf(const BallSeen& ball, std::string_view name) {
    return name == "start"     ? ball.start
           : name == "curve"   ? ball.curve
           : name == "height"  ? ball.height
           : name == "contact" ? ball.contact
                               : ball.place;
}

double shareOn(const coaching::CheckpointResult& c, coaching::Side side) {
    const double low = c.low.work + 0.5 * c.low.watch, high = c.high.work + 0.5 * c.high.watch;
    return side == coaching::Side::low ? low : side == coaching::Side::high ? high : low + high;
}

NodeState stateOf(const coaching::Node& node, const std::vector<coaching::CheckpointResult>& checkpoints,
                  const BallSeen& ball) {
    NodeState s;
    s.id = node.id;
    s.label = node.label;
    s.stage = node.stage;
    s.fault = node.fault;
    s.measurable = !node.evidence.empty();
    bool missing = false;
    for (const Evidence& e : node.evidence) {
        if (e.checkpoint.empty()) {
            const auto& told = fieldOf(ball, e.ball);
            if (!told) {
                missing = true;
                continue;
            }
            const double p = *told == e.is ? kTold : 1.0 - kTold;
            if (!s.probability || (node.all ? p < *s.probability : p > *s.probability)) {
                s.probability = p;
                s.ball = e.ball + ": " + *told;
                s.checkpoint.clear();
                s.measurement.clear();
                s.moment.reset();
                s.value.reset();
            }
            continue;
        }
        const auto it = std::find_if(checkpoints.begin(), checkpoints.end(),
                                     [&](const auto& c) { return c.id == e.checkpoint; });
        if (it == checkpoints.end() || !it->judged) {
            missing = true;
            continue;
        }
        const double p = std::clamp(shareOn(*it, e.side), 0.0, 1.0);
        if (!s.probability || (node.all ? p < *s.probability : p > *s.probability)) {
            s.probability = p;
            s.ball.clear();
            s.checkpoint = it->id;
            s.measurement = it->measurement;
            s.moment = it->moment;
            s.value = it->value;
        }
    }
    if (node.all && missing) {
        s.probability.reset();
    }
    if (!s.probability) {
        s.presence = Presence::unknown;
    } else {
        s.presence = *s.probability >= kThere      ? Presence::there
                     : *s.probability <= kNotThere ? Presence::not_there
                                                   : Presence::unclear;
    }
    return s;
}

/// Best path strengths from one node to all it reaches; a node known not to be there is no way through.
std::map<std::string, double> reachFrom(const Playbook& playbook, const Explanation& e,
                                        const std::string& from) {
    std::map<std::string, double> best;
    const std::function<void(const std::string&, double)> walk = [&](const std::string& at, double strength) {
        for (const auto& t : playbook.tendencies()) {
            if (t.from != at || e.node(t.to)->presence == Presence::not_there) {
                continue;
            }
            const double s = strength * strengthOf(t.grade);
            auto& known = best[t.to];
            if (s > known) {
                known = s;
                walk(t.to, s);
            }
        }
    };
    walk(from, 1.0);
    return best;
}

/// The path of nodes that are there which carries most: the sum over its nodes of S x P.
std::vector<Link> chainFrom(const Playbook& playbook, const Explanation& e, const std::string& from) {
    std::vector<Link> best{{from, std::nullopt, {}}};
    double most = 0.0;
    std::vector<Link> path = best;
    const std::function<void(double, double)> walk = [&](double strength, double carried) {
        if (carried > most) {
            most = carried;
            best = path;
        }
        const std::string at = path.back().node;
        for (const auto& t : playbook.tendencies()) {
            const NodeState& to = *e.node(t.to);
            if (t.from != at || to.presence != Presence::there) {
                continue;
            }
            const double s = strength * strengthOf(t.grade);
            path.push_back({t.to, t.grade, t.source});
            walk(s, carried + s * *to.probability);
            path.pop_back();
        }
    };
    walk(1.0, 0.0);
    return best;
}

std::string lower(std::string_view text) {
    std::string out(text);
    std::transform(out.begin(), out.end(), out.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return out;
}

} // namespace

std::string_view presenceName(Presence p) {
    switch (p) {
    case Presence::there:
        return "there";
    case Presence::not_there:
        return "not there";
    case Presence::unclear:
        return "unclear";
    case Presence::unknown:
        break;
    }
    return "cannot tell";
}

std::string_view verdictName(Verdict v) {
    return v == Verdict::found ? "found" : v == Verdict::nothing_found ? "nothing found" : "cannot tell";
}

std::string_view answerName(BeliefAnswer::Answer a) {
    return a == BeliefAnswer::Answer::yes        ? "yes"
           : a == BeliefAnswer::Answer::not_this ? "not this"
                                                 : "cannot tell";
}

double strengthOf(coaching::Grade grade) {
    return grade == coaching::Grade::several_schools ? 0.7
           : grade == coaching::Grade::one_school    ? 0.5
                                                     : 0.25;
}

const NodeState* Explanation::node(std::string_view id) const {
    const auto it = std::find_if(nodes.begin(), nodes.end(), [&](const auto& n) { return n.id == id; });
    return it == nodes.end() ? nullptr : &*it;
}

Explanation explain(const Playbook& playbook, const std::vector<coaching::CheckpointResult>& checkpoints,
                    const BallSeen& ball, const PlayerWeights& weights) {
    Explanation out;
    for (const auto& node : playbook.nodes()) {
        out.nodes.push_back(stateOf(node, checkpoints, ball));
    }
    std::vector<Cause> causes;
    std::set<std::string> seen;
    for (const NodeState& n : out.nodes) {
        if (n.presence == Presence::there || n.presence == Presence::unclear) {
            seen.insert(n.id);
        }
    }
    double sum = 0.0;
    for (const NodeState& n : out.nodes) {
        if (!n.fault || n.stage == Stage::ball_flight || !seen.contains(n.id)) {
            continue;
        }
        double left = 1.0;
        for (const auto& [to, strength] : reachFrom(playbook, out, n.id)) {
            if (seen.contains(to)) {
                left *= 1.0 - strength * *out.node(to)->probability;
            }
        }
        const auto own = weights.find(n.id);
        Cause c;
        c.node = n.id;
        c.weight = *n.probability * (kAlone + (1.0 - kAlone) * (1.0 - left)) *
                   (own == weights.end() ? 1.0 : own->second);
        c.chain = chainFrom(playbook, out, n.id);
        sum += c.weight;
        causes.push_back(std::move(c));
    }
    std::stable_sort(causes.begin(), causes.end(),
                     [](const auto& a, const auto& b) { return a.weight > b.weight; });
    for (auto& c : causes) {
        c.share = sum > 0 ? c.weight / sum : 0.0;
    }
    // Unclear ones are rivals, never the first cause.
    auto first = causes.end();
    double greatest = 0.0;
    for (auto it = causes.begin(); it != causes.end(); ++it) {
        if (out.node(it->node)->presence != Presence::there) {
            continue;
        }
        greatest = std::max(greatest, it->weight);
        if (it->weight >= kEnough * greatest &&
            (first == causes.end() || out.node(it->node)->stage < out.node(first->node)->stage)) {
            first = it; // heavier ones of the same stage come earlier in the list
        }
    }
    if (first != causes.end()) {
        out.first = *first;
        causes.erase(first);
        out.verdict = Verdict::found;
    }
    out.rivals = std::move(causes);
    int told = 0, all = 0;
    for (const NodeState& n : out.nodes) {
        if (!n.fault || n.stage == Stage::ball_flight) {
            continue;
        }
        const coaching::Node& node = *playbook.node(n.id);
        // What these views could show at all counts: a checkpoint of another view was never asked.
        const bool asked = std::any_of(node.evidence.begin(), node.evidence.end(), [&](const Evidence& e) {
            return std::any_of(checkpoints.begin(), checkpoints.end(),
                               [&](const auto& c) { return c.id == e.checkpoint; });
        });
        all += asked;
        told += asked && n.presence != Presence::unknown;
        const bool upstream =
            std::any_of(playbook.tendencies().begin(), playbook.tendencies().end(),
                        [&](const auto& t) { return t.from == n.id && seen.contains(t.to); });
        if (n.presence == Presence::unknown && upstream) {
            out.open.push_back(n.id);
        }
    }
    if (out.verdict != Verdict::found) {
        out.verdict =
            out.rivals.empty() && all > 0 && 2 * told >= all ? Verdict::nothing_found : Verdict::cannot_tell;
    }
    return out;
}

BeliefAnswer answerBelief(const Playbook& playbook, const Explanation& explanation, std::string_view belief) {
    const std::string said = lower(belief);
    std::vector<const coaching::Node*> meant;
    std::size_t longest = 0;
    for (const auto& node : playbook.nodes()) {
        for (const auto& word : node.words) {
            if (said.find(lower(word)) == std::string::npos || word.size() < longest) {
                continue;
            }
            if (word.size() > longest) {
                meant.clear();
            }
            longest = word.size();
            meant.push_back(&node);
        }
    }
    BeliefAnswer out;
    if (meant.empty()) {
        out.sentence = "Cannot tell: the playbook has no departure that goes by these words.";
        return out;
    }
    // Several nodes may go by one word ("ball position"): the one that is most likely there answers.
    const auto chance = [&](const coaching::Node* n) {
        return explanation.node(n->id)->probability.value_or(-1.0);
    };
    const coaching::Node* node = *std::max_element(
        meant.begin(), meant.end(), [&](const auto* a, const auto* b) { return chance(a) < chance(b); });
    const bool anyUnknown = std::any_of(meant.begin(), meant.end(), [&](const auto* n) {
        return explanation.node(n->id)->presence == Presence::unknown;
    });
    out.node = node->id;
    switch (explanation.node(node->id)->presence) {
    case Presence::there:
        out.answer = BeliefAnswer::Answer::yes;
        out.sentence = "Yes: " + node->label + " is there";
        if (explanation.first && explanation.first->node == node->id) {
            out.sentence += ", and it comes first.";
        } else if (explanation.first) {
            out.sentence += ", but " + explanation.node(explanation.first->node)->label + " comes before it.";
        } else {
            out.sentence += ".";
        }
        break;
    case Presence::not_there:
        if (anyUnknown) {
            out.sentence = "Cannot tell: part of what these words may mean was not seen.";
            break;
        }
        out.answer = BeliefAnswer::Answer::not_this;
        out.sentence = "Not this: " + node->label + " is not there in these swings.";
        break;
    case Presence::unclear:
        out.sentence = "Cannot tell: " + node->label + " lies too near the edge for what this clip can show.";
        break;
    case Presence::unknown:
        out.sentence = "Cannot tell: " + node->label +
                       (explanation.node(node->id)->measurable ? " could not be seen in these clips."
                                                               : " is not measured yet.");
        break;
    }
    return out;
}

std::vector<measure::Measurement> together(const std::vector<comparison::SwingNumbers>& swings) {
    if (swings.size() == 1) {
        return swings.front();
    }
    std::vector<measure::Measurement> out;
    for (const auto& swing : swings) {
        for (const auto& m : swing) {
            const auto* known = measure::find(out, m.id, m.moment);
            if (known != nullptr) {
                continue;
            }
            std::vector<base::Measured> values;
            measure::Measurement one = m;
            for (const auto& other : swings) {
                const auto* same = measure::find(other, m.id, m.moment);
                if (same == nullptr || !same->value) {
                    continue;
                }
                if (values.empty()) {
                    one = *same;
                }
                if (same->method == one.method && same->value->unit == one.value->unit) {
                    values.push_back(*same->value);
                }
            }
            if (const auto s = comparison::spreadOf(values)) {
                one.value->value = s->mean;
                one.value->sigma = std::sqrt(s->betweenSwings * s->betweenSwings / s->swings +
                                             s->measurement * s->measurement);
            }
            out.push_back(std::move(one));
        }
    }
    return out;
}

} // namespace plumbmark::reasoning
