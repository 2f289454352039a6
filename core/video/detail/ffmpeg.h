// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Owning pointers for FFmpeg's C structures. Only .cpp files of this module include it.
#pragma once

#include <cstdint>
#include <memory>

extern "C" {
#include <libavcodec/avcodec.h>
#include <libavformat/avformat.h>
#include <libavutil/avstring.h>
#include <libavutil/display.h>
#include <libavutil/imgutils.h>
#include <libavutil/opt.h>
#include <libavutil/pixdesc.h>
#include <libswresample/swresample.h>
#include <libswscale/swscale.h>
}

namespace plumbmark::video::detail {

template <auto Free> struct FreeByAddress {
    template <class T> void operator()(T* pointer) const { Free(&pointer); }
};
template <auto Free> struct FreeByValue {
    template <class T> void operator()(T* pointer) const { Free(pointer); }
};

using CodecPtr = std::unique_ptr<AVCodecContext, FreeByAddress<avcodec_free_context>>;
using InputPtr = std::unique_ptr<AVFormatContext, FreeByAddress<avformat_close_input>>;
using OutputPtr = std::unique_ptr<AVFormatContext, FreeByValue<avformat_free_context>>;
using PicturePtr = std::unique_ptr<AVFrame, FreeByAddress<av_frame_free>>;
using PacketPtr = std::unique_ptr<AVPacket, FreeByAddress<av_packet_free>>;
using ScalerPtr = std::unique_ptr<SwsContext, FreeByValue<sws_freeContext>>;
using ResamplerPtr = std::unique_ptr<SwrContext, FreeByAddress<swr_free>>;

/// FFmpeg writes to standard error by default; our errors are values, so nothing of it may get there.
/// Called at the start of everything that uses FFmpeg.
void silenceFfmpeg();

/// A dictionary that frees itself.
class Options {
  public:
    Options() = default;
    Options(const Options&) = delete;
    Options& operator=(const Options&) = delete;
    ~Options() { av_dict_free(&dictionary_); }
    void set(const char* key, const char* value) { av_dict_set(&dictionary_, key, value, 0); }
    void setInt(const char* key, std::int64_t value) { av_dict_set_int(&dictionary_, key, value, 0); }
    AVDictionary** address() { return &dictionary_; }

  private:
    AVDictionary* dictionary_ = nullptr;
};

} // namespace plumbmark::video::detail
