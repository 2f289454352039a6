// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QImage>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>
#include <map>
#include <memory>
#include <optional>

#include "bridge/worker.h"
#include "session/coach_desk.h"

namespace plumbmark::bridge {

/// What the coach makes of a lesson: which departure comes first, what to try, what to practise. The program
/// proposes, the coach's word counts, and both stay on record.
class CoachModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    Q_PROPERTY(QString title READ title CONSTANT)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY changed)
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)

    // -- cause
    /// One sentence: found, nothing found, cannot tell.
    Q_PROPERTY(QString verdict READ verdict NOTIFY changed)
    /// [{node, label, how, grade, number, spoken, clip, moment, swing}], the first cause first
    Q_PROPERTY(QVariantList chain READ chain NOTIFY changed)
    /// The chain's pictures by node; they come one by one.
    Q_PROPERTY(QVariantMap stills READ stills NOTIFY stillsChanged)
    /// [{node, label, number, share, unclear}]
    Q_PROPERTY(QVariantList rivals READ rivals NOTIFY changed)
    /// What could not be told and may lie before it: [{label, help}]
    Q_PROPERTY(QVariantList missing READ missing NOTIFY changed)
    Q_PROPERTY(QString belief READ belief NOTIFY changed)
    /// "yes", "not this", "cannot tell" as the level of a light (0, 2, 3), and the sentence.
    Q_PROPERTY(int beliefLevel READ beliefLevel NOTIFY changed)
    Q_PROPERTY(QString beliefWord READ beliefWord NOTIFY changed)
    Q_PROPERTY(QString beliefSentence READ beliefSentence NOTIFY changed)
    /// What the coach has said: empty, or one sentence.
    Q_PROPERTY(QString word READ word NOTIFY changed)
    Q_PROPERTY(QString wordNote READ wordNote NOTIFY changed)
    /// What is being worked on, in order: [{node, label}]
    Q_PROPERTY(QVariantList order READ order NOTIFY changed)
    /// Every departure that may come first: [{node, label, presence, chosen}]
    Q_PROPERTY(QVariantList departures READ departures NOTIFY changed)

    // -- plan
    /// [{label, feel, drill, how, dose, trains, amount, decides, guard, conflict, rehearsals, balls}]
    Q_PROPERTY(QVariantList priorities READ priorities NOTIFY changed)
    Q_PROPERTY(QStringList planNotes READ planNotes NOTIFY changed)
    Q_PROPERTY(int lookAgainDays READ lookAgainDays NOTIFY changed)
    /// The day of the next look, as kept; empty without a plan.
    Q_PROPERTY(QString keptUntil READ keptUntil NOTIFY changed)
    /// The plan on show is the one that is kept.
    Q_PROPERTY(bool planKept READ planKept NOTIFY changed)
    /// [{seen, ease, words, grade}]
    Q_PROPERTY(QVariantList cautions READ cautions NOTIFY changed)
    Q_PROPERTY(QString cautionsFooter READ cautionsFooter CONSTANT)
    /// Since the last plan: [{heading, lines}]; empty without one.
    Q_PROPERTY(QVariantList followUp READ followUp NOTIFY changed)

    // -- try it
    /// The lesson's measured shots: [{number, label, set}], set "", "before", "try", "after"
    Q_PROPERTY(QVariantList shots READ shots NOTIFY shotsChanged)
    Q_PROPERTY(QString trialNode READ trialNode NOTIFY changed)
    Q_PROPERTY(QString trialLabel READ trialLabel NOTIFY changed)
    Q_PROPERTY(bool canJudge READ canJudge NOTIFY changed)
    /// The judgement in words; empty before it.
    Q_PROPERTY(QString trialSentence READ trialSentence NOTIFY changed)
    Q_PROPERTY(QString trialGuard READ trialGuard NOTIFY changed)
    Q_PROPERTY(QStringList trialMoved READ trialMoved NOTIFY changed)

  public:
    CoachModel(store::Library& library, const base::Id& lesson, const QString& title,
               QObject* parent = nullptr);
    ~CoachModel() override;

    [[nodiscard]] const base::Id& lesson() const { return lesson_; }
    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] QString subtitle() const;
    [[nodiscard]] bool ready() const { return reasoned_.has_value(); }
    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] QString verdict() const;
    [[nodiscard]] QVariantList chain() const;
    [[nodiscard]] QVariantMap stills() const;
    [[nodiscard]] QVariantList rivals() const;
    [[nodiscard]] QVariantList missing() const;
    [[nodiscard]] QString belief() const;
    [[nodiscard]] int beliefLevel() const;
    [[nodiscard]] QString beliefWord() const;
    [[nodiscard]] QString beliefSentence() const;
    [[nodiscard]] QString word() const;
    [[nodiscard]] QString wordNote() const;
    [[nodiscard]] QVariantList order() const;
    [[nodiscard]] QVariantList departures() const;
    [[nodiscard]] QVariantList priorities() const;
    [[nodiscard]] QStringList planNotes() const;
    [[nodiscard]] int lookAgainDays() const { return reasoned_ ? reasoned_->plan.lookAgainDays : 0; }
    [[nodiscard]] bool planKept() const { return planKept_; }
    [[nodiscard]] QString keptUntil() const { return keptUntil_; }
    [[nodiscard]] QVariantList cautions() const;
    [[nodiscard]] QString cautionsFooter() const;
    [[nodiscard]] QVariantList followUp() const;
    [[nodiscard]] QVariantList shots() const;
    [[nodiscard]] QString trialNode() const { return QString::fromStdString(trialNode_); }
    [[nodiscard]] QString trialLabel() const;
    [[nodiscard]] bool canJudge() const;
    [[nodiscard]] QString trialSentence() const;
    [[nodiscard]] QString trialGuard() const;
    [[nodiscard]] QStringList trialMoved() const;

    /// The coach agrees with the proposal.
    Q_INVOKABLE void accept(const QString& note);
    /// The place in `order` comes first from now on.
    Q_INVOKABLE void putFirst(int place);
    /// The coach sees another departure first; what the program proposed stays on record.
    Q_INVOKABLE void overrule(const QString& node, const QString& note);
    Q_INVOKABLE void setSets(int priority, int rehearsals, int balls);
    Q_INVOKABLE void setLookAgain(int days);
    Q_INVOKABLE void keepPlan();
    Q_INVOKABLE void tryNode(const QString& node);
    /// The next of: nothing, before, try, after.
    Q_INVOKABLE void tagShot(int number);
    Q_INVOKABLE void judgeTrial();

  signals:
    void changed();
    void stillsChanged();
    void shotsChanged();

  private:
    struct Reading {
        session::Reasoned reasoned;
        session::FollowUp followUp;
        std::map<std::string, session::Sight> sights; ///< by node of the chain
        std::optional<records::Plan> kept;
    };
    void load();
    void say(const QString& word, std::vector<std::string> nodes, const QString& note);
    void take(const base::Result<Reading>& reading);
    void showStills();
    [[nodiscard]] QString labelOf(const std::string& node) const;
    [[nodiscard]] QString checkLabel(const std::string& checkpoint) const;
    [[nodiscard]] QString numberOf(const reasoning::NodeState& node) const;
    base::Result<Reading> read(); ///< on the worker

    store::Library* library_;
    base::Id lesson_;
    QString title_;
    const coaching::Playbook* playbook_;
    session::CoachDesk desk_; ///< holds no state: the worker uses it too
    std::optional<session::Reasoned> reasoned_;
    session::FollowUp followUp_;
    std::map<std::string, session::Sight> sights_;
    std::map<std::string, QImage> stills_; ///< by node
    bool busy_ = false, planKept_ = false;
    QString problem_, keptUntil_;
    std::map<int, QString> sets_; ///< by shot number
    std::string trialNode_;
    std::optional<reasoning::TrialResult> trial_;
    Worker worker_; ///< last: it ends before anything it tells goes away
};

} // namespace plumbmark::bridge
