// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/bare_copy.h"

#include <cmath>
#include <cstring>
#include <optional>
#include <string>
#include <system_error>

#include "base/hash.h"
#include "video/byte_source.h"
#include "video/clip.h"
#include "video/detail/demuxer.h"
#include "video/detail/ffmpeg.h"

namespace plumbmark::video {
namespace {

using namespace detail;
namespace fs = std::filesystem;

base::Error cancelled() {
    return base::failure("cancelled", "Stopped before the end; nothing was written.");
}

base::Error unwritable(int code) {
    if (code == AVERROR(ENOSPC) || code == AVERROR(EDQUOT)) {
        return base::failure("disk.full", "There is no room left on the disk; make some and try again.");
    }
    return base::failure("bare.unwritable",
                         "A film could not be copied for sharing; check the free space and "
                         "the rights of the library's folder.");
}

base::Error cannotStrip() {
    return base::inputError("bare.container",
                            "A film is in a container from which place and device cannot be taken out; bring "
                            "it in as MP4, or share without the clips.");
}

/// The muxer for the container the film came in; null where there is none.
const char* muxerFor(const Demuxer& demuxer) {
    if (demuxer.isMp4()) {
        const AVDictionaryEntry* brand = av_dict_get(demuxer.format()->metadata, "major_brand", nullptr, 0);
        return brand != nullptr && std::strncmp(brand->value, "qt", 2) == 0 ? "mov" : "mp4";
    }
    if (demuxer.isMatroska()) {
        return "matroska";
    }
    for (const char* same : {"avi", "mpegts"}) {
        if (av_match_name(same, demuxer.format()->iformat->name) != 0) {
            return same;
        }
    }
    return nullptr;
}

/// What a player needs to show the pictures rightly; everything else stays behind.
bool isNeeded(AVPacketSideDataType type) {
    return type == AV_PKT_DATA_DISPLAYMATRIX || type == AV_PKT_DATA_MASTERING_DISPLAY_METADATA ||
           type == AV_PKT_DATA_CONTENT_LIGHT_LEVEL || type == AV_PKT_DATA_DOVI_CONF;
}
bool isNeededInPacket(AVPacketSideDataType type) {
    return type == AV_PKT_DATA_NEW_EXTRADATA || type == AV_PKT_DATA_SKIP_SAMPLES ||
           type == AV_PKT_DATA_PALETTE;
}

std::optional<std::string> captureRateOf(const Demuxer& demuxer) {
    for (const AVDictionary* tags : {demuxer.format()->metadata, demuxer.video()->metadata}) {
        if (const AVDictionaryEntry* entry = av_dict_get(tags, "com.android.capture.fps", nullptr, 0)) {
            // A number and nothing else: no text hides under this key.
            const std::string text = entry->value;
            return !text.empty() && text.size() <= 16 &&
                           text.find_first_not_of("0123456789.") == std::string::npos
                       ? std::optional(text)
                       : std::nullopt;
        }
    }
    return std::nullopt;
}

/// Bytes of every picture packet, in order.
class PacketDigest {
  public:
    void add(const AVPacket& packet) {
        const std::string size = std::to_string(packet.size) + "\n";
        hash_.add(size);
        hash_.add({reinterpret_cast<const char*>(packet.data), static_cast<std::size_t>(packet.size)});
    }
    std::string finish() { return hash_.finishHex(); }

  private:
    base::Sha256 hash_;
};

base::Result<std::unique_ptr<Demuxer>> demuxerOf(const fs::path& film) {
    auto source = openFile(film);
    if (!source) {
        return source.error();
    }
    return Demuxer::open(std::move(*source));
}

base::Result<std::string> digestOf(const fs::path& film) {
    auto demuxer = demuxerOf(film);
    if (!demuxer) {
        return demuxer.error();
    }
    (*demuxer)->readOnly((*demuxer)->video()->index);
    PacketDigest digest;
    const PacketPtr packet{av_packet_alloc()};
    while (av_read_frame((*demuxer)->format(), packet.get()) >= 0) {
        if (packet->stream_index == (*demuxer)->video()->index) {
            digest.add(*packet);
        }
        av_packet_unref(packet.get());
    }
    return digest.finish();
}

class Copier {
  public:
    Copier(Demuxer& from, const fs::path& target) : from_(from), target_(target) {}
    ~Copier() {
        if (to_ && to_->pb != nullptr) {
            avio_closep(&to_->pb);
        }
    }
    Copier(const Copier&) = delete;
    Copier& operator=(const Copier&) = delete;

    /// The digest of what was copied.
    base::Result<std::string> run(const base::Progress& progress);

  private:
    base::Result<void> open();
    base::Result<AVStream*> addStream(const AVStream& in);

    Demuxer& from_;
    const fs::path& target_;
    OutputPtr to_;
    AVStream* video_ = nullptr;
    AVStream* sound_ = nullptr;
};

base::Result<AVStream*> Copier::addStream(const AVStream& in) {
    AVStream* out = avformat_new_stream(to_.get(), nullptr);
    if (out == nullptr || avcodec_parameters_copy(out->codecpar, in.codecpar) < 0) {
        return unwritable(AVERROR(ENOMEM));
    }
    const AVOutputFormat* format = to_->oformat;
    unsigned tag = 0;
    if (format->codec_tag != nullptr &&
        av_codec_get_id(format->codec_tag, in.codecpar->codec_tag) != in.codecpar->codec_id &&
        av_codec_get_tag2(format->codec_tag, in.codecpar->codec_id, &tag) != 0) {
        out->codecpar->codec_tag = 0; // the container's own tag for this coding
    }
    out->time_base = in.time_base;
    out->avg_frame_rate = in.avg_frame_rate;
    out->r_frame_rate = in.r_frame_rate;
    out->sample_aspect_ratio = in.sample_aspect_ratio;
    for (int i = 0; i < in.nb_side_data; ++i) {
        const AVPacketSideData& data = in.side_data[i];
        if (!isNeeded(data.type)) {
            continue;
        }
        std::uint8_t* copy = av_stream_new_side_data(out, data.type, data.size);
        if (copy == nullptr) {
            return unwritable(AVERROR(ENOMEM));
        }
        std::memcpy(copy, data.data, data.size);
    }
    return out;
}

base::Result<void> Copier::open() {
    const char* muxer = muxerFor(from_);
    AVFormatContext* raw = nullptr;
    if (muxer == nullptr || avformat_alloc_output_context2(&raw, nullptr, muxer, nullptr) < 0) {
        return cannotStrip();
    }
    to_.reset(raw);
    to_->flags |= AVFMT_FLAG_BITEXACT; // no date, no program name, no random numbers
    const auto video = addStream(*from_.video());
    if (!video) {
        return video.error();
    }
    video_ = *video;
    if (from_.sound() != nullptr) {
        const auto sound = addStream(*from_.sound());
        if (!sound) {
            return sound.error();
        }
        sound_ = *sound;
    }
    Options settings;
    if (const auto rate = captureRateOf(from_); rate && (from_.isMp4() || from_.isMatroska())) {
        av_dict_set(&to_->metadata, "com.android.capture.fps", rate->c_str(), 0);
        if (from_.isMp4()) {
            settings.set("movflags", "use_metadata_tags");
        }
    }
    if (from_.isMp4()) {
        if (video_->time_base.num == 1) {
            settings.setInt("video_track_timescale", video_->time_base.den);
        }
    }
    const std::string url = "file:" + target_.string();
    if (const int opened = avio_open(&to_->pb, url.c_str(), AVIO_FLAG_WRITE); opened < 0) {
        return unwritable(opened);
    }
    if (const int written = avformat_write_header(to_.get(), settings.address()); written < 0) {
        // The muxer says no to this coding (or the disk to its first bytes).
        return written == AVERROR(ENOSPC) ? unwritable(written) : cannotStrip();
    }
    return {};
}

base::Result<std::string> Copier::run(const base::Progress& progress) {
    if (auto opened = open(); !opened) {
        return opened.error();
    }
    AVFormatContext* format = from_.format();
    for (unsigned i = 0; i < format->nb_streams; ++i) {
        const bool wanted = format->streams[i] == from_.video() || format->streams[i] == from_.sound();
        format->streams[i]->discard = wanted ? AVDISCARD_DEFAULT : AVDISCARD_ALL;
    }
    PacketDigest digest;
    const PacketPtr packet{av_packet_alloc()};
    while (av_read_frame(format, packet.get()) >= 0) {
        if (progress.cancelled()) {
            return cancelled();
        }
        const AVStream* in = format->streams[packet->stream_index];
        AVStream* out = in == from_.video() ? video_ : in == from_.sound() ? sound_ : nullptr;
        if (out == nullptr) {
            av_packet_unref(packet.get());
            continue;
        }
        if (out == video_) {
            digest.add(*packet);
        }
        for (int i = packet->side_data_elems - 1; i >= 0; --i) {
            if (!isNeededInPacket(packet->side_data[i].type)) {
                av_freep(&packet->side_data[i].data);
                packet->side_data[i] = packet->side_data[--packet->side_data_elems];
            }
        }
        packet->pos = -1;
        packet->stream_index = out->index;
        av_packet_rescale_ts(packet.get(), in->time_base, out->time_base);
        if (const int written = av_interleaved_write_frame(to_.get(), packet.get()); written < 0) {
            return written == AVERROR(EINVAL) ? cannotStrip() : unwritable(written);
        }
    }
    if (const int written = av_write_trailer(to_.get()); written < 0) {
        return unwritable(written);
    }
    const int error = to_->pb->error;
    const int closed = avio_closep(&to_->pb);
    if (error < 0 || closed < 0) {
        return unwritable(error < 0 ? error : closed);
    }
    return digest.finish();
}

bool showsTheSame(const Clip& film, const Clip& copy) {
    const ClipInfo &a = film.info(), &b = copy.info();
    if (a.width != b.width || a.height != b.height || a.frames != b.frames ||
        a.rotationDegrees != b.rotationDegrees || a.mirrored != b.mirrored || a.captureFps != b.captureFps ||
        a.hasSound != b.hasSound || a.codec != b.codec) {
        return false;
    }
    // A container's ticks may be coarser than the film's; a microsecond is nobody's frame.
    for (std::size_t i = 0; i < film.times().size(); ++i) {
        if (std::abs(film.times()[i].value() - copy.times()[i].value()) > 1e-6) {
            return false;
        }
    }
    return true;
}

base::Result<void> copyAndCompare(const fs::path& film, const fs::path& target,
                                  const base::Progress& progress) {
    auto demuxer = demuxerOf(film);
    if (!demuxer) {
        return demuxer.error();
    }
    const auto copied = Copier(**demuxer, target).run(progress);
    if (!copied) {
        return copied.error();
    }
    auto before = Clip::open(film);
    if (!before) {
        return before.error();
    }
    auto after = Clip::open(target);
    const auto digest = digestOf(target);
    if (!after || !digest || *digest != *copied || !showsTheSame(**before, **after)) {
        return base::inputError("bare.changed",
                                "A film cannot be copied without changing it; bring it in as MP4, or share "
                                "without the clips.");
    }
    return {};
}

} // namespace

base::Result<void> writeBareCopy(const fs::path& film, const fs::path& target,
                                 const base::Progress& progress) {
    auto done = copyAndCompare(film, target, progress);
    if (!done) {
        std::error_code ignored;
        fs::remove(target, ignored);
    }
    return done;
}

} // namespace plumbmark::video
