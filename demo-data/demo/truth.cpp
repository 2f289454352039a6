// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "demo/truth.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace plumbmark::demo {
namespace {

using marks::Landmark;
using marks::MomentId;

double deg(double radians) {
    return radians / kDeg;
}

double included(V3 a, V3 b) {
    return deg(std::acos(std::clamp(dot(unit(a), unit(b)), -1.0, 1.0)));
}

/// Root of f between a and b where the signs differ.
double root(const std::function<double(double)>& f, double a, double b) {
    double fa = f(a);
    for (int i = 0; i < 60; ++i) {
        const double m = 0.5 * (a + b), fm = f(m);
        if ((fa < 0) == (fm < 0)) {
            a = m;
            fa = fm;
        } else {
            b = m;
        }
    }
    return 0.5 * (a + b);
}

constexpr double kScan = 0.0005;

/// First crossing of zero in (a, b]; forward or backward in time, in either direction of sign unless told.
std::optional<double> crossing(const std::function<double(double)>& f, double a, double b, int sign = 0,
                               bool last = false) {
    std::optional<double> found;
    double previous = f(a);
    for (double t = a + kScan; t <= b; t += kScan) {
        const double now = f(t);
        if ((previous < 0) != (now < 0) && (sign == 0 || (sign > 0) == (now > previous))) {
            found = root(f, t - kScan, t);
            if (!last) {
                return found;
            }
        }
        previous = now;
    }
    return found;
}

/// Place of the least value of f in [a, b].
double least(const std::function<double(double)>& f, double a, double b) {
    double best = a, value = f(a);
    for (double t = a; t <= b; t += kScan) {
        const double v = f(t);
        if (v < value) {
            value = v;
            best = t;
        }
    }
    double lo = std::max(a, best - kScan), hi = std::min(b, best + kScan);
    for (int i = 0; i < 40; ++i) {
        const double m1 = lo + (hi - lo) / 3, m2 = hi - (hi - lo) / 3;
        (f(m1) < f(m2) ? hi : lo) = f(m1) < f(m2) ? m2 : m1;
    }
    return 0.5 * (lo + hi);
}

double speed(const Motion& motion, double t, const std::function<V3(const Pose&)>& point) {
    const double h = 0.0005;
    return length(point(motion.at(t + h)) - point(motion.at(t - h))) / (2 * h);
}

/// The shaft seen square to the target line: 0 = straight down, + toward the target, degrees in (-180, 180].
double frontAngle(const Pose& pose) {
    return deg(std::atan2(pose.shaft.x, -pose.shaft.z));
}

} // namespace

V3 centreOfMass(const Pose& pose, const Body& body) {
    // de Leva 1996, Table 4: mass shares and centres, men / women.
    const bool w = body.woman;
    const auto part = [&](V3 a, V3 b, double mass, double share, V3& sum, double& total) {
        sum += lerp(a, b, share) * mass;
        total += mass;
    };
    V3 sum;
    double total = 0;
    const V3 mid = lerp(pose.shoulder[0], pose.shoulder[1], 0.5);
    const V3 vertex = pose.headCentre + pose.head.up * (body.headHeight / 2);
    part(vertex, pose.neckBase, w ? 0.0668 : 0.0694, w ? 0.4841 : 0.5002, sum, total);
    part(mid, pose.midHip, w ? 0.4257 : 0.4346, w ? 0.3782 : 0.4310, sum, total);
    for (std::size_t s = 0; s < 2; ++s) {
        part(pose.shoulder[s], pose.elbow[s], w ? 0.0255 : 0.0271, w ? 0.5754 : 0.5772, sum, total);
        part(pose.elbow[s], pose.wrist[s], w ? 0.0138 : 0.0162, w ? 0.4559 : 0.4574, sum, total);
        part(pose.wrist[s], pose.handCentre[s], w ? 0.0056 : 0.0061, w ? 0.7474 : 0.79, sum, total);
        part(pose.hip[s], pose.knee[s], w ? 0.1478 : 0.1416, w ? 0.3612 : 0.4095, sum, total);
        part(pose.knee[s], pose.foot[s].ankle, w ? 0.0481 : 0.0433, w ? 0.4352 : 0.4395, sum, total);
        part(pose.foot[s].heel, pose.foot[s].toe, w ? 0.0129 : 0.0137, w ? 0.4014 : 0.4415, sum, total);
    }
    return sum / total;
}

Camera cameraAt(const Spec& spec, const Motion& motion, int width, int height, double time) {
    const Filming& f = spec.filming;
    const double side = spec.hand == marks::Hand::right ? -1.0 : 1.0; // world x of the target
    double pan = 0, tip = 0;
    if (f.panDegrees != 0) {
        // The helper follows the hands a little late.
        const double hit = motion.impact(), tb = motion.params().backswing;
        const auto ease = [](double t) {
            t = std::clamp(t, 0.0, 1.0);
            return t * t * (3 - 2 * t);
        };
        pan = f.panDegrees * (-ease((time - 0.15) / tb) + 1.8 * ease((time - hit + 0.05) / 0.6));
    }
    if (f.shakeDegrees != 0) {
        const double q = static_cast<double>(spec.seed % 17);
        pan += f.shakeDegrees * (std::sin(9.1 * time + q) + 0.6 * std::sin(17.3 * time + 2 * q));
        tip += f.shakeDegrees * (std::sin(7.7 * time + 3 * q) + 0.5 * std::sin(21.1 * time + q));
    }
    V3 position, aim;
    if (spec.view == marks::View::faceOn) {
        const double a = f.yaw * kDeg;
        aim = {side * f.aimX, 0.25, f.aimZ};
        position = {std::sin(a) * f.distance, std::cos(a) * f.distance, f.lensHeight};
        aim = aim + V3{std::cos(a), -std::sin(a), 0} * 0.0;
    } else {
        // On the hands' line, looking along the target line.
        const double a = f.yaw * kDeg;
        const double handsY = 0.36;
        aim = {0, handsY + f.aimX, f.aimZ};
        position = {-side * std::cos(a) * f.distance, handsY + f.aimX + std::sin(a) * f.distance,
                    f.lensHeight};
    }
    const V3 to = aim - position;
    V3 heading = unit({to.x, to.y, 0});
    const double p = pan * kDeg;
    const V3 right = cross(heading, V3{0, 0, 1});
    // + pan turns toward the target.
    const double sense = spec.view == marks::View::faceOn ? (right.x * side > 0 ? 1.0 : -1.0) : 1.0;
    heading = unit(heading * std::cos(p) + right * (std::sin(p) * sense));
    const double pitch = deg(std::atan2(to.z, std::hypot(to.x, to.y))) + tip;
    return makeCamera(position, heading, pitch, f.roll, f.focalShare * std::max(width, height), width,
                      height);
}

Points pointsOf(const Spec& spec, const Motion& motion, double time) {
    const Pose pose = motion.at(time);
    const SurfacePoints s = surfacePoints(pose, motion.body(), motion.club(), spec.look);
    Points out;
    const auto set = [&](Landmark l, V3 p) { out[static_cast<std::size_t>(l)] = p; };
    set(Landmark::nose, s.nose);
    set(Landmark::head_centre, pose.headCentre);
    set(Landmark::head_crown, s.crown);
    // The head's outline in the view: front = toward the target (face-on) or the ball (down-the-line).
    if (spec.view == marks::View::faceOn) {
        set(Landmark::head_front, {s.headHigh.x, pose.headCentre.y, pose.headCentre.z});
        set(Landmark::head_back, {s.headLow.x, pose.headCentre.y, pose.headCentre.z});
    } else {
        set(Landmark::head_front, {pose.headCentre.x, s.headHigh.y, pose.headCentre.z});
        set(Landmark::head_back, {pose.headCentre.x, s.headLow.y, pose.headCentre.z});
    }
    set(Landmark::lead_ear, s.leadEar);
    set(Landmark::trail_ear, s.trailEar);
    set(Landmark::neck_base, pose.neckBase);
    const std::array<std::array<Landmark, 2>, 8> pairs{{{Landmark::lead_shoulder, Landmark::trail_shoulder},
                                                        {Landmark::lead_elbow, Landmark::trail_elbow},
                                                        {Landmark::lead_wrist, Landmark::trail_wrist},
                                                        {Landmark::lead_hip, Landmark::trail_hip},
                                                        {Landmark::lead_knee, Landmark::trail_knee},
                                                        {Landmark::lead_ankle, Landmark::trail_ankle},
                                                        {Landmark::lead_heel, Landmark::trail_heel},
                                                        {Landmark::lead_toe, Landmark::trail_toe}}};
    for (std::size_t i = 0; i < 2; ++i) {
        set(pairs[0][i], pose.shoulder[i]);
        set(pairs[1][i], pose.elbow[i]);
        set(pairs[2][i], pose.wrist[i]);
        set(pairs[3][i], pose.hip[i]);
        set(pairs[4][i], pose.knee[i]);
        set(pairs[5][i], pose.foot[i].ankle);
        set(pairs[6][i], pose.foot[i].heel);
        set(pairs[7][i], pose.foot[i].toe);
    }
    set(Landmark::grip, pose.grip);
    set(Landmark::belt_buckle, s.buckle);
    set(Landmark::sternum, s.sternum);
    set(Landmark::pelvis_rear, s.pelvisRear);
    set(Landmark::club_butt, pose.butt);
    set(Landmark::club_head, pose.headPoint);
    set(Landmark::leading_edge, s.leadingEdge);
    if (spec.hasBall && time <= motion.impact()) {
        set(Landmark::ball, motion.ball());
    }
    if (spec.around.stick) {
        set(Landmark::stick_near, kStickNear);
        set(Landmark::stick_far, kStickFar);
    }
    set(Landmark::ground_lead, {1.0, 0, 0});
    set(Landmark::ground_trail, {-1.0, 0, 0});
    return out;
}

std::vector<TrueMoment> trueMoments(const Spec&, const Motion& motion) {
    std::vector<TrueMoment> out;
    const double tb = motion.params().backswing, end = motion.end();
    const auto shaftHeight = [&](double t) { return motion.at(t).shaft.z; };
    const auto armHeight = [&](double t) {
        const Pose p = motion.at(t);
        return p.wrist[0].z - p.shoulder[0].z;
    };
    const double faceX = motion.ball().x - kBallRadius;
    const auto toBall = [&](double t) { return motion.at(t).headPoint.x - faceX; };

    const auto impact = crossing(toBall, motion.impact() - 0.03, motion.impact() + 0.03, +1);
    if (!impact) {
        return out;
    }
    // Rotation of the shaft reverses: the extremum of its angle seen square to the target line.
    const auto unwrapped = [&](double t) {
        const double a =
            frontAngle(motion.at(t)); // going back: 0 .. -180, then 180 .. 60: carry on below -180
        return a > 0 && t > 0.3 * tb && t < *impact - 0.02 ? a - 360 : a;
    };
    const double top = least(unwrapped, 0.6 * tb, *impact - 0.03);
    const auto levelBack = crossing(shaftHeight, 0.02, top);
    if (levelBack) {
        // Last instant at which the club head still rests (slower than 5 cm/s).
        const auto moving = [&](double t) {
            return speed(motion, t, [](const Pose& p) { return p.headPoint; }) - 0.05;
        };
        double t = *levelBack;
        while (t > motion.start() && moving(t) > 0) {
            t -= kScan;
        }
        out.push_back({MomentId::address, root(moving, t, t + kScan)});
        out.push_back({MomentId::shaft_level_back, *levelBack});
    }
    if (const auto t = crossing(armHeight, 0.05, top, +1)) {
        out.push_back({MomentId::lead_arm_level_back, *t});
    }
    {
        const auto place = [&](double t) { return motion.at(t).midHip.x; };
        out.push_back({MomentId::pelvis_starts_forward, least(place, 0.35 * tb, *impact)});
    }
    out.push_back({MomentId::top, top});
    if (const auto t = crossing(armHeight, top, *impact, -1)) {
        out.push_back({MomentId::lead_arm_level_down, *t});
    }
    if (const auto t = crossing(shaftHeight, top, *impact, -1, true)) {
        out.push_back({MomentId::shaft_level_down, *t});
    }
    out.push_back({MomentId::impact, *impact});
    if (const auto t =
            crossing([&](double u) { return frontAngle(motion.at(u)) - 45; }, *impact, *impact + 0.2, +1)) {
        out.push_back({MomentId::release, *t});
    }
    if (const auto t = crossing(shaftHeight, *impact, *impact + 0.3, +1)) {
        out.push_back({MomentId::shaft_level_through, *t});
    }
    // Finish: hands and mid-hip both slower than 5 % of their own greatest speed for 0.15 s.
    const auto hand = [](const Pose& p) { return p.grip; };
    const auto hip = [](const Pose& p) { return p.midHip; };
    double handPeak = 0, hipPeak = 0;
    for (double t = 0; t < end; t += 0.002) {
        handPeak = std::max(handPeak, speed(motion, t, hand));
        hipPeak = std::max(hipPeak, speed(motion, t, hip));
    }
    double quietSince = -1;
    for (double t = *impact + 0.05; t <= end; t += 0.001) {
        const bool quiet = speed(motion, t, hand) < 0.05 * handPeak && speed(motion, t, hip) < 0.05 * hipPeak;
        if (!quiet) {
            quietSince = -1;
        } else if (quietSince < 0) {
            quietSince = t;
        } else if (t - quietSince >= 0.15) {
            out.push_back({MomentId::finish, quietSince});
            break;
        }
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const TrueMoment& a, const TrueMoment& b) { return a.time < b.time; });
    return out;
}

std::vector<TrueValue> trueMeasurements(const Spec& spec, const Motion& motion,
                                        const std::vector<TrueMoment>& moments) {
    std::vector<TrueValue> out;
    const Body& body = motion.body();
    const double h = body.stature;
    const auto when = [&](MomentId id) -> std::optional<double> {
        for (const TrueMoment& m : moments) {
            if (m.id == id) {
                return m.time;
            }
        }
        return std::nullopt;
    };
    const auto address = when(MomentId::address), top = when(MomentId::top), impact = when(MomentId::impact);
    if (!address || !top || !impact) {
        return out;
    }
    const auto say = [&](std::string id, std::optional<MomentId> m, double v, const char* unitText) {
        out.push_back({std::move(id), m, v, unitText});
    };
    const Pose rest = motion.at(*address);
    const auto mid = [](const std::array<V3, 2>& p) { return lerp(p[0], p[1], 0.5); };
    const auto tilt = [](V3 low, V3 high) { return deg(std::atan2(-(high.x - low.x), high.z - low.z)); };
    const auto bend = [](V3 low, V3 high) { return deg(std::atan2(high.y - low.y, high.z - low.z)); };
    const auto flat = [](V3 a) { return std::hypot(a.x, a.y); };
    const double stance = flat(rest.foot[0].ankle - rest.foot[1].ankle);
    const double stanceX = rest.foot[0].ankle.x - rest.foot[1].ankle.x;
    const double joints = body.hipDistance;

    say("stance_width_ratio", MomentId::address, stance / length(rest.shoulder[0] - rest.shoulder[1]),
        "ratio");
    if (spec.hasBall) {
        say("ball_position", MomentId::address, (rest.foot[0].ankle.x - motion.ball().x) / stanceX, "ratio");
    }
    for (std::size_t s = 0; s < 2; ++s) {
        const V3 f = rest.foot[s].toe - rest.foot[s].heel;
        say(s == 0 ? "foot_flare_lead" : "foot_flare_trail", MomentId::address,
            deg(std::atan2(s == 0 ? f.x : -f.x, f.y)), "degrees");
    }

    // The turn of a lead-pointing line about an axis: 0 square to the target line, + open.
    const auto turn = [](V3 lead, V3 axis) {
        const V3 lead0 = across({1, 0, 0}, axis);
        const V3 front0 = unit(V3{0, 1, 0} - axis * dot(V3{0, 1, 0}, axis) - lead0 * dot(V3{0, 1, 0}, lead0));
        return deg(std::atan2(-dot(lead, front0), dot(lead, lead0)));
    };
    const auto flex = [](V3 a, V3 b, V3 c) { return included(b - a, c - b); };
    const auto pictureAngle = [](V3 a, V3 b) { // seen square to the target line
        return included({a.x, 0, a.z}, {b.x, 0, b.z});
    };
    const SurfacePoints restSurface = surfacePoints(rest, body, motion.club(), spec.look);

    for (const TrueMoment& m : moments) {
        const Pose p = motion.at(m.time);
        const SurfacePoints s = surfacePoints(p, body, motion.club(), spec.look);
        const auto id = m.id;
        const bool isAddress = id == MomentId::address;
        const V3 ms = mid(p.shoulder), mh = p.midHip;
        say("spine_tilt", id, tilt(mh, ms), "degrees");
        say("forward_bend", id, bend(mh, ms), "degrees");
        if (!isAddress) {
            say("spine_tilt_change", id, tilt(mh, ms) - tilt(rest.midHip, mid(rest.shoulder)), "degrees");
            say("forward_bend_change", id, bend(mh, ms) - bend(rest.midHip, mid(rest.shoulder)), "degrees");
            say("head_travel", id, (p.headCentre.x - rest.headCentre.x) / h, "statures");
            say("head_rise", id, (p.headCentre.z - rest.headCentre.z) / h, "statures");
            say("head_toward_ball", id, (p.headCentre.y - rest.headCentre.y) / h, "statures");
            say("pelvis_shift", id, (mh.x - rest.midHip.x) / h, "statures");
            say("chest_shift", id, (ms.x - mid(rest.shoulder).x) / h, "statures");
            say("pelvis_depth", id, (s.pelvisRear.y - restSurface.pelvisRear.y) / h, "statures");
            say("pelvis_depth_mid_hip", id, (mh.y - rest.midHip.y) / h, "statures");
        }
        say("pelvis_turn", id, turn(p.pelvis.lead, p.pelvis.up), "degrees");
        const V3 axis = unit(ms - mh);
        const V3 shoulderLine = unit(p.shoulder[0] - p.shoulder[1]);
        say("shoulder_turn", id, turn(unit(shoulderLine - axis * dot(shoulderLine, axis)), axis), "degrees");
        say("chest_turn", id, turn(p.thorax.lead, p.thorax.up), "degrees");
        say("separation", id, turn(p.thorax.lead, p.thorax.up) - turn(p.pelvis.lead, p.pelvis.up), "degrees");
        say("lead_line_tilt", id, tilt(p.foot[0].ankle, p.shoulder[0]), "degrees");
        {
            const V3 a = p.foot[0].ankle, line = p.shoulder[0] - a, hip = p.hip[0] - a;
            say("lead_hip_offset", id,
                (hip.x * line.z - hip.z * line.x) / std::hypot(line.x, line.z) / joints,
                "hip_joint_distances");
            say("lead_hip_over_ankle", id, hip.x / joints, "hip_joint_distances");
        }
        say("head_to_trail_ankle", id, (p.headCentre.x - p.foot[1].ankle.x) / stance, "stance_widths");
        say("head_to_trail_ankle_statures", id, (p.headCentre.x - p.foot[1].ankle.x) / h, "statures");
        say("head_to_trail_ankle_nose", id, (s.nose.x - p.foot[1].ankle.x) / stance, "stance_widths");
        say("head_to_trail_ankle_edge", id,
            (std::min(s.headLow.x, s.trailEar.x) - p.foot[1].ankle.x) / stance, "stance_widths");
        const V3 forearm = p.wrist[0] - p.elbow[0];
        say("wrist_set", id, pictureAngle(forearm, p.shaft), "degrees");
        say("wrist_set_corrected", id, included(forearm, p.shaft), "degrees");
        say("lead_elbow_flex", id, flex(p.shoulder[0], p.elbow[0], p.wrist[0]), "degrees");
        say("lead_knee_flex", id, flex(p.hip[0], p.knee[0], p.foot[0].ankle), "degrees");
        say("trail_knee_flex", id, flex(p.hip[1], p.knee[1], p.foot[1].ankle), "degrees");
        say("trail_foot_pitch", id,
            deg(std::asin(std::clamp(
                (p.foot[1].heel.z - p.foot[1].ball.z) / length(p.foot[1].heel - p.foot[1].ball), -1.0, 1.0))),
            "degrees");
        say("com_over_lead_ankle", id, (centreOfMass(p, body).x - p.foot[0].ankle.x) / stance,
            "stance_widths");
        // Down-the-line: the shaft against the ground, seen along the target line, 0..180 from the ball's
        // side.
        say("shaft_plane", id, deg(std::atan2(std::abs(p.shaft.z), p.shaft.z < 0 ? p.shaft.y : -p.shaft.y)),
            "degrees");
        if (isAddress || id == MomentId::impact) {
            say("shaft_lean", id, deg(std::atan2(-p.shaft.x, -p.shaft.z)), "degrees");
        }
        if (id == MomentId::impact) {
            say("hands_ahead", id, (p.butt.x - motion.ball().x) / h, "statures");
        }
        if (id == MomentId::shaft_level_back || id == MomentId::lead_arm_level_back) {
            say("takeaway_width", id, length(p.grip - p.shoulder[1]) / (body.upperArm + body.forearm),
                "ratio");
        }
        if (id == MomentId::top) {
            say("shaft_past_level", id, deg(std::atan2(-p.shaft.z, std::abs(p.shaft.x))), "degrees");
            // + points right of the target for a right-hander (across), - laid off; from above.
            say("shaft_direction", id, deg(std::atan2(p.shaft.y, p.shaft.x)), "degrees");
        }
        if (id == MomentId::release) {
            const V3 f0 = unit(p.elbow[0] - p.wrist[0]), f1 = unit(p.elbow[1] - p.wrist[1]);
            const V3 g0 = unit({f0.x, 0, f0.z}), g1 = unit({f1.x, 0, f1.z});
            const V3 b = -unit(g0 + g1);
            const double bisector = deg(std::atan2(b.x, -b.z));
            say("release_bisector_angle", id,
                std::remainder(deg(std::atan2(p.shaft.x, -p.shaft.z)) - bisector, 360.0), "degrees");
        }
        if (id == MomentId::finish) {
            say("finish_head_over_lead_ankle", id, (p.headCentre.x - p.foot[0].ankle.x) / stance,
                "stance_widths");
        }
    }

    double worst = 1e9;
    for (double t = *address; t <= *top; t += 0.002) {
        const Pose p = motion.at(t);
        worst = std::min(worst, (p.headCentre.x - p.foot[1].ankle.x) / stance);
    }
    say("head_to_trail_ankle_worst", std::nullopt, worst, "stance_widths");
    {
        const Pose a = motion.at(*top), b = motion.at(*top + (*impact - *top) / 3);
        const double chest = mid(b.shoulder).x - mid(a.shoulder).x, pelvis = b.midHip.x - a.midHip.x;
        if (std::abs(chest + pelvis) > 0.002 * h) {
            say("chest_share_of_shift", std::nullopt, chest / (chest + pelvis), "ratio");
        }
    }
    if (const auto t = when(MomentId::pelvis_starts_forward)) {
        say("start_down_lead", std::nullopt, *top - *t, "seconds");
    }
    {
        double peak = -1, at = 0;
        for (double t = *address; t < *impact; t += 0.001) {
            const Pose p = motion.at(t);
            const double set = included(p.wrist[0] - p.elbow[0], p.shaft);
            if (set > peak) {
                peak = set;
                at = t;
            }
        }
        say("wrist_set_peak", std::nullopt, peak, "degrees");
        say("wrist_set_peak_time", std::nullopt, at - *top, "seconds"); // negative: before the top
    }
    if (const auto arm = when(MomentId::lead_arm_level_down), delivery = when(MomentId::shaft_level_down);
        arm && delivery) {
        const Pose a = motion.at(*arm), b = motion.at(*delivery);
        say("wrist_set_kept", std::nullopt,
            pictureAngle(b.wrist[0] - b.elbow[0], b.shaft) / pictureAngle(a.wrist[0] - a.elbow[0], a.shaft),
            "ratio");
        say("wrist_set_kept_corrected", std::nullopt,
            included(b.wrist[0] - b.elbow[0], b.shaft) / included(a.wrist[0] - a.elbow[0], a.shaft), "ratio");
    }
    {
        // Hands coming down against the way back: at the same height, + outward (toward the ball). Height:
        // midway between the hands at the top and the lead arm's level.
        const auto arm = when(MomentId::lead_arm_level_down);
        if (arm) {
            const double z = 0.5 * (motion.at(*top).grip.z + motion.at(*arm).grip.z);
            const auto height = [&](double t) { return motion.at(t).grip.z - z; };
            const auto up = crossing(height, *address, *top, +1), down = crossing(height, *top, *impact, -1);
            if (up && down) {
                say("hand_path", std::nullopt, (motion.at(*down).grip.y - motion.at(*up).grip.y) / h,
                    "statures");
            }
        }
    }
    say("tempo_ratio", std::nullopt, (*top - *address) / (*impact - *top), "ratio");
    say("backswing_time", std::nullopt, *top - *address, "seconds");
    say("downswing_time", std::nullopt, *impact - *top, "seconds");
    double peak = 0;
    for (double t = *top; t < *impact + 0.1; t += 0.0005) {
        peak = std::max(peak, included(motion.at(t).shaft, motion.at(t + 0.0005).shaft) / 0.0005);
    }
    say("shaft_peak_speed", std::nullopt, peak, "degrees_per_second");
    return out;
}

} // namespace plumbmark::demo
