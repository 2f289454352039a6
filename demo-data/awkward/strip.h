// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>

#include "video/frame.h"

namespace plumbmark::awkward {

/// A number burnt into a picture as a row of light and dark blocks along its top: light, dark, ten bits of
/// the number, four check bits, light, dark (so that a mirrored strip fails). Blocks are large enough to survive any compression we use.
/// Numbers run from 0 to 1023.
std::uint32_t stripPattern(int number); ///< 18 bits, the leftmost block in the highest

inline constexpr int stripBlocks = 18;
/// The strip covers the middle 90 % of the width and from 1/16 to 3/16 of the height.
struct StripPlace {
    double left, top, block, height;
};
StripPlace stripPlace(int width, int height);

/// The number in an upright picture's luma, or nothing where the blocks are unclear, the guards are missing
/// or the check bits don't fit: an unreadable strip is never a guess.
std::optional<int> readStrip(const video::PlaneView& luma);

} // namespace plumbmark::awkward
