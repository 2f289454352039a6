// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

namespace plumbmark::swing::detail {

/// A sampled signal: times rising, values, one-sigma per sample. Only told samples are in it.
struct Series {
    std::vector<double> t, v, s;
    void add(double time, double value, double sigma) {
        t.push_back(time), v.push_back(value), s.push_back(sigma);
    }
    [[nodiscard]] bool empty() const { return t.empty(); }
    [[nodiscard]] std::size_t size() const { return t.size(); }
};

/// Weighted least-squares parabola around `centre`, v = a + b (t - centre) + c (t - centre)^2, over samples
/// within `half` of it. Falls back to a line under 5 samples; nothing under 2 or when all lie on one side
/// further than `half / 2`. `sigma` is of `a`, the larger of propagated and residual.
struct LocalFit {
    double a = 0, b = 0, c = 0, sigma = 0;
    int samples = 0;
};
[[nodiscard]] std::optional<LocalFit> fitAt(const Series& series, double centre, double half);

struct Crossing {
    double t = 0, sigma = 0;
};
/// First (or, with `last`, last) passage of `level` inside [from, to] in the given direction (+1 rising,
/// -1 falling), between told samples at most `maxGap` apart, refined by a parabola of half width `half`.
[[nodiscard]] std::optional<Crossing> crossing(const Series& series, double level, int direction, double from,
                                               double to, double half, double maxGap, bool last = false);

/// Greatest value inside [from, to], refined by a parabola of half width `half`.
[[nodiscard]] std::optional<Crossing> peak(const Series& series, double from, double to, double half);

/// Samples of `series` on a regular grid by local parabolas (value and slope), for walks over it.
struct Grid {
    double start = 0, step = 0;
    std::vector<std::optional<LocalFit>> at;
    [[nodiscard]] double time(std::size_t i) const { return start + step * static_cast<double>(i); }
};
[[nodiscard]] Grid gridOf(const Series& series, double step, double half);

} // namespace plumbmark::swing::detail
