// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/joints.h"

#include <cmath>
#include <numbers>

#include "measure/segments.h"

namespace plumbmark::measure {
namespace {

using base::Vec2;
using marks::Landmark;
using marks::MomentId;

/// Bend of a swinging lead elbow that points at a camera in front, degrees: hardly any player locks it, and
/// its crook looks more to the camera than across (common practice, no source).
constexpr double kElbowTowardCamera = 12.0, kElbowTowardCameraSigma = 6.0;

/// 180 minus the included angle as it shows in the picture. What leans out of the picture's plane shortens a
/// limb and changes the angle by a share of itself (`foreshortening`).
std::optional<double> flex(Probe& p, MomentId m, Landmark near, Landmark joint, Landmark far,
                           double foreshortening) {
    const auto a = p.at(near, m);
    const auto b = p.at(joint, m);
    const auto c = p.at(far, m);
    if (!a || !b || !c) {
        return std::nullopt;
    }
    if (base::length(*a - *b) < 1.0 || base::length(*c - *b) < 1.0) {
        return p.fail("The " + words(joint) +
                      " falls together with its neighbour in the picture; check the marks.");
    }
    const double angle = 180.0 - includedAngle(*a, *b, *c);
    // A limb that leans out of the picture's plane hides part of its bend: more from the front, where arms
    // point at the camera, than down the line, where a knee bends in the picture's plane.
    const double open = p.ownNoise(50, (p.faceOn() ? 5.0 : 3.0) + foreshortening * angle);
    if (!p.faceOn()) {
        return angle + open;
    }
    // Two small bends at right angles add up by their squares: what shows and what points at the camera.
    return std::hypot(angle, std::max(0.0, kElbowTowardCamera + p.ownNoise(53, kElbowTowardCameraSigma))) +
           open;
}

std::optional<double> kneeFromTheFront(Probe& p, MomentId) {
    return p.fail("A knee bends toward the camera here, so its angle cannot be told from the front; film "
                  "down the line.");
}

/// Grip to trail shoulder against the arm's length.
std::optional<double> width(Probe& p, MomentId m) {
    const auto grip = p.tryAt(Landmark::grip, m);
    const auto shoulder = p.at(Landmark::trail_shoulder, m);
    const auto stature = p.stature();
    if (!shoulder || !stature) {
        return std::nullopt;
    }
    const auto hands = grip ? grip : p.mid(Landmark::lead_wrist, Landmark::trail_wrist, m);
    if (!hands) {
        return p.fail("The hands could not be seen at \"" + words(m) + "\"; mark the grip by hand.");
    }
    // Upper arm and forearm: 0.1618 + 0.1545 of stature (de Leva 1996, men), Drillis & Contini 0.186 + 0.146.
    const double arm = *stature * (0.323 + p.ownNoise(51, 0.010));
    // The hands swing before the chest: that part of the way points at the camera.
    const double ahead = *stature * (0.17 + p.ownNoise(52, 0.05));
    return std::hypot(base::length(*hands - *shoulder), ahead) / arm;
}

} // namespace

Definitions jointDefinitions() {
    const auto faceOn = marks::View::faceOn;
    const auto line = marks::View::downTheLine;
    const auto deg = base::Unit::degrees;
    const auto elbow = [](Probe& p, MomentId m) {
        return flex(p, m, Landmark::lead_shoulder, Landmark::lead_elbow, Landmark::lead_wrist, 0.20);
    };
    const auto lead = [](Probe& p, MomentId m) {
        return flex(p, m, Landmark::lead_hip, Landmark::lead_knee, Landmark::lead_ankle, 0.12);
    };
    const auto trail = [](Probe& p, MomentId m) {
        return flex(p, m, Landmark::trail_hip, Landmark::trail_knee, Landmark::trail_ankle, 0.12);
    };
    const std::string_view unsure =
        "The joint is not seen well enough here; mark it and its neighbours by hand.";
    return {
        {"takeaway_width",
         faceOn,
         base::Unit::ratio,
         1,
         {MomentId::shaft_level_back, MomentId::lead_arm_level_back},
         width,
         0.01},
        {"lead_elbow_flex", faceOn, deg, 2, everyMoment(), elbow, 1.0, 25.0, unsure},
        {"lead_knee_flex", faceOn, deg, 1, everyMoment(), kneeFromTheFront, 1.0},
        {"trail_knee_flex", faceOn, deg, 1, everyMoment(), kneeFromTheFront, 1.0},
        {"lead_knee_flex", line, deg, 1, everyMoment(), lead, 1.0, 20.0, unsure},
        {"trail_knee_flex", line, deg, 1, everyMoment(), trail, 1.0, 20.0, unsure},
    };
}

} // namespace plumbmark::measure
