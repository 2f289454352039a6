// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "run_app.h"

#include <QFont>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>

#include "bridge/app_model.h"
#include "store/library.h"
#include "store/pending_restore.h"

namespace plumbmark::app {

struct RunningApp::Parts {
    std::unique_ptr<store::Library> library;
    std::unique_ptr<bridge::AppModel> model;
    std::unique_ptr<QQmlApplicationEngine> engine; ///< first to go: the pages look at the model
    QQuickWindow* window = nullptr;
};

RunningApp::RunningApp() : parts_(std::make_unique<Parts>()) {}
RunningApp::~RunningApp() = default;

QQuickWindow* RunningApp::window() const {
    return parts_->window;
}

bridge::AppModel& RunningApp::model() {
    return *parts_->model;
}

base::Result<std::unique_ptr<RunningApp>> RunningApp::start(const AppOptions& options) {
    store::LibraryOptions libraryOptions;
    libraryOptions.folder = options.library;
    // What a person has asked for before the app was closed (Backups on the exchange page).
    std::string restored;
    if (const auto done = store::runNotedRestore(libraryOptions)) {
        restored = done->ok() ? "The backup was put in place; what was here before lies among the backups."
                              : done->error().sentence;
    }
    auto library = store::Library::open(libraryOptions);
    if (!library.ok()) {
        return library.error();
    }
    std::unique_ptr<RunningApp> app(new RunningApp);
    Parts& parts = *app->parts_;
    parts.library = std::move(*library);
    parts.model = std::make_unique<bridge::AppModel>(bridge::AppModel::Parts{
        *parts.library, options.network, *options.places, options.demo, options.camera, restored,
        options.painter, options.microphone, options.speaker});
    parts.engine = std::make_unique<QQmlApplicationEngine>();
    parts.engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    QVariantMap properties{{QStringLiteral("app"), QVariant::fromValue(parts.model.get())},
                           {QStringLiteral("pixelsPerMm"), options.pixelsPerMm}};
    if (options.width > 0 && options.height > 0) {
        properties.insert(QStringLiteral("width"), options.width);
        properties.insert(QStringLiteral("height"), options.height);
    }
    parts.engine->setInitialProperties(properties);
    parts.engine->load(QUrl(QStringLiteral("qrc:/qt/qml/Plumbmark/Pages/Main.qml")));
    QObject::connect(parts.model.get(), &bridge::AppModel::languageChanged, parts.engine.get(),
                     &QQmlEngine::retranslate);
    if (parts.engine->rootObjects().isEmpty()) {
        return base::failure(
            "app.pages", "The app's pages could not be made; the lines above say why. Please report them.");
    }
    parts.window = qobject_cast<QQuickWindow*>(parts.engine->rootObjects().constFirst());
    return app;
}

void prepareApplication() {
    QGuiApplication::setApplicationName(QStringLiteral("plumbmark"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Plumbmark"));
    QFont font = QGuiApplication::font();
    // Clear figures and a full set of scripts; the system's own font where they are missing.
    font.setFamilies({QStringLiteral("Noto Sans"), QStringLiteral("DejaVu Sans"), font.family()});
    QGuiApplication::setFont(font);
}

} // namespace plumbmark::app
