// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

#include "scene/estimates.h"
#include "scene/ground_watch.h"

using namespace plumbmark;

namespace {
constexpr double kDegree = std::numbers::pi / 180.0;

/// A picture drawn from a continuous scene of soft blobs, so that any similarity can be rendered exactly.
struct World {
    struct Blob {
        double x, y, r, level;
    };
    std::vector<Blob> blobs;
    explicit World(unsigned seed) {
        std::mt19937 engine(seed);
        std::uniform_real_distribution<double> x(-100, 740), y(-100, 460), r(3, 9), level(-90, 90);
        for (int i = 0; i < 700; ++i) {
            blobs.push_back({x(engine), y(engine), r(engine), level(engine)});
        }
    }
    /// frame point p shows reference point m(p); a dark box at `player` in the frame moves on its own.
    video::Frame draw(int index, const scene::GroundMotion::Step& m, const base::Box& player) const {
        constexpr int w = 640, h = 360;
        std::vector<float> sum(w * h, 110.0F);
        const scene::GroundMotion motion({m}, 0.0);
        for (const auto& b : blobs) {
            const auto c = motion.fromReference(0, {b.x, b.y});
            for (int y = std::max(0, static_cast<int>(c.y - 3 * b.r)); y < std::min<double>(h, c.y + 3 * b.r);
                 ++y) {
                for (int x = std::max(0, static_cast<int>(c.x - 3 * b.r));
                     x < std::min<double>(w, c.x + 3 * b.r); ++x) {
                    const double d = std::hypot(x + 0.5 - c.x, y + 0.5 - c.y) / b.r;
                    sum[static_cast<std::size_t>(y * w + x)] +=
                        static_cast<float>(b.level * std::exp(-d * d));
                }
            }
        }
        video::RgbImage image{w, h, std::vector<std::uint8_t>(w * h * 3)};
        for (int y = 0; y < h; ++y) {
            for (int x = 0; x < w; ++x) {
                const bool in = player.contains({x + 0.5, y + 0.5});
                const double v = in ? (x + 7 * index) % 23 * 9 : sum[static_cast<std::size_t>(y * w + x)];
                for (int c = 0; c < 3; ++c) {
                    image.pixels[static_cast<std::size_t>((y * w + x) * 3 + c)] =
                        static_cast<std::uint8_t>(std::lround(std::fmin(255, std::fmax(0, v))));
                }
            }
        }
        return video::Frame::fromRgb(image, index, base::Seconds{index / 120.0});
    }
};
} // namespace

TEST(Vertical, RollAndPlumbEdgeAgree) {
    // A camera turned clockwise by 3 degrees shows a plumb line leaning counter-clockwise.
    const auto told = scene::fromRoll(base::Degrees{3});
    EXPECT_DOUBLE_EQ(told.angleDegrees, -3);
    const base::Vec2 foot{500, 900};
    const auto top = foot + told.up() * 700;
    EXPECT_LT(top.x, foot.x);
    for (const auto& v : {scene::fromPlumbEdge(foot, top), scene::fromPlumbEdge(top, foot)}) {
        EXPECT_NEAR(v.angleDegrees, -3, 1e-9);
        EXPECT_EQ(v.source, "plumb");
    }
    EXPECT_NEAR(base::dot(told.up(), told.right()), 0, 1e-12);
    EXPECT_GT(scene::fromPlumbEdge(foot, foot + told.up() * 50).sigmaDegrees,
              scene::fromPlumbEdge(foot, foot + told.up() * 500).sigmaDegrees);
    EXPECT_EQ(scene::fromPlumbEdge(foot, foot).source, "assumed");
}

TEST(GroundMotion, ToAndFromAreInverse) {
    const scene::GroundMotion m({{0.99, 0.02, 12, -7}}, 0.1);
    const auto p = m.fromReference(0, m.toReference(0, {321, 123}));
    EXPECT_NEAR(p.x, 321, 1e-9);
    EXPECT_NEAR(p.y, 123, 1e-9);
    EXPECT_TRUE(m.moved());
    EXPECT_FALSE(scene::GroundMotion().moved());
}

TEST(GroundWatch, FollowsAPanThroughPlayerMotion) {
    const World world(3);
    scene::GroundWatch watch;
    std::vector<scene::GroundMotion::Step> truth;
    constexpr int frames = 41;
    for (int i = 0; i < frames; ++i) {
        const double a = 0.02 * i / frames, zoom = 1.0 + 0.01 * i / frames;
        truth.push_back({zoom * std::cos(a), zoom * std::sin(a), 1.6 * i, -0.5 * i});
    }
    for (int i = 0; i < frames; i += 4) {
        const base::Box player{200.0 + i, 100, 120, 220};
        const std::array<base::Box, 1> moving{player};
        watch.add(world.draw(i, truth[static_cast<std::size_t>(i)], player), moving);
    }
    EXPECT_FALSE(watch.still());
    EXPECT_GT(watch.placedShare(), 0.95);
    const auto motion = watch.finish(frames);
    ASSERT_EQ(motion.steps().size(), static_cast<std::size_t>(frames));
    const scene::GroundMotion exact(truth, 0.0);
    double worst = 0;
    for (int i = 0; i < frames; ++i) {
        for (const base::Vec2 p : {base::Vec2{100, 300}, {500, 320}, {320, 180}}) {
            worst = std::max(worst, base::length(motion.toReference(i, p) - exact.toReference(i, p)));
        }
    }
    EXPECT_LT(worst, 0.4); // measured on rendered clips: median 0.07, worst 0.40 px
}

TEST(GroundWatch, AStillCameraGivesNoMotion) {
    const World world(4);
    scene::GroundWatch watch;
    for (int i = 0; i < 24; i += 4) {
        const std::array<base::Box, 1> moving{base::Box{200.0 + 6 * i, 100, 120, 220}};
        watch.add(world.draw(i, {}, moving[0]), moving);
    }
    EXPECT_TRUE(watch.still());
    EXPECT_TRUE(watch.finish(24).steps().empty());
    scene::GroundWatch nothing;
    EXPECT_TRUE(nothing.still());
    EXPECT_TRUE(nothing.finish(10).steps().empty());
}

TEST(Edges, StandingEdgesTellRollAndAShortPoleDoesNot) {
    const auto draw = [](double roll, int posts) {
        constexpr int w = 640, h = 480;
        video::RgbImage image{w, h, std::vector<std::uint8_t>(w * h * 3, 170)};
        for (int y = 0; y < h; ++y) {
            for (int x = 0; x < w; ++x) {
                for (int k = 0; k < posts; ++k) {
                    const double base = 60.0 + 520.0 * k / std::max(1, posts - 1);
                    const double centre = base - std::tan(roll * kDegree) * (y - h / 2.0);
                    if (std::abs(x + 0.5 - centre) < 9 && y > 40 && y < 440) {
                        for (int c = 0; c < 3; ++c) {
                            image.pixels[static_cast<std::size_t>((y * w + x) * 3 + c)] = 60;
                        }
                    }
                }
            }
        }
        return video::Frame::fromRgb(image, 0, base::Seconds{0});
    };
    for (const double roll : {-4.0, 0.0, 2.5}) {
        const auto v = scene::verticalFromEdges(draw(roll, 5), {});
        ASSERT_TRUE(v) << roll;
        EXPECT_NEAR(v->angleDegrees, roll, 0.4);
        EXPECT_EQ(v->source, "edges");
    }
    EXPECT_FALSE(scene::verticalFromEdges(draw(3.0, 1), {}));
    EXPECT_FALSE(scene::verticalFromEdges(draw(3.0, 0), {}));
}

TEST(Edges, ACameraThatLooksUpIsNotTakenForARolledOne) {
    // Standing posts under a pinhole camera pitched up by 6 degrees and rolled by 2, most of them on one
    // side: their mean lean is no roll.
    constexpr int w = 960, h = 540;
    constexpr double f = 750, pitch = 6 * kDegree, roll = 2 * kDegree;
    video::RgbImage image{w, h, std::vector<std::uint8_t>(std::size_t{w} * h * 3, 170)};
    for (int y = 0; y < h; ++y) {
        for (int x = 0; x < w; ++x) {
            // The picture turned back, then the ray turned down to level: where it meets the plane of the
            // posts.
            const double dx = x + 0.5 - w / 2.0, dy = y + 0.5 - h / 2.0;
            const double a = dx * std::cos(roll) - dy * std::sin(roll);
            const double b = dx * std::sin(roll) + dy * std::cos(roll);
            const double ahead = f * std::cos(pitch) + b * std::sin(pitch);
            const double up = f * std::sin(pitch) - b * std::cos(pitch);
            const double across = a / ahead, height = up / ahead;
            for (const double post : {-0.5, 0.05, 0.2, 0.35, 0.5}) {
                if (std::abs(across - post) < 0.012 && height > -0.2 && height < 0.4) {
                    std::fill_n(image.pixels.begin() + (std::ptrdiff_t{y} * w + x) * 3, 3, 60);
                }
            }
        }
    }
    const auto v = scene::verticalFromEdges(video::Frame::fromRgb(image, 0, base::Seconds{0}), {});
    ASSERT_TRUE(v);
    EXPECT_NEAR(v->angleDegrees, -2.0, 0.35);
    EXPECT_LT(v->sigmaDegrees, 0.9);
}

TEST(Yaw, AStickOnTheTargetLineTellsTheCamerasTurn) {
    // Ground points under a level pinhole camera: x = f X / Z, y = f h / Z below the horizon.
    scene::Scene s;
    s.width = 1920;
    s.height = 1080;
    s.focalPixels = 1500;
    s.vertical = {0, 0.3, "told"};
    const double h = 0.9;
    const auto see = [&](double x, double z) {
        return marks::Mark{{960 + 1500 * x / z, 540 + 1500 * h / z}, 1.0, base::Origin::hand};
    };
    for (const double yaw : {-8.0, 0.0, 5.0}) {
        const double c = std::cos(yaw * kDegree), t = std::sin(yaw * kDegree);
        const auto front = scene::yawFromStick(see(-0.6 * c, 4 - 0.6 * t), see(0.6 * c, 4 + 0.6 * t),
                                               marks::View::faceOn, s);
        ASSERT_TRUE(front);
        EXPECT_NEAR(front->degrees, yaw, 1e-6);
        EXPECT_GT(front->sigmaDegrees, 0.3);
        const auto line = scene::yawFromStick(see(0.2, 3.5), see(0.2 - 1.5 * t, 3.5 + 1.5 * c),
                                              marks::View::downTheLine, s);
        ASSERT_TRUE(line);
        EXPECT_NEAR(line->degrees, yaw, 1e-6);
    }
    marks::Mark above = see(0, 4);
    above.at.y = 300;
    EXPECT_FALSE(scene::yawFromStick(above, see(1, 4), marks::View::faceOn, s));
}

// Drillis & Contini 1966: hip 0.530, ankle 0.039, shoulder 0.818 of stature.
TEST(Scale, ComesFromBodyOrDistance) {
    marks::FrameMarks f;
    using L = marks::Landmark;
    const double px = 400, ground = 900;
    const auto put = [&](L l, double x, double height) {
        f[l] = marks::Mark{{x, ground - height * px}, 2, base::Origin::network};
    };
    put(L::lead_ankle, 1000, 0.039);
    put(L::trail_ankle, 900, 0.039);
    EXPECT_FALSE(scene::scaleFromBody(f, marks::View::faceOn, {}));
    const double hip = 0.039 + 0.491 * 0.97;
    put(L::lead_hip, 970, hip);
    put(L::trail_hip, 930, hip);
    put(L::lead_shoulder, 990, hip + 0.288 * std::cos(33 * kDegree));
    put(L::trail_shoulder, 910, hip + 0.288 * std::cos(33 * kDegree));
    const auto s = scene::scaleFromBody(f, marks::View::faceOn, {});
    ASSERT_TRUE(s);
    EXPECT_NEAR(s->pixelsPerStature, px, 1);
    EXPECT_NEAR(*scene::withStature(*s, 1.6).pixelsPerMetre, px / 1.6, 1);
    scene::Scene sc;
    sc.focalPixels = 1500;
    // Published worked number: a 1143 mm club at 4 m with f = 1500 px is 429 px.
    EXPECT_NEAR(*scene::scaleFromDistance(1.75, 4.0, sc).pixelsPerMetre * 1.143, 429, 0.5);
}
