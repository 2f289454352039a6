// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "records/merge.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace plumbmark::records {
namespace {

bool newer(const Fact* a, const Fact* b) {
    return earlier(b->at, a->at) || (!earlier(a->at, b->at) && b->id < a->id);
}

} // namespace

bool FactSet::erased(const Fact& fact) const {
    return tombstones_.count(fact.id) != 0 ||
           std::any_of(fact.path.begin(), fact.path.end(),
                       [this](const base::Id& owner) { return tombstones_.count(owner) != 0; });
}

void FactSet::add(const Fact& fact) {
    if (erased(fact)) {
        return;
    }
    const auto [it, isNew] = facts_.emplace(fact.id, fact);
    if (!isNew && !(it->second == fact)) {
        // Cannot happen between honest devices: ids are random and facts never change. The store refuses such
        // input; here one of the two is chosen the same way everywhere, so that merging stays a function of
        // sets.
        const auto here = toText(it->second);
        const auto there = toText(fact);
        if (there.ok() && (!here.ok() || *there < *here)) {
            it->second = fact;
        }
    }
}

void FactSet::erase(const Tombstone& tombstone) {
    const auto [it, isNew] = tombstones_.emplace(tombstone.id, tombstone);
    if (!isNew) {
        it->second.day = std::min(it->second.day, tombstone.day);
        return;
    }
    std::erase_if(facts_, [this](const auto& entry) { return erased(entry.second); });
}

FactSet merge(const FactSet& a, const FactSet& b) {
    FactSet all = a;
    for (const auto& [id, tombstone] : b.tombstones()) {
        all.erase(tombstone);
    }
    for (const auto& [id, fact] : b.facts()) {
        all.add(fact);
    }
    return all;
}

Entity foldEntity(const Fact& maker, const std::vector<Fact>& about) {
    Entity entity;
    entity.id = maker.id;
    entity.kind = maker.kind;
    entity.path = maker.path;
    entity.made = maker.at;
    entity.fields = maker.body;

    std::map<std::string, std::vector<const Fact*>, std::less<>> byField;
    for (const Fact& fact : about) {
        const auto field = textMember(fact.body, "field");
        if (fact.kind == kind::set && field && !fact.path.empty() && fact.path.back() == maker.id) {
            byField[*field].push_back(&fact);
        }
    }
    for (const auto& [key, value] : maker.body) {
        entity.heads.emplace(key, std::vector<base::Id>{});
    }
    for (const auto& [field, facts] : byField) {
        std::set<base::Id> replaced;
        for (const Fact* fact : facts) {
            replaced.insert(fact->replaces.begin(), fact->replaces.end());
        }
        std::vector<const Fact*> standing;
        std::copy_if(facts.begin(), facts.end(), std::back_inserter(standing),
                     [&](const Fact* fact) { return replaced.count(fact->id) == 0; });
        if (standing.empty()) {
            continue; // only a forged circle of facts that replace each other leaves nothing
        }
        std::sort(standing.begin(), standing.end(), newer);
        std::vector<Version> versions;
        for (const Fact* fact : standing) {
            const Value* value = member(fact->body, "value");
            versions.push_back({fact->id, value == nullptr ? Value() : *value, fact->at});
        }
        auto& ids = entity.heads[field];
        ids.clear();
        for (const Version& version : versions) {
            ids.push_back(version.fact);
        }
        std::sort(ids.begin(), ids.end());
        ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
        if (versions.front().value.isNull()) {
            entity.fields.erase(field);
        } else {
            entity.fields.insert_or_assign(field, versions.front().value);
        }
        // Two devices that say the same do not disagree.
        const bool agree = std::all_of(versions.begin(), versions.end(), [&](const Version& version) {
            return version.value == versions.front().value;
        });
        if (!agree) {
            entity.disputed.emplace(field, std::move(versions));
        }
    }
    return entity;
}

std::vector<Fact> heads(const std::vector<Fact>& facts) {
    std::set<base::Id> replaced;
    for (const Fact& fact : facts) {
        replaced.insert(fact.replaces.begin(), fact.replaces.end());
    }
    std::vector<Fact> standing;
    for (const Fact& fact : facts) {
        if (replaced.count(fact.id) == 0) {
            standing.push_back(fact);
        }
    }
    std::sort(standing.begin(), standing.end(), [](const Fact& a, const Fact& b) {
        return earlier(a.at, b.at) || (!earlier(b.at, a.at) && a.id < b.id);
    });
    return standing;
}

} // namespace plumbmark::records
