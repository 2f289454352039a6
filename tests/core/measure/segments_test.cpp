// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <vector>

#include "measure/segments.h"

using namespace plumbmark;
using namespace plumbmark::measure;

// Winter 2009's worked lower limb with Dempster's coefficients; two independent results agree (published
// notebook of body segment parameters, and an own computation): whole limb at (81.77, 58.37) cm.
TEST(CentreOfMass, WintersLowerLimb) {
    const base::Vec2 toe{101.1, 1.3}, ankle{84.9, 11.0}, knee{86.4, 54.9}, hip{72.1, 92.8};
    const SegmentMass foot{"foot", 0.0145, 0.5}, leg{"leg", 0.0465, 0.433}, thigh{"thigh", 0.100, 0.433};
    const auto f = segmentCentre(ankle, toe, foot.centre);
    EXPECT_NEAR(f.x, 93.00, 1e-9);
    EXPECT_NEAR(f.y, 6.15, 1e-9);
    const auto l = segmentCentre(knee, ankle, leg.centre);
    EXPECT_NEAR(l.x, 85.7505, 1e-4);
    EXPECT_NEAR(l.y, 35.8913, 1e-4);
    const auto t = segmentCentre(hip, knee, thigh.centre);
    EXPECT_NEAR(t.x, 78.2919, 1e-4);
    EXPECT_NEAR(t.y, 76.3893, 1e-4);
    const std::vector<PlacedSegment> limb{{foot, ankle, toe}, {leg, knee, ankle}, {thigh, hip, knee}};
    const auto whole = centreOfMass(limb);
    ASSERT_TRUE(whole);
    EXPECT_NEAR(whole->x, 81.7707, 1e-4);
    EXPECT_NEAR(whole->y, 58.3668, 1e-4);
    EXPECT_NEAR(includedAngle(hip, knee, ankle), 157.371, 5e-4);
}

// de Leva 1996: masses sum to 100.00 (men) and 99.99 (women) per cent.
TEST(CentreOfMass, DeLevasMassesSumUp) {
    for (const double women : {0.0, 1.0}) {
        const auto b = deLeva(women);
        const double sum =
            b.head.mass + b.trunk.mass +
            2 * (b.upperArm.mass + b.forearm.mass + b.hand.mass + b.thigh.mass + b.shank.mass + b.foot.mass);
        EXPECT_NEAR(sum, women > 0.5 ? 99.99 : 100.0, 0.005);
    }
}

// Standing with hanging arms, de Leva's men's lengths in mm: centre near 0.564 of the vertex's height (1002.8
// mm); textbooks expect about 0.57 (from memory). The trunk coefficient that belongs to C7 would miss by 18.6
// mm.
TEST(CentreOfMass, StandingManHasItNearHisNavel) {
    const auto b = deLeva(0.0);
    const double stature = 1741, ankle = 0.039 * stature, knee = ankle + 440.3, hip = knee + 422.2;
    const double shoulder = hip + 515.5, elbow = shoulder - 281.7, wrist = elbow - 268.9;
    const double vertex = hip + 603.3 + 242.9, neck = hip + 603.3;
    const auto at = [](double y) { return base::Vec2{0, y}; };
    std::vector<PlacedSegment> parts{{b.head, at(vertex), at(neck)}, {b.trunk, at(shoulder), at(hip)}};
    for (int side = 0; side < 2; ++side) {
        parts.push_back({b.upperArm, at(shoulder), at(elbow)});
        parts.push_back({b.forearm, at(elbow), at(wrist)});
        parts.push_back({b.hand, at(wrist), at(wrist - 86.2)});
        parts.push_back({b.thigh, at(hip), at(knee)});
        parts.push_back({b.shank, at(knee), at(ankle)});
        parts.push_back({b.foot, at(0.02 * stature), at(0.02 * stature)});
    }
    const auto c = centreOfMass(parts);
    ASSERT_TRUE(c);
    EXPECT_NEAR(c->y / vertex, 0.564, 0.004);
}
