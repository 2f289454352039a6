// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "base/quantity.h"
#include "base/result.h"
#include "video/clip.h"
#include "video/frame.h"

namespace plumbmark::capture {

/// Clips played as if a camera saw them now: frames and sound in time order, one clip after the other on one
/// clock. Serves the command line, the file-fed camera and the tests.
class FileFeed {
  public:
    enum class Pace {
        camera,     ///< each frame when its time has come; who is late gets no frame twice: see Counts
        asFastAsCan ///< without waiting
    };
    struct Sink {
        std::function<bool(const video::Frame&)> frame; ///< false: stop
        std::function<void(std::span<const float>, base::Seconds)> sound;
    };
    struct Counts {
        int frames = 0;
        int late = 0; ///< frames handed over more than 50 ms after their time (camera pace)
        base::Seconds seconds;
    };

    /// Errors: those of video::Clip::open for the first clip that can't be read.
    static base::Result<FileFeed> open(const std::vector<std::filesystem::path>& clips);

    [[nodiscard]] const video::ClipInfo& info() const {
        return clips_.front()->info();
    }                                                             ///< of the first clip
    [[nodiscard]] double soundRate() const { return soundRate_; } ///< 0: no sound
    /// Blocks until all is played or the sink says stop. Sound is handed over in blocks of about 20 ms,
    /// before the frames of its time. Errors: "clip.damaged".
    base::Result<Counts> play(Pace pace, const Sink& sink);

  private:
    std::vector<std::unique_ptr<video::Clip>> clips_;
    double soundRate_ = 0.0;
};

} // namespace plumbmark::capture
