// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "swing/hits.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace plumbmark::swing {
namespace {

constexpr double kHighPassHz = 1500.0;
constexpr double kBlockSeconds = 0.0015;
constexpr double kNoiseSeconds = 0.060;
constexpr double kOnsetDb = 12.0;
constexpr double kMergeSeconds = 0.020;

/// Second-order Butterworth high-pass, bilinear transform.
std::vector<double> highPass(const std::vector<float>& in, double rate) {
    const double k = std::tan(std::numbers::pi * std::min(kHighPassHz, 0.4 * rate) / rate);
    const double norm = 1.0 / (1.0 + std::numbers::sqrt2 * k + k * k);
    const double b0 = norm, b1 = -2.0 * norm;
    const double a1 = 2.0 * (k * k - 1.0) * norm, a2 = (1.0 - std::numbers::sqrt2 * k + k * k) * norm;
    std::vector<double> out(in.size());
    double x1 = 0, x2 = 0, y1 = 0, y2 = 0;
    for (std::size_t i = 0; i < in.size(); ++i) {
        const double x = in[i];
        const double y = b0 * x + b1 * x1 + b0 * x2 - a1 * y1 - a2 * y2;
        x2 = x1, x1 = x, y2 = y1, y1 = y;
        out[i] = y;
    }
    return out;
}

} // namespace

double speedOfSound(double celsius) {
    return 331.3 * std::sqrt(1.0 + celsius / 273.15);
}

std::vector<Hit> findHits(const video::Sound& sound) {
    std::vector<Hit> hits;
    const auto block = static_cast<std::size_t>(std::lround(kBlockSeconds * sound.rate));
    if (block < 8 || sound.samples.size() < 4 * block) {
        return hits;
    }
    const std::vector<double> y = highPass(sound.samples, sound.rate);
    const std::size_t blocks = y.size() / block;
    std::vector<double> energy(blocks);
    for (std::size_t b = 0; b < blocks; ++b) {
        double sum = 0.0;
        for (std::size_t i = b * block; i < (b + 1) * block; ++i) {
            sum += y[i] * y[i];
        }
        energy[b] = sum / static_cast<double>(block);
    }
    // The floor keeps digital silence from making every rounding step an onset (16-bit noise is about -98
    // dB).
    constexpr double floorEnergy = 1e-9;
    const auto noiseBlocks = static_cast<std::size_t>(kNoiseSeconds / kBlockSeconds);
    for (std::size_t b = 1; b + 1 < blocks; ++b) {
        const std::size_t from = b > noiseBlocks + 1 ? b - noiseBlocks - 1 : 0;
        std::vector<double> before(energy.begin() + static_cast<std::ptrdiff_t>(from),
                                   energy.begin() + static_cast<std::ptrdiff_t>(b));
        if (before.empty()) {
            continue;
        }
        // Upper quartile: a fluttering wind raises its own bar.
        const auto q = before.begin() + static_cast<std::ptrdiff_t>(before.size() * 3 / 4);
        std::nth_element(before.begin(), q, before.end());
        const double noise = std::max(*q, floorEnergy);
        const double now = std::max(energy[b], energy[b + 1]);
        if (10.0 * std::log10(now / noise) < kOnsetDb ||
            energy[b] < 4.0 * std::max(energy[b - 1], floorEnergy)) {
            continue;
        }
        const double threshold = 4.0 * std::sqrt(noise);
        std::size_t first = (b - 1) * block;
        const std::size_t end = std::min(y.size(), (b + 2) * block);
        while (first < end && std::abs(y[first]) < threshold) {
            ++first;
        }
        if (first == end) {
            continue;
        }
        const Hit hit{sound.start + base::Seconds{static_cast<double>(first) / sound.rate},
                      10.0 * std::log10(now / noise)};
        if (!hits.empty() && std::abs((hits.back().time - hit.time).value()) < kMergeSeconds) {
            // One event: its first rise is its time, its loudest part its strength.
            hits.back().strength = std::max(hits.back().strength, hit.strength);
            continue;
        }
        hits.push_back(hit);
    }
    std::stable_sort(hits.begin(), hits.end(),
                     [](const Hit& a, const Hit& b) { return a.strength > b.strength; });
    return hits;
}

} // namespace plumbmark::swing
