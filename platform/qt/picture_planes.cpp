// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "qt/picture_planes.h"

#include <QImage>
#include <QVideoFrameFormat>
#include <cstring>
#include <memory>
#include <vector>

namespace plumbmark::platform {
namespace {

struct Planes {
    std::vector<std::uint8_t> luma, cb, cr;
};

video::Frame frameOf(const std::shared_ptr<Planes>& planes, int width, int height, int index,
                     base::Seconds time, video::Frame::Colour colour) {
    const int cw = (width + 1) / 2, ch = (height + 1) / 2;
    return {index,
            time,
            {planes->luma.data(), width, height, width},
            {planes->cb.data(), cw, ch, cw},
            {planes->cr.data(), cw, ch, cw},
            colour,
            planes};
}

} // namespace

std::optional<video::Frame> toFrame(QVideoFrame picture, int index, base::Seconds time) {
    using Format = QVideoFrameFormat;
    const Format format = picture.surfaceFormat();
    const int width = picture.width(), height = picture.height();
    if (width < 2 || height < 2) {
        return std::nullopt;
    }
    const auto kind = picture.pixelFormat();
    const bool planar = kind == Format::Format_YUV420P || kind == Format::Format_YV12;
    const bool half = kind == Format::Format_NV12 || kind == Format::Format_NV21;
    const bool packed = kind == Format::Format_YUYV || kind == Format::Format_UYVY;
    const bool upright = format.scanLineDirection() == Format::TopToBottom && !format.isMirrored() &&
                         picture.rotationAngle() == QVideoFrame::Rotation0;
    if ((planar || half || packed) && upright && picture.map(QVideoFrame::ReadOnly)) {
        const int cw = (width + 1) / 2, ch = (height + 1) / 2;
        auto planes = std::make_shared<Planes>();
        planes->luma.resize(static_cast<std::size_t>(width) * static_cast<std::size_t>(height));
        planes->cb.resize(static_cast<std::size_t>(cw) * static_cast<std::size_t>(ch));
        planes->cr.resize(planes->cb.size());
        const auto row = [&](int plane, int y) {
            return picture.bits(plane) + static_cast<std::ptrdiff_t>(y) * picture.bytesPerLine(plane);
        };
        if (packed) {
            const int yAt = kind == Format::Format_YUYV ? 0 : 1, cAt = 1 - yAt;
            for (int y = 0; y < height; ++y) {
                const uchar* from = row(0, y);
                std::uint8_t* luma = planes->luma.data() + static_cast<std::ptrdiff_t>(y) * width;
                for (int x = 0; x < width; ++x) {
                    luma[x] = from[2 * x + yAt];
                }
                if (y % 2 == 0) {
                    for (int x = 0; x < width / 2; ++x) {
                        const auto at = static_cast<std::size_t>(y / 2 * cw + x);
                        planes->cb[at] = from[4 * x + cAt];
                        planes->cr[at] = from[4 * x + cAt + 2];
                    }
                }
            }
        } else {
            for (int y = 0; y < height; ++y) {
                std::memcpy(planes->luma.data() + static_cast<std::ptrdiff_t>(y) * width, row(0, y),
                            static_cast<std::size_t>(width));
            }
            const bool swapped = kind == Format::Format_YV12 || kind == Format::Format_NV21;
            auto& first = swapped ? planes->cr : planes->cb;
            auto& second = swapped ? planes->cb : planes->cr;
            for (int y = 0; y < ch; ++y) {
                for (int x = 0; x < cw; ++x) {
                    const auto at = static_cast<std::size_t>(y * cw + x);
                    first[at] = half ? row(1, y)[2 * x] : row(1, y)[x];
                    second[at] = half ? row(1, y)[2 * x + 1] : row(2, y)[x];
                }
            }
        }
        picture.unmap();
        const auto space = format.colorSpace();
        video::Frame::Colour colour;
        // Cameras that say nothing send what small pictures always had.
        colour.matrix = space == Format::ColorSpace_BT709    ? 709
                        : space == Format::ColorSpace_BT2020 ? 2020
                                                             : 601;
        colour.fullRange = format.colorRange() == Format::ColorRange_Full;
        return frameOf(planes, width, height, index, time, colour);
    }
    const QImage image = picture.toImage().convertToFormat(QImage::Format_RGB888);
    if (image.isNull()) {
        return std::nullopt;
    }
    video::RgbImage rgb{image.width(), image.height(), {}};
    rgb.pixels.resize(static_cast<std::size_t>(3) * static_cast<std::size_t>(image.width()) *
                      static_cast<std::size_t>(image.height()));
    for (int y = 0; y < image.height(); ++y) {
        std::memcpy(rgb.pixels.data() + static_cast<std::ptrdiff_t>(3) * image.width() * y,
                    image.constScanLine(y),
                    static_cast<std::size_t>(3) * static_cast<std::size_t>(image.width()));
    }
    return video::Frame::fromRgb(rgb, index, time);
}

} // namespace plumbmark::platform
