// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "store/pending_restore.h"

#include <fstream>

#include "base/files.h"

namespace plumbmark::store {

namespace fs = std::filesystem;

namespace {

fs::path noteIn(const fs::path& library) {
    return library / "restore-at-next-start";
}

} // namespace

base::Result<BackupState> noteRestore(const fs::path& library, const Backup& backup,
                                      const base::Progress& progress) {
    const auto state = checkBackup(backup.folder, false, progress);
    if (!state) {
        return state;
    }
    if (auto written = base::replaceFile(noteIn(library), backup.name + "\n"); !written) {
        return written.error();
    }
    return state;
}

std::optional<fs::path> notedRestore(const fs::path& library) {
    std::ifstream in(noteIn(library));
    std::string name;
    if (!std::getline(in, name)) {
        return std::nullopt;
    }
    // Only a backup of this library, by its name: the note is no way to somewhere else.
    for (const Backup& backup : listBackups(library)) {
        if (backup.name == name) {
            return backup.folder;
        }
    }
    return std::nullopt;
}

void forgetRestore(const fs::path& library) {
    std::error_code ignored;
    fs::remove(noteIn(library), ignored);
}

std::optional<base::Result<RestoreReceipt>> runNotedRestore(const LibraryOptions& options) {
    const auto backup = notedRestore(options.folder);
    if (!backup) {
        forgetRestore(options.folder);
        return std::nullopt;
    }
    auto done = restoreBackup(options, *backup);
    if (done || done.error().key != "library.busy") {
        forgetRestore(options.folder);
    }
    return done;
}

} // namespace plumbmark::store
