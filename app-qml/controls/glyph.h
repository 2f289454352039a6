// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace plumbmark::controls {

/// A small line drawing on a 24 x 24 grid, sharp at any size and in every scene graph (no shaders, no files).
class Glyph : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY nameChanged)
    Q_PROPERTY(QColor color READ color WRITE setColor NOTIFY colorChanged)
    /// Signs that point along the reading direction (back, forward, undo, redo) point the other way.
    Q_PROPERTY(bool rightToLeft READ rightToLeft WRITE setRightToLeft NOTIFY rightToLeftChanged)

  public:
    explicit Glyph(QQuickItem* parent = nullptr);
    [[nodiscard]] QString name() const { return name_; }
    [[nodiscard]] QColor color() const { return color_; }
    [[nodiscard]] bool rightToLeft() const { return rightToLeft_; }
    void setRightToLeft(bool rightToLeft);
    void setName(const QString& name);
    void setColor(const QColor& color);
    void paint(QPainter* painter) override;

  signals:
    void nameChanged();
    void colorChanged();
    void rightToLeftChanged();

  private:
    QString name_;
    QColor color_ = Qt::black;
    bool rightToLeft_ = false;
};

} // namespace plumbmark::controls
