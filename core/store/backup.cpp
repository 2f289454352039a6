// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "store/backup.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <map>
#include <set>

#include "base/guarded.h"
#include "base/hash.h"
#include "records/fact.h"
#include "store/detail/backup_folder.h"
#include "store/detail/db.h"
#include "store/detail/lock.h"
#include "store/detail/schema.h"
#include "store/detail/sqlite_library.h"

namespace plumbmark::store {

namespace fs = std::filesystem;
using detail::Database;
using detail::Statement;

namespace {

constexpr std::string_view kMaking = ".making-";
constexpr std::size_t kTimeLength = 16; // 20261125t093000z

constexpr std::array kKinds{std::pair{BackupKind::daily, std::string_view("daily")},
                            std::pair{BackupKind::byHand, std::string_view("by-hand")},
                            std::pair{BackupKind::beforeStep, std::string_view("before-step")},
                            std::pair{BackupKind::afterErasing, std::string_view("after-erasing")},
                            std::pair{BackupKind::beforeRestore, std::string_view("before-restore")}};

/// 20261125t093000z-daily-1a2b3c4d: sorts by time and says nothing about anybody.
std::string nameFor(BackupKind kind, base::UnixMs at, base::IdSource& ids) {
    std::string time;
    for (const char c : base::isoTime(at).substr(0, 19)) {
        if (c != '-' && c != ':') {
            time += c == 'T' ? 't' : c;
        }
    }
    return time + "z-" + std::string(name(kind)) + "-" + ids.next().hex().substr(0, 8);
}

std::optional<Backup> fromName(const fs::path& folder) {
    const std::string text = folder.filename().string();
    if (text.size() < kTimeLength + 3 || text[8] != 't' || text[kTimeLength - 1] != 'z' ||
        text[kTimeLength] != '-') {
        return std::nullopt;
    }
    Backup backup;
    backup.folder = folder;
    backup.name = text;
    backup.madeAt = text.substr(0, kTimeLength);
    backup.day = text.substr(0, 4) + "-" + text.substr(4, 2) + "-" + text.substr(6, 2);
    if (!base::fromIso(backup.day)) {
        return std::nullopt;
    }
    const std::size_t end = text.rfind('-');
    for (const auto& [kind, word] : kKinds) {
        if (text.substr(kTimeLength + 1, end - kTimeLength - 1) == word) {
            backup.kind = kind;
            return backup;
        }
    }
    return std::nullopt;
}

/// Monday of the week, in days since 1970 (which began on a Thursday).
std::int64_t weekOf(const std::string& day) {
    const std::int64_t days = *base::fromIso(day) / (24 * 3600 * 1000LL);
    return (days + 3) / 7;
}

base::Error damagedBackup(std::string_view what) {
    return base::failure("backup.damaged", "This backup is damaged (" + std::string(what) +
                                               "); nothing was changed. Choose another one.");
}
/// `why` kept it from being read: that is no damage when it was only the memory.
base::Error unreadableBackup(const base::Error& why, std::string_view what) {
    return why.key == base::kMemoryOut ? why : damagedBackup(what);
}

/// The film's name again in another folder: a hard link, or a copy where links cannot be.
base::Result<void> linkOrCopy(const fs::path& from, const fs::path& to, bool link,
                              const base::Progress& progress, base::FileCalls& calls) {
    std::error_code error;
    if (link) {
        fs::create_hard_link(from, to, error);
        if (!error) {
            return {};
        }
    }
    const auto copied = base::copyFile(from, to, progress, calls);
    if (!copied) {
        return copied.error();
    }
    return {};
}

base::Result<void> takeFilms(const fs::path& from, const fs::path& to, bool link,
                             const base::Progress& progress, base::FileCalls& calls) {
    const auto files = detail::filmFiles(from);
    if (!files) {
        return files.error();
    }
    std::vector<fs::path> films;
    std::copy_if(files->begin(), files->end(), std::back_inserter(films),
                 [](const fs::path& file) { return base::isSha256Hex(file.filename().string()); });
    for (std::size_t i = 0; i < films.size(); ++i) {
        const fs::path target = to / films[i].parent_path().filename() / films[i].filename();
        if (auto made = base::makeFolders(target.parent_path(), calls); !made) {
            return made;
        }
        if (auto done = linkOrCopy(films[i], target, link, progress, calls); !done) {
            return done;
        }
        progress.tell(static_cast<double>(i + 1) / static_cast<double>(films.size()), "Keeping the films");
        if (progress.cancelled()) {
            return base::failure("cancelled", "Stopped on request.");
        }
    }
    return {};
}

/// What a stranger's or an old database must pass before anything in it counts.
enum class Depth {
    structure, ///< of a copy just made from a library at work
    everything ///< also every record's text and all indexes
};
base::Result<BackupState> stateOf(Database& db, Depth depth) {
    const auto application = db.number("PRAGMA application_id");
    const auto version = db.number("PRAGMA user_version");
    if (!application || !version) {
        return unreadableBackup(application ? version.error() : application.error(), "its database");
    }
    if (*application != detail::kApplicationId || *version < 1) {
        return base::inputError("backup.not_ours",
                                "This is no backup of a lesson library; choose another folder.");
    }
    if (*version > detail::kSchemaVersion) {
        return base::inputError("backup.newer",
                                "This backup was made by a newer version of the program; update the "
                                "program to restore it.");
    }
    for (const auto& [pragma, good] :
         {depth == Depth::everything ? std::pair{"PRAGMA integrity_check(1)", "ok"}
                                     : std::pair{"PRAGMA quick_check(1)", "ok"},
          std::pair{"PRAGMA foreign_key_check", ""}}) {
        auto query = db.query(pragma);
        bool sound = true;
        auto read =
            detail::forEachRow(query, [&, g = std::string_view(good)](Statement& row) -> base::Result<void> {
                sound = sound && row.view(0) == g;
                return detail::tellsWantOfMemory(row.view(0)) ? base::Result<void>(base::outOfMemory())
                                                              : base::Result<void>();
            });
        if (!read || !sound) {
            return read ? damagedBackup("its database") : unreadableBackup(read.error(), "its database");
        }
    }
    BackupState state;
    state.version = static_cast<int>(*version);
    if (depth == Depth::structure) {
        return state;
    }
    bool readable = true;
    auto facts = db.query("SELECT line FROM fact");
    auto read = detail::forEachRow(facts, [&](Statement& row) {
        const auto record = records::recordFromText(row.view(0));
        readable = readable && record && record->fact;
        state.lessons += record && record->fact && record->fact->kind == records::kind::lesson ? 1 : 0;
        ++state.records;
    });
    if (!read || !readable) {
        return read ? damagedBackup("a record") : unreadableBackup(read.error(), "a record");
    }
    return state;
}

} // namespace

std::string_view name(BackupKind kind) {
    return std::find_if(kKinds.begin(), kKinds.end(), [&](const auto& row) { return row.first == kind; })
        ->second;
}

std::vector<Backup> listBackupsIn(const fs::path& backups) {
    std::vector<Backup> found;
    // What cannot be listed is not there to choose from.
    const auto folders = base::listFolder(backups);
    for (const fs::path& folder : folders ? *folders : std::vector<fs::path>()) {
        std::error_code ignored;
        if (fs::is_regular_file(folder / "library.db", ignored)) {
            if (auto backup = fromName(folder)) {
                found.push_back(std::move(*backup));
            }
        }
    }
    std::sort(found.begin(), found.end(), [](const Backup& a, const Backup& b) { return a.name > b.name; });
    return found;
}

std::vector<Backup> listBackups(const fs::path& libraryFolder) {
    return listBackupsIn(libraryFolder / "backups");
}

std::vector<Backup> outdated(const std::vector<Backup>& backups) {
    constexpr std::size_t kDays = 7, kWeeks = 4, kOthers = 3;
    std::vector<Backup> sorted = backups;
    std::sort(sorted.begin(), sorted.end(), [](const Backup& a, const Backup& b) { return a.name > b.name; });
    std::vector<Backup> gone;
    std::set<std::string> days;
    std::set<std::int64_t> weeks;
    std::map<BackupKind, std::size_t> others;
    for (const Backup& backup : sorted) {
        bool stays = false;
        if (backup.kind == BackupKind::daily) {
            if (days.size() < kDays && days.insert(backup.day).second) {
                stays = true;
            }
            if (weeks.size() < kWeeks && weeks.insert(weekOf(backup.day)).second) {
                stays = true;
            }
        } else {
            stays = ++others[backup.kind] <= kOthers;
        }
        if (!stays) {
            gone.push_back(backup);
        }
    }
    return gone;
}

namespace {

base::Result<BackupState> checked(const fs::path& backup, bool readFilms, const base::Progress& progress) {
    std::error_code error;
    if (!fs::is_regular_file(backup / "library.db", error)) {
        return base::inputError("backup.missing", "There is no backup in \"" + backup.filename().string() +
                                                      "\"; \"plumbmark restore\" lists those there are.");
    }
    auto db = Database::open(backup / "library.db", Database::Mode::readOnly);
    if (!db) {
        return unreadableBackup(db.error(), "its database");
    }
    auto state = stateOf(*db, Depth::everything);
    if (!state) {
        return state;
    }
    // Of the copies made for sharing (since version 3) none need be here.
    auto films = db->query(state->version < 3
                               ? "SELECT DISTINCT sha256, 1 FROM clip"
                               : "SELECT sha256, max(needed) FROM (SELECT sha256, 1 AS needed FROM clip "
                                 "UNION ALL SELECT sha256, 0 FROM film_copy) GROUP BY sha256");
    auto read = detail::forEachRow(films, [&](Statement& row) -> base::Result<void> {
        const std::string sha256 = row.text(0);
        const fs::path file = backup / "media" / sha256.substr(0, 2) / sha256;
        std::error_code ignored;
        if (!fs::is_regular_file(file, ignored)) {
            state->filmsMissing += static_cast<int>(row.integer(1)); // it may have stayed at home
            return {};
        }
        ++state->films;
        if (readFilms) {
            const auto hash = base::sha256OfFile(file, progress);
            if (!hash) {
                return hash.error();
            }
            if (hash->sha256 != sha256) {
                return damagedBackup("a film");
            }
        }
        return {};
    });
    if (!read) {
        return read.error();
    }
    return state;
}

base::Result<Backup> copied(const Backup& backup, const fs::path& folder, const base::Progress& progress,
                            base::FileCalls& calls) {
    std::error_code error;
    if (!fs::is_directory(folder, error)) {
        return base::inputError("file.folder_missing", "There is no folder \"" + folder.string() +
                                                           "\"; make it, or choose another one.");
    }
    const fs::path making = folder / (std::string(kMaking) + backup.name);
    const fs::path target = folder / backup.name;
    if (fs::exists(target, error)) {
        return base::inputError("backup.there", "This backup is in that folder already.");
    }
    const auto stop = [&](const base::Error& why) {
        base::removeAll(making);
        return why;
    };
    base::removeAll(making); // of an interrupted run
    if (auto made = base::makeFolders(making, calls); !made) {
        return stop(made.error());
    }
    if (const auto there =
            base::copyFile(backup.folder / "library.db", making / "library.db", progress, calls);
        !there) {
        return stop(there.error());
    }
    if (auto done = takeFilms(backup.folder / "media", making / "media", false, progress, calls); !done) {
        return stop(done.error());
    }
    if (const auto state = checked(making, true, progress); !state) {
        return stop(state.error());
    }
    if (auto moved = base::moveIntoPlace(making, target, calls); !moved) {
        return stop(moved.error());
    }
    Backup copy = backup;
    copy.folder = target;
    return copy;
}

base::Result<RestoreReceipt> restored(const LibraryOptions& options, const fs::path& backup,
                                      const base::Progress& progress) {
    if (auto made = base::makeFolders(options.folder, *options.calls); !made) {
        return made.error();
    }
    auto lock = detail::Lock::take(options.folder / "lock");
    if (!lock) {
        return lock.error();
    }
    if (!lock->alone()) {
        return detail::databaseError(SQLITE_BUSY);
    }
    const auto state = checked(backup, false, progress);
    if (!state) {
        return state.error();
    }
    RestoreReceipt receipt;
    receipt.state = *state;
    const fs::path file = options.folder / "library.db";
    auto stage = base::StagingFolder::create(options.folder / "staging", *options.calls);
    if (!stage) {
        return stage.error();
    }
    // What was erased here since the backup stays erased.
    std::vector<std::pair<std::string, std::string>> graves;
    std::error_code error;
    if (fs::exists(file, error)) {
        auto now = Database::open(file, Database::Mode::readWrite);
        if (now) {
            auto query = now->query("SELECT id, day FROM tombstone");
            // A damaged library tells what it still can.
            (void)detail::forEachRow(query,
                                     [&](Statement& row) { graves.emplace_back(row.text(0), row.text(1)); });
            (void)now->exec("PRAGMA wal_checkpoint(TRUNCATE)"); // so that the file alone is the whole library
        }
    }
    std::set<std::string> films; // that the restored library names
    const fs::path fresh = stage->path() / "library.db";
    if (const auto there = base::copyFile(backup / "library.db", fresh, progress, *options.calls); !there) {
        return there.error();
    }
    {
        auto db = Database::open(fresh, Database::Mode::readWrite);
        if (!db) {
            return db.error();
        }
        if (auto done = detail::upgrade(*db, detail::steps(), {}); !done) {
            return done.error();
        }
        auto transaction = detail::Transaction::begin(*db);
        if (!transaction) {
            return transaction.error();
        }
        auto grave = db->query("INSERT INTO tombstone(id, day) VALUES (?1, ?2) ON CONFLICT(id) DO NOTHING");
        auto rows =
            db->query("DELETE FROM fact WHERE id = ?1 OR id IN (SELECT fact FROM belongs WHERE owner = ?1)");
        for (const auto& [id, day] : graves) {
            if (auto done = grave.bind(1, id).bind(2, day).run(); !done) {
                return done.error();
            }
            if (auto done = rows.bind(1, id).run(); !done) {
                return done.error();
            }
        }
        if (auto done = db->exec("UPDATE lesson SET " + std::string(detail::kLessonCounts)); !done) {
            return done.error();
        }
        if (auto done = db->query("UPDATE device SET id = ?1").bind(1, options.ids->next().hex()).run();
            !done) {
            return done.error();
        }
        if (auto done = transaction->commit(); !done) {
            return done.error();
        }
        if (!graves.empty()) {
            if (auto done = db->exec("VACUUM"); !done) {
                return done.error();
            }
        }
        auto named =
            db->query("SELECT sha256 FROM clip UNION SELECT sha256 FROM film_copy UNION SELECT sha256 "
                      "FROM carried");
        auto read = detail::forEachRow(named, [&](Statement& row) { films.insert(row.text(0)); });
        if (!read) {
            return read.error();
        }
        // Into one file before it moves.
        if (auto done = db->exec("PRAGMA wal_checkpoint(TRUNCATE)"); !done) {
            return done.error();
        }
    }
    const bool replaces = fs::exists(file, error);
    if (replaces) {
        const fs::path backups = options.folder / "backups";
        receipt.before = backups / nameFor(BackupKind::beforeRestore, options.clock->now(), *options.ids);
        if (auto made = base::makeFolders(receipt.before, *options.calls); !made) {
            return made.error();
        }
        if (auto done =
                takeFilms(options.folder / "media", receipt.before / "media", true, progress, *options.calls);
            !done) {
            return done.error();
        }
    }
    // Films first: a record never names a film that is not there yet.
    for (const std::string& film : films) {
        const fs::path from = backup / "media" / film.substr(0, 2) / film;
        const fs::path target = options.folder / "media" / film.substr(0, 2) / film;
        std::error_code ignored;
        if (fs::is_regular_file(target, ignored) || !fs::is_regular_file(from, ignored)) {
            continue;
        }
        if (auto made = base::makeFolders(target.parent_path(), *options.calls); !made) {
            return made.error();
        }
        if (auto done = linkOrCopy(from, target, true, progress, *options.calls); !done) {
            return done.error();
        }
    }
    // The library that is there steps aside. Its log belongs to it and goes along; after the checkpoint above
    // it is empty unless the library is damaged. Should the power fail between here and the end, the library
    // is missing and asks for a restore: nothing is lost.
    if (replaces) {
        if (auto moved = base::moveIntoPlace(file, receipt.before / "library.db", *options.calls); !moved) {
            return moved.error();
        }
    }
    for (const char* beside : {"library.db-wal", "library.db-shm"}) {
        const fs::path path = options.folder / beside;
        if (!fs::exists(path, error)) {
            continue;
        }
        if (receipt.before.empty()) {
            options.calls->remove(path);
        } else if (auto moved = base::moveIntoPlace(path, receipt.before / beside, *options.calls); !moved) {
            return moved.error();
        }
    }
    if (auto moved = base::moveIntoPlace(fresh, file, *options.calls); !moved) {
        return moved.error();
    }
    return receipt;
}

} // namespace

base::Result<BackupState> checkBackup(const fs::path& backup, bool readFilms,
                                      const base::Progress& progress) {
    return base::guarded([&] { return checked(backup, readFilms, progress); });
}
base::Result<Backup> copyBackup(const Backup& backup, const fs::path& folder, const base::Progress& progress,
                                base::FileCalls& calls) {
    return base::guarded([&] { return copied(backup, folder, progress, calls); });
}
base::Result<RestoreReceipt> restoreBackup(const LibraryOptions& options, const fs::path& backup,
                                           const base::Progress& progress) {
    return base::guarded([&] { return restored(options, backup, progress); });
}

namespace detail {

base::Result<std::vector<fs::path>> filmFiles(const fs::path& media) {
    std::vector<fs::path> files;
    const auto folders = base::listFolder(media); // by the first two digits
    if (!folders) {
        return folders.error();
    }
    for (const fs::path& folder : *folders) {
        std::error_code ignored;
        if (!fs::is_directory(fs::symlink_status(folder, ignored))) {
            continue;
        }
        const auto inside = base::listFolder(folder);
        if (!inside) {
            return inside.error();
        }
        std::copy_if(inside->begin(), inside->end(), std::back_inserter(files), [](const fs::path& file) {
            std::error_code gone;
            return fs::is_regular_file(fs::symlink_status(file, gone));
        });
    }
    return files;
}

void removeBackup(const fs::path& backup) {
    std::error_code ignored;
    const fs::path going = backup.parent_path() / (std::string(kMaking) + backup.filename().string());
    fs::rename(backup, going, ignored);
    base::removeAll(ignored ? backup : going);
}

base::Result<Backup> makeBackup(Database& db, const LibraryOptions& options, BackupKind kind) {
    const fs::path backups = options.folder / "backups";
    if (auto made = base::makeFolders(backups, *options.calls); !made) {
        return made.error();
    }
    std::error_code error;
    const auto there = base::listFolder(backups);
    if (!there) {
        return there.error();
    }
    for (const fs::path& path : *there) {
        if (path.filename().string().starts_with(kMaking)) {
            base::removeAll(path); // of an interrupted run
        }
    }
    const std::string called = nameFor(kind, options.clock->now(), *options.ids);
    const fs::path making = backups / (std::string(kMaking) + called);
    const auto stop = [&](const base::Error& why) {
        base::removeAll(making);
        return why;
    };
    if (auto made = base::makeFolders(making, *options.calls); !made) {
        return stop(made.error());
    }
    if (auto copied = copyInto(db, making / "library.db"); !copied) {
        return stop(copied.error());
    }
    fs::permissions(making / "library.db", fs::perms::owner_read | fs::perms::owner_write, error);
    {
        // A copy that cannot be opened and read is no backup.
        auto copy = Database::open(making / "library.db", Database::Mode::readOnly);
        if (!copy) {
            return stop(copy.error());
        }
        if (const auto state = stateOf(*copy, Depth::structure); !state) {
            return stop(state.error().key == base::kMemoryOut ? state.error()
                                                              : databaseError(SQLITE_CORRUPT));
        }
    }
    if (auto done = takeFilms(options.folder / "media", making / "media", true, {}, *options.calls); !done) {
        return stop(done.error());
    }
    // The database's own bytes, then its folder's name.
    if (auto synced = base::moveIntoPlace(making / "library.db", making / "library.db", *options.calls);
        !synced) {
        return stop(synced.error());
    }
    if (auto moved = base::moveIntoPlace(making, backups / called, *options.calls); !moved) {
        return stop(moved.error());
    }
    for (const Backup& old : outdated(listBackupsIn(backups))) {
        removeBackup(old.folder);
    }
    return *fromName(backups / called);
}

base::Result<Backup> SqliteLibrary::backup(BackupKind kind, const base::Progress&) {
    const std::lock_guard guard(mutex_);
    if (auto may = writable(); !may) {
        return may.error();
    }
    return makeBackup(db_, options_, kind);
}

/// At the day's first opening. A failure is no reason not to open: the check of the library tells about it.
void SqliteLibrary::keepDailyBackup() {
    const auto facts = db_.number("SELECT count(*) FROM fact");
    if (!facts || *facts == 0) {
        return; // nothing to lose yet
    }
    const std::string today = base::isoDate(options_.clock->now());
    for (const Backup& backup : listBackups(options_.folder)) {
        if (backup.kind == BackupKind::daily && backup.day == today) {
            return;
        }
    }
    (void)makeBackup(db_, options_, BackupKind::daily);
}

} // namespace detail

} // namespace plumbmark::store
