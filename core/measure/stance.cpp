// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/stance.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace plumbmark::measure {
namespace {

using marks::Landmark;
using marks::MomentId;

/// Heel to longest toe in statures: de Leva 1996, men 0.1482 (258.1 / 1741 mm), women 0.1316 (from memory).
constexpr double kFoot = 0.140, kFootSigma = 0.008;

std::optional<double> flare(Probe& p, Landmark heelMark, Landmark toeMark, double outward) {
    const auto heel = p.at(heelMark, MomentId::address);
    const auto toe = p.at(toeMark, MomentId::address);
    const auto stature = p.stature();
    if (!heel || !toe || !stature) {
        return std::nullopt;
    }
    const double foot = *stature * (kFoot + p.ownNoise(0, kFootSigma));
    const double share = std::clamp((toe->x - heel->x) * outward / foot, -0.99, 0.99);
    return std::asin(share) * 180.0 / std::numbers::pi;
}

} // namespace

Definitions stanceDefinitions() {
    const auto faceOn = marks::View::faceOn;
    const std::vector<MomentId> address{MomentId::address};
    const std::string_view flareReason =
        "The feet's turn-out cannot be told well enough from the front here; mark heel and toe by hand.";
    return {
        {"stance_width_ratio", faceOn, base::Unit::ratio, 1, address,
         [](Probe& p, MomentId) -> std::optional<double> {
             const auto width = p.stanceWidth();
             const auto shoulders = p.shoulderJointDistance();
             if (!width || !shoulders || *shoulders < 1.0) {
                 return std::nullopt;
             }
             return *width / *shoulders;
         },
         0.01},
        {"ball_position", faceOn, base::Unit::ratio, 1, address,
         [](Probe& p, MomentId) -> std::optional<double> {
             const auto width = p.stanceWidth();
             const auto lead = p.at(Landmark::lead_ankle, MomentId::address);
             const auto trail = p.at(Landmark::trail_ankle, MomentId::address);
             const auto ball = p.ball();
             if (!width || !lead || !trail || !ball) {
                 return std::nullopt;
             }
             return (lead->x - ball->x) / (lead->x - trail->x);
         },
         0.01},
        {"foot_flare_lead", faceOn, base::Unit::degrees, 1, address,
         [](Probe& p, MomentId) { return flare(p, Landmark::lead_heel, Landmark::lead_toe, +1.0); }, 1.0,
         15.0, flareReason},
        {"foot_flare_trail", faceOn, base::Unit::degrees, 1, address,
         [](Probe& p, MomentId) { return flare(p, Landmark::trail_heel, Landmark::trail_toe, -1.0); }, 1.0,
         15.0, flareReason},
    };
}

} // namespace plumbmark::measure
