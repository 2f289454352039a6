// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Pairs of demo swings with known truth: another hand, another camera, another tempo that is uneven inside
// every segment.
#include <gtest/gtest.h>

#ifdef PLUMBMARK_HAS_DEMO

#include <cmath>
#include <numbers>

#include "comparison/match.h"
#include "filmed_demo.h"

using namespace plumbmark;
using comparison::Feature;
using test::FilmedDemo;

namespace {

demo::Spec spec(const std::string& name, std::uint64_t seed, marks::Hand hand) {
    demo::CaseOptions options;
    options.name = name;
    options.seed = seed;
    options.hand = hand;
    options.view = marks::View::faceOn;
    return *demo::makeSpec(options);
}

comparison::Side side(const FilmedDemo& f) {
    return {f.track, f.moments, f.shaft, f.scene, f.context, f.scale};
}

double momentOf(const FilmedDemo& f, marks::MomentId id) {
    for (const auto& m : f.truth) {
        if (m.id == id) {
            return m.time;
        }
    }
    return NAN;
}

/// 30 % slower in all and uneven inside each segment: between key moments the speed runs from 0.5 to 1.5 of
/// its mean and back. motion = slow(clip).
test::Clock slowed(const FilmedDemo& like, double start) {
    const std::vector<double> knots{0.0, momentOf(like, marks::MomentId::top),
                                    momentOf(like, marks::MomentId::impact),
                                    momentOf(like, marks::MomentId::finish)};
    return [=](double clip) {
        double from = start;
        for (std::size_t i = 0; i + 1 < knots.size(); ++i) {
            const double span = knots[i + 1] - knots[i], length = 1.3 * span;
            if (clip < from) {
                return knots[i] + (clip - from);
            }
            if (clip < from + length) {
                const double u = (clip - from) / length;
                return knots[i] +
                       span * (u + 0.5 * std::sin(2 * std::numbers::pi * u) / (2 * std::numbers::pi));
            }
            from += length;
        }
        return knots.back() + (clip - from);
    };
}

} // namespace

TEST(Pairs, TheSamePositionWithinTenMillisecondsThroughUnevenTempoAndTheOtherHand) {
    for (const std::uint64_t seed : {11}) {
        const auto plain = [](double t) { return t - 0.6; };
        const FilmedDemo a = test::filmDemo(spec("sound", seed, marks::Hand::right), 120, 2.8, plain, 1.0, 1);
        auto other = spec("sound", seed, marks::Hand::left);
        other.filming.distance += 0.4; // another camera place and size in the picture
        other.filming.lensHeight -= 0.1;
        const auto clock = slowed(a, 0.7);
        const FilmedDemo b = test::filmDemo(other, 120, 3.6, clock, 1.0, 2);
        for (const Feature feature : {Feature::hands, Feature::shaft}) {
            const auto match = comparison::matchSwings(side(a), side(b), feature);
            ASSERT_TRUE(match.ok()) << match.error().sentence;
            int right = 0, all = 0;
            double worst = 0;
            const double top = momentOf(a, marks::MomentId::top), hit = momentOf(a, marks::MomentId::impact);
            for (double m = 0.12; m < hit; m += 0.004) {
                if (std::abs(m - top) < 0.05) {
                    continue; // hands and club all but rest there: any instant is the same position
                }
                const auto there = match->inSecond(base::Seconds{m + 0.6});
                ASSERT_TRUE(there) << m;
                const double miss = std::abs(clock(there->value()) - m); // as time of the first swing
                ++all;
                right += miss < 0.010;
                worst = std::max(worst, miss);
            }
            EXPECT_GE(right, 0.95 * all) << comparison::featureName(feature) << ", seed " << seed << ": "
                                         << right << " of " << all << ", worst " << worst;
        }
    }
}

TEST(Pairs, ByTimeRealSecondsFromImpactAgreeAcrossFrameRates) {
    const auto plain = [](double t) { return t - 0.6; };
    const FilmedDemo a = test::filmDemo(spec("sound", 3, marks::Hand::right), 120, 2.8, plain, 1.0, 1);
    FilmedDemo b = a;
    // Stored in slow motion: eight shown seconds for each real one.
    for (auto& frame : b.track) {
        frame.time = frame.time * 8;
    }
    for (auto& moment : b.moments) {
        moment.time = moment.time * 8;
    }
    b.scale = {0.125, true, "metadata"};
    const auto match = comparison::matchSwings(side(a), side(b), Feature::time_from_impact);
    ASSERT_TRUE(match.ok());
    for (const double t : {0.9, 1.3, 1.7, 2.1}) {
        EXPECT_NEAR(match->inSecond(base::Seconds{t})->value(), 8 * t, 0.004 * 8);
    }
}

#endif
