// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <utility>
#include <vector>

#include "marks/landmark.h"
#include "records/kinds.h"
#include "records/merge.h"

namespace plumbmark::session::detail {

using MarkPlace = std::pair<int, marks::Landmark>;

/// What the mark facts of one clip say together.
struct StandingMarks {
    marks::HandMarks marks; ///< the newest for each place; places given back to the software are left out
    std::map<MarkPlace, std::vector<base::Id>> facts; ///< what a new mark at the place replaces
    std::vector<MarkPlace> disputed;                  ///< two devices put it differently
};
[[nodiscard]] StandingMarks standingMarks(const std::vector<records::Fact>& facts);

} // namespace plumbmark::session::detail
