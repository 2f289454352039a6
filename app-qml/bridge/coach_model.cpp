// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/coach_model.h"

#include <QLocale>
#include <algorithm>
#include <array>
#include <cmath>

#include "bridge/in_language.h"
#include "bridge/phrases.h"
#include "coaching/caution.h"
#include "stage/stage_content.h"
#include "video/clip.h"

namespace plumbmark::bridge {

using reasoning::NodeState;
using reasoning::Presence;

namespace {

constexpr int kStillHeight = 240; ///< px
const std::array kSets{"", "before", "try", "after"};

QString percent(double share) {
    return CoachModel::tr("%1 %").arg(QLocale().toString(std::lround(100.0 * share)));
}

/// What the core says, in the language in use; what people typed comes through as it is.
QString text(const std::string& s) {
    return inLanguage(QString::fromStdString(s));
}

QString gradeWords(coaching::Grade grade) {
    switch (grade) {
    case coaching::Grade::several_schools:
        return CoachModel::tr("several schools");
    case coaching::Grade::one_school:
        return CoachModel::tr("one school");
    case coaching::Grade::disputed:
        return CoachModel::tr("disputed");
    }
    return {};
}

QString trainsWords(const std::string& trains) {
    return trains == "position" ? CoachModel::tr("position")
           : trains == "range"  ? CoachModel::tr("range of motion")
           : trains == "speed"  ? CoachModel::tr("speed")
                                : text(trains);
}

/// The frame of a film nearest to a time, small; null where it cannot be read.
QImage stillOf(const session::Sight& sight) {
    auto clip = video::Clip::open(sight.film);
    if (!clip.ok() || (*clip)->times().empty()) {
        return {};
    }
    const auto& times = (*clip)->times();
    std::size_t best = 0;
    for (std::size_t i = 1; i < times.size(); ++i) {
        if (std::abs((times[i] - sight.time).value()) < std::abs((times[best] - sight.time).value())) {
            best = i;
        }
    }
    auto frame = (*clip)->frame(static_cast<int>(best));
    return frame.ok() ? stage::toImage(*frame).scaledToHeight(kStillHeight, Qt::SmoothTransformation)
                      : QImage();
}

} // namespace

CoachModel::CoachModel(store::Library& library, const base::Id& lesson, const QString& title, QObject* parent)
    : QObject(parent), library_(&library), lesson_(lesson), title_(title),
      playbook_(&coaching::Playbook::standard()), desk_(library, *playbook_) {
    load();
}

CoachModel::~CoachModel() = default;

base::Result<CoachModel::Reading> CoachModel::read() {
    auto reasoned = desk_.reason(lesson_);
    if (!reasoned.ok()) {
        return reasoned.error();
    }
    auto followUp = desk_.followUp(lesson_);
    auto plan = desk_.plan(lesson_);
    if (!followUp.ok() || !plan.ok()) {
        return followUp.ok() ? plan.error() : followUp.error();
    }
    Reading out{std::move(*reasoned), std::move(*followUp), {}, std::move(*plan)};
    if (out.kept) {
        desk_.takeDoses(out.reasoned, *out.kept);
    }
    if (out.reasoned.explanation.first) {
        for (const auto& link : out.reasoned.explanation.first->chain) {
            if (auto sight = desk_.sight(out.reasoned, *out.reasoned.explanation.node(link.node));
                sight.ok() && *sight) {
                out.sights.emplace(link.node, **sight);
            }
        }
    }
    return out;
}

void CoachModel::load() {
    busy_ = true;
    worker_.post([this] {
        const auto reading = read();
        Worker::tell(this, [this, reading] { take(reading); });
    });
}

void CoachModel::take(const base::Result<Reading>& reading) {
    busy_ = false;
    if (!reading.ok()) {
        problem_ = text(reading.error().sentence);
        emit changed();
        return;
    }
    problem_.clear();
    reasoned_ = reading->reasoned;
    followUp_ = reading->followUp;
    sights_ = reading->sights;
    planKept_ = false;
    keptUntil_.clear();
    if (reading->kept && !reading->kept->items.empty()) {
        keptUntil_ = dayText(reading->kept->items.front().lookAgain);
        const auto& items = reading->kept->items;
        const auto& drafted = reasoned_->plan.priorities;
        planKept_ = std::equal(
            items.begin(), items.end(), drafted.begin(), drafted.end(),
            [](const auto& item, const auto& p) { return item.node == p.node && item.dose == p.dose; });
    }
    if (trialNode_.empty() && !reasoned_->order.empty()) {
        trialNode_ = reasoned_->order.front();
    }
    emit changed();
    emit shotsChanged();
    showStills();
}

void CoachModel::showStills() {
    for (const auto& [node, sight] : sights_) {
        if (stills_.count(node) != 0) {
            continue;
        }
        worker_.post([this, node = node, sight = sight] {
            const QImage still = stillOf(sight);
            Worker::tell(this, [this, node, still] {
                stills_[node] = still;
                emit stillsChanged();
            });
        });
    }
}

void CoachModel::say(const QString& word, std::vector<std::string> nodes, const QString& note) {
    if (!reasoned_ || busy_) {
        return;
    }
    busy_ = true;
    emit changed();
    worker_.post([this, reasoned = *reasoned_, word = word.toStdString(), nodes = std::move(nodes),
                  note = note.trimmed().toStdString()] {
        const auto said = desk_.say(reasoned, word, nodes, note);
        const auto reading = said.ok() ? read() : base::Result<Reading>(said.error());
        Worker::tell(this, [this, reading] { take(reading); });
    });
}

void CoachModel::accept(const QString& note) {
    say(QStringLiteral("accept"), {}, note);
}

void CoachModel::putFirst(int place) {
    if (!reasoned_ || place <= 0 || place >= static_cast<int>(reasoned_->order.size())) {
        return;
    }
    std::vector<std::string> nodes = reasoned_->order;
    std::rotate(nodes.begin(), nodes.begin() + place, nodes.begin() + place + 1);
    say(QStringLiteral("reorder"), std::move(nodes),
        reasoned_->word ? text(reasoned_->word->note) : QString());
}

void CoachModel::overrule(const QString& node, const QString& note) {
    if (!reasoned_) {
        return;
    }
    // What the coach names goes before what stood first; two things are enough for a lesson.
    std::vector<std::string> nodes{node.toStdString()};
    for (const std::string& other : reasoned_->order) {
        if (other != nodes.front() && nodes.size() < 2) {
            nodes.push_back(other);
        }
    }
    say(QStringLiteral("overrule"), std::move(nodes), note);
}

void CoachModel::setSets(int priority, int rehearsals, int balls) {
    if (!reasoned_) {
        return;
    }
    const auto set =
        desk_.setDose(*reasoned_, static_cast<std::size_t>(std::max(0, priority)), rehearsals, balls);
    problem_ = set.ok() ? QString() : text(set.error().sentence);
    planKept_ = planKept_ && !set.ok();
    emit changed();
}

void CoachModel::setLookAgain(int days) {
    if (reasoned_) {
        reasoned_->plan.lookAgainDays = std::clamp(days, 1, 60);
        planKept_ = false;
        emit changed();
    }
}

void CoachModel::keepPlan() {
    if (!reasoned_ || busy_ || reasoned_->plan.priorities.empty()) {
        return;
    }
    busy_ = true;
    emit changed();
    worker_.post([this, reasoned = *reasoned_] {
        const auto kept = desk_.keepPlan(reasoned);
        const auto plan = desk_.plan(lesson_);
        Worker::tell(this, [this, kept, plan] {
            busy_ = false;
            problem_ = kept.ok() ? QString() : text(kept.error().sentence);
            planKept_ = kept.ok();
            if (kept.ok() && plan.ok() && *plan && !(*plan)->items.empty()) {
                keptUntil_ = dayText((*plan)->items.front().lookAgain);
            }
            emit changed();
        });
    });
}

void CoachModel::tryNode(const QString& node) {
    trialNode_ = node.toStdString();
    trial_.reset();
    emit changed();
}

void CoachModel::tagShot(int number) {
    QString& set = sets_[number];
    for (std::size_t i = 0; i < kSets.size(); ++i) {
        if (set == QLatin1String(kSets[i])) {
            set = QLatin1String(kSets[(i + 1) % kSets.size()]);
            break;
        }
    }
    trial_.reset();
    emit shotsChanged();
    emit changed();
}

bool CoachModel::canJudge() const {
    const auto has = [this](const char* set) {
        return std::any_of(sets_.begin(), sets_.end(),
                           [&](const auto& one) { return one.second == QLatin1String(set); });
    };
    return reasoned_ && !busy_ && !trialNode_.empty() && has("before") && has("try");
}

void CoachModel::judgeTrial() {
    if (!canJudge()) {
        return;
    }
    std::map<QString, std::vector<int>> numbers;
    for (const auto& [number, set] : sets_) {
        numbers[set].push_back(number);
    }
    busy_ = true;
    emit changed();
    worker_.post([this, node = trialNode_, before = numbers[QStringLiteral("before")],
                  tried = numbers[QStringLiteral("try")], after = numbers[QStringLiteral("after")]] {
        const auto result = desk_.tryIt(lesson_, node, before, tried, after);
        const auto reading = read(); // the trial weighs on what comes first
        Worker::tell(this, [this, result, reading] {
            take(reading);
            if (result.ok()) {
                trial_ = *result;
            } else {
                problem_ = text(result.error().sentence);
            }
            emit changed();
        });
    });
}

QString CoachModel::subtitle() const {
    if (!reasoned_) {
        return {};
    }
    const QString swings =
        tr("swings together: %1").arg(QLocale().toString(qint64(reasoned_->swings.size())));
    return reasoned_->kind.club ? tr("%1, %2").arg(clubLabel(*reasoned_->kind.club), swings) : swings;
}

QString CoachModel::labelOf(const std::string& node) const {
    const auto* known = playbook_->node(node);
    return text(known == nullptr ? node : known->label);
}

QString CoachModel::checkLabel(const std::string& checkpoint) const {
    const auto* known = playbook_->find(checkpoint);
    if (known == nullptr) {
        return text(checkpoint);
    }
    return known->moment ? tr("%1, %2").arg(text(known->label), momentLabel(*known->moment).toLower())
                         : text(known->label);
}

QString CoachModel::numberOf(const NodeState& node) const {
    if (!node.ball.empty()) {
        return tr("the ball's %1, as told").arg(text(node.ball));
    }
    if (!node.value) {
        return {};
    }
    const QString number = numberText(*node.value, reasoned_->card.statureMetres).whole();
    const QString what = measurementLabel(node.measurement);
    return node.moment ? tr("%1, %2: %3").arg(what, momentLabel(*node.moment).toLower(), number)
                       : tr("%1: %2").arg(what, number);
}

QString CoachModel::verdict() const {
    if (!reasoned_) {
        return {};
    }
    switch (reasoned_->explanation.verdict) {
    case reasoning::Verdict::found:
        return tr("Comes first: %1. The earliest departure is a good first guess, not proof.")
            .arg(labelOf(reasoned_->explanation.first->node));
    case reasoning::Verdict::nothing_found:
        return tr("No departure was found in what these clips show.");
    case reasoning::Verdict::cannot_tell:
        return tr("Cannot tell from these clips what comes first.");
    }
    return {};
}

QVariantList CoachModel::chain() const {
    QVariantList list;
    if (!reasoned_ || !reasoned_->explanation.first) {
        return list;
    }
    for (const auto& link : reasoned_->explanation.first->chain) {
        const NodeState& node = *reasoned_->explanation.node(link.node);
        QString grade;
        if (link.grade) {
            grade = link.source.empty() ? gradeWords(*link.grade)
                                        : tr("%1; %2").arg(gradeWords(*link.grade), text(link.source));
        }
        const auto sight = sights_.find(link.node);
        const bool seen = sight != sights_.end();
        const QString how = node.probability ? tr("there: %1").arg(percent(*node.probability)) : QString();
        list.append(QVariantMap{
            {QStringLiteral("node"), text(node.id)},
            {QStringLiteral("label"), text(node.label)},
            {QStringLiteral("how"), how},
            {QStringLiteral("grade"), grade},
            {QStringLiteral("number"), numberOf(node)},
            {QStringLiteral("spoken"), (link.grade ? tr("tends to cause: %1").arg(text(node.label))
                                                   : tr("comes first: %1").arg(text(node.label)))},
            {QStringLiteral("clip"), seen ? text(sight->second.clip.hex()) : QString()},
            {QStringLiteral("moment"),
             seen && sight->second.moment ? static_cast<int>(*sight->second.moment) : -1},
            {QStringLiteral("swing"),
             seen ? tr("Swing %1").arg(QLocale().toString(sight->second.number)) : QString()},
        });
    }
    return list;
}

QVariantMap CoachModel::stills() const {
    QVariantMap map;
    for (const auto& [node, still] : stills_) {
        map.insert(text(node), still);
    }
    return map;
}

QVariantList CoachModel::rivals() const {
    QVariantList list;
    if (reasoned_) {
        for (const auto& rival : reasoned_->explanation.rivals) {
            const NodeState& node = *reasoned_->explanation.node(rival.node);
            list.append(QVariantMap{
                {QStringLiteral("node"), text(rival.node)},
                {QStringLiteral("label"), text(node.label)},
                {QStringLiteral("number"), numberOf(node)},
                {QStringLiteral("share"), tr("share among the explanations: %1").arg(percent(rival.share))},
                {QStringLiteral("unclear"), node.presence == Presence::unclear},
            });
        }
    }
    return list;
}

QVariantList CoachModel::missing() const {
    QVariantList list;
    if (!reasoned_) {
        return list;
    }
    const auto add = [&](const std::string& id) {
        const NodeState* node = reasoned_->explanation.node(id);
        const auto* known = playbook_->node(id);
        if (node == nullptr || known == nullptr) {
            return;
        }
        QString help;
        for (const auto& evidence : known->evidence) {
            const auto judged = std::find_if(reasoned_->checkpoints.begin(), reasoned_->checkpoints.end(),
                                             [&](const auto& c) { return c.id == evidence.checkpoint; });
            if (judged != reasoned_->checkpoints.end() && !judged->help.empty()) {
                help = text(judged->help);
                break;
            }
            if (const auto* check = playbook_->find(evidence.checkpoint);
                check != nullptr && judged == reasoned_->checkpoints.end()) {
                help = tr("It needs a %1 clip.").arg(viewLabel(check->view).toLower());
            }
        }
        if (!node->measurable) {
            help = tr("The program has no measurement for it yet; look for yourself.");
        }
        list.append(
            QVariantMap{{QStringLiteral("label"), text(node->label)}, {QStringLiteral("help"), help}});
    };
    for (const auto& id : reasoned_->explanation.perhaps) {
        add(id);
    }
    for (const auto& id : reasoned_->explanation.open) {
        add(id);
    }
    return list;
}

QString CoachModel::belief() const {
    return reasoned_ ? text(reasoned_->belief) : QString();
}

int CoachModel::beliefLevel() const {
    using Answer = reasoning::BeliefAnswer::Answer;
    return !reasoned_ || !reasoned_->answer                ? 3
           : reasoned_->answer->answer == Answer::yes      ? 0
           : reasoned_->answer->answer == Answer::not_this ? 2
                                                           : 3;
}

QString CoachModel::beliefWord() const {
    return beliefLevel() == 0 ? tr("yes") : beliefLevel() == 2 ? tr("not this") : tr("cannot tell");
}

QString CoachModel::beliefSentence() const {
    return reasoned_ && reasoned_->answer ? text(reasoned_->answer->sentence) : QString();
}

QString CoachModel::word() const {
    if (!reasoned_ || !reasoned_->word) {
        return {};
    }
    QStringList labels;
    for (const auto& node : reasoned_->word->nodes) {
        labels << labelOf(node);
    }
    const QString nodes = labels.join(tr(", then "));
    return reasoned_->word->word == "accept"    ? tr("Your word: agreed. %1").arg(nodes)
           : reasoned_->word->word == "reorder" ? tr("Your word: in this order. %1").arg(nodes)
                                                : tr("Your word: something else. %1").arg(nodes);
}

QString CoachModel::wordNote() const {
    return reasoned_ && reasoned_->word ? text(reasoned_->word->note) : QString();
}

QVariantList CoachModel::order() const {
    QVariantList list;
    if (reasoned_) {
        for (const auto& node : reasoned_->order) {
            list.append(
                QVariantMap{{QStringLiteral("node"), text(node)}, {QStringLiteral("label"), labelOf(node)}});
        }
    }
    return list;
}

QVariantList CoachModel::departures() const {
    QVariantList list;
    if (!reasoned_) {
        return list;
    }
    for (const auto& node : reasoned_->explanation.nodes) {
        if (!node.fault || node.stage == coaching::Stage::ball_flight) {
            continue;
        }
        const QString presence = node.presence == Presence::there       ? tr("there")
                                 : node.presence == Presence::not_there ? tr("not there")
                                 : node.presence == Presence::unclear   ? tr("unclear")
                                                                        : tr("cannot tell");
        list.append(QVariantMap{
            {QStringLiteral("node"), text(node.id)},
            {QStringLiteral("label"), text(node.label)},
            {QStringLiteral("presence"), presence},
            {QStringLiteral("chosen"), !reasoned_->order.empty() && reasoned_->order.front() == node.id},
        });
    }
    return list;
}

QVariantList CoachModel::priorities() const {
    QVariantList list;
    if (reasoned_) {
        for (const auto& p : reasoned_->plan.priorities) {
            list.append(QVariantMap{
                {QStringLiteral("label"), text(p.label)},
                {QStringLiteral("feel"), text(p.feel)},
                {QStringLiteral("drill"), text(p.drill)},
                {QStringLiteral("how"), text(p.how)},
                {QStringLiteral("dose"), text(p.dose)},
                {QStringLiteral("trains"), trainsWords(p.trains)},
                {QStringLiteral("amount"), text(p.amount)},
                {QStringLiteral("decides"), checkLabel(p.checkpoint)},
                {QStringLiteral("guard"), p.guard.empty() ? QString() : checkLabel(p.guard)},
                {QStringLiteral("conflict"), text(p.conflict)},
                {QStringLiteral("rehearsals"), p.rehearsalSets},
                {QStringLiteral("balls"), p.ballSets},
            });
        }
    }
    return list;
}

QStringList CoachModel::planNotes() const {
    QStringList list;
    if (reasoned_) {
        for (const auto& note : reasoned_->plan.notes) {
            list << text(note);
        }
    }
    return list;
}

QVariantList CoachModel::cautions() const {
    QVariantList list;
    if (reasoned_) {
        for (const auto& caution : reasoned_->cautions) {
            list.append(QVariantMap{{QStringLiteral("grade"), text(caution.grade)},
                                    {QStringLiteral("seen"), text(caution.seen)},
                                    {QStringLiteral("ease"), text(caution.ease)},
                                    {QStringLiteral("words"), text(caution.words)}});
        }
    }
    return list;
}

QString CoachModel::cautionsFooter() const {
    const auto footer = coaching::cautionsFooter();
    return inLanguage(QString::fromUtf8(footer.data(), static_cast<qsizetype>(footer.size())));
}

QVariantList CoachModel::followUp() const {
    QVariantList list;
    if (!reasoned_ || !followUp_.plan) {
        return list;
    }
    const auto add = [&](const QString& heading, const QStringList& lines) {
        list.append(QVariantMap{{QStringLiteral("heading"), heading}, {QStringLiteral("lines"), lines}});
    };
    QStringList plan;
    for (const auto& item : followUp_.plan->items) {
        plan << tr("%1: %2").arg(labelOf(item.node), text(item.feel));
    }
    add(tr("The plan of %1").arg(dayText(followUp_.planDay)), plan);
    add(tr("Practised"),
        {tr("%1 rehearsals, %2 balls, %3 rounds")
             .arg(QLocale().toString(followUp_.rehearsals), QLocale().toString(followUp_.balls),
                  QLocale().toString(followUp_.rounds))});
    if (!followUp_.kind) {
        add(tr("Changed beyond doubt"),
            {tr("No swings of one view, kind and club in both lessons: nothing can be compared.")});
    } else {
        const auto decides = [&](const comparison::SetRow& row) {
            return std::any_of(
                followUp_.plan->items.begin(), followUp_.plan->items.end(), [&](const auto& item) {
                    for (const auto& id : {item.checkpoint, item.guard}) {
                        const auto* check = playbook_->find(id);
                        if (check != nullptr && check->measurement == row.id && check->moment == row.moment) {
                            return true;
                        }
                    }
                    return false;
                });
        };
        const auto line = [&](const comparison::SetRow& row) {
            const QString what =
                row.moment ? tr("%1, %2").arg(measurementLabel(row.id), momentLabel(*row.moment).toLower())
                           : measurementLabel(row.id);
            if (!row.change) {
                return tr("%1: needs three swings on each side").arg(what);
            }
            const base::Measured change{row.change->difference, row.change->sigma, row.unit,
                                        base::Origin::network};
            return tr("%1: %2%3")
                .arg(what, row.change->difference > 0 ? QStringLiteral("+") : QString(),
                     numberText(change, reasoned_->card.statureMetres).whole());
        };
        QStringList changedRows, others;
        for (const auto& row : followUp_.changed) {
            changedRows << line(row);
        }
        for (const auto& row : followUp_.notChanged) {
            if (decides(row)) {
                others << line(row);
            }
        }
        add(tr("Changed beyond doubt"), changedRows.isEmpty() ? QStringList{tr("nothing")} : changedRows);
        add(tr("Not proven, of what decides and guards"),
            others.isEmpty() ? QStringList{tr("nothing")} : others);
    }
    QStringList pains;
    for (const auto& pain : followUp_.pains) {
        QString region = text(pain.region);
        pains << tr("%1: %2 of 10 on %3")
                     .arg(region.replace(QLatin1Char('_'), QLatin1Char(' ')),
                          QLocale().toString(qint64(pain.level)), dayText(pain.day.substr(0, 10)));
    }
    add(tr("Hurts"), pains.isEmpty() ? QStringList{tr("nothing logged")} : pains);
    return list;
}

QVariantList CoachModel::shots() const {
    QVariantList list;
    if (!reasoned_) {
        return list;
    }
    std::map<int, const session::StoredSwing*> byNumber;
    for (const auto& swing : reasoned_->swings) {
        byNumber.emplace(swing.number, &swing);
    }
    for (const auto& [number, swing] : byNumber) {
        const auto set = sets_.find(number);
        const QString now = set == sets_.end() ? QString() : set->second;
        const QString words = now == QLatin1String("before")  ? tr("before")
                              : now == QLatin1String("try")   ? tr("try")
                              : now == QLatin1String("after") ? tr("after")
                                                              : tr("not used");
        list.append(QVariantMap{{QStringLiteral("number"), number},
                                {QStringLiteral("label"), tr("Swing %1").arg(QLocale().toString(number))},
                                {QStringLiteral("set"), now},
                                {QStringLiteral("words"), words}});
    }
    return list;
}

QString CoachModel::trialLabel() const {
    return trialNode_.empty() ? QString() : labelOf(trialNode_);
}

QString CoachModel::trialSentence() const {
    return trial_ ? text(trial_->sentence) : QString();
}

QString CoachModel::trialGuard() const {
    return !trial_             ? QString()
           : trial_->guardHeld ? tr("The guard held.")
                               : tr("The guard got worse beyond doubt.");
}

QStringList CoachModel::trialMoved() const {
    QStringList list;
    if (trial_) {
        for (const auto& id : trial_->moved) {
            list << measurementLabel(id);
        }
        list.removeDuplicates();
    }
    return list;
}

} // namespace plumbmark::bridge
