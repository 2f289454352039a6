// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>
#include <vector>

#include "base/measured.h"
#include "marks/moment.h"
#include "marks/player.h"
#include "measure/probe.h"

namespace plumbmark::measure {

/// One measurement of the trade's list: what it is called, where it applies, how it is computed.
/// To add one: a themed file with a function that returns its Definitions, one call in registry.cpp, one
/// test, one row in the playbook when it is judged, one line in docs/measurements.md.
struct Definition {
    std::string_view id;
    marks::View view = marks::View::faceOn;
    base::Unit unit = base::Unit::degrees;
    int method = 1;                       ///< raise it whenever the numbers may change
    std::vector<marks::MomentId> moments; ///< empty: one number for the whole swing
    /// `moment` is meaningless for numbers of the whole swing.
    std::function<std::optional<double>(Probe&, marks::MomentId moment)> compute;
    double floor = 1e-3;                ///< what the method itself cannot do better than, in the unit
    double limit = 1e9;                 ///< a sigma above this tells nothing: a reason is given instead
    std::string_view tooUncertain = {}; ///< that reason
};

using Definitions = std::vector<Definition>;

/// Every definition, both views, in the order of the trade's list.
[[nodiscard]] const Definitions& allDefinitions();

/// All key moments.
[[nodiscard]] const std::vector<marks::MomentId>& everyMoment();

} // namespace plumbmark::measure
