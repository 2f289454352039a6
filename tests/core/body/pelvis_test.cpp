// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "body/detail/pelvis.h"

using namespace plumbmark;
using namespace plumbmark::body;
using base::Vec2;

namespace {

constexpr double kStature = 500.0;

/// A made silhouette: a pelvis 100 px wide about `middle`; between `from` and `to` px of it everything
/// belongs to the silhouette as well. The crop is the picture's square of 768 px.
Observation seenAt(double middle, double from = 0.0, double to = 0.0) {
    Observation o;
    o.region = {{384, 384}, 768, 0};
    std::vector<float> odds(static_cast<std::size_t>(Silhouette::kRows) * Silhouette::kRows, -5.0F);
    for (int y = 60; y < 220; ++y) {
        for (int x = 0; x < Silhouette::kRows; ++x) {
            const double at = (x + 0.5) * 3.0 - middle;
            if (std::abs(at) < 50.0 || (at > from && at < to)) {
                odds[static_cast<std::size_t>(y) * Silhouette::kRows + static_cast<std::size_t>(x)] = 5.0F;
            }
        }
    }
    o.silhouette = Silhouette(odds.data());
    return o;
}

struct Made {
    std::vector<Observation> seen;
    std::vector<detail::PelvisLook> looks;
    std::vector<double> middle;
};

/// Ten looks with the hands up while the pelvis travels 18 px, and as the last one `spoiled` with `arm`.
Made swing(const Observation& spoiled, double middle, const std::vector<detail::Limb>& arm, Vec2 network) {
    Made m;
    for (int i = 0; i < 10; ++i) {
        m.middle.push_back(380.0 + 2.0 * i);
        m.seen.push_back(seenAt(m.middle.back()));
    }
    m.middle.push_back(middle);
    m.seen.push_back(spoiled);
    for (std::size_t i = 0; i < m.seen.size(); ++i) {
        const bool last = i + 1 == m.seen.size();
        // The network's own mid-hip strays by 10 px.
        m.looks.push_back({0.03 * static_cast<double>(i),
                           &m.seen[i],
                           last ? network : Vec2{m.middle[i] + 10.0, 400.0},
                           last ? Vec2{middle, 430.0} : Vec2{300.0, 150.0},
                           {last ? network.x : m.middle[i] + 10.0, 280.0},
                           {last ? network.x : m.middle[i] + 10.0, 520.0},
                           last ? arm : std::vector<detail::Limb>{}});
    }
    return m;
}

TEST(Pelvis, StandsInTheMiddleOfItsOutline) {
    const auto m = swing(seenAt(400), 400, {}, {405, 400});
    const auto told = detail::pelvisMiddles(m.looks, kStature);
    for (std::size_t i = 0; i < told.size(); ++i) {
        ASSERT_TRUE(told[i]) << i;
        EXPECT_NEAR(told[i]->x, m.middle[i], 1.6) << i; // half a mask pixel
        EXPECT_TRUE(told[i]->width);
    }
}

TEST(Pelvis, AnArmAtOneEdgeLeavesTheOther) {
    // The trail forearm sticks out 40 px on the left.
    const auto m = swing(seenAt(400, -90, -40), 400, {{{315, 330}, {315, 470}, 0.0}}, {380, 400});
    const auto told = detail::pelvisMiddles(m.looks, kStature);
    ASSERT_TRUE(told.back());
    EXPECT_NEAR(told.back()->x, 400, 3);
    EXPECT_GT(told.back()->sigma, told.front()->sigma) << "one edge tells less than two";
}

TEST(Pelvis, SomethingBehindThePlayerIsNotHim) {
    const auto m = swing(seenAt(400, 40, 90), 400, {}, {415, 400});
    const auto told = detail::pelvisMiddles(m.looks, kStature);
    ASSERT_TRUE(told.back());
    EXPECT_NEAR(told.back()->x, 400, 3);
    EXPECT_GT(told.back()->sigma, told.front()->sigma);
}

TEST(Pelvis, WhereNoEdgeIsLeftTheNetworkIsCorrectedAsBefore) {
    const auto m = swing(seenAt(400, -90, 90), 400,
                         {{{315, 330}, {315, 470}, 0.0}, {{485, 330}, {485, 470}, 0.0}}, {410, 400});
    const auto told = detail::pelvisMiddles(m.looks, kStature);
    ASSERT_TRUE(told.back());
    EXPECT_NEAR(told.back()->x, 400, 3);
    EXPECT_GT(told.back()->sigma, 1.5 * told.front()->sigma);
}

TEST(Pelvis, WithoutAnySilhouetteNothingIsTold) {
    std::vector<Observation> seen(4);
    std::vector<detail::PelvisLook> looks;
    for (const auto& o : seen) {
        looks.push_back({0.0, &o, {400, 400}, {400, 450}, {400, 280}, {400, 520}, {}});
    }
    for (const auto& told : detail::pelvisMiddles(looks, kStature)) {
        EXPECT_FALSE(told);
    }
}

} // namespace
