// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// What is kept about people: the shot as the coach saw it, players, body card, groups.
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QRegularExpression>
#include <QTest>

#include "app_driver.h"
#include "session/body_book.h"
#include "ui_test_run.h"

using namespace plumbmark;
using uitest::AppDriver;
using uitest::g_warnings;
using uitest::keepWarnings;
using uitest::Shelf;

namespace {

/// One player with two lessons: three swings with a 7-iron each, stance widths 0.80 .. 0.82 and 1.19 .. 1.21,
/// the first of the newer lesson with a star; and one swing with a driver.
void makeTwoLessons(const QString& home) {
    Shelf shelf(home);
    const auto player = *shelf.book().addPlayer({"Kim", marks::Hand::right, std::nullopt, ""});
    int films = 0;
    const auto swing = [&](const base::Id& lesson, const marks::Club& club, double stance, bool star) {
        records::Shot shot;
        shot.club = club;
        shot.star = star;
        const auto made = *shelf.book().addShot(lesson, shot);
        const QString film = home + QStringLiteral("/film%1").arg(films++);
        QFile file(film);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(film.toUtf8());
        file.close();
        const auto kept = *shelf.library().addFilm(film.toStdString());
        records::Clip clip;
        clip.sha256 = kept.sha256;
        clip.bytes = kept.bytes;
        clip.width = 640, clip.height = 360, clip.frames = 10;
        const std::vector<base::Id> path{player, lesson, made};
        const auto fact = shelf.library().make(records::kind::clip, path, bodyOf(clip));
        records::Findings findings;
        findings.measurements.push_back({"stance_width_ratio", marks::MomentId::address,
                                         base::Measured{stance, 0.02, base::Unit::ratio, base::Origin::hand},
                                         "", 1});
        auto below = path;
        below.push_back(fact.id);
        QVERIFY(shelf.library()
                    .add({fact, shelf.library().make(records::kind::findings, below, bodyOf(findings))})
                    .ok());
    };
    const marks::Club iron{marks::ClubKind::iron, 7}, driver{marks::ClubKind::driver, std::nullopt};
    records::Lesson lesson;
    lesson.title = "Lesson";
    lesson.day = "2026-11-03";
    const auto first = *shelf.book().addLesson(player, lesson);
    lesson.day = "2026-11-24";
    const auto second = *shelf.book().addLesson(player, lesson);
    for (int i = 0; i < 3; ++i) {
        swing(first, iron, 0.80 + 0.01 * i, false);
    }
    for (int i = 0; i < 3; ++i) {
        swing(second, iron, 1.19 + 0.01 * i, i == 0);
    }
    const auto third = *shelf.book().addLesson(player, lesson);
    swing(third, driver, 1.4, false);
}

} // namespace

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
            QTest::qWait(200); // the tool has taken room
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

    // A new player is added by touch, found by group, changed, and asked what the lesson is for.
    void aPlayerIsAddedFoundAndChanged() {
        QTemporaryDir home;
        {
            AppDriver app(home.path(), AppDriver::screens()[0]);
            QVERIFY(app.tap("Players"));
            QVERIFY(app.waitFor("No players yet"));
            QVERIFY(app.tap("Add a player"));
            QVERIFY(app.waitFor("New player"));
            QVERIFY(app.tap("Add this player"));
            QVERIFY(app.waitFor("The player has no name"));
            QVERIFY(app.type("Name", "Ilse Marrok"));
            QVERIFY(app.tap("Player's hand: Left"));
            QVERIFY(app.type("Height in cm, if known", "900"));
            QVERIFY(app.tap("Add this player"));
            QVERIFY(app.waitFor("The height must be a number of centimetres"));
            QVERIFY(app.type("Height in cm, if known", "168"));
            QVERIFY(app.type("Group", "juniors"));
            QVERIFY(app.tap("Add this player"));
            QVERIFY(app.waitFor("Ilse Marrok"));
            QVERIFY(app.type("What does the student want?", "higher ball"));
            QTest::keyClick(app.window(), Qt::Key_Return);
            QVERIFY(app.waitFor("Kept in today's lesson."));
        }
        {
            Shelf shelf(home.path());
            const auto players = *shelf.book().players("JUNIORS"); // a group is found in any case
            QCOMPARE(players.size(), std::size_t(1));
            const auto player = *shelf.book().player(players[0].id);
            QCOMPARE(player.name, std::string("Ilse Marrok"));
            QCOMPARE(player.hand, std::optional(marks::Hand::left));
            QCOMPARE(player.statureMetres, std::optional(1.68));
            const auto lessons = *shelf.book().lessons({}, players[0].id);
            QCOMPARE(lessons.size(), std::size_t(1));
            QCOMPARE(shelf.book().lesson(lessons[0].id)->wish, std::string("higher ball"));
        }
        AppDriver app(home.path(), AppDriver::screens()[2]);
        QVERIFY(app.tap("Players"));
        QVERIFY(app.waitFor("Player Ilse Marrok, lessons: 1"));
        QVERIFY(app.type("Find a player", "nobody"));
        QVERIFY(app.waitFor("Nobody of that name or group."));
        QVERIFY(app.type("Find a player", "juni"));
        QVERIFY(app.waitFor("Player Ilse Marrok"));
        QVERIFY(app.tap("Player Ilse Marrok"));
        QVERIFY(app.tap("Change the player's details"));
        QVERIFY(app.type("Name", "Ilse M"));
        QVERIFY(app.tap("Keep the changes"));
        QVERIFY(app.waitFor("Ilse M"));
        QCOMPARE(Shelf(home.path()).book().players()->front().name, std::string("Ilse M"));
    }

    // Swings are filed and a number is followed over the lessons, with its band.
    void swingsAreFiledAndANumberIsFollowed() {
        QTemporaryDir home;
        makeTwoLessons(home.path());
        AppDriver app(home.path(), AppDriver::screens()[1]);
        QVERIFY(app.tap("Players"));
        QVERIFY(app.tap("Player Kim"));
        QVERIFY(app.tap("Swings"));
        QVERIFY(app.waitFor("Swing 3. 7-iron"));
        QVERIFY(app.find("Swing 1. driver") != nullptr || app.find("Swing 1. Driver") != nullptr);
        QVERIFY(app.tap("Find by club"));
        QVERIFY(app.tap("Star: with a star"));
        QVERIFY(app.tap("Show the swings"));
        QVERIFY(app.waitFor("Answers that the swings below fit: 1"));
        QVERIFY(app.find("Swing 1. 7-iron") != nullptr);
        QVERIFY(app.nameOf("Swing 1. 7-iron").endsWith("with a star"));
        QVERIFY(app.find("Swing 3. 7-iron") == nullptr);

        QVERIFY(app.tap("Trend"));
        QVERIFY(app.waitFor("Stance width, address"));
        QVERIFY(app.find("Band: good, 1 to 1.3") != nullptr);
        QVERIFY(app.find("From the first lesson to the newest: 0.39") != nullptr);
        QVERIFY(app.nameOf("From the first lesson to the newest").endsWith("beyond doubt."));
        // The dots stand where the numbers say: the newer lesson's swings are inside the band, to the right
        // of and above the older one's.
        std::vector<QRect> bars;
        for (QAccessibleInterface* thing : app.everything()) {
            if (thing->text(QAccessible::Name).contains("swings: 3")) {
                bars.push_back(app.rectOf(thing));
            }
        }
        QCOMPARE(bars.size(), std::size_t(2));
        QVERIFY(bars[0].x() < bars[1].x());
        QVERIFY(bars[0].center().y() > bars[1].center().y());
    }

    // Before the first full swing: pain on the scale of 0 to 10, conditions, a clearance; kept at once, in
    // the player's own left and right, and never in words of a diagnosis.
    void theBodyIsAskedBeforeTheFirstSwing() {
        QTemporaryDir home;
        const auto player =
            *Shelf(home.path()).book().addPlayer({"Lefty", marks::Hand::left, std::nullopt, ""});
        {
            AppDriver app(home.path(), AppDriver::screens()[2]);
            QVERIFY(app.tap("Players"));
            QVERIFY(app.waitFor("Player Lefty"));
            QVERIFY(app.tap("Player Lefty"));
            QVERIFY(app.waitFor("Body card: ask before the first full swing"));
            QVERIFY(app.tap("Body card: ask before the first full swing"));
            QVERIFY(app.waitFor("Not asked yet"));
            QVERIFY(app.tap("Pain: Right hip")); // a left-hander's lead side
            QVERIFY(app.waitFor("Right hip: 5 of 10"));
            QVERIFY(app.tap("Right hip: 5 of 10"));
            QVERIFY(app.waitFor("Today: wait with full swings"));
            QVERIFY(app.find("Pain of 5 of 10: no balls today.") != nullptr);
            QVERIFY(app.tap("A bone or heart condition: Yes"));
            QVERIFY(app.waitFor("A replaced joint, an operation"));
            QVERIFY(app.tap("Cleared for full swings by a clinician: Yes"));
            QVERIFY(
                QTest::qWaitFor([&] { return app.find("A replaced joint, an operation") == nullptr; }, 3000));
            QVERIFY(app.find("Stop at once with sharp or sudden pain") != nullptr);
        }
        Shelf shelf(home.path());
        session::BodyBook body(shelf.library());
        const auto pains = *body.pains(player);
        QCOMPARE(pains.size(), std::size_t(1));
        QCOMPARE(pains[0].region, std::string("lead_hip"));
        QCOMPARE(pains[0].level, std::int64_t(5));
        const auto card = *body.card(player);
        QCOMPARE(card.boneOrHeart, std::optional(true));
        QCOMPARE(card.cleared, std::optional(true));
        QVERIFY(!card.clearedDay.empty() && !card.day.empty());
    }

    // A class: one tap gives the turn to the next, and what comes in belongs to whose turn it is.
    void aGroupIsTaughtInTurn() {
        QTemporaryDir home;
        {
            Shelf shelf(home.path());
            for (const char* name : {"Ada", "Ben", "Cleo"}) {
                records::Player player;
                player.name = name;
                player.group = "juniors";
                QVERIFY(shelf.book().addPlayer(player).ok());
            }
            records::Player other;
            other.name = "Dora";
            QVERIFY(shelf.book().addPlayer(other).ok());
        }
        AppDriver app(home.path(), AppDriver::screens()[0]);
        QVERIFY(app.tap("Players"));
        QVERIFY(app.type("Find a player", "juniors"));
        QVERIFY(app.waitFor("Group lesson: 3"));
        QVERIFY(app.tap("Group lesson: 3"));
        QVERIFY(app.waitFor("Turn of Ada"));
        QVERIFY(app.tap("Next: Ben"));
        QVERIFY(app.waitFor("Turn of Ben"));
        QTest::keyClick(app.window(), Qt::Key_PageDown); // a presenter's remote control
        QVERIFY(app.waitFor("Turn of Cleo"));
        QVERIFY(app.find("Next: Ada") != nullptr);
        QVERIFY(app.tap("Give the turn to Ben"));
        QVERIFY(app.waitFor("Turn of Ben"));
        for (QAccessibleInterface* thing : app.everything()) { // no number stands beside a child's name
            if (thing->role() == QAccessible::StaticText || thing->role() == QAccessible::RadioButton) {
                QVERIFY2(!thing->text(QAccessible::Name).contains(QRegularExpression("[0-9]")),
                         qPrintable(thing->text(QAccessible::Name)));
            }
        }
        QVERIFY(app.tap("Bring in a clip"));
        QVERIFY(app.waitFor("Folder Home"));
        QTest::keyClick(app.window(), Qt::Key_Escape);
        QVERIFY(app.waitFor("Turn of Ben"));
        QVERIFY(app.tap("End the group lesson"));
        QVERIFY(app.waitFor("Find a player"));
    }

    // A film that plays at 30 frames a second may have been filmed at any rate: the form asks for it, the
    // swing page asks again, and no time is told before; the answer is kept with the clip. The next clip of
    // this player is answered for as the last one.
    void anUnknownRateIsAskedFor() {
        QTemporaryDir home;
        QDir(home.path()).mkdir("Videos");
        uitest::writeNumberedClip(home.filePath("Videos/slow.mp4"), 30, 30);
        {
            AppDriver app(home.path(), AppDriver::screens()[2]);
            QVERIFY(app.tap("Bring in a clip"));
            QVERIFY(app.waitFor("Film slow.mp4"));
            QVERIFY(app.tap("Film slow.mp4"));
            QVERIFY(app.waitFor("640 \u00d7 360 pixels, 1.0 s, 30 frames a second as it plays."));
            QVERIFY(app.waitFor("The film does not tell at which rate it was filmed."));
            QVERIFY(app.type("Player", "Kim"));
            QVERIFY(app.tap("View: Down-the-line"));
            QVERIFY(app.tap("Club: Wedge"));
            QVERIFY(app.tap("Read the swing"));
            QVERIFY(app.waitFor("Picture of the swing, Frame", 120000));
            QVERIFY(app.waitFor("Times and tempo wait", 120000));
            QVERIFY(app.find("Picture of the swing, Frame 1 of 30") != nullptr);
            QVERIFY(app.tap("Times and tempo wait: at how many frames a second was it filmed?: 240"));
            QVERIFY(QTest::qWaitFor([&] { return app.find("Times and tempo wait") == nullptr; }, 120000));
            QVERIFY(app.waitFor("Picture of the swing, Frame", 120000));
        }
        Shelf shelf(home.path());
        QCOMPARE((*shelf.library().clip(shelf.clip()))->clip.captureFpsTold, std::optional(240.0));

        AppDriver app(home.path(), AppDriver::screens()[2]);
        QVERIFY(app.tap("Bring in a clip"));
        QVERIFY(app.tap("View: Face-on"));
        QVERIFY(app.type("Player", "Kim"));
        QVERIFY(app.waitFor("Answered as for this player's last swing"));
        QVERIFY(app.find("View: Down-the-line")->state().checked);
        QVERIFY(app.find("Club: Wedge")->state().checked);
    }
};

int main(int argc, char** argv) {
    return uitest::run<PeopleTest>(argc, argv);
}

#include "people_test.moc"
