// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/geometry.h"
#include "base/ids.h"
#include "base/measured.h"
#include "base/result.h"
#include "marks/landmark.h"
#include "marks/moment.h"
#include "marks/player.h"
#include "measure/measurement.h"
#include "records/fact.h"
#include "records/merge.h"

/// The typed side of records: what the bodies of the known kinds hold. Lengths in metres, times in
/// presentation seconds, angles in degrees, pixels of the upright picture. Unknown is nothing, never 0.
namespace plumbmark::records {

struct Player {
    std::string name;
    std::optional<marks::Hand> hand;
    std::optional<double> statureMetres; ///< 0.5 .. 2.5
    std::string note;
    std::string group = {}; ///< a class taught together, as the coach calls it; empty: none
};

struct Lesson {
    std::string title;
    std::string day;    ///< ISO 8601 day it was taught
    std::string wish;   ///< what the student wants
    std::string belief; ///< what the student thinks causes it
    std::string note;
};

/// What the ball did. Lead = toward the lead side (a right-hander's left), so that left- and right-handers
/// share one vocabulary.
enum class BallStart { lead, straight, trail };
enum class BallCurve { lead, straight, trail };
enum class BallHeight { low, normal, high };
enum class Contact { solid, heavy, thin, topped, heel, toe, shank, missed };
enum class BallPlace { forward, middle, back }; ///< in the stance, as the coach saw it
enum class Surface { mat, grass, sand, tee };
[[nodiscard]] std::string_view name(BallStart value);
[[nodiscard]] std::string_view name(BallCurve value);
[[nodiscard]] std::string_view name(BallHeight value);
[[nodiscard]] std::string_view name(Contact value);
[[nodiscard]] std::string_view name(BallPlace value);
[[nodiscard]] std::string_view name(Surface value);
/// From the stable text; nothing for unknown words.
template <class E> [[nodiscard]] std::optional<E> fromName(std::string_view text);

struct Shot {
    marks::ShotKind kind = marks::ShotKind::full;
    std::optional<marks::Club> club;
    std::optional<BallStart> start;
    std::optional<BallCurve> curve;
    std::optional<BallHeight> height;
    std::optional<Contact> contact;
    std::optional<BallPlace> ballPlace;
    std::optional<Surface> surface;
    std::string note;
    bool star = false;                  ///< the coach wants to find it again
    std::vector<std::string> tags = {}; ///< the coach's own words to file it under, sorted
};

/// A film of one swing. The bytes lie beside the library under their SHA-256.
struct Clip {
    std::string sha256;
    std::int64_t bytes = 0;
    marks::View view = marks::View::faceOn;
    marks::Hand hand = marks::Hand::right; ///< the player's true hand, also of a mirrored clip
    bool mirrored = false;
    int width = 0, height = 0, frames = 0;
    double durationSeconds = 0.0, playbackFps = 0.0;
    std::optional<double> captureFps;     ///< told by the clip or its playback rate
    std::optional<double> captureFpsTold; ///< told by the coach
    std::optional<double> statureMetres, cameraDistanceMetres, rollDegrees;
    std::optional<std::pair<base::Vec2, base::Vec2>> plumbEdge;
};

/// A landmark placed by hand. `removed`: the hand mark is taken back and software decides again.
struct MarkFact {
    int frame = 0;
    marks::Landmark landmark = marks::Landmark::nose;
    std::optional<base::Vec2> at; ///< nothing: the point cannot be seen in this frame
    double sigma = 2.0;           ///< px
    bool removed = false;
};

/// A key moment fixed by hand. `removed`: taken back.
struct MomentFact {
    marks::MomentId id = marks::MomentId::address;
    base::Seconds time, sigma;
    bool removed = false;
};

/// A line, shape or word drawn over the film to explain something. It is shown in every frame of the clip.
/// Points by shape: plumb 1 (its foot; `height` is its length), line and arrow 2, angle 3 (the corner in the
/// middle), ellipse 2 (opposite corners of its box), freehand 2 and more, text 1.
struct Drawing {
    enum class Shape { plumb, line, angle, arrow, ellipse, freehand, text };
    /// What it keeps to when body and camera move: the picture's own pixels, the place on the ground, or a
    /// point of the body (or club).
    enum class Tie { picture, ground, body };
    std::string name; ///< told apart by it within a clip; a later version of the same drawing keeps it
    Shape shape = Shape::line;
    Tie tie = Tie::picture;
    marks::Landmark landmark = marks::Landmark::nose; ///< for Tie::body
    int frame = 0;                                    ///< drawn in this frame
    std::vector<base::Vec2> points;                   ///< picture pixels of that frame
    double height = 0.0;                              ///< px, of a plumb line
    std::string text;                                 ///< for Shape::text, at most 200 bytes
    bool removed = false;                             ///< taken away
};
[[nodiscard]] std::string_view name(Drawing::Shape value);
[[nodiscard]] std::string_view name(Drawing::Tie value);

struct CheckpointFinding {
    std::string id;
    std::optional<marks::MomentId> moment;
    std::string state; ///< "good", "watch", "work", "unknown"
    double good = 0.0, watch = 0.0, work = 0.0;
};

/// All numbers of one analysis of one clip, as the coach saw them. `replaces` names the findings before.
struct Findings {
    std::vector<marks::Moment> moments;
    std::vector<measure::Measurement> measurements; ///< each with its method's version
    std::vector<CheckpointFinding> checkpoints;
};

struct PlanItem {
    std::string feel, drill, dose, checkpoint, guard, trains; ///< trains: "position", "range", "speed"
    // Later additions; empty where an older version wrote the plan.
    std::string node, amount, conflict; ///< departure it is for; how much in hand units; what it may cost
    std::string lookAgain;              ///< ISO 8601 day
    std::string demonstration;          ///< id of the coach's own clip
};
struct Plan {
    std::vector<PlanItem> items;
};
struct Practice {
    std::string day; ///< ISO 8601
    std::int64_t repetitions = 0;
    std::string drill, note;
    std::string what; ///< "rehearsals" (also when empty), "balls", "rounds"
};
struct Pain {
    std::string day; ///< ISO 8601
    std::string region;
    std::int64_t level = 0; ///< 0 .. 10 numeric scale
    std::string note;
};

[[nodiscard]] Object bodyOf(const Player& value);
[[nodiscard]] Object bodyOf(const Lesson& value);
[[nodiscard]] Object bodyOf(const Shot& value);
[[nodiscard]] Object bodyOf(const Clip& value);
[[nodiscard]] Object bodyOf(const MarkFact& value);
[[nodiscard]] Object bodyOf(const MomentFact& value);
[[nodiscard]] Object bodyOf(const Drawing& value);
[[nodiscard]] Object bodyOf(const Findings& value);
[[nodiscard]] Object bodyOf(const Plan& value);
[[nodiscard]] Object bodyOf(const Practice& value);
[[nodiscard]] Object bodyOf(const Pain& value);

/// What a body says. Fields that are missing, of a wrong type, or hold words this version does not know are
/// left at "unknown"; where nothing useful is left (a mark without a frame, a clip without a hash) the result
/// is nothing.
[[nodiscard]] Player playerOf(const Object& body);
[[nodiscard]] Lesson lessonOf(const Object& body);
[[nodiscard]] Shot shotOf(const Object& body);
[[nodiscard]] std::optional<Clip> clipOf(const Object& body);
[[nodiscard]] std::optional<MarkFact> markOf(const Object& body);
[[nodiscard]] std::optional<MomentFact> momentOf(const Object& body);
[[nodiscard]] std::optional<Drawing> drawingOf(const Object& body);
[[nodiscard]] Findings findingsOf(const Object& body);
[[nodiscard]] Plan planOf(const Object& body);
[[nodiscard]] std::optional<Practice> practiceOf(const Object& body);
[[nodiscard]] std::optional<Pain> painOf(const Object& body);

/// Refuses what a person should correct before it is kept: empty names, statures of giants, impossible dates,
/// texts over 10,000 bytes, text that is not UTF-8. Errors (input): "record.bad_value".
base::Result<void> check(const Player& value);
base::Result<void> check(const Lesson& value);
base::Result<void> check(const Shot& value);
base::Result<void> check(const Clip& value);

} // namespace plumbmark::records
