// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "base/measured.h"

namespace plumbmark::base {

std::string_view unitName(Unit unit) {
    switch (unit) {
    case Unit::degrees: return "degrees";
    case Unit::seconds: return "seconds";
    case Unit::ratio: return "ratio";
    case Unit::statures: return "statures";
    case Unit::stance_widths: return "stance_widths";
    case Unit::hip_joint_distances: return "hip_joint_distances";
    case Unit::pixels: return "pixels";
    case Unit::metres: return "metres";
    }
    return "ratio";
}

std::string_view originName(Origin origin) {
    switch (origin) {
    case Origin::hand: return "hand";
    case Origin::network: return "network";
    case Origin::tracked: return "tracked";
    case Origin::interpolated: return "interpolated";
    }
    return "interpolated";
}

} // namespace plumbmark::base
