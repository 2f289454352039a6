// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>

#include "base/geometry.h"

namespace plumbmark::stage {

/// How the upright picture lies in the item: fitted whole at zoom 1, then magnified about `centre`.
/// Item coordinates are logical pixels, picture coordinates those of base::Vec2.
class StageView {
  public:
    static constexpr double kMaxZoom = 12.0;

    void setItemSize(QSizeF size);
    void setPictureSize(QSizeF size);
    [[nodiscard]] QSizeF itemSize() const { return item_; }
    [[nodiscard]] QSizeF pictureSize() const { return picture_; }
    [[nodiscard]] double zoom() const { return zoom_; }
    /// Logical pixels per picture pixel; 0 while either size is unknown.
    [[nodiscard]] double scale() const;

    [[nodiscard]] QPointF toItem(base::Vec2 inPicture) const;
    [[nodiscard]] base::Vec2 toPicture(QPointF inItem) const;
    /// Where the whole picture lies, in item coordinates.
    [[nodiscard]] QRectF pictureRect() const;

    void showWhole();
    /// Shows `box` (picture coordinates) as large as fits.
    void showBox(QRectF box);
    /// Two fingers: what lay under `fromA`, `fromB` now lies under `toA`, `toB` (without turning).
    void pinch(QPointF fromA, QPointF fromB, QPointF toA, QPointF toB);
    void zoomAbout(QPointF inItem, double factor);
    void panBy(QPointF inItem);

  private:
    void clamp();
    QSizeF item_;
    QSizeF picture_;
    double zoom_ = 1.0;
    QPointF centre_; ///< picture point in the middle of the item
};

} // namespace plumbmark::stage
