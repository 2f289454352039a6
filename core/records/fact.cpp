// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "records/fact.h"

#include <algorithm>
#include <array>

namespace plumbmark::records {
namespace {

constexpr std::array<std::string_view, 6> kKnownFields{"at", "body", "id", "kind", "path", "replaces"};

base::Error badField(std::string_view field) {
    return base::inputError("record.bad_field", "A record's field \"" + std::string(field) +
                                                    "\" makes no sense; the file is damaged.");
}

Value idArray(const std::vector<base::Id>& ids) {
    Array array;
    array.reserve(ids.size());
    for (const base::Id& id : ids) {
        array.emplace_back(id.hex());
    }
    return array;
}

std::optional<base::Id> idMember(const Object& object, std::string_view key) {
    const auto text = textMember(object, key);
    return text ? base::Id::fromHex(*text) : std::nullopt;
}

/// Nothing when it is there but is no list of ids.
std::optional<std::vector<base::Id>> idsMember(const Object& object, std::string_view key, std::size_t most) {
    const Value* value = member(object, key);
    std::vector<base::Id> ids;
    if (value == nullptr) {
        return ids;
    }
    // An empty list is written by leaving the field out.
    if (value->array() == nullptr || value->array()->empty() || value->array()->size() > most) {
        return std::nullopt;
    }
    for (const Value& item : *value->array()) {
        const auto id = item.text() == nullptr ? std::nullopt : base::Id::fromHex(*item.text());
        if (!id) {
            return std::nullopt;
        }
        ids.push_back(*id);
    }
    return ids;
}

bool kindIsNice(std::string_view kind) {
    return !kind.empty() && kind.size() <= 40 && std::all_of(kind.begin(), kind.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
    });
}

base::Result<Record> tombstoneFrom(const Object& object) {
    const auto id = idMember(object, "id");
    const auto day = textMember(object, "erased");
    if (!id) {
        return badField("id");
    }
    if (!day || day->size() != 10 || !base::fromIso(*day) || object.size() != 2) {
        return badField("erased");
    }
    Record record;
    record.tombstone = Tombstone{*id, *day};
    return record;
}

base::Result<Record> factFrom(Object& object) {
    Fact fact;
    const auto id = idMember(object, "id");
    if (!id) {
        return badField("id");
    }
    fact.id = *id;
    fact.kind = textMember(object, "kind").value_or("");
    if (!kindIsNice(fact.kind)) {
        return badField("kind");
    }
    const Value* at = member(object, "at");
    const Object* stamp = at == nullptr ? nullptr : at->object();
    if (stamp == nullptr) {
        return badField("at");
    }
    const auto ms = integerMember(*stamp, "ms");
    const auto counter = integerMember(*stamp, "n");
    const auto device = idMember(*stamp, "device");
    const auto unsure = booleanMember(*stamp, "unsure");
    if (!ms || !counter || !device || *counter < 0 || *counter > 0x7fffffff || (unsure && !*unsure) ||
        stamp->size() != (unsure ? 4U : 3U)) {
        return badField("at");
    }
    fact.at = Stamp{*ms, *counter, *device, unsure.value_or(false)};
    auto path = idsMember(object, "path", kMostPath);
    if (!path) {
        return badField("path");
    }
    fact.path = std::move(*path);
    auto replaces = idsMember(object, "replaces", kMostReplaces);
    if (!replaces ||
        std::adjacent_find(replaces->begin(), replaces->end(), std::greater_equal<>()) != replaces->end()) {
        return badField("replaces");
    }
    fact.replaces = std::move(*replaces);
    const auto body = object.find("body");
    if (body == object.end() || body->second.object() == nullptr) {
        return badField("body");
    }
    fact.body = std::move(*body->second.object());
    for (auto& [key, value] : object) {
        if (std::find(kKnownFields.begin(), kKnownFields.end(), key) == kKnownFields.end()) {
            fact.extra.emplace(key, std::move(value));
        }
    }
    Record record;
    record.fact = std::move(fact);
    return record;
}

} // namespace

base::Result<std::string> toText(const Fact& fact) {
    Object object = fact.extra;
    Object at{{"device", fact.at.device.hex()}, {"ms", fact.at.ms}, {"n", fact.at.counter}};
    if (fact.at.unsure) {
        at.emplace("unsure", true);
    }
    object.insert_or_assign("at", std::move(at));
    object.insert_or_assign("body", fact.body);
    object.insert_or_assign("id", fact.id.hex());
    object.insert_or_assign("kind", fact.kind);
    if (!fact.path.empty()) {
        object.insert_or_assign("path", idArray(fact.path));
    }
    if (!fact.replaces.empty()) {
        object.insert_or_assign("replaces", idArray(fact.replaces));
    }
    return canonicalText(Value(std::move(object)));
}

std::string toText(const Tombstone& tombstone) {
    return R"({"erased":")" + tombstone.day + R"(","id":")" + tombstone.id.hex() + R"("})";
}

base::Result<Record> recordFromText(std::string_view line) {
    if (line.size() > kMostRecordBytes) {
        return base::inputError("record.too_long", "A record is too long; the file is damaged.");
    }
    auto value = parseJson(line);
    if (!value) {
        return value.error();
    }
    const auto canonical = canonicalText(*value);
    if (!canonical || *canonical != line) {
        return base::inputError("record.not_canonical",
                                "A record is not in the form this program writes; the file was changed.");
    }
    Object* object = value->object();
    if (object == nullptr) {
        return badField("id");
    }
    return object->count("erased") != 0 ? tombstoneFrom(*object) : factFrom(*object);
}

} // namespace plumbmark::records
