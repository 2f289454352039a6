// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <array>

#include "store/detail/db.h"
#include "store/detail/schema.h"
#include "store_support.h"

using namespace plumbmark;
using namespace plumbmark::testing_support;
using namespace plumbmark::store::detail;

namespace {

base::Result<void> goodStep(Database& db) {
    return db.exec("ALTER TABLE player ADD COLUMN shoe TEXT");
}
base::Result<void> badStep(Database& db) {
    if (auto done = db.exec("ALTER TABLE player ADD COLUMN shoe TEXT"); !done) {
        return done;
    }
    return db.exec("UPDATE no_such_table SET x=1");
}

} // namespace

TEST(Switches, AreSetAndReadBackOnEveryConnection) {
    const auto stage = tempFolder();
    { openLibrary(stage.path()); }
    auto db = Database::open(stage.path() / "library.db", Database::Mode::readWrite);
    ASSERT_TRUE(db);
    const auto pragma = [&](const char* name) {
        auto query = db->prepare(std::string("PRAGMA ") + name);
        EXPECT_TRUE(query && *query->step());
        return query->text(0);
    };
    EXPECT_EQ(pragma("foreign_keys"), "1");
    EXPECT_EQ(pragma("journal_mode"), "wal");
    EXPECT_EQ(pragma("synchronous"), "2"); // FULL
    EXPECT_EQ(pragma("trusted_schema"), "0");
    EXPECT_EQ(pragma("secure_delete"), "1");
    EXPECT_EQ(pragma("cell_size_check"), "1");
    EXPECT_EQ(pragma("busy_timeout"), "5000");
    EXPECT_EQ(pragma("mmap_size"), "0");
    EXPECT_TRUE(db->exec("SELECT 1"));
    EXPECT_FALSE(db->exec("SELECT \"no such column\"")) << "a mistyped column must not turn into a text";
    EXPECT_FALSE(db->exec("PRAGMA writable_schema=ON; UPDATE sqlite_schema SET sql=''"));
}

TEST(Upgrade, MakesABackupFirstAndKeepsEverything) {
    const auto stage = tempFolder();
    { fill(*openLibrary(stage.path()), "film"); }
    const fs::path backup = stage.path() / "backup.db";
    const std::array<Step, 4> all{steps()[0], steps()[1], steps()[2], goodStep};
    {
        auto db = Database::open(stage.path() / "library.db", Database::Mode::readWrite);
        ASSERT_TRUE(db);
        ASSERT_TRUE(upgrade(*db, all, backup));
        EXPECT_EQ(*db->number("PRAGMA user_version"), 4);
        EXPECT_EQ(*db->number("SELECT count(*) FROM fact"), 5);
    }
    auto copy = Database::open(backup, Database::Mode::readOnly);
    ASSERT_TRUE(copy);
    EXPECT_EQ(*copy->number("PRAGMA user_version"), 3);
    EXPECT_EQ(*copy->number("PRAGMA application_id"), kApplicationId);
    EXPECT_EQ(*copy->number("SELECT count(*) FROM fact"), 5);
}

TEST(Upgrade, AFailingStepOrBackupChangesNothing) {
    const auto stage = tempFolder();
    { fill(*openLibrary(stage.path()), "film"); }
    auto db = Database::open(stage.path() / "library.db", Database::Mode::readWrite);
    ASSERT_TRUE(db);
    const std::array<Step, 4> bad{steps()[0], steps()[1], steps()[2], badStep};
    EXPECT_FALSE(upgrade(*db, bad, stage.path() / "backup.db"));
    EXPECT_EQ(*db->number("PRAGMA user_version"), 3);
    EXPECT_EQ(*db->number("SELECT count(*) FROM pragma_table_info('player') WHERE name='shoe'"), 0);

    const std::array<Step, 4> good{steps()[0], steps()[1], steps()[2], goodStep};
    EXPECT_FALSE(upgrade(*db, good, stage.path() / "no" / "such" / "folder.db"));
    EXPECT_EQ(*db->number("PRAGMA user_version"), 3);
}
