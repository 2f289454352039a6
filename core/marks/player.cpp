// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "marks/player.h"

#include <array>
#include <charconv>
#include <utility>

namespace plumbmark::marks {
namespace {

template <class E, std::size_t N> using Names = std::array<std::pair<E, std::string_view>, N>;

constexpr Names<View, 2> kViews{{{View::faceOn, "face-on"}, {View::downTheLine, "down-the-line"}}};
constexpr Names<Hand, 2> kHands{{{Hand::right, "right"}, {Hand::left, "left"}}};
constexpr Names<ShotKind, 7> kShots{{{ShotKind::full, "full"},
                                     {ShotKind::half, "half"},
                                     {ShotKind::pitch, "pitch"},
                                     {ShotKind::chip, "chip"},
                                     {ShotKind::bunker, "bunker"},
                                     {ShotKind::putt, "putt"},
                                     {ShotKind::practice, "practice"}}};
constexpr Names<ClubKind, 6> kClubs{{{ClubKind::driver, "driver"},
                                     {ClubKind::wood, "wood"},
                                     {ClubKind::hybrid, "hybrid"},
                                     {ClubKind::iron, "iron"},
                                     {ClubKind::wedge, "wedge"},
                                     {ClubKind::putter, "putter"}}};

template <class E, std::size_t N> std::string_view nameOf(const Names<E, N>& names, E value) {
    for (const auto& [e, name] : names) {
        if (e == value) {
            return name;
        }
    }
    return {};
}

template <class E, std::size_t N> std::optional<E> valueOf(const Names<E, N>& names, std::string_view text) {
    for (const auto& [e, name] : names) {
        if (name == text) {
            return e;
        }
    }
    return std::nullopt;
}

} // namespace

std::string_view viewName(View view) {
    return nameOf(kViews, view);
}
std::string_view handName(Hand hand) {
    return nameOf(kHands, hand);
}
std::string_view shotKindName(ShotKind kind) {
    return nameOf(kShots, kind);
}
std::optional<View> viewFromName(std::string_view name) {
    return valueOf(kViews, name);
}
std::optional<Hand> handFromName(std::string_view name) {
    return valueOf(kHands, name);
}
std::optional<ShotKind> shotKindFromName(std::string_view name) {
    return valueOf(kShots, name);
}

std::string clubName(Club club) {
    std::string text(nameOf(kClubs, club.kind));
    if (club.number) {
        text += "-" + std::to_string(*club.number);
    }
    return text;
}

std::optional<Club> clubFromName(std::string_view name) {
    const auto dash = name.find('-');
    const auto kind = valueOf(kClubs, name.substr(0, dash));
    if (!kind) {
        return std::nullopt;
    }
    Club club{*kind, std::nullopt};
    if (dash != std::string_view::npos) {
        const std::string_view digits = name.substr(dash + 1);
        int number = 0;
        const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
        // 1-14 are club numbers, 40-70 are lofts in degrees.
        if (error != std::errc{} || end != digits.data() + digits.size() || number < 1 || number > 75) {
            return std::nullopt;
        }
        club.number = number;
    }
    return club;
}

} // namespace plumbmark::marks
