// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "records/review_edit.h"

#include <gtest/gtest.h>

#include <random>

using namespace plumbmark;
using namespace plumbmark::records;

namespace {

const base::Id kClip = *base::Id::fromHex("000102030405060708090a0b0c0d0e0f");
const base::Id kOther = *base::Id::fromHex("100102030405060708090a0b0c0d0e0f");
const base::Id kVoice = *base::Id::fromHex("200102030405060708090a0b0c0d0e0f");
const base::Id kNewVoice = *base::Id::fromHex("300102030405060708090a0b0c0d0e0f");

/// A review of ten seconds with every kind of act, drawn by lot.
Review drawn(unsigned seed) {
    std::mt19937 dice(seed);
    const auto roll = [&](int n) { return static_cast<int>(dice() % static_cast<unsigned>(n)); };
    Review review;
    review.lengthMs = 10'000;
    review.voice = kVoice;
    std::int64_t at = 0;
    for (int i = 0; i < 40; ++i) {
        ReviewAct act;
        act.atMs = at;
        act.act = i == 0 ? Act::go : static_cast<Act>(roll(9));
        act.clip = i == 0 || roll(3) == 0 ? std::optional(roll(2) == 0 ? kClip : kOther) : std::nullopt;
        act.time = base::Seconds{roll(1000) / 500.0};
        act.speed = (1 + roll(8)) / 8.0;
        if (act.act == Act::zoom && roll(3) > 0) {
            act.zoom = base::Box{1.0 * roll(100), 1.0 * roll(100), 50, 40};
        }
        if (act.act == Act::draw) {
            act.points = {{1.0 * roll(100), 2}, {3, 1.0 * roll(100)}};
        }
        act.on = roll(4) > 0;
        if (act.act == Act::beside) {
            act.same = {{base::Seconds{0.0}, base::Seconds{roll(10) / 10.0}},
                        {base::Seconds{1.0}, base::Seconds{1.0 + roll(10) / 10.0}}};
        } else if (act.act != Act::go) {
            act.clip.reset();
        }
        if (act.act == Act::light) {
            act.lit = {"check" + std::to_string(roll(3)), "good", "8.3"};
        }
        review.acts.push_back(act);
        at = std::min<std::int64_t>(9'900, at + roll(500));
    }
    review.captions = {{500, 2000, "one"}, {2000, 9000, "two"}};
    review.saw = "narrow";
    return review;
}

void expectSame(const ReviewView& a, const ReviewView& b, std::int64_t at) {
    ReviewView c = a;
    // Sums of the same terms in another order.
    EXPECT_NEAR(a.time.value(), b.time.value(), 1e-9) << at;
    EXPECT_NEAR(a.besideTime.value(), b.besideTime.value(), 1e-9) << at;
    c.time = b.time;
    c.besideTime = b.besideTime;
    if (!c.beside) {
        c.besideTime = base::Seconds{0};
    }
    ReviewView d = b;
    if (!d.beside) {
        d.besideTime = base::Seconds{0};
    }
    EXPECT_TRUE(c == d) << at;
}

/// Which millisecond of which voice is heard at an instant.
std::optional<std::pair<base::Id, std::int64_t>> heardAt(const Review& review, std::int64_t at) {
    if (review.voice) {
        return std::pair(*review.voice, at);
    }
    for (const VoicePiece& piece : review.pieces) {
        if (at >= piece.atMs && at < piece.atMs + piece.toMs - piece.fromMs) {
            return std::pair(piece.voice, piece.fromMs + at - piece.atMs);
        }
    }
    return std::nullopt;
}

std::string said(const Review& review, std::int64_t at) {
    for (const ReviewCaption& caption : review.captions) {
        if (at >= caption.fromMs && at < caption.toMs) {
            return caption.text;
        }
    }
    return "";
}

} // namespace

// The rule itself: what was seen and heard at an instant that is kept, is seen and heard where it moved.
TEST(ReviewEdit, EveryInstantThatIsKeptStaysWhatItWas) {
    for (unsigned seed = 1; seed <= 12; ++seed) {
        SCOPED_TRACE(seed);
        const Review review = drawn(seed);
        ASSERT_TRUE(check(review)) << check(review).error().sentence;
        Review again = drawn(seed + 100);
        again.lengthMs = 1700;
        std::erase_if(again.acts, [](const ReviewAct& act) { return act.atMs > 1700; });
        again.captions.clear();
        again.voice = kNewVoice;
        const auto cut = cutOut(review, 2345, 4321);
        const auto ends = trimmed(review, 1111, 8888);
        const auto better = recordedAgain(review, 3000, 5000, again);
        const auto still = paused(review, 2500, 700);
        ASSERT_TRUE(cut && ends && better && still);
        EXPECT_EQ(cut->lengthMs, 10'000 - 1976);
        EXPECT_EQ(ends->lengthMs, 7777);
        EXPECT_EQ(better->lengthMs, 9700);
        EXPECT_EQ(still->lengthMs, 10'700);
        const auto compare = [&](const Review& a, std::int64_t at, const Review& b, std::int64_t there) {
            expectSame(viewAt(a, static_cast<double>(at)), viewAt(b, static_cast<double>(there)), at);
            EXPECT_EQ(heardAt(a, at), heardAt(b, there)) << at;
            EXPECT_EQ(said(a, at), said(b, there)) << at;
        };
        for (std::int64_t t = 0; t < cut->lengthMs; t += 13) {
            compare(*cut, t, review, t < 2345 ? t : t + 1976);
        }
        for (std::int64_t t = 0; t < ends->lengthMs; t += 13) {
            compare(*ends, t, review, t + 1111);
        }
        for (std::int64_t t = 0; t < better->lengthMs; t += 13) {
            if (t >= 3000 && t < 4700) {
                compare(*better, t, again, t - 3000);
            } else {
                compare(*better, t, review, t < 3000 ? t : t + 300);
            }
        }
        for (std::int64_t t = 0; t < still->lengthMs; t += 13) {
            if (t < 2500 || t >= 3200) {
                compare(*still, t, review, t < 2500 ? t : t - 700);
            } else {
                expectSame(viewAt(*still, static_cast<double>(t)), viewAt(review, 2500), t);
                EXPECT_EQ(heardAt(*still, t), std::nullopt);
            }
        }
        EXPECT_EQ(cut->saw, "narrow");
        // Edits of edits: three cuts are as good as one.
        const auto three = cutOut(*cutOut(*cutOut(review, 4000, 4321), 2345, 3000), 2345, 3345);
        ASSERT_TRUE(three);
        EXPECT_EQ(three->pieces, cut->pieces);
        for (std::int64_t t = 0; t < cut->lengthMs; t += 13) {
            compare(*three, t, *cut, t);
        }
        // And it comes back from its record as it was.
        EXPECT_EQ(bodyOf(*reviewOf(bodyOf(*better))), bodyOf(*better));
    }
}

TEST(ReviewEdit, AVoiceThatIsHeardToTheEndNeedsNoPieces) {
    const auto shorter = trimmed(drawn(1), 0, 4000);
    ASSERT_TRUE(shorter);
    EXPECT_EQ(shorter->voice, kVoice);
    EXPECT_TRUE(shorter->pieces.empty());
    EXPECT_EQ(trimmed(drawn(1), 10, 4000)->pieces, (std::vector<VoicePiece>{{kVoice, 0, 10, 4000}}));
}

TEST(ReviewEdit, CaptionsTakeThePlaceOfOthers) {
    const auto made = captioned(drawn(1), {1500, 3000, "new"});
    ASSERT_TRUE(made);
    EXPECT_EQ(said(*made, 1499), "one");
    EXPECT_EQ(said(*made, 1500), "new");
    EXPECT_EQ(said(*made, 2999), "new");
    EXPECT_EQ(said(*made, 3000), "two");
    EXPECT_EQ(captioned(*made, {0, 10'000, ""})->captions.size(), 0U);
    EXPECT_EQ(captioned(drawn(1), {3000, 4000, ""})->captions.size(), 3U) << "a hole in the second one";
}

TEST(ReviewEdit, RefusesWhatIsNotThere) {
    const Review review = drawn(1);
    EXPECT_EQ(cutOut(review, 0, 10'000).error().key, "review.edit");
    EXPECT_EQ(cutOut(review, 5, 5).error().key, "review.edit");
    EXPECT_EQ(cutOut(review, 9'000, 10'001).error().key, "review.edit");
    EXPECT_EQ(trimmed(review, 5, 5).error().key, "review.edit");
    EXPECT_EQ(trimmed(review, -1, 5).error().key, "review.edit");
    EXPECT_EQ(paused(review, 10'001, 5).error().key, "review.edit");
    EXPECT_EQ(paused(review, 0, 0).error().key, "review.edit");
    EXPECT_EQ(paused(review, 0, kMostReviewMs).error().key, "record.bad_value") << "too long all in all";
    EXPECT_EQ(captioned(review, {5, 5, "x"}).error().key, "review.edit");
    EXPECT_EQ(cutOut(Review{}, 0, 1).error().key, "review.none");
    EXPECT_FALSE(recordedAgain(review, 0, 5, Review{}));
    Review both = review;
    both.pieces = {{kVoice, 0, 0, 5}};
    EXPECT_FALSE(check(both));
    both.voice.reset();
    EXPECT_TRUE(check(both));
    both.pieces.push_back({kVoice, 4, 0, 5});
    EXPECT_FALSE(check(both)) << "two voices at a time";
}
