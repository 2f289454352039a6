// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "comparison/difference.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace plumbmark::comparison {
namespace {

constexpr double kTwoSided95 = 1.96; // standard normal, 2.5 % on each side

constexpr std::array<std::string_view, 3> kHands{"takeaway_width", "hand_path", "hands_ahead"};
constexpr std::array<std::string_view, 3> kShaft{"shaft_lean", "shaft_plane", "shaft_at_top"};
constexpr std::array<std::string_view, 4> kTime{"tempo_ratio", "backswing_time", "downswing_time",
                                                "start_down_lead"};
constexpr std::array<std::string_view, 6> kBody{"pelvis_shift", "chest_shift", "head_travel",
                                                "head_rise",    "spine_tilt",  "chest_share_of_shift"};

template <std::size_t N> bool holds(const std::array<std::string_view, N>& ids, std::string_view id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

} // namespace

bool isMatchedQuantity(std::string_view id, Feature feature) {
    switch (feature) {
    case Feature::hands:
        return holds(kHands, id);
    case Feature::shaft:
        return holds(kShaft, id);
    case Feature::time_from_impact:
        return holds(kTime, id);
    case Feature::body:
        return holds(kBody, id);
    }
    return false;
}

std::vector<Difference> differences(const std::vector<measure::Measurement>& first,
                                    const std::vector<measure::Measurement>& second, Feature matchedBy) {
    std::vector<Difference> rows;
    for (const auto& a : first) {
        if (!a.value || isMatchedQuantity(a.id, matchedBy)) {
            continue;
        }
        const auto* b = measure::find(second, a.id, a.moment);
        if (b == nullptr || !b->value || b->method != a.method || b->value->unit != a.value->unit) {
            continue;
        }
        Difference row{a.id,
                       a.moment,
                       *a.value,
                       *b->value,
                       a.value->value - b->value->value,
                       std::hypot(a.value->sigma, b->value->sigma),
                       false};
        row.beyondDoubt = std::abs(row.difference) > kTwoSided95 * row.sigma;
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<std::string> cameraWarnings(const Side& first, const Side& second) {
    std::vector<std::string> out;
    if (first.scene.vertical.source == "assumed" || second.scene.vertical.source == "assumed") {
        out.emplace_back(
            "True vertical is only assumed in one of the clips: tilts and shaft lean may differ by the "
            "cameras alone. Mark a plumb edge, or film with the level shown.");
    }
    if (first.scene.distanceMetres && second.scene.distanceMetres &&
        std::abs(*first.scene.distanceMetres - *second.scene.distanceMetres) > 1.0) {
        out.emplace_back(
            "The cameras stood at different distances: numbers against the trail ankle and the ball suffer.");
    }
    const double a = first.scene.scale.pixelsPerStature / std::max(1, first.scene.height);
    const double b = second.scene.scale.pixelsPerStature / std::max(1, second.scene.height);
    if (a > 0 && b > 0 && std::max(a, b) > 1.6 * std::min(a, b)) {
        out.emplace_back("The player is much smaller in one of the clips: its numbers are less sure.");
    }
    const auto framesASecond = [](const Side& side) {
        const double shown = side.track.size() < 2
                                 ? 0.0
                                 : (side.track.back().time - side.track.front().time).value() /
                                       static_cast<double>(side.track.size() - 1);
        return side.timeScale.known && shown > 0 ? 1.0 / (shown * side.timeScale.realPerShown) : 1e9;
    };
    if (std::min(framesASecond(first), framesASecond(second)) < 100.0) {
        out.emplace_back(
            "One of the clips has fewer than 100 frames a second: positions near the ball, tempo and "
            "shaft lean suffer.");
    }
    if (std::abs(first.scene.yawDegrees - second.scene.yawDegrees) > 5.0) {
        out.emplace_back(
            "The cameras looked from different directions: tilts, turns and ball position suffer.");
    }
    if (first.context.shot != second.context.shot) {
        out.emplace_back("The kinds of shot differ: only the positions can be compared, not the sizes.");
    }
    if (first.context.club && second.context.club && !(*first.context.club == *second.context.club)) {
        out.emplace_back("The clubs differ: set-up, tilt and shaft lean differ with the club.");
    }
    return out;
}

} // namespace plumbmark::comparison
