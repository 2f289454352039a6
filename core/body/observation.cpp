// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "body/observation.h"

#include <cmath>

namespace plumbmark::body {

base::Vec2 Region::toPicture(base::Vec2 crop) const {
    const double x = (crop.x - 0.5) * size;
    const double y = (crop.y - 0.5) * size;
    const double c = std::cos(turn);
    const double s = std::sin(turn);
    return {centre.x + x * c - y * s, centre.y + x * s + y * c};
}

base::Vec2 Region::toCrop(base::Vec2 picture) const {
    const base::Vec2 d = picture - centre;
    const double c = std::cos(turn);
    const double s = std::sin(turn);
    return {(d.x * c + d.y * s) / size + 0.5, (-d.x * s + d.y * c) / size + 0.5};
}

base::Vec2 Region::up() const {
    return {std::sin(turn), -std::cos(turn)};
}

Silhouette::Silhouette(const float* logOdds) {
    for (int row = 0; row < kRows; ++row) {
        first_[static_cast<std::size_t>(row)] = spans_.size();
        const float* v = logOdds + static_cast<std::ptrdiff_t>(row) * kRows;
        for (int x = 0; x < kRows; ++x) {
            const bool inside = v[x] > 0;
            const bool before = x > 0 && v[x - 1] > 0;
            // Mask pixel x has its centre at x + 0.5; the edge lies between two centres.
            if (inside && !before) {
                spans_.push_back({x == 0 ? 0.0F : static_cast<float>(x) - 0.5F + v[x - 1] / (v[x - 1] - v[x]),
                                  static_cast<float>(kRows)});
            } else if (!inside && before) {
                spans_.back().to = static_cast<float>(x) - 0.5F + v[x - 1] / (v[x - 1] - v[x]);
            }
        }
    }
    first_[kRows] = spans_.size();
}

bool Silhouette::contains(base::Vec2 crop) const {
    const int row = static_cast<int>(std::floor(crop.y * kRows));
    if (row < 0 || row >= kRows || spans_.empty()) {
        return false;
    }
    const auto x = static_cast<float>(crop.x * kRows);
    for (const Span* s = begin(row); s != end(row); ++s) {
        if (x >= s->from && x < s->to) {
            return true;
        }
    }
    return false;
}

} // namespace plumbmark::body
