// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "body/detail/crop.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <opencv2/imgproc.hpp>

namespace plumbmark::body::detail {
namespace {

/// One plane of the crop. `scale`: plane pixels per picture pixel (1 luma, 0.5 chroma).
cv::Mat cropPlane(const video::PlaneView& plane, double scale, const Region& region, int side) {
    cv::Mat source(plane.height, plane.width, CV_8U, const_cast<std::uint8_t*>(plane.data),
                   static_cast<std::size_t>(plane.stride));
    const double pixelsPerStep = region.size * scale / side;
    double originX = 0.0;
    double originY = 0.0;
    double shrink = 1.0;
    cv::Mat shrunk;
    // More than two plane pixels per result pixel: average blocks first.
    const int block = static_cast<int>(std::lround(pixelsPerStep));
    if (block >= 2) {
        const double reach = region.size * scale * std::numbers::sqrt2 / 2 + 2 * block;
        const base::Vec2 c = region.centre * scale;
        const int left = std::clamp(static_cast<int>(c.x - reach), 0, plane.width - 1);
        const int top = std::clamp(static_cast<int>(c.y - reach), 0, plane.height - 1);
        const int right = std::clamp(static_cast<int>(c.x + reach) + 1, left + 1, plane.width);
        const int bottom = std::clamp(static_cast<int>(c.y + reach) + 1, top + 1, plane.height);
        const int wide = (right - left) / block;
        const int high = (bottom - top) / block;
        if (wide > 0 && high > 0) {
            cv::resize(source(cv::Rect(left, top, wide * block, high * block)), shrunk, cv::Size(wide, high),
                       0, 0, cv::INTER_AREA);
            source = shrunk;
            originX = left;
            originY = top;
            shrink = 1.0 / block;
        }
    }
    // Result pixel (i, j) has its centre at crop ((i + .5) / side, (j + .5) / side); OpenCV's pixel centres
    // are whole numbers, ours are at .5.
    const auto toSource = [&](double i, double j) {
        const base::Vec2 p = region.toPicture({(i + 0.5) / side, (j + 0.5) / side}) * scale;
        return cv::Point2d((p.x - originX) * shrink - 0.5, (p.y - originY) * shrink - 0.5);
    };
    const cv::Point2d o = toSource(0, 0);
    const cv::Point2d x = toSource(1, 0) - o;
    const cv::Point2d y = toSource(0, 1) - o;
    const cv::Matx23d map(x.x, y.x, o.x, x.y, y.y, o.y);
    cv::Mat out;
    cv::warpAffine(source, out, map, cv::Size(side, side), cv::INTER_LINEAR | cv::WARP_INVERSE_MAP,
                   cv::BORDER_REPLICATE);
    return out;
}

} // namespace

std::vector<std::uint8_t> cropRgb(const video::Frame& frame, const Region& region, int side) {
    const cv::Mat luma = cropPlane(frame.luma(), 1.0, region, side);
    const cv::Mat cb = cropPlane(frame.cb(), 0.5, region, side);
    const cv::Mat cr = cropPlane(frame.cr(), 0.5, region, side);

    // ITU-R BT.601 / 709 / 2020 luma weights of red and blue.
    const double kr = frame.colour().matrix == 601 ? 0.299 : frame.colour().matrix == 2020 ? 0.2627 : 0.2126;
    const double kb = frame.colour().matrix == 601 ? 0.114 : frame.colour().matrix == 2020 ? 0.0593 : 0.0722;
    const bool full = frame.colour().fullRange;
    const double lumaScale = full ? 1.0 : 255.0 / 219.0;
    const double chromaScale = full ? 1.0 : 255.0 / 224.0;
    const auto fixed = [](double v) { return static_cast<int>(std::lround(v * 65536)); };
    const int offset = full ? 0 : 16;
    const int fy = fixed(lumaScale);
    const int red = fixed(2 * (1 - kr) * chromaScale);
    const int blue = fixed(2 * (1 - kb) * chromaScale);
    const int greenB = fixed(-2 * (1 - kb) * kb / (1 - kr - kb) * chromaScale);
    const int greenR = fixed(-2 * (1 - kr) * kr / (1 - kr - kb) * chromaScale);
    const auto byte = [](int v) { return static_cast<std::uint8_t>(std::clamp((v + 32768) >> 16, 0, 255)); };

    std::vector<std::uint8_t> rgb(static_cast<std::size_t>(side) * static_cast<std::size_t>(side) * 3);
    std::uint8_t* out = rgb.data();
    for (int row = 0; row < side; ++row) {
        const auto* y = luma.ptr<std::uint8_t>(row);
        const auto* u = cb.ptr<std::uint8_t>(row);
        const auto* v = cr.ptr<std::uint8_t>(row);
        for (int i = 0; i < side; ++i, out += 3) {
            const int l = (y[i] - offset) * fy;
            const int b = u[i] - 128;
            const int r = v[i] - 128;
            out[0] = byte(l + red * r);
            out[1] = byte(l + greenB * b + greenR * r);
            out[2] = byte(l + blue * b);
        }
    }
    return rgb;
}

} // namespace plumbmark::body::detail
