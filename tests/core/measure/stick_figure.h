// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cmath>
#include <functional>
#include <map>
#include <numbers>
#include <optional>
#include <random>

#include "measure/measurement.h"

namespace plumbmark::test {

inline constexpr double kDegree = std::numbers::pi / 180.0;

/// World: x toward the target, y toward the face-on camera (where the ball lies), z up; metres; origin on the
/// ground between the ankles.
struct Vec3 {
    double x = 0, y = 0, z = 0;
    friend Vec3 operator+(Vec3 a, Vec3 b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
    friend Vec3 operator-(Vec3 a, Vec3 b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
    friend Vec3 operator*(Vec3 a, double k) { return {a.x * k, a.y * k, a.z * k}; }
};

/// A pinhole camera `distance` metres before the feet, square to the target line except for `yaw`; `aside`
/// moves the player off the optical axis toward the target.
struct Camera {
    double focal = 1500.0, distance = 4.5, height = 0.9, roll = 0.0, yaw = 0.0, aside = 0.0;
    int width = 1920, rows = 1080;
    bool downTheLine = false;

    [[nodiscard]] base::Vec2 see(Vec3 p) const {
        // Right of the picture: target (face-on) or ball (down-the-line); away from the camera: the depth.
        const double right0 = downTheLine ? p.y : p.x;
        const double away0 = downTheLine ? p.x : -p.y;
        const double c = std::cos(yaw * kDegree), s = std::sin(yaw * kDegree);
        const double right = right0 * c - away0 * s + aside;
        const double away = right0 * s + away0 * c + distance;
        const double x = focal * right / away, y = -focal * (p.z - height) / away;
        // The camera turned clockwise by roll: the picture's content turns counter-clockwise.
        const double r = -roll * kDegree;
        return {width / 2.0 + x * std::cos(r) - y * std::sin(r),
                rows / 2.0 + x * std::sin(r) + y * std::cos(r)};
    }
};

/// Joint positions of a golfer at one moment, from a few readable numbers. Stature 1.75 m unless said.
struct Pose {
    double stature = 1.75;
    double bend = 33.0, tilt = 4.0; ///< trunk: forward, away from the target (angles of its two projections)
    double shift = 0.0;             ///< mid-hip toward the target, m
    double turn = 0.0;              ///< shoulders about the spine, + open
    double stance = 0.42;           ///< ankle to ankle, m
    std::map<marks::Landmark, Vec3> extra;

    [[nodiscard]] std::map<marks::Landmark, Vec3> joints() const {
        using L = marks::Landmark;
        std::map<L, Vec3> j;
        j[L::lead_ankle] = {stance / 2, 0, 0.07};
        j[L::trail_ankle] = {-stance / 2, 0, 0.07};
        const Vec3 hip{shift, -0.05 * stature, 0.51 * stature};
        j[L::lead_hip] = hip + Vec3{0.05 * stature, 0, 0};
        j[L::trail_hip] = hip - Vec3{0.05 * stature, 0, 0};
        j[L::lead_knee] = (j[L::lead_hip] + j[L::lead_ankle]) * 0.5 + Vec3{0, 0.08, 0};
        j[L::trail_knee] = (j[L::trail_hip] + j[L::trail_ankle]) * 0.5 + Vec3{0, 0.08, 0};
        Vec3 axis{-std::tan(tilt * kDegree), std::tan(bend * kDegree), 1.0};
        axis = axis * (1.0 / std::sqrt(axis.x * axis.x + axis.y * axis.y + axis.z * axis.z));
        const Vec3 shoulder = hip + axis * (0.288 * stature);
        // Square across the spine, then turned about it.
        const double n = std::hypot(axis.x, axis.z);
        const Vec3 across{axis.z / n, 0, -axis.x / n};
        const Vec3 front{axis.y * across.z - axis.z * across.y, axis.z * across.x - axis.x * across.z,
                         axis.x * across.y - axis.y * across.x};
        const Vec3 line = across * std::cos(turn * kDegree) - front * std::sin(turn * kDegree);
        j[L::lead_shoulder] = shoulder + line * (0.10 * stature);
        j[L::trail_shoulder] = shoulder - line * (0.10 * stature);
        j[L::head_centre] = shoulder + axis * (0.15 * stature);
        for (const auto& [l, p] : extra) {
            j[l] = p;
        }
        return j;
    }
};

/// A clip of few frames, one per moment, 20 ms apart, holding the poses as marks.
struct Clip {
    marks::Track track;
    marks::Moments moments;
    club::ShaftTrack shaft;
    std::optional<club::Ball> ball;
    scene::Scene scene;
    marks::ShotContext context;

    [[nodiscard]] measure::Input input() const {
        return {track, moments, shaft, ball, scene, context, {1.0, true, "test"}, std::nullopt};
    }
};

inline Clip film(const std::vector<std::pair<marks::MomentId, Pose>>& poses, const Camera& camera,
                 double sigma = 0.5, base::Origin origin = base::Origin::hand) {
    Clip clip;
    for (std::size_t i = 0; i < poses.size(); ++i) {
        marks::FrameMarks frame;
        frame.time = base::Seconds{0.02 * static_cast<double>(i)};
        for (const auto& [l, p] : poses[i].second.joints()) {
            frame[l] = marks::Mark{camera.see(p), sigma, origin};
        }
        clip.moments.push_back({poses[i].first, frame.time, base::Seconds{0.0}, "test"});
        clip.track.push_back(frame);
        clip.shaft.emplace_back();
    }
    clip.scene.width = camera.width;
    clip.scene.height = camera.rows;
    clip.scene.vertical = scene::fromRoll(base::Degrees{camera.roll});
    clip.scene.focalPixels = camera.focal;
    clip.scene.distanceMetres = camera.distance;
    const double stature = poses.front().second.stature;
    clip.scene.scale = {camera.focal * stature / camera.distance, 0.02, camera.focal / camera.distance,
                        "stature"};
    clip.context.statureMetres = stature;
    clip.context.view = camera.downTheLine ? marks::View::downTheLine : marks::View::faceOn;
    return clip;
}

/// Turns off everything but the marks' own noise, for comparisons with formulas that know only that.
inline void quietCamera(Clip& clip) {
    clip.scene.vertical.sigmaDegrees = 0.0;
    clip.scene.yawSigmaDegrees = 0.0;
}

} // namespace plumbmark::test
