// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

#include "session/framing.h"
#include "session/hold_watch.h"
#include "session/practice_session.h"

namespace plumbmark::session {
namespace {

using body::Point;

constexpr int kWidth = 1280, kHeight = 720;

/// A right-hander seen from the front as a handful of points: feet at (x, feet), `size` px tall, hands placed
/// by the caller in statures from the mid-hip (x toward the picture's right, y up).
body::Observation person(double x, double feet, double size, base::Vec2 hands, double time,
                         double shoulders = 0.21) {
    body::Observation o;
    o.time = base::Seconds{time};
    o.presence = 1.0;
    for (auto& p : o.points) {
        p.visibility = 1.0;
        p.direct = p.peak = {x, feet - 0.5 * size};
        p.spread = 0.01 * size;
    }
    const auto put = [&](Point p, double dx, double up) {
        auto& point = o.points[static_cast<std::size_t>(p)];
        point.direct = point.peak = {x + dx * size, feet - up * size};
    };
    // Heights as shares of stature: Drillis & Contini 1966 (eyes 0.936, shoulder 0.818, hip 0.530, ankle
    // 0.039).
    for (const Point p : {Point::left_eye, Point::right_eye, Point::nose}) {
        put(p, 0.0, 0.936);
    }
    put(Point::left_shoulder, shoulders / 2, 0.818);
    put(Point::right_shoulder, -shoulders / 2, 0.818);
    put(Point::left_hip, 0.05, 0.530);
    put(Point::right_hip, -0.05, 0.530);
    put(Point::left_ankle, 0.13, 0.039);
    put(Point::right_ankle, -0.13, 0.039);
    for (const Point p : {Point::left_heel, Point::left_toe}) {
        put(p, 0.13, 0.0);
    }
    for (const Point p : {Point::right_heel, Point::right_toe}) {
        put(p, -0.13, 0.0);
    }
    for (const Point p : {Point::left_wrist, Point::right_wrist}) {
        put(p, hands.x, 0.530 + hands.y);
    }
    return o;
}

std::vector<FramingFault> faultsOf(const std::optional<body::Observation>& o,
                                   marks::View view = marks::View::faceOn) {
    return judgeFraming(o, kWidth, kHeight, view).faults;
}

TEST(Framing, SaysWhatToPutRight) {
    const base::Vec2 low{0.0, -0.05};
    using F = std::vector<FramingFault>;
    EXPECT_EQ(faultsOf(std::nullopt), F{FramingFault::nobody});
    EXPECT_TRUE(faultsOf(person(640, 660, 460, low, 0)).empty());
    EXPECT_EQ(faultsOf(person(640, 719, 460, low, 0)), F{FramingFault::feetCut});
    EXPECT_EQ(faultsOf(person(640, 500, 490, low, 0)), F{FramingFault::headCut});
    EXPECT_EQ(faultsOf(person(640, 600, 250, low, 0)), F{FramingFault::tooSmall});
    EXPECT_EQ(faultsOf(person(60, 660, 460, low, 0)), F{FramingFault::offLeft});
    EXPECT_EQ(faultsOf(person(1230, 660, 460, low, 0)), F{FramingFault::offRight});
    EXPECT_EQ(faultsOf(person(640, 660, 460, low, 0, 0.03)), F{FramingFault::notFaceOn});
    EXPECT_EQ(faultsOf(person(640, 660, 460, low, 0), marks::View::downTheLine),
              F{FramingFault::notDownTheLine});
    for (int i = 0; i <= static_cast<int>(FramingFault::notDownTheLine); ++i) {
        EXPECT_FALSE(framingAdvice(static_cast<FramingFault>(i)).empty());
        EXPECT_FALSE(framingFaultName(static_cast<FramingFault>(i)).empty());
    }
}

TEST(Framing, TheOutlineToStandInIsInsideThePicture) {
    for (const auto& [w, h] : {std::pair{1280, 720}, {720, 1280}, {640, 480}}) {
        const auto box = standHere(w, h, marks::View::faceOn);
        EXPECT_GT(box.x, 0);
        EXPECT_GT(box.y, 0.05);
        EXPECT_LT(box.x + box.width, 1);
        EXPECT_LT(box.y + box.height, 0.97);
        EXPECT_NEAR(box.x + box.width / 2, 0.5, 1e-9);
    }
}

/// Hands along a path in time, a look each 0.1 s; how many holds are told, with the last one's length.
struct Held {
    int count = 0;
    double seconds = 0;
};
Held watch(HoldWatch& holds, double until, const std::function<base::Vec2(double)>& hands) {
    Held held;
    for (int i = 0; i * 0.1 < until; ++i) {
        const double t = i * 0.1;
        if (const auto hold = holds.push(person(640, 660, 460, hands(t), t), kWidth, kHeight)) {
            ++held.count;
            held.seconds = (hold->to - hold->from).value();
        }
    }
    return held;
}

base::Vec2 between(base::Vec2 a, base::Vec2 b, double k) {
    k = std::clamp(k, 0.0, 1.0);
    return {a.x + (b.x - a.x) * k, a.y + (b.y - a.y) * k};
}

const base::Vec2 kAddress{0.0, -0.05}, kTop{-0.2, 0.35}, kFinish{0.2, 0.4};

TEST(HoldWatch, CountsAHeldTopAndNoFinish) {
    const marks::ShotContext context;
    HoldWatch holds(context);
    const auto path = [](base::Vec2 high, double holdSeconds) {
        return [high, holdSeconds](double t) {
            return t < 3.0 + holdSeconds ? between(kAddress, high, (t - 1.5) / 1.5)
                                         : between(high, kAddress, (t - 3.0 - holdSeconds) / 1.5);
        };
    };
    const Held top = watch(holds, 8, path(kTop, 1.8));
    EXPECT_EQ(top.count, 1);
    EXPECT_NEAR(top.seconds, 1.8, 0.35);
    HoldWatch second(context);
    EXPECT_EQ(watch(second, 8, path(kTop, 0.4)).count, 0) << "too short";
    HoldWatch third(context);
    EXPECT_EQ(watch(third, 8, path(kFinish, 1.8)).count, 0) << "a finish";
    marks::ShotContext left = context;
    left.hand = marks::Hand::left;
    HoldWatch fourth(left);
    EXPECT_EQ(watch(fourth, 8, path({0.2, 0.35}, 1.8)).count, 1)
        << "a left-hander's top is on the other side";
}

TEST(HoldWatch, LooksThatJitterDoNotEndAHold) {
    const marks::ShotContext context;
    HoldWatch holds(context);
    const Held held = watch(holds, 8, [](double t) {
        // 0.015 statures to and fro from look to look, as the pose network's hands do.
        const double jitter = static_cast<int>(std::lround(t * 10)) % 3 == 0 ? 0.015 : -0.0075;
        const auto hands =
            t < 4.8 ? between(kAddress, kTop, (t - 1.5) / 1.5) : between(kTop, kAddress, (t - 4.8) / 1.5);
        return hands + base::Vec2{jitter, -jitter};
    });
    EXPECT_EQ(held.count, 1);
    EXPECT_NEAR(held.seconds, 1.8, 0.5);
}

TEST(HoldSorter, ASwingsHoldIsNoRehearsalAndAFalseHitHidesNone) {
    const auto hold = [](double from, double to) { return Hold{base::Seconds{from}, base::Seconds{to}, {}}; };
    HoldSorter sorter;
    sorter.held(hold(10, 12));
    EXPECT_TRUE(sorter.rehearsals(base::Seconds{12.1}).empty()) << "a hit may still come";
    EXPECT_EQ(sorter.rehearsals(base::Seconds{15}).size(), 1U);
    EXPECT_TRUE(sorter.rehearsals(std::nullopt).empty()) << "told once";

    sorter.hit(base::Seconds{21});
    sorter.held(hold(22, 24)); // a finish held in view of a down-the-line camera
    EXPECT_TRUE(sorter.rehearsals(base::Seconds{30}).empty()) << "not judged yet";
    sorter.judged(base::Seconds{21}, true);
    EXPECT_TRUE(sorter.rehearsals(std::nullopt).empty()) << "that swing's";

    sorter.hit(base::Seconds{31});
    sorter.held(hold(32, 34));
    sorter.judged(base::Seconds{31}, false);
    EXPECT_EQ(sorter.rehearsals(base::Seconds{40}).size(), 1U) << "no swing was there";

    sorter.held(hold(50, 52));
    sorter.hit(base::Seconds{52.5}); // a pause at the top, then the ball
    sorter.judged(base::Seconds{52.5}, true);
    EXPECT_TRUE(sorter.rehearsals(std::nullopt).empty());
}

TEST(Practice, AnUnknownCheckpointIsRefusedInOneSentence) {
    PracticeOptions options;
    options.checkpoint = "no_such_thing";
    const auto made = PracticeSession::create(options, nullptr);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().key, "practice.checkpoint");
    options.checkpoint = "head_inside_trail_ankle";
    const auto without = PracticeSession::create(options, nullptr);
    ASSERT_FALSE(without);
    EXPECT_EQ(without.error().key, "network.missing");
    options.context.view = marks::View::downTheLine; // the checkpoint is of the other view
    const auto other = PracticeSession::create(options, nullptr);
    ASSERT_FALSE(other);
    EXPECT_EQ(other.error().key, "practice.checkpoint");
}

TEST(Practice, WordsComeBack) {
    for (const auto f : {Feedback::everyThird, Feedback::onlyOutside, Feedback::every}) {
        EXPECT_EQ(feedbackFromName(feedbackName(f)), f);
    }
    EXPECT_FALSE(feedbackFromName("sometimes"));
}

} // namespace
} // namespace plumbmark::session
