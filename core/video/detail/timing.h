// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// What a clip's frame times alone tell. Pure functions.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "base/quantity.h"

namespace plumbmark::video::detail {

/// (frames - 1) / (last - first); 0 for fewer than two frames.
double playbackRate(const std::vector<base::Seconds>& times);

/// Some gap between frames is over 1.5 times the median gap.
bool unevenSpacing(const std::vector<base::Seconds>& times);

/// The spacing stands on two plateaus more than a factor 1.5 apart: the clip was slowed down in parts.
/// Single missing frames and jitter are no plateau.
bool slowedInParts(const std::vector<base::Seconds>& times);

/// A capture rate written as text ("240", "240.000000", "120,0"), or nothing where it is no rate of 1..10000.
std::optional<double> parseRate(std::string_view text);

} // namespace plumbmark::video::detail
