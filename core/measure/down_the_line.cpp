// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/down_the_line.h"

#include <cmath>
#include <numbers>

namespace plumbmark::measure {
namespace {

using base::Vec2;
using marks::Landmark;
using marks::MomentId;

constexpr double kDegree = std::numbers::pi / 180.0;

/// Rear outline of the pelvis against a vertical touching it at address, + toward the ball.
std::optional<double> rearDepth(Probe& p, MomentId m) {
    return p.travel(
        m, [](Probe& q, MomentId at) { return q.at(Landmark::pelvis_rear, at); }, &Vec2::x);
}

std::optional<double> hipDepth(Probe& p, MomentId m) {
    return p.travel(m, &Probe::midHip, &Vec2::x);
}

/// Shaft against level ground as it shows: 0 flat, 90 upright.
std::optional<double> plane(Probe& p, MomentId m) {
    const auto s = p.shaft(m);
    if (!s) {
        return std::nullopt;
    }
    return std::atan2(std::abs(s->direction.y), std::abs(s->direction.x)) / kDegree;
}

/// How far the shaft points across the target line at the top: the sideways part of its picture by the length
/// it shows at address, where it lies across the line of sight.
std::optional<double> across(Probe& p, MomentId m) {
    const auto top = p.shaft(m);
    const auto address = p.shaft(MomentId::address);
    if (!top || !address) {
        return std::nullopt;
    }
    if (!top->head || !address->head) {
        return p.fail("The club head is not seen at address or at the top; mark it by hand in both frames.");
    }
    const double full = base::length(*address->head - address->grip);
    const double side = top->head->x - top->grip.x;
    if (full < 5.0) {
        return p.fail("The club is not seen long enough at address; mark butt and head by hand.");
    }
    const double share = side / (full * (1.0 + p.ownNoise(70, 0.05)));
    return std::asin(std::fmax(-1.0, std::fmin(1.0, share))) / kDegree;
}

/// Hands starting down against their way back at the same height, + outward (toward the ball).
std::optional<double> handPath(Probe& p, MomentId) {
    const auto m = MomentId::lead_arm_level_down;
    const auto& input = p.input();
    const auto down = p.tryAt(Landmark::grip, m);
    const auto* address = marks::find(input.moments, MomentId::address);
    const auto* top = marks::find(input.moments, MomentId::top);
    const auto stature = p.stature();
    if (!p.time(m) || !stature) {
        return std::nullopt;
    }
    if (!down || address == nullptr || top == nullptr) {
        return p.fail("The hands could not be followed back and down; mark the grip by hand going back and "
                      "coming down.");
    }
    // The way back crosses that height once on its way up.
    std::optional<Vec2> before;
    for (std::size_t i = marks::frameAt(input.track, address->time); i < input.track.size(); ++i) {
        if (input.track[i].time > top->time) {
            break;
        }
        const auto here = p.at(Landmark::grip, input.track[i].time, 130, MomentId::lead_arm_level_back);
        if (!here) {
            continue;
        }
        if (before && before->y < down->y && here->y >= down->y) {
            const double k = (down->y - before->y) / (here->y - before->y);
            const double back = before->x + (here->x - before->x) * k;
            // Turned by different amounts going back and down, the hands stand at different depths.
            return (down->x - back) / *stature + p.ownNoise(71, 0.008);
        }
        before = here;
    }
    return p.fail("The hands do not pass the height of \"" + words(m) +
                  "\" going back in this clip; mark the grip by hand.");
}

/// Direction of a line on the ground by where it meets the horizon, degrees, + toward the ball side far away.
std::optional<double> groundDirection(Probe& p, const std::optional<Vec2>& near,
                                      const std::optional<Vec2>& far) {
    if (!near || !far) {
        return std::nullopt;
    }
    const double rise = far->y - near->y;
    if (rise < 3.0) {
        return p.fail("The line of the feet or of the stick is too short in the picture to tell its aim.");
    }
    const double focal = p.input().scene.focal();
    const double atHorizon = near->x + (far->x - near->x) * (0.0 - near->y) / rise;
    return std::atan2(atHorizon, focal) / kDegree;
}

/// Aim of the toe line against a stick on the target line, + open (toward the player's side of the target).
std::optional<double> aimOfFeet(Probe& p, MomentId m) {
    const auto stickNear = p.tryAt(Landmark::stick_near, m);
    const auto stickFar = p.tryAt(Landmark::stick_far, m);
    if (!p.time(m)) {
        return std::nullopt;
    }
    if (!stickNear || !stickFar) {
        return p.fail("Aim needs a stick on the target line: lay one down and mark both its ends.");
    }
    const auto feet = groundDirection(p, p.at(Landmark::trail_toe, m), p.at(Landmark::lead_toe, m));
    const auto target = groundDirection(p, stickNear, stickFar);
    if (!feet || !target) {
        return std::nullopt;
    }
    return *target - *feet;
}

} // namespace

Definitions downTheLineDefinitions() {
    const auto line = marks::View::downTheLine;
    const auto deg = base::Unit::degrees;
    const auto statures = base::Unit::statures;
    const std::vector<MomentId> both{MomentId::top, MomentId::impact};
    return {
        {"pelvis_depth", line, statures, 1, both, rearDepth, 0.002},
        {"pelvis_depth_mid_hip", line, statures, 1, both, hipDepth, 0.002},
        {"shaft_plane",
         line,
         deg,
         1,
         {MomentId::address, MomentId::lead_arm_level_down},
         plane,
         0.3,
         15.0,
         "The shaft is not seen well enough here; mark butt and club head by hand."},
        {"shaft_at_top",
         line,
         deg,
         1,
         {MomentId::top},
         across,
         2.0,
         20.0,
         "The shaft at the top is not seen well enough; mark butt and club head by hand."},
        {"hand_path", line, statures, 1, {}, handPath, 0.003},
        {"aim_feet",
         line,
         deg,
         1,
         {MomentId::address},
         aimOfFeet,
         0.5,
         6.0,
         "The toe line is too short in this picture to tell the aim; put a stick along the toes as well."},
    };
}

} // namespace plumbmark::measure
