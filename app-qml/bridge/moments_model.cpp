// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/moments_model.h"

#include <QLocale>
#include <cmath>

#include "bridge/phrases.h"

namespace plumbmark::bridge {

int MomentsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : rowTotal();
}

QHash<int, QByteArray> MomentsModel::roleNames() const {
    return {{LabelRole, "label"}, {TimeRole, "time"}, {FrameRole, "frame"},
            {StillRole, "still"}, {HowRole, "how"},   {ByHandRole, "byHand"}};
}

QVariant MomentsModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= rowTotal()) {
        return {};
    }
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case LabelRole:
        return momentLabel(row.id);
    case TimeRole:
        return row.time;
    case FrameRole:
        return row.frame;
    case HowRole:
        return row.how;
    case ByHandRole:
        return row.byHand;
    case StillRole: {
        const auto it = stills_.find(row.frame);
        return it == stills_.end() ? QImage() : it->second;
    }
    default:
        return {};
    }
}

QList<qreal> MomentsModel::shares() const {
    QList<qreal> shares;
    for (const Row& row : rows_) {
        shares.append(frames_ > 1 ? double(row.frame) / (frames_ - 1) : 0.0);
    }
    return shares;
}

int MomentsModel::frameOf(int row) const {
    return row >= 0 && row < rowTotal() ? rows_[static_cast<std::size_t>(row)].frame : -1;
}

std::optional<marks::MomentId> MomentsModel::idOf(int row) const {
    return row >= 0 && row < rowTotal() ? std::optional(rows_[static_cast<std::size_t>(row)].id)
                                        : std::nullopt;
}

QString MomentsModel::timeOf(int row) const {
    return row >= 0 && row < rowTotal() ? rows_[static_cast<std::size_t>(row)].time : QString();
}

void MomentsModel::show(const analysis::Outcome& outcome) {
    std::vector<Row> rows;
    const marks::Moment* impact = marks::find(outcome.moments, marks::MomentId::impact);
    for (const marks::Moment& moment : outcome.moments) {
        Row row;
        row.id = moment.id;
        row.how = foundByLabel(moment.foundBy);
        row.byHand = moment.foundBy == "hand mark";
        // The frame shown for a moment is the one nearest to it in time.
        const auto& track = outcome.track;
        int frame = static_cast<int>(marks::frameAt(track, moment.time));
        if (frame + 1 < static_cast<int>(track.size()) &&
            std::abs((track[static_cast<std::size_t>(frame) + 1].time - moment.time).value()) <
                std::abs((track[static_cast<std::size_t>(frame)].time - moment.time).value())) {
            ++frame;
        }
        row.frame = frame;
        // Times count from impact, the instant everybody sees; without a known time scale only frames are
        // told.
        if (!outcome.timeScale.known || impact == nullptr) {
            row.time = QObject::tr("frame %1").arg(QLocale().toString(frame + 1));
        } else if (moment.id == marks::MomentId::impact) {
            row.time = QObject::tr("0 s");
        } else {
            const double real = (moment.time - impact->time).value() * outcome.timeScale.realPerShown;
            row.time =
                (real > 0 ? QStringLiteral("+") : QString()) + QObject::tr("%1 s").arg(decimal(real, 2));
        }
        rows.push_back(row);
    }
    frames_ = static_cast<int>(outcome.track.size());
    if (rows == rows_) {
        return;
    }
    const bool sameMoments =
        rows.size() == rows_.size() && std::equal(rows.begin(), rows.end(), rows_.begin(),
                                                  [](const Row& a, const Row& b) { return a.id == b.id; });
    if (sameMoments) {
        rows_ = std::move(rows);
        emit dataChanged(index(0), index(rowTotal() - 1));
    } else {
        beginResetModel();
        rows_ = std::move(rows);
        endResetModel();
    }
    emit rowsChanged();
    setShownFrame(shown_);
}

void MomentsModel::setShownFrame(int frame) {
    shown_ = frame;
    int current = -1;
    for (int i = 0; i < rowTotal(); ++i) {
        if (rows_[static_cast<std::size_t>(i)].frame == frame) {
            current = i;
        }
    }
    if (current != current_) {
        current_ = current;
        emit currentChanged();
    }
}

void MomentsModel::setStill(int frame, const QImage& still) {
    stills_[frame] = still;
    for (int i = 0; i < rowTotal(); ++i) {
        if (rows_[static_cast<std::size_t>(i)].frame == frame) {
            emit dataChanged(index(i), index(i), {StillRole});
        }
    }
}

} // namespace plumbmark::bridge
