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

/// How the player's newest swing was made and filmed; nothing without one. Errors: those of the library.
base::Result<std::optional<marks::ShotContext>> lastSwingOf(store::Library& library, const base::Id& player);

/// The coach says at how many frames of real time a second the clip was filmed (1 .. 10,000): kept with the
/// clip; the next opening of the swing reads the film again with it. Errors (input): "record.bad_value",
/// "book.no_such_thing".
base::Result<void> tellCaptureRate(store::Library& library, const base::Id& clip, double framesPerSecond);

} // namespace plumbmark::session
