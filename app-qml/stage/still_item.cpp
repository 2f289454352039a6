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
    const double scale = std::min(width() / image_.width(), height() / image_.height());
    const QSizeF shown(image_.width() * scale, image_.height() * scale);
    node->setSourceRect(QRectF(QPointF(0, 0), image_.size()));
    node->setRect(QRectF(QPointF((width() - shown.width()) / 2, (height() - shown.height()) / 2), shown));
    return node;
}

} // namespace plumbmark::stage
