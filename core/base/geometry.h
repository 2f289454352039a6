// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>

namespace plumbmark::base {

/// A point or vector in upright picture pixels: x to the right, y DOWN, origin at the outer corner of the
/// top-left pixel (its centre is 0.5, 0.5).
struct Vec2 {
    double x = 0.0;
    double y = 0.0;
    friend constexpr Vec2 operator+(Vec2 a, Vec2 b) { return {a.x + b.x, a.y + b.y}; }
    friend constexpr Vec2 operator-(Vec2 a, Vec2 b) { return {a.x - b.x, a.y - b.y}; }
    friend constexpr Vec2 operator*(Vec2 a, double k) { return {a.x * k, a.y * k}; }
    friend constexpr Vec2 operator*(double k, Vec2 a) { return {a.x * k, a.y * k}; }
    friend constexpr Vec2 operator/(Vec2 a, double k) { return {a.x / k, a.y / k}; }
    friend constexpr bool operator==(Vec2, Vec2) = default;
};

[[nodiscard]] constexpr double dot(Vec2 a, Vec2 b) { return a.x * b.x + a.y * b.y; }
/// z of the cross product; with y down, positive when b is clockwise of a on the screen.
[[nodiscard]] constexpr double cross(Vec2 a, Vec2 b) { return a.x * b.y - a.y * b.x; }
[[nodiscard]] inline double length(Vec2 a) { return std::hypot(a.x, a.y); }
[[nodiscard]] constexpr Vec2 midpoint(Vec2 a, Vec2 b) { return {(a.x + b.x) / 2, (a.y + b.y) / 2}; }

/// Axis-aligned box in upright picture pixels.
struct Box {
    double x = 0.0, y = 0.0, width = 0.0, height = 0.0;
    [[nodiscard]] constexpr bool contains(Vec2 p) const {
        return p.x >= x && p.y >= y && p.x < x + width && p.y < y + height;
    }
    friend constexpr bool operator==(const Box&, const Box&) = default;
};

} // namespace plumbmark::base
