// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "records/review.h"

#include <gtest/gtest.h>

using namespace plumbmark;
using namespace plumbmark::records;

namespace {

const base::Id kClip = *base::Id::fromHex("000102030405060708090a0b0c0d0e0f");
const base::Id kOther = *base::Id::fromHex("100102030405060708090a0b0c0d0e0f");

ReviewAct act(std::int64_t at, Act what) {
    ReviewAct a;
    a.atMs = at;
    a.act = what;
    return a;
}

Review made() {
    Review r;
    r.lengthMs = 10'000;
    ReviewAct go = act(0, Act::go);
    go.clip = kClip;
    go.time = base::Seconds{0.5};
    ReviewAct play = act(1000, Act::play);
    play.speed = 0.25;
    ReviewAct zoom = act(3500, Act::zoom);
    zoom.zoom = base::Box{10, 20, 300, 200};
    ReviewAct stroke = act(4000, Act::draw);
    stroke.points = {{1, 2}, {3.5, 4}};
    ReviewAct back = act(6000, Act::go);
    back.time = base::Seconds{1.0};
    ReviewAct other = act(8000, Act::go);
    other.clip = kOther;
    r.acts = {go, play, act(3000, Act::freeze), zoom, stroke, act(4500, Act::marks), back, other};
    r.captions = {{0, 900, "one"}, {900, 2000, "two"}};
    r.saw = "narrow";
    r.next = "two weeks";
    return r;
}

} // namespace

TEST(ReviewRecord, ComesBackAsItWas) {
    const Object body = bodyOf(made());
    const auto text = canonicalText(Value(body));
    ASSERT_TRUE(text);
    const auto again = reviewOf(*parseJson(*text)->object());
    ASSERT_TRUE(again);
    EXPECT_EQ(bodyOf(*again), body);
    EXPECT_EQ(again->acts.size(), 8U);
    EXPECT_EQ(again->acts[3].zoom, (base::Box{10, 20, 300, 200}));
    EXPECT_EQ(again->captions[1].text, "two");
    EXPECT_EQ(again->said, "");
    EXPECT_TRUE(check(*again));
    Object newer = body;
    newer["acts"] = Array{Object{{"act", "sing"}, {"at_ms", 5}}};
    EXPECT_TRUE(reviewOf(newer)->acts.empty()) << "acts of a newer version are left out";
    EXPECT_FALSE(reviewOf(Object{}));
}

TEST(ReviewRecord, SaysWhatIsToBeSeenAtEachInstant) {
    const Review r = made();
    EXPECT_EQ(viewAt(r, 0).clip, kClip);
    EXPECT_DOUBLE_EQ(viewAt(r, 999.9).time.value(), 0.5);
    EXPECT_DOUBLE_EQ(viewAt(r, 2000).time.value(), 0.75);
    EXPECT_DOUBLE_EQ(viewAt(r, 3000).time.value(), 1.0);
    EXPECT_DOUBLE_EQ(viewAt(r, 3499).time.value(), 1.0) << "frozen";
    EXPECT_FALSE(viewAt(r, 3499).zoom);
    EXPECT_TRUE(viewAt(r, 3500).zoom);
    EXPECT_EQ(viewAt(r, 4000).strokes.size(), 1U);
    EXPECT_FALSE(viewAt(r, 4499).marks);
    EXPECT_TRUE(viewAt(r, 4500).marks);
    EXPECT_EQ(viewAt(r, 6000).time, base::Seconds{1.0});
    EXPECT_EQ(viewAt(r, 6000).strokes.size(), 1U) << "the same clip keeps what is drawn on it";
    const ReviewView other = viewAt(r, 9000);
    EXPECT_EQ(other.clip, kOther);
    EXPECT_TRUE(other.strokes.empty());
    EXPECT_FALSE(other.zoom);
}

TEST(ReviewRecord, RefusesWhatCannotBePlayed) {
    EXPECT_TRUE(check(made()));
    const auto refused = [](auto change) {
        Review r = made();
        change(r);
        const auto result = check(r);
        return !result && result.error().key == "record.bad_value";
    };
    EXPECT_TRUE(refused([](Review& r) { r.acts.clear(); }));
    EXPECT_TRUE(refused([](Review& r) { r.acts[0].clip.reset(); }));
    EXPECT_TRUE(refused([](Review& r) { std::swap(r.acts[1], r.acts[2]); }));
    EXPECT_TRUE(refused([](Review& r) { r.lengthMs = 7000; }));
    EXPECT_TRUE(refused([](Review& r) { r.lengthMs = kMostReviewMs + 1; }));
    EXPECT_TRUE(refused([](Review& r) { r.acts[1].speed = 0.0; }));
    EXPECT_TRUE(refused([](Review& r) { r.acts[1].speed = std::nan(""); }));
    EXPECT_TRUE(refused([](Review& r) { r.acts[0].time = base::Seconds{-1}; }));
    EXPECT_TRUE(refused([](Review& r) { r.acts[3].zoom->width = 0; }));
    EXPECT_TRUE(refused([](Review& r) { r.acts[4].points.pop_back(); }));
    EXPECT_TRUE(refused([](Review& r) { r.acts[4].points[0].x = std::nan(""); }));
    EXPECT_TRUE(refused([](Review& r) { r.captions[1].fromMs = 100; }));
    EXPECT_TRUE(refused([](Review& r) { r.captions[0].text = "\xff"; }));
    EXPECT_TRUE(refused([](Review& r) { r.saw = std::string(20'000, 'x'); }));
}

TEST(ReviewRecord, ThreeLinesAreANoteOfTheirOwn) {
    Review note;
    EXPECT_FALSE(check(note)) << "an empty note says nothing";
    note.said = "one shoe wider";
    EXPECT_TRUE(check(note));
    EXPECT_FALSE(spoken(note));
    EXPECT_EQ(reviewOf(bodyOf(note))->said, "one shoe wider");
    note.lengthMs = 500;
    EXPECT_FALSE(check(note)) << "what has a length needs acts";
}

// Base64 against the vectors of RFC 4648, section 10.
TEST(ReviewRecord, TheVoiceTravelsAsBase64) {
    const std::pair<std::string, std::string> vectors[] = {{"f", "Zg=="},         {"fo", "Zm8="},
                                                           {"foo", "Zm9v"},       {"foob", "Zm9vYg=="},
                                                           {"fooba", "Zm9vYmE="}, {"foobar", "Zm9vYmFy"}};
    for (const auto& [plain, coded] : vectors) {
        const Voice voice{"m4a", 5, {plain.begin(), plain.end()}};
        const Object body = bodyOf(voice);
        EXPECT_EQ(textMember(body, "data"), coded);
        EXPECT_EQ(voiceOf(body)->bytes, voice.bytes);
    }
    for (const char* wrong : {"Zg=", "Z===", "Zg==Zg==", "Zm9$", "=m9v", "Zg=v"}) {
        EXPECT_FALSE(voiceOf(Object{{"format", "m4a"}, {"length_ms", 1}, {"data", wrong}})) << wrong;
    }
}
