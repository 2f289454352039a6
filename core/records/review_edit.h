// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <span>

#include "base/result.h"
#include "records/review.h"

/// Editing a spoken review. Nothing is recorded or coded anew: an edit makes another timeline of the same
/// acts and of pieces of the same voices. All pure; what a review showed and let hear at an instant of a
/// stretch that is kept, it shows and lets hear at the place to which that stretch moved.
namespace plumbmark::records {

/// What lies between two instants of a review, the end not included; whole milliseconds.
struct ReviewStretch {
    const Review* review = nullptr; ///< borrowed
    std::int64_t fromMs = 0, toMs = 0;
};

/// The stretches one after the other. Notes are those of the first stretch's review. Where one begins, its
/// own film, time, magnification, strokes, marks, lights and speed are there at once. What lies outside a
/// review is left out.
[[nodiscard]] Review joined(std::span<const ReviewStretch> stretches);

/// Errors (input) of all: "review.edit" (a stretch outside the review, or nothing would be left),
/// "review.none" for a note without acts; those of check() for what comes out.
/// Only `fromMs` to `toMs` stays.
base::Result<Review> trimmed(const Review& review, std::int64_t fromMs, std::int64_t toMs);
/// `fromMs` to `toMs` goes.
base::Result<Review> cutOut(const Review& review, std::int64_t fromMs, std::int64_t toMs);
/// The picture stands for so long, in silence; then all goes on as it was.
base::Result<Review> paused(const Review& review, std::int64_t atMs, std::int64_t lengthMs);
/// `again` in the place of `fromMs` to `toMs`; it may be longer or shorter. An empty stretch puts it in
/// between.
base::Result<Review> recordedAgain(const Review& review, std::int64_t fromMs, std::int64_t toMs,
                                   const Review& again);
/// A caption in the place of whatever captions say then; an empty text only takes them away.
base::Result<Review> captioned(const Review& review, const ReviewCaption& caption);

} // namespace plumbmark::records
