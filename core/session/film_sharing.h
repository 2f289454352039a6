// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "analysis/analysis.h"
#include "base/ids.h"
#include "base/progress.h"
#include "base/result.h"
#include "lessonfile/lessonfile.h"
#include "records/fact.h"
#include "store/library.h"
#include "video/frame.h"

namespace plumbmark::session {

/// A film as it goes to somebody else.
struct SharedFilm {
    lessonfile::Film film;
    /// Says that it is a copy of the clip's film; nothing where the film itself goes, or where the library
    /// holds that fact already.
    std::optional<records::Fact> copy;
};

/// The clip's film for somebody else: a copy without what the recorder wrote into it (video::writeBareCopy,
/// made in `staging`), or with `headCovered` the released copy with the head covered. A copy that came here
/// in place of the film goes on as it is. Nothing when the film is not here. Errors: (input)
/// "cover.not_released"; those of video::writeBareCopy.
base::Result<std::optional<SharedFilm>> filmForSomebody(store::Library& library, const store::ClipRow& clip,
                                                        bool headCovered,
                                                        const std::filesystem::path& staging,
                                                        const base::Progress& progress);

/// Covering the head in a lesson's films: made, looked through by a person, released. Only released copies
/// travel.
class HeadCovering {
  public:
    HeadCovering(store::Library& library, analysis::NetworkBytes network)
        : library_(&library), network_(std::move(network)) {}

    struct Still {
        int frame = 0;         ///< from 0
        bool doubtful = false; ///< the head was unknown or uncertain there: look closely
        video::RgbImage
            picture; ///< longer side at most 480 px, taken from the covered film as it would go out
    };
    struct Strip {
        base::Id clip{base::Id::Bytes{}};
        std::vector<Still> stills; ///< rising; every 12th part of the film, and doubtful frames, at most 96
        int frames = 0, doubtful = 0;
    };
    /// Makes the covered copy (opaque over the head in every frame, encoded anew, without sound) beside the
    /// library's cache and the strip of stills from it. Measures the clip first where that was not done
    /// (blocks). Nothing when cancelled. Errors: (input) "cover.no_head" (the head was found nowhere), those
    /// of SwingDesk::open and video::ClipWriter; (failure) "cover.open" (a frame came out uncovered: nothing
    /// is kept).
    base::Result<std::optional<Strip>> make(const base::Id& clip, const base::Progress& progress);
    /// A person has looked the strip through: the copy goes into the library and from now on travels when
    /// covered heads are asked for. Errors (input): "cover.not_made".
    base::Result<void> release(const base::Id& clip);

    enum class State { none, made, released };
    base::Result<State> state(const base::Id& clip);

  private:
    store::Library* library_;
    analysis::NetworkBytes network_;
};

/// Smaller by a whole factor (means of blocks), so that no side is longer than `side`.
[[nodiscard]] video::RgbImage smaller(const video::RgbImage& picture, int side);
/// The stills of a strip side by side in rows, for a picture file.
[[nodiscard]] video::RgbImage contactSheet(const std::vector<HeadCovering::Still>& stills);

} // namespace plumbmark::session
