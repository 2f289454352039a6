// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <random>

#include <gtest/gtest.h>

#include "video/detail/timing.h"

namespace plumbmark::video::detail {
namespace {

std::vector<base::Seconds> fromGaps(const std::vector<double>& gaps) {
    std::vector<base::Seconds> times{base::Seconds{0.0}};
    for (const double gap : gaps) {
        times.push_back(times.back() + base::Seconds{gap});
    }
    return times;
}

TEST(Timing, PlaybackRateIsGapsOverTime) {
    EXPECT_EQ(playbackRate({}), 0.0);
    EXPECT_EQ(playbackRate({base::Seconds{0.0}}), 0.0);
    EXPECT_NEAR(playbackRate(fromGaps(std::vector<double>(239, 1.0 / 240))), 240.0, 1e-9);
}

TEST(Timing, UnevenMeansAGapOverOneAndAHalfMedians) {
    std::vector<double> gaps(50, 0.01);
    EXPECT_FALSE(unevenSpacing(fromGaps(gaps)));
    gaps[20] = 0.0149;
    EXPECT_FALSE(unevenSpacing(fromGaps(gaps)));
    gaps[20] = 0.0151;
    EXPECT_TRUE(unevenSpacing(fromGaps(gaps)));
    EXPECT_FALSE(unevenSpacing({}));
}

TEST(Timing, SlowedClipsAreFoundAndPlainOnesAreNot) {
    std::mt19937 random(3);
    std::uniform_real_distribution<double> share(0.0, 1.0);
    int missed = 0, falseAlarms = 0;
    for (int i = 0; i < 20; ++i) { // ratios from 1.7 on, slow part anywhere, short ramps, jitter
        const double ratio = 1.7 + 6.0 * share(random);
        const int start = 12 + static_cast<int>(60 * share(random)),
                  length = 20 + static_cast<int>(60 * share(random));
        std::vector<double> gaps;
        for (int k = 0; k < 200; ++k) {
            const double in = std::clamp(std::min(k - start, start + length - k) / 4.0, 0.0, 1.0);
            gaps.push_back((1.0 + (ratio - 1.0) * in) / 240.0 * (0.97 + 0.06 * share(random)));
        }
        missed += slowedInParts(fromGaps(gaps)) ? 0 : 1;
    }
    for (int i = 0; i < 100; ++i) { // jitter up to a third of a gap, now and then dropped frames
        std::vector<double> gaps;
        for (int k = 0; k < 300; ++k) {
            const double drop = share(random) < 0.05 ? 1.0 + std::floor(3.0 * share(random)) : 0.0;
            gaps.push_back((1.0 + drop) / 120.0 * (0.83 + 0.34 * share(random)));
        }
        falseAlarms += slowedInParts(fromGaps(gaps)) ? 1 : 0;
    }
    EXPECT_EQ(missed, 0);
    EXPECT_EQ(falseAlarms, 0);
    EXPECT_FALSE(slowedInParts({}));
    EXPECT_FALSE(slowedInParts(fromGaps(std::vector<double>(5, 0.01))));
}

TEST(Timing, RatesAreReadFromText) {
    EXPECT_EQ(parseRate("240"), 240.0);
    EXPECT_EQ(parseRate("240.000000"), 240.0);
    EXPECT_EQ(parseRate("119,88"), 119.88);
    EXPECT_EQ(parseRate(" 120"), 120.0);
    for (const char* nothing : {"", " ", "fast", "0", "-30", "nan", "inf", "1e9"}) {
        EXPECT_FALSE(parseRate(nothing)) << nothing;
    }
}

} // namespace
} // namespace plumbmark::video::detail
