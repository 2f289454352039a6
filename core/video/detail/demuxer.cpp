// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/detail/demuxer.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstring>
#include <string>
#include <string_view>
#include <vector>

namespace plumbmark::video::detail {
namespace {

constexpr int bufferBytes = 1 << 16;

int readBytes(void* opaque, std::uint8_t* into, int size) {
    auto got = static_cast<ByteSource*>(opaque)->read({into, static_cast<std::size_t>(size)});
    if (!got) {
        return AVERROR(EIO);
    }
    return *got == 0 ? AVERROR_EOF : static_cast<int>(*got);
}

std::int64_t seekBytes(void* opaque, std::int64_t offset, int whence) {
    auto* source = static_cast<ByteSource*>(opaque);
    if ((whence & AVSEEK_SIZE) != 0) {
        return source->size();
    }
    // FFmpeg's buffered layer turns relative seeks into absolute ones before they get here.
    const std::int64_t place = (whence & ~AVSEEK_FORCE) == SEEK_END ? source->size() + offset : offset;
    if (place < 0 || !source->seek(place)) {
        return AVERROR(EIO);
    }
    return place;
}

int refuseOtherFiles(AVFormatContext* /*format*/, AVIOContext** io, const char* /*url*/, int /*flags*/,
                     AVDictionary** /*options*/) {
    *io = nullptr;
    return AVERROR(EACCES);
}

/// Does the file begin like one of the containers whose index can be cut off?
bool beginsLikeAVideo(ByteSource& source) {
    std::array<std::uint8_t, 12> head{};
    if (!source.seek(0)) {
        return false;
    }
    auto got = source.read(head);
    if (!got || *got < 8) {
        return false;
    }
    static constexpr std::array<std::uint8_t, 4> ebml{0x1A, 0x45, 0xDF, 0xA3};
    if (std::equal(ebml.begin(), ebml.end(), head.begin())) {
        return true;
    }
    const std::string_view type(reinterpret_cast<const char*>(head.data()) + 4, 4);
    const std::string_view start(reinterpret_cast<const char*>(head.data()), 4);
    for (const char* known : {"ftyp", "moov", "mdat", "wide", "free", "skip"}) {
        if (type == known) {
            return true;
        }
    }
    return start == "RIFF" && *got >= 12 && std::memcmp(head.data() + 8, "AVI ", 4) == 0;
}

base::Error truncated() {
    return base::inputError("clip.truncated",
                            "The clip ends before anything of it can be read; copy it again from "
                            "the camera.");
}

bool nameHas(const AVFormatContext* format, const char* name) {
    return format != nullptr && av_match_name(name, format->iformat->name) != 0;
}

} // namespace

Demuxer::~Demuxer() {
    close();
}

void Demuxer::close() {
    format_.reset();
    if (io_ != nullptr) {
        av_freep(&io_->buffer); // FFmpeg may have replaced the one we gave it
        avio_context_free(&io_);
    }
    video_ = sound_ = nullptr;
}

int Demuxer::openContainer() {
    close();
    if (!source_->seek(0)) {
        return AVERROR(EIO);
    }
    auto* buffer = static_cast<std::uint8_t*>(av_malloc(bufferBytes));
    io_ = avio_alloc_context(buffer, bufferBytes, 0, source_.get(), readBytes, nullptr, seekBytes);
    AVFormatContext* raw = avformat_alloc_context();
    if (buffer == nullptr || io_ == nullptr || raw == nullptr) {
        avformat_free_context(raw);
        return AVERROR(ENOMEM);
    }
    raw->pb = io_;
    raw->io_open = refuseOtherFiles;
    Options options;
    options.set("format_whitelist",
                soundOnly_ ? "mov,matroska,mpegts,mpeg,avi,asf,flv,nut,ogg,wav,w64,mp3,aac,flac,aiff,caf,amr"
                           : "mov,matroska,mpegts,mpeg,avi,asf,flv,nut,ogg");
    const int opened = avformat_open_input(&raw, "", nullptr, options.address());
    if (opened < 0) {
        return opened; // FFmpeg has freed the context
    }
    format_.reset(raw);
    return 0;
}

base::Result<std::unique_ptr<Demuxer>> Demuxer::open(std::unique_ptr<ByteSource> source) {
    silenceFfmpeg();
    if (source->size() == 0) {
        return base::inputError("clip.empty", "The clip is empty; copy it again from the camera.");
    }
    std::unique_ptr<Demuxer> self(new Demuxer(std::move(source)));
    const auto notVideo =
        base::inputError("clip.not_video", "This is not a video file; choose a clip from a camera "
                                           "(MP4, MOV or MKV).");
    const bool looksRight = beginsLikeAVideo(*self->source_);
    const int opened = self->openContainer();
    if (opened == AVERROR(EIO)) {
        return base::inputError("clip.unreadable",
                                "The clip can't be read; check its access rights or copy it again.");
    }
    if (opened < 0) {
        return looksRight ? truncated() : notVideo;
    }
    AVFormatContext* format = self->format();
    const auto tooLarge = base::inputError(
        "clip.too_large", "The clip's pictures are larger than " + std::to_string(largestSide) +
                              " pixels a side; export it from the phone at 4K or less.");
    const auto large = [](const AVStream* stream) {
        return stream->codecpar->codec_type == AVMEDIA_TYPE_VIDEO &&
               std::max(stream->codecpar->width, stream->codecpar->height) > largestSide;
    };
    // Both before and after probing: probing may decode a picture, which would have to be allocated.
    for (unsigned i = 0; i < format->nb_streams; ++i) {
        if (large(format->streams[i])) {
            return tooLarge;
        }
    }
    std::vector<AVDictionary*> perStream(format->nb_streams, nullptr);
    for (auto& dictionary : perStream) {
        av_dict_set_int(&dictionary, "max_pixels", std::int64_t{largestSide} * largestSide, 0);
    }
    avformat_find_stream_info(format, perStream.empty() ? nullptr : perStream.data());
    for (auto& dictionary : perStream) {
        av_dict_free(&dictionary);
    }
    const AVStream* picturesAt = nullptr;
    int best = -1;
    for (unsigned i = 0; i < format->nb_streams; ++i) {
        const AVStream* stream = format->streams[i];
        const bool cover = (stream->disposition & AV_DISPOSITION_ATTACHED_PIC) != 0;
        if (stream->codecpar->codec_type == AVMEDIA_TYPE_VIDEO && !cover) {
            if (large(stream)) {
                return tooLarge;
            }
            if (picturesAt == nullptr) {
                picturesAt = stream;
            }
        }
    }
    if (picturesAt == nullptr) {
        const bool sound = av_find_best_stream(format, AVMEDIA_TYPE_AUDIO, -1, -1, nullptr, 0) >= 0;
        if (sound) {
            return base::inputError("clip.not_video",
                                    "This file has sound but no pictures; choose a video clip.");
        }
        return looksRight ? truncated() : notVideo;
    }
    best = av_find_best_stream(format, AVMEDIA_TYPE_VIDEO, -1, -1, nullptr, 0);
    if (best < 0 || (format->streams[best]->disposition & AV_DISPOSITION_ATTACHED_PIC) != 0) {
        best = picturesAt->index;
    }
    self->video_ = format->streams[best];
    const AVCodecParameters* codec = self->video_->codecpar;
    if (avcodec_find_decoder(codec->codec_id) == nullptr) {
        return base::inputError("clip.unsupported",
                                "The clip's coding can't be read here; convert it to H.264 or HEVC.");
    }
    if (codec->width <= 0 || codec->height <= 0) {
        return truncated();
    }
    const int soundAt = av_find_best_stream(format, AVMEDIA_TYPE_AUDIO, -1, best, nullptr, 0);
    if (soundAt >= 0 && avcodec_find_decoder(format->streams[soundAt]->codecpar->codec_id) != nullptr) {
        self->sound_ = format->streams[soundAt];
    }
    return self;
}

base::Result<std::unique_ptr<Demuxer>> Demuxer::openSound(std::unique_ptr<ByteSource> source) {
    silenceFfmpeg();
    std::unique_ptr<Demuxer> self(new Demuxer(std::move(source)));
    self->soundOnly_ = true;
    const auto notSound = base::inputError(
        "sound.not_sound", "No sound can be read from this file; record it again as WAV or M4A.");
    if (self->source_->size() == 0 || self->openContainer() < 0) {
        return notSound;
    }
    AVFormatContext* format = self->format();
    for (unsigned i = 0; i < format->nb_streams; ++i) { // no picture is decoded to find out about sound
        if (format->streams[i]->codecpar->codec_type != AVMEDIA_TYPE_AUDIO) {
            format->streams[i]->discard = AVDISCARD_ALL;
        }
    }
    avformat_find_stream_info(format, nullptr);
    const int best = av_find_best_stream(format, AVMEDIA_TYPE_AUDIO, -1, -1, nullptr, 0);
    if (best < 0 || avcodec_find_decoder(format->streams[best]->codecpar->codec_id) == nullptr) {
        return notSound;
    }
    self->sound_ = format->streams[best];
    return self;
}

bool Demuxer::isMp4() const {
    return nameHas(format(), "mov");
}
bool Demuxer::isMatroska() const {
    return nameHas(format(), "matroska");
}

void Demuxer::readOnly(int stream) {
    for (unsigned i = 0; i < format_->nb_streams; ++i) {
        const bool wanted = stream < 0 || static_cast<int>(i) == stream;
        format_->streams[i]->discard = wanted ? AVDISCARD_DEFAULT : AVDISCARD_ALL;
    }
}

bool Demuxer::reopen() {
    const int video = video_ != nullptr ? video_->index : -1;
    const int sound = sound_ != nullptr ? sound_->index : -1;
    if (openContainer() < 0) {
        return false;
    }
    // Streams of MP4 and Matroska are known from the header; others show up while reading.
    const auto missing = [&] { return static_cast<int>(format_->nb_streams) <= std::max(video, sound); };
    if (missing()) {
        avformat_find_stream_info(format_.get(), nullptr);
    }
    if (missing()) {
        return false;
    }
    video_ = video >= 0 ? format_->streams[video] : nullptr;
    sound_ = sound >= 0 ? format_->streams[sound] : nullptr;
    return true;
}

} // namespace plumbmark::video::detail
