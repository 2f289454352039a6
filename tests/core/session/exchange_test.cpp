// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <random>

#include "base/files.h"
#include "base/hash.h"
#include "lessonfile/lessonfile.h"
#include "records/coaching_kinds.h"
#include "records/consent.h"
#include "session/folder_sync.h"
#include "session/lesson_book.h"
#include "session/lesson_exchange.h"

using namespace plumbmark;
using namespace plumbmark::session;
namespace fs = std::filesystem;

namespace {

const base::UnixMs kNow = *base::fromIso("2026-11-25T09:30:00Z");

std::string contentOf(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}
void put(const fs::path& path, const std::string& content) {
    fs::create_directories(path.parent_path());
    std::ofstream(path, std::ios::binary) << content;
}
bool holds(const fs::path& folder, const std::string& text) {
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.is_regular_file() && contentOf(entry.path()).find(text) != std::string::npos) {
            return true;
        }
    }
    return false;
}

struct Device {
    Device(const fs::path& folder, const base::Clock& clock) {
        store::LibraryOptions options;
        options.folder = folder;
        options.clock = &clock;
        auto opened = store::Library::open(options);
        EXPECT_TRUE(opened) << opened.error().sentence;
        library = std::move(*opened);
        book = std::make_unique<LessonBook>(*library);
        exchange = std::make_unique<LessonExchange>(*library, clock);
        sync = std::make_unique<FolderSync>(*library, clock);
    }
    struct Made {
        base::Id player, lesson, clip;
    };
    Made lesson(const std::string& name, const std::string& film) {
        const auto player = book->addPlayer({name, marks::Hand::right, 1.75, ""});
        const auto lesson =
            book->addLesson(*player, {"Lesson of " + name, "2026-11-25", "straighter", "", ""});
        const auto shot = book->addShot(*lesson, {});
        const fs::path file = library->folder() / "bring";
        put(file, film);
        const auto added = library->addFilm(file);
        fs::remove(file);
        records::Clip clip;
        clip.sha256 = added->sha256;
        clip.bytes = added->bytes;
        clip.width = 64;
        clip.height = 48;
        clip.frames = 10;
        clip.durationSeconds = 1;
        clip.playbackFps = 10;
        const auto fact = library->make(records::kind::clip, {*player, *lesson, *shot}, bodyOf(clip));
        EXPECT_TRUE(library->add({fact}));
        return {*player, *lesson, fact.id};
    }
    std::unique_ptr<store::Library> library;
    std::unique_ptr<LessonBook> book;
    std::unique_ptr<LessonExchange> exchange;
    std::unique_ptr<FolderSync> sync;
};

class Exchange : public ::testing::Test {
  protected:
    records::Consent consent(std::set<std::string, std::less<>> scopes = {"film", "share"}) {
        records::Consent c;
        c.scopes = std::move(scopes);
        c.day = "2026-11-25";
        c.until = "2027-11-25";
        return c;
    }
    std::string exportKey(Device& device, const base::Id& lesson,
                          LessonExchange::ExportOptions options = {}) {
        options.withPage = false;
        // The films of these lessons are words: nothing that could be stripped for others (see sharing_test).
        options.withFilms = options.audience == Audience::ownDevice;
        fs::remove(dir_ / "out.plumbmark");
        const auto written = device.exchange->exportLesson(lesson, dir_ / "out.plumbmark", options, {});
        EXPECT_EQ(written.ok(), fs::exists(dir_ / "out.plumbmark"));
        return written ? "" : written.error().key;
    }
    base::StagingFolder stage_ = *base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test");
    fs::path dir_ = stage_.path();
    base::FixedClock clock_{kNow};
    fs::path shared_ = dir_ / "shared";
    std::vector<base::Id> card_; ///< the body card to be replaced
};

} // namespace

TEST_F(Exchange, NothingIsSharedWithoutAConsentThatHolds) {
    Device coach(dir_ / "a", clock_);
    const auto made = coach.lesson("Kim", "film");
    EXPECT_EQ(exportKey(coach, made.lesson), "consent.missing");
    EXPECT_EQ(exportKey(coach, made.lesson, {.audience = Audience::ownDevice}), "");
    ASSERT_TRUE(coach.exchange->noteConsent(made.player, consent({"film"})));
    EXPECT_EQ(exportKey(coach, made.lesson), "consent.scope");
    ASSERT_TRUE(coach.exchange->noteConsent(made.player, consent()));
    EXPECT_EQ(exportKey(coach, made.lesson), "");
    clock_.set(*base::fromIso("2027-11-25T23:00:00Z"));
    EXPECT_EQ(exportKey(coach, made.lesson), "") << "the last day still holds";
    clock_.set(*base::fromIso("2027-11-26T00:00:01Z"));
    EXPECT_EQ(exportKey(coach, made.lesson), "consent.expired");
    clock_.set(kNow);
    auto withdrawn = consent();
    withdrawn.withdrawn = true;
    ASSERT_TRUE(coach.exchange->noteConsent(made.player, withdrawn));
    EXPECT_EQ(exportKey(coach, made.lesson), "consent.withdrawn");
    FolderSync::Options options;
    options.folder = shared_;
    fs::create_directories(shared_);
    options.player = made.player;
    EXPECT_EQ(coach.sync->run(options).error().key, "consent.withdrawn");
    EXPECT_TRUE(fs::is_empty(shared_));
}

TEST_F(Exchange, AConsentThatMakesNoSenseIsNotKept) {
    Device coach(dir_ / "a", clock_);
    const auto made = coach.lesson("Kim", "film");
    const auto refused = [&](auto&& bend) {
        auto c = consent();
        bend(c);
        const auto noted = coach.exchange->noteConsent(made.player, c);
        EXPECT_FALSE(noted);
        EXPECT_TRUE(coach.exchange->consents(made.player)->empty());
    };
    refused([](auto& c) { c.scopes.clear(); });
    refused([](auto& c) { c.scopes.insert("everything"); });
    refused([](auto& c) { c.until = "2026-11-24"; });
    refused([](auto& c) { c.until = "2030-01-01"; });
    refused([](auto& c) { c.until = "soon"; });
    refused([](auto& c) { c.minor = true; });
    refused([](auto& c) {
        c.minor = true;
        c.guardian = "A parent";
        c.until = "2028-01-01"; // for minors a year at most
    });
    auto minor = consent();
    minor.minor = true;
    minor.guardian = "A parent";
    ASSERT_TRUE(coach.exchange->noteConsent(made.player, minor));
    EXPECT_EQ(exportKey(coach, made.lesson), "");
    EXPECT_EQ(coach.exchange->noteConsent(made.lesson, consent()).error().key, "book.no_such_thing");
}

// By the year of birth on the body card; until the year in which somebody turns 18 is over the birthday may
// still come.
TEST_F(Exchange, OfAYoungPlayerOnlyAGuardianAgrees) {
    Device coach(dir_ / "a", clock_);
    const auto made = coach.lesson("Kim", "film");
    EXPECT_EQ(*coach.exchange->ageOf(made.player), records::Age::unknown);
    const auto born = [&](int year) {
        records::BodyCard card;
        card.day = "2026-11-25";
        card.birthYear = year;
        ASSERT_TRUE(coach.library->add(
            {coach.library->make(records::kind::body_card, {made.player}, bodyOf(card), card_)}));
        card_ = {coach.library->factsOf(made.player, records::kind::body_card)->back().id};
    };
    ASSERT_TRUE(coach.exchange->noteConsent(made.player, consent()));
    EXPECT_EQ(*coach.exchange->ageOf(made.player), records::Age::adult) << "an adult's own word";
    born(2008);
    EXPECT_EQ(*coach.exchange->ageOf(made.player), records::Age::minor);
    EXPECT_EQ(exportKey(coach, made.lesson), "consent.guardian");
    EXPECT_EQ(coach.exchange->noteConsent(made.player, consent()).error().key, "consent.guardian");
    EXPECT_FALSE(*coach.exchange->mayShowFace(made.player));
    auto guardians = consent();
    guardians.minor = true;
    guardians.guardian = "A parent";
    ASSERT_TRUE(coach.exchange->noteConsent(made.player, guardians));
    EXPECT_EQ(exportKey(coach, made.lesson, {.withFilms = false}), "");
    EXPECT_FALSE(*coach.exchange->mayShowFace(made.player)) << "the face was not agreed to";
    auto withdrawn = consent();
    withdrawn.withdrawn = true;
    EXPECT_TRUE(coach.exchange->noteConsent(made.player, withdrawn)) << "anybody may take it back";
    born(2007);
    EXPECT_EQ(coach.exchange->noteConsent(made.player, consent()).ok(), true);
    EXPECT_EQ(exportKey(coach, made.lesson), "");
}

TEST_F(Exchange, TwoDevicesThatDisagreeAboutAConsentDoNotShare) {
    Device a(dir_ / "a", clock_), b(dir_ / "b", clock_);
    const auto made = a.lesson("Kim", "film");
    FolderSync::Options options;
    options.folder = shared_;
    fs::create_directories(shared_);
    ASSERT_TRUE(a.sync->run(options));
    ASSERT_TRUE(b.sync->run(options));
    auto no = consent();
    no.withdrawn = true;
    ASSERT_TRUE(a.exchange->noteConsent(made.player, consent()));
    ASSERT_TRUE(b.exchange->noteConsent(made.player, no));
    ASSERT_TRUE(a.sync->run(options));
    ASSERT_TRUE(b.sync->run(options));
    ASSERT_TRUE(a.sync->run(options));
    EXPECT_EQ(a.exchange->consents(made.player)->size(), 2U);
    EXPECT_EQ(exportKey(a, made.lesson), "consent.withdrawn");
}

TEST_F(Exchange, HealthTravelsOnlyWhenChosen) {
    Device coach(dir_ / "a", clock_);
    const auto made = coach.lesson("Kim", "film");
    ASSERT_TRUE(coach.exchange->noteConsent(made.player, consent()));
    const records::Pain pain{"2026-11-25", "CANARY-back", 4, ""};
    ASSERT_TRUE(coach.library->add(
        {coach.library->make(records::kind::pain, {made.player}, bodyOf(pain)),
         coach.library->make(records::kind::pain, {made.player, made.lesson}, bodyOf(pain)),
         // A kind this version does not know, marked by the one that does.
         coach.library->make("stretching", {made.player, made.lesson},
                             {{"health", true}, {"note", "CANARY-back"}})}));
    ASSERT_EQ(exportKey(coach, made.lesson), "");
    EXPECT_EQ(contentOf(dir_ / "out.plumbmark").find("CANARY"), std::string::npos);
    ASSERT_EQ(exportKey(coach, made.lesson, {.withHealth = true}), "");
    const std::string file = contentOf(dir_ / "out.plumbmark");
    std::size_t found = 0;
    for (std::size_t at = file.find("CANARY"); at != std::string::npos; at = file.find("CANARY", at + 1)) {
        ++found;
    }
    EXPECT_EQ(found, 3U);
}

TEST_F(Exchange, ASealedAndSignedLessonArrivesAndItsThreeOutcomesAreTold) {
    Device a(dir_ / "a", clock_), b(dir_ / "b", clock_);
    const auto made = a.lesson("Kim", "film of CANARY");
    ASSERT_EQ(
        exportKey(a, made.lesson, {.audience = Audience::ownDevice, .passphrase = "bagu dola miru pesa"}),
        "");
    const fs::path file = dir_ / "out.plumbmark";
    EXPECT_EQ(contentOf(file).find("CANARY"), std::string::npos);
    EXPECT_EQ(b.exchange->import(file, {}).error().key, "seal.passphrase_needed");
    EXPECT_EQ(b.exchange->import(file, {}, "wrong passphrase").error().key, "seal.wrong");
    EXPECT_TRUE(b.library->allLines()->empty());
    const auto first = b.exchange->import(file, {}, "bagu dola miru pesa");
    ASSERT_TRUE(first) << first.error().sentence;
    EXPECT_EQ(first->sender, Sender::unknown);
    EXPECT_NE(first->origin().find("sender unknown"), std::string::npos);
    EXPECT_EQ(first->file.signedBy.size(), 64U);
    ASSERT_TRUE(b.exchange->rememberSender(first->file.signedBy, "Kim's tablet"));
    const auto second = b.exchange->import(file, {}, "bagu dola miru pesa");
    EXPECT_EQ(second->sender, Sender::known);
    EXPECT_EQ(second->origin(), "Whole, from Kim's tablet.");
    EXPECT_EQ(second->records.added, 0);
    std::string bad = contentOf(file);
    bad[bad.size() / 2] ^= 4;
    put(dir_ / "bad", bad);
    const auto damaged = b.exchange->import(dir_ / "bad", {}, "bagu dola miru pesa");
    ASSERT_FALSE(damaged); // one chunk: a changed bit and a wrong passphrase cannot be told apart
    EXPECT_EQ(damaged.error().key, "seal.wrong");
    EXPECT_TRUE(fs::is_empty(dir_ / "b" / "staging"));
}

TEST_F(Exchange, PartsOfANewerVersionArePassedOn) {
    Device a(dir_ / "a", clock_), b(dir_ / "b", clock_);
    const auto made = a.lesson("Kim", "film");
    put(dir_ / "voice", "a voice note");
    lessonfile::Contents contents;
    contents.title = "Newer";
    contents.records = *a.library->linesFor(made.lesson);
    contents.films = {{base::sha256OfText("film"), a.library->filmPath(base::sha256OfText("film"))}};
    contents.carried = {{{"voice/note.opus", "voice", 0, ""}, dir_ / "voice"}};
    ASSERT_TRUE(lessonfile::write(dir_ / "newer", contents));
    const auto taken = b.exchange->import(dir_ / "newer", {});
    ASSERT_TRUE(taken) << taken.error().sentence;
    EXPECT_EQ(taken->carried, std::vector<std::string>{"voice/note.opus"});
    b = Device(dir_ / "b", clock_); // also over a restart, which sweeps what nothing names
    ASSERT_EQ(exportKey(b, made.lesson, {.audience = Audience::ownDevice}), "");
    const auto stage = base::StagingFolder::create(dir_ / "in");
    const auto again = lessonfile::readInto(dir_ / "out.plumbmark", stage->path());
    ASSERT_TRUE(again);
    ASSERT_EQ(again->carried.size(), 1U);
    EXPECT_EQ(again->carried[0].part.role, "voice");
    EXPECT_EQ(again->carried[0].part.path, "voice/note.opus");
    EXPECT_EQ(contentOf(again->carried[0].file), "a voice note");
    // It goes with its lesson.
    ASSERT_TRUE(b.library->erase(made.player));
    EXPECT_FALSE(holds(dir_ / "b", "a voice note"));
}

TEST_F(Exchange, ThreeDevicesMeetInAFolderThatIsSometimesAway) {
    Device a(dir_ / "a", clock_), b(dir_ / "b", clock_), c(dir_ / "c", clock_);
    FolderSync::Options options;
    options.folder = shared_;
    const auto away = a.sync->run(options);
    ASSERT_TRUE(away);
    EXPECT_TRUE(away->away);
    EXPECT_FALSE(fs::exists(shared_)) << "a folder that is away must not be made: its stick may come back";
    const auto kim = a.lesson("Kim", "film of Kim");
    fs::create_directories(shared_);
    auto sent = a.sync->run(options);
    ASSERT_TRUE(sent);
    EXPECT_EQ(sent->filesSent, 1);
    EXPECT_EQ(a.sync->run(options)->filesSent, 0) << "what is there is not sent again";
    b.lesson("Lee", "film of Lee");
    auto met = b.sync->run(options);
    EXPECT_EQ(met->filesTaken, 1);
    EXPECT_EQ(met->recordsSent, 4);
    EXPECT_EQ(c.sync->run(options)->recordsSent, 0) << "it passes on nothing that the folder has";
    EXPECT_EQ(*c.library->allLines(), *b.library->allLines());
    ASSERT_TRUE(a.sync->run(options));
    EXPECT_EQ(*a.library->allLines(), *b.library->allLines());
    EXPECT_TRUE((*c.library->clip(kim.clip))->filmHere);
    // Names say nothing and fit every file system.
    for (const auto& entry : fs::directory_iterator(shared_)) {
        const std::string name = entry.path().filename().string();
        EXPECT_LE(name.size(), 74U);
        EXPECT_EQ(name.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-."), std::string::npos)
            << name;
    }

    // Erased on one: gone everywhere and from the folder.
    ASSERT_TRUE(a.library->erase(kim.player));
    for (int round = 0; round < 2; ++round) {
        for (Device* device : {&a, &b, &c}) {
            ASSERT_TRUE(device->sync->run(options));
        }
    }
    EXPECT_FALSE(holds(dir_, "Kim"));
    EXPECT_FALSE(holds(dir_, "film of Kim"));
    EXPECT_EQ(*a.library->allLines(), *b.library->allLines());
    EXPECT_EQ(*c.library->allLines(), *b.library->allLines());
    EXPECT_EQ(c.book->players()->size(), 1U);
}

TEST_F(Exchange, HalfArrivedRenamedDoubledAndForeignFilesDoNoHarm) {
    Device a(dir_ / "a", clock_);
    a.lesson("Kim", std::string(5000, 'k'));
    FolderSync::Options options;
    options.folder = shared_;
    fs::create_directories(shared_);
    ASSERT_TRUE(a.sync->run(options));
    fs::path real;
    for (const auto& entry : fs::directory_iterator(shared_)) {
        if (entry.path().extension() == ".plumbmark") {
            real = entry.path();
        }
    }
    const std::string whole = contentOf(real);
    const fs::path other = dir_ / "carried";
    fs::create_directories(other);
    Device b(dir_ / "b", clock_);
    options.folder = other;
    put(other / "holiday.jpg", "x");
    put(other / ".hidden.plumbmark", "x");
    put(other / "lesson.plumbmark.part", "x");
    put(other / "empty.plumbmark", "");
    fs::create_symlink("/etc/passwd", other / "link.plumbmark");
    fs::create_directories(other / "folder.plumbmark");
    std::mt19937 random(3);
    for (std::size_t size = 0; size < whole.size(); size += 1 + random() % 900) {
        put(other / "grows.plumbmark", whole.substr(0, size));
        const auto got = b.sync->run(options);
        ASSERT_TRUE(got) << got.error().sentence;
        ASSERT_EQ(got->filesTaken, 0);
        ASSERT_EQ(got->notes.size(), 5U) << size; // jpg, link, folder, empty, grows
    }
    EXPECT_TRUE(b.library->allLines()->empty());
    put(other / "grows.plumbmark", whole);
    EXPECT_EQ(b.sync->run(options)->recordsNew, 4);
    EXPECT_EQ(*b.library->allLines(), *a.library->allLines());
    // A copy under another name, as folders that two computers changed get them.
    put(other / "grows (conflicted copy).plumbmark", whole);
    const auto again = b.sync->run(options);
    EXPECT_EQ(again->filesTaken, 1);
    EXPECT_EQ(again->recordsNew, 0);
    EXPECT_EQ(b.sync->run(options)->filesTaken, 0);
    EXPECT_TRUE(fs::is_empty(dir_ / "b" / "staging"));
}

TEST_F(Exchange, OneStudentsFolderHoldsOnlyThatStudentAndNoHealth) {
    Device a(dir_ / "a", clock_);
    const auto kim = a.lesson("Kim", "film of Kim");
    a.lesson("CANARY-other", "film of CANARY-other");
    ASSERT_TRUE(a.exchange->noteConsent(kim.player, consent()));
    ASSERT_TRUE(a.library->add({a.library->make(records::kind::pain, {kim.player},
                                                bodyOf(records::Pain{"2026-11-25", "CANARY-knee", 3, ""}))}));
    fs::create_directories(shared_);
    FolderSync::Options options;
    options.folder = shared_;
    options.player = kim.player;
    const auto sent = a.sync->run(options);
    ASSERT_TRUE(sent) << sent.error().sentence;
    EXPECT_EQ(sent->recordsSent, 5); // player, lesson, shot, clip, consent
    EXPECT_FALSE(holds(shared_, "CANARY"));
    EXPECT_FALSE(holds(shared_, "film of Kim")) << "what cannot be stripped stays at home";
    EXPECT_EQ(sent->notes.size(), 1U);
    // Sealed: nothing is readable in the folder at all.
    fs::remove_all(shared_);
    fs::create_directories(shared_);
    options.passphrase = "bagu dola miru pesa";
    ASSERT_TRUE(a.sync->run(options));
    EXPECT_FALSE(holds(shared_, "Kim"));
    Device b(dir_ / "b", clock_);
    FolderSync::Options reading;
    reading.folder = shared_;
    EXPECT_EQ(b.sync->run(reading)->notes.size(), 1U);
    reading.passphrase = "bagu dola miru pesa";
    EXPECT_EQ(b.sync->run(reading)->recordsNew, 5);
}
