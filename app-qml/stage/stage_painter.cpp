// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "stage/stage_painter.h"

#include <QPainterPath>
#include <cmath>

namespace plumbmark::stage {

namespace {

using marks::Landmark;

const QColor kDarkEdge(0, 0, 0, 230);
const QColor kBody(255, 255, 255);
const QColor kShaft(240, 228, 66); // pale yellow: lightest of the safe set, on a dark edge 15.9 : 1
const QColor kPlumb(86, 180, 233); // sky blue: on a dark edge 9.1 : 1
const QColor kSelected(240, 228, 66);

void edgedLine(QPainter& painter, QPointF a, QPointF b, const QColor& core, double width, double edge,
               Qt::PenStyle style = Qt::SolidLine) {
    painter.setPen(QPen(kDarkEdge, width + 2 * edge, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(a, b);
    painter.setPen(QPen(core, width, style, style == Qt::SolidLine ? Qt::RoundCap : Qt::FlatCap));
    painter.drawLine(a, b);
}

bool isLead(Landmark l) {
    return marks::landmarkName(l).starts_with("lead_");
}
bool isTrail(Landmark l) {
    return marks::landmarkName(l).starts_with("trail_");
}

bool isShown(Landmark l, const StageContent& content, double zoom) {
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
        for (const StageLine& line : content.extraLines) {
            const bool plumb = line.kind == StageLine::Kind::plumb;
            QPen dashes(kPlumb);
            edgedLine(painter, view.toItem(line.a), view.toItem(line.b), plumb ? kPlumb : kBody, core, edge,
                      plumb ? Qt::DashLine : Qt::SolidLine);
        }
        for (const StageLine& line : bodyLines(content.marks)) {
            edgedLine(painter, view.toItem(line.a), view.toItem(line.b), kBody, core * 0.8, edge * 0.8);
        }
        if (content.shaft && content.shaft->head) {
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
    if (loupe) {
        paintLoupe(painter, content, view, mm, *loupe);
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
