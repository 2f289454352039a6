// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/swing_model.h"

#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>

#include "bridge/in_language.h"
#include "bridge/phrases.h"
#include "measure/construction.h"
#include "session/lesson_today.h"
#include "stage/stage_painter.h"
#include "stage/stage_view.h"

namespace plumbmark::bridge {

using marks::Landmark;

namespace {
constexpr int kStillHeight = 220; ///< px
constexpr int kStripHeight = 640; ///< px, a picture of the strip
} // namespace

SwingModel::SwingModel(store::Library& library, analysis::NetworkBytes network, QObject* parent)
    : StageSource(parent), shotRecord_(library), library_(&library),
      adviser_(std::make_unique<AdviceWorker>()), film_(std::make_unique<FilmReader>()),
      desk_(std::make_unique<DeskThread>(library, std::move(network))) {
    connect(desk_.get(), &DeskThread::changed, this, &SwingModel::takeState);
    connect(desk_.get(), &DeskThread::openFailed, this, &SwingModel::setProblem);
    connect(desk_.get(), &DeskThread::progress, this, [this](double share, const QString&) {
        progressShare_ = share;
        emit progressChanged();
    });
    connect(film_.get(), &FilmReader::opened, this, [this] {
        filmOpen_ = true;
        film_->request(wanted_);
        askForStills();
    });
    connect(film_.get(), &FilmReader::failed, this, &SwingModel::setProblem);
    connect(film_.get(), &FilmReader::pictureReady, this, &SwingModel::takePicture);
    connect(film_.get(), &FilmReader::stillReady, this, [this](int frame, const QImage& still) {
        if (still.height() > kStillHeight) {
            stripPictures_[frame] = still;
            emit stripChanged();
        } else {
            moments_.setStill(frame, still);
        }
    });
    connect(adviser_.get(), &AdviceWorker::advised, this, [this](const Advices& advice) {
        advice_ = advice;
        emit adviceChanged();
    });
    play_.setInterval(15);
    connect(&play_, &QTimer::timeout, this, &SwingModel::playOn);
}

SwingModel::~SwingModel() = default;

void SwingModel::open(const base::Id& clip, const QString& title, std::optional<analysis::Analysed> known) {
    title_ = title;
    clipId_ = clip;
    clip_ = clip;
    // The film first: the coach steps through it while the swing is still being read.
    if (auto row = library_->clip(clip); row.ok() && *row && (*row)->filmHere) {
        storedFrames_ = (*row)->clip.frames;
        film_->open((*row)->file);
    }
    shotRecord_.load(clip);
    emit outcomeChanged();
    desk_->open(clip, std::move(known));
}

void SwingModel::takeState(const std::shared_ptr<const DeskState>& state) {
    const bool wasReady = ready();
    state_ = state;
    const analysis::Outcome& outcome = *state->outcome;
    moments_.show(outcome);
    numbers_.show(outcome);
    checks_.show(outcome, !grabbed_);
    if (first_) {
        first_ = false;
        // The whole swing in one frame of the stage, so that the picture does not jump from moment to moment.
        QRectF box;
        const auto include = [&box](base::Vec2 p) {
            const QRectF point(p.x - 0.5, p.y - 0.5, 1, 1);
            box = box.isNull() ? point : box.united(point);
        };
        for (const marks::FrameMarks& frame : outcome.track) {
            for (const auto& mark : frame.points) {
                if (mark) {
                    include(mark->at);
                }
            }
        }
        if (!box.isNull()) {
            const double margin = 0.06 * std::max(box.width(), box.height());
            content_.playerBox = box.adjusted(-margin, -margin, margin, margin)
                                     .intersected(QRectF(0, 0, outcome.clip.width, outcome.clip.height));
        }
        const marks::Moment* start = marks::find(outcome.moments, beginAt_);
        if (start == nullptr) {
            start = marks::find(outcome.moments, marks::MomentId::address);
        }
        // Unless the coach has gone somewhere already.
        if (wanted_ == 0 && start != nullptr) {
            wanted_ = measure::nearestFrame(outcome.track, start->time);
        }
        if (filmOpen_) {
            film_->request(wanted_);
        }
    }
    if (!state->error.isEmpty()) {
        setNotice(state->error);
    } else if (state->saved) {
        setNotice(tr("Saved"));
        emit savedToDisk();
    }
    if (!grabbed_) {
        findGhost(); // not while a finger moves: it costs a few measurements
    }
    fillFrame();
    askForStills();
    askForStrip();
    if (!grabbed_) {
        adviser_->ask(state->outcome);
    }
    emit outcomeChanged();
    emit stripChanged();
    if (wasReady != ready()) {
        emit readyChanged();
    }
}

void SwingModel::takePicture(int frame, double seconds, const QImage& picture) {
    const bool wasReady = ready();
    content_.picture = picture;
    content_.frame = frame;
    content_.time = base::Seconds{seconds};
    moments_.setShownFrame(frame);
    fillFrame();
    if (wasReady != ready()) {
        emit readyChanged();
    }
}

void SwingModel::fillFrame() {
    content_.marks = {};
    content_.shaft.reset();
    content_.extraLines.clear();
    content_.drawings.clear();
    content_.construction.clear();
    content_.needed.clear();
    content_.ghost.clear();
    if (state_ && content_.frame >= 0) {
        const analysis::Outcome& outcome = *state_->outcome;
        const auto i = static_cast<std::size_t>(content_.frame);
        if (i < outcome.track.size()) {
            content_.marks = outcome.track[i];
        }
        if (i < outcome.shaft.size()) {
            content_.shaft = outcome.shaft[i];
        }
        auto& marks = content_.marks;
        const auto byHand = [&](Landmark landmark) {
            return std::any_of(state_->handMarks.begin(), state_->handMarks.end(),
                               [&](const marks::HandMark& m) {
                                   return m.frame == content_.frame && m.landmark == landmark;
                               });
        };
        // Club and ball are found by their own passes; on the stage they are points like all others.
        if (content_.shaft && content_.shaft->head && !marks[Landmark::club_head] &&
            !byHand(Landmark::club_head)) {
            marks[Landmark::club_head] = marks::Mark{
                *content_.shaft->head, std::max(0.5, content_.shaft->headSigma), content_.shaft->origin};
        }
        if (outcome.ball && !marks[Landmark::ball] && !byHand(Landmark::ball) &&
            (!outcome.ball->lastSeen || content_.time <= *outcome.ball->lastSeen)) {
            marks[Landmark::ball] =
                marks::Mark{outcome.ball->centre, outcome.ball->sigma, base::Origin::tracked};
        }
        if (grabbed_ && grabbedAt_) {
            marks[*grabbed_] = marks::Mark{*grabbedAt_, 2.0, base::Origin::hand};
            if (grabbed_ == Landmark::club_head && content_.shaft) {
                content_.shaft->head = *grabbedAt_;
            }
        }
        // Face-on, the plumb line everybody looks for stands on the lead ankle.
        if (outcome.context.view == marks::View::faceOn && marks[Landmark::lead_ankle]) {
            const base::Vec2 foot = marks[Landmark::lead_ankle]->at;
            const base::Vec2 up = outcome.scene.vertical.up();
            const double length =
                0.75 * (content_.playerBox.isEmpty() ? outcome.clip.height : content_.playerBox.height());
            content_.extraLines.push_back({foot, foot + up * length, stage::StageLine::Kind::plumb});
        }
        fillDrawings(outcome);
        fillConstruction(outcome);
    }
    emit stageChanged();
}

/// Where each drawing lies in the frame on show. One that is tied to a point which is not marked here is not
/// shown.
void SwingModel::fillDrawings(const analysis::Outcome& /*outcome*/) {
    content_.drawings = drawingsIn(content_.frame, content_.marks);
}

std::vector<stage::StageDrawing> SwingModel::drawingsIn(int frame, const marks::FrameMarks& marks) const {
    std::vector<stage::StageDrawing> list;
    const analysis::Outcome& outcome = *state_->outcome;
    const auto& ground = outcome.scene.ground;
    for (const records::Drawing& drawing : state_->drawings) {
        base::Vec2 shift{0, 0};
        if (drawing.tie == records::Drawing::Tie::body) {
            const auto from = static_cast<std::size_t>(drawing.frame);
            const auto& now = marks[drawing.landmark];
            if (from >= outcome.track.size() || !outcome.track[from][drawing.landmark] || !now) {
                continue;
            }
            shift = now->at - outcome.track[from][drawing.landmark]->at;
        }
        stage::StageDrawing shown{
            static_cast<stage::StageDrawing::Shape>(drawing.shape), {}, QString::fromStdString(drawing.text)};
        for (const base::Vec2 p : drawing.points) {
            shown.points.push_back(drawing.tie == records::Drawing::Tie::ground
                                       ? ground.fromReference(frame, ground.toReference(drawing.frame, p))
                                       : p + shift);
        }
        if (drawing.shape == records::Drawing::Shape::plumb) { // true up, however the camera turned
            shown.points.push_back(shown.points.front() + outcome.scene.vertical.up() * drawing.height);
        }
        list.push_back(std::move(shown));
    }
    return list;
}

QVariantList SwingModel::drawings() const {
    static const std::array kLabels{QT_TR_NOOP("Plumb line"), QT_TR_NOOP("Line"),    QT_TR_NOOP("Angle"),
                                    QT_TR_NOOP("Arrow"),      QT_TR_NOOP("Ellipse"), QT_TR_NOOP("Freehand"),
                                    QT_TR_NOOP("Word")};
    QVariantList list;
    if (state_) {
        int number = 0;
        for (const records::Drawing& d : state_->drawings) {
            QString label = tr("%1. %2").arg(QLocale().toString(++number),
                                             tr(kLabels.at(static_cast<std::size_t>(d.shape))));
            if (!d.text.empty()) {
                label += QStringLiteral(": ") + QString::fromStdString(d.text);
            }
            list.append(QVariantMap{{QStringLiteral("name"), QString::fromStdString(d.name)},
                                    {QStringLiteral("label"), label}});
        }
    }
    return list;
}

void SwingModel::addDrawing(const QVariantList& points) {
    using Shape = records::Drawing::Shape;
    using Tie = records::Drawing::Tie;
    if (!state_ || content_.frame < 0 || points.size() < 2) {
        return;
    }
    records::Drawing drawing;
    bool known = false;
    for (int i = 0; i <= static_cast<int>(Shape::text); ++i) {
        if (drawShape_.toStdString() == name(static_cast<Shape>(i))) {
            drawing.shape = static_cast<Shape>(i);
            known = true;
        }
    }
    if (!known) {
        return;
    }
    drawing.name = base::randomIds().next().hex();
    drawing.frame = content_.frame;
    drawing.tie = drawTie_ == QStringLiteral("body")      ? Tie::body
                  : drawTie_ == QStringLiteral("picture") ? Tie::picture
                                                          : Tie::ground;
    for (qsizetype i = 0; i + 1 < points.size(); i += 2) {
        drawing.points.push_back({points[i].toDouble(), points[i + 1].toDouble()});
    }
    if (drawing.points.size() > 2000) {
        drawing.points.resize(2000);
    }
    if (drawing.shape == Shape::plumb) {
        const double usual =
            0.75 * (content_.playerBox.isEmpty() ? content_.picture.height() : content_.playerBox.height());
        drawing.height =
            drawing.points.size() > 1 ? base::length(drawing.points[1] - drawing.points[0]) : usual;
        drawing.height = drawing.height < 8 ? usual : drawing.height;
        drawing.points.resize(1);
    }
    if (drawing.shape == Shape::text) {
        drawing.text = drawWord_.trimmed().left(60).toStdString();
        if (drawing.text.empty()) {
            setNotice(tr("Type the word first, then tap the picture."));
            return;
        }
    }
    if (drawing.tie == Tie::body) { // the marked point nearest to where the drawing begins
        double nearest = 1e9;
        for (std::size_t i = 0; i < marks::kLandmarkCount; ++i) {
            const auto landmark = static_cast<Landmark>(i);
            const auto& mark = content_.marks[landmark];
            if (mark && base::length(mark->at - drawing.points.front()) < nearest) {
                nearest = base::length(mark->at - drawing.points.front());
                drawing.landmark = landmark;
            }
        }
        if (nearest > 1e8) {
            drawing.tie = Tie::picture;
        }
    }
    desk_->draw(drawing);
}

void SwingModel::wipeDrawing(const QString& name) {
    desk_->wipe(name.toStdString());
}

void SwingModel::fillConstruction(const analysis::Outcome& outcome) {
    const coaching::CheckpointResult* check = openCheck_.isEmpty() ? nullptr : checks_.find(openCheck_);
    if (check == nullptr) {
        return;
    }
    const auto built = measure::constructionOf(measureInput(outcome), check->measurement, check->moment);
    if (built.frame != content_.frame) {
        return;
    }
    using Kind = measure::Construction::Kind;
    for (const auto& line : built.lines) {
        content_.construction.push_back({line.a, line.b,
                                         line.kind == Kind::vertical ? stage::StageLine::Kind::plumb
                                         : line.kind == Kind::level  ? stage::StageLine::Kind::level
                                         : line.kind == Kind::before ? stage::StageLine::Kind::before
                                         : line.kind == Kind::shaft  ? stage::StageLine::Kind::shaft
                                                                     : stage::StageLine::Kind::body});
    }
    for (const auto& use : built.uses) {
        content_.needed.push_back(use.landmark);
    }
    if (ghost_ && ghost_->frame == content_.frame) {
        for (const auto& line : ghost_->lines) {
            content_.ghost.push_back({line.a, line.b, stage::StageLine::Kind::ghost});
        }
    }
}

/// Where the open check's marks would be at the edge of the good range that they are outside of.
void SwingModel::findGhost() {
    const bool was = ghost_.has_value();
    ghost_.reset();
    const coaching::CheckpointResult* check = openCheck_.isEmpty() ? nullptr : checks_.find(openCheck_);
    if (check != nullptr && state_ && check->value) {
        const double value = check->value->value;
        const std::optional<double> edge = check->goodLow && value < *check->goodLow     ? check->goodLow
                                           : check->goodHigh && value > *check->goodHigh ? check->goodHigh
                                                                                         : std::nullopt;
        if (edge) {
            ghost_ =
                measure::ghostOf(measureInput(*state_->outcome), check->measurement, check->moment, *edge);
        }
    }
    if (was != ghost_.has_value()) {
        emit openCheckChanged();
    }
}

void SwingModel::toggleCheck(const QString& key) {
    openCheck_ = key == openCheck_ ? QString() : key;
    const coaching::CheckpointResult* check = openCheck_.isEmpty() ? nullptr : checks_.find(openCheck_);
    if (check != nullptr && state_) {
        const auto built =
            measure::constructionOf(measureInput(*state_->outcome), check->measurement, check->moment);
        const marks::Moment* moment =
            check->moment ? marks::find(state_->outcome->moments, *check->moment) : nullptr;
        const int frame = built.frame >= 0    ? built.frame
                          : moment != nullptr ? measure::nearestFrame(state_->outcome->track, moment->time)
                                              : -1;
        if (frame >= 0) {
            setPlaying(false);
            goTo(frame);
        }
    }
    findGhost();
    fillFrame();
    emit openCheckChanged();
}

QVariantList SwingModel::allMoments() const {
    QVariantList list;
    if (!state_) {
        return list;
    }
    for (int i = 0; i < marks::kMomentCount; ++i) {
        const auto id = static_cast<marks::MomentId>(i);
        const marks::Moment* moment = marks::find(state_->outcome->moments, id);
        const int frame =
            moment == nullptr ? -1 : measure::nearestFrame(state_->outcome->track, moment->time);
        list.append(QVariantMap{
            {QStringLiteral("id"), i},
            {QStringLiteral("label"), momentLabel(id)},
            {QStringLiteral("where"),
             moment == nullptr
                 ? tr("not found")
                 : tr("frame %1, by %2").arg(QLocale().toString(frame + 1), foundByLabel(moment->foundBy))},
            {QStringLiteral("frame"), frame},
            {QStringLiteral("byHand"), marks::find(state_->momentFixes, id) != nullptr},
        });
    }
    return list;
}

void SwingModel::fixMoment(int moment) {
    if (state_ && content_.frame >= 0 && moment >= 0 && moment < marks::kMomentCount) {
        setPlaying(false);
        desk_->fixMoment(static_cast<marks::MomentId>(moment), content_.frame);
    }
}

void SwingModel::freeMoment(int moment) {
    desk_->freeMoment(static_cast<marks::MomentId>(moment));
}

QVariantList SwingModel::unmarked() const {
    QVariantList list;
    if (!state_ || content_.frame < 0) {
        return list;
    }
    for (std::size_t i = 0; i < marks::kLandmarkCount; ++i) {
        const auto landmark = static_cast<Landmark>(i);
        if (!content_.marks[landmark]) {
            list.append(QVariantMap{{QStringLiteral("id"), static_cast<int>(i)},
                                    {QStringLiteral("name"), landmarkLabel(landmark)}});
        }
    }
    return list;
}

void SwingModel::setPlacing(bool placing) {
    if (placing_ != placing && (!placing || content_.selected)) {
        placing_ = placing;
        emit stageChanged(); // the words about the point
        emit selectionChanged();
    }
}

void SwingModel::takeUp(int landmark) {
    select(landmark);
    setPlacing(!selectedHere());
}

void SwingModel::placeAt(double x, double y) {
    if (!placing_ || !content_.selected || !state_ || content_.frame < 0) {
        return;
    }
    const base::Vec2 at{x, y};
    content_.marks[*content_.selected] = marks::Mark{at, 2.0, base::Origin::hand};
    desk_->place(content_.frame, *content_.selected, at);
    setPlacing(false);
    emit stageChanged();
}

QVariantList SwingModel::advice() const {
    QVariantList list;
    for (const analysis::MarkAdvice& a : advice_) {
        QStringList names, checks;
        for (const Landmark l : a.landmarks) {
            names << landmarkLabel(l);
        }
        for (std::size_t i = 0; i < a.checks.size() && i < 2; ++i) {
            checks << inLanguage(a.checks[i]);
        }
        list.append(QVariantMap{
            {QStringLiteral("text"), tr("%1, %2").arg(names.join(tr(" and ")), momentInside(a.moment))},
            {QStringLiteral("why"), tr("would sharpen: %1").arg(checks.join(QStringLiteral(", ")))}});
    }
    return list;
}

void SwingModel::followAdvice(int row) {
    if (row < 0 || row >= static_cast<int>(advice_.size()) || !state_) {
        return;
    }
    const analysis::MarkAdvice& a = advice_[static_cast<std::size_t>(row)];
    setPlaying(false);
    goTo(a.frame);
    // Of a pair the one that no hand has placed yet.
    Landmark next = a.landmarks.front();
    for (const Landmark l : a.landmarks) {
        const auto& mark = state_->outcome->track[static_cast<std::size_t>(a.frame)][l];
        if (!mark || mark->origin != base::Origin::hand) {
            next = l;
            break;
        }
    }
    select(static_cast<int>(next));
    setPlacing(!state_->outcome->track[static_cast<std::size_t>(a.frame)][next]);
}

void SwingModel::askForStills() {
    if (!filmOpen_ || !state_ || grabbed_) {
        return;
    }
    for (int row = 0; row < moments_.rowTotal(); ++row) {
        if (stillsAsked_.insert(moments_.frameOf(row)).second) {
            film_->requestStill(moments_.frameOf(row), kStillHeight, content_.playerBox);
        }
    }
}

QString SwingModel::subtitle() const {
    if (!state_) {
        return {};
    }
    const marks::ShotContext& context = state_->outcome->context;
    QStringList parts;
    if (context.club) {
        parts << clubLabel(*context.club);
    }
    parts << viewLabel(context.view);
    if (context.shot != marks::ShotKind::full) {
        parts << shotLabel(context.shot);
    }
    if (context.hand == marks::Hand::left) {
        parts << handLabel(context.hand);
    }
    return parts.join(QStringLiteral(" \u00b7 "));
}

int SwingModel::frames() const {
    return state_ ? state_->outcome->clip.frames : storedFrames_;
}

QString SwingModel::frameText() const {
    if (content_.frame < 0) {
        return {};
    }
    return tr("Frame %1 of %2").arg(QLocale().toString(content_.frame + 1), QLocale().toString(frames()));
}

QString SwingModel::timeText() const {
    if (!state_ || content_.frame < 0) {
        return {};
    }
    const marks::TimeScale& scale = state_->outcome->timeScale;
    return scale.known ? tr("%1 s").arg(decimal(content_.time.value() * scale.realPerShown, 3))
                       : tr("time scale unknown");
}

void SwingModel::setPlaying(bool playing) {
    if (playing == play_.isActive() || (playing && !state_)) {
        return;
    }
    if (playing) {
        const int first = moments_.frameOf(loopFrom_), last = moments_.frameOf(loopTo_);
        const bool outside = first >= 0 && last >= 0 && (content_.frame < first || content_.frame >= last);
        if (outside || content_.frame >= frames() - 1) {
            startPlayAt(outside ? first : 0);
        } else {
            playFrom_ = content_.time.value();
            playClock_.start();
        }
        play_.start();
    } else {
        play_.stop();
        wanted_ = std::max(0, content_.frame);
    }
    emit playingChanged();
}

void SwingModel::startPlayAt(int frame) {
    goTo(frame);
    playFrom_ = state_->outcome->track[static_cast<std::size_t>(frame)].time.value();
    playClock_.start();
}

void SwingModel::playOn() {
    const analysis::Outcome& outcome = *state_->outcome;
    const double real = playClock_.elapsed() / 1000.0 * playSpeed_;
    const base::Seconds shown{playFrom_ + real / std::max(outcome.timeScale.realPerShown, 1e-6)};
    const int frame = static_cast<int>(marks::frameAt(outcome.track, shown));
    const int first = moments_.frameOf(loopFrom_), last = moments_.frameOf(loopTo_);
    if (first >= 0 && last > first && frame >= last) {
        // The last picture stands for as long as a twentieth of the loop's time, so that the eye gets it.
        const double over = (shown - outcome.track[static_cast<std::size_t>(last)].time).value();
        const double whole = (outcome.track[static_cast<std::size_t>(last)].time -
                              outcome.track[static_cast<std::size_t>(first)].time)
                                 .value();
        if (over > 0.05 * whole) {
            startPlayAt(first);
        } else if (wanted_ != last) {
            goTo(last);
        }
        return;
    }
    if (frame != wanted_) {
        goTo(frame);
    }
    if (frame >= frames() - 1) {
        setPlaying(false);
        wanted_ = frames() - 1;
    }
}

void SwingModel::setPlaySpeed(double speed) {
    if (playSpeed_ != speed && speed > 0 && speed <= 1) {
        playSpeed_ = speed;
        if (playing()) { // go on from the picture on show
            playFrom_ = content_.time.value();
            playClock_.start();
        }
        emit loopChanged();
    }
}

void SwingModel::setLoop(int fromRow, int toRow) {
    const int from = moments_.frameOf(fromRow), to = moments_.frameOf(toRow);
    const bool loop = from >= 0 && to >= 0 && from != to;
    loopFrom_ = !loop ? -1 : from < to ? fromRow : toRow;
    loopTo_ = !loop ? -1 : from < to ? toRow : fromRow;
    emit loopChanged();
    if (loop && state_) {
        setPlaying(true);
        startPlayAt(moments_.frameOf(loopFrom_));
    }
}

void SwingModel::setStripShown(bool shown) {
    if (stripShown_ != shown) {
        setPlaying(false);
        deselect();
        stripShown_ = shown;
        askForStrip();
        emit stripChanged();
    }
}

void SwingModel::toggleInStrip(int momentRow) {
    if (const auto id = moments_.idOf(momentRow)) {
        if (inStrip_.erase(*id) == 0) {
            inStrip_.insert(*id);
        }
        askForStrip();
        emit stripChanged();
    }
}

void SwingModel::askForStrip() {
    if (!stripShown_ || !filmOpen_ || !state_) {
        return;
    }
    for (int row = 0; row < moments_.rowTotal(); ++row) {
        const int frame = moments_.frameOf(row);
        if (inStrip_.contains(*moments_.idOf(row)) && !stripPictures_.contains(frame)) {
            stripPictures_[frame] = {}; // asked for
            film_->requestStill(frame, kStripHeight, content_.playerBox);
        }
    }
}

QVariantList SwingModel::stripChoices() const {
    QVariantList list;
    for (int row = 0; row < moments_.rowTotal(); ++row) {
        list.append(QVariantMap{{QStringLiteral("row"), row},
                                {QStringLiteral("label"), momentLabel(*moments_.idOf(row))},
                                {QStringLiteral("chosen"), inStrip_.contains(*moments_.idOf(row))}});
    }
    return list;
}

QVariantList SwingModel::strip() const {
    QVariantList list;
    for (int row = 0; stripShown_ && state_ && row < moments_.rowTotal(); ++row) {
        if (inStrip_.contains(*moments_.idOf(row))) {
            list.append(QVariantMap{{QStringLiteral("row"), row},
                                    {QStringLiteral("label"), momentLabel(*moments_.idOf(row))},
                                    {QStringLiteral("time"), moments_.timeOf(row)}});
        }
    }
    return list;
}

QImage SwingModel::stripPicture(int momentRow) const {
    const int frame = moments_.frameOf(momentRow);
    const auto it = stripPictures_.find(frame);
    if (!state_ || it == stripPictures_.end() || it->second.isNull()) {
        QImage black(1, 1, QImage::Format_RGB32);
        black.fill(Qt::black);
        return black;
    }
    const analysis::Outcome& outcome = *state_->outcome;
    const QRect whole(0, 0, outcome.clip.width, outcome.clip.height);
    const QRectF part =
        content_.playerBox.isEmpty() ? QRectF(whole) : QRectF(content_.playerBox.toRect().intersected(whole));
    QImage picture = it->second;
    stage::StageView view;
    view.setPictureSize(part.size().toSize());
    view.setItemSize(picture.size());
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    std::vector<stage::StageDrawing> drawings =
        drawingsIn(frame, outcome.track[static_cast<std::size_t>(frame)]);
    for (stage::StageDrawing& drawing : drawings) {
        for (base::Vec2& p : drawing.points) {
            p = p - base::Vec2{part.x(), part.y()};
        }
        stage::paintDrawing(painter, drawing, view, picture.height() / 110.0);
    }
    return picture;
}

namespace {

/// Body lines a coach compares with address: an id, and the marks they join (two to a middle).
struct AddressLine {
    const char* id;
    const char* label;
    std::array<Landmark, 2> from, to;
};
constexpr std::array kAddressLines{
    AddressLine{"spine",
                QT_TRANSLATE_NOOP("plumbmark::bridge::SwingModel", "Spine"),
                {Landmark::lead_hip, Landmark::trail_hip},
                {Landmark::lead_shoulder, Landmark::trail_shoulder}},
    AddressLine{"shoulders",
                QT_TRANSLATE_NOOP("plumbmark::bridge::SwingModel", "Shoulder line"),
                {Landmark::lead_shoulder, Landmark::lead_shoulder},
                {Landmark::trail_shoulder, Landmark::trail_shoulder}},
    AddressLine{"hips",
                QT_TRANSLATE_NOOP("plumbmark::bridge::SwingModel", "Hip line"),
                {Landmark::lead_hip, Landmark::lead_hip},
                {Landmark::trail_hip, Landmark::trail_hip}},
    AddressLine{"lead_side",
                QT_TRANSLATE_NOOP("plumbmark::bridge::SwingModel", "Lead side"),
                {Landmark::lead_ankle, Landmark::lead_ankle},
                {Landmark::lead_shoulder, Landmark::lead_shoulder}},
    AddressLine{"trail_side",
                QT_TRANSLATE_NOOP("plumbmark::bridge::SwingModel", "Trail side"),
                {Landmark::trail_ankle, Landmark::trail_ankle},
                {Landmark::trail_shoulder, Landmark::trail_shoulder}},
    AddressLine{"feet",
                QT_TRANSLATE_NOOP("plumbmark::bridge::SwingModel", "Ankle to ankle"),
                {Landmark::lead_ankle, Landmark::lead_ankle},
                {Landmark::trail_ankle, Landmark::trail_ankle}},
};

std::optional<std::pair<base::Vec2, base::Vec2>> endsOf(const AddressLine& line,
                                                        const marks::FrameMarks& marks) {
    for (const auto& end : {line.from, line.to}) {
        if (!marks[end[0]] || !marks[end[1]]) {
            return std::nullopt;
        }
    }
    return std::pair{base::midpoint(marks[line.from[0]]->at, marks[line.from[1]]->at),
                     base::midpoint(marks[line.to[0]]->at, marks[line.to[1]]->at)};
}

int addressFrame(const analysis::Outcome& outcome) {
    const marks::Moment* address = marks::find(outcome.moments, marks::MomentId::address);
    return address == nullptr ? -1 : measure::nearestFrame(outcome.track, address->time);
}

} // namespace

QVariantList SwingModel::addressLines() const {
    QVariantList list;
    const int frame = state_ ? addressFrame(*state_->outcome) : -1;
    if (frame < 0) {
        return list;
    }
    for (const AddressLine& line : kAddressLines) {
        if (endsOf(line, state_->outcome->track[static_cast<std::size_t>(frame)])) {
            list.append(QVariantMap{{QStringLiteral("id"), QString::fromLatin1(line.id)},
                                    {QStringLiteral("label"), tr(line.label)}});
        }
    }
    return list;
}

void SwingModel::copyFromAddress(const QString& id) {
    const int frame = state_ ? addressFrame(*state_->outcome) : -1;
    const auto line = std::find_if(kAddressLines.begin(), kAddressLines.end(),
                                   [&](const AddressLine& l) { return id == QLatin1String(l.id); });
    if (frame < 0 || line == kAddressLines.end()) {
        return;
    }
    if (const auto ends = endsOf(*line, state_->outcome->track[static_cast<std::size_t>(frame)])) {
        records::Drawing drawing;
        drawing.name = base::randomIds().next().hex();
        drawing.frame = frame;
        drawing.shape = records::Drawing::Shape::line;
        drawing.tie = records::Drawing::Tie::ground;
        drawing.points = {ends->first, ends->second};
        desk_->draw(drawing);
    }
}

void SwingModel::goTo(int frame) {
    if (frames() == 0) {
        return;
    }
    wanted_ = std::clamp(frame, 0, frames() - 1);
    film_->request(wanted_);
}

void SwingModel::step(int frames) {
    setPlaying(false);
    goTo(wanted_ + frames);
}

void SwingModel::jumpTo(int momentRow) {
    if (const int frame = moments_.frameOf(momentRow); frame >= 0) {
        setPlaying(false);
        goTo(frame);
    }
}

void SwingModel::select(int landmark) {
    setPlaying(false);
    placing_ = false;
    content_.selected = static_cast<Landmark>(landmark);
    emit stageChanged();
    emit selectionChanged();
}

void SwingModel::deselect() {
    if (content_.selected) {
        content_.selected.reset();
        placing_ = false;
        emit stageChanged();
        emit selectionChanged();
    }
}

void SwingModel::grab(int landmark) {
    if (!state_) {
        return;
    }
    select(landmark);
    grabbed_ = static_cast<Landmark>(landmark);
    if (const auto& mark = content_.marks[*grabbed_]) {
        grabbedAt_ = mark->at;
    }
    desk_->beginDrag(content_.frame, *grabbed_);
}

void SwingModel::moveGrabbed(double x, double y) {
    if (!grabbed_) {
        return;
    }
    grabbedAt_ = base::Vec2{x, y};
    desk_->moveDrag(*grabbedAt_);
    fillFrame(); // the mark follows the finger at once; the numbers a breath later
}

void SwingModel::drop() {
    grabbed_.reset();
    grabbedAt_.reset();
    desk_->finishDrag();
}

void SwingModel::giveBack() {
    grabbed_.reset();
    grabbedAt_.reset();
    desk_->cancelDrag();
    fillFrame();
}

void SwingModel::nudge(double dx, double dy) {
    if (!content_.selected || !content_.marks[*content_.selected]) {
        return;
    }
    base::Vec2 at = content_.marks[*content_.selected]->at + base::Vec2{dx, dy};
    at.x = std::clamp(at.x, 0.0, double(content_.picture.width()));
    at.y = std::clamp(at.y, 0.0, double(content_.picture.height()));
    // Shown at once, so that quick taps add up.
    content_.marks[*content_.selected] = marks::Mark{at, 2.0, base::Origin::hand};
    emit stageChanged();
    desk_->place(content_.frame, *content_.selected, at);
}

void SwingModel::hideSelected() {
    if (content_.selected && content_.frame >= 0) {
        desk_->hide(content_.frame, *content_.selected);
    }
}

void SwingModel::freeSelected() {
    if (content_.selected && content_.frame >= 0) {
        desk_->giveBack(content_.frame, *content_.selected);
    }
}

void SwingModel::tellRate(double framesPerSecond) {
    if (!clipId_) {
        return;
    }
    if (auto told = session::tellCaptureRate(*library_, *clipId_, framesPerSecond); !told.ok()) {
        setNotice(inLanguage(QString::fromStdString(told.error().sentence)));
        return;
    }
    emit rateTold(QString::fromStdString(clipId_->hex()), title_);
}

void SwingModel::undo() {
    desk_->undo();
}

void SwingModel::redo() {
    desk_->redo();
}

QString SwingModel::selectedName() const {
    return content_.selected ? landmarkLabel(*content_.selected) : QString();
}

QString SwingModel::selectedText() const {
    if (!content_.selected || content_.frame < 0) {
        return {};
    }
    const auto& mark = content_.marks[*content_.selected];
    if (!mark) {
        return placing_ ? tr("tap the picture where it is") : tr("not marked in this frame");
    }
    return tr("%1 | %2 px, \u00b1 %3, %4")
        .arg(decimal(mark->at.x, 1), decimal(mark->at.y, 1), decimal(mark->sigma, 1),
             originLabel(mark->origin));
}

bool SwingModel::selectedByHand() const {
    return content_.selected && state_ &&
           std::any_of(state_->handMarks.begin(), state_->handMarks.end(), [this](const marks::HandMark& m) {
               return m.frame == content_.frame && m.landmark == *content_.selected;
           });
}

bool SwingModel::selectedHere() const {
    return content_.selected && content_.marks[*content_.selected].has_value();
}

QVariantList SwingModel::cautions() const {
    QVariantList list;
    if (state_) {
        for (const coaching::Caution& caution : state_->outcome->cautions) {
            list.append(QVariantMap{{QStringLiteral("grade"), inLanguage(caution.grade)},
                                    {QStringLiteral("seen"), inLanguage(caution.seen)},
                                    {QStringLiteral("ease"), inLanguage(caution.ease)},
                                    {QStringLiteral("words"), inLanguage(caution.words)}});
        }
    }
    return list;
}

QStringList SwingModel::warnings() const {
    QStringList list;
    if (state_) {
        for (const std::string& warning : state_->outcome->warnings) {
            list << inLanguage(warning);
        }
    }
    return list;
}

void SwingModel::setProblem(const QString& sentence) {
    problem_ = sentence;
    emit problemChanged();
}

void SwingModel::setNotice(const QString& sentence) {
    notice_ = sentence;
    emit noticeChanged();
}

} // namespace plumbmark::bridge
