// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/body_book.h"

#include <algorithm>
#include <map>

#include "records/merge.h"

namespace plumbmark::session {
namespace {

constexpr base::UnixMs kDay = 24LL * 3600 * 1000;

base::Error badValue(std::string sentence) {
    return base::inputError("record.bad_value", std::move(sentence));
}

bool isDay(const std::string& day) {
    return day.size() == 10 && base::fromIso(day).has_value();
}

bool listed(const std::vector<std::string>& list, const std::string& what) {
    return std::find(list.begin(), list.end(), what) != list.end();
}

void addTo(BodyBook::Load& load, const records::Practice& p) {
    const int n = static_cast<int>(std::min<std::int64_t>(p.repetitions, 1'000'000));
    (p.what == "balls" ? load.balls : p.what == "rounds" ? load.rounds : load.rehearsals) += n;
}

} // namespace

const std::vector<std::string>& BodyBook::regions() {
    static const std::vector<std::string> all{"lead_hip",    "trail_hip",     "lower_back",     "lead_knee",
                                              "trail_knee",  "lead_wrist",    "trail_wrist",    "lead_elbow",
                                              "trail_elbow", "lead_shoulder", "trail_shoulder", "neck",
                                              "lead_ankle",  "trail_ankle"};
    return all;
}

base::Result<records::BodyCard> BodyBook::card(const base::Id& player) {
    const auto facts = library_->factsOf(player, records::kind::body_card);
    if (!facts) {
        return facts.error();
    }
    const auto standing = records::heads(*facts);
    return standing.empty() ? records::BodyCard{} : records::bodyCardOf(standing.back().body);
}

base::Result<void> BodyBook::keep(const base::Id& player, const records::BodyCard& card) {
    for (const auto* list : {&card.painBefore, &card.limitedJoints, &card.replacedJoints, &card.surgery}) {
        for (const auto& region : *list) {
            if (!listed(regions(), region)) {
                return badValue("\"" + region +
                                "\" is no region of the body card; take one such as lead_hip or "
                                "lower_back.");
            }
        }
    }
    for (const auto* day : {&card.day, &card.clearedDay, &card.warmUpDay}) {
        if (!day->empty() && !isDay(*day)) {
            return badValue("Days must look like 2026-11-25; check them.");
        }
    }
    const auto facts = library_->factsOf(player, records::kind::body_card);
    if (!facts) {
        return facts.error();
    }
    std::vector<base::Id> replaces;
    for (const auto& fact : records::heads(*facts)) {
        replaces.push_back(fact.id);
    }
    return library_->add({library_->make(records::kind::body_card, {player}, bodyOf(card), replaces)});
}

base::Result<void> BodyBook::log(const base::Id& player, const records::Pain& pain) {
    if (!listed(regions(), pain.region)) {
        return badValue("\"" + pain.region +
                        "\" is no region of the body card; take one such as lead_hip or "
                        "lower_back.");
    }
    if (pain.level < 0 || pain.level > 10 || !isDay(pain.day)) {
        return badValue("Pain needs a level from 0 to 10 and a day such as 2026-11-25.");
    }
    return library_->add({library_->make(records::kind::pain, {player}, bodyOf(pain))});
}

base::Result<void> BodyBook::log(const base::Id& player, const records::Practice& practice) {
    if (practice.repetitions < 0 || !isDay(practice.day)) {
        return badValue("Practice needs a number of repetitions and a day such as 2026-11-25.");
    }
    return library_->add({library_->make(records::kind::practice, {player}, bodyOf(practice))});
}

base::Result<std::vector<records::Pain>> BodyBook::pains(const base::Id& player) {
    const auto facts = library_->factsOf(player, records::kind::pain);
    if (!facts) {
        return facts.error();
    }
    std::vector<records::Pain> out;
    for (const auto& fact : records::heads(*facts)) {
        if (auto pain = records::painOf(fact.body)) {
            out.push_back(std::move(*pain));
        }
    }
    std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    return out;
}

base::Result<std::vector<records::Practice>> BodyBook::practices(const base::Id& player) {
    const auto facts = library_->factsOf(player, records::kind::practice);
    if (!facts) {
        return facts.error();
    }
    std::vector<records::Practice> out;
    for (const auto& fact : records::heads(*facts)) {
        if (auto practice = records::practiceOf(fact.body)) {
            out.push_back(std::move(*practice));
        }
    }
    std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    return out;
}

base::Result<std::vector<BodyBook::Load>> BodyBook::days(const base::Id& player) {
    const auto all = practices(player);
    if (!all) {
        return all.error();
    }
    std::map<std::string, Load> byDay;
    for (const auto& p : *all) {
        Load& load = byDay[p.day.substr(0, 10)];
        load.day = p.day.substr(0, 10);
        addTo(load, p);
    }
    std::vector<Load> out;
    for (auto& [day, load] : byDay) {
        out.push_back(std::move(load));
    }
    return out;
}

base::Result<BodyBook::Load> BodyBook::week(const base::Id& player) {
    const auto all = practices(player);
    if (!all) {
        return all.error();
    }
    Load load;
    load.day = base::isoDate(clock_->now() - 6 * kDay);
    const std::string today = base::isoDate(clock_->now());
    for (const auto& p : *all) {
        if (p.day.substr(0, 10) >= load.day && p.day.substr(0, 10) <= today) {
            addTo(load, p);
        }
    }
    return load;
}

base::Result<coaching::BodyCard> BodyBook::forCoaching(const base::Id& player) {
    const auto filled = card(player);
    const auto log = pains(player);
    const auto practised = practices(player);
    const auto load = week(player);
    const auto entity = library_->entity(player);
    if (!filled || !log || !practised || !load || !entity) {
        return !filled      ? filled.error()
               : !log       ? log.error()
               : !practised ? practised.error()
               : !load      ? load.error()
                            : entity.error();
    }
    coaching::BodyCard out;
    const std::string today = base::isoDate(clock_->now());
    if (filled->birthYear) {
        out.ageYears = std::stoi(today.substr(0, 4)) - *filled->birthYear;
    }
    out.limitedJoints = filled->limitedJoints;
    out.limitedJoints.insert(out.limitedJoints.end(), filled->replacedJoints.begin(),
                             filled->replacedJoints.end());
    out.painBefore = filled->painBefore;
    out.mostBalls = filled->mostBalls;
    const bool condition = !filled->replacedJoints.empty() || !filled->surgery.empty() ||
                           filled->pregnant.value_or(false) || filled->boneOrHeart.value_or(false);
    out.askFirst = condition && !filled->cleared.value_or(false);
    std::map<std::string, records::Pain> newest; // the log is oldest first
    for (const auto& pain : *log) {
        newest.insert_or_assign(pain.region, pain);
    }
    const std::string recent = base::isoDate(clock_->now() - 2 * kDay);
    for (const auto& [region, pain] : newest) {
        if (pain.level == 0) {
            continue;
        }
        if (pain.day.substr(0, 10) >= recent) {
            out.painNow.push_back(region);
            out.worstPain = std::max(out.worstPain, static_cast<int>(pain.level));
        } else {
            out.painBefore.push_back(region);
        }
    }
    if (!practised->empty()) { // nothing logged is not "no balls"
        out.ballsThisWeek = load->balls;
        out.roundsThisWeek = load->rounds;
    }
    if (*entity && (*entity)->kind == records::kind::player) {
        out.statureMetres = records::playerOf((*entity)->fields).statureMetres;
    }
    return out;
}

} // namespace plumbmark::session
