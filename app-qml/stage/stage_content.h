// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QImage>
#include <QObject>
#include <QRectF>
#include <QString>
#include <QtQml/qqmlregistration.h>
#include <optional>
#include <vector>

#include "club/club.h"
#include "marks/landmark.h"
#include "video/frame.h"

namespace plumbmark::stage {

/// One line over the picture, in picture coordinates.
struct StageLine {
    enum class Kind { body, plumb, shaft, level, before, ghost };
    base::Vec2 a;
    base::Vec2 b;
    Kind kind = Kind::body;
};

/// A drawing of the coach, where it lies in the frame on show.
struct StageDrawing {
    enum class Shape { plumb, line, angle, arrow, ellipse, freehand, text };
    Shape shape = Shape::line;
    std::vector<base::Vec2> points; ///< of a plumb line: foot and top
    QString text;
};

/// What stands on the stage: one frame and everything that belongs to exactly this frame.
struct StageContent {
    QImage picture; ///< upright, opaque
    int frame = -1;
    base::Seconds time;
    marks::FrameMarks marks;
    std::optional<club::ShaftSample> shaft;
    std::vector<StageLine> extraLines; ///< plumb lines and the like
    std::vector<StageDrawing> drawings;
    /// What a number is measured from. While it is shown, only its lines and the marks it needs are.
    std::vector<StageLine> construction;
    std::vector<marks::Landmark> needed;
    /// Where it would be at the near edge of the good range; drawn with the construction.
    std::vector<StageLine> ghost;
    std::optional<marks::Landmark> selected;
    QRectF playerBox; ///< the player through the whole swing; empty while unknown
};

/// Whoever fills the stage.
class StageSource : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the swing")

  public:
    using QObject::QObject;
    [[nodiscard]] virtual const StageContent& stageContent() const = 0;

  signals:
    void stageChanged();
};

/// The body's lines between joints, for marks that are there.
[[nodiscard]] std::vector<StageLine> bodyLines(const marks::FrameMarks& marks);

/// Marks that are always shown and can be grabbed; the finer ones (toes, ears, outline) join when magnified.
[[nodiscard]] bool isMainHandle(marks::Landmark landmark);

/// An opaque image of the frame for the screen; made on a worker, never while drawing.
[[nodiscard]] QImage toImage(const video::Frame& frame);

} // namespace plumbmark::stage
