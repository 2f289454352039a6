// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "painter/page_painter.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <set>
#include <unistd.h>

#include <QByteArray>
#include <QImage>

#include "exporting/key_position_sheet.h"
#include "outcome_for_tests.h"

using namespace plumbmark;
using namespace plumbmark::exporting;
using testing::HasSubstr;
namespace fs = std::filesystem;

namespace {

QImage pictureOf(const std::vector<std::byte>& png) {
    return QImage::fromData(reinterpret_cast<const uchar*>(png.data()), static_cast<int>(png.size()), "PNG");
}

QImage drawn(const Page& page, double dotsPerMm = 10.0) {
    const auto png = platform::PagePainter().png(page, dotsPerMm);
    EXPECT_TRUE(png) << png.error().sentence;
    return png ? pictureOf(*png) : QImage();
}

Page smallPage() {
    Page page;
    page.width = 60;
    page.height = 40;
    page.title = "Small";
    return page;
}

/// What another program answers about a PDF.
std::string told(const std::string& program, const std::vector<std::byte>& pdf,
                 const std::string& arguments = "") {
    std::string name = (fs::temp_directory_path() / "plumbmark-pdf-XXXXXX").string();
    const int fd = mkstemp(name.data());
    EXPECT_EQ(::write(fd, pdf.data(), pdf.size()), static_cast<ssize_t>(pdf.size()));
    ::close(fd);
    std::string answer;
    FILE* pipe =
        popen((program + " " + arguments + " '" + name + "' " + (program == "pdftotext" ? "-" : "") + " 2>&1")
                  .c_str(),
              "r");
    std::array<char, 4096> piece{};
    while (const std::size_t n = fread(piece.data(), 1, piece.size(), pipe)) {
        answer.append(piece.data(), n);
    }
    EXPECT_EQ(pclose(pipe), 0) << answer;
    fs::remove(name);
    return answer;
}

double darkShare(const QImage& image) {
    double dark = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            dark += 255 - qGray(image.pixel(x, y));
        }
    }
    return dark / 255.0 / image.width() / image.height();
}

} // namespace

TEST(PagePainter, APngHasThePagesSizeAndResolution) {
    const QImage image = drawn(smallPage(), 8.0);
    EXPECT_EQ(image.size(), QSize(480, 320));
    EXPECT_EQ(image.dotsPerMeterX(), 8000);
    EXPECT_EQ(image.pixelColor(0, 0), QColor(Qt::white));
}

TEST(PagePainter, PagesThatCannotBeDrawnAreRefused) {
    Page page = smallPage();
    EXPECT_EQ(platform::PagePainter().png(page, 1e6).error().key, "painter.too_large");
    EXPECT_EQ(platform::PagePainter().png(page, std::nan("")).error().key, "painter.too_large");
    page.height = std::nan("");
    EXPECT_EQ(platform::PagePainter().png(page, 8).error().key, "painter.too_large");
    EXPECT_EQ(platform::PagePainter().pdf(std::span(&page, 1)).error().key, "painter.too_large");
    EXPECT_EQ(platform::PagePainter().pdf({}).error().key, "painter.too_large");
}

// Every pair of signs must differ in grey over a good part of its area at the size it is printed, 3.6 mm at
// 200 dots an inch. (How much is enough: our own choice, no source.)
TEST(PagePainter, SignsAreToldApartInGrey) {
    std::vector<QImage> signs;
    for (const Sign sign : {Sign::good, Sign::watch, Sign::work, Sign::unknown}) {
        Page page;
        page.width = page.height = 4.0;
        page.items.emplace_back(Shape{sign, {2.0, 2.0}, 3.6});
        signs.push_back(drawn(page, 8.0).convertToFormat(QImage::Format_Grayscale8));
    }
    for (std::size_t a = 0; a < signs.size(); ++a) {
        for (std::size_t b = a + 1; b < signs.size(); ++b) {
            int differs = 0;
            for (int y = 0; y < signs[a].height(); ++y) {
                for (int x = 0; x < signs[a].width(); ++x) {
                    differs += std::abs(qGray(signs[a].pixel(x, y)) - qGray(signs[b].pixel(x, y))) > 48;
                }
            }
            EXPECT_GT(differs, signs[a].width() * signs[a].height() / 6) << a << " and " << b;
        }
    }
}

TEST(PagePainter, ALineWithAnEdgeReadsOnBlackAndOnWhite) {
    for (const Ink ground : {Ink{0, 0, 0}, Ink{255, 255, 255}}) {
        Page page = smallPage();
        Rectangle back;
        back.box = {0, 0, 60, 40};
        back.fill = ground;
        page.items.emplace_back(back);
        Line line;
        line.from = {10, 20};
        line.to = {50, 20};
        line.width = 0.6;
        line.edgeWidth = 0.4;
        line.ink = {255, 255, 255};
        line.edge = {0, 0, 0};
        page.items.emplace_back(line);
        const QImage image = drawn(page);
        std::set<int> greys;
        for (int y = 180; y < 220; ++y) {
            greys.insert(qGray(image.pixel(300, y)));
        }
        EXPECT_EQ(*greys.begin(), 0);
        EXPECT_EQ(*greys.rbegin(), 255);
    }
}

TEST(PagePainter, APictureLandsWhereItBelongs) {
    auto rgb = std::make_shared<video::RgbImage>();
    rgb->width = 4;
    rgb->height = 2;
    rgb->pixels.assign(24, 0);
    for (int x = 2; x < 4; ++x) { // right half red
        rgb->pixels[static_cast<std::size_t>(3 * x)] = rgb->pixels[static_cast<std::size_t>(12 + 3 * x)] =
            255;
    }
    Page page = smallPage();
    page.items.emplace_back(Picture{{10, 10, 40, 20}, rgb});
    const QImage image = drawn(page);
    EXPECT_EQ(image.pixelColor(150, 200), QColor(0, 0, 0));
    EXPECT_EQ(image.pixelColor(450, 200), QColor(255, 0, 0));
    EXPECT_EQ(image.pixelColor(50, 200), QColor(Qt::white));
    rgb->pixels.resize(5); // fewer bytes than its size says: not drawn, not read
    EXPECT_EQ(drawn(page).pixelColor(450, 200), QColor(Qt::white));
}

TEST(PagePainter, TextStaysInItsBoxHoweverLongItIs) {
    Page page = smallPage();
    page.items.emplace_back(Text{{10, 10, 20, 8}, std::string(4000, 'W'), {}});
    const QImage image = drawn(page);
    EXPECT_GT(darkShare(image.copy(100, 100, 200, 80)), 0.05);
    EXPECT_LT(darkShare(image.copy(0, 0, 600, 98)), 1e-9);
    EXPECT_LT(darkShare(image.copy(0, 184, 600, 216)), 1e-9);
    EXPECT_LT(darkShare(image.copy(304, 0, 296, 400)), 1e-9);
}

TEST(PagePainter, TextHeightIsWhatDrawingNeeds) {
    const platform::PagePainter painter;
    const TextStyle style;
    const double one = painter.textHeight("One line", style, 100);
    EXPECT_GT(one, style.points * 25.4 / 72.0);
    EXPECT_NEAR(painter.textHeight("One\nTwo\nThree", style, 100), 3 * one, 0.1);
    EXPECT_GT(painter.textHeight("A sentence that has to be broken into several lines", style, 20),
              2.5 * one);
    EXPECT_EQ(painter.textHeight("", style, 100), 0.0);
}

// Outside check: poppler's pdftotext and pdfinfo.
TEST(PagePainter, APdfHoldsItsTextAndSize) {
    Page page = smallPage();
    page.items.emplace_back(Text{{5, 5, 50, 10}, "Spine tilt 8.3 \u00b1 1.2\u00b0", {}});
    Page second = page;
    second.width = 100;
    second.items = {Text{{5, 5, 50, 10}, "Second page", {}}};
    const std::array pages{page, second};
    const auto pdf = platform::PagePainter().pdf(pages);
    ASSERT_TRUE(pdf);
    EXPECT_THAT(told("pdftotext", *pdf),
                testing::AllOf(HasSubstr("Spine tilt 8.3 \u00b1 1.2\u00b0"), HasSubstr("Second page")));
    const std::string info = told("pdfinfo", *pdf, "-f 1 -l 2");
    EXPECT_THAT(info, HasSubstr("Pages:           2"));
    EXPECT_THAT(info, HasSubstr("Title:           Small"));
    double width = 0;
    double height = 0;
    ASSERT_EQ(std::sscanf(info.c_str() + info.find("Page    1 size:"), "Page    1 size: %lf x %lf", &width,
                          &height),
              2)
        << info;
    EXPECT_NEAR(width, 60 / 25.4 * 72, 1.0);
    EXPECT_NEAR(height, 40 / 25.4 * 72, 1.0);
}

TEST(PagePainter, HostileTextIsOnlyText) {
    Page page = smallPage();
    page.items.emplace_back(Text{{2, 2, 56, 12}, "<b>bold</b> <img src='x'> &amp;", {}});
    page.items.emplace_back(Text{{2, 14, 56, 6}, "abc\u202edef\x01\x1b[31m ghi", {}});
    page.items.emplace_back(Text{{2, 20, 56, 8}, "\xff\xfe broken \xed\xa0\x80", {}});
    page.items.emplace_back(
        Text{{2, 28, 56, 6}, "\u0645\u0631\u062d\u0628\u0627 \u05e9\u05dc\u05d5\u05dd \U0001F3CC", {}});
    const auto pdf = platform::PagePainter().pdf(std::span(&page, 1));
    ASSERT_TRUE(pdf);
    const std::string text = told("pdftotext", *pdf);
    EXPECT_THAT(text, HasSubstr("<b>bold</b> <img src='x'> &amp;"));
    EXPECT_THAT(text, HasSubstr("abcdef[31m ghi"));
    EXPECT_THAT(text, HasSubstr("broken"));
    EXPECT_GT(darkShare(drawn(page).copy(20, 280, 560, 60)), 0.002);
}

TEST(PagePainter, RightToLeftTextBeginsAtTheRight) {
    Page page = smallPage();
    page.items.emplace_back(Text{{5, 5, 50, 8}, "\u05e9\u05dc\u05d5\u05dd", {}}); // Hebrew
    page.items.emplace_back(Text{{5, 20, 50, 8}, "Latin", {}});
    const QImage image = drawn(page);
    EXPECT_GT(darkShare(image.copy(400, 50, 160, 80)), 0.005);
    EXPECT_LT(darkShare(image.copy(40, 50, 200, 80)), 1e-9);
    EXPECT_GT(darkShare(image.copy(40, 200, 160, 80)), 0.005);
    EXPECT_LT(darkShare(image.copy(400, 200, 160, 80)), 1e-9);
}

TEST(Sheet, EveryTextOfTheSwingIsInThePdf) {
    auto outcome = test::madeUpOutcome();
    outcome.checkpoints[0].label = "<script>alert(1)</script>";
    const platform::PagePainter painter;
    std::vector<Still> stills;
    for (const auto& moment : outcome.moments) {
        auto rgb = std::make_shared<video::RgbImage>();
        rgb->width = 90;
        rgb->height = 100;
        rgb->pixels.assign(std::size_t{3} * 90 * 100, 120);
        stills.push_back({moment.id, 0, {300, 250}, rgb});
    }
    for (const auto format : {SheetFormat::paper, SheetFormat::phone}) {
        const Page page = keyPositionSheet(outcome, stills, painter, {format, "Nobody, \u202e first lesson"});
        EXPECT_EQ(page.width, format == SheetFormat::paper ? 297.0 : 100.0);
        const auto pdf = painter.pdf(std::span(&page, 1));
        ASSERT_TRUE(pdf);
        const std::string text = told("pdftotext", *pdf, "-raw");
        for (const char* words : {"Key positions", "Nobody", "Face-on, right-handed, 7-iron", "Good: keep it",
                                  "<script>alert(1)</script>", "Cannot tell from this clip", "Tempo",
                                  "Film at 120 frames/s", "Address", "Impact", "0.100 s", "Spine tilt",
                                  "coach's experience", "licensed physiotherapist", "The end is cut off."}) {
            EXPECT_THAT(text, HasSubstr(words));
        }
        EXPECT_LT(text.find("Good: keep it"), text.find("Cannot tell from this clip"))
            << "what is good comes first";
    }
}

TEST(Sheet, GrowsWithWhatThereIsToSayAndLosesNothing) {
    auto outcome = test::madeUpOutcome();
    for (int i = 0; i < 40; ++i) {
        outcome.checkpoints.push_back(outcome.checkpoints[1]);
        outcome.checkpoints.back().label = "Checkpoint number " + std::to_string(i);
    }
    const platform::PagePainter painter;
    const Page page = keyPositionSheet(outcome, {}, painter);
    EXPECT_GT(page.height, 210.0);
    for (const Item& item : page.items) {
        if (const auto* text = std::get_if<Text>(&item)) {
            EXPECT_LE(text->box.y + text->box.height, page.height);
        }
    }
    const auto pdf = painter.pdf(std::span(&page, 1));
    ASSERT_TRUE(pdf);
    EXPECT_THAT(told("pdftotext", *pdf), HasSubstr("Checkpoint number 39"));
    EXPECT_EQ(keyPositionSheet(test::madeUpOutcome(), {}, painter).height, 210.0) << "A4 while it fits";
}
