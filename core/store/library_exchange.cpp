// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// What travelled: parts of lesson files that are passed on unread, and what a shared folder holds already.
#include "base/hash.h"
#include "store/detail/sqlite_library.h"

namespace plumbmark::store::detail {

namespace {

/// How `exchanged` names a line: the fact's id, or "t" and the id for a tombstone.
base::Result<std::string> recordName(std::string_view line) {
    const auto record = records::recordFromText(line);
    if (!record) {
        return record.error();
    }
    return record->fact ? record->fact->id.hex() : "t" + record->tombstone->id.hex();
}

} // namespace

base::Result<void> SqliteLibrary::carry(const base::Id& lesson, const std::vector<CarriedPart>& parts) {
    const std::lock_guard guard(mutex_);
    if (auto may = writable(); !may) {
        return may;
    }
    auto transaction = Transaction::begin(db_);
    if (!transaction) {
        return transaction.error();
    }
    for (const CarriedPart& part : parts) {
        auto row = db_.query("INSERT OR REPLACE INTO carried(lesson, path, role, sha256, bytes) "
                             "VALUES (?1, ?2, ?3, ?4, ?5)");
        row.bind(1, lesson.hex()).bind(2, part.path).bind(3, part.role).bind(4, part.sha256);
        if (auto done = row.bind(5, part.bytes).run(); !done) {
            return done;
        }
    }
    return transaction->commit();
}

base::Result<std::vector<CarriedPart>> SqliteLibrary::carried(const base::Id& lesson) {
    const std::lock_guard guard(mutex_);
    auto query = db_.query("SELECT path, role, sha256, bytes FROM carried WHERE lesson = ?1 ORDER BY path");
    query.bind(1, lesson.hex());
    std::vector<CarriedPart> parts;
    auto read = forEachRow(query, [&](Statement& row) {
        parts.push_back({row.text(0), row.text(1), row.text(2), row.integer(3), filmPath(row.text(2))});
    });
    if (!read) {
        return read.error();
    }
    return parts;
}

base::Result<std::vector<std::string>> SqliteLibrary::linesNotIn(const base::Id& place) {
    const std::lock_guard guard(mutex_);
    std::vector<std::string> lines;
    auto facts =
        db_.query("SELECT line FROM fact f WHERE NOT EXISTS (SELECT 1 FROM exchanged e WHERE e.place = ?1 "
                  "AND e.record = f.id) ORDER BY id");
    facts.bind(1, place.hex());
    auto read = forEachRow(facts, [&](Statement& row) { lines.push_back(row.text(0)); });
    if (!read) {
        return read.error();
    }
    auto graves =
        db_.query("SELECT id, day FROM tombstone t WHERE NOT EXISTS (SELECT 1 FROM exchanged e WHERE "
                  "e.place = ?1 AND e.record = 't' || t.id) ORDER BY id");
    graves.bind(1, place.hex());
    if (read = addGraves(std::move(graves), lines); !read) {
        return read.error();
    }
    return lines;
}

base::Result<void> SqliteLibrary::noteSent(const base::Id& place, std::string_view file,
                                           const std::vector<std::string>& lines) {
    const std::lock_guard guard(mutex_);
    if (auto may = writable(); !may) {
        return may;
    }
    auto transaction = Transaction::begin(db_);
    if (!transaction) {
        return transaction.error();
    }
    auto row = db_.query("INSERT OR IGNORE INTO exchanged(place, record, file) VALUES (?1, ?2, ?3)");
    for (const std::string& line : lines) {
        const auto name = recordName(line);
        if (!name) {
            return name.error();
        }
        if (auto done = row.bind(1, place.hex()).bind(2, *name).bind(3, file).run(); !done) {
            return done;
        }
    }
    return transaction->commit();
}

base::Result<void> SqliteLibrary::noteArrived(const base::Id& place, std::string_view file,
                                              std::int64_t bytes, const std::vector<std::string>& lines) {
    const std::lock_guard guard(mutex_);
    // Of a file of another device the name is left out: only our own files are ours to take back.
    if (auto noted = noteSent(place, "", lines); !noted) {
        return noted;
    }
    return db_.query("INSERT OR REPLACE INTO arrived(place, file, bytes) VALUES (?1, ?2, ?3)")
        .bind(1, place.hex())
        .bind(2, file)
        .bind(3, bytes)
        .run();
}

base::Result<bool> SqliteLibrary::hasArrived(const base::Id& place, std::string_view file,
                                             std::int64_t bytes) {
    const std::lock_guard guard(mutex_);
    return db_.query("SELECT 1 FROM arrived WHERE place = ?1 AND file = ?2 AND bytes = ?3")
        .bind(1, place.hex())
        .bind(2, file)
        .bind(3, bytes)
        .any();
}

base::Result<std::vector<std::string>> SqliteLibrary::outdatedFiles(const base::Id& place) {
    const std::lock_guard guard(mutex_);
    auto query = db_.query("SELECT DISTINCT file FROM exchanged e WHERE place = ?1 AND file <> '' AND "
                           "length(record) = 32 AND NOT EXISTS (SELECT 1 FROM fact f WHERE f.id = e.record)");
    query.bind(1, place.hex());
    std::vector<std::string> files;
    auto read = forEachRow(query, [&](Statement& row) { files.push_back(row.text(0)); });
    if (!read) {
        return read.error();
    }
    return files;
}

base::Result<void> SqliteLibrary::forgetFile(const base::Id& place, std::string_view file) {
    const std::lock_guard guard(mutex_);
    if (auto may = writable(); !may) {
        return may;
    }
    return db_.query("DELETE FROM exchanged WHERE place = ?1 AND file = ?2")
        .bind(1, place.hex())
        .bind(2, file)
        .run();
}

} // namespace plumbmark::store::detail
