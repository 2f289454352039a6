// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The demo swings held against facts from outside and against their own definitions.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "demo/sound.h"
#include "demo/truth.h"

namespace {

using namespace plumbmark;
using namespace plumbmark::demo;
using marks::MomentId;

struct Swing {
    Spec spec;
    Motion motion;
    std::vector<TrueMoment> moments;
};

Swing swing(const std::string& name, std::uint64_t seed, std::optional<marks::Hand> hand = {}) {
    CaseOptions o;
    o.name = name;
    o.seed = seed;
    o.hand = hand;
    Spec spec = *makeSpec(o);
    Motion motion(spec.body, clubSize(spec.club, spec.body.stature), spec.swing, spec.seed);
    auto moments = trueMoments(spec, motion);
    return {std::move(spec), std::move(motion), std::move(moments)};
}

double timeOf(const Swing& s, MomentId id) {
    for (const auto& m : s.moments) {
        if (m.id == id) {
            return m.time;
        }
    }
    ADD_FAILURE() << "no moment " << marks::momentName(id);
    return 0;
}

double valueOf(const Swing& s, std::string_view id, std::optional<MomentId> at = {}) {
    for (const auto& v : trueMeasurements(s.spec, s.motion, s.moments)) {
        if (v.id == id && v.moment == at) {
            return v.value;
        }
    }
    ADD_FAILURE() << "no measurement " << id;
    return 0;
}

// Drillis & Contini 1966, as drawn in Winter 2009, Fig. 4.1: fractions of stature.
TEST(DemoBody, SegmentsHaveThePublishedShareOfStature) {
    const Body b = adultBody(1.80, false, 1.0);
    EXPECT_NEAR(b.thigh / 1.80, 0.245, 0.005);
    EXPECT_NEAR(b.shank / 1.80, 0.246, 0.005);
    EXPECT_NEAR(b.trunk / 1.80, 0.288, 0.005);
    EXPECT_NEAR(b.forearm / 1.80, 0.146, 0.005);
    EXPECT_NEAR(b.upperArm / 1.80, 0.186, 0.008);
    EXPECT_NEAR(b.footLength / 1.80, 0.152, 0.005);
    EXPECT_NEAR(b.ankleHeight / 1.80, 0.039, 0.002);
    // 0.039 + 0.246 + 0.245 + 0.288 + 0.052 + 0.130 = 1
    EXPECT_NEAR(b.ankleHeight + b.shank + b.thigh + b.trunk + b.neck + b.headHeight, 1.80, 0.01);
}

TEST(DemoBody, SegmentsKeepTheirLengthAllThroughTheSwing) {
    const Swing s = swing("sound", 3);
    const Body& b = s.motion.body();
    for (double t = s.motion.start(); t < s.motion.end(); t += 0.02) {
        const Pose p = s.motion.at(t);
        for (std::size_t i = 0; i < 2; ++i) {
            EXPECT_NEAR(length(p.knee[i] - p.hip[i]), b.thigh, 0.002);
            EXPECT_NEAR(length(p.foot[i].ankle - p.knee[i]), b.shank, 0.004) << t;
            EXPECT_NEAR(length(p.elbow[i] - p.shoulder[i]), b.upperArm, 0.002);
            EXPECT_NEAR(length(p.wrist[i] - p.elbow[i]), b.forearm, 0.006) << t;
        }
    }
}

// Zheng et al. 2008: peak shaft speed of professionals 2413 +- 442 degrees/s.
TEST(DemoSwing, ShaftIsAsFastAsPublished) {
    for (const auto seed : {1u, 2u, 3u, 4u}) {
        EXPECT_NEAR(valueOf(swing("sound", seed), "shaft_peak_speed"), 2413, 2 * 442) << seed;
    }
}

// Grober & Cholewicki 2006: backswing to downswing about 3 (21/7 to 30/10 frames at 30 Hz).
TEST(DemoSwing, TempoOfASoundSwingIsNearThreeToOne) {
    const Swing s = swing("sound", 2);
    EXPECT_GT(valueOf(s, "tempo_ratio"), 2.2);
    EXPECT_LT(valueOf(s, "tempo_ratio"), 4.0);
}

// R&A and USGA Equipment Rules: a ball is not smaller than 42.67 mm; a club (not a putter) between 457 and
// 1219 mm.
TEST(DemoClub, KeepsTheRules) {
    EXPECT_NEAR(2 * kBallRadius, 0.04267, 1e-9);
    for (const char* name : {"driver", "wood-3", "iron-3", "iron-7", "wedge-56"}) {
        const auto club = clubSize(*marks::clubFromName(name), 1.9);
        EXPECT_GT(club.length, 0.457) << name;
        EXPECT_LT(club.length, 1.219) << name;
    }
}

TEST(DemoSwing, MomentsSatisfyTheirDefinitions) {
    const Swing s = swing("sound", 5);
    ASSERT_TRUE(s.motion.solved());
    ASSERT_EQ(s.moments.size(), static_cast<std::size_t>(marks::kMomentCount));
    for (const auto id :
         {MomentId::shaft_level_back, MomentId::shaft_level_down, MomentId::shaft_level_through}) {
        EXPECT_NEAR(s.motion.at(timeOf(s, id)).shaft.z, 0, 1e-6);
    }
    for (const auto id : {MomentId::lead_arm_level_back, MomentId::lead_arm_level_down}) {
        const Pose p = s.motion.at(timeOf(s, id));
        EXPECT_NEAR(p.wrist[0].z, p.shoulder[0].z, 1e-6);
    }
    const Pose hit = s.motion.at(timeOf(s, MomentId::impact));
    EXPECT_NEAR(length(hit.headPoint - s.motion.ball() + V3{kBallRadius, 0, 0}), 0.0, 0.003);
    const Pose rel = s.motion.at(timeOf(s, MomentId::release));
    EXPECT_NEAR(std::atan2(rel.shaft.x, -rel.shaft.z) / kDeg, 45, 1e-3);
    EXPECT_LT(timeOf(s, MomentId::address), timeOf(s, MomentId::shaft_level_back));
    EXPECT_LT(timeOf(s, MomentId::top), timeOf(s, MomentId::lead_arm_level_down));
    EXPECT_LT(timeOf(s, MomentId::lead_arm_level_down), timeOf(s, MomentId::shaft_level_down));
    EXPECT_LT(timeOf(s, MomentId::shaft_level_down), timeOf(s, MomentId::impact));
}

// A pinhole's projection worked out from tangents instead of matrix rows.
TEST(DemoCamera, ProjectsAsAnglesSay) {
    const Camera c = makeCamera({0, 4, 1}, {0, -1, 0}, 10, 0, 1000, 1280, 720);
    const V3 p{0.3, 0.5, 1.7};
    const double away = 3.5, elevation = std::atan2(0.7, away);
    const double depth = std::hypot(away, 0.7) * std::cos(elevation - 10 * kDeg);
    const auto seen = c.project(p);
    EXPECT_NEAR(seen.at.y, 360 - 1000 * std::tan(elevation - 10 * kDeg), 1e-6);
    EXPECT_NEAR(seen.at.x, 640 - 1000 * 0.3 / depth, 1e-6); // facing -y, +x lies to the left
    EXPECT_NEAR(seen.depth, depth, 1e-9);
}

TEST(DemoCamera, ClockwiseRollTurnsThePictureCounterClockwise) {
    const Camera c = makeCamera({0, 4, 1}, {0, -1, 0}, 0, 5, 1000, 1280, 720);
    const auto low = c.project({0, 0, 0.5}).at, high = c.project({0, 0, 1.5}).at;
    EXPECT_LT(high.x, low.x);
    EXPECT_NEAR(std::atan2(low.x - high.x, low.y - high.y) / kDeg, 5, 1e-9);
}

TEST(DemoHand, LeftHanderIsTheMirrorImage) {
    Swing right = swing("sound", 7, marks::Hand::right), left = swing("sound", 7, marks::Hand::left);
    for (Swing* s : {&right, &left}) {
        s->spec.filming.yaw = s->spec.filming.roll = s->spec.filming.aimX = 0;
    }
    const double t = timeOf(right, MomentId::top);
    const Camera a = cameraAt(right.spec, right.motion, 1280, 720, t),
                 b = cameraAt(left.spec, left.motion, 1280, 720, t);
    const auto p = pointsOf(right.spec, right.motion, t), q = pointsOf(left.spec, left.motion, t);
    for (std::size_t i = 0; i < p.size(); ++i) {
        if (!p[i]) {
            continue;
        }
        const auto u = a.project(toWorld(*p[i], marks::Hand::right)).at,
                   v = b.project(toWorld(*q[i], marks::Hand::left)).at;
        EXPECT_NEAR(u.x, 1280 - v.x, 1e-6);
        EXPECT_NEAR(u.y, v.y, 1e-6);
    }
    // A right-hander's lead side is on the picture's right when seen from the front.
    const auto lead = static_cast<std::size_t>(marks::Landmark::lead_ankle),
               trail = static_cast<std::size_t>(marks::Landmark::trail_ankle);
    EXPECT_GT(a.project(toWorld(*p[lead], marks::Hand::right)).at.x,
              a.project(toWorld(*p[trail], marks::Hand::right)).at.x);
}

// 343.21 m/s at 20 degrees Celsius: 2.914 ms per metre (331.3 * sqrt(1 + T / 273.15)).
TEST(DemoSound, HitIsHeardLaterByTheDistance) {
    Swing s = swing("sound", 9);
    s.spec.sound.neighbourHits.clear();
    s.spec.sound.windLevel = 0.0005;
    for (const double metres : {3.0, 8.0}) {
        const auto sound = makeSound(s.spec, 2.0, 1.0, 1.0, metres);
        const auto first =
            std::find_if(sound.begin(), sound.end(), [](float v) { return std::abs(v) > 0.08f; });
        ASSERT_NE(first, sound.end());
        EXPECT_NEAR((static_cast<double>(first - sound.begin()) / kSoundRate - 1.0) * 1000, 2.914 * metres,
                    0.25);
    }
}

// de Leva 1996: standing centre of mass near 0.56 statures; in the bent posture of address it lies lower and
// over the feet.
TEST(DemoBody, CentreOfMassStandsOverTheFeet) {
    const Swing s = swing("sound", 4);
    const Pose p = s.motion.at(timeOf(s, MomentId::address));
    const V3 com = centreOfMass(p, s.motion.body());
    EXPECT_GT(com.y, p.foot[0].heel.y);
    EXPECT_LT(com.y, p.foot[0].toe.y);
    EXPECT_GT(com.x, p.foot[1].ankle.x);
    EXPECT_LT(com.x, p.foot[0].ankle.x);
    EXPECT_GT(com.z, 0.42 * s.spec.body.stature);
    EXPECT_LT(com.z, 0.56 * s.spec.body.stature);
}

TEST(DemoCases, ShowWhatTheirNameSays) {
    const Swing sound = swing("sound", 12);
    EXPECT_LT(valueOf(swing("narrow-drift", 12), "head_to_trail_ankle", MomentId::top),
              valueOf(sound, "head_to_trail_ankle", MomentId::top));
    EXPECT_GT(valueOf(swing("hip-pushed", 12), "lead_hip_offset", MomentId::impact),
              valueOf(sound, "lead_hip_offset", MomentId::impact) + 0.1);
    EXPECT_LT(valueOf(swing("stalled-pelvis", 12), "pelvis_turn", MomentId::impact), 15);
    EXPECT_LT(valueOf(swing("stalled-pelvis", 12), "shaft_lean", MomentId::impact), 0);
    EXPECT_LT(valueOf(swing("stay-back", 12), "com_over_lead_ankle", MomentId::finish),
              valueOf(sound, "com_over_lead_ankle", MomentId::finish) - 0.2);
    EXPECT_LT(valueOf(swing("early-set", 12), "wrist_set_kept_corrected"),
              valueOf(sound, "wrist_set_kept_corrected"));
    EXPECT_LT(valueOf(swing("lost-bend", 1), "forward_bend_change", MomentId::impact), -5);
    const auto practice = swing("practice-bang", 12);
    EXPECT_FALSE(pointsOf(practice.spec, practice.motion, 0)[static_cast<std::size_t>(marks::Landmark::ball)]
                     .has_value());
    EXPECT_GE(practice.spec.sound.bangFromNextBay, 0);
}

TEST(DemoCases, EveryCaseReachesItsBall) {
    for (const auto& info : cases()) {
        EXPECT_TRUE(swing(std::string(info.name), 1).motion.solved()) << info.name;
    }
}

TEST(DemoCases, UnknownNameIsOnePlainSentence) {
    CaseOptions o;
    o.name = "nowhere";
    const auto made = makeSpec(o);
    ASSERT_FALSE(made.ok());
    EXPECT_EQ(made.error().kind, base::ErrorKind::input);
    EXPECT_EQ(made.error().key, "demo.unknown_case");
}

} // namespace
