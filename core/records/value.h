// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/result.h"

namespace plumbmark::records {

class Value;
using Array = std::vector<Value>;
using Object = std::map<std::string, Value, std::less<>>;

/// What a record's fields hold: the JSON data model. Whole numbers and fractions are one kind of number for
/// readers (`number()`), so that 5 and 5.0 are the same value.
class Value {
  public:
    using Data = std::variant<std::monostate, bool, std::int64_t, double, std::string, Array, Object>;

    Value() = default; ///< null
    Value(std::nullptr_t) {}
    Value(bool value) : data_(value) {}
    Value(int value) : data_(std::int64_t{value}) {}
    Value(std::int64_t value) : data_(value) {}
    Value(double value) : data_(value) {}
    Value(std::string value) : data_(std::move(value)) {}
    Value(std::string_view value) : data_(std::string(value)) {}
    Value(const char* value) : data_(std::string(value)) {}
    Value(Array value) : data_(std::move(value)) {}
    Value(Object value) : data_(std::move(value)) {}

    [[nodiscard]] bool isNull() const { return std::holds_alternative<std::monostate>(data_); }
    [[nodiscard]] std::optional<bool> boolean() const;
    [[nodiscard]] std::optional<double> number() const;
    [[nodiscard]] std::optional<std::int64_t> integer() const; ///< also of a double that is whole
    [[nodiscard]] const std::string* text() const { return std::get_if<std::string>(&data_); }
    [[nodiscard]] const Array* array() const { return std::get_if<Array>(&data_); }
    [[nodiscard]] const Object* object() const { return std::get_if<Object>(&data_); }
    [[nodiscard]] Object* object() { return std::get_if<Object>(&data_); }

    [[nodiscard]] const Data& data() const { return data_; }

    /// Numbers are compared by value; NaN equals nothing.
    friend bool operator==(const Value& a, const Value& b);

  private:
    Data data_;
};

/// Member of an object, or nullptr.
[[nodiscard]] const Value* member(const Object& object, std::string_view key);
[[nodiscard]] std::optional<std::string> textMember(const Object& object, std::string_view key);
[[nodiscard]] std::optional<double> numberMember(const Object& object, std::string_view key);
[[nodiscard]] std::optional<std::int64_t> integerMember(const Object& object, std::string_view key);
[[nodiscard]] std::optional<bool> booleanMember(const Object& object, std::string_view key);

/// Well-formed UTF-8 throughout.
[[nodiscard]] bool isUtf8(std::string_view text);

/// The one serialisation: UTF-8 JSON on one line, no spaces, keys sorted by bytes, only the escapes JSON
/// demands, numbers as the shortest text that reads back to the same number (-0 is 0; whole numbers without a
/// point). Equal values give equal bytes on every machine.
/// Errors (failure): "record.not_finite", "record.not_utf8", "record.too_deep" (over 32 levels).
base::Result<std::string> canonicalText(const Value& value);

/// Reads JSON, canonical or not. Errors (input): "record.not_json" (also duplicate keys and over 32 levels).
base::Result<Value> parseJson(std::string_view text);

} // namespace plumbmark::records
