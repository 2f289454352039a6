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

std::optional<Midline> trunkMidline(const Observation& o, base::Vec2 low, base::Vec2 high) {
    const double length = base::length(high - low);
    if (length < 8) {
        return std::nullopt;
    }
    const base::Vec2 axis = (high - low) / length;
    const base::Vec2 across{-axis.y, axis.x}; // to the right of low -> high on the screen
    std::vector<double> level;
    std::vector<double> middle;
    std::vector<double> wide;
    std::vector<double> right;
    std::vector<double> left;
    for (int i = 0; i <= 14; ++i) {
        const double f = 0.10 + 0.05 * i; // below: the legs' fork; above: the shoulders' slope and the arms
        const base::Vec2 at = low + axis * (f * length);
        if (const auto s = stretchAt(o, at, across, length)) {
            level.push_back(f);
            middle.push_back((s->from + s->to) / 2);
            wide.push_back(s->to - s->from);
            right.push_back(s->to);
            left.push_back(s->from);
        }
    }
    if (level.size() < 5) {
        return std::nullopt;
    }
    Midline line;
    line.width = median(wide);
    // An arm away from the body widens a stretch on one side only: leave such levels out.
    std::vector<double> x;
    std::vector<double> y;
    std::vector<double> r;
    std::vector<double> l;
    for (std::size_t i = 0; i < level.size(); ++i) {
        if (wide[i] < 1.35 * line.width && wide[i] > 0.7 * line.width) {
            x.push_back(level[i]);
            y.push_back(middle[i]);
            r.push_back(right[i]);
            l.push_back(left[i]);
        }
    }
    if (x.size() < 5) {
        return std::nullopt;
    }
    const Line fit = theilSen(x, y);
    std::vector<double> off;
    for (std::size_t i = 0; i < x.size(); ++i) {
        off.push_back(std::abs(y[i] - fit.at(x[i])));
    }
    line.scatter = median(off);
    line.levels = static_cast<int>(x.size());
    line.lowOff = fit.at(0);
    line.highOff = fit.at(1);
    line.low = low + across * line.lowOff;
    line.high = high + across * line.highOff;
    const Line rightFit = theilSen(x, r);
    const Line leftFit = theilSen(x, l);
    line.rightLow = rightFit.at(0);
    line.rightHigh = rightFit.at(1);
    line.leftLow = leftFit.at(0);
    line.leftHigh = leftFit.at(1);
    return line;
}

std::optional<HeadOutline> headOutline(const Observation& o, base::Vec2 centre, base::Vec2 up,
                                       double stature) {
    // The head is 0.130 statures from chin to crown (published-segment figure of Drillis and Contini, 1966),
    // so its half height is 0.065; an arm or the club behind the head can lengthen a reach: refuse those.
    const double limit = 0.20 * stature;
    if (!inside(o, centre)) {
        return std::nullopt;
    }
    const double crown = reachOf(o, centre, up, limit);
    const base::Vec2 across{-up.y, up.x};
    const auto side = [&](double sign) {
        // The widest of three heights, each a little above the centre, clear of the shoulders.
        double best = 0.0;
        for (const double f : {0.0, 0.25, 0.5}) {
            const base::Vec2 from = centre + up * (f * crown);
            if (inside(o, from)) {
                best = std::max(best, reachOf(o, from, across * sign, limit));
            }
        }
        return best;
    };
    const double right = side(1);
    const double left = side(-1);
    if (crown > 0.13 * stature || crown < 0.03 * stature || right > 0.13 * stature || left > 0.13 * stature ||
        right < 0.02 * stature || left < 0.02 * stature) {
        return std::nullopt;
    }
    return HeadOutline{centre + up * crown, centre - across * left, centre + across * right};
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
