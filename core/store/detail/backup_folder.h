// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <vector>

#include "base/result.h"
#include "store/detail/db.h"
#include "store/library.h"

namespace plumbmark::store::detail {

/// A checked copy of the database and its films in backups/ of the library's folder.
base::Result<Backup> makeBackup(Database& db, const LibraryOptions& options, BackupKind kind);

/// The files in media/ and its folders: films, and copies that were not finished.
base::Result<std::vector<std::filesystem::path>> filmFiles(const std::filesystem::path& media);

/// Removes a backup's folder; its name goes first, so that half a backup never looks like one.
void removeBackup(const std::filesystem::path& backup);

} // namespace plumbmark::store::detail
