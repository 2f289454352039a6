// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Every demo fault must be found as the first cause or as a named rival, from the exact truth of the demo
// swings with the sigmas that the program itself gives on film.
#include <gtest/gtest.h>

#ifdef PLUMBMARK_HAS_DEMO

#include <algorithm>
#include <string>

#include "coaching/judge.h"
#include "demo/truth.h"
#include "reasoning/explain.h"

using namespace plumbmark;
using namespace plumbmark::reasoning;

namespace {

/// Medians of the program's own sigmas on rendered development clips (120 frames a second, face-on and
/// down-the-line, no hand marks). Turns and the elbow at the top are not told without hand marks: there the
/// sigma is that of a stick through the belt loops or careful marks (turn 5, elbow 8).
struct Typical {
    std::string_view id;
    double sigma;
};
constexpr Typical kTypical[] = {{"stance_width_ratio", 0.18},
                                {"ball_position", 0.18},
                                {"spine_tilt", 4.5},
                                {"spine_tilt_change", 3.5},
                                {"head_to_trail_ankle", 0.14},
                                {"head_travel", 0.011},
                                {"head_rise", 0.012},
                                {"pelvis_shift", 0.008},
                                {"chest_share_of_shift", 0.19},
                                {"lead_line_tilt", 2.5},
                                {"lead_hip_offset", 0.3},
                                {"shaft_lean", 3.9},
                                {"wrist_set_kept_corrected", 0.17},
                                {"wrist_set_peak_after_arm_level", 0.09},
                                {"release_bisector_angle", 12.7},
                                {"finish_head_over_lead_ankle", 0.15},
                                {"tempo_ratio", 0.13},
                                {"forward_bend_change", 4.3},
                                {"pelvis_depth", 0.007},
                                {"hand_path", 0.027},
                                {"trail_foot_pitch", 9.0},
                                {"shaft_past_level", 2.0},
                                {"pelvis_turn", 5.0},
                                {"chest_turn", 5.0},
                                {"shoulder_turn", 5.0},
                                {"lead_elbow_flex", 8.0}};

base::Unit unitOf(const std::string& text) {
    for (const auto unit : {base::Unit::degrees, base::Unit::seconds, base::Unit::ratio, base::Unit::statures,
                            base::Unit::stance_widths, base::Unit::hip_joint_distances}) {
        if (base::unitName(unit) == text) {
            return unit;
        }
    }
    return base::Unit::ratio;
}

Explanation explained(const std::string& name, std::uint64_t seed) {
    demo::CaseOptions options;
    options.name = name;
    options.seed = seed;
    const demo::Spec spec = *demo::makeSpec(options);
    const demo::Motion motion(spec.body, demo::clubSize(spec.club, spec.body.stature), spec.swing, spec.seed);
    std::vector<measure::Measurement> all;
    for (const auto& v : demo::trueMeasurements(spec, motion, demo::trueMoments(spec, motion))) {
        const auto sigma = std::find_if(std::begin(kTypical), std::end(kTypical),
                                        [&](const Typical& t) { return t.id == v.id; });
        if (sigma != std::end(kTypical)) {
            all.push_back({v.id, v.moment,
                           base::Measured{v.value, sigma->sigma, unitOf(v.unit), base::Origin::network}, "",
                           1});
        }
    }
    std::vector<coaching::CheckpointResult> checkpoints;
    for (const auto view :
         {marks::View::faceOn, marks::View::downTheLine}) { // the swing filmed from both sides
        marks::ShotContext context;
        context.view = view;
        context.club = spec.club;
        const auto judged = coaching::judge(coaching::Playbook::standard(), all, context, {});
        checkpoints.insert(checkpoints.end(), judged.begin(), judged.end());
    }
    return explain(coaching::Playbook::standard(), checkpoints, {});
}

bool named(const Explanation& e, std::string_view node) {
    return (e.first && e.first->node == node) ||
           std::any_of(e.rivals.begin(), e.rivals.end(), [&](const Cause& c) { return c.node == node; });
}

std::string told(const Explanation& e) {
    std::string text = std::string(verdictName(e.verdict)) + ":";
    if (e.first) {
        text += " " + e.first->node;
    }
    for (const auto& r : e.rivals) {
        text += ", rival " + r.node + " (" + std::string(presenceName(e.node(r.node)->presence)) + ")";
    }
    return text;
}

} // namespace

TEST(DemoFaults, EachIsTheFirstCauseOrANamedRival) {
    struct Case {
        std::string name;
        std::vector<std::string_view> nodes; ///< any of them is the fault that was built in
    };
    for (const auto& c :
         {Case{"narrow-drift", {"narrow_stance", "drift_back"}}, Case{"hip-pushed", {"hip_pushed"}},
          Case{"stalled-pelvis", {"pelvis_square"}}, Case{"lost-bend", {"stands_up"}},
          Case{"stay-back", {"finish_back"}}, Case{"ball-forward", {"ball_forward"}},
          Case{"over-turned", {"pelvis_over_turned"}}, Case{"elbow-collapse", {"elbow_collapsed"}},
          Case{"over-long", {"over_long"}}, Case{"stand-up", {"stands_up"}}}) {
        for (const std::uint64_t seed : {1}) {
            const auto e = explained(c.name, seed);
            EXPECT_TRUE(std::any_of(c.nodes.begin(), c.nodes.end(), [&](auto n) { return named(e, n); }))
                << c.name << " " << seed << ": " << told(e);
        }
    }
    // A narrow stance cannot be told for sure at the film's sigma; it is named, and the drift is the
    // proposal.
    const auto drift = explained("narrow-drift", 1);
    ASSERT_TRUE(drift.first);
    EXPECT_EQ(drift.first->node, "drift_back") << told(drift);
    EXPECT_TRUE(named(drift, "narrow_stance")) << told(drift);
}

// A value on the very edge of its range (the demo's wrist set kept, 0.645 of 0.65) may stay unclear; a cause
// is never proposed, and most seeds name nothing at all.
TEST(DemoFaults, TheSoundSwingYieldsNone) {
    int clean = 0;
    for (const std::uint64_t seed : {1, 2, 3}) {
        const auto e = explained("sound", seed);
        EXPECT_FALSE(e.first) << told(e);
        for (const auto& r : e.rivals) {
            EXPECT_EQ(e.node(r.node)->presence, Presence::unclear) << told(e);
        }
        clean += e.verdict == Verdict::nothing_found;
    }
    EXPECT_GE(clean, 2);
}

#endif
