// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>

#include "base/result.h"
#include "video/byte_source.h"
#include "video/detail/ffmpeg.h"

namespace plumbmark::video::detail {

/// A container read through a ByteSource. Only containers that hold their own pictures are accepted: no
/// play lists, nothing that could make FFmpeg open a second file or a network address.
class Demuxer {
  public:
    static base::Result<std::unique_ptr<Demuxer>> open(std::unique_ptr<ByteSource> source);
    /// A file of which only the sound is wanted; video() is null. Also takes pure sound files.
    static base::Result<std::unique_ptr<Demuxer>> openSound(std::unique_ptr<ByteSource> source);
    Demuxer(const Demuxer&) = delete;
    Demuxer& operator=(const Demuxer&) = delete;
    ~Demuxer();

    [[nodiscard]] AVFormatContext* format() const { return format_.get(); }
    [[nodiscard]] AVStream* video() const { return video_; }
    [[nodiscard]] AVStream* sound() const { return sound_; } ///< null where there is none we can decode
    [[nodiscard]] std::int64_t bytes() const { return source_->size(); }
    [[nodiscard]] bool isMp4() const;
    [[nodiscard]] bool isMatroska() const;

    /// Lets the container skip everything but one stream (-1: read all).
    void readOnly(int stream);
    /// Back to the very start by opening the container anew: works where seeking doesn't.
    bool reopen();

  private:
    explicit Demuxer(std::unique_ptr<ByteSource> source) : source_(std::move(source)) {}
    int openContainer();
    void close();

    std::unique_ptr<ByteSource> source_;
    bool soundOnly_ = false;
    AVIOContext* io_ = nullptr;
    InputPtr format_;
    AVStream* video_ = nullptr;
    AVStream* sound_ = nullptr;
};

/// Largest side of a picture we accept.
inline constexpr int largestSide = 8192;

} // namespace plumbmark::video::detail
