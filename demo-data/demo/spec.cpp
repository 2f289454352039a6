// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "demo/spec.h"

#include <algorithm>

namespace plumbmark::demo {
namespace {

const std::vector<CaseInfo> kCases{
    {"sound", "A sound swing with a seven-iron."},
    {"narrow-drift", "A narrow stance; head and chest drift over the trail foot and come back late."},
    {"hip-pushed", "The lead hip is pushed toward the target; the lead-side line kinks and the turn stops."},
    {"stalled-pelvis", "The pelvis stays square at impact and the shaft leans backward."},
    {"early-set", "The wrists set early in the takeaway and let go early coming down."},
    {"lost-bend", "The forward bend is lost coming down, the hips move in, the hands move outward."},
    {"stay-back", "The body stays over the trail foot at the finish."},
    {"left-hander", "A sound left-handed swing."},
    {"child", "A child of about nine."},
    {"tall", "A tall player, 1.96 m, with a driver."},
    {"practice-bang", "A practice swing without a ball, and a bang from the next bay."},
    {"ball-forward", "The ball lies too far forward."},
    {"over-turned", "The pelvis turns away too far."},
    {"elbow-collapse", "The lead elbow collapses at the top and through the ball."},
    {"over-long", "The backswing is over-long: the shaft points past level at the top."},
    {"stand-up", "The player stands up through the ball."},
    {"random", "Random player, club, faults, light and filming by seed."},
};

void randomFaults(SwingParams& p, Random& r) {
    const int faults = r.whole(0, 2);
    for (int i = 0; i < faults; ++i) {
        const double k = r.uniform(0.3, 1.0);
        switch (r.whole(0, 10)) {
        case 0:
            p.pelvisShiftBack -= 0.045 * k;
            p.tiltTop += 6 * k;
            p.stanceRatio *= 1 - 0.22 * k;
            break;
        case 1:
            p.pelvisShiftImpact += 0.05 * k;
            p.tiltImpact += 5 * k;
            p.pelvisTurnImpact -= 14 * k;
            break;
        case 2:
            p.pelvisTurnImpact -= 30 * k;
            p.chestTurnImpact -= 14 * k;
            p.leanImpact -= 8 * k;
            break;
        case 3:
            p.setEarly += 26 * k;
            p.keptSet -= 20 * k;
            break;
        case 4:
            p.bendImpact -= 9 * k;
            p.pelvisInImpact += 0.035 * k;
            p.handsOut += 0.045 * k;
            break;
        case 5:
            p.weightFinish -= 0.6 * k;
            p.trailPitchFinish -= 36 * k;
            p.tiltFinish += 10 * k;
            p.pelvisTurnFinish -= 18 * k;
            break;
        case 6:
            p.ballPosition = std::max(0.0, p.ballPosition - 0.3 * k);
            break;
        case 7:
            p.pelvisTurnTop -= 18 * k;
            break;
        case 8:
            p.leadElbowTop += 38 * k;
            p.leadElbowImpact += 12 * k;
            break;
        case 9:
            p.shaftTop += 38 * k;
            p.armTop += 10 * k;
            break;
        default:
            p.tiltTop -= 9 * k;
            break; // trunk toward the target at the top
        }
    }
}

Spec draw(const CaseOptions& options, int attempt) {
    Spec s;
    s.name = options.name;
    s.seed = options.seed;
    // Another try draws another player and other small differences; place, light and filming stay.
    Random r(options.seed + 1000003u * static_cast<unsigned>(attempt));
    const std::string& n = options.name;
    const bool random = n == "random";

    // Player
    const bool woman = r.chance(0.4);
    double stature = woman ? r.around(1.655, 0.06) : r.around(1.78, 0.07);
    const double girth = r.around(1.02, 0.08);
    s.body = adultBody(stature, woman, girth);
    if (n == "child" || (random && r.chance(0.06))) {
        s.body = childBody(r.uniform(1.28, 1.42));
    } else if (n == "tall") {
        s.body = adultBody(1.96, false, 1.0);
    }
    const bool child = s.body.stature < 1.5;
    s.look = randomLook(options.seed * 13 + 5, s.body.woman, child);

    // Club
    const std::vector<marks::Club> clubs{{marks::ClubKind::driver, {}}, {marks::ClubKind::wood, 3},
                                         {marks::ClubKind::hybrid, 4},  {marks::ClubKind::iron, 5},
                                         {marks::ClubKind::iron, 7},    {marks::ClubKind::iron, 8},
                                         {marks::ClubKind::wedge, 52}};
    s.club = n == "tall" ? marks::Club{marks::ClubKind::driver, {}}
             : random    ? clubs[static_cast<std::size_t>(r.whole(0, 6))]
                         : marks::Club{marks::ClubKind::iron, 7};
    if (options.club) {
        s.club = *options.club;
    }

    // Swing: what a sound player does with this club, then small personal differences.
    SwingParams& p = s.swing;
    switch (s.club.kind) {
    case marks::ClubKind::driver:
        p.stanceRatio = 1.40;
        p.ballPosition = 0.12;
        p.addressTilt = 8;
        p.tiltImpact = 20;
        p.leanImpact = 0.5;
        p.addressLean = -1;
        p.tiltTop = 10;
        break;
    case marks::ClubKind::wood:
        p.stanceRatio = 1.30;
        p.ballPosition = 0.24;
        p.addressTilt = 7;
        p.tiltImpact = 17;
        p.leanImpact = 3;
        p.addressLean = 0;
        p.tiltTop = 9;
        break;
    case marks::ClubKind::hybrid:
        p.stanceRatio = 1.24;
        p.ballPosition = 0.32;
        p.addressTilt = 6;
        p.tiltImpact = 16;
        p.leanImpact = 4;
        p.addressLean = 1;
        p.tiltTop = 8.5;
        break;
    case marks::ClubKind::wedge:
        p.stanceRatio = 0.95;
        p.ballPosition = 0.50;
        p.addressTilt = 4;
        p.tiltImpact = 13;
        p.leanImpact = 8;
        p.pelvisTurnTop = -40;
        break;
    default:
        break;
    }
    // The longer the club, the farther the ball and the more upright the player stands.
    p.stanceRatio *= 1 + 0.03 * r.normal();
    p.backswing = std::clamp(r.around(0.86, 0.13), 0.6, 1.3);
    p.downswing = std::clamp(p.backswing / r.around(3.05, 0.25), 0.20, 0.45);
    p.followThrough = r.uniform(0.75, 0.95);
    p.stillBefore = r.uniform(0.35, 0.9);
    p.waggles = r.chance(0.35) ? r.whole(1, 2) : 0;
    p.pelvisTurnTop += r.around(0, 3);
    p.chestTurnTop += r.around(0, 3);
    p.armTop += r.around(0, 4);
    p.shaftTop += r.around(0, 6);
    p.tiltTop += r.around(0, 1);
    p.tiltImpact += r.around(0, 1.2);
    p.leanImpact += r.around(0, 1.2);
    p.pelvisTurnImpact += r.around(0, 3);
    p.chestTurnImpact += r.around(0, 3);
    p.addressBend += r.around(0, 1.2);
    p.setAtLevel += r.around(0, 4);
    p.startDownLead = r.uniform(0.03, 0.11);
    p.leadFlare = r.uniform(10, 30);
    p.trailFlare = r.uniform(0, 18);
    p.leadElbowTop = r.uniform(2, 10);
    s.view = random && r.chance(0.35) ? marks::View::downTheLine : marks::View::faceOn;
    if (random) {
        p.stillBefore = r.uniform(0.3, 1.6);
        p.backswing = r.uniform(0.65, 1.2);
        p.downswing = std::clamp(p.backswing / r.uniform(2.4, 3.6), 0.21, 0.42);
        p.startDownLead = r.uniform(-0.02, 0.11);
        randomFaults(p, r);
        s.hand = r.chance(0.18) ? marks::Hand::left : marks::Hand::right;
    } else if (n == "narrow-drift") {
        p.stanceRatio = 0.80;
        p.pelvisShiftBack = -0.042;
        p.tiltTop = 14;
        p.pelvisShiftImpact = 0.025;
    } else if (n == "hip-pushed") {
        p.pelvisShiftImpact = 0.140;
        p.tiltImpact = 30;
        p.pelvisTurnImpact = 20;
        p.chestTurnImpact = 12;
    } else if (n == "stalled-pelvis") {
        p.pelvisTurnImpact = 7;
        p.chestTurnImpact = 2;
        p.leanImpact = -6;
        p.pelvisShiftImpact = 0.02;
    } else if (n == "early-set") {
        p.setEarly = 30;
        p.setAtLevel = 88;
        p.keptSet = -10;
    } else if (n == "lost-bend") {
        p.addressBend += 2;
        p.bendTop += 2;
        p.bendImpact = 25;
        p.pelvisInImpact = 0.042;
        p.handsOut = 0.055;
        p.leadElbowAddress = 12;
        s.view = marks::View::downTheLine;
    } else if (n == "stay-back") {
        p.weightFinish = 0.05;
        p.trailPitchFinish = 32;
        p.pelvisTurnFinish = 62;
        p.chestTurnFinish = 84;
        p.tiltFinish = 16;
        p.pelvisShiftImpact = 0.005;
        p.tiltImpact = 20;
    } else if (n == "left-hander") {
        s.hand = marks::Hand::left;
    } else if (n == "practice-bang") {
        s.hasBall = false;
        s.shot = marks::ShotKind::practice;
    } else if (n == "ball-forward") {
        p.ballPosition = 0.08;
        p.leanImpact = -2;
    } else if (n == "over-turned") {
        p.pelvisTurnTop = -80;
        p.chestTurnTop = -102;
    } else if (n == "elbow-collapse") {
        p.leadElbowTop = 58;
        p.leadElbowImpact = 22;
    } else if (n == "over-long") {
        p.shaftTop = 300;
        p.armTop = 166;
        p.setAtLevel = 84;
    } else if (n == "stand-up") {
        // Soft elbows at address leave the arms the length that standing up asks for.
        p.riseImpact = 0.03;
        p.bendImpact = 24;
        p.pelvisInImpact = 0.045;
        p.leadElbowAddress = 26;
    }
    if (child) {
        p.downswing = std::clamp(p.downswing * 1.08, 0.2, 0.45);
    }
    if (options.view) {
        s.view = *options.view;
    }
    if (options.hand) {
        s.hand = *options.hand;
    }
    s.interlude = options.interlude;
    if (s.interlude == Interlude::waggle) {
        p.waggles = 2;
    }
    // The whole clip stays under about four and a half seconds.
    p.stillBefore = std::min(p.stillBefore, 4.3 - p.backswing - p.downswing - p.followThrough - p.holdAfter);
    if (p.waggles > 0) {
        p.stillBefore = std::max(p.stillBefore, 0.55 + 0.62 * p.waggles);
    }

    // Place and light
    Random a(options.seed * 7919 + 11);
    s.around.seed = options.seed * 101 + 3;
    s.around.place = static_cast<Place>(a.whole(0, 9) < 4 ? 0 : a.whole(1, 3));
    s.around.mat = s.around.place == Place::bays || s.around.place == Place::indoor || a.chance(0.45);
    s.around.stick = a.chance(0.3);
    s.around.neighbour = a.chance(0.18) && s.around.place != Place::indoor;
    s.around.clutter = a.chance(0.7);
    s.around.haze = a.uniform(0.1, 0.5);
    const double azimuth = a.uniform(0, 2 * std::numbers::pi), height = a.uniform(28, 62) * kDeg;
    s.light.softness = a.chance(0.4) ? a.uniform(0.7, 1.0) : a.uniform(0.0, 0.4);
    s.light.toSun = {std::cos(azimuth) * std::cos(height), std::sin(azimuth) * std::cos(height),
                     std::sin(height)};
    const auto power = static_cast<float>(lerp(0.95, 0.35, s.light.softness));
    s.light.sun = Rgb{1.0f, 0.95f, 0.86f} * power;
    s.light.sky =
        mix(Rgb{0.30f, 0.36f, 0.46f}, Rgb{0.58f, 0.60f, 0.63f}, static_cast<float>(s.light.softness));
    s.light.ground = Rgb{0.20f, 0.21f, 0.15f};
    if (s.around.place == Place::indoor) {
        s.light.softness = 0.8;
        s.light.toSun = unit({a.uniform(-0.4, 0.4), a.uniform(-0.2, 0.6), 1.0});
        s.light.sun = Rgb{0.55f, 0.54f, 0.50f};
        s.light.sky = Rgb{0.48f, 0.48f, 0.47f};
        s.light.ground = Rgb{0.24f, 0.23f, 0.22f};
    }

    // Filming
    Filming& f = s.filming;
    f.distance = s.view == marks::View::faceOn ? a.uniform(4.1, 5.0) : a.uniform(4.3, 5.4);
    f.lensHeight = a.uniform(0.8, 1.15);
    f.aimX = a.uniform(-0.12, 0.12);
    f.aimZ = s.body.stature * 0.52 + a.uniform(-0.05, 0.10);
    f.yaw = random ? a.around(0, 3) : a.around(0, 1.2);
    f.roll = random ? a.around(0, 1.0) : a.around(0, 0.4);
    f.shutter = 1.0 / a.uniform(700, 2200);
    f.exposure = a.uniform(0.85, 1.15);
    f.noise = a.uniform(0.8, 2.4);
    f.warmth = a.uniform(-0.5, 0.5);
    if (random) {
        f.rollingReadout = a.chance(0.35) ? a.uniform(0.002, std::min(0.008, 0.9 / options.fps)) : 0.0;
        f.panDegrees = a.chance(0.12) ? a.uniform(1.0, 3.0) : 0.0;
        f.shakeDegrees = a.chance(0.25) ? a.uniform(0.02, 0.12) : 0.0;
        if (a.chance(0.2)) {
            f.shutter = 1.0 / a.uniform(240, 600);
        }
    }
    if (options.shutter) {
        f.shutter = *options.shutter;
    }
    if (options.rollingReadout) {
        f.rollingReadout = *options.rollingReadout;
    }
    if (options.roll) {
        f.roll = *options.roll;
    }
    if (options.pan) {
        f.panDegrees = *options.pan;
    }
    if (options.yaw) {
        f.yaw = *options.yaw;
    }
    if (options.distance) {
        f.distance = *options.distance;
    }
    if (options.height > options.width) {
        // Upright pictures are narrower than a swing unless the camera stands farther away.
        f.distance = options.distance.value_or(f.distance * 1.12);
        f.aimX *= 0.4;
    }
    f.shutter = std::min(f.shutter, 0.9 / options.fps);

    // Sound
    s.sound.windLevel = a.uniform(0.002, 0.02);
    s.sound.hitLevel = a.uniform(0.35, 0.8);
    const double length = p.stillBefore + p.backswing + p.downswing + p.followThrough + p.holdAfter;
    const int hits = a.whole(0, 2);
    for (int i = 0; i < hits; ++i) {
        s.sound.neighbourHits.push_back(a.uniform(0.1, length - 0.1));
    }
    if (n == "practice-bang") {
        s.sound.bangFromNextBay = p.stillBefore + p.backswing + p.downswing + a.uniform(-0.35, 0.25);
    }
    return s;
}

} // namespace

std::string_view interludeName(Interlude interlude) {
    return interlude == Interlude::standing    ? "standing"
           : interlude == Interlude::waggle    ? "waggle"
           : interlude == Interlude::rehearsal ? "rehearsal"
           : interlude == Interlude::walk      ? "walk"
                                               : "none";
}

std::optional<Interlude> interludeFromName(std::string_view name) {
    for (const auto i :
         {Interlude::none, Interlude::standing, Interlude::waggle, Interlude::rehearsal, Interlude::walk}) {
        if (interludeName(i) == name) {
            return i;
        }
    }
    return std::nullopt;
}

double interludeSeconds(Interlude interlude) {
    return interlude == Interlude::standing    ? 2.0
           : interlude == Interlude::waggle    ? 2.4
           : interlude == Interlude::rehearsal ? 7.0
           : interlude == Interlude::walk      ? 7.0
                                               : 0.0;
}

const std::vector<CaseInfo>& cases() {
    return kCases;
}

base::Result<Spec> makeSpec(const CaseOptions& options) {
    const bool known =
        std::any_of(kCases.begin(), kCases.end(), [&](const CaseInfo& c) { return c.name == options.name; });
    if (!known) {
        return base::inputError("demo.unknown_case", "There is no demo case called \"" + options.name +
                                                         "\"; use --list to see their names.");
    }
    // A few of the drawn bodies cannot reach the ball in the drawn posture: draw again, the same way
    // everywhere.
    Spec s = draw(options, 0);
    for (int attempt = 1; attempt <= 8; ++attempt) {
        if (Motion(s.body, clubSize(s.club, s.body.stature), s.swing, s.seed).solved()) {
            break;
        }
        s = draw(options, attempt);
    }
    return s;
}

} // namespace plumbmark::demo
