// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Real motion capture through a synthetic camera. The file belongs to Debian's assimp-testmodels (CMU
// graphics lab motion capture data, 120 Hz: no restriction, acknowledgement asked) and is read where the
// package put it.
#include <gtest/gtest.h>

#include <array>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <vector>

#include "measure/definition.h"
#include "stick_figure.h"

using namespace plumbmark;
using namespace plumbmark::test;
using marks::Landmark;
using marks::MomentId;

namespace {

constexpr const char* kFile = "/usr/share/assimp/models/BVH/01_01.bvh";

/// Reads the joints of a BVH file; positions in the file's own units, y up.
struct Bvh {
    struct Joint {
        std::string name;
        int parent = -1;
        Vec3 offset;
        std::vector<std::string> channels;
    };
    std::vector<Joint> joints;
    std::vector<std::vector<double>> frames;
    double frameTime = 0;

    static std::optional<Bvh> read(const std::string& path) {
        std::ifstream in(path);
        if (!in) {
            return std::nullopt;
        }
        Bvh b;
        std::vector<int> open;
        std::string word;
        while (in >> word && word != "MOTION") {
            if (word == "ROOT" || word == "JOINT" || word == "End") {
                Joint j;
                in >> j.name;
                j.parent = open.empty() ? -1 : open.back();
                b.joints.push_back(j);
            } else if (word == "{") {
                open.push_back(static_cast<int>(b.joints.size()) - 1);
            } else if (word == "}") {
                open.pop_back();
            } else if (word == "OFFSET") {
                auto& o = b.joints.back().offset;
                in >> o.x >> o.y >> o.z;
            } else if (word == "CHANNELS") {
                int n = 0;
                in >> n;
                b.joints.back().channels.resize(static_cast<std::size_t>(n));
                for (auto& c : b.joints.back().channels) {
                    in >> c;
                }
            }
        }
        std::size_t count = 0;
        std::size_t channels = 0;
        for (const auto& j : b.joints) {
            channels += j.channels.size();
        }
        in >> word >> count >> word >> word >> b.frameTime; // "Frames:" n "Frame" "Time:" t
        b.frames.assign(count, std::vector<double>(channels));
        for (auto& f : b.frames) {
            for (auto& v : f) {
                in >> v;
            }
        }
        return in ? std::optional(b) : std::nullopt;
    }

    [[nodiscard]] std::map<std::string, Vec3> pose(std::size_t frame) const {
        struct Placed {
            std::array<Vec3, 3> axes; // columns
            Vec3 at;
        };
        const auto turn = [](const std::array<Vec3, 3>& m, Vec3 p) {
            return m[0] * p.x + m[1] * p.y + m[2] * p.z;
        };
        std::vector<Placed> placed;
        std::map<std::string, Vec3> out;
        std::size_t c = 0;
        for (const auto& j : joints) {
            Vec3 move = j.offset;
            std::array<Vec3, 3> own{Vec3{1, 0, 0}, Vec3{0, 1, 0}, Vec3{0, 0, 1}};
            for (const auto& name : j.channels) {
                const double v = frames[frame][c++];
                if (name == "Xposition") {
                    move.x = v;
                } else if (name == "Yposition") {
                    move.y = v;
                } else if (name == "Zposition") {
                    move.z = v;
                } else {
                    const double s = std::sin(v * kDegree), k = std::cos(v * kDegree);
                    std::array<Vec3, 3> r{Vec3{1, 0, 0}, Vec3{0, 1, 0}, Vec3{0, 0, 1}};
                    if (name == "Xrotation") {
                        r = {Vec3{1, 0, 0}, Vec3{0, k, s}, Vec3{0, -s, k}};
                    } else if (name == "Yrotation") {
                        r = {Vec3{k, 0, -s}, Vec3{0, 1, 0}, Vec3{s, 0, k}};
                    } else {
                        r = {Vec3{k, s, 0}, Vec3{-s, k, 0}, Vec3{0, 0, 1}};
                    }
                    own = {turn(own, r[0]), turn(own, r[1]), turn(own, r[2])};
                }
            }
            Placed p;
            if (j.parent < 0) {
                p = {own, move};
            } else {
                const auto& up = placed[static_cast<std::size_t>(j.parent)];
                p = {{turn(up.axes, own[0]), turn(up.axes, own[1]), turn(up.axes, own[2])},
                     up.at + turn(up.axes, move)};
            }
            placed.push_back(p);
            if (!out.count(j.name)) {
                out[j.name] = p.at;
            }
        }
        return out;
    }
};

double distance(Vec3 a, Vec3 b) {
    const Vec3 d = a - b;
    return std::sqrt(d.x * d.x + d.y * d.y + d.z * d.z);
}

} // namespace

TEST(MotionCapture, AnglesAndTravelComeBackThroughTheCamera) {
    if (!std::filesystem::exists(kFile)) {
        GTEST_SKIP() << "MotionCapture needs Debian's assimp-testmodels (" << kFile << ").";
    }
    const auto bvh = Bvh::read(kFile);
    ASSERT_TRUE(bvh);
    ASSERT_EQ(bvh->frames.size(), 2752U);
    EXPECT_NEAR(bvh->frameTime, 1.0 / 120, 1e-4);
    // Constant bones of this file: thigh 7.1578, shank 7.4914 units (measured on the open data); 56.4 mm a
    // unit (from memory).
    const auto first = bvh->pose(10);
    for (const char* name :
         {"LeftUpLeg", "LeftLeg", "LeftFoot", "RightFoot", "LeftArm", "RightArm", "Head"}) {
        ASSERT_TRUE(first.count(name)) << name;
    }
    EXPECT_NEAR(distance(first.at("LeftUpLeg"), first.at("LeftLeg")), 7.1578, 2e-3);
    EXPECT_NEAR(distance(first.at("LeftLeg"), first.at("LeftFoot")), 7.4914, 2e-3);
    const double unit = 0.0564;
    const double stature = 1.70;

    // Seen along the body's own front at the chosen start: x to its left (lead), y to the front, z up.
    const std::size_t start = 10;
    const Vec3 hips = first.at("LeftUpLeg") - first.at("RightUpLeg");
    const double heading = std::atan2(hips.z, hips.x);
    const Vec3 origin = (first.at("LeftFoot") + first.at("RightFoot")) * 0.5;
    const double floor = std::min(first.at("LeftFoot").y, first.at("RightFoot").y);
    const auto world = [&](Vec3 p) {
        const Vec3 d = p - origin;
        const double c = std::cos(heading), s = std::sin(heading);
        return Vec3{(d.x * c + d.z * s) * unit, (-d.x * s + d.z * c) * unit, (p.y - floor) * unit + 0.07};
    };
    const std::array<std::pair<Landmark, const char*>, 9> names{{{Landmark::lead_hip, "LeftUpLeg"},
                                                                 {Landmark::trail_hip, "RightUpLeg"},
                                                                 {Landmark::lead_shoulder, "LeftArm"},
                                                                 {Landmark::trail_shoulder, "RightArm"},
                                                                 {Landmark::lead_knee, "LeftLeg"},
                                                                 {Landmark::trail_knee, "RightLeg"},
                                                                 {Landmark::lead_ankle, "LeftFoot"},
                                                                 {Landmark::trail_ankle, "RightFoot"},
                                                                 {Landmark::head_centre, "Head"}}};

    Camera camera;
    camera.distance = 6;
    Clip clip;
    clip.scene.width = camera.width;
    clip.scene.height = camera.rows;
    clip.scene.focalPixels = camera.focal;
    clip.scene.distanceMetres = camera.distance;
    clip.scene.vertical = scene::fromRoll(base::Degrees{0});
    clip.scene.scale = {camera.focal * stature / camera.distance, 0.02, camera.focal / camera.distance,
                        "stature"};
    clip.context.statureMetres = stature;
    std::vector<std::map<Landmark, Vec3>> truth;
    constexpr std::size_t kFrames = 240;
    for (std::size_t i = 0; i < kFrames; ++i) {
        marks::FrameMarks f;
        f.time = base::Seconds{static_cast<double>(i) * bvh->frameTime};
        const auto pose = bvh->pose(start + i);
        truth.emplace_back();
        for (const auto& [l, name] : names) {
            truth.back()[l] = world(pose.at(name));
            f[l] = marks::Mark{camera.see(truth.back()[l]), 0.5, base::Origin::hand};
        }
        clip.track.push_back(f);
        clip.shaft.emplace_back();
    }
    const auto mid = [&](std::size_t i, Landmark a, Landmark b) {
        return (truth[i].at(a) + truth[i].at(b)) * 0.5;
    };
    int within = 0, count = 0;
    for (std::size_t i = 20; i < kFrames; i += 20) {
        clip.moments = {{MomentId::address, base::Seconds{0}, base::Seconds{0}, "test"},
                        {MomentId::top, clip.track[i].time, base::Seconds{0}, "test"}};
        const auto all = measure::measureAll(clip.input());
        const Vec3 spine = mid(i, Landmark::lead_shoulder, Landmark::trail_shoulder) -
                           mid(i, Landmark::lead_hip, Landmark::trail_hip);
        const double tilt = std::atan2(-spine.x, spine.z) / kDegree;
        const auto* t = measure::find(all, "spine_tilt", MomentId::top);
        ASSERT_TRUE(t && t->value) << t->reason;
        // The figure walks upright while the program assumes a golfer's bend: 1.5 degrees is what that costs
        // here.
        EXPECT_NEAR(t->value->value, tilt, 2.0) << i;
        const double shift = (mid(i, Landmark::lead_hip, Landmark::trail_hip).x -
                              mid(0, Landmark::lead_hip, Landmark::trail_hip).x) /
                             stature;
        const auto* s = measure::find(all, "pelvis_shift", MomentId::top);
        ASSERT_TRUE(s && s->value) << s->reason;
        for (const auto& [got, want] : {std::pair{t->value, tilt}, {s->value, shift}}) {
            within += std::abs(got->value - want) < 2.0 * got->sigma;
            ++count;
        }
    }
    EXPECT_GE(within, count * 9 / 10) << "two sigma hold nine of ten";
}
