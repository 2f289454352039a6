// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// What the coach does with swings that are measured: comparing them at the same position.
#include <QFile>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QTest>
#include <array>
#include <cmath>

#include "app_driver.h"
#include "session/clip_intake.h"
#include "ui_test_run.h"

using namespace plumbmark;
using marks::Landmark;
using marks::MomentId;
using uitest::AppDriver;
using uitest::g_warnings;
using uitest::keepWarnings;
using uitest::Shelf;

namespace {

/// A film of numbered frames with a figure marked by hand at its key moments; all films are 120 a second.
struct Told {
    int frames, top, impact;
    double stance; ///< ankle to ankle, px
};
// The earlier swing is slower and stands wider. Both figures are equally tall and stand on the same spot.
constexpr Told kEarlier{48, 20, 34, 130}, kToday{40, 16, 28, 76};

void addSwing(Shelf& shelf, const base::Id& lesson, const QString& film, const Told& told) {
    uitest::writeNumberedClip(film, told.frames);
    records::Shot shot;
    shot.club = marks::Club{marks::ClubKind::iron, 7};
    const auto id = shelf.book().addShot(lesson, shot);
    analysis::Request request;
    request.context.shot = marks::ShotKind::full;
    request.context.club = shot.club;
    request.captureFps = 120;
    const std::array<std::pair<int, base::Vec2>, 3> hands{
        {{0, {322, 225}}, {told.top, {270, 95}}, {told.impact, {330, 222}}}};
    for (const auto& [frame, grip] : hands) {
        const std::array<std::pair<Landmark, base::Vec2>, 10> points{
            {{Landmark::head_centre, {320, 90}},
             {Landmark::lead_shoulder, {360, 130}},
             {Landmark::trail_shoulder, {280, 130}},
             {Landmark::lead_hip, {350, 220}},
             {Landmark::trail_hip, {290, 220}},
             {Landmark::lead_knee, {352, 270}},
             {Landmark::trail_knee, {288, 270}},
             {Landmark::lead_ankle, {320 + told.stance / 2, 330}},
             {Landmark::trail_ankle, {320 - told.stance / 2, 330}},
             {Landmark::grip, grip}}};
        for (const auto& [landmark, at] : points) {
            request.handMarks.push_back({frame, landmark, at, 2.0});
        }
    }
    const auto at = [](MomentId moment, int frame) {
        return marks::Moment{moment, base::Seconds{frame / 120.0}, base::Seconds{0.004}, "hand mark"};
    };
    request.momentFixes = {at(MomentId::address, 0), at(MomentId::top, told.top),
                           at(MomentId::impact, told.impact)};
    session::ClipIntake intake(shelf.library(), nullptr);
    const auto receipt = intake.bringIn(*id, film.toStdString(), request, {});
    if (!receipt.ok() || !*receipt) {
        qFatal("%s", receipt.ok() ? "cancelled" : receipt.error().sentence.c_str());
    }
}

/// HOME/library: one player with an earlier lesson and today's, one swing each.
void makeTaughtLibrary(const QString& home) {
    Shelf shelf(home);
    const auto player = shelf.book().addPlayer({"Kim", marks::Hand::right, std::nullopt, ""});
    const auto lesson = [&](const char* day) {
        records::Lesson made;
        made.day = day;
        made.title = "Lesson";
        return *shelf.book().addLesson(*player, made);
    };
    addSwing(shelf, lesson("2026-11-04"), home + "/earlier.mp4", kEarlier);
    addSwing(shelf, lesson("2026-11-25"), home + "/today.mp4", kToday);
}

} // namespace

class TeachTest : public QObject {
    Q_OBJECT

  private:
    QTemporaryDir home_;

    /// The frame number in the pixels of a picture on the page; -1: none can be read.
    static int numberIn(const AppDriver& app, const QString& picture) {
        QAccessibleInterface* stage = app.find(picture);
        if (stage == nullptr) {
            return -1;
        }
        const QImage shot = app.grab();
        return uitest::readNumber(shot, app.rectOf(stage), shot.width() / double(app.window()->width()));
    }
    static bool shows(const AppDriver& app, const QString& picture, int frame) {
        return QTest::qWaitFor([&] { return numberIn(app, picture) == frame; }, 5000);
    }
    static bool openCompare(AppDriver& app) {
        return app.openSwing() && app.tap("Tools") && app.waitFor("Compare with another swing") &&
               app.tap("Compare with another swing") && app.waitFor("Other swing, Frame", 60000);
    }
    /// Whole pictures without anything over them, as their pixels are read.
    static bool bare(AppDriver& app) {
        return (app.find("Show the whole pictures") == nullptr || app.tap("Show the whole pictures")) &&
               (app.find("Hide the marks") == nullptr || app.tap("Hide the marks"));
    }

  private slots:
    void initTestCase() {
        QVERIFY(home_.isValid());
        makeTaughtLibrary(home_.path());
    }
    void init() {
        qInstallMessageHandler(keepWarnings); // QtTest has put its own in
        g_warnings.clear();
    }
    void cleanup() { QVERIFY2(g_warnings.isEmpty(), qPrintable(g_warnings.join('\n'))); }

    // Both pictures stand at the same position: the frames' numbers are read from the pixels. The other swing
    // is the player's own best without anybody choosing.
    void twoSwingsStandAtTheSamePosition() {
        AppDriver app(home_.path(), AppDriver::screens()[2]);
        QVERIFY(openCompare(app));
        QVERIFY(app.waitFor("Top, "));
        QVERIFY(bare(app));
        QVERIFY(app.tap("Top, "));
        QVERIFY2(shows(app, "This swing, ", kToday.top), "this swing at its top");
        QVERIFY2(shows(app, "Other swing, ", kEarlier.top), "the other at its own top");
        QVERIFY(app.tap("Impact, "));
        QVERIFY(shows(app, "This swing, ", kToday.impact));
        QVERIFY(shows(app, "Other swing, ", kEarlier.impact));
        QVERIFY(app.tap("Address, "));
        QVERIFY(shows(app, "Other swing, ", 0));
        // Halfway up by the way of the hands: marks run straight and evenly there in both.
        for (int i = 0; i < kToday.top / 2; ++i) {
            QVERIFY(app.tap("One frame on"));
        }
        QVERIFY(shows(app, "This swing, ", kToday.top / 2));
        QTest::qWait(300);
        const int other = numberIn(app, "Other swing, ");
        QVERIFY2(std::abs(other - kEarlier.top / 2) <= 1, qPrintable(QString::number(other)));

        // By real time from impact: eight frames before it in both.
        QVERIFY(app.tap("Match"));
        QVERIFY(app.tap("Same position means the same: Time from impact"));
        QVERIFY(app.waitFor("Kim, same position by: Time from impact"));
        QVERIFY(app.tap("Impact, "));
        QVERIFY(shows(app, "This swing, ", kToday.impact));
        for (int i = 0; i < 8; ++i) {
            QTest::keyClick(app.window(), Qt::Key_Left);
        }
        QVERIFY(shows(app, "This swing, ", kToday.impact - 8));
        QVERIFY(shows(app, "Other swing, ", kEarlier.impact - 8));
        QVERIFY(app.tap("Swings"));
        QVERIFY(app.find("Compare with 11/4/26, swing 1, own best") != nullptr ||
                app.find("Compare with") != nullptr);
        QVERIFY(app.nameOf("Compare with").contains("own best"));
        QTest::keyClick(app.window(), Qt::Key_Escape);
        QVERIFY(app.waitFor("Picture of the swing, Frame"));
    }

    // 76 px from ankle to ankle against 130, by marks good to 2 px: beyond doubt. The slope of the shoulders
    // is the same in both.
    void theTableSaysWhatIsBeyondDoubt() {
        AppDriver app(home_.path(), AppDriver::screens()[2]);
        QVERIFY(openCompare(app));
        QVERIFY(app.waitFor("Stance width, Address: this swing"));
        const QString stance = app.nameOf("Stance width, Address: this swing");
        QVERIFY2(stance.endsWith(", beyond doubt"), qPrintable(stance));
        QVERIFY2(stance.contains(QChar(0x00b1)), qPrintable(stance));
        const QString tilt = app.nameOf("Spine tilt, Address: this swing");
        QVERIFY2(tilt.endsWith(", not beyond doubt"), qPrintable(tilt));
        QVERIFY(app.tap("Stance width, Address"));
        QVERIFY(app.waitFor("This swing, Frame 1 of"));
    }

    // Laid over each other feet on feet: the strip of frame numbers of the one covers that of the other, and
    // the slider says whose is seen.
    void oneSwingLiesOverTheOther() {
        AppDriver app(home_.path(), AppDriver::screens()[1]);
        QVERIFY(openCompare(app));
        QVERIFY(app.waitFor("Top, "));
        QVERIFY(bare(app));
        QVERIFY(app.tap("Top, "));
        QVERIFY(shows(app, "Other swing, ", kEarlier.top));
        QVERIFY(app.tap("Lay one over the other"));
        QVERIFY(app.waitFor("How much of the other swing"));
        const QRect slider = app.rectOf(app.find("How much of the other swing"));
        app.drag(slider.center(), {slider.right() + 40, slider.center().y()});
        QVERIFY(shows(app, "This swing, ", kEarlier.top));
        app.drag({slider.right() - 30, slider.center().y()}, {slider.left() - 40, slider.center().y()});
        QVERIFY(shows(app, "This swing, ", kToday.top));
        QVERIFY(app.tap("Side by side"));
        QVERIFY(shows(app, "Other swing, ", kEarlier.top));
    }

    void everythingCanBeTouched_data() {
        QTest::addColumn<int>("screen");
        for (int screen = 0; screen < 3; ++screen) {
            QTest::addRow("%s", AppDriver::screens()[std::size_t(screen)].name) << screen;
        }
    }
    void everythingCanBeTouched() {
        QFETCH(int, screen);
        AppDriver app(home_.path(), AppDriver::screens()[std::size_t(screen)]);
        QVERIFY(openCompare(app));
        QVERIFY(app.waitFor("Top, "));
        for (const char* panel : {"Differences", "Swings", "Match"}) {
            QVERIFY(app.tap(panel));
            QVERIFY2(app.untouchable().isEmpty(), qPrintable(panel + QString(": ") + app.untouchable()));
        }
        QVERIFY(app.tap("Lay one over the other"));
        QVERIFY2(app.untouchable().isEmpty(), qPrintable(app.untouchable()));
    }
};

int main(int argc, char** argv) {
    return uitest::run<TeachTest>(argc, argv);
}

#include "teach_test.moc"
