// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/detail/timing.h"

#include <algorithm>
#include <charconv>
#include <string>

namespace plumbmark::video::detail {
namespace {

constexpr double stepRatio = 1.5;

std::vector<double> gapsOf(const std::vector<base::Seconds>& times) {
    std::vector<double> gaps;
    for (std::size_t i = 1; i < times.size(); ++i) {
        gaps.push_back((times[i] - times[i - 1]).value());
    }
    return gaps;
}

double median(std::vector<double> values) {
    auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

} // namespace

double playbackRate(const std::vector<base::Seconds>& times) {
    if (times.size() < 2) {
        return 0.0;
    }
    return static_cast<double>(times.size() - 1) / (times.back() - times.front()).value();
}

bool unevenSpacing(const std::vector<base::Seconds>& times) {
    const auto gaps = gapsOf(times);
    return !gaps.empty() && *std::max_element(gaps.begin(), gaps.end()) > stepRatio * median(gaps);
}

bool slowedInParts(const std::vector<base::Seconds>& times) {
    // A running median over seven gaps removes jitter and single dropped frames; what is left stands on one
    // level for an ordinary clip. A level counts when it holds for eight frames in a row.
    constexpr std::size_t reach = 3, lasting = 8;
    const auto gaps = gapsOf(times);
    if (gaps.size() < 2 * lasting + 2 * reach) {
        return false;
    }
    std::vector<double> level;
    for (std::size_t i = reach; i + reach < gaps.size(); ++i) {
        level.push_back(median({gaps.begin() + static_cast<std::ptrdiff_t>(i - reach),
                                gaps.begin() + static_cast<std::ptrdiff_t>(i + reach + 1)}));
    }
    double lowest = 0.0, highest = 0.0;
    for (std::size_t i = 0; i + lasting <= level.size(); ++i) {
        const auto first = level.begin() + static_cast<std::ptrdiff_t>(i);
        const auto [least, most] = std::minmax_element(first, first + lasting);
        if (*most > 1.2 * *least) {
            continue; // on the way from one level to the other
        }
        lowest = lowest == 0.0 ? *most : std::min(lowest, *most);
        highest = std::max(highest, *least);
    }
    return lowest > 0.0 && highest > stepRatio * lowest;
}

std::optional<double> parseRate(std::string_view text) {
    std::string plain(text);
    std::replace(plain.begin(), plain.end(), ',', '.');
    const auto start = plain.find_first_not_of(" \t");
    if (start == std::string::npos) {
        return std::nullopt;
    }
    double rate = 0.0;
    const auto [end, failed] = std::from_chars(plain.data() + start, plain.data() + plain.size(), rate);
    if (failed != std::errc{} || !(rate >= 1.0 && rate <= 10000.0)) {
        return std::nullopt;
    }
    return rate;
}

} // namespace plumbmark::video::detail
