// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "analysis/analysis.h"
#include "base/progress.h"
#include "base/result.h"
#include "body/observation.h"
#include "body/observer.h"
#include "video/clip.h"

namespace plumbmark::analysis {

/// What the body alone tells, fast enough to answer between two swings: no search for club and ball, no
/// following of the ground (the camera stands on something), a look every `lookEvery` and only as long as it
/// matters. Key moments come from the hands, with their wider sigma; numbers of the club are missing.
struct QuickLook {
    Outcome outcome;                             ///< shaft and ball empty
    std::vector<body::Observation> observations; ///< in time order
    std::optional<std::size_t> address;          ///< the observation nearest to address
};
struct QuickOptions {
    base::Seconds from{0.0};         ///< looks begin here, presentation time
    std::optional<base::Seconds> to; ///< and end here; nothing: the clip's end
    base::Seconds lookEvery{0.05};
    std::optional<body::Region>
        near; ///< where the player is known to stand; nothing: the picture is searched
};

/// `observer` is used from its state of the moment (restarted first, near the known place if there is one);
/// it may serve many calls. Nothing when cancelled. Errors: "clip.damaged", those of body::Observer.
base::Result<std::optional<QuickLook>> quickLook(video::Clip& clip, body::Observer& observer,
                                                 const Request& request, const QuickOptions& options,
                                                 const base::Progress& progress);

/// Numbers and checkpoints from observations and moments that are known already (a held position: address and
/// top are told by whoever saw it held). `width`, `height`: the picture.
[[nodiscard]] Outcome concludeHeld(std::span<const body::Observation> observations,
                                   const marks::Moments& moments, const Request& request, int width,
                                   int height);

} // namespace plumbmark::analysis
