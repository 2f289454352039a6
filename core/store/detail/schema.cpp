// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "store/detail/schema.h"

#include <array>
#include <optional>
#include <vector>

#include "records/film_copy.h"

namespace plumbmark::store::detail {
namespace {

// The facts are the truth (lines are checked by records::recordFromText on the way in and out; SQLite 3.40
// does not allow json_valid in a schema that is not trusted); every other table but `device` can be made
// again from them.
constexpr const char* kTruth = R"sql(
CREATE TABLE device(
  one INTEGER PRIMARY KEY CHECK (one = 1),
  id TEXT NOT NULL CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
  clock_ms INTEGER NOT NULL,
  clock_n INTEGER NOT NULL CHECK (clock_n BETWEEN 0 AND 2147483647)
) STRICT;
CREATE TABLE fact(
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
  kind TEXT NOT NULL CHECK (length(kind) BETWEEN 1 AND 40 AND kind NOT GLOB '*[^a-z0-9_]*'),
  owner TEXT CHECK (owner IS NULL OR (length(owner) = 32 AND owner NOT GLOB '*[^0-9a-f]*')),
  line TEXT NOT NULL CHECK (line GLOB '{*}' AND length(line) <= 4194304)
) STRICT;
CREATE INDEX fact_by_owner ON fact(owner, kind);
CREATE TABLE tombstone(
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
  day TEXT NOT NULL CHECK (day GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
) STRICT, WITHOUT ROWID;
)sql";

// As version 1 had them. Names are folded (see case_fold.h) so that searching knows no case.
constexpr const char* kIndexTables = R"sql(
DROP TABLE IF EXISTS belongs;
DROP TABLE IF EXISTS player;
DROP TABLE IF EXISTS lesson;
DROP TABLE IF EXISTS shot;
DROP TABLE IF EXISTS clip;
DROP TABLE IF EXISTS finding;
CREATE TABLE belongs(
  owner TEXT NOT NULL,
  fact TEXT NOT NULL REFERENCES fact(id) ON DELETE CASCADE,
  PRIMARY KEY (owner, fact)
) STRICT, WITHOUT ROWID;
CREATE INDEX belongs_by_fact ON belongs(fact);
CREATE TABLE player(
  id TEXT NOT NULL PRIMARY KEY REFERENCES fact(id) ON DELETE CASCADE,
  name TEXT NOT NULL,
  words TEXT NOT NULL,
  hand TEXT CHECK (hand IN ('right', 'left')),
  stature_m REAL CHECK (stature_m > 0 AND stature_m < 10),
  disputed INTEGER NOT NULL CHECK (disputed >= 0)
) STRICT, WITHOUT ROWID;
CREATE TABLE lesson(
  id TEXT NOT NULL PRIMARY KEY REFERENCES fact(id) ON DELETE CASCADE,
  player TEXT NOT NULL,
  title TEXT NOT NULL,
  day TEXT NOT NULL,
  words TEXT NOT NULL,
  made_ms INTEGER NOT NULL,
  disputed INTEGER NOT NULL CHECK (disputed >= 0)
) STRICT, WITHOUT ROWID;
CREATE INDEX lesson_by_player ON lesson(player, day);
CREATE INDEX lesson_by_day ON lesson(day, made_ms);
CREATE TABLE shot(
  id TEXT NOT NULL PRIMARY KEY REFERENCES fact(id) ON DELETE CASCADE,
  lesson TEXT NOT NULL,
  made_ms INTEGER NOT NULL,
  made_n INTEGER NOT NULL,
  made_device TEXT NOT NULL,
  kind TEXT NOT NULL,
  club TEXT NOT NULL,
  disputed INTEGER NOT NULL CHECK (disputed >= 0)
) STRICT, WITHOUT ROWID;
CREATE INDEX shot_by_lesson ON shot(lesson, made_ms);
CREATE TABLE clip(
  id TEXT NOT NULL PRIMARY KEY REFERENCES fact(id) ON DELETE CASCADE,
  shot TEXT NOT NULL,
  made_ms INTEGER NOT NULL,
  view TEXT NOT NULL CHECK (view IN ('face-on', 'down-the-line')),
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
  disputed INTEGER NOT NULL CHECK (disputed >= 0)
) STRICT, WITHOUT ROWID;
CREATE INDEX clip_by_shot ON clip(shot, made_ms);
CREATE INDEX clip_by_film ON clip(sha256);
CREATE TABLE finding(
  fact TEXT NOT NULL REFERENCES fact(id) ON DELETE CASCADE,
  place INTEGER NOT NULL,
  clip TEXT NOT NULL,
  measurement TEXT NOT NULL,
  moment TEXT NOT NULL,
  value REAL NOT NULL CHECK (value BETWEEN -1e12 AND 1e12),
  sigma REAL NOT NULL CHECK (sigma > 0 AND sigma < 1e12),
  unit TEXT NOT NULL,
  method INTEGER NOT NULL,
  PRIMARY KEY (fact, place)
) STRICT, WITHOUT ROWID;
CREATE INDEX finding_by_measurement ON finding(measurement, moment, clip);
)sql";

// Since version 2: counts kept with the lesson (`within`: things inside it that have two versions).
constexpr const char* kCounts = R"sql(
ALTER TABLE lesson ADD COLUMN shots INTEGER NOT NULL DEFAULT 0 CHECK (shots >= 0);
ALTER TABLE lesson ADD COLUMN clips INTEGER NOT NULL DEFAULT 0 CHECK (clips >= 0);
ALTER TABLE lesson ADD COLUMN within INTEGER NOT NULL DEFAULT 0 CHECK (within >= 0);
)sql";

// carried: parts of lesson files that this version does not understand, passed on with their lesson.
// exchanged, arrived: what a shared folder holds already, and which of its files have been read.
constexpr const char* kTravel = R"sql(
CREATE TABLE carried(
  lesson TEXT NOT NULL REFERENCES fact(id) ON DELETE CASCADE,
  path TEXT NOT NULL CHECK (length(path) BETWEEN 1 AND 200),
  role TEXT NOT NULL CHECK (length(role) BETWEEN 1 AND 200),
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
  bytes INTEGER NOT NULL CHECK (bytes >= 0),
  PRIMARY KEY (lesson, path)
) STRICT, WITHOUT ROWID;
CREATE INDEX carried_by_part ON carried(sha256);
CREATE TABLE exchanged(
  place TEXT NOT NULL CHECK (length(place) = 32 AND place NOT GLOB '*[^0-9a-f]*'),
  record TEXT NOT NULL CHECK (length(record) BETWEEN 32 AND 33),
  file TEXT NOT NULL,
  PRIMARY KEY (place, record)
) STRICT, WITHOUT ROWID;
CREATE INDEX exchanged_by_file ON exchanged(place, file);
CREATE TABLE arrived(
  place TEXT NOT NULL CHECK (length(place) = 32 AND place NOT GLOB '*[^0-9a-f]*'),
  file TEXT NOT NULL,
  bytes INTEGER NOT NULL CHECK (bytes >= 0),
  PRIMARY KEY (place, file)
) STRICT, WITHOUT ROWID;
)sql";

// Since version 3: copies of films that are shared in place of the film itself (kind film_copy).
constexpr const char* kCopies = R"sql(
DROP TABLE IF EXISTS film_copy;
CREATE TABLE film_copy(
  fact TEXT NOT NULL PRIMARY KEY REFERENCES fact(id) ON DELETE CASCADE,
  clip TEXT NOT NULL,
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
  covered INTEGER NOT NULL CHECK (covered IN (0, 1))
) STRICT, WITHOUT ROWID;
CREATE INDEX film_copy_by_clip ON film_copy(clip);
CREATE INDEX film_copy_by_film ON film_copy(sha256);
)sql";

base::Result<void> makeVersion1(Database& db) {
    if (auto made = db.exec(kTruth); !made) {
        return made;
    }
    return db.exec(kIndexTables);
}

base::Result<void> makeVersion2(Database& db) {
    if (auto made = db.exec(kCounts); !made) {
        return made;
    }
    if (auto counted = db.exec("UPDATE lesson SET " + std::string(kLessonCounts)); !counted) {
        return counted;
    }
    return db.exec(kTravel);
}

base::Result<void> makeVersion3(Database& db) {
    if (auto made = db.exec(kCopies); !made) {
        return made;
    }
    // Such facts may have come from a newer device already; an older version keeps what it does not know.
    std::vector<records::Fact> facts;
    auto query = db.query("SELECT line FROM fact WHERE kind = 'film_copy'");
    auto read = forEachRow(query, [&](Statement& row) -> base::Result<void> {
        auto record = records::recordFromText(row.view(0));
        if (!record || !record->fact) {
            return databaseError(SQLITE_CORRUPT);
        }
        facts.push_back(std::move(*record->fact));
        return {};
    });
    if (!read) {
        return read;
    }
    for (const records::Fact& fact : facts) {
        if (auto done = indexFilmCopy(db, fact); !done) {
            return done;
        }
    }
    return {};
}

constexpr std::array<Step, kSchemaVersion> kSteps{makeVersion1, makeVersion2, makeVersion3};

} // namespace

std::span<const Step> steps() {
    return kSteps;
}

base::Result<void> makeIndexTables(Database& db) {
    if (auto made = db.exec(kIndexTables); !made) {
        return made;
    }
    if (auto made = db.exec(kCounts); !made) {
        return made;
    }
    return db.exec(kCopies);
}

base::Result<void> indexFilmCopy(Database& db, const records::Fact& fact) {
    const auto copy = fact.path.empty() ? std::nullopt : records::filmCopyOf(fact.body);
    if (!copy) {
        return {};
    }
    return db.query("INSERT INTO film_copy(fact, clip, sha256, covered) VALUES (?1, ?2, ?3, ?4)")
        .bind(1, fact.id.hex())
        .bind(2, fact.path.back().hex())
        .bind(3, copy->sha256)
        .bind(4, std::int64_t{copy->headCovered ? 1 : 0})
        .run();
}

base::Result<void> upgrade(Database& db, std::span<const Step> all, const std::filesystem::path& backup) {
    const auto version = db.number("PRAGMA user_version");
    if (!version) {
        return version.error();
    }
    if (*version >= static_cast<std::int64_t>(all.size())) {
        return {};
    }
    if (!backup.empty()) {
        if (auto copied = copyInto(db, backup); !copied) {
            return copied;
        }
        // A copy that cannot be opened and read is no backup.
        auto check = Database::open(backup, Database::Mode::readOnly);
        if (!check) {
            return check.error();
        }
        auto quick = check->prepare("PRAGMA quick_check(1)");
        if (!quick) {
            return quick.error();
        }
        const auto row = quick->step();
        if (!row || !*row || quick->text(0) != "ok") {
            return databaseError(SQLITE_CORRUPT);
        }
    }
    for (std::int64_t next = *version; next < static_cast<std::int64_t>(all.size()); ++next) {
        auto transaction = Transaction::begin(db);
        if (!transaction) {
            return transaction.error();
        }
        if (auto done = all[static_cast<std::size_t>(next)](db); !done) {
            return done;
        }
        if (auto set = db.exec("PRAGMA user_version=" + std::to_string(next + 1)); !set) {
            return set;
        }
        if (auto set = db.exec("PRAGMA application_id=" + std::to_string(kApplicationId)); !set) {
            return set;
        }
        auto keys = db.prepare("PRAGMA foreign_key_check");
        if (!keys) {
            return keys.error();
        }
        const auto broken = keys->step();
        if (!broken) {
            return broken.error();
        }
        if (*broken) {
            return databaseError(SQLITE_CORRUPT);
        }
        keys->reset();
        if (auto committed = transaction->commit(); !committed) {
            return committed;
        }
    }
    return {};
}

} // namespace plumbmark::store::detail
