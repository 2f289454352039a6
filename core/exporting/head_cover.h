// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "base/geometry.h"
#include "marks/landmark.h"
#include "video/frame.h"

/// Covering the player's head in a film that goes to somebody else. An opaque box, not a blur: blurred and
/// pixelated faces can be recognised by networks far better than by people.
namespace plumbmark::exporting {

/// Where the head is covered in each frame (one box a frame of the track; upright picture pixels, whole
/// numbers, inside the picture). Around every landmark of the head lies a margin taken from the player's
/// size in the picture (the head is about 0.13 of the stature high, Drillis and Contini 1966, from memory)
/// and three sigma of the head's centre (of each point where that is not known). A box holds for at least
/// five frames (and 0.03 s) before and after its own, so that a single wrong frame does not bare the head.
/// Where the head is unknown the cover does not vanish: it holds what lies before and after and grows with
/// the time to the nearer of them (one stature a second, more than a walking person covers), at last to the
/// whole picture. Empty when the head is known in no frame at all, or nothing tells the player's size.
[[nodiscard]] std::vector<base::Box> headCover(const marks::Track& track, int width, int height);

/// The frames in which the head was unknown or uncertain: those a person should look at first. Rising.
[[nodiscard]] std::vector<int> doubtfulFrames(const marks::Track& track);

/// Paints the box in one dark grey.
void coverWith(video::RgbImage& picture, const base::Box& box);
/// Whether a decoded picture is one colour inside the box, but for a rim of 4 px and 2 % of the values, which
/// coding may smear.
[[nodiscard]] bool isCovered(const video::RgbImage& picture, const base::Box& box);

} // namespace plumbmark::exporting
