// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/turn.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace plumbmark::measure {
namespace {

using base::Vec2;
using marks::Landmark;
using marks::MomentId;

constexpr double kDegree = std::numbers::pi / 180.0;
constexpr double kSure = 12.0; // degrees: a turn less sure than this is not told

// Seen from the front these are assumptions, and their sigma is the price (docs/measurements.md).
constexpr double kTrunkBend = 33.0, kTrunkBendSigma = 6.0;
constexpr double kPelvisBend = 20.0, kPelvisBendSigma = 8.0;
/// Front of belt and shirt ahead of the joint line's middle, statures; known to 15 %.
constexpr double kPelvisHalfDepth = 0.065, kChestHalfDepth = 0.070;

/// Side bend in the trunk's own frame adds to what the turn shows: little going back, much through impact.
double sideBendSigma(MomentId m) {
    return m <= MomentId::top ? 5.0 : 15.0;
}

/// Turn of a joint line about an inclined axis: atan2(dy / sin b, dx), dx across and dy along the axis as it
/// shows in the picture, b its bend toward the camera. Keeps its sign, passes 90 degrees, needs no width;
/// never made from the line's length (a true 90 degrees about a spine bent 35 would read 55).
std::optional<double> lineTurn(Probe& p, MomentId m, Landmark leadMark, Landmark trailMark, double bend,
                               double bendSigma) {
    const auto lead = p.at(leadMark, m);
    const auto trail = p.at(trailMark, m);
    const auto hip = p.midHip(m);
    const auto shoulder = p.midShoulder(m);
    if (!lead || !trail || !hip || !shoulder) {
        return std::nullopt;
    }
    const Vec2 spine = *shoulder - *hip;
    const double length = base::length(spine);
    if (length < 1.0) {
        return p.fail("Hips and shoulders fall together in the picture; check the marks.");
    }
    const double own = p.ownNoise(20 + static_cast<int>(m), sideBendSigma(m)) * kDegree;
    const Vec2 along{spine.x / length * std::cos(own) - spine.y / length * std::sin(own),
                     spine.x / length * std::sin(own) + spine.y / length * std::cos(own)};
    const Vec2 across{along.y, -along.x}; // toward the target when the trunk stands upright
    const Vec2 span = *lead - *trail;
    const double b = (bend + p.ownNoise(40, bendSigma)) * kDegree;
    return std::atan2(base::dot(span, along) / std::sin(b), base::dot(span, across)) / kDegree;
}

/// A mark on the front of the body against the middle of the joint line: offset = half-depth x sin(turn).
std::optional<double> facingTurn(Probe& p, MomentId m, Landmark mark, bool pelvis) {
    const auto front = p.tryAt(mark, m);
    const auto middle = pelvis ? p.midHip(m) : p.midShoulder(m);
    const auto stature = p.stature();
    if (!front || !middle || !stature) {
        return std::nullopt;
    }
    const double depth = (pelvis ? kPelvisHalfDepth : kChestHalfDepth) * (1.0 + p.ownNoise(41, 0.15));
    double offset = front->x - middle->x;
    if (!pelvis) {
        // The buttons sit below the shoulder line: a leaning spine carries them sideways.
        const auto hip = p.midHip(m);
        if (!hip) {
            return std::nullopt;
        }
        const double share = std::clamp((middle->y - front->y) / std::max(1.0, middle->y - hip->y), 0.0, 1.0);
        offset -= (hip->x - middle->x) * share;
    }
    const double share = std::clamp(offset / (*stature * depth), -0.98, 0.98);
    return std::asin(share) / kDegree + p.ownNoise(42, 4.0);
}

bool markedByHand(const Probe& p, Landmark mark, MomentId m) {
    const auto* moment = marks::find(p.input().moments, m);
    if (moment == nullptr || p.input().track.empty()) {
        return false;
    }
    const auto i = marks::frameAt(p.input().track, moment->time);
    const auto near = [&](std::size_t k) {
        const auto& q = p.input().track[k][mark];
        return q && q->origin == base::Origin::hand;
    };
    return near(i) || (i + 1 < p.input().track.size() && near(i + 1));
}

constexpr std::string_view kNotSeen = "A turn cannot be told from this clip: mark belt buckle and shirt "
                                      "buttons by hand where they are seen, or put an "
                                      "alignment stick through the belt loops.";

std::optional<double> pelvisTurn(Probe& p, MomentId m) {
    if (!p.time(m)) {
        return std::nullopt;
    }
    if (markedByHand(p, Landmark::belt_buckle, m)) {
        return facingTurn(p, m, Landmark::belt_buckle, true);
    }
    return lineTurn(p, m, Landmark::lead_hip, Landmark::trail_hip, kPelvisBend, kPelvisBendSigma);
}

std::optional<double> chestTurn(Probe& p, MomentId m) {
    if (!p.time(m)) {
        return std::nullopt;
    }
    if (!markedByHand(p, Landmark::sternum, m)) {
        return p.fail(std::string(kNotSeen));
    }
    return facingTurn(p, m, Landmark::sternum, false);
}

std::optional<double> shoulderTurn(Probe& p, MomentId m) {
    // The software's shoulders are held to what the arms tell where one hides the other (body/track.cpp): a
    // turn read from them would be that assumption read back.
    if (!p.time(m)) {
        return std::nullopt;
    }
    if (!markedByHand(p, Landmark::lead_shoulder, m) || !markedByHand(p, Landmark::trail_shoulder, m)) {
        return p.fail(std::string(kNotSeen));
    }
    return lineTurn(p, m, Landmark::lead_shoulder, Landmark::trail_shoulder, kTrunkBend, kTrunkBendSigma);
}

std::optional<double> separation(Probe& p, MomentId m) {
    const auto chest = chestTurn(p, m);
    const auto pelvis = pelvisTurn(p, m);
    if (!chest || !pelvis) {
        return std::nullopt;
    }
    return *chest - *pelvis;
}

} // namespace

Definitions turnDefinitions() {
    const auto faceOn = marks::View::faceOn;
    const auto deg = base::Unit::degrees;
    const std::vector<MomentId> where{MomentId::top, MomentId::shaft_level_down, MomentId::impact,
                                      MomentId::finish};
    return {
        {"pelvis_turn", faceOn, deg, 1, where, pelvisTurn, 2.0, kSure, kNotSeen},
        {"shoulder_turn", faceOn, deg, 2, where, shoulderTurn, 3.0, kSure, kNotSeen},
        {"chest_turn", faceOn, deg, 1, where, chestTurn, 2.0, kSure, kNotSeen},
        {"separation", faceOn, deg, 1, where, separation, 3.0, kSure, kNotSeen},
    };
}

} // namespace plumbmark::measure
