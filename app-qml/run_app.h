// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <memory>

#include "analysis/analysis.h"
#include "bridge/bring_in_model.h"
#include "exporting/page.h"
#include "ports/camera.h"
#include "ports/places.h"
#include "ports/voice.h"

class QQmlApplicationEngine;
class QQuickWindow;

namespace plumbmark::bridge {
class AppModel;
}

namespace plumbmark::app {

struct AppOptions {
    std::filesystem::path library;
    analysis::NetworkBytes network; ///< nothing: by hand marks and tracking only
    const ports::Places* places = nullptr;
    bridge::DemoFilm demo;                       ///< empty: no demo in this build
    ports::Camera* camera = nullptr;             ///< nothing: no filming
    const exporting::Painter* painter = nullptr; ///< nothing: no films of reviews, no sheets
    ports::Microphone* microphone = nullptr;     ///< nothing: reviews without a voice
    ports::Speaker* speaker = nullptr;
    double pixelsPerMm = 0.0;  ///< 0: ask the screen
    int width = 0, height = 0; ///< window's first size, logical px; 0: the app's own
};

/// The app put together and on the screen; lives until it is destroyed. Needs a QGuiApplication.
class RunningApp {
  public:
    /// Errors: those of store::Library::open; (failure) "app.pages" when a page cannot be made.
    static base::Result<std::unique_ptr<RunningApp>> start(const AppOptions& options);
    ~RunningApp();
    RunningApp(const RunningApp&) = delete;
    RunningApp& operator=(const RunningApp&) = delete;

    [[nodiscard]] QQuickWindow* window() const;
    [[nodiscard]] bridge::AppModel& model();

  private:
    RunningApp();
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

/// Fonts and names every start needs; call once, after the QGuiApplication is made.
void prepareApplication();

} // namespace plumbmark::app
