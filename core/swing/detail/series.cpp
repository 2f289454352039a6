// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "swing/detail/series.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace plumbmark::swing::detail {

std::optional<LocalFit> fitAt(const Series& series, double centre, double half) {
    const auto lo = std::lower_bound(series.t.begin(), series.t.end(), centre - half) - series.t.begin();
    const auto hi = std::upper_bound(series.t.begin(), series.t.end(), centre + half) - series.t.begin();
    const auto n = hi - lo;
    if (n < 2) {
        return std::nullopt;
    }
    if (series.t[static_cast<std::size_t>(lo)] > centre + half / 2 ||
        series.t[static_cast<std::size_t>(hi - 1)] < centre - half / 2) {
        return std::nullopt;
    }
    const int order = n >= 5 ? 3 : 2;
    // Normal equations of a small polynomial; x is scaled by `half`, so they are well conditioned.
    std::array<std::array<double, 4>, 3> m{};
    double meanVariance = 0.0;
    for (auto i = lo; i < hi; ++i) {
        const auto k = static_cast<std::size_t>(i);
        const double x = (series.t[k] - centre) / half;
        const double s = std::max(series.s[k], 1e-6);
        const double taper = 1.0 - 0.75 * x * x; // nearer samples count more
        const double w = taper / (s * s);
        const std::array<double, 3> p{1.0, x, x * x};
        for (int r = 0; r < order; ++r) {
            for (int c = 0; c < order; ++c) {
                m[r][c] += w * p[r] * p[c];
            }
            m[r][3] += w * p[r] * series.v[k];
        }
        meanVariance += s * s / static_cast<double>(n);
    }
    std::array<std::array<double, 6>, 3> a{};
    for (int r = 0; r < order; ++r) {
        for (int c = 0; c < order; ++c) {
            a[r][c] = m[r][c];
        }
        a[r][3 + r] = 1.0;
    }
    for (int col = 0; col < order; ++col) { // Gauss-Jordan with row pivots
        int pivot = col;
        for (int r = col + 1; r < order; ++r) {
            if (std::abs(a[r][col]) > std::abs(a[pivot][col])) {
                pivot = r;
            }
        }
        if (std::abs(a[pivot][col]) < 1e-12) {
            return std::nullopt;
        }
        std::swap(a[pivot], a[col]);
        const double d = a[col][col];
        for (double& x : a[col]) {
            x /= d;
        }
        for (int r = 0; r < order; ++r) {
            if (r != col) {
                const double f = a[r][col];
                for (int c = 0; c < 6; ++c) {
                    a[r][c] -= f * a[col][c];
                }
            }
        }
    }
    std::array<double, 3> x{};
    for (int r = 0; r < order; ++r) {
        for (int c = 0; c < order; ++c) {
            x[r] += a[r][3 + c] * m[c][3];
        }
    }
    double residual = 0.0;
    for (auto i = lo; i < hi; ++i) {
        const auto k = static_cast<std::size_t>(i);
        const double u = (series.t[k] - centre) / half;
        const double e = series.v[k] - (x[0] + x[1] * u + x[2] * u * u);
        residual += e * e;
    }
    const double dof = std::max<double>(1.0, static_cast<double>(n - order));
    const double propagated = std::sqrt(std::max(a[0][3], 0.0));
    // Residuals larger than the told sigmas mean the sigmas were too good: scale up, never down.
    const double scale = n > order ? std::sqrt(residual / dof / std::max(meanVariance, 1e-12)) : 1.0;
    return LocalFit{x[0], x[1] / half, x[2] / (half * half), propagated * std::max(1.0, scale),
                    static_cast<int>(n)};
}

std::optional<Crossing> crossing(const Series& series, double level, int direction, double from, double to,
                                 double half, double maxGap, bool last) {
    std::optional<Crossing> found;
    for (std::size_t i = 1; i < series.size(); ++i) {
        const double t0 = series.t[i - 1], t1 = series.t[i];
        if (t1 < from || t0 > to || t1 - t0 > maxGap) {
            continue;
        }
        const double a = (series.v[i - 1] - level) * direction, b = (series.v[i] - level) * direction;
        if (a >= 0.0 || b < 0.0) {
            continue;
        }
        double t = t0 + (t1 - t0) * (-a) / (b - a);
        double sigma = std::max(series.s[i - 1], series.s[i]) / std::max(std::abs(b - a) / (t1 - t0), 1e-9);
        // Newton on the local parabola; two rounds are plenty for a monotone passage.
        for (int round = 0; round < 3; ++round) {
            const auto fit = fitAt(series, t, std::max(half, 1.01 * (t1 - t0)));
            if (!fit || fit->b * direction <= 0.0) {
                break;
            }
            const double move = std::clamp((level - fit->a) / fit->b, -half, half);
            t += move;
            sigma = fit->sigma / std::abs(fit->b);
            if (std::abs(move) < 1e-6) {
                break;
            }
        }
        if (t < from || t > to) {
            continue;
        }
        found = Crossing{t, sigma};
        if (!last) {
            return found;
        }
    }
    return found;
}

std::optional<Crossing> peak(const Series& series, double from, double to, double half) {
    std::size_t best = series.size();
    for (std::size_t i = 0; i < series.size(); ++i) {
        if (series.t[i] >= from && series.t[i] <= to &&
            (best == series.size() || series.v[i] > series.v[best])) {
            best = i;
        }
    }
    if (best == series.size()) {
        return std::nullopt;
    }
    double t = series.t[best];
    double sigma = half;
    for (int round = 0; round < 3; ++round) {
        const auto fit = fitAt(series, t, half);
        if (!fit || fit->c >= 0.0) {
            break;
        }
        const double move = std::clamp(-fit->b / (2.0 * fit->c), -half, half);
        t += move;
        // Slope noise over curvature; the slope of a window of n samples is known to about sigma * sqrt(3) /
        // half.
        sigma = fit->sigma * 1.7 / half / (2.0 * std::abs(fit->c));
        if (std::abs(move) < 1e-5) {
            break;
        }
    }
    return Crossing{std::clamp(t, from, to), sigma};
}

Grid gridOf(const Series& series, double step, double half) {
    Grid grid;
    if (series.size() < 2) {
        return grid;
    }
    grid.start = series.t.front();
    grid.step = step;
    const auto n = static_cast<std::size_t>((series.t.back() - series.t.front()) / step) + 1;
    grid.at.resize(n);
    for (std::size_t i = 0; i < n; ++i) {
        grid.at[i] = fitAt(series, grid.time(i), half);
    }
    return grid;
}

} // namespace plumbmark::swing::detail
