// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "club/club.h"
#include "marks/landmark.h"
#include "marks/moment.h"
#include "marks/player.h"
#include "scene/scene.h"
#include "swing/hits.h"

namespace plumbmark::swing {

/// When the fitted club head passes the ball's place, from the club's own motion model.
struct HeadPassesBall {
    base::Seconds time;
    base::Seconds sigma;
};

/// All that can place a key moment. Values only.
struct Clues {
    const marks::Track& track;
    const club::ShaftTrack& shaft;
    const std::optional<club::Ball>& ball;
    const scene::Scene& scene;
    const marks::ShotContext& context;
    marks::TimeScale timeScale;
    std::vector<Hit> hits;
    std::optional<HeadPassesBall> headPassesBall;
    std::vector<marks::Moment> fixedByHand; ///< facts: never moved; what was found on their
                                            ///< wrong side is left out
};

struct Found {
    marks::Moments moments;           ///< in time order; a moment that cannot be told is missing
    std::vector<std::string> missing; ///< plain sentences, why a moment is missing
    /// Rough time of the swing's bottom, also where no ball was hit: for windows only, never shown.
    std::optional<base::Seconds> bottom;
};

/// Finds the key moments. Definitions: the trade's list in marks/moment.h. Impact is claimed only where a
/// ball lay at address and was gone afterwards; sound only refines a moment that ball and shaft place.
[[nodiscard]] Found findMoments(const Clues& clues);

/// How far the shaft has turned back from hanging straight down, degrees, in the swing's own sense: face-on
/// 0 hangs down, 90 level going back, 180 straight up, 270 level at the top; negative after impact
/// (-45 release, -90 level through). True vertical and the player's side are taken into account.
[[nodiscard]] double turnedBack(const club::ShaftSample& shaft, const scene::Vertical& vertical,
                                int sideSign);

} // namespace plumbmark::swing
