// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The command line without Qt: no painter, no app. The full program's main is app-qml/main.cpp.
#include <atomic>
#include <clocale>
#include <csignal>
#include <iostream>
#include <string>
#include <unistd.h>
#include <vector>

#include "cli/cli.h"
#include "cli/desktop_files.h"
#include "store/library.h"
#if PLUMBMARK_WITH_DEMO
#include "services/demo_services.h"
#endif

namespace {

std::atomic<bool> stop = false;
static_assert(std::atomic<bool>::is_always_lock_free, "set from a signal handler");

} // namespace

int main(int argc, char** argv) {
    using namespace plumbmark;
    std::signal(SIGINT, [](int) { stop = true; });
    std::signal(SIGTERM, [](int) { stop = true; });
    std::signal(SIGPIPE, SIG_IGN); // a closed pipe is told as an error of writing

    cli::Services services;
    services.version = PLUMBMARK_VERSION;
    services.poseNetwork = cli::readNetwork;
    services.whereNetwork = cli::whereNetworkIsLookedFor();
    services.libraryFolder = store::defaultLibraryFolder;
    services.cancel = &stop;
    services.unicode = cli::terminalShowsUnicode();
    services.showProgress = isatty(STDERR_FILENO) != 0;
#if PLUMBMARK_WITH_DEMO
    demo::addServices(services);
#endif
    return cli::run(std::vector<std::string>(argv + (argc > 0 ? 1 : 0), argv + argc), services, std::cout,
                    std::cerr);
}
