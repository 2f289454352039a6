// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "session/coach_desk.h"
#include "session/lesson_book.h"

using namespace plumbmark;
namespace fs = std::filesystem;

namespace {

class CoachDeskTest : public ::testing::Test {
  protected:
    void SetUp() override {
        stage_ = std::make_unique<base::StagingFolder>(
            *base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test"));
        library_ = std::move(store::Library::open({stage_->path() / "library", &clock_, &base::randomIds()}))
                       .value();
        session::LessonBook book(*library_);
        player_ = *book.addPlayer({"Ilse Marrok", marks::Hand::right, 1.68, ""});
    }

    base::Id lesson(const std::string& day, const std::string& belief = {}) {
        records::Lesson l;
        l.title = "Lesson";
        l.day = day;
        l.belief = belief;
        return *session::LessonBook(*library_).addLesson(player_, l);
    }

    /// A shot with a face-on clip whose findings say these numbers; no film is needed for reasoning.
    void swing(const base::Id& lesson, double stance, double inside, double turn = -45) {
        records::Shot shot;
        shot.club = marks::Club{marks::ClubKind::iron, 7};
        const auto id = *session::LessonBook(*library_).addShot(lesson, shot);
        // Every clip names a film that is there; its bytes do not matter here.
        const fs::path film = stage_->path() / ("film" + std::to_string(films_++));
        std::ofstream(film) << film;
        const auto kept = library_->addFilm(film);
        ASSERT_TRUE(kept.ok());
        records::Clip clip;
        clip.sha256 = kept->sha256;
        clip.bytes = kept->bytes;
        clip.width = 1280, clip.height = 720, clip.frames = 10;
        const std::vector<base::Id> path{player_, lesson, id};
        const auto made = library_->make(records::kind::clip, path, bodyOf(clip));
        records::Findings f;
        f.moments = {{marks::MomentId::address, base::Seconds{0.5}, base::Seconds{0.01}, "shaft"},
                     {marks::MomentId::top, base::Seconds{1.2}, base::Seconds{0.01}, "shaft"}};
        const auto say = [&](std::string name, marks::MomentId m, double v, double sigma, base::Unit unit) {
            f.measurements.push_back(
                {std::move(name), m, base::Measured{v, sigma, unit, base::Origin::hand}, "", 1});
        };
        say("stance_width_ratio", marks::MomentId::address, stance, 0.03, base::Unit::ratio);
        say("head_to_trail_ankle", marks::MomentId::top, inside, 0.03, base::Unit::stance_widths);
        say("pelvis_turn", marks::MomentId::top, turn, 2, base::Unit::degrees);
        auto below = path;
        below.push_back(made.id);
        ASSERT_TRUE(library_->add({made, library_->make(records::kind::findings, below, bodyOf(f))}).ok());
    }

    base::FixedClock clock_{*base::fromIso("2026-11-25T09:00:00Z")};
    std::unique_ptr<base::StagingFolder> stage_;
    std::unique_ptr<store::Library> library_;
    base::Id player_{base::Id::Bytes{}};
    int films_ = 0;
};

} // namespace

TEST_F(CoachDeskTest, TheProposalStaysBesideTheCoachsWord) {
    const auto id = lesson("2026-11-25", "I stand too close with my feet too close");
    for (int i = 0; i < 3; ++i) {
        swing(id, 0.72 + 0.01 * i, -0.2);
    }
    session::CoachDesk desk(*library_, coaching::Playbook::standard(), clock_);
    const auto r = desk.reason(id);
    ASSERT_TRUE(r.ok()) << r.error().sentence;
    ASSERT_TRUE(r->explanation.first);
    EXPECT_EQ(r->explanation.first->node, "narrow_stance");
    EXPECT_EQ(r->answer->answer, reasoning::BeliefAnswer::Answer::yes);
    ASSERT_EQ(r->plan.priorities.size(), 1U);
    EXPECT_EQ(desk.say(*r, "overrule", {"no_such"}).error().key, "playbook.no_such_node");
    ASSERT_TRUE(desk.say(*r, "overrule", {"ball_forward"}, "seen on the tee").ok());
    const auto again = desk.reason(id);
    EXPECT_EQ(again->order, std::vector<std::string>{"ball_forward"}) << "the coach's word is what counts";
    EXPECT_EQ(again->plan.priorities[0].node, "ball_forward");
    EXPECT_EQ(again->explanation.first->node, "narrow_stance") << "the proposal stays as it was";
    const auto kept = library_->factsOf(id, records::kind::explanation);
    ASSERT_EQ(kept->size(), 1U);
    const auto fact = records::explanationOf(kept->front().body);
    EXPECT_EQ(fact.chain.front(), "narrow_stance");
    EXPECT_EQ(again->word->proposal, kept->front().id.hex());
    EXPECT_EQ(fact.clips.size(), 3U);
}

TEST_F(CoachDeskTest, ADroppedTrialWeighsOnThisPlayer) {
    const auto id = lesson("2026-11-25");
    for (int i = 0; i < 3; ++i) {
        swing(id, 0.72, -0.2 + 0.001 * i);
    }
    for (int i = 0; i < 3; ++i) {
        swing(id, 1.15, -0.2 + 0.001 * i);
    }
    session::CoachDesk desk(*library_, coaching::Playbook::standard(), clock_);
    const auto trial = desk.tryIt(id, "narrow_stance", {1, 2, 3}, {4, 5, 6}, {});
    ASSERT_TRUE(trial.ok()) << trial.error().sentence;
    EXPECT_EQ(trial->result, reasoning::TrialResult::Result::dropped) << trial->sentence;
    EXPECT_EQ(desk.weights(player_)->at("narrow_stance"), 0.5);
    EXPECT_EQ(desk.tryIt(id, "narrow_stance", {1, 2, 3}, {99}, {}).error().key, "explain.no_swings");
}

TEST_F(CoachDeskTest, TheNextLessonOpensWithPlanPracticeChangeAndPain) {
    const auto first = lesson("2026-11-18");
    for (int i = 0; i < 3; ++i) {
        swing(first, 0.72 + 0.005 * i, -0.2);
    }
    session::CoachDesk desk(*library_, coaching::Playbook::standard(), clock_);
    ASSERT_TRUE(desk.keepPlan(*desk.reason(first)).ok());
    EXPECT_EQ((*desk.plan(first))->items[0].node, "narrow_stance");
    EXPECT_EQ((*desk.plan(first))->items[0].lookAgain, "2026-12-02");
    ASSERT_TRUE(desk.body().log(player_, records::Practice{"2026-11-20", 30, "", "", ""}).ok());
    ASSERT_TRUE(desk.body().log(player_, records::Practice{"2026-11-21", 40, "", "", "balls"}).ok());
    ASSERT_TRUE(desk.body().log(player_, records::Pain{"2026-11-24", "lower_back", 3, ""}).ok());
    EXPECT_EQ(desk.body().log(player_, records::Pain{"2026-11-24", "soul", 3, ""}).error().key,
              "record.bad_value");
    const auto second = lesson("2026-11-25");
    for (int i = 0; i < 3; ++i) {
        swing(second, 1.10 + 0.005 * i, -0.2);
    }
    const auto f = desk.followUp(second);
    ASSERT_TRUE(f.ok());
    ASSERT_TRUE(f->plan);
    EXPECT_EQ(f->planDay, "2026-11-18");
    EXPECT_EQ(f->rehearsals, 30);
    EXPECT_EQ(f->balls, 40);
    ASSERT_EQ(f->changed.size(), 1U);
    EXPECT_EQ(f->changed[0].id, "stance_width_ratio");
    EXPECT_EQ(f->notChanged.size(), 2U);
    ASSERT_EQ(f->pains.size(), 1U);
    EXPECT_FALSE(desk.followUp(first)->plan) << "nothing before the first lesson";
    // Pain of yesterday halves what works the back, and health notes never travel with a lesson.
    const auto card = desk.body().forCoaching(player_);
    EXPECT_EQ(card->painNow, std::vector<std::string>{"lower_back"});
    EXPECT_EQ(card->ballsThisWeek, 40);
    const auto lines = library_->linesFor(second);
    for (const auto& line : *lines) {
        EXPECT_EQ(line.find("lower_back"), std::string::npos) << line;
    }
}

TEST_F(CoachDeskTest, TheBodyCardAsksFirstAndReplacesItself) {
    session::BodyBook body(*library_, clock_);
    records::BodyCard card;
    card.day = "2026-11-25";
    card.birthYear = 1960;
    card.replacedJoints = {"lead_hip"};
    ASSERT_TRUE(body.keep(player_, card).ok());
    EXPECT_TRUE(body.forCoaching(player_)->askFirst);
    EXPECT_EQ(body.forCoaching(player_)->ageYears, 66);
    EXPECT_EQ(body.forCoaching(player_)->limitedJoints, std::vector<std::string>{"lead_hip"});
    card.cleared = true;
    card.clearedDay = "2026-11-01";
    ASSERT_TRUE(body.keep(player_, card).ok());
    EXPECT_FALSE(body.forCoaching(player_)->askFirst);
    EXPECT_EQ(body.card(player_)->clearedDay, "2026-11-01");
    card.surgery = {"elsewhere"};
    EXPECT_EQ(body.keep(player_, card).error().key, "record.bad_value");
}

TEST_F(CoachDeskTest, TheCoachSetsTheDoseWithinWhatTheBodyAllows) {
    const auto id = lesson("2026-11-25");
    for (int i = 0; i < 3; ++i) {
        swing(id, 0.72 + 0.01 * i, -0.2);
    }
    session::CoachDesk desk(*library_, coaching::Playbook::standard(), clock_);
    auto r = desk.reason(id);
    ASSERT_TRUE(r.ok()) << r.error().sentence;
    ASSERT_FALSE(r->plan.priorities.empty());
    ASSERT_TRUE(desk.setDose(*r, 0, 4, 3).ok());
    EXPECT_NE(r->plan.priorities[0].dose.find("4 sets of 10 slow rehearsals"), std::string::npos);
    EXPECT_NE(r->plan.priorities[0].dose.find("3 sets of 10 balls"), std::string::npos);
    ASSERT_TRUE(desk.keepPlan(*r).ok());
    EXPECT_EQ((*desk.plan(id))->items.front().dose, r->plan.priorities[0].dose);
    auto again = desk.reason(id);
    ASSERT_TRUE(again.ok());
    desk.takeDoses(*again, **desk.plan(id));
    EXPECT_EQ(again->plan.priorities[0].rehearsalSets, 4);
    EXPECT_EQ(again->plan.priorities[0].ballSets, 3);
    for (const auto& [rehearsals, balls] : {std::pair{0, 0}, {-1, 2}, {11, 0}, {2, 11}}) {
        const auto refused = desk.setDose(*r, 0, rehearsals, balls);
        ASSERT_FALSE(refused.ok());
        EXPECT_EQ(refused.error().key, "plan.dose");
    }
    EXPECT_FALSE(desk.setDose(*r, 7, 1, 1).ok());

    // Ten balls a day at most: what the draft took away does not come back by asking.
    records::BodyCard card;
    card.day = "2026-11-25";
    card.mostBalls = 10;
    ASSERT_TRUE(desk.body().keep(player_, card).ok());
    auto limited = desk.reason(id);
    ASSERT_TRUE(limited.ok());
    const auto refused = desk.setDose(*limited, 0, 2, 3);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().key, "plan.protected");
    EXPECT_TRUE(desk.setDose(*limited, 0, 2, limited->plan.priorities[0].ballSets).ok());
}

TEST_F(CoachDeskTest, ADepartureIsSeenInTheNewestSwingThatHasItsNumber) {
    const auto id = lesson("2026-11-25");
    for (int i = 0; i < 3; ++i) {
        swing(id, 0.72 + 0.01 * i, -0.2);
    }
    session::CoachDesk desk(*library_, coaching::Playbook::standard(), clock_);
    const auto r = desk.reason(id);
    ASSERT_TRUE(r.ok() && r->explanation.first);
    const auto* node = r->explanation.node(r->explanation.first->node);
    ASSERT_NE(node, nullptr);
    const auto seen = desk.sight(*r, *node);
    ASSERT_TRUE(seen.ok()) << seen.error().sentence;
    ASSERT_TRUE(seen->has_value());
    EXPECT_EQ((*seen)->number, 3);
    EXPECT_EQ((*seen)->clip, r->swings.back().clip);
    EXPECT_EQ((*seen)->moment, marks::MomentId::address);
    EXPECT_EQ((*seen)->time.value(), 0.5);
    reasoning::NodeState told = *node; // only the ball told it
    told.checkpoint.clear();
    const auto unseen = desk.sight(*r, told);
    ASSERT_TRUE(unseen.ok());
    EXPECT_FALSE(unseen->has_value());
}
