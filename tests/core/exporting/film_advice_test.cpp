// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/film_advice.h"

#include <gmock/gmock.h>

#include "base/files.h"
#include "outcome_for_tests.h"
#include "video/writer.h"

using namespace plumbmark;
using namespace plumbmark::exporting;
using marks::Landmark;
using testing::HasSubstr;
namespace fs = std::filesystem;

namespace {

/// Filmed as it should be: 240 frames a second, level told, stick seen, player 63 % of the height, ball in
/// the middle.
analysis::Outcome wellFilmed() {
    analysis::Outcome o = test::madeUpOutcome();
    o.scene.yawSigmaDegrees = 1.0;
    club::Ball ball;
    ball.centre = {360, 1100};
    o.ball = ball;
    return o;
}

std::vector<std::string> idsOf(const std::vector<Advice>& advice) {
    std::vector<std::string> ids;
    for (const Advice& one : advice) {
        ids.push_back(one.id);
        EXPECT_TRUE(one.limited.ends_with(".") && one.change.ends_with(".")) << one.id;
    }
    return ids;
}

/// A picture with a trunk of one grey in surroundings of another, 320 x 240.
base::Result<PictureQuality> lookedAt(std::uint8_t trunk, std::uint8_t around) {
    const auto stage = base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test");
    const fs::path file = stage->path() / "light.mp4";
    video::WriterOptions options;
    options.width = 320;
    options.height = 240;
    options.fps = 30;
    auto writer = video::ClipWriter::create(file, options);
    video::RgbImage picture{320, 240, std::vector<std::uint8_t>(320 * 240 * 3, around)};
    for (int y = 80; y < 160; ++y) {
        std::fill_n(picture.pixels.begin() + 3 * (320 * y + 140), 3 * 40, trunk);
    }
    for (int i = 0; i < 4; ++i) {
        EXPECT_TRUE((*writer)->write(picture));
    }
    EXPECT_TRUE((*writer)->finish());
    analysis::Outcome o = test::madeUpOutcome();
    for (auto& frame : o.track) {
        frame[Landmark::lead_shoulder] = marks::Mark{{178, 85}, 2, base::Origin::network};
        frame[Landmark::trail_shoulder] = marks::Mark{{142, 85}, 2, base::Origin::network};
        frame[Landmark::lead_hip] = marks::Mark{{175, 155}, 2, base::Origin::network};
        frame[Landmark::trail_hip] = marks::Mark{{145, 155}, 2, base::Origin::network};
    }
    auto clip = video::Clip::open(file);
    EXPECT_TRUE(clip);
    return lookAtPictures(**clip, o);
}

} // namespace

TEST(FilmAdvice, AGoodClipNeedsNone) {
    EXPECT_TRUE(filmAdvice(wellFilmed(), {0.5, 0.6}).empty());
    EXPECT_EQ(filmAgainWords({}), "");
}

TEST(FilmAdvice, FrameRate) {
    analysis::Outcome o = wellFilmed();
    o.timeScale = {1.0, true, "playback"}; // 30 frames a second
    const auto advice = filmAdvice(o);
    ASSERT_EQ(idsOf(advice), std::vector<std::string>{"frame_rate"});
    EXPECT_THAT(advice[0].limited, HasSubstr("At 30 frames a second"));
    EXPECT_THAT(advice[0].limited, HasSubstr("about 80 degrees"));
    EXPECT_THAT(filmAgainWords(advice), testing::StartsWith("Please film it again:\n- At 30"));
    o.timeScale.known = false;
    EXPECT_EQ(idsOf(filmAdvice(o)), std::vector<std::string>{"rate_unknown"});
}

TEST(FilmAdvice, FramingDistanceAndMiddle) {
    analysis::Outcome o = wellFilmed();
    for (auto& frame : o.track) {
        frame[Landmark::grip] = marks::Mark{{719.5, 300}, 2, base::Origin::network};
    }
    EXPECT_EQ(idsOf(filmAdvice(o)), std::vector<std::string>{"framing"});
    EXPECT_THAT(filmAdvice(o)[0].limited, HasSubstr("cuts off the hands"));
    for (auto& frame : o.track) {
        frame[Landmark::nose] = marks::Mark{{300, 1}, 2, base::Origin::network};
        frame[Landmark::club_head] = marks::Mark{{0.5, 300}, 2, base::Origin::network};
    }
    EXPECT_THAT(filmAdvice(o)[0].limited, HasSubstr("cuts off the head, the hands and the club,"));
    for (auto& frame : o.track) {
        frame[Landmark::nose].reset();
        frame[Landmark::club_head].reset();
    }
    o.track[0][Landmark::grip].reset();
    o.track[1][Landmark::grip].reset();
    EXPECT_TRUE(filmAdvice(o).empty()) << "two frames may be a slip";

    o = wellFilmed();
    o.scene.scale.pixelsPerStature = 320; // a quarter of 1280
    EXPECT_EQ(idsOf(filmAdvice(o)), std::vector<std::string>{"distance"});
    EXPECT_THAT(filmAdvice(o)[0].limited, HasSubstr("25 %"));
    EXPECT_THAT(filmAdvice(o)[0].limited, HasSubstr("5.5 mm"));

    o = wellFilmed();
    o.ball->centre.x = 360 + 800 * 0.5 / 1.75; // half a metre off
    EXPECT_EQ(idsOf(filmAdvice(o)), std::vector<std::string>{"off_middle"});
    EXPECT_THAT(filmAdvice(o)[0].limited, HasSubstr("0.5 m off")); // 3.4 to 3.9 degrees at 4 m
    EXPECT_THAT(filmAdvice(o)[0].limited, HasSubstr("4 degrees"));

    o = wellFilmed();
    o.scene.distanceMetres = 2.0;
    EXPECT_EQ(idsOf(filmAdvice(o)), std::vector<std::string>{"too_near"});
}

TEST(FilmAdvice, LevelStickAndStand) {
    analysis::Outcome o = wellFilmed();
    o.scene.vertical = scene::assumedVertical();
    o.scene.yawSigmaDegrees = 5.0;
    std::vector<scene::GroundMotion::Step> steps(4);
    steps[3].tx = 12.0;
    o.scene.ground = scene::GroundMotion(steps, 0.1);
    EXPECT_EQ(idsOf(filmAdvice(o)), (std::vector<std::string>{"camera_moved", "level", "stick"}));
}

TEST(FilmAdvice, LightIsReadFromThePicture) {
    const auto fine = lookedAt(130, 150);
    ASSERT_TRUE(fine) << fine.error().sentence;
    EXPECT_NEAR(*fine->player, 130.0 / 255.0, 0.02);
    EXPECT_NEAR(*fine->around, 150.0 / 255.0, 0.02);
    EXPECT_TRUE(filmAdvice(wellFilmed(), *fine).empty());
    EXPECT_EQ(idsOf(filmAdvice(wellFilmed(), *lookedAt(30, 220))), std::vector<std::string>{"backlight"});
    EXPECT_EQ(idsOf(filmAdvice(wellFilmed(), *lookedAt(15, 30))), std::vector<std::string>{"light"});
    // Dark trousers and shirt in daylight are no lack of light.
    EXPECT_TRUE(filmAdvice(wellFilmed(), *lookedAt(25, 100)).empty());
}
