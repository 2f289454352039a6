// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "comparison/overlay.h"

#include <cmath>
#include <numbers>

namespace plumbmark::comparison {
namespace {

/// The middle between the ankles at address, else where both are marked first; reference picture.
std::optional<base::Vec2> feetOf(const Side& side) {
    const auto middle = [&](base::Seconds t) -> std::optional<base::Vec2> {
        const auto a = marks::markAt(side.track, marks::Landmark::lead_ankle, t);
        const auto b = marks::markAt(side.track, marks::Landmark::trail_ankle, t);
        if (!a || !b) {
            return std::nullopt;
        }
        return side.scene.ground.toReference(static_cast<int>(marks::frameAt(side.track, t)),
                                             base::midpoint(a->at, b->at));
    };
    if (const auto* address = marks::find(side.moments, marks::MomentId::address)) {
        if (const auto feet = middle(address->time)) {
            return feet;
        }
    }
    for (const auto& frame : side.track) {
        if (const auto feet = middle(frame.time)) {
            return feet;
        }
    }
    return std::nullopt;
}

} // namespace

base::Vec2 Overlay::toFirst(base::Vec2 second) const {
    base::Vec2 p = second - secondFeet;
    if (mirrored) {
        p.x = -p.x;
    }
    const double turn = turnDegrees * std::numbers::pi / 180.0;
    return firstFeet + scale * base::Vec2{p.x * std::cos(turn) - p.y * std::sin(turn),
                                          p.x * std::sin(turn) + p.y * std::cos(turn)};
}

std::optional<Overlay> overlayOf(const Side& first, const Side& second, int firstFrame, int secondFrame) {
    const auto a = feetOf(first), b = feetOf(second);
    const double tall = first.scene.scale.pixelsPerStature, other = second.scene.scale.pixelsPerStature;
    if (!a || !b || tall <= 0 || other <= 0) {
        return std::nullopt;
    }
    Overlay out;
    out.firstFeet = first.scene.ground.fromReference(firstFrame, *a);
    out.secondFeet = second.scene.ground.fromReference(secondFrame, *b);
    out.scale = tall / other;
    out.mirrored = first.context.sideSign() != second.context.sideSign();
    const double lean = second.scene.vertical.angleDegrees;
    out.turnDegrees = first.scene.vertical.angleDegrees - (out.mirrored ? -lean : lean);
    return out;
}

} // namespace plumbmark::comparison
