// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The whole app on a library of its own: bringing a clip in, stepping, marking, and a tour of every page.
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QProcess>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>
#include <cmath>

#include "app_driver.h"
#include "cli/desktop_files.h"
#include "session/clip_intake.h"
#include "session/lesson_book.h"
#include "store/library.h"
#include "ui_test_run.h"

using namespace plumbmark;
using uitest::AppDriver;
using uitest::g_warnings;
using uitest::keepWarnings;

namespace {

constexpr int kFrames = 260;
struct Stored {
    std::optional<base::Vec2> leadHip;
    std::size_t marks = 0;
};

/// What the library on disk says about the only clip.
Stored onDisk(const QString& home) {
    const auto request = uitest::Shelf(home).told();
    Stored stored;
    stored.marks = request.handMarks.size();
    for (const marks::HandMark& mark : request.handMarks) {
        if (mark.landmark == marks::Landmark::lead_hip && mark.frame == 0) {
            stored.leadHip = mark.at;
        }
    }
    return stored;
}

} // namespace

class AppTest : public QObject {
    Q_OBJECT

  private:
    QTemporaryDir home_;
    QTemporaryDir markedHome_;

    static QPoint inWindow(const AppDriver& app, base::Vec2 inClip) {
        return app.inWindow(inClip.x, inClip.y);
    }
    /// Where the mark in hand is, as told to a screen reader: "350.0 | 220.0 px, ...".
    static QString pointText(const AppDriver& app) {
        QAccessibleInterface* stage = app.find("Picture of the swing");
        const QString told = stage == nullptr ? QString() : stage->text(QAccessible::Description);
        return told.mid(told.indexOf(": ") + 2);
    }
    static bool waitForPoint(const AppDriver& app, const std::function<bool(const QString&)>& wanted) {
        return QTest::qWaitFor([&] { return wanted(pointText(app)); }, 5000);
    }
    void openMarkedSwing(AppDriver& app) { QVERIFY(app.openSwing()); }

  private slots:
    void initTestCase() {
        QVERIFY(home_.isValid() && markedHome_.isValid());
        QDir(home_.path()).mkdir("Videos");
        uitest::writeNumberedClip(home_.filePath("Videos/numbers.mp4"), kFrames);

        uitest::makeMarkedLibrary(markedHome_.path());
    }

    void init() {
        qInstallMessageHandler(keepWarnings); // QtTest has put its own in
        g_warnings.clear();
    }
    void cleanup() { QVERIFY2(g_warnings.isEmpty(), qPrintable(g_warnings.join('\n'))); }

    void firstRunSaysWhatToDo() {
        QTemporaryDir fresh;
        AppDriver app(fresh.path(), AppDriver::screens()[0]);
        QVERIFY(app.find("No lessons yet") != nullptr);
        QVERIFY(app.find("Bring in a clip") != nullptr);
    }

    void aClipComesInByTouch() {
        AppDriver app(home_.path(), AppDriver::screens()[0]);
        QVERIFY(app.tap("Bring in a clip"));
        QVERIFY(app.waitFor("Film numbers.mp4"));
        QVERIFY(app.tap("Film numbers.mp4"));
        QVERIFY(app.waitFor("View: Down-the-line"));
        QVERIFY(app.tap("View: Down-the-line"));
        QVERIFY(app.tap("Read the swing"));
        QVERIFY(app.waitFor("Whose swing is it?")); // nothing was lost: the form is still there
        for (QAccessibleInterface* thing : app.everything()) {
            if (thing->role() == QAccessible::EditableText && thing->text(QAccessible::Name) == "Player") {
                const QPoint at = app.rectOf(thing).center();
                app.drag(at, at); // a tap
                break;
            }
        }
        for (const char key : std::string("Kim")) {
            QTest::keyClick(app.window(), key);
        }
        QVERIFY(app.tap("Read the swing"));
        QVERIFY(app.waitFor("Picture of the swing, Frame", 120000));
        QVERIFY(app.tap("Back"));
        QVERIFY(app.waitFor("Kim"));
        QVERIFY(app.find("Swing 1, 7-iron") != nullptr);
    }

    // 240 steps on and 240 back, by buttons and by keys: pixels on the screen, label and slider agree each
    // time.
    void stepsAreExact() {
        AppDriver app(home_.path(), AppDriver::screens()[2]);
        QVERIFY(app.tap("Swing 1"));
        QVERIFY(app.waitFor("Picture of the swing, Frame", 60000));
        QVERIFY(QTest::qWaitFor([&] { return app.find("Reading the swing") == nullptr; }, 120000));
        if (app.find("Show the whole picture") != nullptr) {
            QVERIFY(app.tap("Show the whole picture"));
        }
        if (app.find("Hide the marks") != nullptr) {
            QVERIFY(app.tap("Hide the marks"));
        }
        QTest::keyClick(app.window(), Qt::Key_Home);
        int wrong = 0;
        const auto check = [&](int frame) {
            const QString label = QString("Picture of the swing, Frame %1 of %2").arg(frame + 1).arg(kFrames);
            if (!app.waitFor(label, 5000)) {
                qWarning("no label %s, but %s", qPrintable(label),
                         qPrintable(app.nameOf("Picture of the swing")));
                ++wrong;
                return;
            }
            const QRect stage = app.rectOf(app.find("Picture of the swing"));
            const QImage shot = app.grab();
            const int read = uitest::readNumber(shot, stage, shot.width() / double(app.window()->width()));
            const double slider = app.find("Place in the clip")->valueInterface()->currentValue().toDouble();
            if (read != frame || std::lround(slider) != frame) {
                qWarning("frame %d: pixels say %d, slider says %g", frame, read, slider);
                ++wrong;
            }
        };
        check(0);
        for (int frame = 1; frame <= 240; ++frame) {
            if (frame % 3 == 0) {
                QVERIFY(app.tap("One frame on"));
            } else {
                QTest::keyClick(app.window(), Qt::Key_Right);
            }
            check(frame);
        }
        for (int frame = 239; frame >= 0; --frame) {
            if (frame % 3 == 0) {
                QVERIFY(app.tap("One frame back"));
            } else {
                QTest::keyClick(app.window(), Qt::Key_Left);
            }
            check(frame);
        }
        QCOMPARE(wrong, 0);
    }

    void aTapNeverMovesAMark() {
        const Stored before = onDisk(markedHome_.path());
        {
            AppDriver app(markedHome_.path(), AppDriver::screens()[2]);
            openMarkedSwing(app);
            const QPoint hip = inWindow(app, {350, 220});
            app.drag(hip, hip);
            QVERIFY(app.waitFor("Lead hip"));
            QVERIFY(pointText(app).startsWith("350.0 | 220.0 px"));
        }
        const Stored after = onDisk(markedHome_.path());
        QCOMPARE(after.leadHip->x, before.leadHip->x);
        QCOMPARE(after.marks, before.marks);
    }

    void aDraggedMarkIsKeptAndUndone() {
        const Stored before = onDisk(markedHome_.path());
        QCOMPARE(before.leadHip->x, 350.0);
        {
            AppDriver app(markedHome_.path(), AppDriver::screens()[2]);
            openMarkedSwing(app);
            const QPoint hip = inWindow(app, {350, 220});
            app.drag(hip, hip + QPoint(60, 0), false);
            // Told while the finger is still down.
            QVERIFY(
                waitForPoint(app, [](const QString& t) { return !t.isEmpty() && !t.startsWith("350.0"); }));
            app.release(hip + QPoint(60, 0));
            QVERIFY(QTest::qWaitFor([&] { return app.isEnabled("Undo"); }, 5000));
        }
        const Stored moved = onDisk(markedHome_.path());
        QVERIFY2(moved.leadHip->x > 360, qPrintable(QString::number(moved.leadHip->x)));
        QVERIFY(std::abs(moved.leadHip->y - 220) < 1.5);
        QCOMPARE(moved.marks, before.marks);
        {
            AppDriver app(markedHome_.path(), AppDriver::screens()[2]);
            openMarkedSwing(app);
            const QPoint hip = inWindow(app, *moved.leadHip);
            app.drag(hip, hip - QPoint(80, 0));
            QVERIFY(waitForPoint(app, [&](const QString& t) {
                return !t.startsWith(QString::number(moved.leadHip->x, 'f', 1));
            }));
            QVERIFY(QTest::qWaitFor([&] { return app.isEnabled("Undo"); }, 5000));
            QVERIFY(app.tap("Undo"));
            QVERIFY2(waitForPoint(app,
                                  [&](const QString& t) {
                                      return t.startsWith(QString::number(moved.leadHip->x, 'f', 1));
                                  }),
                     qPrintable(pointText(app)));
        }
        QCOMPARE(onDisk(markedHome_.path()).leadHip->x, moved.leadHip->x);
    }

    void aSecondFingerOrEscapeGivesTheMarkBack() {
        const Stored before = onDisk(markedHome_.path());
        const QString place = QString::number(before.leadHip->x, 'f', 1);
        {
            AppDriver app(markedHome_.path(), AppDriver::screens()[1]);
            openMarkedSwing(app);
            QPoint hip = inWindow(app, *before.leadHip);
            app.drag(hip, hip + QPoint(70, 10), false);
            QVERIFY(
                waitForPoint(app, [&](const QString& t) { return !t.isEmpty() && !t.startsWith(place); }));
            app.secondFinger(hip + QPoint(70, 10), hip + QPoint(-120, -40));
            QVERIFY(waitForPoint(app, [&](const QString& t) { return t.startsWith(place); }));

            hip = inWindow(app, *before.leadHip); // the mark's panel has taken room
            app.drag(hip, hip + QPoint(-70, 0), false);
            QVERIFY(
                waitForPoint(app, [&](const QString& t) { return !t.isEmpty() && !t.startsWith(place); }));
            QTest::keyClick(app.window(), Qt::Key_Escape);
            QVERIFY(waitForPoint(app, [&](const QString& t) { return t.startsWith(place); }));
            app.release(hip + QPoint(-70, 0));
            QTest::qWait(200);
        }
        QCOMPARE(onDisk(markedHome_.path()).leadHip->x, before.leadHip->x);
    }

    // On a rendered swing read with the pose network: a moving ankle moves the stance width while the finger
    // is down, and giving the mark back gives the number back.
    void numbersFollowTheFinger() {
        const QString renderer = qEnvironmentVariable("PLUMBMARK_RENDERER");
        if (renderer.isEmpty() || !QFile::exists(renderer)) {
            QSKIP("numbersFollowTheFinger needs the demo renderer: set PLUMBMARK_RENDERER");
        }
        const auto network = cli::readNetwork();
        if (!network.ok() || *network == nullptr) {
            QSKIP("numbersFollowTheFinger needs the pose network: platform/linux/fetch-network.sh");
        }
        QTemporaryDir home;
        QCOMPARE(
            QProcess::execute(renderer, {"--case", "sound", "--view", "face-on", "--fps", "60", "--size",
                                         "640x360", "--seed", "1", "--name", "swing", "--out", home.path()}),
            0);
        {
            store::LibraryOptions options;
            options.folder = home.path().toStdString() + "/library";
            auto library = store::Library::open(options);
            QVERIFY(library.ok());
            session::LessonBook book(**library);
            const auto player = book.addPlayer({"Rendered player", marks::Hand::right, std::nullopt, ""});
            records::Lesson lesson;
            lesson.day = "2026-11-25";
            const auto made = book.addLesson(*player, lesson);
            const auto shot = book.addShot(*made, records::Shot{});
            session::ClipIntake intake(**library, *network);
            analysis::Request request;
            request.context.club = marks::Club{marks::ClubKind::iron, 7};
            const auto receipt = intake.bringIn(*shot, home.filePath("swing.mp4").toStdString(), request, {});
            QVERIFY2(receipt.ok(), receipt.ok() ? "" : receipt.error().sentence.c_str());
        }
        AppDriver app(home.path(), AppDriver::screens()[2], {}, *network);
        QVERIFY(app.tap("Swing 1"));
        QVERIFY(app.waitFor("Picture of the swing, Frame", 60000));
        QVERIFY(QTest::qWaitFor([&] { return app.find("Reading the swing") == nullptr; }, 300000));
        if (app.find("Show the whole picture") != nullptr) {
            QVERIFY(app.tap("Show the whole picture"));
        }
        QVERIFY(app.tap("Address"));
        QTest::qWait(300);
        // Feel for the ankle, as a finger would.
        const QRect stage = app.rectOf(app.find("Picture of the swing"));
        for (double y = 0.55; y < 0.98 && app.find("Lead ankle") == nullptr; y += 0.025) {
            for (double x = 0.3; x < 0.7 && app.find("Lead ankle") == nullptr; x += 0.015) {
                const QPoint at(qRound(stage.x() + x * stage.width()),
                                qRound(stage.y() + y * stage.height()));
                app.drag(at, at);
                if (app.find("Done with this mark") != nullptr && app.find("Lead ankle") == nullptr) {
                    QTest::keyClick(app.window(),
                                    Qt::Key_Escape); // another mark: the stage gets its room back
                    QTest::qWait(60);
                }
            }
        }
        QVERIFY(app.find("Lead ankle") != nullptr);
        QTest::qWait(200); // the mark's bar has taken room
        const QStringList place = pointText(app).remove(',').split(' ');
        const QPoint ankle = inWindow(app, {place[0].toDouble(), place[2].toDouble()});
        const QString before = app.nameOf("Stance width");
        QVERIFY2(before.contains(QChar(0x00b1)), qPrintable(before));
        app.drag(ankle, ankle + QPoint(70, 0), false);
        QVERIFY2(QTest::qWaitFor([&] { return app.nameOf("Stance width") != before; }, 5000),
                 qPrintable(before));
        QTest::keyClick(app.window(), Qt::Key_Escape);
        QVERIFY2(QTest::qWaitFor([&] { return app.nameOf("Stance width") == before; }, 5000),
                 qPrintable(before + " / " + app.nameOf("Stance width")));
        app.release(ankle + QPoint(70, 0));
    }

    // Every page on every screen in both themes: everything that can be worked has a name and a target of 9.6
    // mm.
    void tour_data() {
        QTest::addColumn<int>("screen");
        QTest::addColumn<bool>("dark");
        for (int screen = 0; screen < 3; ++screen) {
            for (const bool dark : {false, true}) {
                QTest::addRow("%s %s", AppDriver::screens()[std::size_t(screen)].name, dark ? "dark" : "sun")
                    << screen << dark;
            }
        }
    }
    void tour() {
        QFETCH(int, screen);
        QFETCH(bool, dark);
        const AppDriver::Screen& s = AppDriver::screens()[std::size_t(screen)];
        AppDriver app(markedHome_.path(), s);
        if (dark != (app.find("Light colours") != nullptr)) {
            QVERIFY(app.tap(dark ? "Dark colours" : "Light colours"));
        }
        const auto look = [&](const char* page) {
            const QString wrong = app.untouchable();
            QVERIFY2(wrong.isEmpty(), qPrintable(QString("%1: %2").arg(page, wrong)));
        };
        look("lessons");
        QVERIFY(app.tap("Bring in a clip"));
        QVERIFY(app.waitFor("Folder Home"));
        look("pick a film");
        QVERIFY(app.tap("Film marked.mp4"));
        QVERIFY(app.waitFor("View: Face-on"));
        look("answers");
        QTest::keyClick(app.window(), Qt::Key_Escape);
        if (app.find("Lessons") == nullptr) {
            QTest::keyClick(app.window(), Qt::Key_Escape);
        }
        openMarkedSwing(app);
        look("swing, checks");
        QVERIFY(app.tap("Numbers"));
        look("swing, numbers");
        QVERIFY(app.tap("Notes"));
        QVERIFY(app.find("Film shows posture, not load.") != nullptr);
        look("swing, notes");
        QVERIFY(app.tap("Tools"));
        look("swing, tools");
        for (const char* tool :
             {"What the ball did", "Set a key moment", "Place a point", "Draw on the picture"}) {
            QVERIFY(app.tap(tool));
            look(tool);
            QVERIFY2(app.tap("All tools"), tool);
        }
        const QPoint ankle = inWindow(app, {270, 330});
        app.drag(ankle, ankle);
        QVERIFY(app.waitFor("Trail ankle"));
        look("swing, mark");
        QVERIFY(app.tap("Done with this mark"));
        QVERIFY(app.tap("Back"));
        QVERIFY(app.waitFor("Lessons"));
        QVERIFY(app.tap("Players"));
        QVERIFY(app.waitFor("Player Marked player"));
        look("players");
        QVERIFY(app.tap("Player Marked player"));
        QVERIFY(app.waitFor("Body card"));
        look("player, today");
        QVERIFY(app.tap("Body card"));
        QVERIFY(app.waitFor("Pain now: where?"));
        look("body card");
        QVERIFY(app.tap("Back"));
        QVERIFY(app.waitFor("Body card"));
        for (const char* tab : {"Lessons", "Swings", "Trend"}) {
            QVERIFY(app.tap(tab));
            look(tab);
        }
        QVERIFY(app.tap("Change the player's details"));
        look("player, details");
    }
};

int main(int argc, char** argv) {
    return uitest::run<AppTest>(argc, argv);
}

#include "app_test.moc"
