// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "body/observation.h"
#include "club/ball.h"
#include "club/shaft.h"
#include "marks/player.h"

namespace plumbmark::analysis {

/// Standing height in the picture from leg and trunk lengths seen so far: thigh + shank + trunk are 0.245 +
/// 0.246 + 0.288 of stature (Drillis & Contini 1966). Only a working size for search windows; bent lines look
/// shorter, so the long side of what was seen counts.
class WorkingStature {
  public:
    void add(const body::Observation& seen);
    [[nodiscard]] double pixels() const;

  private:
    std::vector<double> seen_;
};

/// Hands and feet of an observation, straight between two observations.
[[nodiscard]] club::Hands handsBetween(const body::Observation& a, const body::Observation& b,
                                       base::Seconds time, const marks::ShotContext& context,
                                       double staturePixels);
[[nodiscard]] club::Feet feetOf(const body::Observation& seen, const marks::ShotContext& context,
                                double staturePixels);

} // namespace plumbmark::analysis
