// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "body/detail/smooth.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace plumbmark::body::detail {
namespace {

/// Solves the 3 x 3 normal equations for x and y at once; the value at u = 0 and its variance factor.
struct Fit {
    base::Vec2 at;
    base::Vec2 slope;
    base::Vec2 bend;
    double factor = 1.0; ///< variance of `at` per unit variance of one sample of weight 1
    bool ok = false;
};

struct Moments {
    std::array<double, 5> s{};
    std::array<double, 3> x{}, y{};
    void add(double u, base::Vec2 p, double w) {
        double power = w;
        for (std::size_t k = 0; k < 5; ++k) {
            s[k] += power;
            if (k < 3) {
                x[k] += power * p.x;
                y[k] += power * p.y;
            }
            power *= u;
        }
    }
};

Fit solve(const Moments& m, int degree) {
    Fit fit;
    if (m.s[0] <= 0) {
        return fit;
    }
    // A little stiffness on slope and bend keeps lopsided neighbourhoods from swinging out.
    const double a = m.s[0];
    const double b = m.s[1];
    const double c = m.s[2] + 1e-9;
    if (degree == 0) {
        fit.at = {m.x[0] / a, m.y[0] / a};
        fit.factor = 1 / a;
        fit.ok = true;
        return fit;
    }
    if (degree == 1) {
        const double d = a * c - b * b;
        if (d <= 1e-9 * a * c) {
            return solve(m, 0);
        }
        fit.at = {(c * m.x[0] - b * m.x[1]) / d, (c * m.y[0] - b * m.y[1]) / d};
        fit.slope = {(a * m.x[1] - b * m.x[0]) / d, (a * m.y[1] - b * m.y[0]) / d};
        fit.factor = c / d;
        fit.ok = true;
        return fit;
    }
    const double e = m.s[3];
    const double f = m.s[4] + 1e-9;
    const double d = a * (c * f - e * e) - b * (b * f - e * c) + c * (b * e - c * c);
    if (d <= 1e-7 * a * c * f) {
        return solve(m, 1);
    }
    const std::array<double, 3> row0{c * f - e * e, e * c - b * f, b * e - c * c};
    const std::array<double, 3> row1{e * c - b * f, a * f - c * c, b * c - a * e};
    const std::array<double, 3> row2{b * e - c * c, b * c - a * e, a * c - b * b};
    const auto dot = [d](const std::array<double, 3>& r, const std::array<double, 3>& v) {
        return (r[0] * v[0] + r[1] * v[1] + r[2] * v[2]) / d;
    };
    fit.at = {dot(row0, m.x), dot(row0, m.y)};
    fit.slope = {dot(row1, m.x), dot(row1, m.y)};
    fit.bend = {dot(row2, m.x), dot(row2, m.y)};
    fit.factor = row0[0] / d;
    fit.ok = true;
    return fit;
}

/// A single sample far off what its four neighbours foretell (cubic through them) is a slip of the network:
/// it is kept, but hardly counts.
std::vector<Sample> withoutSlips(const std::vector<Sample>& samples) {
    std::vector<Sample> out = samples;
    const std::size_t n = samples.size();
    if (n < 7) {
        return out;
    }
    std::vector<double> off(n, 0.0);
    std::vector<double> sorted;
    for (std::size_t i = 2; i + 2 < n; ++i) {
        // Lagrange through the four at their own times.
        base::Vec2 told;
        const std::array<std::size_t, 4> around{i - 2, i - 1, i + 1, i + 2};
        for (const std::size_t a : around) {
            double w = 1.0;
            for (const std::size_t b : around) {
                if (b != a) {
                    w *= (samples[i].time - samples[b].time) / (samples[a].time - samples[b].time);
                }
            }
            told = told + samples[a].at * w;
        }
        off[i] = base::length(samples[i].at - told);
        sorted.push_back(off[i]);
    }
    std::nth_element(sorted.begin(), sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2),
                     sorted.end());
    const double usual = sorted[sorted.size() / 2];
    for (std::size_t i = 2; i + 2 < n; ++i) {
        const double limit = 8 * std::max(usual, 0.5 * samples[i].sigma);
        if (off[i] > limit && off[i] >= off[i - 1] && off[i] >= off[i + 1]) {
            out[i].sigma *= 30;
        }
    }
    return out;
}

} // namespace

std::vector<std::optional<Smoothed>> smooth(const std::vector<Sample>& raw, const std::vector<double>& times,
                                            const SmoothOptions& options) {
    std::vector<std::optional<Smoothed>> out(times.size());
    if (raw.empty()) {
        return out;
    }
    const std::vector<Sample> samples = withoutSlips(raw);
    const auto beforeCut = [&](double t) { return !options.cut || t < *options.cut; };
    std::size_t first = 0;
    std::vector<std::size_t> near;
    std::vector<double> weight;
    for (std::size_t i = 0; i < times.size(); ++i) {
        const double t = times[i];
        if (t < samples.front().time - options.edge || t > samples.back().time + options.edge) {
            continue;
        }
        // The neighbourhood: everything within reach, widened to the nearest four where samples are sparse.
        while (first < samples.size() && samples[first].time < t - 4 * options.largestGap) {
            ++first;
        }
        near.clear();
        for (std::size_t k = first; k < samples.size() && samples[k].time <= t + 4 * options.largestGap;
             ++k) {
            if (beforeCut(samples[k].time) == beforeCut(t)) {
                near.push_back(k);
            }
        }
        if (near.empty()) {
            continue;
        }
        std::sort(near.begin(), near.end(), [&](std::size_t a, std::size_t b) {
            return std::abs(samples[a].time - t) < std::abs(samples[b].time - t);
        });
        const double closest = std::abs(samples[near.front()].time - t);
        if (closest > options.largestGap) {
            continue;
        }
        std::size_t count = near.size();
        while (count > 4 && std::abs(samples[near[count - 1]].time - t) > options.reach) {
            --count;
        }
        near.resize(count);
        const double reach = std::max(options.reach, std::abs(samples[near.back()].time - t)) * 1.05 + 1e-6;
        // A parabola only where samples lie on both sides; a line at the ends of a stretch.
        const bool left =
            std::any_of(near.begin(), near.end(), [&](std::size_t k) { return samples[k].time <= t + 1e-9; });
        const bool right =
            std::any_of(near.begin(), near.end(), [&](std::size_t k) { return samples[k].time >= t - 1e-9; });
        const int degree = count >= 4 && left && right ? 2 : count >= 2 ? 1 : 0;
        weight.assign(count, 0.0);
        for (std::size_t k = 0; k < count; ++k) {
            const double u = std::abs(samples[near[k]].time - t) / reach;
            const double tri = 1 - u * u * u;
            weight[k] = tri * tri * tri / (samples[near[k]].sigma * samples[near[k]].sigma);
        }
        Fit fit;
        double spread = 0.0;
        std::vector<double> robust(count, 1.0);
        for (int round = 0; round < 3; ++round) {
            Moments m;
            for (std::size_t k = 0; k < count; ++k) {
                m.add((samples[near[k]].time - t) / reach, samples[near[k]].at, weight[k] * robust[k]);
            }
            fit = solve(m, degree);
            if (!fit.ok || count < 5) {
                break;
            }
            std::vector<double> off(count);
            for (std::size_t k = 0; k < count; ++k) {
                const double u = (samples[near[k]].time - t) / reach;
                off[k] = base::length(samples[near[k]].at - (fit.at + fit.slope * u + fit.bend * (u * u)));
            }
            std::vector<double> sorted = off;
            std::nth_element(sorted.begin(), sorted.begin() + static_cast<std::ptrdiff_t>(count / 2),
                             sorted.end());
            spread = sorted[count / 2];
            const double limit = 6 * std::max(spread, 0.3 * samples[near.front()].sigma);
            for (std::size_t k = 0; k < count; ++k) {
                const double q = off[k] / limit;
                robust[k] = q < 1 ? (1 - q * q) * (1 - q * q) : 0.0;
            }
        }
        if (fit.ok) {
            out[i] = Smoothed{fit.at, std::sqrt(std::max(0.0, fit.factor) + spread * spread)};
        }
    }
    return out;
}

} // namespace plumbmark::body::detail
