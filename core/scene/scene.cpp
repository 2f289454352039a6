// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "scene/scene.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace plumbmark::scene {
namespace {
constexpr double kDegree = std::numbers::pi / 180.0;
constexpr double kToldSigma = 0.3;    // degrees: a phone's tilt sensor, read while held or clamped
constexpr double kAssumedSigma = 1.5; // degrees: cameras set up by eye (common practice, no source)
} // namespace

base::Vec2 Vertical::up() const {
    const double a = angleDegrees * kDegree;
    return {std::sin(a), -std::cos(a)};
}

base::Vec2 Vertical::right() const {
    const double a = angleDegrees * kDegree;
    return {std::cos(a), std::sin(a)};
}

Vertical fromRoll(base::Degrees roll) {
    return {-roll.value(), kToldSigma, "told"};
}

Vertical assumedVertical() {
    return {0.0, kAssumedSigma, "assumed"};
}

Vertical fromPlumbEdge(base::Vec2 a, base::Vec2 b) {
    const base::Vec2 upward = a.y > b.y ? b - a : a - b;
    const double span = base::length(upward);
    if (span < 1.0) {
        return assumedVertical();
    }
    // Two ends, one pixel each, across the edge; never better than the edge itself is plumb.
    const double placing = std::numbers::sqrt2 / span / kDegree;
    return {std::atan2(upward.x, -upward.y) / kDegree, std::hypot(placing, 0.1), "plumb"};
}

base::Vec2 GroundMotion::toReference(int frame, base::Vec2 p) const {
    if (steps_.empty()) {
        return p;
    }
    const Step& s =
        steps_[static_cast<std::size_t>(std::clamp<int>(frame, 0, static_cast<int>(steps_.size()) - 1))];
    return {s.a * p.x - s.b * p.y + s.tx, s.b * p.x + s.a * p.y + s.ty};
}

base::Vec2 GroundMotion::fromReference(int frame, base::Vec2 p) const {
    if (steps_.empty()) {
        return p;
    }
    const Step& s =
        steps_[static_cast<std::size_t>(std::clamp<int>(frame, 0, static_cast<int>(steps_.size()) - 1))];
    const double n = s.a * s.a + s.b * s.b;
    const base::Vec2 q{p.x - s.tx, p.y - s.ty};
    return {(s.a * q.x + s.b * q.y) / n, (s.a * q.y - s.b * q.x) / n};
}

bool GroundMotion::moved() const {
    return std::any_of(steps_.begin(), steps_.end(), [](const Step& s) {
        // The shift of the picture's near corner and of a point a thousand pixels out: turn and zoom count
        // too.
        const double near = std::hypot(s.tx, s.ty);
        const double far = std::hypot(1000.0 * (s.a - 1.0) + s.tx, 1000.0 * s.b + s.ty);
        return near > 2.0 || far > 2.0;
    });
}

double Scene::focal() const {
    return focalPixels.value_or(0.76 * std::max(width, height));
}

} // namespace plumbmark::scene
