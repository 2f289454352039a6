// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/voice.h"

#include <algorithm>
#include <cmath>

#include "video/detail/demuxer.h"
#include "video/detail/ffmpeg.h"
#include "video/detail/sound_track.h"

namespace plumbmark::video {
namespace {
using namespace detail;

constexpr int kVoiceRate = 24'000;
constexpr int kVoiceBits = 40'000;
constexpr double kLongest = 30.0 * 60.0 + 5.0;

base::Error cannotEncode() {
    return base::failure("sound.encode",
                         "The voice could not be kept; this build needs FFmpeg's AAC encoder.");
}

/// Memory that FFmpeg's muxer writes to and that frees itself.
class Memory {
  public:
    Memory() { avio_open_dyn_buf(&io_); }
    Memory(const Memory&) = delete;
    Memory& operator=(const Memory&) = delete;
    ~Memory() { take(); }
    [[nodiscard]] AVIOContext* io() const { return io_; }
    std::vector<std::uint8_t> take() {
        if (io_ == nullptr) {
            return {};
        }
        std::uint8_t* raw = nullptr;
        const int size = avio_close_dyn_buf(io_, &raw);
        io_ = nullptr;
        std::vector<std::uint8_t> bytes(raw, raw + std::max(0, size));
        av_free(raw);
        return bytes;
    }

  private:
    AVIOContext* io_ = nullptr;
};

std::vector<float> resampled(const std::vector<float>& samples, double rate) {
    SwrContext* raw = nullptr;
    AVChannelLayout mono = AV_CHANNEL_LAYOUT_MONO;
    if (swr_alloc_set_opts2(&raw, &mono, AV_SAMPLE_FMT_FLT, kVoiceRate, &mono, AV_SAMPLE_FMT_FLT,
                            static_cast<int>(std::lround(rate)), 0, nullptr) < 0) {
        return {};
    }
    const ResamplerPtr mixer{raw};
    if (swr_init(raw) < 0) {
        return {};
    }
    std::vector<float> out(
        static_cast<std::size_t>(std::ceil(static_cast<double>(samples.size()) * kVoiceRate / rate)) + 4096);
    auto* into = reinterpret_cast<std::uint8_t*>(out.data());
    const auto* from = reinterpret_cast<const std::uint8_t*>(samples.data());
    int made = swr_convert(raw, &into, static_cast<int>(out.size()), &from, static_cast<int>(samples.size()));
    if (made < 0) {
        return {};
    }
    into = reinterpret_cast<std::uint8_t*>(out.data() + made);
    const int rest = swr_convert(raw, &into, static_cast<int>(out.size()) - made, nullptr, 0);
    out.resize(static_cast<std::size_t>(made + std::max(0, rest)));
    return out;
}

} // namespace

base::Result<Sound> loadSound(std::unique_ptr<ByteSource> source) {
    auto demuxer = Demuxer::openSound(std::move(source));
    if (!demuxer) {
        return demuxer.error();
    }
    const std::int64_t length = (*demuxer)->format()->duration;
    if (length != AV_NOPTS_VALUE && static_cast<double>(length) / AV_TIME_BASE > kLongest) {
        return base::inputError("sound.too_long", "The sound lasts longer than half an hour; cut it first.");
    }
    Sound sound = decodeSound(**demuxer, 0.0);
    if (sound.samples.empty() || !(sound.rate > 0.0)) {
        return base::inputError("sound.not_sound",
                                "No sound can be read from this file; record it again as WAV or M4A.");
    }
    if (static_cast<double>(sound.samples.size()) / sound.rate > kLongest) {
        return base::inputError("sound.too_long", "The sound lasts longer than half an hour; cut it first.");
    }
    return sound;
}

base::Result<Sound> loadSound(const std::filesystem::path& path) {
    auto source = openFile(path);
    if (!source) {
        return source.error();
    }
    return loadSound(std::move(*source));
}

std::vector<float> fitted(const Sound& sound, double seconds) {
    const double rate = sound.rate;
    std::vector<float> all(static_cast<std::size_t>(std::max(0.0, std::round(seconds * rate))), 0.0F);
    const long shift = std::lround(sound.start.value() * rate);
    for (std::size_t i = 0; i < sound.samples.size(); ++i) {
        const long place = static_cast<long>(i) + shift;
        if (place >= 0 && static_cast<std::size_t>(place) < all.size()) {
            all[static_cast<std::size_t>(place)] = std::clamp(sound.samples[i], -1.0F, 1.0F);
        }
    }
    return all;
}

base::Result<std::vector<std::uint8_t>> encodeVoice(const Sound& sound) {
    silenceFfmpeg();
    const double seconds = sound.start.value() + static_cast<double>(sound.samples.size()) / sound.rate;
    const std::vector<float> samples = resampled(fitted(sound, seconds), sound.rate);
    const AVCodec* encoder = avcodec_find_encoder(AV_CODEC_ID_AAC);
    Memory memory; // before the format, which writes into it
    AVFormatContext* raw = nullptr;
    if (encoder == nullptr || samples.empty() || memory.io() == nullptr ||
        avformat_alloc_output_context2(&raw, nullptr, "ipod", nullptr) < 0) {
        return cannotEncode();
    }
    const OutputPtr format{raw};
    format->pb = memory.io();
    format->flags |= AVFMT_FLAG_BITEXACT;
    const CodecPtr codec{avcodec_alloc_context3(encoder)};
    codec->sample_rate = kVoiceRate;
    codec->sample_fmt = AV_SAMPLE_FMT_FLTP;
    codec->ch_layout = AV_CHANNEL_LAYOUT_MONO;
    codec->time_base = {1, kVoiceRate};
    codec->bit_rate = kVoiceBits;
    codec->flags |= AV_CODEC_FLAG_GLOBAL_HEADER | AV_CODEC_FLAG_BITEXACT;
    if (avcodec_open2(codec.get(), encoder, nullptr) < 0) {
        return cannotEncode();
    }
    AVStream* stream = avformat_new_stream(format.get(), nullptr);
    stream->time_base = codec->time_base;
    if (avcodec_parameters_from_context(stream->codecpar, codec.get()) < 0 ||
        avformat_write_header(format.get(), nullptr) < 0) {
        return cannotEncode();
    }
    const PacketPtr packet{av_packet_alloc()};
    const auto pump = [&](const AVFrame* frame) {
        if (avcodec_send_frame(codec.get(), frame) < 0) {
            return false;
        }
        while (avcodec_receive_packet(codec.get(), packet.get()) >= 0) {
            packet->stream_index = 0;
            av_packet_rescale_ts(packet.get(), codec->time_base, stream->time_base);
            if (av_interleaved_write_frame(format.get(), packet.get()) < 0) {
                return false;
            }
        }
        return true;
    };
    for (std::size_t at = 0; at < samples.size(); at += static_cast<std::size_t>(codec->frame_size)) {
        const std::size_t count = std::min(static_cast<std::size_t>(codec->frame_size), samples.size() - at);
        const PicturePtr block{av_frame_alloc()};
        block->format = AV_SAMPLE_FMT_FLTP;
        block->nb_samples = static_cast<int>(count);
        block->sample_rate = kVoiceRate;
        block->ch_layout = AV_CHANNEL_LAYOUT_MONO;
        if (av_frame_get_buffer(block.get(), 0) < 0) {
            return cannotEncode();
        }
        std::copy_n(samples.begin() + static_cast<std::ptrdiff_t>(at), count,
                    reinterpret_cast<float*>(block->data[0]));
        block->pts = static_cast<std::int64_t>(at);
        if (!pump(block.get())) {
            return cannotEncode();
        }
    }
    if (!pump(nullptr) || av_write_trailer(format.get()) < 0) {
        return cannotEncode();
    }
    format->pb = nullptr;
    return memory.take();
}

} // namespace plumbmark::video
