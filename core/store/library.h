// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/clock.h"
#include "base/files.h"
#include "base/ids.h"
#include "base/progress.h"
#include "base/result.h"
#include "records/fact.h"
#include "records/kinds.h"
#include "records/merge.h"

namespace plumbmark::store {

struct LibraryOptions {
    std::filesystem::path
        folder; ///< holds library.db, media/, cache/, staging/, backups/; made where missing
    const base::Clock* clock = &base::systemClock();
    base::IdSource* ids = &base::randomIds();
    base::FileCalls* calls = &base::systemFileCalls();
    /// A backup at the first opening of a day that is alone on the library (see backup.h).
    bool dailyBackup = true;
};

/// Where the library lies when nobody says otherwise: $PLUMBMARK_LIBRARY, else $XDG_DATA_HOME/plumbmark, else
/// $HOME/.local/share/plumbmark. Errors (input): "library.no_home".
base::Result<std::filesystem::path> defaultLibraryFolder();

/// What a merge of foreign records did.
struct MergeReceipt {
    int added = 0;    ///< facts that were new here
    int same = 0;     ///< facts that were here already
    int erased = 0;   ///< facts removed here because the other side erased them
    int refused = 0;  ///< facts not taken because they were erased here
    int needsYou = 0; ///< fields and marks that now have two versions and did not before
};

/// One row for lists. Made from index tables; no fact is parsed.
struct PlayerRow {
    base::Id id;
    std::string name;
    std::optional<marks::Hand> hand;
    std::optional<double> statureMetres;
    int lessons = 0;
    std::string lastDay; ///< ISO day of the newest lesson; empty without lessons
    bool needsYou = false;
};
struct LessonRow {
    base::Id id, player;
    std::string playerName, title, day;
    int shots = 0, clips = 0;
    bool needsYou = false; ///< something in it has two versions
};
struct ShotRow {
    base::Id id, lesson;
    int number = 0; ///< place in the lesson from 1, in the order they were made
    records::Shot shot;
    bool needsYou = false;
};
struct ClipRow {
    base::Id id, shot;
    records::Clip clip;
    std::filesystem::path file; ///< where the film lies
    bool filmHere = false;      ///< false: the film did not travel with the lesson
    /// SHA-256 of that file: the clip's own, or of a copy that came in its place (records/film_copy.h).
    std::string film;
    bool needsYou = false;
};

/// A part of a lesson file whose role this version does not know. Kept beside the library and put into every
/// lesson file that the lesson goes out with, so that an older device does not damage a newer one's lesson.
struct CarriedPart {
    std::string path; ///< its name inside the lesson file
    std::string role;
    std::string sha256;
    std::int64_t bytes = 0;
    std::filesystem::path file; ///< where its bytes lie (told by carried(), ignored by carry())
};

/// Why a backup was made.
enum class BackupKind { daily, byHand, beforeStep, afterErasing, beforeRestore };

/// A whole copy of the library: library.db and media/ in a folder of its own.
struct Backup {
    std::filesystem::path folder;
    std::string name;   ///< the folder's name: time, why, random
    std::string day;    ///< ISO day (UTC) it was made
    std::string madeAt; ///< sorts by time
    BackupKind kind = BackupKind::daily;
};

/// The one library of a device: facts in SQLite, films beside it under their SHA-256. Every call is a whole
/// transaction that is on the disk when the call returns; calls from several threads wait for each other.
/// Errors of every call (failure): "library.damaged", "library.busy", "disk.full"; of writing calls (input):
/// "library.read_only".
class Library {
  public:
    /// Errors (input): "library.newer_unreadable", "library.not_ours", "library.folder"; (failure):
    /// "library.damaged" (nothing is touched). A library made by a newer version opens read-only: see
    /// notice().
    static base::Result<std::unique_ptr<Library>> open(const LibraryOptions& options);
    virtual ~Library() = default;

    [[nodiscard]] virtual bool readOnly() const = 0;
    [[nodiscard]] virtual const std::string& notice() const = 0; ///< plain sentence for the person, or empty
    [[nodiscard]] virtual const base::Id& device() const = 0;
    [[nodiscard]] virtual const std::filesystem::path& folder() const = 0;

    /// Makes a fact of this device: new id, next stamp. Not stored yet.
    virtual records::Fact make(std::string_view kind, std::vector<base::Id> path, records::Object body,
                               std::vector<base::Id> replaces = {}) = 0;
    /// Stores facts of this device, all or none. A clip's film must be there (addFilm) before its fact.
    virtual base::Result<void> add(const std::vector<records::Fact>& facts) = 0;
    /// Takes in records of another device, all or none. An id that is known with other content means that the
    /// file was changed: error (input) "record.changed", nothing taken.
    virtual base::Result<MergeReceipt> merge(const std::vector<records::Record>& records) = 0;
    /// Erases a thing and everything that belongs to it, films included where nothing else uses them.
    virtual base::Result<void> erase(const base::Id& id) = 0;

    /// By name; `search` looks in name and group (plain text, any case).
    virtual base::Result<std::vector<PlayerRow>> players(std::string_view search = {}) = 0;
    /// Newest first; `search` looks in the player's name and group, title, wish and note (plain text, any case).
    virtual base::Result<std::vector<LessonRow>> lessons(std::string_view search = {},
                                                         std::optional<base::Id> player = std::nullopt) = 0;
    virtual base::Result<std::vector<ShotRow>> shots(const base::Id& lesson) = 0;
    virtual base::Result<std::vector<ClipRow>> clips(const base::Id& shot) = 0;
    virtual base::Result<std::optional<ClipRow>> clip(const base::Id& clip) = 0;
    /// Clips whose film, or a copy of it made for sharing, has these very bytes.
    virtual base::Result<std::vector<ClipRow>> clipsOfFilm(std::string_view sha256) = 0;

    /// A player, lesson, shot or clip with its history of fields; nothing when there is none.
    virtual base::Result<std::optional<records::Entity>> entity(const base::Id& id) = 0;
    virtual base::Result<std::optional<records::Fact>> fact(const base::Id& id) = 0;
    /// Facts of a kind that belong directly to `owner` (the last of their path), oldest first.
    virtual base::Result<std::vector<records::Fact>> factsOf(const base::Id& owner,
                                                             std::string_view kind) = 0;
    /// `id`, everything it belongs to and everything that belongs to it, with their tombstones: what travels
    /// with a lesson. Canonical lines, sorted.
    virtual base::Result<std::vector<std::string>> linesFor(const base::Id& id) = 0;
    /// Everything, canonical lines, sorted.
    virtual base::Result<std::vector<std::string>> allLines() = 0;

    // Films.
    struct Film {
        std::string sha256;
        std::int64_t bytes = 0;
        bool wasHere = false;
    };
    /// Copies a file in under its SHA-256. The data is on the disk before anything may name it.
    virtual base::Result<Film> addFilm(const std::filesystem::path& file,
                                       const base::Progress& progress = {}) = 0;
    /// Moves a staged file of this SHA-256 (already checked, same file system) in.
    virtual base::Result<void> adoptFilm(const std::filesystem::path& staged, std::string_view sha256) = 0;
    [[nodiscard]] virtual std::filesystem::path filmPath(std::string_view sha256) const = 0;
    /// A private folder on the library's own file system.
    virtual base::Result<base::StagingFolder> staging() = 0;

    // Parts of lesson files that travel on unread. The bytes are adopted like films first.
    virtual base::Result<void> carry(const base::Id& lesson, const std::vector<CarriedPart>& parts) = 0;
    virtual base::Result<std::vector<CarriedPart>> carried(const base::Id& lesson) = 0;

    // What a shared folder (`place`: its own random id) holds already.
    /// Lines of this library that no file of that place holds: records by id, then tombstones.
    virtual base::Result<std::vector<std::string>> linesNotIn(const base::Id& place) = 0;
    /// Our own file with these lines is there now.
    virtual base::Result<void> noteSent(const base::Id& place, std::string_view file,
                                        const std::vector<std::string>& lines) = 0;
    /// Another device's file with these lines was taken in.
    virtual base::Result<void> noteArrived(const base::Id& place, std::string_view file, std::int64_t bytes,
                                           const std::vector<std::string>& lines) = 0;
    virtual base::Result<bool> hasArrived(const base::Id& place, std::string_view file,
                                          std::int64_t bytes) = 0;
    /// Our own files there that hold something erased since.
    virtual base::Result<std::vector<std::string>> outdatedFiles(const base::Id& place) = 0;
    /// Our file is gone from there: what it held counts as not sent.
    virtual base::Result<void> forgetFile(const base::Id& place, std::string_view file) = 0;

    /// SQLite's own checks (integrity, foreign keys), index tables against facts, films against their names
    /// (`readFilms`: also re-reads every film's bytes). Empty: all well. Else plain sentences.
    virtual base::Result<std::vector<std::string>> check(bool readFilms = false,
                                                         const base::Progress& progress = {}) = 0;
    /// Throws the index tables away and makes them again from the facts.
    virtual base::Result<void> rebuildIndex() = 0;

    /// A whole copy in backups/, opened and checked before it counts; then old ones go by the rule of
    /// backup.h. Errors: those of writing, "library.damaged" (the old backups stay).
    virtual base::Result<Backup> backup(BackupKind kind = BackupKind::byHand,
                                        const base::Progress& progress = {}) = 0;
};

} // namespace plumbmark::store
