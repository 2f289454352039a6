// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <clocale>
#include <cmath>
#include <cstring>
#include <limits>
#include <random>

#include "records/fact.h"
#include "records/value.h"

using namespace plumbmark;
using namespace plumbmark::records;

namespace {
std::string text(const Value& value) {
    const auto result = canonicalText(value);
    return result ? *result : "error: " + result.error().key;
}
} // namespace

TEST(Value, WritesOneCanonicalForm) {
    EXPECT_EQ(text(Value()), "null");
    EXPECT_EQ(text(Object{{"b", 1}, {"a", Array{true, false, nullptr}}, {"", "x"}}),
              R"({"":"x","a":[true,false,null],"b":1})");
    EXPECT_EQ(text(Array{}), "[]");
    EXPECT_EQ(text(Object{}), "{}");
    EXPECT_EQ(text("a\"b\\c/\n\t\x01\x1f\x7f Zoë 🏌"),
              "\"a\\\"b\\\\c/\\n\\t\\u0001\\u001f\x7f Zoë 🏌\"");
}

// RFC 8785 (JSON Canonicalization Scheme) lists number samples in its appendix B; where exponents are not
// needed its form and ours agree.
TEST(Value, NumbersAreTheShortestThatReadBack) {
    EXPECT_EQ(text(0.0), "0");
    EXPECT_EQ(text(-0.0), "0");
    EXPECT_EQ(text(5.0), "5");
    EXPECT_EQ(text(5), "5");
    EXPECT_EQ(text(0.1), "0.1");
    EXPECT_EQ(text(4.5), "4.5");
    EXPECT_EQ(text(2e-3), "0.002");
    EXPECT_EQ(text(333333333.33333329), "333333333.3333333");
    EXPECT_EQ(text(9007199254740992.0), "9007199254740992");
    EXPECT_EQ(text(std::numeric_limits<std::int64_t>::min()), "-9223372036854775808");
    EXPECT_EQ(text(std::numeric_limits<double>::infinity()), "error: record.not_finite");
    EXPECT_EQ(text(std::nan("")), "error: record.not_finite");
}

TEST(Value, EveryDoubleReadsBackToItself) {
    std::mt19937_64 random(3);
    for (int i = 0; i < 200'000; ++i) {
        const std::uint64_t bits = random();
        double value = 0;
        std::memcpy(&value, &bits, sizeof value);
        if (!std::isfinite(value)) {
            continue;
        }
        const std::string once = text(value);
        const auto back = parseJson(once);
        ASSERT_TRUE(back) << once;
        ASSERT_EQ(back->number(), value == 0 ? 0.0 : value) << once;
        ASSERT_EQ(text(*back), once);
    }
}

TEST(Value, DoesNotDependOnTheLocale) {
    const std::string before = std::setlocale(LC_ALL, nullptr);
    for (const char* name : {"de_DE.UTF-8", "fr_FR.UTF-8", "pl_PL.UTF-8"}) {
        if (std::setlocale(LC_ALL, name) == nullptr) {
            continue; // not installed here; the pinned C locale was checked above
        }
        EXPECT_EQ(text(1234.5), "1234.5");
        const auto back = parseJson("1234.5");
        ASSERT_TRUE(back);
        EXPECT_EQ(back->number(), 1234.5);
    }
    std::setlocale(LC_ALL, before.c_str());
}

// Malformed sequences of the Unicode standard's conformance chapter (3.9, table 3-7).
TEST(Value, RefusesTextThatIsNotUtf8) {
    for (const char* bad : {"\xC0\x80", "\xC1\xBF", "\xE0\x80\x80", "\xED\xA0\x80", "\xF0\x80\x80\x80",
                            "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\x80", "a\xE2\x82", "\xFF"}) {
        EXPECT_FALSE(isUtf8(bad));
        EXPECT_EQ(text(bad), "error: record.not_utf8");
        EXPECT_EQ(text(Object{{bad, 1}}), "error: record.not_utf8");
        EXPECT_FALSE(parseJson("\"" + std::string(bad) + "\""));
    }
    EXPECT_TRUE(isUtf8("\xEE\x80\x80 \xF4\x8F\xBF\xBF \xED\x9F\xBF"));
}

TEST(Value, RefusesWhatIsNoJsonOrTooDeep) {
    for (const char* bad : {"", " ", "{", "[1,]", "{\"a\":1,\"a\":1}", "nul", "1 2", "'a'", "{a:1}", "01",
                            "1.", "+1", "\"\\ud800\"", "1e999", "[1]x", "NaN"}) {
        EXPECT_FALSE(parseJson(bad)) << bad;
    }
    EXPECT_TRUE(parseJson(std::string(32, '[') + std::string(32, ']')));
    EXPECT_FALSE(parseJson(std::string(40, '[') + std::string(40, ']')));
    EXPECT_FALSE(parseJson(std::string(1'000'000, '[')));
    Value deep = 1;
    for (int i = 0; i < 40; ++i) {
        deep = Array{deep};
    }
    EXPECT_EQ(text(deep), "error: record.too_deep");
}

TEST(Value, WholeDoublesAndIntegersAreTheSameValue) {
    EXPECT_EQ(Value(5), Value(5.0));
    EXPECT_FALSE(Value(5) == Value(5.5));
    EXPECT_FALSE(Value(5) == Value("5"));
    EXPECT_EQ(Value(5.0).integer(), 5);
    EXPECT_FALSE(Value(5.5).integer());
    EXPECT_FALSE(Value("x").number());
}

namespace {
Fact sample() {
    base::SeededIds ids(4);
    Fact fact;
    fact.id = ids.next();
    fact.kind = "mark";
    fact.path = {ids.next(), ids.next()};
    fact.at = {1'700'000'000'000, 3, ids.next(), false};
    fact.replaces = {ids.next()};
    fact.body = {{"frame", 12}, {"at", Array{1.5, 2}}};
    return fact;
}
} // namespace

TEST(FactText, ReadsBackWholeAndKeepsWhatItDoesNotKnow) {
    Fact fact = sample();
    fact.kind = "weather";
    fact.extra = {{"mood", Object{{"x", Array{1, 2.5, "z"}}}}};
    fact.at.unsure = true;
    const auto line = toText(fact);
    ASSERT_TRUE(line);
    const auto back = recordFromText(*line);
    ASSERT_TRUE(back) << back.error().sentence;
    ASSERT_TRUE(back->fact);
    EXPECT_EQ(*back->fact, fact);
    EXPECT_EQ(*toText(*back->fact), *line);

    const Tombstone tombstone{fact.id, "2026-11-25"};
    const auto stone = recordFromText(toText(tombstone));
    ASSERT_TRUE(stone);
    EXPECT_EQ(stone->tombstone, tombstone);
    // Nothing of the erased thing may hide in a tombstone.
    EXPECT_FALSE(recordFromText(R"({"erased":"2026-11-25","id":")" + fact.id.hex() + R"(","name":"x"})"));
}

TEST(FactText, TakesOnlyTheCanonicalForm) {
    const std::string line = *toText(sample());
    ASSERT_TRUE(recordFromText(line));
    const auto changed = [&](const std::string& from, const std::string& to) {
        std::string other = line;
        const auto at = other.find(from);
        EXPECT_NE(at, std::string::npos) << from;
        other.replace(at, from.size(), to);
        return recordFromText(other);
    };
    EXPECT_FALSE(recordFromText(" " + line));
    EXPECT_FALSE(changed(":", ": "));
    EXPECT_FALSE(changed("1.5", "1.50"));
    EXPECT_FALSE(changed("\"frame\":12", "\"frame\":1.2e1"));
    EXPECT_FALSE(changed("\"kind\":\"mark\"", "\"kind\":\"Mark\""));
    EXPECT_FALSE(changed("\"n\":3", "\"n\":-3"));
    EXPECT_FALSE(changed("\"body\":{", "\"body\":[{"));
    EXPECT_FALSE(changed("\"replaces\":[", "\"replaces\":[0,"));
}

// Every single change of one byte is refused or gives another, again canonical, fact: never the same fact.
TEST(FactText, NoChangedByteGivesTheSameFact) {
    const Fact fact = sample();
    const std::string line = *toText(fact);
    for (std::size_t i = 0; i < line.size(); ++i) {
        for (int bit = 0; bit < 8; ++bit) {
            std::string other = line;
            other[i] = static_cast<char>(other[i] ^ (1 << bit));
            const auto record = recordFromText(other);
            if (record && record->fact) {
                ASSERT_FALSE(*record->fact == fact);
                ASSERT_EQ(*toText(*record->fact), other);
            }
        }
    }
}
