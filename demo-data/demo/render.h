// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>

#include "base/progress.h"
#include "base/result.h"
#include "demo/spec.h"
#include "video/frame.h"

namespace plumbmark::demo {

struct RenderedSwing {
    std::filesystem::path clip;
    std::filesystem::path truth;
    int frames = 0;
    double seconds = 0; ///< real time spent rendering
};

/// Renders the case into `directory` (made if missing): STEM.mp4 and STEM.truth.json. Two frames at a time.
/// Being cancelled leaves nothing behind.
/// Errors (input): "demo.unknown_case", "demo.size", "demo.rate", "demo.directory"; (failure): those of the
/// clip writer, "demo.unsolved" (the figure cannot reach the ball; another seed can), "demo.cancelled".
base::Result<RenderedSwing> renderCase(const CaseOptions& options, const std::filesystem::path& directory,
                                       const base::Progress& progress = {});

/// One picture of the case, `time` in presentation seconds; for stills and tests.
base::Result<video::RgbImage> renderStill(const CaseOptions& options, double time);

} // namespace plumbmark::demo
