// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAccessible>
#include <QImage>
#include <QPointingDevice>
#include <QTemporaryDir>
#include <QVariant>
#include <functional>
#include <memory>
#include <vector>

#include "linux/linux_places.h"
#include "run_app.h"
#include "session/lesson_book.h"

namespace uitest {

/// The app under test, touched like a person would: by what things are called and where they are.
class AppDriver {
  public:
    struct Screen {
        const char* name;
        int width, height;
        double pixelsPerMm;
    };
    static const std::vector<Screen>& screens(); ///< phone, tablet, desktop

    /// Sets what a person may choose on the Settings page, before the app starts: "screen/language", ...
    static void prefer(const QString& home, const QString& key, const QVariant& value);

    /// `library` empty: HOME/library. `network`: the pose network's bytes, or nothing.
    /// `library` empty: HOME/library. `network`: the pose network's bytes, or nothing. `also` sets what else
    /// the app is given.
    AppDriver(const QString& home, const Screen& screen, const QString& library = {},
              plumbmark::analysis::NetworkBytes network = {}, plumbmark::ports::Camera* camera = nullptr,
              const std::function<void(plumbmark::app::AppOptions&)>& also = {});
    ~AppDriver();

    [[nodiscard]] QQuickWindow* window() const;
    /// For benchmarks, which must know when something has come; tests judge what is shown.
    [[nodiscard]] plumbmark::bridge::AppModel& model();
    /// First visible thing whose name begins so (depth first); nullptr when there is none.
    [[nodiscard]] QAccessibleInterface* find(const QString& beginning) const;
    [[nodiscard]] QString nameOf(const QString& beginning) const;
    [[nodiscard]] std::vector<QAccessibleInterface*> everything() const;
    [[nodiscard]] QRect rectOf(QAccessibleInterface* thing) const; ///< in the window
    /// What can be worked and is not greyed out (this Qt does not tell readers the latter by itself).
    [[nodiscard]] bool isEnabled(const QString& beginning) const;
    /// Waits until a thing of that name is there.
    bool waitFor(const QString& beginning, int milliseconds = 10000) const;
    /// Taps the middle of the first thing that can be worked and whose name begins so; false without one.
    bool tap(const QString& beginning);
    /// A tap on a point of the window.
    void tapAt(QPoint at) { drag(at, at); }
    /// Where a picture point of a 640 x 360 film lies in the window, the whole film being shown.
    [[nodiscard]] QPoint inWindow(double x, double y) const;
    /// Opens the first swing, waits until it is read, shows the whole picture and its first frame.
    bool openSwing();
    /// The named field is tapped, emptied and typed into.
    bool type(const QString& field, const QString& text);
    [[nodiscard]] QString descriptionOf(const QString& beginning) const;
    void drag(QPoint from, QPoint to, bool release = true);
    void release(QPoint at);
    void secondFinger(QPoint first, QPoint second);
    [[nodiscard]] QImage grab() const;
    /// What on the page on show has no name or is smaller than a thumb (9.6 mm); empty: all well.
    [[nodiscard]] QString untouchable() const;

  private:
    /// Drags the list that holds the thing so that it comes nearer; false when it is in sight.
    bool scrollTowards(QAccessibleInterface* thing);
    [[nodiscard]] QAccessibleInterface* workable(const QString& beginning) const;
    plumbmark::platform::LinuxPlaces places_;
    double pixelsPerMm_;
    std::unique_ptr<plumbmark::app::RunningApp> app_;
    QPointingDevice* finger_;
};

/// What a library on disk says, read by a second look at it.
class Shelf {
  public:
    explicit Shelf(const QString& home);
    [[nodiscard]] plumbmark::session::LessonBook& book() { return book_; }
    [[nodiscard]] plumbmark::store::Library& library() { return *library_; }
    [[nodiscard]] plumbmark::base::Id clip(); ///< of the first shot of the first lesson
    [[nodiscard]] plumbmark::base::Id shot();
    [[nodiscard]] plumbmark::base::Id player(); ///< of the first lesson
    /// Hand marks and moments set by hand that stand.
    [[nodiscard]] plumbmark::analysis::Request told();

  private:
    std::unique_ptr<plumbmark::store::Library> library_;
    plumbmark::session::LessonBook book_;
};

/// HOME/library with one player, one lesson, one swing (or more) of 40 numbered frames, and a figure of nine
/// hand marks in its first frame: head (320, 90), shoulders x 360 / 280 at 130, hips 350 / 290 at 220, ankles
/// 370 / 270 at 330.
void makeMarkedLibrary(const QString& home, plumbmark::marks::Hand hand = plumbmark::marks::Hand::right,
                       int swings = 1);

/// Buttons, choices, sliders, tabs and fields.
[[nodiscard]] bool isInteractive(QAccessible::Role role);

/// A clip of 640 x 360 whose every frame carries its number as black and white blocks along the upper edge.
void writeNumberedClip(const QString& path, int frames, int fps = 120);
/// The number read from a picture of the window, the whole film shown fitted in `stage`; -1 when unreadable.
int readNumber(const QImage& window, QRect stage, double devicePixelRatio);

} // namespace uitest
