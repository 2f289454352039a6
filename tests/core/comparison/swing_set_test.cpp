// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "comparison/match.h"
#include "comparison/swing_set.h"

using namespace plumbmark;
using namespace plumbmark::comparison;

namespace {

base::Measured told(double value, double sigma) {
    return {value, sigma, base::Unit::degrees, base::Origin::network};
}

} // namespace

// Two-sided 95 % points of Student's t. Whole degrees of freedom: NIST/SEMATECH e-Handbook of Statistical
// Methods, table 1.3.6.7.2 (upper 0.025). 7.5 degrees: scipy 1.10.1 (Debian python3-scipy),
// t.ppf(0.975, 7.5).
TEST(StudentT, AgreesWithThePublishedTable) {
    for (const auto& [freedom, t] : {std::pair{1.0, 12.706},
                                     {2.0, 4.303},
                                     {3.0, 3.182},
                                     {4.0, 2.776},
                                     {5.0, 2.571},
                                     {8.0, 2.306},
                                     {10.0, 2.228},
                                     {30.0, 2.042}}) {
        EXPECT_NEAR(studentT95(freedom), t, 0.0006) << freedom;
    }
    EXPECT_NEAR(studentT95(7.5), 2.333039626555376, 1e-9);
    EXPECT_NEAR(studentT95(1e6), 1.95996, 1e-4) << "the normal distribution";
}

TEST(Spread, MedianRangeAndSwingToSwing) {
    // By hand: 4, 6, 11: median 6, mean 7, deviations -3, -1, 4: (9 + 1 + 16) / 2 = 13.
    const std::vector<base::Measured> three{told(6, 1), told(4, 2), told(11, 2)};
    const auto s = spreadOf(three);
    ASSERT_TRUE(s);
    EXPECT_EQ(s->swings, 3);
    EXPECT_DOUBLE_EQ(s->median, 6);
    EXPECT_DOUBLE_EQ(s->low, 4);
    EXPECT_DOUBLE_EQ(s->high, 11);
    EXPECT_DOUBLE_EQ(s->mean, 7);
    EXPECT_NEAR(s->betweenSwings, std::sqrt(13.0), 1e-12);
    EXPECT_NEAR(s->measurement, std::sqrt(3.0), 1e-12) << "root mean square of 1, 2, 2";
    EXPECT_DOUBLE_EQ(spreadOf(std::vector{told(1, 1), told(4, 1)})->median, 2.5);
    EXPECT_FALSE(spreadOf({}));
}

// Worked by hand. s1 = s2 = 3, n = 3, m = 0: sigma^2 = 9/3 + 9/3 = 6; freedom = 36 / (9/2 + 9/2) = 4; the
// table's 2.776 x 2.449 = 6.80.
TEST(Change, NeedsThreeSwingsAndMoreThanTheTablesShare) {
    Spread a{3, 0, 0, 0, 10, 3, 1e-9}, b{3, 0, 0, 0, 16.7, 3, 1e-9};
    auto c = changeBetween(a, b);
    ASSERT_TRUE(c);
    EXPECT_NEAR(c->sigma, std::sqrt(6.0), 1e-6);
    EXPECT_NEAR(c->freedom, 4.0, 1e-6);
    EXPECT_NEAR(c->critical, 2.776, 0.001);
    EXPECT_FALSE(c->beyondDoubt);
    b.mean = 16.9;
    EXPECT_TRUE(changeBetween(a, b)->beyondDoubt);
    // The same swings measured with a sigma of 2 on each side: sigma^2 = 6 + 4 + 4 = 14.
    a.measurement = b.measurement = 2;
    c = changeBetween(a, b);
    EXPECT_NEAR(c->sigma, std::sqrt(14.0), 1e-9);
    EXPECT_FALSE(c->beyondDoubt);
    a.swings = 2;
    EXPECT_FALSE(changeBetween(a, b)) << "two swings prove little";
}

// Unchanged players, errors either shared by all swings of a set (bias of the marks) or fresh for each one:
// called changed in at most 5 % of the rounds.
TEST(Change, UnchangedPlayersAreCalledChangedInAtMostFivePerCent) {
    std::mt19937 random(17);
    std::normal_distribution<double> gauss;
    constexpr int kRounds = 2000;
    for (const int swings : {3, 5}) {
        for (const double spread : {0.5, 2.0}) {
            for (const double shared : {0.0, 0.5, 1.0}) {
                int called = 0;
                for (int round = 0; round < kRounds; ++round) {
                    const double sigma = 1.5;
                    const auto set = [&] {
                        const double bias = std::sqrt(shared) * sigma * gauss(random);
                        std::vector<base::Measured> values;
                        for (int i = 0; i < swings; ++i) {
                            values.push_back(told(20 + spread * gauss(random) + bias +
                                                      std::sqrt(1 - shared) * sigma * gauss(random),
                                                  sigma));
                        }
                        return *spreadOf(values);
                    };
                    const Spread a = set(), b = set();
                    called += changeBetween(a, b)->beyondDoubt;
                }
                // 2,000 rounds: one sigma of the count's own scatter at 5 % is 0.0049.
                EXPECT_LE(called / static_cast<double>(kRounds), 0.05 + 2 * 0.0049)
                    << swings << " swings, spread " << spread << ", shared " << shared;
            }
        }
    }
}

TEST(Change, AChangeThatIsThereIsSeen) {
    std::mt19937 random(18);
    std::normal_distribution<double> gauss;
    int called = 0;
    for (int round = 0; round < 500; ++round) {
        std::vector<base::Measured> a, b;
        for (int i = 0; i < 5; ++i) {
            a.push_back(told(20 + 1.5 * gauss(random), 1.5));
            b.push_back(told(30 + 1.5 * gauss(random), 1.5));
        }
        called += changeBetween(*spreadOf(a), *spreadOf(b))->beyondDoubt;
    }
    EXPECT_GE(called, 490);
}

TEST(SwingSets, RowsHoldWhatBothSetsTell) {
    const auto swing = [](double tilt, int method) {
        measure::Measurement m{"spine_tilt", marks::MomentId::top, told(tilt, 1), "", method};
        measure::Measurement none{"head_travel", marks::MomentId::top, std::nullopt, "hidden", 1};
        return SwingNumbers{m, none};
    };
    const std::vector<SwingNumbers> before{swing(5, 1), swing(6, 1), swing(7, 1)};
    const std::vector<SwingNumbers> after{swing(15, 1), swing(16, 1), swing(17, 1), swing(90, 2)};
    const auto rows = compareSets(before, after);
    ASSERT_EQ(rows.size(), 1U);
    ASSERT_TRUE(rows[0].change);
    EXPECT_EQ(rows[0].second->swings, 3) << "another version of the method is not comparable";
    EXPECT_DOUBLE_EQ(rows[0].change->difference, 10);
    EXPECT_TRUE(rows[0].change->beyondDoubt);
    EXPECT_FALSE(compareSets(before, {})[0].second);
}

// Two curves of two coordinates, 24 and 19 samples. The figure is that of the textbook recursion written in
// numpy 1.24.2 (Debian python3-numpy): D[i,j] = |a_i - b_j| + min(D[i-1,j], D[i,j-1], D[i-1,j-1]).
TEST(Warp, AgreesWithAnIndependentImplementation) {
    std::vector<std::vector<double>> a, b;
    for (int i = 0; i < 24; ++i) {
        a.push_back({std::sin(0.3 * i), std::cos(0.2 * i)});
    }
    for (int j = 0; j < 19; ++j) {
        b.push_back({std::sin(0.3 * 1.3 * j + 0.1), std::cos(0.2 * 1.3 * j)});
    }
    EXPECT_NEAR(warp(a, b).cost, 2.188079271596466, 1e-12);
}
