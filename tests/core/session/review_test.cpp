// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/review_desk.h"

#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>

#include "base/files.h"
#include "records/consent.h"
#include "records/review_edit.h"
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

double secondsOf(const video::Sound& sound) {
    return sound.start.value() + static_cast<double>(sound.samples.size()) / sound.rate;
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

// A voice of four tones, each in a second of its own (an AAC coder keeps tones); what is heard is told by
// counting the zero crossings.
TEST_F(Reviews, EditsCutTheVoiceInStepAndCanBeTakenBack) {
    const auto tones = [](std::vector<double> pitches, double seconds) {
        video::Sound sound{24'000, {}, {}};
        for (const double pitch : pitches) {
            for (int i = 0; i < static_cast<int>(24'000 * seconds); ++i) {
                sound.samples.push_back(
                    0.5F * static_cast<float>(std::sin(2 * 3.14159265358979 * pitch * i / 24'000)));
            }
        }
        return sound;
    };
    const auto pitchAt = [](const video::Sound& sound, double at) {
        const auto from = static_cast<std::size_t>((at - sound.start.value()) * sound.rate);
        int crossings = 0;
        for (std::size_t i = from; i < from + 2400 && i + 1 < sound.samples.size(); ++i) {
            crossings += (sound.samples[i] < 0.0F) != (sound.samples[i + 1] < 0.0F);
        }
        return crossings * 5.0; // of a tenth of a second
    };
    ReviewDesk desk(*library_, nullptr);
    EXPECT_EQ(desk.undo(*lesson_).error().key, "review.nothing_before");
    records::Review review = made();
    review.lengthMs = 4000;
    ASSERT_TRUE(desk.keepHeard(*lesson_, review, tones({300, 600, 900, 1200}, 1.0)));
    const auto whole = **desk.review(*lesson_);
    EXPECT_FALSE(*desk.canUndo(*lesson_));

    ASSERT_TRUE(desk.edit(*lesson_, [](const auto& r) { return records::cutOut(r, 1000, 2000); }));
    ASSERT_TRUE(desk.edit(*lesson_, [](const auto& r) { return records::paused(r, 2000, 500); }));
    records::Review again;
    again.lengthMs = 800;
    again.acts = {made().acts[0]};
    ASSERT_TRUE(desk.recordAgain(*lesson_, 500, 1000, again, tones({1500}, 0.8)));
    const auto edited = **desk.review(*lesson_);
    EXPECT_EQ(edited.lengthMs, 3800);
    // 0-0.5 the first tone, 0.5-1.3 the new one, 1.3-2.3 the third, 2.3-2.8 silence, then the fourth.
    const auto heard = desk.voice(edited);
    ASSERT_TRUE(heard && *heard);
    for (const auto& [at, pitch] : {std::pair{0.1, 300.0},
                                    {0.38, 300.0},
                                    {0.52, 1500.0},
                                    {1.18, 1500.0},
                                    {1.32, 900.0},
                                    {2.18, 900.0},
                                    {2.82, 1200.0},
                                    {3.6, 1200.0}}) {
        EXPECT_NEAR(pitchAt(**heard, at), pitch, 15.0) << at;
    }
    for (std::size_t i = 24 * 2310; i < 24 * 2790; ++i) {
        ASSERT_LT(std::abs((*heard)->samples[i]), 1e-3F) << i;
    }

    // It travels with the edits; to others without what was cut: no word of the second tone is in the file.
    const fs::path file = dir_ / "lesson.plumbmark";
    ASSERT_TRUE(
        LessonExchange(*library_).exportLesson(*lesson_, file, {.audience = Audience::ownDevice}, {}));
    const auto own = open("own");
    ASSERT_TRUE(LessonExchange(*own).import(file, {}));
    ReviewDesk there(*own, nullptr);
    EXPECT_EQ(bodyOf(**there.review(*lesson_)), bodyOf(edited));
    const auto played = there.voice(edited);
    ASSERT_TRUE(played && *played);
    EXPECT_EQ((*played)->samples, (*heard)->samples);
    ASSERT_TRUE(there.undo(*lesson_)) << "undo works on the other device too";
    EXPECT_EQ((*there.review(*lesson_))->lengthMs, 3500);

    // Step by step back to the beginning, and a new edit forgets nothing.
    ASSERT_TRUE(desk.undo(*lesson_));
    EXPECT_EQ((*desk.review(*lesson_))->lengthMs, 3500);
    ASSERT_TRUE(desk.undo(*lesson_));
    ASSERT_TRUE(desk.undo(*lesson_));
    EXPECT_EQ(bodyOf(**desk.review(*lesson_)), bodyOf(whole));
    EXPECT_FALSE(desk.undo(*lesson_));
    ASSERT_TRUE(desk.edit(*lesson_, [](const auto& r) { return records::trimmed(r, 0, 1500); }));
    ASSERT_TRUE(desk.undo(*lesson_));
    EXPECT_EQ(bodyOf(**desk.review(*lesson_)), bodyOf(whole));
    EXPECT_EQ(desk.edit(*lesson_, [](const auto& r) { return records::cutOut(r, 0, 4000); }).error().key,
              "review.edit");
}

TEST_F(Reviews, WhatWasCutOutGoesToNobodyElse) {
    records::Consent consent;
    consent.scopes = {std::string(records::scope::share)};
    consent.day = base::isoDate(base::systemClock().now());
    consent.until = base::isoDate(base::systemClock().now() + 30LL * 24 * 3600 * 1000);
    ASSERT_TRUE(LessonExchange(*library_).noteConsent((*library_->entity(*lesson_))->path.front(), consent));
    ReviewDesk desk(*library_, nullptr);
    video::Sound voice{24'000, {}, std::vector<float>(48'000, 0.0F)};
    for (std::size_t i = 24'000; i < 48'000; ++i) { // the second second must not be heard by others
        voice.samples[i] = 0.6F * static_cast<float>(std::sin(static_cast<double>(i) * 0.3));
    }
    ASSERT_TRUE(desk.keepHeard(*lesson_, made(), voice));
    for (const bool middle : {false, true}) {
        ASSERT_TRUE(desk.edit(*lesson_, [&](const auto& r) {
            return middle ? records::cutOut(r, 900, 2000) : records::trimmed(r, 0, 950);
        }));
        const fs::path file = dir_ / (middle ? "b.plumbmark" : "a.plumbmark");
        ASSERT_TRUE(LessonExchange(*library_).exportLesson(*lesson_, file, {.withFilms = false}, {}));
        const auto other = open(middle ? "otherB" : "otherA");
        ASSERT_TRUE(LessonExchange(*other).import(file, {}));
        const auto voices = other->factsOf(*lesson_, records::kind::voice);
        ASSERT_EQ(voices->size(), 1U);
        const auto kept = records::voiceOf(voices->front().body);
        const auto sound = video::loadSound(video::fromBytes(kept->bytes));
        ASSERT_TRUE(sound);
        EXPECT_LT(secondsOf(*sound), 1.0);
        for (const float sample : sound->samples) {
            ASSERT_LT(std::abs(sample), 0.05F);
        }
        EXPECT_EQ(other->factsOf(*lesson_, records::kind::review)->size(), 1U);
        ASSERT_TRUE(ReviewDesk(*other, nullptr).review(*lesson_));
        EXPECT_TRUE(records::hasVoice(**ReviewDesk(*other, nullptr).review(*lesson_)));
        ASSERT_TRUE(desk.undo(*lesson_)); // the words cut anew
        ASSERT_TRUE(desk.undo(*lesson_)); // the cut
        EXPECT_EQ((*desk.review(*lesson_))->lengthMs, 2000) << "here nothing is lost";
    }
}

TEST_F(Reviews, StarredInstantsMakeTheLessonSoFar) {
    ReviewDesk desk(*library_, nullptr);
    EXPECT_EQ(desk.lessonSoFar(*lesson_).error().key, "review.no_stars");
    ASSERT_TRUE(desk.star(*clip_, base::Seconds{0.3}, true));
    ASSERT_TRUE(desk.star(*clip_, base::Seconds{0.1}, true));
    ASSERT_TRUE(desk.star(*clip_, base::Seconds{0.302}, true)) << "the same instant";
    ASSERT_TRUE(desk.star(*clip_, base::Seconds{0.45}, true));
    ASSERT_TRUE(desk.star(*clip_, base::Seconds{0.449}, false));
    EXPECT_EQ(desk.star(*clip_, base::Seconds{9.0}, true).error().key, "record.bad_value");
    EXPECT_EQ(desk.star(*lesson_, base::Seconds{0.1}, true).error().kind, base::ErrorKind::input);
    const auto stars = desk.stars(*lesson_);
    ASSERT_EQ(stars->size(), 2U);
    EXPECT_EQ((*stars)[0].time, base::Seconds{0.1});
    records::Review note;
    note.saw = "narrow";
    ASSERT_TRUE(desk.keep(*lesson_, note, std::nullopt));
    ASSERT_TRUE(desk.lessonSoFar(*lesson_));
    const auto review = **desk.review(*lesson_);
    EXPECT_EQ(review.lengthMs, 6000);
    EXPECT_EQ(review.saw, "narrow");
    EXPECT_EQ(viewAt(review, 1000).time, base::Seconds{0.1});
    EXPECT_EQ(viewAt(review, 4000).time, base::Seconds{0.3});
    EXPECT_TRUE(viewAt(review, 4000).marks);
    ASSERT_EQ(review.captions.size(), 2U);
    EXPECT_EQ(review.captions[0].text, "Swing 1");
    // Finished later: a stretch of it done again with a voice.
    records::Review again = made();
    again.captions.clear();
    ASSERT_TRUE(desk.recordAgain(*lesson_, 3000, 6000, again,
                                 video::Sound{24'000, {}, std::vector<float>(24'000, 0.1F)}));
    EXPECT_EQ((*desk.review(*lesson_))->lengthMs, 5000);
    EXPECT_TRUE(records::hasVoice(**desk.review(*lesson_)));
    // And they travel.
    const fs::path file = dir_ / "stars.plumbmark";
    ASSERT_TRUE(
        LessonExchange(*library_).exportLesson(*lesson_, file, {.audience = Audience::ownDevice}, {}));
    const auto other = open("stars");
    ASSERT_TRUE(LessonExchange(*other).import(file, {}));
    EXPECT_EQ(ReviewDesk(*other, nullptr).stars(*lesson_)->size(), 2U);
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
