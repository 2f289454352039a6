// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "body/detail/shape.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace plumbmark::body::detail {
namespace {

double median(std::vector<double> v) {
    std::nth_element(v.begin(), v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2), v.end());
    return v[v.size() / 2];
}

bool inside(const Observation& o, base::Vec2 p) {
    return o.silhouette.contains(o.region.toCrop(p));
}

/// How far one can go from `at` along `along` and stay inside; the edge to a tenth of a mask pixel.
double reachOf(const Observation& o, base::Vec2 at, base::Vec2 along, double limit) {
    const double step = o.region.size / Silhouette::kRows;
    double good = 0.0;
    while (good < limit && inside(o, at + along * (good + step))) {
        good += step;
    }
    double bad = good + step;
    for (int i = 0; i < 4; ++i) {
        const double half = (good + bad) / 2;
        (inside(o, at + along * half) ? good : bad) = half;
    }
    return (good + bad) / 2;
}

bool nearArm(base::Vec2 edge, const std::vector<Limb>& arms) {
    return std::any_of(arms.begin(), arms.end(), [edge](const Limb& arm) {
        const base::Vec2 along = arm.b - arm.a;
        const double square = base::dot(along, along);
        const double k = square > 0 ? std::clamp(base::dot(edge - arm.a, along) / square, 0.0, 1.0) : 0.0;
        return base::length(edge - (arm.a + along * k)) < arm.thick;
    });
}

/// Line through (x, y) that most pairs agree on (Theil 1950, Sen 1968): slope = median of the pairs' slopes.
struct Line {
    double slope = 0.0, start = 0.0;
    [[nodiscard]] double at(double x) const { return start + slope * x; }
};
Line theilSen(const std::vector<double>& x, const std::vector<double>& y) {
    std::vector<double> slopes;
    for (std::size_t i = 0; i < x.size(); ++i) {
        for (std::size_t j = i + 1; j < x.size(); ++j) {
            if (x[j] - x[i] > 0.2) {
                slopes.push_back((y[j] - y[i]) / (x[j] - x[i]));
            }
        }
    }
    Line line;
    if (slopes.empty()) {
        line.start = median(y);
        return line;
    }
    line.slope = median(slopes);
    std::vector<double> starts;
    for (std::size_t i = 0; i < x.size(); ++i) {
        starts.push_back(y[i] - line.slope * x[i]);
    }
    line.start = median(starts);
    return line;
}

} // namespace

std::optional<Stretch> stretchAt(const Observation& o, base::Vec2 at, base::Vec2 along, double limit) {
    if (o.silhouette.empty() || !inside(o, at)) {
        return std::nullopt;
    }
    return Stretch{-reachOf(o, at, along * -1.0, limit), reachOf(o, at, along, limit)};
}

TrunkShape trunkShape(const Observation& o, base::Vec2 low, base::Vec2 high, const std::vector<Limb>& arms) {
    TrunkShape shape;
    const double length = base::length(high - low);
    if (length < 8) {
        return shape;
    }
    const base::Vec2 axis = (high - low) / length;
    const base::Vec2 across{-axis.y, axis.x}; // to the right of low -> high on the screen
    const auto spoiled = [&arms](base::Vec2 edge) { return nearArm(edge, arms); };
    struct Edges {
        std::vector<double> level, at;
    } middle, right, left;
    std::vector<double> wide;
    std::vector<double> middleWide;
    for (int i = 0; i <= 15; ++i) {
        const double f = 0.08 + 0.05 * i; // below: the legs' fork; above: the shoulders' slope
        const base::Vec2 at = low + axis * (f * length);
        const auto s = stretchAt(o, at, across, length);
        if (!s) {
            continue;
        }
        wide.push_back(s->to - s->from);
        const bool rightClean = s->to < 0.95 * length && !spoiled(at + across * s->to);
        const bool leftClean = -s->from < 0.95 * length && !spoiled(at + across * s->from);
        if (rightClean) {
            right.level.push_back(f);
            right.at.push_back(s->to);
        }
        if (leftClean) {
            left.level.push_back(f);
            left.at.push_back(s->from);
        }
        if (rightClean && leftClean) {
            middle.level.push_back(f);
            middle.at.push_back((s->from + s->to) / 2);
            middleWide.push_back(s->to - s->from);
        }
    }
    const auto fit = [](const Edges& e) -> std::optional<TrunkShape::Line> {
        if (e.level.size() < 5 || e.level.back() - e.level.front() < 0.3) {
            return std::nullopt; // too short a piece to tell a direction
        }
        const Line line = theilSen(e.level, e.at);
        std::vector<double> off;
        for (std::size_t i = 0; i < e.level.size(); ++i) {
            off.push_back(std::abs(e.at[i] - line.at(e.level[i])));
        }
        return TrunkShape::Line{line.at(0), line.at(1), median(off), static_cast<int>(e.level.size())};
    };
    // An arm away from the body widens a stretch on one side only: such levels say nothing about the middle.
    Edges even;
    for (std::size_t i = 0; i < middle.level.size(); ++i) {
        const double share = middleWide[i] / median(wide);
        if (share > 0.7 && share < 1.35) {
            even.level.push_back(middle.level[i]);
            even.at.push_back(middle.at[i]);
        }
    }
    shape.middle = fit(even);
    shape.right = fit(right);
    shape.left = fit(left);
    if (!wide.empty()) {
        shape.width = median(wide);
    }
    return shape;
}

std::optional<TrunkTop> trunkTop(const Observation& o, base::Vec2 hips, base::Vec2 shoulders,
                                 const std::vector<Limb>& arms, double stature) {
    const double limit = 0.47 * stature;
    std::vector<double> level, middle;
    for (int i = 0; i <= 16; ++i) { // above: the shoulders' slope and the raised arms
        const double f = 0.05 * i;
        const base::Vec2 at = hips + (shoulders - hips) * f;
        const auto s = stretchAt(o, at, {1.0, 0.0}, limit);
        // Wider than a trunk (chest breadth 0.174 statures, Drillis and Contini 1966, and its clothes), or
        // narrower than one seen from the side: an arm beside it, or a part.
        if (!s || s->to - s->from > 0.24 * stature || s->to - s->from < 0.09 * stature) {
            continue;
        }
        if (!nearArm({at.x + s->to, at.y}, arms) && !nearArm({at.x + s->from, at.y}, arms)) {
            level.push_back(f);
            middle.push_back(at.x + (s->from + s->to) / 2);
        }
    }
    if (level.size() < 5 || level.back() - level.front() < 0.3 || level.back() < 0.5) {
        return std::nullopt;
    }
    const Line line = theilSen(level, middle);
    std::vector<double> off;
    for (std::size_t i = 0; i < level.size(); ++i) {
        off.push_back(std::abs(middle[i] - line.at(level[i])));
    }
    const double followed = 0.015 * (1.0 + 2.0 * (1.0 - level.back())) * stature;
    return TrunkTop{line.at(1.0), std::hypot(followed, 2.0 * median(off))};
}

namespace {

// The head is 0.130 statures from chin to crown (published-segment figure of Drillis and Contini, 1966), so
// its half height is 0.065; an arm or the club behind the head can lengthen a reach: such a side is refused.
constexpr double kHeadLimit = 0.20, kHeadMost = 0.13, kHeadLeastAside = 0.02;

/// How far the head reaches along `across`: the widest of three heights, each a little above the centre,
/// clear of the shoulders.
double headReach(const Observation& o, base::Vec2 centre, base::Vec2 up, double crown, base::Vec2 across,
                 double stature) {
    double best = 0.0;
    for (const double f : {0.0, 0.25, 0.5}) {
        const base::Vec2 from = centre + up * (f * crown);
        if (inside(o, from)) {
            best = std::max(best, reachOf(o, from, across, kHeadLimit * stature));
        }
    }
    return best;
}

bool likeHead(double aside, double stature) {
    return aside <= kHeadMost * stature && aside >= kHeadLeastAside * stature;
}

} // namespace

std::optional<HeadOutline> headOutline(const Observation& o, base::Vec2 centre, base::Vec2 up,
                                       double stature) {
    if (!inside(o, centre)) {
        return std::nullopt;
    }
    const double crown = reachOf(o, centre, up, kHeadLimit * stature);
    const base::Vec2 across{-up.y, up.x};
    const double right = headReach(o, centre, up, crown, across, stature);
    const double left = headReach(o, centre, up, crown, across * -1.0, stature);
    if (crown > kHeadMost * stature || crown < 0.03 * stature || !likeHead(right, stature) ||
        !likeHead(left, stature)) {
        return std::nullopt;
    }
    return HeadOutline{centre + up * crown, centre - across * left, centre + across * right};
}

HeadSides headSides(const Observation& o, base::Vec2 centre, base::Vec2 up, double stature) {
    HeadSides sides;
    if (!inside(o, centre)) {
        return sides;
    }
    // An arm over the head lengthens the way up: then heights within a head's half are looked at.
    const double crown = std::min(reachOf(o, centre, up, kHeadLimit * stature), 0.065 * stature);
    const base::Vec2 across{-up.y, up.x};
    if (const double right = headReach(o, centre, up, crown, across, stature); likeHead(right, stature)) {
        sides.right = centre + across * right;
    }
    if (const double left = headReach(o, centre, up, crown, across * -1.0, stature);
        likeHead(left, stature)) {
        sides.left = centre - across * left;
    }
    return sides;
}

std::optional<base::Vec2> pelvisEdge(const Observation& o, base::Vec2 hip, int side, double band,
                                     double limit) {
    const double step = o.region.size / Silhouette::kRows;
    std::optional<base::Vec2> best;
    for (double dy = -band; dy <= band; dy += step) {
        const base::Vec2 at{hip.x, hip.y + dy};
        if (!inside(o, at)) {
            continue;
        }
        const double reach = reachOf(o, at, {static_cast<double>(side), 0.0}, limit);
        if (reach >= limit) {
            continue;
        }
        const base::Vec2 edge{at.x + side * reach, at.y};
        if (!best || side * (edge.x - best->x) > 0) {
            best = edge;
        }
    }
    return best;
}

} // namespace plumbmark::body::detail
