// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "marks/landmark.h"
#include "marks/moment.h"
#include "records/kinds.h"
#include "records/merge.h"
#include "session/swing_desk.h"
#include "store/library.h"
#include "video/clip.h"

namespace plumbmark::session::detail {

/// Nothing where the body says nothing useful.
[[nodiscard]] std::optional<Place> placeOf(std::string_view kind, const records::Object& body);
/// The body that takes back whatever stands at the place.
[[nodiscard]] records::Object takenBack(const Place& place);
[[nodiscard]] bool isTakenBack(const records::Object& body);

/// What the facts of one kind about one clip say together.
struct Standing {
    std::map<Place, records::Fact> newest;        ///< also those that take back
    std::map<Place, std::vector<base::Id>> facts; ///< what a new fact at the place replaces
    std::vector<Place> disputed;                  ///< two devices put it differently
};
[[nodiscard]] Standing standing(std::string_view kind, const std::vector<records::Fact>& facts);

[[nodiscard]] marks::HandMarks handMarksOf(const Standing& standing);
[[nodiscard]] marks::Moments momentsOf(const Standing& standing);
[[nodiscard]] std::vector<records::Drawing> drawingsOf(const Standing& standing);

/// A gesture's facts say what they were, so that the desk can go back over them after a restart: "do",
/// "undo", "redo" under this key of the body.
inline constexpr std::string_view kStep = "step";
/// The body without that key: what it says about its place.
[[nodiscard]] records::Object withoutStep(records::Object body);

/// What a kept film and its clip tell of themselves, and how it was filmed.
[[nodiscard]] records::Clip clipOf(const store::Library::Film& film, const video::ClipInfo& info,
                                   marks::View view, marks::Hand hand, bool mirrored);

} // namespace plumbmark::session::detail
