// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "cli/cli.h"

namespace plumbmark::demo {

/// Gives the command line its demo renderer and the names of its cases. Files are called CASE-VIEW.mp4 and
/// CASE-VIEW.truth.json.
void addServices(cli::Services& services);

} // namespace plumbmark::demo
