// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>
#include <optional>

#include "session/lesson_book.h"

namespace plumbmark::bridge {

/// What the ball did and how the shot is filed: every tap is kept at once; a tap on what is chosen takes it
/// back. Left and right are the player's, looking at the target; the library holds lead and trail.
class ShotRecordModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the swing")
    /// The nine flights in the order of the grid, start line from left to right, curve from left to right
    /// downwards: [{value, text, glyph}].
    Q_PROPERTY(QVariantList flights READ flights NOTIFY loaded)
    /// The other questions: [{field, question, choices: [{value, text}]}].
    Q_PROPERTY(QVariantList questions READ questions CONSTANT)
    /// The answers that stand: "flight" and the questions' fields to their values.
    Q_PROPERTY(QVariantMap answers READ answers NOTIFY changed)
    Q_PROPERTY(bool star READ star NOTIFY changed)
    Q_PROPERTY(QString tags READ tags NOTIFY changed)
    /// Everything that is told, in a line; empty: nothing yet.
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)

  public:
    explicit ShotRecordModel(store::Library& library, QObject* parent = nullptr)
        : QObject(parent), library_(&library), book_(library) {}
    void load(const base::Id& clip);

    [[nodiscard]] QVariantList flights() const;
    [[nodiscard]] QVariantList questions() const;
    [[nodiscard]] QVariantMap answers() const;
    [[nodiscard]] bool star() const { return shot_.star; }
    [[nodiscard]] QString tags() const;
    [[nodiscard]] QString summary() const;
    [[nodiscard]] QString problem() const { return problem_; }

    Q_INVOKABLE void chooseFlight(const QString& value);
    Q_INVOKABLE void choose(const QString& field, const QString& value);
    Q_INVOKABLE void toggleStar();
    /// Words with commas between.
    Q_INVOKABLE void fileUnder(const QString& tags);

  signals:
    void loaded();
    void changed();

  private:
    void keep(const records::Shot& shot);

    store::Library* library_;
    session::LessonBook book_;
    std::optional<base::Id> id_;
    bool leftHanded_ = false;
    records::Shot shot_;
    QString problem_;
};

/// "Pull hook, low, thin": what is known of the ball; empty where nothing is.
[[nodiscard]] QString ballLabel(const records::Shot& shot);

} // namespace plumbmark::bridge
