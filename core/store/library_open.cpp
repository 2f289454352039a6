// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Finding, making, upgrading and opening the library's files.
#include <array>
#include <cstdlib>

#include "base/guarded.h"
#include "store/backup.h"
#include "store/detail/backup_folder.h"
#include "store/detail/guarded_library.h"
#include "store/detail/schema.h"
#include "store/detail/sqlite_library.h"

namespace plumbmark::store {

namespace fs = std::filesystem;
using base::Id;
using detail::damaged;
using detail::Database;
using detail::idOf;
using detail::Lock;

namespace detail {

base::Result<void> SqliteLibrary::writable() const {
    if (readOnly_) {
        return base::inputError("library.read_only", notice_);
    }
    return {};
}

base::Result<void> SqliteLibrary::start() {
    {
        auto query = db_.query("SELECT clock_ms, clock_n FROM device");
        const auto row = query.step();
        if (!row) {
            return row.error();
        }
        if (*row) {
            clock_.resume(query.integer(0), query.integer(1));
        }
    }
    if (lock_.alone() && !readOnly_) {
        // Nobody else is at work: what an interrupted run left behind can go.
        std::error_code ignored;
        base::removeAll(options_.folder / "staging");
        if (auto dropped = sweepFilms(); !dropped) {
            return dropped;
        }
        if (fs::exists(options_.folder / kErasing, ignored)) {
            if (auto gone = leaveNoTrace({}); !gone) {
                return gone;
            }
        }
        if (options_.dailyBackup) {
            keepDailyBackup();
        }
    }
    if (!lock_.share()) {
        return databaseError(SQLITE_BUSY);
    }
    return {};
}

} // namespace detail

namespace {

/// A new library appears in one piece: made aside, then renamed.
base::Result<void> makeLibrary(const fs::path& file, const LibraryOptions& options) {
    auto stage = base::StagingFolder::create(options.folder / "staging", *options.calls);
    if (!stage) {
        return stage.error();
    }
    const fs::path fresh = stage->path() / "library.db";
    {
        auto db = Database::open(fresh, Database::Mode::create);
        if (!db) {
            return db.error();
        }
        if (auto made = detail::upgrade(*db, detail::steps(), {}); !made) {
            return made;
        }
        auto row = db->query("INSERT INTO device(one, id, clock_ms, clock_n) VALUES (1, ?1, 0, 0)");
        if (auto done = row.bind(1, options.ids->next().hex()).run(); !done) {
            return done;
        }
    }
    // For its owner alone, whatever the folder allows; the log beside it takes over the same permissions.
    std::error_code error;
    fs::permissions(fresh, fs::perms::owner_read | fs::perms::owner_write, error);
    if (error) {
        return base::failure("library.failed",
                             "The library could not be made private; choose another folder.");
    }
    return base::moveIntoPlace(fresh, file, *options.calls);
}

base::Result<std::unique_ptr<Library>> openLibrary(const LibraryOptions& options);

} // namespace

base::Result<fs::path> defaultLibraryFolder() {
    const auto variable = [](const char* name) -> std::optional<fs::path> {
        const char* value = std::getenv(name);
        return value == nullptr || *value == '\0' ? std::nullopt : std::optional(fs::path(value));
    };
    if (const auto told = variable("PLUMBMARK_LIBRARY")) {
        return *told;
    }
    // The base directory specification: a relative path there is invalid and ignored.
    if (const auto data = variable("XDG_DATA_HOME"); data && data->is_absolute()) {
        return *data / "plumbmark";
    }
    if (const auto home = variable("HOME"); home && home->is_absolute()) {
        return *home / ".local" / "share" / "plumbmark";
    }
    return base::inputError("library.no_home",
                            "It is not known where your files lie; name a folder with --library.");
}

base::Result<std::unique_ptr<Library>> Library::open(const LibraryOptions& options) {
    return base::guarded([&] { return openLibrary(options); });
}

namespace {

base::Result<std::unique_ptr<Library>> openLibrary(const LibraryOptions& options) {
    std::error_code error;
    const fs::path file = options.folder / "library.db";
    if (fs::exists(options.folder, error) && !fs::is_directory(options.folder, error)) {
        return base::inputError("library.folder", "\"" + options.folder.string() +
                                                      "\" is not a folder; name a folder for the library.");
    }
    if (auto made = base::makeFolders(options.folder, *options.calls); !made) {
        return base::inputError("library.folder", "The library's folder \"" + options.folder.string() +
                                                      "\" cannot be made; choose another one.");
    }
    auto lock = Lock::take(options.folder / "lock");
    if (!lock) {
        return lock.error();
    }
    if (!fs::exists(file, error)) {
        const fs::path media = options.folder / "media";
        if (fs::is_directory(media, error) && !fs::is_empty(media, error)) {
            return base::failure("library.damaged",
                                 "The file library.db is missing although films are there; put a "
                                 "backup in its place (\"plumbmark restore\"), or choose another folder.");
        }
        if (!lock->alone()) {
            return detail::databaseError(SQLITE_BUSY);
        }
        if (auto made = makeLibrary(file, options); !made) {
            return made.error();
        }
    }
    if (fs::file_size(file, error) == 0 || error) {
        return damaged(); // a library of ours is never empty: it appears in one piece
    }
    // Looked at without the right to write first: a damaged, foreign or newer file stays as it is.
    bool readOnly = false;
    std::string notice;
    {
        // A journal beside it means that a program was ended while it changed the file's form (a new library
        // turns to its log at the first opening): undone before anybody can read.
        const bool cutOff = fs::exists(file.string() + "-journal", error);
        auto look = Database::open(file, cutOff ? Database::Mode::recover : Database::Mode::readOnly);
        if (!look) {
            return look.error();
        }
        const auto application = look->number("PRAGMA application_id");
        const auto version = look->number("PRAGMA user_version");
        if (!application || !version) {
            return application ? version.error() : application.error();
        }
        if (*application != detail::kApplicationId || *version < 1) {
            return base::inputError("library.not_ours",
                                    "The file library.db in \"" + options.folder.string() +
                                        "\" is not a lesson library; choose another folder.");
        }
        if (*version > detail::kSchemaVersion) {
            readOnly = true;
            notice =
                "This library was made by a newer version of the program and can only be read here; update "
                "the program to change it.";
        }
    }
    auto db = Database::open(file, readOnly ? Database::Mode::readOnly : Database::Mode::readWrite);
    if (!db) {
        return db.error();
    }
    bool upgraded = false;
    if (!readOnly) {
        const auto version = db->number("PRAGMA user_version");
        if (!version) {
            return version.error();
        }
        if (*version < detail::kSchemaVersion) {
            if (!lock->alone()) {
                return detail::databaseError(SQLITE_BUSY);
            }
            // Without a whole copy of the library as it was nothing is changed.
            if (auto kept = detail::makeBackup(*db, options, BackupKind::beforeStep); !kept) {
                return kept.error();
            }
            if (auto done = detail::upgrade(*db, detail::steps(), {}); !done) {
                return done.error();
            }
            upgraded = true;
        }
    }
    // What every question relies on; a newer library may have changed it.
    for (const std::string_view needed :
         {"SELECT id, clock_ms, clock_n FROM device", "SELECT id, kind, owner, line FROM fact",
          "SELECT id, day FROM tombstone", "SELECT owner, fact FROM belongs",
          "SELECT id, name, words, hand, stature_m, disputed FROM player",
          "SELECT id, player, title, day, words, made_ms, disputed, shots, clips, within FROM lesson",
          "SELECT id, lesson, made_ms, made_n, made_device, disputed FROM shot",
          "SELECT id, shot, made_ms, sha256, disputed FROM clip",
          "SELECT fact, clip, sha256, covered FROM film_copy",
          "SELECT lesson, path, role, sha256, bytes FROM carried"}) {
        if (auto query = db->prepare(needed); !query) {
            if (query.error().key != "library.failed") {
                return query.error();
            }
            return readOnly ? base::inputError(
                                  "library.newer_unreadable",
                                  "This library was made by a newer version of the program; update the "
                                  "program to open it.")
                            : damaged();
        }
    }
    std::optional<Id> device;
    {
        auto query = db->query("SELECT id FROM device");
        const auto row = query.step();
        if (!row) {
            return row.error();
        }
        device = *row ? idOf(query, 0) : std::nullopt;
    }
    if (!device) {
        return damaged();
    }
    auto library = std::make_unique<detail::SqliteLibrary>(options, std::move(*lock), std::move(*db), *device,
                                                           readOnly, std::move(notice));
    if (auto started = library->start(); !started) {
        return started.error();
    }
    if (upgraded) {
        // What the lists count as disputed may be more than an older version counted.
        if (auto filled = library->rebuildIndex(); !filled) {
            return filled.error();
        }
    }
    return std::unique_ptr<Library>(std::make_unique<detail::GuardedLibrary>(std::move(library)));
}

} // namespace

} // namespace plumbmark::store
