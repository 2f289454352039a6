// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

#include <gtest/gtest.h>

#include "support.h"
#include "video/clip.h"
#include "video/frame.h"
#include "video/still.h"
#include "video/writer.h"

namespace plumbmark::video {
namespace {

using Rgb = std::array<int, 3>;

/// White, yellow, cyan, green, magenta, red, blue at 75 %, and black.
constexpr std::array<Rgb, 8> bars{{{191, 191, 191},
                                   {191, 191, 0},
                                   {0, 191, 191},
                                   {0, 191, 0},
                                   {191, 0, 191},
                                   {191, 0, 0},
                                   {0, 0, 191},
                                   {0, 0, 0}}};

RgbImage barPicture(int width, int height) {
    RgbImage image{width, height, {}};
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            for (const int value : bars[static_cast<std::size_t>(x * 8 / width)]) {
                image.pixels.push_back(static_cast<std::uint8_t>(value));
            }
        }
    }
    return image;
}

/// Largest difference in the middle of any bar.
int worstInBars(const RgbImage& image) {
    int worst = 0;
    for (std::size_t bar = 0; bar < bars.size(); ++bar) {
        const int x = static_cast<int>((2 * bar + 1) * static_cast<std::size_t>(image.width) / 16);
        for (int y = 4; y < image.height - 4; ++y) {
            for (std::size_t c = 0; c < 3; ++c) {
                const auto at = static_cast<std::size_t>(y * image.width + x) * 3 + c;
                worst = std::max(worst, std::abs(image.pixels[at] - bars[bar][c]));
            }
        }
    }
    return worst;
}

TEST(Frame, BarsKeepTheirColourThereAndBack) {
    for (const auto& [w, h] : {std::pair{160, 64}, std::pair{161, 63}}) {
        const Frame frame = Frame::fromRgb(barPicture(w, h), 3, base::Seconds{0.25});
        EXPECT_EQ(frame.index(), 3);
        EXPECT_EQ(frame.time().value(), 0.25);
        EXPECT_EQ(frame.cb().width, (w + 1) / 2);
        EXPECT_EQ(frame.cr().height, (h + 1) / 2);
        EXPECT_LE(worstInBars(frame.rgb()), 2);
    }
}

// ITU-R BT.709-6, items 3.2 to 3.5 (luma weights .2126 .7152 .0722; 8-bit: Y 16..235, C 16..240), full red.
TEST(Frame, RedHasTheLumaAndChromaOfBt709) {
    RgbImage red{16, 16, std::vector<std::uint8_t>(16 * 16 * 3, 0)};
    for (std::size_t i = 0; i < red.pixels.size(); i += 3) {
        red.pixels[i] = 255;
    }
    const Frame frame = Frame::fromRgb(red, 0, {});
    EXPECT_NEAR(frame.luma().data[5], 16 + 219 * 0.2126, 0.51);
    EXPECT_NEAR(frame.cb().data[3], 128 + 224 * -0.2126 / 1.8556, 0.51);
    EXPECT_EQ(frame.cr().data[3], 240);
}

// The same red in every matrix and range: its code values computed here in floating point from the weights of
// ITU-R BT.601-7, BT.709-6 and BT.2020-2.
TEST(Frame, EveryMatrixAndRangeGivesTheColourBack) {
    struct Matrix {
        int name;
        double kr, kb;
    };
    for (const Matrix& m :
         {Matrix{601, 0.299, 0.114}, Matrix{709, 0.2126, 0.0722}, Matrix{2020, 0.2627, 0.0593}}) {
        for (const bool full : {false, true}) {
            for (const Rgb& colour :
                 {Rgb{200, 60, 40}, Rgb{30, 180, 90}, Rgb{40, 50, 210}, Rgb{128, 128, 128}}) {
                const double r = colour[0] / 255.0, g = colour[1] / 255.0, b = colour[2] / 255.0;
                const double y = m.kr * r + (1.0 - m.kr - m.kb) * g + m.kb * b;
                const double cb = (b - y) / (2.0 * (1.0 - m.kb)), cr = (r - y) / (2.0 * (1.0 - m.kr));
                const auto code = [](double v) { return static_cast<std::uint8_t>(std::lround(v)); };
                auto planes = std::make_shared<std::array<std::uint8_t, 3 * 64>>();
                std::fill_n(planes->begin(), 64, code(full ? 255.0 * y : 16.0 + 219.0 * y));
                std::fill_n(planes->begin() + 64, 64, code(128.0 + (full ? 255.0 : 224.0) * cb));
                std::fill_n(planes->begin() + 128, 64, code(128.0 + (full ? 255.0 : 224.0) * cr));
                const Frame frame(0, {}, {planes->data(), 8, 8, 8}, {planes->data() + 64, 4, 4, 8},
                                  {planes->data() + 128, 4, 4, 8}, {m.name, full}, planes);
                const RgbImage back = frame.rgb();
                for (std::size_t c = 0; c < 3; ++c) {
                    EXPECT_NEAR(back.pixels[3 * 27 + c], colour[c], 2)
                        << m.name << (full ? " full" : " limited");
                }
            }
        }
    }
}

TEST(Frame, EmptyAndNonsensePicturesStayEmpty) {
    EXPECT_TRUE(Frame().rgb().pixels.empty());
    EXPECT_TRUE(Frame::fromRgb({}, 0, {}).empty());
    EXPECT_TRUE(Frame::fromRgb({10, 10, std::vector<std::uint8_t>(5)}, 0, {}).empty());
}

TEST(Frame, BarsSurviveWritingAndReading) {
    const test::TemporaryFolder folder;
    for (const std::string codec : {"h264", "hevc"}) {
        WriterOptions options;
        options.width = 160;
        options.height = 64;
        options.codec = codec;
        options.quality = 8;
        auto writer = ClipWriter::create(folder / (codec + ".mp4"), options);
        ASSERT_TRUE(writer.ok()) << writer.error().sentence;
        for (int i = 0; i < 3; ++i) {
            ASSERT_TRUE((*writer)->write(barPicture(160, 64)).ok());
        }
        ASSERT_TRUE((*writer)->finish().ok());
        auto clip = Clip::open(folder / (codec + ".mp4"));
        ASSERT_TRUE(clip.ok());
        auto frame = (*clip)->frame(1);
        ASSERT_TRUE(frame.ok());
        EXPECT_EQ(frame->colour().matrix, 709);
        EXPECT_FALSE(frame->colour().fullRange);
        EXPECT_LE(worstInBars(frame->rgb()), 2 + 1) << codec; // one more level for coding at quality 8
    }
}

#ifdef FFMPEG_PROGRAM
// Outside check: bars drawn by the program ffmpeg (its own RGB, lossless coding, tagged matrix and range).
TEST(Frame, BarsMadeByFfmpegComeOutInTheirColour) {
    const test::TemporaryFolder folder;
    ASSERT_TRUE(savePng(folder / "bars.png", barPicture(160, 64)).ok());
    struct Case {
        const char* matrix;
        const char* range;
        const char* format;
        int expected;
    };
    for (const Case& c : {Case{"bt709", "tv", "yuv420p", 709}, Case{"bt470bg", "tv", "yuv420p", 601},
                          Case{"bt709", "pc", "yuv420p", 709}, Case{"bt2020nc", "tv", "yuv420p10le", 2020},
                          Case{"bt709", "tv", "yuv444p", 709}, Case{"bt709", "pc", "yuv422p", 709}}) {
        const auto path = folder / (std::string(c.matrix) + c.range + c.format + ".mp4");
        const std::string matrix(c.matrix);
        const std::string scale = matrix == "bt470bg" ? "bt601" : matrix == "bt2020nc" ? "bt2020" : matrix;
        test::outputOf(std::string(FFMPEG_PROGRAM) + " -nostdin -v quiet -y -i \"" +
                       (folder / "bars.png").string() + "\" -vf scale=out_color_matrix=" + scale +
                       ":out_range=" + c.range + ":flags=accurate_rnd+full_chroma_int,format=" + c.format +
                       " -c:v libx264 -qp 0 -colorspace " + c.matrix + " -color_range " + c.range + " \"" +
                       path.string() + "\"");
        auto clip = Clip::open(path);
        ASSERT_TRUE(clip.ok()) << path << clip.error().sentence;
        auto frame = (*clip)->frame(0);
        ASSERT_TRUE(frame.ok());
        EXPECT_EQ(frame->colour().matrix, c.expected) << path;
        EXPECT_EQ(frame->colour().fullRange, std::string(c.range) == "pc") << path;
        EXPECT_LE(worstInBars(frame->rgb()), 2) << path;
    }
}
#endif

TEST(Still, PngKeepsEveryPixel) {
    const test::TemporaryFolder folder;
    RgbImage image{37, 23, {}};
    for (int i = 0; i < 37 * 23 * 3; ++i) {
        image.pixels.push_back(static_cast<std::uint8_t>(i * 31 % 256));
    }
    ASSERT_TRUE(savePng(folder / "a.png", image).ok());
    auto back = loadStill(folder / "a.png");
    ASSERT_TRUE(back.ok()) << back.error().sentence;
    EXPECT_EQ(back->width, 37);
    EXPECT_EQ(back->height, 23);
    EXPECT_EQ(back->pixels, image.pixels);
}

TEST(Still, BadPicturesGetOneSentence) {
    const test::TemporaryFolder folder;
    const auto keyOf = [](const base::Result<RgbImage>& r) {
        return r.ok() ? std::string("ok") : r.error().key;
    };
    EXPECT_EQ(keyOf(loadStill(folder / "none.png")), "still.missing");
    EXPECT_EQ(keyOf(loadStill(folder.path())), "still.directory");
    test::writeBytes(folder / "empty.png", {});
    EXPECT_EQ(keyOf(loadStill(folder / "empty.png")), "still.empty");
    test::writeBytes(folder / "text.png", {'h', 'e', 'l', 'l', 'o', ' ', 'y', 'o', 'u'});
    EXPECT_EQ(keyOf(loadStill(folder / "text.png")), "still.not_picture");
    auto png = encodePng(barPicture(160, 64));
    ASSERT_TRUE(png.ok());
    auto wide = *png; // 70000 pixels wide by its header
    wide[17] = 1;
    EXPECT_FALSE(decodeStill(wide).ok());
    for (std::size_t keep = 0; keep < png->size() - 12; keep += png->size() / 9) {
        EXPECT_FALSE(decodeStill(std::span(*png).first(keep)).ok()) << keep;
    }
    EXPECT_EQ(savePng(folder / "no/such/folder.png", barPicture(16, 16)).error().key, "still.folder");
    EXPECT_FALSE(savePng(folder / "x.png", {}).ok());
    EXPECT_FALSE(std::filesystem::exists(folder / "x.png"));
}

#ifdef FFMPEG_PROGRAM
// Outside check: JPEG made by the program ffmpeg.
TEST(Still, JpegIsReadInItsColours) {
    const test::TemporaryFolder folder;
    ASSERT_TRUE(savePng(folder / "bars.png", barPicture(160, 64)).ok());
    test::outputOf(std::string(FFMPEG_PROGRAM) + " -nostdin -v quiet -y -i \"" +
                   (folder / "bars.png").string() + "\" -pix_fmt yuvj444p -q:v 1 -qmin 1 \"" +
                   (folder / "bars.jpg").string() + "\"");
    auto image = loadStill(folder / "bars.jpg");
    ASSERT_TRUE(image.ok()) << image.error().sentence;
    EXPECT_LE(worstInBars(*image), 4); // two levels of ours, two of JPEG's own rounding
}
#endif

} // namespace
} // namespace plumbmark::video
