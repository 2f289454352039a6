// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/shot_record_model.h"

#include "bridge/in_language.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace plumbmark::bridge {

using records::BallCurve;
using records::BallHeight;
using records::BallPlace;
using records::BallStart;
using records::Contact;
using records::Shot;
using records::Surface;

namespace {

struct BallWords {
    Q_DECLARE_TR_FUNCTIONS(BallWords)
};

QString words(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

// Start line in the trade's words is told from the player's hands: a pull starts toward the lead side of
// right- and left-handers alike, and so do hook and slice with the curve.
QString flightLabel(BallStart start, BallCurve curve) {
    static const std::array kLabels{
        QT_TRANSLATE_NOOP("BallWords", "Pull hook"),  QT_TRANSLATE_NOOP("BallWords", "Pull"),
        QT_TRANSLATE_NOOP("BallWords", "Pull slice"), QT_TRANSLATE_NOOP("BallWords", "Hook"),
        QT_TRANSLATE_NOOP("BallWords", "Straight"),   QT_TRANSLATE_NOOP("BallWords", "Slice"),
        QT_TRANSLATE_NOOP("BallWords", "Push hook"),  QT_TRANSLATE_NOOP("BallWords", "Push"),
        QT_TRANSLATE_NOOP("BallWords", "Push slice"),
    };
    return BallWords::tr(
        kLabels.at(static_cast<std::size_t>(3 * static_cast<int>(start) + static_cast<int>(curve))));
}
QString label(BallHeight value) {
    static const std::array kLabels{QT_TRANSLATE_NOOP("BallWords", "Low"),
                                    QT_TRANSLATE_NOOP("BallWords", "Normal"),
                                    QT_TRANSLATE_NOOP("BallWords", "High")};
    return BallWords::tr(kLabels.at(static_cast<std::size_t>(value)));
}
QString label(Contact value) {
    static const std::array kLabels{
        QT_TRANSLATE_NOOP("BallWords", "Solid"), QT_TRANSLATE_NOOP("BallWords", "Heavy"),
        QT_TRANSLATE_NOOP("BallWords", "Thin"),  QT_TRANSLATE_NOOP("BallWords", "Topped"),
        QT_TRANSLATE_NOOP("BallWords", "Heel"),  QT_TRANSLATE_NOOP("BallWords", "Toe"),
        QT_TRANSLATE_NOOP("BallWords", "Shank"), QT_TRANSLATE_NOOP("BallWords", "Missed")};
    return BallWords::tr(kLabels.at(static_cast<std::size_t>(value)));
}
QString label(BallPlace value) {
    static const std::array kLabels{QT_TRANSLATE_NOOP("BallWords", "Forward"),
                                    QT_TRANSLATE_NOOP("BallWords", "Middle"),
                                    QT_TRANSLATE_NOOP("BallWords", "Back")};
    return BallWords::tr(kLabels.at(static_cast<std::size_t>(value)));
}
QString label(Surface value) {
    static const std::array kLabels{
        QT_TRANSLATE_NOOP("BallWords", "Mat"), QT_TRANSLATE_NOOP("BallWords", "Grass"),
        QT_TRANSLATE_NOOP("BallWords", "Sand"), QT_TRANSLATE_NOOP("BallWords", "Tee")};
    return BallWords::tr(kLabels.at(static_cast<std::size_t>(value)));
}

template <class E> QVariantMap question(const char* field, const QString& text, int count) {
    QVariantList choices;
    for (int i = 0; i < count; ++i) {
        const E choice = static_cast<E>(i);
        choices.append(QVariantMap{{QStringLiteral("value"), words(name(choice))},
                                   {QStringLiteral("text"), label(choice)}});
    }
    return {{QStringLiteral("field"), QString::fromLatin1(field)},
            {QStringLiteral("question"), text},
            {QStringLiteral("choices"), choices}};
}

template <class E> QString told(const std::optional<E>& value) {
    return value ? words(name(*value)) : QString();
}

template <class E> void toggle(std::optional<E>& field, const QString& value) {
    const auto chosen = records::fromName<E>(value.toStdString());
    field = chosen == field ? std::nullopt : chosen;
}

} // namespace

void ShotRecordModel::load(const base::Id& clip) {
    const auto row = library_->clip(clip);
    if (!row.ok() || !*row) {
        return; // the desk says what is wrong with the clip
    }
    leftHanded_ = (*row)->clip.hand == marks::Hand::left;
    if (auto shot = book_.shot((*row)->shot); shot.ok()) {
        id_ = (*row)->shot;
        shot_ = std::move(*shot);
    } else {
        problem_ = inLanguage(shot.error().sentence);
    }
    emit loaded();
    emit changed();
}

QVariantList ShotRecordModel::flights() const {
    // A right-hander's lead side is the left one.
    const int turn = leftHanded_ ? -1 : 1;
    QVariantList list;
    for (int curve = -1; curve <= 1; ++curve) {
        for (int start = -1; start <= 1; ++start) {
            const auto starts = static_cast<BallStart>(turn * start + 1);
            const auto curves = static_cast<BallCurve>(turn * curve + 1);
            list.append(QVariantMap{
                {QStringLiteral("value"), words(name(starts)) + QLatin1Char(' ') + words(name(curves))},
                {QStringLiteral("text"), flightLabel(starts, curves)},
                {QStringLiteral("glyph"), QStringLiteral("flight %1 %2").arg(start).arg(curve)},
            });
        }
    }
    return list;
}

QVariantList ShotRecordModel::questions() const {
    return {question<Contact>("contact", tr("Contact"), 8), question<BallHeight>("height", tr("Height"), 3),
            question<BallPlace>("place", tr("Ball in the stance"), 3),
            question<Surface>("surface", tr("Hit from"), 4)};
}

QVariantMap ShotRecordModel::answers() const {
    return {{QStringLiteral("flight"), shot_.start && shot_.curve
                                           ? told(shot_.start) + QLatin1Char(' ') + told(shot_.curve)
                                           : QString()},
            {QStringLiteral("contact"), told(shot_.contact)},
            {QStringLiteral("height"), told(shot_.height)},
            {QStringLiteral("place"), told(shot_.ballPlace)},
            {QStringLiteral("surface"), told(shot_.surface)}};
}

QString ShotRecordModel::tags() const {
    QStringList list;
    for (const std::string& tag : shot_.tags) {
        list << QString::fromStdString(tag);
    }
    return list.join(QStringLiteral(", "));
}

QString ballLabel(const records::Shot& shot) {
    QStringList parts;
    if (shot.start && shot.curve) {
        parts << flightLabel(*shot.start, *shot.curve);
    }
    if (shot.contact) {
        parts << label(*shot.contact);
    }
    if (shot.height && *shot.height != BallHeight::normal) {
        parts << label(*shot.height);
    }
    for (qsizetype i = 1; i < parts.size(); ++i) {
        parts[i] = parts[i].toLower();
    }
    return parts.join(QStringLiteral(", "));
}

QString ShotRecordModel::summary() const {
    return ballLabel(shot_);
}

void ShotRecordModel::chooseFlight(const QString& value) {
    const QStringList both = value.split(QLatin1Char(' '));
    const auto start = records::fromName<BallStart>(both.value(0).toStdString());
    const auto curve = records::fromName<BallCurve>(both.value(1).toStdString());
    if (!start || !curve) {
        return;
    }
    Shot shot = shot_;
    const bool again = shot.start == start && shot.curve == curve;
    shot.start = again ? std::nullopt : start;
    shot.curve = again ? std::nullopt : curve;
    keep(shot);
}

void ShotRecordModel::choose(const QString& field, const QString& value) {
    Shot shot = shot_;
    if (field == u"contact") {
        toggle(shot.contact, value);
    } else if (field == u"height") {
        toggle(shot.height, value);
    } else if (field == u"place") {
        toggle(shot.ballPlace, value);
    } else if (field == u"surface") {
        toggle(shot.surface, value);
    }
    keep(shot);
}

void ShotRecordModel::toggleStar() {
    Shot shot = shot_;
    shot.star = !shot.star;
    keep(shot);
}

void ShotRecordModel::fileUnder(const QString& tags) {
    Shot shot = shot_;
    shot.tags.clear();
    for (const QString& tag : tags.split(QLatin1Char(','))) {
        if (const QString word = tag.simplified(); !word.isEmpty()) {
            shot.tags.push_back(word.toStdString());
        }
    }
    std::sort(shot.tags.begin(), shot.tags.end());
    shot.tags.erase(std::unique(shot.tags.begin(), shot.tags.end()), shot.tags.end());
    keep(shot);
}

void ShotRecordModel::keep(const Shot& shot) {
    if (!id_) {
        return;
    }
    if (const auto kept = book_.edit(*id_, shot); kept.ok()) {
        shot_ = shot;
        problem_.clear();
    } else {
        problem_ = inLanguage(kept.error().sentence);
    }
    emit changed();
}

} // namespace plumbmark::bridge
