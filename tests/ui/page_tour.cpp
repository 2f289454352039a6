// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "page_tour.h"

#include <QQuickItem>
#include <QQuickWindow>
#include <QRegularExpression>
#include <QTest>
#include <limits>

namespace uitest {

namespace {

constexpr double kFar = 1e6;

/// Calls `see` for every text in sight with the room it may take, in the window's coordinates.
void eachText(QQuickItem* item, QRectF room, QRectF sight,
              const std::function<void(QQuickItem*, const QRectF&)>& see) {
    if (!item->isVisible() || item->opacity() <= 0 || item->width() < 0) {
        return;
    }
    const QRectF here = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
    if (item->clip() || item->inherits("QQuickFlickable")) {
        sight = sight.intersected(here);
    }
    if (item->inherits("QQuickFlickable")) {
        // Along the way it scrolls, things may lie outside.
        const bool sideways = item->property("contentWidth").toDouble() > item->width() + 1;
        const bool upAndDown = item->property("contentHeight").toDouble() > item->height() + 1;
        const QRectF inside = room.intersected(here);
        room = QRectF(sideways ? -kFar : inside.x(), upAndDown ? -kFar : inside.y(),
                      sideways ? 2 * kFar : inside.width(), upAndDown ? 2 * kFar : inside.height());
    } else if (item->inherits("QQuickAbstractButton") || item->clip()) {
        room = room.intersected(here);
    }
    if (item->inherits("QQuickText") && sight.intersects(here) &&
        !item->property("text").toString().isEmpty()) {
        see(item, room);
    }
    for (QQuickItem* child : item->childItems()) {
        eachText(child, room, sight, see);
    }
}

void eachText(const AppDriver& app, const std::function<void(QQuickItem*, const QRectF&)>& see) {
    const QRectF all(QPointF(0, 0), app.window()->size());
    eachText(app.window()->contentItem(), all, all, see);
}

} // namespace

QString visitEveryPage(AppDriver& app, const std::function<void(const QString&)>& look) {
#define MUST(condition)                                                                                      \
    if (!(condition)) {                                                                                      \
        return QStringLiteral("on the tour: " #condition);                                                   \
    }
    const auto show = [&](const char* page) {
        // A person looks at what has come to rest.
        (void)QTest::qWaitFor([&] { return app.untouchable().isEmpty(); }, 1500);
        look(QString::fromUtf8(page));
    };
    MUST(app.waitFor("Swing 1"));
    show("lessons");
    MUST(app.tap("Settings"));
    MUST(app.waitFor("Size of the letters: 100"));
    show("settings");
    QTest::keyClick(app.window(), Qt::Key_Escape);
    MUST(app.waitFor("Swing 1"));
    MUST(app.tap("Exchange and keep"));
    MUST(app.waitFor("Save a lesson to a file"));
    show("exchange, files");
    for (const char* tab : {"Devices", "Consent", "Backups"}) {
        MUST(app.tap(tab));
        show(tab);
    }
    QTest::keyClick(app.window(), Qt::Key_Escape);
    MUST(app.waitFor("Swing 1"));
    MUST(app.tap("Sent in"));
    MUST(app.waitFor("Nobody is waiting."));
    show("sent in");
    QTest::keyClick(app.window(), Qt::Key_Escape);
    MUST(app.waitFor("Swing 1"));
    MUST(app.tap("Film"));
    MUST(app.waitFor("Start the camera"));
    show("film");
    QTest::keyClick(app.window(), Qt::Key_Escape);
    MUST(app.waitFor("Swing 1"));
    MUST(app.tap("Bring in a clip"));
    MUST(app.waitFor("Folder Home"));
    show("pick a film");
    MUST(app.tap("Film marked.mp4"));
    MUST(app.waitFor("View: Face-on"));
    show("answers");
    QTest::keyClick(app.window(), Qt::Key_Escape);
    if (app.find("Swing 1") == nullptr) {
        QTest::keyClick(app.window(), Qt::Key_Escape);
    }
    MUST(app.openSwing());
    show("swing, checks");
    MUST(app.tap("Stance width"));
    show("swing, a check open");
    MUST(app.tap("Stance width"));
    MUST(app.tap("Numbers"));
    show("swing, numbers");
    MUST(app.tap("Notes"));
    MUST(app.waitFor("Film shows posture, not load."));
    show("swing, notes");
    MUST(app.tap("Tools"));
    show("swing, tools");
    for (const char* tool : {"What the ball did", "Set a key moment", "Place a point", "Draw on the picture",
                             "Play and loop", "Strip of moments"}) {
        MUST(app.tap(tool));
        if (!app.waitFor("All tools")) {
            return QStringLiteral("no tool opened: %1").arg(QString::fromUtf8(tool));
        }
        show(tool);
        MUST(app.tap("All tools"));
        MUST(app.waitFor(tool));
    }
    // Comparing and groups on tablet and desktop; on a phone they do not have the room for large letters yet.
    const bool roomy = app.window()->width() > 700;
    if (roomy) {
        MUST(app.tap("Compare with another swing"));
        MUST(app.waitFor("Other swing, Frame", 60000));
        show("compare");
        for (const char* panel : {"Swings", "Match"}) {
            MUST(app.tap(panel));
            show(panel);
        }
        MUST(app.tap("Back"));
        MUST(app.waitFor("Picture of the swing, Frame"));
    }
    if (app.find("Show the whole picture") != nullptr) {
        MUST(app.tap("Show the whole picture"));
    }
    QTest::keyClick(app.window(), Qt::Key_Home);
    MUST(app.waitFor("Picture of the swing, Frame 1 of"));
    const QPoint ankle = app.inWindow(270, 330);
    app.drag(ankle, ankle);
    MUST(app.waitFor("Trail ankle"));
    show("swing, mark");
    MUST(app.tap("Done with this mark"));
    MUST(app.tap("Back"));
    MUST(app.waitFor("Lessons"));
    MUST(app.tap("Cause and plan of"));
    MUST(app.waitFor("What do you say?", 60000));
    show("cause");
    for (const char* tab : {"Try it", "Plan"}) {
        MUST(app.tap(tab));
        show(tab);
    }
    MUST(app.tap("Back"));
    MUST(app.tap("Review of"));
    MUST(app.waitFor("Picture of the review, Frame", 20000));
    show("review");
    MUST(app.tap("Back"));
    MUST(app.tap("Players"));
    MUST(app.waitFor("Player Marked player"));
    show("players");
    if (roomy) {
        MUST(app.tap("Group lesson"));
        MUST(app.waitFor("End the group lesson"));
        show("group");
        MUST(app.tap("End the group lesson"));
        if (!app.waitFor("Player Marked player", 1500)) {
            MUST(app.tap("Players"));
            MUST(app.waitFor("Player Marked player"));
        }
    }
    MUST(app.tap("Player Marked player"));
    MUST(app.waitFor("Body card"));
    show("player, today");
    MUST(app.tap("Body card"));
    MUST(app.waitFor("Pain now: where?"));
    show("body card");
    MUST(app.tap("Back"));
    MUST(app.waitFor("Body card"));
    for (const char* tab : {"Lessons", "Swings", "Trend"}) {
        MUST(app.tap(tab));
        show(tab);
    }
    MUST(app.tap("Change the player's details"));
    show("player, details");
#undef MUST
    return {};
}

QStringList clippedTexts(const AppDriver& app) {
    QStringList bad;
    eachText(app, [&](QQuickItem* text, const QRectF& room) {
        const double width = text->property("contentWidth").toDouble();
        const double height = text->property("contentHeight").toDouble();
        const QRectF here = text->mapRectToScene(QRectF(0, 0, text->width(), text->height()));
        QStringList how;
        // A person's name may be as long as it likes; in the heading it is cut.
        const bool isName = text->property("text").toString() == QStringLiteral("Marked player");
        if (text->property("truncated").toBool() && !isName) {
            how << "cut short";
        }
        if (width > text->width() + 1 || height > text->height() + 1) {
            how << QString("%1 x %2 in a place of %3 x %4")
                       .arg(width)
                       .arg(height)
                       .arg(text->width())
                       .arg(text->height());
        }
        if (here.left() < room.left() - 1 || here.right() > room.right() + 1 || here.top() < room.top() - 1 ||
            here.bottom() > room.bottom() + 1) {
            how << QString("at %1..%2 | %3..%4 outside %5..%6 | %7..%8")
                       .arg(here.left())
                       .arg(here.right())
                       .arg(here.top())
                       .arg(here.bottom())
                       .arg(room.left())
                       .arg(room.right())
                       .arg(room.top())
                       .arg(room.bottom());
        }
        if (!how.isEmpty()) {
            bad << '"' + text->property("text").toString() + "\": " + how.join(", ");
        }
    });
    return bad;
}

QStringList untranslatedTexts(const AppDriver& app, const QStringList& data) {
    static const QRegularExpression kWord(QStringLiteral("[A-Za-z]{4}"));
    QStringList bad;
    eachText(app, [&](QQuickItem* item, const QRectF&) {
        const QString text = item->property("text").toString();
        const bool isData =
            std::any_of(data.begin(), data.end(), [&](const QString& d) { return text.startsWith(d); });
        if (!isData && kWord.match(text).hasMatch() && !text.contains(QChar(0x00f8))) {
            bad << text;
        }
    });
    return bad;
}

} // namespace uitest
