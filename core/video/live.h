// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "base/result.h"
#include "video/frame.h"

/// Encoding while the camera runs: pictures are coded as they come and kept in memory in coded form; a
/// stretch of them can be written to a file later without coding them again.
namespace plumbmark::video {

/// One coded picture. Pictures are coded in the order they are shown; from a key picture on they can be read.
struct CodedPicture {
    std::vector<std::uint8_t> bytes;
    base::Seconds time; ///< as the camera told it
    bool key = false;
};

/// How coded pictures are to be read (size, codec, its parameters). Opaque outside this module.
class CodedFormat;

struct LiveOptions {
    int width = 0, height = 0; ///< even
    Frame::Colour colour;      ///< how the frames' planes are meant
    double fps = 60.0;         ///< about; the pictures' own times count
    double keyEverySeconds = 0.5;
    int quality = 23; ///< constant rate factor, lower is better
    int threads = 1;
    std::string preset = "superfast"; ///< must keep up with a camera on two cores
};

/// H.264 without delay: each push gives one coded picture. Not thread-safe.
class LiveEncoder {
  public:
    /// Errors (failure): "writer.options", "writer.no_encoder".
    static base::Result<std::unique_ptr<LiveEncoder>> create(const LiveOptions& options);
    virtual ~LiveEncoder() = default;
    /// The picture must have the encoder's size (one row or column more is cut off) and a later time than the
    /// one before. Errors (failure): "writer.size", "writer.time", "writer.encode", "writer.memory".
    virtual base::Result<CodedPicture> push(const Frame& frame) = 0;
    [[nodiscard]] virtual std::shared_ptr<const CodedFormat> format() const = 0;
};

/// Writes coded pictures and sound to an MP4 in a way that a killed process does not lose them: while it is
/// being written the take lies beside its final name as NAME.part, a stream that can be read up to its last
/// whole picture; finish() makes the MP4 of it, which appears whole or not at all.
class TakeFile {
  public:
    /// Errors (input): "writer.folder"; (failure): "writer.disk".
    static base::Result<std::unique_ptr<TakeFile>>
    begin(const std::filesystem::path& file, std::shared_ptr<const CodedFormat> format, double soundRate);
    virtual ~TakeFile() = default; ///< leaves the part file for recoverTakes() unless finished or abandoned
    /// The first must be a key picture; its time becomes the clip's time 0, and the distances between the
    /// pictures stay exactly what they are (to 1/90000 s). Errors (failure): "writer.disk", "writer.time".
    virtual base::Result<void> add(const CodedPicture& picture) = 0;
    /// Mono samples that begin at `time` on the pictures' clock; after the first picture. A gap is filled
    /// with silence; what lies before the first picture or was written already is left out.
    virtual base::Result<void> addSound(std::span<const float> mono, base::Seconds time) = 0;
    virtual base::Result<void> finish() = 0;
    virtual void abandon() = 0; ///< nothing is left behind
};

/// Finishes the takes of a process that ended before it could: every NAME.mp4.part in the folder becomes
/// NAME.mp4 (parts without a picture go away). Answers with the files made. No other process may be recording
/// into the folder.
base::Result<std::vector<std::filesystem::path>> recoverTakes(const std::filesystem::path& folder);

} // namespace plumbmark::video
