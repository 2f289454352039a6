// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/progress.h"
#include "base/result.h"
#include "club/club.h"
#include "club/shaft.h"
#include "coaching/body_card.h"
#include "coaching/checkpoint.h"
#include "marks/landmark.h"
#include "marks/moment.h"
#include "marks/player.h"
#include "measure/measurement.h"
#include "scene/scene.h"
#include "video/clip.h"

namespace plumbmark::analysis {

/// One swing in a clip, seen by a look at motion and sound alone.
struct SwingSeen {
    base::Seconds time;           ///< presentation: the hit heard, or the fastest instant
    bool heard = false;           ///< a hit was heard in it
    int firstFrame = 0;           ///< what is measured of it, from standing still ...
    int lastFrame = 0;            ///< ... to the finish
    base::Seconds from{0}, to{0}; ///< times of these frames
};

/// What the coach gets from one clip.
struct Outcome {
    video::ClipInfo clip;
    marks::ShotContext context;
    marks::TimeScale timeScale;
    scene::Scene scene;
    marks::Track track;
    marks::Moments moments;
    club::ShaftTrack shaft;
    std::optional<club::Ball> ball;
    std::optional<club::Hit> hit; ///< the shaft where the head reaches the ball
    std::vector<measure::Measurement> measurements;
    std::vector<coaching::CheckpointResult> checkpoints;
    std::vector<coaching::Caution> cautions;
    std::vector<std::string> warnings;
    std::vector<SwingSeen>
        swings; ///< all in the clip, where it was looked through (analysis/swings_in_clip.h)
    std::optional<std::size_t> swing; ///< the measured one among them
};

struct Request {
    marks::ShotContext context;
    std::optional<double> rollDegrees;                          ///< tilt sensor
    std::optional<std::pair<base::Vec2, base::Vec2>> plumbEdge; ///< marked by hand
    std::optional<double> captureFps;                           ///< told by the coach
    marks::HandMarks handMarks;
    coaching::BodyCard card; ///< what the student's body card changes of judging and cautions
    /// Key moments set by hand: facts, never moved by software. `foundBy` is always told as "hand mark".
    marks::Moments momentFixes;
};

/// The pose network's bytes as fetched; nothing = go on with hand marks and tracking only.
using NetworkBytes = std::shared_ptr<const std::vector<unsigned char>>;

/// What one pass over the pixels left behind; enough to answer every later question about hand marks without
/// reading a pixel. Opaque.
class Evidence;

struct Analysed {
    Outcome outcome;
    std::shared_ptr<const Evidence> evidence;
};

/// The main job. Nothing in `Analysed` when cancelled.
base::Result<std::optional<Analysed>> analyse(video::Clip& clip, const NetworkBytes& network,
                                              const Request& request, const base::Progress& progress);

/// Same answer with other hand marks, from kept evidence only (no pixel is read). Fast enough for a drag. The
/// moments set by hand are those of the request that made the evidence, unless others are given.
[[nodiscard]] Outcome recompute(const Evidence& evidence, const marks::HandMarks& handMarks);
[[nodiscard]] Outcome recompute(const Evidence& evidence, const marks::HandMarks& handMarks,
                                const marks::Moments& momentFixes);

} // namespace plumbmark::analysis
