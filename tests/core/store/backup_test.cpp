// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "store/backup.h"

#include <set>

#include "store_support.h"

using namespace plumbmark;
using namespace plumbmark::testing_support;

namespace {

constexpr base::UnixMs kDay = 24 * 3600 * 1000LL;
const base::UnixMs kNow = *base::fromIso("2026-11-25T09:30:00Z"); // a Wednesday

class BackupTest : public ::testing::Test {
  protected:
    std::unique_ptr<store::Library> open() {
        auto library = store::Library::open(options());
        if (!library) {
            ADD_FAILURE() << library.error().sentence;
            return nullptr;
        }
        return std::move(*library);
    }
    store::LibraryOptions options() {
        store::LibraryOptions options;
        options.folder = dir_;
        options.clock = &clock_;
        return options;
    }
    base::StagingFolder stage_ = tempFolder();
    fs::path dir_ = stage_.path() / "library";
    base::FixedClock clock_{kNow};
};

} // namespace

TEST_F(BackupTest, IsMadeOncePerDayAndRestoringItGivesTheSameLibrary) {
    std::vector<std::string> lines;
    {
        const auto library = open();
        fill(*library, "film one");
        lines = *library->allLines();
    }
    EXPECT_TRUE(store::listBackups(dir_).empty()) << "there was nothing to lose at the first opening";
    for (int i = 0; i < 3; ++i) {
        open();
        ASSERT_EQ(store::listBackups(dir_).size(), 1U);
    }
    const auto backup = store::listBackups(dir_).front();
    EXPECT_EQ(backup.day, "2026-11-25");
    EXPECT_EQ(backup.kind, store::BackupKind::daily);
    const auto state = store::checkBackup(backup.folder, true);
    ASSERT_TRUE(state) << state.error().sentence;
    EXPECT_EQ(state->records, 5);
    EXPECT_EQ(state->lessons, 1);
    EXPECT_EQ(state->films, 1);
    // An outside reader: the sqlite3 program.
    EXPECT_EQ(run("sqlite3 '" + (backup.folder / "library.db").string() + "' 'PRAGMA integrity_check'"),
              "ok\n");

    std::string device;
    {
        const auto library = open();
        device = library->device().hex();
        fill(*library, "film two", "Later");
        ASSERT_EQ(library->lessons()->size(), 2U);
        // Nobody restores under a program that works.
        EXPECT_EQ(store::restoreBackup(options(), backup.folder).error().key, "library.busy");
    }
    const auto restored = store::restoreBackup(options(), backup.folder);
    ASSERT_TRUE(restored) << restored.error().sentence;
    const auto library = open();
    EXPECT_EQ(*library->allLines(), lines);
    EXPECT_EQ(*library->check(true), std::vector<std::string>());
    EXPECT_NE(library->device().hex(), device) << "the old device may still be at work elsewhere";
    const auto clip = library->clipsOfFilm(base::sha256OfText("film one"));
    ASSERT_EQ(clip->size(), 1U);
    EXPECT_TRUE(clip->front().filmHere);
    // What was there stepped aside whole, films included.
    const auto before = store::checkBackup(restored->before, true);
    ASSERT_TRUE(before) << before.error().sentence;
    EXPECT_EQ(before->lessons, 2);
    EXPECT_EQ(before->films, 2);
}

TEST_F(BackupTest, ADamagedOrLostLibraryIsRestored) {
    std::vector<std::string> lines;
    {
        const auto library = open();
        fill(*library, "film one");
        lines = *library->allLines();
        ASSERT_TRUE(library->backup());
    }
    for (const bool lost : {false, true}) {
        if (lost) {
            fs::remove(dir_ / "library.db");
        } else {
            std::string content = contentOf(dir_ / "library.db");
            std::fill(content.begin(), content.begin() + 5000, '#');
            put(dir_ / "library.db", content);
        }
        EXPECT_EQ(store::Library::open(options()).error().key, "library.damaged");
        const auto backups = store::listBackups(dir_);
        const auto good = std::find_if(backups.begin(), backups.end(), [](const store::Backup& backup) {
            return backup.kind == store::BackupKind::byHand;
        });
        ASSERT_NE(good, backups.end());
        const auto restored = store::restoreBackup(options(), good->folder);
        ASSERT_TRUE(restored) << restored.error().sentence;
        EXPECT_EQ(restored->before.empty(), lost);
        EXPECT_EQ(*open()->allLines(), lines);
    }
}

TEST_F(BackupTest, WhatIsNoWholeBackupIsNotRestored) {
    {
        const auto library = open();
        fill(*library, "film one");
        ASSERT_TRUE(library->backup());
    }
    const auto backup = store::listBackups(dir_).front();
    const std::string before = contentOf(dir_ / "library.db");
    const auto refused = [&](const std::string& key) {
        const auto result = store::restoreBackup(options(), backup.folder);
        ASSERT_FALSE(result);
        EXPECT_EQ(result.error().key, key) << result.error().sentence;
        EXPECT_EQ(contentOf(dir_ / "library.db"), before);
    };
    const std::string good = contentOf(backup.folder / "library.db");
    put(backup.folder / "library.db", good.substr(0, good.size() / 2));
    refused("backup.damaged");
    put(backup.folder / "library.db", "text");
    refused("backup.damaged");
    put(backup.folder / "library.db", good);
    run("sqlite3 '" + (backup.folder / "library.db").string() +
        "' \"UPDATE fact SET line='{}' WHERE kind='shot'\"");
    refused("backup.damaged");
    put(backup.folder / "library.db", good);
    run("sqlite3 '" + (backup.folder / "library.db").string() + "' 'PRAGMA user_version=99'");
    refused("backup.newer");
    run("sqlite3 '" + (backup.folder / "library.db").string() + "' 'PRAGMA application_id=7'");
    refused("backup.not_ours");
    fs::remove(backup.folder / "library.db");
    refused("backup.missing");
}

TEST_F(BackupTest, WhatWasErasedStaysErasedThroughARestore) {
    const std::string canary = "CANARY-99ab";
    const auto aside = stage_.path() / "stick";
    fs::create_directories(aside);
    {
        const auto library = open();
        fill(*library, "film kept", "Kept");
        const Made made = fill(*library, "film of " + canary, canary);
        ASSERT_TRUE(library->backup());
        // A copy out of the program's reach still holds it; a restore of that copy must not bring it back.
        ASSERT_TRUE(store::copyBackup(store::listBackups(dir_).front(), aside));
        ASSERT_TRUE(library->erase(made.player));
    }
    const auto old = store::listBackupsIn(aside);
    ASSERT_EQ(old.size(), 1U);
    EXPECT_EQ(store::checkBackup(old.front().folder)->records, 10);
    ASSERT_TRUE(store::restoreBackup(options(), old.front().folder));
    { // sweeps the film that nothing names
        const auto library = open();
        EXPECT_EQ(library->players()->size(), 1U);
        EXPECT_EQ(*library->check(true), std::vector<std::string>());
    }
    for (const auto& entry : fs::recursive_directory_iterator(dir_)) {
        if (entry.is_regular_file()) {
            EXPECT_EQ(contentOf(entry.path()).find(canary), std::string::npos) << entry.path();
        }
    }
}

TEST_F(BackupTest, AnErasingThatWasCutOffGoesOnAtTheNextStart) {
    const std::string canary = "CANARY-51cd";
    {
        const auto library = open();
        const Made made = fill(*library, "film of " + canary, canary);
        ASSERT_TRUE(library->backup());
        ASSERT_TRUE(library->erase(made.player));
    }
    // As a power cut leaves it: rows gone, marker there, an old copy with the name still in backups/.
    put(dir_ / "erasing", "x");
    put(dir_ / "backups" / "20261124t093000z-daily-00000000" / "library.db", canary);
    open();
    EXPECT_FALSE(fs::exists(dir_ / "erasing"));
    for (const auto& entry : fs::recursive_directory_iterator(dir_)) {
        if (entry.is_regular_file()) {
            EXPECT_EQ(contentOf(entry.path()).find(canary), std::string::npos) << entry.path();
        }
    }
}

TEST_F(BackupTest, ThreeYearsOfDaysLeaveSevenDaysAndFourWeeks) {
    std::vector<store::Backup> backups;
    for (int day = 0; day < 3 * 365; ++day) {
        for (const char* hour : {"080000", "190000"}) { // two a day must not push the week out
            store::Backup backup;
            backup.day = base::isoDate(kNow + day * kDay);
            backup.kind = store::BackupKind::daily;
            std::string digits = backup.day;
            std::erase(digits, '-');
            backup.name = digits + "t" + hour + "z-daily-00000000";
            backups.push_back(backup);
        }
        std::set<std::string> gone;
        for (const auto& old : store::outdated(backups)) {
            gone.insert(old.name);
        }
        std::erase_if(backups, [&](const store::Backup& backup) { return gone.count(backup.name) != 0; });
        ASSERT_TRUE(store::outdated(backups).empty());
        ASSERT_LE(backups.size(), 11U);
    }
    // The rule said by hand for the last day: 2029-11-23, a Friday.
    std::set<std::string> days;
    for (const auto& backup : backups) {
        days.insert(backup.day);
        EXPECT_NE(backup.name.find("t190000z"), std::string::npos) << "the day's last one stays";
    }
    EXPECT_EQ(days,
              (std::set<std::string>{"2029-11-23", "2029-11-22", "2029-11-21", "2029-11-20", "2029-11-19",
                                     "2029-11-18", "2029-11-17", "2029-11-11", "2029-11-04"}));
}

TEST_F(BackupTest, ManyDaysOfRealOpeningsKeepTheRuleAndEachBackupIsGood) {
    { fill(*open(), "film"); }
    for (int day = 0; day < 20; ++day) {
        clock_.set(kNow + day * kDay);
        open();
    }
    const auto backups = store::listBackups(dir_);
    EXPECT_LE(backups.size(), 11U);
    EXPECT_GE(backups.size(), 8U);
    for (const auto& backup : backups) {
        EXPECT_TRUE(store::checkBackup(backup.folder, true));
    }
}
