// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QImage>
#include <QQuickItem>
#include <QtQml/qqmlregistration.h>

namespace plumbmark::stage {

/// A small picture, shown whole in the middle of its item.
class StillItem : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QImage image READ image WRITE setImage NOTIFY imageChanged)

  public:
    explicit StillItem(QQuickItem* parent = nullptr);
    [[nodiscard]] QImage image() const { return image_; }
    void setImage(const QImage& image);

  signals:
    void imageChanged();

  protected:
    QSGNode* updatePaintNode(QSGNode* old, UpdatePaintNodeData* data) override;

  private:
    QImage image_;
    bool dirty_ = false;
};

} // namespace plumbmark::stage
