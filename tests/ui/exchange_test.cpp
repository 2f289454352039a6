// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The page for exchanging and keeping lessons, by touch; judged by what lies on the disk afterwards.
#include <QDir>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QTest>
#include <filesystem>

#include "app_driver.h"
#include "camera/file_camera.h"
#include "lessonfile/lessonfile.h"
#include "records/consent.h"
#include "session/disagreements.h"
#include "session/film_sharing.h"
#include "session/lesson_exchange.h"
#include "store/backup.h"
#include "transfer/direct.h"
#include "transfer/qr.h"
#include "ui_test_run.h"
#include "video/writer.h"

using namespace plumbmark;
using uitest::AppDriver;
using uitest::g_warnings;
using uitest::isInteractive;
using uitest::keepWarnings;
using uitest::Shelf;
namespace fs = std::filesystem;

namespace {

const AppDriver::Screen& tablet() {
    return AppDriver::screens()[1];
}

/// Scrolls the page until the thing lies in the window, then taps it.
bool reach(AppDriver& app, const QString& name) {
    const int height = app.window()->height();
    for (int tries = 0; tries < 30; ++tries) {
        QAccessibleInterface* thing = app.find(name);
        if (thing == nullptr) {
            return false;
        }
        const QRect place = app.rectOf(thing);
        if (place.top() > height / 4 && place.bottom() < height - 4) {
            return app.tap(name);
        }
        const int step = place.top() <= height / 4 ? height / 4 : -height / 4;
        // Slow at the end, so that it does not fly on; at the edge, where nothing can be hit.
        app.drag({4, height * 5 / 8}, {4, height * 5 / 8 + step});
        QTest::qWait(300);
        if (app.rectOf(thing) == place) {
            return app.tap(name); // the end of the page
        }
    }
    return false;
}
bool openPage(AppDriver& app) {
    return app.tap("Exchange and keep") && app.waitFor("Files");
}
bool saw(AppDriver& app, const QString& beginning, int milliseconds = 20000) {
    return app.waitFor(beginning, milliseconds);
}
/// Opens the way to a device beside: the ticket and its code are on the screen.
bool offersALesson(AppDriver& app) {
    return openPage(app) && app.tap("Devices") && reach(app, "It goes to: a device of mine") &&
           reach(app, "Send this lesson") && saw(app, "Ticket plumbmark:");
}
QStringList lessonFiles(const QString& folder) {
    return QDir(folder).entryList({"*.plumbmark"}, QDir::Files);
}

} // namespace

class ExchangeTest : public QObject {
    Q_OBJECT

  private:
    std::unique_ptr<QTemporaryDir> home_, other_;

    void consentOnDisk() {
        Shelf shelf(home_->path());
        records::Consent consent;
        consent.scopes = {"film", "share"};
        consent.day = base::isoDate(base::systemClock().now());
        consent.until = consent.day;
        const auto player = shelf.library().players();
        QVERIFY(session::LessonExchange(shelf.library()).noteConsent(player->front().id, consent).ok());
    }

  private slots:
    void init() {
        home_ = std::make_unique<QTemporaryDir>();
        other_ = std::make_unique<QTemporaryDir>();
        for (const auto& home : {home_->path(), other_->path()}) {
            QDir(home).mkdir("Downloads");
        }
        uitest::makeMarkedLibrary(home_->path());
        qInstallMessageHandler(keepWarnings);
        g_warnings.clear();
    }
    void cleanup() { QVERIFY2(g_warnings.isEmpty(), qPrintable(g_warnings.join('\n'))); }

    // Nothing goes to somebody else without a consent; with one it does; another device takes it in after
    // looking at it, and again without any change.
    void aLessonGoesOutToAFileAndInAgain() {
        const QString downloads = home_->path() + "/Downloads";
        {
            AppDriver app(home_->path(), tablet());
            QVERIFY(openPage(app));
            QVERIFY(reach(app, "Folder: Downloads"));
            QVERIFY(reach(app, "Save the lesson file"));
            QVERIFY(saw(app, "Nothing was shared: there is no consent"));
            QCOMPARE(lessonFiles(downloads).size(), 0);
            QVERIFY(app.tap("Consent"));
            QVERIFY(saw(app, "No consent on record"));
            QVERIFY(reach(app, "lessons going to others"));
            QVERIFY(reach(app, "A minor: a guardian agrees"));
            QVERIFY(reach(app, "Note the consent"));
            QVERIFY(saw(app, "A minor's consent is given by a guardian"));
            QVERIFY(reach(app, "A minor: a guardian agrees"));
            QVERIFY(reach(app, "Note the consent"));
            QVERIFY(saw(app, "Given on"));
            QVERIFY(app.tap("Files"));
            QVERIFY(saw(app, "Clips go without place, device and dates. May be shared."));
            QVERIFY(reach(app, "Save the lesson file"));
            QVERIFY(saw(app, "Saved as lesson-"));
        }
        QCOMPARE(lessonFiles(downloads).size(), 1);
        const QString file = downloads + "/" + lessonFiles(downloads).front();
        QVERIFY(lessonfile::verify(file.toStdString()).ok());
        QVERIFY(QFile::copy(file, other_->path() + "/Downloads/from-friend.plumbmark"));
        {
            AppDriver there(other_->path(), tablet());
            for (const char* did : {" 0 the same", "0 new"}) {
                QVERIFY(openPage(there));
                QVERIFY(reach(there, "Folder: Downloads"));
                QVERIFY(reach(there, "Check lesson file from-friend.plumbmark"));
                QVERIFY(saw(there, "Whole, sender unknown"));
                QVERIFY(reach(there, "Take the lesson in"));
                QVERIFY(QTest::qWaitFor(
                    [&] {
                        const QString told = there.nameOf("Whole, sender unknown.");
                        return told.contains(QString::fromLatin1(did).trimmed());
                    },
                    20000));
                QVERIFY(there.tap("Back"));
                QVERIFY(there.waitFor("Swing 1"));
            }
        }
        Shelf shelf(other_->path());
        QCOMPARE(shelf.book().lessons()->size(), std::size_t(1));
        const auto clip = shelf.library().clip(shelf.clip());
        QVERIFY((*clip)->filmHere);
        QVERIFY((*clip)->film != (*clip)->clip.sha256); // a bare copy
    }

    // A damaged file is told and cannot be taken in.
    void aDamagedFileIsNotTakenIn() {
        QFile file(home_->path() + "/Downloads/bad.plumbmark");
        QVERIFY(file.open(QFile::WriteOnly));
        file.write("PK but nothing of ours");
        file.close();
        AppDriver app(home_->path(), tablet());
        QVERIFY(openPage(app));
        QVERIFY(reach(app, "Folder: Downloads"));
        QVERIFY(reach(app, "Check lesson file bad.plumbmark"));
        QVERIFY(QTest::qWaitFor([&] { return app.find("Checking every byte") == nullptr; }, 10000));
        QVERIFY(app.find("Take the lesson in") == nullptr);
    }

    // The head is covered only with a look at the strip in between.
    void headsAreCoveredAndReleasedByAPerson() {
        consentOnDisk();
        {
            AppDriver app(home_->path(), tablet());
            QVERIFY(openPage(app));
            QVERIFY(reach(app, "Heads covered"));
            QVERIFY(app.find("I have looked: release") == nullptr);
            QVERIFY(reach(app, "Cover the heads"));
            QVERIFY(saw(app, "Look at every picture", 60000));
            QVERIFY(app.find("Covered picture 1") != nullptr);
            {
                Shelf shelf(home_->path());
                session::HeadCovering covering(shelf.library(), nullptr);
                QCOMPARE(*covering.state(shelf.clip()), session::HeadCovering::State::made);
            }
            QVERIFY(reach(app, "I have looked: release"));
            QVERIFY(saw(app, "Released"));
            QVERIFY(reach(app, "Folder: Downloads"));
            QVERIFY(reach(app, "Save the lesson file"));
            QVERIFY(saw(app, "Saved as lesson-"));
        }
        Shelf shelf(home_->path());
        session::HeadCovering covering(shelf.library(), nullptr);
        QCOMPARE(*covering.state(shelf.clip()), session::HeadCovering::State::released);
    }

    // Side by side: the ticket is on the screen while the way is open, and the lesson arrives.
    void aLessonIsSentToADeviceBeside() {
        if (transfer::ownAddresses().empty()) {
            QSKIP("this machine is on no network");
        }
        AppDriver here(home_->path(), tablet());
        QVERIFY(offersALesson(here));
        QVERIFY(here.find("Code of the ticket") != nullptr);
        const QString ticket = here.nameOf("Ticket plumbmark:").mid(7);
        AppDriver there(other_->path(), tablet());
        QVERIFY(openPage(there));
        QVERIFY(there.tap("Devices"));
        QVERIFY(there.waitFor("Ticket of the other device"));
        QVERIFY(reach(there, "Ticket of the other device"));
        for (const QChar letter : QString("nonsense")) {
            QTest::keyClick(there.window(), letter.toLatin1());
        }
        QVERIFY(reach(there, "Receive the lesson"));
        QVERIFY(saw(there, "This is no ticket"));
        QVERIFY(there.type("Ticket of the other device", ticket));
        QVERIFY(reach(there, "Receive the lesson"));
        QVERIFY(saw(there, "Whole, sender unknown.", 60000));
        QVERIFY(saw(here, "Sent, and the other device has all of it."));
        QVERIFY(here.find("Code of the ticket") == nullptr); // the way is closed
        QCOMPARE(Shelf(other_->path()).book().lessons()->size(), std::size_t(1));
    }

    // The same by camera: what one app shows on its screen the other one's camera sees.
    void aLessonIsFetchedByReadingTheCodeFromTheScreen() {
        if (transfer::ownAddresses().empty()) {
            QSKIP("this machine is on no network");
        }
        AppDriver here(home_->path(), tablet());
        QVERIFY(offersALesson(here));
        // As a person would hold the camera: where the code is.
        QImage screen;
        QVERIFY(QTest::qWaitFor(
            [&] {
                screen = here.window()->grabWindow().convertToFormat(QImage::Format_RGB888);
                const QImage grey = screen.convertToFormat(QImage::Format_Grayscale8);
                const auto read = transfer::textInQrCode(
                    {grey.constBits(), grey.width(), grey.height(), grey.bytesPerLine()}, "plumbmark:");
                return read && QString::fromStdString(*read) == here.nameOf("Ticket plumbmark:").mid(7);
            },
            20000));
        const fs::path film = (other_->path() + "/screen.mp4").toStdString();
        video::WriterOptions options;
        options.width = screen.width() / 2 * 2;
        options.height = screen.height() / 2 * 2;
        options.fps = 15.0;
        auto writer = video::ClipWriter::create(film, options);
        QVERIFY(writer.ok());
        for (int frame = 0; frame < 150; ++frame) {
            video::RgbImage picture{options.width, options.height, {}};
            for (int y = 0; y < picture.height; ++y) {
                const uchar* row = screen.constScanLine(y);
                picture.pixels.insert(picture.pixels.end(), row, row + 3 * picture.width);
            }
            QVERIFY((*writer)->write(picture).ok());
        }
        QVERIFY((*writer)->finish().ok());
        platform::FileCamera camera({film}, platform::FileCamera::Pace::own);
        AppDriver there(other_->path(), tablet(), {}, {}, &camera);
        QVERIFY(openPage(there));
        QVERIFY(there.tap("Devices"));
        QVERIFY(there.waitFor("Read the code with the camera"));
        QVERIFY(reach(there, "Read the code with the camera"));
        QVERIFY(saw(there, "Whole, sender unknown.", 60000));
        QVERIFY(saw(here, "Sent, and the other device has all of it."));
        QVERIFY(there.waitFor("Read the code with the camera")); // the camera is off again
        QCOMPARE(Shelf(other_->path()).book().lessons()->size(), std::size_t(1));
    }

    void aFolderIsWaitedForAndCaughtUpWith() {
        const QString shared = other_->path() + "/shared";
        QDir().mkpath(shared);
        AppDriver app(home_->path(), tablet());
        QVERIFY(openPage(app));
        QVERIFY(app.tap("Devices"));
        QVERIFY(app.waitFor("Or another folder"));
        QVERIFY(reach(app, "Or another folder"));
        QVERIFY(app.type("Or another folder", shared));
        QVERIFY(reach(app, "Use this folder"));
        QVERIFY(saw(app, "Caught up at"));
        QCOMPARE(lessonFiles(shared).size(), 1);
        QVERIFY(QDir(shared).rename(shared, shared + "-away"));
        QVERIFY(reach(app, "Exchange now"));
        QVERIFY(saw(app, "Waiting: the folder is not there now."));
    }

    // A backup is made, chosen, and put in place by the next start.
    void aBackupIsPutBackAtTheNextStart() {
        {
            AppDriver app(home_->path(), tablet());
            QVERIFY(openPage(app));
            QVERIFY(app.tap("Backups"));
            QVERIFY(reach(app, "Make a backup now"));
            QVERIFY(saw(app, "Backup made and checked: 1 lesson"));
        }
        const auto before = Shelf(home_->path()).library().allLines();
        {
            Shelf shelf(home_->path());
            QVERIFY(shelf.book().addPlayer({"Later", marks::Hand::left, {}, ""}).ok());
        }
        {
            AppDriver app(home_->path(), tablet());
            QVERIFY(openPage(app));
            QVERIFY(app.tap("Backups"));
            QVERIFY(app.waitFor("Put this one back"));
            QVERIFY(reach(app, "Put this one back"));
            QVERIFY(reach(app, "Check it and put it back at the next start"));
            QVERIFY(saw(app, "At the next start a backup is put"));
        }
        {
            AppDriver app(home_->path(), tablet());
            QVERIFY(app.waitFor("The backup was put in place"));
        }
        QCOMPARE(*Shelf(home_->path()).library().allLines(), *before);
    }

    void whatTwoDevicesPutDifferentlyIsSettledByATap() {
        {
            Shelf here(home_->path());
            const auto lesson = here.book().lessons()->front();
            const fs::path file = other_->path().toStdString() + "/lesson.plumbmark";
            session::LessonExchange::ExportOptions own;
            own.audience = session::Audience::ownDevice;
            own.withPage = false;
            QVERIFY(session::LessonExchange(here.library()).exportLesson(lesson.id, file, own, {}).ok());
            Shelf there(other_->path());
            QVERIFY(session::LessonExchange(there.library()).import(file, {}).ok());
            for (const auto& [shelf, name] : {std::pair{&here, "Name A"}, {&there, "Name B"}}) {
                auto player = shelf->book().player(lesson.player);
                player->name = name;
                QVERIFY(shelf->book().edit(lesson.player, *player).ok());
            }
            fs::remove(file);
            QVERIFY(session::LessonExchange(there.library()).exportLesson(lesson.id, file, own, {}).ok());
            QVERIFY(session::LessonExchange(here.library()).import(file, {}).ok());
        }
        AppDriver app(home_->path(), tablet());
        QVERIFY(openPage(app));
        QVERIFY(app.tap("Settle (1)"));
        QVERIFY(app.waitFor("name holds: Name A"));
        QVERIFY(app.find("name holds: Name B") != nullptr);
        QVERIFY(reach(app, "name holds: Name A"));
        QVERIFY(saw(app, "Nothing to settle"));
        Shelf shelf(home_->path());
        QCOMPARE(shelf.library().players()->front().name, std::string("Name A"));
        QVERIFY(session::Disagreements(shelf.library()).all()->empty());
    }

    // Every panel at every size: names for those who cannot see, and room for a finger.
    void everyPanelCanBeWorked_data() {
        QTest::addColumn<int>("screen");
        for (int screen = 0; screen < 3; ++screen) {
            QTest::addRow("%s", AppDriver::screens()[std::size_t(screen)].name) << screen;
        }
    }
    void everyPanelCanBeWorked() {
        QFETCH(int, screen);
        const AppDriver::Screen& s = AppDriver::screens()[std::size_t(screen)];
        AppDriver app(home_->path(), s);
        QVERIFY(openPage(app));
        for (const char* panel : {"Files", "Devices", "Consent", "Backups", "Settle"}) {
            QVERIFY(app.tap(panel));
            QTest::qWait(60);
            (void)app.grab();
            for (QAccessibleInterface* thing : app.everything()) {
                if (!isInteractive(thing->role())) {
                    continue;
                }
                const QString name = thing->text(QAccessible::Name);
                const QRect place = app.rectOf(thing);
                const auto told =
                    QString("%1: \"%2\" %3 x %4").arg(panel, name).arg(place.width()).arg(place.height());
                QVERIFY2(!name.isEmpty(), qPrintable(told));
                QVERIFY2(place.width() >= 9.6 * s.pixelsPerMm - 1 &&
                             place.height() >= 9.6 * s.pixelsPerMm - 1,
                         qPrintable(told));
                QVERIFY2(place.left() >= 0 && place.right() <= app.window()->width(), qPrintable(told));
            }
        }
    }
};

int main(int argc, char** argv) {
    return uitest::run<ExchangeTest>(argc, argv);
}
#include "exchange_test.moc"
