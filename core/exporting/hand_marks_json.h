// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "base/result.h"
#include "marks/landmark.h"

namespace plumbmark::exporting {

/// Hand marks as read from a file, before the clip's frame times are known.
struct HandMarksFile {
    struct Entry {
        base::Seconds time;   ///< as written: presentation seconds from the first frame
        marks::HandMark mark; ///< its frame is not set yet
    };
    std::vector<Entry> entries;
};

/// Reads marks in the landmarks form of measureJson: {names, frames: [{time_s, points: [[x, y, sigma_px,
/// origin] | null]}]}, alone or as the "landmarks" member of a whole measurement. Only points whose origin is
/// "hand", or that tell no origin, are taken; without a sigma a point gets HandMark's own. Errors (input):
/// "marks.not_json", "marks.form": one sentence telling the line or frame and what is wrong.
[[nodiscard]] base::Result<HandMarksFile> readHandMarks(std::string_view json);

/// Puts every mark on the frame nearest to its time. `times`: presentation times of the clip's frames;
/// `width` and `height`: the upright picture, px. Errors (input): "marks.time" (no frame within half a frame
/// of it), "marks.twice" (the same landmark twice in one frame), "marks.outside" (farther than half a picture
/// outside the picture).
[[nodiscard]] base::Result<marks::HandMarks>
placeHandMarks(const HandMarksFile& file, std::span<const base::Seconds> times, int width, int height);

} // namespace plumbmark::exporting
