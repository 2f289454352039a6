// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// What travels: films without place and device, with the head covered, and that two devices still hold one
// clip.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "base/files.h"
#include "base/hash.h"
#include "exporting/head_cover.h"
#include "records/film_copy.h"
#include "session/clip_intake.h"
#include "session/disagreements.h"
#include "session/film_sharing.h"
#include "session/folder_sync.h"
#include "session/lesson_book.h"
#include "session/lesson_exchange.h"
#include "session/retention.h"
#include "session/swing_desk.h"
#include "video/clip.h"
#include "video/writer.h"

using namespace plumbmark;
using namespace plumbmark::session;
using marks::Landmark;
namespace fs = std::filesystem;

namespace {

constexpr int kFrames = 24;

std::string contentOf(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}
bool holds(const fs::path& folder, const std::string& text) {
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.is_regular_file() && contentOf(entry.path()).find(text) != std::string::npos) {
            return true;
        }
    }
    return false;
}

/// A light head over a dark body on a grey ground, moving to the right; behind it, in a box of its own as
/// some recorders write it, where it was taken.
void film(const fs::path& path) {
    video::WriterOptions options;
    options.width = 160;
    options.height = 240;
    options.fps = 60;
    auto writer = video::ClipWriter::create(path, options);
    ASSERT_TRUE(writer) << writer.error().sentence;
    for (int f = 0; f < kFrames; ++f) {
        video::RgbImage picture{160, 240, std::vector<std::uint8_t>(160 * 240 * 3, 120)};
        const auto fill = [&](int left, int top, int right, int bottom, std::uint8_t value) {
            for (int y = top; y < bottom; ++y) {
                for (int x = left * 3; x < right * 3; ++x) {
                    picture.pixels[static_cast<std::size_t>(y * 160 * 3 + x)] = value;
                }
            }
        };
        fill(60 + f, 60, 90 + f, 220, 50);
        fill(64 + f, 30, 86 + f, 58, 230);
        ASSERT_TRUE((*writer)->write(picture));
    }
    ASSERT_TRUE((*writer)->finish());
    const std::string canary = "CANARY+11.2233+044.5566/";
    std::ofstream out(path, std::ios::binary | std::ios::app);
    const auto size = static_cast<std::uint32_t>(canary.size() + 8);
    for (int shift = 24; shift >= 0; shift -= 8) {
        out.put(static_cast<char>(size >> shift));
    }
    out << "free" << canary;
}

struct Device {
    explicit Device(const fs::path& folder) {
        store::LibraryOptions options;
        options.folder = folder;
        auto opened = store::Library::open(options);
        EXPECT_TRUE(opened) << opened.error().sentence;
        library = std::move(*opened);
        book = std::make_unique<LessonBook>(*library);
        exchange = std::make_unique<LessonExchange>(*library);
    }
    [[nodiscard]] store::ClipRow clip(const base::Id& id) const { return **library->clip(id); }
    std::unique_ptr<store::Library> library;
    std::unique_ptr<LessonBook> book;
    std::unique_ptr<LessonExchange> exchange;
};

class Sharing : public testing::Test {
  protected:
    void SetUp() override {
        player_ = *coach_.book->addPlayer({"Kim", marks::Hand::right, 1.75, ""});
        lesson_ = *coach_.book->addLesson(player_, {"First", "2026-11-25", "", "", ""});
        const auto shot = coach_.book->addShot(lesson_, {});
        film(dir_ / "film.mp4");
        ClipIntake intake(*coach_.library, nullptr);
        const auto receipt = intake.bringIn(*shot, dir_ / "film.mp4", {}, {});
        ASSERT_TRUE(receipt) << receipt.error().sentence;
        clip_ = (*receipt)->clip;
        agree(false, {"film", "share"});
    }
    void agree(bool minor, std::set<std::string, std::less<>> scopes) {
        records::Consent consent;
        consent.scopes = std::move(scopes);
        consent.day = base::isoDate(base::systemClock().now());
        consent.until = base::isoDate(base::systemClock().now() + 300LL * 24 * 3600 * 1000);
        consent.minor = minor;
        consent.guardian = minor ? "Kim's mother" : "";
        const auto noted = coach_.exchange->noteConsent(player_, consent);
        ASSERT_TRUE(noted) << noted.error().sentence;
    }
    void markTheHead() {
        SwingDesk desk(*coach_.library, nullptr);
        ASSERT_TRUE(desk.open(clip_, {}));
        for (const int frame : {0, 8, 16, kFrames - 1}) {
            for (const auto& [point, at] : {std::pair{Landmark::head_centre, base::Vec2{75.0 + frame, 44.0}},
                                            {Landmark::lead_ankle, base::Vec2{75.0 + frame, 218.0}}}) {
                desk.beginDrag(frame, point);
                desk.moveDrag(at);
                ASSERT_TRUE(desk.finishDrag());
            }
        }
    }
    std::string shareKey(LessonExchange::ExportOptions options = {}) {
        options.withPage = false;
        fs::remove(file_);
        const auto written = coach_.exchange->exportLesson(lesson_, file_, options, {});
        return written ? "" : written.error().key;
    }

    base::StagingFolder stage_ = *base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test");
    fs::path dir_ = stage_.path();
    fs::path file_ = dir_ / "out.plumbmark";
    Device coach_{dir_ / "coach"};
    base::Id player_{base::Id::Bytes{}}, lesson_{base::Id::Bytes{}}, clip_{base::Id::Bytes{}};
};

} // namespace

TEST_F(Sharing, AFilmGoesToOthersWithoutPlaceAndComesBackAsTheSameClip) {
    const std::string original = coach_.clip(clip_).film;
    ASSERT_EQ(shareKey(), "");
    EXPECT_EQ(contentOf(file_).find("CANARY"), std::string::npos);
    EXPECT_NE(contentOf(coach_.clip(clip_).file).find("CANARY"), std::string::npos)
        << "here it stays as it was";
    const auto before = *coach_.library->allLines();
    ASSERT_EQ(shareKey(), "");
    EXPECT_EQ(*coach_.library->allLines(), before) << "sharing again says nothing new";

    Device student(dir_ / "student");
    const auto taken = student.exchange->import(file_, {});
    ASSERT_TRUE(taken) << taken.error().sentence;
    EXPECT_EQ(taken->filmsNew, 1);
    const store::ClipRow there = student.clip(clip_);
    EXPECT_TRUE(there.filmHere);
    EXPECT_EQ(there.clip.sha256, original) << "the clip is the same clip";
    EXPECT_NE(there.film, original) << "its bytes are those of the copy";
    EXPECT_EQ(base::sha256OfFile(there.file)->sha256, there.film);
    EXPECT_FALSE(holds(dir_ / "student", "CANARY"));
    EXPECT_EQ(student.library->clipsOfFilm(there.film)->size(), 1U);
    EXPECT_EQ(*student.library->check(true), std::vector<std::string>());
    const auto a = video::Clip::open(coach_.clip(clip_).file), b = video::Clip::open(there.file);
    ASSERT_TRUE(a && b);
    EXPECT_EQ((*a)->info().frames, (*b)->info().frames);
    // The desk opens it there, and the student's marks come home.
    SwingDesk desk(*student.library, nullptr);
    ASSERT_TRUE(desk.open(clip_, {}));
    desk.beginDrag(3, Landmark::nose);
    desk.moveDrag({80, 50});
    ASSERT_TRUE(desk.finishDrag());
    const fs::path back = dir_ / "back.plumbmark";
    ASSERT_TRUE(student.exchange->exportLesson(lesson_, back, {.withPage = false}, {}));
    const auto home = coach_.exchange->import(back, {});
    ASSERT_TRUE(home) << home.error().sentence;
    EXPECT_EQ(home->records.added, 1) << "the mark; the copy is known";
    EXPECT_EQ(home->filmsSame, 1);
    EXPECT_EQ(home->filmsNew, 0);
    EXPECT_EQ(coach_.clip(clip_).film, original) << "the original is still the one that is shown";
    for (int i = 0; i < 5; ++i) {
        const auto again = coach_.exchange->import(back, {});
        ASSERT_TRUE(again);
        EXPECT_EQ(again->records.added + again->filmsNew, 0);
    }
    // A device of one's own gets the film as it is.
    ASSERT_EQ(shareKey({.audience = Audience::ownDevice}), "");
    EXPECT_NE(contentOf(file_).find("CANARY"), std::string::npos);
    // Erasing takes the copy with it.
    ASSERT_TRUE(student.library->erase(player_));
    EXPECT_FALSE(fs::exists(there.file));
}

TEST_F(Sharing, AFolderOfOneStudentGetsBareFilmsToo) {
    const fs::path shared = dir_ / "shared";
    fs::create_directories(shared);
    FolderSync::Options options;
    options.folder = shared;
    options.player = player_;
    const auto sent = FolderSync(*coach_.library).run(options);
    ASSERT_TRUE(sent) << sent.error().sentence;
    EXPECT_EQ(sent->notes, std::vector<std::string>());
    EXPECT_FALSE(holds(shared, "CANARY"));
    const auto again = FolderSync(*coach_.library).run(options);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->filesSent + again->filesTakenBack, 0);
    Device student(dir_ / "student");
    FolderSync::Options reading;
    reading.folder = shared;
    ASSERT_TRUE(FolderSync(*student.library).run(reading));
    EXPECT_TRUE(student.clip(clip_).filmHere);
    EXPECT_EQ(*student.library->check(true), std::vector<std::string>());
    // From there to the student's other device.
    const fs::path own = dir_ / "own";
    fs::create_directories(own);
    FolderSync::Options all;
    all.folder = own;
    ASSERT_TRUE(FolderSync(*student.library).run(all));
    Device second(dir_ / "second");
    ASSERT_TRUE(FolderSync(*second.library).run(all));
    EXPECT_TRUE(second.clip(clip_).filmHere);
}

TEST_F(Sharing, ACoveredHeadTravelsOnlyAfterAPersonHasLooked) {
    HeadCovering covering(*coach_.library, nullptr);
    EXPECT_EQ(covering.make(clip_, {}).error().key, "cover.no_head");
    EXPECT_EQ(covering.release(clip_).error().key, "cover.not_made");
    markTheHead();
    EXPECT_EQ(shareKey({.coverHeads = true}), "cover.not_released");
    EXPECT_FALSE(fs::exists(file_));
    const auto strip = covering.make(clip_, {});
    ASSERT_TRUE(strip) << strip.error().sentence;
    ASSERT_TRUE(strip->has_value());
    EXPECT_EQ((*strip)->frames, kFrames);
    EXPECT_GE((*strip)->stills.size(), 10U);
    EXPECT_EQ(*covering.state(clip_), HeadCovering::State::made);
    const auto sheet = contactSheet((*strip)->stills);
    EXPECT_EQ(sheet.pixels.size(),
              static_cast<std::size_t>(sheet.width) * static_cast<std::size_t>(sheet.height) * 3);
    EXPECT_EQ(shareKey({.coverHeads = true}), "cover.not_released") << "nobody has looked yet";
    ASSERT_TRUE(covering.release(clip_));
    EXPECT_EQ(*covering.state(clip_), HeadCovering::State::released);
    ASSERT_EQ(shareKey({.coverHeads = true}), "");

    Device student(dir_ / "student");
    ASSERT_TRUE(student.exchange->import(file_, {}));
    const auto row = student.clip(clip_);
    ASSERT_TRUE(row.filmHere);
    auto covered = video::Clip::open(row.file);
    ASSERT_TRUE(covered);
    EXPECT_EQ((*covered)->info().frames, kFrames);
    EXPECT_FALSE((*covered)->info().hasSound);
    ASSERT_TRUE((*covered)->stream(0, kFrames - 1, [&](const video::Frame& frame) {
        const auto picture = frame.rgb();
        const int f = frame.index();
        EXPECT_TRUE(exporting::isCovered(picture, {60.0 + f, 26.0, 30.0, 36.0})) << "frame " << f;
        const auto feet = static_cast<std::size_t>((200 * 160 + 75 + f) * 3);
        EXPECT_NEAR(picture.pixels[feet], 50, 25) << "the swing is still to be seen";
        return true;
    }));
    EXPECT_FALSE(holds(dir_ / "student", "CANARY"));
    // And on it goes from there, covered as it is.
    ASSERT_TRUE(student.exchange->exportLesson(lesson_, dir_ / "on", {.withPage = false}, {}));
    // Covered and bare copies of one film in one lesson do not get in each other's way.
    ASSERT_EQ(shareKey(), "");
    ASSERT_TRUE(student.exchange->import(file_, {}));
    EXPECT_NE(student.clip(clip_).film, row.film) << "the one that shows more is shown";
    EXPECT_EQ(*student.library->check(true), std::vector<std::string>());
    EXPECT_EQ(*coach_.library->check(true), std::vector<std::string>());
}

TEST_F(Sharing, AMinorsFaceStaysAtHomeUnlessTheGuardianAgreed) {
    agree(true, {"film", "share"});
    EXPECT_EQ(shareKey(), "consent.face");
    EXPECT_EQ(shareKey({.withFilms = false}), "");
    EXPECT_EQ(shareKey({.audience = Audience::ownDevice}), "") << "a device of one's own";
    EXPECT_EQ(shareKey({.coverHeads = true}), "cover.not_released");
    const fs::path shared = dir_ / "shared";
    fs::create_directories(shared);
    FolderSync::Options options;
    options.folder = shared;
    options.player = player_;
    ASSERT_TRUE(FolderSync(*coach_.library).run(options));
    Device other(dir_ / "other");
    FolderSync::Options reading;
    reading.folder = shared;
    ASSERT_TRUE(FolderSync(*other.library).run(reading));
    EXPECT_FALSE(other.clip(clip_).filmHere) << "nothing uncovered went into the folder";
    // Released later, it follows.
    markTheHead();
    HeadCovering covering(*coach_.library, nullptr);
    ASSERT_TRUE(covering.make(clip_, {}));
    ASSERT_TRUE(covering.release(clip_));
    ASSERT_TRUE(FolderSync(*coach_.library).run(options));
    ASSERT_TRUE(FolderSync(*other.library).run(reading));
    EXPECT_TRUE(other.clip(clip_).filmHere);
    EXPECT_EQ(shareKey({.coverHeads = true}), "");
    agree(true, {"film", "share", "face"});
    EXPECT_EQ(shareKey(), "");
}

// Our own limits: 90 days for minors, a year for others.
TEST_F(Sharing, WhatIsKeptPastItsTimeIsProposedAndNeverErasedByItself) {
    base::FixedClock clock(*base::fromIso("2026-11-25T12:00:00Z"));
    Retention retention(*coach_.library, clock);
    const auto on = [&](const std::string& day) {
        clock.set(*base::fromIso(day + "T12:00:00Z"));
        return retention.overdue()->size();
    };
    EXPECT_EQ(on("2026-11-25"), 0U);
    EXPECT_EQ(on("2027-11-25"), 0U);
    EXPECT_EQ(on("2027-11-26"), 1U);
    agree(true, {"film", "keep"});
    EXPECT_EQ(on("2027-02-23"), 0U) << "the ninetieth day still holds";
    EXPECT_EQ(on("2027-02-24"), 1U);
    EXPECT_TRUE(retention.overdue()->front().minor);
    EXPECT_EQ(retention.overdue()->front().since, "2027-02-24");
    EXPECT_EQ(on("2029-11-25"), 1U) << "it is asked for, not done";
    EXPECT_TRUE(coach_.clip(clip_).filmHere);
    ASSERT_TRUE(coach_.library->erase(retention.overdue()->front().clip));
    EXPECT_EQ(on("2029-11-25"), 0U);
}

// The stricter rule where nobody has told an age: as for minors.
TEST_F(Sharing, OfAPlayerOfUnknownAgeFilmsAreKeptAsShortAsAMinors) {
    const auto player = *coach_.book->addPlayer({"Lee", marks::Hand::right, 1.75, ""});
    const auto lesson = *coach_.book->addLesson(player, {"First", "2026-11-25", "", "", ""});
    const auto shot = coach_.book->addShot(lesson, {});
    ClipIntake intake(*coach_.library, nullptr);
    ASSERT_TRUE(intake.bringIn(*shot, dir_ / "film.mp4", {}, {}));
    base::FixedClock clock(*base::fromIso("2027-02-24T12:00:00Z"));
    const auto overdue = Retention(*coach_.library, clock).overdue();
    ASSERT_EQ(overdue->size(), 1U) << "and not the grown-up's";
    EXPECT_EQ(overdue->front().playerName, "Lee");
    EXPECT_TRUE(overdue->front().ageUnknown);
    EXPECT_FALSE(overdue->front().minor);
}

TEST_F(Sharing, WhatTwoDevicesPutDifferentlyIsListedAndSettled) {
    Device tablet(dir_ / "tablet");
    ASSERT_EQ(shareKey({.audience = Audience::ownDevice}), "");
    ASSERT_TRUE(tablet.exchange->import(file_, {}));
    EXPECT_TRUE(Disagreements(*coach_.library).all()->empty());
    const auto edit = [&](Device& device, const std::string& name, double x) {
        auto player = device.book->player(player_);
        player->name = name;
        ASSERT_TRUE(device.book->edit(player_, *player));
        SwingDesk desk(*device.library, nullptr);
        ASSERT_TRUE(desk.open(clip_, {}));
        desk.beginDrag(5, Landmark::nose);
        desk.moveDrag({x, 40});
        ASSERT_TRUE(desk.finishDrag());
        ASSERT_TRUE(desk.fixMoment(marks::MomentId::top, static_cast<int>(x) % 20));
    };
    edit(coach_, "Kim A", 70);
    edit(tablet, "Kim B", 91);
    const fs::path back = dir_ / "back.plumbmark";
    ASSERT_TRUE(tablet.exchange->exportLesson(
        lesson_, back, {.audience = Audience::ownDevice, .withFilms = false, .withPage = false}, {}));
    const auto taken = coach_.exchange->import(back, {});
    ASSERT_TRUE(taken) << taken.error().sentence;
    EXPECT_EQ(taken->records.needsYou, 3);
    EXPECT_NE(taken->sentence().find("3 need you"), std::string::npos);
    Disagreements here(*coach_.library);
    auto all = *here.all();
    ASSERT_EQ(all.size(), 3U);
    EXPECT_EQ(all[0].what, "name");
    EXPECT_EQ(all[1].what, "5/nose");
    EXPECT_EQ(all[2].what, "top");
    for (const Disagreement& one : all) {
        ASSERT_EQ(one.versions.size(), 2U) << one.what;
        EXPECT_NE(one.versions[0].text, one.versions[1].text);
        EXPECT_NE(one.versions[0].here, one.versions[1].here);
        // The older one holds: not what would win by itself.
        ASSERT_TRUE(here.settle(one.versions[1].fact)) << one.what;
    }
    EXPECT_EQ(coach_.book->player(player_)->name, all[0].versions[1].text);
    EXPECT_TRUE(here.all()->empty());
    EXPECT_EQ(here.settle(all[0].versions[0].fact).error().key, "settle.none");
    EXPECT_EQ(*coach_.library->check(), std::vector<std::string>());
    // The other device is settled too once it hears of it.
    ASSERT_EQ(shareKey({.audience = Audience::ownDevice, .withFilms = false}), "");
    ASSERT_TRUE(tablet.exchange->import(file_, {}));
    EXPECT_TRUE(Disagreements(*tablet.library).all()->empty());
    EXPECT_EQ(tablet.book->player(player_)->name, coach_.book->player(player_)->name);
}
