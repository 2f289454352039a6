// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/review_desk.h"

#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>

#include "base/files.h"
#include "session/clip_intake.h"
#include "session/lesson_book.h"
#include "session/lesson_exchange.h"
#include "video/voice.h"
#include "video/writer.h"

using namespace plumbmark;
using namespace plumbmark::session;
namespace fs = std::filesystem;

namespace {

/// A film of half a second with a tone that begins at 0.25 s.
void film(const fs::path& path) {
    video::WriterOptions options;
    options.width = 160;
    options.height = 120;
    options.fps = 60;
    options.soundRate = 48'000;
    auto writer = video::ClipWriter::create(path, options);
    ASSERT_TRUE(writer) << writer.error().sentence;
    for (int f = 0; f < 30; ++f) {
        const video::RgbImage picture{
            160, 120, std::vector<std::uint8_t>(160 * 120 * 3, static_cast<std::uint8_t>(80 + f))};
        ASSERT_TRUE((*writer)->write(picture));
    }
    std::vector<float> tone(24'000, 0.0F);
    for (std::size_t i = 12'000; i < tone.size(); ++i) {
        tone[i] = 0.7F * static_cast<float>(std::sin(static_cast<double>(i) * 0.2));
    }
    ASSERT_TRUE((*writer)->writeSound(tone));
    ASSERT_TRUE((*writer)->finish());
}

class Reviews : public testing::Test {
  protected:
    Reviews()
        : stage_(*base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test")),
          dir_(stage_.path()), library_(open("library")) {
        LessonBook book(*library_);
        const auto player = book.addPlayer({"Kim", marks::Hand::right, 1.75, ""});
        lesson_ = book.addLesson(*player, {"First", "2026-11-25", "straighter", "I look up", ""}).value();
        const auto shot = book.addShot(*lesson_, {});
        film(dir_ / "swing.mp4");
        auto receipt = ClipIntake(*library_, nullptr).bringIn(*shot, dir_ / "swing.mp4", {}, {});
        EXPECT_TRUE(receipt && receipt->has_value());
        clip_ = (*receipt)->clip;
    }
    std::unique_ptr<store::Library> open(const std::string& name) {
        store::LibraryOptions options;
        options.folder = dir_ / name;
        auto library = store::Library::open(options);
        EXPECT_TRUE(library) << library.error().sentence;
        return std::move(*library);
    }
    records::Review made() const {
        records::Review review;
        review.lengthMs = 2000;
        records::ReviewAct go;
        go.act = records::Act::go;
        go.clip = clip_;
        records::ReviewAct play;
        play.act = records::Act::play;
        play.atMs = 500;
        play.speed = 0.25;
        review.acts = {go, play};
        review.captions = {{0, 1000, "Stand wider"}};
        review.saw = "narrow";
        review.next = "in two weeks";
        return review;
    }

    base::StagingFolder stage_;
    fs::path dir_;
    std::unique_ptr<store::Library> library_;
    std::optional<base::Id> lesson_, clip_;
};

} // namespace

TEST_F(Reviews, AReviewTravelsBetweenTwoLibraries) {
    ReviewDesk desk(*library_, nullptr);
    EXPECT_FALSE(*desk.review(*lesson_));
    // The voice: a film's sound does as well as a sound file.
    const auto kept = desk.keep(*lesson_, made(), dir_ / "swing.mp4");
    ASSERT_TRUE(kept) << kept.error().sentence;
    const auto here = desk.review(*lesson_);
    ASSERT_TRUE(here && *here);
    ASSERT_TRUE((*here)->voice);

    const fs::path file = dir_ / "lesson.plumbmark";
    ASSERT_TRUE(
        LessonExchange(*library_).exportLesson(*lesson_, file, {.audience = Audience::ownDevice}, {}));
    const auto other = open("other");
    ASSERT_TRUE(LessonExchange(*other).import(file, {}));
    const auto there = ReviewDesk(*other, nullptr).review(*lesson_);
    ASSERT_TRUE(there && *there);
    EXPECT_EQ(bodyOf(**there), bodyOf(**here));
    const auto voice = records::voiceOf((*other->fact(*(*there)->voice))->body);
    ASSERT_TRUE(voice);
    const auto sound = video::loadSound(video::fromBytes(voice->bytes));
    ASSERT_TRUE(sound) << sound.error().sentence;
    // Heard where it was said, after two lossy codings: the tone begins at 0.25 s.
    std::size_t first = 0;
    while (first < sound->samples.size() && std::abs(sound->samples[first]) < 0.3F) {
        ++first;
    }
    EXPECT_NEAR(sound->start.value() + static_cast<double>(first) / sound->rate, 0.25, 0.004);
}

TEST_F(Reviews, ANewReviewReplacesTheOldAndKeepsItsVoice) {
    ReviewDesk desk(*library_, nullptr);
    ASSERT_TRUE(desk.keep(*lesson_, made(), dir_ / "swing.mp4"));
    const auto voice = (*desk.review(*lesson_))->voice;
    records::Review trimmed = made();
    trimmed.lengthMs = 900;
    trimmed.captions.clear();
    ASSERT_TRUE(desk.keep(*lesson_, trimmed, std::nullopt));
    const auto now = *desk.review(*lesson_);
    ASSERT_TRUE(now);
    EXPECT_EQ(now->lengthMs, 900);
    EXPECT_EQ(now->voice, voice);

    records::Review foreign = made();
    foreign.acts[0].clip = *lesson_; // no clip of this lesson
    EXPECT_EQ(desk.keep(*lesson_, foreign, std::nullopt).error().key, "review.no_clip");
    EXPECT_EQ(desk.keep(*clip_, made(), std::nullopt).error().kind, base::ErrorKind::input);
    EXPECT_FALSE(desk.keep(*lesson_, made(), dir_ / "no.wav"));
    EXPECT_EQ((*desk.review(*lesson_))->lengthMs, 900) << "what was refused changed nothing";
    // Recorded again where nothing was heard: the old voice does not belong to it.
    ASSERT_TRUE(desk.keepHeard(*lesson_, made(), video::Sound{}));
    EXPECT_FALSE((*desk.review(*lesson_))->voice);
    EXPECT_FALSE(*desk.voice(**desk.review(*lesson_)));
    ASSERT_TRUE(desk.keep(*lesson_, made(), dir_ / "swing.mp4"));
    const auto heard = desk.voice(**desk.review(*lesson_));
    ASSERT_TRUE(heard && *heard);
    EXPECT_GT((*heard)->samples.size(), 1000U);
}

TEST_F(Reviews, ANoteNeedsNoVoice) {
    ReviewDesk desk(*library_, nullptr);
    records::Review note;
    note.saw = "narrow";
    ASSERT_TRUE(desk.keep(*lesson_, note, std::nullopt));
    EXPECT_EQ((*desk.story(*lesson_, {}, {}))->saw, "narrow");
    EXPECT_FALSE((*desk.review(*lesson_))->voice);
}

TEST_F(Reviews, TheStoryIsToldFromRecordsAlone) {
    ReviewDesk desk(*library_, nullptr);
    ASSERT_TRUE(desk.keep(*lesson_, made(), std::nullopt));
    records::Plan plan;
    plan.items.resize(1);
    plan.items[0].feel = "feel";
    plan.items[0].drill = "drill";
    plan.items[0].dose = "dose";
    const auto entity = library_->entity(*lesson_);
    std::vector<base::Id> path = (*entity)->path;
    path.push_back(*lesson_);
    ASSERT_TRUE(library_->add({library_->make(records::kind::plan, path, bodyOf(plan))}));
    const auto story = desk.story(*lesson_, {}, {});
    ASSERT_TRUE(story && *story);
    EXPECT_EQ((*story)->player, "Kim");
    EXPECT_EQ((*story)->wish, "straighter");
    EXPECT_EQ((*story)->saw, "narrow");
    EXPECT_EQ((*story)->next, "in two weeks");
    ASSERT_EQ((*story)->plan.items.size(), 1U);
    // A plan that tells about health goes into no page that others get.
    records::Object body = bodyOf(plan);
    body.emplace("health", true);
    const auto before = library_->factsOf(*lesson_, records::kind::plan);
    ASSERT_TRUE(library_->add({library_->make(records::kind::plan, path, body, {before->front().id})}));
    EXPECT_TRUE((*desk.story(*lesson_, {.withHealth = false}, {}))->plan.items.empty());
    EXPECT_EQ((*desk.story(*lesson_, {}, {}))->plan.items.size(), 1U);
    ASSERT_EQ((*story)->swings.size(), 1U);
    EXPECT_FALSE((*story)->swings[0].stills.empty());
    EXPECT_FALSE((*story)->swings[0].outcome->checkpoints.empty());
    // Without its film the lesson is still told.
    fs::remove((*library_->clip(*clip_))->file);
    const auto without = desk.story(*lesson_, {}, {});
    ASSERT_TRUE(without && *without);
    EXPECT_TRUE((*without)->swings[0].stills.empty());
    EXPECT_FALSE(desk.story(*clip_, {}, {}));
    const auto rows = desk.numbers(std::nullopt, *lesson_);
    ASSERT_TRUE(rows);
    EXPECT_FALSE(rows->empty());
    EXPECT_EQ(rows->front().player, "Kim");
}
