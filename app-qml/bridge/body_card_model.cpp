// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/body_card_model.h"

#include <QDate>
#include <QLocale>
#include <algorithm>
#include <map>

#include "bridge/in_language.h"
#include "bridge/phrases.h"

namespace plumbmark::bridge {

namespace {

std::string todayIso() {
    return QDate::currentDate().toString(Qt::ISODate).toStdString();
}

QString yesNo(const std::optional<bool>& answer) {
    return !answer ? QString() : *answer ? QStringLiteral("yes") : QStringLiteral("no");
}

std::vector<std::string>* listOf(records::BodyCard& card, const QString& field) {
    return field == u"painBefore" ? &card.painBefore
           : field == u"limited"  ? &card.limitedJoints
           : field == u"replaced" ? &card.replacedJoints
           : field == u"surgery"  ? &card.surgery
                                  : nullptr;
}

/// Pain of this level and more takes the balls away, as in reasoning::draftPlan.
constexpr int kPainThatStops = 4;

} // namespace

void BodyCardModel::open(const base::Id& player) {
    id_ = player;
    player_ = {};
    problem_.clear();
    if (auto known = book_->player(player); known.ok()) {
        player_ = std::move(*known);
    }
    emit opened();
    read();
}

QString BodyCardModel::regionText(const std::string& region) const {
    // People know their left from their right; the trade's lead and trail need the hand.
    if (player_.hand && (region.rfind("lead_", 0) == 0 || region.rfind("trail_", 0) == 0)) {
        const bool left = (region[0] == 'l') == (*player_.hand == marks::Hand::right);
        static const std::map<std::string, std::pair<const char*, const char*>> kParts{
            {"hip", {QT_TR_NOOP("Left hip"), QT_TR_NOOP("Right hip")}},
            {"knee", {QT_TR_NOOP("Left knee"), QT_TR_NOOP("Right knee")}},
            {"wrist", {QT_TR_NOOP("Left wrist"), QT_TR_NOOP("Right wrist")}},
            {"elbow", {QT_TR_NOOP("Left elbow"), QT_TR_NOOP("Right elbow")}},
            {"shoulder", {QT_TR_NOOP("Left shoulder"), QT_TR_NOOP("Right shoulder")}},
            {"ankle", {QT_TR_NOOP("Left ankle"), QT_TR_NOOP("Right ankle")}},
        };
        const auto it = kParts.find(region.substr(region.find('_') + 1));
        if (it != kParts.end()) {
            return tr(left ? it->second.first : it->second.second);
        }
    }
    return regionLabel(region);
}

void BodyCardModel::read() {
    pains_.clear();
    today_.clear();
    hold_ = false;
    card_ = {};
    if (!id_) {
        emit changed();
        return;
    }
    const auto card = body_.card(*id_);
    const auto log = body_.pains(*id_);
    const auto judged = body_.forCoaching(*id_);
    if (!card.ok() || !log.ok() || !judged.ok()) {
        problem_ = inLanguage(QString::fromStdString((!card.ok()  ? card.error()
                                                      : !log.ok() ? log.error()
                                                                  : judged.error())
                                                         .sentence));
        emit changed();
        return;
    }
    card_ = *card;
    std::map<std::string, records::Pain> newest; // the log is oldest first
    for (const records::Pain& pain : *log) {
        newest.insert_or_assign(pain.region, pain);
    }
    std::vector<records::Pain> now;
    for (const auto& [region, pain] : newest) {
        if (pain.day.substr(0, 10) == todayIso()) {
            now.push_back(pain);
        }
    }
    std::stable_sort(now.begin(), now.end(), [](const auto& a, const auto& b) { return a.level > b.level; });
    for (const records::Pain& pain : now) {
        pains_.append(QVariantMap{
            {QStringLiteral("region"), QString::fromStdString(pain.region)},
            {QStringLiteral("level"), static_cast<int>(pain.level)},
            {QStringLiteral("text"),
             tr("%1: %2 of 10")
                 .arg(regionText(pain.region), QLocale().toString(static_cast<int>(pain.level)))}});
    }

    const auto say = [&](bool holds, const QString& sentence) {
        if (holds) {
            hold_ = true;
        }
        today_ << sentence;
    };
    if (judged->askFirst) {
        say(true, tr("A replaced joint, an operation, a pregnancy, or a bone or heart condition, and nobody "
                     "has cleared full swings: ask a physician first. No full swings until then."));
    }
    if (judged->worstPain >= kPainThatStops) {
        say(true, tr("Pain of %1 of 10: no balls today. If it is still there tomorrow, see a physician or "
                     "licensed physiotherapist.")
                      .arg(QLocale().toString(judged->worstPain)));
    } else if (judged->worstPain > 0) {
        say(false, tr("Some pain: slow and few, and stop when it grows."));
    }
    if (judged->child() && !card_.guardianConsent.value_or(false)) {
        say(true, tr("A child: a guardian agrees before anything is filmed."));
    }
    if (judged->child()) {
        say(false, tr("A child: no adult ranges, no comparison with other children."));
    }
    if (card_.mostBalls) {
        say(false, tr("A clinician's limit, balls a day: %1.").arg(QLocale().toString(*card_.mostBalls)));
    }
    if (card_.warmUpDay != todayIso()) {
        say(false, tr("Ten minutes of warm-up before the first full swing."));
    }
    if (card_.day.empty()) {
        say(false, tr("Not asked yet: ask before the first full swing."));
    } else if (!hold_) {
        say(false, tr("Nothing told here holds full swings back. That is no clean bill of health."));
    }
    emit changed();
}

QString BodyCardModel::day() const {
    return card_.day.empty() ? QString() : dayText(card_.day);
}

QVariantList BodyCardModel::regions() const {
    QVariantList list;
    for (const std::string& region : session::BodyBook::regions()) {
        list.append(QVariantMap{{QStringLiteral("value"), QString::fromStdString(region)},
                                {QStringLiteral("text"), regionText(region)}});
    }
    return list;
}

QVariantList BodyCardModel::regionQuestions() const {
    QVariantList list;
    records::BodyCard card = card_;
    const auto add = [&](const char* field, const QString& question) {
        const QString name = QString::fromLatin1(field);
        QStringList chosen, told;
        for (const std::string& region : *listOf(card, name)) {
            chosen << QString::fromStdString(region);
            told << regionText(region);
        }
        list.append(QVariantMap{
            {QStringLiteral("field"), name},
            {QStringLiteral("question"), question},
            {QStringLiteral("told"), told.isEmpty() ? tr("none told") : told.join(QStringLiteral(", "))},
            {QStringLiteral("chosen"), chosen}});
    };
    add("painBefore", tr("Trouble before"));
    add("limited", tr("Stiff, fused, or limited by a clinician"));
    add("replaced", tr("Replaced joint"));
    add("surgery", tr("Operated on"));
    return list;
}

QVariantList BodyCardModel::questions() const {
    QVariantList list;
    const auto add = [&](const char* field, const QString& question, const std::optional<bool>& answer) {
        list.append(QVariantMap{{QStringLiteral("field"), QString::fromLatin1(field)},
                                {QStringLiteral("question"), question},
                                {QStringLiteral("value"), yesNo(answer)}});
    };
    add("pregnant", tr("Pregnant"), card_.pregnant);
    add("boneOrHeart", tr("A bone or heart condition"), card_.boneOrHeart);
    add("cleared",
        card_.clearedDay.empty()
            ? tr("Cleared for full swings by a clinician")
            : tr("Cleared for full swings by a clinician (told on %1)").arg(dayText(card_.clearedDay)),
        card_.cleared);
    add("warmUp", tr("Warmed up for ten minutes today"),
        card_.warmUpDay == todayIso() ? std::optional(true) : std::nullopt);
    if (card_.birthYear && QDate::currentDate().year() - *card_.birthYear < 18) {
        add("guardian", tr("A guardian agrees to filming"), card_.guardianConsent);
    }
    return list;
}

QString BodyCardModel::birthYear() const {
    return card_.birthYear ? QString::number(*card_.birthYear) : QString();
}

QString BodyCardModel::mostBalls() const {
    return card_.mostBalls ? QLocale().toString(*card_.mostBalls) : QString();
}

void BodyCardModel::tellPain(const QString& region, int level) {
    if (!id_) {
        return;
    }
    problem_.clear();
    if (auto logged = body_.log(*id_, records::Pain{todayIso(), region.toStdString(), level, {}});
        !logged.ok()) {
        setProblem(inLanguage(QString::fromStdString(logged.error().sentence)));
        return;
    }
    keep(card_); // the card has been asked today
}

void BodyCardModel::toggleRegion(const QString& field, const QString& region) {
    records::BodyCard card = card_;
    if (std::vector<std::string>* list = listOf(card, field)) {
        const auto it = std::find(list->begin(), list->end(), region.toStdString());
        if (it == list->end()) {
            list->push_back(region.toStdString());
        } else {
            list->erase(it);
        }
        keep(card);
    }
}

void BodyCardModel::answer(const QString& field, const QString& value) {
    records::BodyCard card = card_;
    const std::optional<bool> told = value == u"yes"  ? std::optional(true)
                                     : value == u"no" ? std::optional(false)
                                                      : std::nullopt;
    // A second tap on the answer that stands takes it back.
    const auto toggle = [&](std::optional<bool>& answer) { answer = answer == told ? std::nullopt : told; };
    if (field == u"pregnant") {
        toggle(card.pregnant);
    } else if (field == u"boneOrHeart") {
        toggle(card.boneOrHeart);
    } else if (field == u"cleared") {
        toggle(card.cleared);
        card.clearedDay = card.cleared.value_or(false) ? todayIso() : std::string();
    } else if (field == u"warmUp") {
        card.warmUpDay = told.value_or(false) && card.warmUpDay != todayIso() ? todayIso() : std::string();
    } else if (field == u"guardian") {
        toggle(card.guardianConsent);
    }
    keep(card);
}

void BodyCardModel::tellBirthYear(const QString& text) {
    records::BodyCard card = card_;
    card.birthYear.reset();
    if (!text.trimmed().isEmpty()) {
        bool ok = false;
        const int year = text.trimmed().toInt(&ok);
        if (!ok || year < 1900 || year > QDate::currentDate().year()) {
            setProblem(tr("The year of birth must look like 1974; or leave it empty."));
            return;
        }
        card.birthYear = year;
    }
    if (card.birthYear != card_.birthYear) {
        keep(card);
    }
}

void BodyCardModel::tellMostBalls(const QString& text) {
    records::BodyCard card = card_;
    card.mostBalls.reset();
    if (!text.trimmed().isEmpty()) {
        bool ok = false;
        const int balls = QLocale().toInt(text.trimmed(), &ok);
        if (!ok || balls < 0 || balls > 1000) {
            setProblem(tr("The limit must be a number of balls a day from 0 to 1000; or leave it empty."));
            return;
        }
        card.mostBalls = balls;
    }
    if (card.mostBalls != card_.mostBalls) {
        keep(card);
    }
}

void BodyCardModel::keep(records::BodyCard card) {
    if (!id_) {
        return;
    }
    problem_.clear();
    card.day = todayIso();
    if (auto kept = body_.keep(*id_, card); !kept.ok()) {
        problem_ = inLanguage(QString::fromStdString(kept.error().sentence));
    }
    read();
}

void BodyCardModel::setProblem(const QString& sentence) {
    problem_ = sentence;
    emit changed();
}

} // namespace plumbmark::bridge
