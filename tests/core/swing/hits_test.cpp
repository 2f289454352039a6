// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "swing/hits.h"

using namespace plumbmark;

namespace {

video::Sound noise(double seconds, double level, unsigned seed) {
    video::Sound sound;
    sound.rate = 48000.0;
    sound.start = base::Seconds{-0.021}; // a codec's priming: sound may start before the picture
    std::mt19937 random(seed);
    std::normal_distribution<float> gauss(0.0F, static_cast<float>(level));
    float low = 0.0F;
    for (int i = 0; i < static_cast<int>(seconds * sound.rate); ++i) {
        low = 0.98F * low + 0.2F * gauss(random); // wind: mostly rumble
        sound.samples.push_back(low + 0.1F * gauss(random));
    }
    return sound;
}

void click(video::Sound& sound, double at, double level, unsigned seed) {
    std::mt19937 random(seed);
    std::normal_distribution<float> gauss(0.0F, 1.0F);
    const auto first = static_cast<std::size_t>(std::lround((at - sound.start.value()) * sound.rate));
    for (std::size_t k = 0; k < 500 && first + k < sound.samples.size(); ++k) {
        sound.samples[first + k] +=
            static_cast<float>(level * std::exp(-static_cast<double>(k) / 120.0)) * gauss(random);
    }
}

} // namespace

// Air: 331.30, 337.31, 343.21, 349.02 m/s at 0, 10, 20, 30 degrees C (published-values table; constant from
// memory).
TEST(Hits, SpeedOfSoundFollowsTheTemperature) {
    EXPECT_NEAR(swing::speedOfSound(0), 331.30, 0.005);
    EXPECT_NEAR(swing::speedOfSound(10), 337.31, 0.005);
    EXPECT_NEAR(swing::speedOfSound(20), 343.21, 0.005);
    EXPECT_NEAR(swing::speedOfSound(30), 349.02, 0.005);
}

TEST(Hits, ClicksAreFoundWithinAMillisecond) {
    int late = 0;
    for (unsigned seed = 1; seed <= 40; ++seed) {
        auto sound = noise(2.0, 0.01, seed);
        const double at = 0.5 + 0.031 * seed;
        click(sound, at, 0.2, seed + 100);
        const auto hits = swing::findHits(sound);
        ASSERT_FALSE(hits.empty()) << seed;
        late += std::abs(hits.front().time.value() - at) > 0.001;
    }
    EXPECT_EQ(late, 0);
}

TEST(Hits, StrongestComesFirstAndEchoesCountOnce) {
    auto sound = noise(2.0, 0.005, 7);
    click(sound, 0.40, 0.06, 1);
    click(sound, 1.20, 0.40, 2);
    click(sound, 1.212, 0.20, 3); // the floor's echo
    const auto hits = swing::findHits(sound);
    ASSERT_EQ(hits.size(), 2u);
    EXPECT_NEAR(hits[0].time.value(), 1.20, 0.001);
    EXPECT_NEAR(hits[1].time.value(), 0.40, 0.001);
}

TEST(Hits, WindSpeechAndSilenceAreNoHits) {
    int alarms = 0;
    for (unsigned seed = 1; seed <= 10; ++seed) {
        auto sound = noise(3.0, 0.05, seed);
        for (std::size_t i = 0; i < sound.samples.size(); ++i) { // a voice: harmonics that swell within 80 ms
            const double t = static_cast<double>(i) / sound.rate;
            const double swell = 0.5 - 0.5 * std::cos(2 * M_PI * t / 0.4);
            for (int h = 1; h <= 8; ++h) {
                sound.samples[i] += static_cast<float>(0.03 * swell / h * std::sin(2 * M_PI * 140 * h * t));
            }
        }
        alarms += static_cast<int>(swing::findHits(sound).size());
    }
    EXPECT_LE(alarms, 1);
    video::Sound silence;
    silence.rate = 44100.0;
    silence.samples.assign(44100, 0.0F);
    EXPECT_TRUE(swing::findHits(silence).empty());
    EXPECT_TRUE(swing::findHits(video::Sound{}).empty());
}
