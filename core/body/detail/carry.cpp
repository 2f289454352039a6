// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "body/detail/carry.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace plumbmark::body::detail {
namespace {

constexpr std::size_t kBand = 5; ///< unknowns of three neighbouring looks, of which the last has one only

/// Symmetric positive definite band matrix with its right side; row i holds the columns i - 4 .. i.
struct Normal {
    std::vector<std::array<double, kBand>> row;
    std::vector<double> right;

    explicit Normal(std::size_t n) : row(n), right(n, 0.0) {
        for (auto& r : row) {
            r.fill(0.0);
        }
    }
    /// One equation sum(factor x) = value, weighted.
    struct Term {
        std::size_t which;
        double factor;
    };
    void add(std::span<const Term> terms, double value, double weight) {
        for (const Term& a : terms) {
            right[a.which] += weight * a.factor * value;
            for (const Term& b : terms) {
                if (b.which <= a.which && a.which - b.which < kBand) { // terms reach no farther
                    row[a.which][kBand - 1 - (a.which - b.which)] += weight * a.factor * b.factor;
                }
            }
        }
    }
    /// Cholesky in place, then both substitutions.
    [[nodiscard]] std::vector<double> solve() {
        const std::size_t n = row.size();
        const auto at = [this](std::size_t i, std::size_t j) -> double& {
            return row[i][kBand - 1 - (i - j)];
        };
        std::vector<double> x(right);
        for (std::size_t i = 0; i < n; ++i) {
            const std::size_t first = i < kBand ? 0 : i - kBand + 1;
            for (std::size_t j = first; j <= i; ++j) {
                double sum = at(i, j);
                for (std::size_t k = first; k < j; ++k) {
                    if (j - k < kBand) {
                        sum -= at(i, k) * at(j, k);
                    }
                }
                at(i, j) = i == j ? std::sqrt(std::max(sum, 1e-12)) : sum / at(j, j);
            }
            for (std::size_t k = first; k < i; ++k) {
                x[i] -= at(i, k) * x[k];
            }
            x[i] /= at(i, i);
        }
        for (std::size_t i = n; i-- > 0;) {
            for (std::size_t k = i + 1; k < std::min(n, i + kBand); ++k) {
                x[i] -= at(k, i) * x[k];
            }
            x[i] /= at(i, i);
        }
        return x;
    }
};

} // namespace

std::vector<double> carryMiddle(const std::vector<TwoTold>& looks, const CarrySettings& settings) {
    using Term = Normal::Term;
    const std::size_t n = looks.size();
    if (n == 0) {
        return {};
    }
    constexpr double shortest = 1e-3; // seconds between two looks
    constexpr double freedom = 4.0;
    // Counted from the middle of all, so that the numbers stay small.
    double origin = 0.0;
    for (const TwoTold& look : looks) {
        origin += look.network / static_cast<double>(n);
    }
    std::vector<double> trustNetwork(n, 1.0), trustOutline(n, 1.0), middle(n, 0.0);
    for (int round = 0; round < 4; ++round) {
        Normal normal(2 * n);
        for (std::size_t i = 0; i < n; ++i) {
            const TwoTold& look = looks[i];
            const std::size_t x = 2 * i, b = x + 1;
            normal.add(std::array{Term{x, 1.0}, Term{b, 1.0}}, look.network - origin,
                       trustNetwork[i] / (settings.grain * settings.grain));
            if (look.outline) {
                normal.add(std::array{Term{x, 1.0}}, look.outline->at - origin,
                           trustOutline[i] / (look.outline->sigma * look.outline->sigma));
            }
            // The bias returns to nought within `lasting` (an Ornstein-Uhlenbeck course, cut to the looks).
            const double perSecond = 1.0 / (2.0 * settings.lasting * look.bias * look.bias);
            const double before = i > 0 ? std::max(shortest, look.time - looks[i - 1].time) : 0.0;
            const double after = i + 1 < n ? std::max(shortest, looks[i + 1].time - look.time) : 0.0;
            normal.add(std::array{Term{b, 1.0}}, 0.0, perSecond * std::max(shortest, (before + after) / 2.0));
            if (i > 0) {
                normal.add(std::array{Term{b, 1.0}, Term{b - 2, -1.0}}, 0.0,
                           settings.lasting / (2.0 * look.bias * look.bias * before));
            }
            if (i > 0 && i + 1 < n) {
                normal.add(std::array{Term{x + 2, 1.0 / after}, Term{x, -1.0 / after - 1.0 / before},
                                      Term{x - 2, 1.0 / before}},
                           0.0, 1.0 / (settings.jerk * (before + after) / 2.0));
            }
        }
        const std::vector<double> solved = normal.solve();
        for (std::size_t i = 0; i < n; ++i) {
            middle[i] = solved[2 * i];
            const auto trust = [](double off, double sigma) {
                return (freedom + 1.0) / (freedom + off * off / (sigma * sigma));
            };
            trustNetwork[i] =
                trust(looks[i].network - origin - solved[2 * i] - solved[2 * i + 1], settings.grain);
            if (const auto& o = looks[i].outline) {
                trustOutline[i] = trust(o->at - origin - solved[2 * i], o->sigma);
            }
        }
    }
    for (double& x : middle) {
        x += origin;
    }
    return middle;
}

} // namespace plumbmark::body::detail
