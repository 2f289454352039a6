// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/player_history.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "coaching/judge.h"

namespace plumbmark::session {

namespace {

const measure::Measurement* numberOf(const StoredSwing& swing, const TrendChoice& what) {
    const auto it = std::find_if(
        swing.measurements.begin(), swing.measurements.end(), [&](const measure::Measurement& m) {
            return m.id == what.measurement && m.moment == what.moment && m.value && m.value->sigma > 0;
        });
    return it == swing.measurements.end() ? nullptr : &*it;
}

/// A day's lessons are told apart: two lessons on one day are two points.
using LessonKey = std::pair<std::string, base::Id>;

} // namespace

base::Result<std::optional<PlayerHistory>> PlayerHistory::read(store::Library& library,
                                                               const base::Id& player,
                                                               const base::Progress& progress,
                                                               const base::Clock& clock) {
    PlayerHistory history;
    const auto lessons = library.lessons({}, player); // newest first
    BodyBook body(library, clock);
    auto card = body.forCoaching(player);
    if (!lessons || !card) {
        return lessons ? card.error() : lessons.error();
    }
    history.card_ = std::move(*card);
    for (std::size_t i = 0; i < lessons->size(); ++i) {
        if (progress.cancelled()) {
            return std::optional<PlayerHistory>();
        }
        auto swings = storedSwings(library, (*lessons)[i].id);
        if (!swings) {
            return swings.error();
        }
        for (StoredSwing& swing : *swings) {
            history.swings_.push_back({(*lessons)[i].id, (*lessons)[i].day, std::move(swing)});
        }
    }
    return std::optional(std::move(history));
}

std::vector<SwingKind> PlayerHistory::kinds() const {
    std::vector<std::pair<SwingKind, int>> counted;
    for (const FiledSwing& filed : swings_) {
        const SwingKind kind = kindOf(filed.swing);
        const auto it =
            std::find_if(counted.begin(), counted.end(), [&](const auto& c) { return c.first == kind; });
        if (it == counted.end()) {
            counted.emplace_back(kind, 1);
        } else {
            ++it->second;
        }
    }
    std::stable_sort(counted.begin(), counted.end(),
                     [](const auto& a, const auto& b) { return a.second > b.second; });
    std::vector<SwingKind> kinds;
    for (auto& [kind, count] : counted) {
        kinds.push_back(kind);
    }
    return kinds;
}

std::vector<TrendChoice> PlayerHistory::choices(const coaching::Playbook& playbook,
                                                const SwingKind& kind) const {
    std::vector<TrendChoice> list;
    std::vector<std::set<base::Id>> lessons; // beside `list`
    for (const FiledSwing& filed : swings_) {
        if (!(kindOf(filed.swing) == kind)) {
            continue;
        }
        for (const measure::Measurement& m : filed.swing.measurements) {
            if (!m.value || !(m.value->sigma > 0)) {
                continue;
            }
            auto it = std::find_if(list.begin(), list.end(), [&](const TrendChoice& c) {
                return c.measurement == m.id && c.moment == m.moment;
            });
            if (it == list.end()) {
                const auto decides = [&](const coaching::Checkpoint& c) {
                    return c.measurement == m.id && c.moment == m.moment && c.view == kind.view &&
                           std::find(c.shots.begin(), c.shots.end(), kind.shot) != c.shots.end();
                };
                const auto& rows = playbook.checkpoints();
                list.push_back({m.id, m.moment, 0, std::any_of(rows.begin(), rows.end(), decides)});
                lessons.emplace_back();
                it = list.end() - 1;
            }
            lessons[static_cast<std::size_t>(it - list.begin())].insert(filed.lesson);
        }
    }
    for (std::size_t i = 0; i < list.size(); ++i) {
        list[i].lessons = static_cast<int>(lessons[i].size());
    }
    std::stable_partition(list.begin(), list.end(), [](const TrendChoice& c) { return c.judged; });
    return list;
}

Trend PlayerHistory::trend(const coaching::Playbook& playbook, const SwingKind& kind,
                           const TrendChoice& what) const {
    Trend trend;
    trend.what = what;
    std::map<LessonKey, std::vector<base::Measured>> byLesson;
    const measure::Measurement* newest = nullptr; // swings are newest first
    for (const FiledSwing& filed : swings_) {
        if (!(kindOf(filed.swing) == kind)) {
            continue;
        }
        const measure::Measurement* m = numberOf(filed.swing, what);
        if (m == nullptr) {
            continue;
        }
        if (newest == nullptr) {
            newest = m;
            trend.unit = m->value->unit;
            marks::ShotContext context = filed.swing.context;
            for (const auto& check : coaching::judge(playbook, {*m}, context, card_)) {
                if (check.measurement == what.measurement && check.moment == what.moment && check.judged) {
                    trend.goodLow = check.goodLow;
                    trend.goodHigh = check.goodHigh;
                    trend.rangeSource = check.rangeSource;
                    break;
                }
            }
        }
        if (m->method != newest->method || m->value->unit != newest->value->unit) {
            ++trend.leftOut;
            continue;
        }
        byLesson[{filed.day, filed.lesson}].push_back(*m->value);
    }
    for (const auto& [key, values] : byLesson) { // a map: oldest day first
        const auto spread = comparison::spreadOf(values);
        if (spread) {
            trend.points.push_back({key.second, key.first, *spread,
                                    std::sqrt(spread->betweenSwings * spread->betweenSwings / spread->swings +
                                              spread->measurement * spread->measurement)});
        }
    }
    if (trend.points.size() >= 2) {
        trend.change = comparison::changeBetween(trend.points.front().spread, trend.points.back().spread);
    }
    return trend;
}

base::Result<FollowUp> nextLessonOpener(store::Library& library, CoachDesk& desk, const base::Id& player,
                                        const std::string& today) {
    const auto lessons = library.lessons({}, player); // newest first
    if (!lessons) {
        return lessons.error();
    }
    if (lessons->empty()) {
        return FollowUp{};
    }
    const store::LessonRow& newest = lessons->front();
    if (newest.day < today) {
        auto plan = desk.plan(newest.id);
        if (!plan) {
            return plan.error();
        }
        if (*plan) {
            FollowUp out;
            out.plan = std::move(**plan);
            out.planDay = newest.day;
            if (auto added = desk.addSince(player, out); !added) {
                return added.error();
            }
            return out;
        }
    }
    return desk.followUp(newest.id);
}

} // namespace plumbmark::session
