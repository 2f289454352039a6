// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>
#include <complex>
#include <numbers>

#include "measure/filters.h"

using namespace plumbmark::measure;

namespace {
double gain(const Biquad& f, double hz, double rate) {
    const std::complex<double> z = std::polar(1.0, -2.0 * std::numbers::pi * hz / rate);
    return std::abs((f.b0 + f.b1 * z + f.b2 * z * z) / (1.0 + f.a1 * z + f.a2 * z * z));
}
} // namespace

// Coefficients: standard published sets, and Winter, Biomechanics and Motor Control of Human Movement, 4th
// ed. 2009, 3.4.4.2 (correction on the tangent; section number from memory), recomputed to eight digits.
TEST(Butterworth, MatchesPublishedCoefficients) {
    struct Row {
        double fc, fs;
        int passes;
        double b0, a1, a2;
    };
    for (const Row& r : {Row{6, 60, 1, 0.06745527, -1.14298050, 0.41280160},
                         Row{6, 120, 1, 0.02008337, -1.56101808, 0.64135154},
                         Row{6, 30, 1, 0.20657208, -0.36952738, 0.19581571},
                         Row{6, 60, 2, 0.09448918, -0.96237529, 0.34033201},
                         Row{6, 240, 2, 0.00838538, -1.72476878, 0.75831031},
                         Row{10, 240, 2, 0.02140179, -1.54563576, 0.63124292},
                         Row{6, 30, 2, 0.26457865, -0.11562253, 0.17393712}}) {
        // The printed rows for two passes round the correction to 0.802: the same filter at the cutoff whose
        // tangent is that much larger.
        const double pi = std::numbers::pi;
        const double fc = r.passes == 1 ? r.fc : r.fs / pi * std::atan(std::tan(pi * r.fc / r.fs) / 0.802);
        const auto f = butterworth(fc, r.fs);
        EXPECT_NEAR(f.b0, r.b0, 1e-8);
        EXPECT_NEAR(f.b1, 2 * r.b0, 2e-8);
        EXPECT_NEAR(f.a1, r.a1, 1e-8);
        EXPECT_NEAR(f.a2, r.a2, 1e-8);
        EXPECT_NEAR(gain(f, 0.0, r.fs), 1.0, 1e-12);
    }
    // The exact correction is (sqrt(2) - 1)^(1/4) = 0.8022432629.
    const double exact = std::tan(std::numbers::pi * 0.1) / std::pow(std::numbers::sqrt2 - 1, 0.25);
    const auto twice = butterworth(6, 60, 2),
               once = butterworth(60 / std::numbers::pi * std::atan(exact), 60);
    EXPECT_NEAR(twice.b0, once.b0, 1e-12);
    EXPECT_NEAR(twice.b0, 0.09448918, 5e-5);
    EXPECT_NEAR(gain(butterworth(6, 60), 6, 60), std::numbers::sqrt2 / 2, 1e-9);
    EXPECT_NEAR(std::pow(gain(butterworth(6, 30, 2), 6, 30), 2), std::numbers::sqrt2 / 2, 1e-9);
}

TEST(Butterworth, ForwardAndBackLeavesLinesAndSymmetryAlone) {
    std::vector<double> line, pulse(101, 0.0);
    for (int i = 0; i < 40; ++i) {
        line.push_back(3.0 + 0.7 * i);
    }
    const auto same = zeroLagButterworth(line, 6, 60);
    for (std::size_t i = 0; i < line.size(); ++i) {
        EXPECT_NEAR(same[i], line[i], 1e-9);
    }
    pulse[50] = 1.0;
    const auto out = zeroLagButterworth(pulse, 6, 60);
    for (std::size_t i = 1; i < 40; ++i) {
        EXPECT_NEAR(out[50 - i], out[50 + i], 1e-12);
    }
    EXPECT_LT(out[50], 0.5) << "a filter that does nothing would keep the spike";
}

// Savitzky & Golay 1964, Anal Chem 36:1627 (misprints corrected after Steinier et al. 1972): exact rationals.
TEST(SavitzkyGolay, MatchesThePublishedTables) {
    struct Row {
        int half, degree, derivative;
        double divisor;
        std::vector<double> weights;
    };
    for (const Row& r :
         {Row{2, 2, 0, 35, {-3, 12, 17, 12, -3}}, Row{2, 3, 0, 35, {-3, 12, 17, 12, -3}},
          Row{3, 2, 0, 21, {-2, 3, 6, 7, 6, 3, -2}},
          Row{4, 3, 0, 231, {-21, 14, 39, 54, 59, 54, 39, 14, -21}},
          Row{3, 4, 0, 231, {5, -30, 75, 131, 75, -30, 5}}, Row{2, 2, 1, 10, {-2, -1, 0, 1, 2}},
          Row{3, 1, 1, 28, {-3, -2, -1, 0, 1, 2, 3}}, Row{2, 4, 1, 12, {1, -8, 0, 8, -1}},
          Row{3, 3, 1, 252, {22, -67, -58, 0, 58, 67, -22}}, Row{2, 3, 2, 7, {2, -1, -2, -1, 2}},
          Row{3, 2, 2, 42, {5, 0, -3, -4, -3, 0, 5}},
          Row{4, 2, 2, 462, {28, 7, -8, -17, -20, -17, -8, 7, 28}}}) {
        const auto w = savitzkyGolayWeights(r.half, r.degree, r.derivative);
        ASSERT_EQ(w.size(), r.weights.size());
        for (std::size_t i = 0; i < w.size(); ++i) {
            EXPECT_NEAR(w[i], r.weights[i] / r.divisor, 1e-12)
                << r.half << " " << r.degree << " " << r.derivative;
        }
    }
}

TEST(SavitzkyGolay, KeepsACubicToTheEnds) {
    std::vector<double> cubic;
    for (int i = 0; i < 15; ++i) {
        const double t = 0.1 * i;
        cubic.push_back(1 - t + 2 * t * t - 0.5 * t * t * t);
    }
    const auto same = savitzkyGolay(cubic, 3, 3, 0, 0.1);
    const auto slope = savitzkyGolay(cubic, 3, 3, 1, 0.1);
    for (std::size_t i = 0; i < cubic.size(); ++i) {
        const double t = 0.1 * static_cast<double>(i);
        EXPECT_NEAR(same[i], cubic[i], 1e-10);
        EXPECT_NEAR(slope[i], -1 + 4 * t - 1.5 * t * t, 1e-9);
    }
}
