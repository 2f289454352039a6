// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/findings_models.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

#include "bridge/in_language.h"
#include "bridge/phrases.h"
#include "measure/construction.h"

namespace plumbmark::bridge {

measure::Input measureInput(const analysis::Outcome& o) {
    return {o.track, o.moments, o.shaft, o.ball, o.scene, o.context, o.timeScale, o.hit};
}

namespace {

int levelOf(coaching::State state) {
    return static_cast<int>(state);
}

int frameOf(const analysis::Outcome& outcome, std::optional<marks::MomentId> moment) {
    const marks::Moment* found = moment ? marks::find(outcome.moments, *moment) : nullptr;
    return found == nullptr || outcome.track.empty()
               ? -1
               : static_cast<int>(marks::frameAt(outcome.track, found->time));
}

QString momentText(std::optional<marks::MomentId> moment) {
    return moment ? momentLabel(*moment) : QString();
}

/// "Lead ankle at address: by hand, +-2 px", one line for each mark the check is measured from.
QString marksText(const analysis::Outcome& outcome, const coaching::CheckpointResult& check) {
    QStringList lines;
    for (const auto& use :
         measure::constructionOf(measureInput(outcome), check.measurement, check.moment).uses) {
        const QString what = QObject::tr("%1, %2").arg(landmarkLabel(use.landmark), momentInside(use.moment));
        const marks::Moment* moment = marks::find(outcome.moments, use.moment);
        if (moment == nullptr) {
            lines << QObject::tr("%1: the moment was not found").arg(what);
            continue;
        }
        const int frame = measure::nearestFrame(outcome.track, moment->time);
        const auto& mark = outcome.track[static_cast<std::size_t>(frame)][use.landmark];
        lines << (mark ? QObject::tr("%1: %2, \u00b1 %3 px")
                             .arg(what, originLabel(mark->origin), decimal(mark->sigma, 1))
                       : QObject::tr("%1: not marked").arg(what));
    }
    return lines.join(QLatin1Char('\n'));
}

QString named(const QString& label, std::optional<marks::MomentId> moment) {
    return moment ? label + QStringLiteral(", ") + momentLabel(*moment) : label;
}

} // namespace

int ChecksModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : rowTotal();
}

QHash<int, QByteArray> ChecksModel::roleNames() const {
    return {{LabelRole, "label"},   {MomentRole, "moment"}, {LevelRole, "level"}, {WordRole, "word"},
            {ShareRole, "share"},   {ValueRole, "value"},   {SigmaRole, "sigma"}, {UnitRole, "unit"},
            {RangeRole, "range"},   {SourceRole, "source"}, {HelpRole, "help"},   {FrameRole, "frame"},
            {SpokenRole, "spoken"}, {KeyRole, "key"},       {MarksRole, "marks"}, {GroupRole, "group"}};
}

const coaching::CheckpointResult* ChecksModel::find(const QString& key) const {
    const std::string id = key.toStdString();
    const auto it = std::find_if(rows_.begin(), rows_.end(), [&](const Row& r) { return r.result.id == id; });
    return it == rows_.end() ? nullptr : &it->result;
}

QVariant ChecksModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= rowTotal()) {
        return {};
    }
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    const coaching::CheckpointResult& r = row.result;
    const int level = levelOf(r.state);
    switch (role) {
    case LabelRole:
        return inLanguage(r.label);
    case MomentRole:
        return momentText(r.moment);
    case LevelRole:
        return level;
    case WordRole:
        return stateWord(level);
    case ShareRole:
        return level == 3 ? QString()
                          : QLocale().toString(std::lround(100 * (level == 0   ? r.good
                                                                  : level == 1 ? r.watch
                                                                               : r.work))) +
                                QStringLiteral("\u00a0%");
    case ValueRole:
        return r.value ? numberText(*r.value, stature_).value : QString();
    case SigmaRole:
        return r.value ? numberText(*r.value, stature_).sigma : QString();
    case UnitRole:
        return r.value ? numberText(*r.value, stature_).unit : QString();
    case RangeRole:
        return r.value ? rangeText(r.goodLow, r.goodHigh, r.value->unit, stature_) : QString();
    case SourceRole:
        return inLanguage(r.rangeSource);
    case HelpRole:
        return inLanguage(r.help);
    case FrameRole:
        return row.frame;
    case KeyRole:
        return QString::fromStdString(r.id);
    case MarksRole:
        return row.marks;
    case GroupRole:
        return row.group;
    case SpokenRole: {
        QString text = named(inLanguage(r.label), r.moment) + QStringLiteral(": ") + stateWord(level);
        if (r.value) {
            text += QStringLiteral(", ") + numberText(*r.value, stature_).whole();
        }
        return text;
    }
    default:
        return {};
    }
}

void ChecksModel::show(const analysis::Outcome& outcome, bool mayReorder) {
    std::vector<Row> rows;
    for (const coaching::CheckpointResult& result : outcome.checkpoints) {
        rows.push_back(
            {result, frameOf(outcome, result.moment), marksText(outcome, result), levelOf(result.state)});
    }
    stature_ = outcome.context.statureMetres;
    told_ = told_ && !mayReorder;
    const auto same = [](const Row& a, const Row& b) {
        return a.result.id == b.result.id && a.result.moment == b.result.moment;
    };
    std::array<int, 4> counts{};
    for (const Row& row : rows) {
        ++counts[static_cast<std::size_t>(levelOf(row.result.state))];
    }
    bool reset = mayReorder || rows.size() != rows_.size();
    if (!reset) { // keep each row in its place
        std::vector<Row> inPlace;
        for (const Row& old : rows_) {
            const auto it =
                std::find_if(rows.begin(), rows.end(), [&](const Row& r) { return same(r, old); });
            if (it == rows.end()) {
                reset = true;
                break;
            }
            inPlace.push_back(*it);
            inPlace.back().group = old.group;
        }
        if (!reset) {
            int moved = -1;
            for (std::size_t i = 0; i < inPlace.size() && moved < 0; ++i) {
                const auto& was = rows_[i].result.value;
                const auto& is = inPlace[i].result.value;
                if (was.has_value() != is.has_value() ||
                    (was && std::abs(was->value - is->value) > 0.05 * is->sigma)) {
                    moved = static_cast<int>(i);
                }
            }
            rows_ = std::move(inPlace);
            if (moved >= 0 && !told_) {
                told_ = true;
                emit touched(moved);
            }
            if (!rows_.empty()) {
                emit dataChanged(index(0), index(rowTotal() - 1));
            }
        }
    }
    if (reset) {
        std::stable_sort(rows.begin(), rows.end(), [](const Row& a, const Row& b) {
            return levelOf(a.result.state) < levelOf(b.result.state);
        });
        const bool sameOrder =
            rows.size() == rows_.size() && std::equal(rows.begin(), rows.end(), rows_.begin(), same);
        if (sameOrder) { // no reset, no jump of the list
            rows_ = std::move(rows);
            if (!rows_.empty()) {
                emit dataChanged(index(0), index(rowTotal() - 1));
            }
        } else {
            beginResetModel();
            rows_ = std::move(rows);
            endResetModel();
        }
    }
    counts_ = counts;
    emit countsChanged();
}

int NumbersModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QHash<int, QByteArray> NumbersModel::roleNames() const {
    return {{LabelRole, "label"}, {MomentRole, "moment"}, {ToldRole, "told"},     {ValueRole, "value"},
            {SigmaRole, "sigma"}, {UnitRole, "unit"},     {ReasonRole, "reason"}, {OriginRole, "origin"},
            {FrameRole, "frame"}, {SpokenRole, "spoken"}};
}

QVariant NumbersModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(rows_.size())) {
        return {};
    }
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    const measure::Measurement& m = row.measurement;
    switch (role) {
    case LabelRole:
        return measurementLabel(m.id);
    case MomentRole:
        return momentText(m.moment);
    case ToldRole:
        return m.value.has_value();
    case ValueRole:
        return m.value ? numberText(*m.value, stature_).value : QString();
    case SigmaRole:
        return m.value ? numberText(*m.value, stature_).sigma : QString();
    case UnitRole:
        return m.value ? numberText(*m.value, stature_).unit : QString();
    case ReasonRole:
        return inLanguage(m.reason);
    case OriginRole:
        return m.value ? originLabel(m.value->origin) : QString();
    case FrameRole:
        return row.frame;
    case SpokenRole: {
        const QString name = named(measurementLabel(m.id), m.moment) + QStringLiteral(": ");
        return name + (m.value ? numberText(*m.value, stature_).whole() : inLanguage(m.reason));
    }
    default:
        return {};
    }
}

void NumbersModel::show(const analysis::Outcome& outcome) {
    std::vector<Row> rows;
    for (const measure::Measurement& measurement : outcome.measurements) {
        rows.push_back({measurement, frameOf(outcome, measurement.moment)});
    }
    stature_ = outcome.context.statureMetres;
    const bool same =
        rows.size() == rows_.size() &&
        std::equal(rows.begin(), rows.end(), rows_.begin(), [](const Row& a, const Row& b) {
            return a.measurement.id == b.measurement.id && a.measurement.moment == b.measurement.moment;
        });
    if (same) {
        rows_ = std::move(rows);
        if (!rows_.empty()) {
            emit dataChanged(index(0), index(static_cast<int>(rows_.size()) - 1));
        }
    } else {
        beginResetModel();
        rows_ = std::move(rows);
        endResetModel();
    }
}

} // namespace plumbmark::bridge
