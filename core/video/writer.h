// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>

#include "base/result.h"
#include "video/frame.h"

namespace plumbmark::video {

struct WriterOptions {
    int width = 0;
    int height = 0;
    double fps = 120.0;         ///< used where write() gets no time of its own
    std::string codec = "h264"; ///< "h264" or "hevc"
    std::int64_t bitRate = 0;   ///< 0: constant quality `quality`
    int quality = 20;           ///< constant rate factor, lower is better
    int keyFrameEvery = 30;
    int bFrames = 0;
    int threads = 2;
    std::string preset = "veryfast";
    int rotationDegrees = 0;          ///< display-matrix metadata only
    std::optional<double> captureFps; ///< written as the capture-rate key
    double soundRate = 0.0;           ///< 0: no sound track
};

/// Writes an MP4 (H.264 or HEVC, AAC). The file appears under its name only when finish() succeeded.
class ClipWriter {
  public:
    static base::Result<std::unique_ptr<ClipWriter>> create(const std::filesystem::path& path,
                                                            const WriterOptions& options);
    virtual ~ClipWriter() = default; ///< without finish(): nothing is left behind
    virtual base::Result<void> write(const RgbImage& picture,
                                     std::optional<base::Seconds> time = std::nullopt) = 0;
    virtual base::Result<void> writeSound(std::span<const float> mono) = 0; ///< from time 0 on, in pieces
    virtual base::Result<void> finish() = 0;
};

} // namespace plumbmark::video
