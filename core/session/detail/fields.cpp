// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/detail/fields.h"

#include <set>

namespace plumbmark::session::detail {

using base::Id;
using records::Fact;
using records::Object;

std::vector<Id> pathBelow(const records::Entity& entity) {
    std::vector<Id> path = entity.path;
    path.push_back(entity.id);
    return path;
}

Fact setField(store::Library& library, const records::Entity& entity, const std::string& field,
              records::Value value) {
    const auto seen = entity.heads.find(field);
    return library.make(records::kind::set, pathBelow(entity),
                        Object{{"field", field}, {"value", std::move(value)}},
                        seen == entity.heads.end() ? std::vector<Id>() : seen->second);
}

std::vector<Fact> changedFields(store::Library& library, const records::Entity& entity, const Object& before,
                                const Object& now) {
    std::set<std::string> fields;
    for (const auto& [field, value] : before) {
        fields.insert(field);
    }
    for (const auto& [field, value] : now) {
        fields.insert(field);
    }
    std::vector<Fact> facts;
    for (const std::string& field : fields) {
        const records::Value* old = records::member(before, field);
        const records::Value* value = records::member(now, field);
        if (old != nullptr && value != nullptr && *old == *value) {
            continue;
        }
        facts.push_back(setField(library, entity, field, value == nullptr ? records::Value() : *value));
    }
    return facts;
}

base::Result<void> saveFields(store::Library& library, const records::Entity& entity, const Object& before,
                              const Object& now) {
    const std::vector<Fact> facts = changedFields(library, entity, before, now);
    return facts.empty() ? base::Result<void>() : library.add(facts);
}

} // namespace plumbmark::session::detail
