// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "comparison/swing_set.h"

#include <algorithm>
#include <cmath>

namespace plumbmark::comparison {
namespace {

/// Continued fraction of the incomplete beta function, evaluated by Lentz's method (DLMF 8.17.22).
double betaFraction(double a, double b, double x) {
    constexpr double tiny = 1e-300;
    double c = 1.0, d = 1.0 - (a + b) * x / (a + 1.0);
    d = 1.0 / (std::abs(d) < tiny ? tiny : d);
    double h = d;
    for (int m = 1; m < 300; ++m) {
        const double m2 = 2.0 * m;
        const auto step = [&](double term) {
            d = 1.0 + term * d;
            d = 1.0 / (std::abs(d) < tiny ? tiny : d);
            c = 1.0 + term / c;
            c = std::abs(c) < tiny ? tiny : c;
            h *= d * c;
            return d * c;
        };
        step(m * (b - m) * x / ((a + m2 - 1.0) * (a + m2)));
        if (std::abs(step(-(a + m) * (a + b + m) * x / ((a + m2) * (a + m2 + 1.0))) - 1.0) < 1e-15) {
            break;
        }
    }
    return h;
}

/// Regularised incomplete beta function I_x(a, b).
double incompleteBeta(double a, double b, double x) {
    if (x <= 0.0 || x >= 1.0) {
        return x <= 0.0 ? 0.0 : 1.0;
    }
    const double front =
        std::exp(std::lgamma(a + b) - std::lgamma(a) - std::lgamma(b) + a * std::log(x) + b * std::log1p(-x));
    return x < (a + 1.0) / (a + b + 2.0) ? front * betaFraction(a, b, x) / a
                                         : 1.0 - front * betaFraction(b, a, 1.0 - x) / b;
}

/// P(|T| > t).
double outside(double t, double freedom) {
    return incompleteBeta(freedom / 2.0, 0.5, freedom / (freedom + t * t));
}

double square(double x) {
    return x * x;
}

std::optional<Spread> spreadIn(std::span<const SwingNumbers> swings, const SetRow& row, int method) {
    std::vector<base::Measured> values;
    for (const auto& swing : swings) {
        const auto* m = measure::find(swing, row.id, row.moment);
        if (m != nullptr && m->value && m->method == method && m->value->unit == row.unit) {
            values.push_back(*m->value);
        }
    }
    return spreadOf(values);
}

} // namespace

std::optional<Spread> spreadOf(std::span<const base::Measured> values) {
    if (values.empty()) {
        return std::nullopt;
    }
    std::vector<double> sorted;
    Spread s;
    s.swings = static_cast<int>(values.size());
    for (const auto& v : values) {
        sorted.push_back(v.value);
        s.mean += v.value / s.swings;
        s.measurement += square(v.sigma) / s.swings;
    }
    s.measurement = std::sqrt(s.measurement);
    std::sort(sorted.begin(), sorted.end());
    s.low = sorted.front();
    s.high = sorted.back();
    s.median = (sorted[(sorted.size() - 1) / 2] + sorted[sorted.size() / 2]) / 2.0;
    if (s.swings > 1) {
        for (const double v : sorted) {
            s.betweenSwings += square(v - s.mean) / (s.swings - 1);
        }
        s.betweenSwings = std::sqrt(s.betweenSwings);
    }
    return s;
}

double studentT95(double freedom) {
    const double f = std::max(1.0, freedom);
    double low = 1.0, high = 13.0; // 12.706 at one degree of freedom, 1.960 at infinitely many
    for (int i = 0; i < 45; ++i) {
        const double middle = (low + high) / 2.0;
        (outside(middle, f) > 0.05 ? low : high) = middle;
    }
    return (low + high) / 2.0;
}

std::optional<Change> changeBetween(const Spread& a, const Spread& b) {
    if (a.swings < kFewestSwings || b.swings < kFewestSwings) {
        return std::nullopt;
    }
    const double va = square(a.betweenSwings) / a.swings, vb = square(b.betweenSwings) / b.swings;
    const double all = va + vb + square(a.measurement) + square(b.measurement);
    const double spread = square(va) / (a.swings - 1) + square(vb) / (b.swings - 1);
    Change c;
    c.difference = b.mean - a.mean;
    c.sigma = std::sqrt(all);
    // Swings that agree exactly leave only the measurement's error, which is taken as known.
    c.freedom = spread > 0.0 ? std::min(1e6, square(all) / spread) : 1e6;
    c.critical = studentT95(c.freedom);
    c.beyondDoubt = std::abs(c.difference) > c.critical * c.sigma;
    return c;
}

std::vector<SetRow> compareSets(std::span<const SwingNumbers> first, std::span<const SwingNumbers> second) {
    std::vector<SetRow> rows;
    for (const auto& swing : first) {
        for (const auto& m : swing) {
            if (!m.value || std::any_of(rows.begin(), rows.end(), [&](const SetRow& r) {
                    return r.id == m.id && r.moment == m.moment;
                })) {
                continue;
            }
            SetRow row;
            row.id = m.id;
            row.moment = m.moment;
            row.unit = m.value->unit;
            row.first = spreadIn(first, row, m.method);
            row.second = spreadIn(second, row, m.method);
            if (row.first && row.second) {
                row.change = changeBetween(*row.first, *row.second);
            }
            rows.push_back(std::move(row));
        }
    }
    return rows;
}

} // namespace plumbmark::comparison
