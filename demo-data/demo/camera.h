// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/geometry.h"
#include "demo/vec.h"
#include "marks/player.h"

namespace plumbmark::demo {

/// Canonical coordinates (swing.h) to the world's right-handed ones: a right-hander's target lies toward -x,
/// a left-hander's toward +x; y and z are the same.
[[nodiscard]] constexpr V3 toWorld(V3 canonical, marks::Hand hand) {
    return {hand == marks::Hand::right ? -canonical.x : canonical.x, canonical.y, canonical.z};
}

/// A pinhole camera in world coordinates.
struct Camera {
    V3 position;
    V3 right, up, forward;
    double focal = 1000; ///< px
    int width = 1280, height = 720;

    struct Seen {
        base::Vec2 at;
        double depth; ///< along the optical axis, m; nothing is seen at depth <= 0
    };
    [[nodiscard]] Seen project(V3 world) const {
        const V3 d = world - position;
        const double z = dot(d, forward);
        const double k = focal / (z > 1e-6 ? z : 1e-6);
        return {{width / 2.0 + k * dot(d, right), height / 2.0 - k * dot(d, up)}, z};
    }
    /// Direction of the ray through a picture point, not of unit length (1 along the axis).
    [[nodiscard]] V3 ray(double x, double y) const {
        return forward + right * ((x - width / 2.0) / focal) - up * ((y - height / 2.0) / focal);
    }
};

/// Looks along `heading` (level, unit), raised by `pitch` degrees, turned clockwise by `roll` degrees as seen
/// from behind the camera.
[[nodiscard]] inline Camera makeCamera(V3 position, V3 heading, double pitch, double roll, double focal,
                                       int width, int height) {
    Camera c;
    c.position = position;
    const V3 level{heading.x, heading.y, 0};
    const V3 h = unit(level);
    const V3 right = cross(h, V3{0, 0, 1});
    c.forward = h * std::cos(pitch * kDeg) + V3{0, 0, 1} * std::sin(pitch * kDeg);
    const V3 up = cross(right, c.forward);
    const double s = std::sin(roll * kDeg), k = std::cos(roll * kDeg);
    c.right = right * k - up * s;
    c.up = up * k + right * s;
    c.focal = focal;
    c.width = width;
    c.height = height;
    return c;
}

} // namespace plumbmark::demo
