// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "stage/still_item.h"

#include <QQuickWindow>
#include <QSGImageNode>

namespace plumbmark::stage {

StillItem::StillItem(QQuickItem* parent) : QQuickItem(parent) {
    setFlag(ItemHasContents);
}

void StillItem::setImage(const QImage& image) {
    image_ = image;
    dirty_ = true;
    update();
    emit imageChanged();
}

QSGNode* StillItem::updatePaintNode(QSGNode* old, UpdatePaintNodeData* /*data*/) {
    auto* node = static_cast<QSGImageNode*>(old);
    if (image_.isNull() || width() <= 0 || height() <= 0) {
        delete node;
        dirty_ = true;
        return nullptr;
    }
    if (node == nullptr) {
        node = window()->createImageNode();
        node->setOwnsTexture(true);
        dirty_ = true;
    }
    if (dirty_) {
        node->setTexture(window()->createTextureFromImage(image_, QQuickWindow::TextureIsOpaque));
        node->setFiltering(QSGTexture::Linear);
        dirty_ = false;
    }
    const double scale = std::max(width() / image_.width(), height() / image_.height());
    const QSizeF shown(width() / scale, height() / scale);
    node->setSourceRect(QRectF(QPointF((image_.width() - shown.width()) / 2, (image_.height() - shown.height()) / 2), shown));
    node->setRect(boundingRect());
    return node;
}

} // namespace plumbmark::stage
