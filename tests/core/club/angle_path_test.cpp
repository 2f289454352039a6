// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "club/detail/angle_path.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <random>
#include <vector>

namespace plumbmark::club::detail {
namespace {

/// A shaft that swings to and fro among noise, 120 frames a second.
std::vector<PathFrame> noisy(int frames, std::vector<double>& truth) {
    std::mt19937 random(11);
    std::uniform_real_distribution<float> noise(0.0F, 0.35F);
    std::vector<PathFrame> all(static_cast<std::size_t>(frames));
    for (int i = 0; i < frames; ++i) {
        PathFrame& f = all[static_cast<std::size_t>(i)];
        f.realSeconds = i / 120.0;
        for (float& g : f.gain) {
            g = noise(random);
        }
        const double angle = 110.0 * std::sin(2 * M_PI * f.realSeconds / 2.2);
        truth.push_back(angle);
        if (i % 17 != 0) { // now and then it is not seen
            f.gain[static_cast<std::size_t>(std::lround(angle) + 180)] = 1.0F;
        }
    }
    return all;
}

} // namespace

TEST(AnglePath, ALongClipHasTheSameAnswerInLittleMemory) {
    std::vector<double> truth;
    const auto frames = noisy(120, truth);
    const Path whole = bestPath(frames, 3.0, 1 << 20);
    for (const int block : {1, 7, 64, 120}) {
        const Path parts = bestPath(frames, 3.0, block);
        EXPECT_EQ(parts.angle, whole.angle) << block;
        EXPECT_EQ(parts.degreesPerSecond, whole.degreesPerSecond) << block;
    }
    double worst = 0;
    for (std::size_t i = 0; i < truth.size(); ++i) {
        worst = std::max(worst, std::abs(whole.angle[i] - truth[i]));
    }
    EXPECT_LE(worst, 3.0) << "and it is the right one";
}

} // namespace plumbmark::club::detail
