// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "base/geometry.h"
#include "club/shaft.h"
#include "video/frame.h"

namespace plumbmark::club::detail {

/// Where to look, picture px: the line `offset` beside the hands (toward larger angles), from `near` to
/// `reach`.
struct LineGuess {
    base::Vec2 hands;
    double angleDegrees = 0.0;
    double offset = 0.0;
    double near = 0.0;
    double reach = 0.0;
};

/// Fits a straight line to the ridge under the guess from cross profiles of the full picture (and of its past
/// and future where given: what moved). Nothing where too few profiles agree on a line.
[[nodiscard]] std::optional<LineCandidate> fitLine(video::PlaneView now, video::PlaneView past,
                                                   video::PlaneView future, const LineGuess& guess,
                                                   double staturePixels);

} // namespace plumbmark::club::detail
