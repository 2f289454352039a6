// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "marks/landmark.h"

#include <algorithm>

namespace plumbmark::marks {
namespace {
constexpr std::array<std::string_view, kLandmarkCount> kNames{
    "nose",         "head_centre", "head_crown",    "head_front",     "head_back",   "lead_ear",
    "trail_ear",    "neck_base",   "lead_shoulder", "trail_shoulder", "lead_elbow",  "trail_elbow",
    "lead_wrist",   "trail_wrist", "lead_hip",      "trail_hip",      "lead_knee",   "trail_knee",
    "lead_ankle",   "trail_ankle", "lead_heel",     "trail_heel",     "lead_toe",    "trail_toe",
    "grip",         "belt_buckle", "sternum",       "pelvis_rear",    "club_butt",   "club_head",
    "leading_edge", "ball",        "stick_near",    "stick_far",      "ground_lead", "ground_trail"};
static_assert(!kNames.back().empty(), "one name per landmark");
} // namespace

std::string_view landmarkName(Landmark landmark) {
    return kNames[static_cast<std::size_t>(landmark)];
}

std::optional<Landmark> landmarkFromName(std::string_view name) {
    const auto it = std::find(kNames.begin(), kNames.end(), name);
    if (it == kNames.end()) {
        return std::nullopt;
    }
    return static_cast<Landmark>(it - kNames.begin());
}

std::size_t frameAt(const Track& track, base::Seconds time) {
    const auto after = std::upper_bound(track.begin(), track.end(), time,
                                        [](base::Seconds t, const FrameMarks& f) { return t < f.time; });
    return after == track.begin() ? 0 : static_cast<std::size_t>(after - track.begin()) - 1;
}

std::optional<Mark> markAt(const Track& track, Landmark landmark, base::Seconds time) {
    if (track.empty() || time < track.front().time || time > track.back().time) {
        return std::nullopt;
    }
    const std::size_t i = frameAt(track, time);
    const auto& a = track[i][landmark];
    if (i + 1 == track.size() || track[i].time == time) {
        return a;
    }
    const auto& b = track[i + 1][landmark];
    if (!a || !b) {
        return std::nullopt;
    }
    const double k = (time - track[i].time) / (track[i + 1].time - track[i].time);
    return Mark{a->at + (b->at - a->at) * k, std::max(a->sigma, b->sigma), std::max(a->origin, b->origin)};
}

} // namespace plumbmark::marks
