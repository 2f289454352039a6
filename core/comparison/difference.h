// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/measured.h"
#include "comparison/match.h"
#include "measure/measurement.h"

namespace plumbmark::comparison {

/// One row of the table: the same number in two swings.
struct Difference {
    std::string id;
    std::optional<marks::MomentId> moment;
    base::Measured first, second;
    double difference = 0.0;  ///< first minus second, in the measurement's unit
    double sigma = 0.0;       ///< of the difference: root of the sum of both squares
    bool beyondDoubt = false; ///< |difference| > 1.96 sigma
};

/// Rows for every number both swings could tell, of one method version; never for a quantity that the
/// matching used (swings matched by hands are at the same hands by choice, so their hands cannot differ).
[[nodiscard]] std::vector<Difference> differences(const std::vector<measure::Measurement>& first,
                                                  const std::vector<measure::Measurement>& second,
                                                  Feature matchedBy);

/// Whether a measurement says the quantity that `feature` puts together.
[[nodiscard]] bool isMatchedQuantity(std::string_view id, Feature feature);

/// Plain sentences about cameras that cannot be compared, each naming the numbers that suffer.
[[nodiscard]] std::vector<std::string> cameraWarnings(const Side& first, const Side& second);

} // namespace plumbmark::comparison
