// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <set>
#include <sstream>
#include <string>

#include "awkward/awkward.h"
#include "support.h"
#include "video/bare_copy.h"
#include "video/clip.h"

using namespace plumbmark::video;
using namespace plumbmark::video::test;
namespace awkward = plumbmark::awkward;

#if defined(FFPROBE_PROGRAM) && defined(FFMPEG_PROGRAM)

namespace {

/// Every tag that ffprobe finds anywhere in the file: "key=value" lines.
std::set<std::string> tagsOf(const std::filesystem::path& file) {
    std::istringstream lines(outputOf(std::string(FFPROBE_PROGRAM) +
                                      " -v error -show_format -show_streams "
                                      "-show_chapters -show_programs -of default=nw=1 '" +
                                      file.string() + "'"));
    std::set<std::string> tags;
    for (std::string line; std::getline(lines, line);) {
        if (line.rfind("TAG:", 0) == 0) {
            tags.insert(line.substr(4));
        }
    }
    return tags;
}
std::string packetsOf(const std::filesystem::path& file, const std::string& which) {
    return outputOf(std::string(FFPROBE_PROGRAM) + " -v error -select_streams " + which +
                    " -show_packets -show_entries packet=data_hash -show_data_hash sha256 -of csv=p=0 '" +
                    file.string() + "'");
}
std::string textOf(const std::filesystem::path& file) {
    const auto bytes = bytesOf(file);
    return {bytes.begin(), bytes.end()};
}

} // namespace

// Outside check: the program ffprobe (Debian package ffmpeg) lists tags and hashes of coded packets.
class BareCopy : public testing::TestWithParam<std::string> {};
INSTANTIATE_TEST_SUITE_P(Clips, BareCopy, testing::ValuesIn(awkward::names()), [](const auto& info) {
    std::string name = info.param;
    for (char& c : name) {
        c = std::isalnum(static_cast<unsigned char>(c)) != 0 ? c : '_';
    }
    return name;
});

TEST_P(BareCopy, ShowsTheSameFramesOrIsNotMade) {
    const TemporaryFolder folder;
    const auto made = awkward::make(GetParam(), folder.path());
    ASSERT_TRUE(made) << made.error().sentence;
    const auto before = bytesOf(made->path);
    const auto copied = writeBareCopy(made->path, folder / "bare");
    EXPECT_TRUE(bytesOf(made->path) == before) << "the film itself is never touched";
    if (!copied) {
        EXPECT_FALSE(std::filesystem::exists(folder / "bare"));
        // Shown times that a muxer cannot write again: refused rather than changed.
        EXPECT_EQ(copied.error().key.rfind("bare.", 0), 0U);
        EXPECT_EQ(GetParam(), "negative-start");
        return;
    }
    EXPECT_EQ(packetsOf(folder / "bare", "v:0"), packetsOf(made->path, "v:0"));
    // The same film gives the same copy: its hash is what two devices know it by.
    ASSERT_TRUE(writeBareCopy(made->path, folder / "again"));
    EXPECT_TRUE(bytesOf(folder / "again") == bytesOf(folder / "bare"));
}

TEST(BareCopyTags, PlaceDeviceCommentsAndDatesAreGone) {
    const TemporaryFolder folder;
    const std::string ffmpeg = std::string(FFMPEG_PROGRAM) + " -v error -y ";
    const auto write = [&](const std::string& name, const std::string& how) {
        // Tags as phones write them (place as ISO 6709, maker, model, dates, names of tracks), a chapter,
        // sound.
        std::ofstream(folder / "chapters") << ";FFMETADATA1\n[CHAPTER]\nTIMEBASE=1/10\nSTART=0\nEND=5\n"
                                              "title=CANARY-chapter\n";
        const std::string command =
            ffmpeg + "-f lavfi -i testsrc=size=160x120:rate=60:duration=1 -f lavfi -i sine=duration=1 -i '" +
            (folder / "chapters").string() +
            "' -map 0 -map 1 -map_chapters 2 -pix_fmt yuv420p -preset ultrafast " + how +
            " -metadata location=+11.2233+044.5566/ -metadata location-eng=+11.2233+044.5566/"
            " -metadata com.apple.quicktime.location.ISO6709=+11.2233+044.5566/"
            " -metadata com.apple.quicktime.make=CANARY-make -metadata com.apple.quicktime.model=CANARY-model"
            " -metadata make=CANARY-make -metadata model=CANARY-model -metadata artist=CANARY-owner"
            " -metadata comment=CANARY-comment -metadata title=CANARY-title -metadata date=2019"
            " -metadata creation_time=2019-03-04T05:06:07Z -metadata com.android.version=CANARY-13"
            " -metadata com.android.capture.fps=240.000000"
            " -metadata:s:v handler_name=CANARY-track -metadata:s:a handler_name=CANARY-sound"
            " -metadata:s:v language=kor '" +
            (folder / name).string() + "'";
        ASSERT_EQ(outputOf(command + " 2>&1"), "");
    };
    for (const auto& [name, how] :
         {std::pair{"a.mp4", "-movflags use_metadata_tags"}, {"b.mp4", ""}, {"c.mov", ""}, {"d.mkv", ""}}) {
        write(name, how);
        const auto film = folder / name;
        EXPECT_NE(textOf(film).find("CANARY"), std::string::npos) << name;
        EXPECT_FALSE(tagsOf(film).empty());
        const auto bare = folder / (std::string("bare-") + name);
        const auto copied = writeBareCopy(film, bare);
        ASSERT_TRUE(copied) << name << ": " << copied.error().sentence;
        const std::string text = textOf(bare);
        for (const char* gone : {"CANARY", "11.2233", "044.5566", "2019", "kor"}) {
            EXPECT_EQ(text.find(gone), std::string::npos) << name << " still holds " << gone;
        }
        for (const std::string& tag : tagsOf(bare)) {
            std::string key = tag.substr(0, tag.find('='));
            if (key == "COM.ANDROID.CAPTURE.FPS") { // Matroska knows capitals only
                key = "com.android.capture.fps";
            }
            const bool needed = key == "major_brand" || key == "minor_version" ||
                                key == "compatible_brands" || key == "handler_name" || key == "vendor_id" ||
                                key == "language" || key == "com.android.capture.fps" || key == "DURATION" ||
                                key == "ENCODER" || key == "encoder";
            EXPECT_TRUE(needed) << name << ": " << tag;
            if (key == "handler_name") {
                EXPECT_TRUE(tag == "handler_name=VideoHandler" || tag == "handler_name=SoundHandler") << tag;
            }
            if (key == "language") {
                EXPECT_EQ(tag, "language=und") << name;
            }
        }
        EXPECT_EQ(packetsOf(bare, "v"), packetsOf(film, "v")) << name;
        EXPECT_EQ(packetsOf(bare, "a"), packetsOf(film, "a")) << name;
        const auto clip = Clip::open(bare);
        ASSERT_TRUE(clip);
        if (std::string(name) == "a.mp4") {
            EXPECT_EQ((*clip)->info().captureSource, "metadata");
            EXPECT_EQ((*clip)->info().captureFps, 240.0);
        }
    }
}

TEST(BareCopyTags, ATrackOfPositionsDoesNotGoAlong) {
    const TemporaryFolder folder;
    std::ofstream(folder / "track.srt") << "1\n00:00:00,000 --> 00:00:01,000\nCANARY 11.2233 44.5566\n\n";
    ASSERT_EQ(outputOf(std::string(FFMPEG_PROGRAM) +
                       " -v error -y -f lavfi -i testsrc=size=160x120:rate=30:duration=1 -i '" +
                       (folder / "track.srt").string() +
                       "' -map 0 -map 1 -pix_fmt yuv420p -preset ultrafast -c:s mov_text '" +
                       (folder / "film.mp4").string() + "' 2>&1"),
              "");
    EXPECT_NE(textOf(folder / "film.mp4").find("CANARY"), std::string::npos);
    ASSERT_TRUE(writeBareCopy(folder / "film.mp4", folder / "bare.mp4"));
    EXPECT_EQ(textOf(folder / "bare.mp4").find("CANARY"), std::string::npos);
}

TEST(BareCopyTags, WhatIsNoFilmOrHasNoRoomLeavesNothing) {
    const TemporaryFolder folder;
    std::ofstream(folder / "text") << "no film at all";
    EXPECT_EQ(writeBareCopy(folder / "text", folder / "out").error().key, "clip.not_video");
    EXPECT_EQ(writeBareCopy(folder / "none", folder / "out").error().key, "clip.missing");
    EXPECT_FALSE(std::filesystem::exists(folder / "out"));
    const auto film = awkward::make(awkward::names().front(), folder.path());
    ASSERT_TRUE(film);
    EXPECT_EQ(writeBareCopy(film->path, (folder / "no") / "such" / "folder").error().key, "bare.unwritable");
    if (std::filesystem::exists("/dev/full")) {
        std::filesystem::create_symlink("/dev/full", folder / "full");
        EXPECT_EQ(writeBareCopy(film->path, folder / "full").error().key, "disk.full");
    }
}

#else
TEST(BareCopyTags, NeedsTheProgramsFfmpegAndFfprobe) {
    GTEST_SKIP() << "ffmpeg and ffprobe were not found when this was configured; install the package ffmpeg.";
}
#endif
