// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/lesson_story.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <tuple>

#include "coaching/playbook.h"
#include "exporting/words.h"

namespace plumbmark::exporting {
namespace {

double medianOf(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    const std::size_t n = values.size();
    return n % 2 == 1 ? values[n / 2] : (values[n / 2 - 1] + values[n / 2]) / 2.0;
}

struct Seen {
    const coaching::CheckpointResult* result;
    const analysis::Outcome* outcome;
};

Light lightOf(const std::vector<Seen>& seen) {
    Light light;
    std::array<int, 4> votes{};
    for (const Seen& s : seen) {
        ++votes[static_cast<std::size_t>(s.result->state)];
    }
    // A swing that cannot tell has no vote unless none can.
    light.swings = votes[0] + votes[1] + votes[2];
    light.state = coaching::State::unknown;
    for (const auto state : {coaching::State::work, coaching::State::watch, coaching::State::good}) {
        if (votes[static_cast<std::size_t>(state)] > light.agree) {
            light.agree = votes[static_cast<std::size_t>(state)];
            light.state = state;
        }
    }
    const Seen* last = &seen.back();
    std::vector<double> values, sigmas;
    for (const Seen& s : seen) {
        if (s.result->state == light.state) {
            last = &s;
        }
    }
    for (const Seen& s : seen) {
        if (s.result->value && last->result->value && s.result->value->unit == last->result->value->unit) {
            values.push_back(s.result->value->value);
            sigmas.push_back(s.result->value->sigma);
        }
    }
    const coaching::CheckpointResult& told = *last->result;
    light.label = told.label.empty() ? measurementLabel(told.id) : told.label;
    light.help = told.help;
    if (!values.empty()) {
        const auto& stature = last->outcome->context.statureMetres;
        base::Measured middle = *told.value;
        middle.value = medianOf(values);
        // The larger part of sigma is shared by all swings of one camera, so more swings do not shrink it.
        middle.sigma = medianOf(sigmas);
        light.value = valueText(told.measurement, middle, stature);
        if (values.size() > 1) {
            light.value += ", median of " + std::to_string(values.size()) + " swings";
        }
        const std::string range = rangeText(told.goodLow, told.goodHigh, middle, stature);
        light.range = range.empty() ? "" : "good: " + range;
    }
    return light;
}

} // namespace

std::vector<Light> lights(const LessonStory& story, coaching::State state) {
    using Key = std::tuple<marks::View, std::string, std::optional<marks::MomentId>>;
    std::vector<Key> order;
    std::map<Key, std::vector<Seen>> all;
    for (const LessonSwing& swing : story.swings) {
        for (const auto& result : swing.outcome->checkpoints) {
            const Key key{swing.outcome->context.view, result.id, result.moment};
            auto& list = all[key];
            if (list.empty()) {
                order.push_back(key);
            }
            list.push_back({&result, swing.outcome.get()});
        }
    }
    std::vector<Light> found;
    for (const Key& key : order) {
        Light light = lightOf(all[key]);
        if (light.state == state) {
            found.push_back(std::move(light));
        }
    }
    return found;
}

std::string agreement(const Light& light) {
    return light.swings > 1
               ? "in " + std::to_string(light.agree) + " of " + std::to_string(light.swings) + " swings"
               : "";
}

std::vector<const measure::Measurement*> tellingNumbers(const analysis::Outcome& outcome,
                                                        marks::MomentId moment, std::size_t most) {
    std::vector<const measure::Measurement*> found;
    for (const auto& m : outcome.measurements) {
        if (m.value && m.moment == moment) {
            found.push_back(&m);
        }
    }
    std::stable_partition(found.begin(), found.end(), [&](const measure::Measurement* m) {
        return std::any_of(outcome.checkpoints.begin(), outcome.checkpoints.end(),
                           [&](const auto& c) { return c.measurement == m->id && c.moment == m->moment; });
    });
    found.resize(std::min(found.size(), most));
    return found;
}

std::vector<coaching::Caution> cautions(const LessonStory& story) {
    std::vector<coaching::Caution> all;
    for (const LessonSwing& swing : story.swings) {
        for (const coaching::Caution& caution : swing.outcome->cautions) {
            if (std::none_of(all.begin(), all.end(), [&](const auto& c) { return c.id == caution.id; })) {
                all.push_back(caution);
            }
        }
    }
    return all;
}

std::vector<Advice> filmAdvice(const LessonStory& story) {
    std::vector<Advice> all;
    for (const LessonSwing& swing : story.swings) {
        for (const Advice& advice : swing.advice) {
            if (std::none_of(all.begin(), all.end(), [&](const auto& a) { return a.id == advice.id; })) {
                all.push_back(advice);
            }
        }
    }
    return all;
}

std::string checkpointWords(std::string_view idOrWords) {
    const coaching::Checkpoint* known = coaching::Playbook::standard().find(idOrWords);
    return known != nullptr ? known->label : std::string(idOrWords);
}

std::string_view usualWords() {
    return "Posture read from pictures is no diagnosis, and no caution is no clean bill: with pain, numbness "
           "or "
           "weakness stop, and see a physician or licensed physiotherapist.";
}

std::string_view sigmaWords() {
    return "Each number stands with its one-sigma uncertainty: the true value lies within it about two times "
           "in "
           "three.";
}

} // namespace plumbmark::exporting
