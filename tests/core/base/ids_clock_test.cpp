// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <ctime>
#include <set>

#include "base/clock.h"
#include "base/ids.h"

using namespace plumbmark::base;

TEST(Ids, AreThirtyTwoLowercaseHexDigitsAndReadBack) {
    for (int i = 0; i < 100; ++i) {
        const Id id = randomIds().next();
        const std::string text = id.hex();
        ASSERT_EQ(text.size(), 32U);
        ASSERT_EQ(text.find_first_not_of("0123456789abcdef"), std::string::npos);
        ASSERT_EQ(Id::fromHex(text), id);
    }
}

TEST(Ids, RefuseEveryOtherText) {
    const std::string good(32, 'a');
    EXPECT_TRUE(Id::fromHex(good));
    EXPECT_FALSE(Id::fromHex(""));
    EXPECT_FALSE(Id::fromHex(good.substr(1)));
    EXPECT_FALSE(Id::fromHex(good + "a"));
    EXPECT_FALSE(Id::fromHex(std::string(31, 'a') + "A"));
    EXPECT_FALSE(Id::fromHex(std::string(31, 'a') + "g"));
    EXPECT_FALSE(Id::fromHex(std::string(31, 'a') + std::string(1, '\0')));
}

TEST(Ids, DoNotRepeat) {
    std::set<Id> random, seeded;
    SeededIds source(1);
    for (int i = 0; i < 10'000; ++i) {
        random.insert(randomIds().next());
        seeded.insert(source.next());
    }
    EXPECT_EQ(random.size(), 10'000U);
    EXPECT_EQ(seeded.size(), 10'000U);
    EXPECT_EQ(SeededIds(7).next(), SeededIds(7).next());
    EXPECT_NE(SeededIds(7).next(), SeededIds(8).next());
}

// The forms are ISO 8601's (2019, 5.2.2.1 and 5.4.2.1); instants from the C library's gmtime, an independent
// calendar.
TEST(IsoTime, AgreesWithTheCLibrarysCalendar) {
    for (std::int64_t day = -20'000; day < 40'000; day += 13) {
        const std::time_t seconds = day * 86'400 + (day * 7'919) % 86'400;
        std::tm parts{};
        ASSERT_NE(gmtime_r(&seconds, &parts), nullptr);
        char expected[40];
        std::strftime(expected, sizeof expected, "%Y-%m-%dT%H:%M:%S", &parts);
        const UnixMs ms = std::int64_t{seconds} * 1000 + 7;
        ASSERT_EQ(isoTime(ms), std::string(expected) + ".007Z");
        ASSERT_EQ(fromIso(isoTime(ms)), ms);
        ASSERT_EQ(fromIso(std::string(expected) + "Z"), ms - 7);
    }
}

// Well-known instants: the epoch; the billionth second (2001-09-09T01:46:40Z); the last second of 32-bit time
// (2038-01-19T03:14:07Z). From memory, widely published.
TEST(IsoTime, KnowsWellKnownInstants) {
    EXPECT_EQ(isoTime(0), "1970-01-01T00:00:00.000Z");
    EXPECT_EQ(isoTime(1'000'000'000'000), "2001-09-09T01:46:40.000Z");
    EXPECT_EQ(isoTime(2'147'483'647'000), "2038-01-19T03:14:07.000Z");
    EXPECT_EQ(isoTime(-1), "1969-12-31T23:59:59.999Z");
    EXPECT_EQ(isoDate(1'000'000'000'000), "2001-09-09");
    EXPECT_EQ(isoTime(INT64_MAX).substr(0, 4), "9999");
    EXPECT_EQ(isoTime(INT64_MIN).substr(0, 4), "0000");
}

TEST(IsoTime, RefusesWhatIsNoTime) {
    EXPECT_EQ(fromIso("2024-02-29"), 1'709'164'800'000);
    for (const char* bad :
         {"", "2023-02-29", "2026-13-01", "2026-00-10", "2026-11-31", "2026-11-5", "26-11-25", "2026/11/25",
          "2026-11-25T", "2026-11-25T24:00:00Z", "2026-11-25T10:60:00Z", "2026-11-25T10:00:61Z",
          "2026-11-25T10:00:00", "2026-11-25T10:00:00.5Z", "2026-11-25T10:00:00.000+01:00", "2026-11-25 ",
          "x", "2026-11-25T10:00:00.000Z "}) {
        EXPECT_FALSE(fromIso(bad)) << bad;
    }
}
