// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "base/clock.h"

#include <algorithm>
#include <chrono>
#include <cstdio>

namespace plumbmark::base {
namespace {

using namespace std::chrono;

class SystemClock final : public Clock {
  public:
    [[nodiscard]] UnixMs now() const override {
        return duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
    }
};

constexpr UnixMs kDayMs = 86'400'000;
constexpr UnixMs kFirst = sys_days{year{0} / 1 / 1}.time_since_epoch().count() * kDayMs;
constexpr UnixMs kLast = (sys_days{year{9999} / 12 / 31}.time_since_epoch().count() + 1) * kDayMs - 1;

std::optional<int> digits(std::string_view text, std::size_t from, std::size_t count) {
    int value = 0;
    for (std::size_t i = from; i < from + count; ++i) {
        if (i >= text.size() || text[i] < '0' || text[i] > '9') {
            return std::nullopt;
        }
        value = value * 10 + (text[i] - '0');
    }
    return value;
}

} // namespace

const Clock& systemClock() {
    static const SystemClock clock;
    return clock;
}

// Own formatting: the C library's depends on time zone and locale.
std::string isoTime(UnixMs at) {
    at = std::clamp(at, kFirst, kLast);
    const sys_time<milliseconds> time{milliseconds{at}};
    const auto day = floor<days>(time);
    const year_month_day date{day};
    const hh_mm_ss clock{time - day};
    char text[40];
    std::snprintf(text, sizeof text, "%04d-%02u-%02uT%02d:%02d:%02d.%03dZ", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                  static_cast<int>(clock.hours().count()), static_cast<int>(clock.minutes().count()),
                  static_cast<int>(clock.seconds().count()), static_cast<int>(clock.subseconds().count()));
    return text;
}

std::string isoDate(UnixMs at) {
    return isoTime(at).substr(0, 10);
}

std::optional<UnixMs> fromIso(std::string_view text) {
    const auto y = digits(text, 0, 4);
    const auto m = digits(text, 5, 2);
    const auto d = digits(text, 8, 2);
    if (!y || !m || !d || text[4] != '-' || text[7] != '-') {
        return std::nullopt;
    }
    const year_month_day date{year{*y}, month{static_cast<unsigned>(*m)}, day{static_cast<unsigned>(*d)}};
    if (!date.ok()) {
        return std::nullopt;
    }
    const UnixMs midnight = sys_days{date}.time_since_epoch().count() * kDayMs;
    if (text.size() == 10) {
        return midnight;
    }
    const auto hour = digits(text, 11, 2);
    const auto minute = digits(text, 14, 2);
    const auto second = digits(text, 17, 2);
    if (!hour || !minute || !second || text[10] != 'T' || text[13] != ':' || text[16] != ':' || *hour > 23 ||
        *minute > 59 || *second > 59) {
        return std::nullopt;
    }
    int ms = 0;
    std::size_t end = 19;
    if (text.size() > 19 && text[19] == '.') {
        const auto part = digits(text, 20, 3);
        if (!part) {
            return std::nullopt;
        }
        ms = *part;
        end = 23;
    }
    if (text.size() != end + 1 || text[end] != 'Z') {
        return std::nullopt;
    }
    return midnight + ((*hour * 60 + *minute) * 60 + *second) * 1000LL + ms;
}

} // namespace plumbmark::base
