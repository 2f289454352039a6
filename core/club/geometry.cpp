// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "club/club.h"

#include <cmath>
#include <numbers>

namespace plumbmark::club {

base::Vec2 directionOf(double angleDegrees) {
    const double a = angleDegrees * std::numbers::pi / 180.0;
    return {std::sin(a), std::cos(a)};
}

double angleOf(base::Vec2 direction) {
    return std::atan2(direction.x, direction.y) * 180.0 / std::numbers::pi;
}

} // namespace plumbmark::club
