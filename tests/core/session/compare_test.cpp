// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#ifdef PLUMBMARK_HAS_DEMO

#include <cmath>

#include "../comparison/filmed_demo.h"
#include "session/swing_comparison.h"

using namespace plumbmark;
using comparison::Feature;

namespace {

analysis::Outcome outcomeOf(demo::Spec spec, unsigned seed, double start = 0.6) {
    auto f = test::filmDemo(
        spec, 120, 2.6, [=](double t) { return t - start; }, 0.7, seed);
    analysis::Outcome o;
    o.context = f.context;
    o.timeScale = {1.0, true, "metadata"};
    o.scene = f.scene;
    o.track = std::move(f.track);
    o.moments = std::move(f.moments);
    o.shaft = std::move(f.shaft);
    o.ball = f.ball;
    o.measurements =
        measure::measureAll({o.track, o.moments, o.shaft, o.ball, o.scene, o.context, o.timeScale, o.hit});
    return o;
}

demo::Spec spec(marks::Hand hand = marks::Hand::right) {
    demo::CaseOptions options;
    options.seed = 3;
    options.hand = hand;
    demo::Spec s = *demo::makeSpec(options);
    s.filming.roll = 0;
    return s;
}

double trueLean(const demo::Spec& s) {
    const demo::Motion motion(s.body, demo::clubSize(s.club, s.body.stature), s.swing, s.seed);
    for (const auto& v : demo::trueMeasurements(s, motion, demo::trueMoments(s, motion))) {
        if (v.id == "shaft_lean" && v.moment == marks::MomentId::impact) {
            return v.value;
        }
    }
    return NAN;
}

const comparison::Difference* row(const session::SwingComparison& c, std::string_view id, marks::MomentId m) {
    for (const auto& d : c.rows()) {
        if (d.id == id && d.moment == m) {
            return &d;
        }
    }
    return nullptr;
}

} // namespace

TEST(SwingComparison, ASwingWithItselfShowsNoDifference) {
    const auto o = outcomeOf(spec(), 1);
    for (const Feature feature : {Feature::hands, Feature::shaft, Feature::body, Feature::time_from_impact}) {
        const auto c = session::SwingComparison::make(o, o, feature);
        ASSERT_TRUE(c.ok()) << c.error().sentence;
        EXPECT_GT(c->rows().size(), 20U);
        for (const auto& d : c->rows()) {
            EXPECT_FALSE(d.beyondDoubt) << d.id;
            EXPECT_NEAR(d.difference, 0.0, 0.05 * d.sigma + 1e-6) << d.id;
            EXPECT_FALSE(comparison::isMatchedQuantity(d.id, feature)) << d.id;
        }
        for (const auto& m : c->moments()) {
            if (m.matched) {
                EXPECT_NEAR(m.matched->value(), m.first.value(), 1e-6);
            }
        }
    }
}

// A right-hander and a left-hander whose club leans 10 degrees differently at the ball, by the demo's own
// exact motion: matched by hands, the difference is told within its own sigma.
TEST(SwingComparison, TenDegreesOfLeanAreRecoveredBetweenARightAndALeftHander) {
    demo::Spec a = spec(), b = spec(marks::Hand::left);
    a.swing.leanImpact = 8;
    b.swing.leanImpact = -2;
    const double truth = trueLean(a) - trueLean(b);
    ASSERT_NEAR(truth, 10.0, 0.5) << "the demo does what it was told";
    const auto c = session::SwingComparison::make(outcomeOf(a, 1), outcomeOf(b, 2, 0.75), Feature::hands);
    ASSERT_TRUE(c.ok()) << c.error().sentence;
    const auto* lean = row(*c, "shaft_lean", marks::MomentId::impact);
    ASSERT_NE(lean, nullptr);
    EXPECT_NEAR(lean->difference, truth, lean->sigma);
    EXPECT_EQ(row(*c, "takeaway_width", marks::MomentId::lead_arm_level_back), nullptr)
        << "the hands themselves are never compared when they were matched";
}

TEST(SwingComparison, AnEmptyClipIsAnsweredWithASentence) {
    const auto c = session::SwingComparison::make({}, {}, Feature::hands);
    ASSERT_FALSE(c.ok());
    EXPECT_EQ(c.error().key, "compare.moments");
}

#endif
