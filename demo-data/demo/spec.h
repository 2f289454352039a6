// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "demo/backdrop.h"
#include "demo/figure.h"
#include "demo/swing.h"

namespace plumbmark::demo {

/// How the swing is filmed. Angles in degrees.
struct Filming {
    double distance = 4.5;    ///< lens to the middle of the stance, m, along the ground
    double lensHeight = 0.95; ///< m
    double yaw = 0;           ///< off square to the target line (face-on) or off the line (down-the-line)
    double roll = 0;          ///< camera turned clockwise as seen from behind it
    double aimX = 0,
           aimZ = 0.95;       ///< what the picture's middle looks at: canonical sideways place and height, m
    double focalShare = 0.83; ///< focal length / longer side of the picture (a phone's main lens)
    double panDegrees = 0;    ///< the helper's hand follows the swing by this much and back
    double shakeDegrees = 0;  ///< unsteady hand
    double shutter = 1.0 / 1000; ///< s
    double rollingReadout = 0;   ///< s from the first row to the last; 0: all rows at once
    double exposure = 1.0;
    double noise = 1.6; ///< sensor noise, 8-bit steps
    double warmth = 0;  ///< white balance error, -1..1
};

/// Sound of the range.
struct Soundscape {
    bool recorded = true;
    double windLevel = 0.01;
    double hitLevel = 0.5;
    std::vector<double> neighbourHits; ///< clip seconds
    double bangFromNextBay = -1;       ///< clip seconds of a loud neighbour's hit, < 0: none
};

/// What a player does between swings, for films of a whole practice session. In each the ball lies untouched.
enum class Interlude {
    none,      ///< the swing itself
    standing,  ///< at the ball, breathing
    waggle,    ///< the club is moved to and fro over the ball
    rehearsal, ///< slowly to the top, held there, slowly back
    walk,      ///< out of the picture toward the target and back
};
[[nodiscard]] std::string_view interludeName(Interlude interlude);
[[nodiscard]] std::optional<Interlude> interludeFromName(std::string_view name);
/// How long each lasts, s, and from when to when a rehearsal is held, s from its beginning.
[[nodiscard]] double interludeSeconds(Interlude interlude);
inline constexpr double kRehearsalHeldFrom = 2.6, kRehearsalHeldTo = 4.4;

/// Everything that decides a clip; one seed and one name give the same clip on every machine.
struct Spec {
    std::string name;
    std::uint64_t seed = 1;
    marks::View view = marks::View::faceOn;
    marks::Hand hand = marks::Hand::right;
    marks::Club club{marks::ClubKind::iron, 7};
    marks::ShotKind shot = marks::ShotKind::full;
    Body body = adultBody(1.78, false, 1.0);
    SwingParams swing;
    Look look;
    Surroundings around;
    Light light;
    Filming filming;
    Soundscape sound;
    bool hasBall = true;
    Interlude interlude = Interlude::none;
};

struct CaseInfo {
    std::string_view name;
    std::string_view sentence; ///< what it shows, for people
};
/// Named cases in the order they are listed. "random" is a swing with random faults, club, hand and player.
[[nodiscard]] const std::vector<CaseInfo>& cases();

/// What a coach would choose about a case; nothing: the case's own or the seed's choice.
struct CaseOptions {
    std::string name = "sound";
    std::uint64_t seed = 1;
    std::optional<marks::View> view;
    std::optional<marks::Hand> hand;
    std::optional<marks::Club> club;
    double fps = 120;
    int width = 1280, height = 720;
    double playbackFps = 0;   ///< 0: as captured; 30 with fps 240 makes a burnt-in slow motion
    std::int64_t bitRate = 0; ///< bit/s; 0: constant quality
    std::optional<double> shutter, rollingReadout, roll, pan, yaw, distance;
    Interlude interlude = Interlude::none; ///< instead of the swing
    std::string fileStem;                  ///< nothing: made from case, view, seed and rate
};

/// Error (input): "demo.unknown_case".
[[nodiscard]] base::Result<Spec> makeSpec(const CaseOptions& options);

} // namespace plumbmark::demo
