// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <cmath>
#include <numeric>

#include <gtest/gtest.h>

#include "support.h"
#include "video/clip.h"
#include "video/writer.h"

namespace plumbmark::video {
namespace {

RgbImage grey(int level, int width = 96, int height = 64) {
    return {width, height,
            std::vector<std::uint8_t>(static_cast<std::size_t>(width * height * 3),
                                      static_cast<std::uint8_t>(level))};
}

WriterOptions small() {
    WriterOptions options;
    options.width = 96;
    options.height = 64;
    return options;
}

std::size_t filesIn(const std::filesystem::path& folder) {
    return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(folder), {}));
}

TEST(Writer, WhatIsWrittenIsReadBack) {
    const test::TemporaryFolder folder;
    for (const std::string codec : {"h264", "hevc"}) {
        WriterOptions options = small();
        options.codec = codec;
        options.fps = 30.0;
        options.captureFps = 240.0;
        options.rotationDegrees = 90;
        options.bFrames = 2;
        options.soundRate = 44100.0;
        const auto path = folder / ("clip-" + codec + ".mp4");
        auto writer = ClipWriter::create(path, options);
        ASSERT_TRUE(writer.ok()) << writer.error().sentence;
        std::vector<double> times;
        for (int i = 0; i < 40; ++i) {
            times.push_back(std::round((i / 30.0 + (i % 3) * 0.004) * 90000) / 90000);
            ASSERT_TRUE((*writer)->write(grey(20 + 5 * i), base::Seconds{times.back()}).ok());
        }
        std::vector<float> sound(50000, 0.0F);
        for (std::size_t i = 30000; i < 30200; ++i) {
            sound[i] = 0.7F * static_cast<float>(std::cos(0.3 * static_cast<double>(i - 30000)));
        }
        ASSERT_TRUE((*writer)->writeSound(std::span(sound).first(777)).ok());
        ASSERT_TRUE((*writer)->writeSound(std::span(sound).subspan(777)).ok());
        EXPECT_FALSE(std::filesystem::exists(path)) << "not before it is complete";
        ASSERT_TRUE((*writer)->finish().ok());
        EXPECT_TRUE((*writer)->finish().ok()) << "a second time does no harm";
        EXPECT_EQ(filesIn(folder.path()), codec == "h264" ? 1U : 2U);

        auto clip = Clip::open(path);
        ASSERT_TRUE(clip.ok()) << clip.error().sentence;
        const ClipInfo& info = (*clip)->info();
        EXPECT_EQ(info.frames, 40);
        EXPECT_EQ(info.width, 64);
        EXPECT_EQ(info.height, 96);
        EXPECT_EQ(info.rotationDegrees, 90);
        EXPECT_EQ(info.captureFps, 240.0);
        EXPECT_EQ(info.captureSource, "metadata");
        EXPECT_EQ(info.codec, codec);
        for (std::size_t i = 0; i < times.size(); ++i) {
            EXPECT_NEAR((*clip)->times()[i].value(), times[i], 1e-9);
        }
        for (const int index : {0, 17, 39, 18}) {
            auto frame = (*clip)->frame(index);
            ASSERT_TRUE(frame.ok());
            EXPECT_NEAR(frame->rgb().pixels[3 * 1000], 20 + 5 * index, 3);
        }
        auto heard = (*clip)->sound();
        ASSERT_TRUE(heard.ok());
        const auto first =
            std::find_if(heard->samples.begin(), heard->samples.end(), [](float s) { return s > 0.4F; });
        EXPECT_NEAR(heard->start.value() + static_cast<double>(first - heard->samples.begin()) / heard->rate,
                    30000 / 44100.0, 0.001);
    }
}

TEST(Writer, BitRateIsKept) {
    const test::TemporaryFolder folder;
    WriterOptions options;
    options.width = 640;
    options.height = 360;
    options.fps = 240.0;
    options.bitRate = 12'000'000;
    options.preset = "ultrafast";
    auto writer = ClipWriter::create(folder / "a.mp4", options);
    ASSERT_TRUE(writer.ok());
    RgbImage noise = grey(0, 640, 360);
    unsigned state = 1;
    for (int i = 0; i < 120; ++i) {
        for (auto& value : noise.pixels) {
            state = state * 1664525U + 1013904223U;
            value = static_cast<std::uint8_t>(state >> 24);
        }
        ASSERT_TRUE((*writer)->write(noise).ok());
    }
    ASSERT_TRUE((*writer)->finish().ok());
    const double rate = 8.0 * static_cast<double>(std::filesystem::file_size(folder / "a.mp4")) / 0.5;
    EXPECT_GT(rate, 6e6);
    EXPECT_LT(rate, 24e6);
}

TEST(Writer, UnfinishedClipsLeaveNothingBehind) {
    const test::TemporaryFolder folder;
    {
        auto writer = ClipWriter::create(folder / "a.mp4", small());
        ASSERT_TRUE(writer.ok());
        ASSERT_TRUE((*writer)->write(grey(90)).ok());
    }
    EXPECT_EQ(filesIn(folder.path()), 0U);
    {
        auto writer = ClipWriter::create(folder / "b.mp4", small());
        ASSERT_TRUE(writer.ok());
        EXPECT_EQ((*writer)->finish().error().key, "writer.no_pictures");
    }
    EXPECT_EQ(filesIn(folder.path()), 0U);
    // What was there stays as it was until the new clip is complete.
    test::writeBytes(folder / "c.mp4", {1, 2, 3});
    {
        auto writer = ClipWriter::create(folder / "c.mp4", small());
        ASSERT_TRUE(writer.ok());
        ASSERT_TRUE((*writer)->write(grey(90)).ok());
    }
    EXPECT_EQ(test::bytesOf(folder / "c.mp4"), (std::vector<std::uint8_t>{1, 2, 3}));
}

TEST(Writer, NonsenseGetsOneSentence) {
    const test::TemporaryFolder folder;
    const auto keyOf = [&](const WriterOptions& options, const std::string& name = "a.mp4") {
        auto writer = ClipWriter::create(folder / name, options);
        return writer.ok() ? std::string("ok") : writer.error().key;
    };
    WriterOptions odd = small();
    odd.width = 97;
    EXPECT_EQ(keyOf(odd), "writer.options");
    WriterOptions huge = small();
    huge.height = 9000;
    EXPECT_EQ(keyOf(huge), "writer.options");
    WriterOptions codec = small();
    codec.codec = "film";
    EXPECT_EQ(keyOf(codec), "writer.options");
    WriterOptions tilted = small();
    tilted.rotationDegrees = 45;
    EXPECT_EQ(keyOf(tilted), "writer.options");
    WriterOptions sound = small();
    sound.soundRate = 12345.0; // no AAC rate
    EXPECT_EQ(keyOf(sound), "writer.no_encoder");
    EXPECT_EQ(keyOf(small(), "no/such/folder/a.mp4"), "writer.folder");
    EXPECT_EQ(filesIn(folder.path()), 0U);

    auto writer = ClipWriter::create(folder / "a.mp4", small());
    ASSERT_TRUE(writer.ok());
    EXPECT_EQ((*writer)->write(grey(1, 64, 64)).error().key, "writer.size");
    ASSERT_TRUE((*writer)->write(grey(1), base::Seconds{0.5}).ok());
    EXPECT_EQ((*writer)->write(grey(1), base::Seconds{0.5}).error().key, "writer.time");
    EXPECT_EQ((*writer)->write(grey(1), base::Seconds{std::nan("")}).error().key, "writer.time");
    EXPECT_EQ((*writer)->writeSound(std::vector<float>(10)).error().key, "writer.sound");
}

} // namespace
} // namespace plumbmark::video
