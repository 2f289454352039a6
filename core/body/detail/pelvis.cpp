// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "body/detail/pelvis.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>

#include "body/detail/carry.h"
#include "body/detail/known.h"

namespace plumbmark::body::detail {
namespace {

/// Rows about the network's hip height, hundredths of a stature, + down: from below the waist to just under
/// the hip joints. Lower down the outline is the thighs', which follow the knees.
constexpr int kFirst = -7, kLast = 5, kRows = kLast - kFirst + 1;
/// The network's mid-hip, statures: scatter from look to look, and its bias while hands and arms pass before
/// it.
constexpr double kNetworkGrain = 0.004, kNetworkBias = 0.020;
/// Seconds that the bias lasts, and the pelvis' sideways acceleration (statures^2 / s^3: some 4 statures /
/// s^2 for a twentieth of a second at a time).
constexpr double kLasting = 0.15, kJerk = 0.7;
/// Edge to the axis of an arm, statures: nearer, the edge may be the sleeve's.
constexpr double kArm = 0.05;
constexpr double kReach = 0.30;
/// Against the clip's usual width of the same row. Wider: an arm, a bag or a post behind the player. Narrower
/// than a pelvis turned edge-on (buttock depth is about 0.72 of hip breadth; from memory of body surveys): a
/// part of it.
constexpr double kWidest = 1.09, kNarrowest = 0.70;

struct Row {
    std::optional<double> left, right; ///< px in the picture
};
using Rows = std::array<Row, kRows>;

double median(std::vector<double> v) {
    const auto mid = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
    std::nth_element(v.begin(), mid, v.end());
    return *mid;
}

double quantile(std::vector<double> v, double share) {
    const auto at = v.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(v.size() - 1));
    std::nth_element(v.begin(), at, v.end());
    return *at;
}

bool clear(base::Vec2 edge, const std::vector<Limb>& arms, double distance) {
    return std::none_of(arms.begin(), arms.end(), [&](const Limb& arm) {
        const base::Vec2 along = arm.b - arm.a;
        const double square = base::dot(along, along);
        const double k = square > 0 ? std::clamp(base::dot(edge - arm.a, along) / square, 0.0, 1.0) : 0.0;
        return base::length(edge - (arm.a + along * k)) < distance;
    });
}

Rows rowsOf(const PelvisLook& look, double stature) {
    Rows rows;
    const auto slope = [&](base::Vec2 to) { // px across per px down
        const double down = to.y - look.hips.y;
        return std::abs(down) > 0.08 * stature ? std::clamp((to.x - look.hips.x) / down, -0.7, 0.7) : 0.0;
    };
    const double trunk = slope(look.shoulders), thighs = slope(look.knees);
    for (int i = 0; i < kRows; ++i) {
        const double down = 0.01 * (kFirst + i) * stature;
        const double lean = down * (down < 0 ? trunk : thighs);
        const base::Vec2 at{look.hips.x + lean, look.hips.y + down};
        const auto s = stretchAt(*look.seen, at, {1.0, 0.0}, kReach * stature);
        if (!s) {
            continue;
        }
        auto& row = rows[static_cast<std::size_t>(i)];
        const auto keep = [&](double offset, std::optional<double>& edge) {
            if (std::abs(offset) < 0.97 * kReach * stature &&
                clear({at.x + offset, at.y}, look.arms, kArm * stature)) {
                edge = look.hips.x + offset; // as if it stood at hip height
            }
        };
        keep(s->from, row.left);
        keep(s->to, row.right);
    }
    return rows;
}

} // namespace

std::vector<std::optional<PelvisMiddle>> pelvisMiddles(const std::vector<PelvisLook>& looks, double stature) {
    const std::size_t n = looks.size();
    std::vector<std::optional<PelvisMiddle>> out(n);
    std::vector<Rows> rows(n);
    for (std::size_t i = 0; i < n; ++i) {
        rows[i] = rowsOf(looks[i], stature);
    }
    // How wide the pelvis usually is: of the looks without an arm at the row's edges the wider ones, where it
    // stands square. All of the swing counts: cut to the looks with the hands up, a wide stance at address
    // would pass for something behind the player.
    std::array<double, kRows> usual{};
    std::array<Known, kRows> widths;
    for (std::size_t r = 0; r < kRows; ++r) {
        std::vector<double> told;
        for (std::size_t i = 0; i < n; ++i) {
            if (rows[i][r].left && rows[i][r].right) {
                told.push_back(*rows[i][r].right - *rows[i][r].left);
            }
        }
        if (told.size() >= 3) {
            usual[r] = quantile(told, 0.7);
        }
    }
    const auto wide = [&](std::size_t i, std::size_t r) -> std::optional<double> {
        const Row& row = rows[i][r];
        if (!row.left || !row.right || usual[r] <= 0) {
            return std::nullopt;
        }
        const double share = (*row.right - *row.left) / usual[r];
        return share > kNarrowest && share < kWidest ? std::optional(share) : std::nullopt;
    };
    for (std::size_t r = 0; r < kRows; ++r) {
        for (std::size_t i = 0; i < n; ++i) {
            if (const auto w = wide(i, r)) {
                widths[r].time.push_back(looks[i].time);
                widths[r].value.push_back(*w * usual[r]);
            }
        }
    }
    Known clean; // where the middle stood in the looks that show both edges
    for (std::size_t i = 0; i < n; ++i) {
        std::vector<double> middle, shares;
        for (std::size_t r = 0; r < kRows; ++r) {
            if (const auto w = wide(i, r)) {
                middle.push_back((*rows[i][r].left + *rows[i][r].right) / 2);
                shares.push_back(*w);
            }
        }
        if (middle.size() >= 3) {
            out[i] = PelvisMiddle{median(middle), 0.005 * stature, median(shares)};
            clean.time.push_back(looks[i].time);
            clean.value.push_back(out[i]->x);
        }
    }
    std::vector<double> outlineTime;
    for (std::size_t i = 0; i < n; ++i) {
        if (!out[i]) {
            std::vector<double> one, gaps;
            const auto near = clean.at(looks[i].time);
            for (std::size_t r = 0; r < kRows; ++r) {
                const Row& row = rows[i][r];
                const auto width = widths[r].at(looks[i].time);
                if (!width || (!row.left && !row.right)) {
                    continue;
                }
                const double fromLeft = row.left.value_or(0) + width->value / 2;
                const double fromRight = row.right.value_or(0) - width->value / 2;
                if (row.left && row.right) {
                    // Something behind the player widens one side: the one farther off where the clean looks
                    // and the network put the middle.
                    const double likely = near ? (near->value + looks[i].hips.x) / 2 : looks[i].hips.x;
                    one.push_back(std::abs(fromLeft - likely) < std::abs(fromRight - likely) ? fromLeft
                                                                                             : fromRight);
                } else {
                    one.push_back(row.left ? fromLeft : fromRight);
                }
                gaps.push_back(width->gap);
            }
            if (one.size() >= 3) {
                out[i] = PelvisMiddle{median(one),
                                      std::hypot(0.006, std::min(0.006, 0.02 * median(gaps))) * stature,
                                      std::nullopt};
            }
        }
        if (out[i]) {
            outlineTime.push_back(looks[i].time);
        }
    }
    if (outlineTime.empty()) {
        return out;
    }
    std::vector<TwoTold> told(n);
    for (std::size_t i = 0; i < n; ++i) {
        told[i] = {looks[i].time, looks[i].hips.x, kNetworkBias * stature, std::nullopt};
        if (out[i]) {
            told[i].outline = TwoTold::Outline{out[i]->x, out[i]->sigma};
        }
    }
    const auto middle = carryMiddle(told, {kNetworkGrain * stature, kLasting, kJerk * stature * stature});
    for (std::size_t i = 0; i < n; ++i) {
        if (!out[i]) {
            const auto next = std::lower_bound(outlineTime.begin(), outlineTime.end(), looks[i].time);
            double gap = 1e9;
            if (next != outlineTime.end()) {
                gap = *next - looks[i].time;
            }
            if (next != outlineTime.begin()) {
                gap = std::min(gap, looks[i].time - *std::prev(next));
            }
            out[i] = PelvisMiddle{0.0, std::hypot(0.009, std::min(0.01, 0.02 * gap)) * stature, std::nullopt};
        }
        out[i]->x = middle[i];
    }
    return out;
}

} // namespace plumbmark::body::detail
