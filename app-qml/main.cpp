// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The one place where the program is put together: command line and app in one executable.
#include <QGuiApplication>
#include <QQuickWindow>
#include <atomic>
#include <csignal>
#include <cstdlib>
#include <iostream>
#include <string>
#include <unistd.h>
#include <vector>

#include "cli/cli.h"
#include "cli/desktop_files.h"
#include "linux/linux_places.h"
#include "painter/page_painter.h"
#include "qt/qt_camera.h"
#include "qt/qt_voice.h"
#include "run_app.h"
#include "store/library.h"
#if PLUMBMARK_WITH_DEMO
#include "services/demo_services.h"
#endif

using namespace plumbmark;

namespace {

std::atomic<bool> g_cancel = false;

bool hasScreen() {
    return std::getenv("DISPLAY") != nullptr || std::getenv("WAYLAND_DISPLAY") != nullptr ||
           std::getenv("QT_QPA_PLATFORM") != nullptr;
}

/// Blocks until the window is closed.
int runApp(int argc, char** argv, app::AppOptions options) {
    if (!hasScreen()) { // Qt would abort with a message for programmers
        std::cerr << "The app needs a screen, and there is none here; start it from a desktop session.\n";
        return cli::kInputError;
    }
    QGuiApplication application(argc, argv);
    app::prepareApplication();
    const platform::LinuxPlaces places;
    options.places = &places;
    platform::QtCamera camera;
    options.camera = &camera;
    platform::QtMicrophone microphone;
    options.microphone = &microphone;
    platform::QtSpeaker speaker;
    options.speaker = &speaker;
    const platform::PagePainter painter;
    options.painter = &painter;
    auto running = app::RunningApp::start(options);
    if (!running.ok()) {
        std::cerr << running.error().sentence << "\n";
        return running.error().kind == base::ErrorKind::input ? cli::kInputError : cli::kFailed;
    }
    return QGuiApplication::exec();
}

} // namespace

int main(int argc, char** argv) {
    const std::vector<std::string> args(argv + 1, argv + argc);
    std::signal(SIGINT, [](int) { g_cancel = true; });
    std::signal(SIGTERM, [](int) { g_cancel = true; });
    std::signal(SIGPIPE, SIG_IGN); // a closed pipe is told as an error of writing

    cli::Services services;
    services.version = PLUMBMARK_VERSION;
    const platform::PagePainter painter;
    services.painter = &painter;
    services.poseNetwork = cli::readNetwork;
    services.whereNetwork = cli::whereNetworkIsLookedFor();
    services.libraryFolder = store::defaultLibraryFolder;
    services.cancel = &g_cancel;
    services.unicode = cli::terminalShowsUnicode();
    services.showProgress = isatty(STDERR_FILENO) != 0;
#if PLUMBMARK_WITH_DEMO
    demo::addServices(services);
#endif
    services.openApp = [argc, argv, render = services.renderDemo](const std::filesystem::path& library) {
        std::signal(SIGINT, SIG_DFL);
        std::signal(SIGTERM, SIG_DFL);
        app::AppOptions options;
        options.library = library;
        // A network that cannot be read is said on the first page; the app works without it.
        if (auto network = cli::readNetwork(); network.ok()) {
            options.network = *network;
        }
        if (render) {
            options.demo = [render](const std::filesystem::path& folder, const base::Progress& progress)
                -> base::Result<std::optional<std::filesystem::path>> {
                auto files = render(folder, "sound", progress);
                if (!files) {
                    return files.error();
                }
                for (const std::filesystem::path& file : *files) {
                    if (file.extension() == ".mp4") {
                        return std::optional(file);
                    }
                }
                return std::optional<std::filesystem::path>(); // cancelled
            };
        }
        return runApp(argc, argv, options);
    };
    return cli::run(args, services, std::cout, std::cerr);
}
