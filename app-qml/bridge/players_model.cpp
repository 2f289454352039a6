// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/players_model.h"

#include <QLocale>

#include "bridge/in_language.h"
#include "bridge/phrases.h"

namespace plumbmark::bridge {

int PlayersModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : rowTotal();
}

QHash<int, QByteArray> PlayersModel::roleNames() const {
    return {{IdRole, "playerId"}, {NameRole, "name"}, {DetailRole, "detail"}, {LastDayRole, "lastDay"}};
}

QVariant PlayersModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= rowTotal()) {
        return {};
    }
    const store::PlayerRow& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case IdRole:
        return QString::fromStdString(row.id.hex());
    case NameRole:
        return QString::fromStdString(row.name);
    case DetailRole: {
        QStringList parts{tr("lessons: %1").arg(QLocale().toString(row.lessons))};
        if (row.hand == marks::Hand::left) {
            parts << handLabel(*row.hand);
        }
        if (row.needsYou) {
            parts << tr("two versions: open to choose");
        }
        return parts.join(QStringLiteral(" \u00b7 "));
    }
    case LastDayRole:
        return row.lastDay.empty() ? QString() : dayText(row.lastDay);
    default:
        return {};
    }
}

void PlayersModel::setSearch(const QString& search) {
    if (search_ != search) {
        search_ = search;
        load();
        emit searchChanged();
    }
}

void PlayersModel::load() {
    beginResetModel();
    rows_.clear();
    auto result = book_->players(search_.simplified().toStdString());
    if (result.ok()) {
        rows_ = std::move(*result);
        problem_.clear();
    } else {
        problem_ = inLanguage(result.error().sentence);
    }
    endResetModel();
    emit loaded();
}

} // namespace plumbmark::bridge
