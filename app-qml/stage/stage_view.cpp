// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "stage/stage_view.h"

#include <algorithm>
#include <cmath>

namespace plumbmark::stage {

void StageView::setItemSize(QSizeF size) {
    item_ = size;
    clamp();
}

void StageView::setPictureSize(QSizeF size) {
    if (picture_ != size) {
        picture_ = size;
        showWhole();
    }
}

double StageView::scale() const {
    if (item_.isEmpty() || picture_.isEmpty()) {
        return 0.0;
    }
    return zoom_ * std::min(item_.width() / picture_.width(), item_.height() / picture_.height());
}

QPointF StageView::toItem(base::Vec2 p) const {
    const double s = scale();
    return {item_.width() / 2 + (p.x - centre_.x()) * s, item_.height() / 2 + (p.y - centre_.y()) * s};
}

base::Vec2 StageView::toPicture(QPointF p) const {
    const double s = scale();
    if (s <= 0) {
        return {};
    }
    return {centre_.x() + (p.x() - item_.width() / 2) / s, centre_.y() + (p.y() - item_.height() / 2) / s};
}

QRectF StageView::pictureRect() const {
    return {toItem({0, 0}), toItem({picture_.width(), picture_.height()})};
}

void StageView::showWhole() {
    zoom_ = 1.0;
    centre_ = {picture_.width() / 2, picture_.height() / 2};
}

void StageView::showBox(QRectF box) {
    showWhole();
    const double fit = scale();
    if (fit <= 0 || box.isEmpty()) {
        return;
    }
    zoom_ = std::min(item_.width() / box.width(), item_.height() / box.height()) / fit;
    centre_ = box.center();
    clamp();
}

void StageView::pinch(QPointF fromA, QPointF fromB, QPointF toA, QPointF toB) {
    const QPointF from = fromB - fromA;
    const QPointF to = toB - toA;
    const double before = std::hypot(from.x(), from.y());
    const double after = std::hypot(to.x(), to.y());
    if (before > 1 && after > 1) {
        zoomAbout((fromA + fromB) / 2, after / before);
    }
    panBy((toA + toB) / 2 - (fromA + fromB) / 2);
}

void StageView::zoomAbout(QPointF at, double factor) {
    const base::Vec2 fixed = toPicture(at);
    zoom_ = std::clamp(zoom_ * factor, 1.0, kMaxZoom);
    const double s = scale();
    if (s > 0) {
        centre_ = {fixed.x - (at.x() - item_.width() / 2) / s, fixed.y - (at.y() - item_.height() / 2) / s};
    }
    clamp();
}

void StageView::panBy(QPointF delta) {
    const double s = scale();
    if (s > 0) {
        centre_ -= delta / s;
    }
    clamp();
}

void StageView::clamp() {
    zoom_ = std::clamp(zoom_, 1.0, kMaxZoom);
    const double s = scale();
    if (s <= 0) {
        return;
    }
    // The picture covers the item where it is large enough, and stands in the middle where it is not.
    const auto keep = [s](double centre, double picture, double item) {
        const double half = item / s / 2;
        return 2 * half >= picture ? picture / 2 : std::clamp(centre, half, picture - half);
    };
    centre_ = {keep(centre_.x(), picture_.width(), item_.width()),
               keep(centre_.y(), picture_.height(), item_.height())};
}

} // namespace plumbmark::stage
