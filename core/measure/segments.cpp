// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/segments.h"

#include <cmath>
#include <numbers>

namespace plumbmark::measure {

double includedAngle(base::Vec2 a, base::Vec2 vertex, base::Vec2 c) {
    const base::Vec2 p = a - vertex;
    const base::Vec2 q = c - vertex;
    return std::atan2(std::abs(base::cross(p, q)), base::dot(p, q)) * 180.0 / std::numbers::pi;
}

std::optional<base::Vec2> centreOfMass(std::span<const PlacedSegment> segments) {
    base::Vec2 sum;
    double mass = 0.0;
    for (const auto& s : segments) {
        sum = sum + segmentCentre(s.first, s.second, s.segment.centre) * s.segment.mass;
        mass += s.segment.mass;
    }
    if (!(mass > 0.0)) {
        return std::nullopt;
    }
    return sum / mass;
}

BodyMasses deLeva(double women) {
    const auto mix = [women](double men, double w) { return men + (w - men) * women; };
    return {
        {"head, vertex to C7", mix(6.94, 6.68), mix(0.5002, 0.4841)},
        {"trunk, mid-shoulder to mid-hip", mix(43.46, 42.57), mix(0.4310, 0.3782)},
        {"upper arm, shoulder to elbow", mix(2.71, 2.55), mix(0.5772, 0.5754)},
        {"forearm, elbow to wrist", mix(1.62, 1.38), mix(0.4574, 0.4559)},
        {"hand, wrist to third knuckle", mix(0.61, 0.56), mix(0.7900, 0.7474)},
        {"thigh, hip to knee", mix(14.16, 14.78), mix(0.4095, 0.3612)},
        {"shank, knee to ankle centre", mix(4.33, 4.81), mix(0.4395, 0.4352)},
        {"foot, heel to longest toe", mix(1.37, 1.29), mix(0.4415, 0.4014)},
    };
}

} // namespace plumbmark::measure
