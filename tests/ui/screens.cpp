// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Pictures of every page at the three sizes, from a library made by the program's own import.
#include <QDir>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QTest>
#include <cstdio>
#include <functional>

#include "app_driver.h"
#include "camera/file_camera.h"
#include "cli/desktop_files.h"
#include "session/lesson_book.h"
#include "store/library.h"

using uitest::AppDriver;

namespace {

bool save(const AppDriver& app, const QString& path) {
    QTest::qWait(350);
    if (!app.grab().save(path)) {
        fprintf(stderr, "%s cannot be written; choose another folder.\n", qPrintable(path));
        return false;
    }
    printf("%s\n", qPrintable(path));
    fflush(stdout);
    return true;
}

/// The film of the first swing: what the camera of the Film page plays.
std::filesystem::path firstFilm(const QString& folder) {
    plumbmark::store::LibraryOptions options;
    options.folder = folder.toStdString();
    auto library = plumbmark::store::Library::open(options);
    if (!library.ok()) {
        return {};
    }
    plumbmark::session::LessonBook book(**library);
    const auto lessons = book.lessons();
    if (!lessons.ok() || lessons->empty()) {
        return {};
    }
    const auto shots = book.shots(lessons->front().id);
    if (!shots.ok() || shots->empty()) {
        return {};
    }
    const auto clips = book.clips(shots->front().id);
    return clips.ok() && !clips->empty() ? clips->front().file : std::filesystem::path();
}

/// Comparing, causes, plans: whatever this library has enough swings for.
void teach(AppDriver& app, const std::function<QString(const char*)>& name,
           const std::function<void(bool, const char*)>& must) {
    must(app.waitFor("Swing 1"), "a swing in the library");
    must(app.tap("Swing 1"), "swing");
    must(app.waitFor("Picture of the swing, Frame", 60000), "picture");
    must(QTest::qWaitFor([&] { return app.find("Reading the swing") == nullptr; }, 600000), "reading");
    must(app.tap("Tools") && app.waitFor("Compare with another swing"), "tools");
    must(save(app, name("tools")), "tools");
    must(app.tap("Compare with another swing"), "compare");
    if (app.waitFor("Other swing, Frame", 120000)) {
        QTest::qWait(1500);
        app.tap("Top");
        must(save(app, name("compare")), "compare");
        app.tap("Impact");
        if (app.tap("Lay one over the other")) {
            must(save(app, name("overlay")), "overlay");
        }
        app.tap("Swings");
        must(save(app, name("compare-swings")), "swings");
        app.tap("Match");
        must(save(app, name("compare-match")), "match");
    }
    QTest::keyClick(app.window(), Qt::Key_Escape);
    QTest::keyClick(app.window(), Qt::Key_Escape);
    must(app.waitFor("Cause and plan of"), "lessons");
    must(save(app, name("lessons-teach")), "lessons");
    must(app.tap("Cause and plan of"), "cause and plan");
    must(app.waitFor("What do you say?", 60000), "cause");
    QTest::qWait(2000); // stills
    must(save(app, name("cause")), "cause");
    must(app.tap("Try it"), "try it");
    must(save(app, name("try")), "try it");
    must(app.tap("Plan"), "plan");
    must(save(app, name("plan")), "plan");
    QTest::keyClick(app.window(), Qt::Key_Escape);
    must(app.waitFor("Review of") && app.tap("Review of"), "review");
    must(app.waitFor("Picture of the review, Frame", 30000), "review");
    must(save(app, name("review")), "review");
    must(app.tap("Record and talk") || app.tap("Record again"), "record");
    must(app.tap("Draw"), "draw");
    const QRect stage = app.rectOf(app.find("Picture of the review"));
    app.drag(stage.center() - QPoint(stage.width() / 6, 0), stage.center() + QPoint(0, stage.height() / 5));
    must(save(app, name("recording")), "recording");
    QTest::keyClick(app.window(), Qt::Key_Escape);
    QTest::qWait(1500);
    QTest::keyClick(app.window(), Qt::Key_Escape);
    must(app.waitFor("Sent in") && app.tap("Sent in"), "sent in");
    must(app.waitFor("Nobody is waiting."), "sent in");
    must(save(app, name("sent-in")), "sent in");
    QTest::keyClick(app.window(), Qt::Key_Escape);
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 3 && argc != 4) {
        fprintf(stderr,
                "ui_screens LIBRARY FOLDER [teach]: the library needs one lesson with a swing whose film is "
                "there, better two; teach: only the pages about what is made of swings.\n");
        return 2;
    }
    if (qEnvironmentVariableIsEmpty("DISPLAY") && qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QGuiApplication application(argc, argv);
    QAccessible::setActive(true);
    plumbmark::app::prepareApplication();
    const QString library = QString::fromLocal8Bit(argv[1]);
    const QByteArray only = argc > 3 ? argv[3] : "";
    const QDir folder(QString::fromLocal8Bit(argv[2]));
    QDir().mkpath(folder.path());
    auto network = plumbmark::cli::readNetwork();
    if (!network.ok()) {
        fprintf(stderr, "%s\n", network.error().sentence.c_str());
        return 2;
    }

    for (const AppDriver::Screen& screen : AppDriver::screens()) {
        for (const bool dark : {false, true}) {
            if (dark && QByteArray(screen.name) != "tablet") {
                continue; // one size shows the dark theme
            }
            const auto name = [&](const char* page) {
                return folder.filePath(QString("%1-%2%3.png").arg(screen.name, page, dark ? "-dark" : ""));
            };
            QTemporaryDir home; // settings and films of nobody
            QDir(home.path()).mkdir("Videos");
            for (const char* film : {"Videos/alex-face-on.mp4", "Videos/alex-down-the-line.mp4"}) {
                uitest::writeNumberedClip(home.filePath(film), 8);
            }
            if (!dark && only.isEmpty()) {
                AppDriver empty(home.path(), screen, home.filePath("empty"), *network);
                if (!save(empty, name("empty"))) {
                    return 1;
                }
            }
            plumbmark::platform::FileCamera camera({firstFilm(library)},
                                                   plumbmark::platform::FileCamera::Pace::own);
            AppDriver app(home.path(), screen, library, *network, &camera);
            const auto must = [](bool there, const char* what) {
                if (!there) {
                    fprintf(stderr, "not found: %s\n", what);
                    exit(1);
                }
            };
            if (dark) {
                must(app.tap("Dark colours"), "dark theme");
            }
            must(app.waitFor("Swing 1"), "a swing in the library");
            if (only == "teach") {
                teach(app, name, must);
                continue;
            }
            must(save(app, name("lessons")), "lessons");
            must(app.tap("Exchange and keep"), "exchange");
            must(app.waitFor("Save a lesson to a file"), "files");
            must(save(app, name("exchange")), "exchange");
            must(app.tap("Devices"), "devices");
            must(save(app, name("devices")), "devices");
            must(app.tap("Consent"), "consent");
            must(save(app, name("consent")), "consent");
            must(app.tap("Backups"), "backups");
            must(save(app, name("backups")), "backups");
            must(app.tap("Back"), "back");
            must(app.tap("Settings") && app.waitFor("Size of the letters"), "settings");
            must(save(app, name("settings")), "settings");
            QTest::keyClick(app.window(), Qt::Key_Escape);
            must(app.waitFor("Swing 1") && app.tap("Film"), "film page");
            must(app.waitFor("Start the camera"), "film page");
            app.type("Player", "Alex");
            must(save(app, name("film-setup")), "film setup");
            must(app.tap("Start the camera") && app.waitFor("Live picture of the camera"), "live picture");
            QTest::qWait(2000);
            must(save(app, name("film")), "film");
            QTest::keyClick(app.window(), Qt::Key_Escape);
            if (app.find("Swing 1") == nullptr) {
                QTest::keyClick(app.window(), Qt::Key_Escape);
            }
            must(app.waitFor("Swing 1", 20000), "lessons again");
            must(app.tap("Bring in a clip"), "bring in");
            must(app.waitFor("Film alex"), "films");
            must(save(app, name("films")), "films");
            must(app.tap("Film alex"), "film");
            must(save(app, name("answers")), "answers");
            QTest::keyClick(app.window(), Qt::Key_Escape);
            if (app.find("Swing 1") == nullptr) {
                QTest::keyClick(app.window(), Qt::Key_Escape);
            }
            must(app.tap("Swing 1"), "swing");
            must(app.waitFor("Picture of the swing, Frame", 60000), "picture");
            must(QTest::qWaitFor([&] { return app.find("Reading the swing") == nullptr; }, 600000),
                 "reading");
            QTest::qWait(2500); // stills
            must(save(app, name("swing")), "swing");
            if (app.tap("Impact")) {
                must(save(app, name("impact")), "impact");
            }
            if (app.tap("Numbers")) {
                must(save(app, name("numbers")), "numbers");
            }
            if (app.tap("Notes")) {
                must(save(app, name("notes")), "notes");
            }
            app.tap("Checks");
            if (app.tap("Record the ball")) {
                must(save(app, name("ball")), "ball");
            }
            app.tap("Checks");
            // A mark in hand: the knees stand free of everything else.
            if (app.tap("Address")) {
                QTest::qWait(400);
                const QRect stage = app.rectOf(app.find("Picture of the swing"));
                for (double y = 0.62; y < 0.9 && app.find("Done with this mark") == nullptr; y += 0.02) {
                    for (double x = 0.3; x < 0.7 && app.find("Done with this mark") == nullptr; x += 0.03) {
                        const QPoint at(qRound(stage.x() + x * stage.width()),
                                        qRound(stage.y() + y * stage.height()));
                        app.drag(at, at);
                    }
                }
                if (app.find("Done with this mark") != nullptr) {
                    must(save(app, name("mark")), "mark");
                    QTest::keyClick(app.window(), Qt::Key_Escape);
                }
            }
            if (app.tap("Tools")) {
                const std::pair<const char*, const char*> tools[] = {{"Set a key moment", "tool-moments"},
                                                                     {"Place a point", "tool-points"},
                                                                     {"Draw on the picture", "tool-draw"},
                                                                     {"Play and loop", "tool-play"}};
                for (const auto& [tool, page] : tools) {
                    must(app.tap(tool), tool);
                    must(save(app, name(page)), tool);
                    must(app.tap("All tools"), tool);
                }
                must(app.tap("Strip of moments"), "strip");
                QTest::qWait(1500);
                app.tap("Copy from address: Spine");
                app.tap("Copy from address: Hip line");
                QTest::qWait(1200);
                must(save(app, name("strip")), "strip");
                must(app.tap("All tools"), "strip");
                app.tap("Undo");
                QTest::qWait(300);
                app.tap("Undo");
                app.tap("Checks");
            }
            // A check that is not good: what it is measured from, and where it would be.
            for (QAccessibleInterface* thing : app.everything()) {
                const QString told = thing->text(QAccessible::Name);
                if (thing->role() == QAccessible::Button &&
                    (told.contains(": work on it, ") || told.contains(": watch, ")) && app.tap(told)) {
                    QTest::qWait(1000);
                    must(save(app, name("check")), "check");
                    QTest::keyClick(app.window(), Qt::Key_Escape);
                    break;
                }
            }
            QTest::keyClick(app.window(), Qt::Key_Escape);
            teach(app, name, must);
            for (int i = 0; i < 4 && !app.isEnabled("Players"); ++i) {
                QTest::keyClick(app.window(), Qt::Key_Escape);
                QTest::qWait(200);
            }
            must(app.tap("Players"), "players");
            must(app.waitFor("Player "), "a player");
            must(save(app, name("players")), "players");
            must(app.tap("Player "), "a player");
            must(app.waitFor("Start today's lesson") || app.waitFor("Kept in"), "the player's page");
            must(save(app, name("player")), "player");
            for (const char* tab : {"Swings", "Trend"}) {
                must(app.tap(tab), tab);
                QTest::qWait(600); // swings are read
                must(save(app, name(QString(tab).toLower().toUtf8())), tab);
            }
            must(app.tap("Today"), "today");
            must(app.tap("Body card"), "body card");
            must(app.waitFor("Pain now: where?"), "body card");
            must(save(app, name("body-card")), "body card");
        }
    }
    return 0;
}
