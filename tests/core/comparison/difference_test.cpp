// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "comparison/difference.h"

using namespace plumbmark;
using comparison::Feature;

namespace {
measure::Measurement told(std::string id, marks::MomentId moment, double value, double sigma,
                          int method = 1) {
    return {std::move(id), moment, base::Measured{value, sigma, base::Unit::degrees, base::Origin::network},
            "", method};
}
} // namespace

// Two values with sigma 3 and 4 have a difference with sigma 5 (Pythagoras).
TEST(Differences, CarryTheSigmaOfTheDifference) {
    const auto rows =
        comparison::differences({told("spine_tilt", marks::MomentId::top, 12.0, 3.0)},
                                {told("spine_tilt", marks::MomentId::top, 2.0, 4.0)}, Feature::hands);
    ASSERT_EQ(rows.size(), 1u);
    EXPECT_DOUBLE_EQ(rows[0].difference, 10.0);
    EXPECT_DOUBLE_EQ(rows[0].sigma, 5.0);
    EXPECT_TRUE(rows[0].beyondDoubt) << "10 is 2.0 sigma";
}

TEST(Differences, NeverOfTheMatchedQuantityNorAcrossMethods) {
    const std::vector<measure::Measurement> a{told("shaft_lean", marks::MomentId::impact, 8, 1),
                                              told("spine_tilt", marks::MomentId::impact, 8, 1, 1)};
    const std::vector<measure::Measurement> b{told("shaft_lean", marks::MomentId::impact, 2, 1),
                                              told("spine_tilt", marks::MomentId::impact, 2, 1, 2)};
    EXPECT_TRUE(comparison::differences(a, b, Feature::shaft).empty());
    const auto byHands = comparison::differences(a, b, Feature::hands);
    ASSERT_EQ(byHands.size(), 1u) << "a tilt by another method version is not comparable";
    EXPECT_EQ(byHands[0].id, "shaft_lean");
}

TEST(Differences, EqualSwingsAreCalledDifferentInAboutFivePerCent) {
    std::mt19937 random(4);
    std::normal_distribution<double> gauss;
    int called = 0;
    constexpr int kRounds = 20000;
    for (int i = 0; i < kRounds; ++i) {
        const auto rows = comparison::differences(
            {told("spine_tilt", marks::MomentId::top, 2 * gauss(random), 2)},
            {told("spine_tilt", marks::MomentId::top, 3 * gauss(random), 3)}, Feature::hands);
        called += rows[0].beyondDoubt;
    }
    EXPECT_NEAR(called / static_cast<double>(kRounds), 0.05, 0.006);
}
