// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "base/geometry.h"
#include "base/measured.h"
#include "base/quantity.h"

namespace plumbmark::marks {

/// Points on player, club, ball and ground. Joints are joint centres. Lead = nearer the target.
enum class Landmark : unsigned char {
    nose,
    head_centre,
    head_crown,
    head_front, ///< outline of the head toward the target (face-on) or the ball (down-the-line)
    head_back,  ///< and on the other side; both are edges in the picture, wherever the face looks
    lead_ear,
    trail_ear,
    neck_base,
    lead_shoulder,
    trail_shoulder,
    lead_elbow,
    trail_elbow,
    lead_wrist,
    trail_wrist,
    lead_hip,
    trail_hip,
    lead_knee,
    trail_knee,
    lead_ankle,
    trail_ankle,
    lead_heel,
    trail_heel,
    lead_toe,
    trail_toe,
    grip, ///< hands: midpoint of both hands on the club
    belt_buckle,
    sternum,     ///< facing marks
    pelvis_rear, ///< rear outline of the pelvis (down-the-line)
    club_butt,
    club_head,
    leading_edge,
    ball,
    stick_near,
    stick_far, ///< ends of an alignment stick
    ground_lead,
    ground_trail, ///< two points of the ground line
};
inline constexpr std::size_t kLandmarkCount = static_cast<std::size_t>(Landmark::ground_trail) + 1;

/// Stable text in files: "lead_shoulder", ...
[[nodiscard]] std::string_view landmarkName(Landmark landmark);
[[nodiscard]] std::optional<Landmark> landmarkFromName(std::string_view name);

/// One landmark in one frame.
struct Mark {
    base::Vec2 at;      ///< upright picture pixels
    double sigma = 0.0; ///< one sigma per axis, px, > 0
    base::Origin origin = base::Origin::network;
};

struct FrameMarks {
    base::Seconds time; ///< presentation time from the first frame
    std::array<std::optional<Mark>, kLandmarkCount> points;

    [[nodiscard]] const std::optional<Mark>& operator[](Landmark l) const {
        return points[static_cast<std::size_t>(l)];
    }
    [[nodiscard]] std::optional<Mark>& operator[](Landmark l) { return points[static_cast<std::size_t>(l)]; }
};

/// All marks of a clip, one entry per frame in presentation order.
using Track = std::vector<FrameMarks>;

/// A mark placed by a person: a fact. Software never moves it; it corrects its neighbours in time.
/// `at` empty: the person says the point cannot be seen in this frame.
struct HandMark {
    int frame = 0;
    Landmark landmark = Landmark::nose;
    std::optional<base::Vec2> at;
    double sigma = 2.0; ///< px
};
using HandMarks = std::vector<HandMark>;

/// A landmark between frames: linear between the two enclosing frames that both hold it (sigma: the larger
/// one), else nothing. Exact on a frame.
[[nodiscard]] std::optional<Mark> markAt(const Track& track, Landmark landmark, base::Seconds time);

/// Index of the frame shown at `time` (last frame whose time is <= time; 0 before the first).
[[nodiscard]] std::size_t frameAt(const Track& track, base::Seconds time);

} // namespace plumbmark::marks
