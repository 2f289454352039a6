// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>
#include <random>

#include <gtest/gtest.h>
#include <sys/stat.h>

#include "awkward/awkward.h"
#include "awkward/strip.h"
#include "support.h"
#include "video/clip.h"
#include "video/writer.h"

namespace plumbmark::video {
namespace {

using test::bytesOf;

/// The key, after checking that there is one plain sentence.
std::string errorOf(const base::Result<std::unique_ptr<Clip>>& opened) {
    if (opened.ok()) {
        return "opened";
    }
    const std::string& sentence = opened.error().sentence;
    EXPECT_EQ(opened.error().kind, base::ErrorKind::input) << sentence;
    EXPECT_FALSE(sentence.empty());
    EXPECT_EQ(sentence.back(), '.');
    EXPECT_EQ(sentence.find('\n'), std::string::npos);
    EXPECT_NE(sentence.find("; "), std::string::npos) << "says what to do: " << sentence;
    return opened.error().key;
}

awkward::AwkwardClip make(const std::string& name, const test::TemporaryFolder& folder) {
    auto made = awkward::make(name, folder.path());
    EXPECT_TRUE(made.ok()) << (made.ok() ? "" : made.error().sentence);
    return made.ok() ? made.value() : awkward::AwkwardClip{};
}

std::string openBytes(const std::vector<std::uint8_t>& bytes) {
    return errorOf(Clip::open(fromBytes(bytes)));
}

TEST(BadInput, WhatIsNoClipGetsOnePlainSentence) {
    const test::TemporaryFolder folder;
    EXPECT_EQ(errorOf(Clip::open(folder / "none.mp4")), "clip.missing");
    EXPECT_EQ(errorOf(Clip::open(folder.path())), "clip.directory");
    test::writeBytes(folder / "empty.mp4", {});
    EXPECT_EQ(errorOf(Clip::open(folder / "empty.mp4")), "clip.empty");
    ASSERT_EQ(::mkfifo((folder / "pipe.mp4").c_str(), 0600), 0);
    EXPECT_EQ(errorOf(Clip::open(folder / "pipe.mp4")), "clip.unreadable");
    EXPECT_EQ(openBytes({}), "clip.empty");
    EXPECT_EQ(openBytes({'x'}), "clip.not_video");
    const std::string text = "Notes on the lesson: keep the trail elbow in front of the hip.\n";
    std::string longText;
    for (int i = 0; i < 500; ++i) {
        longText += text;
    }
    EXPECT_EQ(openBytes({longText.begin(), longText.end()}), "clip.not_video");
    // A play list would make FFmpeg open other files.
    const std::string list = "#EXTM3U\n#EXT-X-TARGETDURATION:2\n#EXTINF:2,\n/etc/passwd\n#EXT-X-ENDLIST\n";
    EXPECT_EQ(openBytes({list.begin(), list.end()}), "clip.not_video");
    std::mt19937 random(5);
    std::vector<std::uint8_t> noise(200000);
    std::generate(noise.begin(), noise.end(), [&] { return static_cast<std::uint8_t>(random()); });
    EXPECT_EQ(openBytes(noise), "clip.not_video");
}

class RefusingSource final : public ByteSource {
  public:
    base::Result<std::size_t> read(std::span<std::uint8_t> /*into*/) override {
        return base::inputError("clip.unreadable", "The card was pulled out; put it back.");
    }
    base::Result<void> seek(std::int64_t /*position*/) override { return {}; }
    [[nodiscard]] std::int64_t size() const override { return 100000; }
};

TEST(BadInput, AFailingSourceIsUnreadable) {
    EXPECT_EQ(errorOf(Clip::open(std::make_unique<RefusingSource>())), "clip.unreadable");
}

#ifdef FFMPEG_PROGRAM
TEST(BadInput, SoundOnlyAndStillPicturesAreNoClips) {
    const test::TemporaryFolder folder;
    const std::string program = std::string(FFMPEG_PROGRAM) + " -nostdin -v quiet -y ";
    test::outputOf(program + "-f lavfi -i sine=d=1 \"" + (folder / "s.m4a").string() + "\"");
    test::outputOf(program + "-f lavfi -i testsrc2=s=64x64:d=1 -frames:v 1 \"" + (folder / "p.png").string() +
                   "\"");
    // Sound with a cover picture: still no video.
    test::outputOf(program + "-i \"" + (folder / "s.m4a").string() + "\" -i \"" +
                   (folder / "p.png").string() + "\" -map 0 -map 1 -c copy -disposition:v attached_pic \"" +
                   (folder / "c.m4a").string() + "\"");
    EXPECT_EQ(errorOf(Clip::open(folder / "s.m4a")), "clip.not_video");
    EXPECT_EQ(errorOf(Clip::open(folder / "c.m4a")), "clip.not_video");
    EXPECT_EQ(errorOf(Clip::open(folder / "p.png")), "clip.not_video");
}
#endif

/// Changes the size in the sample description (ISO/IEC 14496-12: 16-bit width and height 32 bytes after the
/// coding's four letters).
std::vector<std::uint8_t> resized(std::vector<std::uint8_t> bytes, const std::string& coding, int width,
                                  int height) {
    // The last place: the file type box at the start names it, too.
    const auto at = std::find_end(bytes.begin(), bytes.end(), coding.begin(), coding.end());
    EXPECT_NE(at, bytes.end());
    at[28] = static_cast<std::uint8_t>(width >> 8);
    at[29] = static_cast<std::uint8_t>(width);
    at[30] = static_cast<std::uint8_t>(height >> 8);
    at[31] = static_cast<std::uint8_t>(height);
    return bytes;
}

TEST(BadInput, HugePicturesAreRefused) {
    const test::TemporaryFolder folder;
    const auto bytes = bytesOf(make("plain", folder).path);
    EXPECT_EQ(openBytes(resized(bytes, "avc1", 60000, 60000)), "clip.too_large");
    EXPECT_EQ(openBytes(resized(bytes, "avc1", 8193, 100)), "clip.too_large");
    // A stated size that is wrong but harmless: the decoder's own size counts.
    auto opened = Clip::open(fromBytes(resized(bytes, "avc1", 8000, 6000)));
    ASSERT_TRUE(opened.ok());
    EXPECT_EQ((*opened)->info().width, 192);
}

TEST(BadInput, UnknownCodingIsUnsupported) {
    const test::TemporaryFolder folder;
    auto bytes = bytesOf(make("plain", folder).path);
    const std::string avc = "avc1", other = "zzzz";
    for (auto at = std::search(bytes.begin(), bytes.end(), avc.begin(), avc.end()); at != bytes.end();
         at = std::search(at, bytes.end(), avc.begin(), avc.end())) {
        std::copy(other.begin(), other.end(), at);
    }
    EXPECT_EQ(openBytes(bytes), "clip.unsupported");
}

/// The number that belongs to a frame's time: where a cut takes a picture away that others don't need, later
/// ones remain.
int numberAt(const awkward::AwkwardClip& truth, base::Seconds time) {
    for (std::size_t i = 0; i < truth.times.size(); ++i) {
        if (std::abs(truth.times[i] - time.value()) <= truth.timeError + 1e-9) {
            return truth.numbers[i];
        }
    }
    return -2;
}

/// Whatever is opened of a cut file: all frames it claims are the right ones.
void expectAllFramesRight(Clip& clip, const awkward::AwkwardClip& truth, const std::string& what) {
    const int frames = clip.info().frames;
    ASSERT_LE(frames, static_cast<int>(truth.numbers.size())) << what;
    int next = 0;
    ASSERT_TRUE(
        clip.stream(
                0, frames - 1,
                [&](const Frame& frame) {
                    EXPECT_EQ(awkward::readStrip(frame.luma()).value_or(-1), numberAt(truth, frame.time()))
                        << what << " frame " << frame.index();
                    ++next;
                    return true;
                })
            .ok())
        << what;
    EXPECT_EQ(next, frames) << what;
    for (int index = frames - 1; index >= 0; index -= 7) {
        auto frame = clip.frame(index);
        ASSERT_TRUE(frame.ok()) << what << frame.error().sentence;
        EXPECT_EQ(awkward::readStrip(frame->luma()).value_or(-1), numberAt(truth, frame->time())) << what;
    }
}

TEST(BadInput, CutFilesGiveWhatIsThereOrOneSentence) {
    const test::TemporaryFolder folder;
    for (const char* name : {"sound", "index-first", "fragmented", "matroska", "transport-stream", "hevc"}) {
        const auto truth = make(name, folder);
        const auto bytes = bytesOf(truth.path);
        int most = 0;
        for (int tenth = 1; tenth <= 9; ++tenth) {
            const std::string what = std::string(name) + " cut at " + std::to_string(tenth) + "0 %";
            const auto keep =
                static_cast<std::ptrdiff_t>(bytes.size() * static_cast<std::size_t>(tenth) / 10);
            auto opened =
                Clip::open(fromBytes(std::vector<std::uint8_t>(bytes.begin(), bytes.begin() + keep)));
            if (!opened.ok()) {
                EXPECT_EQ(errorOf(opened), "clip.truncated") << what;
                continue;
            }
            expectAllFramesRight(**opened, truth, what);
            const int frames = (*opened)->info().frames;
            EXPECT_GE(frames, most) << what << ": more of the file can't hold fewer frames";
            most = frames;
            // Transport streams don't say how long they are meant to be.
            const auto& warnings = (*opened)->info().warnings;
            const bool warned = std::any_of(warnings.begin(), warnings.end(), [](const std::string& w) {
                return w.find("ends early") != std::string::npos;
            });
            if (std::string(name) != "transport-stream" && std::string(name) != "fragmented" &&
                frames < static_cast<int>(truth.numbers.size())) {
                EXPECT_TRUE(warned) << what;
            }
        }
        const bool indexLast = std::string(name) == "sound" || std::string(name) == "hevc";
        EXPECT_EQ(most > 0, !indexLast) << name << ": a cut file whose index comes first can be read in part";
    }
}

TEST(BadInput, FlippedBytesNeverCrash) {
    const test::TemporaryFolder folder;
    std::mt19937 random(11);
    int opened = 0, refused = 0;
    for (const char* name : {"index-first", "matroska", "transport-stream", "one-frame", "edit-list"}) {
        const auto whole = bytesOf(make(name, folder).path);
        for (int round = 0; round < 40; ++round) {
            auto bytes = whole;
            // Half of the rounds hit the header only, where sizes and counts are.
            const std::size_t reach =
                round % 2 == 0 ? std::min<std::size_t>(bytes.size(), 3000) : bytes.size();
            const std::size_t from =
                std::string(name) == "edit-list" && round % 2 == 0 ? bytes.size() - reach : 0;
            for (int flip = 0; flip < 1 + round / 4; ++flip) {
                bytes[from + random() % reach] = static_cast<std::uint8_t>(random());
            }
            auto clip = Clip::open(fromBytes(bytes));
            if (!clip.ok()) {
                errorOf(clip);
                ++refused;
                continue;
            }
            ++opened;
            const int frames = (*clip)->info().frames;
            ASSERT_GT(frames, 0);
            ASSERT_EQ((*clip)->times().size(), static_cast<std::size_t>(frames));
            int last = -1;
            (void)(*clip)->stream(0, frames - 1, [&](const Frame& frame) {
                EXPECT_GT(frame.index(), last);
                EXPECT_EQ(frame.width(), (*clip)->info().width);
                last = frame.index();
                return true;
            });
            (void)(*clip)->frame(static_cast<int>(random() % static_cast<unsigned>(frames)));
            (void)(*clip)->frame(0);
            (void)(*clip)->sound();
        }
    }
    EXPECT_GT(opened, 20);
    EXPECT_GT(refused, 5);
}

TEST(BadInput, NothingIsSaidOnStandardError) {
    const test::TemporaryFolder folder;
    const auto bytes = bytesOf(make("index-first", folder).path);
    testing::internal::CaptureStderr();
    (void)Clip::open(fromBytes(std::vector<std::uint8_t>(bytes.begin(), bytes.begin() + 9000)));
    auto broken = bytes;
    for (std::size_t i = broken.size() / 2; i < broken.size(); i += 50) {
        broken[i] ^= 0x55;
    }
    auto clip = Clip::open(fromBytes(broken));
    if (clip.ok()) {
        (void)(*clip)->stream(0, (*clip)->info().frames - 1, [](const Frame&) { return true; });
        (void)(*clip)->sound();
    }
    EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
}

} // namespace
} // namespace plumbmark::video
