// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "cli/commands.h"

namespace plumbmark::cli {

/// The passphrase of a sealed file: first line of --passphrase-file, else $PLUMBMARK_PASSPHRASE, else asked
/// on the terminal (not shown) when `ask`; empty when nobody told one. Errors (input): those of reading the
/// file.
base::Result<std::string> readPassphrase(const Arguments& args, bool ask);

} // namespace plumbmark::cli
