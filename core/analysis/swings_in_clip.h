// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "analysis/analysis.h"
#include "base/progress.h"
#include "base/result.h"
#include "video/clip.h"

namespace plumbmark::analysis {

/// A cheap look through a whole clip for the swings in it: each frame is decoded once and compared coarsely
/// with the one 30 ms of real time before, and hits are heard in the sound (capture::SwingWatch). No network,
/// some MB of memory besides the sound, however long the clip. A swing whose way back is not in the clip is
/// not seen. In time order; nothing when cancelled. Errors: "clip.damaged".
base::Result<std::optional<std::vector<SwingSeen>>> findSwings(video::Clip& clip, const Request& request,
                                                               const base::Progress& progress);

/// Which one to measure when nobody says: the last in which a hit was heard, else the last. Index; `swings`
/// is not empty.
[[nodiscard]] std::size_t usualSwing(std::span<const SwingSeen> swings);

/// What of a clip is measured as one swing.
struct SwingTaken {
    std::unique_ptr<video::Clip> clip; ///< the whole clip, or the frames round the swing (video::partOf)
    video::ClipInfo whole;
    int firstFrame = 0; ///< of the whole clip
    std::vector<SwingSeen> swings;
    std::optional<std::size_t> taken; ///< index into `swings`; nothing: the whole clip, not looked through
};

/// Takes one swing out of a clip, so that time and memory follow the swing's length and not the clip's.
/// `number` counts from 1; without it the usual one. A clip too short for two swings is taken whole without a
/// look, unless a number is told. Nothing when cancelled.
/// Errors (input): those of findSwings; "swing.none" (a long clip in which no swing is seen, or a number
/// where none is), "swing.number" (fewer swings than that).
base::Result<std::optional<SwingTaken>> takeSwing(std::unique_ptr<video::Clip> clip, const Request& request,
                                                  std::optional<int> number, const base::Progress& progress);

/// The request for a part that begins at `firstFrame` and has `frames`: hand marks are renumbered, those
/// outside it left out.
[[nodiscard]] Request requestForPart(Request request, int firstFrame, int frames);

/// Tells in an outcome which swings the clip holds and which one was measured; a warning says so where there
/// are several. Its `clip` becomes the whole one, its frames stay those of the part.
void noteSwings(Outcome& outcome, const SwingTaken& taken);

} // namespace plumbmark::analysis
