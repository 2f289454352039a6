// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "records/value.h"

#include <array>
#include <charconv>
#include <cmath>

#include <nlohmann/json.hpp>

namespace plumbmark::records {
namespace {

constexpr int kDeepest = 32;

/// -1, or the length of the well-formed UTF-8 sequence at `i` (Unicode 15, table 3-7: no overlong forms, no
/// surrogates, nothing beyond U+10FFFF).
int utf8Length(std::string_view text, std::size_t i) {
    const auto at = [&](std::size_t k) -> unsigned {
        return i + k < text.size() ? static_cast<unsigned char>(text[i + k]) : 0U;
    };
    const auto tail = [](unsigned c) { return c >= 0x80 && c <= 0xBF; };
    const unsigned a = at(0);
    if (a < 0x80) {
        return 1;
    }
    if (a >= 0xC2 && a <= 0xDF) {
        return tail(at(1)) ? 2 : -1;
    }
    if (a >= 0xE0 && a <= 0xEF) {
        const unsigned low = a == 0xE0 ? 0xA0 : 0x80;
        const unsigned high = a == 0xED ? 0x9F : 0xBF;
        return at(1) >= low && at(1) <= high && tail(at(2)) ? 3 : -1;
    }
    if (a >= 0xF0 && a <= 0xF4) {
        const unsigned low = a == 0xF0 ? 0x90 : 0x80;
        const unsigned high = a == 0xF4 ? 0x8F : 0xBF;
        return at(1) >= low && at(1) <= high && tail(at(2)) && tail(at(3)) ? 4 : -1;
    }
    return -1;
}

enum class Trouble { none, notFinite, notUtf8, tooDeep };

Trouble appendText(std::string_view text, std::string& out) {
    constexpr std::string_view hex = "0123456789abcdef";
    out += '"';
    for (std::size_t i = 0; i < text.size();) {
        const int length = utf8Length(text, i);
        if (length < 0) {
            return Trouble::notUtf8;
        }
        const auto c = static_cast<unsigned char>(text[i]);
        switch (c) {
        case '"':
            out += "\\\"";
            break;
        case '\\':
            out += "\\\\";
            break;
        case '\b':
            out += "\\b";
            break;
        case '\f':
            out += "\\f";
            break;
        case '\n':
            out += "\\n";
            break;
        case '\r':
            out += "\\r";
            break;
        case '\t':
            out += "\\t";
            break;
        default:
            if (c < 0x20) {
                out += "\\u00";
                out += hex[c >> 4];
                out += hex[c & 15];
            } else {
                out.append(text.substr(i, static_cast<std::size_t>(length)));
            }
        }
        i += static_cast<std::size_t>(length);
    }
    out += '"';
    return Trouble::none;
}

void appendInteger(std::int64_t value, std::string& out) {
    std::array<char, 24> text;
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
    out.append(text.data(), end);
}

Trouble appendDouble(double value, std::string& out) {
    if (!std::isfinite(value)) {
        return Trouble::notFinite;
    }
    // Whole numbers up to 2^53 look the same whether they were kept as integer or as double; -0 becomes 0.
    if (std::abs(value) <= 9007199254740992.0 && value == std::floor(value)) {
        appendInteger(static_cast<std::int64_t>(value), out);
        return Trouble::none;
    }
    std::array<char, 40> text;
    // std::to_chars without a precision gives the shortest text that reads back to the same double, in any
    // locale.
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
    out.append(text.data(), end);
    return Trouble::none;
}

Trouble append(const Value& value, std::string& out, int depth) {
    if (depth > kDeepest) {
        return Trouble::tooDeep;
    }
    const auto& data = value.data();
    if (const auto* b = std::get_if<bool>(&data)) {
        out += *b ? "true" : "false";
    } else if (const auto* i = std::get_if<std::int64_t>(&data)) {
        appendInteger(*i, out);
    } else if (const auto* d = std::get_if<double>(&data)) {
        return appendDouble(*d, out);
    } else if (const auto* s = std::get_if<std::string>(&data)) {
        return appendText(*s, out);
    } else if (const auto* a = std::get_if<Array>(&data)) {
        out += '[';
        for (std::size_t k = 0; k < a->size(); ++k) {
            if (k > 0) {
                out += ',';
            }
            if (const auto trouble = append((*a)[k], out, depth + 1); trouble != Trouble::none) {
                return trouble;
            }
        }
        out += ']';
    } else if (const auto* o = std::get_if<Object>(&data)) {
        out += '{';
        bool first = true;
        for (const auto& [key, item] : *o) { // std::map of std::string: sorted by bytes
            if (!first) {
                out += ',';
            }
            first = false;
            if (const auto trouble = appendText(key, out); trouble != Trouble::none) {
                return trouble;
            }
            out += ':';
            if (const auto trouble = append(item, out, depth + 1); trouble != Trouble::none) {
                return trouble;
            }
        }
        out += '}';
    } else {
        out += "null";
    }
    return Trouble::none;
}

/// Builds a Value from the JSON library's events: no tree of the library's own, a bound on the depth, and
/// doubles keys seen.
class Builder final : public nlohmann::json_sax<nlohmann::json> {
  public:
    bool null() override { return put(Value()); }
    bool boolean(bool value) override { return put(Value(value)); }
    bool number_integer(number_integer_t value) override { return put(Value(std::int64_t{value})); }
    bool number_unsigned(number_unsigned_t value) override {
        return value <= static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max())
                   ? put(Value(static_cast<std::int64_t>(value)))
                   : put(Value(static_cast<double>(value)));
    }
    bool number_float(number_float_t value, const string_t&) override { return put(Value(value)); }
    bool string(string_t& value) override { return put(Value(std::move(value))); }
    bool binary(binary_t&) override { return false; }
    bool start_object(std::size_t) override { return open(Value(Object{})); }
    bool end_object() override { return close(); }
    bool start_array(std::size_t) override { return open(Value(Array{})); }
    bool end_array() override { return close(); }
    bool key(string_t& value) override {
        keys_.back() = std::move(value);
        return std::get<Object>(stack_.back()).count(keys_.back()) == 0;
    }
    bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception&) override {
        return false;
    }
    Value take() { return std::move(root_); }

  private:
    using Container = std::variant<Array, Object>;
    bool put(Value value) {
        if (stack_.empty()) {
            root_ = std::move(value);
        } else if (auto* array = std::get_if<Array>(&stack_.back())) {
            array->push_back(std::move(value));
        } else {
            std::get<Object>(stack_.back()).emplace(std::move(keys_.back()), std::move(value));
        }
        return true;
    }
    bool open(Value empty) {
        if (stack_.size() > static_cast<std::size_t>(kDeepest)) {
            return false;
        }
        if (empty.array() != nullptr) {
            stack_.emplace_back(Array{});
        } else {
            stack_.emplace_back(Object{});
        }
        keys_.emplace_back();
        return true;
    }
    bool close() {
        Container done = std::move(stack_.back());
        stack_.pop_back();
        keys_.pop_back();
        return std::visit([this](auto& container) { return put(Value(std::move(container))); }, done);
    }

    Value root_;
    std::vector<Container> stack_;
    std::vector<std::string> keys_;
};

} // namespace

bool operator==(const Value& a, const Value& b) {
    const auto* i = std::get_if<std::int64_t>(&a.data_);
    const auto* j = std::get_if<std::int64_t>(&b.data_);
    const auto* x = std::get_if<double>(&a.data_);
    const auto* y = std::get_if<double>(&b.data_);
    if ((i != nullptr && y != nullptr) || (x != nullptr && j != nullptr)) {
        return a.number() == b.number();
    }
    return a.data_ == b.data_;
}

std::optional<bool> Value::boolean() const {
    const auto* b = std::get_if<bool>(&data_);
    return b == nullptr ? std::nullopt : std::optional(*b);
}

std::optional<double> Value::number() const {
    if (const auto* d = std::get_if<double>(&data_)) {
        return *d;
    }
    if (const auto* i = std::get_if<std::int64_t>(&data_)) {
        return static_cast<double>(*i);
    }
    return std::nullopt;
}

std::optional<std::int64_t> Value::integer() const {
    if (const auto* i = std::get_if<std::int64_t>(&data_)) {
        return *i;
    }
    if (const auto* d = std::get_if<double>(&data_)) {
        if (*d == std::floor(*d) && std::abs(*d) <= 9007199254740992.0) {
            return static_cast<std::int64_t>(*d);
        }
    }
    return std::nullopt;
}

const Value* member(const Object& object, std::string_view key) {
    const auto it = object.find(key);
    return it == object.end() ? nullptr : &it->second;
}

std::optional<std::string> textMember(const Object& object, std::string_view key) {
    const Value* value = member(object, key);
    const std::string* text = value == nullptr ? nullptr : value->text();
    return text == nullptr ? std::nullopt : std::optional(*text);
}

std::optional<double> numberMember(const Object& object, std::string_view key) {
    const Value* value = member(object, key);
    return value == nullptr ? std::nullopt : value->number();
}

std::optional<std::int64_t> integerMember(const Object& object, std::string_view key) {
    const Value* value = member(object, key);
    return value == nullptr ? std::nullopt : value->integer();
}

std::optional<bool> booleanMember(const Object& object, std::string_view key) {
    const Value* value = member(object, key);
    return value == nullptr ? std::nullopt : value->boolean();
}

bool isUtf8(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        const int length = utf8Length(text, i);
        if (length < 0) {
            return false;
        }
        i += static_cast<std::size_t>(length);
    }
    return true;
}

base::Result<std::string> canonicalText(const Value& value) {
    std::string text;
    switch (append(value, text, 0)) {
    case Trouble::none:
        return text;
    case Trouble::notFinite:
        return base::failure("record.not_finite",
                             "A number is not finite, so it was not saved; mark it again.");
    case Trouble::notUtf8:
        return base::failure("record.not_utf8",
                             "A text is not valid UTF-8, so it was not saved; type it again.");
    case Trouble::tooDeep:
        break;
    }
    return base::failure("record.too_deep", "A record is nested too deeply, so it was not saved.");
}

base::Result<Value> parseJson(std::string_view text) {
    Builder builder;
    if (!nlohmann::json::sax_parse(text.begin(), text.end(), &builder)) {
        return base::inputError("record.not_json", "This is not a readable record; the file is damaged.");
    }
    return builder.take();
}

} // namespace plumbmark::records
