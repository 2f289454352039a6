// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/player_model.h"

#include <QDate>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <set>

#include "bridge/in_language.h"
#include "bridge/phrases.h"
#include "bridge/shot_record_model.h"

namespace plumbmark::bridge {

namespace {

const coaching::Playbook& playbook() {
    return coaching::Playbook::standard();
}

std::string todayIso() {
    return QDate::currentDate().toString(Qt::ISODate).toStdString();
}

QString kindLabel(const session::SwingKind& kind) {
    QStringList parts;
    if (kind.club) {
        parts << clubLabel(*kind.club);
    }
    parts << viewLabel(kind.view);
    if (kind.shot != marks::ShotKind::full) {
        parts << shotLabel(kind.shot);
    }
    return parts.join(QStringLiteral(" \u00b7 "));
}

QString numberLabel(const std::string& measurement, const std::optional<marks::MomentId>& moment) {
    const QString label = measurementLabel(measurement);
    return moment ? PlayerModel::tr("%1, %2").arg(label, momentLabel(*moment).toLower()) : label;
}

/// A step of 1, 2 or 5 times a power of ten that cuts the span in three to six.
double niceStep(double span) {
    const double raw = span / 4;
    const double power = std::pow(10.0, std::floor(std::log10(raw)));
    const double lead = raw / power;
    return power * (lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10);
}

} // namespace

PlayerModel::PlayerModel(store::Library& library, session::LessonBook& book, QObject* parent)
    : QObject(parent), library_(&library), book_(&book), lessons_(book) {}

PlayerModel::~PlayerModel() {
    stopReading();
}

void PlayerModel::stopReading() {
    stop_ = true;
    if (reader_.joinable()) {
        reader_.join();
    }
    stop_ = false;
}

void PlayerModel::open(std::optional<base::Id> player) {
    stopReading();
    id_ = std::move(player);
    filter_.clear();
    kind_ = number_ = 0;
    history_.reset();
    player_ = {};
    setProblem({});
    refresh();
}

void PlayerModel::refresh() {
    if (id_) {
        auto player = book_->player(*id_);
        if (player.ok()) {
            player_ = std::move(*player);
        } else {
            setProblem(inLanguage(player.error().sentence));
        }
        lessons_.showPlayer(*id_);
    }
    readLesson();
    readHistory();
    emit changed();
}

QString PlayerModel::about() const {
    QStringList parts;
    if (player_.hand) {
        parts << handLabel(*player_.hand);
    }
    if (player_.statureMetres) {
        parts << tr("%1 cm").arg(decimal(*player_.statureMetres * 100, 0));
    }
    if (!player_.group.empty()) {
        parts << group();
    }
    return parts.join(QStringLiteral(" \u00b7 "));
}

QString PlayerModel::hand() const {
    return player_.hand ? QString::fromUtf8(marks::handName(*player_.hand).data(),
                                            static_cast<qsizetype>(marks::handName(*player_.hand).size()))
                        : QString();
}

QString PlayerModel::stature() const {
    return player_.statureMetres
               ? QLocale().toString(*player_.statureMetres * 100, 'f', QLocale::FloatingPointShortest)
               : QString();
}

QVariantList PlayerModel::handChoices() const {
    return {
        QVariantMap{{QStringLiteral("value"), QStringLiteral("right")},
                    {QStringLiteral("text"), tr("Right")}},
        QVariantMap{{QStringLiteral("value"), QStringLiteral("left")}, {QStringLiteral("text"), tr("Left")}}};
}

bool PlayerModel::save(const QString& name, const QString& hand, const QString& stature, const QString& group,
                       const QString& note) {
    records::Player player = player_;
    player.name = name.simplified().toStdString();
    player.hand = marks::handFromName(hand.toStdString());
    player.group = group.simplified().toStdString();
    player.note = note.trimmed().toStdString();
    player.statureMetres.reset();
    if (const QString text = stature.trimmed(); !text.isEmpty()) {
        bool ok = false;
        const double centimetres = QLocale().toDouble(text, &ok);
        if (!ok || centimetres < 50 || centimetres > 250) {
            setProblem(tr("The height must be a number of centimetres from 50 to 250, such as 178; or leave "
                          "it empty."));
            return false;
        }
        player.statureMetres = centimetres / 100;
    }
    if (id_) {
        if (auto kept = book_->edit(*id_, player); !kept.ok()) {
            setProblem(inLanguage(kept.error().sentence));
            return false;
        }
    } else {
        auto added = book_->addPlayer(player);
        if (!added.ok()) {
            setProblem(inLanguage(added.error().sentence));
            return false;
        }
        id_ = *added;
    }
    setProblem({});
    refresh();
    emit saved();
    return true;
}

void PlayerModel::readLesson() {
    lesson_.reset();
    today_ = {};
    lastWish_.clear();
    if (id_) {
        const auto lessons = book_->lessons({}, id_);
        if (lessons.ok()) {
            const std::string today = todayIso();
            for (const store::LessonRow& row : *lessons) { // newest first
                const auto lesson = book_->lesson(row.id);
                if (!lesson.ok()) {
                    continue;
                }
                if (row.day == today && !lesson_) {
                    lesson_ = row.id;
                    today_ = *lesson;
                } else if (!lesson->wish.empty()) {
                    lastWish_ = tr("%1: %2").arg(dayText(row.day), QString::fromStdString(lesson->wish));
                    break;
                }
            }
        }
    }
    readOpener();
    emit lessonChanged();
}

void PlayerModel::readOpener() {
    opener_.clear();
    bodyAsked_.clear();
    if (!id_) {
        return;
    }
    session::CoachDesk desk(*library_, playbook());
    if (const auto card = desk.body().card(*id_); card.ok() && !card->day.empty()) {
        bodyAsked_ = dayText(card->day);
    }
    const auto told = session::nextLessonOpener(*library_, desk, *id_, todayIso());
    if (!told.ok()) {
        setProblem(inLanguage(told.error().sentence));
        return;
    }
    const session::FollowUp& up = *told;
    const auto section = [this](const QString& title, const QStringList& lines) {
        if (!lines.isEmpty()) {
            opener_.append(QVariantMap{{QStringLiteral("title"), title}, {QStringLiteral("lines"), lines}});
        }
    };
    if (!up.plan) {
        return;
    }
    QStringList plan;
    for (const records::PlanItem& item : up.plan->items) {
        QStringList parts;
        for (const std::string* text : {&item.feel, &item.drill, &item.dose}) {
            if (!text->empty()) {
                parts << inLanguage(QString::fromStdString(*text));
            }
        }
        plan << parts.join(QStringLiteral(" \u00b7 "));
    }
    section(tr("Plan of %1").arg(dayText(up.planDay)), plan);
    QStringList practised;
    if (up.rehearsals > 0) {
        practised << tr("rehearsals: %1").arg(QLocale().toString(up.rehearsals));
    }
    if (up.balls > 0) {
        practised << tr("balls: %1").arg(QLocale().toString(up.balls));
    }
    if (up.rounds > 0) {
        practised << tr("rounds: %1").arg(QLocale().toString(up.rounds));
    }
    section(tr("Practised since"), practised.isEmpty() ? QStringList{tr("nothing logged")}
                                                       : QStringList{practised.join(QStringLiteral(", "))});
    QStringList changed;
    for (const comparison::SetRow& row : up.changed) {
        const base::Measured difference{row.change->difference, row.change->sigma, row.unit,
                                        base::Origin::network};
        const auto text = numberText(difference, player_.statureMetres);
        changed << tr("%1: %2%3")
                       .arg(numberLabel(row.id, row.moment),
                            row.change->difference > 0 ? QStringLiteral("+") : QString(), text.whole());
    }
    if (up.kind) {
        section(tr("Changed beyond doubt, %1").arg(kindLabel(*up.kind)),
                changed.isEmpty() ? QStringList{tr("nothing yet: fewer than three swings on a side, or "
                                                   "differences within spread and measuring error")}
                                  : changed);
    }
    QStringList pains;
    for (const records::Pain& pain : up.pains) {
        pains << tr("%1: %2, %3 of 10")
                     .arg(dayText(pain.day), regionLabel(pain.region),
                          QLocale().toString(static_cast<int>(pain.level)));
    }
    section(tr("Pain logged since"), pains);
}

bool PlayerModel::keepLesson(const records::Lesson& lesson) {
    if (!id_) {
        return false;
    }
    if (lesson_) {
        if (auto kept = book_->edit(*lesson_, lesson); !kept.ok()) {
            setProblem(inLanguage(kept.error().sentence));
            return false;
        }
    } else {
        records::Lesson fresh = lesson;
        fresh.day = todayIso();
        fresh.title = tr("Lesson").toStdString();
        auto added = book_->addLesson(*id_, fresh);
        if (!added.ok()) {
            setProblem(inLanguage(added.error().sentence));
            return false;
        }
        lesson_ = *added;
    }
    setProblem({});
    readLesson();
    lessons_.load();
    return true;
}

void PlayerModel::startLesson() {
    if (!lesson_) {
        keepLesson({});
    }
}

void PlayerModel::tellWish(const QString& text) {
    if (text.trimmed() != wish()) {
        records::Lesson lesson = today_;
        lesson.wish = text.trimmed().toStdString();
        keepLesson(lesson);
    }
}

void PlayerModel::tellBelief(const QString& text) {
    if (text.trimmed() != belief()) {
        records::Lesson lesson = today_;
        lesson.belief = text.trimmed().toStdString();
        keepLesson(lesson);
    }
}

void PlayerModel::readHistory() {
    stopReading();
    if (!id_) {
        reading_ = false;
        history_.reset();
        fillSwings();
        fillTrend();
        emit numbersChanged();
        emit historyChanged();
        return;
    }
    reading_ = true;
    emit historyChanged();
    reader_ = std::thread([this, id = *id_] {
        base::Progress progress;
        progress.cancel = &stop_;
        auto read = std::make_shared<base::Result<std::optional<session::PlayerHistory>>>(
            session::PlayerHistory::read(*library_, id, progress));
        if (stop_) {
            return;
        }
        QMetaObject::invokeMethod(this, [this, id, read] {
            if (id_ != id) {
                return; // another player is on show by now
            }
            reading_ = false;
            if (!read->ok()) {
                setProblem(inLanguage(read->error().sentence));
            } else if (**read) {
                history_ = std::move(**read);
                kinds_ = history_->kinds();
                kind_ = std::clamp(kind_, 0, std::max(0, static_cast<int>(kinds_.size()) - 1));
                fillSwings();
                fillTrend();
                emit numbersChanged();
            }
            emit historyChanged();
        });
    });
}

/// Under which answers a swing is filed: value and words; several only for tags.
std::vector<std::pair<QString, QString>> PlayerModel::filed(const session::FiledSwing& entry,
                                                            const QString& field) const {
    const auto& context = entry.swing.context;
    const auto text = [](std::string_view t) {
        return QString::fromUtf8(t.data(), static_cast<qsizetype>(t.size()));
    };
    if (field == u"club" && context.club) {
        return {{QString::fromStdString(marks::clubName(*context.club)), clubLabel(*context.club)}};
    }
    if (field == u"view") {
        return {{text(marks::viewName(context.view)), viewLabel(context.view)}};
    }
    if (field == u"shot") {
        return {{text(marks::shotKindName(context.shot)), shotLabel(context.shot)}};
    }
    if (field == u"day") {
        return {{QString::fromStdString(entry.day), dayText(entry.day)}};
    }
    if (field == u"star") {
        return {entry.swing.ball.star ? std::pair(QStringLiteral("yes"), tr("with a star"))
                                      : std::pair(QStringLiteral("no"), tr("without"))};
    }
    std::vector<std::pair<QString, QString>> tags;
    if (field == u"tag") {
        for (const std::string& tag : entry.swing.ball.tags) {
            tags.emplace_back(QString::fromStdString(tag), QString::fromStdString(tag));
        }
    }
    return tags;
}

namespace {
const QStringList& filterFields() {
    static const QStringList kFields{"club", "view", "shot", "star", "tag", "day"};
    return kFields;
}
} // namespace

QVariantList PlayerModel::filters() const {
    QVariantList list;
    if (!history_) {
        return list;
    }
    for (const QString& field : filterFields()) {
        QVariantList choices;
        std::set<QString> known;
        for (const session::FiledSwing& swing : history_->swings()) { // newest first: so are the days
            for (const auto& [value, text] : filed(swing, field)) {
                if (known.insert(value).second) {
                    choices.append(
                        QVariantMap{{QStringLiteral("value"), value}, {QStringLiteral("text"), text}});
                }
            }
        }
        if (choices.size() < 2 && !(field == u"tag" && choices.size() == 1)) {
            continue;
        }
        list.append(QVariantMap{{QStringLiteral("field"), field},
                                {QStringLiteral("question"), field == u"club"   ? tr("Club")
                                                             : field == u"view" ? tr("View")
                                                             : field == u"shot" ? tr("Shot")
                                                             : field == u"star" ? tr("Star")
                                                             : field == u"tag"  ? tr("Tag")
                                                                                : tr("Day")},
                                {QStringLiteral("choices"), choices}});
    }
    return list;
}

void PlayerModel::filter(const QString& field, const QString& value) {
    if (filter_.value(field).toString() == value) {
        filter_.remove(field);
    } else {
        filter_.insert(field, value);
    }
    fillSwings();
}

void PlayerModel::fillSwings() {
    swings_.clear();
    if (history_) {
        for (const session::FiledSwing& swing : history_->swings()) {
            const bool fits =
                std::all_of(filterFields().begin(), filterFields().end(), [&](const QString& field) {
                    const QString wanted = filter_.value(field).toString();
                    const auto values = filed(swing, field);
                    return wanted.isEmpty() || std::any_of(values.begin(), values.end(),
                                                           [&](const auto& v) { return v.first == wanted; });
                });
            if (!fits) {
                continue;
            }
            QStringList detail{dayText(swing.day)};
            if (const QString ball = ballLabel(swing.swing.ball); !ball.isEmpty()) {
                detail << ball;
            }
            for (const std::string& tag : swing.swing.ball.tags) {
                detail << QString::fromStdString(tag);
            }
            swings_.append(QVariantMap{
                {QStringLiteral("clip"), QString::fromStdString(swing.swing.clip.hex())},
                {QStringLiteral("title"), tr("%1. %2").arg(QLocale().toString(swing.swing.number),
                                                           kindLabel(session::kindOf(swing.swing)))},
                {QStringLiteral("detail"), detail.join(QStringLiteral(" \u00b7 "))},
                {QStringLiteral("star"), swing.swing.ball.star},
            });
        }
    }
    emit filtersChanged();
}

QVariantList PlayerModel::kindChoices() const {
    QVariantList list;
    for (std::size_t i = 0; i < kinds_.size(); ++i) {
        list.append(QVariantMap{{QStringLiteral("value"), QString::number(i)},
                                {QStringLiteral("text"), kindLabel(kinds_[i])}});
    }
    return list;
}

QVariantList PlayerModel::numberChoices() const {
    QVariantList list;
    for (std::size_t i = 0; i < numbers_.size(); ++i) {
        list.append(
            QVariantMap{{QStringLiteral("value"), QString::number(i)},
                        {QStringLiteral("text"), numberLabel(numbers_[i].measurement, numbers_[i].moment)}});
    }
    return list;
}

void PlayerModel::setKind(int kind) {
    if (kind != kind_ && kind >= 0 && kind < static_cast<int>(kinds_.size())) {
        kind_ = kind;
        number_ = 0;
        fillTrend();
        emit numbersChanged();
    }
}

void PlayerModel::setNumber(int number) {
    if (number != number_ && number >= 0) {
        number_ = number;
        fillTrend();
    }
}

void PlayerModel::fillTrend() {
    points_.clear();
    ticks_.clear();
    numbers_.clear();
    bandTop_ = bandBottom_ = 0;
    bandText_.clear();
    trendText_.clear();
    firstDay_.clear();
    lastDay_.clear();
    if (history_ && !kinds_.empty()) {
        const session::SwingKind& kind = kinds_[static_cast<std::size_t>(kind_)];
        numbers_ = history_->choices(playbook(), kind);
        number_ = std::clamp(number_, 0, std::max(0, static_cast<int>(numbers_.size()) - 1));
    }
    if (numbers_.empty()) {
        emit trendChanged();
        return;
    }
    const auto trend = history_->trend(playbook(), kinds_[static_cast<std::size_t>(kind_)],
                                       numbers_[static_cast<std::size_t>(number_)]);
    if (trend.points.empty()) {
        emit trendChanged();
        return;
    }
    const double scale = shownFactor(trend.unit, player_.statureMetres);
    double low = 1e300, high = -1e300;
    const auto include = [&](double value) {
        low = std::min(low, value * scale);
        high = std::max(high, value * scale);
    };
    for (const session::TrendPoint& p : trend.points) {
        include(p.spread.median - 2 * p.sigma);
        include(p.spread.median + 2 * p.sigma);
    }
    for (const auto& edge : {trend.goodLow, trend.goodHigh}) {
        if (edge) {
            include(*edge);
        }
    }
    const double margin = 0.06 * std::max(high - low, 1e-9);
    low -= margin;
    high += margin;
    const auto y = [&](double value) { return std::clamp((high - value * scale) / (high - low), 0.0, 1.0); };
    if (trend.goodLow || trend.goodHigh) {
        bandTop_ = trend.goodHigh ? y(*trend.goodHigh) : 0.0;
        bandBottom_ = trend.goodLow ? y(*trend.goodLow) : 1.0;
        bandText_ = tr("Band: good, %1 (%2)")
                        .arg(rangeText(trend.goodLow, trend.goodHigh, trend.unit, player_.statureMetres),
                             inLanguage(QString::fromStdString(trend.rangeSource)));
    }
    const double step = niceStep(high - low);
    const int decimals = std::clamp(static_cast<int>(std::ceil(-std::log10(step) - 1e-9)), 0, 3);
    for (double value = std::ceil(low / step) * step; value <= high; value += step) {
        ticks_.append(QVariantMap{{QStringLiteral("y"), (high - value) / (high - low)},
                                  {QStringLiteral("text"), decimal(value, decimals)}});
    }
    const auto dayNumber = [](const std::string& day) {
        return QDate::fromString(QString::fromStdString(day.substr(0, 10)), Qt::ISODate).toJulianDay();
    };
    const auto first = dayNumber(trend.points.front().day), last = dayNumber(trend.points.back().day);
    for (std::size_t i = 0; i < trend.points.size(); ++i) {
        const session::TrendPoint& p = trend.points[i];
        // By the calendar; lessons of one day alone stand side by side.
        const double x = last > first ? double(dayNumber(p.day) - first) / double(last - first)
                                      : (i + 0.5) / double(trend.points.size());
        const base::Measured told{p.spread.median, std::max(p.sigma, 1e-9), trend.unit,
                                  base::Origin::network};
        points_.append(QVariantMap{
            {QStringLiteral("x"), x},
            {QStringLiteral("y"), y(p.spread.median)},
            {QStringLiteral("low"), y(p.spread.median - 2 * p.sigma)},
            {QStringLiteral("high"), y(p.spread.median + 2 * p.sigma)},
            {QStringLiteral("text"), tr("%1: %2, swings: %3")
                                         .arg(dayText(p.day), numberText(told, player_.statureMetres).whole(),
                                              QLocale().toString(p.spread.swings))},
        });
    }
    firstDay_ = dayText(trend.points.front().day);
    lastDay_ = dayText(trend.points.back().day);
    QStringList says;
    if (trend.points.size() < 2) {
        says << tr("One lesson so far: a trend needs two.");
    } else if (!trend.change) {
        says << tr("No change is called yet: that takes three swings in the first lesson and three in the "
                   "newest.");
    } else {
        const auto text = numberText({trend.change->difference, std::max(trend.change->sigma, 1e-9),
                                      trend.unit, base::Origin::network},
                                     player_.statureMetres)
                              .whole();
        says << (trend.change->beyondDoubt ? tr("From the first lesson to the newest: %1, beyond doubt.")
                                           : tr("From the first lesson to the newest: %1, not beyond doubt."))
                    .arg(text);
    }
    if (trend.leftOut > 0) {
        says << tr("Swings left out: %1, measured by another version of the method and not comparable.")
                    .arg(QLocale().toString(trend.leftOut));
    }
    trendText_ = says.join(QLatin1Char(' '));
    emit trendChanged();
}

void PlayerModel::setProblem(const QString& sentence) {
    if (problem_ != sentence) {
        problem_ = sentence;
        emit problemChanged();
    }
}

} // namespace plumbmark::bridge
