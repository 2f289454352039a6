// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/quantity.h"
#include "marks/landmark.h"
#include "scene/scene.h"

namespace plumbmark::analysis {

/// The player stands still before the club moves, so the software's body marks of that time are looks at one
/// and the same place: each becomes the median of all looks in the last `window` before `address`, fading
/// into the track as it was over 60 ms of real time after it. Hands, club and ball are left alone (a waggle
/// moves them), and so is a landmark whose looks do not lie still (spread over 4 % of stature). The place is
/// one on the ground: `ground` takes a moving camera out.
void steadyAddress(marks::Track& track, base::Seconds address, double realPerShown, double staturePixels,
                   const scene::GroundMotion& ground = {});

} // namespace plumbmark::analysis
