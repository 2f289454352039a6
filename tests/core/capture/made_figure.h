// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <memory>
#include <numbers>
#include <vector>

#include "video/frame.h"

/// A stick player for tests: a body that stands, walks, and moves an arm with a club.
namespace plumbmark::made {

inline constexpr int kWidth = 384, kHeight = 216;

struct Pose {
    double x = 192;   ///< middle of the body, px
    double angle = 0; ///< arm and club from hanging down, degrees, + toward the right
};

inline double ease(double k) {
    k = std::clamp(k, 0.0, 1.0);
    return k * k * (3 - 2 * k);
}

/// A swing that hits the ball at `hit`: back 0.85 s, down 0.28 s, through 0.4 s.
inline Pose swingPose(double t, double hit) {
    Pose p;
    const double top = hit - 0.28, start = top - 0.85;
    if (t < start) {
        return p;
    }
    if (t < top) {
        p.angle = -200 * ease((t - start) / 0.85);
    } else if (t < hit) {
        const double k = (t - top) / 0.28;
        p.angle = -200 * (1 - k * k);
    } else {
        p.angle = 200 * (1 - std::pow(1 - std::clamp((t - hit) / 0.4, 0.0, 1.0), 2));
    }
    return p;
}

inline video::Frame frameOf(const Pose& pose, int index, double time) {
    struct Planes {
        std::vector<std::uint8_t> luma = std::vector<std::uint8_t>(std::size_t{kWidth} * kHeight);
        std::vector<std::uint8_t> chroma = std::vector<std::uint8_t>(std::size_t{kWidth} * kHeight / 4, 128);
    };
    const auto planes = std::make_shared<Planes>();
    std::uint32_t noise = static_cast<std::uint32_t>(index) * 2654435761U + 1;
    const double a = pose.angle * std::numbers::pi / 180;
    const double sx = pose.x, sy = 70, dx = 78 * std::sin(a), dy = 78 * std::cos(a) + 20;
    for (int y = 0; y < kHeight; ++y) {
        for (int x = 0; x < kWidth; ++x) {
            noise = noise * 1664525U + 1013904223U;
            int v = 120 + (x * 37 / 50 + y / 3) % 40 + static_cast<int>(noise >> 30) - 1;
            const double px = x - sx, py = y - sy;
            if (std::abs(px) < 14 && y > 50 && y < 190) {
                v = 40; // trunk and legs
            }
            if (px * px + (y - 40) * (y - 40) < 144) {
                v = 200; // head
            }
            const double k = std::clamp((px * dx + py * dy) / (dx * dx + dy * dy), 0.0, 1.0);
            const double ox = px - k * dx, oy = py - k * dy;
            if (ox * ox + oy * oy < (k < 0.6 ? 36.0 : 4.0)) {
                v = 230; // arms, then the club
            }
            planes->luma[static_cast<std::size_t>(y * kWidth + x)] = static_cast<std::uint8_t>(v);
        }
    }
    const video::PlaneView luma{planes->luma.data(), kWidth, kHeight, kWidth};
    const video::PlaneView chroma{planes->chroma.data(), kWidth / 2, kHeight / 2, kWidth / 2};
    return {index, base::Seconds{time}, luma, chroma, chroma, {709, false}, planes};
}

/// Quiet hiss; a click of 10 ms at every `hits`.
inline std::vector<float> hissWithClicks(double from, double seconds, double rate,
                                         const std::vector<double>& hits) {
    std::vector<float> out(static_cast<std::size_t>(std::lround(seconds * rate)));
    std::uint32_t noise = static_cast<std::uint32_t>(from * 1000) + 7;
    for (std::size_t i = 0; i < out.size(); ++i) {
        noise = noise * 1664525U + 1013904223U;
        const double white = static_cast<double>(noise >> 8) / 8388608.0 - 1.0;
        const double t = from + static_cast<double>(i) / rate;
        double v = 0.002 * white;
        for (const double h : hits) {
            if (t >= h && t < h + 0.01) {
                v += 0.6 * white * std::exp(-(t - h) / 0.002);
            }
        }
        out[i] = static_cast<float>(v);
    }
    return out;
}

} // namespace plumbmark::made
