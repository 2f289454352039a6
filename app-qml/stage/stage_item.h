// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QElapsedTimer>
#include <QPointer>
#include <QQuickItem>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>
#include <map>
#include <optional>
#include <vector>

#include "stage/stage_content.h"
#include "stage/stage_painter.h"
#include "stage/stage_view.h"

namespace plumbmark::stage {

class StageOverlay;

/// The picture with its marks, and the fingers on it.
///
/// One finger: tap a mark to take it up (a tap never moves it), drag a mark to move it *relative to the
/// grab*, swipe beside the marks to run through the frames (magnified: to move the picture). A second finger,
/// Escape or the system's cancel give a dragged mark back as it was; two fingers magnify and move.
class StageItem : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(plumbmark::stage::StageSource* source READ source WRITE setSource NOTIFY sourceChanged)
    Q_PROPERTY(double pixelsPerMm MEMBER pixelsPerMm_ WRITE setPixelsPerMm NOTIFY pixelsPerMmChanged)
    Q_PROPERTY(bool showMarks READ showMarks WRITE setShowMarks NOTIFY showMarksChanged)
    Q_PROPERTY(bool editable MEMBER editable_ NOTIFY editableChanged)
    /// The next tap tells where a point is; marks do not catch it.
    Q_PROPERTY(bool placing MEMBER placing_ NOTIFY placingChanged)
    /// "", or the shape a finger draws: plumb, line, angle, arrow, ellipse, freehand, text.
    Q_PROPERTY(QString drawShape READ drawShape WRITE setDrawShape NOTIFY drawShapeChanged)
    Q_PROPERTY(bool magnified READ magnified NOTIFY viewChanged)
    Q_PROPERTY(bool dragging READ dragging NOTIFY draggingChanged)
    Q_PROPERTY(QRectF shownPart READ shownPart NOTIFY viewChanged)
    /// The picture's top left and the scale, for whoever must find a picture point on the screen.
    Q_PROPERTY(QRectF pictureRect READ pictureRect NOTIFY viewChanged)

  public:
    explicit StageItem(QQuickItem* parent = nullptr);
    ~StageItem() override;

    [[nodiscard]] StageSource* source() const { return source_; }
    void setSource(StageSource* source);
    void setPixelsPerMm(double pixelsPerMm);
    [[nodiscard]] bool showMarks() const { return showMarks_; }
    void setShowMarks(bool show);
    [[nodiscard]] bool magnified() const { return view_.zoom() > 1.001; }
    [[nodiscard]] bool dragging() const { return gesture_ == Gesture::mark; }
    [[nodiscard]] QRectF pictureRect() const { return view_.pictureRect(); }
    [[nodiscard]] const StageView& view() const { return view_; }

    [[nodiscard]] QString drawShape() const { return drawShape_; }
    void setDrawShape(const QString& shape);

    Q_INVOKABLE void showWhole();
    Q_INVOKABLE void showPlayer();
    /// A part of the picture (picture px) as large as fits.
    Q_INVOKABLE void showPart(const QRectF& part);
    /// What of the picture is to be seen, picture px; empty while the whole is.
    [[nodiscard]] QRectF shownPart() const;
    /// Gives a dragged mark back; false when nothing was dragged.
    Q_INVOKABLE bool cancelGesture();

    void paintOver(QPainter& painter) const;

  signals:
    void sourceChanged();
    void pixelsPerMmChanged();
    void showMarksChanged();
    void editableChanged();
    void viewChanged();
    void draggingChanged();

    void markTapped(int landmark);
    void placingChanged();
    void drawShapeChanged();
    void emptyTapped(double x, double y); ///< picture px
    /// A drawing is finished: its points, x and y in turn, picture px.
    void drawn(const QVariantList& points);
    void markGrabbed(int landmark);
    void markMoved(double x, double y); ///< where the grabbed mark now is, picture px
    void markReleased();
    void markGivenBack();
    void scrubbed(int frames); ///< signed number of frames to go on

  protected:
    QSGNode* updatePaintNode(QSGNode* old, UpdatePaintNodeData* data) override;
    void geometryChange(const QRectF& now, const QRectF& before) override;
    void touchEvent(QTouchEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseUngrabEvent() override;
    void touchUngrabEvent() override;
    void wheelEvent(QWheelEvent* event) override;

  private:
    enum class Gesture { none, pressed, mark, draw, swipe, pan, pinch, spent };

    void press(QPointF at);
    void moveTo(QPointF at);
    void release();
    void abandon();
    void setGesture(Gesture gesture);
    void takeContent();
    void viewMoved();
    void placeLoupe(QPointF finger);
    void finishDrawing(QPointF at);
    [[nodiscard]] StageDrawing draft() const;

    QPointer<StageSource> source_;
    StageOverlay* overlay_ = nullptr;
    StageView view_;
    double pixelsPerMm_ = 3.78;
    bool showMarks_ = true;
    bool editable_ = true;
    bool pictureDirty_ = false;
    bool playerShown_ = false; ///< keep the player in view when the item's size changes
    bool firstPicture_ = true;
    QRectF playerBox_;
    qint64 pictureKey_ = 0;

    Gesture gesture_ = Gesture::none;
    bool placing_ = false;
    QString drawShape_;
    std::vector<base::Vec2> draft_; ///< of the drawing under the finger
    QPointF pressedAt_;
    QPointF lastAt_;
    std::optional<marks::Landmark> candidate_;
    base::Vec2 markAt_;
    double swipeRest_ = 0.0;
    std::optional<Loupe> loupe_;
    bool loupeOnRight_ = false;
    std::map<int, QPointF> fingers_;
    QElapsedTimer sinceMove_;
};

} // namespace plumbmark::stage
