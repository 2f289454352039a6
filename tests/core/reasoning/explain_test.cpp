// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "coaching/judge.h"
#include "reasoning/explain.h"

using namespace plumbmark;
using namespace plumbmark::reasoning;
using coaching::CheckpointResult;

namespace {

/// Four nodes in a row of stages and one that is no fault: a -> b -> c by several schools, d -> c by one.
constexpr const char* kBook = R"({
  "version": 2,
  "checkpoints": [
    {"id": "ka", "label": "A", "view": "face-on", "measurement": "ma", "moment": "address", "shots": ["full"],
     "advice": {"good": "", "low": "wider", "high": "narrower", "unknown": ""},
     "ranges": [{"good": [0, 2], "work_below": -2, "work_above": 4, "source": "test"}]}
  ],
  "nodes": [
    {"id": "a", "label": "narrow", "stage": "set-up", "evidence": [{"checkpoint": "ka", "side": "low"}],
     "words": ["too close"]},
    {"id": "b", "label": "drift", "stage": "backswing", "evidence": [{"ball": "height", "is": "high"}]},
    {"id": "c", "label": "late", "stage": "impact", "evidence": [{"ball": "start", "is": "trail"}], "words": ["late"]},
    {"id": "d", "label": "face", "stage": "face", "evidence": [{"ball": "curve", "is": "trail"}]},
    {"id": "m", "label": "moves together", "stage": "set-up", "fault": false,
     "evidence": [{"ball": "contact", "is": "thin"}]}
  ],
  "tendencies": [
    {"from": "a", "to": "b", "grade": "several schools", "source": "test"},
    {"from": "b", "to": "c", "grade": "several schools", "source": "test"},
    {"from": "d", "to": "c", "grade": "one school", "source": "test"},
    {"from": "m", "to": "c", "grade": "several schools", "source": "test"}
  ]
})";

coaching::Playbook book(std::string text = kBook) {
    auto read = coaching::Playbook::parse(text);
    EXPECT_TRUE(read) << read.error().sentence;
    return *read;
}

std::string without(std::string text, const std::string& line) {
    const auto at = text.find(line);
    EXPECT_NE(at, std::string::npos);
    return text.erase(at, line.size());
}

CheckpointResult ka(double lowWatch, double lowWork) {
    CheckpointResult c;
    c.id = "ka";
    c.measurement = "ma";
    c.moment = marks::MomentId::address;
    c.value = base::Measured{-1, 1, base::Unit::ratio, base::Origin::network};
    c.judged = true;
    c.low = {lowWatch, lowWork};
    return c;
}

} // namespace

// By hand: P(a) = 0.8 + 0.2/2 = 0.9; P(b) = P(c) = 0.95 by the coach's word; d is not told.
//   explains(a) = 1 - (1 - 0.7 x 0.95)(1 - 0.49 x 0.95) = 1 - 0.335 x 0.5345 = 0.8209425
//   weight(a) = 0.9 (0.2 + 0.8 x 0.8209425) = 0.7710786
//   explains(b) = 0.7 x 0.95 = 0.665; weight(b) = 0.95 (0.2 + 0.8 x 0.665) = 0.6954
//   weight(c) = 0.95 x 0.2 = 0.19; sum 1.6564786; share(a) = 0.4654927
TEST(Explain, WeightsAndSharesAreTheHandComputedOnes) {
    const BallSeen ball{.start = "trail", .height = "high"};
    const auto e = explain(book(), {ka(0.2, 0.8)}, ball);
    ASSERT_EQ(e.verdict, Verdict::found);
    EXPECT_EQ(e.first->node, "a");
    EXPECT_NEAR(e.first->weight, 0.7710786, 1e-6);
    EXPECT_NEAR(e.first->share, 0.4654927, 1e-6);
    ASSERT_EQ(e.rivals.size(), 2U);
    EXPECT_EQ(e.rivals[0].node, "b");
    EXPECT_NEAR(e.rivals[0].weight, 0.6954, 1e-9);
    EXPECT_NEAR(e.rivals[1].weight, 0.19, 1e-9);
    ASSERT_EQ(e.first->chain.size(), 3U);
    EXPECT_EQ(e.first->chain[1].node, "b");
    EXPECT_EQ(e.first->chain[2].node, "c");
    EXPECT_EQ(e.first->chain[2].grade, coaching::Grade::several_schools);
    EXPECT_EQ(e.node("a")->moment, marks::MomentId::address);
    EXPECT_EQ(e.node("a")->value->value, -1);
    EXPECT_EQ(e.open, std::vector<std::string>{"d"}) << "d tends to cause c and was not told";
}

// Without a -> b the narrow stance explains nothing: weight(a) = 0.9 x 0.2 = 0.18 < 0.6954 / 2.
TEST(Explain, DeletingALinkFromTheFileChangesTheProposal) {
    const auto shorter =
        book(without(kBook, R"({"from": "a", "to": "b", "grade": "several schools", "source": "test"},)"));
    const auto e = explain(shorter, {ka(0.2, 0.8)}, BallSeen{.start = "trail", .height = "high"});
    EXPECT_EQ(e.first->node, "b");
}

TEST(Explain, NeverBlamesWhatIsNoFaultByItself) {
    const auto e = explain(book(), {}, BallSeen{.start = "straight", .contact = "thin"});
    EXPECT_EQ(e.node("m")->presence, Presence::there);
    EXPECT_FALSE(e.first);
    const auto both = explain(book(), {}, BallSeen{.start = "trail", .contact = "thin"});
    EXPECT_EQ(both.first->node, "c") << "the movement explains it but is not blamed";
}

TEST(Explain, RemovingTheEvidenceTurnsTheClaimIntoCannotTell) {
    const auto with = explain(book(), {ka(0.1, 0.9)}, {});
    EXPECT_EQ(with.first->node, "a");
    EXPECT_EQ(answerBelief(book(), with, "My feet are Too Close").answer, BeliefAnswer::Answer::yes);
    CheckpointResult gone;
    gone.id = "ka";
    const auto e = explain(book(), {gone}, {});
    EXPECT_EQ(e.verdict, Verdict::cannot_tell);
    EXPECT_FALSE(e.first);
    EXPECT_EQ(answerBelief(book(), e, "too close").answer, BeliefAnswer::Answer::cannot_tell);
    EXPECT_EQ(explain(book(), {}, {}).verdict, Verdict::cannot_tell);
    EXPECT_EQ(explain(book(), {ka(0.1, 0.05)}, {}).verdict, Verdict::nothing_found);
}

TEST(Belief, YesNotThisCannotTell) {
    const auto e = explain(book(), {ka(0.2, 0.8)}, BallSeen{.start = "lead", .height = "high"});
    EXPECT_EQ(answerBelief(book(), e, "I am late").answer, BeliefAnswer::Answer::not_this);
    EXPECT_EQ(answerBelief(book(), e, "I stand too close").answer, BeliefAnswer::Answer::yes);
    const auto unknown = answerBelief(book(), e, "Mercury is in the wrong house");
    EXPECT_EQ(unknown.answer, BeliefAnswer::Answer::cannot_tell);
    EXPECT_TRUE(unknown.node.empty());
    const auto edge = explain(book(), {ka(0.8, 0.1)}, {});
    EXPECT_EQ(edge.node("a")->presence, Presence::unclear) << "0.1 + 0.8 / 2 = 0.5";
    EXPECT_EQ(answerBelief(book(), edge, "too close").answer, BeliefAnswer::Answer::cannot_tell);
}

TEST(Explain, ThePlayersOwnWeightCounts) {
    const BallSeen ball{.start = "trail", .height = "high"};
    const auto e = explain(book(), {ka(0.2, 0.8)}, ball, {{"a", 0.4}});
    EXPECT_EQ(e.first->node, "b") << "0.4 x 0.771 = 0.308 < 0.695 / 2: dropped for this player";
}

TEST(Together, MeanWithSpreadAndError) {
    const auto swing = [](double v) {
        return comparison::SwingNumbers{{"x", marks::MomentId::top,
                                         base::Measured{v, 2, base::Unit::degrees, base::Origin::network}, "",
                                         1}};
    };
    const auto all =
        together({swing(4), swing(6), swing(11)}); // spread sqrt(13), as in the spread's own test
    ASSERT_EQ(all.size(), 1U);
    EXPECT_DOUBLE_EQ(all[0].value->value, 7);
    EXPECT_NEAR(all[0].value->sigma, std::sqrt(13.0 / 3 + 4), 1e-12);
}

TEST(Playbook, CausesAreRefusedWithLineAndReason) {
    const std::string text = kBook;
    const auto refused = [&](const std::string& from, const std::string& to, const std::string& reason) {
        std::string bad = text;
        const auto at = bad.find(from);
        ASSERT_NE(at, std::string::npos) << from;
        const auto line = 1 + std::count(bad.begin(), bad.begin() + static_cast<std::ptrdiff_t>(at), '\n');
        bad.replace(at, from.size(), to);
        const auto r = coaching::Playbook::parse(bad);
        ASSERT_FALSE(r) << to;
        EXPECT_NE(r.error().sentence.find("line " + std::to_string(line) + ","), std::string::npos)
            << r.error().sentence;
        EXPECT_NE(r.error().sentence.find(reason), std::string::npos) << r.error().sentence;
    };
    refused(R"({"from": "d", "to": "c")", R"({"from": "d", "to": "nowhere")", "nowhere");
    refused(R"({"from": "d", "to": "c", "grade": "one school")", R"({"from": "d", "to": "c", "grade": "one")",
            "several schools");
    refused(R"({"from": "d", "to": "c")", R"({"from": "c", "to": "a")", "circle");
    refused(R"({"checkpoint": "ka", "side": "low"})", R"({"checkpoint": "kz", "side": "low"})", "kz");
    refused(R"({"ball": "curve", "is": "trail"})", R"({"ball": "curve", "is": "up"})", "no word");
    refused(R"("stage": "face")", R"("stage": "nowhere")", "set-up");
    refused(R"({"id": "d",)", R"({"id": "c",)", "twice");
}

TEST(Playbook, TheStandardOneTellsCausesWithSourcesAndDrills) {
    const auto& standard = coaching::Playbook::standard();
    EXPECT_GT(standard.nodes().size(), 25U);
    EXPECT_GT(standard.tendencies().size(), 35U);
    for (const auto& t : standard.tendencies()) {
        EXPECT_FALSE(t.source.empty());
    }
    // What little forward lean may come from, by the trade's own list (common practice, no source).
    for (const auto parent : {"pelvis_square", "face_open_early", "ball_forward", "grip_weak", "body_back"}) {
        EXPECT_TRUE(std::any_of(standard.tendencies().begin(), standard.tendencies().end(),
                                [&](const auto& t) { return t.from == parent && t.to == "little_lean"; }))
            << parent;
    }
    EXPECT_FALSE(standard.node("move_together")->fault);
}
