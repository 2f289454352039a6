// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/progress.h"
#include "base/result.h"
#include "video/byte_source.h"
#include "video/frame.h"

namespace plumbmark::video {

struct ClipInfo {
    int width = 0; ///< upright picture, square pixels
    int height = 0;
    int frames = 0;
    base::Seconds duration;  ///< first frame shown to end of last
    int rotationDegrees = 0; ///< clockwise turn that was applied: 0, 90, 180, 270
    /// The clip asks to be shown mirrored, and frames are: left and right may be swapped against the real
    /// scene.
    bool mirrored = false;
    double playbackFps = 0; ///< (frames - 1) / (last time - first time)
    /// Frames per second of real time, where the clip says so (metadata) or playback tells it; else nothing.
    std::optional<double> captureFps;
    std::string captureSource; ///< "metadata", "playback", "unknown"
    bool uneven = false;       ///< some gap between frames is over 1.5 times the median gap
    bool hasSound = false;
    std::string codec;
    std::vector<std::string> warnings; ///< plain sentences ("The file ends early; 212 frames could be read.")
};

/// Mono sound. Sample i is heard at presentation time start + i / rate.
struct Sound {
    double rate = 0.0;
    base::Seconds start; ///< relative to the first frame; may be negative
    std::vector<float> samples;
};

struct ClipOptions {
    std::size_t cacheBytes = std::size_t{192} << 20; ///< frames kept around the last request
    int decoderThreads = 2;
};

/// Frame-exact access to one clip. Every frame is addressed by its place in presentation order; its time is
/// the container's presentation time (edit lists honoured, hidden frames left out).
/// Not thread-safe: one Clip per thread.
class Clip {
  public:
    /// Errors (input): those of openFile, "clip.not_video", "clip.truncated" (nothing readable),
    /// "clip.too_large" (over 8192 pixels a side), "clip.unsupported".
    static base::Result<std::unique_ptr<Clip>> open(const std::filesystem::path& path,
                                                    const ClipOptions& options = {});
    static base::Result<std::unique_ptr<Clip>> open(std::unique_ptr<ByteSource> source,
                                                    const ClipOptions& options = {});
    virtual ~Clip() = default;

    [[nodiscard]] virtual const ClipInfo& info() const = 0;
    /// Presentation time of every frame from the first, strictly rising.
    [[nodiscard]] virtual const std::vector<base::Seconds>& times() const = 0;

    /// Random access, exact. Keeps a bounded cache around recent requests so that steps both ways are cheap.
    /// Errors: "clip.range" (no such frame), "clip.damaged" (the frame can't be decoded any more).
    virtual base::Result<Frame> frame(int index) = 0;

    /// Decodes first..last (inclusive) in order, each frame once, with the decoder's own threads; the visitor
    /// returns false to stop early. Several passes are allowed, and frame() may be called from the visitor.
    /// A frame that a damaged file can't give is left out. Errors: "clip.range", "clip.damaged" (none at
    /// all).
    virtual base::Result<void> stream(int first, int last,
                                      const std::function<bool(const Frame&)>& visit) = 0;

    /// All sound as mono; empty samples where the clip has none.
    virtual base::Result<Sound> sound() = 0;
};

} // namespace plumbmark::video
