// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "analysis/analysis.h"
#include "base/result.h"
#include "marks/player.h"
#include "measure/measurement.h"

/// Tables for spreadsheets, statistics and biomechanics programs. docs/review.md writes the forms down.
namespace plumbmark::exporting {

/// One number of one clip with everything that tells where it belongs.
struct TableRow {
    std::string player, day, lessonTitle, lessonId, clipId;
    int shotNumber = 0; ///< place in the lesson, from 1
    marks::ShotContext context;
    measure::Measurement measurement;
};

/// RFC 4180 (comma, CRLF, a header line), UTF-8: one line per clip in the order of the rows, and two columns
/// (value, one sigma) per measurement, moment and version of the method, with the unit in the header:
/// "spine_tilt at address (method 1) [degrees]". A cell is empty where the number can't be told. Texts are
/// always quoted and can't become a formula (see csvText).
[[nodiscard]] std::string measurementsCsv(std::span<const TableRow> rows);

/// The same numbers one by one, with the reason where there is no number: {"rows": [...]}, one row a line.
[[nodiscard]] std::string measurementsJson(std::span<const TableRow> rows);

/// Every landmark that any frame holds: frame, presentation and real time, then x, y and sigma in pixels of
/// the upright picture, and the origin, per landmark. RFC 4180.
[[nodiscard]] std::string landmarksCsv(const analysis::Outcome& outcome);

/// Landmarks as marker file (TRC: text with tabs, X Y Z in millimetres, Y up, rate in the header), the form
/// that open biomechanics programs read. X: along level ground, toward the target (face-on) or the ball
/// (down-the-line); Z is 0, because one camera sees no depth. Freed of camera motion and roll; the origin is
/// the middle between the ankles at address, else in the first frame that shows both. A landmark that a frame
/// lacks is left empty. `fileName` is told in the first line.
/// Errors (input): "tables.no_scale" (neither stature nor anything of known length), "tables.no_rate" (the
/// capture rate is unknown), "tables.no_landmarks".
base::Result<std::string> landmarksTrc(const analysis::Outcome& outcome, std::string_view fileName);

/// A text as CSV cell, in quotes. What a spreadsheet would read as a formula (=, +, -, @, tab or return in
/// front, also their full-width forms and behind blanks) gets an apostrophe in front: OWASP, "CSV Injection".
/// Control characters become blanks.
[[nodiscard]] std::string csvText(std::string_view utf8);

} // namespace plumbmark::exporting
