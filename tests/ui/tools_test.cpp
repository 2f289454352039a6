// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The tools of the swing page and the pages round it: key moments, points, constructions, drawings, players.
#include <QGuiApplication>
#include <QQuickWindow>
#include <QTest>
#include <cmath>

#include "app_driver.h"
#include "session/clip_intake.h"
#include "session/swing_desk.h"
#include "ui_test_run.h"

using namespace plumbmark;
using uitest::AppDriver;
using uitest::g_warnings;
using uitest::keepWarnings;
using uitest::Shelf;

namespace {

/// Brightest of the few pixels about a point of the window: a line's core, however thin.
int brightestAt(const AppDriver& app, QPoint at) {
    const QImage shot = app.grab();
    const double ratio = shot.width() / double(app.window()->width());
    int most = 0;
    for (int y = -1; y <= 1; ++y) {
        for (int x = -1; x <= 1; ++x) {
            most = std::max(most, qGray(shot.pixel((QPointF(at + QPoint(x, y)) * ratio).toPoint())));
        }
    }
    return most;
}

} // namespace

class ToolsTest : public QObject {
    Q_OBJECT

  private:
    QTemporaryDir home_;

  private slots:
    void initTestCase() {
        QVERIFY(home_.isValid());
        uitest::makeMarkedLibrary(home_.path());
    }
    void init() {
        qInstallMessageHandler(keepWarnings); // QtTest has put its own in
        g_warnings.clear();
    }
    void cleanup() { QVERIFY2(g_warnings.isEmpty(), qPrintable(g_warnings.join('\n'))); }

    // A clip in which the software finds no moment gets its address by hand: it is kept, told as set by hand,
    // brings the numbers that were waiting for it, and can be taken back.
    void aKeyMomentIsSetByTouch() {
        {
            AppDriver app(home_.path(), AppDriver::screens()[1]);
            QVERIFY(app.openSwing());
            QVERIFY(app.find("Stance width, Address: cannot tell") != nullptr);
            QTest::keyClick(app.window(), Qt::Key_PageDown);
            QVERIFY(app.waitFor("Picture of the swing, Frame 11 of"));
            QVERIFY(app.tap("Tools"));
            QVERIFY(app.tap("Set a key moment"));
            QVERIFY(app.waitFor("Address: not found"));
            QVERIFY(app.tap("Set \u201cAddress\u201d here"));
            QVERIFY(app.waitFor("Address: frame 11, by hand, by you"));
            QTest::keyClick(app.window(), Qt::Key_Home);
            QVERIFY(app.waitFor("Picture of the swing, Frame 1 of"));
            QVERIFY(app.tap("Set \u201cAddress\u201d here"));
            QVERIFY(app.waitFor("Address: frame 1, by hand, by you"));
            QVERIFY(app.tap("Checks"));
            // Ankles 100 px apart, shoulders 80: 1.25 before perspective is taken off.
            QVERIFY(QTest::qWaitFor(
                [&] { return app.nameOf("Stance width, Address").contains(QChar(0x00b1)); }, 5000));
            QVERIFY(app.tap("Undo"));
            QVERIFY(app.tap("Tools"));
            QVERIFY(app.tap("Set a key moment"));
            QVERIFY(app.waitFor("Address: frame 11, by hand, by you"));
            QVERIFY(app.tap("Redo"));
            QVERIFY(app.waitFor("Address: frame 1, by hand, by you"));
        }
        const auto told = Shelf(home_.path()).told();
        QCOMPARE(told.momentFixes.size(), std::size_t(1));
        QCOMPARE(told.momentFixes[0].id, marks::MomentId::address);
        QCOMPARE(told.momentFixes[0].time.value(), 0.0);
        // Half a frame of 120 a second.
        QVERIFY(std::abs(told.momentFixes[0].sigma.value() - 0.5 / 120) < 1e-4);
        Shelf shelf(home_.path());
        const auto findings = shelf.book().findings(shelf.clip());
        QVERIFY(findings.ok() && *findings);
        const marks::Moment* kept = marks::find((*findings)->moments, marks::MomentId::address);
        QVERIFY(kept != nullptr);
        QCOMPARE(kept->foundBy, std::string("hand mark"));

        // Undo reaches over a restart.
        AppDriver again(home_.path(), AppDriver::screens()[0]);
        QVERIFY(again.openSwing());
        QVERIFY(again.find("Address, ") != nullptr);
        QVERIFY(QTest::qWaitFor([&] { return again.isEnabled("Undo"); }, 5000));
        QVERIFY(again.tap("Undo"));
        QVERIFY(again.tap("Tools"));
        QVERIFY(again.tap("Set a key moment"));
        QVERIFY(again.waitFor("Address: frame 11, by hand, by you"));
        QVERIFY(again.tap("Redo"));
        QVERIFY(again.waitFor("Address: frame 1, by hand, by you"));
    }

    // A tapped check draws what it is measured from and says where each mark came from.
    void aCheckShowsItsConstruction() {
        AppDriver app(home_.path(), AppDriver::screens()[2]);
        QVERIFY(app.openSwing());
        const QPoint between = app.inWindow(330, 330); // on the way from ankle to ankle
        QVERIFY2(brightestAt(app, between) < 160, "nothing is drawn there yet");
        QVERIFY(app.tap("Stance width, Address"));
        QVERIFY(QTest::qWaitFor([&] { return brightestAt(app, app.inWindow(330, 330)) > 220; }, 5000));
        const QString told = app.descriptionOf("Stance width, Address");
        QVERIFY2(told.contains("Lead ankle, address: by hand, \u00b1 2.0 px"), qPrintable(told));
        QVERIFY2(told.contains("common practice"), qPrintable(told));
        // On another frame nothing of it is left; a second tap takes it away.
        QTest::keyClick(app.window(), Qt::Key_Right);
        QVERIFY(app.waitFor("Picture of the swing, Frame 2 of"));
        QVERIFY(brightestAt(app, app.inWindow(330, 330)) < 160);
        QTest::keyClick(app.window(), Qt::Key_Left);
        QVERIFY(app.waitFor("Picture of the swing, Frame 1 of"));
        QVERIFY(QTest::qWaitFor([&] { return brightestAt(app, app.inWindow(330, 330)) > 220; }, 5000));
        QVERIFY(app.tap("Stance width, Address"));
        QVERIFY(QTest::qWaitFor([&] { return brightestAt(app, app.inWindow(330, 330)) < 160; }, 5000));
    }

    // The ball is the one mark that the ball position still needs: the app asks for it, one tap places it,
    // and the check has its answer.
    void theMarkThatHelpsMostIsAskedFor() {
        {
            AppDriver app(home_.path(), AppDriver::screens()[0]);
            QVERIFY(app.openSwing());
            QVERIFY(app.waitFor("Mark by hand: Ball, address"));
            QVERIFY(app.descriptionOf("Mark by hand: Ball, address").contains("Ball position"));
            QVERIFY(app.tap("Mark by hand: Ball, address"));
            QVERIFY(app.waitFor("tap the picture where it is"));
            QTest::qWait(200); // the mark's bar has taken room
            app.tapAt(app.inWindow(320, 345));
            QVERIFY(app.waitFor("Take my mark away here"));
            QVERIFY(QTest::qWaitFor([&] { return app.isEnabled("Take my mark away here"); }, 5000));
            QVERIFY(app.tap("Done with this mark"));
            QVERIFY(QTest::qWaitFor(
                [&] { return app.nameOf("Ball position, Address").contains(QChar(0x00b1)); }, 5000));
            QVERIFY(QTest::qWaitFor([&] { return app.find("Mark by hand: Ball") == nullptr; }, 5000));
        }
        const auto told = Shelf(home_.path()).told();
        const auto ball = std::find_if(told.handMarks.begin(), told.handMarks.end(),
                                       [](const auto& m) { return m.landmark == marks::Landmark::ball; });
        QVERIFY(ball != told.handMarks.end() && ball->at);
        QVERIFY(std::abs(ball->at->x - 320) < 3 && std::abs(ball->at->y - 345) < 3);
    }

    void anyPointIsPlacedByATap() {
        {
            AppDriver app(home_.path(), AppDriver::screens()[2]);
            QVERIFY(app.openSwing());
            QVERIFY(app.tap("Tools"));
            QVERIFY(app.tap("Place a point"));
            QVERIFY(app.tap("Place: Hands on the grip"));
            QVERIFY(app.waitFor("tap the picture where it is"));
            QTest::qWait(200);
            app.tapAt(app.inWindow(335, 225)); // near the hip: marks do not catch the tap
            QVERIFY(QTest::qWaitFor([&] { return app.isEnabled("Take my mark away here"); }, 5000));
            QVERIFY(app.find("Place: Hands on the grip") == nullptr);
        }
        const auto told = Shelf(home_.path()).told();
        const auto grip = std::find_if(told.handMarks.begin(), told.handMarks.end(),
                                       [](const auto& m) { return m.landmark == marks::Landmark::grip; });
        QVERIFY(grip != told.handMarks.end() && grip->at);
        QVERIFY(std::abs(grip->at->x - 335) < 2 && std::abs(grip->at->y - 225) < 2);
    }

    // A line drawn with a finger and a plumb line set by a tap stay over the film, with a light core, and can
    // be taken back.
    void drawingsAreMadeByFingerKeptAndUndone() {
        {
            AppDriver app(home_.path(), AppDriver::screens()[2]);
            QVERIFY(app.openSwing());
            QVERIFY(app.tap("Tools"));
            QVERIFY(app.tap("Draw on the picture"));
            QVERIFY(app.tap("Shape: Line"));
            QVERIFY(brightestAt(app, app.inWindow(500, 200)) < 160);
            app.drag(app.inWindow(450, 200), app.inWindow(550, 200));
            QVERIFY(app.waitFor("Wipe away 1. Line"));
            QVERIFY(brightestAt(app, app.inWindow(500, 200)) > 180);
            QVERIFY(app.tap("Shape: Plumb line"));
            app.tapAt(app.inWindow(150, 320));
            QVERIFY(app.waitFor("Wipe away 2. Plumb line"));
            QTest::keyClick(app.window(), Qt::Key_Right); // over the whole film
            QVERIFY(app.waitFor("Picture of the swing, Frame 2 of"));
            QVERIFY(brightestAt(app, app.inWindow(500, 200)) > 180);
            QVERIFY(app.tap("Undo"));
            QVERIFY(QTest::qWaitFor([&] { return app.find("Wipe away 2. Plumb line") == nullptr; }, 5000));
        }
        Shelf shelf(home_.path());
        session::SwingDesk desk(shelf.library(), nullptr);
        const auto opened = desk.open(shelf.clip(), {});
        QVERIFY(opened.ok() && *opened);
        QCOMPARE(desk.drawings().size(), std::size_t(1));
        QCOMPARE(desk.drawings()[0].shape, records::Drawing::Shape::line);
        QVERIFY(std::abs(desk.drawings()[0].points[0].x - 450) < 3);
        QVERIFY(std::abs(desk.drawings()[0].points[1].x - 550) < 3);
    }

    // A line of address is copied with one tap, and goes through every picture of the strip.
    void theStripCarriesALineThroughTheMoments() {
        AppDriver app(home_.path(), AppDriver::screens()[2]);
        QVERIFY(app.openSwing());
        QVERIFY(app.tap("Tools"));
        QVERIFY(app.tap("Set a key moment"));
        for (int i = 0; i < 2; ++i) {
            QTest::keyClick(app.window(), Qt::Key_PageDown);
        }
        QVERIFY(app.waitFor("Picture of the swing, Frame 21 of"));
        QVERIFY(app.tap("Set \u201cTop\u201d here"));
        QVERIFY(app.waitFor("Top: frame 21, by hand"));
        QTest::keyClick(app.window(), Qt::Key_PageDown);
        QVERIFY(app.waitFor("Picture of the swing, Frame 31 of"));
        QVERIFY(app.tap("Set \u201cImpact\u201d here"));
        QVERIFY(app.waitFor("Impact: frame 31, by hand"));
        QVERIFY(app.tap("All tools"));
        QVERIFY(app.tap("Strip of moments"));
        // Bright pixels in the upper part of a strip picture: the clip is grey there.
        const auto bright = [&](const char* moment) {
            QAccessibleInterface* cell = app.find(QString("Go to %1").arg(moment));
            if (cell == nullptr) {
                return -1;
            }
            const QImage shot = app.grab();
            const QRect r = app.rectOf(cell);
            int count = 0;
            for (int y = r.top() + 8; y < r.top() + r.height() * 7 / 10; ++y) {
                for (int x = r.left() + 8; x < r.right() - 8; ++x) {
                    count += qGray(shot.pixel(x, y)) > 175 ? 1 : 0;
                }
            }
            return count;
        };
        for (const char* moment : {"Address", "Top", "Impact"}) {
            QVERIFY2(QTest::qWaitFor([&] { return bright(moment) >= 0; }, 5000), moment);
        }
        QTest::qWait(500);
        const int before[] = {bright("Address"), bright("Top"), bright("Impact")};
        QVERIFY(app.tap("Copy from address: Hip line"));
        const char* moments[] = {"Address", "Top", "Impact"};
        for (int i = 0; i < 3; ++i) {
            QVERIFY2(QTest::qWaitFor([&] { return bright(moments[i]) > before[i] + 60; }, 5000), moments[i]);
        }
        QVERIFY(app.tap("In the strip: Top"));
        QVERIFY(QTest::qWaitFor([&] { return app.find("Go to Top") == nullptr; }, 5000));
        QVERIFY(app.tap("Go to Impact"));
        QVERIFY(app.waitFor("Picture of the swing, Frame 31 of"));
        QVERIFY(brightestAt(app, app.inWindow(320, 220)) > 175); // there as well, on the stage
        QVERIFY(app.tap("Undo"));
        QVERIFY(QTest::qWaitFor([&] { return brightestAt(app, app.inWindow(320, 220)) < 160; }, 5000));
    }

    // Round and round between two moments: never past the second, and back at the first.
    void playingGoesRound() {
        AppDriver app(home_.path(), AppDriver::screens()[0]);
        QVERIFY(app.openSwing());
        QVERIFY(app.tap("Tools"));
        QVERIFY(app.tap("Play and loop"));
        QVERIFY(app.tap("Speed: Half"));
        QVERIFY(app.tap("Round and round from: Top"));
        QVERIFY(app.waitFor("to: Impact"));
        QVERIFY(app.tap("to: Impact"));
        QAccessibleInterface* slider = app.find("Place in the clip");
        int least = 100, most = -1, turns = 0, last = -1;
        QVERIFY(QTest::qWaitFor(
            [&] {
                const int frame = slider->valueInterface()->currentValue().toInt();
                if (frame != 0) { // the first frame stands until the loop has begun
                    least = std::min(least, frame);
                    most = std::max(most, frame);
                    turns += last >= 0 && frame < last ? 1 : 0;
                    last = frame;
                }
                return turns >= 2;
            },
            10000));
        QVERIFY2(least >= 20 && most <= 30, qPrintable(QString("%1 to %2").arg(least).arg(most)));
        QVERIFY(app.tap("Round and round from: No loop"));
        QVERIFY(app.tap("Pause"));
        QVERIFY(app.waitFor("Play"));
    }
};

int main(int argc, char** argv) {
    return uitest::run<ToolsTest>(argc, argv);
}

#include "tools_test.moc"
