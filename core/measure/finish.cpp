// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/finish.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "measure/segments.h"

namespace plumbmark::measure {
namespace {

using base::Vec2;
using marks::Landmark;
using marks::MomentId;

/// Heel to the ball of the foot, statures: about 0.73 of the foot's length (0.148 men, 0.132 women, de Leva
/// 1996; the share from memory). The toes stay on the ground when the heel comes up, so this is the part that
/// tilts.
constexpr double kHindFoot = 0.104, kHindFootSigma = 0.007;

std::optional<double> overLeadAnkle(Probe& p, MomentId m, const std::optional<Vec2>& point) {
    const auto ankle = p.at(Landmark::lead_ankle, m);
    const auto width = p.stanceWidth();
    if (!point || !ankle || !width) {
        return std::nullopt;
    }
    return (point->x - ankle->x) / *width;
}

/// Centre of the body's mass in level coordinates. Where the mass is, not force: never weight or pressure.
std::optional<Vec2> bodyCentre(Probe& p, MomentId m) {
    const auto body = deLeva(0.5 + p.ownNoise(60, 0.5)); // sex not told: between the two tables
    std::vector<PlacedSegment> parts;
    const auto hips = p.midHip(m);
    const auto shoulders = p.midShoulder(m);
    const auto head = p.head(m);
    if (!hips || !shoulders || !head) {
        return std::nullopt;
    }
    // Vertex to C7 by its centre: the head mark stands for it (50 % of that line, 2-3 cm above).
    parts.push_back({body.head, *head, *head});
    parts.push_back({body.trunk, *shoulders, *hips});
    struct Side {
        Landmark shoulder, elbow, wrist, hip, knee, ankle, heel, toe;
    };
    for (const Side& s :
         {Side{Landmark::lead_shoulder, Landmark::lead_elbow, Landmark::lead_wrist, Landmark::lead_hip,
               Landmark::lead_knee, Landmark::lead_ankle, Landmark::lead_heel, Landmark::lead_toe},
          Side{Landmark::trail_shoulder, Landmark::trail_elbow, Landmark::trail_wrist, Landmark::trail_hip,
               Landmark::trail_knee, Landmark::trail_ankle, Landmark::trail_heel, Landmark::trail_toe}}) {
        const auto shoulder = p.at(s.shoulder, m);
        const auto hip = p.at(s.hip, m);
        const auto knee = p.at(s.knee, m);
        const auto ankle = p.at(s.ankle, m);
        if (!shoulder || !hip || !knee || !ankle) {
            return std::nullopt;
        }
        parts.push_back({body.thigh, *hip, *knee});
        parts.push_back({body.shank, *knee, *ankle});
        const auto heel = p.tryAt(s.heel, m);
        const auto toe = p.tryAt(s.toe, m);
        parts.push_back({body.foot, heel && toe ? *heel : *ankle, heel && toe ? *toe : *ankle});
        // Arms are a tenth of the mass: a hidden one is taken to hang where the other marks leave it.
        const auto elbow = p.tryAt(s.elbow, m);
        const auto wrist = p.tryAt(s.wrist, m);
        const auto grip = p.tryAt(Landmark::grip, m);
        const Vec2 e = elbow ? *elbow : *shoulder;
        const Vec2 w = wrist ? *wrist : grip ? *grip : e;
        parts.push_back({body.upperArm, *shoulder, e});
        parts.push_back({body.forearm, e, w});
        parts.push_back({body.hand, w, w});
    }
    return centreOfMass(parts);
}

/// Heel up: the sine of the heel's height over the toes by the hind foot's length, which a turned foot keeps.
std::optional<double> footPitch(Probe& p, MomentId m) {
    const auto heel = p.at(Landmark::trail_heel, m);
    const auto toe = p.at(Landmark::trail_toe, m);
    const auto stature = p.stature();
    if (!heel || !toe || !stature) {
        return std::nullopt;
    }
    const double foot = *stature * (kHindFoot + p.ownNoise(61, kHindFootSigma));
    const double ratio = (heel->y - toe->y) / foot;
    // A foot near upright hardly shows its last degrees: there the sine is flat, and what the marks leave
    // open is the whole arc up to upright, which a slope does not tell.
    double fold = 0.0;
    if (const auto* moment = marks::find(p.input().moments, m)) {
        const auto a = marks::markAt(p.input().track, Landmark::trail_heel, moment->time);
        const auto b = marks::markAt(p.input().track, Landmark::trail_toe, moment->time);
        const double open = a && b ? std::hypot(a->sigma, b->sigma) / foot : 0.0;
        if (ratio + open > 1.0) {
            fold = std::acos(std::clamp(1.0 - open, -1.0, 1.0)) * 180.0 / std::numbers::pi;
        }
    }
    return std::asin(std::clamp(ratio, -0.995, 0.995)) * 180.0 / std::numbers::pi + p.ownNoise(62, fold);
}

} // namespace

Definitions finishDefinitions() {
    const auto faceOn = marks::View::faceOn;
    const auto widths = base::Unit::stance_widths;
    return {
        {"finish_head_over_lead_ankle",
         faceOn,
         widths,
         1,
         {MomentId::finish},
         [](Probe& p, MomentId m) { return overLeadAnkle(p, m, p.head(m)); },
         0.01},
        {"com_over_lead_ankle",
         faceOn,
         widths,
         1,
         {MomentId::impact, MomentId::finish},
         [](Probe& p, MomentId m) { return overLeadAnkle(p, m, bodyCentre(p, m)); },
         0.02},
        {"trail_foot_pitch",
         faceOn,
         base::Unit::degrees,
         1,
         {MomentId::finish},
         footPitch,
         3.0,
         20.0,
         "Trail heel and toe are not seen well enough in the finish; mark them by hand."},
    };
}

} // namespace plumbmark::measure
