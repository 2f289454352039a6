// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/lesson_page.h"

#include <array>
#include <cctype>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>

#include "base/files.h"
#include "hostile.h"
#include "story_for_tests.h"
#include "video/still.h"

using namespace plumbmark;
using namespace plumbmark::exporting;
using testing::HasSubstr;
using testing::Not;
namespace fs = std::filesystem;

namespace {

/// The page as headless Chromium (Debian package chromium) understands it, after every script and load that
/// it would allow; nothing where there is no Chromium.
std::optional<std::string> asBrowsed(const std::string& page) {
    if (std::system("command -v chromium >/dev/null 2>&1") != 0) {
        return std::nullopt;
    }
    const auto stage = base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test");
    const fs::path file = stage->path() / "lesson.html";
    std::ofstream(file, std::ios::binary) << page;
    const std::string command = "timeout 60 chromium --headless --no-sandbox --disable-gpu "
                                "--disable-dev-shm-usage --no-first-run --user-data-dir='" +
                                (stage->path() / "profile").string() + "' --dump-dom 'file://" +
                                file.string() + "' 2>/dev/null";
    FILE* pipe = popen(command.c_str(), "r");
    std::string dom;
    std::array<char, 65536> piece{};
    while (const std::size_t n = fread(piece.data(), 1, piece.size(), pipe)) {
        dom.append(piece.data(), n);
    }
    EXPECT_EQ(pclose(pipe), 0) << "chromium failed";
    return dom;
}

int count(const std::string& text, const std::string& what) {
    int n = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1)) {
        ++n;
    }
    return n;
}

} // namespace

TEST(LessonPage, TellsTheLesson) {
    const std::string page = lessonPage(test::madeUpStory());
    EXPECT_THAT(page, HasSubstr("<html lang=\"en\">"));
    EXPECT_THAT(page, HasSubstr("Content-Security-Policy"));
    for (const char* words :
         {"Kim", "First lesson", "2026-11-25", "straighter", "narrow stance", "stand like a goalkeeper",
          "three times ten", "Address", "Impact", "8.3 \u00b1 1.5\u00b0", "in 2 of 2 swings",
          "licensed physiotherapist", "one-sigma", "Body caution (coach&#39;s experience)"}) {
        EXPECT_THAT(page, HasSubstr(words));
    }
    EXPECT_LT(page.find("Good: keep it"), page.find("Your plan")) << "what is good comes first";
    EXPECT_LT(page.find("Your plan"), page.find("Cannot tell"));
    EXPECT_EQ(count(page, "data:image/jpeg"), 4);
    EXPECT_EQ(count(page, "Offset 0.7"), 1) << "a caution of both swings is said once";
}

TEST(LessonPage, LoadsNothingAndRunsNothing) {
    const std::string page = lessonPage(test::hostileStory());
    EXPECT_THAT(page, Not(HasSubstr("<script")));
    EXPECT_THAT(page, Not(HasSubstr("<img")));
    EXPECT_THAT(page, Not(HasSubstr("\u202e")));
    EXPECT_THAT(page, Not(HasSubstr("\u2066")));
    // Every reference is data.
    for (const char* name : {" src=\"", " href=\"", " action=\"", " data=\"", " poster=\""}) {
        for (std::size_t at = page.find(name); at != std::string::npos; at = page.find(name, at + 1)) {
            EXPECT_THAT(page.substr(page.find('"', at) + 1, 12), testing::StartsWith("data:image/"));
        }
    }
    for (int i = 1; i <= test::kHostileFields; ++i) {
        EXPECT_THAT(page, HasSubstr("END" + std::to_string(i))) << "the words stay";
    }
}

// One list for everything that people type (tests/hostile): as many tags as the harmless page has.
TEST(LessonPage, EveryHostileTextIsOnlyText) {
    const auto texts = test::hostileTexts();
    ASSERT_GT(texts.size(), 30U);
    const auto tags = [](const std::string& page) { return count(page, "<") - count(page, "<br>"); };
    const int harmless = tags(lessonPage(test::madeUpStory()));
    for (const std::string& text : texts) {
        exporting::LessonStory story = test::madeUpStory();
        for (std::string* field : test::typedFields(story)) {
            *field = "x" + text;
        }
        const std::string page = lessonPage(story);
        EXPECT_EQ(tags(page), harmless) << text;
        for (const char* mark : {"\u202e", "\u2066", "\x1b", "\x07"}) {
            EXPECT_EQ(count(page, mark), 0) << text;
        }
        EXPECT_TRUE(records::isUtf8(page)) << text;
    }
}

TEST(LessonPage, ABrowserSeesTextOnly) {
    const auto plain = asBrowsed(lessonPage(test::madeUpStory()));
    if (!plain) {
        GTEST_SKIP() << "chromium is not installed";
    }
    EXPECT_THAT(*plain, HasSubstr("<title>First lesson - Kim</title>"));
    const auto hostile = asBrowsed(lessonPage(test::hostileStory()));
    EXPECT_THAT(*hostile, Not(HasSubstr("<script")));
    EXPECT_THAT(*hostile, Not(HasSubstr("<img")));
    EXPECT_THAT(*hostile, Not(HasSubstr("<title>hit"))) << "a script ran";
    // The browser's own tree has as many elements as without hostile words (it counts a <br> per line end).
    const auto elements = [](const std::string& dom) {
        int n = 0;
        for (std::size_t at = dom.find('<'); at != std::string::npos; at = dom.find('<', at + 1)) {
            const std::string_view rest = std::string_view(dom).substr(at + 1);
            n += !rest.empty() && std::isalpha(static_cast<unsigned char>(rest[0])) != 0 &&
                 !rest.starts_with("br");
        }
        return n;
    };
    EXPECT_EQ(elements(*hostile), elements(*plain));
    EXPECT_EQ(count(*hostile, "&lt;script&gt;"), test::kHostileFields + 2) << "title and heading repeat two";
}

TEST(LessonPage, TextIsMadeHarmlessWhateverItsBytes) {
    EXPECT_EQ(htmlText("<a href='x'>\"&"), "&lt;a href=&#39;x&#39;&gt;&quot;&amp;");
    EXPECT_EQ(htmlText("a\nb\tc\x01\x7f\xc2\x85"), "a<br>b c");
    EXPECT_EQ(htmlText("\xff<\xc3("), "\ufffd&lt;\ufffd(");
    EXPECT_EQ(htmlText("\xc0\xbc\xe0\x80\xbc\xed\xa0\x80\xf4\x90\x80\x80"),
              "\ufffd\ufffd\ufffd\ufffd\ufffd\ufffd\ufffd\ufffd\ufffd\ufffd\ufffd\ufffd")
        << "overlong forms, surrogates and numbers beyond Unicode are no letters";
    EXPECT_EQ(htmlText("\u05e9\u05dc\u05d5\u05dd \U0001f3cc\ufe0f"),
              "\u05e9\u05dc\u05d5\u05dd \U0001f3cc\ufe0f");
}

// Outside check: FFmpeg's own JPEG decoder gives the picture back.
TEST(LessonPage, PicturesAreJpegs) {
    video::RgbImage image{64, 48, std::vector<std::uint8_t>(64 * 48 * 3, 90)};
    for (std::size_t i = 0; i < image.pixels.size() / 2; i += 3) {
        image.pixels[i] = 220; // the upper half reddish
    }
    const auto jpeg = video::encodeJpeg(image, 2);
    ASSERT_TRUE(jpeg) << jpeg.error().sentence;
    const auto back = video::decodeStill(*jpeg);
    ASSERT_TRUE(back) << back.error().sentence;
    ASSERT_EQ(back->pixels.size(), image.pixels.size());
    const auto at = [&](std::size_t x, std::size_t y) { return 3 * (64 * y + x); };
    for (const std::size_t place : {at(10, 5), at(50, 12), at(10, 40), at(60, 45)}) {
        for (std::size_t c = 0; c < 3; ++c) {
            EXPECT_NEAR(back->pixels[place + c], image.pixels[place + c], 4) << place;
        }
    }
    EXPECT_EQ(*video::encodeJpeg(image, 2), *jpeg);
    EXPECT_FALSE(video::encodeJpeg({}));
}
