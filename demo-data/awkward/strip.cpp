// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "awkward/strip.h"

#include <cmath>

namespace plumbmark::awkward {
namespace {

/// Remainder of the number by x^4 + x + 1: every single wrong block and every two neighbours are noticed.
std::uint32_t check(std::uint32_t number) {
    std::uint32_t rest = number << 4;
    for (int bit = 13; bit >= 4; --bit) {
        if ((rest >> bit) & 1U) {
            rest ^= 0b10011U << (bit - 4);
        }
    }
    return rest & 0xFU;
}

} // namespace

std::uint32_t stripPattern(int number) {
    const auto n = static_cast<std::uint32_t>(number) & 0x3FFU;
    return (0b10U << 16) | (n << 6) | (check(n) << 2) | 0b10U;
}

StripPlace stripPlace(int width, int height) {
    return {0.05 * width, height / 16.0, 0.9 * width / stripBlocks, height / 8.0};
}

std::optional<int> readStrip(const video::PlaneView& luma) {
    if (luma.data == nullptr || luma.width < 3 * stripBlocks || luma.height < 24) {
        return std::nullopt;
    }
    const StripPlace place = stripPlace(luma.width, luma.height);
    double level[stripBlocks];
    for (int i = 0; i < stripBlocks; ++i) {
        // The middle half of a block: its rims are blurred by compression and chroma resampling.
        const int x0 = static_cast<int>(std::lround(place.left + (i + 0.25) * place.block));
        const int x1 = static_cast<int>(std::lround(place.left + (i + 0.75) * place.block));
        const int y0 = static_cast<int>(std::lround(place.top + 0.25 * place.height));
        const int y1 = static_cast<int>(std::lround(place.top + 0.75 * place.height));
        double sum = 0.0;
        for (int y = y0; y < y1; ++y) {
            for (int x = x0; x < x1; ++x) {
                sum += luma.data[y * luma.stride + x];
            }
        }
        level[i] = sum / ((x1 - x0) * (y1 - y0));
    }
    const double light = 0.5 * (level[0] + level[stripBlocks - 2]);
    const double dark = 0.5 * (level[1] + level[stripBlocks - 1]);
    if (light - dark < 60.0) {
        return std::nullopt;
    }
    std::uint32_t bits = 0;
    for (const double value : level) {
        const double share = (value - dark) / (light - dark);
        if (share > 0.3 && share < 0.7) {
            return std::nullopt;
        }
        bits = (bits << 1) | (share > 0.5 ? 1U : 0U);
    }
    const int number = static_cast<int>((bits >> 6) & 0x3FFU);
    return bits == stripPattern(number) ? std::optional(number) : std::nullopt;
}

} // namespace plumbmark::awkward
