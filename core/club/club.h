// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "base/geometry.h"
#include "base/measured.h"
#include "base/quantity.h"
#include "marks/landmark.h"

namespace plumbmark::club {

/// The shaft in one frame (or between frames, where a motion model was asked). Picture coordinates.
struct ShaftSample {
    base::Seconds time;
    /// Direction grip -> head, degrees, unwrapped over the swing; 0 = picture down, + = turned
    /// counter-clockwise on the screen (down -> right -> up).
    double angleDegrees = 0.0;
    double sigmaDegrees = 0.0;
    base::Vec2 through;             ///< a point on the shaft's line near the hands
    std::optional<base::Vec2> butt; ///< grip end
    std::optional<base::Vec2> head; ///< middle of the club head
    double headSigma = 0.0;         ///< px, meaningful where `head` is set
    base::Origin origin = base::Origin::tracked;
};

/// One entry per frame; nothing where the shaft cannot be told.
using ShaftTrack = std::vector<std::optional<ShaftSample>>;

struct Ball {
    base::Vec2 centre;                      ///< at address, in the reference picture (scene::GroundMotion)
    double radius = 0.0;                    ///< px
    double sigma = 1.0;                     ///< px
    std::optional<base::Seconds> lastSeen;  ///< last frame in which it lies there
    std::optional<base::Seconds> firstGone; ///< first frame in which it does not
};

/// Unit vector of a shaft direction: 0 -> (0, 1) picture down, 90 -> (1, 0) right, 180 -> up.
[[nodiscard]] base::Vec2 directionOf(double angleDegrees);
/// The angle of a direction, in (-180, 180].
[[nodiscard]] double angleOf(base::Vec2 direction);

} // namespace plumbmark::club
