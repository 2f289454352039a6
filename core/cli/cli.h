// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <atomic>
#include <filesystem>
#include <functional>
#include <optional>
#include <ostream>
#include <span>
#include <string>
#include <vector>

#include "analysis/analysis.h"
#include "base/clock.h"
#include "base/ids.h"
#include "base/progress.h"
#include "base/result.h"
#include "exporting/page.h"

namespace plumbmark::cli {

/// What the command line needs from outside the core. Whatever is left empty is told as "not in this build".
struct Services {
    std::string version; ///< "0.1.0"

    /// Draws the sheets; null in a core-only build.
    const exporting::Painter* painter = nullptr;

    struct DemoCase {
        std::string name, summary;
    };
    std::vector<DemoCase> demoCases;
    /// Renders the named case, or the default one, into a folder that exists. Answers with the files made; on
    /// an error or when cancelled none are left.
    std::function<base::Result<std::vector<std::filesystem::path>>(
        const std::filesystem::path& folder, const std::optional<std::string>& name, const base::Progress&)>
        renderDemo;

    /// The pose network's file. A null pointer inside: not fetched; `whereNetwork` then says where it is
    /// looked for.
    std::function<base::Result<analysis::NetworkBytes>()> poseNetwork;
    std::string whereNetwork;

    /// Opens the app and returns when it is closed, with its exit code.
    std::function<int(const std::filesystem::path& library)> openApp;

    /// Where the library lies when --library does not say.
    std::function<base::Result<std::filesystem::path>()> libraryFolder;
    const base::Clock* clock = &base::systemClock();
    base::IdSource* ids = &base::randomIds();

    const std::atomic<bool>* cancel = nullptr; ///< set by Ctrl-C
    bool unicode = true;                       ///< the terminal shows UTF-8
    bool showProgress = false;                 ///< `err` is a terminal that a line can be rewritten on
};

inline constexpr int kDone = 0;
inline constexpr int kFailed = 1;     ///< our turn: a failure, or stopped by the user
inline constexpr int kInputError = 2; ///< the caller's turn: what was asked for can't be used

/// The whole program behind `plumbmark`. `args` without the program's own name. Answers go to `out`; every
/// error is one sentence on `err`. Nothing is thrown.
int run(std::span<const std::string> args, const Services& services, std::ostream& out, std::ostream& err);

} // namespace plumbmark::cli
