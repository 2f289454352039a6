// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>
#include <algorithm>
#include <vector>

#include "store/library.h"

namespace plumbmark::bridge {

/// A class taught together: whose turn it is, and who comes next. Names only: nothing about one player is
/// ever shown beside another.
class GroupModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    Q_PROPERTY(bool active READ active NOTIFY changed)
    Q_PROPERTY(QVariantList players READ players NOTIFY changed) ///< [{id, name, current}]
    Q_PROPERTY(QString currentId READ currentId NOTIFY changed)
    Q_PROPERTY(QString currentName READ currentName NOTIFY changed)
    Q_PROPERTY(QString nextName READ nextName NOTIFY changed)

  public:
    /// More than this is no class that one coach films.
    static constexpr std::size_t kMost = 40;

    explicit GroupModel(QObject* parent = nullptr) : QObject(parent) {}
    /// At most kMost of these, in their order; the first has the first turn.
    void start(std::vector<store::PlayerRow> players) {
        players.erase(players.begin() + static_cast<std::ptrdiff_t>(std::min(players.size(), kMost)),
                      players.end());
        players_ = std::move(players);
        current_ = 0;
        emit changed();
        emit turnChanged();
    }

    [[nodiscard]] bool active() const { return !players_.empty(); }
    [[nodiscard]] const store::PlayerRow* current() const { return active() ? &players_[current_] : nullptr; }
    [[nodiscard]] QVariantList players() const {
        QVariantList list;
        for (std::size_t i = 0; i < players_.size(); ++i) {
            list.append(QVariantMap{{QStringLiteral("id"), QString::fromStdString(players_[i].id.hex())},
                                    {QStringLiteral("name"), QString::fromStdString(players_[i].name)},
                                    {QStringLiteral("current"), i == current_}});
        }
        return list;
    }
    [[nodiscard]] QString currentId() const {
        return active() ? QString::fromStdString(players_[current_].id.hex()) : QString();
    }
    [[nodiscard]] QString currentName() const {
        return active() ? QString::fromStdString(players_[current_].name) : QString();
    }
    [[nodiscard]] QString nextName() const {
        return players_.size() < 2 ? QString()
                                   : QString::fromStdString(players_[(current_ + 1) % players_.size()].name);
    }

    Q_INVOKABLE void next() { turn(static_cast<int>(current_ + 1)); }
    /// Counted from 0; behind the last comes the first.
    Q_INVOKABLE void turn(int index) {
        if (active() && index >= 0) {
            current_ = static_cast<std::size_t>(index) % players_.size();
            emit changed();
            emit turnChanged();
        }
    }
    Q_INVOKABLE void end() {
        players_.clear();
        current_ = 0;
        emit changed();
    }

  signals:
    void changed();
    void turnChanged();

  private:
    std::vector<store::PlayerRow> players_;
    std::size_t current_ = 0;
};

} // namespace plumbmark::bridge
