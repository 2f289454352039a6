// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "coaching/judge.h"
#include "reasoning/plan.h"

using namespace plumbmark;
using namespace plumbmark::reasoning;
using coaching::Playbook;
using marks::MomentId;

namespace {

const Playbook& book() {
    return Playbook::standard();
}

measure::Measurement told(std::string id, std::optional<MomentId> moment, double value, double sigma,
                          base::Unit unit) {
    return {std::move(id), moment, base::Measured{value, sigma, unit, base::Origin::hand}, "", 1};
}

std::vector<coaching::CheckpointResult> narrow() {
    return coaching::judge(
        book(), {told("stance_width_ratio", MomentId::address, 0.7, 0.03, base::Unit::ratio)}, {}, {});
}

bool says(const std::vector<std::string>& notes, std::string_view what) {
    return std::any_of(notes.begin(), notes.end(),
                       [&](const auto& n) { return n.find(what) != std::string::npos; });
}

} // namespace

TEST(Plan, APriorityIsWholeAndInHandUnits) {
    const auto plan = draftPlan(book(), {"narrow_stance", "hip_pushed", "over_long"}, narrow(), {}, {});
    ASSERT_EQ(plan.priorities.size(), 2U) << "one or two, never three";
    const auto& p = plan.priorities[0];
    EXPECT_FALSE(p.feel.empty());
    EXPECT_FALSE(p.how.empty());
    EXPECT_EQ(p.checkpoint, "stance_width");
    EXPECT_EQ(p.guard, "pelvis_turn_top");
    EXPECT_EQ(p.trains, "position");
    EXPECT_NE(p.amount.find("cm"), std::string::npos) << p.amount;
    EXPECT_NE(p.conflict.find("pelvis turn"), std::string::npos) << "a wider stance takes some turn";
    EXPECT_LT(p.dose.find("rehearsals"), p.dose.find("balls")) << "slow before fast: " << p.dose;
    EXPECT_NE(p.dose.find("of 10"), std::string::npos);
    EXPECT_GT(plan.lookAgainDays, 0);
}

TEST(Plan, TheDoseRespectsBodyCardAndCautions) {
    const std::vector<std::string> order{
        "chest_leads"}; // step drill: 2 slow sets, 1 with balls; works the back
    const auto plain = draftPlan(book(), order, {}, {}, {});
    ASSERT_EQ(plain.priorities.size(), 1U);
    EXPECT_EQ(plain.priorities[0].rehearsalSets, 2);
    EXPECT_EQ(plain.priorities[0].ballSets, 1);
    coaching::BodyCard card;
    card.painNow = {"lower_back"};
    card.worstPain = 2;
    const auto sore = draftPlan(book(), order, {}, {}, card);
    EXPECT_EQ(sore.priorities[0].rehearsalSets, 1);
    EXPECT_EQ(sore.priorities[0].ballSets, 0);
    EXPECT_TRUE(says(sore.notes, "lower back"));
    card = {};
    card.worstPain = 4;
    EXPECT_EQ(draftPlan(book(), {"narrow_stance"}, {}, {}, card).priorities[0].ballSets, 0);
    card = {};
    card.mostBalls = 10; // the stance gauge asks for two sets of ten
    EXPECT_EQ(draftPlan(book(), {"narrow_stance"}, {}, {}, card).priorities[0].ballSets, 1);
    coaching::Caution volume;
    volume.id = "volume";
    EXPECT_EQ(draftPlan(book(), {"narrow_stance"}, {}, {volume}, {}).priorities[0].ballSets, 1);
    card = {};
    card.askFirst = true;
    const auto none = draftPlan(book(), order, {}, {}, card);
    EXPECT_TRUE(none.priorities.empty());
    EXPECT_TRUE(says(none.notes, "physician or licensed physiotherapist"));
}

TEST(Plan, ConflictsAndMissingDrillsAreSaid) {
    // The ball's place guards by the lean; the lean's own plan would move that guard.
    EXPECT_TRUE(says(draftPlan(book(), {"ball_forward", "little_lean"}, {}, {}, {}).notes, "collide"));
    EXPECT_TRUE(says(draftPlan(book(), {"set_early"}, {}, {}, {}).notes, "no drill"));
    EXPECT_TRUE(draftPlan(book(), {}, {}, {}, {}).priorities.empty());
}

namespace {

/// Swings with a stance, a head place and a pelvis turn of their own.
std::vector<comparison::SwingNumbers> swings(double stance, double inside, double turn, unsigned seed) {
    std::mt19937 random(seed);
    std::normal_distribution<double> gauss;
    std::vector<comparison::SwingNumbers> out;
    for (int i = 0; i < 4; ++i) {
        out.push_back({told("stance_width_ratio", MomentId::address, stance + 0.01 * gauss(random), 0.03,
                            base::Unit::ratio),
                       told("head_to_trail_ankle", MomentId::top, inside + 0.01 * gauss(random), 0.03,
                            base::Unit::stance_widths),
                       told("pelvis_turn", MomentId::top, turn + gauss(random), 2, base::Unit::degrees)});
    }
    return out;
}

} // namespace

TEST(TryIt, StrengthensDropsOrLeavesOpen) {
    const auto before = swings(0.75, -0.2, -45, 1);
    const auto good = judgeTrial(book(), "narrow_stance", {}, before, swings(1.15, 0.3, -45, 2));
    EXPECT_EQ(good.result, TrialResult::Result::strengthened) << good.sentence;
    EXPECT_TRUE(good.guardHeld);
    EXPECT_EQ(good.moved, (std::vector<std::string>{"stance_width_ratio", "head_to_trail_ankle"}));
    const auto alone = judgeTrial(book(), "narrow_stance", {}, before, swings(1.15, -0.2, -45, 3));
    EXPECT_EQ(alone.result, TrialResult::Result::dropped) << alone.sentence;
    const auto same = judgeTrial(book(), "narrow_stance", {}, before, swings(0.75, -0.2, -45, 4));
    EXPECT_EQ(same.result, TrialResult::Result::undecided) << same.sentence;
    const auto stiff = judgeTrial(book(), "narrow_stance", {}, before, swings(1.15, 0.3, -20, 5));
    EXPECT_FALSE(stiff.guardHeld) << "the belt no longer turns away";
    auto two = swings(1.15, 0.3, -45, 6);
    two.resize(2);
    EXPECT_EQ(judgeTrial(book(), "narrow_stance", {}, before, two).result, TrialResult::Result::undecided)
        << "two swings prove little";
    EXPECT_DOUBLE_EQ(weightAfter(1.0, TrialResult::Result::strengthened), 1.5);
    EXPECT_DOUBLE_EQ(weightAfter(0.5, TrialResult::Result::dropped), 0.25);
    EXPECT_DOUBLE_EQ(weightAfter(0.25, TrialResult::Result::dropped), 0.25);
}
