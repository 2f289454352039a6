// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/ids.h"
#include "base/result.h"
#include "records/fact.h"
#include "records/merge.h"
#include "store/library.h"

namespace plumbmark::session::detail {

/// The path of things that belong directly to the entity.
[[nodiscard]] std::vector<base::Id> pathBelow(const records::Entity& entity);

/// A new value of one field, naming every version it replaces. Not stored yet.
[[nodiscard]] records::Fact setField(store::Library& library, const records::Entity& entity,
                                     const std::string& field, records::Value value);

/// One fact per field that differs; a field that `before` has and `now` has not becomes null. Not stored yet.
[[nodiscard]] std::vector<records::Fact> changedFields(store::Library& library, const records::Entity& entity,
                                                       const records::Object& before,
                                                       const records::Object& now);

base::Result<void> saveFields(store::Library& library, const records::Entity& entity,
                              const records::Object& before, const records::Object& now);

} // namespace plumbmark::session::detail
