// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "comparison/match.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace plumbmark::comparison {
namespace {

using base::Seconds;
using marks::Landmark;
using marks::MomentId;

constexpr std::array<std::pair<Feature, std::string_view>, 4> kNames{
    {{Feature::hands, "hands"},
     {Feature::shaft, "shaft"},
     {Feature::time_from_impact, "time-from-impact"},
     {Feature::body, "body"}}};

/// Key moments that pin the map whatever the feature. Level moments are left to the feature itself: pinning
/// them would claim that swings with another shaft at the same hands are elsewhere than they are.
constexpr std::array kPins{MomentId::address, MomentId::top, MomentId::impact, MomentId::finish};

struct Sampler {
    const Side& side;
    base::Vec2 feet; ///< mid-ankles at the first instant used, reference picture
    double stature;
    double fullTurns = 0.0; ///< the unwrapped shaft angle counts from an unknown full circle, degrees

    [[nodiscard]] std::optional<base::Vec2> place(Landmark l, Seconds t) const {
        const auto m = marks::markAt(side.track, l, t);
        if (!m) {
            return std::nullopt;
        }
        const auto frame = static_cast<int>(marks::frameAt(side.track, t));
        const base::Vec2 p = side.scene.ground.toReference(frame, m->at) - feet;
        return base::Vec2{base::dot(p, side.scene.vertical.right()) * side.context.sideSign() / stature,
                          base::dot(p, side.scene.vertical.up()) / stature};
    }

    [[nodiscard]] std::optional<std::vector<double>> at(Feature feature, Seconds t) const {
        switch (feature) {
        case Feature::hands: {
            const auto p = place(Landmark::grip, t);
            return p ? std::optional<std::vector<double>>{{p->x, p->y}} : std::nullopt;
        }
        case Feature::body: {
            const auto a = place(Landmark::lead_hip, t), b = place(Landmark::trail_hip, t);
            const auto c = place(Landmark::lead_shoulder, t), d = place(Landmark::trail_shoulder, t);
            const auto e = place(Landmark::head_centre, t);
            if (!a || !b || !c || !d || !e) {
                return std::nullopt;
            }
            return std::vector<double>{(a->x + b->x) / 2, (a->y + b->y) / 2, a->x - b->x, (c->x + d->x) / 2,
                                       (c->y + d->y) / 2, c->x - d->x,       e->x,        e->y};
        }
        case Feature::shaft: {
            const std::size_t i = marks::frameAt(side.track, t);
            if (i >= side.shaft.size() || !side.shaft[i]) {
                return std::nullopt;
            }
            double angle = side.shaft[i]->angleDegrees;
            if (i + 1 < side.shaft.size() && side.shaft[i + 1]) {
                const double k = (t - side.track[i].time) / (side.track[i + 1].time - side.track[i].time);
                angle += k * (side.shaft[i + 1]->angleDegrees - angle);
            }
            // One radian of shaft counts like one stature of hands; only relative size within a path matters.
            const double turned = -(angle + side.scene.vertical.angleDegrees) * side.context.sideSign();
            return std::vector<double>{(turned - fullTurns) / 57.3};
        }
        case Feature::time_from_impact:
            break;
        }
        return std::nullopt;
    }
};

std::optional<Sampler> samplerOf(const Side& side, Seconds start) {
    const auto a = marks::markAt(side.track, Landmark::lead_ankle, start);
    const auto b = marks::markAt(side.track, Landmark::trail_ankle, start);
    if (!a || !b || side.scene.scale.pixelsPerStature <= 0) {
        return std::nullopt;
    }
    const auto frame = static_cast<int>(marks::frameAt(side.track, start));
    Sampler sampler{side, side.scene.ground.toReference(frame, base::midpoint(a->at, b->at)),
                    side.scene.scale.pixelsPerStature};
    if (const auto turned = sampler.at(Feature::shaft, start)) {
        sampler.fullTurns = 360.0 * std::round(turned->front() * 57.3 / 360.0);
    }
    return sampler;
}

struct Path {
    std::vector<Seconds> times;
    std::vector<std::vector<double>> values;
};

/// Samples on an even grid with both ends; short holes are bridged straight, long ones end the attempt.
std::optional<Path> sample(const Sampler& sampler, Feature feature, Seconds from, Seconds to) {
    const double step = 1.0 / 240.0 / std::max(sampler.side.timeScale.realPerShown, 1e-3);
    const int n = std::max(3, static_cast<int>(std::ceil((to - from).value() / step)) + 1);
    Path path;
    std::vector<std::optional<std::vector<double>>> raw(static_cast<std::size_t>(n));
    for (int i = 0; i < n; ++i) {
        path.times.push_back(from + (to - from) * (static_cast<double>(i) / (n - 1)));
        raw[static_cast<std::size_t>(i)] = sampler.at(feature, path.times.back());
    }
    const int longest = std::max(12, n / 5);
    int last = -1;
    for (int i = 0; i < n; ++i) {
        if (!raw[static_cast<std::size_t>(i)]) {
            continue;
        }
        if (i - last - 1 > longest) {
            return std::nullopt;
        }
        for (int k = last + 1; k < i; ++k) {
            auto filled = *raw[static_cast<std::size_t>(i)];
            if (last >= 0) {
                const double u = static_cast<double>(k - last) / (i - last);
                for (std::size_t d = 0; d < filled.size(); ++d) {
                    filled[d] = (1 - u) * (*raw[static_cast<std::size_t>(last)])[d] + u * filled[d];
                }
            }
            raw[static_cast<std::size_t>(k)] = filled;
        }
        last = i;
    }
    if (last < 0 || n - 1 - last > longest) {
        return std::nullopt;
    }
    for (int k = last + 1; k < n; ++k) {
        raw[static_cast<std::size_t>(k)] = raw[static_cast<std::size_t>(last)];
    }
    for (auto& r : raw) {
        path.values.push_back(std::move(*r));
    }
    return path;
}

double squared(const std::vector<double>& a, const std::vector<double>& b) {
    double sum = 0;
    for (std::size_t d = 0; d < a.size(); ++d) {
        sum += (a[d] - b[d]) * (a[d] - b[d]);
    }
    return sum;
}

/// What two cameras and the bias of the marks explain of a difference at a key moment that is put together;
/// more than that is a difference of the swings and stays.
double explained(Feature feature) {
    return feature == Feature::shaft ? 3.0 / 57.3 : feature == Feature::hands ? 0.03 : 0.06;
}

/// Takes the explained part of the difference at both ends out of the second path, spread along it by its own
/// length: another camera's place, direction and height shift the hands by 1-2 % of stature, which would
/// read as tens of milliseconds where they move slowly.
void align(const Path& a, Path& b, Feature feature) {
    std::vector<double> along(b.values.size(), 0.0);
    for (std::size_t j = 1; j < b.values.size(); ++j) {
        along[j] = along[j - 1] + std::sqrt(squared(b.values[j], b.values[j - 1]));
    }
    const auto shift = [&](const std::vector<double>& to, const std::vector<double>& from) {
        const double size = std::sqrt(squared(to, from));
        std::vector<double> d(to.size());
        for (std::size_t k = 0; k < to.size(); ++k) {
            d[k] = (to[k] - from[k]) * (size > explained(feature) ? explained(feature) / size : 1.0);
        }
        return d;
    };
    const auto start = shift(a.values.front(), b.values.front());
    const auto end = shift(a.values.back(), b.values.back());
    for (std::size_t j = 0; j < b.values.size(); ++j) {
        const double u = along.back() > 0 ? along[j] / along.back() : 0.0;
        for (std::size_t k = 0; k < start.size(); ++k) {
            b.values[j][k] += (1 - u) * start[k] + u * end[k];
        }
    }
}

/// Knots of one segment: the warp's path averaged to one partner per sample of the first, refined by the foot
/// of the perpendicular on the second's polyline, kept monotone.
void addKnots(const Path& a, const Path& b, std::vector<Match::Knot>& knots) {
    const int n = static_cast<int>(a.times.size()), m = static_cast<int>(b.times.size());
    double spread = 0;
    for (const auto& v : a.values) {
        spread = std::max(spread, squared(v, a.values.front()));
    }
    const WarpPath warped = warp(a.values, b.values, 0.02 * std::sqrt(spread) + 1e-9);
    std::vector<double> partner(static_cast<std::size_t>(n), 0.0);
    std::vector<int> count(static_cast<std::size_t>(n), 0);
    for (const auto& [i, j] : warped.path) {
        partner[static_cast<std::size_t>(i)] += j;
        ++count[static_cast<std::size_t>(i)];
    }
    for (int i = 0; i < n; ++i) {
        auto& p = partner[static_cast<std::size_t>(i)];
        p /= count[static_cast<std::size_t>(i)];
        if (i == 0 || i == n - 1) {
            p = i == 0 ? 0 : m - 1;
            continue;
        }
        double best = std::numeric_limits<double>::max(), foot = p;
        for (int j = std::max(0, static_cast<int>(p) - 2); j < std::min(m - 1, static_cast<int>(p) + 3);
             ++j) {
            const auto& q0 = b.values[static_cast<std::size_t>(j)];
            const auto& q1 = b.values[static_cast<std::size_t>(j) + 1];
            double along = 0, len = 0;
            for (std::size_t d = 0; d < q0.size(); ++d) {
                along += (a.values[static_cast<std::size_t>(i)][d] - q0[d]) * (q1[d] - q0[d]);
                len += (q1[d] - q0[d]) * (q1[d] - q0[d]);
            }
            if (len < 1e-12) {
                continue; // at rest: the warp's even run stands
            }
            const double u = std::clamp(along / len, 0.0, 1.0);
            double distance = 0;
            for (std::size_t d = 0; d < q0.size(); ++d) {
                const double e = a.values[static_cast<std::size_t>(i)][d] - q0[d] - u * (q1[d] - q0[d]);
                distance += e * e;
            }
            if (distance < best - 1e-15) {
                best = distance, foot = j + u;
            }
        }
        p = foot;
    }
    // A light average over 5 samples, then monotone from both sides: noise must not turn time back.
    std::vector<double> smooth(partner);
    for (int i = 2; i + 2 < n; ++i) {
        const auto k = static_cast<std::size_t>(i);
        smooth[k] = (partner[k - 2] + partner[k - 1] + partner[k] + partner[k + 1] + partner[k + 2]) / 5;
    }
    std::vector<double> up(smooth), down(smooth);
    for (int i = 1; i < n; ++i) {
        up[static_cast<std::size_t>(i)] =
            std::max(up[static_cast<std::size_t>(i)], up[static_cast<std::size_t>(i) - 1]);
    }
    for (int i = n - 2; i >= 0; --i) {
        down[static_cast<std::size_t>(i)] =
            std::min(down[static_cast<std::size_t>(i)], down[static_cast<std::size_t>(i) + 1]);
    }
    for (int i = knots.empty() ? 0 : 1; i < n; ++i) {
        const double j = std::clamp((up[static_cast<std::size_t>(i)] + down[static_cast<std::size_t>(i)]) / 2,
                                    0.0, m - 1.0);
        knots.push_back({a.times[static_cast<std::size_t>(i)],
                         b.times.front() + (b.times.back() - b.times.front()) * (j / (m - 1))});
    }
}

std::optional<Seconds> mapThrough(const std::vector<Match::Knot>& knots, Seconds t,
                                  Seconds Match::Knot::*from, Seconds Match::Knot::*to) {
    if (knots.size() < 2 || t < knots.front().*from || t > knots.back().*from) {
        return std::nullopt;
    }
    const auto after = std::upper_bound(knots.begin(), knots.end(), t,
                                        [from](Seconds v, const Match::Knot& k) { return v < k.*from; });
    if (after == knots.end()) {
        return knots.back().*to;
    }
    const auto before = after - 1;
    const double span = ((*after).*from - (*before).*from).value();
    const double u = span > 0 ? (t - (*before).*from).value() / span : 0.0;
    return (*before).*to + ((*after).*to - (*before).*to) * u;
}

} // namespace

std::string_view featureName(Feature feature) {
    for (const auto& [f, name] : kNames) {
        if (f == feature) {
            return name;
        }
    }
    return {};
}

std::optional<Feature> featureFromName(std::string_view name) {
    for (const auto& [f, n] : kNames) {
        if (n == name) {
            return f;
        }
    }
    return std::nullopt;
}

std::optional<Seconds> Match::inSecond(Seconds first) const {
    return mapThrough(knots_, first, &Knot::first, &Knot::second);
}
std::optional<Seconds> Match::inFirst(Seconds second) const {
    return mapThrough(knots_, second, &Knot::second, &Knot::first);
}

WarpPath warp(const std::vector<std::vector<double>>& a, const std::vector<std::vector<double>>& b,
              double evenness) {
    const std::size_t n = a.size(), m = b.size();
    WarpPath out;
    if (n == 0 || m == 0) {
        return out;
    }
    std::vector<double> total(n * m, std::numeric_limits<double>::max());
    std::vector<unsigned char> from(n * m, 0); // 1: (i-1,j-1), 2: (i-1,j), 3: (i,j-1)
    auto cost = [&](std::size_t i, std::size_t j) {
        double c = std::sqrt(squared(a[i], b[j]));
        if (evenness > 0) {
            const double x = n > 1 ? static_cast<double>(i) / static_cast<double>(n - 1) : 0;
            const double y = m > 1 ? static_cast<double>(j) / static_cast<double>(m - 1) : 0;
            c += evenness * std::abs(x - y);
        }
        return c;
    };
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < m; ++j) {
            double best = i == 0 && j == 0 ? 0.0 : std::numeric_limits<double>::max();
            unsigned char step = 0;
            if (i > 0 && j > 0) {
                best = total[(i - 1) * m + j - 1], step = 1;
            }
            if (i > 0 && total[(i - 1) * m + j] < best) {
                best = total[(i - 1) * m + j], step = 2;
            }
            if (j > 0 && total[i * m + j - 1] < best) {
                best = total[i * m + j - 1], step = 3;
            }
            total[i * m + j] = best + cost(i, j);
            from[i * m + j] = step;
        }
    }
    out.cost = total[n * m - 1];
    std::size_t i = n - 1, j = m - 1;
    for (;;) {
        out.path.emplace_back(static_cast<int>(i), static_cast<int>(j));
        const unsigned char step = from[i * m + j];
        if (step == 0) {
            break;
        }
        i -= step != 3;
        j -= step != 2;
    }
    std::reverse(out.path.begin(), out.path.end());
    return out;
}

base::Result<Match> matchSwings(const Side& first, const Side& second, Feature feature) {
    if (first.context.view != second.context.view) {
        return base::inputError("compare.views",
                                "One swing is filmed face-on and the other down-the-line; compare two "
                                "swings of the same view.");
    }
    if (feature == Feature::time_from_impact) {
        const auto* a = marks::find(first.moments, MomentId::impact);
        const auto* b = marks::find(second.moments, MomentId::impact);
        if (!a || !b || !first.timeScale.known || !second.timeScale.known) {
            return base::inputError("compare.impact",
                                    "Matching by time needs impact and a known capture rate in both "
                                    "swings; match by hands instead.");
        }
        const double rate = first.timeScale.realPerShown / second.timeScale.realPerShown;
        const Seconds early =
            std::max(first.track.front().time - a->time, (second.track.front().time - b->time) / rate);
        const Seconds late =
            std::min(first.track.back().time - a->time, (second.track.back().time - b->time) / rate);
        return Match(feature, {{a->time + early, b->time + early * rate},
                               {a->time, b->time},
                               {a->time + late, b->time + late * rate}});
    }
    std::vector<Match::Knot> pins;
    for (const MomentId id : kPins) {
        const auto* a = marks::find(first.moments, id);
        const auto* b = marks::find(second.moments, id);
        if (a && b) {
            pins.push_back({a->time, b->time});
        }
    }
    if (pins.size() < 2) {
        return base::inputError("compare.moments",
                                "These two swings share too few key moments to be put side by side; "
                                "mark address, top or impact by hand.");
    }
    const auto sa = samplerOf(first, pins.front().first), sb = samplerOf(second, pins.front().second);
    std::vector<Match::Knot> knots;
    for (std::size_t s = 0; sa && sb && s + 1 < pins.size(); ++s) {
        const auto a = sample(*sa, feature, pins[s].first, pins[s + 1].first);
        auto b = sample(*sb, feature, pins[s].second, pins[s + 1].second);
        if (!a || !b) {
            // The club is often hidden after the hit: what could be matched before it still stands.
            break;
        }
        align(*a, *b, feature);
        addKnots(*a, *b, knots);
    }
    if (knots.size() < 2) {
        return base::inputError("compare.feature",
                                std::string("The ") + std::string(featureName(feature)) +
                                    " could not be followed in both swings; match by another feature.");
    }
    return Match(feature, std::move(knots));
}

} // namespace plumbmark::comparison
