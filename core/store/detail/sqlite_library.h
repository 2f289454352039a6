// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <mutex>
#include <set>
#include <string>
#include <vector>

#include "records/stamp.h"
#include "store/detail/db.h"
#include "store/detail/lock.h"
#include "store/library.h"

/// The library on SQLite. One class, its parts by theme: library_open (files, lock, schema), library_write
/// (add, merge, erase), library_index (tables for lists), library_lists (questions), library_films,
/// library_check, library_exchange (what went to which shared folder) and backup.
namespace plumbmark::store::detail {

[[nodiscard]] base::Error damaged();
[[nodiscard]] std::optional<base::Id> idOf(const Statement& statement, int column);
/// Player, lesson, shot and clip: facts that make a thing which others belong to.
[[nodiscard]] bool isMaker(std::string_view kind);

/// In the library's folder while an erasing is under way.
inline constexpr const char* kErasing = "erasing";

class SqliteLibrary final : public Library {
  public:
    SqliteLibrary(LibraryOptions options, Lock lock, Database db, base::Id device, bool readOnly,
                  std::string notice)
        : options_(std::move(options)), lock_(std::move(lock)), db_(std::move(db)), device_(device),
          clock_(device, *options_.clock), readOnly_(readOnly), notice_(std::move(notice)) {}

    [[nodiscard]] bool readOnly() const override { return readOnly_; }
    [[nodiscard]] const std::string& notice() const override { return notice_; }
    [[nodiscard]] const base::Id& device() const override { return device_; }
    [[nodiscard]] const std::filesystem::path& folder() const override { return options_.folder; }

    base::Result<void> start();

    records::Fact make(std::string_view kind, std::vector<base::Id> path, records::Object body,
                       std::vector<base::Id> replaces) override;
    base::Result<void> add(const std::vector<records::Fact>& facts) override;
    base::Result<MergeReceipt> merge(const std::vector<records::Record>& records) override;
    base::Result<void> erase(const base::Id& id) override;

    base::Result<std::vector<PlayerRow>> players(std::string_view search) override;
    base::Result<std::vector<LessonRow>> lessons(std::string_view search,
                                                 std::optional<base::Id> player) override;
    base::Result<std::vector<ShotRow>> shots(const base::Id& lesson) override;
    base::Result<std::vector<ClipRow>> clips(const base::Id& shot) override;
    base::Result<std::optional<ClipRow>> clip(const base::Id& clip) override;
    base::Result<std::vector<ClipRow>> clipsOfFilm(std::string_view sha256) override;

    base::Result<std::optional<records::Entity>> entity(const base::Id& id) override;
    base::Result<std::optional<records::Fact>> fact(const base::Id& id) override;
    base::Result<std::vector<records::Fact>> factsOf(const base::Id& owner, std::string_view kind) override;
    base::Result<std::vector<std::string>> linesFor(const base::Id& id) override;
    base::Result<std::vector<std::string>> allLines() override;

    base::Result<Film> addFilm(const std::filesystem::path& file, const base::Progress& progress) override;
    base::Result<void> adoptFilm(const std::filesystem::path& staged, std::string_view sha256) override;
    [[nodiscard]] std::filesystem::path filmPath(std::string_view sha256) const override;
    base::Result<base::StagingFolder> staging() override;

    base::Result<void> carry(const base::Id& lesson, const std::vector<CarriedPart>& parts) override;
    base::Result<std::vector<CarriedPart>> carried(const base::Id& lesson) override;

    base::Result<std::vector<std::string>> linesNotIn(const base::Id& place) override;
    base::Result<void> noteSent(const base::Id& place, std::string_view file,
                                const std::vector<std::string>& lines) override;
    base::Result<void> noteArrived(const base::Id& place, std::string_view file, std::int64_t bytes,
                                   const std::vector<std::string>& lines) override;
    base::Result<bool> hasArrived(const base::Id& place, std::string_view file, std::int64_t bytes) override;
    base::Result<std::vector<std::string>> outdatedFiles(const base::Id& place) override;
    base::Result<void> forgetFile(const base::Id& place, std::string_view file) override;

    base::Result<std::vector<std::string>> check(bool readFilms, const base::Progress& progress) override;
    base::Result<void> rebuildIndex() override;
    base::Result<Backup> backup(BackupKind kind, const base::Progress& progress) override;

  private:
    base::Result<void> writable() const;
    void keepDailyBackup();
    // library_write
    base::Result<bool> isErased(const records::Fact& fact);
    base::Result<std::optional<std::string>> lineOf(const base::Id& id); ///< nothing: not here
    base::Result<void> insert(const records::Fact& fact, const std::string& line);
    base::Result<int> eraseRows(const records::Tombstone& tombstone, std::set<std::string>& films);
    base::Result<void> saveClock();
    base::Result<void> markErasing();
    base::Result<void> leaveNoTrace(const std::set<std::string>& films);
    // library_index
    base::Result<void> index(const records::Fact& fact);
    base::Result<int> disputesOf(const base::Id& id);
    /// `maker`: the fact that makes it, where it is at hand.
    base::Result<int> refresh(const base::Id& id, const records::Fact* maker = nullptr);
    base::Result<int> listPlayer(const records::Entity& e);
    base::Result<int> listLesson(const records::Entity& e);
    base::Result<int> listShot(const records::Entity& e);
    base::Result<int> listClip(const records::Entity& e);
    base::Result<void> recount(const std::set<base::Id>& lessons);
    base::Result<void> fillIndex();
    base::Result<std::string> indexDigest();
    // library_films
    base::Result<bool> filmIsNamed(std::string_view sha256);
    base::Result<void> sweepFilms();
    base::Result<void> dropFilms(const std::set<std::string>& films);
    base::Result<void> dropKept(const std::string& film);
    // library_lists
    base::Result<std::vector<records::Fact>> factsFrom(Statement& statement, int column);
    base::Result<std::vector<ClipRow>> clipRows(Statement& statement);
    base::Result<std::vector<std::string>> linesFrom(Statement& statement);
    /// What is erased, a line each; the statement gives id and day.
    static base::Result<void> addGraves(Statement&& idAndDay, std::vector<std::string>& lines);

    LibraryOptions options_;
    Lock lock_;
    Database db_;
    base::Id device_;
    records::HybridClock clock_;
    bool readOnly_;
    std::string notice_;
    std::recursive_mutex mutex_;
};

} // namespace plumbmark::store::detail
