// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/geometry.h"
#include "body/observation.h"
#include "marks/player.h"

namespace plumbmark::session {

/// What is wrong with the picture, in the order in which it should be put right.
enum class FramingFault {
    nobody,         ///< no player is seen
    feetCut,        ///< the feet are below the picture
    headCut,        ///< no room above the head for hands and club
    tooSmall,       ///< the player is under 45 % of the picture's height
    tooLarge,       ///< over 85 %
    offLeft,        ///< stands too far left in the picture
    offRight,       ///< or right
    notFaceOn,      ///< the camera sees the player from the side
    notDownTheLine, ///< the camera sees the chest
};
[[nodiscard]] std::string_view framingFaultName(FramingFault fault); ///< "feet-cut", ...
/// What to do about it: one plain sentence.
[[nodiscard]] std::string_view framingAdvice(FramingFault fault);

struct Framing {
    std::vector<FramingFault> faults; ///< empty: the picture is right
    base::Box player; ///< crown to soles, in shares of the picture; empty where nobody is seen
    [[nodiscard]] bool good() const { return faults.empty(); }
};

/// Judges one look. Picture in pixels. Limits are common practice of filming, no source: whole body with room
/// for the hands above the head and for the club on both sides.
[[nodiscard]] Framing judgeFraming(const std::optional<body::Observation>& seen, int width, int height,
                                   marks::View view);

/// Where the player should stand, in shares of the picture, for an outline on the screen: the right size,
/// feet on the line, in the middle.
[[nodiscard]] base::Box standHere(int width, int height, marks::View view);

} // namespace plumbmark::session
