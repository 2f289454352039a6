// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/lead_side.h"

#include <cmath>
#include <numbers>

namespace plumbmark::measure {
namespace {

using marks::Landmark;
using marks::MomentId;

std::optional<double> lineTilt(Probe& p, MomentId m) {
    const auto ankle = p.at(Landmark::lead_ankle, m);
    const auto shoulder = p.at(Landmark::lead_shoulder, m);
    if (!ankle || !shoulder) {
        return std::nullopt;
    }
    return Probe::tilt(*ankle, *shoulder);
}

constexpr double kTurnAtImpact = 35.0, kTurnAtImpactSigma = 12.0; // degrees, common practice: 15 to 50

/// The lead hip joint. The network hardly shows the pelvis' turn: at impact it holds the two joints apart as
/// at address, so its lead hip lies too far toward the target. Halved with where the joint stands when half
/// the hip-joint distance beside the pelvis' middle is turned open as is usual. A hand mark stays what it is.
std::optional<base::Vec2> leadHip(Probe& p, MomentId m) {
    const auto hip = p.at(Landmark::lead_hip, m);
    const auto* moment = marks::find(p.input().moments, m);
    if (!hip || moment == nullptr) {
        return std::nullopt;
    }
    const auto seen = marks::markAt(p.input().track, Landmark::lead_hip, moment->time);
    const auto middle = p.midHip(m);
    const auto joints = p.hipJointDistance();
    if (!seen || seen->origin == base::Origin::hand || !middle || !joints) {
        return hip;
    }
    const double turn = (kTurnAtImpact + p.ownNoise(30, kTurnAtImpactSigma)) * std::numbers::pi / 180.0;
    return base::Vec2{(hip->x + middle->x + 0.5 * *joints * std::cos(turn)) / 2.0, hip->y};
}

/// Lead hip joint's distance from the line lead ankle - lead shoulder, + toward the target (kinked at the
/// hip).
std::optional<double> hipOffset(Probe& p, MomentId m) {
    const auto ankle = p.at(Landmark::lead_ankle, m);
    const auto shoulder = p.at(Landmark::lead_shoulder, m);
    const auto hip = leadHip(p, m);
    const auto joints = p.hipJointDistance();
    if (!ankle || !shoulder || !hip || !joints) {
        return std::nullopt;
    }
    const auto line = *shoulder - *ankle;
    const double length = base::length(line);
    if (length < 1.0) {
        return p.fail("Lead ankle and lead shoulder fall together in the picture; check the marks.");
    }
    // u toward the target, v up: with the line pointing up, a point on its target side has a positive u
    // offset.
    return -base::cross(line, *hip - *ankle) / length / *joints;
}

/// + when the hip joint is on the target side of the vertical through the lead ankle.
std::optional<double> hipOverAnkle(Probe& p, MomentId m) {
    const auto ankle = p.at(Landmark::lead_ankle, m);
    const auto hip = leadHip(p, m);
    const auto joints = p.hipJointDistance();
    if (!ankle || !hip || !joints) {
        return std::nullopt;
    }
    return (hip->x - ankle->x) / *joints;
}

} // namespace

Definitions leadSideDefinitions() {
    const auto faceOn = marks::View::faceOn;
    const std::vector<MomentId> impact{MomentId::impact};
    return {
        {"lead_line_tilt", faceOn, base::Unit::degrees, 1, impact, lineTilt, 0.2},
        {"lead_hip_offset", faceOn, base::Unit::hip_joint_distances, 2, impact, hipOffset, 0.02},
        {"lead_hip_over_ankle", faceOn, base::Unit::hip_joint_distances, 2, impact, hipOverAnkle, 0.02},
    };
}

} // namespace plumbmark::measure
