// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/clock.h"
#include "base/ids.h"
#include "base/result.h"
#include "records/stamp.h"
#include "records/value.h"

namespace plumbmark::records {

/// Kinds this version understands. Facts of other kinds are kept, merged and passed on untouched.
namespace kind {
inline constexpr std::string_view player = "player";   ///< makes a player
inline constexpr std::string_view lesson = "lesson";   ///< makes a lesson of a player
inline constexpr std::string_view shot = "shot";       ///< makes a shot of a lesson
inline constexpr std::string_view clip = "clip";       ///< makes a clip of a shot
inline constexpr std::string_view set = "set";         ///< gives one field of a player, lesson, shot or clip
inline constexpr std::string_view mark = "mark";       ///< a landmark placed by hand in one frame of a clip
inline constexpr std::string_view moment = "moment";   ///< a key moment fixed by hand
inline constexpr std::string_view drawing = "drawing"; ///< a line or word drawn on the picture to explain
inline constexpr std::string_view findings = "findings"; ///< numbers and checkpoint states of one analysis
inline constexpr std::string_view accept = "accept";     ///< the coach accepts findings: from now on frozen
inline constexpr std::string_view plan = "plan";
inline constexpr std::string_view practice = "practice";
inline constexpr std::string_view pain = "pain";
inline constexpr std::string_view body_card = "body_card";     ///< of a player; replaces the card before
inline constexpr std::string_view explanation = "explanation"; ///< what the program proposed for a lesson
inline constexpr std::string_view coach_word =
    "coach_word";                                  ///< what the coach made of it: this is what counts
inline constexpr std::string_view trial = "trial"; ///< before / try / after in a lesson
} // namespace kind

/// One immutable record: one finished gesture. A correction is a new fact that names what it replaces.
struct Fact {
    base::Id id{base::Id::Bytes{}};
    std::string kind;
    /// Ids of everything it belongs to, outermost first: a mark has player, lesson, shot, clip. Erasing any
    /// of them erases the fact, so erasing needs no look at other facts and works in any order.
    std::vector<base::Id> path;
    Stamp at;
    std::vector<base::Id> replaces; ///< sorted, no doubles
    Object body;                    ///< by kind; fields unknown to this version stay in
    Object extra;                   ///< top-level fields unknown to this version

    friend bool operator==(const Fact&, const Fact&) = default;
};

/// What is left of an erased thing: its random id and the day, nothing else.
struct Tombstone {
    base::Id id{base::Id::Bytes{}};
    std::string day; ///< ISO 8601
    friend bool operator==(const Tombstone&, const Tombstone&) = default;
};

/// {"at":{"device":..,"ms":..,"n":..},"body":{..},"id":..,"kind":..,"path":[..],"replaces":[..]} in canonical
/// form; empty path and replaces are left out. Errors: those of canonicalText.
base::Result<std::string> toText(const Fact& fact);
/// {"erased":day,"id":..} in canonical form.
[[nodiscard]] std::string toText(const Tombstone& tombstone);

/// One line of a library or lesson file.
struct Record {
    std::optional<Fact> fact; ///< exactly one of the two
    std::optional<Tombstone> tombstone;
};
/// Strict: accepts only the canonical form, because equal facts must have equal bytes.
/// Errors (input): "record.not_json", "record.not_canonical", "record.bad_field".
base::Result<Record> recordFromText(std::string_view line);

/// Limits that keep one record from swallowing memory.
inline constexpr std::size_t kMostRecordBytes = 4 << 20;
inline constexpr std::size_t kMostPath = 8;
inline constexpr std::size_t kMostReplaces = 1000;

} // namespace plumbmark::records
