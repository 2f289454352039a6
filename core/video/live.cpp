// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/live.h"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <system_error>

#include "base/files.h"
#include "video/detail/ffmpeg.h"

namespace plumbmark::video {

using namespace detail;
namespace fs = std::filesystem;

namespace {

constexpr int kClock = 90000; // ticks a second: exact for 24..240 frames/s and for the x/1.001 rates

struct FreeParameters {
    void operator()(AVCodecParameters* p) const { avcodec_parameters_free(&p); }
};
using ParametersPtr = std::unique_ptr<AVCodecParameters, FreeParameters>;

base::Error diskError(const fs::path& path) {
    return base::failure("writer.disk",
                         "The take \"" + path.filename().string() +
                             "\" could not be written; check the free space and the rights of the folder.");
}

base::Error memoryError() {
    return base::failure("writer.memory", "There is not enough memory to film; close other programs.");
}

fs::path partOf(const fs::path& file) {
    auto part = file;
    part += ".part";
    return part;
}

} // namespace

class CodedFormat {
  public:
    explicit CodedFormat(const AVCodecContext* codec) : parameters(avcodec_parameters_alloc()) {
        avcodec_parameters_from_context(parameters.get(), codec);
    }
    ParametersPtr parameters;
};

namespace {

class X264Encoder final : public LiveEncoder {
  public:
    explicit X264Encoder(const LiveOptions& options) : options_(options) {}

    base::Result<void> open() {
        const auto noEncoder =
            base::failure("writer.no_encoder", "This build has no working H.264 encoder, so nothing can be "
                                               "filmed; install an FFmpeg that has one.");
        const AVCodec* encoder = avcodec_find_encoder_by_name("libx264");
        if (encoder == nullptr) {
            return noEncoder;
        }
        codec_.reset(avcodec_alloc_context3(encoder));
        codec_->width = options_.width;
        codec_->height = options_.height;
        codec_->pix_fmt = AV_PIX_FMT_YUV420P;
        codec_->time_base = {1, kClock};
        codec_->framerate = av_d2q(options_.fps, 100000);
        codec_->gop_size =
            std::max(1, static_cast<int>(std::lround(options_.fps * options_.keyEverySeconds)));
        codec_->max_b_frames = 0;
        codec_->colorspace = options_.colour.matrix == 601    ? AVCOL_SPC_SMPTE170M
                             : options_.colour.matrix == 2020 ? AVCOL_SPC_BT2020_NCL
                                                              : AVCOL_SPC_BT709;
        codec_->color_range = options_.colour.fullRange ? AVCOL_RANGE_JPEG : AVCOL_RANGE_MPEG;
        codec_->thread_count = options_.threads;
        codec_->thread_type = FF_THREAD_SLICE;
        codec_->flags |= AV_CODEC_FLAG_GLOBAL_HEADER;
        Options settings;
        settings.set("preset", options_.preset.c_str());
        settings.set("tune", "zerolatency");
        settings.setInt("crf", options_.quality);
        settings.setInt("sc_threshold", 0);
        if (avcodec_open2(codec_.get(), encoder, settings.address()) < 0) {
            return noEncoder;
        }
        format_ = std::make_shared<CodedFormat>(codec_.get());
        picture_->format = AV_PIX_FMT_YUV420P;
        picture_->width = options_.width;
        picture_->height = options_.height;
        return {};
    }

    base::Result<CodedPicture> push(const Frame& frame) override {
        if (frame.empty() || frame.width() / 2 * 2 != options_.width ||
            frame.height() / 2 * 2 != options_.height) {
            return base::failure("writer.size",
                                 "The camera's picture changed its size; start the camera again.");
        }
        const std::int64_t pts = std::llround(frame.time().value() * kClock);
        if (last_ && pts <= *last_) {
            return base::failure("writer.time", "A picture's time is not later than the one before.");
        }
        if (picture_->buf[0] == nullptr ? av_frame_get_buffer(picture_.get(), 0) < 0
                                        : av_frame_make_writable(picture_.get()) < 0) {
            return memoryError();
        }
        const PlaneView planes[3] = {frame.luma(), frame.cb(), frame.cr()};
        for (int i = 0; i < 3; ++i) {
            const int w = i == 0 ? options_.width : options_.width / 2,
                      h = i == 0 ? options_.height : options_.height / 2;
            for (int y = 0; y < h; ++y) {
                std::memcpy(picture_->data[i] + static_cast<std::ptrdiff_t>(y) * picture_->linesize[i],
                            planes[i].data + y * planes[i].stride, static_cast<std::size_t>(w));
            }
        }
        picture_->color_range = codec_->color_range;
        picture_->colorspace = codec_->colorspace;
        picture_->pts = pts;
        picture_->pict_type = AV_PICTURE_TYPE_NONE;
        last_ = pts;
        if (avcodec_send_frame(codec_.get(), picture_.get()) < 0 ||
            avcodec_receive_packet(codec_.get(), packet_.get()) < 0) {
            return base::failure("writer.encode", "A picture could not be coded; try a smaller picture.");
        }
        CodedPicture coded;
        coded.bytes.assign(packet_->data, packet_->data + packet_->size);
        coded.time = frame.time();
        coded.key = (packet_->flags & AV_PKT_FLAG_KEY) != 0;
        av_packet_unref(packet_.get());
        return coded;
    }

    [[nodiscard]] std::shared_ptr<const CodedFormat> format() const override { return format_; }

  private:
    LiveOptions options_;
    CodecPtr codec_;
    PicturePtr picture_{av_frame_alloc()};
    PacketPtr packet_{av_packet_alloc()};
    std::shared_ptr<CodedFormat> format_;
    std::optional<std::int64_t> last_;
};

/// Opens an output of the named container at `path`.
base::Result<OutputPtr> openOutput(const char* container, const fs::path& path) {
    AVFormatContext* raw = nullptr;
    if (avformat_alloc_output_context2(&raw, nullptr, container, nullptr) < 0) {
        return base::failure("writer.no_encoder",
                             "This build can't write takes; install an FFmpeg that can.");
    }
    OutputPtr format{raw};
    const std::string url = "file:" + path.string();
    if (avio_open(&format->pb, url.c_str(), AVIO_FLAG_WRITE) < 0) {
        return base::inputError(
            "writer.folder", "The take \"" + path.string() +
                                 "\" can't be created; choose a folder that exists and can be written to.");
    }
    return format;
}

bool closeOutput(AVFormatContext* format) {
    if (format == nullptr || format->pb == nullptr) {
        return true;
    }
    const bool fine = format->pb->error >= 0;
    return avio_closep(&format->pb) >= 0 && fine;
}

/// Codes the part file's plain sound as AAC on the way into the MP4.
class SoundCoder {
  public:
    base::Result<void> open(AVFormatContext* format, int rate) {
        const AVCodec* encoder = avcodec_find_encoder(AV_CODEC_ID_AAC);
        const auto none =
            base::failure("writer.no_encoder", "This build has no working AAC encoder; install an "
                                               "FFmpeg that has one.");
        if (encoder == nullptr) {
            return none;
        }
        codec_.reset(avcodec_alloc_context3(encoder));
        codec_->sample_rate = rate;
        codec_->sample_fmt = AV_SAMPLE_FMT_FLTP;
        codec_->ch_layout = AV_CHANNEL_LAYOUT_MONO;
        codec_->time_base = {1, rate};
        codec_->bit_rate = 128000;
        codec_->flags |= AV_CODEC_FLAG_GLOBAL_HEADER;
        if (avcodec_open2(codec_.get(), encoder, nullptr) < 0) {
            return none;
        }
        stream_ = avformat_new_stream(format, nullptr);
        stream_->time_base = codec_->time_base;
        return avcodec_parameters_from_context(stream_->codecpar, codec_.get()) < 0 ? base::Result<void>(none)
                                                                                    : base::Result<void>();
    }
    bool add(AVFormatContext* format, const std::uint8_t* bytes, int size) {
        for (int i = 0; i + 1 < size; i += 2) {
            waiting_.push_back(static_cast<float>(static_cast<std::int16_t>(bytes[i] | bytes[i + 1] << 8)) /
                               32768.0F);
        }
        const auto block = static_cast<std::size_t>(codec_->frame_size);
        std::size_t used = 0;
        for (; waiting_.size() - used >= block; used += block) {
            if (!send(format, std::span(waiting_).subspan(used, block))) {
                return false;
            }
        }
        waiting_.erase(waiting_.begin(), waiting_.begin() + static_cast<std::ptrdiff_t>(used));
        return true;
    }
    bool finish(AVFormatContext* format) {
        return (waiting_.empty() || send(format, waiting_)) && pump(format, nullptr);
    }

  private:
    bool send(AVFormatContext* format, std::span<const float> samples) {
        PicturePtr block{av_frame_alloc()};
        block->format = AV_SAMPLE_FMT_FLTP;
        block->nb_samples = static_cast<int>(samples.size());
        block->sample_rate = codec_->sample_rate;
        block->ch_layout = AV_CHANNEL_LAYOUT_MONO;
        if (av_frame_get_buffer(block.get(), 0) < 0) {
            return false;
        }
        std::copy(samples.begin(), samples.end(), reinterpret_cast<float*>(block->data[0]));
        block->pts = sent_;
        sent_ += block->nb_samples;
        return pump(format, block.get());
    }
    bool pump(AVFormatContext* format, const AVFrame* frame) {
        if (avcodec_send_frame(codec_.get(), frame) < 0) {
            return false;
        }
        while (avcodec_receive_packet(codec_.get(), packet_.get()) >= 0) {
            packet_->stream_index = stream_->index;
            av_packet_rescale_ts(packet_.get(), codec_->time_base, stream_->time_base);
            if (av_interleaved_write_frame(format, packet_.get()) < 0) {
                return false;
            }
        }
        return true;
    }
    CodecPtr codec_;
    AVStream* stream_ = nullptr;
    PacketPtr packet_{av_packet_alloc()};
    std::vector<float> waiting_;
    std::int64_t sent_ = 0;
};

/// Makes the MP4 of a part file. False where the part holds no picture.
base::Result<bool> assemble(const fs::path& part, const fs::path& file) {
    AVFormatContext* rawInput = nullptr;
    const std::string url = "file:" + part.string();
    if (avformat_open_input(&rawInput, url.c_str(), av_find_input_format("nut"), nullptr) < 0) {
        return false;
    }
    InputPtr input{rawInput};
    int video = -1, sound = -1;
    for (unsigned i = 0; i < input->nb_streams; ++i) {
        const auto type = input->streams[i]->codecpar->codec_type;
        (type == AVMEDIA_TYPE_VIDEO ? video : sound) = static_cast<int>(i);
    }
    if (video < 0) {
        return false;
    }
    auto making = file;
    making += ".making";
    auto opened = openOutput("mp4", making);
    if (!opened) {
        return opened.error();
    }
    OutputPtr output = std::move(*opened);
    const auto fail = [&](const base::Error& error) {
        closeOutput(output.get());
        std::error_code ignored;
        fs::remove(making, ignored);
        return error;
    };
    AVStream* picture = avformat_new_stream(output.get(), nullptr);
    avcodec_parameters_copy(picture->codecpar, input->streams[video]->codecpar);
    picture->codecpar->codec_tag = 0;
    picture->time_base = {1, kClock};
    SoundCoder coder;
    if (sound >= 0) {
        if (auto ok = coder.open(output.get(), input->streams[sound]->codecpar->sample_rate); !ok) {
            return fail(ok.error());
        }
    }
    Options settings;
    settings.setInt("video_track_timescale", kClock);
    if (avformat_write_header(output.get(), settings.address()) < 0) {
        return fail(diskError(file));
    }
    // One picture is held back until the next tells how long it is shown; the last stays as long as the one
    // before it.
    PacketPtr packet{av_packet_alloc()}, held{av_packet_alloc()};
    std::int64_t gap = kClock / 30;
    int pictures = 0;
    const auto release = [&] {
        if (held->data == nullptr) {
            return true;
        }
        held->duration = gap;
        held->stream_index = picture->index;
        held->pos = -1;
        av_packet_rescale_ts(held.get(), {1, kClock}, picture->time_base);
        return av_interleaved_write_frame(output.get(), held.get()) >= 0;
    };
    while (av_read_frame(input.get(), packet.get()) >= 0) {
        const bool whole = (packet->flags & AV_PKT_FLAG_CORRUPT) == 0;
        bool fine = true;
        if (packet->stream_index == video && whole) {
            av_packet_rescale_ts(packet.get(), input->streams[video]->time_base, {1, kClock});
            packet->dts = packet->pts;
            if (held->data != nullptr) {
                gap = std::max<std::int64_t>(1, packet->pts - held->pts);
            }
            fine = release();
            av_packet_unref(held.get());
            av_packet_move_ref(held.get(), packet.get());
            ++pictures;
        } else if (packet->stream_index == sound && whole) {
            fine = coder.add(output.get(), packet->data, packet->size);
        }
        av_packet_unref(packet.get());
        if (!fine) {
            return fail(diskError(file));
        }
    }
    if (!release() || (sound >= 0 && !coder.finish(output.get())) ||
        (pictures > 0 && av_write_trailer(output.get()) < 0) || !closeOutput(output.get())) {
        return fail(diskError(file));
    }
    if (pictures == 0) {
        std::error_code ignored;
        fs::remove(making, ignored);
        return false;
    }
    if (auto moved = base::moveIntoPlace(making, file); !moved) {
        return fail(moved.error());
    }
    return true;
}

class NutTake final : public TakeFile {
  public:
    NutTake(fs::path file, std::shared_ptr<const CodedFormat> format, double soundRate)
        : file_(std::move(file)), part_(partOf(file_)), coded_(std::move(format)),
          rate_(static_cast<int>(std::lround(soundRate))) {}
    ~NutTake() override { closeOutput(format_.get()); }

    base::Result<void> open() {
        auto opened = openOutput("nut", part_);
        if (!opened) {
            return opened.error();
        }
        format_ = std::move(*opened);
        format_->flags |= AVFMT_FLAG_FLUSH_PACKETS;
        video_ = avformat_new_stream(format_.get(), nullptr);
        avcodec_parameters_copy(video_->codecpar, coded_->parameters.get());
        video_->time_base = {1, kClock};
        if (rate_ > 0) {
            sound_ = avformat_new_stream(format_.get(), nullptr);
            sound_->codecpar->codec_type = AVMEDIA_TYPE_AUDIO;
            sound_->codecpar->codec_id = AV_CODEC_ID_PCM_S16LE;
            sound_->codecpar->sample_rate = rate_;
            sound_->codecpar->ch_layout = AV_CHANNEL_LAYOUT_MONO;
            sound_->codecpar->format = AV_SAMPLE_FMT_S16;
            sound_->time_base = {1, rate_};
        }
        if (avformat_write_header(format_.get(), nullptr) < 0) {
            abandon();
            return diskError(file_);
        }
        return {};
    }

    base::Result<void> add(const CodedPicture& picture) override {
        if (!first_) {
            if (!picture.key) {
                return base::failure("writer.time", "A take must begin with a key picture.");
            }
            first_ = picture.time;
        }
        // Both ends are put on the clock before they are subtracted: the distances stay the camera's own.
        const std::int64_t pts =
            std::llround(picture.time.value() * kClock) - std::llround(first_->value() * kClock);
        if (pts <= last_) {
            return base::failure("writer.time", "A picture's time is not later than the one before.");
        }
        last_ = pts;
        return write(video_, picture.bytes.data(), picture.bytes.size(), pts, {1, kClock}, picture.key);
    }

    base::Result<void> addSound(std::span<const float> mono, base::Seconds time) override {
        if (sound_ == nullptr || !first_) {
            return {};
        }
        std::int64_t at = std::llround((time - *first_).value() * rate_);
        // The sound card's clock and the camera's differ by some milliseconds from block to block; only a
        // real gap is filled.
        if (std::abs(at - sent_) < rate_ / 50) {
            at = sent_;
        }
        if (at < sent_) {
            const auto skip = static_cast<std::size_t>(sent_ - at);
            if (skip >= mono.size()) {
                return {};
            }
            mono = mono.subspan(skip);
            at = sent_;
        }
        std::vector<std::uint8_t> bytes;
        bytes.reserve(2 * (mono.size() + static_cast<std::size_t>(at - sent_)));
        bytes.resize(2 * static_cast<std::size_t>(at - sent_));
        for (const float v : mono) {
            const auto s = static_cast<std::uint16_t>(
                static_cast<std::int16_t>(std::lround(std::clamp(v, -1.0F, 1.0F) * 32767.0F)));
            bytes.push_back(static_cast<std::uint8_t>(s & 0xff));
            bytes.push_back(static_cast<std::uint8_t>(s >> 8));
        }
        const std::int64_t pts = sent_;
        sent_ = at + static_cast<std::int64_t>(mono.size());
        return write(sound_, bytes.data(), bytes.size(), pts, {1, rate_}, true);
    }

    base::Result<void> finish() override {
        if (!first_) {
            abandon();
            return base::failure("writer.no_pictures", "The take has no picture.");
        }
        const bool written = av_write_trailer(format_.get()) >= 0;
        if (!closeOutput(format_.get()) || !written) {
            return diskError(file_);
        }
        const auto made = assemble(part_, file_);
        if (!made) {
            return made.error();
        }
        if (!*made) {
            return diskError(file_);
        }
        std::error_code ignored;
        fs::remove(part_, ignored);
        return {};
    }

    void abandon() override {
        closeOutput(format_.get());
        std::error_code ignored;
        fs::remove(part_, ignored);
    }

  private:
    base::Result<void> write(AVStream* stream, const std::uint8_t* bytes, std::size_t size, std::int64_t pts,
                             AVRational base, bool key) {
        if (av_new_packet(packet_.get(), static_cast<int>(size)) < 0) {
            return memoryError();
        }
        std::copy(bytes, bytes + size, packet_->data);
        packet_->stream_index = stream->index;
        packet_->pts = packet_->dts = pts;
        packet_->flags = key ? AV_PKT_FLAG_KEY : 0;
        av_packet_rescale_ts(packet_.get(), base, stream->time_base);
        const int done = av_write_frame(format_.get(), packet_.get());
        av_packet_unref(packet_.get());
        return done < 0 ? base::Result<void>(diskError(file_)) : base::Result<void>();
    }

    fs::path file_, part_;
    std::shared_ptr<const CodedFormat> coded_;
    int rate_ = 0;
    OutputPtr format_;
    AVStream* video_ = nullptr;
    AVStream* sound_ = nullptr;
    PacketPtr packet_{av_packet_alloc()};
    std::optional<base::Seconds> first_;
    std::int64_t last_ = -1, sent_ = 0;
};

} // namespace

base::Result<std::unique_ptr<LiveEncoder>> LiveEncoder::create(const LiveOptions& options) {
    silenceFfmpeg();
    const auto even = [](int n) { return n >= 2 && n <= 8192 && n % 2 == 0; };
    if (!even(options.width) || !even(options.height) || !(options.fps > 0.0 && options.fps <= 2000.0) ||
        !(options.keyEverySeconds > 0.0)) {
        return base::failure("writer.options", "A picture of " + std::to_string(options.width) + " by " +
                                                   std::to_string(options.height) +
                                                   " pixels can't be filmed; use even sizes from 2 to 8192.");
    }
    auto encoder = std::make_unique<X264Encoder>(options);
    if (auto opened = encoder->open(); !opened) {
        return opened.error();
    }
    return std::unique_ptr<LiveEncoder>(std::move(encoder));
}

base::Result<std::unique_ptr<TakeFile>>
TakeFile::begin(const fs::path& file, std::shared_ptr<const CodedFormat> format, double soundRate) {
    silenceFfmpeg();
    auto take = std::make_unique<NutTake>(file, std::move(format), soundRate);
    if (auto opened = take->open(); !opened) {
        return opened.error();
    }
    return std::unique_ptr<TakeFile>(std::move(take));
}

base::Result<std::vector<fs::path>> recoverTakes(const fs::path& folder) {
    silenceFfmpeg();
    std::vector<fs::path> parts, made;
    std::error_code error;
    for (fs::directory_iterator it(folder, error), end; !error && it != end; it.increment(error)) {
        if (it->path().extension() == ".part") {
            parts.push_back(it->path());
        }
        if (it->path().extension() == ".making") { // its part is still there
            std::error_code ignored;
            fs::remove(it->path(), ignored);
        }
    }
    std::sort(parts.begin(), parts.end());
    for (const auto& part : parts) {
        auto file = part;
        file.replace_extension();
        const auto done = assemble(part, file);
        if (!done) {
            return done.error();
        }
        fs::remove(part, error);
        if (*done) {
            made.push_back(file);
        }
    }
    return made;
}

} // namespace plumbmark::video
