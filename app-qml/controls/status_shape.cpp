// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "controls/status_shape.h"

#include <QPainter>
#include <QPainterPath>

namespace plumbmark::controls {

StatusShape::StatusShape(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
}

void StatusShape::setLevel(int level) {
    if (level_ != level) {
        level_ = level;
        update();
        emit changed();
    }
}

void StatusShape::setFill(const QColor& fill) {
    if (fill_ != fill) {
        fill_ = fill;
        update();
        emit changed();
    }
}

void StatusShape::setInk(const QColor& ink) {
    if (ink_ != ink) {
        ink_ = ink;
        update();
        emit changed();
    }
}

void StatusShape::setSign(const QColor& sign) {
    if (sign_ != sign) {
        sign_ = sign;
        update();
        emit changed();
    }
}

void StatusShape::paint(QPainter* painter) {
    const double side = std::min(width(), height());
    painter->translate((width() - side) / 2, (height() - side) / 2);
    painter->scale(side / 24, side / 24);
    const QPen outline(ink_, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    const QPen mark(sign_, 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    QPainterPath shape;
    switch (level_) {
    case 0: {
        shape.addEllipse(QPointF(12, 12), 10.5, 10.5);
        painter->fillPath(shape, fill_);
        painter->strokePath(shape, outline);
        painter->setPen(mark);
        painter->drawPolyline(QPolygonF({{6.8, 12.4}, {10.6, 16.2}, {17.2, 8.2}}));
        break;
    }
    case 1: {
        shape.addPolygon(QPolygonF({{12, 1.8}, {22.8, 21.6}, {1.2, 21.6}}));
        shape.closeSubpath();
        painter->fillPath(shape, fill_);
        painter->strokePath(shape, outline);
        painter->setPen(mark);
        painter->drawLine(QPointF(12, 9), QPointF(12, 14));
        painter->drawPoint(QPointF(12, 18.2));
        break;
    }
    case 2: {
        shape.addPolygon(QPolygonF({{12, 0.9}, {23.1, 12}, {12, 23.1}, {0.9, 12}}));
        shape.closeSubpath();
        painter->fillPath(shape, fill_);
        painter->strokePath(shape, outline);
        painter->setPen(mark);
        painter->drawLine(QPointF(8.6, 8.6), QPointF(15.4, 15.4));
        painter->drawLine(QPointF(15.4, 8.6), QPointF(8.6, 15.4));
        break;
    }
    default: {
        shape.addEllipse(QPointF(12, 12), 10.5, 10.5);
        QPen dashed = outline;
        dashed.setCapStyle(Qt::FlatCap);
        dashed.setDashPattern({2.1, 1.2});
        painter->strokePath(shape, dashed);
        QPainterPath question;
        question.moveTo(8.8, 9.2);
        question.cubicTo(QPointF(8.8, 4.6), QPointF(15.6, 4.9), QPointF(15.2, 9.2));
        question.cubicTo(QPointF(15, 11.6), QPointF(12, 11.4), QPointF(12, 14.2));
        painter->strokePath(question, QPen(ink_, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter->setPen(QPen(ink_, 2.8, Qt::SolidLine, Qt::RoundCap));
        painter->drawPoint(QPointF(12, 18.2));
        break;
    }
    }
}

} // namespace plumbmark::controls
