// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <span>
#include <string>
#include <string_view>

#include "base/clock.h"
#include "base/ids.h"
#include "base/result.h"
#include "records/fact.h"
#include "store/detail/db.h"

namespace plumbmark::store::detail {

inline constexpr std::int64_t kApplicationId = 0x504c4d42; ///< "PLMB"

/// Takes a library from the version before to its own, inside one transaction.
using Step = base::Result<void> (*)(Database& db);
/// steps()[0] makes version 1 from an empty database, steps()[1] version 2 from version 1, ...
std::span<const Step> steps();
inline constexpr int kSchemaVersion = 3;

/// What a lesson's kept counts are, as the right side of UPDATE lesson SET.
inline constexpr std::string_view kLessonCounts =
    "shots = (SELECT count(*) FROM shot s WHERE s.lesson = lesson.id), "
    "clips = (SELECT count(*) FROM shot s JOIN clip c ON c.shot = s.id WHERE s.lesson = lesson.id), "
    "within = (SELECT coalesce(sum(s.disputed), 0) FROM shot s WHERE s.lesson = lesson.id) + "
    "(SELECT coalesce(sum(c.disputed), 0) FROM shot s JOIN clip c ON c.shot = s.id WHERE s.lesson = "
    "lesson.id)";

/// Runs the missing steps, each in a transaction of its own that also sets the version number. With `backup`,
/// a whole copy of the library as it was is made there first; without that copy nothing is changed.
base::Result<void> upgrade(Database& db, std::span<const Step> all, const std::filesystem::path& backup);

/// Drops and makes the index tables (everything that can be made again from the facts). Inside a transaction.
base::Result<void> makeIndexTables(Database& db);

/// The index row of a fact of kind film_copy; a body that makes no sense has none.
base::Result<void> indexFilmCopy(Database& db, const records::Fact& fact);

} // namespace plumbmark::store::detail
