// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "analysis/analysis.h"
#include "base/geometry.h"
#include "exporting/page.h"
#include "marks/moment.h"

/// Marks, plumb lines and shaft that go over a picture of the swing: the same ones on sheets, on the page of
/// a lesson file and in films.
namespace plumbmark::exporting {

struct MarkLine {
    base::Vec2 from, to; ///< upright picture pixels; may lie outside the picture
    Ink ink;
    bool dashed = false;
};
struct PictureMarks {
    std::vector<MarkLine> lines;
    std::vector<base::Vec2> points; ///< landmarks, upright picture pixels
};

/// What can be told about one frame: the line from mid-hip to mid-shoulder, the shaft, face-on the plumb line
/// through the trail ankle, and at impact (`moment`) the lead-side line. Lines are ordered back to front.
[[nodiscard]] PictureMarks marksAt(const analysis::Outcome& outcome, std::size_t frame,
                                   std::optional<marks::MomentId> moment = std::nullopt);

/// What the lines of marksAt mean, one sentence.
[[nodiscard]] std::string linesLegend(marks::View view);

/// Puts marks on a page, cut to `box`. A picture's point p lands at box corner + (p - corner) * scale (mm a
/// pixel). `size` grows lines and crosses (1: print).
void drawMarks(const PictureMarks& marks, base::Vec2 corner, double scale, const PageBox& box,
               std::vector<Item>& items, double size = 1.0);

/// Cuts a line to a box (Liang and Barsky's parametric form); nothing where it passes by or is not finite.
[[nodiscard]] std::optional<std::pair<base::Vec2, base::Vec2>> clippedLine(base::Vec2 a, base::Vec2 b,
                                                                           const base::Box& box);

} // namespace plumbmark::exporting
