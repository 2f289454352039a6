// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "base/quantity.h"
#include "video/clip.h"

namespace plumbmark::capture {

/// Finds hits while the sound comes in, with the finder that serves whole clips (swing::findHits), in windows
/// of 0.3 s that overlap by half so that every onset has its noise before it. Each hit is told once.
class SoundWatch {
  public:
    explicit SoundWatch(double rate) : rate_(rate) {}
    /// Samples that begin at `time`; blocks may be of any length. Answers with the hits that became clear.
    std::vector<base::Seconds> push(std::span<const float> mono, base::Seconds time);

  private:
    double rate_;
    video::Sound window_;
    std::optional<double> told_;
};

} // namespace plumbmark::capture
