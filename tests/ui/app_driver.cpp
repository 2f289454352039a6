// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "app_driver.h"

#include <QFile>
#include <QQuickItem>
#include <QQuickWindow>
#include <QSettings>
#include <QTest>
#include <algorithm>

#include "bridge/language.h"
#include "session/clip_intake.h"
#include "store/library.h"
#include "video/writer.h"

using namespace plumbmark;

namespace uitest {

namespace {
constexpr int kWidth = 640, kHeight = 360, kBits = 10, kBlock = 48; // two guards and ten bits: 576 px

/// Tests speak English; an app in the "stretched" language is understood all the same.
QString plainName(QAccessibleInterface* thing) {
    return bridge::unstretched(thing->text(QAccessible::Name));
}
} // namespace

const std::vector<AppDriver::Screen>& AppDriver::screens() {
    static const std::vector<Screen> kScreens{
        {"phone", 360, 740, 6.3}, {"tablet", 1024, 768, 5.2}, {"desktop", 1440, 900, 3.78}};
    return kScreens;
}

void AppDriver::prefer(const QString& home, const QString& key, const QVariant& value) {
    const platform::LinuxPlaces places(platform::LinuxPlaces::Environment{{"HOME", home.toStdString()}});
    QSettings(QString::fromStdString(places.settingsFile().string()), QSettings::IniFormat)
        .setValue(key, value);
}

AppDriver::AppDriver(const QString& home, const Screen& screen, const QString& library,
                     analysis::NetworkBytes network, ports::Camera* camera,
                     const std::function<void(app::AppOptions&)>& also)
    : places_(platform::LinuxPlaces::Environment{{"HOME", home.toStdString()}}),
      pixelsPerMm_(screen.pixelsPerMm), finger_(QTest::createTouchDevice()) {
    app::AppOptions options;
    options.library = (library.isEmpty() ? home + "/library" : library).toStdString();
    options.network = std::move(network);
    options.places = &places_;
    options.camera = camera;
    options.pixelsPerMm = screen.pixelsPerMm;
    options.width = screen.width;
    options.height = screen.height;
    if (also) {
        also(options);
    }
    auto started = app::RunningApp::start(options);
    if (!started.ok()) {
        qFatal("%s", started.error().sentence.c_str());
    }
    app_ = std::move(*started);
    (void)QTest::qWaitForWindowExposed(window());
}

AppDriver::~AppDriver() = default;

QQuickWindow* AppDriver::window() const {
    return app_->window();
}

bridge::AppModel& AppDriver::model() {
    return app_->model();
}

std::vector<QAccessibleInterface*> AppDriver::everything() const {
    std::vector<QAccessibleInterface*> all;
    std::vector<QAccessibleInterface*> open{QAccessible::queryAccessibleInterface(window())};
    while (!open.empty()) {
        QAccessibleInterface* thing = open.back();
        open.pop_back();
        if (thing == nullptr || thing->state().invisible) {
            continue;
        }
        all.push_back(thing);
        for (int i = thing->childCount() - 1; i >= 0; --i) {
            open.push_back(thing->child(i));
        }
    }
    return all;
}

QAccessibleInterface* AppDriver::find(const QString& beginning) const {
    for (QAccessibleInterface* thing : everything()) {
        if (plainName(thing).startsWith(beginning)) {
            return thing;
        }
    }
    return nullptr;
}

QString AppDriver::nameOf(const QString& beginning) const {
    QAccessibleInterface* thing = find(beginning);
    return thing == nullptr ? QString() : plainName(thing);
}

QRect AppDriver::rectOf(QAccessibleInterface* thing) const {
    const QRect onScreen = thing->rect();
    return {window()->mapFromGlobal(onScreen.topLeft()), onScreen.size()};
}

bool AppDriver::waitFor(const QString& beginning, int milliseconds) const {
    return QTest::qWaitFor([&] { return find(beginning) != nullptr; }, milliseconds);
}

QAccessibleInterface* AppDriver::workable(const QString& beginning) const {
    for (QAccessibleInterface* thing : everything()) {
        if (isInteractive(thing->role()) && plainName(thing).startsWith(beginning)) {
            const auto* item = qobject_cast<QQuickItem*>(thing->object());
            return item != nullptr && item->isEnabled() ? thing : nullptr;
        }
    }
    return nullptr;
}

bool AppDriver::isEnabled(const QString& beginning) const {
    return workable(beginning) != nullptr;
}

bool AppDriver::tap(const QString& beginning) {
    QAccessibleInterface* found = nullptr;
    if (!QTest::qWaitFor([&] { return (found = workable(beginning)) != nullptr; }, 3000)) {
        return false;
    }
    // A person taps what has come to rest: pages lay themselves out in the frame after they appear, and what
    // stood in sight may have been moved out of it.
    for (int i = 0; i < 20; ++i) {
        QRect rest = rectOf(found);
        int still = 0;
        (void)QTest::qWaitFor(
            [&] {
                QTest::qWait(20);
                found = workable(beginning); // a list may have been made anew meanwhile
                const QRect now = found == nullptr ? QRect() : rectOf(found);
                still = std::exchange(rest, now) == now ? still + 1 : 0;
                return still == 2;
            },
            2000);
        if (found == nullptr) {
            return false;
        }
        if (!scrollTowards(found)) {
            break;
        }
    }
    const QPoint at = rectOf(found).center();
    QTest::touchEvent(window(), finger_).press(0, at, window());
    QTest::touchEvent(window(), finger_).release(0, at, window());
    QCoreApplication::processEvents();
    return true;
}

bool AppDriver::scrollTowards(QAccessibleInterface* thing) {
    auto* item = qobject_cast<QQuickItem*>(thing->object());
    for (QQuickItem* above = item == nullptr ? nullptr : item->parentItem(); above != nullptr;
         above = above->parentItem()) {
        if (!above->inherits("QQuickFlickable")) {
            continue;
        }
        const QRectF port = above->mapRectToScene(QRectF(0, 0, above->width(), above->height()));
        const QPointF middle = item->mapRectToScene(QRectF(0, 0, item->width(), item->height())).center();
        QPointF way;
        if (middle.y() < port.top() || middle.y() > port.bottom()) {
            way.setY(std::clamp(port.center().y() - middle.y(), -0.7 * port.height(), 0.7 * port.height()));
        } else if (middle.x() < port.left() || middle.x() > port.right()) {
            way.setX(std::clamp(port.center().x() - middle.x(), -0.7 * port.width(), 0.7 * port.width()));
        } else {
            continue;
        }
        const QPointF from = port.center() - way / 2;
        drag(from.toPoint(), (from + way).toPoint(), false);
        QTest::qWait(120); // held still: no flick
        release((from + way).toPoint());
        // Until the list has come to rest.
        (void)QTest::qWaitFor([&] { return !above->property("moving").toBool(); }, 2000);
        return true;
    }
    return false;
}

QPoint AppDriver::inWindow(double x, double y) const {
    const QRect stage = rectOf(find("Picture of the swing"));
    const double scale = std::min(stage.width() / 640.0, stage.height() / 360.0);
    return {qRound(stage.x() + stage.width() / 2.0 + (x - 320) * scale),
            qRound(stage.y() + stage.height() / 2.0 + (y - 180) * scale)};
}

bool AppDriver::openSwing() {
    if (!waitFor("Swing 1") || !tap("Swing 1") || !waitFor("Picture of the swing, Frame", 60000) ||
        !QTest::qWaitFor([this] { return find("Reading the swing") == nullptr; }, 120000)) {
        return false;
    }
    if (find("Show the whole picture") != nullptr && !tap("Show the whole picture")) {
        return false;
    }
    QTest::keyClick(window(), Qt::Key_Home);
    return waitFor("Picture of the swing, Frame 1 of");
}

bool AppDriver::type(const QString& field, const QString& text) {
    const auto named = [&]() -> QAccessibleInterface* {
        for (QAccessibleInterface* thing : everything()) {
            if (thing->role() == QAccessible::EditableText && plainName(thing) == field) {
                return thing;
            }
        }
        return nullptr;
    };
    // A page that has just come lays itself out first; a field is tapped when it has come to rest.
    QRect rest;
    int still = 0;
    const auto atRest = [&] {
        QTest::qWait(20);
        QAccessibleInterface* thing = named();
        const QRect now = thing == nullptr ? QRect() : rectOf(thing);
        still = thing != nullptr && std::exchange(rest, now) == now ? still + 1 : 0;
        return still == 2;
    };
    if (!QTest::qWaitFor(atRest, 5000)) {
        return false;
    }
    tapAt(rest.center());
    const auto* item = qobject_cast<QQuickItem*>(named()->object());
    if (item == nullptr || !QTest::qWaitFor([&] { return item->hasActiveFocus(); }, 3000)) {
        return false;
    }
    QTest::keyClick(window(), Qt::Key_A, Qt::ControlModifier);
    QTest::keyClick(window(), Qt::Key_Delete);
    for (const QChar letter : text) {
        QTest::keyClick(window(), letter.toLatin1());
    }
    return true;
}

QString AppDriver::descriptionOf(const QString& beginning) const {
    QAccessibleInterface* thing = find(beginning);
    return thing == nullptr ? QString() : thing->text(QAccessible::Description);
}

void AppDriver::drag(QPoint from, QPoint to, bool letGo) {
    QTest::touchEvent(window(), finger_).press(0, from, window());
    constexpr int kSteps = 12;
    for (int i = 1; i <= kSteps; ++i) {
        QTest::qWait(8);
        QTest::touchEvent(window(), finger_).move(0, from + (to - from) * i / kSteps, window());
    }
    if (letGo) {
        release(to);
    }
}

void AppDriver::release(QPoint at) {
    QTest::touchEvent(window(), finger_).release(0, at, window());
    QCoreApplication::processEvents();
}

void AppDriver::secondFinger(QPoint first, QPoint second) {
    QTest::touchEvent(window(), finger_).stationary(0).press(1, second, window());
    QTest::touchEvent(window(), finger_).release(0, first, window()).release(1, second, window());
    QCoreApplication::processEvents();
}

QImage AppDriver::grab() const {
    return window()->grabWindow();
}

QString AppDriver::untouchable() const {
    QTest::qWait(60);
    (void)grab();
    int interactive = 0;
    for (QAccessibleInterface* thing : everything()) {
        if (!isInteractive(thing->role())) {
            continue;
        }
        ++interactive;
        const QString name = thing->text(QAccessible::Name);
        const QSize size = thing->rect().size();
        const double least = 9.6 * pixelsPerMm_ - 1;
        if (name.isEmpty() || size.width() < least || size.height() < least) {
            return QString("\"%1\" %2 x %3").arg(name).arg(size.width()).arg(size.height());
        }
    }
    return interactive < 2 ? QString("hardly anything can be touched") : QString();
}

bool isInteractive(QAccessible::Role role) {
    switch (role) {
    case QAccessible::Button:
    case QAccessible::RadioButton:
    case QAccessible::CheckBox:
    case QAccessible::Slider:
    case QAccessible::PageTab:
    case QAccessible::EditableText:
        return true;
    default:
        return false;
    }
}

Shelf::Shelf(const QString& home)
    : library_([&] {
          store::LibraryOptions options;
          options.folder = home.toStdString() + "/library";
          auto library = store::Library::open(options);
          if (!library.ok()) {
              qFatal("%s", library.error().sentence.c_str());
          }
          return std::move(*library);
      }()),
      book_(*library_) {}

base::Id Shelf::shot() {
    return book_.shots(book_.lessons()->front().id)->front().id;
}

base::Id Shelf::player() {
    return library_->fact(shot()).ok() ? (*library_->fact(shot()))->path.front()
                                       : base::Id{base::Id::Bytes{}};
}

base::Id Shelf::clip() {
    return book_.clips(shot())->front().id;
}

analysis::Request Shelf::told() {
    return *session::requestFor(*library_, clip());
}

void makeMarkedLibrary(const QString& home, marks::Hand hand, int swings) {
    using marks::Landmark;
    Shelf shelf(home);
    const auto player = shelf.book().addPlayer({"Marked player", hand, std::nullopt, ""});
    records::Lesson lesson;
    lesson.day = "2026-11-25";
    lesson.title = "Lesson";
    const auto made = shelf.book().addLesson(*player, lesson);
    session::ClipIntake intake(shelf.library(), nullptr);
    analysis::Request request;
    request.context.hand = hand;
    const std::pair<Landmark, base::Vec2> points[] = {
        {Landmark::head_centre, {320, 90}},     {Landmark::lead_shoulder, {360, 130}},
        {Landmark::trail_shoulder, {280, 130}}, {Landmark::lead_hip, {350, 220}},
        {Landmark::trail_hip, {290, 220}},      {Landmark::lead_knee, {362, 270}},
        {Landmark::trail_knee, {280, 270}},     {Landmark::lead_ankle, {370, 330}},
        {Landmark::trail_ankle, {270, 330}}};
    for (const auto& [landmark, at] : points) {
        request.handMarks.push_back({0, landmark, at, 2.0});
    }
    for (int swing = 0; swing < swings; ++swing) {
        const QString film = home + (swing == 0 ? "/marked.mp4" : "/another.mp4");
        writeNumberedClip(film, 40 + swing);
        const auto shot = shelf.book().addShot(*made, records::Shot{});
        const auto receipt = intake.bringIn(*shot, film.toStdString(), request, {});
        if (!receipt.ok()) {
            qFatal("%s", receipt.error().sentence.c_str());
        }
    }
}

void writeNumberedClip(const QString& path, int frames, int fps) {
    video::WriterOptions options;
    options.width = kWidth;
    options.height = kHeight;
    options.fps = fps;
    options.keyFrameEvery = 60;
    options.bFrames = 2;
    auto writer = video::ClipWriter::create(path.toStdString(), options);
    if (!writer.ok()) {
        qFatal("%s", writer.error().sentence.c_str());
    }
    for (int frame = 0; frame < frames; ++frame) {
        video::RgbImage picture{kWidth, kHeight, std::vector<std::uint8_t>(kWidth * kHeight * 3, 110)};
        for (int block = 0; block < kBits + 2; ++block) {
            const bool white = block == 0 || (block <= kBits && ((frame >> (block - 1)) & 1) != 0);
            for (int y = 0; y < kBlock; ++y) {
                for (int x = block * kBlock; x < (block + 1) * kBlock; ++x) {
                    for (int c = 0; c < 3; ++c) {
                        picture.pixels[static_cast<std::size_t>(3 * (y * kWidth + x) + c)] = white ? 255 : 0;
                    }
                }
            }
        }
        if (auto done = (*writer)->write(picture); !done.ok()) {
            qFatal("%s", done.error().sentence.c_str());
        }
    }
    if (auto done = (*writer)->finish(); !done.ok()) {
        qFatal("%s", done.error().sentence.c_str());
    }
}

int readNumber(const QImage& window, QRect stage, double ratio) {
    const double scale = std::min(stage.width() / double(kWidth), stage.height() / double(kHeight));
    const QPointF corner(stage.center().x() + 0.5 - scale * kWidth / 2,
                         stage.center().y() + 0.5 - scale * kHeight / 2);
    const auto bright = [&](int block) {
        const QPointF at = (corner + QPointF((block + 0.5) * kBlock, kBlock * 0.5) * scale) * ratio;
        return qGray(window.pixel(at.toPoint()));
    };
    // Guards: first block white, last one black; else the strip is not where it should be.
    if (bright(0) < 200 || bright(kBits + 1) > 60) {
        return -1;
    }
    int number = 0;
    for (int bit = 0; bit < kBits; ++bit) {
        const int grey = bright(bit + 1);
        if (grey > 60 && grey < 200) {
            return -1;
        }
        number |= (grey >= 200 ? 1 : 0) << bit;
    }
    return number;
}

} // namespace uitest
