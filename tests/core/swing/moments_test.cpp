// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <random>
#include <vector>

#include "made_swing.h"
#include "swing/moments.h"

using namespace plumbmark;
using marks::MomentId;

using test::film;
using test::Made;

namespace {

double errorOf(const swing::Found& found, MomentId id, double truth) {
    const auto* m = marks::find(found.moments, id);
    return m ? m->time.value() - truth : std::nan("");
}

} // namespace

// The bars are the trade's needs (mean absolute error), not what happens to pass.
TEST(Moments, AreFoundWhereAMadeSwingHasThem) {
    for (const double fps : {120.0, 240.0}) {
        std::map<MomentId, std::vector<double>> errors;
        for (unsigned seed = 1; seed <= 24; ++seed) {
            Made made;
            made.start = 0.8 + 0.013 * seed;
            const auto found = film(made, fps, 3.2, 0.8, seed, seed % 2 ? 1 : -1).find();
            const double o = 0.35 / fps;
            auto note = [&](MomentId id, double truth) {
                errors[id].push_back(std::abs(errorOf(found, id, truth - o)));
            };
            note(MomentId::shaft_level_back, made.when(90, made.start, made.top()));
            note(MomentId::top, made.top());
            note(MomentId::shaft_level_down, made.when(90, made.top(), made.hit()));
            note(MomentId::impact, made.hit());
            note(MomentId::release, made.when(-45, made.hit(), made.hit() + 0.2));
            note(MomentId::shaft_level_through, made.when(-90, made.hit(), made.hit() + 0.2));
            note(MomentId::address, made.start);
            note(MomentId::pelvis_starts_forward, made.top() - 0.08);
        }
        for (const auto& [id, wanted] :
             {std::pair{MomentId::shaft_level_back, 0.008}, std::pair{MomentId::top, 0.012},
              std::pair{MomentId::shaft_level_down, 0.008}, std::pair{MomentId::impact, 0.6 / fps},
              std::pair{MomentId::release, 0.008}, std::pair{MomentId::shaft_level_through, 0.008},
              std::pair{MomentId::address, 0.040}, std::pair{MomentId::pelvis_starts_forward, 0.025}}) {
            const auto& e = errors[id];
            ASSERT_EQ(e.size(), 24u);
            const double mean = std::accumulate(e.begin(), e.end(), 0.0) / static_cast<double>(e.size());
            EXPECT_LE(mean, wanted) << marks::momentName(id) << " at " << fps << " frames/s"; // NaN fails too
        }
    }
}

TEST(Moments, SixtyEightPercentIntervalsHold) {
    int held = 0, told = 0;
    for (unsigned seed = 1; seed <= 60; ++seed) {
        Made made;
        made.start = 0.8 + 0.0037 * seed;
        const auto scene = film(made, 120, 3.0, 1.0, seed);
        const auto found = scene.find();
        const double o = 0.35 / 120;
        for (const auto& [id, truth] :
             {std::pair{MomentId::shaft_level_back, made.when(90, made.start, made.top())},
              std::pair{MomentId::shaft_level_down, made.when(90, made.top(), made.hit())},
              std::pair{MomentId::impact, made.hit()}, std::pair{MomentId::top, made.top()}}) {
            if (const auto* m = marks::find(found.moments, id)) {
                ++told;
                held += std::abs(m->time.value() - (truth - o)) < m->sigma.value();
            }
        }
    }
    EXPECT_GE(told, 230);
    EXPECT_GE(held, 0.60 * told) << held << " of " << told;
}

TEST(Moments, ImpactIsNeverClaimedWithoutABall) {
    Made made;
    auto scene = film(made, 120, 3.0, 0.8, 1);
    scene.ball.reset();
    scene.hits = {
        {base::Seconds{made.hit() + 0.013}, 40.0}}; // a bang from the next bay at just the right time
    EXPECT_FALSE(marks::find(scene.find().moments, MomentId::impact));
    scene = film(made, 120, 3.0, 0.8, 1);
    scene.ball->firstGone.reset(); // the ball stays: missed, or a practice swing beside it
    EXPECT_FALSE(marks::find(scene.find().moments, MomentId::impact));
}

TEST(Moments, TheSwingThatSentTheBallIsTheOneEvenAfterAFasterPracticeSwing) {
    for (const bool shaftSeen : {true, false}) {
        Made practice, real;
        practice.hitSpeed = 2300.0;
        real.hitSpeed = 1700.0;
        const auto first = film(practice, 120, 4.0, 0.8, 1);
        auto scene = film(real, 120, 4.0, 0.8, 2); // the ball goes at its hit, 4 seconds later
        for (auto& frame : scene.track) {
            frame.time = frame.time + base::Seconds{4.0};
        }
        for (auto& sample : scene.shaft) {
            sample->time = sample->time + base::Seconds{4.0};
        }
        scene.ball->lastSeen = *scene.ball->lastSeen + base::Seconds{4.0};
        scene.ball->firstGone = *scene.ball->firstGone + base::Seconds{4.0};
        scene.track.insert(scene.track.begin(), first.track.begin(), first.track.end());
        scene.shaft.insert(scene.shaft.begin(), first.shaft.begin(), first.shaft.end());
        if (!shaftSeen) {
            for (auto& sample : scene.shaft) {
                sample.reset();
            }
        }
        const auto found = scene.find();
        ASSERT_TRUE(marks::find(found.moments, MomentId::impact)) << shaftSeen;
        EXPECT_NEAR(marks::find(found.moments, MomentId::impact)->time.value(), 4.0 + real.hit(), 0.01);
        ASSERT_TRUE(marks::find(found.moments, MomentId::top));
        EXPECT_NEAR(marks::find(found.moments, MomentId::top)->time.value(), 4.0 + real.top(), 0.1);
    }
}

TEST(Moments, ANeighboursHitNeverMovesImpact) {
    Made made;
    const auto quiet = film(made, 60, 3.0, 0.8, 3);
    auto loud = quiet;
    loud.hits = {{base::Seconds{made.hit() - 0.120}, 60.0}, {base::Seconds{made.hit() + 0.300}, 50.0}};
    EXPECT_EQ(marks::find(quiet.find().moments, MomentId::impact)->time,
              marks::find(loud.find().moments, MomentId::impact)->time);
}

TEST(Moments, ABallLostFromSightBeforeTheClubComesIsNotTheHit) {
    Made made;
    auto scene = film(made, 120, 3.0, 0.8, 3);
    const double offset = 0.35 / 120, truth = made.hit() - offset;
    scene.context.cameraDistanceMetres = 4.0;
    scene.ball->lastSeen = base::Seconds{truth - 0.060};
    scene.ball->firstGone = base::Seconds{truth - 0.052};
    // Club against ball and nothing else: nobody knows.
    EXPECT_FALSE(marks::find(scene.find().moments, MomentId::impact));
    // A sound that fits the club decides; one that fits the ball, for the ball.
    scene.hits = {{base::Seconds{truth + 4.0 / 343.2}, 40.0}};
    const auto withClub = scene.find();
    const auto* impact = marks::find(withClub.moments, MomentId::impact);
    ASSERT_TRUE(impact);
    EXPECT_EQ(impact->foundBy, "shaft+sound");
    EXPECT_NEAR(impact->time.value(), truth, 3 * impact->sigma.value());
    EXPECT_LT(impact->sigma.value(), 0.006);
    scene.hits = {{base::Seconds{truth - 0.056 + 4.0 / 343.2}, 40.0}};
    const auto withBall = scene.find();
    impact = marks::find(withBall.moments, MomentId::impact);
    ASSERT_TRUE(impact);
    EXPECT_EQ(impact->foundBy, "ball+sound");
}

TEST(Moments, HandsThatStopOnTheWayUpAreNotAtTheTopYet) {
    Made made;
    auto scene = film(made, 120, 3.0, 0.8, 5);
    scene.context.view = marks::View::downTheLine;
    scene.passes.reset();
    const double offset = 0.35 / 120, top = made.top() - offset;
    const auto before = scene.track;
    for (std::size_t i = 0; i < scene.track.size(); ++i) { // still for a tenth of a second, then catching up
        const double t = before[i].time.value() - top;
        const double shown = t < -0.32 || t > -0.12 ? t : t < -0.22 ? -0.32 : -0.32 + 2.0 * (t + 0.22);
        const auto from = static_cast<std::size_t>(std::lround((shown + top) * 120));
        scene.track[i][marks::Landmark::grip] = before[from][marks::Landmark::grip];
    }
    const auto found = scene.find();
    const auto* at = marks::find(found.moments, MomentId::top);
    ASSERT_TRUE(at);
    EXPECT_EQ(at->foundBy, "hands");
    EXPECT_NEAR(at->time.value(), top, 0.05);
    EXPECT_NEAR(at->time.value(), top, 3 * at->sigma.value());
}

TEST(Moments, SoundSharpensImpactWithinTheBallsGap) {
    double without = 0, with = 0;
    int n = 0;
    for (unsigned seed = 1; seed <= 30; ++seed) {
        Made made;
        made.start = 0.8 + 0.0041 * seed;
        auto scene = film(made, 30, 3.0, 0.8, seed);
        const double o = 0.35 / 30;
        scene.context.cameraDistanceMetres = 4.0;
        const double truth = made.hit() - o;
        without += std::abs(errorOf(scene.find(), MomentId::impact, truth));
        scene.hits = {{base::Seconds{truth + 4.0 / 343.2}, 40.0}};
        const auto found = scene.find();
        with += std::abs(errorOf(found, MomentId::impact, truth));
        EXPECT_EQ(marks::find(found.moments, MomentId::impact)->foundBy, "ball+sound");
        ++n;
    }
    EXPECT_LT(with / n, 0.003);
    EXPECT_GT(without / n, 2 * with / n);
}

TEST(Moments, LowerFrameRateAndWiderShaftWidenSigma) {
    Made made;
    auto sigma = [&](double fps, double noise, MomentId id) {
        return marks::find(film(made, fps, 3.0, noise, 5).find().moments, id)->sigma.value();
    };
    EXPECT_GT(sigma(60, 0.8, MomentId::impact), 1.5 * sigma(240, 0.8, MomentId::impact));
    EXPECT_GT(sigma(120, 4.0, MomentId::shaft_level_down), 1.5 * sigma(120, 0.5, MomentId::shaft_level_down));
}

TEST(Moments, AClipWithoutASwingHasNone) {
    Made made;
    made.start = 50.0;
    const auto scene = film(made, 120, 2.0, 0.8, 4);
    const auto found = scene.find();
    EXPECT_FALSE(found.bottom);
    for (const auto& m : found.moments) {
        ADD_FAILURE() << marks::momentName(m.id);
    }
    EXPECT_FALSE(found.missing.empty());
}

namespace {
/// What is left of a film when only from..to seconds of it were kept.
test::Scene cutTo(test::Scene scene, double from, double to) {
    test::Scene out = scene;
    out.track.clear(), out.shaft.clear();
    for (std::size_t i = 0; i < scene.track.size(); ++i) {
        const double t = scene.track[i].time.value();
        if (t >= from && t <= to) {
            out.track.push_back(scene.track[i]);
            out.shaft.push_back(scene.shaft[i]);
        }
    }
    return out;
}
} // namespace

TEST(Moments, ACutOffSwingTellsOnlyWhatItShows) {
    Made made;
    for (unsigned seed = 1; seed <= 6; ++seed) {
        const auto whole = film(made, 120, 3.2, 0.8, seed);
        const auto all = whole.find();
        // Begins when the club is already on its way back.
        const auto late = cutTo(whole, made.start + 0.25, 3.2).find();
        EXPECT_FALSE(marks::find(late.moments, MomentId::address));
        EXPECT_TRUE(std::any_of(late.missing.begin(), late.missing.end(), [](const std::string& s) {
            return s.find("starts after the club began to move") != std::string::npos;
        }));
        // Ends while the club is still on its way through.
        const auto early = cutTo(whole, 0.0, made.hit() + 0.30).find();
        EXPECT_FALSE(marks::find(early.moments, MomentId::finish));
        EXPECT_TRUE(std::any_of(early.missing.begin(), early.missing.end(), [](const std::string& s) {
            return s.find("ends before the player comes to rest") != std::string::npos;
        }));
        for (const auto id : {MomentId::top, MomentId::shaft_level_down, MomentId::impact}) {
            for (const auto* cut : {&late, &early}) {
                ASSERT_TRUE(marks::find(cut->moments, id)) << marks::momentName(id);
                EXPECT_NEAR(marks::find(cut->moments, id)->time.value(),
                            marks::find(all.moments, id)->time.value(), 0.004);
            }
        }
        // Begins on the way down: no top is made up.
        const auto half = cutTo(whole, made.top() + 0.10, 3.2).find();
        EXPECT_FALSE(marks::find(half.moments, MomentId::address));
        if (const auto* top = marks::find(half.moments, MomentId::top)) {
            EXPECT_LT(std::abs(top->time.value() - made.top()), 3 * top->sigma.value());
        }
    }
}

TEST(Moments, ATopInsideADropoutOfTheShaftIsToldWithWhatThatLeavesOpen) {
    int held = 0, told = 0;
    double sum = 0;
    for (unsigned seed = 1; seed <= 24; ++seed) {
        Made made;
        made.start = 0.8 + 0.013 * seed;
        auto scene = film(made, 120, 3.2, 0.3, seed);
        const double o = 0.35 / 120;
        // The grip is behind the head: the shaft is lost for 0.13 to 0.17 s, more of it before the top or
        // after.
        const double from = made.top() - o - 0.03 - 0.004 * (seed % 12),
                     to = from + 0.13 + 0.002 * (seed % 20);
        for (auto& sample : scene.shaft) {
            if (sample && sample->time.value() > from && sample->time.value() < to) {
                sample.reset();
            }
        }
        if (const auto found = scene.find(); const auto* top = marks::find(found.moments, MomentId::top)) {
            ++told;
            const double error = std::abs(top->time.value() - (made.top() - o));
            held += error < top->sigma.value();
            EXPECT_LT(error, 2.5 * top->sigma.value()) << "seed " << seed;
            sum += error;
        }
    }
    EXPECT_EQ(told, 24);
    EXPECT_LT(sum / told, 0.02);
    EXPECT_GE(held, 0.60 * told) << held << " of " << told;
}

TEST(Moments, ALevelShaftIsAsSureAsTheVertical) {
    Made made;
    auto scene = film(made, 120, 3.0, 0.5, 7);
    const auto sigma = [&](MomentId id) { return marks::find(scene.find().moments, id)->sigma.value(); };
    scene.scene.vertical.sigmaDegrees = 0.05;
    const double slow = sigma(MomentId::shaft_level_back), fast = sigma(MomentId::shaft_level_down);
    scene.scene.vertical.sigmaDegrees = 2.0;
    // The shaft passes level at this speed; two degrees are that much time.
    const double t = made.when(90, made.start, made.top());
    const double speed = (made.turned(t + 0.001) - made.turned(t - 0.001)) / 0.002;
    EXPECT_NEAR(std::sqrt(std::pow(sigma(MomentId::shaft_level_back), 2) - slow * slow), 2.0 / speed,
                0.15 * 2.0 / speed);
    EXPECT_LT(sigma(MomentId::shaft_level_down), std::hypot(fast, 0.003)) << "a fast shaft loses little time";
}

TEST(Moments, AMomentFixedByHandIsAFact) {
    Made made;
    const auto scene = film(made, 120, 3.0, 0.8, 6);
    const marks::Moment fix{MomentId::top, base::Seconds{1.71}, base::Seconds{0.004}, "hand"};
    const auto found = swing::findMoments({scene.track,
                                           scene.shaft,
                                           scene.ball,
                                           scene.scene,
                                           scene.context,
                                           scene.scale,
                                           scene.hits,
                                           scene.passes,
                                           {fix}});
    EXPECT_EQ(marks::find(found.moments, MomentId::top)->time, fix.time);
    EXPECT_EQ(marks::find(found.moments, MomentId::top)->foundBy, "hand");
}

TEST(Moments, WhatLiesOnTheWrongSideOfAFixedMomentIsLeftOut) {
    Made made;
    const auto scene = film(made, 120, 3.0, 0.8, 6);
    const auto free = scene.find();
    const auto* delivery = marks::find(free.moments, MomentId::shaft_level_down);
    const auto* arm = marks::find(free.moments, MomentId::lead_arm_level_down);
    ASSERT_TRUE(delivery != nullptr && arm != nullptr);
    // The top set between the two levels coming down.
    const marks::Moment fix{MomentId::top, (delivery->time + arm->time) * 0.5, base::Seconds{0.004}, "hand"};
    const auto found = swing::findMoments({scene.track,
                                           scene.shaft,
                                           scene.ball,
                                           scene.scene,
                                           scene.context,
                                           scene.scale,
                                           scene.hits,
                                           scene.passes,
                                           {fix}});
    EXPECT_EQ(marks::find(found.moments, MomentId::lead_arm_level_down), nullptr);
    EXPECT_NE(marks::find(found.moments, MomentId::shaft_level_down), nullptr);
    EXPECT_EQ(found.missing.size(), free.missing.size() + 1);
    EXPECT_NE(found.missing.back().find("set it by hand"), std::string::npos);
    for (std::size_t i = 1; i < found.moments.size(); ++i) {
        EXPECT_LE(found.moments[i - 1].time, found.moments[i].time);
    }
}

TEST(TurnedBack, CountsFromTrueDownInTheSwingsOwnSense) {
    club::ShaftSample shaft;
    shaft.angleDegrees = -90.0; // picture left: a right-hander's level shaft going back, seen face-on
    EXPECT_DOUBLE_EQ(swing::turnedBack(shaft, {}, +1), 90.0);
    shaft.angleDegrees = 90.0; // picture right: a left-hander's
    EXPECT_DOUBLE_EQ(swing::turnedBack(shaft, {}, -1), 90.0);
    scene::Vertical tilted;
    tilted.angleDegrees = 3.0;
    shaft.angleDegrees = -3.0; // along true down of a picture whose true up leans 3 degrees clockwise
    EXPECT_DOUBLE_EQ(swing::turnedBack(shaft, tilted, +1), 0.0);
}
