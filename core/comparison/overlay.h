// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "base/geometry.h"
#include "comparison/match.h"

namespace plumbmark::comparison {

/// Lays the second swing's picture on the first's: the middles between the ankles at address fall together,
/// true up points the same way, the bodies are equally tall, and lead is on the same side.
struct Overlay {
    base::Vec2 firstFeet, secondFeet; ///< what falls together, px of each picture
    double scale = 1.0;               ///< px of the first picture a px of the second
    double turnDegrees = 0.0;         ///< clockwise on the screen, after mirroring
    bool mirrored = false;            ///< the second is turned left to right about its feet first
    [[nodiscard]] base::Vec2 toFirst(base::Vec2 second) const;
};

/// For these two frames (a moving camera is followed). Nothing where either swing's ankles are not marked at
/// address (nor anywhere, where address is not known) or its scale is not known.
[[nodiscard]] std::optional<Overlay> overlayOf(const Side& first, const Side& second, int firstFrame,
                                               int secondFrame);

} // namespace plumbmark::comparison
