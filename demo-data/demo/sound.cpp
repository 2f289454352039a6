// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "demo/sound.h"

#include <algorithm>
#include <cmath>

namespace plumbmark::demo {
namespace {

/// A struck ball: a burst that starts at once and dies within some 30 ms, with the ring of the club head.
void addHit(std::vector<float>& sound, double at, double level, double ring, double dull, Random& r) {
    const double exact = at * kSoundRate;
    const auto first = static_cast<std::ptrdiff_t>(std::ceil(exact));
    double low = 0;
    for (std::ptrdiff_t i = 0; i < 4800; ++i) {
        const std::ptrdiff_t k = first + i;
        if (k < 0 || k >= static_cast<std::ptrdiff_t>(sound.size())) {
            continue;
        }
        const double t = (static_cast<double>(k) - exact) / kSoundRate;
        const double noise = r.uniform(-1, 1);
        low += (noise - low) * dull;
        const double v = 0.8 * low * std::exp(-t / 0.0022) +
                         0.45 * std::sin(2 * std::numbers::pi * ring * t) * std::exp(-t / 0.006) +
                         0.2 * std::sin(2 * std::numbers::pi * ring * 1.71 * t) * std::exp(-t / 0.004) +
                         0.12 * low * std::exp(-t / 0.03);
        sound[static_cast<std::size_t>(k)] += static_cast<float>(level * v);
    }
}

} // namespace

std::vector<float> makeSound(const Spec& spec, double seconds, std::optional<double> hit, double swish,
                             double distance) {
    const auto n = static_cast<std::size_t>(std::ceil(seconds * kSoundRate));
    std::vector<float> sound(n, 0.0f);
    Random r(spec.seed * 97 + 3);
    // Wind: low noise that swells; the microphone's own hiss on top.
    double slow = 0, slower = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const double t = static_cast<double>(i) / kSoundRate;
        const double white = r.uniform(-1, 1);
        slow += (white - slow) * 0.02;
        slower += (slow - slower) * 0.02;
        const double gust =
            1 + 0.6 * std::sin(2 * std::numbers::pi * 0.4 * t + static_cast<double>(spec.seed % 7));
        double v = spec.sound.windLevel * (6 * slower * gust + 0.06 * white);
        // The club through the air.
        const double s = (t - swish - distance / kSoundSpeed) / 0.035;
        v += 0.012 * std::exp(-0.5 * s * s) * (white - slow);
        sound[i] += static_cast<float>(v);
    }
    for (const double at : spec.sound.neighbourHits) {
        addHit(sound, at, r.uniform(0.05, 0.25) * spec.sound.hitLevel, r.uniform(2500, 4200), 0.35, r);
    }
    if (spec.sound.bangFromNextBay >= 0) {
        addHit(sound, spec.sound.bangFromNextBay, 0.9, 3600, 0.6, r);
    }
    if (hit) {
        const double ring = spec.club.kind == marks::ClubKind::driver ? 3900
                            : spec.club.kind == marks::ClubKind::wood ? 3500
                                                                      : 2700;
        addHit(sound, *hit + distance / kSoundSpeed, spec.sound.hitLevel, ring, 0.8, r);
    }
    for (float& v : sound) {
        v = std::clamp(v, -0.98f, 0.98f);
    }
    return sound;
}

} // namespace plumbmark::demo
