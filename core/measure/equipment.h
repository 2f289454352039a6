// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "measure/measurement.h"

namespace plumbmark::measure {

/// Longest club the rules allow, putters apart: 48 in (R&A / USGA Equipment Rules, Part 2, 1c). Exemptions
/// exist.
inline constexpr double kLongestClubMetres = 1.2192;
/// A design's shaft may lean at most 20 degrees forward and 10 backward (Part 2, 1d): a soft gate at address.
inline constexpr double kMostForwardLean = 20.0, kMostBackwardLean = -10.0;

/// Plain sentences about what cannot be right: a club longer than the rules allow after scaling (scale
/// error), a shaft at address that leans more than any club's design (wrong mark or wrong view). Two sigma of
/// grace each.
[[nodiscard]] std::vector<std::string> scaleWarnings(const Input& input,
                                                     const std::vector<Measurement>& measurements);

} // namespace plumbmark::measure
