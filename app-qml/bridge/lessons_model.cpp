// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/lessons_model.h"

#include "bridge/in_language.h"
#include "bridge/phrases.h"

namespace plumbmark::bridge {

int LessonsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : rowTotal();
}

QHash<int, QByteArray> LessonsModel::roleNames() const {
    return {{PlayerRole, "player"},
            {DayRole, "day"},
            {TitleRole, "title"},
            {SwingsRole, "swings"},
            {LessonRole, "lesson"}};
}

QVariant LessonsModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= rowTotal()) {
        return {};
    }
    const store::LessonRow& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case PlayerRole:
        return QString::fromStdString(row.playerName);
    case DayRole:
        return dayText(row.day);
    case TitleRole:
        return QString::fromStdString(row.title);
    case LessonRole:
        return QString::fromStdString(row.id.hex());
    case SwingsRole: {
        auto it = swings_.find(row.id);
        if (it == swings_.end()) {
            it = swings_.emplace(row.id, swingsOf(row)).first;
        }
        return it->second;
    }
    default:
        return {};
    }
}

void LessonsModel::setSearch(const QString& search) {
    if (search_ != search) {
        search_ = search;
        load();
        emit searchChanged();
    }
}

void LessonsModel::load() {
    beginResetModel();
    rows_.clear();
    swings_.clear();
    auto result = book_->lessons(search_.toStdString(), player_);
    if (result.ok()) {
        rows_ = std::move(*result);
        problem_.clear();
    } else {
        problem_ = inLanguage(result.error().sentence);
    }
    endResetModel();
    emit loaded();
}

QVariantList LessonsModel::swingsOf(const store::LessonRow& lesson) const {
    QVariantList list;
    const auto shots = book_->shots(lesson.id);
    if (!shots.ok()) {
        return list;
    }
    for (const store::ShotRow& shot : *shots) {
        const auto clips = book_->clips(shot.id);
        if (!clips.ok()) {
            continue;
        }
        for (const store::ClipRow& clip : *clips) {
            std::array<int, 4> counts{};
            if (const auto findings = book_->findings(clip.id); findings.ok() && *findings) {
                for (const records::CheckpointFinding& check : (*findings)->checkpoints) {
                    ++counts[check.state == "good"    ? 0
                             : check.state == "watch" ? 1
                             : check.state == "work"  ? 2
                                                      : 3];
                }
            }
            QStringList parts;
            if (shot.shot.club) {
                parts << clubLabel(*shot.shot.club);
            }
            parts << viewLabel(clip.clip.view);
            if (shot.shot.kind != marks::ShotKind::full) {
                parts << shotLabel(shot.shot.kind);
            }
            list.append(QVariantMap{
                {QStringLiteral("clip"), QString::fromStdString(clip.id.hex())},
                {QStringLiteral("number"), shot.number},
                {QStringLiteral("title"), parts.join(QStringLiteral(" \u00b7 "))},
                {QStringLiteral("film"), clip.filmHere},
                {QStringLiteral("good"), counts[0]},
                {QStringLiteral("watch"), counts[1]},
                {QStringLiteral("work"), counts[2]},
                {QStringLiteral("unknown"), counts[3]},
            });
        }
    }
    return list;
}

} // namespace plumbmark::bridge
