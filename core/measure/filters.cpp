// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/filters.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace plumbmark::measure {

Biquad butterworth(double cutoffHz, double sampleHz, int passes) {
    if (!(cutoffHz > 0.0) || !(cutoffHz < sampleHz / 2.0)) {
        return {};
    }
    const double correction = std::pow(std::pow(2.0, 1.0 / std::max(1, passes)) - 1.0, 0.25);
    const double w = std::tan(std::numbers::pi * cutoffHz / sampleHz) / correction;
    const double k1 = std::numbers::sqrt2 * w;
    const double k2 = w * w;
    const double norm = 1.0 + k1 + k2;
    const double b0 = k2 / norm;
    return {b0, 2.0 * b0, b0, 2.0 * (k2 - 1.0) / norm, (1.0 - k1 + k2) / norm};
}

std::vector<double> zeroLagButterworth(std::span<const double> series, double cutoffHz, double sampleHz) {
    std::vector<double> out(series.begin(), series.end());
    const auto n = static_cast<std::ptrdiff_t>(series.size());
    if (n < 3 || !(cutoffHz > 0.0) || !(cutoffHz < sampleHz / 2.0)) {
        return out;
    }
    const Biquad f = butterworth(cutoffHz, sampleHz, 2);
    // Long enough for the start-up to die out, as far as the series reaches.
    const auto pad = std::min(n - 1, static_cast<std::ptrdiff_t>(std::ceil(3.0 * sampleHz / cutoffHz)));
    std::vector<double> x;
    x.reserve(static_cast<std::size_t>(n + 2 * pad));
    for (auto i = pad; i >= 1; --i) {
        x.push_back(2.0 * series.front() - series[static_cast<std::size_t>(i)]);
    }
    x.insert(x.end(), series.begin(), series.end());
    for (std::ptrdiff_t i = 1; i <= pad; ++i) {
        x.push_back(2.0 * series.back() - series[static_cast<std::size_t>(n - 1 - i)]);
    }
    const auto run = [&f](std::vector<double>& v) {
        // Starts as if the line through the first two samples had always gone on: its steady answer lags by
        // the filter's delay, so neither a constant nor a slope rings.
        const double slope = v[1] - v[0];
        const double sum = 1.0 + f.a1 + f.a2;
        const double delay = (f.b1 + 2.0 * f.b2) / (f.b0 + f.b1 + f.b2) - (f.a1 + 2.0 * f.a2) / sum;
        double x1 = v[0] - slope, x2 = v[0] - 2.0 * slope;
        double y1 = x1 - slope * delay, y2 = x2 - slope * delay;
        for (double& value : v) {
            const double y = f.b0 * value + f.b1 * x1 + f.b2 * x2 - f.a1 * y1 - f.a2 * y2;
            x2 = x1;
            x1 = value;
            y2 = y1;
            y1 = y;
            value = y;
        }
    };
    run(x);
    std::reverse(x.begin(), x.end());
    run(x);
    std::reverse(x.begin(), x.end());
    std::copy_n(x.begin() + pad, n, out.begin());
    return out;
}

std::vector<double> savitzkyGolayWeights(int half, int degree, int derivative, double spacing, int at) {
    const int window = 2 * half + 1;
    if (half < 1 || degree < 0 || degree >= window || derivative < 0 || derivative > degree ||
        !(spacing > 0.0)) {
        return {};
    }
    // Discrete orthogonal (Gram) polynomials by their three-term recurrence: exact enough for any window
    // here.
    const auto size = static_cast<std::size_t>(degree) + 1;
    const auto count = static_cast<std::size_t>(window);
    const auto orders = static_cast<std::size_t>(derivative) + 1;
    // value[d][k][i]: d-th derivative of polynomial k at sample i; point[d][k]: the same at `at`.
    std::vector<std::vector<double>> poly(size, std::vector<double>(count));
    std::vector<std::vector<double>> point(orders, std::vector<double>(size, 0.0));
    std::vector<double> norm(size);
    for (std::size_t k = 0; k < size; ++k) {
        double beta = 0.0;
        if (k == 0) {
            std::fill(poly[0].begin(), poly[0].end(), 1.0);
            point[0][0] = 1.0;
        } else {
            beta = k >= 2 ? norm[k - 1] / norm[k - 2] : 0.0;
            for (std::size_t i = 0; i < count; ++i) {
                const double x = static_cast<double>(i) - half;
                poly[k][i] = x * poly[k - 1][i] - (k >= 2 ? beta * poly[k - 2][i] : 0.0);
            }
            for (std::size_t d = 0; d < orders; ++d) {
                point[d][k] = at * point[d][k - 1] +
                              (d > 0 ? static_cast<double>(d) * point[d - 1][k - 1] : 0.0) -
                              (k >= 2 ? beta * point[d][k - 2] : 0.0);
            }
        }
        norm[k] = 0.0;
        for (const double v : poly[k]) {
            norm[k] += v * v;
        }
    }
    std::vector<double> weights(count, 0.0);
    const double scale = std::pow(spacing, -derivative);
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t k = 0; k < size; ++k) {
            weights[i] += poly[k][i] * point[orders - 1][k] / norm[k];
        }
        weights[i] *= scale;
    }
    return weights;
}

std::vector<double> savitzkyGolay(std::span<const double> series, int half, int degree, int derivative,
                                  double spacing) {
    const auto n = static_cast<int>(series.size());
    const int window = 2 * half + 1;
    const auto middle = savitzkyGolayWeights(half, degree, derivative, spacing);
    if (n < window || middle.empty()) {
        return derivative == 0 ? std::vector<double>(series.begin(), series.end())
                               : std::vector<double>(series.size());
    }
    std::vector<double> out(series.size());
    for (int i = 0; i < n; ++i) {
        const int centre = std::clamp(i, half, n - 1 - half);
        const auto w =
            centre == i ? middle : savitzkyGolayWeights(half, degree, derivative, spacing, i - centre);
        double sum = 0.0;
        for (int k = 0; k < window; ++k) {
            sum += w[static_cast<std::size_t>(k)] * series[static_cast<std::size_t>(centre - half + k)];
        }
        out[static_cast<std::size_t>(i)] = sum;
    }
    return out;
}

} // namespace plumbmark::measure
