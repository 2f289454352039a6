// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "analysis/swings_in_clip.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <gtest/gtest.h>
#include <memory>
#include <vector>

#include "../capture/made_figure.h"
#include "video/clip_part.h"

namespace plumbmark::analysis {
namespace {

/// A clip that is drawn while it is read, and counts what is read of it.
class DrawnClip final : public video::Clip {
  public:
    DrawnClip(double seconds, double fps, std::function<made::Pose(double)> pose, std::vector<double> clicks,
              int* read = nullptr)
        : pose_(std::move(pose)), clicks_(std::move(clicks)), read_(read) {
        info_.width = made::kWidth;
        info_.height = made::kHeight;
        info_.frames = static_cast<int>(std::lround(seconds * fps));
        info_.duration = base::Seconds{seconds};
        info_.playbackFps = fps;
        info_.captureFps = fps;
        info_.captureSource = "metadata";
        info_.hasSound = true;
        for (int i = 0; i < info_.frames; ++i) {
            times_.emplace_back(i / fps);
        }
    }
    const video::ClipInfo& info() const override { return info_; }
    const std::vector<base::Seconds>& times() const override { return times_; }
    base::Result<video::Frame> frame(int index) override {
        return made::frameOf(pose_(times_[static_cast<std::size_t>(index)].value()), index,
                             times_[static_cast<std::size_t>(index)].value());
    }
    base::Result<void> stream(int first, int last,
                              const std::function<bool(const video::Frame&)>& visit) override {
        for (int i = first; i <= last; ++i) {
            if (read_ != nullptr) {
                ++*read_;
            }
            if (!visit(*frame(i))) {
                break;
            }
        }
        return {};
    }
    base::Result<video::Sound> sound() override {
        constexpr double rate = 16000;
        return video::Sound{rate, base::Seconds{0},
                            made::hissWithClicks(0, info_.duration.value(), rate, clicks_)};
    }

  private:
    video::ClipInfo info_;
    std::vector<base::Seconds> times_;
    std::function<made::Pose(double)> pose_;
    std::vector<double> clicks_;
    int* read_;
};

constexpr double kPractice = 3.4, kReal = 9.2; // seconds of the two fastest instants

made::Pose twoSwings(double t) {
    return made::swingPose(t, t < 6.0 ? kPractice : kReal);
}
made::Pose standing(double) {
    return {};
}

std::unique_ptr<video::Clip> both(std::vector<double> clicks, int* read = nullptr) {
    return std::make_unique<DrawnClip>(12.0, 30, twoSwings, std::move(clicks), read);
}

} // namespace

TEST(SwingsInClip, APracticeSwingIsToldFromTheOneThatHit) {
    int read = 0;
    const auto clip = both({kReal}, &read);
    const auto found = findSwings(*clip, {}, {});
    ASSERT_TRUE(found.ok());
    ASSERT_TRUE(found->has_value());
    const auto& swings = **found;
    ASSERT_EQ(swings.size(), 2u);
    EXPECT_EQ(read, clip->info().frames) << "every frame once";
    EXPECT_NEAR(swings[0].time.value(), kPractice, 0.2);
    EXPECT_NEAR(swings[1].time.value(), kReal, 0.05);
    EXPECT_FALSE(swings[0].heard);
    EXPECT_TRUE(swings[1].heard);
    // Nothing of one swing is measured with the other: its way back takes 1.13 s, the way through 0.4 s.
    EXPECT_LT(swings[0].to.value(), kReal - 1.14);
    EXPECT_GT(swings[1].from.value(), kPractice + 0.4);
    for (const auto& swing : swings) {
        EXPECT_LT(swing.from.value(), swing.time.value() - 1.14 - 0.3)
            << "with the player standing still before";
        EXPECT_GT(swing.to.value(), swing.time.value() + 0.4 + 0.3);
    }
}

TEST(SwingsInClip, TheOneWithAHitIsTakenElseTheLast) {
    const auto usual = [](std::vector<bool> heard) {
        std::vector<SwingSeen> swings(heard.size());
        for (std::size_t i = 0; i < heard.size(); ++i) {
            swings[i].heard = heard[i];
        }
        return usualSwing(swings);
    };
    EXPECT_EQ(usual({false, true}), 1u);
    EXPECT_EQ(usual({true, false}), 0u);
    EXPECT_EQ(usual({false, false, false}), 2u);
    EXPECT_EQ(usual({true, true, false}), 1u);
    // A neighbour's hit while the player stands belongs to neither.
    auto taken = takeSwing(both({6.5}), {}, std::nullopt, {});
    ASSERT_TRUE(taken.ok() && taken->has_value());
    EXPECT_EQ((*taken)->taken, 1u);
    EXPECT_FALSE((*taken)->swings[0].heard);
    EXPECT_FALSE((*taken)->swings[1].heard);
}

TEST(SwingsInClip, ANumberChoosesAndTheAnswerTellsTheOthers) {
    auto taken = takeSwing(both({kReal}), {}, 1, {});
    ASSERT_TRUE(taken.ok() && taken->has_value());
    EXPECT_EQ((*taken)->taken, 0u);
    const auto& swing = (*taken)->swings[0];
    EXPECT_EQ((*taken)->firstFrame, swing.firstFrame);
    EXPECT_EQ((*taken)->clip->info().frames, swing.lastFrame - swing.firstFrame + 1);
    EXPECT_EQ((*taken)->clip->times().front(), swing.from) << "times stay those of the file";

    Outcome outcome;
    noteSwings(outcome, **taken);
    EXPECT_EQ(outcome.clip.frames, 360);
    EXPECT_EQ(outcome.swing, 0u);
    ASSERT_EQ(outcome.warnings.size(), 1u);
    EXPECT_NE(outcome.warnings[0].find("holds 2 swings"), std::string::npos) << outcome.warnings[0];
    EXPECT_NE(outcome.warnings[0].find("number 1 is measured"), std::string::npos) << outcome.warnings[0];

    const auto none = takeSwing(both({kReal}), {}, 3, {});
    ASSERT_FALSE(none.ok());
    EXPECT_EQ(none.error().key, "swing.number");
}

TEST(SwingsInClip, WithoutASwingAShortClipIsTakenWholeAndALongOneRefused) {
    auto shortOne = takeSwing(std::make_unique<DrawnClip>(8.0, 30, standing, std::vector<double>{4.0}), {},
                              std::nullopt, {});
    ASSERT_TRUE(shortOne.ok() && shortOne->has_value());
    EXPECT_FALSE((*shortOne)->taken);
    EXPECT_EQ((*shortOne)->clip->info().frames, 240);

    const auto numbered =
        takeSwing(std::make_unique<DrawnClip>(8.0, 30, standing, std::vector<double>{}), {}, 1, {});
    ASSERT_FALSE(numbered.ok());
    EXPECT_EQ(numbered.error().key, "swing.none");

    const auto longOne = takeSwing(std::make_unique<DrawnClip>(70.0, 5, standing, std::vector<double>{}), {},
                                   std::nullopt, {});
    ASSERT_FALSE(longOne.ok());
    EXPECT_EQ(longOne.error().key, "swing.none");
}

TEST(SwingsInClip, AClipOfOneSwingIsNotLookedThrough) {
    int read = 0;
    auto taken = takeSwing(
        std::make_unique<DrawnClip>(
            4.5, 30, [](double t) { return made::swingPose(t, 2.5); }, std::vector<double>{2.5}, &read),
        {}, std::nullopt, {});
    ASSERT_TRUE(taken.ok() && taken->has_value());
    EXPECT_EQ(read, 0);
    EXPECT_FALSE((*taken)->taken);
}

TEST(SwingsInClip, CutOffSwingsAreNotMadeUp) {
    // Begins when the club is on its way down: nothing to be seen as a swing.
    const auto late = std::make_unique<DrawnClip>(
        6.0, 30, [](double t) { return made::swingPose(t + 2.4, 2.5); }, std::vector<double>{0.1});
    auto found = findSwings(*late, {}, {});
    ASSERT_TRUE(found.ok() && found->has_value());
    EXPECT_TRUE((*found)->empty());
    // Ends a quarter of a second after the hit: it is one, and its part ends with the clip.
    const auto early = std::make_unique<DrawnClip>(
        6.0, 30, [](double t) { return made::swingPose(t, 5.6); }, std::vector<double>{5.6});
    found = findSwings(*early, {}, {});
    ASSERT_TRUE(found.ok() && found->has_value());
    for (const auto& swing : **found) {
        EXPECT_NEAR(swing.time.value(), 5.6, 0.1);
        EXPECT_EQ(swing.lastFrame, 179);
    }
}

TEST(SwingsInClip, SlowMotionCountsInRealSeconds) {
    // Shown four times slower; the clip says so.
    class Slow final : public video::Clip {
      public:
        Slow() : inner_(48.0, 30, [](double t) { return twoSwings(t / 4); }, {}) {
            info_ = inner_.info();
            info_.captureFps = 120;
            info_.hasSound = false;
        }
        const video::ClipInfo& info() const override { return info_; }
        const std::vector<base::Seconds>& times() const override { return inner_.times(); }
        base::Result<video::Frame> frame(int index) override { return inner_.frame(index); }
        base::Result<void> stream(int first, int last,
                                  const std::function<bool(const video::Frame&)>& visit) override {
            return inner_.stream(first, last, visit);
        }
        base::Result<video::Sound> sound() override { return video::Sound{}; }

      private:
        DrawnClip inner_;
        video::ClipInfo info_;
    } clip;
    const auto found = findSwings(clip, {}, {});
    ASSERT_TRUE(found.ok() && found->has_value());
    ASSERT_EQ((*found)->size(), 2u);
    EXPECT_NEAR((**found)[0].time.value(), 4 * kPractice, 0.8);
    EXPECT_NEAR((**found)[1].time.value(), 4 * kReal, 0.8);
}

TEST(ClipPart, NumbersFramesAnewAndKeepsTheFilesTimes) {
    auto part = video::partOf(both({kPractice, kReal}), 60, 149);
    EXPECT_EQ(part->info().frames, 90);
    EXPECT_NEAR(part->info().duration.value(), 3.0, 1e-9);
    EXPECT_NEAR(part->info().playbackFps, 30.0, 1e-9);
    ASSERT_EQ(part->times().size(), 90u);
    EXPECT_NEAR(part->times().front().value(), 2.0, 1e-9);
    const auto frame = part->frame(5);
    ASSERT_TRUE(frame.ok());
    EXPECT_EQ(frame->index(), 5);
    EXPECT_NEAR(frame->time().value(), 65.0 / 30, 1e-9);
    EXPECT_FALSE(part->frame(90).ok());
    EXPECT_FALSE(part->frame(-1).ok());
    std::vector<int> seen;
    ASSERT_TRUE(part->stream(87, 89,
                             [&](const video::Frame& f) {
                                 seen.push_back(f.index());
                                 return true;
                             })
                    .ok());
    EXPECT_EQ(seen, (std::vector<int>{87, 88, 89}));
    EXPECT_FALSE(part->stream(87, 90, [](const video::Frame&) { return true; }).ok());
    // Sample i is heard at start + i / rate: the click must stay where it is.
    const auto whole = both({kPractice, kReal})->sound();
    const auto sound = part->sound();
    ASSERT_TRUE(whole.ok() && sound.ok());
    EXPECT_NEAR(sound->start.value(), 2.0, 1e-9);
    EXPECT_EQ(sound->samples.size(), 48000u);
    const auto at = [](const video::Sound& s, double t) {
        return s.samples[static_cast<std::size_t>(std::lround((t - s.start.value()) * s.rate))];
    };
    for (const double t : {2.0, kPractice, kPractice + 0.001, 4.9}) {
        EXPECT_EQ(at(*sound, t), at(*whole, t));
    }
}

TEST(ClipPart, HandMarksMoveWithIt) {
    Request request;
    for (const int frame : {10, 60, 100, 150}) {
        marks::HandMark mark;
        mark.frame = frame;
        request.handMarks.push_back(mark);
    }
    const Request part = requestForPart(request, 60, 90);
    ASSERT_EQ(part.handMarks.size(), 2u);
    EXPECT_EQ(part.handMarks[0].frame, 0);
    EXPECT_EQ(part.handMarks[1].frame, 40);
}

} // namespace plumbmark::analysis
