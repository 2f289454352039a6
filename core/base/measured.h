// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>

namespace plumbmark::base {

enum class Unit {
    degrees,
    seconds,
    ratio,               ///< pure number
    statures,            ///< the player's standing height
    stance_widths,       ///< ankle centre to ankle centre at address
    hip_joint_distances, ///< hip joint centre to hip joint centre, about 0.10 statures
    pixels,
    metres,
};

/// The unit's stable text in files ("degrees", "hip_joint_distances", ...).
[[nodiscard]] std::string_view unitName(Unit unit);

/// Where a mark comes from; of a value: the least direct origin among the marks it needs.
enum class Origin {
    hand,         ///< placed by a person: a fact, software never moves it
    network,      ///< the pose network or its mask
    tracked,      ///< line, ball or motion evidence in the picture
    interpolated, ///< a motion model between evidence
};
[[nodiscard]] std::string_view originName(Origin origin);

/// A number a coach can trust: never shown without unit and one-sigma uncertainty.
struct Measured {
    double value = 0.0;
    double sigma = 0.0; ///< one standard deviation, same unit, > 0
    Unit unit = Unit::ratio;
    Origin origin = Origin::network;
};

} // namespace plumbmark::base
