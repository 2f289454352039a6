// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>
#include <atomic>
#include <memory>
#include <optional>
#include <thread>

#include "bridge/lessons_model.h"
#include "session/coach_desk.h"
#include "session/player_history.h"

namespace plumbmark::bridge {

/// One player's page: who it is, what the next lesson opens with, lessons in time, swings filed, and any
/// number over the lessons. Swings are read on a thread of their own; the page is there at once.
class PlayerModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    Q_PROPERTY(QString playerId READ playerId NOTIFY changed)
    Q_PROPERTY(bool isNew READ isNew NOTIFY changed)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(QString hand READ hand NOTIFY changed)
    Q_PROPERTY(QString stature READ stature NOTIFY changed)
    Q_PROPERTY(QString group READ group NOTIFY changed)
    Q_PROPERTY(QString note READ note NOTIFY changed)
    Q_PROPERTY(QVariantList handChoices READ handChoices CONSTANT)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)
    /// Of today's lesson; empty while there is none.
    Q_PROPERTY(QString wish READ wish NOTIFY lessonChanged)
    Q_PROPERTY(QString belief READ belief NOTIFY lessonChanged)
    Q_PROPERTY(bool lessonToday READ lessonToday NOTIFY lessonChanged)
    /// What was asked last time, where today was not asked yet.
    Q_PROPERTY(QString lastWish READ lastWish NOTIFY lessonChanged)
    /// The day on which the body card was filled in; empty: never.
    Q_PROPERTY(QString bodyAsked READ bodyAsked NOTIFY lessonChanged)
    /// What the lesson opens with: [{title, lines: [text]}].
    Q_PROPERTY(QVariantList opener READ opener NOTIFY lessonChanged)
    Q_PROPERTY(plumbmark::bridge::LessonsModel* lessons READ lessons CONSTANT)

    // Swings filed.
    Q_PROPERTY(bool reading READ reading NOTIFY historyChanged)
    /// Questions with more than one answer: [{field, question, choices: [{value, text}]}].
    Q_PROPERTY(QVariantList filters READ filters NOTIFY historyChanged)
    /// What was answered: field to value.
    Q_PROPERTY(QVariantMap filterAnswers READ filterAnswers NOTIFY filtersChanged)
    /// [{clip, title, detail, star}], newest first.
    Q_PROPERTY(QVariantList swings READ swings NOTIFY filtersChanged)

    // A number over the lessons.
    Q_PROPERTY(QVariantList kindChoices READ kindChoices NOTIFY historyChanged)
    Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY trendChanged)
    Q_PROPERTY(QVariantList numberChoices READ numberChoices NOTIFY numbersChanged)
    Q_PROPERTY(int number READ number WRITE setNumber NOTIFY trendChanged)
    /// Shares of the chart, from its left and its top: [{x, y, low, high, text}].
    Q_PROPERTY(QVariantList points READ points NOTIFY trendChanged)
    Q_PROPERTY(QVariantList ticks READ ticks NOTIFY trendChanged) ///< [{y, text}]
    Q_PROPERTY(bool hasBand READ hasBand NOTIFY trendChanged)
    Q_PROPERTY(double bandTop READ bandTop NOTIFY trendChanged)
    Q_PROPERTY(double bandBottom READ bandBottom NOTIFY trendChanged)
    Q_PROPERTY(QString bandText READ bandText NOTIFY trendChanged)
    Q_PROPERTY(QString trendText READ trendText NOTIFY trendChanged)
    Q_PROPERTY(QString firstDay READ firstDay NOTIFY trendChanged)
    Q_PROPERTY(QString lastDay READ lastDay NOTIFY trendChanged)

  public:
    PlayerModel(store::Library& library, session::LessonBook& book, QObject* parent = nullptr);
    ~PlayerModel() override;

    /// Shows a player; nothing: an empty form for a new one.
    void open(std::optional<base::Id> player);
    /// Again, after something may have changed elsewhere.
    Q_INVOKABLE void refresh();

    [[nodiscard]] QString playerId() const { return id_ ? QString::fromStdString(id_->hex()) : QString(); }
    [[nodiscard]] const std::optional<base::Id>& id() const { return id_; }
    [[nodiscard]] bool isNew() const { return !id_; }
    [[nodiscard]] QString name() const { return QString::fromStdString(player_.name); }
    [[nodiscard]] QString about() const;
    [[nodiscard]] QString hand() const;
    [[nodiscard]] QString stature() const;
    [[nodiscard]] QString group() const { return QString::fromStdString(player_.group); }
    [[nodiscard]] QString note() const { return QString::fromStdString(player_.note); }
    [[nodiscard]] QVariantList handChoices() const;
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] QString wish() const { return QString::fromStdString(today_.wish); }
    [[nodiscard]] QString belief() const { return QString::fromStdString(today_.belief); }
    [[nodiscard]] bool lessonToday() const { return lesson_.has_value(); }
    [[nodiscard]] QString lastWish() const { return lastWish_; }
    [[nodiscard]] QString bodyAsked() const { return bodyAsked_; }
    [[nodiscard]] QVariantList opener() const { return opener_; }
    [[nodiscard]] LessonsModel* lessons() { return &lessons_; }
    [[nodiscard]] bool reading() const { return reading_; }
    [[nodiscard]] QVariantList filters() const;
    [[nodiscard]] QVariantMap filterAnswers() const { return filter_; }
    [[nodiscard]] QVariantList swings() const { return swings_; }
    [[nodiscard]] QVariantList kindChoices() const;
    [[nodiscard]] int kind() const { return kind_; }
    void setKind(int kind);
    [[nodiscard]] QVariantList numberChoices() const;
    [[nodiscard]] int number() const { return number_; }
    void setNumber(int number);
    [[nodiscard]] QVariantList points() const { return points_; }
    [[nodiscard]] QVariantList ticks() const { return ticks_; }
    [[nodiscard]] bool hasBand() const { return bandBottom_ > bandTop_; }
    [[nodiscard]] double bandTop() const { return bandTop_; }
    [[nodiscard]] double bandBottom() const { return bandBottom_; }
    [[nodiscard]] QString bandText() const { return bandText_; }
    [[nodiscard]] QString trendText() const { return trendText_; }
    [[nodiscard]] QString firstDay() const { return firstDay_; }
    [[nodiscard]] QString lastDay() const { return lastDay_; }

    /// Keeps the form; true when it is on the disk.
    Q_INVOKABLE bool save(const QString& name, const QString& hand, const QString& stature,
                          const QString& group, const QString& note);
    /// Makes today's lesson where there is none.
    Q_INVOKABLE void startLesson();
    /// Keep it in today's lesson.
    Q_INVOKABLE void tellWish(const QString& text);
    Q_INVOKABLE void tellBelief(const QString& text);
    /// A tap on the answer that stands takes the filter away.
    Q_INVOKABLE void filter(const QString& field, const QString& value);

  signals:
    void changed();
    void problemChanged();
    void lessonChanged();
    void historyChanged();
    void filtersChanged();
    void numbersChanged();
    void trendChanged();
    void saved();

  private:
    void setProblem(const QString& sentence);
    void readLesson();
    void readOpener();
    void readHistory();
    void stopReading();
    void fillSwings();
    void fillTrend();
    bool keepLesson(const records::Lesson& lesson);
    [[nodiscard]] std::vector<std::pair<QString, QString>> filed(const session::FiledSwing& swing,
                                                                 const QString& field) const;

    store::Library* library_;
    session::LessonBook* book_;
    LessonsModel lessons_;
    std::optional<base::Id> id_;
    records::Player player_;
    std::optional<base::Id> lesson_; ///< of today
    records::Lesson today_;
    QString lastWish_, bodyAsked_;
    QString problem_;
    QVariantList opener_;
    bool reading_ = false;
    std::optional<session::PlayerHistory> history_;
    QVariantMap filter_;
    QVariantList swings_;
    std::vector<session::SwingKind> kinds_;
    std::vector<session::TrendChoice> numbers_;
    int kind_ = 0, number_ = 0;
    QVariantList points_, ticks_;
    double bandTop_ = 0.0, bandBottom_ = 0.0;
    QString bandText_, trendText_, firstDay_, lastDay_;
    std::atomic<bool> stop_ = false;
    std::thread reader_; ///< last: stopped before anything it answers to goes away
};

} // namespace plumbmark::bridge
