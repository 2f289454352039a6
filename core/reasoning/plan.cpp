// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "reasoning/plan.h"

#include <algorithm>
#include <cmath>

#include "coaching/judge.h"

namespace plumbmark::reasoning {
namespace {

using coaching::Playbook;

constexpr int kModeratePain = 4; // of 10; common practice, no source

bool holds(const std::vector<std::string>& list, std::string_view what) {
    return std::find(list.begin(), list.end(), what) != list.end();
}

std::string sets(int n, const std::string& what) {
    return std::to_string(n) + (n == 1 ? " set of 10 " : " sets of 10 ") + what;
}

const coaching::CheckpointResult* findIn(const std::vector<coaching::CheckpointResult>& all,
                                         std::string_view id) {
    const auto it = std::find_if(all.begin(), all.end(), [&](const auto& c) { return c.id == id; });
    return it == all.end() ? nullptr : &*it;
}

/// How much of a checkpoint is missed on the sides that a node asks about, 0..1; nothing when not judged.
std::optional<double> presence(const Playbook& playbook,
                               const std::vector<coaching::CheckpointResult>& checkpoints,
                               std::string_view node) {
    const auto e = explain(playbook, checkpoints, {});
    const auto* state = e.node(node);
    return state == nullptr ? std::nullopt : state->probability;
}

} // namespace

std::string doseText(const coaching::Drill& drill, int rehearsals, int balls) {
    std::string text;
    if (rehearsals > 0) {
        text = sets(rehearsals, "slow rehearsals without a ball");
        if (drill.holdSeconds > 0) {
            text += ", each held for " + std::to_string(drill.holdSeconds) + " s";
        }
    }
    if (balls > 0) {
        text += (text.empty() ? "" : ", then ") + sets(balls, "balls at half speed");
    }
    return text + ", a minute's rest between sets; stop when it hurts or slips away.";
}

std::vector<std::string> proposedOrder(const Explanation& e) {
    std::vector<std::string> order;
    if (!e.first) {
        return order;
    }
    order.push_back(e.first->node);
    for (const auto& rival : e.rivals) {
        const bool inChain = std::any_of(e.first->chain.begin(), e.first->chain.end(),
                                         [&](const Link& l) { return l.node == rival.node; });
        if (!inChain && e.node(rival.node)->presence == Presence::there) {
            order.push_back(rival.node);
            break;
        }
    }
    return order;
}

PlanDraft draftPlan(const Playbook& playbook, const std::vector<std::string>& order,
                    const std::vector<coaching::CheckpointResult>& checkpoints,
                    const std::vector<coaching::Caution>& cautions, const coaching::BodyCard& card) {
    PlanDraft plan;
    if (card.askFirst) {
        plan.notes.emplace_back(
            "The body card names a condition without a clearance: no swings until a physician or "
            "licensed physiotherapist has agreed.");
        return plan;
    }
    const auto cautioned = [&](const std::string& region) {
        return std::any_of(cautions.begin(), cautions.end(), [&](const auto& c) { return c.id == region; });
    };
    for (const std::string& id : order) {
        if (plan.priorities.size() == 2) {
            break;
        }
        const auto* node = playbook.node(id);
        const auto remedy = std::find_if(playbook.remedies().begin(), playbook.remedies().end(),
                                         [&](const auto& r) { return r.node == id; });
        if (node == nullptr || remedy == playbook.remedies().end()) {
            plan.notes.push_back("The playbook holds no drill for " +
                                 (node ? node->label : "\"" + id + "\"") + ".");
            continue;
        }
        const coaching::Drill& drill = *playbook.drill(remedy->drill);
        Priority p;
        p.node = id;
        p.label = node->label;
        p.feel = remedy->feel;
        p.drill = drill.label;
        p.how = drill.how;
        p.trains = drill.trains;
        p.checkpoint = remedy->checkpoint;
        p.guard = remedy->guard;
        p.conflict = remedy->conflict;
        if (const auto* c = findIn(checkpoints, remedy->checkpoint);
            c && c->judged && c->state != coaching::State::good) {
            p.amount = c->help;
        }
        p.rehearsalSets = drill.rehearsalSets;
        p.ballSets = drill.ballSets;
        for (const std::string& region : drill.loads) {
            const bool pain = holds(card.painNow, region);
            if (!pain && !cautioned(region) && !holds(card.limitedJoints, region)) {
                continue;
            }
            std::string words = region;
            std::replace(words.begin(), words.end(), '_', ' ');
            p.rehearsalSets = std::max(1, p.rehearsalSets / 2);
            p.ballSets = pain ? 0 : p.ballSets / 2;
            plan.notes.push_back("The " + drill.label + " works the " + words +
                                 ", which the body card or a caution names: half the dose" +
                                 (pain ? ", and no balls while it hurts." : "."));
            break;
        }
        if (card.worstPain >= kModeratePain && p.ballSets > 0) {
            p.ballSets = 0;
            plan.notes.emplace_back(
                "Pain of 4 or more of 10 is logged: slow rehearsals only, no balls today.");
        }
        if (cautioned("volume") && p.ballSets > 1) {
            p.ballSets = 1;
            plan.notes.emplace_back("Much was hit this week already: one set of balls at most.");
        }
        if (card.mostBalls) {
            int left = *card.mostBalls / 10;
            for (const auto& earlier : plan.priorities) {
                left -= earlier.ballSets;
            }
            if (p.ballSets > left) {
                p.ballSets = std::max(0, left);
                plan.notes.push_back("The body card limits the balls to " + std::to_string(*card.mostBalls) +
                                     " a day.");
            }
        }
        if (p.rehearsalSets + p.ballSets == 0) {
            p.rehearsalSets = 1;
        }
        p.dose = doseText(drill, p.rehearsalSets, p.ballSets);
        if (!plan.priorities.empty()) {
            const Priority& first = plan.priorities.front();
            if (first.guard == p.checkpoint || p.guard == first.checkpoint) {
                plan.notes.push_back("These two collide: working on " + p.label + " moves what guards " +
                                     first.label + "; do the first one alone until it holds.");
            }
        }
        plan.priorities.push_back(std::move(p));
    }
    return plan;
}

std::string_view resultName(TrialResult::Result r) {
    return r == TrialResult::Result::strengthened ? "strengthened"
           : r == TrialResult::Result::dropped    ? "dropped"
                                                  : "undecided";
}

double weightAfter(double before, TrialResult::Result r) {
    const double factor = r == TrialResult::Result::strengthened ? 1.5
                          : r == TrialResult::Result::dropped    ? 0.5
                                                                 : 1.0;
    return std::clamp(before * factor, 0.25, 2.25);
}

TrialResult judgeTrial(const Playbook& playbook, std::string_view node, const marks::ShotContext& context,
                       const std::vector<comparison::SwingNumbers>& before,
                       const std::vector<comparison::SwingNumbers>& tried, const coaching::BodyCard& card) {
    TrialResult out;
    const auto rows = comparison::compareSets(before, tried);
    const auto beyond = [&](std::string_view id, std::optional<marks::MomentId> moment) {
        return std::any_of(rows.begin(), rows.end(), [&](const auto& r) {
            return r.id == id && r.moment == moment && r.change && r.change->beyondDoubt;
        });
    };
    for (const auto& row : rows) {
        if (row.change && row.change->beyondDoubt) {
            out.moved.push_back(row.id);
        }
    }
    const auto* cause = playbook.node(node);
    if (cause == nullptr || before.empty() || tried.empty()) {
        out.sentence = "Undecided: there is nothing to compare.";
        return out;
    }
    const auto was = coaching::judge(playbook, together(before), context, card);
    const auto is = coaching::judge(playbook, together(tried), context, card);
    /// 1 better beyond doubt, -1 worse beyond doubt, 0 neither.
    const auto went = [&](std::string_view id) {
        const auto a = presence(playbook, was, id), b = presence(playbook, is, id);
        if (!a || !b) {
            return 0;
        }
        for (const auto& e : playbook.node(id)->evidence) {
            const auto* c = findIn(was, e.checkpoint);
            if (c != nullptr && c->judged && beyond(c->measurement, c->moment)) {
                return *b < *a - 0.1 ? 1 : *b > *a + 0.1 ? -1 : 0;
            }
        }
        return 0;
    };
    const auto remedy = std::find_if(playbook.remedies().begin(), playbook.remedies().end(),
                                     [&](const auto& r) { return r.node == node; });
    if (remedy != playbook.remedies().end() && !remedy->guard.empty()) {
        const auto* a = findIn(was, remedy->guard);
        const auto* b = findIn(is, remedy->guard);
        out.guardHeld = a == nullptr || b == nullptr || !a->judged || !b->judged ||
                        !(beyond(b->measurement, b->moment) && b->good < a->good - 0.1);
    }
    if (went(node) <= 0) {
        out.sentence = "Undecided: " + cause->label +
                       " itself did not change beyond doubt; try it more clearly, or "
                       "with three to five swings on each side.";
        return out;
    }
    bool any = false, moved = false;
    for (const auto& t : playbook.tendencies()) {
        if (t.from != node) {
            continue;
        }
        const auto a = presence(playbook, was, t.to);
        any = any || (a && *a > kNotThere);
        moved = moved || went(t.to) > 0;
    }
    if (moved) {
        out.result = TrialResult::Result::strengthened;
        out.sentence = "Strengthened: with less " + cause->label + " what it tends to cause went away too.";
    } else if (any) {
        out.result = TrialResult::Result::dropped;
        out.sentence =
            "Dropped for this player: " + cause->label + " changed and what it tends to cause did not.";
    } else {
        out.sentence =
            "Undecided: " + cause->label + " changed, but nothing it tends to cause was there before.";
    }
    return out;
}

} // namespace plumbmark::reasoning
