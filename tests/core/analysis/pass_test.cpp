// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <numbers>
#include <thread>

#include "analysis/analysis.h"
#include "analysis/detail/channel.h"
#include "video/writer.h"

namespace plumbmark::analysis {
namespace {

NetworkBytes network() {
    namespace fs = std::filesystem;
    fs::path folder;
    if (const char* given = std::getenv("PLUMBMARK_NETWORK_DIR")) {
        folder = given;
    } else if (const char* data = std::getenv("XDG_DATA_HOME")) {
        folder = fs::path(data) / "plumbmark/network";
    } else if (const char* home = std::getenv("HOME")) {
        folder = fs::path(home) / ".local/share/plumbmark/network";
    }
    std::ifstream in(folder / "pose_landmark_full.tflite", std::ios::binary);
    return in ? std::make_shared<const std::vector<unsigned char>>(std::istreambuf_iterator<char>(in),
                                                                   std::istreambuf_iterator<char>())
              : nullptr;
}

/// Six small frames: black, or one and the same noise.
std::unique_ptr<video::Clip> clipOf(bool black, const std::filesystem::path& path) {
    video::WriterOptions options;
    options.width = 96;
    options.height = 160;
    options.fps = 60;
    auto writer = video::ClipWriter::create(path, options);
    EXPECT_TRUE(writer.ok());
    video::RgbImage picture{96, 160, std::vector<std::uint8_t>(std::size_t{96} * 160 * 3, 0)};
    if (!black) {
        unsigned state = 7;
        for (auto& value : picture.pixels) {
            state = state * 1664525U + 1013904223U;
            value = static_cast<std::uint8_t>(state >> 24);
        }
    }
    for (int i = 0; i < 6; ++i) {
        EXPECT_TRUE((*writer)->write(picture).ok());
    }
    EXPECT_TRUE((*writer)->finish().ok());
    auto clip = video::Clip::open(path);
    EXPECT_TRUE(clip.ok());
    return std::move(clip).value();
}

class Analyse : public ::testing::Test {
  protected:
    std::filesystem::path path =
        std::filesystem::temp_directory_path() /
        ("plumbmark-pass-" + std::to_string(std::hash<std::thread::id>{}(std::this_thread::get_id())) + "-" +
         ::testing::UnitTest::GetInstance()->current_test_info()->name() + ".mp4");
    void TearDown() override { std::filesystem::remove(path); }
};

TEST_F(Analyse, FrozenFramesGiveNoSwingAndSayWhy) {
    const auto bytes = network();
    if (!bytes) {
        GTEST_SKIP() << "the pose network is not there: bash platform/linux/fetch-network.sh";
    }
    {
        const auto clip = clipOf(false, path);
        const auto answer = analyse(*clip, bytes, {}, {});
        ASSERT_TRUE(answer.ok());
        ASSERT_TRUE(answer->has_value());
        const Outcome& outcome = (*answer)->outcome;
        EXPECT_TRUE(outcome.moments.empty());
        EXPECT_FALSE(outcome.ball);
        for (const auto& m : outcome.measurements) {
            EXPECT_FALSE(m.value) << "a number out of nothing";
        }
        EXPECT_TRUE(std::any_of(outcome.warnings.begin(), outcome.warnings.end(), [](const std::string& w) {
            return w.find("No player was found") != std::string::npos;
        }));
    }
}

TEST_F(Analyse, StopsWhenAskedAndLeavesNothing) {
    const auto bytes = network(); // stops just as well without it
    const auto clip = clipOf(true, path);
    std::atomic<bool> cancel{true};
    base::Progress progress;
    progress.cancel = &cancel;
    auto answer = analyse(*clip, bytes, {}, progress);
    ASSERT_TRUE(answer.ok());
    EXPECT_FALSE(answer->has_value());
    // In the middle: at the first word from the pass itself.
    cancel = false;
    progress.report = [&](double, std::string_view stage) {
        cancel = cancel || stage.starts_with("Following");
    };
    answer = analyse(*clip, bytes, {}, progress);
    ASSERT_TRUE(answer.ok());
    EXPECT_FALSE(answer->has_value());
}

TEST_F(Analyse, PostsBehindThePlayerTellARolledCamera) {
    // Seven posts of a fence, seen by a camera turned by 3 degrees; a post's edge turns by as much the other
    // way.
    constexpr int w = 640, h = 360;
    video::WriterOptions options;
    options.width = w;
    options.height = h;
    options.fps = 60;
    auto writer = video::ClipWriter::create(path, options);
    ASSERT_TRUE(writer.ok());
    video::RgbImage picture{w, h, std::vector<std::uint8_t>(std::size_t{w} * h * 3, 180)};
    for (int y = 40; y < 330; ++y) {
        for (int x = 0; x < w; ++x) {
            const double across = x + 0.5 - std::tan(3.0 * std::numbers::pi / 180.0) * (y - h / 2.0);
            if (across > 20 && std::fmod(across, 90.0) < 14.0) {
                std::fill_n(picture.pixels.begin() + (std::ptrdiff_t{y} * w + x) * 3, 3, 60);
            }
        }
    }
    for (int i = 0; i < 4; ++i) {
        ASSERT_TRUE((*writer)->write(picture).ok());
    }
    ASSERT_TRUE((*writer)->finish().ok());
    auto clip = video::Clip::open(path);
    ASSERT_TRUE(clip.ok());
    const auto seen = analyse(**clip, nullptr, {}, {});
    ASSERT_TRUE(seen.ok() && seen->has_value());
    EXPECT_EQ((*seen)->outcome.scene.vertical.source, "edges");
    EXPECT_NEAR((*seen)->outcome.scene.vertical.angleDegrees, -3.0, 0.3);
    Request told;
    told.rollDegrees = 1.0;
    const auto known = analyse(**clip, nullptr, told, {});
    ASSERT_TRUE(known.ok() && known->has_value());
    EXPECT_NE((*known)->outcome.scene.vertical.source, "edges") << "who told it is believed";
}

TEST(Channel, KeepsOrderWaitsForRoomAndEndsBothSides) {
    Channel<int> channel(2);
    const auto never = [] { return false; };
    std::thread giver([&] {
        for (int i = 0; i < 100; ++i) {
            EXPECT_TRUE(channel.put(i, never));
        }
        channel.close();
    });
    for (int i = 0; i < 100; ++i) {
        EXPECT_EQ(channel.take(), i);
    }
    EXPECT_FALSE(channel.take());
    giver.join();
    EXPECT_FALSE(channel.put(1, never)) << "closed";

    Channel<int> full(1);
    EXPECT_TRUE(full.put(1, never));
    EXPECT_FALSE(full.put(2, [] { return true; })) << "whoever waits for room can be stopped";
    full.closeAtOnce();
    EXPECT_FALSE(full.take()) << "closed at once: what was inside is dropped";
}

} // namespace
} // namespace plumbmark::analysis
