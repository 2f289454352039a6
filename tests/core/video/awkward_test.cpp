// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Every awkward clip: the number burnt into the decoded picture says which frame it is.
#include <algorithm>
#include <cmath>
#include <optional>
#include <random>
#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "awkward/awkward.h"
#include "awkward/strip.h"
#include "support.h"
#include "video/clip.h"

namespace plumbmark::video {
namespace {

using awkward::readStrip;

class Awkward : public testing::TestWithParam<std::string> {
  protected:
    void SetUp() override {
        auto made = awkward::make(GetParam(), folder_.path());
        ASSERT_TRUE(made.ok()) << made.error().sentence;
        truth_ = made.value();
    }
    std::unique_ptr<Clip> open(const ClipOptions& options = {}) {
        auto opened = Clip::open(truth_.path, options);
        EXPECT_TRUE(opened.ok()) << (opened.ok() ? "" : opened.error().sentence);
        return opened.ok() ? std::move(opened).value() : nullptr;
    }
    /// Only about this many frames fit, so that most requests have to decode.
    [[nodiscard]] ClipOptions fewFrames(int count) const {
        ClipOptions options;
        options.cacheBytes = static_cast<std::size_t>(truth_.width * truth_.height * 2 * count);
        return options;
    }
    test::TemporaryFolder folder_;
    awkward::AwkwardClip truth_;
};

std::string nameOf(const testing::TestParamInfo<std::string>& info) {
    std::string name = info.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
}

INSTANTIATE_TEST_SUITE_P(Clips, Awkward, testing::ValuesIn(awkward::names()), nameOf);

TEST_P(Awkward, InfoTellsWhatWasMade) {
    const auto clip = open();
    ASSERT_TRUE(clip);
    const ClipInfo& info = clip->info();
    EXPECT_EQ(info.width, truth_.width);
    EXPECT_EQ(info.height, truth_.height);
    ASSERT_EQ(info.frames, static_cast<int>(truth_.numbers.size()));
    EXPECT_EQ(info.rotationDegrees, truth_.rotationDegrees);
    EXPECT_EQ(info.mirrored, truth_.mirrored);
    EXPECT_EQ(info.captureSource, truth_.captureSource);
    ASSERT_EQ(info.captureFps.has_value(), truth_.captureFps.has_value());
    if (truth_.captureFps) {
        const double tolerance = truth_.captureSource == "metadata" ? 0.0 : 200.0 * truth_.timeError + 1e-9;
        EXPECT_NEAR(*info.captureFps, *truth_.captureFps, tolerance);
    }
    EXPECT_EQ(info.uneven, truth_.uneven);
    EXPECT_EQ(info.hasSound, truth_.click.has_value());
    EXPECT_EQ(std::count_if(info.warnings.begin(), info.warnings.end(),
                            [](const std::string& w) { return w.find("ends early") != std::string::npos; }),
              0);
    EXPECT_EQ(
        std::count_if(info.warnings.begin(), info.warnings.end(),
                      [](const std::string& w) { return w.find("already slowed") != std::string::npos; }),
        truth_.name == "slowed-in-parts" ? 1 : 0);
    EXPECT_EQ(std::count_if(info.warnings.begin(), info.warnings.end(),
                            [](const std::string& w) { return w.find("mirrored") != std::string::npos; }),
              truth_.mirrored ? 1 : 0);

    const auto& times = clip->times();
    ASSERT_EQ(times.size(), truth_.times.size());
    for (std::size_t i = 0; i < times.size(); ++i) {
        ASSERT_NEAR(times[i].value(), truth_.times[i], truth_.timeError + 1e-9) << "frame " << i;
        ASSERT_TRUE(i == 0 || times[i] > times[i - 1]);
    }
    EXPECT_GT(info.duration, times.back());
}

TEST_P(Awkward, StreamGivesEveryFrameOnceInOrder) {
    const auto clip = open();
    ASSERT_TRUE(clip);
    const int frames = clip->info().frames;
    int next = 0;
    const auto pass = [&](int first, int last) {
        next = first;
        return clip->stream(first, last, [&](const Frame& frame) {
            EXPECT_EQ(frame.index(), next);
            EXPECT_EQ(frame.time(), clip->times()[static_cast<std::size_t>(frame.index())]);
            EXPECT_EQ(readStrip(frame.luma()).value_or(-1), truth_.numbers[static_cast<std::size_t>(next)]);
            ++next;
            return true;
        });
    };
    ASSERT_TRUE(pass(0, frames - 1).ok());
    EXPECT_EQ(next, frames);
    ASSERT_TRUE(pass(0, frames - 1).ok()) << "a second pass";
    EXPECT_EQ(next, frames);
    for (const auto& [first, last] : {std::pair{frames / 3, frames / 2}, std::pair{frames - 1, frames - 1},
                                      std::pair{frames / 2, frames - 1}}) {
        ASSERT_TRUE(pass(first, last).ok());
        EXPECT_EQ(next, last + 1);
    }
    // Stopping early, and asking for other frames from within.
    int seen = 0;
    ASSERT_TRUE(clip->stream(0, frames - 1, [&](const Frame&) { return ++seen < std::min(5, frames); }).ok());
    EXPECT_EQ(seen, std::min(5, frames));
    next = 0;
    ASSERT_TRUE(clip->stream(0, std::min(12, frames - 1),
                             [&](const Frame& frame) {
                                 EXPECT_EQ(readStrip(frame.luma()).value_or(-1),
                                           truth_.numbers[static_cast<std::size_t>(next++)]);
                                 auto other = clip->frame((frame.index() * 17) % frames);
                                 EXPECT_TRUE(other.ok());
                                 return true;
                             })
                    .ok());
    EXPECT_EQ(next, std::min(13, frames));
}

TEST_P(Awkward, ThousandRandomRequestsAndStepsBothWays) {
    const auto clip = open(fewFrames(10));
    ASSERT_TRUE(clip);
    const int frames = clip->info().frames;
    int wrong = 0;
    const auto ask = [&](int index) {
        auto frame = clip->frame(index);
        const bool right = frame.ok() && frame->index() == index &&
                           frame->time() == clip->times()[static_cast<std::size_t>(index)] &&
                           readStrip(frame->luma()) == truth_.numbers[static_cast<std::size_t>(index)];
        wrong += right ? 0 : 1;
        return right;
    };
    std::mt19937 random(7);
    for (int i = 0; i < 1000; ++i) {
        const int index = static_cast<int>(random() % static_cast<unsigned>(frames));
        EXPECT_TRUE(ask(index)) << "request " << i << " for frame " << index;
        if (wrong > 5) {
            break;
        }
    }
    for (int index = 0; index < frames; ++index) {
        EXPECT_TRUE(ask(index)) << "forward, frame " << index;
    }
    for (int index = frames - 1; index >= 0; --index) {
        EXPECT_TRUE(ask(index)) << "backward, frame " << index;
    }
    EXPECT_EQ(wrong, 0);
    // With the ordinary cache, forward 100 and back again gives the same pictures.
    const auto wide = open();
    ASSERT_TRUE(wide);
    const int start = frames / 4, reach = std::min(100, frames - 1 - start);
    for (int step = 0; step <= 2 * reach; ++step) {
        const int index = start + (step <= reach ? step : 2 * reach - step);
        auto frame = wide->frame(index);
        ASSERT_TRUE(frame.ok());
        EXPECT_EQ(readStrip(frame->luma()).value_or(-1), truth_.numbers[static_cast<std::size_t>(index)]);
    }
    EXPECT_FALSE(wide->frame(-1).ok());
    EXPECT_FALSE(wide->frame(frames).ok());
    EXPECT_FALSE(wide->stream(0, frames, [](const Frame&) { return true; }).ok());
}

TEST_P(Awkward, ClickIsHeardWhereItWasPut) {
    const auto clip = open();
    ASSERT_TRUE(clip);
    auto sound = clip->sound();
    ASSERT_TRUE(sound.ok());
    if (!truth_.click) {
        EXPECT_TRUE(sound->samples.empty());
        return;
    }
    ASSERT_EQ(sound->rate, 48000.0);
    ASSERT_GT(sound->samples.size(), 20000U);
    float loudest = 0.0F;
    for (const float s : sound->samples) {
        loudest = std::max(loudest, std::abs(s));
    }
    EXPECT_GT(loudest, 0.4F);
    const auto first = std::find_if(sound->samples.begin(), sound->samples.end(),
                                    [&](float s) { return std::abs(s) > 0.5F * loudest; });
    const double heard =
        sound->start.value() + static_cast<double>(first - sound->samples.begin()) / sound->rate;
    EXPECT_NEAR(heard, *truth_.click, 0.001);
    // The decoder goes on as before.
    auto frame = clip->frame(clip->info().frames - 1);
    ASSERT_TRUE(frame.ok());
    EXPECT_EQ(readStrip(frame->luma()).value_or(-1), truth_.numbers.back());
}

#ifdef FFPROBE_PROGRAM

// Outside check: the program ffprobe (Debian package ffmpeg) lists the frames its own decoding shows.
TEST_P(Awkward, TimesEqualWhatFfprobeReports) {
    const auto clip = open();
    ASSERT_TRUE(clip);
    const std::string answer = test::outputOf(
        std::string(FFPROBE_PROGRAM) +
        " -v quiet -select_streams v:0 -show_entries stream=time_base:frame=pts,best_effort_timestamp "
        "-of default=noprint_wrappers=0 \"" +
        truth_.path.string() + "\"");
    std::vector<std::optional<std::int64_t>> ticks;
    double unit = 0.0;
    std::istringstream lines(answer);
    for (std::string line; std::getline(lines, line);) {
        if (line.rfind("best_effort_timestamp=", 0) == 0) {
            const bool none = line.find("N/A") != std::string::npos;
            ticks.push_back(none ? std::nullopt : std::optional(std::int64_t{std::stoll(line.substr(22))}));
        } else if (line.rfind("time_base=", 0) == 0) {
            const auto slash = line.find('/');
            unit = std::stod(line.substr(10)) / std::stod(line.substr(slash + 1));
        }
    }
    ASSERT_GT(unit, 0.0);
    ASSERT_EQ(ticks.size(), clip->times().size());
    // Two containers leave some frames without a time; all others must agree from the first one that has it.
    const auto known = std::find_if(ticks.begin(), ticks.end(), [](const auto& t) { return t.has_value(); });
    ASSERT_NE(known, ticks.end());
    const auto base = static_cast<std::size_t>(known - ticks.begin());
    for (std::size_t i = base; i < ticks.size(); ++i) {
        if (ticks[i]) {
            const double expected = static_cast<double>(*ticks[i] - **known) * unit;
            ASSERT_NEAR((clip->times()[i] - clip->times()[base]).value(), expected, 1e-12) << "frame " << i;
        }
    }
    const auto unknown = std::count(ticks.begin(), ticks.end(), std::nullopt);
    EXPECT_TRUE(unknown == 0 || truth_.name == "avi" || truth_.name == "negative-start") << unknown;
}

// Outside check: the program ffmpeg decodes, turns and writes raw planes; ours must be the same bytes.
TEST_P(Awkward, PlanesEqualWhatFfmpegDecodes) {
    const bool turned = truth_.rotationDegrees != 0 || truth_.mirrored;
    if (!truth_.plain && !turned) {
        // Depth, subsampling or size is converted: no byte-exact counterpart; the strip tests cover these.
        return;
    }
    const auto clip = open();
    ASSERT_TRUE(clip);
    const std::string raw =
        test::outputOf(std::string(FFMPEG_PROGRAM) + " -nostdin -v quiet -i \"" + truth_.path.string() +
                       "\" -map 0:v:0 -vsync passthrough -f rawvideo -");
    std::size_t at = 0;
    int differing = 0;
    ASSERT_TRUE(clip->stream(0, clip->info().frames - 1,
                             [&](const Frame& frame) {
                                 bool same = true;
                                 for (const PlaneView& plane : {frame.luma(), frame.cb(), frame.cr()}) {
                                     for (int y = 0; y < plane.height; ++y) {
                                         const auto width = static_cast<std::size_t>(plane.width);
                                         same = same && at + width <= raw.size() &&
                                                std::equal(plane.data + y * plane.stride,
                                                           plane.data + y * plane.stride + plane.width,
                                                           reinterpret_cast<const std::uint8_t*>(raw.data()) +
                                                               at);
                                         at += width;
                                     }
                                 }
                                 differing += same ? 0 : 1;
                                 return true;
                             })
                    .ok());
    EXPECT_EQ(differing, 0);
    EXPECT_EQ(at, raw.size());
}

#else

TEST(AwkwardOutside, NeedsTheProgramsFfmpegAndFfprobe) {
    GTEST_SKIP() << "ffmpeg and ffprobe were not found when this was configured; install the package ffmpeg.";
}

#endif

} // namespace
} // namespace plumbmark::video
