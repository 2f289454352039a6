// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/measure_json.h"

#include <cmath>
#include <gmock/gmock.h>
#include <limits>
#include <nlohmann/json.hpp>

#include "exporting/hand_marks_json.h"
#include "outcome_for_tests.h"

using namespace plumbmark;
using nlohmann::json;

TEST(MeasureJson, HoldsEveryMemberOfTheContract) {
    const json j = json::parse(exporting::measureJson(test::madeUpOutcome()));
    EXPECT_EQ(j["clip"], json::parse(R"({"frames":4,"width":720,"height":1280,"duration_s":0.133333,
        "rotation_deg":90,"playback_fps":30.0,"capture_fps":240.0})"));
    EXPECT_EQ(j["vertical"], json::parse(R"({"source":"told","angle_deg":0.5,"sigma_deg":0.3})"));
    EXPECT_EQ(j["moments"][1],
              json::parse(R"({"name":"impact","time_s":0.1,"real_time_s":0.0125,"sigma_s":0.001,
        "found_by":"ball+shaft"})"));
    EXPECT_EQ(j["measurements"][0],
              json::parse(R"({"id":"spine_tilt","moment":"address","value":8.25,"sigma":1.5,
        "unit":"degrees","origin":"network","method":3})"));
    EXPECT_EQ(j["measurements"][1], json::parse(R"({"id":"tempo_ratio","moment":null,
        "reason":"The top could not be found; a clip with more light helps."})"));
    EXPECT_EQ(j["checkpoints"][0],
              json::parse(R"({"id":"spine_tilt_address","moment":"address","state":"good",
        "probabilities":{"good":0.8,"watch":0.15,"work":0.05},"help":"Keep it."})"));
    EXPECT_EQ(j["checkpoints"][1]["state"], "unknown");
    EXPECT_EQ(j["cautions"][0]["grade"], "coach's experience");
    EXPECT_EQ(j["warnings"], json::array({"The end is cut off."}));
    EXPECT_FALSE(j.contains("landmarks"));
}

TEST(MeasureJson, TellsTheSwingsOfAClipThatWasLookedThrough) {
    auto outcome = test::madeUpOutcome();
    EXPECT_FALSE(json::parse(exporting::measureJson(outcome)).contains("swings"));
    outcome.swings = {{base::Seconds{3.5}, false, 0, 60, base::Seconds{0.0}, base::Seconds{6.0}},
                      {base::Seconds{9.25}, true, 61, 120, base::Seconds{6.1}, base::Seconds{12.0}}};
    outcome.swing = 1;
    EXPECT_EQ(json::parse(exporting::measureJson(outcome))["swings"], json::parse(R"([
        {"number":1,"time_s":3.5,"hit_heard":false,"from_s":0.0,"to_s":6.0,"measured":false},
        {"number":2,"time_s":9.25,"hit_heard":true,"from_s":6.1,"to_s":12.0,"measured":true}])"));
}

TEST(MeasureJson, TellsWhatToFilmBetter) {
    const auto outcome = test::madeUpOutcome();
    EXPECT_EQ(json::parse(exporting::measureJson(outcome))["film_advice"], json::array());
    const std::vector<exporting::Advice> advice{{"level", "It hung.", "Hold it \"level\"."}};
    EXPECT_EQ(json::parse(exporting::measureJson(outcome, {.advice = advice}))["film_advice"],
              json::parse(R"([{"id":"level","limited":"It hung.","change":"Hold it \"level\"."}])"));
}

TEST(MeasureJson, TellsNoRealTimeWhileTheCaptureRateIsUnknown) {
    auto outcome = test::madeUpOutcome();
    outcome.timeScale = {1.0, false, "assumed"};
    const json j = json::parse(exporting::measureJson(outcome));
    EXPECT_TRUE(j["clip"]["capture_fps"].is_null());
    EXPECT_TRUE(j["moments"][0]["real_time_s"].is_null());
    EXPECT_TRUE(j["moments"][0]["time_s"].is_number());
}

TEST(MeasureJson, ACaptureRateToldByTheCoachIsTheOneWritten) {
    auto outcome = test::madeUpOutcome();
    outcome.timeScale = {0.25, true, "told"};
    EXPECT_DOUBLE_EQ(json::parse(exporting::measureJson(outcome))["clip"]["capture_fps"].get<double>(),
                     120.0);
}

TEST(MeasureJson, NumbersThatAreNotFiniteBecomeReasonsAndNulls) {
    auto outcome = test::madeUpOutcome();
    outcome.measurements[0].value->value = std::nan("");
    outcome.track[1][marks::Landmark::nose]->at.x = std::numeric_limits<double>::infinity();
    outcome.clip.playbackFps = std::nan("");
    const std::string text = exporting::measureJson(outcome, {.landmarks = true});
    const json j = json::parse(text);
    EXPECT_TRUE(j["measurements"][0].contains("reason"));
    EXPECT_FALSE(j["measurements"][0].contains("value"));
    EXPECT_TRUE(j["landmarks"]["frames"][1]["points"][0].is_null());
    EXPECT_TRUE(j["clip"]["playback_fps"].is_null());
    EXPECT_THAT(text, testing::Not(testing::HasSubstr("nan")));
}

TEST(MeasureJson, SmallSigmasStayAboveZeroAndBadTextStaysJson) {
    auto outcome = test::madeUpOutcome();
    outcome.measurements[0].value->sigma = 1e-9;
    outcome.warnings = {"clip \xff\xfe.mp4", "\"quoted\"\n"};
    outcome.clip.warnings = {"clip \xff\xfe.mp4"};
    const json j = json::parse(exporting::measureJson(outcome));
    EXPECT_GT(j["measurements"][0]["sigma"].get<double>(), 0.0);
    EXPECT_EQ(j["warnings"].size(), 2u) << "the same sentence is told once";
    EXPECT_EQ(j["warnings"][1], "\"quoted\"\n");
}

TEST(Landmarks, WrittenMarksReadBackAsTheHandMarksAmongThem) {
    const auto outcome = test::madeUpOutcome();
    const std::string text = exporting::measureJson(outcome, {.landmarks = true});
    const json j = json::parse(text);
    ASSERT_EQ(j["landmarks"]["names"].size(), marks::kLandmarkCount);
    EXPECT_EQ(j["landmarks"]["frames"][2]["points"][0], json::parse(R"([362.0,300.13,1.5,"network"])"));

    std::vector<base::Seconds> times;
    for (const auto& frame : outcome.track) {
        times.push_back(frame.time);
    }
    for (const std::string& form : {text, j["landmarks"].dump()}) {
        auto file = exporting::readHandMarks(form);
        ASSERT_TRUE(file) << file.error().sentence;
        auto placed = exporting::placeHandMarks(*file, times, 720, 1280);
        ASSERT_TRUE(placed) << placed.error().sentence;
        ASSERT_EQ(placed->size(), 4u) << "only what a hand placed";
        EXPECT_EQ((*placed)[3].frame, 3);
        EXPECT_EQ((*placed)[3].landmark, marks::Landmark::lead_ankle);
        EXPECT_EQ((*placed)[3].at, (base::Vec2{440.0, 1100.0}));
        EXPECT_EQ((*placed)[3].sigma, 2.0);
    }
}
