// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/ids.h"
#include "base/result.h"
#include "records/kinds.h"
#include "records/merge.h"
#include "store/library.h"

namespace plumbmark::session {

using base::Id;

/// Players, lessons and shots: list, search, add, edit, settle, erase. Every call blocks for a few
/// milliseconds; what it saved is on the disk when it returns.
class LessonBook {
  public:
    explicit LessonBook(store::Library& library) : library_(&library) {}

    base::Result<std::vector<store::PlayerRow>> players(std::string_view search = {});
    /// Newest first.
    base::Result<std::vector<store::LessonRow>> lessons(std::string_view search = {},
                                                        std::optional<Id> player = std::nullopt);
    /// In the order they were made.
    base::Result<std::vector<store::ShotRow>> shots(const Id& lesson);
    base::Result<std::vector<store::ClipRow>> clips(const Id& shot);

    /// Errors of the adding and editing calls (input): "record.bad_value", "book.no_such_thing".
    base::Result<Id> addPlayer(const records::Player& player);
    base::Result<Id> addLesson(const Id& player, const records::Lesson& lesson);
    base::Result<Id> addShot(const Id& lesson, const records::Shot& shot);

    base::Result<records::Player> player(const Id& id);
    base::Result<records::Lesson> lesson(const Id& id);
    base::Result<records::Shot> shot(const Id& id);
    /// Fields that differ become new facts; the others stay untouched, so two devices may edit two fields of
    /// one player without a dispute.
    base::Result<void> edit(const Id& id, const records::Player& player);
    base::Result<void> edit(const Id& id, const records::Lesson& lesson);
    base::Result<void> edit(const Id& id, const records::Shot& shot);

    /// Fields with two or more versions: field -> versions, newest first.
    base::Result<std::map<std::string, std::vector<records::Version>, std::less<>>> disputed(const Id& id);
    /// The person picks a version; the others stay in the history.
    base::Result<void> settle(const Id& id, std::string_view field, const Id& version);

    /// The numbers shown last for a clip: the accepted ones, else the newest; nothing before an analysis.
    base::Result<std::optional<records::Findings>> findings(const Id& clip);

    /// Erases a player, lesson, shot or clip with everything in it, also on other devices at the next
    /// exchange.
    base::Result<void> erase(const Id& id);

  private:
    store::Library* library_;
};

} // namespace plumbmark::session
