// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The Film page with a camera that plays a clip: armed, a take, the lesson in the library on disk.
#include <QDate>
#include <QDir>
#include <QGuiApplication>
#include <QProcess>
#include <QQuickWindow>
#include <QTest>

#include "app_driver.h"
#include "camera/file_camera.h"
#include "cli/desktop_files.h"
#include "made_figure.h"
#include "qt/qt_camera.h"
#include "records/kinds.h"
#include "session/lesson_book.h"
#include "store/library.h"
#include "ui_test_run.h"
#include "video/clip.h"
#include "video/writer.h"

using namespace plumbmark;
using uitest::AppDriver;
using uitest::g_warnings;
using uitest::keepWarnings;

namespace {

constexpr double kHit = 4.0, kSeconds = 7.0;
/// A stick player who swings once, with the sound of the hit.
void writeSwing(const std::string& path) {
    video::WriterOptions options;
    options.width = made::kWidth;
    options.height = made::kHeight;
    options.fps = 60;
    options.soundRate = 48000;
    auto writer = video::ClipWriter::create(path, options);
    QVERIFY(writer.ok());
    QVERIFY((*writer)->writeSound(made::hissWithClicks(0, kSeconds, 48000, {kHit})).ok());
    for (int i = 0; i < static_cast<int>(kSeconds * 60); ++i) {
        const double t = i / 60.0;
        QVERIFY((*writer)->write(made::frameOf(made::swingPose(t, kHit), i, t).rgb()).ok());
    }
    QVERIFY((*writer)->finish().ok());
}

class NoCamera final : public ports::Camera {
  public:
    base::Result<std::vector<ports::CameraDevice>> devices() override {
        return base::inputError("camera.denied",
                                "The camera is not allowed here; allow it in the device's settings.");
    }
    base::Result<Running> start(const std::string&, const std::optional<ports::CameraFormat>&,
                                Sink) override {
        return base::inputError("camera.denied", "The camera is not allowed here.");
    }
    void stop() override {}
};

void typePlayer(AppDriver& app, const std::string& name) {
    for (QAccessibleInterface* thing : app.everything()) {
        if (thing->role() == QAccessible::EditableText && thing->text(QAccessible::Name) == "Player") {
            const QPoint at = app.rectOf(thing).center();
            app.drag(at, at);
            break;
        }
    }
    for (const char key : name) {
        QTest::keyClick(app.window(), key);
    }
}

struct OnDisk {
    int shots = 0;
    std::string player, day;
    double seconds = 0;
    bool filmThere = false;
};

OnDisk onDisk(const QString& home) {
    OnDisk disk;
    store::LibraryOptions options;
    options.folder = home.toStdString() + "/library";
    auto library = store::Library::open(options);
    if (!library.ok()) {
        return disk;
    }
    session::LessonBook book(**library);
    const auto lessons = book.lessons();
    if (!lessons.ok() || lessons->empty()) {
        return disk;
    }
    disk.player = lessons->front().playerName;
    disk.day = lessons->front().day;
    const auto shots = book.shots(lessons->front().id);
    disk.shots = static_cast<int>(shots->size());
    if (disk.shots > 0) {
        const auto clips = book.clips(shots->front().id);
        if (!clips->empty()) {
            disk.filmThere = clips->front().filmHere;
            auto clip = video::Clip::open(clips->front().file);
            disk.seconds = clip.ok() ? (*clip)->info().duration.value() : 0;
        }
    }
    return disk;
}

} // namespace

class FilmTest : public QObject {
    Q_OBJECT

  private:
    QTemporaryDir made_;
    std::filesystem::path swing_;

  private slots:
    void initTestCase() {
        swing_ = made_.filePath("swing.mp4").toStdString();
        writeSwing(swing_.string());
    }
    void init() {
        qInstallMessageHandler(keepWarnings);
        g_warnings.clear();
    }
    void cleanup() { QVERIFY2(g_warnings.isEmpty(), qPrintable(g_warnings.join('\n'))); }

    void anArmedSwingIsInTodaysLesson() {
        for (const int screen : {0, 1, 2}) {
            QTemporaryDir home;
            platform::FileCamera camera({swing_}, platform::FileCamera::Pace::own);
            {
                AppDriver app(home.path(), AppDriver::screens()[static_cast<std::size_t>(screen)], {}, {},
                              &camera);
                QVERIFY(app.tap("Film"));
                QVERIFY(app.waitFor("Start the camera"));
                QVERIFY(app.tap("Start the camera"));
                QVERIFY(app.waitFor("Whose swing is it?"));
                typePlayer(app, "Kim");
                QVERIFY(app.tap("Start the camera"));
                QVERIFY(app.waitFor("Live picture of the camera"));
                QVERIFY(app.waitFor("Armed: swings are cut out"));
                // The picture on the screen is the camera's: the stick player's white head on the dark trunk.
                QVERIFY(QTest::qWaitFor(
                    [&] {
                        const QRect at = app.rectOf(app.find("Live picture of the camera"));
                        const QImage shot = app.grab();
                        const double ratio = shot.width() / double(app.window()->width());
                        const double scale =
                            std::min(at.width() / double(made::kWidth), at.height() / double(made::kHeight));
                        const auto pixel = [&](double x, double y) {
                            return qGray(shot.pixel(
                                int(ratio * (at.center().x() + (x - made::kWidth / 2.0) * scale)),
                                int(ratio * (at.center().y() + (y - made::kHeight / 2.0) * scale))));
                        };
                        return pixel(184, 38) > 170 && pixel(184, 150) < 90;
                    },
                    5000));
                QVERIFY(app.waitFor("Take 1. In today's lesson", 60000));
                QVERIFY(app.find("Impact picture of take 1") != nullptr);
                if (const QString folder = qEnvironmentVariable("PLUMBMARK_SCREENS"); !folder.isEmpty()) {
                    app.grab().save(folder + "/film-" +
                                    AppDriver::screens()[static_cast<std::size_t>(screen)].name + ".png");
                }
                QVERIFY(app.tap("Look at take 1"));
                QVERIFY(app.waitFor("Picture of the swing, Frame", 60000));
            }
            const OnDisk disk = onDisk(home.path());
            QCOMPARE(disk.shots, 1);
            QCOMPARE(disk.player, std::string("Kim"));
            QCOMPARE(disk.day, QDate::currentDate().toString(Qt::ISODate).toStdString());
            QVERIFY(disk.filmThere);
            QVERIFY2(disk.seconds > 3.5 && disk.seconds < 4.8, qPrintable(QString::number(disk.seconds)));
            QVERIFY(QDir(home.path() + "/library/takes").isEmpty());
        }
    }

    void theKeyCutsWithoutAHit() {
        QTemporaryDir home;
        platform::FileCamera camera({swing_}, platform::FileCamera::Pace::own);
        AppDriver app(home.path(), AppDriver::screens()[2], {}, {}, &camera);
        QVERIFY(app.tap("Film"));
        QVERIFY(app.waitFor("Start the camera"));
        typePlayer(app, "Kim");
        QVERIFY(app.tap("Start the camera"));
        QVERIFY(app.waitFor("Armed: swings are cut out"));
        QVERIFY(app.tap("Armed"));
        QVERIFY(app.waitFor("Not armed"));
        QTest::qWait(1500);
        QTest::keyClick(app.window(), Qt::Key_PageDown);
        QVERIFY(app.waitFor("Take 1. In today's lesson", 60000));
        QVERIFY(app.find("Take 2") == nullptr); // the swing at 4 s came while not armed
    }

    void withoutACameraThePageSaysSoAndOffersAClip() {
        QTemporaryDir home;
        QDir(home.path()).mkdir("Videos");
        NoCamera camera;
        AppDriver app(home.path(), AppDriver::screens()[0], {}, {}, &camera);
        QVERIFY(app.tap("Film"));
        QVERIFY(app.waitFor("Start the camera"));
        typePlayer(app, "Kim");
        QVERIFY(app.tap("Start the camera"));
        QVERIFY(app.waitFor("The camera is not allowed here"));
        QVERIFY(app.tap("Bring in a clip instead"));
        QVERIFY(app.waitFor("Bring in a clip"));
    }

    // Three swings of a rendered player: after the third the sign answers, and the log has them.
    void practiceAnswersAfterTheThirdSwing() {
        const QString renderer = qEnvironmentVariable("PLUMBMARK_RENDERER");
        const auto network = cli::readNetwork();
        if (renderer.isEmpty() || !network.ok() || !*network) {
            QSKIP("needs PLUMBMARK_RENDERER and the pose network: no practice was watched");
        }
        QCOMPARE(QProcess::execute(renderer, {"--case", "sound", "--seed", "41", "--fps", "30", "--size",
                                              "640x360", "--name", "practice", "--out", made_.path()}),
                 0);
        const std::filesystem::path film = made_.filePath("practice.mp4").toStdString();
        QTemporaryDir home;
        platform::FileCamera camera(std::vector(8, film), platform::FileCamera::Pace::own);
        {
            // The player is known already: the log belongs to somebody.
            store::LibraryOptions options;
            options.folder = home.path().toStdString() + "/library";
            auto library = store::Library::open(options);
            QVERIFY(library.ok());
            session::LessonBook book(**library);
            QVERIFY(book.addPlayer({"Kim", marks::Hand::right, std::nullopt, ""}).ok());
        }
        const auto& screen = AppDriver::screens()[qEnvironmentVariableIntValue("PLUMBMARK_SCREEN") % 3];
        {
            AppDriver app(home.path(), screen, {}, *network, &camera);
            QVERIFY(app.tap("Film"));
            QVERIFY(app.waitFor("Practise at home"));
            typePlayer(app, "Kim");
            QVERIFY(app.tap("Practise at home"));
            QVERIFY(app.waitFor("Answer: Watching"));
            // A picture of 360 lines is too coarse for a verdict: the answer must be "cannot tell", never a
            // guess. On a slow machine the film may end first: then the log below is the answer.
            QVERIFY(QTest::qWaitFor(
                [&] {
                    return app.find("Answer: Watching") == nullptr || app.find("Practise at home") != nullptr;
                },
                180000));
            const QString answer = app.nameOf("Answer");
            QVERIFY2(answer.isEmpty() || answer == "Answer: Cannot tell", qPrintable(answer));
            if (const QString folder = qEnvironmentVariable("PLUMBMARK_SCREENS"); !folder.isEmpty()) {
                app.grab().save(folder + "/practice-" + screen.name + ".png");
            }
            app.tap("Stop");
            QVERIFY(app.waitFor("Practise at home", 180000));
        }
        store::LibraryOptions options;
        options.folder = home.path().toStdString() + "/library";
        auto library = store::Library::open(options);
        QVERIFY(library.ok());
        const auto players = (*library)->players();
        const auto facts = (*library)->factsOf(players->front().id, records::kind::practice);
        QVERIFY(facts.ok());
        QVERIFY(!facts->empty());
        const auto practice = records::practiceOf(facts->front().body);
        QVERIFY(practice.has_value());
        QVERIFY(practice->repetitions >= 3);
    }

    // The real path: where no camera is plugged in it must say so in one sentence, and never fall over.
    void theRealCameraSaysPlainlyThatThereIsNone() {
        platform::QtCamera camera;
        const auto devices = camera.devices();
        g_warnings.clear(); // the multimedia back end's own remarks
        if (devices.ok()) {
            QSKIP("a camera is plugged in here");
        }
        QCOMPARE(devices.error().key, std::string("camera.none"));
        QVERIFY(QString::fromStdString(devices.error().sentence).contains("bring the clip in"));
        QVERIFY(!camera.start("", std::nullopt, {}).ok());
        camera.stop();
        QTemporaryDir home;
        AppDriver app(home.path(), AppDriver::screens()[0], {}, {}, &camera);
        QVERIFY(app.tap("Film"));
        QVERIFY(app.waitFor("Start the camera"));
        typePlayer(app, "Kim");
        QVERIFY(app.tap("Start the camera"));
        QVERIFY(app.waitFor("No camera was found on this device"));
        QVERIFY(app.find("Bring in a clip instead") != nullptr);
        g_warnings.clear();
    }
};

int main(int argc, char** argv) {
    return uitest::run<FilmTest>(argc, argv);
}

#include "film_test.moc"
