// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace plumbmark::controls {

/// A status told by outline, fill and sign, so that it is read in grey and by every kind of colour vision:
/// level 0 a full disc with a tick, 1 a half-filled triangle with a bar, 2 a full square with a cross bar
/// (corner up), 3 an empty ring with a question mark.
class StatusShape : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int level READ level WRITE setLevel NOTIFY changed)
    Q_PROPERTY(QColor fill READ fill WRITE setFill NOTIFY changed)
    Q_PROPERTY(QColor ink READ ink WRITE setInk NOTIFY changed)
    Q_PROPERTY(QColor sign READ sign WRITE setSign NOTIFY changed)

  public:
    explicit StatusShape(QQuickItem* parent = nullptr);
    [[nodiscard]] int level() const { return level_; }
    [[nodiscard]] QColor fill() const { return fill_; }
    [[nodiscard]] QColor ink() const { return ink_; }
    [[nodiscard]] QColor sign() const { return sign_; }
    void setLevel(int level);
    void setFill(const QColor& fill);
    void setInk(const QColor& ink);
    void setSign(const QColor& sign);
    void paint(QPainter* painter) override;

  signals:
    void changed();

  private:
    int level_ = 3;
    QColor fill_ = Qt::white;
    QColor ink_ = Qt::black;  ///< outline, against the page
    QColor sign_ = Qt::black; ///< the mark inside, against the fill
};

} // namespace plumbmark::controls
