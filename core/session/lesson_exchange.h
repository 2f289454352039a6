// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "base/ids.h"
#include "base/progress.h"
#include "base/result.h"
#include "lessonfile/lessonfile.h"
#include "store/library.h"

namespace plumbmark::session {

/// Lessons out to a file and in from one.
class LessonExchange {
  public:
    explicit LessonExchange(store::Library& library) : library_(&library) {}

    struct ExportOptions {
        bool withFilms = true;
        std::optional<std::filesystem::path> sheet; ///< key-position sheet, PNG, travels along
        bool withPage = true; ///< the lesson as one HTML page, for people without the program
    };
    /// Errors (input): "book.no_such_thing" and those of lessonfile::write.
    base::Result<lessonfile::Summary> exportLesson(const base::Id& lesson,
                                                   const std::filesystem::path& target,
                                                   const ExportOptions& options,
                                                   const base::Progress& progress);

    /// Checks every byte, changes nothing.
    base::Result<lessonfile::Summary> verify(const std::filesystem::path& file,
                                             const base::Progress& progress);

    struct Receipt {
        lessonfile::Summary file;
        store::MergeReceipt records;
        int filmsNew = 0, filmsSame = 0;
        std::vector<std::string> ignored; ///< parts this version does not know
        std::vector<base::Id> lessons;    ///< lessons the file tells about
        /// "12 new, 3 the same, 1 needs you."
        [[nodiscard]] std::string sentence() const;
    };
    /// All or nothing: stage, check everything, films to their places, one transaction. Importing the same
    /// file again changes nothing.
    base::Result<Receipt> import(const std::filesystem::path& file, const base::Progress& progress);

  private:
    store::Library* library_;
};

} // namespace plumbmark::session
