// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAbstractListModel>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>
#include <map>
#include <optional>
#include <vector>

#include "session/lesson_book.h"

namespace plumbmark::bridge {

/// Lessons, newest first. The swings of a lesson are read when its row is first shown.
class LessonsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    Q_PROPERTY(int count READ rowTotal NOTIFY loaded)
    Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY searchChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded)

  public:
    enum Role { PlayerRole = Qt::UserRole + 1, DayRole, TitleRole, SwingsRole, LessonRole };
    explicit LessonsModel(session::LessonBook& book, QObject* parent = nullptr)
        : QAbstractListModel(parent), book_(&book) {}

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int rowTotal() const { return static_cast<int>(rows_.size()); }
    [[nodiscard]] QString search() const { return search_; }
    void setSearch(const QString& search);
    [[nodiscard]] QString problem() const { return problem_; }
    void load();
    /// Only this player's lessons from now on.
    void showPlayer(const base::Id& player) {
        player_ = player;
        load();
    }

  signals:
    void loaded();
    void searchChanged();

  private:
    [[nodiscard]] QVariantList swingsOf(const store::LessonRow& lesson) const;

    session::LessonBook* book_;
    std::optional<base::Id> player_; ///< nothing: everybody's
    std::vector<store::LessonRow> rows_;
    mutable std::map<base::Id, QVariantList> swings_;
    QString search_;
    QString problem_;
};

} // namespace plumbmark::bridge
