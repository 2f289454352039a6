// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The whole app on a library of its own: bringing a clip in, stepping, marking.
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QProcess>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>
#include <cmath>

#include "app_driver.h"
#include "awkward/awkward.h"
#include "awkward/strip.h"
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

/// Tall enough that no word lies on the numbers of a clip of 4 to 3.
constexpr AppDriver::Screen kTall{"tall phone", 360, 1000, 6.3};

/// The number in the strip of the clip on show, the whole clip being fitted into `stage`.
std::optional<int> stripOnScreen(const AppDriver& app, QRect stage, QSizeF clip) {
    const QImage shot = app.grab().convertToFormat(QImage::Format_Grayscale8);
    const double ratio = shot.width() / double(app.window()->width());
    const double scale = std::min(stage.width() / clip.width(), stage.height() / clip.height());
    QRectF picture(QPointF(0, 0), clip * scale);
    picture.moveCenter(QRectF(stage).center());
    const QImage part = shot.copy(QRectF(picture.topLeft() * ratio, picture.size() * ratio).toRect());
    return awkward::readStrip({part.constBits(), part.width(), part.height(), part.bytesPerLine()});
}

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
    awkward::AwkwardClip steps_;

    [[nodiscard]] QSizeF clipSize() const { return QSizeF(steps_.width, steps_.height); }
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
        const auto made = awkward::make("long-group", home_.path().toStdString());
        QVERIFY2(made.ok(), made.ok() ? "" : made.error().sentence.c_str());
        steps_ = *made;
        QVERIFY(QFile::rename(QString::fromStdString(steps_.path.string()),
                              home_.filePath("Videos/numbers.mp4")));

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

    // 500 steps on and 500 back, by buttons and by keys, turning at both ends of a clip whose pictures hang
    // on each other (one key frame, pyramids of B-frames): pixels on the screen, label and slider agree each
    // time.
    void stepsAreExact() {
        AppDriver app(home_.path(), kTall);
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
        QAccessibleInterface* stage = app.find("Picture of the swing");
        QAccessibleInterface* slider = app.find("Place in the clip");
        const QRect place = app.rectOf(stage);
        const int frames = static_cast<int>(steps_.numbers.size());
        int wrong = 0;
        const auto check = [&](int frame) {
            const QString label = QString("Picture of the swing, Frame %1 of %2").arg(frame + 1).arg(frames);
            const bool told = QTest::qWaitFor([&] { return stage->text(QAccessible::Name) == label; }, 5000);
            const std::optional<int> read = stripOnScreen(app, place, clipSize());
            const double value = slider->valueInterface()->currentValue().toDouble();
            if (!told || read != steps_.numbers[static_cast<std::size_t>(frame)] ||
                std::lround(value) != frame) {
                qWarning("frame %d: label says %s, pixels say %d, slider says %g", frame,
                         qPrintable(stage->text(QAccessible::Name)), read.value_or(-1), value);
                ++wrong;
            }
        };
        check(0);
        int frame = 0, on = 0, back = 0;
        for (int way = 1; on < 500 || back < 500;) {
            if (frame + way < 0 || frame + way >= frames || (way > 0 ? on : back) >= 500) {
                way = -way;
            }
            frame += way;
            ++(way > 0 ? on : back);
            if (frame % 10 == 0) {
                QVERIFY(app.tap(way > 0 ? "One frame on" : "One frame back"));
            } else {
                QTest::keyClick(app.window(), way > 0 ? Qt::Key_Right : Qt::Key_Left);
            }
            check(frame);
        }
        QCOMPARE(on, 500);
        QCOMPARE(back, 500);
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

    // Turned while a finger holds a mark: the picture is elsewhere, so the mark goes back to where it was.
    void turningTheDeviceGivesTheMarkBack() {
        const Stored before = onDisk(markedHome_.path());
        const QString place = QString::number(before.leadHip->x, 'f', 1);
        {
            AppDriver app(markedHome_.path(), AppDriver::screens()[1]);
            openMarkedSwing(app);
            const QPoint hip = inWindow(app, *before.leadHip);
            app.drag(hip, hip + QPoint(70, 10), false);
            QVERIFY(
                waitForPoint(app, [&](const QString& t) { return !t.isEmpty() && !t.startsWith(place); }));
            app.window()->resize(768, 1024);
            QVERIFY(waitForPoint(app, [&](const QString& t) { return t.startsWith(place); }));
            app.release(QPoint(300, 300)); // the finger that is still there does nothing any more
            QTest::qWait(200);
            QVERIFY(pointText(app).startsWith(place));
        }
        QCOMPARE(onDisk(markedHome_.path()).leadHip->x, before.leadHip->x);
    }

    // The program is killed while a mark is being dragged: what was shown as saved is there, the unfinished
    // gesture is not.
    void killedWhileMarkingKeepsWhatWasSaved() {
        QTemporaryDir home;
        uitest::makeMarkedLibrary(home.path());
        QProcess marking;
        marking.setProcessChannelMode(QProcess::ForwardedErrorChannel);
        marking.start(QCoreApplication::applicationFilePath(), {"--mark-and-hold", home.path()});
        QVERIFY(QTest::qWaitFor([&] { return marking.bytesAvailable() > 0; }, 120000));
        const QList<QByteArray> told = marking.readLine().trimmed().split(' ');
        QCOMPARE(told.size(), 2);
        marking.kill(); // SIGKILL: nothing is tidied up
        QVERIFY(marking.waitForFinished(20000));
        const Stored kept = onDisk(home.path());
        QVERIFY(kept.leadHip.has_value());
        QVERIFY2(std::abs(kept.leadHip->x - told[0].toDouble()) < 0.06,
                 qPrintable(QString::number(kept.leadHip->x)));
        QVERIFY(kept.leadHip->x > 355); // it had been moved
        QVERIFY2(std::abs(told[1].toDouble() - kept.leadHip->x) > 3, "a second drag was under way");
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

    // German by touch: words, and numbers as Germans write them; the files keep the point.
    void anotherLanguageIsChosenByTouch() {
        QTemporaryDir home;
        uitest::makeMarkedLibrary(home.path());
        {
            AppDriver app(home.path(), AppDriver::screens()[0]);
            QVERIFY(app.tap("Settings"));
            QVERIFY(app.waitFor("Language: Deutsch"));
            QVERIFY(app.tap("Language: Deutsch"));
            QVERIFY2(app.waitFor("Einstellungen"), qPrintable(app.nameOf("Settings")));
            QVERIFY(app.tap(QString::fromUtf8("Zur\u00fcck")));
            QVERIFY(app.waitFor("Schwung 1"));
            QVERIFY(app.tap("Schwung 1"));
            QVERIFY(app.waitFor("Bild des Schwungs, Bild 1 von 40", 60000));
            QVERIFY(app.waitFor("Bild 1 von 40  \u00b7  0,000 s", 60000));
            QVERIFY(app.waitFor("Standbreite"));
        }
        QCOMPARE(onDisk(home.path()).leadHip->x, 350.0);
        AppDriver again(home.path(), AppDriver::screens()[0]); // remembered
        QVERIFY(again.waitFor("Stunden"));
    }
};

/// The other side of killedWhileMarkingKeepsWhatWasSaved: moves the lead hip, waits until that is saved,
/// takes hold of it again, tells both places and waits to be killed.
int markAndHold(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("DISPLAY") && qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QGuiApplication application(argc, argv);
    QAccessible::setActive(true);
    app::prepareApplication();
    AppDriver app(QString::fromLocal8Bit(argv[2]), AppDriver::screens()[2]);
    const auto place = [&] {
        const QString text = app.descriptionOf("Picture of the swing");
        return text.mid(text.indexOf(": ") + 2).section(' ', 0, 0);
    };
    if (!app.openSwing()) {
        return 1;
    }
    const QPoint hip = app.inWindow(350, 220);
    app.drag(hip, hip + QPoint(40, 0));
    if (!QTest::qWaitFor([&] { return app.isEnabled("Undo"); }, 10000)) { // shown as saved: it can be undone
        return 1;
    }
    QTest::qWait(200);
    const QString saved = place();
    const QPoint now = app.inWindow(saved.toDouble(), 220);
    app.drag(now, now + QPoint(60, 0), false);
    if (!QTest::qWaitFor([&] { return place() != saved; }, 10000)) {
        return 1;
    }
    printf("%s %s\n", qPrintable(saved), qPrintable(place()));
    fflush(stdout);
    QTest::qWait(60000);
    return 0;
}

int main(int argc, char** argv) {
    if (argc == 3 && QByteArray(argv[1]) == "--mark-and-hold") {
        return markAndHold(argc, argv);
    }
    return uitest::run<AppTest>(argc, argv);
}

#include "app_test.moc"
