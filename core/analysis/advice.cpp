// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "analysis/advice.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "coaching/judge.h"
#include "measure/construction.h"

namespace plumbmark::analysis {
namespace {

using coaching::CheckpointResult;
using coaching::State;
using marks::Landmark;
using marks::MomentId;

constexpr double kHandSigma = 2.0; // px: a mark placed by a finger under the loupe
constexpr double kSure = 0.9;
constexpr double kLeastGain = 0.15;

measure::Input inputOf(const Outcome& o, const marks::Track& track) {
    return {track, o.moments, o.shaft, o.ball, o.scene, o.context, o.timeScale, o.hit};
}

bool isOpen(const CheckpointResult& c) {
    return c.state == State::unknown || std::max({c.good, c.watch, c.work}) < kSure;
}

Landmark otherSide(Landmark l) {
    const std::string name(marks::landmarkName(l));
    for (const auto& [from, to] : {std::pair("lead_", "trail_"), std::pair("trail_", "lead_")}) {
        if (name.rfind(from, 0) == 0) {
            return marks::landmarkFromName(to + name.substr(std::string_view(from).size())).value_or(l);
        }
    }
    return l;
}

bool byHand(const Outcome& o, int frame, Landmark l) {
    const auto& mark = o.track[static_cast<std::size_t>(frame)][l];
    return mark && mark->origin == base::Origin::hand;
}

struct Candidate {
    std::vector<Landmark> landmarks;
    MomentId moment;
    friend auto operator<=>(const Candidate&, const Candidate&) = default;
};

} // namespace

std::vector<MarkAdvice> adviseMarks(const Outcome& o, std::size_t most) {
    std::map<Candidate, MarkAdvice> all;
    const auto frameOf = [&](MomentId id) {
        const marks::Moment* m = marks::find(o.moments, id);
        return m == nullptr ? -1 : measure::nearestFrame(o.track, m->time);
    };
    const auto input = inputOf(o, o.track);

    // A checkpoint that the body card silences, no mark will open.
    const auto withoutCard = coaching::judge(coaching::Playbook::standard(), o.measurements, o.context, {});
    const auto silenced = [&](const CheckpointResult& c) {
        return c.state == State::unknown &&
               std::any_of(withoutCard.begin(), withoutCard.end(), [&](const CheckpointResult& other) {
                   return other.id == c.id && other.state != State::unknown;
               });
    };
    const auto asks = [&](const CheckpointResult& c) { return isOpen(c) && !silenced(c); };

    // What is asked of which mark, and what nobody has seen.
    std::set<Candidate> tries;
    for (const CheckpointResult& c : o.checkpoints) {
        if (!asks(c)) {
            continue;
        }
        const auto uses = measure::constructionOf(input, c.measurement, c.moment).uses;
        std::vector<measure::Construction::Use> missing;
        for (const auto& use : uses) {
            const int frame = frameOf(use.moment);
            if (frame < 0 || byHand(o, frame, use.landmark)) {
                continue;
            }
            if (!o.track[static_cast<std::size_t>(frame)][use.landmark]) {
                missing.push_back(use);
                continue;
            }
            tries.insert({{use.landmark}, use.moment});
            const Landmark other = otherSide(use.landmark);
            if (other != use.landmark && o.track[static_cast<std::size_t>(frame)][other]) {
                tries.insert({{std::min(use.landmark, other), std::max(use.landmark, other)}, use.moment});
            }
        }
        if (c.value) {
            continue;
        }
        for (const auto& use : missing) {
            MarkAdvice& advice = all[{{use.landmark}, use.moment}];
            advice.gain += 1.0 / static_cast<double>(missing.size());
            advice.checks.push_back(c.label);
        }
    }

    for (const Candidate& candidate : tries) {
        const int frame = frameOf(candidate.moment);
        marks::Track track = o.track;
        bool sharper = false;
        for (const Landmark l : candidate.landmarks) {
            // As a hand mark would: its own frame and, nearly, the neighbours.
            for (int i = std::max(0, frame - 1); i <= std::min(static_cast<int>(track.size()) - 1, frame + 1);
                 ++i) {
                if (auto& mark = track[static_cast<std::size_t>(i)][l]) {
                    sharper = sharper || mark->sigma > kHandSigma;
                    mark->sigma = std::min(mark->sigma, kHandSigma);
                    mark->origin = base::Origin::hand;
                }
            }
        }
        if (!sharper) {
            continue;
        }
        const auto numbers = measure::measureAll(inputOf(o, track));
        const auto checks = coaching::judge(coaching::Playbook::standard(), numbers, o.context, {});
        double gain = 0.0;
        std::vector<std::pair<double, std::string>> which;
        for (std::size_t i = 0; i < std::min(checks.size(), o.checkpoints.size()); ++i) {
            const CheckpointResult& before = o.checkpoints[i];
            const CheckpointResult& after = checks[i];
            if (before.id != after.id || !asks(before) || !after.value) {
                continue;
            }
            double here = before.value ? std::log(before.value->sigma / after.value->sigma) : 1.0;
            if (before.value && before.state == State::unknown && after.state != State::unknown) {
                here += 1.0;
            }
            gain += here;
            if (here > 0.05) {
                which.emplace_back(-here, before.label);
            }
        }
        std::sort(which.begin(), which.end());
        MarkAdvice& advice = all[candidate];
        advice.gain += gain;
        for (auto& [minusGain, label] : which) {
            if (std::find(advice.checks.begin(), advice.checks.end(), label) == advice.checks.end()) {
                advice.checks.push_back(std::move(label));
            }
        }
    }

    std::vector<MarkAdvice> list;
    for (auto& [candidate, advice] : all) {
        advice.landmarks = candidate.landmarks;
        advice.moment = candidate.moment;
        advice.frame = frameOf(candidate.moment);
        if (advice.gain >= kLeastGain && !advice.checks.empty()) {
            list.push_back(std::move(advice));
        }
    }
    // Two marks are twice the work: a pair must bring half as much again.
    const auto worth = [](const MarkAdvice& a) { return a.gain / (a.landmarks.size() > 1 ? 1.5 : 1.0); };
    std::stable_sort(list.begin(), list.end(),
                     [&](const MarkAdvice& a, const MarkAdvice& b) { return worth(a) > worth(b); });
    // What one proposal asks for, the next one does not repeat.
    std::vector<MarkAdvice> best;
    for (MarkAdvice& advice : list) {
        const bool told = std::any_of(best.begin(), best.end(), [&](const MarkAdvice& b) {
            return b.moment == advice.moment &&
                   std::any_of(advice.landmarks.begin(), advice.landmarks.end(), [&](Landmark l) {
                       return std::find(b.landmarks.begin(), b.landmarks.end(), l) != b.landmarks.end();
                   });
        });
        if (!told && best.size() < most) {
            best.push_back(std::move(advice));
        }
    }
    return best;
}

} // namespace plumbmark::analysis
