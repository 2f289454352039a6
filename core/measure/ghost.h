// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "measure/construction.h"
#include "measure/measurement.h"

namespace plumbmark::measure {

/// Where the body, the ball or the shaft would be if a number had another value.
struct Ghost {
    int frame = -1;
    std::vector<Construction::Line> lines; ///< those of the number's construction that would lie elsewhere
    marks::FrameMarks marks;               ///< all marks of the frame, the moved ones included
};

/// The part that hangs on the number (a foot pair, the hip line, the head, the trunk, the shaft) is moved or
/// turned in the picture until the measurement itself reads `target`; everything else stays. Nothing where
/// the number has no place in the picture (times, curves, axial turns), where its marks are missing, or where
/// no such place is found. Costs a few measurements of the whole swing: for when a check is opened, not for
/// every frame.
[[nodiscard]] std::optional<Ghost> ghostOf(const Input& input, std::string_view measurement,
                                           std::optional<marks::MomentId> moment, double target);

} // namespace plumbmark::measure
