// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/references.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "session/lesson_book.h"

using namespace plumbmark;
using Why = session::Reference::Why;
namespace fs = std::filesystem;

namespace {

class References : public ::testing::Test {
  protected:
    void SetUp() override {
        stage_ = std::make_unique<base::StagingFolder>(
            *base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test"));
        library_ = std::move(store::Library::open({stage_->path() / "library", &clock_, &base::randomIds()}))
                       .value();
        kim_ = *session::LessonBook(*library_).addPlayer({"Kim", marks::Hand::right, 1.68, ""});
        lee_ = *session::LessonBook(*library_).addPlayer({"Lee", marks::Hand::left, 1.80, ""});
    }
    base::Id lesson(const base::Id& player, const std::string& day) {
        records::Lesson l;
        l.title = "Lesson";
        l.day = day;
        return *session::LessonBook(*library_).addLesson(player, l);
    }
    /// `good` checks of ten are good, `unknown` cannot be told, the rest is to be worked on.
    base::Id swing(const base::Id& player, const base::Id& lesson, int good, int unknown, int club = 7,
                   marks::View view = marks::View::faceOn) {
        records::Shot shot;
        shot.club = marks::Club{marks::ClubKind::iron, club};
        const auto id = *session::LessonBook(*library_).addShot(lesson, shot);
        const fs::path film = stage_->path() / ("film" + std::to_string(films_++));
        std::ofstream(film) << film;
        const auto kept = library_->addFilm(film);
        records::Clip clip;
        clip.sha256 = kept->sha256;
        clip.bytes = kept->bytes;
        clip.view = view;
        clip.width = 1280, clip.height = 720, clip.frames = 10;
        const std::vector<base::Id> path{player, lesson, id};
        const auto made = library_->make(records::kind::clip, path, bodyOf(clip));
        records::Findings f;
        for (int i = 0; i < 10; ++i) {
            f.checkpoints.push_back({"check" + std::to_string(i), std::nullopt,
                                     i < good            ? "good"
                                     : i >= 10 - unknown ? "unknown"
                                                         : "work",
                                     0.5, 0.0, 0.5});
        }
        auto below = path;
        below.push_back(made.id);
        EXPECT_TRUE(library_->add({made, library_->make(records::kind::findings, below, bodyOf(f))}).ok());
        return made.id;
    }

    base::FixedClock clock_{*base::fromIso("2026-11-25T09:00:00Z")};
    std::unique_ptr<base::StagingFolder> stage_;
    std::unique_ptr<store::Library> library_;
    base::Id kim_{base::Id::Bytes{}}, lee_{base::Id::Bytes{}};
    int films_ = 0;
};

} // namespace

TEST_F(References, TheOwnBestComesFirstThenTheOthersAndEachSaysWhy) {
    const auto october = lesson(kim_, "2026-10-01"), today = lesson(kim_, "2026-11-25");
    const auto fine = swing(kim_, october, 8, 0);   // 8 of 10
    const auto plain = swing(kim_, october, 5, 0);  // 5 of 10
    const auto scarce = swing(kim_, october, 2, 8); // 2 of 2: too little was told
    const auto driver = swing(kim_, october, 10, 0, 5);
    swing(kim_, october, 10, 0, 7, marks::View::downTheLine);
    const auto now = swing(kim_, today, 4, 0), beside = swing(kim_, today, 3, 0);
    const auto lees = swing(lee_, lesson(lee_, "2026-11-20"), 9, 0);
    swing(lee_, lesson(lee_, "2026-11-21"), 9, 0, 5); // somebody else's other club: of no use

    const auto list = session::referencesFor(*library_, now);
    ASSERT_TRUE(list.ok()) << list.error().sentence;
    std::vector<std::pair<base::Id, Why>> got;
    for (const auto& r : *list) {
        got.emplace_back(r.clip, r.why);
    }
    const std::vector<std::pair<base::Id, Why>> wanted{{fine, Why::own_best},     {beside, Why::same_lesson},
                                                       {plain, Why::other_day},   {scarce, Why::other_day},
                                                       {driver, Why::other_club}, {lees, Why::other_player}};
    EXPECT_EQ(got, wanted);
    EXPECT_EQ(list->front().good, 8);
    EXPECT_EQ(list->front().told, 10);
    EXPECT_EQ(list->back().playerName, "Lee");
}

TEST_F(References, OfTwoAlikeTheNewerIsTheBest) {
    const auto october = lesson(kim_, "2026-10-01"), november = lesson(kim_, "2026-11-01");
    swing(kim_, october, 8, 0);
    const auto newer = swing(kim_, november, 8, 0);
    const auto now = swing(kim_, lesson(kim_, "2026-11-25"), 4, 0);
    const auto list = session::referencesFor(*library_, now);
    ASSERT_TRUE(list.ok());
    EXPECT_EQ(list->front().clip, newer);
}

TEST_F(References, AloneThereIsNothingAndNothingOfNothingIsToldPlainly) {
    const auto now = swing(kim_, lesson(kim_, "2026-11-25"), 4, 0);
    const auto list = session::referencesFor(*library_, now);
    ASSERT_TRUE(list.ok());
    EXPECT_TRUE(list->empty());
    const auto none = session::referencesFor(*library_, kim_);
    ASSERT_FALSE(none.ok());
    EXPECT_EQ(none.error().key, "book.no_such_thing");
}
