// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/detail/picture.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstring>

namespace plumbmark::video::detail {
namespace {

/// Matrix and range as the stream states them; where it doesn't, large pictures are BT.709 and small ones
/// BT.601 (common practice, no source).
Frame::Colour colourOf(const AVFrame& picture) {
    Frame::Colour colour;
    switch (picture.colorspace) {
    case AVCOL_SPC_BT709:
        colour.matrix = 709;
        break;
    case AVCOL_SPC_BT470BG:
    case AVCOL_SPC_SMPTE170M:
    case AVCOL_SPC_FCC:
        colour.matrix = 601;
        break;
    case AVCOL_SPC_BT2020_NCL:
    case AVCOL_SPC_BT2020_CL:
        colour.matrix = 2020;
        break;
    default:
        colour.matrix = std::min(picture.width, picture.height) >= 720 ? 709 : 601;
    }
    colour.fullRange = picture.color_range == AVCOL_RANGE_JPEG || picture.format == AV_PIX_FMT_YUVJ420P ||
                       picture.format == AV_PIX_FMT_YUVJ422P || picture.format == AV_PIX_FMT_YUVJ444P;
    return colour;
}

int scalerMatrix(int matrix) {
    return matrix == 601 ? SWS_CS_ITU601 : matrix == 2020 ? SWS_CS_BT2020 : SWS_CS_ITU709;
}

static_assert(std::endian::native == std::endian::little, "transpose8 reads rows as little-endian words");

/// An 8 x 8 block of bytes, rows as little-endian words, transposed by swapping ever larger squares.
void transpose8(const std::uint8_t* in, std::ptrdiff_t inStride, std::uint8_t* out,
                std::ptrdiff_t outStride) {
    std::uint64_t row[8];
    for (int i = 0; i < 8; ++i) {
        std::memcpy(&row[i], in + i * inStride, 8);
    }
    const auto swap = [&](int a, int b, int bits, std::uint64_t mask) {
        const std::uint64_t t = ((row[a] >> bits) ^ row[b]) & mask;
        row[a] ^= t << bits;
        row[b] ^= t;
    };
    for (int i = 0; i < 8; i += 2) {
        swap(i, i + 1, 8, 0x00FF00FF00FF00FFULL);
    }
    for (int i : {0, 1, 4, 5}) {
        swap(i, i + 2, 16, 0x0000FFFF0000FFFFULL);
    }
    for (int i = 0; i < 4; ++i) {
        swap(i, i + 4, 32, 0x00000000FFFFFFFFULL);
    }
    for (int i = 0; i < 8; ++i) {
        std::memcpy(out + i * outStride, &row[i], 8);
    }
}

/// Copies a plane into its upright place. `in` has the stored shape, `out` the upright one.
void turnPlane(const std::uint8_t* in, std::ptrdiff_t inStride, int inWidth, int inHeight, std::uint8_t* out,
               std::ptrdiff_t outStride, const Orientation& o) {
    if (!o.transpose) {
        for (int y = 0; y < inHeight; ++y) {
            const std::uint8_t* from = in + y * inStride;
            std::uint8_t* to = out + (o.flipY ? inHeight - 1 - y : y) * outStride;
            if (o.flipX) {
                std::reverse_copy(from, from + inWidth, to);
            } else {
                std::memcpy(to, from, static_cast<std::size_t>(inWidth));
            }
        }
        return;
    }
    // Flips become walking direction: upright x runs along stored y, upright y along stored x.
    if (o.flipX) {
        in += (inHeight - 1) * inStride;
        inStride = -inStride;
    }
    if (o.flipY) {
        out += (inWidth - 1) * outStride;
        outStride = -outStride;
    }
    const int blockWidth = inWidth / 8 * 8, blockHeight = inHeight / 8 * 8;
    for (int x = 0; x < blockWidth; x += 8) {
        for (int y = 0; y < blockHeight; y += 8) {
            transpose8(in + y * inStride + x, inStride, out + x * outStride + y, outStride);
        }
    }
    for (int y = 0; y < inHeight; ++y) {
        for (int x = y < blockHeight ? blockWidth : 0; x < inWidth; ++x) {
            out[x * outStride + y] = in[y * inStride + x];
        }
    }
}

} // namespace

Orientation orientationOf(const std::int32_t* matrix) {
    // A stored point (x, y) is shown at (a x + c y, b x + d y), y downwards.
    const double a = matrix[0], b = matrix[1], c = matrix[3], d = matrix[4];
    Orientation o;
    if (a * d - b * c == 0.0) {
        return o; // says nothing
    }
    o.mirrored = a * d - b * c < 0.0;
    o.transpose = std::abs(b) + std::abs(c) > std::abs(a) + std::abs(d);
    o.flipX = (o.transpose ? c : a) < 0.0;
    o.flipY = (o.transpose ? b : d) < 0.0;
    o.skewed = o.transpose ? std::abs(a) > 0.05 * std::abs(b) : std::abs(b) > 0.05 * std::abs(a);
    const double turn = (o.mirrored ? std::atan2(-b, -a) : std::atan2(b, a)) * 180.0 / M_PI;
    o.clockwiseDegrees = (static_cast<int>(std::lround(turn / 90.0)) * 90 + 360) % 360;
    return o;
}

PictureMaker::PictureMaker(int width, int height, AVRational pixelAspect, Orientation orientation)
    : width_(width), height_(height), orientation_(orientation) {
    const double aspect = pixelAspect.num > 0 && pixelAspect.den > 0 ? av_q2d(pixelAspect) : 1.0;
    if (aspect > 0.25 && aspect < 4.0 && std::abs(aspect - 1.0) > 0.002) {
        width_ = std::max(1, static_cast<int>(std::lround(width * aspect)));
    }
}

PicturePtr PictureMaker::convert(const AVFrame& picture, Frame::Colour& colour) {
    const auto* format = av_pix_fmt_desc_get(static_cast<AVPixelFormat>(picture.format));
    if (format == nullptr || (format->flags & AV_PIX_FMT_FLAG_HWACCEL) != 0) {
        return nullptr;
    }
    const bool rgb = (format->flags & (AV_PIX_FMT_FLAG_RGB | AV_PIX_FMT_FLAG_PAL)) != 0;
    if (rgb) {
        colour = {709, false};
    }
    const bool fits = scaler_ && scalerFormat_ == picture.format && scalerWidth_ == picture.width &&
                      scalerHeight_ == picture.height && scalerColour_.matrix == colour.matrix &&
                      scalerColour_.fullRange == colour.fullRange;
    if (!fits) {
        scaler_.reset(sws_getContext(picture.width, picture.height,
                                     static_cast<AVPixelFormat>(picture.format), width_, height_,
                                     AV_PIX_FMT_YUV420P, SWS_BICUBIC | SWS_ACCURATE_RND | SWS_FULL_CHR_H_INP,
                                     nullptr, nullptr, nullptr));
        if (!scaler_) {
            return nullptr;
        }
        // Same matrix and range on both sides: only depth, subsampling and size change.
        const int* table = sws_getCoefficients(scalerMatrix(colour.matrix));
        const int range = colour.fullRange ? 1 : 0;
        sws_setColorspaceDetails(scaler_.get(), table, rgb ? 1 : range, table, range, 0, 1 << 16, 1 << 16);
        scalerFormat_ = picture.format;
        scalerWidth_ = picture.width;
        scalerHeight_ = picture.height;
        scalerColour_ = colour;
    }
    PicturePtr out{av_frame_alloc()};
    out->format = AV_PIX_FMT_YUV420P;
    out->width = width_;
    out->height = height_;
    if (av_frame_get_buffer(out.get(), 0) < 0 || sws_scale(scaler_.get(), picture.data, picture.linesize, 0,
                                                           picture.height, out->data, out->linesize) < 0) {
        return nullptr;
    }
    return out;
}

PicturePtr PictureMaker::turn(const AVFrame& picture) const {
    PicturePtr out{av_frame_alloc()};
    out->format = AV_PIX_FMT_YUV420P;
    out->width = width();
    out->height = height();
    if (av_frame_get_buffer(out.get(), 0) < 0) {
        return nullptr;
    }
    for (int i = 0; i < 3; ++i) {
        const int w = i == 0 ? picture.width : (picture.width + 1) / 2;
        const int h = i == 0 ? picture.height : (picture.height + 1) / 2;
        turnPlane(picture.data[i], picture.linesize[i], w, h, out->data[i], out->linesize[i], orientation_);
    }
    return out;
}

std::optional<Frame> PictureMaker::make(PicturePtr picture, int index, base::Seconds time) {
    Frame::Colour colour = colourOf(*picture);
    const bool plain = picture->format == AV_PIX_FMT_YUV420P || picture->format == AV_PIX_FMT_YUVJ420P;
    if (!plain || picture->width != width_ || picture->height != height_) {
        picture = convert(*picture, colour);
        if (!picture) {
            return std::nullopt;
        }
    }
    if (!orientation_.identity()) {
        picture = turn(*picture);
        if (!picture) {
            return std::nullopt;
        }
    }
    const int w = picture->width, h = picture->height;
    const PlaneView luma{picture->data[0], w, h, picture->linesize[0]};
    const PlaneView cb{picture->data[1], (w + 1) / 2, (h + 1) / 2, picture->linesize[1]};
    const PlaneView cr{picture->data[2], (w + 1) / 2, (h + 1) / 2, picture->linesize[2]};
    return Frame(index, time, luma, cb, cr, colour, std::shared_ptr<AVFrame>(std::move(picture)));
}

} // namespace plumbmark::video::detail
