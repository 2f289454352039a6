// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "coaching/caution.h"
#include "coaching/judge.h"

using namespace plumbmark;
using namespace plumbmark::coaching;
using marks::MomentId;

namespace {

measure::Measurement told(std::string id, std::optional<MomentId> moment, double value, double sigma,
                          base::Unit unit) {
    measure::Measurement m;
    m.id = std::move(id);
    m.moment = moment;
    m.value = base::Measured{value, sigma, unit, base::Origin::network};
    return m;
}

const CheckpointResult* find(const std::vector<CheckpointResult>& all, std::string_view id) {
    for (const auto& r : all) {
        if (r.id == id) {
            return &r;
        }
    }
    return nullptr;
}

std::string standardText() {
    std::ifstream file(PLUMBMARK_SOURCE_DIR "/core/coaching/playbook/default.json");
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
    const auto at = text.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    return text.replace(at, from.size(), to);
}

} // namespace

TEST(Playbook, TheOneThatComesAlongIsWhole) {
    const auto parsed = Playbook::parse(standardText());
    ASSERT_TRUE(parsed) << parsed.error().sentence;
    EXPECT_EQ(Playbook::standard().checkpoints().size(), parsed->checkpoints().size());
    EXPECT_GT(parsed->checkpoints().size(), 30U);
    for (const auto& c : parsed->checkpoints()) {
        for (const auto& r : c.ranges) {
            EXPECT_FALSE(r.source.empty()) << c.id;
        }
    }
    // Ranges of the trade (common practice, no source): mid-iron stance 1.0 to 1.3, 0.15 outside is work.
    const auto* stance = parsed->find("stance_width");
    ASSERT_NE(stance, nullptr);
    const auto mid = std::find_if(stance->ranges.begin(), stance->ranges.end(), [](const Range& r) {
        return !r.clubs.empty() && r.clubs.front() == ClubGroup::mid_iron;
    });
    EXPECT_DOUBLE_EQ(*mid->goodLow, 1.0);
    EXPECT_DOUBLE_EQ(*mid->goodHigh, 1.3);
    EXPECT_DOUBLE_EQ(*mid->workBelow, 0.85);
}

TEST(Playbook, ABadFileIsRefusedWithLineAndReason) {
    const auto text = standardText();
    const auto lineOf = [](const std::string& t, const std::string& what) {
        return 1 + std::count(t.begin(), t.begin() + static_cast<std::ptrdiff_t>(t.find(what)), '\n');
    };
    const auto refusal = [&](const std::string& bad, const std::string& mark, const std::string& reason) {
        const auto r = Playbook::parse(bad);
        ASSERT_FALSE(r);
        EXPECT_EQ(r.error().kind, base::ErrorKind::input);
        EXPECT_NE(r.error().sentence.find("line " + std::to_string(lineOf(bad, mark)) + ","),
                  std::string::npos)
            << r.error().sentence;
        EXPECT_NE(r.error().sentence.find(reason), std::string::npos) << r.error().sentence;
    };
    refusal(replaced(text, "\"view\": \"face-on\"", "\"view\": \"from above\""), "from above", "face-on");
    refusal(replaced(text, "[0.75, 1.05]", "[1.75, 1.05]"), "[1.75", "low end");
    refusal(replaced(text, "\"work_below\": 0.6,", "\"work_below\": 0.9,"), "0.9,", "below the low end");
    refusal(replaced(text, "\"moment\": \"address\"", "\"moment\": \"adress\""), "adress",
            "not a key moment");
    refusal(replaced(text, "\"id\": \"ball_position\"", "\"id\": \"stance_width\""),
            "\"id\": \"stance_width\",\n      \"label\": \"Ball", "twice");
    EXPECT_FALSE(Playbook::parse(text.substr(0, text.size() / 2)));
    EXPECT_FALSE(Playbook::parse(""));
    EXPECT_FALSE(Playbook::parse("[]"));
    EXPECT_FALSE(Playbook::parse(std::string(100000, '[')));
    EXPECT_EQ(Playbook::read("/nowhere/at/all.json").error().key, "playbook.unreadable");
}

// By hand, standard normal integrals: P(Z < 1) = 0.841345, P(Z < 2) = 0.977250, P(Z < 3) = 0.998650.
TEST(Shares, AreNormalIntegrals) {
    Range r;
    r.goodLow = 0;
    r.goodHigh = 2;
    r.workBelow = -2;
    r.workAbove = 4;
    const auto middle = sharesOf(r, 1, 1);
    EXPECT_NEAR(middle.good, 2 * 0.841345 - 1, 1e-5);
    EXPECT_NEAR(middle.work, 2 * (1 - 0.998650), 1e-5);
    const auto edge = sharesOf(r, 2, 1);
    EXPECT_NEAR(edge.good, 0.5 - (1 - 0.977250), 1e-5);
    EXPECT_NEAR(edge.work, 1 - 0.977250 + 0.00003, 1e-5);
    EXPECT_NEAR(edge.good + edge.watch + edge.work, 1, 1e-12);
    Range open;
    open.goodLow = 0.1;
    open.workBelow = 0.0;
    const auto one = sharesOf(open, 0.0, 0.05);
    EXPECT_NEAR(one.work, 0.5, 1e-9);
    EXPECT_NEAR(one.good, 1 - 0.977250, 1e-5);
}

TEST(Shares, NoBandIsNarrowerThanTwoSigma) {
    Range r;
    r.goodLow = 0;
    r.goodHigh = 2;
    r.workBelow = -0.5;
    r.workAbove = 5;
    const auto w = widen(r, 2.0);
    EXPECT_TRUE(w.changed);
    EXPECT_DOUBLE_EQ(*w.range.goodLow, -1);
    EXPECT_DOUBLE_EQ(*w.range.goodHigh, 3);
    EXPECT_DOUBLE_EQ(*w.range.workBelow, -5);
    EXPECT_DOUBLE_EQ(*w.range.workAbove, 7);
    EXPECT_FALSE(widen(r, 0.2).changed);
}

TEST(Judge, StateIsTheMostProbableAndAdviceIsInHandUnits) {
    marks::ShotContext context;
    context.club = marks::Club{marks::ClubKind::iron, 7};
    BodyCard card;
    card.statureMetres = 1.80;
    const auto stance = [&](double v, double sigma) {
        return judge(Playbook::standard(),
                     {told("stance_width_ratio", MomentId::address, v, sigma, base::Unit::ratio)}, context,
                     card)
            .front();
    };
    EXPECT_EQ(stance(1.15, 0.03).state, State::good);
    EXPECT_EQ(stance(0.93, 0.02).state, State::watch);
    const auto narrow = stance(0.70, 0.03);
    EXPECT_EQ(narrow.state, State::work);
    // 0.30 of a shoulder-joint distance of 0.205 x 1.80 m is 11 cm.
    EXPECT_NE(narrow.help.find("10 cm"), std::string::npos) << narrow.help;
    EXPECT_NE(narrow.help.find("wider"), std::string::npos) << narrow.help;
    EXPECT_NE(narrow.help.find("shoe"), std::string::npos) << narrow.help;
    EXPECT_NEAR(narrow.good + narrow.watch + narrow.work, 1.0, 1e-9);
}

TEST(Judge, CannotTellOnlyWhenGoodAndWorkAreBothLikely) {
    marks::ShotContext context;
    for (double v = 0.5; v < 1.8; v += 0.01) {
        for (const double sigma : {0.01, 0.05, 0.1, 0.2, 0.5}) {
            const auto r = judge(Playbook::standard(),
                                 {told("stance_width_ratio", MomentId::address, v, sigma, base::Unit::ratio)},
                                 context, {})
                               .front();
            EXPECT_EQ(r.state == State::unknown, r.good > 0.15 && r.work > 0.15) << v << " " << sigma;
        }
    }
    measure::Measurement missing;
    missing.id = "stance_width_ratio";
    missing.moment = MomentId::address;
    missing.reason = "The lead ankle could not be seen at \"address\"; mark it by hand in that frame.";
    const auto r = judge(Playbook::standard(), {missing}, context, {}).front();
    EXPECT_EQ(r.state, State::unknown);
    EXPECT_NE(r.help.find("by hand"), std::string::npos) << "says what would help";
}

TEST(Judge, FullSwingChecksNeverFireOnOtherShots) {
    const std::vector<measure::Measurement> all{
        told("stance_width_ratio", MomentId::address, 0.3, 0.01, base::Unit::ratio),
        told("pelvis_turn", MomentId::top, 0, 2, base::Unit::degrees),
        told("head_travel", MomentId::impact, 0.0, 0.005, base::Unit::statures),
        told("tempo_ratio", std::nullopt, 2.0, 0.05, base::Unit::ratio),
        told("shaft_lean", MomentId::impact, 8, 1, base::Unit::degrees)};
    for (const auto shot :
         {marks::ShotKind::chip, marks::ShotKind::putt, marks::ShotKind::practice, marks::ShotKind::pitch}) {
        marks::ShotContext context;
        context.shot = shot;
        for (const auto& r : judge(Playbook::standard(), all, context, {})) {
            EXPECT_EQ(r.id.rfind(std::string(marks::shotKindName(shot)), 0), 0U) << r.id;
        }
    }
    marks::ShotContext putt;
    putt.shot = marks::ShotKind::putt;
    const auto results = judge(Playbook::standard(), all, putt, {});
    const auto* tempo = find(results, "putt_tempo");
    EXPECT_NE(tempo, nullptr);
}

TEST(Judge, ChildrenAndLimitedJointsGetNoAdultRange) {
    const std::vector<measure::Measurement> all{
        told("pelvis_turn", MomentId::top, -10, 2, base::Unit::degrees)};
    BodyCard child;
    child.ageYears = 12;
    const auto a = judge(Playbook::standard(), all, {}, child).front();
    EXPECT_EQ(a.state, State::unknown);
    EXPECT_FALSE(a.goodLow);
    EXPECT_TRUE(a.value) << "the number itself is still shown";
    BodyCard hip;
    hip.limitedJoints = {"lead_hip"};
    EXPECT_EQ(judge(Playbook::standard(), all, {}, hip).front().state, State::unknown);
    EXPECT_EQ(judge(Playbook::standard(), all, {}, {}).front().state, State::work);
}

TEST(Judge, ASchoolsViewIsAtMostWatch) {
    const auto r =
        judge(Playbook::standard(),
              {told("wrist_set_peak_after_arm_level", std::nullopt, -0.5, 0.02, base::Unit::seconds)}, {}, {})
            .front();
    EXPECT_EQ(r.state, State::watch);
    EXPECT_EQ(r.work, 0.0);
}

namespace {
SwingNumbers pushedHip(double offset, double over) {
    return {{told("lead_hip_offset", MomentId::impact, offset, 0.1, base::Unit::hip_joint_distances),
             told("lead_hip_over_ankle", MomentId::impact, over, 0.1, base::Unit::hip_joint_distances)}};
}
} // namespace

TEST(Cautions, LeadHipNeedsBothSignsInThreeOfFive) {
    const auto fires = [](std::vector<SwingNumbers> swings) { return cautions(swings, {}).size(); };
    const auto yes = pushedHip(0.8, 0.3), onlyOffset = pushedHip(0.8, -0.2), no = pushedHip(0.3, -0.2);
    EXPECT_EQ(fires({yes, yes, yes, no, no}), 1U);
    EXPECT_EQ(fires({yes, yes, no, no, no}), 0U);
    EXPECT_EQ(fires({onlyOffset, onlyOffset, onlyOffset, onlyOffset, onlyOffset}), 0U);
    EXPECT_EQ(fires({yes, yes, yes, no, no, no, no, no}), 0U) << "only the last five count";
    EXPECT_EQ(fires({}), 0U);
    const auto c = cautions(std::vector{yes, no, yes, yes, no}, {}).front();
    EXPECT_EQ(c.id, "lead_hip");
    EXPECT_EQ(c.grade, "coach's experience");
    EXPECT_NE(c.seen.find("3 of 5"), std::string::npos) << c.seen;
    EXPECT_NE(c.seen.find("0.80 +- 0.10"), std::string::npos) << c.seen;
    EXPECT_NE(c.words.find("no diagnosis"), std::string::npos);
    EXPECT_NE(c.words.find("physician or licensed physiotherapist"), std::string::npos);
    EXPECT_FALSE(c.ease.empty());
    const auto one = cautions(std::vector{yes}, {});
    ASSERT_EQ(one.size(), 1U);
    EXPECT_NE(one.front().seen.find("Seen in one swing"), std::string::npos);
    EXPECT_NE(one.front().seen.find("proves little"), std::string::npos);
}

TEST(Cautions, PainAloneSpeaksAndNoColourIsNamed) {
    BodyCard card;
    card.painNow = {"lead_hip", "lead_elbow"};
    card.painBefore = {"lower_back", "lead_knee"};
    card.ballsThisWeek = 260;
    const auto all = cautions({}, card);
    std::vector<std::string> ids;
    for (const auto& c : all) {
        ids.push_back(c.id);
        for (const std::string_view colour : {"red", "amber", "green"}) {
            EXPECT_EQ((" " + c.seen + " " + c.ease).find(" " + std::string(colour) + " "), std::string::npos);
        }
    }
    EXPECT_EQ(ids, (std::vector<std::string>{"lead_hip", "lower_back", "lead_knee", "lead_elbow", "volume"}));
    EXPECT_FALSE(cautionsFooter().empty());
}

TEST(Cautions, LowerBackNamesWhatWasSeenAndItsGrade) {
    const SwingNumbers swing{{told("spine_tilt", MomentId::top, -6, 1.5, base::Unit::degrees)}};
    const auto c = cautions(std::vector(4, swing), {});
    ASSERT_EQ(c.size(), 1U);
    EXPECT_EQ(c.front().id, "lower_back");
    EXPECT_EQ(c.front().grade.rfind("weak", 0), 0U);
    EXPECT_NE(c.front().seen.find("-6 +- 2 degrees"), std::string::npos) << c.front().seen;
    const SwingNumbers fine{{told("spine_tilt", MomentId::top, 6, 1.5, base::Unit::degrees)}};
    EXPECT_TRUE(cautions(std::vector(4, fine), {}).empty());
}
