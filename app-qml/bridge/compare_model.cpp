// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/compare_model.h"

#include <QLocale>
#include <algorithm>
#include <array>
#include <cmath>

#include "bridge/in_language.h"
#include "bridge/phrases.h"
#include "measure/construction.h"
#include "session/swing_desk.h"

namespace plumbmark::bridge {

using comparison::Feature;

namespace {

constexpr double kSlowPlay = 0.125; ///< of real speed
constexpr std::array kFeatures{Feature::hands, Feature::shaft, Feature::body, Feature::time_from_impact};

QString featureKey(Feature feature) {
    const auto name = comparison::featureName(feature);
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

/// The whole swing of the player in the picture, with some air around; empty where nothing is marked.
QRectF boxOf(const analysis::Outcome& outcome) {
    QRectF box;
    for (const marks::FrameMarks& frame : outcome.track) {
        for (const auto& mark : frame.points) {
            if (mark) {
                const QRectF point(mark->at.x - 0.5, mark->at.y - 0.5, 1, 1);
                box = box.isNull() ? point : box.united(point);
            }
        }
    }
    if (box.isNull()) {
        return {};
    }
    const double margin = 0.06 * std::max(box.width(), box.height());
    return box.adjusted(-margin, -margin, margin, margin)
        .intersected(QRectF(0, 0, outcome.clip.width, outcome.clip.height));
}

} // namespace

CompareSide::CompareSide(QObject* parent) : StageSource(parent) {}

void CompareSide::open(const std::filesystem::path& film, std::shared_ptr<const analysis::Outcome> outcome) {
    outcome_ = std::move(outcome);
    content_ = {};
    content_.playerBox = boxOf(*outcome_);
    otherLines_.clear();
    film_ = std::make_unique<FilmReader>();
    connect(film_.get(), &FilmReader::pictureReady, this, &CompareSide::take);
    connect(film_.get(), &FilmReader::failed, this, &CompareSide::failed);
    film_->open(film);
    emit stageChanged();
}

void CompareSide::close() {
    film_.reset();
    outcome_.reset();
    content_ = {};
    emit stageChanged();
}

void CompareSide::request(int frame) {
    if (film_ && outcome_) {
        wanted_ = std::clamp(frame, 0, std::max(0, outcome_->clip.frames - 1));
        film_->request(wanted_);
    }
}

void CompareSide::take(int frame, double seconds, const QImage& picture) {
    content_.picture = picture;
    content_.frame = frame;
    content_.time = base::Seconds{seconds};
    content_.marks = {};
    content_.shaft.reset();
    const auto i = static_cast<std::size_t>(frame);
    if (i < outcome_->track.size()) {
        content_.marks = outcome_->track[i];
    }
    if (i < outcome_->shaft.size()) {
        content_.shaft = outcome_->shaft[i];
    }
    fillLines();
    emit pictureTaken();
}

void CompareSide::setOtherLines(std::vector<stage::StageLine> lines) {
    otherLines_ = std::move(lines);
    fillLines();
}

void CompareSide::fillLines() {
    content_.extraLines = otherLines_;
    // Face-on, the plumb line everybody looks for stands on the lead ankle.
    const auto& ankle = content_.marks[marks::Landmark::lead_ankle];
    if (outcome_ && outcome_->context.view == marks::View::faceOn && ankle) {
        const double length = 0.75 * content_.playerBox.height();
        content_.extraLines.push_back(
            {ankle->at, ankle->at + outcome_->scene.vertical.up() * length, stage::StageLine::Kind::plumb});
    }
    emit stageChanged();
}

QString CompareSide::frameText() const {
    return content_.frame < 0 || !outcome_
               ? QString()
               : tr("Frame %1 of %2")
                     .arg(QLocale().toString(content_.frame + 1), QLocale().toString(outcome_->clip.frames));
}

QString CompareSide::timeText() const {
    const marks::Moment* impact =
        outcome_ ? marks::find(outcome_->moments, marks::MomentId::impact) : nullptr;
    if (content_.frame < 0 || impact == nullptr || !outcome_->timeScale.known) {
        return {};
    }
    const double real = (content_.time - impact->time).value() * outcome_->timeScale.realPerShown;
    return tr("%1 s").arg((real > 0 ? QStringLiteral("+") : QString()) + decimal(real, 3));
}

CompareModel::CompareModel(store::Library& library, analysis::NetworkBytes network, QObject* parent)
    : QObject(parent), library_(&library), network_(std::move(network)), first_(new CompareSide(this)),
      second_(new CompareSide(this)) {
    for (CompareSide* side : {first_, second_}) {
        connect(side, &CompareSide::pictureTaken, this, &CompareModel::pictureTaken);
        connect(side, &CompareSide::failed, this, [this](const QString& sentence) {
            problem_ = sentence;
            emit changed();
        });
    }
    play_.setInterval(15);
    connect(&play_, &QTimer::timeout, this, &CompareModel::playOn);
}

CompareModel::~CompareModel() = default;

CompareModel::Opened CompareModel::read(const base::Id& clip) {
    session::SwingDesk desk(*library_, network_);
    const auto opened = desk.open(clip, worker_.progress([this](double share, std::string_view) {
        Worker::tell(this, [this, share] {
            progressShare_ = share;
            emit progressChanged();
        });
    }));
    if (!opened.ok()) {
        return {nullptr, {}, inLanguage(opened.error().sentence)};
    }
    if (!*opened) {
        return {};
    }
    return {std::make_shared<const analysis::Outcome>(desk.outcome()), desk.film(), {}};
}

void CompareModel::open(const base::Id& clip, const QString& title) {
    title_ = title;
    busy_ = true;
    emit changed();
    worker_.post([this, clip] {
        const Opened opened = read(clip);
        auto references = session::referencesFor(*library_, clip);
        Worker::tell(this, [this, opened, references] {
            takeFirst(opened, references.ok() ? *references : std::vector<session::Reference>());
        });
    });
}

void CompareModel::takeFirst(const Opened& opened, const std::vector<session::Reference>& references) {
    busy_ = false;
    problem_ = opened.problem;
    references_ = references;
    if (opened.outcome) {
        first_->open(opened.film, opened.outcome);
        moments_.show(*opened.outcome);
        const marks::Moment* start = marks::find(opened.outcome->moments, marks::MomentId::address);
        first_->request(start == nullptr ? 0 : measure::nearestFrame(opened.outcome->track, start->time));
        if (!references_.empty()) {
            choose(QString::fromStdString(references_.front().clip.hex()));
            return;
        }
    }
    emit changed();
}

void CompareModel::choose(const QString& clip) {
    const auto id = base::Id::fromHex(clip.toStdString());
    if (!id || !told()) {
        return;
    }
    setPlaying(false);
    other_ = *id;
    busy_ = true;
    progressShare_ = 0.0;
    problem_.clear();
    comparison_.reset();
    overlay_.reset();
    second_->close();
    ++asked_;
    emit changed();
    emit frameChanged();
    worker_.post([this, clip = *id, asked = asked_] {
        const Opened opened = read(clip);
        Worker::tell(this, [this, opened, asked] {
            if (asked == asked_) {
                takeSecond(opened);
            }
        });
    });
}

void CompareModel::takeSecond(const Opened& opened) {
    busy_ = false;
    problem_ = opened.problem;
    if (opened.outcome) {
        second_->open(opened.film, opened.outcome);
        match(std::nullopt);
    }
    emit changed();
}

void CompareModel::matchBy(const QString& feature) {
    if (const auto known = comparison::featureFromName(feature.toStdString())) {
        match(*known);
    }
}

/// By this feature, or by the first one that both swings show.
void CompareModel::match(std::optional<Feature> only) {
    if (!first_->outcome() || !second_->outcome()) {
        return;
    }
    ++asked_;
    worker_.post([this, a = first_->outcome(), b = second_->outcome(), only, asked = asked_] {
        std::shared_ptr<const session::SwingComparison> made;
        QString problem;
        for (const Feature feature : kFeatures) {
            if (only && feature != *only) {
                continue;
            }
            auto comparison = session::SwingComparison::make(*a, *b, feature);
            if (comparison.ok()) {
                made = std::make_shared<const session::SwingComparison>(std::move(*comparison));
                problem.clear();
                break;
            }
            if (problem.isEmpty()) {
                problem = inLanguage(comparison.error().sentence);
            }
        }
        Worker::tell(this, [this, made, problem, asked] {
            if (asked == asked_) {
                takeComparison(made, problem);
            }
        });
    });
}

void CompareModel::takeComparison(std::shared_ptr<const session::SwingComparison> comparison,
                                  const QString& problem) {
    problem_ = problem;
    if (comparison) {
        comparison_ = std::move(comparison); // a feature that cannot be used leaves the one before in place
    }
    emit changed();
    goTo(first_->wanted());
}

void CompareModel::goTo(int frame) {
    if (!told()) {
        return;
    }
    first_->request(frame);
    if (!second_->outcome()) {
        return;
    }
    const auto& one = *first_->outcome();
    const auto& two = *second_->outcome();
    const auto i = static_cast<std::size_t>(first_->wanted());
    int there = 0;
    bool outside = comparison_ == nullptr;
    if (comparison_ && i < one.track.size()) {
        base::Seconds at = one.track[i].time;
        const auto& knots = comparison_->match().knots();
        // Key moments lie between frames: the frame nearest to the first or last of them still counts.
        const base::Seconds step = i + 1 < one.track.size() ? one.track[i + 1].time - at
                                   : i > 0                  ? at - one.track[i - 1].time
                                                            : base::Seconds{};
        if (!knots.empty() && at < knots.front().first && knots.front().first - at < step) {
            at = knots.front().first;
        } else if (!knots.empty() && at > knots.back().first && at - knots.back().first < step) {
            at = knots.back().first;
        }
        if (const auto same = comparison_->inSecond(at)) {
            there = measure::nearestFrame(two.track, *same);
        } else if (!knots.empty()) {
            outside = true;
            there = measure::nearestFrame(two.track, at < knots.front().first ? knots.front().second
                                                                              : knots.back().second);
        }
    }
    if (outside != outside_) {
        outside_ = outside;
        emit frameChanged();
    }
    second_->request(there);
}

void CompareModel::step(int frames) {
    setPlaying(false);
    goTo(first_->wanted() + frames);
}

void CompareModel::jumpTo(int momentRow) {
    if (const int frame = moments_.frameOf(momentRow); frame >= 0) {
        setPlaying(false);
        goTo(frame);
    }
}

void CompareModel::setPlaying(bool playing) {
    if (playing == play_.isActive() || (playing && !told())) {
        return;
    }
    if (playing) {
        if (frame() >= frames() - 1) {
            goTo(0);
            playFrom_ = 0.0;
        } else {
            playFrom_ = first_->stageContent().time.value();
        }
        playClock_.start();
        play_.start();
    } else {
        play_.stop();
    }
    emit playingChanged();
}

void CompareModel::playOn() {
    const analysis::Outcome& outcome = *first_->outcome();
    const double real = playClock_.elapsed() / 1000.0 * kSlowPlay;
    const base::Seconds shown{playFrom_ + real / std::max(outcome.timeScale.realPerShown, 1e-6)};
    const int frame = static_cast<int>(marks::frameAt(outcome.track, shown));
    if (frame != first_->wanted()) {
        goTo(frame);
    }
    if (frame >= frames() - 1) {
        setPlaying(false);
    }
}

void CompareModel::setOverlaid(bool overlaid) {
    if (overlaid != overlaid_) {
        overlaid_ = overlaid;
        pictureTaken();
    }
}

void CompareModel::pictureTaken() {
    moments_.setShownFrame(frame());
    overlay_.reset();
    std::vector<stage::StageLine> lines;
    if (comparison_ && first_->ready() && second_->ready()) {
        overlay_ =
            comparison::overlayOf(session::sideOf(*first_->outcome()), session::sideOf(*second_->outcome()),
                                  frame(), second_->stageContent().frame);
        if (overlaid()) {
            for (const auto& line : stage::bodyLines(second_->stageContent().marks)) {
                lines.push_back(
                    {overlay_->toFirst(line.a), overlay_->toFirst(line.b), stage::StageLine::Kind::before});
            }
        }
    }
    first_->setOtherLines(std::move(lines));
    emit frameChanged();
}

int CompareModel::frames() const {
    return told() ? first_->outcome()->clip.frames : 0;
}

QPointF CompareModel::firstFeet() const {
    return overlay_ ? QPointF(overlay_->firstFeet.x, overlay_->firstFeet.y) : QPointF();
}

QPointF CompareModel::secondFeet() const {
    return overlay_ ? QPointF(overlay_->secondFeet.x, overlay_->secondFeet.y) : QPointF();
}

QVariantList CompareModel::references() const {
    using Why = session::Reference::Why;
    QVariantList list;
    for (const session::Reference& r : references_) {
        QString why;
        switch (r.why) {
        case Why::own_best:
            why = tr("own best");
            break;
        case Why::same_lesson:
            why = tr("same lesson");
            break;
        case Why::other_day:
            why = tr("another lesson");
            break;
        case Why::other_club:
            why = r.kind.club ? tr("another club: %1").arg(clubLabel(*r.kind.club)) : tr("another club");
            break;
        case Why::other_player:
            why = tr("another player");
            break;
        }
        QString label = tr("%1, swing %2").arg(dayText(r.day), QLocale().toString(r.number));
        if (r.why == Why::other_player) {
            label = tr("%1, %2").arg(QString::fromStdString(r.playerName), label);
        }
        list.append(QVariantMap{
            {QStringLiteral("clip"), QString::fromStdString(r.clip.hex())},
            {QStringLiteral("label"), label},
            {QStringLiteral("why"), why},
            {QStringLiteral("checks"),
             r.told == 0
                 ? tr("no check could be told")
                 : tr("%1 of %2 checks good").arg(QLocale().toString(r.good), QLocale().toString(r.told))},
            {QStringLiteral("chosen"), other_ && *other_ == r.clip},
        });
    }
    return list;
}

QString CompareModel::otherLabel() const {
    for (const QVariant& entry : references()) {
        const QVariantMap r = entry.toMap();
        if (r.value(QStringLiteral("chosen")).toBool()) {
            return tr("%1 (%2)").arg(r.value(QStringLiteral("label")).toString(),
                                     r.value(QStringLiteral("why")).toString());
        }
    }
    return {};
}

QString CompareModel::matchedBy() const {
    return comparison_ ? featureKey(comparison_->matchedBy()) : QString();
}

QVariantList CompareModel::features() const {
    const auto entry = [](Feature feature, const QString& text) {
        return QVariantMap{{QStringLiteral("value"), featureKey(feature)}, {QStringLiteral("text"), text}};
    };
    return {entry(Feature::hands, tr("Hands")), entry(Feature::shaft, tr("Shaft")),
            entry(Feature::body, tr("Body")), entry(Feature::time_from_impact, tr("Time from impact"))};
}

QString CompareModel::matchedByWords() const {
    for (const QVariant& entry : features()) {
        const QVariantMap f = entry.toMap();
        if (f.value(QStringLiteral("value")) == matchedBy()) {
            return f.value(QStringLiteral("text")).toString();
        }
    }
    return {};
}

QVariantList CompareModel::rows() const {
    QVariantList list;
    if (!comparison_) {
        return list;
    }
    // Centimetres only where both bodies are equally tall; else shares of height.
    const auto& mine = first_->outcome()->context.statureMetres;
    const auto& theirs = second_->outcome()->context.statureMetres;
    const std::optional<double> stature = mine == theirs ? mine : std::nullopt;
    for (const comparison::Difference& d : comparison_->rows()) {
        const base::Measured between{d.difference, d.sigma, d.first.unit, d.first.origin};
        const QString label = measurementLabel(d.id);
        const QString moment = d.moment ? momentLabel(*d.moment) : QString();
        const QString first = numberText(d.first, stature).whole();
        const QString second = numberText(d.second, stature).whole();
        NumberText difference = numberText(between, stature);
        if (d.difference > 0) {
            difference.value.prepend(QLatin1Char('+'));
        }
        const QString word = d.beyondDoubt ? tr("beyond doubt") : tr("not beyond doubt");
        const marks::Moment* at = d.moment ? marks::find(first_->outcome()->moments, *d.moment) : nullptr;
        list.append(QVariantMap{
            {QStringLiteral("label"), label},
            {QStringLiteral("moment"), moment},
            {QStringLiteral("first"), first},
            {QStringLiteral("second"), second},
            {QStringLiteral("difference"), difference.value},
            {QStringLiteral("sigma"), difference.sigma},
            {QStringLiteral("unit"), difference.unit},
            {QStringLiteral("beyond"), d.beyondDoubt},
            {QStringLiteral("word"), word},
            {QStringLiteral("frame"),
             at == nullptr ? -1 : measure::nearestFrame(first_->outcome()->track, at->time)},
            {QStringLiteral("spoken"), tr("%1: this swing %2, the other %3, difference %4, %5")
                                           .arg(moment.isEmpty() ? label : tr("%1, %2").arg(label, moment),
                                                first, second, difference.whole(), word)},
        });
    }
    // What is certain first; within both the order of the swing.
    std::stable_sort(list.begin(), list.end(), [](const QVariant& a, const QVariant& b) {
        return a.toMap().value(QStringLiteral("beyond")).toBool() &&
               !b.toMap().value(QStringLiteral("beyond")).toBool();
    });
    return list;
}

int CompareModel::beyondDoubt() const {
    return comparison_
               ? static_cast<int>(std::count_if(comparison_->rows().begin(), comparison_->rows().end(),
                                                [](const auto& d) { return d.beyondDoubt; }))
               : 0;
}

QStringList CompareModel::warnings() const {
    QStringList list;
    if (comparison_) {
        for (const std::string& warning : comparison_->warnings()) {
            list << inLanguage(warning);
        }
    }
    return list;
}

} // namespace plumbmark::bridge
