// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include "body/detail/smooth.h"
#include "body/track.h"

using namespace plumbmark;
using namespace plumbmark::body;
using base::Seconds;
using base::Vec2;
using marks::Landmark;

namespace {

constexpr double kWidth = 1000;

void set(Observation& o, Point p, double x, double y) {
    PosePoint& q = o.points[static_cast<std::size_t>(p)];
    q.direct = q.peak = {x, y};
    q.spread = 3;
    q.visibility = 0.95;
}

/// A right-hander face-on, unmirrored: target to the picture's right, the player's left side there. Hands at
/// `hands`; everything else still. No silhouette.
Observation golfer(int frame, double seconds, Vec2 hands) {
    Observation o;
    o.frame = frame;
    o.time = Seconds{seconds};
    o.presence = 1;
    o.region = {{500, 500}, 800, 0};
    o.box = {300, 150, 400, 700};
    for (std::size_t i = 0; i < kPointCount; ++i) {
        set(o, static_cast<Point>(i), 500, 200); // face
    }
    set(o, Point::left_ear, 515, 198);
    set(o, Point::right_ear, 485, 198);
    const auto both = [&](Point left, Point right, double half, double y) {
        set(o, left, 500 + half, y);
        set(o, right, 500 - half, y);
    };
    both(Point::left_shoulder, Point::right_shoulder, 70, 280);
    both(Point::left_elbow, Point::right_elbow, 75, 370);
    both(Point::left_hip, Point::right_hip, 40, 480);
    both(Point::left_knee, Point::right_knee, 55, 620);
    both(Point::left_ankle, Point::right_ankle, 80, 760);
    both(Point::left_heel, Point::right_heel, 82, 775);
    both(Point::left_toe, Point::right_toe, 95, 790);
    for (const Point p : {Point::left_wrist, Point::left_index, Point::left_pinky, Point::left_thumb}) {
        set(o, p, hands.x + 4, hands.y - 6);
    }
    for (const Point p : {Point::right_wrist, Point::right_index, Point::right_pinky, Point::right_thumb}) {
        set(o, p, hands.x - 4, hands.y + 6);
    }
    return o;
}

/// As in a mirror: picture and the network's sides both change over.
Observation mirrored(Observation o) {
    for (PosePoint& p : o.points) {
        p.direct.x = kWidth - p.direct.x;
        p.peak.x = kWidth - p.peak.x;
    }
    for (std::size_t i = 1; i < kPointCount; ++i) {
        const auto swapWith = [&](Point left, Point right) {
            std::swap(o.points[static_cast<std::size_t>(left)], o.points[static_cast<std::size_t>(right)]);
        };
        if (i == static_cast<std::size_t>(Point::left_ear)) {
            swapWith(Point::left_ear, Point::right_ear);
        }
        if (i >= static_cast<std::size_t>(Point::left_shoulder) && i % 2 == 1) {
            swapWith(static_cast<Point>(i), static_cast<Point>(i + 1));
        }
    }
    return o;
}

/// Hands: still for 0.6 s, 0.8 s round and up, 0.25 s down, on up.
Vec2 handsAt(double t) {
    constexpr double pi = std::numbers::pi;
    double angle = 0; // 0 = hanging down, + = away from the target
    if (t > 0.6 && t <= 1.4) {
        angle = 0.7 * pi * 0.5 * (1 - std::cos(pi * (t - 0.6) / 0.8));
    } else if (t > 1.4) {
        angle = 0.7 * pi * std::cos(pi * std::min(1.0, (t - 1.4) / 0.5));
    }
    return {500 - 190 * std::sin(angle), 290 + 190 * std::cos(angle)};
}

std::vector<Observation> swing(bool mirror) {
    std::vector<Observation> all;
    for (int i = 0; i <= 60; ++i) {
        const double t = i * 8 / 240.0;
        Observation o = golfer(i * 8, t, handsAt(t));
        all.push_back(mirror ? mirrored(o) : o);
    }
    return all;
}

std::vector<Seconds> frameTimes(int frames = 481) {
    std::vector<Seconds> times;
    for (int i = 0; i < frames; ++i) {
        times.emplace_back(i / 240.0);
    }
    return times;
}

marks::ShotContext context(marks::Hand hand, bool mirror) {
    marks::ShotContext c;
    c.hand = hand;
    c.mirrored = mirror;
    return c;
}

TEST(Sides, LeadIsNearerTheTargetForEitherHandAndInAMirror) {
    for (const auto hand : {marks::Hand::right, marks::Hand::left}) {
        for (const bool mirror : {false, true}) {
            const auto c = context(hand, mirror);
            const auto made = autoTrack(swing(c.sideSign() < 0), frameTimes(), c);
            for (const std::size_t frame : {std::size_t{0}, std::size_t{200}, std::size_t{400}}) {
                const auto& f = made.track[frame];
                EXPECT_GT(c.sideSign() *
                              (f[Landmark::lead_shoulder]->at.x - f[Landmark::trail_shoulder]->at.x),
                          0.0);
                for (const auto& [lead, trail, half] :
                     {std::tuple{Landmark::lead_ankle, Landmark::trail_ankle, 80.0},
                      std::tuple{Landmark::lead_shoulder, Landmark::trail_shoulder, 70.0},
                      std::tuple{Landmark::lead_hip, Landmark::trail_hip, 40.0}}) {
                    if (lead == Landmark::lead_shoulder && frame > 0) {
                        continue; // they turn with the arms
                    }
                    ASSERT_TRUE(f[lead] && f[trail]);
                    EXPECT_NEAR(f[lead]->at.x, 500 + c.sideSign() * half, 1);
                    EXPECT_NEAR(f[trail]->at.x, 500 - c.sideSign() * half, 1);
                }
            }
        }
    }
}

TEST(Sides, AFewSwappedObservationsAreRepairedByContinuity) {
    auto seen = swing(false);
    for (const std::size_t i : {10U, 11U, 30U, 31U, 32U, 33U, 50U}) {
        for (int p = static_cast<int>(Point::left_shoulder); p < static_cast<int>(kPointCount); p += 2) {
            std::swap(seen[i].points[static_cast<std::size_t>(p)],
                      seen[i].points[static_cast<std::size_t>(p + 1)]);
        }
    }
    const auto made = autoTrack(seen, frameTimes(), context(marks::Hand::right, false));
    for (const auto& f : made.track) {
        EXPECT_NEAR(f[Landmark::lead_knee]->at.x, 555, 1) << f.time.value();
        // The shoulders turn with the arms, so only at rest they are where the looks have them.
        EXPECT_GT(f[Landmark::lead_shoulder]->at.x, f[Landmark::trail_shoulder]->at.x) << f.time.value();
        if (f.time.value() < 0.6) {
            EXPECT_NEAR(f[Landmark::lead_shoulder]->at.x, 570, 1) << f.time.value();
        }
    }
}

// Both hands hold one club: a hand that the network sees elsewhere for a while is put back beside the other,
// whichever it is, and is told as less sure there.
TEST(Hands, AHandThatTheNetworkLosesIsHeldByTheOther) {
    for (const bool lead : {true, false}) {
        auto seen = swing(false);
        for (std::size_t i = 32; i < 37; ++i) { // going back, arm about level
            for (const Point p :
                 {Point::left_wrist, Point::left_index, Point::left_pinky, Point::left_thumb}) {
                const auto k = static_cast<std::size_t>(p) + (lead ? 0 : 1); // right follows left in the list
                seen[i].points[k].direct = seen[i].points[k].peak = {620, 420};
            }
        }
        const auto made = autoTrack(seen, frameTimes(), context(marks::Hand::right, false));
        const Landmark lost = lead ? Landmark::lead_wrist : Landmark::trail_wrist;
        const Landmark kept = lead ? Landmark::trail_wrist : Landmark::lead_wrist;
        for (std::size_t f = 8 * 32; f <= 8 * 36; ++f) {
            const Vec2 hands = handsAt(static_cast<double>(f) / 240.0);
            EXPECT_LT(base::length(made.track[f][lost]->at - hands), 20) << lead << f;
            EXPECT_LT(base::length(made.track[f][Landmark::grip]->at - hands), 20) << lead << f;
            EXPECT_GT(made.track[f][lost]->sigma, made.track[f][kept]->sigma) << lead << f;
        }
    }
}

// With the arms up the chest has turned about 90 degrees away (common practice, no source), so the shoulders
// stand nearly over each other; a network that keeps them apart there is not followed, and at address, where
// nothing is hidden, it is.
TEST(Shoulders, TurnWithTheArmsWhereTheyHideEachOther) {
    const auto made = autoTrack(swing(false), frameTimes(), context(marks::Hand::right, false));
    const auto span = [&](std::size_t frame) {
        return made.track[frame][Landmark::lead_shoulder]->at -
               made.track[frame][Landmark::trail_shoulder]->at;
    };
    EXPECT_NEAR(span(60).x, 140, 2);
    const Vec2 top = span(336);
    EXPECT_LT(std::abs(top.x), 70);
    // Turned 90 about a trunk bent 33 toward the camera the lead shoulder stands 140 sin 33 = 76 px lower.
    EXPECT_NEAR(top.y, 76, 15);
    const Vec2 middle = base::midpoint(made.track[336][Landmark::lead_shoulder]->at,
                                       made.track[336][Landmark::trail_shoulder]->at);
    EXPECT_NEAR(middle.x, 500, 2);
}

TEST(Sides, SwappedLooksWithPulledInDirectAnswersAreNotMixedTogether) {
    // Unsure looks pull the direct answers of both sides together while the heat's peaks stay right.
    auto seen = swing(false);
    for (std::size_t i = 0; i < seen.size(); ++i) {
        for (auto& p : seen[i].points) {
            p.direct.x = 500 + 0.4 * (p.peak.x - 500);
        }
        if (i % 3 == 1) {
            for (int p = static_cast<int>(Point::left_shoulder); p < static_cast<int>(kPointCount); p += 2) {
                std::swap(seen[i].points[static_cast<std::size_t>(p)],
                          seen[i].points[static_cast<std::size_t>(p + 1)]);
            }
        }
    }
    const auto made = autoTrack(seen, frameTimes(), context(marks::Hand::right, false));
    for (const auto& f : made.track) {
        EXPECT_NEAR(f[Landmark::lead_ankle]->at.x, 580, 2) << f.time.value();
        EXPECT_NEAR(f[Landmark::trail_ankle]->at.x, 420, 2) << f.time.value();
    }
}

TEST(Track, CoversEveryFrameWithHonestOrigins) {
    const auto made = autoTrack(swing(false), frameTimes(), context(marks::Hand::right, false));
    ASSERT_EQ(made.track.size(), 481U);
    for (std::size_t i = 0; i < made.track.size(); ++i) {
        const auto& mark = made.track[i][Landmark::lead_hip];
        ASSERT_TRUE(mark);
        EXPECT_EQ(mark->origin, i % 8 == 0 ? base::Origin::network : base::Origin::interpolated);
        EXPECT_GT(mark->sigma, 0);
    }
    EXPECT_FALSE(made.track[0][Landmark::ball]);
    EXPECT_FALSE(made.track[0][Landmark::sternum]) << "facing marks come from the hand only";
    ASSERT_TRUE(made.still);
    EXPECT_LT(made.still->value(), 0.65);
}

TEST(Track, HandsFollowTheSwingBetweenTheLooks) {
    const auto made = autoTrack(swing(false), frameTimes(), context(marks::Hand::right, false));
    for (std::size_t i = 0; i < 330; ++i) { // back and down; the made swing's hands jump nowhere
        const Vec2 truth = handsAt(static_cast<double>(i) / 240.0);
        EXPECT_LT(base::length(made.track[i][Landmark::grip]->at - truth), 12) << i;
    }
}

TEST(Track, ALongGapIsLeftEmptyNotInvented) {
    auto seen = swing(false);
    seen.erase(seen.begin() + 20, seen.begin() + 45);
    const auto made = autoTrack(seen, frameTimes(), context(marks::Hand::right, false));
    EXPECT_FALSE(made.track[32 * 8][Landmark::lead_hip]);
    EXPECT_TRUE(made.track[10 * 8][Landmark::lead_hip]);
    EXPECT_TRUE(made.track[50 * 8][Landmark::lead_hip]);
}

TEST(Sides, AMirrorImageThatNobodyToldOfIsNoticed) {
    const auto times = frameTimes();
    const auto warned = [&](bool mirror, marks::Hand hand, bool told) {
        marks::ShotContext context;
        context.hand = hand;
        context.mirrored = told;
        const auto seen = swing(mirror);
        const auto made = autoTrack(seen, times, context);
        return std::any_of(made.warnings.begin(), made.warnings.end(),
                           [](const std::string& w) { return w.find("mirror image") != std::string::npos; });
    };
    EXPECT_FALSE(warned(false, marks::Hand::right, false));
    EXPECT_TRUE(warned(true, marks::Hand::right, false));
    EXPECT_FALSE(warned(true, marks::Hand::right, true)) << "it was told";
    EXPECT_FALSE(warned(true, marks::Hand::left, false)) << "a left-hander looks like that";
    EXPECT_TRUE(warned(false, marks::Hand::left, false));
}

TEST(Track, NobodySeenGivesEmptyMarksAndAPlainWarning) {
    const auto made = autoTrack({}, frameTimes(), {});
    EXPECT_EQ(made.track.size(), 481U);
    EXPECT_EQ(made.warnings.size(), 1U);
    EXPECT_FALSE(made.stature);
}

// Source: a parabola is reproduced exactly by local quadratic regression (Cleveland 1979); noise of one sigma
// shrinks.
TEST(Smooth, KeepsParabolasAndThrowsOutliersAway) {
    std::vector<detail::Sample> samples;
    std::vector<double> times;
    const auto path = [](double t) { return Vec2{100 + 50 * t - 30 * t * t, 3 * t * t}; };
    for (int i = 0; i < 40; ++i) {
        const double t = i * 0.03;
        samples.push_back({t, path(t), 2.0});
        times.push_back(t + 0.011);
    }
    times.pop_back();
    for (const auto& s : detail::smooth(samples, times, {})) {
        ASSERT_TRUE(s);
    }
    const auto exact = detail::smooth(samples, times, {});
    for (std::size_t i = 2; i + 3 < times.size(); ++i) {
        EXPECT_NEAR(exact[i]->at.x, path(times[i]).x, 1e-3);
        EXPECT_NEAR(exact[i]->at.y, path(times[i]).y, 1e-3);
    }
    samples[20].at.x += 300;
    detail::SmoothOptions wide;
    wide.reach = 0.15;
    const auto robust = detail::smooth(samples, times, wide);
    for (std::size_t i = 4; i + 5 < times.size(); ++i) {
        EXPECT_NEAR(robust[i]->at.x, path(times[i]).x, 3) << i;
    }
}

TEST(Smooth, NeverReachesAcrossTheCut) {
    std::vector<detail::Sample> samples;
    std::vector<double> times;
    for (int i = 0; i < 40; ++i) {
        samples.push_back({i * 0.01, {i < 20 ? 0.0 : 100.0, 0}, 1.0});
        times.push_back(i * 0.01);
    }
    detail::SmoothOptions options;
    options.cut = 0.195;
    const auto s = detail::smooth(samples, times, options);
    for (std::size_t i = 0; i < times.size(); ++i) {
        EXPECT_NEAR(s[i]->at.x, i < 20 ? 0 : 100, 1e-6);
    }
}

class HandMarks : public ::testing::Test {
  protected:
    marks::Track automatic = autoTrack(swing(false), frameTimes(), context(marks::Hand::right, false)).track;
    Vec2 was(std::size_t frame, Landmark l) const { return automatic[frame][l]->at; }
};

TEST_F(HandMarks, AreFactsAndMoveTheirNeighboursInTime) {
    const Vec2 to = was(240, Landmark::lead_shoulder) + Vec2{30, 0};
    const auto track = applyHandMarks(automatic, {{240, Landmark::lead_shoulder, to, 2.0}});
    EXPECT_EQ(track[240][Landmark::lead_shoulder]->at, to);
    EXPECT_EQ(track[240][Landmark::lead_shoulder]->origin, base::Origin::hand);
    EXPECT_EQ(track[240][Landmark::lead_shoulder]->sigma, 2.0);
    const auto moved = [&](std::size_t i) {
        return track[i][Landmark::lead_shoulder]->at.x - was(i, Landmark::lead_shoulder).x;
    };
    EXPECT_GT(moved(250), 25) << "a neighbour 0.04 s away follows almost wholly";
    EXPECT_GT(moved(230), 25);
    EXPECT_LT(moved(250), 30);
    for (std::size_t i = 241; i < 400; ++i) {
        EXPECT_LE(moved(i), moved(i - 1) + 1e-9) << "and less with distance";
    }
    EXPECT_NEAR(moved(400), 0, 0.1);
    EXPECT_NE(track[250][Landmark::lead_shoulder]->origin, base::Origin::hand);
    EXPECT_LT(track[241][Landmark::lead_shoulder]->sigma, automatic[241][Landmark::lead_shoulder]->sigma);
    for (std::size_t l = 0; l < marks::kLandmarkCount; ++l) {
        if (static_cast<Landmark>(l) != Landmark::lead_shoulder && automatic[240].points[l]) {
            EXPECT_EQ(track[240].points[l]->at, automatic[240].points[l]->at) << "nothing else moves";
        }
    }
}

TEST_F(HandMarks, BetweenTwoTheCorrectionIsCarriedStraight) {
    const auto track = applyHandMarks(
        automatic, {{200, Landmark::lead_knee, was(200, Landmark::lead_knee) + Vec2{10, 0}, 2},
                    {240, Landmark::lead_knee, was(240, Landmark::lead_knee) + Vec2{20, 0}, 2}});
    EXPECT_NEAR(track[220][Landmark::lead_knee]->at.x - was(220, Landmark::lead_knee).x, 15, 1e-6);
    EXPECT_NEAR(track[200][Landmark::lead_knee]->at.x - was(200, Landmark::lead_knee).x, 10, 1e-9);
}

TEST_F(HandMarks, InSlowMotionTheFadeIsInRealTime) {
    // The same frames played eight times slower: 0.04 s real is now 0.32 s shown.
    marks::Track slow = automatic;
    for (auto& f : slow) {
        f.time = f.time * 8.0;
    }
    const marks::HandMarks mark{{240, Landmark::lead_knee, was(240, Landmark::lead_knee) + Vec2{30, 0}, 2}};
    const auto fast = applyHandMarks(automatic, mark);
    const auto stretched = applyHandMarks(slow, mark, Timing{0.125, std::nullopt});
    for (std::size_t i = 0; i < fast.size(); ++i) {
        EXPECT_NEAR(fast[i][Landmark::lead_knee]->at.x, stretched[i][Landmark::lead_knee]->at.x, 1e-6);
    }
}

TEST_F(HandMarks, NotVisibleTakesThePointAwayNearby) {
    const auto track = applyHandMarks(automatic, {{240, Landmark::trail_wrist, std::nullopt, 2}});
    EXPECT_FALSE(track[240][Landmark::trail_wrist]);
    EXPECT_FALSE(track[246][Landmark::trail_wrist]);
    EXPECT_TRUE(track[260][Landmark::trail_wrist]);
    const auto both = applyHandMarks(automatic, {{240, Landmark::trail_wrist, std::nullopt, 2},
                                                 {244, Landmark::trail_wrist, Vec2{1, 2}, 2}});
    EXPECT_FALSE(both[241][Landmark::trail_wrist]);
    EXPECT_TRUE(both[243][Landmark::trail_wrist]) << "half way to the frame that tells otherwise";
}

TEST_F(HandMarks, WithoutAnythingAutomaticMarksAreJoinedAndHeldBriefly) {
    marks::Track empty(481);
    for (std::size_t i = 0; i < empty.size(); ++i) {
        empty[i].time = Seconds{static_cast<double>(i) / 240.0};
    }
    const auto track = applyHandMarks(
        empty, {{100, Landmark::sternum, Vec2{10, 10}, 2}, {140, Landmark::sternum, Vec2{50, 10}, 2}});
    EXPECT_NEAR(track[120][Landmark::sternum]->at.x, 30, 1e-9);
    EXPECT_GT(track[120][Landmark::sternum]->sigma, track[101][Landmark::sternum]->sigma);
    EXPECT_EQ(track[120][Landmark::sternum]->origin, base::Origin::interpolated);
    EXPECT_TRUE(track[99][Landmark::sternum]);
    EXPECT_FALSE(track[60][Landmark::sternum]);
    const auto ball = applyHandMarks(empty, {{100, Landmark::ball, Vec2{5, 6}, 1}});
    EXPECT_EQ(ball[400][Landmark::ball]->at, (Vec2{5, 6})) << "what lies still is told by one mark";
}

TEST_F(HandMarks, FramesOutsideTheClipAreIgnoredAndTheLastWordCounts) {
    const auto track = applyHandMarks(automatic, {{-1, Landmark::nose, Vec2{1, 1}, 2},
                                                  {9999, Landmark::nose, Vec2{1, 1}, 2},
                                                  {50, Landmark::nose, Vec2{1, 1}, 2},
                                                  {50, Landmark::nose, Vec2{480, 210}, 2}});
    EXPECT_EQ(track[50][Landmark::nose]->at, (Vec2{480, 210}));
}

} // namespace
