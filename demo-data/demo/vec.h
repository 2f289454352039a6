// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>
#include <cstdint>
#include <numbers>

namespace plumbmark::demo {

/// A point or direction in space, metres.
struct V3 {
    double x = 0.0, y = 0.0, z = 0.0;
    friend constexpr V3 operator+(V3 a, V3 b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
    friend constexpr V3 operator-(V3 a, V3 b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
    friend constexpr V3 operator-(V3 a) { return {-a.x, -a.y, -a.z}; }
    friend constexpr V3 operator*(V3 a, double k) { return {a.x * k, a.y * k, a.z * k}; }
    friend constexpr V3 operator*(double k, V3 a) { return a * k; }
    friend constexpr V3 operator/(V3 a, double k) { return a * (1.0 / k); }
    V3& operator+=(V3 b) { return *this = *this + b; }
};
[[nodiscard]] constexpr double dot(V3 a, V3 b) {
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
[[nodiscard]] constexpr V3 cross(V3 a, V3 b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
[[nodiscard]] inline double length(V3 a) {
    return std::sqrt(dot(a, a));
}
[[nodiscard]] inline V3 unit(V3 a) {
    const double n = length(a);
    return n > 1e-12 ? a / n : V3{0, 0, 1};
}
[[nodiscard]] constexpr V3 lerp(V3 a, V3 b, double k) {
    return a + (b - a) * k;
}
[[nodiscard]] constexpr double lerp(double a, double b, double k) {
    return a + (b - a) * k;
}
/// The part of a at right angles to the unit vector n, as a unit vector.
[[nodiscard]] inline V3 across(V3 a, V3 n) {
    return unit(a - n * dot(a, n));
}

inline constexpr double kDeg = std::numbers::pi / 180.0;

/// Turns v about the unit axis k by `angle` radians (right-hand rule in the given coordinates).
[[nodiscard]] inline V3 turnAbout(V3 v, V3 k, double angle) {
    const double c = std::cos(angle), s = std::sin(angle);
    return v * c + cross(k, v) * s + k * (dot(k, v) * (1 - c));
}

/// Three unit axes of a body segment: toward its lead side, where it faces, and up along it.
struct Axes {
    V3 lead{1, 0, 0}, front{0, 1, 0}, up{0, 0, 1};
};

/// The same numbers on every machine (the standard library's distributions differ between vendors).
class Random {
  public:
    explicit Random(std::uint64_t seed) : state_(seed * 0x9E3779B97F4A7C15ull + 0x1234567ull) {}
    std::uint64_t next() {
        std::uint64_t z = (state_ += 0x9E3779B97F4A7C15ull);
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ull;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBull;
        return z ^ (z >> 31);
    }
    double uniform() { return static_cast<double>(next() >> 11) * 0x1.0p-53; }
    double uniform(double low, double high) { return low + (high - low) * uniform(); }
    int whole(int low, int high) {
        return low + static_cast<int>(next() % static_cast<std::uint64_t>(high - low + 1));
    }
    bool chance(double p) { return uniform() < p; }
    double normal() {
        const double u = uniform() + 1e-15, v = uniform();
        return std::sqrt(-2 * std::log(u)) * std::cos(2 * std::numbers::pi * v);
    }
    /// Normal, cut off at two and a half sigma.
    double around(double mean, double sigma) {
        double n = normal();
        n = n > 2.5 ? 2.5 : n < -2.5 ? -2.5 : n;
        return mean + sigma * n;
    }

  private:
    std::uint64_t state_;
};

} // namespace plumbmark::demo
