// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// What is kept about people: the shot as the coach saw it, players, body card, groups.
#include <QGuiApplication>
#include <QQuickWindow>
#include <QTest>

#include "app_driver.h"
#include "ui_test_run.h"

using namespace plumbmark;
using uitest::AppDriver;
using uitest::g_warnings;
using uitest::keepWarnings;
using uitest::Shelf;

class PeopleTest : public QObject {
    Q_OBJECT

  private:
    QTemporaryDir home_;
    QTemporaryDir leftHome_;

  private slots:
    void initTestCase() {
        QVERIFY(home_.isValid() && leftHome_.isValid());
        uitest::makeMarkedLibrary(home_.path());
        uitest::makeMarkedLibrary(leftHome_.path(), marks::Hand::left);
    }
    void init() {
        qInstallMessageHandler(keepWarnings); // QtTest has put its own in
        g_warnings.clear();
    }
    void cleanup() { QVERIFY2(g_warnings.isEmpty(), qPrintable(g_warnings.join('\n'))); }

    // One tap in the grid keeps start line and curve; a tap on what is chosen takes it back.
    void aShotIsRecordedByTouch() {
        {
            AppDriver app(home_.path(), AppDriver::screens()[0]);
            QVERIFY(app.openSwing());
            QVERIFY(app.tap("Record the ball"));
            QVERIFY(app.waitFor("Ball flight: Pull slice"));
            // A right-hander pulls to the left and slices to the right.
            const QRect pull = app.rectOf(app.find("Ball flight: Pull slice"));
            const QRect push = app.rectOf(app.find("Ball flight: Push slice"));
            const QRect hook = app.rectOf(app.find("Ball flight: Pull hook"));
            QVERIFY(pull.center().x() < push.center().x());
            QVERIFY(hook.center().y() < pull.center().y());
            QVERIFY(app.tap("Ball flight: Push hook"));
            QVERIFY(app.find("Ball flight: Push hook")->state().checked);
            QVERIFY(app.tap("Ball flight: Pull slice"));
            QVERIFY(!app.find("Ball flight: Push hook")->state().checked);
        }
        {
            const auto shot = *Shelf(home_.path()).book().shot(Shelf(home_.path()).shot());
            QCOMPARE(shot.start, std::optional(records::BallStart::lead));
            QCOMPARE(shot.curve, std::optional(records::BallCurve::trail));
            QVERIFY(!shot.contact && !shot.surface && !shot.star);
        }
        {
            AppDriver app(home_.path(), AppDriver::screens()[2]);
            QVERIFY(app.openSwing());
            QVERIFY(app.tap("Tools"));
            QVERIFY(app.tap("What the ball did"));
            QVERIFY(app.waitFor("Ball flight: Pull slice"));
            QVERIFY(app.find("Ball flight: Pull slice")->state().checked);
            QVERIFY(app.tap("Ball flight: Pull slice")); // taken back
            QVERIFY(!app.find("Ball flight: Pull slice")->state().checked);
            QVERIFY(app.tap("Contact: Thin"));
            QVERIFY(app.tap("Hit from: Tee"));
        }
        const auto shot = *Shelf(home_.path()).book().shot(Shelf(home_.path()).shot());
        QVERIFY(!shot.start && !shot.curve);
        QCOMPARE(shot.contact, std::optional(records::Contact::thin));
        QCOMPARE(shot.surface, std::optional(records::Surface::tee));
    }

    // The grid is mirrored for left-handers: their pull starts to the right, their slice bends to the left.
    void aLeftHandersGridIsMirrored() {
        {
            AppDriver app(leftHome_.path(), AppDriver::screens()[1]);
            QVERIFY(app.openSwing());
            QVERIFY(app.tap("Record the ball"));
            QVERIFY(app.waitFor("Ball flight: Pull slice"));
            const QRect pull = app.rectOf(app.find("Ball flight: Pull slice"));
            const QRect push = app.rectOf(app.find("Ball flight: Push slice"));
            const QRect hook = app.rectOf(app.find("Ball flight: Pull hook"));
            QVERIFY(pull.center().x() > push.center().x());
            QVERIFY(hook.center().y() > pull.center().y());
            QVERIFY(app.tap("Ball flight: Pull slice"));
        }
        const auto shot = *Shelf(leftHome_.path()).book().shot(Shelf(leftHome_.path()).shot());
        QCOMPARE(shot.start, std::optional(records::BallStart::lead));
        QCOMPARE(shot.curve, std::optional(records::BallCurve::trail));
    }
};

int main(int argc, char** argv) {
    return uitest::run<PeopleTest>(argc, argv);
}

#include "people_test.moc"
