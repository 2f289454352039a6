// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPainter>
#include <optional>

#include "stage/stage_content.h"
#include "stage/stage_view.h"

namespace plumbmark::stage {

/// A magnified look at the place a finger hides.
struct Loupe {
    QPointF centre;             ///< item coordinates
    double radius = 0.0;        ///< logical px
    double magnification = 4.0; ///< against the view's own scale
    base::Vec2 at;              ///< picture point under the cross-hair
};

/// The only routine that draws over pictures. Every line has a light core and a dark edge, so that it stands
/// out from grass, sky and trousers alike; callers cannot pick a bare colour.
void paintOverlay(QPainter& painter, const StageContent& content, const StageView& view, double pixelsPerMm,
                  bool showMarks, const std::optional<Loupe>& loupe);

/// One drawing with dark edge and light core.
void paintDrawing(QPainter& painter, const StageDrawing& drawing, const StageView& view, double pixelsPerMm);

/// A line as the overlay draws it, between two points of the device: for pictures that are no stage.
void paintLine(QPainter& painter, QPointF a, QPointF b, StageLine::Kind kind, double pixelsPerMm);

/// The nearest handle not farther than `radius` (logical px) from `at`; the selected one also within twice
/// that.
[[nodiscard]] std::optional<marks::Landmark> handleAt(const StageContent& content, const StageView& view,
                                                      QPointF at, double radius);

/// From which zoom on the finer handles are shown and can be grabbed.
inline constexpr double kFineHandlesFromZoom = 2.5;

} // namespace plumbmark::stage
