// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/inbox.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "base/files.h"
#include "session/lesson_book.h"
#include "session/lesson_exchange.h"

using namespace plumbmark;
using namespace plumbmark::session;
namespace fs = std::filesystem;

namespace {

class Inbox : public testing::Test {
  protected:
    Inbox()
        : stage_(*base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test")),
          library_(open("library")), desk_(*library_, clock_) {
        LessonBook book(*library_);
        player_ = *book.addPlayer({"Kim", marks::Hand::right, 1.75, ""});
        for (auto& lesson : lessons_) {
            lesson = *book.addLesson(*player_, {"Sent in", "2026-11-20", "", "", ""});
        }
    }
    std::unique_ptr<store::Library> open(const std::string& name) {
        store::LibraryOptions options;
        options.folder = stage_.path() / name;
        options.clock = &clock_;
        auto library = store::Library::open(options);
        EXPECT_TRUE(library) << library.error().sentence;
        return std::move(*library);
    }
    base::FixedClock clock_{*base::fromIso("2026-11-25T10:00:00.000Z")};
    base::StagingFolder stage_;
    std::unique_ptr<store::Library> library_;
    InboxDesk desk_;
    std::optional<base::Id> player_, lessons_[3];
};

} // namespace

TEST_F(Inbox, TellsWhoWaitsAndForHowLong) {
    EXPECT_TRUE(desk_.open()->empty());
    ASSERT_TRUE(desk_.wait(*lessons_[0]));
    ASSERT_TRUE(desk_.wait(*lessons_[1], "2026-11-28"));
    ASSERT_TRUE(desk_.wait(*lessons_[2], "2026-11-26"));
    clock_.set(*base::fromIso("2026-11-27T09:00:00.000Z"));
    const auto rows = desk_.open();
    ASSERT_TRUE(rows);
    ASSERT_EQ(rows->size(), 3U);
    EXPECT_EQ((*rows)[0].lesson.id, *lessons_[2]);
    EXPECT_EQ((*rows)[0].daysLeft, -1) << "overdue comes first";
    EXPECT_EQ((*rows)[1].daysLeft, 1);
    EXPECT_EQ((*rows)[2].daysLeft, std::nullopt);
    EXPECT_EQ((*rows)[2].days, 2);
    EXPECT_EQ((*rows)[0].lesson.playerName, "Kim");
}

TEST_F(Inbox, FilmingAgainKeepsThePromiseAndAnAnswerEndsIt) {
    ASSERT_TRUE(desk_.wait(*lessons_[0], "2026-11-28"));
    ASSERT_TRUE(desk_.filmAgain(*lessons_[0], "More light, please."));
    auto rows = desk_.open();
    ASSERT_EQ(rows->size(), 1U);
    EXPECT_EQ((*rows)[0].inbox.state, records::InboxState::film_again);
    EXPECT_EQ((*rows)[0].inbox.because, "More light, please.");
    EXPECT_EQ((*rows)[0].inbox.due, "2026-11-28");
    // It travels with the lesson.
    const fs::path file = stage_.path() / "lesson.plumbmark";
    ASSERT_TRUE(
        LessonExchange(*library_).exportLesson(*lessons_[0], file, {.audience = Audience::ownDevice}, {}));
    const auto other = open("other");
    ASSERT_TRUE(LessonExchange(*other).import(file, {}));
    EXPECT_EQ(InboxDesk(*other, clock_).open()->size(), 1U);
    ASSERT_TRUE(desk_.answered(*lessons_[0]));
    EXPECT_TRUE(desk_.open()->empty());
}

TEST_F(Inbox, AnAnswerTellsWhetherItWasOpenedWhenItReturns) {
    ASSERT_TRUE(desk_.wait(*lessons_[0], "2026-11-28"));
    ASSERT_TRUE(desk_.answered(*lessons_[0]));
    EXPECT_FALSE(*desk_.noteOpened(*lessons_[0])) << "one's own answer is no opening";
    ASSERT_EQ(desk_.answers()->size(), 1U);
    EXPECT_EQ(desk_.answers()->front().opened, std::nullopt);
    const fs::path there = stage_.path() / "there.plumbmark";
    const fs::path back = stage_.path() / "back.plumbmark";
    ASSERT_TRUE(
        LessonExchange(*library_).exportLesson(*lessons_[0], there, {.audience = Audience::ownDevice}, {}));
    const auto student = open("student");
    ASSERT_TRUE(LessonExchange(*student).import(there, {}));
    InboxDesk theirs(*student, clock_);
    EXPECT_TRUE(theirs.answers()->empty()) << "not the student's answer";
    // Back unopened: nothing is told.
    ASSERT_TRUE(
        LessonExchange(*student).exportLesson(*lessons_[0], back, {.audience = Audience::ownDevice}, {}));
    ASSERT_TRUE(LessonExchange(*library_).import(back, {}));
    EXPECT_EQ(desk_.answers()->front().opened, std::nullopt);
    clock_.set(*base::fromIso("2026-11-27T09:00:00.000Z"));
    EXPECT_TRUE(*theirs.noteOpened(*lessons_[0]));
    clock_.set(*base::fromIso("2026-11-29T09:00:00.000Z"));
    EXPECT_FALSE(*theirs.noteOpened(*lessons_[0])) << "once is enough";
    ASSERT_TRUE(
        LessonExchange(*student).exportLesson(*lessons_[0], back, {.audience = Audience::ownDevice}, {}));
    ASSERT_TRUE(LessonExchange(*library_).import(back, {}));
    EXPECT_EQ(desk_.answers()->front().opened, "2026-11-27");
    // A second answer is opened anew.
    ASSERT_TRUE(desk_.wait(*lessons_[0]));
    ASSERT_TRUE(desk_.answered(*lessons_[0]));
    EXPECT_EQ(desk_.answers()->front().opened, std::nullopt);
    EXPECT_FALSE(records::openedOf({{"answer", "x"}, {"day", "soon"}}));
}

TEST_F(Inbox, RefusesWhatMakesNoSense) {
    EXPECT_EQ(desk_.wait(*player_).error().key, "book.no_such_thing");
    EXPECT_EQ(desk_.wait(*lessons_[0], "tomorrow").error().key, "record.bad_value");
    EXPECT_EQ(desk_.wait(*lessons_[0], "2026-02-30").error().key, "record.bad_value");
    EXPECT_EQ(desk_.filmAgain(*lessons_[0], "\xff").error().key, "record.bad_value");
    EXPECT_TRUE(desk_.open()->empty());
    EXPECT_FALSE(records::inboxOf({{"state", "asleep"}, {"since", "2026-11-25"}}));
    EXPECT_FALSE(records::inboxOf({{"state", "waiting"}, {"since", "2026-11-25T00:00:00Z"}}));
}
