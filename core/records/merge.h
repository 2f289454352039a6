// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "base/ids.h"
#include "records/fact.h"

namespace plumbmark::records {

/// Everything a device knows: facts and tombstones by id. Merging two is commutative, associative and
/// idempotent: facts are a set that only grows, erasure wins over everything and stays.
class FactSet {
  public:
    /// Adds nothing that is erased, here or above it in its path.
    void add(const Fact& fact);
    /// Erases the fact of that id and everything whose path holds it, now and for ever. Of two tombstones for
    /// one id the earlier day stays.
    void erase(const Tombstone& tombstone);

    [[nodiscard]] const std::map<base::Id, Fact>& facts() const { return facts_; }
    [[nodiscard]] const std::map<base::Id, Tombstone>& tombstones() const { return tombstones_; }
    [[nodiscard]] bool erased(const Fact& fact) const;
    friend bool operator==(const FactSet&, const FactSet&) = default;

  private:
    std::map<base::Id, Fact> facts_;
    std::map<base::Id, Tombstone> tombstones_;
};
[[nodiscard]] FactSet merge(const FactSet& a, const FactSet& b);

/// One value of a field that no other fact replaces.
struct Version {
    base::Id fact;
    Value value;
    Stamp at;
    friend bool operator==(const Version&, const Version&) = default;
};

/// A player, lesson, shot or clip as its facts tell it. Fields hold the last value; where two devices gave
/// different values without having seen each other, `disputed` holds all of them (newest first, the first is
/// the one shown) until a person settles it.
struct Entity {
    base::Id id{base::Id::Bytes{}};
    std::string kind;
    std::vector<base::Id> path;
    Stamp made;
    Object fields;
    std::map<std::string, std::vector<Version>, std::less<>> disputed;
    std::map<std::string, std::vector<base::Id>, std::less<>>
        heads; ///< what a new value of the field replaces
};
/// From the fact that makes it and its `set` facts (others are ignored, in any order).
[[nodiscard]] Entity foldEntity(const Fact& maker, const std::vector<Fact>& about);

/// The facts that no other fact in the list replaces, oldest first by stamp.
[[nodiscard]] std::vector<Fact> heads(const std::vector<Fact>& facts);

} // namespace plumbmark::records
