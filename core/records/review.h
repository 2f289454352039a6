// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/geometry.h"
#include "base/ids.h"
#include "base/quantity.h"
#include "base/result.h"
#include "records/value.h"

/// A spoken review: what the coach did while talking, and the voice. Not a film of the screen: the acts play
/// back at any size and orientation, and a stretch can be done again.
namespace plumbmark::records {

namespace kind {
inline constexpr std::string_view review = "review"; ///< belongs to a lesson; a newer one replaces it
inline constexpr std::string_view voice = "voice";   ///< belongs to a lesson; reviews name it
/// Belongs to a clip: an instant that the coach wants to show again, or (replacing that) no longer.
inline constexpr std::string_view starred = "starred";
} // namespace kind

enum class Act {
    go,     ///< to a time in a film; what ran goes on running from there
    play,   ///< lets the film run
    freeze, ///< stops it
    zoom,   ///< to a part of the picture, or back to all of it
    draw,   ///< one stroke more
    clear,  ///< takes all strokes away
    marks,  ///< shows or hides what the software marked
    beside, ///< another film beside this one, at the same position; or this one alone again
    light,  ///< lights a checkpoint with its state in words; or puts it out
};
[[nodiscard]] std::string_view actName(Act act);
[[nodiscard]] std::optional<Act> actFromName(std::string_view name);

/// The same position in two films: presentation seconds of the one, of the other.
struct SamePosition {
    base::Seconds here, there;
    friend bool operator==(const SamePosition&, const SamePosition&) = default;
};

/// A checkpoint as it was judged when the coach lit it. Words and state are kept, so that it shows the same
/// where nothing can be measured.
struct LitCheck {
    std::string check; ///< id of the checkpoint
    std::string state; ///< "good", "watch", "work", "unknown"
    std::string words; ///< "Spine tilt at address 8.3 ± 1.5°"
    friend bool operator==(const LitCheck&, const LitCheck&) = default;
};

struct ReviewAct {
    std::int64_t atMs = 0; ///< milliseconds of the review, >= 0
    Act act = Act::freeze;
    std::optional<base::Id> clip;        ///< go: the clip; nothing: the one that is shown. beside: the other
                                         ///< clip; nothing: alone again
    base::Seconds time;                  ///< go: presentation seconds
    double speed = 1.0;                  ///< play: film seconds a second, 0.01 .. 8
    std::optional<base::Box> zoom;       ///< zoom: upright picture pixels; nothing: the whole picture
    std::vector<base::Vec2> points = {}; ///< draw: 2 .. 500 points, upright picture pixels
    bool on = true;                      ///< marks, light; a light out without an id: all of them
    std::vector<SamePosition> same = {}; ///< beside: 1 .. 200, rising; straight in between, held outside
    LitCheck lit = {};                   ///< light
};

/// A stretch of a voice and where it is heard; whole milliseconds.
struct VoicePiece {
    base::Id voice{base::Id::Bytes{}}; ///< the fact that holds it
    std::int64_t atMs = 0;             ///< of the review
    std::int64_t fromMs = 0, toMs = 0; ///< of the voice
    friend bool operator==(const VoicePiece&, const VoicePiece&) = default;
};

struct ReviewCaption {
    std::int64_t fromMs = 0, toMs = 0; ///< of the voice
    std::string text;
};

/// Without acts, voice, captions and length it is only the coach's three lines.
struct Review {
    std::int64_t lengthMs = 0;
    std::optional<base::Id> voice;       ///< the fact that holds the voice, heard from 0 on as it is
    std::vector<VoicePiece> pieces;      ///< instead, once it was cut: by time, not overlapping
    std::vector<ReviewAct> acts;         ///< by time
    std::vector<ReviewCaption> captions; ///< by time, not overlapping
    std::string saw, said, next;         ///< three lines
};

struct Voice {
    std::string format = "m4a";
    std::int64_t lengthMs = 0;
    std::vector<std::uint8_t> bytes;
};

struct Starred {
    base::Seconds time; ///< presentation seconds
    bool on = true;
};
[[nodiscard]] Object bodyOf(const Starred& value);
[[nodiscard]] std::optional<Starred> starredOf(const Object& body);

[[nodiscard]] inline bool spoken(const Review& value) {
    return !value.acts.empty();
}
[[nodiscard]] inline bool hasVoice(const Review& value) {
    return value.voice.has_value() || !value.pieces.empty();
}

[[nodiscard]] Object bodyOf(const Review& value);
[[nodiscard]] Object bodyOf(const Voice& value); ///< bytes as base64
/// Acts this version does not know are left out; nothing where no length is told.
[[nodiscard]] std::optional<Review> reviewOf(const Object& body);
[[nodiscard]] std::optional<Voice> voiceOf(const Object& body);

/// Longest review: half an hour.
inline constexpr std::int64_t kMostReviewMs = 30LL * 60 * 1000;
/// Longest voice that fits one record at the bit rate we keep.
inline constexpr std::size_t kMostVoiceBytes = 3'000'000;

/// Errors (input): "record.bad_value": the sentence names the act and what is wrong.
base::Result<void> check(const Review& value);

/// What is to be seen at one instant of a review. Pure; the app and the rendered film both stand on it.
struct ReviewView {
    std::optional<base::Id> clip; ///< nothing before the first act that names one
    base::Seconds time;           ///< of the film; may lie beyond its end, where the last frame stays
    std::optional<base::Box> zoom;
    std::vector<std::vector<base::Vec2>> strokes;
    bool marks = false;
    std::optional<base::Id> beside; ///< the film beside it
    base::Seconds besideTime;       ///< of that film
    std::vector<LitCheck> lights;   ///< in the order they were lit
    friend bool operator==(const ReviewView&, const ReviewView&) = default;
};
[[nodiscard]] ReviewView viewAt(const Review& review, double milliseconds);
/// The same, with what decides how it goes on.
struct ReviewStanding {
    ReviewView view;
    double speed = 0.0;             ///< film seconds a second; 0: the film stands
    std::vector<SamePosition> same; ///< of the film beside
};
[[nodiscard]] ReviewStanding standingAt(const Review& review, double milliseconds);

} // namespace plumbmark::records
