// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "body/detail/carry.h"

using namespace plumbmark::body::detail;

namespace {

constexpr CarrySettings kSettings{2.0, 0.15, 4e5}; // px: a body of some 500 px

/// A middle that goes back and forth once, 30 looks a second; the network is `off` px beside it.
std::vector<TwoTold> looks(double off, std::vector<double>& truth) {
    std::vector<TwoTold> out;
    for (int i = 0; i < 60; ++i) {
        const double t = i / 30.0;
        truth.push_back(400.0 + 25.0 * std::sin(2.0 * t));
        out.push_back({t, truth.back() + off, 8.0, std::nullopt});
    }
    return out;
}

TEST(Carry, TheBiasLearntWhereTheOutlineSpeaksHoldsBetween) {
    std::vector<double> truth;
    auto told = looks(9.0, truth);
    for (std::size_t i = 0; i < told.size(); ++i) {
        if (i < 25 || i > 29) {
            told[i].outline = TwoTold::Outline{truth[i], 3.0};
        }
    }
    const auto middle = carryMiddle(told, kSettings);
    ASSERT_EQ(middle.size(), truth.size());
    for (std::size_t i = 0; i < middle.size(); ++i) {
        EXPECT_NEAR(middle[i], truth[i], 3.0) << i; // the network alone: 9
    }
}

TEST(Carry, AnOutlineGoneAstrayForALookOrTwoIsNotFollowed) {
    std::vector<double> truth;
    auto told = looks(0.0, truth);
    for (std::size_t i = 0; i < told.size(); ++i) {
        told[i].outline = TwoTold::Outline{truth[i] + (i == 30 || i == 31 ? 60.0 : 0.0), 3.0};
    }
    const auto middle = carryMiddle(told, kSettings);
    EXPECT_NEAR(middle[30], truth[30], 3.0);
    EXPECT_NEAR(middle[31], truth[31], 3.0);
}

TEST(Carry, OfBothItMakesSomethingBetterThanEach) {
    // Monte Carlo with the very errors it is told to expect: lasting bias of the network, scatter of the
    // outline, which is missing in one look of three.
    std::mt19937 random(11);
    std::normal_distribution<double> gauss;
    double square = 0.0, network = 0.0, outline = 0.0;
    int count = 0, shown = 0;
    for (int run = 0; run < 40; ++run) {
        std::vector<double> truth;
        auto told = looks(0.0, truth);
        double bias = 8.0 * gauss(random);
        const double keep = std::exp(-1.0 / 30.0 / kSettings.lasting);
        for (std::size_t i = 0; i < told.size(); ++i) {
            bias = keep * bias + 8.0 * std::sqrt(1.0 - keep * keep) * gauss(random);
            told[i].network += bias + kSettings.grain * gauss(random);
            if (i % 3 != 0) {
                told[i].outline = TwoTold::Outline{truth[i] + 6.0 * gauss(random), 6.0};
                outline += std::pow(told[i].outline->at - truth[i], 2);
                ++shown;
            }
        }
        const auto middle = carryMiddle(told, kSettings);
        for (std::size_t i = 0; i < told.size(); ++i) {
            square += std::pow(middle[i] - truth[i], 2);
            network += std::pow(told[i].network - truth[i], 2);
            ++count;
        }
    }
    const double error = std::sqrt(square / count);
    EXPECT_LT(error, 0.6 * std::sqrt(network / count));
    EXPECT_LT(error, 0.6 * std::sqrt(outline / shown));
}

TEST(Carry, FewLooksAndSlowMotionAreNoTrouble) {
    EXPECT_TRUE(carryMiddle({}, kSettings).empty());
    const auto one = carryMiddle({{0.0, 100.0, 8.0, std::nullopt}}, kSettings);
    ASSERT_EQ(one.size(), 1U);
    EXPECT_NEAR(one[0], 100.0, 8.0);
    const auto twice = carryMiddle(
        {{1.0, 100.0, 8.0, TwoTold::Outline{104.0, 3.0}}, {1.0, 100.0, 8.0, TwoTold::Outline{104.0, 3.0}}},
        kSettings); // one and the same time
    ASSERT_EQ(twice.size(), 2U);
    EXPECT_NEAR(twice[0], 104.0, 2.0);
}

} // namespace
