// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "base/guarded.h"
#include "store/library.h"

namespace plumbmark::store::detail {

/// The library's border: memory that gives out inside a call comes out as an Error of that call.
class GuardedLibrary final : public Library {
  public:
    explicit GuardedLibrary(std::unique_ptr<Library> inner) : inner_(std::move(inner)) {}

    [[nodiscard]] bool readOnly() const override { return inner_->readOnly(); }
    [[nodiscard]] const std::string& notice() const override { return inner_->notice(); }
    [[nodiscard]] const base::Id& device() const override { return inner_->device(); }
    [[nodiscard]] const std::filesystem::path& folder() const override { return inner_->folder(); }
    records::Fact make(std::string_view kind, std::vector<base::Id> path, records::Object body,
                       std::vector<base::Id> replaces) override {
        return inner_->make(kind, std::move(path), std::move(body), std::move(replaces));
    }
    [[nodiscard]] std::filesystem::path filmPath(std::string_view sha256) const override {
        return inner_->filmPath(sha256);
    }

    base::Result<void> add(const std::vector<records::Fact>& facts) override {
        return base::guarded([&] { return inner_->add(facts); });
    }
    base::Result<MergeReceipt> merge(const std::vector<records::Record>& records) override {
        return base::guarded([&] { return inner_->merge(records); });
    }
    base::Result<void> erase(const base::Id& id) override {
        return base::guarded([&] { return inner_->erase(id); });
    }

    base::Result<std::vector<PlayerRow>> players(std::string_view search) override {
        return base::guarded([&] { return inner_->players(search); });
    }
    base::Result<std::vector<LessonRow>> lessons(std::string_view search,
                                                 std::optional<base::Id> player) override {
        return base::guarded([&] { return inner_->lessons(search, player); });
    }
    base::Result<std::vector<ShotRow>> shots(const base::Id& lesson) override {
        return base::guarded([&] { return inner_->shots(lesson); });
    }
    base::Result<std::vector<ClipRow>> clips(const base::Id& shot) override {
        return base::guarded([&] { return inner_->clips(shot); });
    }
    base::Result<std::optional<ClipRow>> clip(const base::Id& id) override {
        return base::guarded([&] { return inner_->clip(id); });
    }
    base::Result<std::vector<ClipRow>> clipsOfFilm(std::string_view sha256) override {
        return base::guarded([&] { return inner_->clipsOfFilm(sha256); });
    }

    base::Result<std::optional<records::Entity>> entity(const base::Id& id) override {
        return base::guarded([&] { return inner_->entity(id); });
    }
    base::Result<std::optional<records::Fact>> fact(const base::Id& id) override {
        return base::guarded([&] { return inner_->fact(id); });
    }
    base::Result<std::vector<records::Fact>> factsOf(const base::Id& owner, std::string_view kind) override {
        return base::guarded([&] { return inner_->factsOf(owner, kind); });
    }
    base::Result<std::vector<std::string>> linesFor(const base::Id& id) override {
        return base::guarded([&] { return inner_->linesFor(id); });
    }
    base::Result<std::vector<std::string>> allLines() override {
        return base::guarded([&] { return inner_->allLines(); });
    }

    base::Result<Film> addFilm(const std::filesystem::path& file, const base::Progress& progress) override {
        return base::guarded([&] { return inner_->addFilm(file, progress); });
    }
    base::Result<void> adoptFilm(const std::filesystem::path& staged, std::string_view sha256) override {
        return base::guarded([&] { return inner_->adoptFilm(staged, sha256); });
    }
    base::Result<base::StagingFolder> staging() override {
        return base::guarded([&] { return inner_->staging(); });
    }
    base::Result<void> carry(const base::Id& lesson, const std::vector<CarriedPart>& parts) override {
        return base::guarded([&] { return inner_->carry(lesson, parts); });
    }
    base::Result<std::vector<CarriedPart>> carried(const base::Id& lesson) override {
        return base::guarded([&] { return inner_->carried(lesson); });
    }

    base::Result<std::vector<std::string>> linesNotIn(const base::Id& place) override {
        return base::guarded([&] { return inner_->linesNotIn(place); });
    }
    base::Result<void> noteSent(const base::Id& place, std::string_view file,
                                const std::vector<std::string>& lines) override {
        return base::guarded([&] { return inner_->noteSent(place, file, lines); });
    }
    base::Result<void> noteArrived(const base::Id& place, std::string_view file, std::int64_t bytes,
                                   const std::vector<std::string>& lines) override {
        return base::guarded([&] { return inner_->noteArrived(place, file, bytes, lines); });
    }
    base::Result<bool> hasArrived(const base::Id& place, std::string_view file, std::int64_t bytes) override {
        return base::guarded([&] { return inner_->hasArrived(place, file, bytes); });
    }
    base::Result<std::vector<std::string>> outdatedFiles(const base::Id& place) override {
        return base::guarded([&] { return inner_->outdatedFiles(place); });
    }
    base::Result<void> forgetFile(const base::Id& place, std::string_view file) override {
        return base::guarded([&] { return inner_->forgetFile(place, file); });
    }

    base::Result<std::vector<std::string>> check(bool readFilms, const base::Progress& progress) override {
        return base::guarded([&] { return inner_->check(readFilms, progress); });
    }
    base::Result<void> rebuildIndex() override {
        return base::guarded([&] { return inner_->rebuildIndex(); });
    }
    base::Result<Backup> backup(BackupKind kind, const base::Progress& progress) override {
        return base::guarded([&] { return inner_->backup(kind, progress); });
    }

  private:
    std::unique_ptr<Library> inner_;
};

} // namespace plumbmark::store::detail
