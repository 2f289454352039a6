// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Every page on every screen, in both themes, with large letters, long words and from right to left.
#include <QGuiApplication>
#include <QQuickWindow>
#include <QTest>

#include "app_driver.h"
#include "page_tour.h"
#include "session/swing_desk.h"
#include "ui_test_run.h"

using namespace plumbmark;
using uitest::AppDriver;
using uitest::g_warnings;
using uitest::keepWarnings;

namespace {
/// Tall enough that no word lies on the clip's numbers.
constexpr AppDriver::Screen kTall{"tall phone", 360, 1180, 6.3};
/// A device that has a camera, so that there is a page to film with; nothing is started here.
class ACamera final : public ports::Camera {
  public:
    base::Result<std::vector<ports::CameraDevice>> devices() override {
        ports::CameraDevice device;
        device.id = "back";
        device.name = "library";
        return std::vector{device};
    }
    base::Result<Running> start(const std::string&, const std::optional<ports::CameraFormat>&,
                                Sink) override {
        return base::inputError("camera.denied", "The camera is not allowed here.");
    }
    void stop() override {}
};

} // namespace

class TourTest : public QObject {
    Q_OBJECT

  private:
    QTemporaryDir home_;

  private slots:
    void initTestCase() {
        QVERIFY(home_.isValid());
        uitest::makeMarkedLibrary(home_.path(), marks::Hand::right, 2);
        // Something that can be taken back: undo and redo need their room in the heading as well.
        uitest::Shelf shelf(home_.path());
        QVERIFY(shelf.book().addPlayer({"Other player", marks::Hand::left, std::nullopt, ""}).ok());
        session::SwingDesk desk(shelf.library(), nullptr);
        const auto opened = desk.open(shelf.clip(), {});
        QVERIFY(opened.ok() && *opened);
        for (const double x : {351.0, 350.0}) {
            desk.beginDrag(0, marks::Landmark::lead_hip);
            desk.moveDrag({x, 220.0});
            QVERIFY(desk.finishDrag().ok());
        }
        QVERIFY(desk.undo().ok());
        QVERIFY(desk.canUndo() && desk.canRedo());
    }
    void init() {
        qInstallMessageHandler(keepWarnings); // QtTest has put its own in
        g_warnings.clear();
    }
    void cleanup() { QVERIFY2(g_warnings.isEmpty(), qPrintable(g_warnings.join('\n'))); }

    // Every page on every screen in both themes: no warning, and everything that can be worked has a name and
    // a target of 9.6 mm. Nothing is clipped, in the dark theme neither with letters of twice the size in a
    // language 40 % longer than English, of which no text of the app is left out.
    void tour_data() {
        QTest::addColumn<int>("screen");
        QTest::addColumn<bool>("dark");
        for (int screen = 0; screen < 3; ++screen) {
            for (const bool dark : {false, true}) {
                QTest::addRow("%s %s", AppDriver::screens()[std::size_t(screen)].name,
                              dark ? "dark, twice the size, stretched" : "sun")
                    << screen << dark;
            }
        }
    }

    void tour() {
        QFETCH(int, screen);
        QFETCH(bool, dark);
        const AppDriver::Screen& s = AppDriver::screens()[std::size_t(screen)];
        AppDriver::prefer(home_.path(), "screen/dark", dark);
        AppDriver::prefer(home_.path(), "screen/textScale", dark ? 2.0 : 1.0);
        AppDriver::prefer(home_.path(), "screen/language", dark ? "stretched" : "en");
        ACamera camera;
        AppDriver app(home_.path(), s, {}, {}, &camera);
        QStringList bad;
        const auto look = [&](const QString& page) {
            if (const QString b = app.untouchable(); !b.isEmpty()) {
                bad << page + ", target: " + b;
            }
            for (const QString& b : uitest::clippedTexts(app)) {
                bad << page + ", clipped: " + b;
            }
            if (dark) {
                for (const QString& b : uitest::untranslatedTexts(
                         app, {"Marked player", "Other player", "Lesson", "another.mp4", "marked.mp4",
                               "plumbmark-", "library", "English", "Deutsch", "Espa"})) {
                    bad << page + ", untranslated: " + b;
                }
            }
            if (const QString folder = qEnvironmentVariable("PLUMBMARK_TOUR_PICTURES"); !folder.isEmpty()) {
                app.grab().save(folder + "/" +
                                QString("%1-%2-%3.png").arg(s.name, dark ? "dark" : "sun", page));
            }
        };
        const QString stopped = uitest::visitEveryPage(app, look);
        if (!stopped.isEmpty()) {
            look("where it stopped");
        }
        QVERIFY2(stopped.isEmpty(), qPrintable(stopped));
        QVERIFY2(bad.isEmpty(), qPrintable("\n" + bad.join('\n')));
    }

    // A language that is read from right to left turns the pages round, but never the picture, the way of
    // time or the operator's hand.
    void readFromTheRight() {
        AppDriver::prefer(home_.path(), "screen/language", "stretched-rtl");
        AppDriver app(home_.path(), kTall);
        const auto inLeftHalf = [&](const char* thing) {
            return app.rectOf(app.find(thing)).center().x() < app.window()->width() / 2;
        };
        QVERIFY(inLeftHalf("Settings")); // actions, else on the right
        QVERIFY(app.tap("Settings"));
        QVERIFY(app.waitFor("Size of the letters: 100"));
        QVERIFY(!inLeftHalf("Back"));
        QVERIFY(app.rectOf(app.find("Size of the letters: 100")).x() >
                app.rectOf(app.find("Size of the letters: 125")).x());
        QVERIFY(app.tap("Back"));
        QVERIFY(app.openSwing());
        QVERIFY(!inLeftHalf("Back"));
        QTest::keyClick(app.window(), Qt::Key_Right);
        QVERIFY(app.waitFor("Picture of the swing, Frame 2 of"));
        const QRect stage = app.rectOf(app.find("Picture of the swing"));
        QVERIFY(!inLeftHalf("Hide the marks")); // the right hand's side, as before
        QVERIFY(app.tap("Hide the marks"));
        // Read from the pixels, which begin with white and end with black: a mirrored strip is no number.
        QVERIFY(QTest::qWaitFor(
            [&] {
                const QImage shot = app.grab();
                return uitest::readNumber(shot, stage, shot.width() / double(app.window()->width())) == 1;
            },
            5000));
        QVERIFY(app.rectOf(app.find("One frame back")).x() < app.rectOf(app.find("One frame on")).x());
        QVERIFY(app.tap("Tools")); // of the panels, the last is now the leftmost
        QVERIFY(app.rectOf(app.find("Tools")).x() < app.rectOf(app.find("Checks")).x());
        const QStringList clipped = uitest::clippedTexts(app);
        QVERIFY2(clipped.isEmpty(), qPrintable(clipped.join('\n')));
        AppDriver::prefer(home_.path(), "screen/language", "en");
    }
};

int main(int argc, char** argv) {
    return uitest::run<TourTest>(argc, argv);
}

#include "tour_test.moc"
