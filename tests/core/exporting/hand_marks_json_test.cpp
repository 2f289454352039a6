// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/hand_marks_json.h"

#include <gmock/gmock.h>

using namespace plumbmark;
using testing::HasSubstr;

namespace {

std::string form(const std::string& point, const std::string& time = "0.1") {
    return R"({"names":["nose","ball"],"frames":[{"time_s":)" + time + R"(,"points":[)" + point + ",null]}]}";
}

std::string problem(const std::string& text) {
    auto file = exporting::readHandMarks(text);
    if (file) {
        return "accepted";
    }
    EXPECT_EQ(file.error().kind, base::ErrorKind::input);
    return file.error().sentence;
}

std::vector<base::Seconds> times(std::initializer_list<double> seconds) {
    std::vector<base::Seconds> list;
    for (const double s : seconds) {
        list.emplace_back(s);
    }
    return list;
}

} // namespace

TEST(HandMarks, APointWithoutOriginCountsAsPlacedByHand) {
    auto file = exporting::readHandMarks(form("[10.5, 20]"));
    ASSERT_TRUE(file) << file.error().sentence;
    ASSERT_EQ(file->entries.size(), 1u);
    EXPECT_EQ(file->entries[0].mark.at, (base::Vec2{10.5, 20.0}));
    EXPECT_EQ(file->entries[0].mark.sigma, marks::HandMark{}.sigma);
    EXPECT_EQ(exporting::readHandMarks(form("[1, 2, 0.5, \"hand\"]"))->entries[0].mark.sigma, 0.5);
    EXPECT_TRUE(exporting::readHandMarks(form("[1, 2, 0.5, \"tracked\"]"))->entries.empty());
    EXPECT_TRUE(exporting::readHandMarks(form("null"))->entries.empty());
}

TEST(HandMarks, ABadFileIsToldWhatIsWrongWithIt) {
    EXPECT_THAT(problem(""), HasSubstr("not JSON"));
    EXPECT_THAT(problem("{\n\"names\": [,"), HasSubstr("line 2"));
    EXPECT_THAT(problem("[]"), HasSubstr("names"));
    EXPECT_THAT(problem("{}"), HasSubstr("names"));
    EXPECT_THAT(problem("{\"landmarks\": 3}"), HasSubstr("object"));
    EXPECT_THAT(problem(R"({"names":["left_knee"],"frames":[]})"), HasSubstr("left_knee"));
    EXPECT_THAT(problem(R"({"names":["nose","nose"],"frames":[]})"), HasSubstr("twice"));
    EXPECT_THAT(problem(R"({"names":[1],"frames":[]})"), HasSubstr("text"));
    EXPECT_THAT(problem(R"({"names":["nose"]})"), HasSubstr("frames"));
    EXPECT_THAT(problem(R"({"names":["nose"],"frames":[{"points":[null]}]})"), HasSubstr("time_s"));
    EXPECT_THAT(problem(R"({"names":["nose"],"frames":[{"time_s":0}]})"), HasSubstr("points"));
    EXPECT_THAT(problem(R"({"names":["nose"],"frames":[{"time_s":0,"points":[]}]})"),
                HasSubstr("0 points for 1"));
    EXPECT_THAT(problem(form("[1]")), HasSubstr("[x, y"));
    EXPECT_THAT(problem(form("{}")), HasSubstr("nose"));
    EXPECT_THAT(problem(form("[\"a\", 2]")), HasSubstr("two numbers"));
    EXPECT_THAT(problem(form("[1, 2, 0]")), HasSubstr("sigma"));
    EXPECT_THAT(problem(form("[1, 2, 1, \"guessed\"]")), HasSubstr("guessed"));
    EXPECT_THAT(problem(form("[1e999, 2]")), HasSubstr("too large"));
    EXPECT_THAT(problem(form("[1, 2]", "\"soon\"")), HasSubstr("time_s"));
}

TEST(HandMarks, NothingFromTheFileReachesATerminalAsAControlCharacter) {
    const std::string sentence =
        problem("{\"names\":[\"\\u001b[2Jx" + std::string(500, 'x') + "\"],\"frames\":[]}");
    EXPECT_EQ(sentence.find('\x1b'), std::string::npos);
    EXPECT_LT(sentence.size(), 300u);
}

TEST(HandMarks, DeepNestingIsRefusedAndNotACrash) {
    EXPECT_NE(problem(std::string(200000, '[')), "accepted");
    EXPECT_NE(problem(std::string(100000, '[') + std::string(100000, ']')), "accepted");
}

TEST(HandMarks, LandOnTheFrameWithinHalfAFrame) {
    const auto uneven = times({0.0, 0.1, 0.4});
    const auto frameOf = [&](double t) -> int {
        auto file = exporting::readHandMarks(form("[1, 2]", std::to_string(t)));
        auto placed = exporting::placeHandMarks(*file, uneven, 100, 100);
        return placed ? placed->at(0).frame : -1;
    };
    EXPECT_EQ(frameOf(0.0), 0);
    EXPECT_EQ(frameOf(0.049), 0);
    EXPECT_EQ(frameOf(0.051), 1);
    EXPECT_EQ(frameOf(0.24), 1);
    EXPECT_EQ(frameOf(0.26), 2);
    EXPECT_EQ(frameOf(0.5), 2);
    EXPECT_EQ(frameOf(0.6), -1) << "more than half a frame after the last";
    EXPECT_EQ(frameOf(-0.04), 0);
    EXPECT_EQ(frameOf(-0.06), -1);
}

TEST(HandMarks, TimesTwiceAndPlacesFarOutsideAreRefused) {
    const auto even = times({0.0, 0.1, 0.2});
    const auto place = [&](const std::string& text) {
        auto file = exporting::readHandMarks(text);
        auto placed = exporting::placeHandMarks(*file, even, 100, 200);
        return placed ? std::string("placed") : placed.error().key;
    };
    EXPECT_EQ(place(form("[1, 2]", "7")), "marks.time");
    EXPECT_EQ(place(form("[1, 400]")), "marks.outside");
    EXPECT_EQ(place(form("[-10, 210]")), "placed") << "a foot may be cut off by the picture's edge";
    EXPECT_EQ(
        place(
            R"({"names":["nose"],"frames":[{"time_s":0.1,"points":[[1,2]]},{"time_s":0.101,"points":[[1,2]]}]})"),
        "marks.twice");
    EXPECT_EQ(
        exporting::placeHandMarks(*exporting::readHandMarks(form("[1, 2]", "0")), {}, 100, 200).error().key,
        "marks.time");
    EXPECT_EQ(
        exporting::placeHandMarks(*exporting::readHandMarks(form("[1, 2]", "0")), times({0.0}), 9, 9)->size(),
        1u);
}
