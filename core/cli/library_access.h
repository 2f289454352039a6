// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "base/result.h"
#include "cli/commands.h"
#include "session/lesson_book.h"
#include "store/library.h"

/// What the commands that stand on the library share.
namespace plumbmark::cli {

inline constexpr std::size_t kShortId = 8; ///< enough to tell lessons apart; longer ones are taken too

inline constexpr Option kLibrary{"--library", "FOLDER", "the library, where it is not the usual one"};

using LibraryPointer = std::unique_ptr<store::Library>;
/// Where the library of these arguments lies.
base::Result<store::LibraryOptions> libraryOptions(const Arguments& args, const Services& services);
/// --library, else the usual place; a notice of the library goes to the error output.
base::Result<LibraryPointer> openLibrary(const Arguments& args, const Services& services, Streams streams);

/// At least four digits of an id, as people type its beginning.
[[nodiscard]] bool looksLikeId(const std::string& typed);
/// The lesson whose id begins with what was typed; "latest" is the newest one. Errors (input): "lesson.id",
/// "lesson.none".
base::Result<store::LessonRow> findLesson(session::LessonBook& book, const std::string& typed);
/// The library with the lesson that was typed. Errors: those of openLibrary and findLesson.
struct OpenLesson {
    LibraryPointer library;
    store::LessonRow lesson;
};
base::Result<OpenLesson> openLesson(const Arguments& args, const std::string& typed, const Services& services,
                                    Streams streams);

/// The one player of exactly that name. Errors (input): "player.none", "player.several".
base::Result<base::Id> findPlayer(store::Library& library, const std::string& name);
/// The clip whose id begins with what was typed, or nothing. Error (input): "clip.id" for several.
base::Result<std::optional<store::ClipRow>> findClip(session::LessonBook& book, const std::string& typed);

} // namespace plumbmark::cli
