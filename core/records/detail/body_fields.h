// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/geometry.h"
#include "records/value.h"

/// How the kinds of facts write and read one field of a body.
namespace plumbmark::records::detail {

// Nothing is written for "not told": a field that is there was told.
inline void putText(Object& body, std::string_view key, const std::string& value) {
    if (!value.empty()) {
        body.emplace(key, value);
    }
}
inline void putNumber(Object& body, std::string_view key, const std::optional<double>& value) {
    if (value) {
        body.emplace(key, *value);
    }
}
inline std::string getText(const Object& body, std::string_view key) {
    return textMember(body, key).value_or("");
}

inline Value point(base::Vec2 p) {
    return Array{Value(p.x), Value(p.y)};
}
inline std::optional<base::Vec2> pointOf(const Value* value) {
    const Array* xy = value == nullptr ? nullptr : value->array();
    if (xy == nullptr || xy->size() != 2) {
        return std::nullopt;
    }
    const auto x = (*xy)[0].number();
    const auto y = (*xy)[1].number();
    return x && y ? std::optional(base::Vec2{*x, *y}) : std::nullopt;
}

} // namespace plumbmark::records::detail
