// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/lead_side.h"

#include <cmath>

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

/// Lead hip joint's distance from the line lead ankle - lead shoulder, + toward the target (kinked at the
/// hip).
std::optional<double> hipOffset(Probe& p, MomentId m) {
    const auto ankle = p.at(Landmark::lead_ankle, m);
    const auto shoulder = p.at(Landmark::lead_shoulder, m);
    const auto hip = p.at(Landmark::lead_hip, m);
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
    const auto hip = p.at(Landmark::lead_hip, m);
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
        {"lead_hip_offset", faceOn, base::Unit::hip_joint_distances, 1, impact, hipOffset, 0.02},
        {"lead_hip_over_ankle", faceOn, base::Unit::hip_joint_distances, 1, impact, hipOverAnkle, 0.02},
    };
}

} // namespace plumbmark::measure
