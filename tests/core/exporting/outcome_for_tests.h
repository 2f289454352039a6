// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "analysis/analysis.h"

namespace plumbmark::test {

/// A swing made up for tests of what is written about swings: 4 frames at 30 frames/s of a clip captured at
/// 240.
inline analysis::Outcome madeUpOutcome() {
    analysis::Outcome o;
    o.clip.frames = 4;
    o.clip.width = 720;
    o.clip.height = 1280;
    o.clip.rotationDegrees = 90;
    o.clip.duration = base::Seconds{4.0 / 30.0};
    o.clip.playbackFps = 30.0;
    o.clip.captureFps = 240.0;
    o.clip.captureSource = "metadata";
    o.timeScale = {0.125, true, "metadata"};
    o.scene.vertical.angleDegrees = 0.5;
    o.scene.vertical.sigmaDegrees = 0.3;
    o.scene.vertical.source = "told";
    o.scene.width = 720;
    o.scene.height = 1280;
    o.scene.scale.pixelsPerStature = 800;
    o.context.club = marks::Club{marks::ClubKind::iron, 7};
    using marks::Landmark;
    for (int i = 0; i < 4; ++i) {
        marks::FrameMarks frame;
        frame.time = base::Seconds{i / 30.0};
        frame[Landmark::nose] = marks::Mark{{360.0 + i, 300.126}, 1.5, base::Origin::network};
        frame[Landmark::lead_ankle] = marks::Mark{{440.0, 1100.0}, 2.0, base::Origin::hand};
        frame[Landmark::trail_ankle] = marks::Mark{{270.0, 1100.0}, 2.0, base::Origin::tracked};
        o.track.push_back(frame);
    }
    o.moments = {{marks::MomentId::address, base::Seconds{0.0}, base::Seconds{0.01}, "shaft"},
                 {marks::MomentId::impact, base::Seconds{0.1}, base::Seconds{0.001}, "ball+shaft"}};
    measure::Measurement tilt{"spine_tilt", marks::MomentId::address, {}, {}, 3};
    tilt.value = base::Measured{8.25, 1.5, base::Unit::degrees, base::Origin::network};
    measure::Measurement tempo{
        "tempo_ratio", {}, {}, "The top could not be found; a clip with more light helps.", 1};
    o.measurements = {tilt, tempo};
    coaching::CheckpointResult check;
    check.id = "spine_tilt_address";
    check.label = "Spine tilt at address";
    check.moment = marks::MomentId::address;
    check.measurement = "spine_tilt";
    check.state = coaching::State::good;
    check.good = 0.8;
    check.watch = 0.15;
    check.work = 0.05;
    check.value = tilt.value;
    check.goodLow = 2.0;
    check.goodHigh = 10.0;
    check.help = "Keep it.";
    coaching::CheckpointResult unknown;
    unknown.id = "tempo";
    unknown.label = "Tempo";
    unknown.measurement = "tempo_ratio";
    unknown.help = "Film at 120 frames/s or more.";
    o.checkpoints = {check, unknown};
    o.cautions = {{"lead_hip", "coach's experience", "Offset 0.7 +- 0.1.", "A narrower finish.",
                   "Never a diagnosis; see a physician or licensed physiotherapist."}};
    o.warnings = {"The end is cut off."};
    return o;
}

} // namespace plumbmark::test
