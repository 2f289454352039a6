// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/demonstration.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "base/files.h"
#include "records/consent.h"
#include "session/lesson_book.h"
#include "session/lesson_exchange.h"
#include "session/review_desk.h"
#include "session/stored_swings.h"
#include "video/writer.h"

using namespace plumbmark;
using namespace plumbmark::session;
namespace fs = std::filesystem;

namespace {

class Demonstrating : public testing::Test {
  protected:
    Demonstrating()
        : stage_(*base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test")),
          library_(open("library")) {
        LessonBook book(*library_);
        student_ = *book.addPlayer({"Kim", marks::Hand::right, 1.75, ""});
        other_ = *book.addPlayer({"Lee", marks::Hand::left, 1.75, ""});
        lesson_ = *book.addLesson(*student_, {"First", "2026-11-25", "", "", ""});
        records::Plan plan;
        plan.items.resize(2);
        plan.items[0].feel = "wider";
        plan.items[1].feel = "later";
        EXPECT_TRUE(
            library_->add({library_->make(records::kind::plan, {*student_, *lesson_}, bodyOf(plan))}));
        video::WriterOptions options;
        options.width = 160;
        options.height = 120;
        auto writer = video::ClipWriter::create(file_, options);
        for (int i = 0; i < 12; ++i) {
            EXPECT_TRUE((*writer)->write({160, 120, std::vector<std::uint8_t>(160 * 120 * 3, 90)}));
        }
        EXPECT_TRUE((*writer)->finish());
        records::Consent share;
        share.scopes = {std::string(records::scope::share)};
        share.day = "2026-11-25";
        share.until = "2026-12-25";
        EXPECT_TRUE(LessonExchange(*library_, clock_).noteConsent(*student_, share));
    }
    std::unique_ptr<store::Library> open(const std::string& name) {
        store::LibraryOptions options;
        options.folder = stage_.path() / name;
        options.clock = &clock_;
        auto library = store::Library::open(options);
        EXPECT_TRUE(library) << library.error().sentence;
        return std::move(*library);
    }
    base::Result<lessonfile::Summary> sent(const std::string& name) {
        return LessonExchange(*library_, clock_).exportLesson(*lesson_, stage_.path() / name, {}, {});
    }
    base::FixedClock clock_{*base::fromIso("2026-11-25T10:00:00.000Z")};
    base::StagingFolder stage_;
    fs::path file_ = stage_.path() / "drill.mp4";
    std::unique_ptr<store::Library> library_;
    std::optional<base::Id> student_, other_, lesson_;
};

} // namespace

TEST_F(Demonstrating, TheCoachsClipTravelsWithThePlanAndIsNoSwing) {
    Demonstrations desk(*library_, clock_);
    EXPECT_EQ(desk.attach(*lesson_, 2, {file_}, {}).error().key, "demonstration.no_plan");
    EXPECT_EQ(desk.attach(*student_, 0, {file_}, {}).error().kind, base::ErrorKind::input);
    EXPECT_FALSE(desk.attach(*lesson_, 0, {stage_.path() / "no.mp4"}, {}));
    EXPECT_TRUE(library_->shots(*lesson_)->empty()) << "what was refused left nothing";
    const auto clip = desk.attach(*lesson_, 1, {file_, marks::View::downTheLine, marks::Hand::left}, {});
    ASSERT_TRUE(clip && *clip);
    const auto rows = desk.list(*lesson_);
    ASSERT_EQ(rows->size(), 1U);
    EXPECT_EQ((*rows)[0].priority, 1U);
    EXPECT_TRUE((*rows)[0].filmHere);
    EXPECT_TRUE(storedSwings(*library_, *lesson_)->empty());
    const auto story = ReviewDesk(*library_, nullptr).story(*lesson_, {}, {});
    EXPECT_TRUE((*story)->swings.empty()) << "the sheet tells the student's swings only";
    EXPECT_TRUE(ReviewDesk(*library_, nullptr).clips(*lesson_)->front().demonstration);

    ASSERT_TRUE(sent("lesson.plumbmark"));
    const auto there = open("there");
    ASSERT_TRUE(LessonExchange(*there, clock_).import(stage_.path() / "lesson.plumbmark", {}));
    const auto arrived = Demonstrations(*there, clock_).list(*lesson_);
    ASSERT_EQ(arrived->size(), 1U);
    EXPECT_EQ((*arrived)[0].clip, **clip);
    EXPECT_TRUE((*arrived)[0].filmHere);
    ASSERT_TRUE(desk.takeAway(*lesson_, 1));
    EXPECT_TRUE(desk.list(*lesson_)->empty());
}

TEST_F(Demonstrating, AnotherPlayersClipIsShownOnlyWithTheirConsent) {
    LessonBook book(*library_);
    const auto theirs = book.addLesson(*other_, {"Theirs", "2026-11-20", "", "", ""});
    const auto shot = book.addShot(*theirs, {});
    const auto film = library_->addFilm(file_);
    records::Clip clip;
    clip.sha256 = film->sha256;
    clip.bytes = film->bytes;
    clip.width = 160;
    clip.height = 120;
    clip.frames = 12;
    const records::Fact fact = library_->make(records::kind::clip, {*other_, *theirs, *shot}, bodyOf(clip));
    ASSERT_TRUE(library_->add({fact}));
    Demonstrations desk(*library_, clock_);
    EXPECT_EQ(desk.attach(*lesson_, 0, fact.id, {}).error().key, "consent.missing");
    records::Consent teach;
    teach.scopes = {std::string(records::scope::teach)};
    teach.day = "2026-11-25";
    teach.until = "2026-12-01";
    ASSERT_TRUE(LessonExchange(*library_, clock_).noteConsent(*other_, teach));
    ASSERT_TRUE(desk.attach(*lesson_, 0, fact.id, {}));
    ASSERT_TRUE(sent("a.plumbmark"));
    // Nothing else of the other player went along.
    const auto there = open("there");
    ASSERT_TRUE(LessonExchange(*there, clock_).import(stage_.path() / "a.plumbmark", {}));
    EXPECT_EQ(there->players()->size(), 1U);
    // Taken back: the lesson stays here, it does not go out with that film any more.
    teach.withdrawn = true;
    ASSERT_TRUE(LessonExchange(*library_, clock_).noteConsent(*other_, teach));
    EXPECT_EQ(sent("b.plumbmark").error().key, "consent.withdrawn");
    EXPECT_FALSE(fs::exists(stage_.path() / "b.plumbmark"));
}
