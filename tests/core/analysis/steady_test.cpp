// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "analysis/detail/steady.h"

#include <gtest/gtest.h>

using namespace plumbmark;
using marks::Landmark;

namespace {
/// Two seconds at 120 frames/s: still until 1.0 s, then moving 200 px a second; every third look is 20 px
/// off.
marks::Track track() {
    marks::Track out(240);
    for (int i = 0; i < 240; ++i) {
        out[static_cast<std::size_t>(i)].time = base::Seconds{i / 120.0};
        const double way = i < 120 ? 0.0 : (i - 120) / 120.0 * 200.0;
        const double off = i % 3 == 0 ? 20.0 : 0.0;
        for (const Landmark l : {Landmark::lead_shoulder, Landmark::lead_wrist}) {
            out[static_cast<std::size_t>(i)][l] =
                marks::Mark{{100 + way + off, 50}, 5.0, base::Origin::network};
        }
    }
    return out;
}
} // namespace

TEST(SteadyAddress, LooksAtAStandingPlayerAreLooksAtOnePlace) {
    auto steady = track();
    analysis::steadyAddress(steady, base::Seconds{1.0}, 1.0, 400.0);
    for (int i = 60; i <= 120; ++i) {
        EXPECT_DOUBLE_EQ(steady[static_cast<std::size_t>(i)][Landmark::lead_shoulder]->at.x, 100.0) << i;
    }
}

TEST(SteadyAddress, LeavesTheSwingTheHandsAndHandMarksAlone) {
    auto steady = track();
    steady[100][Landmark::lead_shoulder]->origin = base::Origin::hand;
    steady[100][Landmark::lead_shoulder]->at = {123, 45};
    const auto before = steady;
    analysis::steadyAddress(steady, base::Seconds{1.0}, 1.0, 400.0);
    EXPECT_EQ(steady[100][Landmark::lead_shoulder]->at, (base::Vec2{123, 45}));
    for (std::size_t i = 130; i < steady.size(); ++i) {
        EXPECT_EQ(steady[i][Landmark::lead_shoulder]->at, before[i][Landmark::lead_shoulder]->at);
    }
    for (std::size_t i = 0; i < steady.size(); ++i) {
        EXPECT_EQ(steady[i][Landmark::lead_wrist]->at, before[i][Landmark::lead_wrist]->at);
    }
}

TEST(SteadyAddress, WhatDoesNotLieStillIsNotHeld) {
    auto moving = track();
    for (std::size_t i = 0; i < moving.size(); ++i) {
        moving[i][Landmark::lead_shoulder]->at.x = 100.0 + 2.0 * static_cast<double>(i);
    }
    const auto before = moving;
    analysis::steadyAddress(moving, base::Seconds{1.0}, 1.0, 400.0);
    EXPECT_EQ(moving[90][Landmark::lead_shoulder]->at, before[90][Landmark::lead_shoulder]->at);
}

// The camera follows the hands: what stands still on the ground moves in the picture.
TEST(SteadyAddress, APannedPictureIsSteadyOnTheGround) {
    auto panned = track();
    std::vector<scene::GroundMotion::Step> steps(panned.size());
    for (std::size_t i = 0; i < panned.size(); ++i) {
        const double pan = 0.5 * static_cast<double>(i);
        steps[i].tx = -pan;
        panned[i][Landmark::lead_shoulder]->at.x += pan;
    }
    analysis::steadyAddress(panned, base::Seconds{1.0}, 1.0, 400.0, scene::GroundMotion(steps, 0.1));
    for (std::size_t i = 60; i <= 120; ++i) {
        EXPECT_NEAR(panned[i][Landmark::lead_shoulder]->at.x, 100.0 + 0.5 * static_cast<double>(i), 1e-9)
            << i;
    }
}
