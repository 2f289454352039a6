// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "measure/definition.h"
#include "measure/down_the_line.h"
#include "measure/finish.h"
#include "measure/head.h"
#include "measure/joints.h"
#include "measure/lead_side.h"
#include "measure/measurement.h"
#include "measure/shaft_lean.h"
#include "measure/shift.h"
#include "measure/stance.h"
#include "measure/tempo.h"
#include "measure/trunk.h"
#include "measure/turn.h"
#include "measure/wrist_set.h"

namespace plumbmark::measure {

const std::vector<marks::MomentId>& everyMoment() {
    static const std::vector<marks::MomentId> all = [] {
        std::vector<marks::MomentId> m;
        for (int i = 0; i < marks::kMomentCount; ++i) {
            m.push_back(static_cast<marks::MomentId>(i));
        }
        return m;
    }();
    return all;
}

namespace {

/// A sigma wider than this decides nothing: it is about the whole spread of players (domain's ranges), so a
/// value would only look like knowledge.
double tellingLimit(base::Unit unit) {
    switch (unit) {
    case base::Unit::degrees:
        return 25.0;
    case base::Unit::seconds:
        return 0.25;
    case base::Unit::ratio:
        return 0.45;
    case base::Unit::statures:
        return 0.08;
    case base::Unit::stance_widths:
        return 0.45;
    case base::Unit::hip_joint_distances:
        return 0.7;
    case base::Unit::pixels:
    case base::Unit::metres:
        break;
    }
    return 1e9;
}

} // namespace

const Definitions& allDefinitions() {
    static const Definitions all = [] {
        Definitions list;
        for (const auto& theme :
             {stanceDefinitions(), trunkDefinitions(), headDefinitions(), shiftDefinitions(),
              leadSideDefinitions(), turnDefinitions(), shaftLeanDefinitions(), wristSetDefinitions(),
              jointDefinitions(), finishDefinitions(), tempoDefinitions(), downTheLineDefinitions()}) {
            list.insert(list.end(), theme.begin(), theme.end());
        }
        return list;
    }();
    return all;
}

std::vector<Measurement> measureAll(const Input& input) {
    std::vector<Measurement> out;
    const auto add = [&](const Definition& d, std::optional<marks::MomentId> moment) {
        auto m = evaluate(
            input, std::string(d.id), moment, d.unit, d.method,
            [&](Probe& p) { return d.compute(p, moment.value_or(marks::MomentId::address)); }, d.floor);
        if (m.value && m.value->sigma > std::min(d.limit, tellingLimit(d.unit))) {
            m.value.reset();
            m.reason =
                d.tooUncertain.empty()
                    ? std::string(
                          "The marks are too unsure in this clip for this number; place them by hand, or "
                          "film nearer with a clear view.")
                    : std::string(d.tooUncertain);
        }
        out.push_back(std::move(m));
    };
    for (const auto& d : allDefinitions()) {
        if (d.view != input.context.view) {
            continue;
        }
        if (d.moments.empty()) {
            add(d, std::nullopt);
        }
        for (const auto moment : d.moments) {
            add(d, moment);
        }
    }
    return out;
}

const Measurement* find(const std::vector<Measurement>& all, std::string_view id,
                        std::optional<marks::MomentId> moment) {
    const auto it = std::find_if(all.begin(), all.end(),
                                 [&](const Measurement& m) { return m.id == id && m.moment == moment; });
    return it == all.end() ? nullptr : &*it;
}

} // namespace plumbmark::measure
