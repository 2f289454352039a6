// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/still.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <string>
#include <system_error>

#include "video/byte_source.h"
#include "video/detail/demuxer.h"
#include "video/detail/picture.h"

namespace plumbmark::video {
namespace {

using namespace detail;

base::Error damaged() {
    return base::inputError("still.damaged", "The picture is damaged; take or copy it again.");
}

base::Error fileError(const base::Error& error, const std::filesystem::path& path) {
    const std::string name = "\"" + path.string() + "\"";
    if (error.key == "clip.missing") {
        return base::inputError("still.missing",
                                "There is no file " + name + "; check the name and the folder.");
    }
    if (error.key == "clip.directory") {
        return base::inputError("still.directory", name + " is a folder; choose a picture in it.");
    }
    if (error.key == "clip.empty") {
        return base::inputError("still.empty", "The file " + name + " is empty; copy it again.");
    }
    return base::inputError("still.unreadable",
                            "The file " + name + " can't be read; check its access rights or copy it again.");
}

bool startsWith(std::span<const std::uint8_t> bytes, std::initializer_list<std::uint8_t> magic) {
    return bytes.size() >= magic.size() && std::equal(magic.begin(), magic.end(), bytes.begin());
}

/// JPEG is full-range BT.601 (JFIF 1.02); PNG is RGB or grey.
base::Result<RgbImage> toRgb(const AVFrame& picture) {
    RgbImage image;
    image.width = picture.width;
    image.height = picture.height;
    // A row more than needed: the scaler's wide stores may run past the last pixel.
    const std::size_t size =
        static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height) * 3;
    image.pixels.resize(size + 3 * static_cast<std::size_t>(picture.width) + 64);
    ScalerPtr scaler{sws_getContext(picture.width, picture.height, static_cast<AVPixelFormat>(picture.format),
                                    picture.width, picture.height, AV_PIX_FMT_RGB24,
                                    SWS_BILINEAR | SWS_ACCURATE_RND | SWS_FULL_CHR_H_INT | SWS_FULL_CHR_H_INP,
                                    nullptr, nullptr, nullptr)};
    if (!scaler) {
        return damaged();
    }
    const int* table = sws_getCoefficients(SWS_CS_ITU601);
    sws_setColorspaceDetails(scaler.get(), table, 1, table, 1, 0, 1 << 16, 1 << 16);
    std::uint8_t* into[4] = {image.pixels.data(), nullptr, nullptr, nullptr};
    const int stride[4] = {3 * picture.width, 0, 0, 0};
    if (sws_scale(scaler.get(), picture.data, picture.linesize, 0, picture.height, into, stride) !=
        picture.height) {
        return damaged();
    }
    image.pixels.resize(size);
    return image;
}

RgbImage upright(RgbImage image, const Orientation& o) {
    if (o.identity()) {
        return image;
    }
    RgbImage out;
    out.width = o.transpose ? image.height : image.width;
    out.height = o.transpose ? image.width : image.height;
    out.pixels.resize(image.pixels.size());
    for (int y = 0; y < out.height; ++y) {
        for (int x = 0; x < out.width; ++x) {
            const int u = o.flipX ? out.width - 1 - x : x, v = o.flipY ? out.height - 1 - y : y;
            const auto from =
                static_cast<std::size_t>(o.transpose ? u * image.width + v : v * image.width + u) * 3;
            const auto to = (static_cast<std::size_t>(y) * static_cast<std::size_t>(out.width) +
                             static_cast<std::size_t>(x)) *
                            3;
            std::copy_n(image.pixels.begin() + static_cast<std::ptrdiff_t>(from), 3,
                        out.pixels.begin() + static_cast<std::ptrdiff_t>(to));
        }
    }
    return out;
}

std::size_t rowBytes(const RgbImage& image) {
    return static_cast<std::size_t>(std::max(0, image.width)) * 3;
}

/// One picture through one encoder: `settings` before it is opened, `fill` puts the pixels into its frame.
template <class Settings, class Fill>
base::Result<std::vector<std::uint8_t>> encode(const RgbImage& image, AVCodecID id, const std::string& form,
                                               AVPixelFormat format, Settings&& settings, Fill&& fill) {
    silenceFfmpeg();
    const auto failed = base::failure(
        "still.encode", "The picture could not be made; this build needs FFmpeg's " + form + " encoder.");
    const AVCodec* encoder = avcodec_find_encoder(id);
    CodecPtr codec{avcodec_alloc_context3(encoder)};
    PicturePtr picture{av_frame_alloc()};
    PacketPtr packet{av_packet_alloc()};
    if (encoder == nullptr || !codec || !picture || !packet || image.width <= 0 || image.height <= 0 ||
        image.pixels.size() != rowBytes(image) * static_cast<std::size_t>(image.height)) {
        return failed;
    }
    codec->width = picture->width = image.width;
    codec->height = picture->height = image.height;
    codec->pix_fmt = format;
    picture->format = format;
    codec->time_base = {1, 1};
    codec->thread_count = 1;
    settings(*codec, *picture);
    if (avcodec_open2(codec.get(), encoder, nullptr) < 0 || av_frame_get_buffer(picture.get(), 0) < 0 ||
        !fill(*picture) || avcodec_send_frame(codec.get(), picture.get()) < 0 ||
        avcodec_send_frame(codec.get(), nullptr) < 0 ||
        avcodec_receive_packet(codec.get(), packet.get()) < 0) {
        return failed;
    }
    return std::vector<std::uint8_t>(packet->data, packet->data + packet->size);
}

} // namespace

base::Result<RgbImage> decodeStill(std::span<const std::uint8_t> bytes) {
    silenceFfmpeg();
    if (bytes.empty()) {
        return base::inputError("still.empty", "The picture is empty; copy it again.");
    }
    const bool png = startsWith(bytes, {0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
    const bool jpeg = startsWith(bytes, {0xFF, 0xD8, 0xFF});
    if (!png && !jpeg) {
        return base::inputError("still.not_picture",
                                "This is not a PNG or JPEG picture; choose one of those.");
    }
    const AVCodec* decoder = avcodec_find_decoder(png ? AV_CODEC_ID_PNG : AV_CODEC_ID_MJPEG);
    CodecPtr codec{avcodec_alloc_context3(decoder)};
    PacketPtr packet{av_packet_alloc()};
    PicturePtr picture{av_frame_alloc()};
    if (decoder == nullptr || !codec || !packet || !picture || bytes.size() > (std::size_t{1} << 30) ||
        av_new_packet(packet.get(), static_cast<int>(bytes.size())) < 0) {
        return damaged();
    }
    std::copy(bytes.begin(), bytes.end(), packet->data);
    codec->max_pixels = std::int64_t{largestSide} * largestSide;
    codec->thread_count = 1;
    codec->err_recognition = AV_EF_EXPLODE | AV_EF_CRCCHECK; // half a picture is no picture
    if (avcodec_open2(codec.get(), decoder, nullptr) < 0) {
        return damaged();
    }
    const bool sent = avcodec_send_packet(codec.get(), packet.get()) >= 0;
    avcodec_send_packet(codec.get(), nullptr);
    const bool got = sent && avcodec_receive_frame(codec.get(), picture.get()) >= 0;
    if (std::max({codec->width, codec->height, picture->width, picture->height}) > largestSide) {
        return base::inputError("still.too_large", "The picture is larger than " +
                                                       std::to_string(largestSide) +
                                                       " pixels a side; make it smaller.");
    }
    if (!got || picture->decode_error_flags != 0 || picture->width <= 0 || picture->height <= 0) {
        return damaged();
    }
    auto image = toRgb(*picture);
    const AVFrameSideData* matrix = av_frame_get_side_data(picture.get(), AV_FRAME_DATA_DISPLAYMATRIX);
    if (!image || matrix == nullptr) {
        return image;
    }
    return upright(std::move(image).value(),
                   orientationOf(reinterpret_cast<const std::int32_t*>(matrix->data)));
}

base::Result<RgbImage> loadStill(const std::filesystem::path& path) {
    auto source = openFile(path);
    if (!source) {
        return fileError(source.error(), path);
    }
    std::vector<std::uint8_t> bytes(static_cast<std::size_t>((*source)->size()));
    std::size_t filled = 0;
    while (filled < bytes.size()) {
        auto got = (*source)->read(std::span(bytes).subspan(filled));
        if (!got || *got == 0) {
            return fileError({}, path);
        }
        filled += *got;
    }
    return decodeStill(bytes);
}

base::Result<std::vector<std::uint8_t>> encodePng(const RgbImage& image) {
    const auto fill = [&](AVFrame& picture) {
        const std::size_t row = rowBytes(image);
        for (int y = 0; y < image.height; ++y) {
            std::copy_n(image.pixels.data() + static_cast<std::size_t>(y) * row, row,
                        picture.data[0] + static_cast<std::ptrdiff_t>(y) * picture.linesize[0]);
        }
        return true;
    };
    return encode(
        image, AV_CODEC_ID_PNG, "PNG", AV_PIX_FMT_RGB24, [](AVCodecContext&, AVFrame&) {}, fill);
}

base::Result<std::vector<std::uint8_t>> encodeJpeg(const RgbImage& image, int quality) {
    const auto settings = [&](AVCodecContext& codec, AVFrame& picture) {
        codec.color_range = picture.color_range = AVCOL_RANGE_JPEG;
        // Nothing of this program or machine goes into the picture, and the same picture gives the same
        // bytes.
        codec.flags |= AV_CODEC_FLAG_QSCALE | AV_CODEC_FLAG_BITEXACT;
        codec.global_quality = picture.quality = FF_QP2LAMBDA * std::clamp(quality, 1, 31);
    };
    const auto fill = [&](AVFrame& picture) {
        const ScalerPtr scaler{sws_getContext(image.width, image.height, AV_PIX_FMT_RGB24, image.width,
                                              image.height, AV_PIX_FMT_YUVJ444P,
                                              SWS_BICUBIC | SWS_ACCURATE_RND, nullptr, nullptr, nullptr)};
        const std::uint8_t* from[] = {image.pixels.data()};
        const int stride[] = {static_cast<int>(rowBytes(image))};
        return scaler && sws_scale(scaler.get(), from, stride, 0, image.height, picture.data,
                                   picture.linesize) == image.height;
    };
    return encode(image, AV_CODEC_ID_MJPEG, "JPEG", AV_PIX_FMT_YUVJ444P, settings, fill);
}

RgbImage partOf(const RgbImage& whole, int x, int y, int width, int height) {
    RgbImage part;
    part.width = width;
    part.height = height;
    part.pixels.resize(std::size_t{3} * static_cast<std::size_t>(width) * static_cast<std::size_t>(height));
    for (int row = 0; row < height; ++row) {
        const auto from = whole.pixels.begin() + 3 * (std::ptrdiff_t{y + row} * whole.width + x);
        std::copy_n(from, 3 * width, part.pixels.begin() + 3 * std::ptrdiff_t{row} * width);
    }
    return part;
}

base::Result<void> savePng(const std::filesystem::path& path, const RgbImage& image) {
    auto bytes = encodePng(image);
    if (!bytes) {
        return bytes.error();
    }
    auto temporary = path;
    temporary += ".part";
    std::error_code failed;
    {
        std::ofstream file(temporary, std::ios::binary | std::ios::trunc);
        file.write(reinterpret_cast<const char*>(bytes->data()), static_cast<std::streamsize>(bytes->size()));
        file.close();
        if (!file) {
            std::filesystem::remove(temporary, failed);
            return base::inputError("still.folder",
                                    "The picture \"" + path.string() +
                                        "\" can't be written; choose a folder that exists, has space "
                                        "and can be written to.");
        }
    }
    std::filesystem::rename(temporary, path, failed);
    if (failed) {
        std::filesystem::remove(temporary, failed);
        return base::inputError("still.folder", "The picture \"" + path.string() +
                                                    "\" can't be written; choose another name or folder.");
    }
    return {};
}

} // namespace plumbmark::video
