// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// A ghost is where a mark would be if its number had another value. What it must be is known from the
// figure's own geometry: filmed by a pinhole camera, the figure that really stands so.
#include <gtest/gtest.h>

#include "measure/ghost.h"
#include "stick_figure.h"

namespace plumbmark {
namespace {

using marks::Landmark;
using marks::MomentId;
using test::Camera;
using test::film;
using test::Pose;

double valueOf(const measure::Input& in, std::string_view id, MomentId moment) {
    const auto all = measure::measureAll(in);
    const auto* m = measure::find(all, id, moment);
    return m != nullptr && m->value ? m->value->value : std::nan("");
}

TEST(Ghost, FeetStandWhereTheWiderFigureReallyStands) {
    const Camera camera;
    Pose narrow, wide;
    narrow.stance = 0.32;
    wide.stance = 0.46;
    const auto clip = film({{MomentId::address, narrow}}, camera);
    const auto wanted = film({{MomentId::address, wide}}, camera);
    const double target = valueOf(wanted.input(), "stance_width_ratio", MomentId::address);
    const auto ghost = measure::ghostOf(clip.input(), "stance_width_ratio", MomentId::address, target);
    ASSERT_TRUE(ghost);
    for (const Landmark foot : {Landmark::lead_ankle, Landmark::trail_ankle}) {
        ASSERT_TRUE(ghost->marks[foot]);
        EXPECT_NEAR(ghost->marks[foot]->at.x, wanted.track[0][foot]->at.x, 1.5);
        EXPECT_NEAR(ghost->marks[foot]->at.y, wanted.track[0][foot]->at.y, 1.5);
    }
    ASSERT_EQ(ghost->lines.size(), 1U); // the feet; the shoulders stay
}

TEST(Ghost, HipsAndTrunkReadTheValueAskedFor) {
    const Camera camera;
    Pose start, top;
    top.shift = -0.10; // 10 cm away from the target
    const auto clip = film({{MomentId::address, start}, {MomentId::top, top}}, camera);
    const double now = valueOf(clip.input(), "pelvis_shift", MomentId::top);
    ASSERT_LT(now, -0.03);
    const auto ghost = measure::ghostOf(clip.input(), "pelvis_shift", MomentId::top, -0.025);
    ASSERT_TRUE(ghost);
    EXPECT_EQ(ghost->frame, 1);
    // 1.75 m of stature: from 10 cm to 4.4 cm is 5.6 cm, and a metre at the hips' distance some 330 px.
    const double moved = ghost->marks[Landmark::lead_hip]->at.x - clip.track[1][Landmark::lead_hip]->at.x;
    const double pixelsPerMetre = camera.focal / camera.distance;
    EXPECT_NEAR(moved, (0.10 - 0.025 * 1.75) * pixelsPerMetre, 0.05 * 0.1 * pixelsPerMetre + 1.0);

    const auto trunk = measure::ghostOf(clip.input(), "spine_tilt", MomentId::address, 9.0);
    ASSERT_TRUE(trunk);
    auto asked = clip;
    asked.track[0] = trunk->marks;
    EXPECT_NEAR(valueOf(asked.input(), "spine_tilt", MomentId::address), 9.0, 0.15);
    EXPECT_EQ(trunk->marks[Landmark::lead_hip]->at.x, clip.track[0][Landmark::lead_hip]->at.x);
}

TEST(Ghost, IsNotThereWhereANumberHasNoPlace) {
    const auto clip = film({{MomentId::address, Pose{}}}, Camera{});
    EXPECT_FALSE(measure::ghostOf(clip.input(), "tempo_ratio", std::nullopt, 3.0));
    EXPECT_FALSE(measure::ghostOf(clip.input(), "spine_tilt", MomentId::top, 5.0)); // no such moment
    EXPECT_FALSE(
        measure::ghostOf(clip.input(), "stance_width_ratio", MomentId::address, 40.0)); // no such feet
}

} // namespace
} // namespace plumbmark
