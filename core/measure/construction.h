// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include "base/geometry.h"
#include "marks/landmark.h"
#include "marks/moment.h"
#include "measure/measurement.h"

namespace plumbmark::measure {

/// What a number is measured from, to be drawn over its picture.
struct Construction {
    enum class Kind {
        line,     ///< joins marks
        vertical, ///< true up
        level,    ///< true level
        before,   ///< the same line as it was at address
        shaft,
    };
    struct Line {
        base::Vec2 a, b; ///< picture pixels of `frame`
        Kind kind = Kind::line;
    };
    struct Use {
        marks::Landmark landmark;
        marks::MomentId moment;
        friend bool operator==(const Use&, const Use&) = default;
    };
    int frame = -1;          ///< the frame it is drawn in; -1: nothing to draw (times, curves)
    std::vector<Line> lines; ///< without those whose marks are missing
    std::vector<Use> uses;   ///< every mark the number needs, there or not
};

/// How the measurement is put together at its moment. Numbers without a moment of their own (curves, times)
/// tell the marks they need and draw nothing. Lines are those of the picture: what perspective and the
/// camera's tilt take off, the number has already lost, so an angle read from them may differ by a few
/// degrees from the number.
[[nodiscard]] Construction constructionOf(const Input& input, std::string_view measurement,
                                          std::optional<marks::MomentId> moment);

/// The frame nearest to a time; -1 for an empty track.
[[nodiscard]] int nearestFrame(const marks::Track& track, base::Seconds time);

} // namespace plumbmark::measure
