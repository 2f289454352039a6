// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string_view>

#include "base/ids.h"
#include "base/result.h"
#include "marks/player.h"
#include "session/lesson_book.h"

namespace plumbmark::session {

/// A new shot in the player's lesson of `day`; player and lesson are made where there is none of that name
/// and day.
struct ShotToday {
    base::Id player{base::Id::Bytes{}}, lesson{base::Id::Bytes{}}, shot{base::Id::Bytes{}};
    std::optional<base::Id> made; ///< outermost thing that was made: erasing it takes all back
};
/// Errors: those of LessonBook.
base::Result<ShotToday> addShotToday(LessonBook& book, std::string_view playerName, std::string_view day,
                                     std::string_view lessonTitle, const marks::ShotContext& context);

} // namespace plumbmark::session
