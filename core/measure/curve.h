// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "measure/measurement.h"

namespace plumbmark::measure {

/// A number followed through time: only frames in which it can be told.
struct Curve {
    std::string id;
    std::vector<base::Seconds> times; ///< presentation seconds, rising
    std::vector<double> values;       ///< degrees
    std::vector<double> sigmas;       ///< degrees, > 0
};

/// Wrist set from takeaway to impact (as the measurements "wrist_set" and "wrist_set_corrected"): how far the
/// shaft lags behind the lead forearm, 0 in line. `corrected`: freed of the inclination of the swing's plane.
[[nodiscard]] Curve wristSetCurve(const Input& input, bool corrected = true);

} // namespace plumbmark::measure
