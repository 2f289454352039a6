// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "marks/moment.h"
#include "video/clip.h"

namespace plumbmark::analysis::detail {

/// How presentation time relates to real time, before any picture was read. `told`: capture rate the coach
/// told.
[[nodiscard]] inline marks::TimeScale timeScaleOf(const video::ClipInfo& clip,
                                                  const std::optional<double>& told) {
    if (told && clip.playbackFps > 0) {
        return {clip.playbackFps / *told, true, "told"};
    }
    if (clip.captureFps && clip.playbackFps > 0) {
        return {clip.playbackFps / *clip.captureFps, true, clip.captureSource};
    }
    return {1.0, false, "assumed"};
}

} // namespace plumbmark::analysis::detail
