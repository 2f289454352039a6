// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "base/progress.h"
#include "base/result.h"
#include "store/library.h"

/// Backups: whole copies of a library in its folder backups/, or in any other folder. Films are hard links
/// where the file system has them (a backup then costs only the database), else copies. A hard link guards
/// against a deleted film, not against a disk that goes bad: for that, make one on another disk.
namespace plumbmark::store {

[[nodiscard]] std::string_view name(BackupKind kind);

/// The backups of a library (or of any folder that holds backups), newest first. Unfinished ones are no
/// backups.
[[nodiscard]] std::vector<Backup> listBackups(const std::filesystem::path& libraryFolder);
[[nodiscard]] std::vector<Backup> listBackupsIn(const std::filesystem::path& backups);

/// Which of these go. Daily ones: the newest of each of the last 7 days that have one stays, and the newest
/// of each of the last 4 calendar weeks (Monday to Sunday) that have one. Of the others the newest 3 of each
/// kind.
[[nodiscard]] std::vector<Backup> outdated(const std::vector<Backup>& backups);

/// What a backup holds, after everything in it was checked: SQLite's integrity and foreign keys, every
/// record's text; with `readFilms` every film's bytes.
struct BackupState {
    int lessons = 0, records = 0, films = 0, filmsMissing = 0;
    int version = 0; ///< of the schema
};
/// Errors (input): "backup.missing", "backup.not_ours", "backup.newer"; (failure): "backup.damaged".
base::Result<BackupState> checkBackup(const std::filesystem::path& backup, bool readFilms = false,
                                      const base::Progress& progress = {});

/// A copy of a backup in another folder (stick, disk): appears there whole or not at all; films are copied.
/// Errors: those of writing.
base::Result<Backup> copyBackup(const Backup& backup, const std::filesystem::path& folder,
                                const base::Progress& progress = {},
                                base::FileCalls& calls = base::systemFileCalls());

struct RestoreReceipt {
    BackupState state;
    std::filesystem::path before; ///< where the library that was there lies now; empty when there was none
};
/// Puts a backup in the library's place. The backup is checked first; the library that is there (also a
/// damaged one) moves to backups/ and nothing of it is lost. What was erased since stays erased. The restored
/// library is a device of its own, because the old one may still be at work elsewhere. Errors: those of
/// checkBackup; (failure) "library.busy" while a program has the library open.
base::Result<RestoreReceipt> restoreBackup(const LibraryOptions& options, const std::filesystem::path& backup,
                                           const base::Progress& progress = {});

} // namespace plumbmark::store
