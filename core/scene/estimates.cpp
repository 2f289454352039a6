// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "scene/estimates.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace plumbmark::scene {
namespace {
using marks::Landmark;
constexpr double kDegree = std::numbers::pi / 180.0;
constexpr double kPitchSigma = 3.0; // degrees

std::optional<base::Vec2> mid(const marks::FrameMarks& f, Landmark a, Landmark b) {
    if (!f[a] || !f[b]) {
        return std::nullopt;
    }
    return base::midpoint(f[a]->at, f[b]->at);
}
} // namespace

std::optional<Scale> scaleFromBody(const marks::FrameMarks& address, marks::View view,
                                   const Vertical& vertical) {
    const auto hip = mid(address, Landmark::lead_hip, Landmark::trail_hip);
    const auto ankle = mid(address, Landmark::lead_ankle, Landmark::trail_ankle);
    if (!hip || !ankle) {
        return std::nullopt;
    }
    const auto height = [&](base::Vec2 from, base::Vec2 to) { return base::dot(to - from, vertical.up()); };
    Scale scale;
    // Hip joint to ankle centre is 0.530 - 0.039 of stature on a straight leg; knees softened by about 20
    // degrees and hips a little behind the ankles leave 0.97 of it upright, feet apart another 0.985
    // (face-on).
    const double leg = (0.530 - 0.039) * 0.97;
    double sum = height(*ankle, *hip) / leg;
    int terms = 1;
    if (const auto shoulder = mid(address, Landmark::lead_shoulder, Landmark::trail_shoulder)) {
        const double trunk = 0.818 - 0.530;
        if (view == marks::View::faceOn) {
            // Bent forward by about 33 degrees: the trunk shows upright by its cosine.
            sum += height(*ankle, *shoulder) / (leg + trunk * std::cos(33.0 * kDegree));
            ++terms;
        } else {
            sum += (height(*ankle, *hip) + base::length(*shoulder - *hip)) / (leg + trunk);
            ++terms;
        }
    }
    scale.pixelsPerStature = sum / terms;
    if (!(scale.pixelsPerStature > 1.0)) {
        return std::nullopt;
    }
    scale.relativeSigma = terms == 2 ? 0.05 : 0.07; // builds differ by 3-4 %, postures add their share
    scale.source = "body";
    return scale;
}

Scale withStature(Scale scale, double statureMetres) {
    if (statureMetres > 0.0) {
        scale.pixelsPerMetre = scale.pixelsPerStature / statureMetres;
    }
    return scale;
}

Scale scaleFromDistance(double statureMetres, double distanceMetres, const Scene& scene) {
    Scale scale;
    scale.pixelsPerMetre = scene.focal() / distanceMetres;
    scale.pixelsPerStature = *scale.pixelsPerMetre * statureMetres;
    scale.relativeSigma = std::hypot(scene.focalRelativeSigma(), 0.04);
    scale.source = "stature";
    return scale;
}

std::optional<Yaw> yawFromStick(const marks::Mark& nearEnd, const marks::Mark& farEnd, marks::View view,
                                const Scene& scene) {
    const double focal = scene.focal();
    const base::Vec2 centre{scene.width / 2.0, scene.height / 2.0};
    // A ground point at (X right, Z away) under a level camera of height h shows at x = f X / Z, y = f h / Z
    // below the horizon; h cancels in the direction of the stick.
    const auto direction = [&](base::Vec2 a, base::Vec2 b, double pitchDegrees) -> std::optional<double> {
        const double horizon = focal * std::tan(pitchDegrees * kDegree);
        const auto ground = [&](base::Vec2 p) -> std::optional<base::Vec2> {
            const base::Vec2 q = p - centre;
            const double x = base::dot(q, scene.vertical.right());
            const double below = -base::dot(q, scene.vertical.up()) + horizon;
            if (below < 0.01 * focal) {
                return std::nullopt;
            }
            return base::Vec2{x / below, focal / below};
        };
        const auto p = ground(a);
        const auto q = ground(b);
        if (!p || !q) {
            return std::nullopt;
        }
        base::Vec2 along = *q - *p;
        if (view == marks::View::faceOn) {
            // Square: the stick runs across the line of sight. Undirected.
            if (along.x < 0.0) {
                along = along * -1.0;
            }
            return along.x > 0.0 ? std::optional(std::atan2(along.y, along.x) / kDegree) : std::nullopt;
        }
        if (along.y < 0.0) {
            along = along * -1.0;
        }
        return along.y > 0.0 ? std::optional(std::atan2(-along.x, along.y) / kDegree) : std::nullopt;
    };
    if (base::length(nearEnd.at - farEnd.at) < 10.0) {
        return std::nullopt;
    }
    const auto value = direction(nearEnd.at, farEnd.at, 0.0);
    if (!value || std::abs(*value) > 30.0) {
        return std::nullopt;
    }
    double variance = 0.0;
    const auto add = [&](std::optional<double> moved) {
        variance += moved ? (*moved - *value) * (*moved - *value) : 25.0;
    };
    add(direction(nearEnd.at + base::Vec2{nearEnd.sigma, 0}, farEnd.at, 0.0));
    add(direction(nearEnd.at + base::Vec2{0, nearEnd.sigma}, farEnd.at, 0.0));
    add(direction(nearEnd.at, farEnd.at + base::Vec2{farEnd.sigma, 0}, 0.0));
    add(direction(nearEnd.at, farEnd.at + base::Vec2{0, farEnd.sigma}, 0.0));
    add(direction(nearEnd.at, farEnd.at, kPitchSigma));
    const double slopeOfRoll =
        scene.vertical.sigmaDegrees * 4.0; // a roll error shows about four times on the ground
    variance += view == marks::View::faceOn ? slopeOfRoll * slopeOfRoll : 0.25 * slopeOfRoll * slopeOfRoll;
    return Yaw{*value, std::sqrt(variance)};
}

} // namespace plumbmark::scene
