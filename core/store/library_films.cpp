// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Films and carried parts beside the database, under the SHA-256 of their bytes.
#include <cerrno>

#include "base/hash.h"
#include "store/detail/backup_folder.h"
#include "store/detail/sqlite_library.h"

namespace plumbmark::store::detail {

namespace fs = std::filesystem;

fs::path SqliteLibrary::filmPath(std::string_view sha256) const {
    return options_.folder / "media" / std::string(sha256.substr(0, 2)) / std::string(sha256);
}

base::Result<base::StagingFolder> SqliteLibrary::staging() {
    return base::StagingFolder::create(options_.folder / "staging", *options_.calls);
}

base::Result<Library::Film> SqliteLibrary::addFilm(const fs::path& file, const base::Progress& progress) {
    if (auto may = writable(); !may) {
        return may.error();
    }
    // Copied once while hashing; the name is known only afterwards. Long, so without holding up other calls.
    auto stage = staging();
    if (!stage) {
        return stage.error();
    }
    const fs::path staged = stage->path() / "film";
    const auto copied = base::copyFile(file, staged, progress, *options_.calls);
    if (!copied) {
        return copied.error();
    }
    std::error_code ignored;
    Film film{copied->sha256, copied->size, fs::is_regular_file(filmPath(copied->sha256), ignored)};
    if (auto moved = adoptFilm(staged, film.sha256); !moved) {
        return moved.error();
    }
    return film;
}

base::Result<void> SqliteLibrary::adoptFilm(const fs::path& staged, std::string_view sha256) {
    const std::lock_guard guard(mutex_);
    if (auto may = writable(); !may) {
        return may;
    }
    if (!base::isSha256Hex(sha256)) {
        return base::failure("film.name", "A film has no proper name; bring it in again.");
    }
    const fs::path target = filmPath(sha256);
    if (auto made = base::makeFolders(target.parent_path(), *options_.calls); !made) {
        return made;
    }
    // Also where a film of this name lies already: its bytes were just checked, those there perhaps long ago.
    return base::moveIntoPlace(staged, target, *options_.calls);
}

base::Result<bool> SqliteLibrary::filmIsNamed(std::string_view sha256) {
    return db_
        .query("SELECT 1 FROM clip WHERE sha256 = ?1 UNION ALL SELECT 1 FROM film_copy WHERE sha256 "
               "= ?1 UNION ALL SELECT 1 FROM carried WHERE sha256 = ?1")
        .bind(1, sha256)
        .any();
}

/// At a start alone on the library: films that an interrupted run copied in but never named.
base::Result<void> SqliteLibrary::sweepFilms() {
    const auto files = detail::filmFiles(options_.folder / "media");
    if (!files) {
        return files.error();
    }
    std::vector<fs::path> unused;
    for (const fs::path& path : *files) {
        const std::string name = path.filename().string();
        // Only what this program puts there: films and its own unfinished copies.
        const bool film = base::isSha256Hex(name);
        if (!film && name.rfind(".plumbmark-", 0) != 0) {
            continue;
        }
        if (film) {
            const auto named = filmIsNamed(name);
            if (!named) {
                return named.error();
            }
            if (*named) {
                continue;
            }
        }
        unused.push_back(path);
    }
    for (const fs::path& path : unused) {
        options_.calls->remove(path);
    }
    return {};
}

/// What programs have kept beside the library about one film, in cache/ under names that begin with its
/// SHA-256: it tells about the player as the film does.
base::Result<void> SqliteLibrary::dropKept(const std::string& film) {
    const auto kept = base::listFolder(options_.folder / "cache");
    if (!kept) {
        return kept.error();
    }
    for (const fs::path& file : *kept) {
        if (file.filename().string().rfind(film, 0) == 0) {
            options_.calls->remove(file);
        }
    }
    return {};
}

/// Removes films that no clip names any more. Inside a writing transaction, so that nobody can begin to name
/// one meanwhile: add() looks for the film inside its own.
base::Result<void> SqliteLibrary::dropFilms(const std::set<std::string>& films) {
    if (films.empty()) {
        return {};
    }
    auto transaction = Transaction::begin(db_);
    if (!transaction) {
        return transaction.error();
    }
    for (const std::string& film : films) {
        const auto named = filmIsNamed(film);
        if (!named) {
            return named.error();
        }
        if (*named) {
            continue;
        }
        // A film that stays would go into the next backup: the erasing is not done then.
        if (const int gone = options_.calls->remove(filmPath(film)); gone < 0 && gone != -ENOENT) {
            return base::failure("film.stays",
                                 "A film that was erased could not be removed; close other programs that "
                                 "use it. It goes at the next start.");
        }
        if (auto gone = dropKept(film); !gone) {
            return gone;
        }
    }
    return transaction->commit();
}

} // namespace plumbmark::store::detail
