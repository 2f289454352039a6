// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>
#include <optional>

#include "session/body_book.h"
#include "session/lesson_book.h"

namespace plumbmark::bridge {

/// What is asked of the body before the first full swing. Every answer is kept at once, with its day. Never a
/// diagnosis: the card holds what the student says.
class BodyCardModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    Q_PROPERTY(QString name READ name NOTIFY changed)
    /// When the card was asked last; empty: never.
    Q_PROPERTY(QString day READ day NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    /// All regions in words: [{value, text}].
    Q_PROPERTY(QVariantList regions READ regions NOTIFY opened)
    /// Today's pain: [{region, text, level}]; worst first.
    Q_PROPERTY(QVariantList pains READ pains NOTIFY changed)
    /// Questions with regions for answers: [{field, question, told, chosen: [value]}].
    Q_PROPERTY(QVariantList regionQuestions READ regionQuestions NOTIFY changed)
    /// Questions with few answers: [{field, question, value: "yes", "no" or ""}].
    Q_PROPERTY(QVariantList questions READ questions NOTIFY changed)
    Q_PROPERTY(QString birthYear READ birthYear NOTIFY changed)
    Q_PROPERTY(QString mostBalls READ mostBalls NOTIFY changed)
    /// What the answers mean for today, one sentence each; never empty.
    Q_PROPERTY(QStringList today READ today NOTIFY changed)
    /// Something speaks for no full swings now.
    Q_PROPERTY(bool hold READ hold NOTIFY changed)

  public:
    explicit BodyCardModel(store::Library& library, session::LessonBook& book, QObject* parent = nullptr)
        : QObject(parent), body_(library), book_(&book) {}
    void open(const base::Id& player);

    [[nodiscard]] QString name() const { return QString::fromStdString(player_.name); }
    [[nodiscard]] QString day() const;
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] QVariantList regions() const;
    [[nodiscard]] QVariantList pains() const { return pains_; }
    [[nodiscard]] QVariantList regionQuestions() const;
    [[nodiscard]] QVariantList questions() const;
    [[nodiscard]] QString birthYear() const;
    [[nodiscard]] QString mostBalls() const;
    [[nodiscard]] QStringList today() const { return today_; }
    [[nodiscard]] bool hold() const { return hold_; }

    /// Level 0 .. 10, logged for today.
    Q_INVOKABLE void tellPain(const QString& region, int level);
    /// Adds a region to an answer, or takes it out.
    Q_INVOKABLE void toggleRegion(const QString& field, const QString& region);
    Q_INVOKABLE void answer(const QString& field, const QString& value);
    Q_INVOKABLE void tellBirthYear(const QString& text);
    Q_INVOKABLE void tellMostBalls(const QString& text);

  signals:
    void opened();
    void changed();

  private:
    void read();
    void keep(records::BodyCard card);
    void setProblem(const QString& sentence);
    [[nodiscard]] QString regionText(const std::string& region) const;

    session::BodyBook body_;
    session::LessonBook* book_;
    std::optional<base::Id> id_;
    records::Player player_;
    records::BodyCard card_;
    QVariantList pains_;
    QStringList today_;
    bool hold_ = false;
    QString problem_;
};

} // namespace plumbmark::bridge
