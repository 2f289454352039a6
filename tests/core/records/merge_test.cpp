// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>
#include <set>

#include "base/clock.h"
#include "base/ids.h"
#include "records/merge.h"

using namespace plumbmark;
using namespace plumbmark::records;

namespace {

/// One device of a simulated exchange: a clock that may stand years off, and what it knows.
struct Device {
    base::FixedClock wall;
    HybridClock clock;
    FactSet set;
    Device(base::Id id, base::UnixMs now) : wall(now), clock(id, wall) {}
};

Fact make(Device& device, base::IdSource& ids, std::string_view kind, std::vector<base::Id> path, Object body,
          std::vector<base::Id> replaces = {}) {
    Fact fact;
    fact.id = ids.next();
    fact.kind = kind;
    fact.path = std::move(path);
    fact.at = device.clock.next();
    std::sort(replaces.begin(), replaces.end());
    fact.replaces = std::move(replaces);
    fact.body = std::move(body);
    return fact;
}

std::vector<Fact> about(const FactSet& set, const base::Id& owner) {
    std::vector<Fact> facts;
    for (const auto& [id, fact] : set.facts()) {
        if (!fact.path.empty() && fact.path.back() == owner) {
            facts.push_back(fact);
        }
    }
    return facts;
}

void receive(Device& to, const FactSet& from) {
    for (const auto& [id, fact] : from.facts()) {
        to.clock.learn(fact.at);
    }
    to.set = merge(to.set, from);
}

constexpr base::UnixMs kNow = 1'800'000'000'000;
// 1970, 2038, three days ahead, a year behind, right.
constexpr base::UnixMs kClocks[] = {0, 2'147'483'647'000, kNow + 3 * 86'400'000LL, kNow - 365 * 86'400'000LL,
                                    kNow};

/// A random history on 2 to 4 devices with partial and repeated exchange. After it, all exchange everything,
/// in random order.
struct Simulation {
    std::mt19937_64 random;
    base::SeededIds ids;
    std::vector<Device> devices;
    std::set<base::Id> acknowledged; ///< every fact that some device has stored
    std::map<base::Id, std::vector<base::Id>> paths;
    std::set<base::Id> erased;
    std::vector<std::pair<base::Id, base::Id>>
        saw; ///< (older, newer) edits of one field, newer made after seeing older

    explicit Simulation(std::uint64_t seed) : random(seed), ids(seed ^ 0x5eedULL) {
        const int count = 2 + static_cast<int>(random() % 3);
        devices.reserve(4);
        for (int i = 0; i < count; ++i) {
            devices.emplace_back(ids.next(), kClocks[random() % std::size(kClocks)]);
        }
    }

    void keep(Device& device, const Fact& fact) {
        device.set.add(fact);
        acknowledged.insert(fact.id);
        paths[fact.id] = fact.path;
    }

    const Fact* pick(const FactSet& set, std::string_view kind) {
        std::vector<const Fact*> found;
        for (const auto& [id, fact] : set.facts()) {
            if (fact.kind == kind) {
                found.push_back(&fact);
            }
        }
        return found.empty() ? nullptr : found[random() % found.size()];
    }

    void step() {
        Device& device = devices[random() % devices.size()];
        device.wall.set(device.wall.now() + static_cast<base::UnixMs>(random() % 1000));
        switch (random() % 8) {
        case 0:
            keep(device, make(device, ids, kind::player, {}, {{"name", "p"}}));
            break;
        case 1:
            if (const Fact* player = pick(device.set, kind::player)) {
                keep(device, make(device, ids, kind::lesson, {player->id}, {{"title", "t"}}));
            }
            break;
        case 2:
        case 3:
            if (const Fact* player = pick(device.set, kind::player)) {
                const Entity entity = foldEntity(*player, about(device.set, player->id));
                const auto heads = entity.heads.find("name");
                const auto seen = heads == entity.heads.end() ? std::vector<base::Id>() : heads->second;
                const Fact fact = make(device, ids, kind::set, {player->id},
                                       {{"field", "name"}, {"value", static_cast<int>(random() % 5)}}, seen);
                for (const base::Id& older : seen) {
                    saw.emplace_back(older, fact.id);
                }
                keep(device, fact);
            }
            break;
        case 4:
            if (const Fact* lesson = pick(device.set, kind::lesson)) {
                keep(device, make(device, ids, "weather", {lesson->path[0], lesson->id}, {{"wind", 3}}));
            }
            break;
        case 5:
            if (random() % 4 == 0) {
                if (const Fact* fact = pick(device.set, random() % 2 == 0 ? kind::player : kind::lesson)) {
                    erased.insert(fact->id);
                    device.set.erase({fact->id, base::isoDate(device.wall.now())});
                }
            }
            break;
        default: {
            const Device& from = devices[random() % devices.size()];
            FactSet part; // a part of what the other knows, as a lesson file would carry
            for (const auto& [id, fact] : from.set.facts()) {
                if (random() % 3 != 0) {
                    part.add(fact);
                }
            }
            for (const auto& [id, tombstone] : from.set.tombstones()) {
                if (random() % 3 != 0) {
                    part.erase(tombstone);
                }
            }
            receive(device, part);
            if (random() % 2 == 0) {
                receive(device, part);
            }
        }
        }
    }

    bool wasErased(const base::Id& id) const {
        const auto& path = paths.at(id);
        return erased.count(id) != 0 || std::any_of(path.begin(), path.end(), [&](const base::Id& owner) {
                   return erased.count(owner) != 0;
               });
    }
};

} // namespace

// 20,000 schedules here; the number can be raised for long runs.
TEST(Merge, EveryScheduleEndsInTheSamePlaceWithNothingLost) {
    const char* wanted = std::getenv("PLUMBMARK_MERGE_SCHEDULES");
    const int schedules = wanted != nullptr ? std::atoi(wanted) : 20'000;
    std::uint64_t erasures = 0, disputes = 0, edits = 0;
    for (int seed = 0; seed < schedules; ++seed) {
        Simulation world(static_cast<std::uint64_t>(seed));
        const int steps = 6 + static_cast<int>(world.random() % 25);
        for (int i = 0; i < steps; ++i) {
            world.step();
        }
        // Full exchange in a random order, each order its own.
        std::vector<FactSet> ends;
        for (std::size_t i = 0; i < world.devices.size(); ++i) {
            std::vector<std::size_t> order(world.devices.size());
            for (std::size_t k = 0; k < order.size(); ++k) {
                order[k] = k;
            }
            std::shuffle(order.begin(), order.end(), world.random);
            FactSet end = world.devices[i].set;
            for (const std::size_t k : order) {
                end = merge(end, world.devices[k].set);
            }
            ends.push_back(std::move(end));
        }
        for (const FactSet& end : ends) {
            ASSERT_EQ(end, ends.front()) << "seed " << seed;
        }
        for (const base::Id& id : world.acknowledged) {
            const bool here = ends.front().facts().count(id) != 0;
            ASSERT_EQ(here, !world.wasErased(id)) << "seed " << seed;
        }
        erasures += world.erased.size();
        // An edit made after seeing another never loses to it, whatever the clocks said.
        for (const auto& [id, fact] : ends.front().facts()) {
            if (fact.kind != kind::player) {
                continue;
            }
            const Entity entity = foldEntity(fact, about(ends.front(), id));
            const auto heads = entity.heads.find("name");
            ASSERT_NE(heads, entity.heads.end());
            disputes += entity.disputed.size();
            for (const auto& [older, newer] : world.saw) {
                if (ends.front().facts().count(newer) != 0) {
                    ASSERT_EQ(std::count(heads->second.begin(), heads->second.end(), older), 0)
                        << "seed " << seed;
                }
            }
        }
        edits += world.saw.size();
    }
    // The simulation must have had something to decide.
    EXPECT_GT(erasures, static_cast<std::uint64_t>(schedules) / 20);
    EXPECT_GT(disputes, static_cast<std::uint64_t>(schedules) / 20);
    EXPECT_GT(edits, static_cast<std::uint64_t>(schedules) / 20);
}

TEST(Merge, IsCommutativeAssociativeAndIdempotent) {
    for (std::uint64_t seed = 0; seed < 2'000; ++seed) {
        Simulation world(seed + 1'000'000);
        for (int i = 0; i < 25; ++i) {
            world.step();
        }
        const FactSet& a = world.devices[0].set;
        const FactSet& b = world.devices[1].set;
        const FactSet c = world.devices.size() > 2 ? world.devices[2].set : FactSet();
        ASSERT_EQ(merge(a, b), merge(b, a));
        ASSERT_EQ(merge(a, a), a);
        ASSERT_EQ(merge(merge(a, b), c), merge(a, merge(b, c)));
        ASSERT_EQ(merge(merge(a, b), b), merge(a, b));
    }
}

TEST(Merge, EditsThatDidNotSeeEachOtherAreTwoVersionsUntilSettled) {
    base::SeededIds ids(1);
    Device coach(ids.next(), kNow);
    Device student(ids.next(), 0); // its clock stands at 1970
    const Fact player = make(coach, ids, kind::player, {}, {{"name", "Kim"}, {"note", "n"}});
    coach.set.add(player);
    receive(student, coach.set);
    const Fact a = make(coach, ids, kind::set, {player.id}, {{"field", "name"}, {"value", "Kim A"}});
    const Fact b = make(student, ids, kind::set, {player.id}, {{"field", "name"}, {"value", "Kim B"}});
    coach.set.add(a);
    student.set.add(b);
    const FactSet both = merge(coach.set, student.set);
    Entity entity = foldEntity(player, about(both, player.id));
    ASSERT_EQ(entity.disputed.size(), 1U);
    EXPECT_EQ(entity.disputed.at("name").size(), 2U);
    EXPECT_EQ(entity.fields.at("note"), Value("n"));

    // Settled by a device whose clock says 1970: it has seen both, so it wins.
    Device late(ids.next(), 0);
    const Fact settled = make(late, ids, kind::set, {player.id}, {{"field", "name"}, {"value", "Kim C"}},
                              entity.heads.at("name"));
    FactSet after = both;
    after.add(settled);
    entity = foldEntity(player, about(after, player.id));
    EXPECT_TRUE(entity.disputed.empty());
    EXPECT_EQ(entity.fields.at("name"), Value("Kim C"));

    // The same value from both sides is no dispute.
    FactSet agree;
    agree.add(player);
    agree.add(make(coach, ids, kind::set, {player.id}, {{"field", "name"}, {"value", "Kim"}}));
    agree.add(make(student, ids, kind::set, {player.id}, {{"field", "name"}, {"value", "Kim"}}));
    EXPECT_TRUE(foldEntity(player, about(agree, player.id)).disputed.empty());
}

TEST(Merge, ErasedThingsDoNotComeBack) {
    base::SeededIds ids(1);
    Device device(ids.next(), kNow);
    const Fact player = make(device, ids, kind::player, {}, {{"name", "Kim"}});
    const Fact lesson = make(device, ids, kind::lesson, {player.id}, {{"title", "t"}});
    const Fact shot = make(device, ids, kind::shot, {player.id, lesson.id}, {{"shot", "full"}});
    FactSet old;
    old.add(player);
    old.add(lesson);
    old.add(shot);
    FactSet erased = old;
    erased.erase({player.id, "2026-11-25"});
    EXPECT_TRUE(erased.facts().empty());
    EXPECT_EQ(merge(erased, old), erased);
    FactSet late; // the shot alone, from a device that never knew the lesson's maker
    late.add(shot);
    EXPECT_EQ(merge(erased, late), erased);
}

TEST(HybridClock, NeverGoesBackAndLearnsOnlyADayAhead) {
    base::SeededIds ids(1);
    const base::Id mine = ids.next();
    const base::Id other = ids.next();
    base::FixedClock wall(kNow);
    HybridClock clock(mine, wall);
    Stamp last = clock.next();
    wall.set(kNow - 1'000'000'000); // set back
    for (int i = 0; i < 1000; ++i) {
        const Stamp now = clock.next();
        ASSERT_TRUE(earlier(last, now));
        last = now;
    }
    EXPECT_TRUE(last.unsure);

    wall.set(kNow);
    HybridClock fresh(mine, wall);
    fresh.learn({kNow + 3'600'000, 7, other, false});
    const Stamp after = fresh.next();
    EXPECT_EQ(after.ms, kNow + 3'600'000);
    EXPECT_EQ(after.counter, 8);
    EXPECT_TRUE(after.unsure);
    fresh.learn({2'147'483'647'000, 0, other, false}); // a tablet set to 2038
    EXPECT_LE(fresh.next().ms, kNow + HybridClock::kMostAhead);

    // Restarting resumes where it was.
    HybridClock again(mine, wall);
    again.resume(fresh.lastMs(), fresh.lastCounter());
    EXPECT_TRUE(earlier(after, again.next()));
}
