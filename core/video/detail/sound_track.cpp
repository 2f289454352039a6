// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/detail/sound_track.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace plumbmark::video::detail {
namespace {

/// Puts decoded pieces where their times say: gaps become silence, overlaps are dropped.
class Assembly {
  public:
    explicit Assembly(double rate) { sound_.rate = rate; }

    void add(std::optional<double> seconds, const float* samples, std::size_t count) {
        std::size_t skip = 0;
        if (sound_.samples.empty()) {
            sound_.start = base::Seconds{seconds.value_or(0.0)};
        } else if (seconds) {
            const double place = (*seconds - sound_.start.value()) * sound_.rate;
            const double gap = place - static_cast<double>(sound_.samples.size());
            // Coarse container clocks (milliseconds) jitter; that is no gap.
            if (std::abs(gap) > tolerance * sound_.rate) {
                if (gap > 0.0 && gap < longestGap * sound_.rate) {
                    sound_.samples.resize(sound_.samples.size() + static_cast<std::size_t>(std::lround(gap)),
                                          0.0F);
                } else if (gap < 0.0) {
                    skip = static_cast<std::size_t>(std::min(std::lround(-gap), static_cast<long>(count)));
                }
            }
        }
        sound_.samples.insert(sound_.samples.end(), samples + skip, samples + count);
    }
    Sound take() { return std::move(sound_); }

  private:
    static constexpr double tolerance = 0.003; // s
    static constexpr double longestGap = 60.0; // s; more is a broken clock
    Sound sound_;
};

} // namespace

Sound decodeSound(Demuxer& demuxer, double zero) {
    if (demuxer.sound() == nullptr || !demuxer.reopen()) {
        return {};
    }
    const AVStream* stream = demuxer.sound();
    demuxer.readOnly(stream->index);
    const AVCodec* found = avcodec_find_decoder(stream->codecpar->codec_id);
    CodecPtr codec{avcodec_alloc_context3(found)};
    if (found == nullptr || !codec || avcodec_parameters_to_context(codec.get(), stream->codecpar) < 0) {
        return {};
    }
    codec->pkt_timebase = stream->time_base; // needed to leave out priming samples
    if (avcodec_open2(codec.get(), found, nullptr) < 0) {
        return {};
    }
    PacketPtr packet{av_packet_alloc()};
    PicturePtr block{av_frame_alloc()};
    ResamplerPtr mixer;
    std::optional<Assembly> assembly;
    int rate = 0;
    std::vector<float> mono;

    const auto receive = [&] {
        while (avcodec_receive_frame(codec.get(), block.get()) >= 0) {
            if (!mixer) {
                rate = block->sample_rate;
                AVChannelLayout out = AV_CHANNEL_LAYOUT_MONO;
                SwrContext* raw = nullptr;
                if (rate <= 0 ||
                    swr_alloc_set_opts2(&raw, &out, AV_SAMPLE_FMT_FLT, rate, &block->ch_layout,
                                        static_cast<AVSampleFormat>(block->format), rate, 0, nullptr) < 0) {
                    return;
                }
                mixer.reset(raw);
                if (swr_init(raw) < 0) {
                    mixer.reset();
                    return;
                }
                assembly.emplace(rate);
            }
            if (block->sample_rate != rate) {
                continue; // a track that changes its rate on the way is broken
            }
            mono.resize(static_cast<std::size_t>(block->nb_samples));
            auto* into = reinterpret_cast<std::uint8_t*>(mono.data());
            const int made =
                swr_convert(mixer.get(), &into, block->nb_samples,
                            const_cast<const std::uint8_t**>(block->extended_data), block->nb_samples);
            if (made > 0) {
                std::optional<double> seconds;
                if (block->pts != AV_NOPTS_VALUE) {
                    seconds = static_cast<double>(block->pts) * av_q2d(stream->time_base) - zero;
                }
                assembly->add(seconds, mono.data(), static_cast<std::size_t>(made));
            }
        }
    };
    while (av_read_frame(demuxer.format(), packet.get()) >= 0) {
        if (packet->stream_index == stream->index) {
            avcodec_send_packet(codec.get(), packet.get());
            receive();
        }
        av_packet_unref(packet.get());
    }
    avcodec_send_packet(codec.get(), nullptr);
    receive();
    return assembly ? assembly->take() : Sound{};
}

} // namespace plumbmark::video::detail
