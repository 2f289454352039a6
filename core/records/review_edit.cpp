// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "records/review_edit.h"

#include <algorithm>
#include <array>
#include <string>

namespace plumbmark::records {
namespace {

ReviewAct plain(std::int64_t at, Act what) {
    ReviewAct act;
    act.atMs = at;
    act.act = what;
    return act;
}

/// Acts at `at` that lead from one state to another.
void lead(const ReviewStanding& before, const ReviewStanding& after, std::int64_t at,
          std::vector<ReviewAct>& acts) {
    ReviewView was = before.view;
    const ReviewView& is = after.view;
    ReviewAct go = plain(at, Act::go);
    go.clip = is.clip;
    go.time = is.time;
    acts.push_back(go);
    std::vector<SamePosition> same = before.same;
    if (was.clip != is.clip) {
        was.strokes.clear();
        was.lights.clear();
        was.zoom.reset();
        was.beside.reset();
    }
    if (after.speed != 0.0) {
        ReviewAct play = plain(at, Act::play);
        play.speed = after.speed;
        acts.push_back(play);
    } else if (before.speed != 0.0) {
        acts.push_back(plain(at, Act::freeze));
    }
    if (was.zoom != is.zoom) {
        ReviewAct zoom = plain(at, Act::zoom);
        zoom.zoom = is.zoom;
        acts.push_back(zoom);
    }
    if (was.strokes != is.strokes) {
        if (!was.strokes.empty()) {
            acts.push_back(plain(at, Act::clear));
        }
        for (const auto& stroke : is.strokes) {
            ReviewAct draw = plain(at, Act::draw);
            draw.points = stroke;
            acts.push_back(draw);
        }
    }
    if (was.marks != is.marks) {
        ReviewAct marks = plain(at, Act::marks);
        marks.on = is.marks;
        acts.push_back(marks);
    }
    if (was.beside != is.beside || (is.beside && same != after.same)) {
        ReviewAct beside = plain(at, Act::beside);
        beside.clip = is.beside;
        beside.same = is.beside ? after.same : std::vector<SamePosition>();
        acts.push_back(beside);
    }
    if (was.lights != is.lights) {
        if (!was.lights.empty()) {
            ReviewAct out = plain(at, Act::light);
            out.on = false;
            acts.push_back(out);
        }
        for (const LitCheck& lit : is.lights) {
            ReviewAct light = plain(at, Act::light);
            light.lit = lit;
            acts.push_back(light);
        }
    }
}

/// The voice as pieces, whichever way it was kept.
std::vector<VoicePiece> piecesOf(const Review& review) {
    if (review.voice) {
        return {{*review.voice, 0, 0, review.lengthMs}};
    }
    return review.pieces;
}

void addVoice(const ReviewStretch& stretch, std::int64_t at, std::vector<VoicePiece>& pieces) {
    for (VoicePiece piece : piecesOf(*stretch.review)) {
        const std::int64_t before = std::max<std::int64_t>(0, stretch.fromMs - piece.atMs);
        piece.atMs += before;
        piece.fromMs += before;
        piece.toMs -= std::max<std::int64_t>(0, piece.atMs + piece.toMs - piece.fromMs - stretch.toMs);
        if (piece.toMs <= piece.fromMs) {
            continue;
        }
        piece.atMs += at - stretch.fromMs;
        VoicePiece* last = pieces.empty() ? nullptr : &pieces.back();
        if (last != nullptr && last->voice == piece.voice && last->toMs == piece.fromMs &&
            last->atMs + last->toMs - last->fromMs == piece.atMs) {
            last->toMs = piece.toMs; // two stretches that belonged together
        } else {
            pieces.push_back(piece);
        }
    }
}

base::Error outside() {
    return base::inputError("review.edit",
                            "That stretch is not in the review; give one from its beginning to "
                            "its end, in seconds of the review.");
}

base::Result<void> fits(const Review& review, std::int64_t fromMs, std::int64_t toMs) {
    if (!spoken(review)) {
        return base::inputError("review.none", "The lesson has no spoken review yet; record one first.");
    }
    if (fromMs < 0 || toMs < fromMs || toMs > review.lengthMs) {
        return outside();
    }
    return {};
}

base::Result<Review> checked(Review review) {
    if (review.lengthMs <= 0) {
        return base::inputError("review.edit", "Nothing of the review would be left; leave something of it.");
    }
    if (auto good = check(review); !good) {
        return good.error();
    }
    return review;
}

} // namespace

Review joined(std::span<const ReviewStretch> stretches) {
    Review made;
    std::optional<ReviewStanding> before;
    if (!stretches.empty()) {
        made.saw = stretches.front().review->saw;
        made.said = stretches.front().review->said;
        made.next = stretches.front().review->next;
    }
    for (ReviewStretch stretch : stretches) {
        const Review& source = *stretch.review;
        stretch.fromMs = std::max<std::int64_t>(0, stretch.fromMs);
        stretch.toMs = std::min(stretch.toMs, source.lengthMs);
        if (stretch.toMs <= stretch.fromMs || source.acts.empty()) {
            continue;
        }
        const std::int64_t at = made.lengthMs;
        lead(before.value_or(ReviewStanding()), standingAt(source, static_cast<double>(stretch.fromMs)), at,
             made.acts);
        for (const ReviewAct& act : source.acts) {
            if (act.atMs > stretch.fromMs && act.atMs < stretch.toMs) {
                made.acts.push_back(act);
                made.acts.back().atMs += at - stretch.fromMs;
            }
        }
        addVoice(stretch, at, made.pieces);
        for (ReviewCaption caption : source.captions) {
            caption.fromMs = std::max(caption.fromMs, stretch.fromMs) + at - stretch.fromMs;
            caption.toMs = std::min(caption.toMs, stretch.toMs) + at - stretch.fromMs;
            ReviewCaption* last = made.captions.empty() ? nullptr : &made.captions.back();
            if (caption.toMs <= caption.fromMs) {
                continue;
            }
            if (last != nullptr && last->text == caption.text && last->toMs == caption.fromMs) {
                last->toMs = caption.toMs; // cut in the middle of it
            } else {
                made.captions.push_back(std::move(caption));
            }
        }
        made.lengthMs += stretch.toMs - stretch.fromMs;
        before = standingAt(made, static_cast<double>(made.lengthMs));
    }
    // A voice that is heard from its beginning to the end of the review needs no pieces.
    if (made.pieces.size() == 1 && made.pieces.front().atMs == 0 && made.pieces.front().fromMs == 0 &&
        made.pieces.front().toMs >= made.lengthMs) {
        made.voice = made.pieces.front().voice;
        made.pieces.clear();
    }
    return made;
}

base::Result<Review> trimmed(const Review& review, std::int64_t fromMs, std::int64_t toMs) {
    if (auto good = fits(review, fromMs, toMs); !good) {
        return good.error();
    }
    const ReviewStretch stretch{&review, fromMs, toMs};
    return checked(joined(std::span(&stretch, 1)));
}

base::Result<Review> cutOut(const Review& review, std::int64_t fromMs, std::int64_t toMs) {
    if (auto good = fits(review, fromMs, toMs); !good) {
        return good.error();
    }
    if (fromMs == toMs) {
        return outside();
    }
    const std::array stretches{ReviewStretch{&review, 0, fromMs},
                               ReviewStretch{&review, toMs, review.lengthMs}};
    return checked(joined(stretches));
}

namespace {

/// `review` with another stretch in the place of fromMs..toMs; its three lines stay.
Review with(const Review& review, std::int64_t fromMs, std::int64_t toMs, const Review& stretch) {
    const std::array stretches{ReviewStretch{&review, 0, fromMs},
                               ReviewStretch{&stretch, 0, stretch.lengthMs},
                               ReviewStretch{&review, toMs, review.lengthMs}};
    Review made = joined(stretches);
    made.saw = review.saw;
    made.said = review.said;
    made.next = review.next;
    return made;
}

} // namespace

base::Result<Review> paused(const Review& review, std::int64_t atMs, std::int64_t lengthMs) {
    if (auto good = fits(review, atMs, atMs); !good) {
        return good.error();
    }
    if (lengthMs <= 0 || lengthMs > kMostReviewMs) {
        return base::inputError("review.edit", "A pause lasts more than nothing and up to 30 minutes.");
    }
    Review still;
    still.lengthMs = lengthMs;
    ReviewStanding standing = standingAt(review, static_cast<double>(atMs));
    standing.speed = 0.0;
    lead(ReviewStanding(), standing, 0, still.acts);
    return checked(with(review, atMs, atMs, still));
}

base::Result<Review> recordedAgain(const Review& review, std::int64_t fromMs, std::int64_t toMs,
                                   const Review& again) {
    if (auto good = fits(review, fromMs, toMs); !good) {
        return good.error();
    }
    if (auto good = check(again); !good || !spoken(again)) {
        return good ? base::inputError("review.none", "The new stretch holds no acts; record it first.")
                    : good.error();
    }
    return checked(with(review, fromMs, toMs, again));
}

base::Result<Review> captioned(const Review& review, const ReviewCaption& caption) {
    if (auto good = fits(review, caption.fromMs, caption.toMs); !good) {
        return good.error();
    }
    if (caption.fromMs == caption.toMs) {
        return outside();
    }
    Review made = review;
    made.captions.clear();
    const auto keep = [&](std::int64_t from, std::int64_t to, const std::string& text) {
        if (from < to) {
            made.captions.push_back({from, to, text});
        }
    };
    for (const ReviewCaption& old : review.captions) {
        keep(old.fromMs, std::min(old.toMs, caption.fromMs), old.text);
        keep(std::max(old.fromMs, caption.toMs), old.toMs, old.text);
    }
    if (!caption.text.empty()) {
        made.captions.push_back(caption);
    }
    std::sort(made.captions.begin(), made.captions.end(),
              [](const auto& a, const auto& b) { return a.fromMs < b.fromMs; });
    return checked(std::move(made));
}

} // namespace plumbmark::records
