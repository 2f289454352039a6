// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string>

#include "analysis/analysis.h"
#include "exporting/film_advice.h"

namespace plumbmark::exporting {

struct MeasureJsonOptions {
    bool landmarks = false;              ///< also every landmark of every frame
    std::span<const Advice> advice = {}; ///< for the next film
};

/// The answer of one measurement as JSON text (UTF-8, ends with a line feed). The form is a contract, written
/// down in docs/measure.schema.json; docs/command-line.md explains it. Numbers are finite: a measurement
/// whose number is not becomes one with a reason, a landmark that is not becomes null.
[[nodiscard]] std::string measureJson(const analysis::Outcome& outcome,
                                      const MeasureJsonOptions& options = {});

} // namespace plumbmark::exporting
