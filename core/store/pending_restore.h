// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "base/progress.h"
#include "base/result.h"
#include "store/backup.h"

/// A program that has the library open cannot put another in its place. It notes which backup is wanted and
/// ends; its next start does it before it opens anything.
namespace plumbmark::store {

/// Errors: those of checkBackup (a backup that is not whole is not noted) and of writing.
base::Result<BackupState> noteRestore(const std::filesystem::path& library, const Backup& backup,
                                      const base::Progress& progress = {});
/// The backup that is noted; nothing: none.
[[nodiscard]] std::optional<std::filesystem::path> notedRestore(const std::filesystem::path& library);
/// The person has thought better of it.
void forgetRestore(const std::filesystem::path& library);
/// At a start: puts the noted backup in place and forgets the note, also when it fails (the library is then
/// as it was). Nothing when none is noted. While another program has the library open the note stays.
[[nodiscard]] std::optional<base::Result<RestoreReceipt>> runNotedRestore(const LibraryOptions& options);

} // namespace plumbmark::store
