// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <set>
#include <vector>

#include "base/clock.h"
#include "base/ids.h"
#include "base/progress.h"
#include "base/result.h"
#include "marks/player.h"
#include "store/library.h"

namespace plumbmark::session {

/// The coach's own clip that shows what a priority of the plan asks for. It becomes a shot of the lesson, so
/// it travels in the lesson file like the student's own films; it is never measured and counts as no swing of
/// the student.
class Demonstrations {
  public:
    explicit Demonstrations(store::Library& library, const base::Clock& clock = base::systemClock())
        : library_(&library), clock_(&clock) {}

    struct Film {
        std::filesystem::path file;
        marks::View view = marks::View::faceOn;
        marks::Hand hand = marks::Hand::right;
        bool mirrored = false;
    };
    /// A film of the coach for the plan's `priority` (from 0); the one before stays a shot of the lesson but
    /// is shown no more. Nothing when cancelled. Errors (input): "demonstration.no_plan" (no such priority in
    /// the lesson's kept plan), "book.no_such_thing"; those of video::Clip::open.
    base::Result<std::optional<base::Id>> attach(const base::Id& lesson, std::size_t priority,
                                                 const Film& film, const base::Progress& progress);
    /// A clip of the library. That of another player only where this one agreed to being shown to other
    /// students; that is asked again whenever the lesson goes out. Errors (input): "consent.*",
    /// "film.missing" and those above.
    base::Result<std::optional<base::Id>> attach(const base::Id& lesson, std::size_t priority,
                                                 const base::Id& clip, const base::Progress& progress);
    /// The priority is shown without one. Errors (input): "demonstration.no_plan".
    base::Result<void> takeAway(const base::Id& lesson, std::size_t priority);

    struct Row {
        std::size_t priority = 0; ///< of the plan, from 0
        base::Id clip{base::Id::Bytes{}};
        std::filesystem::path file;
        bool filmHere = false;
    };
    base::Result<std::vector<Row>> list(const base::Id& lesson);

    /// Whether everybody who is shown in the lesson's demonstrations still agrees to it. Errors (input):
    /// "consent.*".
    base::Result<void> mayGoOut(const base::Id& lesson);

  private:
    base::Result<std::optional<base::Id>> add(const base::Id& lesson, std::size_t priority, const Film& film,
                                              std::optional<base::Id> of, const base::Progress& progress);
    base::Result<void> name(const base::Id& lesson, std::size_t priority, const std::string& clip);
    store::Library* library_;
    const base::Clock* clock_;
};

/// Whether a shot is a demonstration: no swing of the student.
base::Result<bool> isDemonstration(store::Library& library, const base::Id& shot);

} // namespace plumbmark::session
