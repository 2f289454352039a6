// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// How long a finger waits: cold start, one step, scrubbing, and from a moved mark to its lights. Everything
// goes the way a finger's events go, and ends when the frame that shows it has been handed to the screen.
#include <QElapsedTimer>
#include <QGuiApplication>
#include <QProcess>
#include <QQuickWindow>
#include <QTest>
#include <algorithm>
#include <cstdio>
#include <vector>

#include "../ui/app_driver.h"
#include "bridge/app_model.h"
#include "cli/desktop_files.h"
#include "session/clip_intake.h"

using namespace plumbmark;
using uitest::AppDriver;

namespace {

double percentile(std::vector<double> values, double share) {
    std::sort(values.begin(), values.end());
    return values.empty()
               ? 0.0
               : values[std::min(values.size() - 1, static_cast<std::size_t>(share * double(values.size())))];
}

void print(const char* name, const std::vector<double>& ms, const char* end) {
    std::printf("  \"%s\": {\"median_ms\": %.1f, \"p95_ms\": %.1f, \"count\": %zu}%s\n", name,
                percentile(ms, 0.5), percentile(ms, 0.95), ms.size(), end);
}

/// Waits until `done`, then until the next frame is on its way to the screen.
bool shown(QQuickWindow* window, const std::function<bool()>& done, int milliseconds = 5000) {
    bool swapped = false;
    const auto connection = QObject::connect(
        window, &QQuickWindow::frameSwapped, window, [&] { swapped = swapped || done(); },
        Qt::DirectConnection);
    QElapsedTimer clock;
    clock.start();
    while (!swapped && clock.elapsed() < milliseconds) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
    }
    QObject::disconnect(connection);
    return swapped;
}

/// This program again, as a process of its own: from its start to the first frame with the lesson list.
double coldStart(const QString& home) {
    QElapsedTimer clock;
    QProcess child;
    clock.start();
    child.start(QCoreApplication::applicationFilePath(), {"start", home});
    child.waitForReadyRead(60000);
    const double ms = double(clock.nsecsElapsed()) / 1e6;
    child.waitForFinished(10000);
    return ms;
}

int startOnly(const QString& home) {
    AppDriver app(home, AppDriver::screens()[1]);
    (void)shown(app.window(), [] { return true; });
    std::puts("shown");
    std::fflush(stdout);
    return 0;
}

/// HOME/library with the clip as its one swing, read with the pose network.
bool makeLibrary(const QString& home, const QString& film, const analysis::NetworkBytes& network) {
    uitest::Shelf shelf(home);
    const auto player = shelf.book().addPlayer({"Benchmark player", marks::Hand::right, std::nullopt, ""});
    records::Lesson lesson;
    lesson.day = "2026-11-25";
    const auto made =
        player.ok() ? shelf.book().addLesson(*player, lesson) : base::Result<base::Id>(player.error());
    const auto shot = made.ok() ? shelf.book().addShot(*made, records::Shot{}) : made;
    if (!shot.ok()) {
        return false;
    }
    session::ClipIntake intake(shelf.library(), network);
    analysis::Request request;
    request.context.club = marks::Club{marks::ClubKind::iron, 7};
    return intake.bringIn(*shot, film.toStdString(), request, {}).ok();
}

} // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("DISPLAY") && qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QGuiApplication application(argc, argv);
    app::prepareApplication();
    if (argc == 3 && QByteArray(argv[1]) == "start") {
        return startOnly(QString::fromLocal8Bit(argv[2]));
    }
    if (argc != 2) {
        std::fprintf(stderr, "plumbmark-app-bench CLIP\n");
        return 2;
    }
    QAccessible::setActive(true);
    const auto network = cli::readNetwork();
    QTemporaryDir home;
    if (!network.ok() || !makeLibrary(home.path(), QString::fromLocal8Bit(argv[1]), *network)) {
        std::fprintf(stderr, "The clip could not be brought in.\n");
        return 1;
    }
    std::vector<double> start, step, scrub, light;
    for (int i = 0; i < 5; ++i) {
        start.push_back(coldStart(home.path()));
    }
    AppDriver app(home.path(), AppDriver::screens()[1], {}, *network);
    if (!app.openSwing()) {
        std::fprintf(stderr, "The swing did not open.\n");
        return 1;
    }
    QQuickWindow* window = app.window();
    bridge::SwingModel& swing = *app.model().swing();
    const auto now = [clock = [] {
        QElapsedTimer c;
        c.start();
        return c;
    }()] { return double(clock.nsecsElapsed()) / 1e6; };

    // One step at a time, on and back: most come from the cache, some after a refill.
    for (int i = 0; i < 200; ++i) {
        const int wanted = swing.frame() + (i < 100 ? 1 : -1);
        const double from = now();
        QTest::keyClick(window, i < 100 ? Qt::Key_Right : Qt::Key_Left);
        if (shown(window, [&] { return swing.frame() == wanted; })) {
            step.push_back(now() - from);
        }
    }

    // A finger on the slider, 60 moves a second, there and back for 6 s. A picture counts from the newest
    // move that asked for it.
    const QRect slider = app.rectOf(app.find("Place in the clip"));
    QPointingDevice* finger = QTest::createTouchDevice();
    const int y = slider.center().y(), x0 = slider.left() + 30, x1 = slider.right() - 30;
    std::map<int, double> askedAt; // frame wanted -> when
    int last = -1;
    const auto onSwap = QObject::connect(
        window, &QQuickWindow::frameSwapped, window,
        [&] {
            const int frame = swing.frame();
            if (const auto it = askedAt.find(frame); it != askedAt.end() && frame != last) {
                scrub.push_back(now() - it->second);
                askedAt.erase(it);
            }
            last = frame;
        },
        Qt::DirectConnection);
    QAccessibleInterface* value = app.find("Place in the clip");
    QTest::touchEvent(window, finger).press(0, QPoint(x0, y), window);
    const double began = now();
    for (int i = 1; i <= 360; ++i) {
        const double phase = 2.0 * (i % 180) / 180.0;
        const double share = phase < 1 ? phase : 2 - phase;
        QTest::touchEvent(window, finger).move(0, QPoint(int(x0 + share * (x1 - x0)), y), window);
        askedAt[value->valueInterface()->currentValue().toInt()] = now();
        while (now() < began + i * 1000.0 / 60) {
            QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
        }
    }
    QTest::touchEvent(window, finger).release(0, QPoint(x0, y), window);
    QTest::qWait(500);
    QObject::disconnect(onSwap);

    // A finger moves the lead ankle at address, the stance width follows.
    if (app.tap("Address")) {
        QTest::qWait(1000);
        const auto& marks = swing.stageContent().marks;
        const QSizeF picture = swing.stageContent().picture.size();
        if (const auto& ankle = marks[marks::Landmark::lead_ankle]) {
            const QPoint at =
                app.inWindow(ankle->at.x * 640 / picture.width(), ankle->at.y * 360 / picture.height());
            QTest::touchEvent(window, finger).press(0, at, window);
            QTest::qWait(300);
            bool moved = false;
            QObject::connect(swing.checks(), &QAbstractItemModel::dataChanged, window, [&] { moved = true; });
            for (int i = 1; i <= 120; ++i) {
                moved = false;
                const double from = now();
                QTest::touchEvent(window, finger).move(0, at + QPoint(12 + i % 40, 0), window);
                if (shown(
                        window, [&] { return moved; }, 2000) &&
                    i > 10) {
                    light.push_back(now() - from);
                }
                QTest::qWait(16);
            }
            QTest::touchEvent(window, finger).release(0, at, window);
            QTest::qWait(300);
        }
    }
    std::printf("{\n");
    print("cold_start", start, ",");
    print("step", step, ",");
    print("scrub", scrub, ",");
    print("drag_to_light", light, "");
    std::printf("}\n");
    return 0;
}
