// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "analysis/analysis.h"
#include "base/result.h"

namespace plumbmark::cli {

/// Where platform/linux/fetch-network.sh puts the pose network: $PLUMBMARK_NETWORK_DIR, else
/// $XDG_DATA_HOME/plumbmark/network, else $HOME/.local/share/plumbmark/network. Nothing without a home.
[[nodiscard]] std::optional<std::filesystem::path> networkFolder();

/// The pose network's file from that folder, the full one before heavy and lite; a null pointer where there
/// is none. Error (input): "network.unreadable". Whether the bytes are the right ones is body's to check.
[[nodiscard]] base::Result<analysis::NetworkBytes> readNetwork();

/// "looked for in FOLDER; fetch it with platform/linux/fetch-network.sh".
[[nodiscard]] std::string whereNetworkIsLookedFor();

/// Whether the terminal's locale is UTF-8, by the first set of LC_ALL, LC_CTYPE and LANG (POSIX's own order).
[[nodiscard]] bool terminalShowsUnicode();

} // namespace plumbmark::cli
