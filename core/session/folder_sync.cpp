// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/folder_sync.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <set>

#include "base/files.h"
#include "base/guarded.h"
#include "base/hash.h"
#include "lessonfile/lessonfile.h"
#include "lessonfile/seal.h"
#include "records/fact.h"
#include "records/film_copy.h"
#include "records/kinds.h"

namespace plumbmark::session {

namespace fs = std::filesystem;

namespace {

constexpr const char* kMarker = "plumbmark-folder.txt";
constexpr std::string_view kMarkerText = "Lessons are exchanged through this folder. Its number: ";
// A file is finished and fetched in one go: small enough for a slow line, large enough for some films.
constexpr std::size_t kMostRecordBytes = 8U << 20;
constexpr std::int64_t kMostFilmBytes = 256LL << 20;

std::string shortName(const fs::path& path) {
    return "\"" + path.filename().string() + "\"";
}

/// Names under which other programs keep what is not finished.
bool isUnfinishedName(const std::string& name) {
    constexpr std::array<std::string_view, 6> endings{".part",       ".tmp",      ".partial",
                                                      ".crdownload", ".download", ".icloud"};
    return name.starts_with(".") || name.starts_with("~") ||
           std::any_of(endings.begin(), endings.end(),
                       [&](std::string_view end) { return name.ends_with(end); });
}

bool isFilesOwnFault(const std::string& key) {
    return key.starts_with("lessonfile.") || key.starts_with("seal.") || key.starts_with("record.");
}

} // namespace

/// The folder's own number, made by whoever comes first. A choice of one player counts as a place of its own.
base::Result<base::Id> FolderSync::placeOf(const Options& options) {
    const fs::path marker = options.folder / kMarker;
    std::string text;
    std::error_code error;
    if (fs::exists(marker, error)) {
        std::ifstream in(marker);
        // An empty one, left by a program that was ended, is made anew; one that cannot be read is not.
        if (!std::getline(in, text) && !in.eof()) {
            return base::failure("file.unreadable",
                                 "The shared folder's number cannot be read, so nothing was "
                                 "exchanged; check the folder and try again.");
        }
    }
    std::optional<base::Id> id;
    if (text.starts_with(kMarkerText) && text.size() == kMarkerText.size() + 32) {
        id = base::Id::fromHex(text.substr(kMarkerText.size()));
    }
    if (!id) {
        id = base::randomIds().next();
        if (auto written = base::replaceFile(marker, std::string(kMarkerText) + id->hex() + "\n"); !written) {
            return written.error();
        }
    }
    if (!options.player) {
        return *id;
    }
    return *base::Id::fromHex(base::sha256OfText(id->hex() + options.player->hex()).substr(0, 32));
}

base::Result<void> FolderSync::takeIn(const Options& options, const base::Id& place,
                                      const base::Progress& progress, Receipt& receipt) {
    const auto files = base::listFolder(options.folder);
    if (!files && files.error().key == base::kMemoryOut) {
        return files.error();
    }
    std::error_code error;
    if (!files || !fs::is_directory(options.folder, error)) {
        receipt.away = true; // pulled out while we looked
        return {};
    }
    const std::string own = library_->device().hex().substr(0, 8) + "-";
    LessonExchange exchange(*library_, *clock_);
    for (const fs::path& file : *files) {
        const std::string name = file.filename().string();
        if (name == kMarker || isUnfinishedName(name)) {
            continue;
        }
        if (!name.ends_with(lessonfile::kExtension) ||
            !fs::is_regular_file(fs::symlink_status(file, error))) {
            receipt.notes.push_back(shortName(file) + " is no lesson file; it was left alone.");
            continue;
        }
        const auto size = static_cast<std::int64_t>(fs::file_size(file, error));
        if (error) {
            continue; // gone again
        }
        const auto known = library_->hasArrived(place, name, size);
        if (!known) {
            return known.error();
        }
        if (*known) {
            continue;
        }
        if (progress.cancelled()) {
            return base::failure("cancelled", "Stopped on request.");
        }
        const auto taken = exchange.import(file, progress, options.passphrase);
        if (!taken) {
            if (!isFilesOwnFault(taken.error().key)) {
                return taken.error();
            }
            receipt.notes.push_back(
                taken.error().key == "seal.wrong" || taken.error().key == "seal.passphrase_needed"
                    ? shortName(file) + " is sealed with another passphrase; it was left alone."
                    : shortName(file) + " is not whole yet, or damaged; it was left alone and is looked at "
                                        "again next time.");
            continue;
        }
        if (name.starts_with(own)) {
            // Ours: sent, but cut off before that was noted.
            if (auto noted = library_->noteSent(place, name, taken->lines); !noted) {
                return noted;
            }
        }
        if (auto noted = library_->noteArrived(place, name, size, taken->lines); !noted) {
            return noted;
        }
        ++receipt.filesTaken;
        receipt.recordsNew += taken->records.added;
        receipt.needsYou += taken->records.needsYou;
    }
    return {};
}

/// Files of ours that hold something erased since go; what else they held goes out again.
base::Result<void> FolderSync::takeBack(const Options& options, const base::Id& place, Receipt& receipt) {
    const auto files = library_->outdatedFiles(place);
    if (!files) {
        return files.error();
    }
    for (const std::string& name : *files) {
        std::error_code error;
        fs::remove(options.folder / name, error);
        if (error) {
            return base::failure("file.unwritable",
                                 "A file in the shared folder holds something that was erased and "
                                 "cannot be removed; check its permissions.");
        }
        if (auto forgotten = library_->forgetFile(place, name); !forgotten) {
            return forgotten;
        }
        ++receipt.filesTakenBack;
    }
    return {};
}

/// The film of a clip as it goes to somebody else. One that cannot be stripped stays at home, and a note says
/// so: the lessons still travel.
base::Result<std::optional<SharedFilm>> FolderSync::copyFor(const base::Id& clip, const fs::path& staging,
                                                            const base::Progress& progress,
                                                            Receipt& receipt) {
    const auto row = library_->clip(clip);
    if (!row) {
        return row.error();
    }
    if (!*row) {
        return std::optional<SharedFilm>();
    }
    auto shared = filmForSomebody(*library_, **row, false, staging, progress);
    if (!shared && shared.error().kind == base::ErrorKind::input) {
        receipt.notes.push_back("A film stayed at home: " + shared.error().sentence);
        return std::optional<SharedFilm>();
    }
    return shared;
}

base::Result<void> FolderSync::send(const Options& options, const base::Id& place,
                                    const base::Progress& progress, Receipt& receipt) {
    const auto all = library_->linesNotIn(place);
    if (!all) {
        return all.error();
    }
    const bool toSomebody = options.player.has_value();
    bool covered = options.coverHeads;
    if (toSomebody) {
        const auto face = LessonExchange(*library_, *clock_).mayShowFace(*options.player);
        if (!face) {
            return face.error();
        }
        covered = covered || !*face;
    }
    struct Piece {
        std::string line;
        std::optional<lessonfile::Film> film;
        std::int64_t filmBytes = 0;
        std::optional<base::Id> clip; ///< its film goes as a copy made for somebody else
    };
    std::vector<Piece> pieces;
    for (const std::string& line : *all) {
        const auto record = records::recordFromText(line);
        if (!record) {
            return record.error();
        }
        Piece piece{line, std::nullopt, 0, std::nullopt};
        if (record->fact) {
            const records::Fact& fact = *record->fact;
            const bool chosen =
                !options.player || ((fact.id == *options.player ||
                                     (!fact.path.empty() && fact.path.front() == *options.player)) &&
                                    (options.withHealth || !tellsHealth(fact)));
            if (!chosen) {
                continue;
            }
            // A copy travels with the fact that tells of it: to others the covered one, whenever it is
            // released; to a device of one's own where the film itself never came here.
            const auto copy =
                fact.kind == records::kind::filmCopy ? records::filmCopyOf(fact.body) : std::nullopt;
            std::error_code gone;
            const bool copyGoes =
                copy && (toSomebody ? covered && copy->headCovered
                                    : !fs::is_regular_file(library_->filmPath(copy->of), gone));
            if (options.withFilms &&
                (fact.kind == records::kind::clip ? !(toSomebody && covered) : copyGoes)) {
                const std::string sha256 = records::textMember(fact.body, "sha256").value_or("");
                std::error_code error;
                if (base::isSha256Hex(sha256) && fs::is_regular_file(library_->filmPath(sha256), error)) {
                    piece.film = lessonfile::Film{sha256, library_->filmPath(sha256)};
                    piece.filmBytes = static_cast<std::int64_t>(fs::file_size(piece.film->file, error));
                }
                if (toSomebody && fact.kind == records::kind::clip) {
                    piece.clip = fact.id;
                }
            }
        }
        pieces.push_back(std::move(piece));
    }
    for (std::size_t at = 0; at < pieces.size();) {
        if (progress.cancelled()) {
            return base::failure("cancelled", "Stopped on request.");
        }
        lessonfile::Contents contents;
        contents.title = "Exchange";
        std::size_t bytes = 0;
        std::int64_t filmBytes = 0;
        auto stage = library_->staging();
        if (!stage) {
            return stage.error();
        }
        std::vector<records::Record> copies;
        std::set<std::string> films;
        do {
            Piece& piece = pieces[at++];
            bytes += piece.line.size() + 1;
            filmBytes += piece.filmBytes;
            if (piece.clip) {
                auto made = copyFor(*piece.clip, stage->path(), progress, receipt);
                if (!made) {
                    return made.error();
                }
                piece.film.reset();
                if (*made) {
                    piece.film = std::move((*made)->film);
                    if ((*made)->copy) {
                        auto line = toText(*(*made)->copy);
                        if (!line) {
                            return line.error();
                        }
                        contents.records.push_back(std::move(*line));
                        copies.push_back({std::move((*made)->copy), std::nullopt});
                    }
                }
            }
            if (piece.film && films.insert(piece.film->sha256).second) {
                contents.films.push_back(std::move(*piece.film));
            }
            contents.records.push_back(std::move(piece.line));
        } while (at < pieces.size() && bytes + pieces[at].line.size() < kMostRecordBytes &&
                 filmBytes + pieces[at].filmBytes <= kMostFilmBytes && contents.films.size() < 1000);
        std::sort(contents.records.begin(), contents.records.end());
        contents.records.erase(std::unique(contents.records.begin(), contents.records.end()),
                               contents.records.end());
        if (!copies.empty()) {
            // Known here before it is known there: else it would look like something erased.
            if (const auto kept = library_->merge(copies); !kept) {
                return kept.error();
            }
        }
        fs::path ready = stage->path() / "plain";
        lessonfile::WriteOptions write;
        write.clock = clock_;
        if (const auto written = lessonfile::write(ready, contents, write, progress); !written) {
            return written.error();
        }
        if (!options.passphrase.empty()) {
            const fs::path sealed = stage->path() / "sealed";
            if (auto done = lessonfile::seal(ready, sealed, options.passphrase, {}, progress); !done) {
                return done;
            }
            ready = sealed;
        }
        const auto hash = base::sha256OfFile(ready, progress);
        if (!hash) {
            return hash.error();
        }
        // Names carry nobody's name.
        const std::string name = library_->device().hex().substr(0, 8) + "-" + hash->sha256.substr(0, 40) +
                                 std::string(lessonfile::kExtension);
        if (const auto copied = base::copyFile(ready, options.folder / name, progress); !copied) {
            return copied.error();
        }
        if (auto noted = library_->noteSent(place, name, contents.records); !noted) {
            return noted;
        }
        if (auto noted = library_->noteArrived(place, name, hash->size, {}); !noted) {
            return noted;
        }
        ++receipt.filesSent;
        receipt.recordsSent += static_cast<int>(contents.records.size());
    }
    return {};
}

base::Result<FolderSync::Receipt> FolderSync::run(const Options& options, const base::Progress& progress) {
    return base::guarded([&] { return exchanged(options, progress); });
}

base::Result<FolderSync::Receipt> FolderSync::exchanged(const Options& options,
                                                        const base::Progress& progress) {
    if (library_->readOnly()) {
        return base::inputError("library.read_only", library_->notice());
    }
    Receipt receipt;
    std::error_code error;
    if (!fs::is_directory(options.folder, error)) {
        receipt.away = true;
        return receipt;
    }
    if (options.player) {
        if (auto may = LessonExchange(*library_, *clock_).mayShare(*options.player); !may) {
            return may.error();
        }
    }
    const auto place = placeOf(options);
    if (!place) {
        return place.error();
    }
    if (auto done = takeIn(options, *place, progress, receipt); !done || receipt.away) {
        return done ? base::Result<Receipt>(receipt) : base::Result<Receipt>(done.error());
    }
    if (auto done = takeBack(options, *place, receipt); !done) {
        return done.error();
    }
    if (auto done = send(options, *place, progress, receipt); !done) {
        return done.error();
    }
    return receipt;
}

} // namespace plumbmark::session
