// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <regex>
#include <thread>

#include "records/film_copy.h"
#include "store/backup.h"
#include "store/detail/case_fold.h"
#include "store_support.h"

using namespace plumbmark;
using namespace plumbmark::testing_support;

namespace {

class Store : public testing::Test {
  protected:
    Store() : stage_(tempFolder()), dir_(stage_.path() / "library") {}
    base::StagingFolder stage_;
    fs::path dir_;
};

std::string sqlite(const fs::path& db, const std::string& sql) {
    return run("sqlite3 '" + db.string() + "' \"" + sql + "\"");
}

} // namespace

TEST_F(Store, KeepsWhatItWasGivenAcrossRestarts) {
    base::Id device{base::Id::Bytes{}};
    std::vector<std::string> lines;
    Made made = [&] {
        const auto library = openLibrary(dir_);
        device = library->device();
        const Made m = fill(*library, "film bytes");
        lines = *library->allLines();
        return m;
    }();
    const auto library = openLibrary(dir_);
    EXPECT_EQ(library->device(), device);
    EXPECT_EQ(*library->allLines(), lines);
    const auto players = library->players();
    ASSERT_TRUE(players);
    ASSERT_EQ(players->size(), 1U);
    EXPECT_EQ((*players)[0].name, "Kim");
    EXPECT_EQ((*players)[0].statureMetres, 1.8);
    EXPECT_EQ((*players)[0].lessons, 1);
    EXPECT_EQ((*players)[0].lastDay, "2026-11-25");
    const auto lessons = library->lessons();
    ASSERT_TRUE(lessons);
    ASSERT_EQ(lessons->size(), 1U);
    EXPECT_EQ((*lessons)[0].title, "First lesson");
    EXPECT_EQ((*lessons)[0].playerName, "Kim");
    EXPECT_EQ((*lessons)[0].shots, 1);
    EXPECT_EQ((*lessons)[0].clips, 1);
    EXPECT_FALSE((*lessons)[0].needsYou);
    const auto shots = library->shots(made.lesson);
    ASSERT_TRUE(shots);
    ASSERT_EQ(shots->size(), 1U);
    EXPECT_EQ((*shots)[0].number, 1);
    const auto clips = library->clips(made.shot);
    ASSERT_TRUE(clips);
    ASSERT_EQ(clips->size(), 1U);
    EXPECT_TRUE((*clips)[0].filmHere);
    EXPECT_EQ(contentOf((*clips)[0].file), "film bytes");
    EXPECT_EQ(*library->check(true), std::vector<std::string>());
}

TEST_F(Store, IsForItsOwnerAlone) {
    fs::create_directories(dir_); // with the usual permissions, as when a person makes the folder
    const auto library = openLibrary(dir_);
    fill(*library, "film");
    for (const auto& entry : fs::recursive_directory_iterator(dir_)) {
        EXPECT_EQ(entry.status().permissions() & (fs::perms::group_all | fs::perms::others_all),
                  fs::perms::none)
            << entry.path();
    }
}

TEST_F(Store, SearchKnowsNoCaseAndLooksInNamesTitlesAndWishes) {
    const auto library = openLibrary(dir_);
    fill(*library, "a", "ZOË Müller");
    fill(*library, "b", "Иван");
    for (const auto& [word, count] : std::vector<std::pair<std::string, std::size_t>>{{"zoë", 1},
                                                                                      {"MÜLLER", 1},
                                                                                      {"иВАН", 1},
                                                                                      {"FIRST", 2},
                                                                                      {"SLICE", 2},
                                                                                      {"2026-11", 2},
                                                                                      {"nobody", 0},
                                                                                      {"", 2},
                                                                                      {"%", 0},
                                                                                      {"'", 0}}) {
        const auto found = library->lessons(word);
        ASSERT_TRUE(found);
        EXPECT_EQ(found->size(), count) << word;
    }
    EXPECT_EQ(library->players("mü")->size(), 1U);
}

// Simple case mappings of the Unicode character database, a few of each block (from memory).
TEST(CaseFold, KnowsTheBlocksItClaims) {
    EXPECT_EQ(store::detail::foldCase("AZaz09 ÀÖØÞ÷× ĀŹŽŸİ ΑΩ АЯЁЂ 日本 🏌"),
              "azaz09 àöøþ÷× āźžÿİ αω аяёђ 日本 🏌");
}

TEST_F(Store, OpensWithTheSqlite3ProgramAndSaysWhatItIs) {
    {
        const auto library = openLibrary(dir_);
        fill(*library, "film");
    }
    // Outside check: Debian's sqlite3 program.
    const fs::path db = dir_ / "library.db";
    EXPECT_EQ(sqlite(db, "PRAGMA application_id"), "1347177794\n"); // "PLMB" as a big-endian number
    EXPECT_EQ(sqlite(db, "PRAGMA user_version"), "3\n");
    EXPECT_EQ(sqlite(db, "PRAGMA integrity_check"), "ok\n");
    EXPECT_EQ(sqlite(db, "PRAGMA foreign_key_check"), "");
    EXPECT_EQ(sqlite(db, "SELECT name FROM player"), "Kim\n");
    EXPECT_EQ(sqlite(db, "SELECT measurement, moment, value, sigma, unit, method FROM finding"),
              "spine_tilt|address|4.5|1.5|degrees|1\n");
    // Every table is STRICT and has at least one check or reference.
    EXPECT_EQ(
        sqlite(db,
               "SELECT count(*) FROM pragma_table_list WHERE schema='main' AND type='table' AND strict=0 AND "
               "name NOT LIKE 'sqlite_%'"),
        "0\n");
    EXPECT_EQ(
        sqlite(
            db,
            "SELECT name FROM sqlite_schema WHERE type='table' AND sql NOT LIKE '%CHECK%' AND sql NOT LIKE "
            "'%REFERENCES%'"),
        "");
    EXPECT_EQ(sqlite(db, "PRAGMA journal_mode"), "wal\n");
}

TEST_F(Store, TheSchemaItselfRefusesBadData) {
    { fill(*openLibrary(dir_), "film"); }
    const fs::path db = dir_ / "library.db";
    for (const std::string sql :
         {"INSERT INTO fact(id,kind,line) VALUES('xyz','player','{}')",
          "INSERT INTO fact(id,kind,line) VALUES('00000000000000000000000000000000','Player','{}')",
          "INSERT INTO fact(id,kind,line) VALUES('00000000000000000000000000000000','player','{')",
          "INSERT INTO tombstone(id,day) VALUES('00000000000000000000000000000000','yesterday')",
          "INSERT INTO device(one,id,clock_ms,clock_n) VALUES(2,'00000000000000000000000000000000',0,0)",
          "UPDATE device SET clock_ms='late'", "UPDATE finding SET sigma=0", "UPDATE finding SET value='x'",
          "UPDATE player SET hand='both'", "UPDATE player SET disputed=-1", "UPDATE clip SET view='above'",
          "PRAGMA foreign_keys=ON; UPDATE player SET id='00000000000000000000000000000000'"}) {
        EXPECT_NE(sqlite(db, sql).find("(19)"), std::string::npos) // SQLITE_CONSTRAINT
            << sql << ": " << sqlite(db, sql);
    }
}

// The switches whose defaults are the wrong way are set and read back in one place. So that nobody opens a
// database anywhere else, the sources are searched.
TEST_F(Store, OnlyOnePlaceOpensDatabases) {
    std::vector<std::string> places;
    for (const char* folder : {"core", "app-qml", "platform", "demo-data"}) {
        const fs::path root = fs::path(PLUMBMARK_SOURCE_DIR) / folder;
        if (!fs::exists(root)) {
            continue;
        }
        for (const auto& entry : fs::recursive_directory_iterator(root)) {
            const std::string ending = entry.path().extension().string();
            if (entry.is_regular_file() && (ending == ".cpp" || ending == ".h" || ending == ".mm") &&
                std::regex_search(contentOf(entry.path()), std::regex("sqlite3_open|QSqlDatabase"))) {
                places.push_back(fs::relative(entry.path(), PLUMBMARK_SOURCE_DIR).string());
            }
        }
    }
    EXPECT_EQ(places, std::vector<std::string>{"core/store/detail/db.cpp"});
}

TEST_F(Store, ADamagedLibraryIsLeftAsItIs) {
    { fill(*openLibrary(dir_), "film"); }
    const fs::path db = dir_ / "library.db";
    const std::string good = contentOf(db);
    ASSERT_GT(good.size(), 8192U);
    const auto attempt = [&](const std::string& content) {
        put(db, content);
        store::LibraryOptions options;
        options.folder = dir_;
        const auto library = store::Library::open(options);
        EXPECT_EQ(contentOf(db), content) << "something was touched";
        fs::remove(dir_ / "library.db-wal");
        fs::remove(dir_ / "library.db-shm");
        return library ? std::string() : library.error().key;
    };
    EXPECT_EQ(attempt(""), "library.damaged");
    EXPECT_EQ(attempt("this is a text"), "library.damaged");
    EXPECT_EQ(attempt(std::string(100'000, 'x')), "library.damaged");
    EXPECT_EQ(attempt(std::string(16, '\0') + good.substr(16)), "library.damaged");
    EXPECT_EQ(attempt(good.substr(0, 4096)), "library.damaged");
    fs::remove(db);
    store::LibraryOptions options;
    options.folder = dir_;
    const auto gone = store::Library::open(options);
    ASSERT_FALSE(gone) << "films without their library are no new library";
    EXPECT_EQ(gone.error().key, "library.damaged");
    EXPECT_FALSE(fs::exists(db));

    // Damage in the middle is found by the check at the latest, and said in words.
    std::string middle = good;
    for (std::size_t i = 8192; i < middle.size(); i += 512) {
        middle[i] = static_cast<char>(~middle[i]);
        middle[i + 1] = static_cast<char>(~middle[i + 1]);
    }
    put(db, middle);
    auto library = store::Library::open(options);
    if (library) {
        const auto found = (*library)->check();
        EXPECT_TRUE(!found || !found->empty());
    } else {
        EXPECT_EQ(library.error().key, "library.damaged");
    }
}

TEST_F(Store, ForeignAndNewerLibrariesAreNotTouched) {
    { fill(*openLibrary(dir_), "film"); }
    const fs::path db = dir_ / "library.db";
    sqlite(db, "PRAGMA user_version=99");
    {
        const auto newer = openLibrary(dir_);
        EXPECT_TRUE(newer->readOnly());
        EXPECT_NE(newer->notice().find("newer version"), std::string::npos);
        EXPECT_EQ(newer->players()->size(), 1U);
        const auto refused = newer->add({newer->make(records::kind::player, {}, {{"name", "x"}})});
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().key, "library.read_only");
        EXPECT_FALSE(newer->erase((*newer->players())[0].id));
        EXPECT_FALSE(newer->rebuildIndex());
    }
    EXPECT_EQ(sqlite(db, "SELECT count(*) FROM fact"), "5\n");
    sqlite(db, "DROP TABLE finding; ALTER TABLE player RENAME COLUMN name TO full_name");
    store::LibraryOptions options;
    options.folder = dir_;
    const auto strange = store::Library::open(options);
    ASSERT_FALSE(strange);
    EXPECT_EQ(strange.error().key, "library.newer_unreadable");

    const fs::path other = stage_.path() / "other";
    fs::create_directories(other);
    sqlite(other / "library.db", "CREATE TABLE t(x); INSERT INTO t VALUES(1)");
    const std::string before = contentOf(other / "library.db");
    options.folder = other;
    const auto foreign = store::Library::open(options);
    ASSERT_FALSE(foreign);
    EXPECT_EQ(foreign.error().key, "library.not_ours");
    EXPECT_EQ(contentOf(other / "library.db"), before);

    options.folder = other / "library.db";
    const auto file = store::Library::open(options);
    ASSERT_FALSE(file);
    EXPECT_EQ(file.error().key, "library.folder");
}

// The committed dump is a library of version 1 as the first release wrote it.
TEST_F(Store, OpensALibraryOfVersion1) {
    fs::create_directories(dir_);
    const std::string dump = std::string(PLUMBMARK_SOURCE_DIR) + "/tests/core/store/library-version-1.sql";
    run("sqlite3 '" + (dir_ / "library.db").string() + "' < '" + dump + "'");
    const auto library = openLibrary(dir_);
    ASSERT_NE(library, nullptr);
    EXPECT_FALSE(library->readOnly());
    ASSERT_EQ(library->lessons()->size(), 1U);
    EXPECT_EQ((*library->lessons())[0].playerName, "Kim");
    EXPECT_EQ((*library->lessons())[0].shots, 1);
    EXPECT_EQ((*library->lessons())[0].clips, 1);
    EXPECT_EQ(library->allLines()->size(), 5U);
    // As it was, it lies in backups/.
    const auto backups = store::listBackups(dir_);
    ASSERT_EQ(backups.size(), 2U);
    const auto before1 = std::find_if(backups.begin(), backups.end(), [](const store::Backup& backup) {
        return backup.kind == store::BackupKind::beforeStep;
    });
    ASSERT_NE(before1, backups.end());
    EXPECT_EQ(run("sqlite3 '" + (before1->folder / "library.db").string() + "' 'PRAGMA user_version'"),
              "1\n");
    EXPECT_EQ(store::checkBackup(before1->folder)->records, 5);
    EXPECT_EQ(*library->check(), std::vector<std::string>());
    const auto before = *library->allLines();
    ASSERT_TRUE(library->rebuildIndex());
    EXPECT_EQ(*library->allLines(), before);
    EXPECT_EQ(library->lessons()->size(), 1U);
}

// The committed dump is a library of version 2, before copies of films had a table.
TEST_F(Store, OpensALibraryOfVersion2AndFindsCopiesItKeptUnread) {
    fs::create_directories(dir_);
    const std::string dump = std::string(PLUMBMARK_SOURCE_DIR) + "/tests/core/store/library-version-2.sql";
    run("sqlite3 '" + (dir_ / "library.db").string() + "' < '" + dump + "'");
    const base::Id clip = *base::Id::fromHex("f412201a7171b8554247e814fd78e53a");
    const std::string copy(64, 'c');
    {
        // What a newer device told such a library: kept without being understood.
        records::Fact maker;
        maker.id = clip;
        maker.path = {*base::Id::fromHex("8eb8e2cd751ed7aaf204a1d58a938062"),
                      *base::Id::fromHex("49ff98071e9ca6ca035a647671a0f5b9"),
                      *base::Id::fromHex("ae3967651c75f8f32de2d863e5c4f6cd")};
        maker.at.ms = 1795600000000;
        maker.at.device = *base::Id::fromHex("238d949198559cdb5d4535ed7d92bc78");
        const auto fact = records::bareCopyFact(maker, {std::string(64, 'a'), copy, 5, false});
        const std::string line = *toText(fact);
        std::ofstream sql(dir_ / "more.sql");
        sql << "INSERT INTO fact VALUES ('" << fact.id.hex() << "','film_copy','" << clip.hex() << "','"
            << line << "');\n";
        for (const base::Id& owner : fact.path) {
            sql << "INSERT INTO belongs VALUES ('" << owner.hex() << "','" << fact.id.hex() << "');\n";
        }
        sql.close();
        run("sqlite3 '" + (dir_ / "library.db").string() + "' < '" + (dir_ / "more.sql").string() + "'");
    }
    const auto library = openLibrary(dir_);
    ASSERT_NE(library, nullptr);
    EXPECT_FALSE(library->readOnly());
    EXPECT_EQ(library->allLines()->size(), 6U);
    EXPECT_EQ(*library->check(), std::vector<std::string>());
    ASSERT_EQ(library->clipsOfFilm(copy)->size(), 1U);
    EXPECT_EQ((*library->clipsOfFilm(copy))[0].id, clip);
    ASSERT_TRUE(library->rebuildIndex());
    EXPECT_EQ(library->clipsOfFilm(copy)->size(), 1U);
}

TEST_F(Store, IndexTablesCanBeMadeAgainFromTheFacts) {
    const auto library = openLibrary(dir_);
    fill(*library, "film");
    const fs::path db = dir_ / "library.db";
    const std::string dumpOf =
        "SELECT * FROM player; SELECT * FROM lesson; SELECT * FROM shot; SELECT * FROM clip; SELECT "
        "* FROM finding; SELECT * FROM belongs";
    const std::string before = sqlite(db, dumpOf);
    EXPECT_NE(before.find("Kim"), std::string::npos);
    sqlite(db,
           "DELETE FROM player; UPDATE lesson SET title='wrong'; DELETE FROM finding; DELETE FROM belongs");
    EXPECT_NE(sqlite(db, dumpOf), before);
    ASSERT_TRUE(library->rebuildIndex());
    EXPECT_EQ(sqlite(db, dumpOf), before);
}

TEST_F(Store, AddIsAllOrNothing) {
    const auto library = openLibrary(dir_);
    const auto good = library->make(records::kind::player, {}, {{"name", "Kim"}});
    auto bad = library->make(records::kind::player, {}, {{"name", "\xFF"}});
    EXPECT_FALSE(library->add({good, bad}));
    EXPECT_TRUE(library->allLines()->empty());
    EXPECT_TRUE(library->add({good}));
    EXPECT_FALSE(library->add({good})); // no id twice
    EXPECT_EQ(library->allLines()->size(), 1U);

    const auto clip =
        library->make(records::kind::clip, {good.id},
                      {{"sha256", std::string(64, 'a')}, {"view", "face-on"}, {"hand", "right"}});
    const auto refused = library->add({clip});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().key, "film.missing");
}

TEST_F(Store, MergeCountsAndIsIdempotent) {
    const auto a = openLibrary(dir_);
    const auto b = openLibrary(stage_.path() / "b");
    const Made made = fill(*a, "film");
    const auto records = recordsOf(*a->allLines());
    const auto first = b->merge(records);
    ASSERT_TRUE(first);
    EXPECT_EQ(first->added, 5);
    EXPECT_EQ(first->same, 0);
    for (int i = 0; i < 5; ++i) {
        const auto again = b->merge(records);
        ASSERT_TRUE(again);
        EXPECT_EQ(again->added, 0);
        EXPECT_EQ(again->same, 5);
        EXPECT_EQ(again->needsYou, 0);
    }
    EXPECT_EQ(*b->allLines(), *a->allLines());
    EXPECT_FALSE((*b->clips(made.shot))[0].filmHere);

    // Both sides give the player another name without seeing each other.
    const auto rename = [&](store::Library& library, const char* name) {
        return library.add(
            {library.make(records::kind::set, {made.player}, {{"field", "name"}, {"value", name}})});
    };
    ASSERT_TRUE(rename(*a, "Kim A"));
    ASSERT_TRUE(rename(*b, "Kim B"));
    const auto dispute = b->merge(recordsOf(*a->allLines()));
    ASSERT_TRUE(dispute);
    EXPECT_EQ(dispute->added, 1);
    EXPECT_EQ(dispute->needsYou, 1);
    EXPECT_TRUE((*b->players())[0].needsYou);
    ASSERT_TRUE(a->merge(recordsOf(*b->allLines())));
    EXPECT_EQ(*a->allLines(), *b->allLines());
    EXPECT_EQ((*a->players())[0].name, (*b->players())[0].name);
}

TEST_F(Store, ARecordOfTheSameNameWithOtherContentIsRefused) {
    const auto a = openLibrary(dir_);
    const Made made = fill(*a, "film");
    auto records = recordsOf(*a->allLines());
    for (auto& record : records) {
        if (record.fact->id == made.player) {
            record.fact->body.insert_or_assign("name", "Mallory");
        }
    }
    records::Record fresh;
    fresh.fact = a->make(records::kind::player, {}, {{"name", "new"}});
    records.insert(records.begin(), fresh);
    const auto before = *a->allLines();
    const auto refused = a->merge(records);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().key, "record.changed");
    EXPECT_EQ(*a->allLines(), before);
}

TEST_F(Store, UnknownKindsAndFieldsPassThroughUntouched) {
    const auto a = openLibrary(dir_);
    const Made made = fill(*a, "film");
    const std::string line =
        R"({"at":{"device":")" + std::string(32, 'd') + R"(","ms":1,"n":0},"body":{"aura":[1,{"x":null}]},)" +
        R"("future":"field","id":")" + std::string(32, 'e') + R"(","kind":"weather","path":[")" +
        made.player.hex() + R"(",")" + made.lesson.hex() + R"("]})";
    ASSERT_TRUE(a->merge(recordsOf({line})));
    const auto out = *a->linesFor(made.lesson);
    EXPECT_EQ(std::count(out.begin(), out.end(), line), 1);
    const auto b = openLibrary(stage_.path() / "b");
    ASSERT_TRUE(b->merge(recordsOf(out)));
    const auto through = *b->allLines();
    EXPECT_EQ(std::count(through.begin(), through.end(), line), 1);
}

TEST_F(Store, ALessonTravelsWithoutTheOtherLessonsOrHealthNotes) {
    const auto library = openLibrary(dir_);
    const Made made = fill(*library, "film");
    const auto other =
        library->make(records::kind::lesson, {made.player}, {{"title", "OTHER"}, {"day", "2026-01-01"}});
    const auto pain =
        library->make(records::kind::pain, {made.player}, bodyOf(records::Pain{"2026-11-25", "HIP", 3, ""}));
    const auto rename =
        library->make(records::kind::set, {made.player}, {{"field", "note"}, {"value", "NOTE"}});
    ASSERT_TRUE(library->add({other, pain, rename}));
    std::string all;
    const auto lines = library->linesFor(made.lesson);
    ASSERT_TRUE(lines);
    for (const auto& line : *lines) {
        all += line;
    }
    EXPECT_EQ(all.find("OTHER"), std::string::npos);
    EXPECT_EQ(all.find("HIP"), std::string::npos);
    EXPECT_NE(all.find("NOTE"), std::string::npos);
    EXPECT_NE(all.find("First lesson"), std::string::npos);
    EXPECT_NE(all.find("spine_tilt"), std::string::npos);
}

TEST_F(Store, ErasingLeavesNoTrace) {
    const std::string canary = "CANARY-7f3a9";
    const auto library = openLibrary(dir_);
    const Made kept = fill(*library, "shared film", "Other");
    const Made made = fill(*library, "film of " + canary, canary);
    const std::string film = (*library->clips(made.shot))[0].clip.sha256;
    const auto old = recordsOf(*library->allLines());
    fs::create_directories(dir_ / "backups");
    put(dir_ / "backups" / "old.db", canary);
    ASSERT_TRUE(library->erase(made.player));
    EXPECT_FALSE(fs::exists(library->filmPath(film)));
    EXPECT_EQ(library->players()->size(), 1U);
    for (const auto& entry : fs::recursive_directory_iterator(dir_)) {
        if (entry.is_regular_file()) {
            const std::string content = contentOf(entry.path());
            EXPECT_EQ(content.find(canary), std::string::npos) << entry.path();
            EXPECT_EQ(entry.path().string().find(film), std::string::npos);
        }
    }
    // An old file does not bring it back.
    const auto again = library->merge(old);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->added, 0);
    EXPECT_EQ(again->refused, 5);
    EXPECT_EQ(again->same, 5);
    EXPECT_TRUE((*library->clips(kept.shot))[0].filmHere);

    // The erasure travels and wipes there too.
    const auto b = openLibrary(stage_.path() / "b");
    ASSERT_TRUE(b->merge(old));
    const fs::path brought = stage_.path() / "f";
    put(brought, "film of " + canary);
    ASSERT_TRUE(b->addFilm(brought));
    ASSERT_TRUE(fs::exists(b->filmPath(film)));
    const auto wiped = b->merge(recordsOf(*library->allLines()));
    ASSERT_TRUE(wiped);
    EXPECT_EQ(wiped->erased, 5);
    EXPECT_FALSE(fs::exists(b->filmPath(film)));
    EXPECT_EQ(*b->allLines(), *library->allLines());
}

TEST_F(Store, AFilmUsedTwiceStaysUntilTheLastClipGoes) {
    const auto library = openLibrary(dir_);
    const Made a = fill(*library, "the same film", "A");
    const Made b = fill(*library, "the same film", "B");
    const std::string film = (*library->clips(a.shot))[0].clip.sha256;
    EXPECT_EQ(library->clipsOfFilm(film)->size(), 2U);
    ASSERT_TRUE(library->erase(a.player));
    EXPECT_TRUE(fs::exists(library->filmPath(film)));
    ASSERT_TRUE(library->erase(b.clip));
    EXPECT_FALSE(fs::exists(library->filmPath(film)));
}

TEST_F(Store, LeftoversOfAnInterruptedRunGoAtTheNextStartAlone) {
    std::string film;
    {
        const auto library = openLibrary(dir_);
        fill(*library, "kept");
        const fs::path file = stage_.path() / "f";
        put(file, "never named");
        film = library->addFilm(file)->sha256;
        const auto second = openLibrary(dir_); // not alone: nothing may go
        EXPECT_TRUE(fs::exists(library->filmPath(film)));
        put(dir_ / "staging" / "x" / "part", "y");
    }
    const auto library = openLibrary(dir_);
    EXPECT_FALSE(fs::exists(library->filmPath(film)));
    EXPECT_FALSE(fs::exists(dir_ / "staging" / "x"));
    const auto clips = library->clips((*library->shots((*library->lessons())[0].id))[0].id);
    EXPECT_TRUE((*clips)[0].filmHere);
}

TEST_F(Store, TheCheckFindsAChangedFilm) {
    const auto library = openLibrary(dir_);
    const Made made = fill(*library, "film bytes");
    const fs::path file = (*library->clips(made.shot))[0].file;
    put(file, "Film bytes");
    EXPECT_TRUE(library->check(false)->empty());
    EXPECT_EQ(library->check(true)->size(), 1U);
}

TEST_F(Store, SeveralThreadsAndTwoOpeningsShareOneLibrary) {
    const auto a = openLibrary(dir_);
    const auto b = openLibrary(dir_);
    std::vector<std::thread> threads;
    std::atomic<int> failures{0};
    for (int t = 0; t < 4; ++t) {
        threads.emplace_back([&, t] {
            store::Library& library = t % 2 == 0 ? *a : *b;
            for (int i = 0; i < 25; ++i) {
                if (!library.add({library.make(records::kind::player, {}, {{"name", "p"}})}) ||
                    !library.players()) {
                    ++failures;
                }
            }
        });
    }
    for (auto& thread : threads) {
        thread.join();
    }
    EXPECT_EQ(failures, 0);
    EXPECT_EQ(a->players()->size(), 100U);
    EXPECT_EQ(b->players()->size(), 100U);
}

TEST(DefaultFolder, FollowsTheBaseDirectorySpecification) {
    const auto with = [](const char* told, const char* data, const char* home) {
        const auto set = [](const char* name, const char* value) {
            value == nullptr ? ::unsetenv(name) : ::setenv(name, value, 1);
        };
        set("PLUMBMARK_LIBRARY", told);
        set("XDG_DATA_HOME", data);
        set("HOME", home);
        const auto folder = store::defaultLibraryFolder();
        return folder ? folder->string() : folder.error().key;
    };
    const std::string home = std::getenv("HOME") == nullptr ? "" : std::getenv("HOME");
    EXPECT_EQ(with("/a/b", "/data", "/home/x"), "/a/b");
    EXPECT_EQ(with(nullptr, "/data", "/home/x"), "/data/plumbmark");
    EXPECT_EQ(with("", "relative", "/home/x"), "/home/x/.local/share/plumbmark");
    EXPECT_EQ(with(nullptr, nullptr, nullptr), "library.no_home");
    ::setenv("HOME", home.c_str(), 1);
}
