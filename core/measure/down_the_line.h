// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "measure/definition.h"

namespace plumbmark::measure {

[[nodiscard]] Definitions downTheLineDefinitions();

} // namespace plumbmark::measure
