// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// What the coach does with swings that are measured: comparing them at the same position, saying what comes
// first, trying it, and prescribing.
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QTest>
#include <QTimer>
#include <array>
#include <cmath>

#include "app_driver.h"
#include "painter/page_painter.h"
#include "records/coaching_kinds.h"
#include "session/clip_intake.h"
#include "session/coach_desk.h"
#include "session/inbox.h"
#include "session/review_desk.h"
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

/// A shot with a face-on clip whose findings say these numbers (address in frame 3, top in frame 20).
void addMeasured(Shelf& shelf, const base::Id& player, const base::Id& lesson, const QString& film,
                 int frames, double stance, double inside) {
    uitest::writeNumberedClip(film, frames);
    records::Shot shot;
    shot.club = marks::Club{marks::ClubKind::iron, 7};
    const auto id = *shelf.book().addShot(lesson, shot);
    const auto kept = shelf.library().addFilm(film.toStdString());
    records::Clip clip;
    clip.sha256 = kept->sha256;
    clip.bytes = kept->bytes;
    clip.width = 640, clip.height = 360, clip.frames = frames;
    clip.playbackFps = 120, clip.captureFps = 120;
    const std::vector<base::Id> path{player, lesson, id};
    const auto made = shelf.library().make(records::kind::clip, path, bodyOf(clip));
    records::Findings f;
    f.moments = {{MomentId::address, base::Seconds{3 / 120.0}, base::Seconds{0.004}, "shaft"},
                 {MomentId::top, base::Seconds{20 / 120.0}, base::Seconds{0.004}, "shaft"}};
    const auto say = [&](const char* id_, MomentId m, double v, double sigma, base::Unit unit) {
        f.measurements.push_back({id_, m, base::Measured{v, sigma, unit, base::Origin::hand}, "", 1});
    };
    say("stance_width_ratio", MomentId::address, stance, 0.03, base::Unit::ratio);
    say("head_to_trail_ankle", MomentId::top, inside, 0.03, base::Unit::stance_widths);
    say("pelvis_turn", MomentId::top, -45, 2, base::Unit::degrees);
    auto below = path;
    below.push_back(made.id);
    if (!shelf.library().add({made, shelf.library().make(records::kind::findings, below, bodyOf(f))}).ok()) {
        qFatal("the findings were not taken");
    }
}

/// HOME/library: a lesson with three narrow stances (the head gets outside the trail foot), and one a week
/// later with the same and then three tries with the feet wider apart (the head stays inside).
void makeReasonedLibrary(const QString& home) {
    Shelf shelf(home);
    const auto player = *shelf.book().addPlayer({"Lee", marks::Hand::right, 1.80, ""});
    const auto lesson = [&](const char* day) {
        records::Lesson made;
        made.day = day;
        made.title = "Lesson";
        made.belief = "my feet are too close: feet too close";
        return *shelf.book().addLesson(player, made);
    };
    int films = 0;
    const auto hit = [&](const base::Id& day, double stance, double inside) {
        addMeasured(shelf, player, day, home + QString("/swing%1.mp4").arg(films), 40 + films, stance,
                    inside);
        ++films;
    };
    const auto first = lesson("2026-11-18"), second = lesson("2026-11-25");
    for (int i = 0; i < 3; ++i) {
        hit(first, 0.72 + 0.005 * i, -0.2);
    }
    for (int i = 0; i < 3; ++i) {
        hit(second, 0.72 + 0.005 * i, -0.2 + 0.002 * i);
    }
    for (int i = 0; i < 3; ++i) {
        hit(second, 1.12 + 0.005 * i, 0.2 + 0.002 * i);
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

/// Hears a tone of 440 hertz for as long as it is open.
class ToneMicrophone final : public ports::Microphone {
  public:
    base::Result<double> start(Heard heard) override {
        timer_ = std::make_unique<QTimer>();
        QObject::connect(timer_.get(), &QTimer::timeout, timer_.get(), [this, heard] {
            std::vector<float> block(kRate / 20);
            for (float& sample : block) {
                sample = 0.3F * std::sin(static_cast<float>(2 * M_PI * 440 * at_++ / kRate));
            }
            heard(block);
        });
        timer_->start(50);
        return static_cast<double>(kRate);
    }
    void stop() override { timer_.reset(); }

  private:
    static constexpr int kRate = 24000;
    std::unique_ptr<QTimer> timer_;
    std::int64_t at_ = 0;
};

/// Remembers what it was asked to play.
class NotingSpeaker final : public ports::Speaker {
  public:
    void play(const video::Sound& sound, base::Seconds) override {
        seconds = static_cast<double>(sound.samples.size()) / sound.rate;
        ++times;
    }
    void stop() override {}
    double seconds = 0.0;
    int times = 0;
};

} // namespace

class TeachTest : public QObject {
    Q_OBJECT

  private:
    QTemporaryDir home_, reasonedHome_;

    /// Taps what may lie further down the page.
    static bool reach(AppDriver& app, const QString& beginning) {
        if (!app.waitFor(beginning)) {
            return false;
        }
        const QSize size = app.window()->size();
        for (int i = 0; i < 20; ++i) {
            const int y = app.rectOf(app.find(beginning)).center().y();
            if (y > size.height() / 5 && y < size.height() * 3 / 4) {
                return app.tap(beginning);
            }
            const int by = std::clamp(size.height() / 2 - y, -size.height() / 3, size.height() / 3);
            const QPoint from(6, size.height() / 2 - by / 2);
            app.drag(from, from + QPoint(0, by), false);
            QTest::qWait(120); // a finger that rests throws nothing
            app.release(from + QPoint(0, by));
            QTest::qWait(200);
        }
        return app.tap(beginning);
    }
    /// Lists make only the rows that are to be seen: goes down until a thing of that name is there.
    static bool bring(AppDriver& app, const QString& beginning) {
        const QSize size = app.window()->size();
        for (int i = 0; i < 12 && !app.waitFor(beginning, 700); ++i) {
            const QPoint from(6, size.height() * 2 / 3), to(6, size.height() / 3);
            app.drag(from, to, false);
            QTest::qWait(120);
            app.release(to);
            QTest::qWait(150);
        }
        return reach(app, beginning);
    }
    static bool openTeach(AppDriver& app, const QString& day) {
        if (!app.waitFor("Sent in")) {
            return false;
        }
        QTest::qWait(500); // the list of lessons comes after the page
        return bring(app, "Cause and plan of Lee, " + day) && app.waitFor("Plan", 20000);
    }

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
        if (!app.openSwing() || !app.tap("Tools") || !app.waitFor("Compare with another swing")) {
            return false;
        }
        QTest::qWait(200);
        // On a phone the list of tools is longer than its place.
        const int bottom = app.window()->height() - 24;
        for (int i = 0; i < 6; ++i) {
            const QPoint at = app.rectOf(app.find("Compare with another swing")).center();
            if (at.y() < bottom - 10) {
                break;
            }
            app.drag({at.x(), bottom}, {at.x(), bottom - 120}, false);
            QTest::qWait(120);
            app.release({at.x(), bottom - 120});
            QTest::qWait(250);
        }
        return app.tap("Compare with another swing") && app.waitFor("Other swing, Frame", 60000);
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
        makeReasonedLibrary(reasonedHome_.path());
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

    // The chain from the narrow stance on, the student's own explanation answered, and the coach's word kept
    // beside the proposal, which stays as it was.
    void theFirstCauseIsToldAndTheCoachOverrulesIt() {
        base::Id lesson{base::Id::Bytes{}};
        {
            Shelf shelf(reasonedHome_.path());
            lesson = shelf.book().lessons()->back().id;
        }
        {
            AppDriver app(reasonedHome_.path(), AppDriver::screens()[1]);
            QVERIFY(openTeach(app, "18 Nov 2026"));
            QVERIFY(app.waitFor("Comes first: narrow stance"));
            QVERIFY(app.waitFor("comes first: narrow stance"));
            QVERIFY(app.waitFor("tends to cause: head and chest too far over the trail foot"));
            QVERIFY(app.descriptionOf("tends to cause: head and chest").contains("several schools"));
            QVERIFY(app.descriptionOf("comes first: narrow stance").contains(QChar(0x00b1)));
            QVERIFY(app.waitFor("Answer to the student: yes"));
            // The link leads to its picture: the top is frame 21 of the newest swing.
            QVERIFY(reach(app, "tends to cause: head and chest"));
            QVERIFY(app.waitFor("Picture of the swing, Frame", 60000));
            QVERIFY(app.tap("Back"));
            QVERIFY(app.waitFor("Comes first: narrow stance"));
            QVERIFY(reach(app, "Something else comes first"));
            QVERIFY(app.waitFor("Comes first: ball too far forward, "));
            QVERIFY(reach(app, "Comes first: ball too far forward, "));
            QVERIFY(app.waitFor("Your word: something else. ball too far forward"));
            QVERIFY(app.find("Comes first: narrow stance") != nullptr);
        }
        Shelf shelf(reasonedHome_.path());
        const auto words = shelf.library().factsOf(lesson, records::kind::coach_word);
        const auto proposals = shelf.library().factsOf(lesson, records::kind::explanation);
        QVERIFY(words.ok() && words->size() == 1 && proposals.ok() && proposals->size() == 1);
        const auto word = records::coachWordOf(words->front().body);
        QCOMPARE(word->word, std::string("overrule"));
        QCOMPARE(word->nodes.front(), std::string("ball_forward"));
        QCOMPARE(word->proposal, proposals->front().id.hex());
        QCOMPARE(records::explanationOf(proposals->front().body).chain.front(), std::string("narrow_stance"));
    }

    // The coach turns back to the proposal, makes the dose larger by taps and keeps the plan; it is there
    // again after a restart.
    void thePlanIsChangedAndKept() {
        QString dose;
        {
            AppDriver app(reasonedHome_.path(), AppDriver::screens()[0]);
            QVERIFY(openTeach(app, "18 Nov 2026"));
            QVERIFY(reach(app, "I agree"));
            QVERIFY(app.waitFor("Your word: agreed. narrow stance"));
            QVERIFY(app.tap("Plan"));
            QVERIFY(app.waitFor("Feel: Feel the insides of both feet"));
            QVERIFY(app.find("Must not get worse: ") != nullptr);
            const QString before = app.nameOf("Sets of 10 slow rehearsals: ");
            QVERIFY(reach(app, "More: Sets of 10 slow rehearsals"));
            QVERIFY(
                QTest::qWaitFor([&] { return app.nameOf("Sets of 10 slow rehearsals: ") != before; }, 5000));
            dose = app.nameOf("Dose: ").mid(6);
            QVERIFY(reach(app, "Keep this plan"));
            QVERIFY(app.waitFor("Kept. Look again: "));
        }
        {
            Shelf shelf(reasonedHome_.path());
            const auto plans =
                shelf.library().factsOf(shelf.book().lessons()->back().id, records::kind::plan);
            QVERIFY(plans.ok() && plans->size() == 1);
            const auto plan = records::planOf(plans->front().body);
            QCOMPARE(plan.items.front().node, std::string("narrow_stance"));
            QCOMPARE(QString::fromStdString(plan.items.front().dose), dose);
        }
        AppDriver again(reasonedHome_.path(), AppDriver::screens()[0]);
        QVERIFY(openTeach(again, "18 Nov 2026"));
        QVERIFY(again.tap("Plan"));
        QVERIFY(again.waitFor("Dose: " + dose));
        QVERIFY(again.waitFor("Kept. Look again: "));
    }

    // The next lesson opens with the plan before it. Three as before, three with the feet wider: the
    // departure goes and so does what it tends to cause.
    void aTrialIsTaggedByTapsAndJudged() {
        {
            Shelf shelf(reasonedHome_.path());
            session::CoachDesk desk(shelf.library(), coaching::Playbook::standard());
            const auto reasoned = desk.reason(shelf.book().lessons()->back().id);
            QVERIFY(reasoned.ok() && desk.keepPlan(*reasoned).ok());
        }
        {
            AppDriver app(reasonedHome_.path(), AppDriver::screens()[2]);
            QVERIFY(openTeach(app, "25 Nov 2026"));
            QVERIFY(app.waitFor("The plan of "));
            QVERIFY(app.find("Practised") != nullptr && app.find("Hurts") != nullptr);
            QVERIFY(app.tap("Cause"));
            QVERIFY(reach(app, "Something else comes first"));
            QVERIFY(reach(app, "Comes first: narrow stance, "));
            QVERIFY(app.waitFor("Your word: something else. narrow stance"));
            QVERIFY(app.tap("Try it"));
            QVERIFY(app.waitFor("What is tried: narrow stance"));
            QVERIFY(!app.isEnabled("Did it help?"));
            for (int shot = 1; shot <= 6; ++shot) {
                QVERIFY(app.waitFor(QString("Swing %1: not used").arg(shot)));
                QVERIFY(app.tap(QString("Swing %1: not used").arg(shot)));
                QVERIFY(app.waitFor(QString("Swing %1: before").arg(shot)));
                if (shot > 3) {
                    QVERIFY(app.tap(QString("Swing %1: before").arg(shot)));
                    QVERIFY(app.waitFor(QString("Swing %1: try").arg(shot)));
                }
            }
            QVERIFY(app.tap("Did it help?"));
            QVERIFY(app.waitFor("Strengthened"));
            QVERIFY(app.waitFor("The guard held."));
            QVERIFY(app.nameOf("Moved beyond doubt: ").contains("Stance width"));
            QVERIFY(app.nameOf("Moved beyond doubt: ").contains("Head inside trail ankle"));
        }
        Shelf shelf(reasonedHome_.path());
        const auto trials = shelf.library().factsOf(shelf.book().lessons()->front().id, records::kind::trial);
        QVERIFY(trials.ok() && trials->size() == 1);
        const auto trial = records::trialOf(trials->front().body);
        QCOMPARE(trial->node, std::string("narrow_stance"));
        QCOMPARE(trial->result, std::string("strengthened"));
        QCOMPARE(trial->before.size(), std::size_t(3));
        QCOMPARE(trial->tried.size(), std::size_t(3));
    }

    // The coach records while stepping and drawing; on the disk lie acts and voice; the replay shows the same
    // frame and stroke again, with the voice; three lines are kept; and a film and a sheet are made of it.
    void aReviewIsRecordedPlayedAndMadeAFilm() {
        QDir(home_.path()).mkdir("Videos");
        ToneMicrophone microphone;
        NotingSpeaker speaker;
        const platform::PagePainter painter;
        base::Id lesson{base::Id::Bytes{}};
        {
            Shelf shelf(home_.path());
            lesson = shelf.book().lessons()->front().id;
        }
        AppDriver app(home_.path(), AppDriver::screens()[2], {}, {}, nullptr, [&](app::AppOptions& options) {
            options.microphone = &microphone;
            options.speaker = &speaker;
            options.painter = &painter;
        });
        QVERIFY(app.waitFor("Review of Kim, 25 Nov 2026"));
        QVERIFY(app.tap("Review of Kim, 25 Nov 2026"));
        QVERIFY(app.waitFor("Picture of the review, Frame 1 of 40"));
        QVERIFY(app.tap("Record and talk"));
        QVERIFY(app.waitFor("Recording 0:0"));
        for (int i = 1; i <= 5; ++i) {
            QVERIFY(app.tap("One frame on"));
            QVERIFY(app.waitFor(QString("Picture of the review, Frame %1 of").arg(i + 1)));
        }
        QVERIFY(app.tap("Draw"));
        const QRect stage = app.rectOf(app.find("Picture of the review"));
        const double scale = std::min(stage.width() / 640.0, stage.height() / 360.0);
        const auto at = [&](double x, double y) {
            return stage.center() + QPointF((x - 320) * scale, (y - 180) * scale).toPoint();
        };
        app.drag(at(200, 250), at(420, 250));
        QTest::qWait(600);
        QVERIFY(app.tap("Stop and keep"));
        QVERIFY(app.waitFor("Play the review"));
        QVERIFY(QTest::qWaitFor([&] { return app.isEnabled("Play the review"); }, 10000));
        {
            Shelf shelf(home_.path());
            const auto review = session::ReviewDesk(shelf.library(), nullptr).review(lesson);
            QVERIFY(review.ok() && *review && (*review)->voice);
            const auto end = records::viewAt(**review, double((*review)->lengthMs));
            QVERIFY(std::abs(end.time.value() - 5 / 120.0) < 1e-4);
            QCOMPARE(end.strokes.size(), std::size_t(1));
            QVERIFY(std::abs(end.strokes[0].front().x - 200) < 4 &&
                    std::abs(end.strokes[0].back().x - 420) < 4);
            const auto voice = session::ReviewDesk(shelf.library(), nullptr).voice(**review);
            QVERIFY(voice.ok() && *voice && (*voice)->samples.size() > 12000);
        }
        QVERIFY(app.tap("Draw") || true); // pencil down, where it is still up
        QVERIFY(app.tap("Play the review"));
        QVERIFY(app.waitFor("Go on", 30000)); // it has come to its end
        QCOMPARE(speaker.times, 1);
        QVERIFY(speaker.seconds > 0.5);
        QVERIFY(shows(app, "Picture of the review", 5));
        const QImage shot = app.grab();
        const double ratio = shot.width() / double(app.window()->width());
        QVERIFY(qGray(shot.pixel((QPointF(at(310, 250)) * ratio).toPoint())) > 170);
        QVERIFY(app.tap("Leave the replay"));

        QVERIFY(app.type("What you saw", "feet close"));
        QVERIFY(app.type("What comes next", "two weeks"));
        QVERIFY(reach(app, "Keep the three lines"));
        QVERIFY(app.waitFor("Three lines kept"));
        {
            Shelf shelf(home_.path());
            const auto review = session::ReviewDesk(shelf.library(), nullptr).review(lesson);
            QVERIFY(review.ok() && *review);
            QCOMPARE((*review)->saw, std::string("feet close"));
            QCOMPARE((*review)->next, std::string("two weeks"));
            QVERIFY(records::spoken(**review) && (*review)->voice);
        }
        QVERIFY(reach(app, "Make a film of the review"));
        QVERIFY(app.waitFor("Written: ", 240000));
        const QString film = app.nameOf("Written: ").mid(9);
        QVERIFY2(film.endsWith(".mp4") && QFile::exists(film), qPrintable(film));
        auto clip = video::Clip::open(film.toStdString());
        QVERIFY(clip.ok());
        QVERIFY((*clip)->sound().ok());
        QVERIFY(reach(app, "Make the lesson sheet (PDF)"));
        QVERIFY(QTest::qWaitFor([&] { return app.nameOf("Written: ").endsWith(".pdf"); }, 240000));
        QFile sheet(app.nameOf("Written: ").mid(9));
        QVERIFY(sheet.open(QIODevice::ReadOnly) && sheet.read(5) == "%PDF-");
    }

    // A lesson waits, is asked for again with a reason, and is answered; a card for the student is written.
    void sentInSwingsWaitAndAreAnswered() {
        QDir(home_.path()).mkdir("Videos");
        AppDriver app(home_.path(), AppDriver::screens()[0]);
        QVERIFY(app.waitFor("Sent in"));
        QVERIFY(app.tap("Sent in"));
        QVERIFY(app.waitFor("Nobody is waiting."));
        QVERIFY(reach(app, "Waits for you: Kim, 25 Nov 2026"));
        QVERIFY(app.waitFor("Kim: waits for you since 0 days, due in 3 days"));
        QVERIFY2(app.untouchable().isEmpty(), qPrintable(app.untouchable()));
        QVERIFY(reach(app, "Please film again: Kim"));
        QVERIFY(app.waitFor("Because (empty"));
        QVERIFY(app.type("Because (empty: what limited the clips)", "the feet are cut off"));
        QVERIFY(reach(app, "Ask with this reason"));
        QVERIFY(app.waitFor("Kim: films again since 0 days"));
        QVERIFY(app.waitFor("For the student:\nthe feet are cut off"));
        {
            Shelf shelf(home_.path());
            const auto open = session::InboxDesk(shelf.library()).open();
            QVERIFY(open.ok() && open->size() == 1);
            QCOMPARE(open->front().inbox.because, std::string("the feet are cut off"));
        }
        QVERIFY(reach(app, "Answered: Kim"));
        QVERIFY(app.waitFor("Nobody is waiting."));
        QVERIFY(reach(app, "Make the card"));
        QVERIFY(app.waitFor("Written: "));
        QVERIFY(QFile::exists(app.nameOf("Written: ").mid(9)));
    }

    void everyPageOfALessonCanBeTouched_data() { everythingCanBeTouched_data(); }
    void everyPageOfALessonCanBeTouched() {
        QFETCH(int, screen);
        AppDriver app(reasonedHome_.path(), AppDriver::screens()[std::size_t(screen)]);
        QVERIFY(openTeach(app, "25 Nov 2026"));
        for (const char* tab : {"Last plan", "Cause", "Try it", "Plan"}) {
            QVERIFY2(app.tap(tab), tab);
            QVERIFY2(app.untouchable().isEmpty(), qPrintable(tab + QString(": ") + app.untouchable()));
        }
        QVERIFY(app.tap("Back"));
        QVERIFY(bring(app, "Review of Lee, 25 Nov 2026"));
        QVERIFY(app.waitFor("Picture of the review, Frame"));
        QVERIFY2(app.untouchable().isEmpty(), qPrintable(app.untouchable()));
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
