// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <set>

#include "measure/definition.h"
#include "measure/equipment.h"
#include "measure/segments.h"
#include "stick_figure.h"

using namespace plumbmark;
using namespace plumbmark::test;
using marks::Landmark;
using marks::MomentId;

namespace {

const base::Measured& value(const std::vector<measure::Measurement>& all, std::string_view id,
                            std::optional<MomentId> moment = std::nullopt) {
    static const base::Measured nothing{1e9, 1.0};
    const auto* m = measure::find(all, id, moment);
    EXPECT_NE(m, nullptr) << id;
    if (m == nullptr || !m->value) {
        ADD_FAILURE() << id << ": " << (m ? m->reason : "");
        return nothing;
    }
    return *m->value;
}

std::vector<std::pair<MomentId, Pose>> swing() {
    Pose address, top, impact;
    top.tilt = 8;
    top.turn = -80;
    impact.tilt = 14;
    impact.shift = 0.08;
    impact.turn = 20;
    return {{MomentId::address, address}, {MomentId::top, top}, {MomentId::impact, impact}};
}

/// A forearm that hangs still and a shaft whose set peaks `peak` seconds after the top: 100 degrees there,
/// falling by `fall` degrees for each square second.
Clip settingWrists(double peak, double fall, double sigma, base::Origin origin) {
    Clip clip;
    for (int i = 0; i <= 60; ++i) {
        const double t = i / 60.0, off = t - 0.5 - peak;
        marks::FrameMarks frame;
        frame.time = base::Seconds{t};
        for (const auto& [l, at] : {std::pair{Landmark::lead_elbow, base::Vec2{900, 400}},
                                    std::pair{Landmark::lead_wrist, base::Vec2{900, 520}}}) {
            frame[l] = marks::Mark{at, sigma, origin};
        }
        clip.track.push_back(frame);
        club::ShaftSample shaft;
        shaft.time = frame.time;
        shaft.angleDegrees = -(100.0 - fall * off * off); // a set club lags clockwise of the forearm
        shaft.sigmaDegrees = 1.0;
        shaft.through = {900, 530};
        shaft.head = base::Vec2{700, 530};
        shaft.butt = base::Vec2{910, 520};
        shaft.headSigma = 2.0;
        clip.shaft.emplace_back(shaft);
    }
    for (const auto& [id, t] : {std::pair{MomentId::shaft_level_back, 0.0}, std::pair{MomentId::top, 0.5},
                                std::pair{MomentId::shaft_level_down, 1.0}}) {
        clip.moments.push_back({id, base::Seconds{t}, base::Seconds{0.003}, "test"});
    }
    clip.scene.width = 1920;
    clip.scene.height = 1080;
    return clip;
}

// The peak of a curve is as sure as the curve is sharp against its marks: sure marks and a sharp peak give
// its time; a flat one with unsure marks gives a wide interval or none, never a wrong time that looks sure.
TEST(WristSet, ThePeaksTimeIsAsSureAsTheCurveIsSharp) {
    for (const double peak : {-0.2, 0.0, 0.15, 0.3}) {
        const Clip sharp = settingWrists(peak, 150, 1.0, base::Origin::hand);
        const auto told = value(measure::measureAll(sharp.input()), "wrist_set_peak_time", std::nullopt);
        EXPECT_NEAR(told.value, peak, 2 * told.sigma) << peak;
        EXPECT_LT(told.sigma, 0.1) << peak;
        const Clip flat = settingWrists(peak, 20, 25.0, base::Origin::network);
        const auto all = measure::measureAll(flat.input());
        const auto* unsure = measure::find(all, "wrist_set_peak_time", std::nullopt);
        ASSERT_NE(unsure, nullptr);
        if (unsure->value) {
            EXPECT_GT(unsure->value->sigma, 0.1) << peak;
            EXPECT_NEAR(unsure->value->value, peak, 2 * unsure->value->sigma) << peak;
        }
    }
}

} // namespace

TEST(Angles, AreRecoveredThroughAPinholeCamera) {
    for (const double aside : {-0.4, 0.0, 0.4}) {
        for (const double roll : {-3.0, 0.0, 3.0}) {
            Camera camera;
            camera.aside = aside;
            camera.roll = roll;
            const auto clip = film(swing(), camera);
            const auto all = measure::measureAll(clip.input());
            EXPECT_NEAR(value(all, "spine_tilt", MomentId::address).value, 4, 1.0) << aside << " " << roll;
            EXPECT_NEAR(value(all, "spine_tilt_change", MomentId::top).value, 4, 0.5);
            EXPECT_NEAR(value(all, "spine_tilt_change", MomentId::impact).value, 10, 0.5);
            EXPECT_NEAR(value(all, "pelvis_shift", MomentId::impact).value, 0.08 / 1.75, 0.003);
            EXPECT_NEAR(value(all, "stance_width_ratio", MomentId::address).value, 0.42 / 0.35, 0.03);
        }
    }
}

TEST(Angles, ForwardBendIsSeenFromDownTheLine) {
    Camera camera;
    camera.downTheLine = true;
    auto poses = swing();
    poses[2].second.bend = 27;
    const auto all = measure::measureAll(film(poses, camera).input());
    EXPECT_NEAR(value(all, "forward_bend", MomentId::address).value, 33, 1.0);
    EXPECT_NEAR(value(all, "forward_bend_change", MomentId::impact).value, -6, 1.5);
    EXPECT_EQ(measure::find(all, "spine_tilt", MomentId::address), nullptr)
        << "only ids of the clip's own view";
}

TEST(Angles, LeftHandedAndMirroredReadTheSame) {
    Camera camera;
    auto clip = film(swing(), camera);
    const double right = value(measure::measureAll(clip.input()), "spine_tilt", MomentId::top).value;
    for (auto& frame : clip.track) {
        for (auto& m : frame.points) {
            if (m) {
                m->at.x = camera.width - m->at.x;
            }
        }
    }
    clip.context.hand = marks::Hand::left;
    EXPECT_NEAR(value(measure::measureAll(clip.input()), "spine_tilt", MomentId::top).value, right, 1e-9);
    clip.context.hand = marks::Hand::right;
    clip.context.mirrored = true;
    EXPECT_NEAR(value(measure::measureAll(clip.input()), "spine_tilt", MomentId::top).value, right, 1e-9);
}

// tan m = tan(lat) cos yaw +- tan(fwd) sin yaw: forward bend 35, no side bend, yaw 10 shows 6.93 degrees (own
// computation from the pinhole formula).
TEST(Angles, YawMakesFalseSideBendAndTheSigmaKnowsIt) {
    Pose p;
    p.bend = 35;
    p.tilt = 0;
    Camera camera;
    camera.distance = 200; // far away: the pure view rotation
    camera.focal = 60000;
    camera.yaw = 10;
    auto clip = film({{MomentId::address, p}}, camera);
    clip.scene.yawSigmaDegrees = 10;
    const auto blind = value(measure::measureAll(clip.input()), "spine_tilt", MomentId::address);
    EXPECT_NEAR(std::abs(blind.value), 6.93, 0.05);
    EXPECT_NEAR(blind.sigma, 6.93, 1.5);
    clip.scene.yawDegrees = blind.value > 0 ? -10 : 10;
    clip.scene.yawSigmaDegrees = 1;
    const auto told = value(measure::measureAll(clip.input()), "spine_tilt", MomentId::address);
    EXPECT_LT(std::abs(told.value), 1.2);
    // What stays is mostly the guessed depth between hips and shoulders, which a 10 degree turn makes
    // visible.
    EXPECT_LT(told.sigma, 0.6 * blind.sigma);
}

// A shaft of lie 60 whose ball lies 0.5 m off the axis at 4 m shows 3.85 / 3.61 / 3.40 degrees of false lean
// for a camera 0.5 / 1.0 / 1.5 m above the ball (exact projection).
TEST(Angles, OffAxisShaftLeanIsCorrected) {
    const std::array<std::pair<double, double>, 3> published{{{0.5, 3.85}, {1.0, 3.61}, {1.5, 3.40}}};
    for (const auto& [height, lean] : published) {
        Camera camera;
        camera.height = height;
        camera.distance = 4.0 + 0.44 * 1.75; // the ball 0.44 statures before the feet, 4 m from the lens
        camera.aside = 0.5;
        Pose p;
        const Vec3 head{0, 0.44 * 1.75, 0};
        const Vec3 grip = head + Vec3{0, -0.9 * std::cos(60 * kDegree), 0.9 * std::sin(60 * kDegree)};
        const auto a = camera.see(grip), b = camera.see(head);
        const double raw = std::atan2(std::abs(b.x - a.x), b.y - a.y) / kDegree;
        EXPECT_NEAR(raw, lean, 0.03) << "the published number";
        auto clip = film({{MomentId::address, p}}, camera);
        clip.context.club = marks::Club{marks::ClubKind::iron, 7};
        club::ShaftSample s;
        s.angleDegrees = std::atan2(b.x - a.x, b.y - a.y) / kDegree;
        s.sigmaDegrees = 0.2;
        s.through = a;
        s.butt = a;
        s.head = b;
        s.headSigma = 1;
        clip.shaft[0] = s;
        const auto got = value(measure::measureAll(clip.input()), "shaft_lean", MomentId::address);
        EXPECT_LT(std::abs(got.value), 1.0);
        EXPECT_GT(got.sigma, std::abs(got.value));
    }
}

// Turn about an inclined spine: atan2(dy / sin b, dx), never from the line's length (90 would read 55).
TEST(Angles, ShoulderTurnKeepsSignAndPasses90) {
    Camera camera;
    camera.distance = 60;
    camera.focal = 20000;
    for (const double turn : {-60.0, -90.0, -105.0}) {
        auto poses = swing();
        poses[1].second.turn = turn;
        poses[1].second.tilt = 0;
        auto clip = film(poses, camera);
        const auto all = measure::measureAll(clip.input());
        EXPECT_NEAR(value(all, "shoulder_turn", MomentId::top).value, turn, 4.0);
    }
}

// Joint angle with a shared vertex, 2 px per mark, both limbs 100 px (Monte-Carlo confirmed in the source of
// the check values): 2.807 degrees at 180, 2.292 at 90, 1.985 at 60.
TEST(Propagation, JointAngleMatchesTheClosedForm) {
    for (const auto& [angle, sigma] :
         {std::pair{150.0, 2.744}, {120.0, 2.562}, {90.0, 2.292}, {60.0, 1.985}}) {
        Clip clip;
        clip.scene.width = 1920;
        clip.scene.height = 1080;
        clip.scene.vertical.sigmaDegrees = 0;
        clip.scene.yawSigmaDegrees = 0;
        clip.scene.focalPixels = 1e6;
        clip.scene.scale = {0.3, 0.0, std::nullopt, "far away: no perspective"};
        marks::FrameMarks f;
        const base::Vec2 c{960, 540};
        f[Landmark::lead_knee] = marks::Mark{c, 2, base::Origin::hand};
        f[Landmark::lead_hip] = marks::Mark{c + base::Vec2{100, 0}, 2, base::Origin::hand};
        f[Landmark::lead_ankle] =
            marks::Mark{c + base::Vec2{100 * std::cos(angle * kDegree), 100 * std::sin(angle * kDegree)}, 2,
                        base::Origin::hand};
        clip.track.push_back(f);
        clip.moments.push_back({MomentId::address, base::Seconds{0}, base::Seconds{0}, "test"});
        const auto m = measure::evaluate(clip.input(), "angle", MomentId::address, base::Unit::degrees, 1,
                                         [](measure::Probe& p) -> std::optional<double> {
                                             const auto a = p.at(Landmark::lead_hip, MomentId::address);
                                             const auto b = p.at(Landmark::lead_knee, MomentId::address);
                                             const auto d = p.at(Landmark::lead_ankle, MomentId::address);
                                             return measure::includedAngle(*a, *b, *d);
                                         });
        ASSERT_TRUE(m.value);
        EXPECT_NEAR(m.value->value, angle, 0.01);
        EXPECT_NEAR(m.value->sigma, sigma, 0.02);
    }
}

/// Every angle: the marks' share of the told sigma against the scatter of 600 noisy clips.
TEST(Propagation, EveryAngleMatchesMonteCarlo) {
    for (const bool line : {false, true}) {
        Camera camera;
        camera.downTheLine = line;
        auto poses = swing();
        auto exact = film(poses, camera, 2.0);
        auto silent = film(poses, camera, 1e-7);
        const auto loud = measure::measureAll(exact.input());
        const auto quiet = measure::measureAll(silent.input());
        constexpr int kDraws = 600;
        std::map<std::string, std::vector<double>> draws;
        std::mt19937 engine(7);
        std::normal_distribution<double> normal(0.0, 2.0);
        for (int i = 0; i < kDraws; ++i) {
            auto noisy = exact;
            for (auto& frame : noisy.track) {
                for (auto& m : frame.points) {
                    if (m) {
                        m->at = m->at + base::Vec2{normal(engine), normal(engine)};
                    }
                }
            }
            for (const auto& d : measure::allDefinitions()) {
                if (d.view != noisy.context.view || d.unit != base::Unit::degrees) {
                    continue;
                }
                for (const auto moment : d.moments) {
                    if (marks::find(noisy.moments, moment) == nullptr) {
                        continue;
                    }
                    const auto in = noisy.input();
                    measure::Probe probe(in);
                    if (const auto v = d.compute(probe, moment)) {
                        draws[std::string(d.id) + "@" + std::string(marks::momentName(moment))].push_back(*v);
                    }
                }
            }
        }
        int compared = 0;
        for (std::size_t i = 0; i < loud.size(); ++i) {
            if (!loud[i].value || !quiet[i].value || loud[i].value->unit != base::Unit::degrees ||
                !loud[i].moment) {
                continue;
            }
            const auto& v = draws[loud[i].id + "@" + std::string(marks::momentName(*loud[i].moment))];
            ASSERT_EQ(v.size(), static_cast<std::size_t>(kDraws)) << loud[i].id;
            double mean = 0, square = 0;
            for (const double x : v) {
                mean += x / kDraws;
            }
            for (const double x : v) {
                square += (x - mean) * (x - mean) / (kDraws - 1);
            }
            const double told =
                std::sqrt(std::pow(loud[i].value->sigma, 2) - std::pow(quiet[i].value->sigma, 2));
            // 600 draws know a standard deviation to 3 %; four of those and the curvature of steep formulas.
            EXPECT_NEAR(told / std::sqrt(square), 1.0, 0.15) << loud[i].id << " " << loud[i].value->value;
            ++compared;
        }
        EXPECT_GE(compared, 6);
    }
}

TEST(Ground, PannedClipReadsLikeAStillOne) {
    Camera camera;
    auto clip = film(swing(), camera);
    const auto still = measure::measureAll(clip.input());
    std::vector<scene::GroundMotion::Step> steps;
    for (std::size_t i = 0; i < clip.track.size(); ++i) {
        const double pan = 50.0 * static_cast<double>(i);
        for (auto& m : clip.track[i].points) {
            if (m) {
                m->at.x += pan;
            }
        }
        steps.push_back({1, 0, -pan, 0});
    }
    const auto drifting = value(measure::measureAll(clip.input()), "pelvis_shift", MomentId::impact);
    clip.scene.ground = scene::GroundMotion(steps, 0.1);
    const auto steady = value(measure::measureAll(clip.input()), "pelvis_shift", MomentId::impact);
    EXPECT_NEAR(steady.value, value(still, "pelvis_shift", MomentId::impact).value, 1e-9);
    EXPECT_GT(std::abs(drifting.value - steady.value), 0.05)
        << "without the ground's motion the pan would pose as shift";
}

TEST(Tempo, RefusesWhereTheClipCannotTell) {
    Clip clip;
    clip.scene.width = 640;
    clip.scene.height = 480;
    const auto build = [&](double fps) {
        clip.track.clear();
        for (int i = 0; i < static_cast<int>(3 * fps); ++i) {
            marks::FrameMarks f;
            f.time = base::Seconds{i / fps};
            clip.track.push_back(f);
        }
        const base::Seconds sigma{0.004};
        clip.moments = {{MomentId::address, base::Seconds{0.5}, sigma, "t"},
                        {MomentId::top, base::Seconds{1.3}, sigma, "t"},
                        {MomentId::impact, base::Seconds{1.3 + 0.8 / 3}, sigma, "t"}};
    };
    build(120);
    auto input = clip.input();
    // 24 to 8 frames at 30 a second, ratio 3: usual of tour players (Grober & Cholewicki 2006, preprint).
    EXPECT_NEAR(value(measure::measureAll(input), "tempo_ratio").value, 3.0, 1e-9);
    EXPECT_NEAR(value(measure::measureAll(input), "downswing_time").value, 0.267, 1e-3);
    build(30);
    const auto slow = clip.input();
    const auto all = measure::measureAll(slow);
    EXPECT_FALSE(measure::find(all, "tempo_ratio")->value);
    EXPECT_FALSE(measure::find(all, "tempo_ratio")->reason.empty());
    build(120);
    auto unknown = clip.input();
    unknown.timeScale.known = false;
    const auto blind = measure::measureAll(unknown);
    EXPECT_TRUE(measure::find(blind, "tempo_ratio")->value) << "a ratio needs no clock";
    EXPECT_FALSE(measure::find(blind, "backswing_time")->value);
}

TEST(Honesty, EveryMeasurementHasAValueWithSigmaOrAReason) {
    Camera camera;
    for (const bool line : {false, true}) {
        camera.downTheLine = line;
        const auto clip = film(swing(), camera);
        std::set<std::pair<std::string, std::optional<MomentId>>> seen;
        for (const auto& m : measure::measureAll(clip.input())) {
            EXPECT_NE(m.value.has_value(), !m.reason.empty()) << m.id;
            if (m.value) {
                EXPECT_GT(m.value->sigma, 0.0) << m.id;
                EXPECT_TRUE(std::isfinite(m.value->value)) << m.id;
            } else {
                EXPECT_EQ(m.reason.back(), '.') << m.id;
            }
            EXPECT_TRUE(seen.insert({m.id, m.moment}).second) << m.id << " twice";
        }
    }
    Clip empty;
    for (const auto& m : measure::measureAll(empty.input())) {
        EXPECT_FALSE(m.value) << m.id << " from nothing";
        EXPECT_FALSE(m.reason.empty());
    }
}

TEST(Honesty, LessSureMarksWidenEverySigma) {
    Camera camera;
    const auto a = film(swing(), camera, 1.0), b = film(swing(), camera, 6.0);
    const auto sure = measure::measureAll(a.input());
    const auto unsure = measure::measureAll(b.input());
    for (std::size_t i = 0; i < sure.size(); ++i) {
        const bool onlyTimes =
            sure[i].id == "tempo_ratio" || (sure[i].value && sure[i].value->unit == base::Unit::seconds);
        if (sure[i].value && unsure[i].value && !onlyTimes) {
            EXPECT_GT(unsure[i].value->sigma, sure[i].value->sigma) << sure[i].id;
        }
    }
}

// Between two frames a point runs on a curve that nobody saw: fewer frames a second, less sure numbers.
TEST(Honesty, FewerFramesASecondWidenTheSigma) {
    const auto at = [](double fps) {
        Camera camera;
        std::vector<std::pair<MomentId, Pose>> poses;
        constexpr double hit = 0.2 + 0.5 / 30.0;
        for (int i = 0; i <= static_cast<int>(0.4 * fps); ++i) {
            Pose p;
            p.shift = 0.15 * std::sin(4.0 * i / fps);
            poses.emplace_back(MomentId::address, p);
        }
        auto clip = film(poses, camera, 1.0);
        for (std::size_t i = 0; i < clip.track.size(); ++i) {
            clip.track[i].time = base::Seconds{static_cast<double>(i) / fps};
        }
        // Half way between two frames at either rate.
        const double frame = (std::floor(hit * fps) + 0.5) / fps;
        clip.moments = {{MomentId::address, base::Seconds{0.0}, base::Seconds{0.0}, "test"},
                        {MomentId::impact, base::Seconds{frame}, base::Seconds{0.0}, "test"}};
        return value(measure::measureAll(clip.input()), "pelvis_shift", MomentId::impact);
    };
    const auto fast = at(240), slow = at(60), slower = at(30);
    EXPECT_GT(slow.sigma, fast.sigma);
    EXPECT_GT(slower.sigma, slow.sigma);
}

// Equipment Rules (R&A / USGA, 2019), Part 2, 1c: at most 48 in = 1219.2 mm, putters apart.
TEST(Equipment, AClubTooLongMeansAWrongScale) {
    Camera camera;
    const auto withClub = [&](double metres, marks::ClubKind kind) {
        Pose p;
        p.extra[Landmark::club_butt] = {0, 0, metres};
        p.extra[Landmark::club_head] = {0, 0, 0};
        auto clip = film({{MomentId::address, p}}, camera);
        clip.context.club = marks::Club{kind, std::nullopt};
        return measure::scaleWarnings(clip.input(), {});
    };
    EXPECT_TRUE(withClub(1.143, marks::ClubKind::driver).empty());
    EXPECT_EQ(withClub(1.40, marks::ClubKind::driver).size(), 1U);
    EXPECT_TRUE(withClub(1.40, marks::ClubKind::putter).empty());
}
