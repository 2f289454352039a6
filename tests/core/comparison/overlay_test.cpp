// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The rule is plane geometry: a similarity is known by what it does to two points (Euclid; no file of ours).
#include "comparison/overlay.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace plumbmark;
using marks::Landmark;

namespace {

struct Figure {
    marks::Track track;
    marks::Moments moments;
    club::ShaftTrack shaft;
    scene::Scene scene;
    marks::ShotContext context;
    [[nodiscard]] comparison::Side side() const {
        return {track, moments, shaft, scene, context, {1.0, true, "told"}};
    }
};

/// Ankles 100 apart, a head 500 above them and 30 toward the target; then grown, turned and mirrored.
Figure figure(double grown, double rollDegrees, bool mirrored, base::Vec2 feet) {
    Figure f;
    f.scene.scale.pixelsPerStature = 560 * grown;
    f.scene.vertical.angleDegrees = rollDegrees;
    f.context.mirrored = mirrored;
    const double c = std::cos(rollDegrees * M_PI / 180), s = std::sin(rollDegrees * M_PI / 180);
    const auto put = [&](double x, double y) {
        const double q = mirrored ? -x : x;
        return marks::Mark{feet + grown * base::Vec2{q * c - y * s, q * s + y * c}, 1.0, base::Origin::hand};
    };
    marks::FrameMarks frame;
    frame[Landmark::lead_ankle] = put(50, 0);
    frame[Landmark::trail_ankle] = put(-50, 0);
    frame[Landmark::head_centre] = put(30, -500);
    f.track = {frame};
    f.moments = {{marks::MomentId::address, base::Seconds{0}, base::Seconds{0.01}, "hand mark"}};
    return f;
}

} // namespace

TEST(Overlay, FeetFallTogetherAndEqualBodiesCoverEachOther) {
    const Figure first = figure(1.0, 3.0, false, {900, 1000});
    for (const bool mirrored : {false, true}) {
        const Figure second = figure(0.6, -4.0, mirrored, {300, 420});
        const auto o = comparison::overlayOf(first.side(), second.side(), 0, 0);
        ASSERT_TRUE(o);
        EXPECT_EQ(o->mirrored, mirrored);
        for (const Landmark l : {Landmark::lead_ankle, Landmark::trail_ankle, Landmark::head_centre}) {
            const base::Vec2 there = o->toFirst(second.track[0][l]->at), here = first.track[0][l]->at;
            EXPECT_NEAR(there.x, here.x, 1e-9) << mirrored << " " << marks::landmarkName(l);
            EXPECT_NEAR(there.y, here.y, 1e-9) << mirrored << " " << marks::landmarkName(l);
        }
    }
}

TEST(Overlay, ACameraThatWandersIsFollowed) {
    const Figure first = figure(1.0, 0.0, false, {900, 1000});
    Figure second = figure(1.0, 0.0, false, {900, 1000});
    second.track.push_back(second.track[0]);
    second.track[1].time = base::Seconds{0.1};
    // In frame 1 the ground lies 40 px farther right: back by 40 to the reference.
    second.scene.ground = scene::GroundMotion({{}, {1.0, 0.0, -40.0, 0.0}}, 0.1);
    const auto still = comparison::overlayOf(first.side(), second.side(), 0, 0);
    const auto moved = comparison::overlayOf(first.side(), second.side(), 0, 1);
    ASSERT_TRUE(still && moved);
    EXPECT_NEAR(moved->secondFeet.x - still->secondFeet.x, 40.0, 1e-9);
}

TEST(Overlay, WithoutFeetOrScaleThereIsNone) {
    const Figure first = figure(1.0, 0.0, false, {900, 1000});
    Figure second = first;
    second.track[0][Landmark::lead_ankle].reset();
    EXPECT_FALSE(comparison::overlayOf(first.side(), second.side(), 0, 0));
    second = first;
    second.scene.scale.pixelsPerStature = 0;
    EXPECT_FALSE(comparison::overlayOf(first.side(), second.side(), 0, 0));
}
