// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/tables.h"

#include "hostile.h"

#include <gmock/gmock.h>
#include <locale>
#include <nlohmann/json.hpp>

#include "outcome_for_tests.h"

using namespace plumbmark;
using namespace plumbmark::exporting;
using testing::HasSubstr;
using testing::Not;

namespace {

/// A reader of RFC 4180 written from its grammar (section 2): records end with CRLF, a quoted field may hold
/// anything, a quote in it is doubled.
std::vector<std::vector<std::string>> readCsv(const std::string& csv) {
    std::vector<std::vector<std::string>> records(1);
    records.back().emplace_back();
    bool quoted = false;
    for (std::size_t i = 0; i < csv.size(); ++i) {
        std::string& field = records.back().back();
        const char c = csv[i];
        if (quoted) {
            if (c == '"' && i + 1 < csv.size() && csv[i + 1] == '"') {
                field += '"';
                ++i;
            } else if (c == '"') {
                quoted = false;
            } else {
                field += c;
            }
        } else if (c == '"') {
            EXPECT_TRUE(field.empty()) << "a quote inside a plain field";
            quoted = true;
        } else if (c == ',') {
            records.back().emplace_back();
        } else if (c == '\r') {
            EXPECT_EQ(csv.at(i + 1), '\n');
        } else if (c == '\n') {
            EXPECT_EQ(csv.at(i - 1), '\r');
            records.emplace_back();
            records.back().emplace_back();
        } else {
            field += c;
        }
    }
    EXPECT_FALSE(quoted);
    records.pop_back(); // the last line end
    return records;
}

std::vector<TableRow> rows() {
    std::vector<TableRow> all;
    for (const auto& m : test::madeUpOutcome().measurements) {
        all.push_back({"Kim", "2026-11-25", "First", "l1", "c1", 1, test::madeUpOutcome().context, m});
    }
    TableRow other = all.front();
    other.clipId = "c2";
    other.shotNumber = 2;
    other.measurement.method = 4; // newer method: a column of its own
    all.push_back(other);
    return all;
}

} // namespace

TEST(Tables, OneLinePerClipWithUnitsInTheHeader) {
    const auto table = readCsv(measurementsCsv(rows()));
    ASSERT_EQ(table.size(), 3U);
    for (const auto& record : table) {
        EXPECT_EQ(record.size(), 15U);
    }
    EXPECT_EQ(table[0][10], "stature [m]");
    EXPECT_EQ(table[0][11], "spine_tilt at address (method 3) [degrees]");
    EXPECT_EQ(table[0][12], "spine_tilt at address (method 3) sigma [degrees]");
    EXPECT_EQ(table[0][13], "spine_tilt at address (method 4) [degrees]");
    EXPECT_EQ(table[1][11], "8.25");
    EXPECT_EQ(table[1][12], "1.5");
    EXPECT_EQ(table[1][13], "") << "never two methods in one column";
    EXPECT_EQ(table[2][11], "");
    EXPECT_EQ(table[2][13], "8.25");
    EXPECT_EQ(table[1][8], "iron-7");
}

TEST(Tables, NoTextBecomesAFormula) {
    // The signs are those of OWASP, "CSV Injection".
    for (const std::string text : {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "  =1", "\uff1d1"}) {
        const std::string cell = csvText(text);
        EXPECT_TRUE(cell.starts_with("\"'")) << cell;
        EXPECT_TRUE(cell.ends_with("\"")) << cell;
        EXPECT_THAT(cell, Not(HasSubstr("\t")));
    }
    EXPECT_EQ(csvText("Kim"), "\"Kim\"");
    EXPECT_EQ(csvText("a\",\"=1"), "\"a\"\",\"\"=1\"");
    auto hostile = rows();
    for (auto& row : hostile) {
        row.player = "x\",=HYPERLINK(\"http://e\")\r\n=2";
    }
    const auto table = readCsv(measurementsCsv(hostile));
    ASSERT_EQ(table.size(), 3U);
    EXPECT_EQ(table[1][0], "x\",=HYPERLINK(\"http://e\")  =2");
}

// One list for everything that people type (tests/hostile).
TEST(Tables, EveryHostileTextIsOneHarmlessCell) {
    const auto texts = test::hostileTexts();
    ASSERT_GT(texts.size(), 30U);
    for (const std::string& text : texts) {
        auto hostile = rows();
        for (auto& row : hostile) {
            row.player = row.lessonTitle = text;
        }
        const auto table = readCsv(measurementsCsv(hostile));
        ASSERT_EQ(table.size(), 3U) << text;
        for (const auto& line : table) {
            EXPECT_EQ(line.size(), table[0].size()) << text;
        }
        const std::string& cell = table[1][0];
        const std::size_t first = cell.find_first_not_of(' ');
        if (first != std::string::npos) {
            EXPECT_EQ(std::string_view("=+-@\t\r").find(cell[first]), std::string_view::npos) << cell;
        }
        EXPECT_FALSE(cell.starts_with("\uff1d")) << cell;
        const auto json = nlohmann::json::parse(measurementsJson(hostile));
        EXPECT_EQ(json["rows"][0]["player"], text);
    }
}

TEST(Tables, TheJsonHoldsEveryNumberOrItsReason) {
    const auto json = nlohmann::json::parse(measurementsJson(rows()));
    ASSERT_EQ(json["rows"].size(), 3U);
    EXPECT_EQ(json["rows"][0]["value"], 8.25);
    EXPECT_EQ(json["rows"][0]["unit"], "degrees");
    EXPECT_EQ(json["rows"][1]["moment"], nullptr);
    EXPECT_FALSE(json["rows"][1].contains("value"));
    EXPECT_THAT(json["rows"][1]["reason"].get<std::string>(), HasSubstr("more light"));
    EXPECT_EQ(nlohmann::json::parse(measurementsJson({}))["rows"].size(), 0U);
}

TEST(Tables, LandmarksOverTime) {
    analysis::Outcome outcome = test::madeUpOutcome();
    outcome.track[2][marks::Landmark::nose].reset();
    const auto table = readCsv(landmarksCsv(outcome));
    ASSERT_EQ(table.size(), 5U);
    ASSERT_EQ(table[0].size(), 3U + 3U * 4U);
    EXPECT_EQ(table[0][3], "nose x [px]");
    EXPECT_EQ(table[2][1], "0.033333");
    EXPECT_EQ(table[2][2], "0.004167") << "captured at 240, shown at 30";
    EXPECT_EQ(table[2][3], "361");
    EXPECT_EQ(table[2][6], "network");
    EXPECT_EQ(table[3][3], "");
    EXPECT_EQ(table[3].size(), table[0].size());
}

// tests/tools/read_trc.py reads whole files (see the command line's tests); here: where things are.
TEST(Tables, MarkersAreMillimetresFromBetweenTheAnkles) {
    analysis::Outcome outcome = test::madeUpOutcome();
    EXPECT_EQ(landmarksTrc(outcome, "a.trc").error().key, "tables.no_scale");
    outcome.context.statureMetres = 1.6; // 800 px: 2 mm a pixel
    outcome.scene.vertical.angleDegrees = 0.0;
    const auto trc = landmarksTrc(outcome, "a\tb.trc");
    ASSERT_TRUE(trc) << trc.error().sentence;
    EXPECT_THAT(*trc, HasSubstr("(X/Y/Z)\ta_b.trc\n"));
    EXPECT_THAT(*trc, HasSubstr("\n240\t240\t4\t3\tmm\t240\t1\t4\n"));
    // Nose at (360, 300.126), ankles' middle at (355, 1100): 10 mm toward the target, 1599.748 mm up.
    EXPECT_THAT(*trc, HasSubstr("\n1\t0\t10\t1599.748\t0\t"));
    // A left-hander's target is at the picture's left.
    outcome.context.hand = marks::Hand::left;
    EXPECT_THAT(*landmarksTrc(outcome, "a.trc"), HasSubstr("\n1\t0\t-10\t1599.748\t0\t"));
    outcome.timeScale.known = false;
    EXPECT_EQ(landmarksTrc(outcome, "a.trc").error().key, "tables.no_rate");
    outcome.timeScale.known = true;
    outcome.track.clear();
    EXPECT_EQ(landmarksTrc(outcome, "a.trc").error().key, "tables.no_landmarks");
}

TEST(Tables, ACommaLocaleChangesNothing) {
    struct Comma : std::numpunct<char> {
        char do_decimal_point() const override { return ','; }
        char do_thousands_sep() const override { return '.'; }
        std::string do_grouping() const override { return "\3"; }
    };
    const std::string usual = measurementsCsv(rows()) + landmarksCsv(test::madeUpOutcome());
    const std::locale before = std::locale::global(std::locale(std::locale(), new Comma));
    EXPECT_EQ(measurementsCsv(rows()) + landmarksCsv(test::madeUpOutcome()), usual);
    std::locale::global(before);
}
