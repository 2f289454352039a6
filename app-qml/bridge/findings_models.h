// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>
#include <array>
#include <optional>
#include <vector>

#include "analysis/analysis.h"

namespace plumbmark::bridge {

/// The outcome as the measurements see it; lives no longer than the outcome.
[[nodiscard]] measure::Input measureInput(const analysis::Outcome& outcome);

/// Checkpoints with their lights. The order (good first) is set when a swing opens and after each finished
/// gesture, never while a finger moves.
class ChecksModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the swing")
    Q_PROPERTY(int count READ rowTotal NOTIFY countsChanged)
    Q_PROPERTY(int good READ good NOTIFY countsChanged)
    Q_PROPERTY(int watch READ watch NOTIFY countsChanged)
    Q_PROPERTY(int work READ work NOTIFY countsChanged)
    Q_PROPERTY(int unknown READ unknown NOTIFY countsChanged)

  public:
    enum Role {
        LabelRole = Qt::UserRole + 1,
        MomentRole,
        LevelRole,
        WordRole,
        ShareRole,
        ValueRole,
        SigmaRole,
        UnitRole,
        RangeRole,
        SourceRole,
        HelpRole,
        FrameRole,
        SpokenRole,
        KeyRole,   ///< the checkpoint's id
        MarksRole, ///< where each mark it is measured from came from
        GroupRole  ///< heading it stands under: set with the order, so that no row leaves its heading while
                   ///< dragged
    };
    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] const coaching::CheckpointResult* find(const QString& key) const;
    [[nodiscard]] int rowTotal() const { return static_cast<int>(rows_.size()); }
    [[nodiscard]] int good() const { return counts_[0]; }
    [[nodiscard]] int watch() const { return counts_[1]; }
    [[nodiscard]] int work() const { return counts_[2]; }
    [[nodiscard]] int unknown() const { return counts_[3]; }

    void show(const analysis::Outcome& outcome, bool mayReorder);

  signals:
    void countsChanged();
    /// The first row whose value a drag has moved; once per drag.
    void touched(int row);

  private:
    struct Row {
        coaching::CheckpointResult result;
        int frame = -1;
        QString marks;
        int group = 3;
    };
    std::vector<Row> rows_;
    std::optional<double> stature_;
    std::array<int, 4> counts_{};
    bool told_ = false; ///< touched() was sent for this drag
};

/// Every number of the swing, told or not.
class NumbersModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the swing")

  public:
    enum Role {
        LabelRole = Qt::UserRole + 1,
        MomentRole,
        ToldRole,
        ValueRole,
        SigmaRole,
        UnitRole,
        ReasonRole,
        OriginRole,
        FrameRole,
        SpokenRole
    };
    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    void show(const analysis::Outcome& outcome);

  private:
    struct Row {
        measure::Measurement measurement;
        int frame = -1;
    };
    std::vector<Row> rows_;
    std::optional<double> stature_;
};

} // namespace plumbmark::bridge
