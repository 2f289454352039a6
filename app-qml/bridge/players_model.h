// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>
#include <vector>

#include "session/lesson_book.h"

namespace plumbmark::bridge {

/// Players by name; found by name or group.
class PlayersModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    Q_PROPERTY(int count READ rowTotal NOTIFY loaded)
    Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY searchChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded)

  public:
    enum Role { IdRole = Qt::UserRole + 1, NameRole, DetailRole, LastDayRole };
    explicit PlayersModel(session::LessonBook& book, QObject* parent = nullptr)
        : QAbstractListModel(parent), book_(&book) {}

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int rowTotal() const { return static_cast<int>(rows_.size()); }
    [[nodiscard]] QString search() const { return search_; }
    void setSearch(const QString& search);
    [[nodiscard]] QString problem() const { return problem_; }
    Q_INVOKABLE void load();
    [[nodiscard]] const std::vector<store::PlayerRow>& rows() const { return rows_; }

  signals:
    void loaded();
    void searchChanged();

  private:
    session::LessonBook* book_;
    std::vector<store::PlayerRow> rows_;
    QString search_;
    QString problem_;
};

} // namespace plumbmark::bridge
