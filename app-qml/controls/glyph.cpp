// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "controls/glyph.h"

#include <QPainter>
#include <QPainterPath>

namespace plumbmark::controls {

namespace {

struct Drawing {
    QPainterPath lines; ///< stroked
    QPainterPath areas; ///< filled
};

void polyline(QPainterPath& path, std::initializer_list<QPointF> points, bool close = false) {
    auto it = points.begin();
    path.moveTo(*it);
    for (++it; it != points.end(); ++it) {
        path.lineTo(*it);
    }
    if (close) {
        path.closeSubpath();
    }
}

Drawing drawing(const QString& name) {
    Drawing d;
    if (name == u"back") {
        polyline(d.lines, {{15, 5}, {8, 12}, {15, 19}});
    } else if (name == u"forward") {
        polyline(d.lines, {{9, 5}, {16, 12}, {9, 19}});
    } else if (name == u"down") {
        polyline(d.lines, {{5, 9}, {12, 16}, {19, 9}});
    } else if (name == u"up") {
        polyline(d.lines, {{5, 15}, {12, 8}, {19, 15}});
    } else if (name == u"step-back") {
        polyline(d.areas, {{17, 4}, {8, 12}, {17, 20}}, true);
        polyline(d.lines, {{5.5, 5}, {5.5, 19}});
    } else if (name == u"step-on") {
        polyline(d.areas, {{7, 4}, {16, 12}, {7, 20}}, true);
        polyline(d.lines, {{18.5, 5}, {18.5, 19}});
    } else if (name == u"play") {
        polyline(d.areas, {{7, 4}, {20, 12}, {7, 20}}, true);
    } else if (name == u"pause") {
        d.areas.addRoundedRect(QRectF(6, 4.5, 4, 15), 1, 1);
        d.areas.addRoundedRect(QRectF(14, 4.5, 4, 15), 1, 1);
    } else if (name == u"undo" || name == u"redo") {
        const bool undo = name == u"undo";
        const auto x = [undo](double v) { return undo ? v : 24 - v; };
        polyline(d.lines, {{x(9), 4.5}, {x(4), 9.5}, {x(9), 14.5}});
        d.lines.moveTo(x(4), 9.5);
        d.lines.lineTo(x(14), 9.5);
        d.lines.cubicTo(QPointF(x(22), 9.5), QPointF(x(22), 19.5), QPointF(x(14), 19.5));
        d.lines.lineTo(x(10), 19.5);
    } else if (name == u"plus") {
        polyline(d.lines, {{12, 4.5}, {12, 19.5}});
        polyline(d.lines, {{4.5, 12}, {19.5, 12}});
    } else if (name == u"close") {
        polyline(d.lines, {{5.5, 5.5}, {18.5, 18.5}});
        polyline(d.lines, {{18.5, 5.5}, {5.5, 18.5}});
    } else if (name == u"tick") {
        polyline(d.lines, {{4.5, 12.5}, {10, 18}, {19.5, 6.5}});
    } else if (name == u"sun") {
        d.lines.addEllipse(QPointF(12, 12), 4, 4);
        for (int i = 0; i < 8; ++i) {
            QTransform turn;
            turn.translate(12, 12);
            turn.rotate(45.0 * i);
            polyline(d.lines, {turn.map(QPointF(0, -7.2)), turn.map(QPointF(0, -9.8))});
        }
    } else if (name == u"moon") {
        d.lines.moveTo(19.5, 14.5);
        d.lines.cubicTo(QPointF(13, 17.5), QPointF(6.5, 11), QPointF(9.5, 4.5));
        d.lines.cubicTo(QPointF(2, 7.5), QPointF(3, 20), QPointF(12, 20.5));
        d.lines.cubicTo(QPointF(15.5, 20.5), QPointF(18.5, 18), QPointF(19.5, 14.5));
    } else if (name == u"whole") {
        polyline(d.lines, {{3.5, 9}, {3.5, 3.5}, {9, 3.5}});
        polyline(d.lines, {{15, 3.5}, {20.5, 3.5}, {20.5, 9}});
        polyline(d.lines, {{20.5, 15}, {20.5, 20.5}, {15, 20.5}});
        polyline(d.lines, {{9, 20.5}, {3.5, 20.5}, {3.5, 15}});
    } else if (name == u"near") {
        d.lines.addEllipse(QPointF(10, 10), 6.5, 6.5);
        polyline(d.lines, {{15, 15}, {20.5, 20.5}});
        polyline(d.lines, {{7, 10}, {13, 10}});
        polyline(d.lines, {{10, 7}, {10, 13}});
    } else if (name == u"left" || name == u"right") {
        const bool left = name == u"left";
        const auto x = [left](double v) { return left ? v : 24 - v; };
        polyline(d.lines, {{x(10), 6}, {x(4), 12}, {x(10), 18}});
        polyline(d.lines, {{x(4), 12}, {x(20), 12}});
    } else if (name == u"arrow-up" || name == u"arrow-down") {
        const bool up = name == u"arrow-up";
        const auto y = [up](double v) { return up ? v : 24 - v; };
        polyline(d.lines, {{6, y(10)}, {12, y(4)}, {18, y(10)}});
        polyline(d.lines, {{12, y(4)}, {12, y(20)}});
    } else if (name == u"clip") {
        d.lines.addRoundedRect(QRectF(3, 5.5, 18, 13), 2, 2);
        polyline(d.areas, {{10, 9}, {15.5, 12}, {10, 15}}, true);
    } else if (name == u"camera") {
        d.lines.addRoundedRect(QRectF(2.5, 7, 13, 10.5), 2, 2);
        polyline(d.lines, {{15.5, 11}, {21.5, 7.5}, {21.5, 17}, {15.5, 13.5}});
    } else if (name == u"folder") {
        polyline(d.lines, {{3, 18.5}, {3, 6}, {9.5, 6}, {11.5, 8.5}, {21, 8.5}, {21, 18.5}}, true);
    } else if (name == u"eye-off") {
        d.lines.moveTo(3, 12);
        d.lines.cubicTo(QPointF(7.5, 5.5), QPointF(16.5, 5.5), QPointF(21, 12));
        d.lines.cubicTo(QPointF(16.5, 18.5), QPointF(7.5, 18.5), QPointF(3, 12));
        polyline(d.lines, {{5, 19.5}, {19, 4.5}});
    } else if (name == u"hand-swap") {
        polyline(d.lines, {{7.5, 4.5}, {3.5, 8.5}, {7.5, 12.5}});
        polyline(d.lines, {{3.5, 8.5}, {20, 8.5}});
        polyline(d.lines, {{16.5, 11.5}, {20.5, 15.5}, {16.5, 19.5}});
        polyline(d.lines, {{20.5, 15.5}, {4, 15.5}});
    } else if (name == u"plumb") { // the programme's own sign: line and bob
        polyline(d.lines, {{12, 1.5}, {12, 12.5}});
        polyline(d.areas, {{7.5, 12}, {16.5, 12}, {12, 22.5}}, true);
    } else if (name == u"note") {
        d.lines.addEllipse(QPointF(12, 12), 9, 9);
        polyline(d.lines, {{12, 11}, {12, 16.8}});
        d.areas.addEllipse(QPointF(12, 7.4), 1.3, 1.3);
    } else if (name == u"body") {
        d.lines.addEllipse(QPointF(12, 4.8), 2.6, 2.6);
        polyline(d.lines, {{12, 9.5}, {12, 15}});
        polyline(d.lines, {{5.5, 10.5}, {18.5, 10.5}});
        polyline(d.lines, {{8, 21.5}, {12, 15}, {16, 21.5}});
    } else if (name == u"target") {
        d.lines.addEllipse(QPointF(12, 12), 5.5, 5.5);
        polyline(d.lines, {{12, 2.5}, {12, 9.5}});
        polyline(d.lines, {{12, 14.5}, {12, 21.5}});
        polyline(d.lines, {{2.5, 12}, {9.5, 12}});
        polyline(d.lines, {{14.5, 12}, {21.5, 12}});
    } else if (name == u"flag") {
        polyline(d.lines, {{6, 21.5}, {6, 3}});
        polyline(d.areas, {{6, 3.5}, {19.5, 8}, {6, 12.5}}, true);
    } else if (name == u"pencil") {
        polyline(d.lines, {{4, 20}, {5.2, 14.8}, {16, 4}, {20, 8}, {9.2, 18.8}}, true);
    } else if (name == u"ball") {
        d.areas.addEllipse(QPointF(5.5, 18.5), 3, 3);
        d.lines.moveTo(9, 15);
        d.lines.cubicTo(QPointF(11, 7), QPointF(14, 5), QPointF(20, 5));
    } else if (name == u"loop") {
        polyline(d.lines, {{4, 12}, {4, 7}, {18, 7}});
        polyline(d.lines, {{15, 3.5}, {18.5, 7}, {15, 10.5}});
        polyline(d.lines, {{20, 12}, {20, 17}, {6, 17}});
        polyline(d.lines, {{9, 13.5}, {5.5, 17}, {9, 20.5}});
    } else if (name == u"exchange") { // out of a tray and into it
        polyline(d.lines, {{4, 14}, {4, 20}, {20, 20}, {20, 14}});
        polyline(d.lines, {{8.5, 15}, {8.5, 4}});
        polyline(d.lines, {{5, 7.5}, {8.5, 4}, {12, 7.5}});
        polyline(d.lines, {{15.5, 4}, {15.5, 15}});
        polyline(d.lines, {{12, 11.5}, {15.5, 15}, {19, 11.5}});
    } else if (name == u"strip") {
        d.lines.addRoundedRect(QRectF(2.5, 6, 5.5, 12), 1, 1);
        d.lines.addRoundedRect(QRectF(9.25, 6, 5.5, 12), 1, 1);
        d.lines.addRoundedRect(QRectF(16, 6, 5.5, 12), 1, 1);
    } else if (name == u"person") {
        d.lines.addEllipse(QPointF(12, 7.5), 4, 4);
        d.lines.moveTo(4, 21);
        d.lines.cubicTo(QPointF(4.5, 12.5), QPointF(19.5, 12.5), QPointF(20, 21));
    } else if (name == u"people") {
        d.lines.addEllipse(QPointF(8.5, 8), 3.3, 3.3);
        d.lines.moveTo(2, 20);
        d.lines.cubicTo(QPointF(2.5, 12.5), QPointF(14.5, 12.5), QPointF(15, 20));
        d.lines.addEllipse(QPointF(16.5, 7), 2.8, 2.8);
        d.lines.moveTo(17, 12.8);
        d.lines.cubicTo(QPointF(20, 13), QPointF(21.8, 15.5), QPointF(22, 19));
    } else if (name == u"text-size") {
        polyline(d.lines, {{2.5, 18.5}, {6, 9}, {9.5, 18.5}});
        polyline(d.lines, {{3.8, 15}, {8.2, 15}});
        polyline(d.lines, {{11, 18.5}, {16.5, 4}, {22, 18.5}});
        polyline(d.lines, {{13, 13.5}, {20, 13.5}});
    } else if (name == u"settings") { // three sliders
        polyline(d.lines, {{3.5, 6}, {20.5, 6}});
        polyline(d.lines, {{3.5, 12}, {20.5, 12}});
        polyline(d.lines, {{3.5, 18}, {20.5, 18}});
        d.areas.addEllipse(QPointF(15.5, 6), 2.4, 2.4);
        d.areas.addEllipse(QPointF(8, 12), 2.4, 2.4);
        d.areas.addEllipse(QPointF(14, 18), 2.4, 2.4);
    } else if (name == u"bin") {
        polyline(d.lines, {{4, 6.5}, {20, 6.5}});
        polyline(d.lines, {{9, 6}, {9, 3.5}, {15, 3.5}, {15, 6}});
        polyline(d.lines, {{6, 7}, {7, 20.5}, {17, 20.5}, {18, 7}});
    } else if (name == u"record") {
        d.areas.addEllipse(QPointF(12, 12), 7, 7);
    } else if (name == u"stop") {
        d.areas.addRoundedRect(QRectF(5.5, 5.5, 13, 13), 1.5, 1.5);
    } else if (name == u"over") {
        d.lines.addRoundedRect(QRectF(3, 3, 12, 14), 1.5, 1.5);
        d.lines.addRoundedRect(QRectF(9, 7, 12, 14), 1.5, 1.5);
    } else if (name == u"beside") {
        d.lines.addRoundedRect(QRectF(2.5, 5, 8, 14), 1.5, 1.5);
        d.lines.addRoundedRect(QRectF(13.5, 5, 8, 14), 1.5, 1.5);
    } else if (name == u"star" || name == u"star-full") {
        QPainterPath& path = name == u"star" ? d.lines : d.areas;
        for (int i = 0; i < 10; ++i) {
            QTransform turn;
            turn.translate(12, 12.6);
            turn.rotate(36.0 * i);
            const QPointF corner = turn.map(QPointF(0, i % 2 == 0 ? -9.6 : -4.2));
            i == 0 ? path.moveTo(corner) : path.lineTo(corner);
        }
        path.closeSubpath();
    } else if (name.startsWith(u"flight ")) { // "flight START CURVE", each -1 (left), 0, 1 (right)
        const int start = name.section(u' ', 1, 1).toInt();
        const int curve = name.section(u' ', 2, 2).toInt();
        const QPointF end(12 + 5.2 * start + 4.4 * curve, 4);
        d.lines.moveTo(12, 21);
        d.lines.quadTo(QPointF(12 + 3.4 * start - 0.6 * curve, 10.5), end);
        d.areas.addEllipse(end, 2.3, 2.3);
    } else if (name == u"swing") {
        d.lines.moveTo(4, 5);
        d.lines.cubicTo(QPointF(2.5, 15), QPointF(9, 20), QPointF(20, 18.5));
        d.areas.addEllipse(QPointF(4.4, 5), 2, 2);
        d.areas.addEllipse(QPointF(20, 18.5), 2.2, 2.2);
    }
    return d;
}

bool pointsAlongTheText(const QString& name) {
    return name == u"back" || name == u"forward" || name == u"undo" || name == u"redo";
}

} // namespace

Glyph::Glyph(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
}

void Glyph::setName(const QString& name) {
    if (name_ != name) {
        name_ = name;
        update();
        emit nameChanged();
    }
}

void Glyph::setColor(const QColor& color) {
    if (color_ != color) {
        color_ = color;
        update();
        emit colorChanged();
    }
}

void Glyph::setRightToLeft(bool rightToLeft) {
    if (rightToLeft_ != rightToLeft) {
        rightToLeft_ = rightToLeft;
        update();
        emit rightToLeftChanged();
    }
}

void Glyph::paint(QPainter* painter) {
    const double side = std::min(width(), height());
    painter->translate((width() - side) / 2, (height() - side) / 2);
    painter->scale(side / 24, side / 24);
    if (rightToLeft_ && pointsAlongTheText(name_)) {
        painter->translate(24, 0);
        painter->scale(-1, 1);
    }
    const Drawing d = drawing(name_);
    painter->setPen(QPen(color_, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->setBrush(Qt::NoBrush);
    painter->drawPath(d.lines);
    painter->setPen(QPen(color_, 1.2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->setBrush(color_);
    painter->drawPath(d.areas);
}

} // namespace plumbmark::controls
