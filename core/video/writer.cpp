// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/writer.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <cstdio>
#include <random>
#include <system_error>
#include <vector>

#include "video/detail/colour.h"
#include "video/detail/ffmpeg.h"

namespace plumbmark::video {
namespace {

using namespace detail;

constexpr int clock = 90000; // ticks a second: exact for 24..240 frames/s and for the x/1.001 rates

base::Error diskError(const std::filesystem::path& path) {
    return base::failure("writer.disk",
                         "The clip \"" + path.filename().string() +
                             "\" could not be written; check the free space and the rights of the folder.");
}

/// Unique beside the target, so that the rename at the end stays on one file system.
std::filesystem::path temporaryFor(const std::filesystem::path& path) {
    static std::atomic<unsigned> counter{std::random_device{}()};
    auto name = path;
    name += ".part" + std::to_string(counter.fetch_add(1));
    return name;
}

class FfmpegWriter final : public ClipWriter {
  public:
    FfmpegWriter(std::filesystem::path path, WriterOptions options)
        : path_(std::move(path)), temporary_(temporaryFor(path_)), options_(std::move(options)) {}

    ~FfmpegWriter() override {
        closeFile();
        if (!finished_) {
            std::error_code ignored;
            std::filesystem::remove(temporary_, ignored);
        }
    }

    base::Result<void> open();
    base::Result<void> write(const RgbImage& picture, std::optional<base::Seconds> time) override;
    base::Result<void> writeSound(std::span<const float> mono) override;
    base::Result<void> finish() override;

  private:
    base::Result<void> openVideo();
    base::Result<void> openSound();
    base::Result<void> pump(AVCodecContext* codec, AVStream* stream, const AVFrame* frame);
    base::Result<void> sendSound(std::span<const float> samples);
    void closeFile() {
        if (format_ && format_->pb) {
            avio_closep(&format_->pb);
        }
    }

    std::filesystem::path path_, temporary_;
    WriterOptions options_;
    OutputPtr format_;
    CodecPtr video_, sound_;
    AVStream* videoStream_ = nullptr;
    AVStream* soundStream_ = nullptr;
    PicturePtr picture_{av_frame_alloc()};
    PacketPtr packet_{av_packet_alloc()};
    std::vector<float> waiting_; // sound shorter than one coded block
    std::int64_t soundSent_ = 0;
    std::int64_t pictures_ = 0;
    std::int64_t lastPts_ = AV_NOPTS_VALUE;
    bool headerWritten_ = false;
    bool finished_ = false;
};

base::Result<void> FfmpegWriter::openVideo() {
    const bool hevc = options_.codec == "hevc";
    const AVCodec* encoder = avcodec_find_encoder_by_name(hevc ? "libx265" : "libx264");
    const auto noEncoder = base::failure(
        "writer.no_encoder", std::string("This build has no working ") + (hevc ? "HEVC" : "H.264") +
                                 " encoder, so no clip can be written; install an FFmpeg that has one.");
    if (encoder == nullptr) {
        return noEncoder;
    }
    video_.reset(avcodec_alloc_context3(encoder));
    video_->width = options_.width;
    video_->height = options_.height;
    video_->pix_fmt = AV_PIX_FMT_YUV420P;
    video_->color_range = AVCOL_RANGE_MPEG;
    video_->colorspace = AVCOL_SPC_BT709;
    video_->color_primaries = AVCOL_PRI_BT709;
    video_->color_trc = AVCOL_TRC_BT709;
    video_->chroma_sample_location = AVCHROMA_LOC_LEFT;
    video_->time_base = {1, clock};
    video_->framerate = av_d2q(options_.fps, 100000);
    video_->gop_size = options_.keyFrameEvery;
    video_->max_b_frames = options_.bFrames;
    video_->thread_count = options_.threads;
    video_->flags |= AV_CODEC_FLAG_GLOBAL_HEADER;
    Options settings;
    settings.set("preset", options_.preset.c_str());
    if (options_.bitRate > 0) {
        video_->bit_rate = options_.bitRate;
    } else {
        settings.setInt("crf", options_.quality);
    }
    if (hevc) {
        video_->codec_tag = MKTAG('h', 'v', 'c', '1'); // the tag phones and their players expect
        const std::string parameters = "log-level=none:open-gop=0:scenecut=0:frame-threads=1:pools=" +
                                       std::to_string(std::max(1, options_.threads));
        settings.set("x265-params", parameters.c_str());
    } else {
        settings.setInt("sc_threshold", 0); // cameras keep an even key-frame distance
    }
    if (avcodec_open2(video_.get(), encoder, settings.address()) < 0) {
        return noEncoder;
    }
    videoStream_ = avformat_new_stream(format_.get(), nullptr);
    videoStream_->time_base = video_->time_base;
    videoStream_->avg_frame_rate = video_->framerate;
    if (avcodec_parameters_from_context(videoStream_->codecpar, video_.get()) < 0) {
        return noEncoder;
    }
    if (options_.rotationDegrees != 0) {
        auto* matrix = reinterpret_cast<std::int32_t*>(
            av_stream_new_side_data(videoStream_, AV_PKT_DATA_DISPLAYMATRIX, 9 * sizeof(std::int32_t)));
        if (matrix != nullptr) {
            av_display_rotation_set(matrix,
                                    options_.rotationDegrees); // clockwise, as a player has to turn it
        }
    }
    picture_->format = AV_PIX_FMT_YUV420P;
    picture_->width = options_.width;
    picture_->height = options_.height;
    return {};
}

base::Result<void> FfmpegWriter::openSound() {
    const AVCodec* encoder = avcodec_find_encoder(AV_CODEC_ID_AAC);
    const auto noEncoder = base::failure(
        "writer.no_encoder", "This build has no working AAC encoder for this sound, so the clip can't "
                             "carry sound; write it without, or install an FFmpeg that has one.");
    if (encoder == nullptr) {
        return noEncoder;
    }
    sound_.reset(avcodec_alloc_context3(encoder));
    const int rate = static_cast<int>(std::lround(options_.soundRate));
    sound_->sample_rate = rate;
    sound_->sample_fmt = AV_SAMPLE_FMT_FLTP;
    sound_->ch_layout = AV_CHANNEL_LAYOUT_MONO;
    sound_->time_base = {1, rate};
    sound_->bit_rate = 128000;
    sound_->flags |= AV_CODEC_FLAG_GLOBAL_HEADER;
    if (avcodec_open2(sound_.get(), encoder, nullptr) < 0) {
        return noEncoder;
    }
    soundStream_ = avformat_new_stream(format_.get(), nullptr);
    soundStream_->time_base = sound_->time_base;
    if (avcodec_parameters_from_context(soundStream_->codecpar, sound_.get()) < 0) {
        return noEncoder;
    }
    return {};
}

base::Result<void> FfmpegWriter::open() {
    AVFormatContext* raw = nullptr;
    if (avformat_alloc_output_context2(&raw, nullptr, "mp4", nullptr) < 0) {
        return base::failure("writer.no_encoder",
                             "This build can't write MP4 files; install an FFmpeg that can.");
    }
    format_.reset(raw);
    if (auto opened = openVideo(); !opened) {
        return opened;
    }
    if (options_.soundRate > 0.0) {
        if (auto opened = openSound(); !opened) {
            return opened;
        }
    }
    Options settings;
    if (options_.captureFps) {
        // The key Android's recorder uses; plain MP4 tags would drop a key they don't know.
        char text[32];
        std::snprintf(text, sizeof text, "%.6f", *options_.captureFps);
        for (char& c : text) { // a comma-decimal locale must not reach the file
            c = c == ',' ? '.' : c;
        }
        av_dict_set(&format_->metadata, "com.android.capture.fps", text, 0);
        settings.set("movflags", "use_metadata_tags");
    }
    // The index's ticks; FFmpeg would otherwise choose coarser ones for some rates.
    settings.setInt("video_track_timescale", clock);
    const std::string url = "file:" + temporary_.string();
    if (avio_open(&format_->pb, url.c_str(), AVIO_FLAG_WRITE) < 0) {
        return base::inputError(
            "writer.folder", "The clip \"" + path_.string() +
                                 "\" can't be created; choose a folder that exists and can be written to.");
    }
    if (avformat_write_header(format_.get(), settings.address()) < 0) {
        return diskError(path_);
    }
    headerWritten_ = true;
    return {};
}

base::Result<void> FfmpegWriter::pump(AVCodecContext* codec, AVStream* stream, const AVFrame* frame) {
    if (avcodec_send_frame(codec, frame) < 0) {
        return base::failure("writer.encode", "A picture could not be encoded; try another codec or size.");
    }
    while (avcodec_receive_packet(codec, packet_.get()) >= 0) {
        packet_->stream_index = stream->index;
        if (stream == videoStream_ && packet_->duration == 0) {
            packet_->duration = std::llround(clock / options_.fps); // how long the last picture stays
        }
        av_packet_rescale_ts(packet_.get(), codec->time_base, stream->time_base);
        if (av_interleaved_write_frame(format_.get(), packet_.get()) < 0) {
            return diskError(path_);
        }
    }
    return {};
}

base::Result<void> FfmpegWriter::write(const RgbImage& image, std::optional<base::Seconds> time) {
    const auto bytes =
        static_cast<std::size_t>(options_.width) * static_cast<std::size_t>(options_.height) * 3;
    if (image.width != options_.width || image.height != options_.height || image.pixels.size() != bytes) {
        return base::failure("writer.size",
                             "A picture has another size than the clip; give every picture the clip's size.");
    }
    const double seconds = time ? time->value() : static_cast<double>(pictures_) / options_.fps;
    const std::int64_t pts = std::llround(seconds * clock);
    if (!std::isfinite(seconds) || seconds < 0.0 || (lastPts_ != AV_NOPTS_VALUE && pts <= lastPts_)) {
        return base::failure(
            "writer.time", "A picture's time is not later than the one before; give rising times from 0 on.");
    }
    if (picture_->buf[0] == nullptr ? av_frame_get_buffer(picture_.get(), 0) < 0
                                    : av_frame_make_writable(picture_.get()) < 0) {
        return base::failure("writer.memory",
                             "There is not enough memory to write the clip; close other programs.");
    }
    Planes planes;
    for (int i = 0; i < 3; ++i) {
        planes.data[i] = picture_->data[i];
        planes.stride[i] = picture_->linesize[i];
    }
    rgbToPlanes(image.pixels.data(), image.width, image.height, {709, false}, planes);
    picture_->pts = pts;
    lastPts_ = pts;
    ++pictures_;
    return pump(video_.get(), videoStream_, picture_.get());
}

base::Result<void> FfmpegWriter::sendSound(std::span<const float> samples) {
    PicturePtr block{av_frame_alloc()};
    block->format = AV_SAMPLE_FMT_FLTP;
    block->nb_samples = static_cast<int>(samples.size());
    block->sample_rate = sound_->sample_rate;
    block->ch_layout = AV_CHANNEL_LAYOUT_MONO;
    if (av_frame_get_buffer(block.get(), 0) < 0) {
        return base::failure("writer.memory",
                             "There is not enough memory to write the clip; close other programs.");
    }
    std::copy(samples.begin(), samples.end(), reinterpret_cast<float*>(block->data[0]));
    block->pts = soundSent_;
    soundSent_ += block->nb_samples;
    return pump(sound_.get(), soundStream_, block.get());
}

base::Result<void> FfmpegWriter::writeSound(std::span<const float> mono) {
    if (!sound_) {
        return base::failure("writer.sound", "The clip was begun without sound; begin it with a sound rate.");
    }
    waiting_.insert(waiting_.end(), mono.begin(), mono.end());
    const auto block = static_cast<std::size_t>(sound_->frame_size);
    std::size_t used = 0;
    for (; waiting_.size() - used >= block; used += block) {
        if (auto sent = sendSound(std::span(waiting_).subspan(used, block)); !sent) {
            return sent;
        }
    }
    waiting_.erase(waiting_.begin(), waiting_.begin() + static_cast<std::ptrdiff_t>(used));
    return {};
}

base::Result<void> FfmpegWriter::finish() {
    if (finished_) {
        return {};
    }
    if (pictures_ == 0) {
        return base::failure("writer.no_pictures", "The clip has no picture yet; write at least one.");
    }
    if (sound_ && !waiting_.empty()) {
        if (auto sent = sendSound(waiting_); !sent) {
            return sent;
        }
        waiting_.clear();
    }
    if (auto drained = pump(video_.get(), videoStream_, nullptr); !drained) {
        return drained;
    }
    if (sound_) {
        if (auto drained = pump(sound_.get(), soundStream_, nullptr); !drained) {
            return drained;
        }
    }
    if (av_write_trailer(format_.get()) < 0) {
        return diskError(path_);
    }
    const bool flushed = format_->pb->error >= 0;
    if (avio_closep(&format_->pb) < 0 || !flushed) {
        return diskError(path_);
    }
    std::error_code failed;
    std::filesystem::rename(temporary_, path_, failed);
    if (failed) {
        return diskError(path_);
    }
    finished_ = true;
    return {};
}

} // namespace

base::Result<std::unique_ptr<ClipWriter>> ClipWriter::create(const std::filesystem::path& path,
                                                             const WriterOptions& options) {
    silenceFfmpeg();
    const bool sizeOk = options.width >= 2 && options.height >= 2 && options.width <= 8192 &&
                        options.height <= 8192 && options.width % 2 == 0 && options.height % 2 == 0;
    if (!sizeOk) {
        return base::failure("writer.options",
                             "A clip of " + std::to_string(options.width) + " by " +
                                 std::to_string(options.height) +
                                 " pixels can't be written; use even sizes from 2 to 8192.");
    }
    const bool rest = (options.codec == "h264" || options.codec == "hevc") && options.fps > 0.0 &&
                      options.fps <= 2000.0 && options.rotationDegrees % 90 == 0 &&
                      options.soundRate >= 0.0 && options.bFrames >= 0 && options.keyFrameEvery >= 1;
    if (!rest) {
        return base::failure("writer.options",
                             "The clip can't be written with these settings; use codec h264 or hevc, up to "
                             "2000 frames a second and a rotation in steps of 90 degrees.");
    }
    auto writer = std::make_unique<FfmpegWriter>(path, options);
    if (auto opened = writer->open(); !opened) {
        return opened.error();
    }
    return std::unique_ptr<ClipWriter>(std::move(writer));
}

} // namespace plumbmark::video
