// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "marks/landmark.h"
#include "marks/moment.h"
#include "marks/player.h"

using namespace plumbmark;

TEST(Names, EveryLandmarkReadsBackAsItself) {
    for (std::size_t i = 0; i < marks::kLandmarkCount; ++i) {
        const auto landmark = static_cast<marks::Landmark>(i);
        EXPECT_EQ(marks::landmarkFromName(marks::landmarkName(landmark)), landmark);
    }
    EXPECT_FALSE(marks::landmarkFromName("left_shoulder")) << "data use lead and trail only";
}

TEST(Names, EveryMomentReadsBackAsItself) {
    for (int i = 0; i < marks::kMomentCount; ++i) {
        const auto id = static_cast<marks::MomentId>(i);
        EXPECT_EQ(marks::momentFromName(marks::momentName(id)), id);
    }
}

TEST(Names, ClubsCarryNumberOrLoft) {
    EXPECT_EQ(marks::clubFromName("iron-7"), (marks::Club{marks::ClubKind::iron, 7}));
    EXPECT_EQ(marks::clubFromName("wedge-56"), (marks::Club{marks::ClubKind::wedge, 56}));
    EXPECT_EQ(marks::clubFromName("driver"), (marks::Club{marks::ClubKind::driver, std::nullopt}));
    EXPECT_EQ(marks::clubName({marks::ClubKind::wood, 3}), "wood-3");
    for (const char* wrong : {"", "stick", "iron-", "iron-x", "iron-0", "iron-7b", "iron-99999999999"}) {
        EXPECT_FALSE(marks::clubFromName(wrong)) << wrong;
    }
}

TEST(Context, EachOfLeftHandedAndMirroredSwapsTheSides) {
    marks::ShotContext context;
    EXPECT_EQ(context.sideSign(), 1);
    context.mirrored = true;
    EXPECT_EQ(context.sideSign(), -1);
    context.hand = marks::Hand::left;
    EXPECT_EQ(context.sideSign(), 1);
}

TEST(MarkAt, IsExactOnAFrameAndLinearBetween) {
    marks::Track track(3);
    for (int i = 0; i < 3; ++i) {
        track[i].time = base::Seconds{0.1 * i};
        track[i][marks::Landmark::nose] = marks::Mark{{10.0 * i, 5.0}, 1.0 + i, base::Origin::network};
    }
    track[2][marks::Landmark::nose]->origin = base::Origin::interpolated;
    EXPECT_DOUBLE_EQ(marks::markAt(track, marks::Landmark::nose, base::Seconds{0.1})->at.x, 10.0);
    const auto between = marks::markAt(track, marks::Landmark::nose, base::Seconds{0.15});
    EXPECT_NEAR(between->at.x, 15.0, 1e-9);
    EXPECT_DOUBLE_EQ(between->sigma, 3.0);
    EXPECT_EQ(between->origin, base::Origin::interpolated) << "the less direct origin is the one told";
    EXPECT_FALSE(marks::markAt(track, marks::Landmark::ball, base::Seconds{0.15}));
    EXPECT_FALSE(marks::markAt(track, marks::Landmark::nose, base::Seconds{0.25}));
}
