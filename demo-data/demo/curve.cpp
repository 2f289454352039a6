// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "demo/curve.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <opencv2/imgproc.hpp>

namespace plumbmark::demo {
namespace {
constexpr double kStep = 0.001;
}

Curve::Curve(std::vector<Key> keys, double start, double end, double sigma) : start_(start) {
    std::stable_sort(keys.begin(), keys.end(), [](const Key& a, const Key& b) { return a.time < b.time; });
    // Keys that fall on (nearly) one instant would make infinite slopes; the later one wins.
    std::vector<Key> kept;
    for (const Key& key : keys) {
        if (!kept.empty() && key.time - kept.back().time < 1e-4) {
            kept.back() = key;
        } else {
            kept.push_back(key);
        }
    }
    const std::size_t n = kept.size();
    std::vector<double> slope(n, 0.0);
    for (std::size_t i = 1; i + 1 < n; ++i) {
        const double h0 = kept[i].time - kept[i - 1].time, h1 = kept[i + 1].time - kept[i].time;
        const double d0 = (kept[i].value - kept[i - 1].value) / h0,
                     d1 = (kept[i + 1].value - kept[i].value) / h1;
        if (d0 * d1 > 0) { // weighted harmonic mean: keeps monotone data monotone (Fritsch & Butland 1984)
            const double w0 = 2 * h1 + h0, w1 = h1 + 2 * h0;
            slope[i] = (w0 + w1) / (w0 / d0 + w1 / d1);
        }
    }
    for (std::size_t i = 0; i < n; ++i) {
        slope[i] = kept[i].slope.value_or(slope[i]);
    }
    const auto count = static_cast<std::size_t>(std::ceil((end - start) / kStep)) + 2;
    std::vector<double> raw(count);
    std::size_t piece = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const double t = start + static_cast<double>(i) * kStep;
        if (n == 0) {
            raw[i] = 0;
        } else if (t <= kept.front().time) {
            raw[i] = kept.front().value;
        } else if (t >= kept.back().time) {
            raw[i] = kept.back().value;
        } else {
            while (piece + 2 < n && t > kept[piece + 1].time) {
                ++piece;
            }
            const double h = kept[piece + 1].time - kept[piece].time, s = (t - kept[piece].time) / h;
            const double s2 = s * s, s3 = s2 * s;
            raw[i] = (2 * s3 - 3 * s2 + 1) * kept[piece].value + (s3 - 2 * s2 + s) * h * slope[piece] +
                     (-2 * s3 + 3 * s2) * kept[piece + 1].value + (s3 - s2) * h * slope[piece + 1];
        }
    }
    const int reach = static_cast<int>(std::ceil(3 * sigma / kStep));
    if (reach < 1) {
        table_ = std::move(raw);
        return;
    }
    table_.resize(count);
    const cv::Mat from(1, static_cast<int>(count), CV_64F, raw.data());
    cv::Mat to(1, static_cast<int>(count), CV_64F, table_.data());
    cv::GaussianBlur(from, to, {2 * reach + 1, 1}, sigma / kStep, 0.0, cv::BORDER_REPLICATE);
}

double Curve::at(double time) const {
    if (table_.empty()) {
        return 0;
    }
    const double f = std::clamp((time - start_) / kStep, 0.0, static_cast<double>(table_.size() - 1));
    const auto last = static_cast<std::ptrdiff_t>(table_.size()) - 1;
    const auto i = std::min(static_cast<std::ptrdiff_t>(f), last - 1);
    const double s = f - static_cast<double>(i);
    const auto v = [&](std::ptrdiff_t k) {
        return table_[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(k, 0, last))];
    };
    const double a = v(i - 1), b = v(i), c = v(i + 1), d = v(i + 2);
    return b + 0.5 * s * (c - a + s * (2 * a - 5 * b + 4 * c - d + s * (3 * (b - c) + d - a)));
}

} // namespace plumbmark::demo
