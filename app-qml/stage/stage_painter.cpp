// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "stage/stage_painter.h"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace plumbmark::stage {

namespace {

using marks::Landmark;

const QColor kDarkEdge(0, 0, 0, 230);
const QColor kBody(255, 255, 255);
const QColor kShaft(240, 228, 66); // pale yellow: lightest of the safe set, on a dark edge 15.9 : 1
const QColor kPlumb(86, 180, 233); // sky blue: on a dark edge 9.1 : 1
const QColor kSelected(240, 228, 66);
const QColor kLevel(255, 178, 102); // light orange: on a dark edge 11.7 : 1
const QColor kGhost(120, 230, 190); // light bluish green: on a dark edge 13.6 : 1

void edgedLine(QPainter& painter, QPointF a, QPointF b, const QColor& core, double width, double edge,
               Qt::PenStyle style = Qt::SolidLine) {
    painter.setPen(QPen(kDarkEdge, width + 2 * edge, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(a, b);
    painter.setPen(QPen(core, width, style, style == Qt::SolidLine ? Qt::RoundCap : Qt::FlatCap));
    painter.drawLine(a, b);
}

double angleBetween(QPointF a, QPointF corner, QPointF b) {
    const QLineF one(corner, a), two(corner, b);
    const double angle = std::abs(one.angleTo(two));
    return angle > 180 ? 360 - angle : angle;
}

void edgedWords(QPainter& painter, QPointF at, const QString& words, double mm, bool centred = false) {
    QFont font = painter.font();
    font.setPixelSize(std::max(12, qRound(4.2 * mm)));
    font.setBold(true);
    QPainterPath path;
    const double width = QFontMetricsF(font).horizontalAdvance(words);
    path.addText(at - QPointF(centred ? width / 2 : 0, 0), font, words);
    painter.strokePath(path, QPen(kDarkEdge, 1.0 * mm, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.fillPath(path, kBody);
}

/// A path with the same dark edge and light core as the lines.
void edgedPath(QPainter& painter, const QPainterPath& path, const QColor& core, double mm,
               Qt::PenStyle style = Qt::SolidLine) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(kDarkEdge, 1.0 * mm, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(path);
    painter.setPen(
        QPen(core, 0.5 * mm, style, style == Qt::SolidLine ? Qt::RoundCap : Qt::FlatCap, Qt::RoundJoin));
    painter.drawPath(path);
}

bool isLead(Landmark l) {
    return marks::landmarkName(l).starts_with("lead_");
}
bool isTrail(Landmark l) {
    return marks::landmarkName(l).starts_with("trail_");
}

bool isShown(Landmark l, const StageContent& content, double zoom) {
    if (!content.construction.empty()) {
        return content.selected == l ||
               std::find(content.needed.begin(), content.needed.end(), l) != content.needed.end();
    }
    return isMainHandle(l) || zoom >= kFineHandlesFromZoom || content.selected == l;
}

/// Trail side a square on its corner, all others a ring. Filled = placed by hand.
void paintHandle(QPainter& painter, QPointF at, Landmark landmark, const marks::Mark& mark, bool selected,
                 double mm) {
    const double r = (selected ? 1.7 : isMainHandle(landmark) ? 1.05 : 0.7) * mm;
    QPainterPath shape;
    if (isTrail(landmark)) {
        const double k = r * 1.2;
        shape.addPolygon(
            QPolygonF({at + QPointF(0, -k), at + QPointF(k, 0), at + QPointF(0, k), at + QPointF(-k, 0)}));
        shape.closeSubpath();
    } else {
        shape.addEllipse(at, r, r);
    }
    const QColor colour = selected ? kSelected : kBody;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(kDarkEdge, 0.45 * mm + 0.5 * mm, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(shape);
    if (mark.origin == base::Origin::hand) {
        painter.fillPath(shape, colour);
    } else if (isLead(landmark) || isTrail(landmark)) {
        painter.fillPath(shape, QColor(0, 0, 0, 70));
    }
    // Between evidence: a thinner ring.
    const double width = mark.origin == base::Origin::interpolated ? 0.25 * mm : 0.45 * mm;
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    painter.drawPath(shape);
    if (selected) { // the exact place stays visible
        painter.setPen(Qt::NoPen);
        painter.setBrush(kDarkEdge);
        painter.drawEllipse(at, 0.42 * mm, 0.42 * mm);
        painter.setBrush(Qt::white);
        painter.drawEllipse(at, 0.2 * mm, 0.2 * mm);
    }
}

void paintLoupe(QPainter& painter, const StageContent& content, const StageView& view, double mm,
                const Loupe& loupe) {
    painter.save();
    QPainterPath disc;
    disc.addEllipse(loupe.centre, loupe.radius, loupe.radius);
    painter.setClipPath(disc);
    painter.fillRect(disc.boundingRect(), Qt::black);
    const double scale = view.scale() * loupe.magnification;
    const double reach = loupe.radius / scale;
    const QRectF source(loupe.at.x - reach, loupe.at.y - reach, 2 * reach, 2 * reach);
    const QRectF target(loupe.centre.x() - loupe.radius, loupe.centre.y() - loupe.radius, 2 * loupe.radius,
                        2 * loupe.radius);
    painter.setRenderHint(QPainter::SmoothPixmapTransform, false);
    painter.drawImage(target, content.picture, source);
    painter.setClipping(false);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Qt::black, 1.1 * mm));
    painter.drawEllipse(loupe.centre, loupe.radius, loupe.radius);
    painter.setPen(QPen(Qt::white, 0.6 * mm));
    painter.drawEllipse(loupe.centre, loupe.radius, loupe.radius);
    const double inner = 0.9 * mm;
    const double outer = loupe.radius - 1.2 * mm;
    for (const QPointF d : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)}) {
        edgedLine(painter, loupe.centre + d * inner, loupe.centre + d * outer, kSelected, 0.3 * mm, 0.2 * mm);
    }
    painter.restore();
}

} // namespace

void paintOverlay(QPainter& painter, const StageContent& content, const StageView& view, double pixelsPerMm,
                  bool showMarks, const std::optional<Loupe>& loupe) {
    if (content.frame < 0 || view.scale() <= 0) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    const double mm = pixelsPerMm;
    const double core = 0.5 * mm;
    const double edge = 0.25 * mm;
    if (showMarks) {
        const bool building = !content.construction.empty();
        for (const StageLine& line : building ? content.construction : content.extraLines) {
            paintLine(painter, view.toItem(line.a), view.toItem(line.b), line.kind, mm);
        }
        for (const StageLine& line : content.ghost) {
            paintLine(painter, view.toItem(line.a), view.toItem(line.b), StageLine::Kind::ghost, mm);
        }
        for (const StageLine& line : building ? std::vector<StageLine>() : bodyLines(content.marks)) {
            edgedLine(painter, view.toItem(line.a), view.toItem(line.b), kBody, core * 0.8, edge * 0.8);
        }
        if (!building && content.shaft && content.shaft->head) {
            const base::Vec2 from = content.shaft->butt.value_or(content.shaft->through);
            edgedLine(painter, view.toItem(from), view.toItem(*content.shaft->head), kShaft, core, edge);
        }
        for (std::size_t i = 0; i < marks::kLandmarkCount; ++i) {
            const auto landmark = static_cast<Landmark>(i);
            const auto& mark = content.marks[landmark];
            if (mark && content.selected != landmark && isShown(landmark, content, view.zoom())) {
                paintHandle(painter, view.toItem(mark->at), landmark, *mark, false, mm);
            }
        }
        if (content.selected && content.marks[*content.selected]) {
            const marks::Mark& mark = *content.marks[*content.selected];
            paintHandle(painter, view.toItem(mark.at), *content.selected, mark, true, mm);
        }
    }
    for (const StageDrawing& drawing : content.drawings) {
        paintDrawing(painter, drawing, view, mm);
    }
    if (loupe) {
        paintLoupe(painter, content, view, mm, *loupe);
    }
}

void paintLine(QPainter& painter, QPointF a, QPointF b, StageLine::Kind kind, double mm) {
    const double core = 0.5 * mm, edge = 0.25 * mm;
    switch (kind) {
    case StageLine::Kind::plumb:
        edgedLine(painter, a, b, kPlumb, core, edge, Qt::DashLine);
        break;
    case StageLine::Kind::shaft:
        edgedLine(painter, a, b, kShaft, core, edge);
        break;
    case StageLine::Kind::level:
        edgedLine(painter, a, b, kLevel, core, edge);
        break;
    case StageLine::Kind::ghost:
        edgedLine(painter, a, b, kGhost, core * 1.3, edge * 1.3, Qt::DotLine);
        painter.setPen(Qt::NoPen);
        painter.setBrush(kGhost);
        for (const QPointF end : {a, b}) {
            painter.drawEllipse(end, 0.8 * mm, 0.8 * mm);
        }
        painter.setBrush(Qt::NoBrush);
        break;
    case StageLine::Kind::before:
        edgedLine(painter, a, b, kBody, core * 0.8, edge, Qt::DashLine);
        break;
    case StageLine::Kind::body:
        edgedLine(painter, a, b, kBody, core, edge);
        break;
    }
}

void paintDrawing(QPainter& painter, const StageDrawing& drawing, const StageView& view, double mm) {
    std::vector<QPointF> p;
    for (const base::Vec2 point : drawing.points) {
        p.push_back(view.toItem(point));
    }
    if (p.empty()) {
        return;
    }
    using Shape = StageDrawing::Shape;
    QPainterPath path;
    switch (drawing.shape) {
    case Shape::plumb:
        if (p.size() > 1) {
            paintLine(painter, p[0], p[1], StageLine::Kind::plumb, mm);
            QPainterPath bob;
            bob.addPolygon(
                QPolygonF({p[0] + QPointF(-1.1, -2.2) * mm, p[0] + QPointF(1.1, -2.2) * mm, p[0]}));
            bob.closeSubpath();
            painter.strokePath(bob, QPen(kDarkEdge, 0.5 * mm));
            painter.fillPath(bob, kPlumb);
        }
        break;
    case Shape::line:
    case Shape::arrow:
        if (p.size() > 1) {
            path.moveTo(p[0]);
            path.lineTo(p[1]);
            const QPointF along = p[1] - p[0];
            const double length = std::hypot(along.x(), along.y());
            if (drawing.shape == Shape::arrow && length > 0) {
                const QPointF back = along / length * std::min(3.6 * mm, length);
                const QPointF side(-back.y() * 0.6, back.x() * 0.6);
                path.moveTo(p[1] - back + side);
                path.lineTo(p[1]);
                path.lineTo(p[1] - back - side);
            }
            edgedPath(painter, path, kShaft, mm);
        }
        break;
    case Shape::angle:
        path.moveTo(p[0]);
        for (std::size_t i = 1; i < p.size(); ++i) {
            path.lineTo(p[i]);
        }
        edgedPath(painter, path, kShaft, mm);
        if (p.size() == 3) {
            edgedWords(painter, p[1] + QPointF(1.6, -1.6) * mm,
                       QLocale().toString(qRound(angleBetween(p[0], p[1], p[2]))) + QChar(0x00b0), mm);
        }
        break;
    case Shape::ellipse:
        if (p.size() > 1) {
            path.addEllipse(QRectF(p[0], p[1]).normalized());
            edgedPath(painter, path, kShaft, mm);
        }
        break;
    case Shape::freehand:
        path.moveTo(p[0]);
        for (std::size_t i = 1; i < p.size(); ++i) {
            path.lineTo(p[i]);
        }
        edgedPath(painter, path, kShaft, mm);
        break;
    case Shape::text:
        edgedWords(painter, p[0], drawing.text, mm, true);
        break;
    }
}

std::optional<Landmark> handleAt(const StageContent& content, const StageView& view, QPointF at,
                                 double radius) {
    std::optional<Landmark> best;
    double bestDistance = radius;
    for (std::size_t i = 0; i < marks::kLandmarkCount; ++i) {
        const auto landmark = static_cast<Landmark>(i);
        const auto& mark = content.marks[landmark];
        if (!mark || !isShown(landmark, content, view.zoom())) {
            continue;
        }
        const QPointF d = view.toItem(mark->at) - at;
        double distance = std::hypot(d.x(), d.y());
        if (content.selected == landmark) {
            distance /= 2; // the one being worked on is easier to catch
        }
        if (distance <= bestDistance) {
            best = landmark;
            bestDistance = distance;
        }
    }
    return best;
}

} // namespace plumbmark::stage
