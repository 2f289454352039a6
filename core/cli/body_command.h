// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "cli/commands.h"

namespace plumbmark::cli {

[[nodiscard]] std::vector<Command> bodyCommands(); ///< the body card

} // namespace plumbmark::cli
