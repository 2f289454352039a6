// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "awkward/awkward.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstring>
#include <fstream>
#include <functional>
#include <memory>
#include <numbers>

extern "C" {
#include <libavcodec/avcodec.h>
#include <libavformat/avformat.h>
#include <libavutil/opt.h>
#include <libavutil/pixdesc.h>
}

#include "awkward/strip.h"

namespace plumbmark::awkward {
namespace {

constexpr int clock = 90000;

struct CodecCloser {
    void operator()(AVCodecContext* c) const { avcodec_free_context(&c); }
};
struct FormatCloser {
    void operator()(AVFormatContext* c) const {
        if (c->pb != nullptr) {
            avio_closep(&c->pb);
        }
        avformat_free_context(c);
    }
};
struct FrameCloser {
    void operator()(AVFrame* f) const { av_frame_free(&f); }
};
struct PacketCloser {
    void operator()(AVPacket* p) const { av_packet_free(&p); }
};
using Codec = std::unique_ptr<AVCodecContext, CodecCloser>;
using Format = std::unique_ptr<AVFormatContext, FormatCloser>;
using Picture = std::unique_ptr<AVFrame, FrameCloser>;
using Packet = std::unique_ptr<AVPacket, PacketCloser>;

enum class RateTag { none, text, real, integer };

/// How a clip differs from an ordinary one.
struct Recipe {
    std::string name;
    std::string encoder = "libx264";
    std::string parameters; ///< the encoder's own
    AVPixelFormat format = AV_PIX_FMT_YUV420P;
    int width = 192, height = 144; ///< upright
    int frames = 72;
    double fps = 120.0;
    int gop = 24, bFrames = 0;
    std::string container = "mp4";
    std::string extension = ".mp4";
    std::string flags; ///< the muxer's movflags
    bool transpose = false, flipX = false, flipY = false;
    AVRational aspect{1, 1};
    bool fullRange = false;
    std::function<std::int64_t(int)> ticks; ///< presentation time of frame i; empty: even
    RateTag tag = RateTag::none;
    double taggedRate = 0.0;
    double click = -1.0;    ///< s on the sound's own clock; negative: no sound
    std::int64_t shift = 0; ///< added to every picture's times
    int firstPacket = 0;    ///< packets before this one aren't written
    int hiddenFrames = 0;   ///< shown order: frames the container or decoder must not show
};

double gopTime(const Recipe& r, int i) {
    return i / r.fps;
}

std::int64_t ticksOf(const Recipe& r, int i) {
    return r.ticks ? r.ticks(i) : std::llround(gopTime(r, i) * clock);
}

std::vector<Recipe> recipes() {
    std::vector<Recipe> all;
    const auto add = [&](const char* name) -> Recipe& {
        all.emplace_back();
        all.back().name = name;
        return all.back();
    };
    add("plain");
    {
        auto& r = add("sound");
        r.click = 0.3137;
        r.bFrames = 2;
    }
    struct Turn {
        const char* name;
        bool transpose, flipX, flipY;
    };
    for (const Turn& t : {Turn{"rotated-90", true, true, false}, Turn{"rotated-180", false, true, true},
                          Turn{"rotated-270", true, false, true}, Turn{"mirrored", false, true, false},
                          Turn{"mirrored-180", false, false, true}, Turn{"mirrored-90", true, true, true},
                          Turn{"mirrored-270", true, false, false}}) {
        auto& r = add(t.name);
        r.transpose = t.transpose;
        r.flipX = t.flipX;
        r.flipY = t.flipY;
        if (t.transpose) {
            std::swap(r.width, r.height);
        }
        r.frames = 40;
    }
    {
        auto& r = add("variable-timing");
        r.bFrames = 2;
        // Jitter of up to 18 % and three frames missing after the 30th.
        r.ticks = [](int i) {
            return static_cast<std::int64_t>(i * 750 + (i * 37 % 11 - 5) * 27 + 135 + (i > 30 ? 3 * 750 : 0));
        };
    }
    for (const auto& [name, tag] :
         {std::pair{"slow-text", RateTag::text}, std::pair{"slow-real", RateTag::real},
          std::pair{"slow-integer", RateTag::integer}}) {
        auto& r = add(name);
        r.fps = 30.0;
        r.tag = tag;
        r.taggedRate = 240.0;
        r.frames = 40;
    }
    add("slow-no-hint").fps = 30.0;
    {
        auto& r = add("slowed-in-parts");
        r.frames = 90;
        r.ticks = [](int i) {
            const int middle = std::clamp(i - 30, 0, 30);
            return static_cast<std::int64_t>(750 * (i - middle) + 3000 * middle);
        };
    }
    {
        auto& r = add("hevc");
        r.encoder = "libx265";
        r.bFrames = 2;
        r.frames = 50;
    }
    {
        auto& r = add("hevc-10-bit");
        r.encoder = "libx265";
        r.format = AV_PIX_FMT_YUV420P10;
        r.bFrames = 3;
        r.frames = 50;
    }
    {
        auto& r = add("hevc-open-group");
        r.encoder = "libx265";
        r.parameters = "open-gop=1";
        r.bFrames = 3;
        r.gop = 16;
    }
    {
        auto& r = add("long-group");
        r.gop = 250;
        r.bFrames = 3;
        r.frames = 150;
        r.fps = 240.0;
        r.parameters = "b-pyramid=normal";
    }
    {
        auto& r = add("open-group");
        r.bFrames = 3;
        r.gop = 16;
        r.parameters = "open-gop=1";
    }
    {
        auto& r = add("stripe-refresh");
        r.gop = 24;
        r.parameters = "intra-refresh=1";
        r.frames = 50;
    }
    {
        auto& r = add("edit-list");
        r.bFrames = 2;
        r.hiddenFrames = 29; // in the middle of the second group
        r.shift = -29 * 750;
    }
    {
        auto& r = add("edit-list-open-group");
        r.bFrames = 3;
        r.gop = 16;
        r.parameters = "open-gop=1";
        r.hiddenFrames = 21;
        r.shift = -21 * 750;
        r.click = 0.2003;
    }
    {
        auto& r = add("starts-late");
        r.shift = 18000; // 0.2 s after the sound
        r.click = 0.4501;
        r.bFrames = 2;
    }
    {
        auto& r = add("odd-size");
        r.width = 193;
        r.height = 143;
        r.encoder = "mpeg4";
        r.parameters = "q";
    }
    {
        auto& r = add("odd-size-444");
        r.width = 193;
        r.height = 143;
        r.format = AV_PIX_FMT_YUV444P;
    }
    {
        auto& r = add("cropped-blocks");
        r.width = 186;
        r.height = 134;
        r.bFrames = 2;
    }
    add("one-frame").frames = 1;
    {
        auto& r = add("negative-start"); // FFmpeg reads such blocks without a time
        r.container = "matroska";
        r.extension = ".mkv";
        r.shift = -9000;
        r.bFrames = 2;
    }
    {
        auto& r = add("matroska");
        r.container = "matroska";
        r.extension = ".mkv";
        r.click = 0.1137;
        r.bFrames = 3;
        r.fps = 240.0;
    }
    {
        auto& r = add("matroska-cut-open-group");
        r.container = "matroska";
        r.extension = ".mkv";
        r.bFrames = 3;
        r.gop = 16;
        r.parameters = "open-gop=1";
        r.firstPacket = -1; // from the second key picture on
    }
    {
        auto& r = add("transport-stream");
        r.container = "mpegts";
        r.extension = ".ts";
        r.click = 0.3137;
        r.bFrames = 2;
    }
    {
        auto& r = add("transport-stream-cut");
        r.container = "mpegts";
        r.extension = ".ts";
        r.bFrames = 3;
        r.gop = 16;
        r.firstPacket = 5; // before the first key picture
    }
    {
        auto& r = add("avi");
        r.container = "avi";
        r.extension = ".avi";
        r.bFrames = 2;
        r.fps = 60.0;
    }
    {
        auto& r = add("invisible-pictures");
        r.container = "webm";
        r.extension = ".webm";
        r.encoder = "libvpx";
        r.frames = 60;
    }
    {
        auto& r = add("fragmented");
        r.flags = "frag_keyframe+delay_moov+default_base_moof";
        r.bFrames = 2;
        r.click = 0.3137;
    }
    {
        auto& r = add("index-first");
        r.flags = "faststart";
        r.click = 0.3137;
        r.bFrames = 2;
    }
    {
        auto& r = add("full-range");
        r.fullRange = true;
        r.format = AV_PIX_FMT_YUVJ420P;
    }
    {
        auto& r = add("422-10-bit");
        r.format = AV_PIX_FMT_YUV422P10;
        r.bFrames = 2;
    }
    {
        auto& r = add("wide-pixels");
        r.aspect = {4, 3};
    }
    return all;
}

/// The upright picture: number strip, a slope, and a bar that moves so that frames refer to each other.
struct Scene {
    const Recipe& recipe;
    int number;
    StripPlace place;
    std::uint32_t bits;

    Scene(const Recipe& r, int n)
        : recipe(r), number(n), place(stripPlace(r.width, r.height)), bits(stripPattern(n)) {}

    [[nodiscard]] int luma(double x, double y) const {
        const double block = (x - place.left) / place.block;
        if (y >= place.top && y < place.top + place.height && block >= 0.0 && block < stripBlocks) {
            return (bits >> (stripBlocks - 1 - static_cast<int>(block))) & 1U ? 220 : 30;
        }
        const double bar = std::fmod(number * 3.7, recipe.width);
        if (y > 0.4 * recipe.height && std::abs(x - bar) < 12.0) {
            return 190;
        }
        return 50 + static_cast<int>(60.0 * x / recipe.width + 40.0 * y / recipe.height);
    }
    [[nodiscard]] int cb(double x) const { return 108 + static_cast<int>(40.0 * x / recipe.width); }
    [[nodiscard]] int cr(double y) const { return 148 - static_cast<int>(40.0 * y / recipe.height); }
};

/// The picture as stored: the display matrix undone, pixels squeezed.
void paint(AVFrame& into, const Recipe& r, int number) {
    const Scene scene(r, number);
    const auto* format = av_pix_fmt_desc_get(static_cast<AVPixelFormat>(into.format));
    for (int p = 0; p < 3; ++p) {
        const int sx = p > 0 ? format->log2_chroma_w : 0, sy = p > 0 ? format->log2_chroma_h : 0;
        const int w = AV_CEIL_RSHIFT(into.width, sx), h = AV_CEIL_RSHIFT(into.height, sy);
        const int depth = format->comp[p].depth;
        for (int y = 0; y < h; ++y) {
            std::uint8_t* row = into.data[p] + static_cast<std::ptrdiff_t>(y) * into.linesize[p];
            for (int x = 0; x < w; ++x) {
                double u = (x << sx) + 0.5, v = (y << sy) + 0.5;
                u *= av_q2d(r.aspect);
                if (r.transpose) {
                    std::swap(u, v);
                }
                u = r.flipX ? r.width - u : u;
                v = r.flipY ? r.height - v : v;
                const int value = p == 0 ? scene.luma(u, v) : p == 1 ? scene.cb(u) : scene.cr(v);
                if (depth == 8) {
                    row[x] = static_cast<std::uint8_t>(value);
                } else {
                    const auto deep = static_cast<std::uint16_t>(value << (depth - 8));
                    std::memcpy(row + 2 * x, &deep, 2);
                }
            }
        }
    }
}

base::Error cannotEncode(const Recipe& r) {
    return base::failure("awkward.encoder", "The clip \"" + r.name +
                                                "\" can't be made: this FFmpeg has no working " + r.encoder +
                                                " encoder; install one that has.");
}
base::Error cannotWrite(const Recipe& r) {
    return base::failure("awkward.write", "The clip \"" + r.name + "\" can't be written; check the folder.");
}

class Maker {
  public:
    Maker(const Recipe& recipe, std::filesystem::path path) : r_(recipe), path_(std::move(path)) {}
    base::Result<void> run();
    /// Times (in ticks, shift included) of the packets left out; needed to know what remains.
    std::vector<std::int64_t> written; ///< pts in decoding order
    std::vector<bool> keys;

  private:
    base::Result<void> openVideo();
    base::Result<void> openSound();
    base::Result<void> writeSound();
    base::Result<void> collect(AVCodecContext* codec, AVStream* stream, const AVFrame* frame,
                               std::vector<Packet>& into);

    const Recipe& r_;
    std::filesystem::path path_;
    Format format_;
    Codec video_, sound_;
    AVStream* videoStream_ = nullptr;
    AVStream* soundStream_ = nullptr;
    std::vector<Packet> videoPackets_, soundPackets_;
};

base::Result<void> Maker::openVideo() {
    const AVCodec* encoder = avcodec_find_encoder_by_name(r_.encoder.c_str());
    if (encoder == nullptr) {
        return cannotEncode(r_);
    }
    video_.reset(avcodec_alloc_context3(encoder));
    const int storedWidth = static_cast<int>(std::lround(r_.width / av_q2d(r_.aspect)));
    video_->width = r_.transpose ? r_.height : storedWidth;
    video_->height = r_.transpose ? r_.width : r_.height;
    video_->sample_aspect_ratio = r_.aspect;
    video_->pix_fmt = r_.format;
    video_->color_range = r_.fullRange ? AVCOL_RANGE_JPEG : AVCOL_RANGE_MPEG;
    video_->colorspace = AVCOL_SPC_BT709;
    const bool even = r_.encoder == "mpeg4" || r_.container == "avi" || r_.encoder == "libvpx";
    video_->time_base = even ? AVRational{1, static_cast<int>(r_.fps)} : AVRational{1, clock};
    video_->framerate = {static_cast<int>(r_.fps), 1};
    video_->gop_size = r_.gop;
    video_->max_b_frames = r_.bFrames;
    video_->thread_count = 1; // the same bytes everywhere
    if ((format_->oformat->flags & AVFMT_GLOBALHEADER) != 0) {
        video_->flags |= AV_CODEC_FLAG_GLOBAL_HEADER;
    }
    if (r_.encoder == "libx264") {
        av_opt_set(video_->priv_data, "preset", "veryfast", 0);
        av_opt_set(video_->priv_data, "crf", "23", 0);
        av_opt_set_int(video_->priv_data, "sc_threshold", 0, 0);
        if (!r_.parameters.empty()) {
            av_opt_set(video_->priv_data, "x264-params", r_.parameters.c_str(), 0);
        }
    } else if (r_.encoder == "libx265") {
        video_->codec_tag = MKTAG('h', 'v', 'c', '1');
        av_opt_set(video_->priv_data, "preset", "ultrafast", 0);
        const std::string p =
            "log-level=none:pools=1:frame-threads=1:scenecut=0:bframes=" + std::to_string(r_.bFrames) + ":" +
            (r_.parameters.empty() ? "open-gop=0" : r_.parameters);
        av_opt_set(video_->priv_data, "x265-params", p.c_str(), 0);
    } else if (r_.encoder == "libvpx") {
        video_->bit_rate = 800000;
        av_opt_set(video_->priv_data, "auto-alt-ref", "1", 0);
        av_opt_set(video_->priv_data, "lag-in-frames", "16", 0);
        av_opt_set(video_->priv_data, "deadline", "good", 0);
        av_opt_set(video_->priv_data, "cpu-used", "4", 0);
    } else {
        video_->flags |= AV_CODEC_FLAG_QSCALE;
        video_->global_quality = 4 * FF_QP2LAMBDA;
    }
    if (avcodec_open2(video_.get(), encoder, nullptr) < 0) {
        return cannotEncode(r_);
    }
    videoStream_ = avformat_new_stream(format_.get(), nullptr);
    videoStream_->time_base = video_->time_base;
    videoStream_->avg_frame_rate = video_->framerate;
    videoStream_->sample_aspect_ratio = r_.aspect;
    avcodec_parameters_from_context(videoStream_->codecpar, video_.get());
    if (r_.transpose || r_.flipX || r_.flipY) {
        auto* m = reinterpret_cast<std::int32_t*>(
            av_stream_new_side_data(videoStream_, AV_PKT_DATA_DISPLAYMATRIX, 9 * sizeof(std::int32_t)));
        std::fill_n(m, 9, 0);
        m[8] = 1 << 30;
        const std::int32_t x = r_.flipX ? -(1 << 16) : 1 << 16, y = r_.flipY ? -(1 << 16) : 1 << 16;
        (r_.transpose ? m[3] : m[0]) = x;
        (r_.transpose ? m[1] : m[4]) = y;
    }
    return {};
}

base::Result<void> Maker::openSound() {
    const bool webm = r_.container == "webm";
    const AVCodec* encoder = webm ? nullptr : avcodec_find_encoder(AV_CODEC_ID_AAC);
    if (encoder == nullptr) {
        return cannotEncode(r_);
    }
    sound_.reset(avcodec_alloc_context3(encoder));
    sound_->sample_rate = 48000;
    sound_->sample_fmt = AV_SAMPLE_FMT_FLTP;
    sound_->ch_layout = AV_CHANNEL_LAYOUT_MONO;
    sound_->time_base = {1, 48000};
    sound_->bit_rate = 96000;
    if ((format_->oformat->flags & AVFMT_GLOBALHEADER) != 0) {
        sound_->flags |= AV_CODEC_FLAG_GLOBAL_HEADER;
    }
    if (avcodec_open2(sound_.get(), encoder, nullptr) < 0) {
        return cannotEncode(r_);
    }
    soundStream_ = avformat_new_stream(format_.get(), nullptr);
    soundStream_->time_base = sound_->time_base;
    avcodec_parameters_from_context(soundStream_->codecpar, sound_.get());
    return {};
}

base::Result<void> Maker::collect(AVCodecContext* codec, AVStream* stream, const AVFrame* frame,
                                  std::vector<Packet>& into) {
    if (avcodec_send_frame(codec, frame) < 0) {
        return cannotEncode(r_);
    }
    while (true) {
        Packet packet{av_packet_alloc()};
        if (avcodec_receive_packet(codec, packet.get()) < 0) {
            return {};
        }
        packet->stream_index = stream->index;
        into.push_back(std::move(packet));
    }
}

base::Result<void> Maker::writeSound() {
    constexpr int rate = 48000;
    const double length = std::max(0.7, gopTime(r_, r_.frames));
    const int total = static_cast<int>(length * rate);
    for (int at = 0; at < total; at += sound_->frame_size) {
        Picture block{av_frame_alloc()};
        block->format = AV_SAMPLE_FMT_FLTP;
        block->nb_samples = sound_->frame_size;
        block->sample_rate = rate;
        block->ch_layout = AV_CHANNEL_LAYOUT_MONO;
        if (av_frame_get_buffer(block.get(), 0) < 0) {
            return cannotWrite(r_);
        }
        block->pts = at;
        auto* samples = reinterpret_cast<float*>(block->data[0]);
        for (int i = 0; i < block->nb_samples; ++i) {
            const double since = static_cast<double>(at + i) / rate - r_.click;
            samples[i] = since < 0.0 ? 0.0F
                                     : static_cast<float>(0.8 * std::exp(-since / 0.004) *
                                                          std::cos(2.0 * std::numbers::pi * 2000.0 * since));
        }
        if (auto done = collect(sound_.get(), soundStream_, block.get(), soundPackets_); !done) {
            return done;
        }
    }
    return collect(sound_.get(), soundStream_, nullptr, soundPackets_);
}

base::Result<void> Maker::run() {
    AVFormatContext* raw = nullptr;
    if (avformat_alloc_output_context2(&raw, nullptr, r_.container.c_str(), nullptr) < 0) {
        return cannotWrite(r_);
    }
    format_.reset(raw);
    if (auto opened = openVideo(); !opened) {
        return opened;
    }
    if (r_.click >= 0.0) {
        if (auto opened = openSound(); !opened) {
            return opened;
        }
        if (auto done = writeSound(); !done) {
            return done;
        }
    }
    for (int i = 0; i < r_.frames; ++i) {
        Picture picture{av_frame_alloc()};
        picture->format = video_->pix_fmt;
        picture->width = video_->width;
        picture->height = video_->height;
        picture->color_range = video_->color_range;
        if (av_frame_get_buffer(picture.get(), 0) < 0) {
            return cannotWrite(r_);
        }
        paint(*picture, r_, i);
        picture->pts = av_rescale_q_rnd(ticksOf(r_, i), {1, clock}, video_->time_base, AV_ROUND_NEAR_INF);
        if (auto done = collect(video_.get(), videoStream_, picture.get(), videoPackets_); !done) {
            return done;
        }
    }
    if (auto done = collect(video_.get(), videoStream_, nullptr, videoPackets_); !done) {
        return done;
    }
    if (r_.firstPacket != 0) {
        auto from = videoPackets_.begin() + std::max(0, r_.firstPacket);
        if (r_.firstPacket < 0) {
            from = std::find_if(videoPackets_.begin() + 1, videoPackets_.end(),
                                [](const Packet& p) { return (p->flags & AV_PKT_FLAG_KEY) != 0; });
        }
        videoPackets_.erase(videoPackets_.begin(), from);
    }
    AVDictionary* options = nullptr;
    std::string flags = r_.flags;
    if (r_.tag != RateTag::none) {
        // Four characters, so that the other forms can be put in their place.
        av_dict_set(&format_->metadata, "com.android.capture.fps",
                    r_.tag == RateTag::text ? "240.000000" : "240.", 0);
        flags += flags.empty() ? "use_metadata_tags" : "+use_metadata_tags";
    }
    if (!flags.empty()) {
        av_dict_set(&options, "movflags", flags.c_str(), 0);
    }
    if (r_.container != "mp4" && r_.shift < 0) {
        format_->avoid_negative_ts = AVFMT_AVOID_NEG_TS_DISABLED;
    }
    const std::string url = "file:" + path_.string();
    format_->url = av_strdup(url.c_str()); // moving the index to the front reads the file again
    if (avio_open(&format_->pb, url.c_str(), AVIO_FLAG_WRITE) < 0 ||
        avformat_write_header(format_.get(), &options) < 0) {
        av_dict_free(&options);
        return cannotWrite(r_);
    }
    av_dict_free(&options);
    for (auto& packet : soundPackets_) {
        av_packet_rescale_ts(packet.get(), sound_->time_base, soundStream_->time_base);
    }
    for (auto& packet : videoPackets_) {
        keys.push_back((packet->flags & AV_PKT_FLAG_KEY) != 0);
        written.push_back(av_rescale_q_rnd(packet->pts, video_->time_base, {1, clock}, AV_ROUND_NEAR_INF));
        if (packet->duration == 0) {
            packet->duration = av_rescale_q(1, av_inv_q(video_->framerate), video_->time_base);
        }
        const std::int64_t shift = av_rescale_q(r_.shift, {1, clock}, video_->time_base);
        packet->pts += shift;
        packet->dts += shift;
        av_packet_rescale_ts(packet.get(), video_->time_base, videoStream_->time_base);
    }
    // By time, so that no interleaving queue decides what comes first.
    std::size_t v = 0, s = 0;
    while (v < videoPackets_.size() || s < soundPackets_.size()) {
        const bool pictureFirst =
            s == soundPackets_.size() ||
            (v < videoPackets_.size() && av_compare_ts(videoPackets_[v]->dts, videoStream_->time_base,
                                                       soundPackets_[s]->dts, soundStream_->time_base) <= 0);
        AVPacket* next = pictureFirst ? videoPackets_[v++].get() : soundPackets_[s++].get();
        if (av_interleaved_write_frame(format_.get(), next) < 0) {
            return cannotWrite(r_);
        }
    }
    if (av_write_trailer(format_.get()) < 0) {
        return cannotWrite(r_);
    }
    format_.reset();
    return {};
}

/// Replaces the text "240." of the capture rate by four bytes of another type (well-known types of the
/// QuickTime file format's metadata values: 23 = 32-bit float, 21 = signed integer; both most significant
/// byte first).
base::Result<void> retype(const Recipe& r, const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    std::string bytes((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
    in.close();
    const std::string pattern("data\0\0\0\1\0\0\0\0"
                              "240.",
                              16);
    const auto at = bytes.find(pattern);
    if (at == std::string::npos) {
        return cannotWrite(r);
    }
    const bool real = r.tag == RateTag::real;
    const std::uint32_t value = real ? std::bit_cast<std::uint32_t>(static_cast<float>(r.taggedRate))
                                     : static_cast<std::uint32_t>(r.taggedRate);
    bytes[at + 7] = static_cast<char>(real ? 23 : 21);
    for (int i = 0; i < 4; ++i) {
        bytes[at + 12 + static_cast<std::size_t>(i)] = static_cast<char>(value >> (24 - 8 * i));
    }
    std::ofstream out(path, std::ios::binary | std::ios::trunc);
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    out.close();
    return out ? base::Result<void>() : base::Result<void>(cannotWrite(r));
}

} // namespace

std::vector<std::string> names() {
    std::vector<std::string> all;
    for (const auto& recipe : recipes()) {
        all.push_back(recipe.name);
    }
    return all;
}

base::Result<AwkwardClip> make(const std::string& name, const std::filesystem::path& folder) {
    av_log_set_level(AV_LOG_QUIET);
    const auto all = recipes();
    const auto found = std::find_if(all.begin(), all.end(), [&](const Recipe& r) { return r.name == name; });
    if (found == all.end()) {
        return base::failure("awkward.write",
                             "There is no awkward clip called \"" + name + "\"; choose another name.");
    }
    const Recipe& r = *found;
    AwkwardClip clip;
    clip.name = name;
    clip.path = folder / (name + r.extension);
    Maker maker(r, clip.path);
    if (auto done = maker.run(); !done) {
        return done.error();
    }
    if (r.tag == RateTag::real || r.tag == RateTag::integer) {
        if (auto done = retype(r, clip.path); !done) {
            return done.error();
        }
    }
    clip.width = r.width;
    clip.height = r.height;
    clip.mirrored = (r.transpose ? 1 : 0) + (r.flipX ? 1 : 0) + (r.flipY ? 1 : 0) == 1 ||
                    (r.transpose && r.flipX && r.flipY);
    const auto dash = name.rfind('-');
    if (name.starts_with("rotated-") || name.starts_with("mirrored-")) {
        clip.rotationDegrees = std::stoi(name.substr(dash + 1));
    }
    // Shown: what was written, without what is hidden and what lacks its reference pictures.
    std::vector<std::pair<std::int64_t, int>> shown;
    std::int64_t firstKey = INT64_MIN;
    for (std::size_t i = 0; i < maker.written.size(); ++i) {
        if (maker.keys[i]) {
            firstKey = maker.written[i];
            break;
        }
    }
    for (int i = r.hiddenFrames; i < r.frames; ++i) {
        const std::int64_t ticks = ticksOf(r, i);
        const bool there = std::any_of(maker.written.begin(), maker.written.end(),
                                       [&](std::int64_t t) { return std::abs(t - ticks) < 2; });
        if (there && ticks >= firstKey) {
            shown.emplace_back(ticks, i);
        }
    }
    for (const auto& [ticks, number] : shown) {
        clip.numbers.push_back(number);
        clip.times.push_back(static_cast<double>(ticks - shown.front().first) / clock);
    }
    const bool milliseconds = r.container == "matroska" || r.container == "webm";
    clip.timeError = milliseconds ? 0.001 : 0.0;
    if (r.tag != RateTag::none) {
        clip.captureFps = r.taggedRate;
        clip.captureSource = "metadata";
    } else {
        const double rate =
            clip.times.size() > 1 ? static_cast<double>(clip.times.size() - 1) / clip.times.back() : 0.0;
        clip.captureSource = rate >= 50.0 ? "playback" : "unknown";
        if (rate >= 50.0) {
            clip.captureFps = rate;
        }
    }
    clip.uneven = r.name == "variable-timing" || r.name == "slowed-in-parts";
    if (r.click >= 0.0) {
        clip.click = r.click - static_cast<double>(r.shift) / clock -
                     (shown.front().first / static_cast<double>(clock));
    }
    const bool turned = r.transpose || r.flipX || r.flipY;
    clip.plain = !turned && r.aspect.num == r.aspect.den &&
                 (r.format == AV_PIX_FMT_YUV420P || r.format == AV_PIX_FMT_YUVJ420P);
    return clip;
}

} // namespace plumbmark::awkward
