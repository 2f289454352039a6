// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/shift.h"

#include <cmath>

namespace plumbmark::measure {
namespace {

using base::Vec2;
using marks::Landmark;
using marks::MomentId;

std::optional<double> pelvisShift(Probe& p, MomentId m) {
    return p.travel(m, &Probe::midHip, &Vec2::x);
}

std::optional<double> chestShift(Probe& p, MomentId m) {
    return p.travel(m, &Probe::midShoulder, &Vec2::x);
}

/// The chest's share of the move toward the target in the first third of the downswing.
std::optional<double> chestShare(Probe& p, MomentId) {
    const auto third = p.between(MomentId::top, MomentId::impact, 1.0 / 3.0);
    const auto hip0 = p.midHip(MomentId::top);
    const auto chest0 = p.midShoulder(MomentId::top);
    if (!third || !hip0 || !chest0) {
        return std::nullopt;
    }
    const auto hip1 = p.mid(Landmark::lead_hip, Landmark::trail_hip, *third, 101, MomentId::top);
    const auto chest1 = p.mid(Landmark::lead_shoulder, Landmark::trail_shoulder, *third, 101, MomentId::top);
    const auto stature = p.stature();
    if (!hip1 || !chest1 || !stature) {
        return p.fail(
            "Hips and shoulders could not be followed at the start of the downswing; mark them by hand.");
    }
    const double hip = hip1->x - hip0->x;
    const double chest = chest1->x - chest0->x;
    if (hip + chest < 0.015 * *stature) {
        return p.fail(
            "Pelvis and chest hardly move toward the target in the first third of the downswing, so a "
            "share says nothing.");
    }
    return chest / (hip + chest);
}

std::optional<double> startDownLead(Probe& p, MomentId) {
    if (!p.input().timeScale.known) {
        return p.fail("The clip's real speed is not known; tell the frame rate it was captured at.");
    }
    const auto pelvis = p.time(MomentId::pelvis_starts_forward);
    const auto top = p.time(MomentId::top);
    if (!pelvis || !top) {
        return std::nullopt;
    }
    return (*top - *pelvis).value() * p.realPerShown();
}

} // namespace

Definitions shiftDefinitions() {
    const auto faceOn = marks::View::faceOn;
    const auto statures = base::Unit::statures;
    const std::vector<MomentId> down{MomentId::top, MomentId::lead_arm_level_down, MomentId::shaft_level_down,
                                     MomentId::impact};
    return {
        {"pelvis_shift", faceOn, statures, 1, down, pelvisShift, 0.001},
        {"chest_shift", faceOn, statures, 1, down, chestShift, 0.001},
        {"chest_share_of_shift",
         faceOn,
         base::Unit::ratio,
         1,
         {},
         chestShare,
         0.02,
         0.35,
         "Pelvis and chest move too little in the first third of the downswing to share it out with these "
         "marks; "
         "mark hips and shoulders by hand."},
        {"start_down_lead", faceOn, base::Unit::seconds, 1, {}, startDownLead, 0.001},
    };
}

} // namespace plumbmark::measure
