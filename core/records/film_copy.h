// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "base/ids.h"
#include "records/fact.h"

/// A film that goes to somebody else is not the film as it was recorded: what the recorder wrote beside the
/// pictures is taken out, perhaps the head is covered. It then has other bytes and a hash of its own. This
/// fact, which belongs to the clip, says that both are the same film, so that devices which hold the one or
/// the other still merge into one clip. Marks, numbers and frames are those of the clip and hold for every
/// copy: a copy shows the same frames at the same times.
namespace plumbmark::records {

namespace kind {
inline constexpr std::string_view filmCopy = "film_copy"; ///< belongs to a clip
} // namespace kind

struct FilmCopy {
    std::string of;     ///< SHA-256 of the film the clip names
    std::string sha256; ///< SHA-256 of the copy
    std::int64_t bytes = 0;
    bool headCovered = false; ///< and a person looked it through before it was released
};
[[nodiscard]] Object bodyOf(const FilmCopy& value);
/// Nothing where one of the hashes is none.
[[nodiscard]] std::optional<FilmCopy> filmCopyOf(const Object& body);

/// The fact about a bare copy, made from nothing but the clip's own fact and the copy: every device that
/// makes the same copy makes the same record, id and all. `clip`: the fact of kind clip.
[[nodiscard]] Fact bareCopyFact(const Fact& clip, const FilmCopy& copy);

} // namespace plumbmark::records
