// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <cmath>
#include <optional>
#include <random>
#include <vector>

#include "swing/moments.h"

namespace plumbmark::test {

using marks::Landmark;

/// A made-up swing in the picture plane with exact moments. Backswing 0.80 s and downswing 0.267 s: 24 and 8
/// frames at 30 frames/s, the count published for most tour players (Grober & Cholewicki 2006).
struct Made {
    double start = 0.9, backswing = 0.80, downswing = 0.267;
    double lean = 4.0; // turned back at rest, degrees
    double topTurn = 265.0;
    double hitSpeed = 1900.0; // degrees a second at the ball

    [[nodiscard]] double top() const { return start + backswing; }
    [[nodiscard]] double hit() const { return top() + downswing; }

    [[nodiscard]] double turned(double t) const {
        if (t <= start) {
            return lean;
        }
        if (t <= top()) {
            return lean + (topTurn - lean) * (1 - std::cos(M_PI * (t - start) / backswing)) / 2;
        }
        // Quintic from rest at the top, with the turning acceleration that ended the backswing, to -6 degrees
        // at the hit with its speed and no acceleration.
        const double d = downswing, end = -6.0;
        const double u = std::min((t - top()) / d, 1.0);
        const double a2 = -(topTurn - lean) * M_PI * M_PI / (4 * backswing * backswing) * d * d;
        const double drop = end - topTurn - a2, v = -hitSpeed * d - 2 * a2, w = -2 * a2;
        const double a3 = 10 * drop - 4 * v + w / 2, a4 = -15 * drop + 7 * v - w,
                     a5 = 6 * drop - 3 * v + w / 2;
        double value = topTurn + u * u * (a2 + u * (a3 + u * (a4 + u * a5)));
        if (t > hit()) {
            const double e = t - hit(), slow = 0.16;
            value += -0.8 * hitSpeed * slow * (1 - std::exp(-e / slow));
        }
        return value;
    }
    [[nodiscard]] double when(double level, double from, double to) const {
        for (int i = 0; i < 80; ++i) {
            const double mid = (from + to) / 2;
            ((turned(mid) - level) * (turned(from) - level) <= 0 ? to : from) = mid;
        }
        return (from + to) / 2;
    }
};

struct Scene {
    marks::Track track;
    club::ShaftTrack shaft;
    std::optional<club::Ball> ball;
    scene::Scene scene;
    marks::ShotContext context;
    marks::TimeScale scale;
    std::vector<swing::Hit> hits;
    std::optional<swing::HeadPassesBall> passes;

    [[nodiscard]] swing::Found find() const {
        return swing::findMoments({track, shaft, ball, scene, context, scale, hits, passes, {}});
    }
};

inline Scene film(const Made& made, double fps, double seconds, double noiseDegrees, unsigned seed,
                  int side = 1) {
    Scene s;
    s.scene.scale.pixelsPerStature = 500;
    s.scene.width = 1280, s.scene.height = 720;
    s.context.hand = side > 0 ? marks::Hand::right : marks::Hand::left;
    std::mt19937 random(seed);
    std::normal_distribution<double> gauss;
    const double offset = 0.35 / fps; // frames never fall on the events
    for (int i = 0; i < static_cast<int>(seconds * fps); ++i) {
        const double t = i / fps;
        const double w = t + offset;
        marks::FrameMarks frame;
        frame.time = base::Seconds{t};
        const double turned = made.turned(w);
        // Hands on a circle round the lead shoulder, a third of the shaft's turn.
        const double arm = (turned / 2.4) * M_PI / 180.0;
        const double px = 640 - side * 170 * std::sin(arm), py = 330 + 170 * std::cos(arm);
        auto mark = [&](Landmark l, double x, double y) {
            frame[l] = marks::Mark{{x + gauss(random), y + gauss(random)}, 1.0, base::Origin::network};
        };
        mark(Landmark::grip, px, py);
        mark(Landmark::lead_wrist, px, py - 10 * std::cos(arm));
        mark(Landmark::lead_shoulder, 640, 330);
        // Away for half a second, then toward the target; 0.17 statures a second squared back, one forward.
        const double since = w - (made.top() - 0.08);
        const double sway = since < -0.5 ? 0 : since < 0 ? 48 * (since * since - 0.25) : -12;
        const double drive = since < 0 ? 0 : 40 * (1 - std::exp(-std::pow(since / 0.25, 2)));
        mark(Landmark::lead_ankle, 640 + side * 80, 700);
        mark(Landmark::trail_ankle, 640 - side * 80, 700);
        mark(Landmark::lead_hip, 640 + 25 + side * (sway + drive), 420);
        mark(Landmark::trail_hip, 640 - 25 + side * (sway + drive), 420);
        s.track.push_back(frame);
        club::ShaftSample sample;
        sample.time = frame.time;
        sample.through = {px, py};
        sample.angleDegrees = -side * (turned + noiseDegrees * gauss(random)) + 360.0 * 2;
        sample.sigmaDegrees = noiseDegrees;
        s.shaft.push_back(sample);
    }
    club::Ball ball;
    const double armAtHit = made.turned(made.hit()) / 2.4 * M_PI / 180.0;
    ball.centre = base::Vec2{640 - side * 170 * std::sin(armAtHit), 330 + 170 * std::cos(armAtHit)} +
                  club::directionOf(-side * made.turned(made.hit())) * 250.0;
    ball.radius = 6;
    for (const auto& frame : s.track) {
        if (frame.time.value() + offset < made.hit()) {
            ball.lastSeen = frame.time;
        } else if (!ball.firstGone) {
            ball.firstGone = frame.time;
        }
    }
    s.ball = ball;
    return s;
}

} // namespace plumbmark::test
