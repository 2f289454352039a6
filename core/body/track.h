// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "base/geometry.h"
#include "base/quantity.h"
#include "body/observation.h"
#include "marks/landmark.h"
#include "marks/player.h"

namespace plumbmark::body {

/// How the shown time runs, and the one instant across which nothing that the club can jolt is smoothed.
struct Timing {
    double realPerShown = 1.0;           ///< real seconds per shown second
    std::optional<base::Seconds> impact; ///< shown time; nothing: taken from the fastest hands
};

/// The trunk's middle line in one observed frame, from the silhouette: picture pixels.
struct TrunkLine {
    base::Seconds time;
    base::Vec2 low;     ///< at hip height
    base::Vec2 high;    ///< at shoulder height
    double sigma = 0.0; ///< px, across the line, each end
};

/// The player's standing height as it would look at the player's depth.
struct StatureEstimate {
    double pixels = 0.0;
    double sigma = 0.0; ///< px
};

/// Share of an automatic body mark's variance that is the same all through a clip (bias of the network for
/// this player and camera): it falls out of differences in time, so a travel's variance is 2 (1 - share)
/// sigma^2. Hand marks share nothing.
inline constexpr double kCommonShare = 0.8;

/// Everything the body part can tell from the kept observations alone; made once, hand marks come after.
struct AutoTrack {
    marks::Track track;           ///< one entry per frame time
    std::vector<TrunkLine> trunk; ///< observed frames where the silhouette shows it
    std::vector<base::Box>
        boxes; ///< one per frame: where the player is (for steady ground); may be empty boxes
    std::optional<StatureEstimate> stature; ///< nothing: head or feet never seen while standing still
    std::optional<base::Seconds> still; ///< middle of the stillest time before the swing (address, roughly)
    std::vector<std::string> warnings;  ///< plain sentences
};

/// Observations (sparse, time order) -> marks in every frame between the first and the last observation.
/// Origin is network in observed frames, interpolated between them. Pure; some 10 ms for 720 frames.
[[nodiscard]] AutoTrack autoTrack(std::span<const Observation> observations,
                                  std::span<const base::Seconds> times, const marks::ShotContext& context,
                                  const Timing& timing = {});

/// Hand marks are facts: exact in their frame, and the difference to the automatic mark is carried to the
/// neighbours (straight between two hand marks at most 0.5 s apart, fading by a bell of 0.12 s real time
/// outside). A mark "not visible" removes the point until half way to the nearest frames that tell otherwise,
/// at most 0.05 s. Where there is no automatic track (no network) the marks themselves are joined by straight
/// lines. Pure, no pixels, well under 16 ms for 720 frames.
[[nodiscard]] marks::Track applyHandMarks(const marks::Track& automatic, const marks::HandMarks& handMarks,
                                          const Timing& timing = {});

/// Both steps at once.
[[nodiscard]] marks::Track bodyTrack(std::span<const Observation> observations,
                                     std::span<const base::Seconds> times, const marks::ShotContext& context,
                                     const marks::HandMarks& handMarks, const Timing& timing = {});

} // namespace plumbmark::body
