// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/review_model.h"

#include <QLocale>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>
#include <utility>

#include "bridge/in_language.h"
#include "bridge/phrases.h"
#include "session/lesson_book.h"
#include "session/swing_desk.h"

namespace plumbmark::bridge {

using records::Act;
using records::ReviewAct;

namespace {

constexpr int kTick = 15; ///< ms
constexpr std::size_t kMostStrokePoints = 500;
constexpr std::int64_t kMostVoiceMs = 10LL * 60 * 1000; ///< what one record can hold

base::Box boxOf(const QRectF& part) {
    return {part.x(), part.y(), part.width(), part.height()};
}

QRectF rectOf(const base::Box& box) {
    return {box.x, box.y, box.width, box.height};
}

} // namespace

ReviewModel::ReviewModel(const Parts& parts, const base::Id& lesson, const QString& title, QObject* parent)
    : StageSource(parent), parts_(parts), lesson_(lesson), title_(title),
      film_(std::make_unique<FilmReader>()) {
    connect(film_.get(), &FilmReader::pictureReady, this, &ReviewModel::takePicture);
    connect(film_.get(), &FilmReader::failed, this, [this](const QString& sentence) {
        problem_ = sentence;
        emit changed();
    });
    tick_.setInterval(kTick);
    tick_.setTimerType(Qt::PreciseTimer);
    connect(&tick_, &QTimer::timeout, this, &ReviewModel::tick);
    load();
}

ReviewModel::~ReviewModel() {
    cancelMaking_ = true;
    if (mode_ == Mode::recording && parts_.microphone != nullptr) {
        parts_.microphone->stop();
    }
    if (parts_.speaker != nullptr) {
        parts_.speaker->stop();
    }
}

void ReviewModel::load() {
    session::LessonBook book(parts_.library);
    if (const auto lesson = book.lesson(lesson_); lesson.ok()) {
        day_ = QString::fromStdString(lesson->day);
    }
    const auto shots = book.shots(lesson_);
    if (!shots.ok()) {
        problem_ = inLanguage(QString::fromStdString(shots.error().sentence));
        return;
    }
    for (const auto& shot : *shots) {
        const auto clips = book.clips(shot.id);
        if (!clips.ok()) {
            continue;
        }
        for (const auto& clip : *clips) {
            if (!clip.filmHere) {
                continue;
            }
            const auto capture = clip.clip.captureFpsTold ? clip.clip.captureFpsTold : clip.clip.captureFps;
            swings_.push_back({clip.id,
                               tr("%1. %2").arg(QLocale().toString(shot.number), viewLabel(clip.clip.view)),
                               clip.file, clip.clip.frames,
                               capture && *capture > 0 ? clip.clip.playbackFps / *capture : 1.0});
        }
    }
    reload({});
    if (!swings_.empty()) {
        open(swings_.back().clip, 0.0);
    }
}

void ReviewModel::reload(const QString& problem) {
    problem_ = problem;
    session::ReviewDesk desk(parts_.library, parts_.network);
    if (const auto standing = desk.review(lesson_); standing.ok() && *standing) {
        review_ = **standing;
        voice_.reset();
        if (auto voice = desk.voice(review_); voice.ok() && *voice) {
            voice_ = std::move(**voice);
        }
    } else if (!standing.ok()) {
        problem_ = inLanguage(QString::fromStdString(standing.error().sentence));
    }
    emit noteChanged();
    emit changed();
}

QVariantList ReviewModel::swings() const {
    QVariantList list;
    for (const Swing& swing : swings_) {
        list.append(QVariantMap{{QStringLiteral("clip"), QString::fromStdString(swing.clip.hex())},
                                {QStringLiteral("label"), swing.label},
                                {QStringLiteral("chosen"), &swing == shown_}});
    }
    return list;
}

QString ReviewModel::frameText() const {
    return ready() ? tr("Frame %1 of %2")
                         .arg(QLocale().toString(content_.frame + 1), QLocale().toString(frames()))
                   : QString();
}

int ReviewModel::frames() const {
    return shown_ == nullptr ? 0 : shown_->frames;
}

QString ReviewModel::doing() const {
    return mode_ == Mode::recording   ? QStringLiteral("recording")
           : mode_ == Mode::replaying ? QStringLiteral("replaying")
                                      : QString();
}

QString ReviewModel::clock() const {
    const auto words = [](std::int64_t ms) {
        return QStringLiteral("%1:%2").arg(ms / 60000).arg(ms / 1000 % 60, 2, 10, QLatin1Char('0'));
    };
    return mode_ == Mode::recording ? words(atMs_)
                                    : tr("%1 of %2").arg(words(atMs_), words(review_.lengthMs));
}

std::int64_t ReviewModel::now() const {
    return clock_.isValid() ? clock_.elapsed() : 0;
}

/// In a recording the act is kept; else it only happens.
void ReviewModel::add(ReviewAct act) {
    if (mode_ == Mode::recording) {
        act.atMs = recording_.acts.empty() ? 0 : now();
        recording_.acts.push_back(std::move(act));
    }
}

void ReviewModel::open(const base::Id& clip, double seconds) {
    for (const Swing& swing : swings_) {
        if (swing.clip == clip && &swing != shown_) {
            shown_ = &swing;
            content_ = {};
            film_->open(swing.film);
            if (marks_) {
                readMarks();
            }
            emit changed();
            emit stageChanged();
        }
    }
    film_->requestTime(seconds);
}

void ReviewModel::showSwing(const QString& clip) {
    const auto id = base::Id::fromHex(clip.toStdString());
    if (!id || mode_ == Mode::replaying || (shown_ != nullptr && shown_->clip == *id)) {
        return;
    }
    freeze();
    strokes_.clear();
    zoom_.reset();
    open(*id, 0.0);
    ReviewAct act;
    act.act = Act::go;
    act.clip = *id;
    add(std::move(act));
    emit showPart(QRectF());
}

void ReviewModel::goTo(int frame) {
    if (shown_ == nullptr || mode_ == Mode::replaying) {
        return;
    }
    freeze();
    film_->request(std::clamp(frame, 0, std::max(0, frames() - 1)));
}

void ReviewModel::step(int frames) {
    goTo(content_.frame + frames);
}

void ReviewModel::run(double speed) {
    if (shown_ == nullptr || mode_ == Mode::replaying) {
        return;
    }
    // As a person sees it: real time of the swing, whatever the film was stored at.
    speed_ = std::clamp(speed / std::max(1e-3, shown_->realPerShown), 0.01, 8.0);
    if (content_.frame >= frames() - 1) {
        ReviewAct back;
        back.act = Act::go;
        add(std::move(back));
        runFrom_ = 0.0;
    } else {
        runFrom_ = content_.time.value();
    }
    if (mode_ == Mode::looking) {
        clock_.start();
    }
    runSince_ = now();
    running_ = true;
    ReviewAct act;
    act.act = Act::play;
    act.speed = speed_;
    add(std::move(act));
    tick_.start();
    emit changed();
}

void ReviewModel::freeze() {
    if (!running_ || mode_ == Mode::replaying) {
        return;
    }
    running_ = false;
    if (mode_ == Mode::looking) {
        tick_.stop();
    }
    ReviewAct act;
    act.act = Act::freeze;
    add(std::move(act));
    emit changed();
}

void ReviewModel::zoomed(const QRectF& part) {
    if (mode_ == Mode::replaying) {
        return;
    }
    zoom_ = part.isEmpty() ? std::nullopt : std::optional(part);
    if (mode_ != Mode::recording) {
        return;
    }
    ReviewAct act;
    act.act = Act::zoom;
    if (zoom_) {
        act.zoom = boxOf(*zoom_);
    }
    // A pinch is many small moves: one act a tenth of a second is smooth enough.
    if (!recording_.acts.empty() && recording_.acts.back().act == Act::zoom &&
        now() - recording_.acts.back().atMs < 100) {
        recording_.acts.back().zoom = act.zoom;
        return;
    }
    add(std::move(act));
}

void ReviewModel::draw(const QVariantList& points) {
    std::vector<base::Vec2> stroke;
    for (qsizetype i = 0; i + 1 < points.size(); i += 2) {
        stroke.push_back({points[i].toDouble(), points[i + 1].toDouble()});
    }
    if (stroke.size() > kMostStrokePoints) { // evenly thinned; both ends stay
        std::vector<base::Vec2> thin;
        for (std::size_t i = 0; i < kMostStrokePoints; ++i) {
            thin.push_back(stroke[i * (stroke.size() - 1) / (kMostStrokePoints - 1)]);
        }
        stroke = std::move(thin);
    }
    if (stroke.size() < 2 || mode_ == Mode::replaying) {
        return;
    }
    ReviewAct act;
    act.act = Act::draw;
    act.points = stroke;
    add(std::move(act));
    strokes_.push_back(std::move(stroke));
    fill();
}

void ReviewModel::clearStrokes() {
    if (mode_ == Mode::replaying || strokes_.empty()) {
        return;
    }
    strokes_.clear();
    ReviewAct act;
    act.act = Act::clear;
    add(std::move(act));
    fill();
}

void ReviewModel::setMarks(bool on) {
    if (marks_ == on || mode_ == Mode::replaying) {
        return;
    }
    marks_ = on;
    ReviewAct act;
    act.act = Act::marks;
    act.on = on;
    add(std::move(act));
    if (on) {
        readMarks();
    }
    fill();
    emit changed();
}

void ReviewModel::setDrawing(bool on) {
    drawing_ = on && mode_ != Mode::replaying;
    emit changed();
}

/// Landmarks of the clip on show; they appear when they have been read.
void ReviewModel::readMarks() {
    if (shown_ == nullptr || outcomes_.count(shown_->clip) != 0) {
        return;
    }
    outcomes_[shown_->clip] = nullptr;
    worker_.post([this, clip = shown_->clip] {
        session::SwingDesk desk(parts_.library, parts_.network);
        const auto opened = desk.open(clip, worker_.progress());
        if (opened.ok() && *opened) {
            auto outcome = std::make_shared<const analysis::Outcome>(desk.outcome());
            Worker::tell(this, [this, clip, outcome] {
                outcomes_[clip] = outcome;
                fill();
            });
        }
    });
}

void ReviewModel::record() {
    if (shown_ == nullptr || mode_ != Mode::looking || busy_) {
        return;
    }
    running_ = false;
    tick_.stop();
    problem_.clear();
    made_.clear();
    recording_ = {};
    recording_.saw = review_.saw;
    recording_.said = review_.said;
    recording_.next = review_.next;
    strokes_.clear();
    heard_ = {};
    atMs_ = 0;
    mode_ = Mode::recording;
    if (parts_.microphone != nullptr) {
        const auto rate = parts_.microphone->start([this](std::span<const float> mono) {
            const std::lock_guard lock(heardMutex_);
            if (heard_.samples.empty()) { // the first samples tell when the voice began
                heard_.start = base::Seconds{static_cast<double>(now()) / 1000.0 -
                                             static_cast<double>(mono.size()) / std::max(1.0, heard_.rate)};
            }
            if (static_cast<double>(heard_.samples.size()) < heard_.rate * kMostVoiceMs / 1000.0) {
                heard_.samples.insert(heard_.samples.end(), mono.begin(), mono.end());
            }
        });
        const std::lock_guard lock(heardMutex_);
        if (rate.ok()) {
            heard_.rate = *rate;
        } else {
            problem_ = inLanguage(QString::fromStdString(rate.error().sentence));
        }
    } else {
        problem_ = tr("This device has no microphone: the review is kept without a voice.");
    }
    clock_.start();
    ReviewAct first;
    first.act = Act::go;
    first.clip = shown_->clip;
    first.time = content_.time;
    add(std::move(first));
    if (marks_) {
        ReviewAct act;
        act.act = Act::marks;
        add(std::move(act));
    }
    if (zoom_) {
        ReviewAct act;
        act.act = Act::zoom;
        act.zoom = boxOf(*zoom_);
        add(std::move(act));
    }
    tick_.start();
    fill();
    emit changed();
}

void ReviewModel::stop() {
    if (mode_ == Mode::replaying) {
        tick_.stop();
        if (parts_.speaker != nullptr) {
            parts_.speaker->stop();
        }
        mode_ = Mode::looking;
        running_ = false;
        strokes_.clear();
        fill();
        emit showPart(zoom_.value_or(QRectF()));
        emit changed();
        return;
    }
    if (mode_ != Mode::recording) {
        return;
    }
    tick_.stop();
    if (parts_.microphone != nullptr) {
        parts_.microphone->stop();
    }
    recording_.lengthMs = std::clamp<std::int64_t>(now(), 1, records::kMostReviewMs);
    mode_ = Mode::looking;
    running_ = false;
    busy_ = true;
    std::optional<video::Sound> voice; // empty without a microphone: never an older recording's
    {
        const std::lock_guard lock(heardMutex_);
        voice = std::exchange(heard_, {});
    }
    emit changed();
    worker_.post([this, review = recording_, voice = std::move(voice)] {
        session::ReviewDesk desk(parts_.library, parts_.network);
        const auto kept = desk.keepHeard(lesson_, review, voice);
        const QString problem =
            kept.ok() ? QString() : inLanguage(QString::fromStdString(kept.error().sentence));
        Worker::tell(this, [this, problem] {
            busy_ = false;
            atMs_ = 0;
            reload(problem.isEmpty() ? problem_ : problem);
            emit clockChanged();
        });
    });
}

void ReviewModel::replay() {
    if (!hasReview() || mode_ == Mode::recording || busy_) {
        return;
    }
    freeze();
    drawing_ = false;
    if (mode_ == Mode::looking || atMs_ >= review_.lengthMs) {
        atMs_ = 0;
    }
    const bool fresh = mode_ == Mode::looking;
    mode_ = Mode::replaying;
    replayFrom_ = atMs_;
    clock_.start();
    if (parts_.speaker != nullptr && voice_) {
        parts_.speaker->play(*voice_, base::Seconds{static_cast<double>(atMs_) / 1000.0});
    }
    showView(records::viewAt(review_, static_cast<double>(atMs_)), fresh);
    tick_.start();
    emit changed();
}

void ReviewModel::pauseReplay() {
    if (mode_ == Mode::replaying) {
        tick_.stop();
        if (parts_.speaker != nullptr) {
            parts_.speaker->stop();
        }
        emit changed();
    }
}

void ReviewModel::seek(int milliseconds) {
    if (mode_ != Mode::replaying) {
        return;
    }
    const bool on = tick_.isActive();
    pauseReplay();
    atMs_ = std::clamp<std::int64_t>(milliseconds, 0, review_.lengthMs);
    showView(records::viewAt(review_, static_cast<double>(atMs_)), false);
    emit clockChanged();
    if (on) {
        replay();
    }
}

/// Shows what the review shows at an instant; only what differs from the instant before.
void ReviewModel::showView(const records::ReviewView& view, bool all) {
    const bool otherClip = view.clip && (shown_ == nullptr || shown_->clip != *view.clip);
    const double time = std::max(0.0, view.time.value());
    if (otherClip) {
        open(*view.clip, time);
    } else if (all || view.time != view_.time) {
        film_->requestTime(time);
    }
    if (all || otherClip || view.zoom != view_.zoom) {
        emit showPart(view.zoom ? rectOf(*view.zoom) : QRectF());
    }
    strokes_ = view.strokes;
    if (marks_ != view.marks) {
        marks_ = view.marks;
        if (marks_) {
            readMarks();
        }
        emit changed();
    }
    view_ = view;
    fill();
}

void ReviewModel::tick() {
    if (mode_ == Mode::replaying) {
        atMs_ = std::min(replayFrom_ + now(), review_.lengthMs);
        showView(records::viewAt(review_, static_cast<double>(atMs_)), false);
        if (atMs_ >= review_.lengthMs) {
            pauseReplay();
        }
        emit clockChanged();
        return;
    }
    if (mode_ == Mode::recording) {
        atMs_ = now();
        emit clockChanged();
        if (atMs_ >= kMostVoiceMs) {
            stop();
            return;
        }
    }
    if (running_) {
        film_->requestTime(runFrom_ + static_cast<double>(now() - runSince_) / 1000.0 * speed_);
        if (content_.frame >= frames() - 1 && now() - runSince_ > 200) {
            freeze();
        }
    }
}

void ReviewModel::takePicture(int frame, double seconds, const QImage& picture) {
    // A step or a scrub becomes an act when its picture stands there, so that a replay shows what was seen.
    const bool moved = frame != content_.frame;
    content_.picture = picture;
    content_.frame = frame;
    content_.time = base::Seconds{seconds};
    if (mode_ == Mode::recording && !running_ && moved) {
        ReviewAct act;
        act.act = Act::go;
        act.time = base::Seconds{seconds};
        add(std::move(act));
    }
    fill();
}

void ReviewModel::fill() {
    content_.marks = {};
    content_.shaft.reset();
    content_.extraLines.clear();
    content_.drawings.clear();
    if (shown_ != nullptr && content_.frame >= 0) {
        const auto known = outcomes_.find(shown_->clip);
        const auto i = static_cast<std::size_t>(content_.frame);
        if (marks_ && known != outcomes_.end() && known->second && i < known->second->track.size()) {
            const analysis::Outcome& outcome = *known->second;
            content_.marks = outcome.track[i];
            if (i < outcome.shaft.size()) {
                content_.shaft = outcome.shaft[i];
            }
            const auto& ankle = content_.marks[marks::Landmark::lead_ankle];
            if (outcome.context.view == marks::View::faceOn && ankle) {
                content_.extraLines.push_back(
                    {ankle->at,
                     ankle->at + outcome.scene.vertical.up() * 0.6 * double(content_.picture.height()),
                     stage::StageLine::Kind::plumb});
            }
        }
        for (const auto& stroke : strokes_) {
            content_.drawings.push_back({stage::StageDrawing::Shape::freehand, stroke, {}});
        }
    }
    emit stageChanged();
}

void ReviewModel::keepNote(const QString& saw, const QString& said, const QString& next) {
    if (busy_) {
        return;
    }
    records::Review review = review_;
    review.saw = saw.trimmed().toStdString();
    review.said = said.trimmed().toStdString();
    review.next = next.trimmed().toStdString();
    session::ReviewDesk desk(parts_.library, parts_.network);
    const auto kept = desk.keepHeard(lesson_, review, std::nullopt);
    noteKept_ = kept.ok();
    reload(kept.ok() ? QString() : inLanguage(QString::fromStdString(kept.error().sentence)));
}

/// A name that no file has yet, in the folder where films usually lie.
std::filesystem::path ReviewModel::target(const QString& ending) const {
    const auto places = parts_.places.filmPlaces();
    const std::filesystem::path folder = places.empty() ? std::filesystem::path(".") : places.front().folder;
    static const QRegularExpression kUnsafe(QStringLiteral("[^\\p{L}\\p{N} ._-]"));
    QString stem = (title_ + QLatin1Char(' ') + day_).simplified();
    stem.remove(kUnsafe);
    stem = stem.left(80).trimmed();
    if (stem.isEmpty() || stem.startsWith(QLatin1Char('.'))) {
        stem = QStringLiteral("lesson");
    }
    for (int i = 1; i < 1000; ++i) {
        const QString name = (i == 1 ? stem : QStringLiteral("%1 %2").arg(stem).arg(i)) + ending;
        const auto path = folder / std::filesystem::path(name.toStdString());
        std::error_code error;
        if (!std::filesystem::exists(path, error)) {
            return path;
        }
    }
    return folder / std::filesystem::path((stem + ending).toStdString());
}

void ReviewModel::make(const QString& ending,
                       std::function<base::Result<bool>(session::ReviewDesk&, const std::filesystem::path&,
                                                        const base::Progress&)>
                           how) {
    if (busy_ || mode_ == Mode::recording || parts_.painter == nullptr) {
        return;
    }
    stop();
    busy_ = true;
    progressShare_ = 0.0;
    cancelMaking_ = false;
    problem_.clear();
    made_.clear();
    emit changed();
    worker_.post([this, path = target(ending), how = std::move(how)] {
        session::ReviewDesk desk(parts_.library, parts_.network);
        base::Progress progress;
        progress.cancel = &cancelMaking_;
        progress.report = [this](double share, std::string_view) {
            Worker::tell(this, [this, share] {
                progressShare_ = share;
                emit progressChanged();
            });
        };
        const auto done = how(desk, path, progress);
        Worker::tell(this, [this, done, path] {
            busy_ = false;
            if (!done.ok()) {
                problem_ = inLanguage(QString::fromStdString(done.error().sentence));
            } else {
                made_ = *done ? tr("Written: %1").arg(QString::fromStdString(path.string()))
                              : tr("Stopped; nothing was written.");
            }
            emit changed();
        });
    });
}

void ReviewModel::makeFilm() {
    if (!hasReview()) {
        return;
    }
    make(QStringLiteral(".mp4"),
         [this](session::ReviewDesk& desk, const std::filesystem::path& path,
                const base::Progress& progress) -> base::Result<bool> {
             const auto made = desk.film(lesson_, {}, *parts_.painter, path, progress);
             if (!made) {
                 return made.error();
             }
             return made->has_value();
         });
}

void ReviewModel::makeSheet() {
    make(QStringLiteral(".pdf"), [this](session::ReviewDesk& desk, const std::filesystem::path& path,
                                        const base::Progress& progress) {
        return desk.sheet(lesson_, *parts_.painter, path, progress);
    });
}

} // namespace plumbmark::bridge
