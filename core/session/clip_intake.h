// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <vector>

#include "analysis/analysis.h"
#include "base/ids.h"
#include "base/progress.h"
#include "base/result.h"
#include "store/library.h"

namespace plumbmark::session {

/// Brings a clip in: hash, copy beside the library, analyse, store what was found.
///
/// The film is kept byte by byte as it came. Taking the recorder's own data (place, maker, serial number) out
/// of it belongs here too, on the staged copy before its name is made from its bytes: then every device knows
/// one and the same film. It is not done yet; docs/lesson-file.md says so to whoever shares a lesson.
class ClipIntake {
  public:
    ClipIntake(store::Library& library, analysis::NetworkBytes network)
        : library_(&library), network_(std::move(network)) {}

    struct Receipt {
        base::Id clip;
        bool filmWasHere = false;       ///< the same bytes were in the library already
        std::vector<base::Id> sameFilm; ///< other clips that show this very film
        analysis::Analysed analysed;
    };

    /// Blocks for as long as the analysis takes (seconds to minutes); run it on a worker. `request.context`
    /// says view, hand, club, kind of shot. Hand marks and moments in the request become facts. Nothing when
    /// cancelled: then nothing is kept. A shot that already holds a clip of these very bytes and view gets no
    /// second one; its clip is analysed again. Errors: those of video::Clip::open and analysis::analyse;
    /// (input) "book.no_such_thing".
    base::Result<std::optional<Receipt>> bringIn(const base::Id& shot, const std::filesystem::path& file,
                                                 const analysis::Request& request,
                                                 const base::Progress& progress);

  private:
    store::Library* library_;
    analysis::NetworkBytes network_;
};

/// What an analysis of a stored clip is told: the clip's own facts, its shot's club and kind, its player's
/// stature, and the hand marks that stand.
base::Result<analysis::Request> requestFor(store::Library& library, const base::Id& clip);

/// Findings as facts hold them.
[[nodiscard]] records::Findings findingsOf(const analysis::Outcome& outcome);

} // namespace plumbmark::session
