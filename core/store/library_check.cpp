// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "base/guarded.h"
#include "base/hash.h"
#include "store/detail/sqlite_library.h"

namespace plumbmark::store::detail {

namespace fs = std::filesystem;

base::Result<std::vector<std::string>> SqliteLibrary::check(bool readFilms, const base::Progress& progress) {
    const std::lock_guard guard(mutex_);
    std::vector<std::string> troubles;
    for (const auto& [pragma, good] :
         {std::pair{"PRAGMA integrity_check(20)", "ok"}, std::pair{"PRAGMA foreign_key_check", ""}}) {
        auto query = db_.query(pragma);
        auto read = forEachRow(query, [&, g = std::string_view(good)](Statement& row) -> base::Result<void> {
            if (tellsWantOfMemory(row.view(0))) {
                return base::outOfMemory();
            }
            if (row.view(0) != g && troubles.size() < 20) {
                troubles.push_back("The database is damaged: " + row.text(0) +
                                   ". Put a backup in its place (\"plumbmark restore\").");
            }
            return {};
        });
        if (!read) {
            return read.error();
        }
    }
    const bool sound = troubles.empty();
    auto facts = db_.query("SELECT id, kind, owner, line FROM fact");
    auto read = forEachRow(facts, [&](Statement& row) {
        const auto record = records::recordFromText(row.view(3));
        const bool good =
            record && record->fact && record->fact->id.hex() == row.view(0) &&
            record->fact->kind == row.view(1) &&
            (record->fact->path.empty() ? row.isNull(2) : record->fact->path.back().hex() == row.view(2));
        if (!good) {
            troubles.push_back(
                "The record " + row.text(0) +
                " is not as it was written. Put a backup in its place (\"plumbmark restore\").");
        }
    });
    if (!read) {
        return read.error();
    }
    if (sound && troubles.empty() && !readOnly_) {
        // The tables for lists are made anew aside and compared; either way nothing stays changed.
        auto transaction = Transaction::begin(db_);
        if (!transaction) {
            return transaction.error();
        }
        const auto before = indexDigest();
        if (!before) {
            return before.error();
        }
        if (auto filled = fillIndex(); !filled) {
            return filled.error();
        }
        const auto after = indexDigest();
        if (!after) {
            return after.error();
        }
        if (*before != *after) {
            troubles.push_back(
                "The lists do not agree with the records. No record is lost; \"plumbmark check "
                "--repair\" makes the lists anew.");
        }
    }
    auto films = db_.query("SELECT sha256 FROM clip UNION SELECT sha256 FROM film_copy UNION SELECT sha256 "
                           "FROM carried");
    read = forEachRow(films, [&](Statement& row) -> base::Result<void> {
        std::error_code ignored;
        const fs::path file = filmPath(row.view(0));
        if (!readFilms || !fs::is_regular_file(file, ignored)) {
            return {}; // a film may have stayed at home: that is no damage
        }
        const auto hash = base::sha256OfFile(file, progress);
        if (!hash) {
            return hash.error();
        }
        if (hash->sha256 != row.view(0)) {
            troubles.push_back("The film " + row.text(0) +
                               " is damaged; bring it in again, or import a lesson "
                               "file that holds it.");
        }
        return {};
    });
    if (!read) {
        return read.error();
    }
    return troubles;
}

} // namespace plumbmark::store::detail
