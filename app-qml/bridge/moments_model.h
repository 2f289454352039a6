// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAbstractListModel>
#include <QImage>
#include <QtQml/qqmlregistration.h>
#include <map>
#include <vector>

#include "analysis/analysis.h"

namespace plumbmark::bridge {

/// The key moments of one swing in time order.
class MomentsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the swing")
    Q_PROPERTY(int current READ current NOTIFY currentChanged)
    Q_PROPERTY(int count READ rowTotal NOTIFY rowsChanged)
    /// Places of the moments on the way through the film, 0..1.
    Q_PROPERTY(QList<qreal> shares READ shares NOTIFY rowsChanged)

  public:
    enum Role { LabelRole = Qt::UserRole + 1, TimeRole, FrameRole, StillRole, HowRole, ByHandRole };
    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int current() const { return current_; }
    [[nodiscard]] int rowTotal() const { return static_cast<int>(rows_.size()); }
    [[nodiscard]] QList<qreal> shares() const;
    [[nodiscard]] int frameOf(int row) const;
    /// Nothing for rows that are not there.
    [[nodiscard]] std::optional<marks::MomentId> idOf(int row) const;
    [[nodiscard]] QString timeOf(int row) const;

    void show(const analysis::Outcome& outcome);
    void setShownFrame(int frame);
    void setStill(int frame, const QImage& still);

  signals:
    void currentChanged();
    void rowsChanged();

  private:
    struct Row {
        marks::MomentId id = marks::MomentId::address;
        QString time;
        QString how;
        int frame = 0;
        bool byHand = false;
        friend bool operator==(const Row&, const Row&) = default;
    };
    std::vector<Row> rows_;
    std::map<int, QImage> stills_; ///< by frame
    int frames_ = 0;
    int shown_ = -1;
    int current_ = -1; ///< row whose frame is shown, -1 between moments
};

} // namespace plumbmark::bridge
