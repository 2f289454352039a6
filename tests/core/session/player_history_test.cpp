// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <fstream>

#include "session/lesson_book.h"
#include "session/lesson_today.h"
#include "session/player_history.h"

using namespace plumbmark;
namespace fs = std::filesystem;
using marks::MomentId;

namespace {

class PlayerHistoryTest : public ::testing::Test {
  protected:
    void SetUp() override {
        stage_ = std::make_unique<base::StagingFolder>(
            *base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test"));
        store::LibraryOptions options;
        options.folder = stage_->path() / "library";
        options.clock = &clock_;
        library_ = std::move(store::Library::open(options)).value();
        session::LessonBook book(*library_);
        player_ = *book.addPlayer({"Ilse Marrok", marks::Hand::right, 1.68, ""});
    }

    base::Id lesson(const std::string& day) {
        records::Lesson l;
        l.title = "Lesson";
        l.day = day;
        return *session::LessonBook(*library_).addLesson(player_, l);
    }

    /// A face-on clip whose findings say one number; no film is needed.
    void swing(const base::Id& lesson, const std::string& id, double value, double sigma, int method = 1,
               int iron = 7) {
        records::Shot shot;
        shot.club = marks::Club{marks::ClubKind::iron, iron};
        const auto made = *session::LessonBook(*library_).addShot(lesson, shot);
        const fs::path film = stage_->path() / ("film" + std::to_string(films_++));
        std::ofstream(film) << film;
        const auto kept = library_->addFilm(film);
        ASSERT_TRUE(kept.ok());
        records::Clip clip;
        clip.sha256 = kept->sha256;
        clip.bytes = kept->bytes;
        clip.width = 1280, clip.height = 720, clip.frames = 10;
        const std::vector<base::Id> path{player_, lesson, made};
        const auto fact = library_->make(records::kind::clip, path, bodyOf(clip));
        records::Findings f;
        f.measurements.push_back({id, MomentId::address,
                                  base::Measured{value, sigma, base::Unit::ratio, base::Origin::hand}, "",
                                  method});
        auto below = path;
        below.push_back(fact.id);
        ASSERT_TRUE(library_->add({fact, library_->make(records::kind::findings, below, bodyOf(f))}).ok());
    }
    session::PlayerHistory history() {
        return std::move(**session::PlayerHistory::read(*library_, player_, {}, clock_));
    }

    base::FixedClock clock_{*base::fromIso("2026-11-25T09:00:00Z")};
    std::unique_ptr<base::StagingFolder> stage_;
    std::unique_ptr<store::Library> library_;
    base::Id player_{base::Id::Bytes{}};
    int films_ = 0;
};

const coaching::Playbook& book() {
    return coaching::Playbook::standard();
}

} // namespace

// Student (1908), "The probable error of a mean": extra hours of sleep under two drugs, ten patients each; as
// R's data set "sleep" has it. R's manual page of the data set gives the unequal-variance test of the two:
// t = -1.8608, 17.776 degrees of freedom, p = 0.079: not beyond doubt at 95 %.
TEST_F(PlayerHistoryTest, FirstAgainstNewestIsStudentsSleepTest) {
    const double first[] = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
    const double second[] = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};
    const auto a = lesson("2026-11-03"), b = lesson("2026-11-24");
    constexpr double kSigma = 1e-6; // no measuring error: the spread alone
    for (const double v : first) {
        swing(a, "stance_width_ratio", v, kSigma);
    }
    for (const double v : second) {
        swing(b, "stance_width_ratio", v, kSigma);
    }
    const auto h = history();
    ASSERT_EQ(h.kinds().size(), 1U);
    const auto choices = h.choices(book(), h.kinds()[0]);
    ASSERT_EQ(choices.size(), 1U);
    EXPECT_EQ(choices[0].lessons, 2);
    EXPECT_TRUE(choices[0].judged);
    const auto trend = h.trend(book(), h.kinds()[0], choices[0]);
    ASSERT_EQ(trend.points.size(), 2U);
    EXPECT_EQ(trend.points[0].day, "2026-11-03"); // oldest first
    // Standard errors of the means, from the deviations 1.789 and 2.002 of Student's table.
    EXPECT_NEAR(trend.points[0].sigma, 1.789 / std::sqrt(10.0), 1e-3);
    EXPECT_NEAR(trend.points[1].sigma, 2.002 / std::sqrt(10.0), 1e-3);
    EXPECT_NEAR(trend.points[1].spread.median, (1.6 + 1.9) / 2, 1e-9);
    ASSERT_TRUE(trend.change);
    EXPECT_NEAR(trend.change->difference / trend.change->sigma, 1.8608, 1e-3);
    EXPECT_NEAR(trend.change->freedom, 17.776, 1e-2);
    EXPECT_FALSE(trend.change->beyondDoubt);
    ASSERT_TRUE(trend.goodLow && trend.goodHigh); // the band is the playbook's for a 7-iron
}

TEST_F(PlayerHistoryTest, OtherKindsOfSwingAndOtherMethodsStayApart) {
    const auto a = lesson("2026-11-03"), b = lesson("2026-11-24");
    swing(a, "stance_width_ratio", 1.0, 0.03, 1);
    swing(b, "stance_width_ratio", 1.2, 0.03, 2);
    swing(b, "stance_width_ratio", 1.3, 0.03, 2);
    swing(b, "stance_width_ratio", 0.9, 0.03, 2, 9);
    const auto h = history();
    ASSERT_EQ(h.kinds().size(), 2U);
    EXPECT_EQ(h.kinds()[0].club->number, std::optional(7)); // the most frequent first
    const auto trend = h.trend(book(), h.kinds()[0], h.choices(book(), h.kinds()[0])[0]);
    ASSERT_EQ(trend.points.size(), 1U); // method 1 cannot be compared with method 2
    EXPECT_EQ(trend.leftOut, 1);
    EXPECT_EQ(trend.points[0].spread.swings, 2);
    EXPECT_FALSE(trend.change);
    ASSERT_EQ(h.swings().size(), 4U);
    EXPECT_EQ(h.swings().front().day, "2026-11-24");
}

TEST_F(PlayerHistoryTest, AChildHasNoAdultBand) {
    session::BodyBook body(*library_, clock_);
    records::BodyCard card;
    card.birthYear = 2016;
    ASSERT_TRUE(body.keep(player_, card).ok());
    swing(lesson("2026-11-24"), "stance_width_ratio", 1.2, 0.03);
    const auto h = history();
    const auto trend = h.trend(book(), h.kinds()[0], h.choices(book(), h.kinds()[0])[0]);
    EXPECT_EQ(trend.points.size(), 1U);
    EXPECT_FALSE(trend.goodLow || trend.goodHigh);
}

TEST_F(PlayerHistoryTest, TheNextLessonOpensWithTheLastPlanAndWhatWasPractised) {
    session::CoachDesk desk(*library_, book(), clock_);
    const auto nothing = session::nextLessonOpener(*library_, desk, player_, "2026-11-25");
    ASSERT_TRUE(nothing.ok());
    EXPECT_FALSE(nothing->plan);

    const auto last = lesson("2026-11-20");
    records::Plan plan;
    records::PlanItem item;
    item.feel = "wide and quiet";
    plan.items.push_back(item);
    ASSERT_TRUE(library_->add({library_->make(records::kind::plan, {player_, last}, bodyOf(plan))}).ok());
    session::BodyBook body(*library_, clock_);
    const auto practise = [&](const std::string& day, int count, const std::string& what) {
        records::Practice p;
        p.day = day;
        p.repetitions = count;
        p.what = what;
        ASSERT_TRUE(body.log(player_, p).ok());
    };
    practise("2026-11-19", 50, "balls"); // before the plan
    practise("2026-11-21", 20, "balls");
    practise("2026-11-22", 30, "rehearsals");
    const auto opener = session::nextLessonOpener(*library_, desk, player_, "2026-11-25");
    ASSERT_TRUE(opener.ok());
    ASSERT_TRUE(opener->plan);
    EXPECT_EQ(opener->plan->items[0].feel, "wide and quiet");
    EXPECT_EQ(opener->planDay, "2026-11-20");
    EXPECT_EQ(opener->balls, 20);
    EXPECT_EQ(opener->rehearsals, 30);

    // Once today's lesson is there, it is compared with the one that made the plan.
    lesson("2026-11-25");
    const auto begun = session::nextLessonOpener(*library_, desk, player_, "2026-11-25");
    ASSERT_TRUE(begun.ok());
    ASSERT_TRUE(begun->plan);
    EXPECT_EQ(begun->planDay, "2026-11-20");
}

TEST_F(PlayerHistoryTest, TheLastSwingIsRememberedAndItsRateCanBeTold) {
    EXPECT_FALSE(*session::lastSwingOf(*library_, player_));
    const auto before = lesson("2026-11-03"), now = lesson("2026-11-24");
    swing(now, "stance_width_ratio", 1.1, 0.03, 1, 9);
    swing(before, "stance_width_ratio", 1.1, 0.03, 1, 5); // made later, but of an earlier day
    lesson("2026-11-25");                                 // nothing was filmed in it
    const auto last = *session::lastSwingOf(*library_, player_);
    ASSERT_TRUE(last);
    EXPECT_EQ(last->club, std::optional(marks::Club{marks::ClubKind::iron, 9}));
    EXPECT_EQ(last->view, marks::View::faceOn);

    const auto clip = library_->clips(library_->shots(now)->front().id)->front().id;
    ASSERT_TRUE(session::tellCaptureRate(*library_, clip, 240).ok());
    EXPECT_EQ((*library_->clip(clip))->clip.captureFpsTold, std::optional(240.0));
    ASSERT_TRUE(session::tellCaptureRate(*library_, clip, 120).ok()); // corrected: no dispute with itself
    EXPECT_EQ((*library_->clip(clip))->clip.captureFpsTold, std::optional(120.0));
    EXPECT_FALSE((*library_->clip(clip))->needsYou);
    EXPECT_EQ(session::tellCaptureRate(*library_, clip, 0).error().key, "record.bad_value");
    EXPECT_EQ(session::tellCaptureRate(*library_, player_, 240).error().key, "book.no_such_thing");
}
