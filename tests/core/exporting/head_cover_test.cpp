// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "exporting/head_cover.h"

using namespace plumbmark;
using marks::Landmark;

namespace {

constexpr int kWidth = 1280, kHeight = 720;

/// A person 400 px tall at 120 frames/s whose head moves slowly to the right.
marks::Track person(int frames = 120) {
    marks::Track track(static_cast<std::size_t>(frames));
    for (int i = 0; i < frames; ++i) {
        auto& frame = track[static_cast<std::size_t>(i)];
        frame.time = base::Seconds{i / 120.0};
        frame[Landmark::head_centre] = {{600.0 + i * 0.5, 180.0}, 2.0, base::Origin::network};
        frame[Landmark::nose] = {{606.0 + i * 0.5, 185.0}, 2.0, base::Origin::network};
        frame[Landmark::lead_ankle] = {{620.0, 560.0}, 3.0, base::Origin::network};
    }
    return track;
}
void forget(marks::Track& track, int from, int to) {
    for (int i = from; i < to; ++i) {
        track[static_cast<std::size_t>(i)][Landmark::head_centre].reset();
        track[static_cast<std::size_t>(i)][Landmark::nose].reset();
    }
}
/// A head as tall as 0.13 of the stature (Drillis and Contini 1966, from memory), with as much again for
/// hair.
bool covers(const base::Box& box, base::Vec2 centre) {
    const double r = 0.13 * 400.0 * 0.5 * 1.5;
    return box.x <= centre.x - r && box.y <= centre.y - r && box.x + box.width >= centre.x + r &&
           box.y + box.height >= centre.y + r;
}

} // namespace

TEST(HeadCover, LiesOverTheHeadInEveryFrame) {
    const auto cover = exporting::headCover(person(), kWidth, kHeight);
    ASSERT_EQ(cover.size(), 120U);
    for (int i = 0; i < 120; ++i) {
        EXPECT_TRUE(covers(cover[static_cast<std::size_t>(i)], {600.0 + i * 0.5, 180.0})) << i;
        EXPECT_LT(cover[static_cast<std::size_t>(i)].width, 220.0) << "not the whole picture";
    }
}

TEST(HeadCover, HoldsAndWidensWhereTheHeadIsUnknownAndNeverVanishes) {
    auto track = person();
    forget(track, 30, 90);
    const auto cover = exporting::headCover(track, kWidth, kHeight);
    ASSERT_EQ(cover.size(), 120U);
    for (int i = 0; i < 120; ++i) {
        EXPECT_TRUE(covers(cover[static_cast<std::size_t>(i)], {600.0 + i * 0.5, 180.0})) << i;
    }
    EXPECT_GT(cover[60].width, cover[35].width) << "the longer unknown, the wider";
    EXPECT_GT(cover[60].width, cover[10].width + 100.0);
    // Before the first and after the last known frame too.
    forget(track, 0, 20);
    forget(track, 100, 120);
    const auto ends = exporting::headCover(track, kWidth, kHeight);
    EXPECT_GT(ends.front().width, ends[19].width);
    EXPECT_GT(ends.back().width, ends[100].width);
    for (const base::Box& box : ends) {
        EXPECT_GE(box.x, 0.0);
        EXPECT_GE(box.y, 0.0);
        EXPECT_LE(box.x + box.width, kWidth);
        EXPECT_LE(box.y + box.height, kHeight);
    }
    // Long unknown: the whole picture.
    marks::Track longTrack = person(600);
    forget(longTrack, 60, 600);
    EXPECT_EQ(exporting::headCover(longTrack, kWidth, kHeight).back(), (base::Box{0, 0, kWidth, kHeight}));
}

TEST(HeadCover, AFewWrongFramesDoNotBareTheHead) {
    auto track = person();
    for (int i = 50; i < 54; ++i) { // the bag was taken for a head
        track[static_cast<std::size_t>(i)][Landmark::head_centre]->at = {100.0, 600.0};
        track[static_cast<std::size_t>(i)][Landmark::nose]->at = {100.0, 600.0};
    }
    const auto cover = exporting::headCover(track, kWidth, kHeight);
    for (int i = 0; i < 120; ++i) {
        EXPECT_TRUE(covers(cover[static_cast<std::size_t>(i)], {600.0 + i * 0.5, 180.0})) << i;
    }
}

TEST(HeadCover, AnUncertainHeadIsCoveredWiderAndShownToThePerson) {
    auto track = person();
    for (const Landmark point : {Landmark::head_centre, Landmark::nose}) {
        track[60][point]->sigma = 40.0;
    }
    const auto cover = exporting::headCover(track, kWidth, kHeight);
    EXPECT_GT(cover[60].width, cover[20].width + 150.0);
    forget(track, 10, 12);
    EXPECT_EQ(exporting::doubtfulFrames(track), (std::vector<int>{10, 11, 60}));
}

TEST(HeadCover, ItsEdgesLieOnTheEncodersGrid) {
    for (const base::Box& box : exporting::headCover(person(), 1278, 719)) {
        for (const double edge : {box.x, box.y, box.x + box.width, box.y + box.height}) {
            EXPECT_TRUE(std::fmod(edge, 16.0) == 0.0 || edge == 1278.0 || edge == 719.0) << edge;
        }
    }
}

TEST(HeadCover, WithoutAnyHeadThereIsNoCover) {
    auto track = person();
    forget(track, 0, 120);
    EXPECT_TRUE(exporting::headCover(track, kWidth, kHeight).empty());
    EXPECT_TRUE(exporting::headCover({}, kWidth, kHeight).empty());
}

TEST(HeadCover, ACoverIsOpaque) {
    video::RgbImage picture{64, 48, {}};
    for (int i = 0; i < 64 * 48 * 3; ++i) {
        picture.pixels.push_back(static_cast<std::uint8_t>(i * 7));
    }
    const base::Box box{10, 8, 30, 24};
    EXPECT_FALSE(exporting::isCovered(picture, box));
    exporting::coverWith(picture, box);
    EXPECT_TRUE(exporting::isCovered(picture, box));
    EXPECT_FALSE(exporting::isCovered(picture, {5, 8, 35, 24})) << "beside the box nothing is covered";
    // An opening as small as one coded block is one, however large the cover: no share of it is forgiven.
    video::RgbImage wide{640, 480, std::vector<std::uint8_t>(640 * 480 * 3, 40)};
    const base::Box large{16, 16, 608, 448};
    ASSERT_TRUE(exporting::isCovered(wide, large));
    for (int y = 200; y < 208; ++y) {
        for (int x = 320 * 3; x < 328 * 3; ++x) {
            wide.pixels[static_cast<std::size_t>(y * 640 * 3 + x)] = 90;
        }
    }
    EXPECT_FALSE(exporting::isCovered(wide, large));
    EXPECT_NEAR(exporting::worstBlock(wide, large), 50.0, 1e-9);
    exporting::coverWith(picture, {-5, -5, 500, 500});
    EXPECT_TRUE(exporting::isCovered(picture, {0, 0, 64, 48}));
}
