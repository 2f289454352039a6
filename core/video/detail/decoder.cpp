// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/detail/decoder.h"

namespace plumbmark::video::detail {

base::Result<std::unique_ptr<Decoder>> Decoder::open(Demuxer& demuxer, int threads) {
    const auto unsupported = base::inputError(
        "clip.unsupported", "The clip's coding can't be read here; convert it to H.264 or HEVC.");
    const AVStream* stream = demuxer.video();
    const AVCodec* found = avcodec_find_decoder(stream->codecpar->codec_id);
    std::unique_ptr<Decoder> self(new Decoder(demuxer));
    self->codec_.reset(avcodec_alloc_context3(found));
    if (found == nullptr || !self->codec_ ||
        avcodec_parameters_to_context(self->codec_.get(), stream->codecpar) < 0) {
        return unsupported;
    }
    self->codec_->pkt_timebase = stream->time_base;
    self->codec_->thread_count = threads;
    self->codec_->max_pixels = std::int64_t{largestSide} * largestSide;
    if (avcodec_open2(self->codec_.get(), found, nullptr) < 0) {
        return unsupported;
    }
    return self;
}

bool Decoder::restart() {
    avcodec_flush_buffers(codec_.get());
    packetWaiting_ = draining_ = false;
    nextPacket_ = 0;
    ordinal_ = 0;
    lost_ = !demuxer_.reopen();
    if (!lost_) {
        demuxer_.readOnly(demuxer_.video()->index);
    }
    return !lost_;
}

bool Decoder::enterAt(const TrackIndex& index, std::size_t at) {
    lost_ = true;
    const CodedPicture& key = index.coded()[at];
    // Matroska's cues know presentation times, everybody else's index decoding times.
    const bool byPts = demuxer_.isMatroska() || key.dts == AV_NOPTS_VALUE;
    const std::int64_t place = byPts ? key.pts : key.dts;
    const int stream = demuxer_.video()->index;
    demuxer_.readOnly(stream);
    if (place == AV_NOPTS_VALUE ||
        avformat_seek_file(demuxer_.format(), stream, INT64_MIN, place, place, AVSEEK_FLAG_BACKWARD) < 0) {
        return false;
    }
    avcodec_flush_buffers(codec_.get());
    packetWaiting_ = draining_ = false;
    // The packets say where the container really landed.
    bool known = false;
    while (readPacket()) {
        const auto landed = index.codedAt(packet_->pts, packet_->dts);
        if (landed && (*landed > at || (known && *landed < nextPacket_))) {
            return false;
        }
        known = known || landed.has_value();
        if (landed && *landed == at) {
            nextPacket_ = at;
            packetWaiting_ = true;
            lost_ = false;
            return true;
        }
        if (landed) {
            nextPacket_ = *landed;
        }
    }
    return false;
}

bool Decoder::readPacket() {
    while (true) {
        av_packet_unref(packet_.get());
        if (av_read_frame(demuxer_.format(), packet_.get()) < 0) {
            return false;
        }
        const bool torn =
            (packet_->flags & AV_PKT_FLAG_CORRUPT) != 0 && (demuxer_.isMp4() || demuxer_.isMatroska());
        if (packet_->stream_index == demuxer_.video()->index && packet_->size > 0 && !torn) {
            return true;
        }
    }
}

void Decoder::feed() {
    if (!packetWaiting_ && !readPacket()) {
        avcodec_send_packet(codec_.get(), nullptr);
        draining_ = true;
        return;
    }
    packetWaiting_ = avcodec_send_packet(codec_.get(), packet_.get()) == AVERROR(EAGAIN);
    // A packet the decoder rejects is a picture less, not the end of the clip.
    if (!packetWaiting_) {
        ++nextPacket_;
    }
}

Decoder::Output Decoder::next() {
    Output out;
    if (lost_) {
        return out;
    }
    out.picture.reset(av_frame_alloc());
    constexpr int patience = 1000; // errors in a row before the rest of the clip is given up
    for (int errors = 0; errors < patience;) {
        const int got = avcodec_receive_frame(codec_.get(), out.picture.get());
        if (got >= 0) {
            out.pts =
                out.picture->pts != AV_NOPTS_VALUE ? out.picture->pts : out.picture->best_effort_timestamp;
            out.intra = out.picture->pict_type == AV_PICTURE_TYPE_I;
            out.broken =
                out.picture->decode_error_flags != 0 || (out.picture->flags & AV_FRAME_FLAG_CORRUPT) != 0;
            out.ordinal = ordinal_++;
            return out;
        }
        if (got == AVERROR_EOF || (got == AVERROR(EAGAIN) && draining_)) {
            break;
        }
        if (got == AVERROR(EAGAIN)) {
            feed();
        } else {
            ++errors; // one undecodable picture; the next call goes on behind it
        }
    }
    lost_ = true; // a drained decoder has to be entered anew
    out.picture.reset();
    return out;
}

} // namespace plumbmark::video::detail
