// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "analysis/detail/hands.h"

#include <algorithm>
#include <cmath>

namespace plumbmark::analysis {
namespace {

using body::Point;

/// The person's lead side as the network names it. A right-hander's lead side is the left; in a mirrored clip
/// the network sees the mirror's left.
bool leadIsLeft(const marks::ShotContext& context) {
    return (context.hand == marks::Hand::right) != context.mirrored;
}

base::Vec2 side(const body::Observation& seen, Point left, Point right, bool lead,
                const marks::ShotContext& context) {
    return seen[lead == leadIsLeft(context) ? left : right].direct;
}

base::Vec2 gripOf(const body::Observation& seen) {
    base::Vec2 sum;
    for (const Point p : {Point::left_wrist, Point::right_wrist, Point::left_index, Point::right_index}) {
        sum = sum + seen[p].direct;
    }
    return sum / 4.0;
}

} // namespace

void WorkingStature::add(const body::Observation& seen) {
    auto line = [&](Point a, Point b) { return base::length(seen[a].peak - seen[b].peak); };
    const double leg =
        std::max(line(Point::left_hip, Point::left_knee) + line(Point::left_knee, Point::left_ankle),
                 line(Point::right_hip, Point::right_knee) + line(Point::right_knee, Point::right_ankle));
    const base::Vec2 hips = base::midpoint(seen[Point::left_hip].peak, seen[Point::right_hip].peak);
    const base::Vec2 shoulders =
        base::midpoint(seen[Point::left_shoulder].peak, seen[Point::right_shoulder].peak);
    const double trunk = base::length(hips - shoulders);
    seen_.push_back(std::max(leg / 0.491, (leg + trunk) / 0.779));
}

double WorkingStature::pixels() const {
    if (seen_.empty()) {
        return 0.0;
    }
    std::vector<double> sorted(seen_);
    std::sort(sorted.begin(), sorted.end());
    return sorted[sorted.size() * 3 / 4];
}

club::Hands handsBetween(const body::Observation& a, const body::Observation& b, base::Seconds time,
                         const marks::ShotContext& context, double staturePixels) {
    const double span = (b.time - a.time).value();
    const double k = span > 0 ? std::clamp((time - a.time).value() / span, 0.0, 1.0) : 0.0;
    auto mix = [&](base::Vec2 p, base::Vec2 q) { return p + (q - p) * k; };
    auto limb = [&](Point left, Point right, bool lead) {
        return mix(side(a, left, right, lead, context), side(b, left, right, lead, context));
    };
    club::Hands hands;
    const base::Vec2 ga = gripOf(a), gb = gripOf(b);
    hands.grip = mix(ga, gb);
    hands.leadWrist = limb(Point::left_wrist, Point::right_wrist, true);
    hands.trailWrist = limb(Point::left_wrist, Point::right_wrist, false);
    hands.leadElbow = limb(Point::left_elbow, Point::right_elbow, true);
    hands.trailElbow = limb(Point::left_elbow, Point::right_elbow, false);
    hands.staturePixels = staturePixels;
    // Between looks the hands run on a curve; a tenth of the chord is a generous sagitta.
    hands.gripSigma = std::hypot(0.025 * staturePixels, 0.1 * base::length(gb - ga) * 4.0 * k * (1.0 - k));
    return hands;
}

club::Feet feetOf(const body::Observation& seen, const marks::ShotContext& context, double staturePixels) {
    const bool left = leadIsLeft(context);
    const base::Vec2 l = seen[Point::left_ankle].peak, r = seen[Point::right_ankle].peak;
    return {left ? l : r, left ? r : l, staturePixels};
}

} // namespace plumbmark::analysis
