// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>
#include <functional>
#include <optional>
#include <random>
#include <string>

#include "club/club.h"
#include "demo/truth.h"
#include "marks/landmark.h"
#include "marks/moment.h"
#include "scene/scene.h"

namespace plumbmark::test {

/// How a demo swing is played: the motion's time at a clip's time. Identity but for a shift by default.
using Clock = std::function<double(double)>;

/// A demo swing projected into a picture: true marks with a little noise, no pixels.
struct FilmedDemo {
    demo::Spec spec;
    std::vector<demo::TrueMoment> truth; ///< motion's time
    marks::Track track;
    club::ShaftTrack shaft;
    marks::Moments moments; ///< clip's time
    std::optional<club::Ball> ball;
    scene::Scene scene;
    marks::ShotContext context;
    marks::TimeScale scale;
};

inline FilmedDemo filmDemo(const demo::Spec& spec, double fps, double seconds, const Clock& motionTime,
                           double noisePixels, unsigned seed) {
    FilmedDemo f;
    f.spec = spec;
    const demo::Motion motion(spec.body, demo::clubSize(spec.club, spec.body.stature), spec.swing, spec.seed);
    f.truth = demo::trueMoments(spec, motion);
    f.context.view = spec.view;
    f.context.hand = spec.hand;
    f.context.club = spec.club;
    f.context.shot = spec.shot;
    f.context.statureMetres = spec.body.stature;
    f.scene.width = 1280, f.scene.height = 720;
    f.scene.vertical = scene::fromRoll(base::Degrees{spec.filming.roll});
    f.scene.distanceMetres = spec.filming.distance;
    std::mt19937 random(seed);
    std::normal_distribution<double> gauss;
    double unwrapped = 0;
    for (int k = 0; k < static_cast<int>(seconds * fps); ++k) {
        const double t = k / fps, m = motionTime(t);
        const auto camera = demo::cameraAt(spec, motion, 1280, 720, m);
        const auto see = [&](demo::V3 p) { return camera.project(demo::toWorld(p, spec.hand)).at; };
        marks::FrameMarks frame;
        frame.time = base::Seconds{t};
        const auto pose = motion.at(m);
        const auto put = [&](marks::Landmark l, demo::V3 p) {
            const auto at = see(p);
            frame[l] = marks::Mark{{at.x + noisePixels * gauss(random), at.y + noisePixels * gauss(random)},
                                   std::max(0.3, noisePixels),
                                   base::Origin::network};
        };
        using marks::Landmark;
        put(Landmark::grip, pose.grip);
        put(Landmark::head_centre, pose.headCentre);
        for (std::size_t i = 0; i < 2; ++i) {
            const auto pick = [&](Landmark lead, Landmark trail) { return i == 0 ? lead : trail; };
            put(pick(Landmark::lead_shoulder, Landmark::trail_shoulder), pose.shoulder[i]);
            put(pick(Landmark::lead_elbow, Landmark::trail_elbow), pose.elbow[i]);
            put(pick(Landmark::lead_wrist, Landmark::trail_wrist), pose.wrist[i]);
            put(pick(Landmark::lead_hip, Landmark::trail_hip), pose.hip[i]);
            put(pick(Landmark::lead_knee, Landmark::trail_knee), pose.knee[i]);
            put(pick(Landmark::lead_ankle, Landmark::trail_ankle), pose.foot[i].ankle);
        }
        club::ShaftSample s;
        s.time = frame.time;
        s.through = see(pose.grip);
        s.butt = see(pose.butt);
        s.head = see(pose.headPoint);
        s.headSigma = 1.0;
        s.sigmaDegrees = 0.3;
        const double angle = club::angleOf(see(pose.shaftEnd) - see(pose.grip));
        unwrapped = k == 0 ? angle : unwrapped + std::remainder(angle - unwrapped, 360.0);
        s.angleDegrees = unwrapped + 0.2 * gauss(random);
        f.shaft.push_back(s);
        if (k == 0) {
            const auto feet = [&](double height) { return see({0, 0, height}); };
            f.scene.scale.pixelsPerStature = feet(0).y - feet(spec.body.stature).y;
            f.scene.scale.source = "stature";
            f.scene.scale.relativeSigma = 0.02;
            club::Ball ball;
            ball.centre = see(motion.ball());
            ball.radius = 5;
            f.ball = ball;
        }
        f.track.push_back(frame);
    }
    // The clip's time of a motion's time, by bisection of the rising clock.
    for (const auto& moment : f.truth) {
        double low = 0, high = seconds;
        for (int i = 0; i < 60; ++i) {
            const double middle = (low + high) / 2;
            (motionTime(middle) < moment.time ? low : high) = middle;
        }
        f.moments.push_back({moment.id, base::Seconds{low}, base::Seconds{0.002}, "truth"});
    }
    return f;
}

} // namespace plumbmark::test
