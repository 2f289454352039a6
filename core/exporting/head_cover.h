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

/// Where the head is covered in each frame (one box a frame of the track; upright picture pixels, inside the
/// picture, edges on the 16 px grid of an encoder's macroblocks, so that no coded block holds both cover and
/// picture). Around every landmark of the head lies a margin taken from the player's
/// size in the picture (the head is about 0.13 of the stature high, Drillis and Contini 1966, from memory)
/// and three sigma of the head's centre (of each point where that is not known). A box holds for at least
/// five frames (and 0.03 s) before and after its own, so that a single wrong frame does not bare the head.
/// Where the head is unknown the cover does not vanish: it holds what lies before and after and grows with
/// the time to the nearer of them (one stature a second, more than a walking person covers), at last to the
/// whole picture. Empty when the head is known in no frame at all, or nothing tells the player's size.
[[nodiscard]] std::vector<base::Box> headCover(const marks::Track& track, int width, int height);

/// The frames in which the head was unknown or uncertain: those a person should look at first. Rising.
[[nodiscard]] std::vector<int> doubtfulFrames(const marks::Track& track);

/// The worst block of the box by that measure, in grey levels of 255; 0 for a box without an inside.
[[nodiscard]] double worstBlock(const video::RgbImage& picture, const base::Box& box);
/// Paints the box in one dark grey.
void coverWith(video::RgbImage& picture, const base::Box& box);
/// Whether a decoded picture is nothing but cover inside the box. What lossy coding explains is allowed, no
/// more: along the box's edges 4 px, which the deblocking filter changes (H.264, 8.7: three samples on each
/// side of a block's edge), and in every block of 8 x 8 px a root mean square of kMostCodingError from the
/// cover's colour. Rounding by the quantiser moves the coefficients of a block by less than one quantiser
/// step each, so its samples by less than that on average (the transform keeps sums of squares); the step at
/// the quantiser 26 is 13 (H.264, 8.5: 0.625 at 0, doubling every 6), and a flat block is coded with less.
inline constexpr double kMostCodingError = 13.0;
[[nodiscard]] bool isCovered(const video::RgbImage& picture, const base::Box& box);

} // namespace plumbmark::exporting
