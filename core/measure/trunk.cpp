// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/trunk.h"

namespace plumbmark::measure {
namespace {

using marks::MomentId;

/// Mid-hip to mid-shoulder against true up: + away from the target (face-on), + toward the ball
/// (down-the-line).
std::optional<double> trunkTilt(Probe& p, MomentId moment) {
    const auto hip = p.midHip(moment);
    const auto shoulder = p.midShoulder(moment);
    if (!hip || !shoulder) {
        return std::nullopt;
    }
    return (p.faceOn() ? 1.0 : -1.0) * Probe::tilt(*hip, *shoulder);
}

std::optional<double> trunkTiltChange(Probe& p, MomentId moment) {
    const auto before = trunkTilt(p, MomentId::address);
    const auto now = trunkTilt(p, moment);
    if (!before || !now) {
        return std::nullopt;
    }
    return *now - *before;
}

std::vector<MomentId> afterAddress() {
    auto m = everyMoment();
    m.erase(m.begin());
    return m;
}

} // namespace

Definitions trunkDefinitions() {
    const auto deg = base::Unit::degrees;
    return {
        {"spine_tilt", marks::View::faceOn, deg, 1, everyMoment(), trunkTilt, 0.2},
        {"spine_tilt_change", marks::View::faceOn, deg, 1, afterAddress(), trunkTiltChange, 0.2},
        {"forward_bend", marks::View::downTheLine, deg, 1, everyMoment(), trunkTilt, 0.2},
        {"forward_bend_change", marks::View::downTheLine, deg, 1, afterAddress(), trunkTiltChange, 0.2},
    };
}

} // namespace plumbmark::measure
