// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "analysis/analysis.h"

namespace plumbmark::analysis {

/// One or two marks (both sides of a joint) in one frame which, placed by hand, would sharpen the answer
/// most.
struct MarkAdvice {
    std::vector<marks::Landmark> landmarks; ///< one, or a lead/trail pair
    marks::MomentId moment = marks::MomentId::address;
    int frame = 0;
    double gain = 0.0;               ///< see adviseMarks
    std::vector<std::string> checks; ///< labels of the checkpoints it would sharpen, most first
};

/// The rule is to try it: each mark (and pair) that no hand has placed, in the frames of the moments which
/// the checkpoints look at, is taken as if a person had confirmed it where it stands (2 px), and the numbers
/// are made again. For each checkpoint that is not yet at least 90 % sure of its state the gain is ln(sigma
/// before / sigma after), and 1 where a "cannot tell" turns into an answer. A mark that a checkpoint needs
/// and nobody has seen counts 1, shared with the other missing ones. A value changes nothing here: only how
/// sure it is. Best first, nothing under a gain of 0.15. Some 0.1 s: run it on a worker, never during a drag.
[[nodiscard]] std::vector<MarkAdvice> adviseMarks(const Outcome& outcome, std::size_t most = 2);

} // namespace plumbmark::analysis
