// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "records/kinds.h"

using namespace plumbmark;
using namespace plumbmark::records;

TEST(Kinds, ShotReadsBackWithEveryWord) {
    Shot shot;
    shot.kind = marks::ShotKind::pitch;
    shot.club = marks::Club{marks::ClubKind::wedge, 56};
    shot.start = BallStart::trail;
    shot.curve = BallCurve::lead;
    shot.height = BallHeight::low;
    shot.contact = Contact::heavy;
    shot.ballPlace = BallPlace::back;
    shot.surface = Surface::mat;
    shot.note = "wind";
    shot.star = true;
    shot.tags = {"keep", "wind"};
    const Object body = bodyOf(shot);
    EXPECT_EQ(bodyOf(shotOf(body)), body);
    EXPECT_EQ(shotOf(body).contact, Contact::heavy);
    EXPECT_TRUE(shotOf(body).star);
    EXPECT_EQ(shotOf(body).tags, (std::vector<std::string>{"keep", "wind"}));

    const Shot empty = shotOf(bodyOf(Shot{}));
    EXPECT_FALSE(empty.start);
    EXPECT_FALSE(empty.contact);
    EXPECT_FALSE(empty.club);
    EXPECT_FALSE(empty.star);
    EXPECT_TRUE(empty.tags.empty());
}

TEST(Kinds, EveryWordReadsBack) {
    for (int i = 0; i < 8; ++i) {
        const auto contact = static_cast<Contact>(i);
        EXPECT_EQ(fromName<Contact>(name(contact)), contact);
    }
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(fromName<BallStart>(name(static_cast<BallStart>(i))), static_cast<BallStart>(i));
        EXPECT_EQ(fromName<BallCurve>(name(static_cast<BallCurve>(i))), static_cast<BallCurve>(i));
        EXPECT_EQ(fromName<BallHeight>(name(static_cast<BallHeight>(i))), static_cast<BallHeight>(i));
        EXPECT_EQ(fromName<BallPlace>(name(static_cast<BallPlace>(i))), static_cast<BallPlace>(i));
        EXPECT_EQ(fromName<Surface>(name(static_cast<Surface>(i))), static_cast<Surface>(i));
    }
    EXPECT_EQ(fromName<Surface>(name(Surface::tee)), Surface::tee);
    EXPECT_FALSE(fromName<Surface>("ice"));
}

TEST(Kinds, FindingsReadBackWithValueSigmaUnitOriginAndMethod) {
    Findings findings;
    findings.moments = {{marks::MomentId::top, base::Seconds{1.25}, base::Seconds{0.004}, "shaft"}};
    findings.measurements = {
        {"spine_tilt", marks::MomentId::top,
         base::Measured{7.5, 1.25, base::Unit::degrees, base::Origin::network}, "", 3},
        {"tempo_ratio", std::nullopt, std::nullopt, "The top was not found; mark it.", 1}};
    findings.checkpoints = {{"spine_tilt_top", marks::MomentId::top, "good", 0.9, 0.08, 0.02}};
    const Object body = bodyOf(findings);
    const Findings back = findingsOf(body);
    EXPECT_EQ(bodyOf(back), body);
    ASSERT_EQ(back.measurements.size(), 2U);
    EXPECT_EQ(back.measurements[0].value->sigma, 1.25);
    EXPECT_EQ(back.measurements[0].method, 3);
    EXPECT_FALSE(back.measurements[1].value);
    EXPECT_FALSE(back.measurements[1].moment);

    // A number without its uncertainty is not shown.
    Object broken = body;
    Array list{Object{{"id", "x"}, {"value", 3}, {"unit", "degrees"}, {"origin", "hand"}}};
    broken.insert_or_assign("measurements", list);
    ASSERT_EQ(findingsOf(broken).measurements.size(), 1U);
    EXPECT_FALSE(findingsOf(broken).measurements[0].value);
    EXPECT_FALSE(findingsOf(broken).measurements[0].reason.empty());
}

TEST(Kinds, MarksAndMomentsReadBack) {
    const MarkFact placed{12, marks::Landmark::lead_hip, base::Vec2{10.25, 20.5}, 1.5, false};
    const MarkFact hidden{12, marks::Landmark::lead_hip, std::nullopt, 2.0, false};
    const MarkFact removed{12, marks::Landmark::lead_hip, std::nullopt, 2.0, true};
    for (const MarkFact& mark : {placed, hidden, removed}) {
        const auto back = markOf(bodyOf(mark));
        ASSERT_TRUE(back);
        EXPECT_EQ(back->frame, mark.frame);
        EXPECT_EQ(back->at, mark.at);
        EXPECT_EQ(back->removed, mark.removed);
    }
    EXPECT_FALSE(markOf({{"landmark", "nose"}, {"at", Array{1, 2}}}));
    EXPECT_FALSE(markOf({{"frame", -1}, {"landmark", "nose"}, {"hidden", true}}));
    EXPECT_FALSE(markOf({{"frame", 1}, {"landmark", "third_knee"}, {"hidden", true}}));
    EXPECT_FALSE(markOf({{"frame", 1}, {"landmark", "nose"}, {"at", Array{1}}}));

    const MomentFact moment{marks::MomentId::impact, base::Seconds{1.5}, base::Seconds{0.002}, false};
    ASSERT_TRUE(momentOf(bodyOf(moment)));
    EXPECT_EQ(momentOf(bodyOf(moment))->time, moment.time);
    EXPECT_FALSE(momentOf({{"moment", "impact"}, {"time_s", 1}, {"sigma_s", 0}}));
}

TEST(Kinds, DrawingsReadBackAndUnfinishedOnesDoNot) {
    using Shape = Drawing::Shape;
    for (int i = 0; i < 7; ++i) {
        Drawing d;
        d.name = "d" + std::to_string(i);
        d.shape = static_cast<Shape>(i);
        d.tie = static_cast<Drawing::Tie>(i % 3);
        d.landmark = d.tie == Drawing::Tie::body ? marks::Landmark::lead_hip : marks::Landmark::nose;
        d.frame = 7;
        d.points.assign(d.shape == Shape::angle                             ? 3
                        : d.shape == Shape::plumb || d.shape == Shape::text ? 1
                                                                            : 2,
                        {1.5, 2.5});
        d.height = d.shape == Shape::plumb ? 120 : 0;
        d.text = d.shape == Shape::text ? "hier" : "";
        const Object body = bodyOf(d);
        const auto back = drawingOf(body);
        ASSERT_TRUE(back) << name(d.shape);
        EXPECT_EQ(bodyOf(*back), body);
        d.points.pop_back();
        EXPECT_FALSE(drawingOf(bodyOf(d))) << name(d.shape);
    }
    Drawing gone;
    gone.name = "d";
    gone.removed = true;
    EXPECT_TRUE(drawingOf(bodyOf(gone))->removed);
    EXPECT_FALSE(drawingOf({{"drawing", "d"}, {"shape", "star"}, {"tie", "picture"}, {"frame", 1}}));
    EXPECT_FALSE(drawingOf({{"shape", "line"}}));
}

TEST(Kinds, ClipPlayerLessonPlanPracticePainReadBack) {
    Clip clip;
    clip.sha256 = std::string(64, 'a');
    clip.bytes = 1'000'000;
    clip.view = marks::View::downTheLine;
    clip.hand = marks::Hand::left;
    clip.mirrored = true;
    clip.width = 1080;
    clip.height = 1920;
    clip.frames = 300;
    clip.durationSeconds = 1.25;
    clip.playbackFps = 240;
    clip.captureFps = 240;
    clip.rollDegrees = -1.5;
    clip.plumbEdge = {base::Vec2{1, 2}, base::Vec2{3, 4.5}};
    ASSERT_TRUE(clipOf(bodyOf(clip)));
    EXPECT_EQ(bodyOf(*clipOf(bodyOf(clip))), bodyOf(clip));
    Object nameless = bodyOf(clip);
    nameless.insert_or_assign("sha256", "../../etc/passwd");
    EXPECT_FALSE(clipOf(nameless));

    const Player player{"Zoë", marks::Hand::left, 1.74, "note"};
    EXPECT_EQ(bodyOf(playerOf(bodyOf(player))), bodyOf(player));
    const Lesson lesson{"t", "2026-11-25", "w", "b", "n"};
    EXPECT_EQ(bodyOf(lessonOf(bodyOf(lesson))), bodyOf(lesson));
    PlanItem bare;
    bare.feel = "f2";
    const Plan plan{
        {{"f", "d", "o", "c", "g", "position", "node", "5 cm", "turn", "2026-12-02", "clip"}, bare}};
    EXPECT_EQ(bodyOf(planOf(bodyOf(plan))), bodyOf(plan));
    EXPECT_EQ(planOf(bodyOf(plan)).items.front().lookAgain, "2026-12-02");
    const Practice practice{"2026-11-25", 30, "d", "", "balls"};
    ASSERT_TRUE(practiceOf(bodyOf(practice)));
    EXPECT_EQ(practiceOf(bodyOf(practice))->repetitions, 30);
    EXPECT_EQ(practiceOf(bodyOf(practice))->what, "balls");
    const Pain pain{"2026-11-25", "lower back", 3, ""};
    ASSERT_TRUE(painOf(bodyOf(pain)));
    EXPECT_FALSE(painOf({{"day", "2026-11-25"}, {"region", "x"}, {"level", 11}}));
}

TEST(Kinds, PeoplesMistakesGetASentence) {
    EXPECT_TRUE(check(Player{"Kim", marks::Hand::right, 1.8, ""}));
    EXPECT_FALSE(check(Player{" \t", marks::Hand::right, 1.8, ""}));
    EXPECT_FALSE(check(Player{"Kim", marks::Hand::right, 180.0, ""}));
    EXPECT_FALSE(check(Player{"\xFF", marks::Hand::right, std::nullopt, ""}));
    EXPECT_FALSE(check(Player{std::string(20'000, 'x'), marks::Hand::right, std::nullopt, ""}));
    EXPECT_TRUE(check(Lesson{"", "2026-11-25", "", "", ""}));
    EXPECT_FALSE(check(Lesson{"", "25.11.2026", "", "", ""}));
    EXPECT_FALSE(check(Lesson{"", "2026-02-30", "", "", ""}));
}
