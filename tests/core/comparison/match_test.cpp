// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numeric>
#include <random>

#include "../swing/made_swing.h"
#include "comparison/match.h"

using namespace plumbmark;
using comparison::Feature;
using test::film;
using test::Made;

namespace {

std::vector<std::vector<double>> column(std::initializer_list<double> values) {
    std::vector<std::vector<double>> out;
    for (const double v : values) {
        out.push_back({v});
    }
    return out;
}

/// The definition itself, without memory or cleverness: least cost over every monotone path.
double bruteForce(const std::vector<std::vector<double>>& a, const std::vector<std::vector<double>>& b,
                  std::size_t i, std::size_t j) {
    const double here = std::abs(a[i][0] - b[j][0]);
    if (i == 0 && j == 0) {
        return here;
    }
    double best = std::numeric_limits<double>::max();
    if (i > 0) {
        best = std::min(best, bruteForce(a, b, i - 1, j));
    }
    if (j > 0) {
        best = std::min(best, bruteForce(a, b, i, j - 1));
    }
    if (i > 0 && j > 0) {
        best = std::min(best, bruteForce(a, b, i - 1, j - 1));
    }
    return here + best;
}

struct Swing {
    test::Scene scene;
    marks::Moments moments;
    explicit Swing(test::Scene s) : scene(std::move(s)), moments(scene.find().moments) {}
    [[nodiscard]] comparison::Side side() const {
        return {scene.track, moments, scene.shaft, scene.scene, scene.context, scene.scale};
    }
};

} // namespace

TEST(Warp, AgreesWithTheDefinitionOnEveryPath) {
    std::mt19937 random(1);
    std::uniform_real_distribution<double> value(-2, 2);
    for (int round = 0; round < 40; ++round) {
        std::vector<std::vector<double>> a(3 + random() % 4), b(3 + random() % 4);
        for (auto& v : a) {
            v = {value(random)};
        }
        for (auto& v : b) {
            v = {value(random)};
        }
        const auto warped = comparison::warp(a, b);
        EXPECT_NEAR(warped.cost, bruteForce(a, b, a.size() - 1, b.size() - 1), 1e-12);
        double along = 0;
        for (const auto& [i, j] : warped.path) {
            along += std::abs(a[static_cast<std::size_t>(i)][0] - b[static_cast<std::size_t>(j)][0]);
        }
        EXPECT_NEAR(along, warped.cost, 1e-12) << "the path costs what is said";
    }
}

// Worked by hand: 1 2 3 on 2 2 2 3 4: 1 with the first 2 costs 1, 3 with 4 costs 1, the rest fits.
TEST(Warp, WorkedExample) {
    EXPECT_DOUBLE_EQ(comparison::warp(column({1, 2, 3}), column({2, 2, 2, 3, 4})).cost, 2.0);
    EXPECT_DOUBLE_EQ(comparison::warp(column({0, 1, 2}), column({0, 0, 1, 1, 2, 2})).cost, 0.0);
    EXPECT_TRUE(comparison::warp({}, column({1})).path.empty());
}

TEST(MatchSwings, ASwingWithItselfIsTheIdentity) {
    const Swing swing(film(Made{}, 120, 3.0, 0.5, 3));
    for (const Feature feature : {Feature::hands, Feature::shaft, Feature::time_from_impact}) {
        const auto match = comparison::matchSwings(swing.side(), swing.side(), feature);
        ASSERT_TRUE(match.ok()) << match.error().sentence;
        for (double t = 1.0; t < 1.9; t += 0.0137) {
            const auto there = match->inSecond(base::Seconds{t});
            ASSERT_TRUE(there) << t;
            EXPECT_NEAR(there->value(), t, 1e-6) << comparison::featureName(feature);
        }
    }
}

// A 30 % slower swing, the other hand, another frame rate, another start: the same positions within 10 ms.
TEST(MatchSwings, FindsTheSamePositionThroughAnotherTempoHandAndRate) {
    Made quick;
    Made slow = quick;
    slow.start = 1.1, slow.backswing *= 1.3, slow.downswing *= 1.3, slow.hitSpeed /= 1.3;
    const Swing a(film(quick, 120, 3.0, 0.4, 5, +1)), b(film(slow, 240, 3.4, 0.4, 6, -1));
    for (const Feature feature : {Feature::hands, Feature::shaft}) {
        const auto match = comparison::matchSwings(a.side(), b.side(), feature);
        ASSERT_TRUE(match.ok()) << match.error().sentence;
        int right = 0, all = 0;
        for (double w = quick.start + 0.12; w < quick.hit() - 0.005; w += 0.01) { // moving parts of the swing
            if (std::abs(w - quick.top()) < 0.05) {
                continue; // at the top the position hardly changes: any instant near it is the same position
            }
            const double turned = quick.turned(w);
            const bool back = w < quick.top();
            const double truth =
                back ? slow.when(turned, slow.start, slow.top()) : slow.when(turned, slow.top(), slow.hit());
            const auto there = match->inSecond(base::Seconds{w - 0.35 / 120});
            ++all;
            right += there && std::abs(there->value() + 0.35 / 240 - truth) < 0.010;
        }
        EXPECT_GE(right, 0.95 * all) << comparison::featureName(feature) << ": " << right << " of " << all;
    }
}

TEST(MatchSwings, GoesBothWaysAndNeverTurnsTimeBack) {
    Made slow;
    slow.start = 1.0, slow.backswing = 1.1, slow.downswing = 0.35, slow.hitSpeed = 1500;
    const Swing a(film(Made{}, 120, 3.0, 1.0, 7)), b(film(slow, 120, 3.2, 1.0, 8));
    const auto match = comparison::matchSwings(a.side(), b.side(), Feature::hands);
    ASSERT_TRUE(match.ok());
    for (std::size_t k = 1; k < match->knots().size(); ++k) {
        EXPECT_LE(match->knots()[k - 1].first, match->knots()[k].first);
        EXPECT_LE(match->knots()[k - 1].second, match->knots()[k].second);
    }
    const auto there = match->inSecond(base::Seconds{1.5});
    ASSERT_TRUE(there);
    EXPECT_NEAR(match->inFirst(*there)->value(), 1.5, 0.004);
    EXPECT_FALSE(match->inSecond(base::Seconds{99}));
}

TEST(MatchSwings, SaysPlainlyWhatCannotBeMatched) {
    Swing a(film(Made{}, 120, 3.0, 0.5, 9)), b(film(Made{}, 120, 3.0, 0.5, 10));
    b.scene.context.view = marks::View::downTheLine;
    EXPECT_EQ(comparison::matchSwings(a.side(), b.side(), Feature::hands).error().key, "compare.views");
    b.scene.context.view = marks::View::faceOn;
    b.scene.scale.known = false;
    EXPECT_EQ(comparison::matchSwings(a.side(), b.side(), Feature::time_from_impact).error().key,
              "compare.impact");
    std::fill(b.scene.shaft.begin(), b.scene.shaft.end(), std::nullopt);
    EXPECT_EQ(comparison::matchSwings(a.side(), b.side(), Feature::shaft).error().key, "compare.feature");
    b.moments.clear();
    EXPECT_EQ(comparison::matchSwings(a.side(), b.side(), Feature::hands).error().key, "compare.moments");
}
