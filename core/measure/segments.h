// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "base/geometry.h"

namespace plumbmark::measure {

/// Angle at `vertex` between the directions to `a` and `c`, degrees in [0, 180].
[[nodiscard]] double includedAngle(base::Vec2 a, base::Vec2 vertex, base::Vec2 c);

/// A body segment's share of the mass and where its centre lies.
struct SegmentMass {
    std::string_view name;
    double mass = 0.0;   ///< any common unit (per cent, share)
    double centre = 0.0; ///< share of the way from the first end point to the second
};
/// Where a segment's mass centre lies.
[[nodiscard]] constexpr base::Vec2 segmentCentre(base::Vec2 first, base::Vec2 second, double centre) {
    return first + (second - first) * centre;
}

struct PlacedSegment {
    SegmentMass segment;
    base::Vec2 first, second;
};
/// Mass-weighted mean of the segments' centres; nothing when the masses sum to zero.
[[nodiscard]] std::optional<base::Vec2> centreOfMass(std::span<const PlacedSegment> segments);

/// de Leva 1996 (J Biomech 29:1223-1230, Table 4), per cent of mass and of length, with the end points that
/// marks on shoulders, hips and ankle CENTRES mean: trunk mid-shoulder to mid-hip (not from C7: 51.38 / 49.64
/// belongs there and would move the body's centre by 2 cm), shank to the ankle's centre. `women` 0 men .. 1
/// women.
struct BodyMasses {
    SegmentMass head, trunk, upperArm, forearm, hand, thigh, shank, foot;
};
[[nodiscard]] BodyMasses deLeva(double women);

} // namespace plumbmark::measure
