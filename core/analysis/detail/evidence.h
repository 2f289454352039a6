// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "analysis/analysis.h"
#include "body/observation.h"
#include "body/track.h"
#include "club/ball.h"
#include "club/shaft.h"
#include "swing/hits.h"

namespace plumbmark::analysis {

/// Kept from the one pass over the pixels. About 2 kB a frame.
class Evidence {
  public:
    video::ClipInfo clip;
    std::vector<base::Seconds> times;
    Request request;
    marks::TimeScale timeScale;
    std::vector<body::Observation> observations;
    body::AutoTrack body; ///< without hand marks
    std::vector<club::Evidence> shaftEvidence;
    club::ShaftTrack shaft; ///< without hand marks
    std::optional<club::Ball> ball;
    scene::GroundMotion ground;
    std::vector<swing::Hit> hits;
    scene::Vertical vertical;
    std::vector<std::string> warnings; ///< from the pass itself
};

} // namespace plumbmark::analysis
