// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <filesystem>
#include <fstream>

#include "base/files.h"
#include "session/clip_intake.h"
#include "session/lesson_book.h"
#include "session/lesson_exchange.h"
#include "session/swing_desk.h"
#include "video/writer.h"

using namespace plumbmark;
using namespace plumbmark::session;
namespace fs = std::filesystem;

namespace {

/// A small film of a dark bar that swings over a light ground: enough for every step that needs pixels.
void film(const fs::path& path, int frames = 24) {
    video::WriterOptions options;
    options.width = 160;
    options.height = 120;
    options.fps = 60;
    auto writer = video::ClipWriter::create(path, options);
    ASSERT_TRUE(writer) << writer.error().sentence;
    for (int f = 0; f < frames; ++f) {
        video::RgbImage picture{160, 120, std::vector<std::uint8_t>(160 * 120 * 3, 200)};
        for (int y = 30; y < 100; ++y) {
            for (int x = 70 + f; x < 76 + f; ++x) {
                for (int c = 0; c < 3; ++c) {
                    picture.pixels[static_cast<std::size_t>((y * 160 + x) * 3 + c)] = 30;
                }
            }
        }
        ASSERT_TRUE((*writer)->write(picture));
    }
    ASSERT_TRUE((*writer)->finish());
}

std::string contentOf(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

class Session : public testing::Test {
  protected:
    Session()
        : stage_(*base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test")),
          dir_(stage_.path()) {
        library_ = open("library");
        book_ = std::make_unique<LessonBook>(*library_);
    }
    std::unique_ptr<store::Library> open(const std::string& name) {
        store::LibraryOptions options;
        options.folder = dir_ / name;
        auto library = store::Library::open(options);
        EXPECT_TRUE(library) << library.error().sentence;
        return std::move(*library);
    }
    struct Made {
        base::Id player, lesson, shot;
    };
    Made make() {
        const auto player = book_->addPlayer({"Kim", marks::Hand::right, 1.75, ""});
        const auto lesson = book_->addLesson(*player, {"First", "2026-11-25", "straighter", "", ""});
        records::Shot shot;
        shot.club = marks::Club{marks::ClubKind::iron, 7};
        const auto added = book_->addShot(*lesson, shot);
        EXPECT_TRUE(added);
        return {*player, *lesson, *added};
    }
    /// A lesson with one analysed clip.
    std::pair<Made, ClipIntake::Receipt> withClip() {
        const Made made = make();
        film(dir_ / "swing.mp4");
        ClipIntake intake(*library_, nullptr);
        analysis::Request request;
        request.context.club = book_->shot(made.shot)->club; // as told by whoever made the shot
        auto receipt = intake.bringIn(made.shot, dir_ / "swing.mp4", request, {});
        EXPECT_TRUE(receipt) << receipt.error().sentence;
        EXPECT_TRUE(receipt->has_value());
        return {made, std::move(**receipt)};
    }
    std::size_t facts(store::Library& library) { return library.allLines()->size(); }

    base::StagingFolder stage_;
    fs::path dir_;
    std::unique_ptr<store::Library> library_;
    std::unique_ptr<LessonBook> book_;
};

} // namespace

TEST_F(Session, TheBookKeepsPlayersLessonsAndShots) {
    const Made made = make();
    EXPECT_EQ(book_->players()->size(), 1U);
    EXPECT_EQ(book_->lessons("STRAIGHT")->size(), 1U);
    EXPECT_EQ(book_->lessons({}, made.player)->size(), 1U);
    EXPECT_EQ(book_->shot(made.shot)->club, (marks::Club{marks::ClubKind::iron, 7}));
    EXPECT_EQ(book_->player(made.player)->name, "Kim");
    EXPECT_EQ(book_->lesson(made.lesson)->wish, "straighter");

    const auto blank = book_->addPlayer({" ", {}, {}, ""});
    ASSERT_FALSE(blank);
    EXPECT_EQ(blank.error().kind, base::ErrorKind::input);
    const auto nowhere = book_->addLesson(made.shot, {"t", "2026-11-25", "", "", ""});
    ASSERT_FALSE(nowhere);
    EXPECT_EQ(nowhere.error().key, "book.no_such_thing");
    EXPECT_FALSE(book_->player(made.lesson));

    ASSERT_TRUE(book_->erase(made.player));
    EXPECT_TRUE(book_->lessons()->empty());
    EXPECT_FALSE(book_->lesson(made.lesson));
    EXPECT_FALSE(book_->addShot(made.lesson, {}));
}

TEST_F(Session, EditingStoresOnlyWhatChanged) {
    const Made made = make();
    const std::size_t before = facts(*library_);
    ASSERT_TRUE(book_->edit(made.player, *book_->player(made.player)));
    EXPECT_EQ(facts(*library_), before);
    records::Shot shot = *book_->shot(made.shot);
    shot.curve = records::BallCurve::trail;
    shot.contact = records::Contact::thin;
    ASSERT_TRUE(book_->edit(made.shot, shot));
    EXPECT_EQ(facts(*library_), before + 2);
    EXPECT_EQ(book_->shot(made.shot)->contact, records::Contact::thin);
    shot.contact.reset();
    ASSERT_TRUE(book_->edit(made.shot, shot));
    EXPECT_FALSE(book_->shot(made.shot)->contact);
    EXPECT_EQ(book_->shot(made.shot)->curve, records::BallCurve::trail);
    EXPECT_EQ((*book_->shots(made.lesson))[0].shot.curve, records::BallCurve::trail);
}

TEST_F(Session, AClipComesInOnceWithItsFindings) {
    const auto [made, receipt] = withClip();
    EXPECT_FALSE(receipt.filmWasHere);
    EXPECT_TRUE(receipt.sameFilm.empty());
    const auto clips = book_->clips(made.shot);
    ASSERT_EQ(clips->size(), 1U);
    const store::ClipRow& row = (*clips)[0];
    EXPECT_EQ(row.id, receipt.clip);
    EXPECT_EQ(row.clip.frames, 24);
    EXPECT_EQ(row.clip.width, 160);
    EXPECT_EQ(contentOf(row.file), contentOf(dir_ / "swing.mp4"));
    const auto findings = book_->findings(receipt.clip);
    ASSERT_TRUE(findings && *findings);
    EXPECT_EQ(bodyOf(**findings), bodyOf(findingsOf(receipt.analysed.outcome)));

    // Again into the same shot: the same clip. Into another shot: another clip of the same film.
    ClipIntake intake(*library_, nullptr);
    const auto again = intake.bringIn(made.shot, dir_ / "swing.mp4", {}, {});
    ASSERT_TRUE(again && *again);
    EXPECT_TRUE((*again)->filmWasHere);
    EXPECT_EQ((*again)->clip, receipt.clip);
    EXPECT_EQ(book_->clips(made.shot)->size(), 1U);
    const auto other = book_->addShot(made.lesson, {});
    const auto copy = intake.bringIn(*other, dir_ / "swing.mp4", {}, {});
    ASSERT_TRUE(copy && *copy);
    EXPECT_EQ((*copy)->sameFilm, std::vector<base::Id>{receipt.clip});
    EXPECT_NE((*copy)->clip, receipt.clip);
}

TEST_F(Session, WhatTheCoachToldIsToldAgainToALaterAnalysis) {
    const Made made = make();
    film(dir_ / "swing.mp4");
    analysis::Request request;
    request.context.view = marks::View::downTheLine;
    request.context.hand = marks::Hand::left;
    request.context.mirrored = true;
    request.context.cameraDistanceMetres = 4.5;
    request.rollDegrees = 1.5;
    request.captureFps = 240;
    request.handMarks = {{3, marks::Landmark::ball, base::Vec2{80, 100}, 1.5}};
    ClipIntake intake(*library_, nullptr);
    const auto receipt = intake.bringIn(made.shot, dir_ / "swing.mp4", request, {});
    ASSERT_TRUE(receipt && *receipt) << receipt.error().sentence;
    const auto told = requestFor(*library_, (*receipt)->clip);
    ASSERT_TRUE(told);
    EXPECT_EQ(told->context.view, marks::View::downTheLine);
    EXPECT_EQ(told->context.hand, marks::Hand::left);
    EXPECT_TRUE(told->context.mirrored);
    EXPECT_EQ(told->context.cameraDistanceMetres, 4.5);
    EXPECT_EQ(told->context.statureMetres, 1.75); // the player's
    EXPECT_EQ(told->context.club, (marks::Club{marks::ClubKind::iron, 7}));
    EXPECT_EQ(told->rollDegrees, 1.5);
    EXPECT_EQ(told->captureFps, 240);
    ASSERT_EQ(told->handMarks.size(), 1U);
    EXPECT_EQ(told->handMarks[0].at, (base::Vec2{80, 100}));
}

TEST_F(Session, WhatIsNoClipOrIsStoppedLeavesNothing) {
    const Made made = make();
    const std::size_t before = facts(*library_);
    std::ofstream(dir_ / "text.mp4") << "this is no film";
    ClipIntake intake(*library_, nullptr);
    const auto refused = intake.bringIn(made.shot, dir_ / "text.mp4", {}, {});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, base::ErrorKind::input);
    EXPECT_FALSE(intake.bringIn(made.shot, dir_ / "none.mp4", {}, {}));
    EXPECT_FALSE(intake.bringIn(made.lesson, dir_ / "text.mp4", {}, {}));

    film(dir_ / "swing.mp4");
    std::atomic<bool> stop{true};
    const auto stopped = intake.bringIn(made.shot, dir_ / "swing.mp4", {}, base::Progress{{}, &stop});
    ASSERT_TRUE(stopped) << stopped.error().sentence;
    EXPECT_FALSE(stopped->has_value());
    EXPECT_EQ(facts(*library_), before);
    book_.reset();
    library_.reset();
    library_ = open("library"); // alone: leftovers go
    for (const auto& entry : fs::recursive_directory_iterator(dir_ / "library")) {
        EXPECT_EQ(entry.path().string().find("/media/") != std::string::npos && entry.is_regular_file(),
                  false);
    }
}

TEST_F(Session, ADragIsOneFactAndCanBeTakenBack) {
    auto [made, receipt] = withClip();
    SwingDesk desk(*library_, nullptr);
    ASSERT_TRUE(*desk.open(receipt.clip, {}, receipt.analysed));
    const std::size_t before = facts(*library_);
    const auto l = marks::Landmark::lead_hip;

    desk.beginDrag(5, l);
    desk.moveDrag({10, 20});
    desk.moveDrag({11, 21});
    ASSERT_EQ(desk.handMarks().size(), 1U);
    EXPECT_EQ(desk.outcome().track[5][l]->at, (base::Vec2{11, 21})); // a hand mark is a fact
    desk.cancelDrag();
    EXPECT_TRUE(desk.handMarks().empty());
    EXPECT_EQ(facts(*library_), before);

    desk.beginDrag(5, l);
    ASSERT_TRUE(desk.finishDrag()); // touched, not moved
    EXPECT_EQ(facts(*library_), before);
    desk.beginDrag(500, l); // no such frame
    EXPECT_FALSE(desk.dragging());

    for (const base::Vec2 to : {base::Vec2{12, 22}, base::Vec2{30, 40}}) {
        desk.beginDrag(5, l);
        desk.moveDrag({1, 1});
        desk.moveDrag(to);
        ASSERT_TRUE(desk.finishDrag());
    }
    EXPECT_EQ(facts(*library_), before + 2);
    ASSERT_TRUE(desk.undo());
    EXPECT_EQ(desk.handMarks()[0].at, (base::Vec2{12, 22}));
    EXPECT_EQ(desk.outcome().track[5][l]->at, (base::Vec2{12, 22}));
    ASSERT_TRUE(desk.undo());
    EXPECT_TRUE(desk.handMarks().empty());
    EXPECT_FALSE(desk.canUndo());
    ASSERT_TRUE(desk.redo());
    ASSERT_TRUE(desk.redo());
    EXPECT_FALSE(desk.canRedo());
    EXPECT_EQ(desk.handMarks()[0].at, (base::Vec2{30, 40}));
    EXPECT_EQ(facts(*library_), before + 6); // undo and redo are facts too
    ASSERT_TRUE(desk.hide(6, l));
    ASSERT_TRUE(desk.release(5, l));
    ASSERT_TRUE(desk.release(5, l)); // nothing there any more
    EXPECT_EQ(facts(*library_), before + 8);

    SwingDesk again(*library_, nullptr);
    ASSERT_TRUE(*again.open(receipt.clip, {}));
    ASSERT_EQ(again.handMarks().size(), 1U);
    EXPECT_EQ(again.handMarks()[0].frame, 6);
    EXPECT_FALSE(again.handMarks()[0].at);
    EXPECT_TRUE(library_->check()->empty());

    // The gestures of this device can be taken back after a restart, in the same order.
    ASSERT_TRUE(again.undo()); // the mark given back stands again
    ASSERT_EQ(again.handMarks().size(), 2U);
    ASSERT_TRUE(again.undo());
    ASSERT_EQ(again.handMarks().size(), 1U);
    EXPECT_EQ(again.handMarks()[0].at, (base::Vec2{30, 40}));
    SwingDesk third(*library_, nullptr);
    ASSERT_TRUE(*third.open(receipt.clip, {}));
    EXPECT_TRUE(third.canRedo());
    ASSERT_TRUE(third.redo());
    ASSERT_TRUE(third.undo());
    ASSERT_TRUE(third.undo());
    EXPECT_EQ(third.handMarks()[0].at, (base::Vec2{12, 22}));
    ASSERT_TRUE(third.undo());
    EXPECT_TRUE(third.handMarks().empty());
    EXPECT_FALSE(third.canUndo());
}

TEST_F(Session, AMomentFixedByHandIsKeptAndNeverMovedBySoftware) {
    auto [made, receipt] = withClip();
    SwingDesk desk(*library_, nullptr);
    ASSERT_TRUE(*desk.open(receipt.clip, {}, receipt.analysed));
    const std::size_t before = facts(*library_);
    EXPECT_EQ(marks::find(desk.outcome().moments, marks::MomentId::top), nullptr);

    ASSERT_TRUE(desk.fixMoment(marks::MomentId::top, 12));
    ASSERT_TRUE(desk.fixMoment(marks::MomentId::top, 12));  // says so already
    ASSERT_TRUE(desk.fixMoment(marks::MomentId::top, 500)); // no such frame
    EXPECT_EQ(facts(*library_), before + 1);
    const marks::Moment* top = marks::find(desk.outcome().moments, marks::MomentId::top);
    ASSERT_NE(top, nullptr);
    EXPECT_NEAR(top->time.value(), 12 / 60.0, 1e-3);
    EXPECT_NEAR(top->sigma.value(), 0.5 / 60.0, 1e-4);
    EXPECT_EQ(top->foundBy, "hand mark");

    // A mark moved afterwards does not move it.
    desk.beginDrag(12, marks::Landmark::grip);
    desk.moveDrag({40, 40});
    ASSERT_TRUE(desk.finishDrag());
    EXPECT_NEAR(marks::find(desk.outcome().moments, marks::MomentId::top)->time.value(), 12 / 60.0, 1e-3);
    ASSERT_TRUE(desk.saveFindings());
    const auto stored = book_->findings(receipt.clip);
    ASSERT_TRUE(stored && *stored);
    EXPECT_EQ(marks::find((*stored)->moments, marks::MomentId::top)->foundBy, "hand mark");

    SwingDesk again(*library_, nullptr);
    ASSERT_TRUE(*again.open(receipt.clip, {}));
    ASSERT_NE(marks::find(again.outcome().moments, marks::MomentId::top), nullptr);
    ASSERT_TRUE(again.freeMoment(marks::MomentId::top));
    EXPECT_EQ(marks::find(again.outcome().moments, marks::MomentId::top), nullptr);
    ASSERT_TRUE(again.undo());
    ASSERT_NE(marks::find(again.outcome().moments, marks::MomentId::top), nullptr);
    EXPECT_EQ(requestFor(*library_, receipt.clip)->momentFixes.size(), 1U);
}

TEST_F(Session, DrawingsAreFactsWithUndo) {
    auto [made, receipt] = withClip();
    SwingDesk desk(*library_, nullptr);
    ASSERT_TRUE(*desk.open(receipt.clip, {}, receipt.analysed));
    records::Drawing line;
    line.name = "one";
    line.points = {{1, 2}, {30, 40}};
    line.tie = records::Drawing::Tie::ground;
    ASSERT_TRUE(desk.draw(line));
    records::Drawing words = line;
    words.name = "two";
    words.shape = records::Drawing::Shape::text;
    words.points.resize(1);
    const auto wrong = desk.draw(words);
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().key, "record.bad_value");
    words.text = "here";
    ASSERT_TRUE(desk.draw(words));
    line.points[1] = {50, 60};
    ASSERT_TRUE(desk.draw(line)); // a new version
    ASSERT_EQ(desk.drawings().size(), 2U);
    ASSERT_TRUE(desk.wipe("two"));
    EXPECT_EQ(desk.drawings().size(), 1U);

    SwingDesk again(*library_, nullptr);
    ASSERT_TRUE(*again.open(receipt.clip, {}));
    ASSERT_EQ(again.drawings().size(), 1U);
    EXPECT_EQ(again.drawings()[0].points[1], (base::Vec2{50, 60}));
    EXPECT_EQ(again.drawings()[0].tie, records::Drawing::Tie::ground);
    ASSERT_TRUE(again.undo());
    ASSERT_EQ(again.drawings().size(), 2U);
    ASSERT_TRUE(again.undo());
    EXPECT_EQ(again.drawings()[0].points[1], (base::Vec2{30, 40}));
}

TEST_F(Session, AStoredSwingOpensFromWhatThePassLeft) {
    auto [made, receipt] = withClip();
    const fs::path cache = dir_ / "library" / "cache";
    const auto kept = [&] {
        return fs::exists(cache) ? std::distance(fs::directory_iterator(cache), fs::directory_iterator()) : 0;
    };
    ASSERT_EQ(kept(), 1);
    int reports = 0;
    const base::Progress counted{[&](double, std::string_view) { ++reports; }, nullptr};
    SwingDesk desk(*library_, nullptr);
    ASSERT_TRUE(*desk.open(receipt.clip, counted));
    EXPECT_EQ(reports, 0) << "no pixel was read";
    ASSERT_EQ(desk.outcome().measurements.size(), receipt.analysed.outcome.measurements.size());
    EXPECT_EQ(bodyOf(findingsOf(desk.outcome())), bodyOf(findingsOf(receipt.analysed.outcome)));

    // Thrown away or damaged, the film is read again.
    for (const bool damaged : {false, true}) {
        const fs::path file = fs::directory_iterator(cache)->path();
        if (damaged) {
            fs::resize_file(file, fs::file_size(file) / 2);
        } else {
            fs::remove(file);
        }
        reports = 0;
        SwingDesk again(*library_, nullptr);
        ASSERT_TRUE(*again.open(receipt.clip, counted));
        EXPECT_GT(reports, 0);
        EXPECT_EQ(kept(), 1);
    }
    EXPECT_TRUE(library_->check()->empty());
    // It tells about the player, so it goes with the film.
    ASSERT_TRUE(book_->erase(made.player));
    EXPECT_EQ(kept(), 0);
}

TEST_F(Session, AcceptedFindingsStayFrozen) {
    auto [made, receipt] = withClip();
    SwingDesk desk(*library_, nullptr);
    ASSERT_TRUE(*desk.open(receipt.clip, {}, receipt.analysed));
    const std::size_t before = facts(*library_);
    ASSERT_TRUE(desk.saveFindings());
    EXPECT_EQ(facts(*library_), before) << "the same numbers need no new fact";
    ASSERT_TRUE(desk.acceptFindings());
    ASSERT_TRUE(desk.acceptFindings());
    EXPECT_EQ(facts(*library_), before + 1);
    const auto accepted = **book_->findings(receipt.clip);

    // A later analysis says something else.
    const auto clip = *library_->fact(receipt.clip);
    std::vector<base::Id> path = clip->path;
    path.push_back(clip->id);
    records::Findings later;
    later.measurements = {
        {"spine_tilt", std::nullopt, base::Measured{1, 1, base::Unit::degrees, base::Origin::hand}, "", 2}};
    const auto old = *library_->factsOf(receipt.clip, records::kind::findings);
    ASSERT_TRUE(library_->add({library_->make(records::kind::findings, path, bodyOf(later), {old[0].id})}));
    EXPECT_EQ(bodyOf(**book_->findings(receipt.clip)), bodyOf(accepted));
    ASSERT_TRUE(desk.acceptFindings());
    EXPECT_EQ(bodyOf(**book_->findings(receipt.clip)), bodyOf(accepted));
}

TEST_F(Session, ALessonTravelsWholeAndFiveImportsChangeNothing) {
    const auto [made, receipt] = withClip();
    LessonExchange here(*library_);
    const fs::path file = dir_ / "lesson.plumbmark";
    const auto sent = here.exportLesson(made.lesson, file, {.audience = Audience::ownDevice}, {});
    ASSERT_TRUE(sent) << sent.error().sentence;
    EXPECT_EQ(sent->title, "First");
    EXPECT_TRUE(here.verify(file, {}));

    const auto other = open("other");
    LessonExchange there(*other);
    const auto first = there.import(file, {});
    ASSERT_TRUE(first) << first.error().sentence;
    EXPECT_EQ(first->filmsNew, 1);
    EXPECT_EQ(first->records.added, sent->records);
    EXPECT_EQ(first->lessons, std::vector<base::Id>{made.lesson});
    EXPECT_EQ(first->sentence(), std::to_string(sent->records) + " new, 0 the same.");
    EXPECT_EQ(*other->allLines(), *library_->allLines());
    const auto lines = *other->allLines();
    for (int i = 0; i < 5; ++i) {
        const auto again = there.import(file, {});
        ASSERT_TRUE(again);
        EXPECT_EQ(again->records.added, 0);
        EXPECT_EQ(again->filmsNew, 0);
        EXPECT_EQ(again->filmsSame, 1);
        EXPECT_EQ(*other->allLines(), lines);
    }
    // The swing opens there, with its film.
    SwingDesk desk(*other, nullptr);
    ASSERT_TRUE(*desk.open(receipt.clip, {}));
    EXPECT_EQ(desk.outcome().track.size(), 24U);
    EXPECT_TRUE(other->check(true)->empty());

    // Without its film the numbers are there and the swing says what is missing.
    LessonExchange::ExportOptions light{.audience = Audience::ownDevice};
    light.withFilms = false;
    ASSERT_TRUE(here.exportLesson(made.lesson, dir_ / "light.plumbmark", light, {}));
    const auto third = open("third");
    ASSERT_TRUE(LessonExchange(*third).import(dir_ / "light.plumbmark", {}));
    EXPECT_TRUE(*LessonBook(*third).findings(receipt.clip));
    const auto missing = SwingDesk(*third, nullptr).open(receipt.clip, {});
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().key, "film.missing");
}

TEST_F(Session, BothSidesEditAndADisputeIsSettledByAPerson) {
    auto [made, receipt] = withClip();
    const fs::path file = dir_ / "lesson.plumbmark";
    LessonExchange here(*library_);
    ASSERT_TRUE(here.exportLesson(made.lesson, file, {.audience = Audience::ownDevice}, {}));
    const auto other = open("other");
    LessonExchange there(*other);
    ASSERT_TRUE(there.import(file, {}));
    LessonBook otherBook(*other);

    records::Player player = *book_->player(made.player);
    player.name = "Kim A";
    ASSERT_TRUE(book_->edit(made.player, player));
    player.name = "Kim B";
    player.note = "note";
    ASSERT_TRUE(otherBook.edit(made.player, player));
    const auto drag = [&](store::Library& library, base::Vec2 to) {
        SwingDesk desk(library, nullptr);
        ASSERT_TRUE(*desk.open(receipt.clip, {}, receipt.analysed));
        desk.beginDrag(4, marks::Landmark::nose);
        desk.moveDrag(to);
        ASSERT_TRUE(desk.finishDrag());
    };
    drag(*library_, {10, 10});
    drag(*other, {20, 20});

    ASSERT_TRUE(there.exportLesson(made.lesson, file, {.audience = Audience::ownDevice}, {}));
    const auto back = here.import(file, {});
    ASSERT_TRUE(back);
    EXPECT_EQ(back->records.needsYou, 2); // the name and the mark; the note is no dispute
    EXPECT_NE(back->sentence().find("2 need you"), std::string::npos);
    EXPECT_TRUE((*book_->lessons())[0].needsYou);
    EXPECT_EQ(book_->player(made.player)->note, "note");

    const auto disputed = book_->disputed(made.player);
    ASSERT_EQ(disputed->size(), 1U);
    const auto& versions = disputed->at("name");
    ASSERT_EQ(versions.size(), 2U);
    ASSERT_TRUE(book_->settle(made.player, "name", versions[1].fact));
    EXPECT_EQ(book_->player(made.player)->name, *versions[1].value.text());
    EXPECT_TRUE(book_->disputed(made.player)->empty());

    SwingDesk desk(*library_, nullptr);
    ASSERT_TRUE(*desk.open(receipt.clip, {}, receipt.analysed));
    ASSERT_EQ(desk.disputedMarks().size(), 1U);
    desk.beginDrag(4, marks::Landmark::nose);
    desk.moveDrag({15, 15});
    ASSERT_TRUE(desk.finishDrag());
    EXPECT_TRUE(desk.disputedMarks().empty());
    EXPECT_FALSE((*book_->lessons())[0].needsYou);

    // The settlement travels; both sides hold the same.
    ASSERT_TRUE(here.exportLesson(made.lesson, file, {.audience = Audience::ownDevice}, {}));
    const auto settled = there.import(file, {});
    ASSERT_TRUE(settled);
    EXPECT_EQ(settled->records.needsYou, 0);
    EXPECT_EQ(*other->allLines(), *library_->allLines());
    EXPECT_EQ(otherBook.player(made.player)->name, book_->player(made.player)->name);
}

TEST_F(Session, ADamagedFileChangesNothing) {
    const auto [made, receipt] = withClip();
    const fs::path file = dir_ / "lesson.plumbmark";
    ASSERT_TRUE(
        LessonExchange(*library_).exportLesson(made.lesson, file, {.audience = Audience::ownDevice}, {}));
    const std::string good = contentOf(file);
    const auto other = open("other");
    const fs::path bad = dir_ / "bad.plumbmark";
    for (int percent = 0; percent < 100; ++percent) {
        std::ofstream(bad, std::ios::binary | std::ios::trunc)
            << good.substr(0, good.size() * static_cast<std::size_t>(percent) / 100);
        const auto cut = LessonExchange(*other).import(bad, {});
        ASSERT_FALSE(cut) << percent;
        EXPECT_FALSE(cut.error().sentence.empty());
        std::string flipped = good;
        flipped[good.size() * static_cast<std::size_t>(percent) / 100] ^= 8;
        std::ofstream(bad, std::ios::binary | std::ios::trunc) << flipped;
        ASSERT_FALSE(LessonExchange(*other).import(bad, {})) << percent;
    }
    EXPECT_TRUE(other->allLines()->empty());
    EXPECT_FALSE(fs::exists(dir_ / "other" / "media"));
    EXPECT_TRUE(fs::is_empty(dir_ / "other" / "staging"));
    const auto none =
        LessonExchange(*library_).exportLesson(made.shot, file, {.audience = Audience::ownDevice}, {});
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().key, "book.no_such_thing");
    EXPECT_EQ(contentOf(file), good);
}
