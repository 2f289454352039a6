// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "stage/stage_item.h"

#include <QPainter>
#include <QQuickPaintedItem>
#include <QQuickWindow>
#include <QSGImageNode>
#include <cmath>

namespace plumbmark::stage {

namespace {
// Millimetres on the glass.
constexpr double kCatchRadius = 4.8; // a 9.6 mm target; the mark in hand catches within 9.6 mm around
constexpr double kDragStart = 1.0;   // less than this is a tap
constexpr double kMillimetresPerFrame = 1.6;
constexpr double kLoupeRadius = 11.0;
// Slow fingers mean care: at or under the first speed a mark moves half as far as the finger, from the second
// on as far.
constexpr double kSlow = 4.0; // mm/s
constexpr double kNormal = 14.0;
} // namespace

class StageOverlay : public QQuickPaintedItem {
  public:
    explicit StageOverlay(StageItem* stage) : QQuickPaintedItem(stage), stage_(stage) {}
    void paint(QPainter* painter) override { stage_->paintOver(*painter); }

  private:
    StageItem* stage_;
};

StageItem::StageItem(QQuickItem* parent) : QQuickItem(parent), overlay_(new StageOverlay(this)) {
    setFlag(ItemHasContents);
    setClip(true);
    setAcceptTouchEvents(true);
    setAcceptedMouseButtons(Qt::LeftButton);
}

StageItem::~StageItem() = default;

void StageItem::setSource(StageSource* source) {
    if (source_ == source) {
        return;
    }
    if (source_) {
        source_->disconnect(this);
    }
    source_ = source;
    firstPicture_ = true;
    if (source_) {
        connect(source_, &StageSource::stageChanged, this, &StageItem::takeContent);
        takeContent();
    }
    emit sourceChanged();
}

void StageItem::setPixelsPerMm(double pixelsPerMm) {
    if (pixelsPerMm_ != pixelsPerMm) {
        pixelsPerMm_ = pixelsPerMm;
        overlay_->update();
        emit pixelsPerMmChanged();
    }
}

void StageItem::setShowMarks(bool show) {
    if (showMarks_ != show) {
        showMarks_ = show;
        overlay_->update();
        emit showMarksChanged();
    }
}

void StageItem::takeContent() {
    const StageContent& content = source_->stageContent();
    if (!content.picture.isNull()) {
        view_.setPictureSize(content.picture.size());
        if (pictureKey_ != content.picture.cacheKey()) {
            pictureKey_ = content.picture.cacheKey();
            pictureDirty_ = true;
            update();
        }
        if (firstPicture_ && width() > 0) {
            firstPicture_ = false;
            showPlayer();
        } else if (playerShown_ && playerBox_ != content.playerBox && gesture_ == Gesture::none) {
            showPlayer(); // the player was found after the first pictures
        }
    }
    if (loupe_) {
        loupe_->at = markAt_;
    }
    overlay_->update();
}

void StageItem::showWhole() {
    playerShown_ = false;
    view_.showWhole();
    viewMoved();
}

void StageItem::showPlayer() {
    playerShown_ = true;
    playerBox_ = source_ ? source_->stageContent().playerBox : QRectF();
    if (source_ && !source_->stageContent().playerBox.isEmpty()) {
        view_.showBox(source_->stageContent().playerBox);
    } else {
        view_.showWhole();
    }
    viewMoved();
}

void StageItem::showPart(const QRectF& part) {
    playerShown_ = false;
    view_.showBox(part);
    viewMoved();
}

QRectF StageItem::shownPart() const {
    if (!magnified()) {
        return {};
    }
    const base::Vec2 a = view_.toPicture({0, 0}), b = view_.toPicture({width(), height()});
    return QRectF(QPointF(a.x, a.y), QPointF(b.x, b.y))
        .intersected(QRectF(QPointF(0, 0), view_.pictureSize()));
}

void StageItem::viewMoved() {
    update();
    overlay_->update();
    emit viewChanged();
}

void StageItem::geometryChange(const QRectF& now, const QRectF& before) {
    QQuickItem::geometryChange(now, before);
    overlay_->setSize(now.size());
    if (dragging() && now.size() != before.size()) {
        abandon(); // the device was turned: the picture is no longer where the finger took hold of it
    }
    view_.setItemSize(now.size());
    if (playerShown_) {
        showPlayer();
    } else {
        viewMoved();
    }
    if (source_ && firstPicture_) {
        takeContent();
    }
}

void StageItem::paintOver(QPainter& painter) const {
    if (source_ && draft_.size() == 1) { // the first tap of an angle, or a finger just down
        const QPointF at = view_.toItem(draft_.front());
        paintLine(painter, at - QPointF(pixelsPerMm_, 0), at + QPointF(pixelsPerMm_, 0),
                  StageLine::Kind::shaft, pixelsPerMm_);
    }
    if (source_) {
        paintOverlay(painter, source_->stageContent(), view_, pixelsPerMm_, showMarks_, loupe_);
        if (draft_.size() > 1) {
            paintDrawing(painter, draft(), view_, pixelsPerMm_);
        }
    }
}

QSGNode* StageItem::updatePaintNode(QSGNode* old, UpdatePaintNodeData* /*data*/) {
    auto* node = static_cast<QSGImageNode*>(old);
    if (!source_ || source_->stageContent().picture.isNull() || view_.scale() <= 0) {
        delete node;
        pictureDirty_ = true;
        return nullptr;
    }
    const QImage& picture = source_->stageContent().picture;
    if (node == nullptr) {
        node = window()->createImageNode();
        node->setOwnsTexture(true);
        pictureDirty_ = true;
    }
    if (pictureDirty_) {
        node->setTexture(window()->createTextureFromImage(
            picture, {QQuickWindow::TextureIsOpaque, QQuickWindow::TextureHasMipmaps}));
        node->setFiltering(QSGTexture::Linear);
        node->setMipmapFiltering(QSGTexture::Linear);
        pictureDirty_ = false;
    }
    node->setSourceRect(QRectF(QPointF(0, 0), picture.size()));
    node->setRect(view_.pictureRect());
    return node;
}

void StageItem::setGesture(Gesture gesture) {
    const bool was = dragging();
    gesture_ = gesture;
    if (was != dragging()) {
        setKeepMouseGrab(dragging());
        setKeepTouchGrab(dragging());
        emit draggingChanged();
    }
}

void StageItem::press(QPointF at) {
    pressedAt_ = lastAt_ = at;
    swipeRest_ = 0;
    candidate_.reset();
    if (!drawShape_.isEmpty()) {
        if (drawShape_ != QStringLiteral("angle")) {
            draft_.clear();
        }
        draft_.push_back(view_.toPicture(at));
        setGesture(Gesture::draw);
        overlay_->update();
        return;
    }
    if (source_ && editable_ && showMarks_ && !placing_) {
        candidate_ = handleAt(source_->stageContent(), view_, at, kCatchRadius * pixelsPerMm_);
    }
    sinceMove_.start();
    setGesture(Gesture::pressed);
}

void StageItem::moveTo(QPointF at) {
    const QPointF whole = at - pressedAt_;
    const QPointF delta = at - lastAt_;
    switch (gesture_) {
    case Gesture::pressed: {
        if (std::hypot(whole.x(), whole.y()) < kDragStart * pixelsPerMm_) {
            return;
        }
        const auto mark = candidate_ ? source_->stageContent().marks[*candidate_] : std::nullopt;
        if (mark) {
            markAt_ = mark->at;
            setGesture(Gesture::mark);
            emit markGrabbed(static_cast<int>(*candidate_));
            loupeOnRight_ = at.x() < width() / 2;
            placeLoupe(at);
        } else {
            setGesture(magnified() && !playerShown_ ? Gesture::pan : Gesture::swipe);
        }
        sinceMove_.restart();
        break;
    }
    case Gesture::mark: {
        const double seconds = std::max<qint64>(sinceMove_.restart(), 1) / 1000.0;
        const double speed = std::hypot(delta.x(), delta.y()) / pixelsPerMm_ / seconds;
        const double gain = 0.5 + 0.5 * std::clamp((speed - kSlow) / (kNormal - kSlow), 0.0, 1.0);
        const double k = gain / view_.scale();
        markAt_ = markAt_ + base::Vec2{delta.x() * k, delta.y() * k};
        markAt_.x = std::clamp(markAt_.x, 0.0, view_.pictureSize().width());
        markAt_.y = std::clamp(markAt_.y, 0.0, view_.pictureSize().height());
        placeLoupe(at);
        emit markMoved(markAt_.x, markAt_.y);
        overlay_->update();
        break;
    }
    case Gesture::draw: {
        const base::Vec2 here = view_.toPicture(at);
        if (drawShape_ == QStringLiteral("freehand")) {
            if (base::length(here - draft_.back()) * view_.scale() >= 0.6 * pixelsPerMm_) {
                draft_.push_back(here);
            }
        } else if (drawShape_ == QStringLiteral("angle")) {
            draft_.back() = here;
        } else {
            draft_.resize(1);
            draft_.push_back(here);
        }
        overlay_->update();
        break;
    }
    case Gesture::swipe: {
        swipeRest_ += delta.x() / (kMillimetresPerFrame * pixelsPerMm_);
        const int frames = static_cast<int>(std::trunc(swipeRest_));
        if (frames != 0) {
            swipeRest_ -= frames;
            emit scrubbed(frames);
        }
        break;
    }
    case Gesture::pan:
        view_.panBy(delta);
        viewMoved();
        break;
    default:
        break;
    }
    lastAt_ = at;
}

void StageItem::release() {
    const Gesture was = gesture_;
    loupe_.reset();
    setGesture(Gesture::none);
    overlay_->update();
    if (was == Gesture::draw) {
        finishDrawing(lastAt_);
        return;
    }
    if (was == Gesture::mark) {
        emit markReleased();
    } else if (was == Gesture::pressed) {
        if (candidate_) {
            emit markTapped(static_cast<int>(*candidate_));
        } else {
            const base::Vec2 at = view_.toPicture(pressedAt_);
            emit emptyTapped(std::clamp(at.x, 0.0, view_.pictureSize().width()),
                             std::clamp(at.y, 0.0, view_.pictureSize().height()));
        }
    }
}

void StageItem::setDrawShape(const QString& shape) {
    if (drawShape_ != shape) {
        drawShape_ = shape;
        draft_.clear();
        overlay_->update();
        emit drawShapeChanged();
    }
}

/// A finger is up: the shape is whole, or waits for the next tap (angle), or was too small to mean anything.
void StageItem::finishDrawing(QPointF at) {
    const bool angle = drawShape_ == QStringLiteral("angle");
    if (angle && draft_.size() < 3) {
        return;
    }
    const bool byTap = angle || drawShape_ == QStringLiteral("text") || drawShape_ == QStringLiteral("plumb");
    const QPointF way = at - pressedAt_;
    if (!byTap && (draft_.size() < 2 || std::hypot(way.x(), way.y()) < kDragStart * pixelsPerMm_) &&
        drawShape_ != QStringLiteral("freehand")) {
        draft_.clear();
        return;
    }
    if (drawShape_ == QStringLiteral("text")) {
        draft_ = {view_.toPicture(at)};
    }
    QVariantList points;
    for (const base::Vec2 p : draft_) {
        points << std::clamp(p.x, 0.0, view_.pictureSize().width())
               << std::clamp(p.y, 0.0, view_.pictureSize().height());
    }
    const bool enough = draft_.size() > 1 || byTap;
    draft_.clear();
    if (enough) {
        emit drawn(points);
    }
}

StageDrawing StageItem::draft() const {
    static const QStringList kShapes{QStringLiteral("plumb"),   QStringLiteral("line"),
                                     QStringLiteral("angle"),   QStringLiteral("arrow"),
                                     QStringLiteral("ellipse"), QStringLiteral("freehand"),
                                     QStringLiteral("text")};
    const auto index = kShapes.indexOf(drawShape_);
    return {index < 0 ? StageDrawing::Shape::line : static_cast<StageDrawing::Shape>(index), draft_, {}};
}

void StageItem::abandon() {
    draft_.clear();
    const bool was = dragging();
    loupe_.reset();
    setGesture(Gesture::spent);
    overlay_->update();
    if (was) {
        emit markGivenBack();
    }
}

bool StageItem::cancelGesture() {
    if (!dragging()) {
        return false;
    }
    abandon();
    return true;
}

void StageItem::placeLoupe(QPointF finger) {
    // In an upper corner away from the finger: the hand hides what lies below it. It changes sides only when
    // the finger comes near, so that it does not jump about.
    const double radius = std::min(kLoupeRadius * pixelsPerMm_, std::min(width(), height()) * 0.36);
    const double margin = 1.5 * pixelsPerMm_;
    const auto centreOn = [&](bool right) {
        return QPointF(right ? width() - radius - margin : radius + margin, radius + margin);
    };
    const QPointF d = finger - centreOn(loupeOnRight_);
    if (std::hypot(d.x(), d.y()) < radius + 12 * pixelsPerMm_) {
        const QPointF other = finger - centreOn(!loupeOnRight_);
        if (std::hypot(other.x(), other.y()) > std::hypot(d.x(), d.y())) {
            loupeOnRight_ = !loupeOnRight_;
        }
    }
    loupe_ = Loupe{centreOn(loupeOnRight_), radius, std::clamp(4.0 / view_.scale(), 3.0, 6.0), markAt_};
}

void StageItem::touchEvent(QTouchEvent* event) {
    if (event->type() == QEvent::TouchCancel) {
        fingers_.clear();
        abandon();
        setGesture(Gesture::none);
        event->accept();
        return;
    }
    const std::map<int, QPointF> before = fingers_;
    for (const QEventPoint& point : event->points()) {
        if (point.state() == QEventPoint::Released) {
            fingers_.erase(point.id());
        } else {
            fingers_[point.id()] = point.position();
        }
    }
    if (before.empty() && fingers_.size() == 1) {
        press(fingers_.begin()->second);
    } else if (before.size() <= 1 && fingers_.size() >= 2) {
        if (before.empty()) { // both came down at once
            setGesture(Gesture::none);
        } else {
            abandon();
        }
        setGesture(Gesture::pinch);
    } else if (gesture_ == Gesture::pinch && fingers_.size() == 2 && before.size() == 2) {
        const auto a = fingers_.begin();
        const auto b = std::next(a);
        const auto oldA = before.find(a->first);
        const auto oldB = before.find(b->first);
        if (oldA != before.end() && oldB != before.end()) {
            playerShown_ = false;
            view_.pinch(oldA->second, oldB->second, a->second, b->second);
            viewMoved();
        }
    } else if (fingers_.size() == 1 && before.size() == 1) {
        moveTo(fingers_.begin()->second);
    } else if (fingers_.empty()) {
        release();
    } else if (gesture_ == Gesture::pinch) {
        setGesture(Gesture::spent); // one finger left over: nothing until it is up, too
    }
    event->accept();
}

void StageItem::mousePressEvent(QMouseEvent* event) {
    press(event->position());
    event->accept();
}

void StageItem::mouseMoveEvent(QMouseEvent* event) {
    moveTo(event->position());
    event->accept();
}

void StageItem::mouseReleaseEvent(QMouseEvent* event) {
    release();
    event->accept();
}

void StageItem::mouseUngrabEvent() {
    abandon();
    setGesture(Gesture::none);
}

void StageItem::touchUngrabEvent() {
    fingers_.clear();
    abandon();
    setGesture(Gesture::none);
}

void StageItem::wheelEvent(QWheelEvent* event) {
    const double notches = event->angleDelta().y() / 120.0;
    if (event->modifiers() & Qt::ControlModifier) {
        playerShown_ = false;
        view_.zoomAbout(event->position(), std::pow(1.2, notches));
        viewMoved();
    } else {
        swipeRest_ -= notches;
        const int frames = static_cast<int>(std::trunc(swipeRest_));
        swipeRest_ -= frames;
        if (frames != 0) {
            emit scrubbed(frames);
        }
    }
    event->accept();
}

} // namespace plumbmark::stage
