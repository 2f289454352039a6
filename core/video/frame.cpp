// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/frame.h"

#include <algorithm>
#include <cmath>

#include "video/detail/colour.h"

namespace plumbmark::video {
namespace {

/// Luma weights. ITU-R BT.601-7 (2.5.1), BT.709-6 (item 3.2), BT.2020-2 (table 4, non-constant luminance).
struct Weights {
    double red;
    double blue;
};

Weights weightsOf(int matrix) {
    switch (matrix) {
    case 601:
        return {0.299, 0.114};
    case 2020:
        return {0.2627, 0.0593};
    default:
        return {0.2126, 0.0722};
    }
}

constexpr int fraction = 16; // fixed-point bits of the luma terms
constexpr int half = 1 << (fraction - 1);
constexpr int chromaFraction = 13; // three fewer: interpolated chroma comes as eighths

int fixed(double value, int bits) {
    return static_cast<int>(std::lround(value * (1 << bits)));
}

std::uint8_t clampByte(int value) {
    return static_cast<std::uint8_t>(std::clamp(value, 0, 255));
}

struct FromYcc {
    int offset, luma, crRed, cbGreen, crGreen, cbBlue;

    explicit FromYcc(Frame::Colour colour) {
        const auto [kr, kb] = weightsOf(colour.matrix);
        const double kg = 1.0 - kr - kb;
        const double lumaScale = colour.fullRange ? 1.0 : 255.0 / 219.0;
        const double chromaScale = colour.fullRange ? 1.0 : 255.0 / 224.0;
        offset = colour.fullRange ? 0 : 16;
        luma = fixed(lumaScale, fraction);
        crRed = fixed(chromaScale * 2.0 * (1.0 - kr), chromaFraction);
        cbBlue = fixed(chromaScale * 2.0 * (1.0 - kb), chromaFraction);
        cbGreen = fixed(-chromaScale * 2.0 * (1.0 - kb) * kb / kg, chromaFraction);
        crGreen = fixed(-chromaScale * 2.0 * (1.0 - kr) * kr / kg, chromaFraction);
    }
};

struct ToYcc {
    int offset;
    int y[3], cb[3], cr[3];

    explicit ToYcc(Frame::Colour colour) {
        const auto [kr, kb] = weightsOf(colour.matrix);
        const double k[3] = {kr, 1.0 - kr - kb, kb};
        const double lumaScale = colour.fullRange ? 1.0 : 219.0 / 255.0;
        const double chromaScale = colour.fullRange ? 1.0 : 224.0 / 255.0;
        offset = colour.fullRange ? 0 : 16;
        for (int i = 0; i < 3; ++i) {
            y[i] = fixed(lumaScale * k[i], fraction);
            cb[i] = fixed(chromaScale * ((i == 2 ? 1.0 : 0.0) - k[i]) / (2.0 * (1.0 - kb)), chromaFraction);
            cr[i] = fixed(chromaScale * ((i == 0 ? 1.0 : 0.0) - k[i]) / (2.0 * (1.0 - kr)), chromaFraction);
        }
    }
};

/// One row of chroma in eighths at full width: rows blended 3:1 (sited midway), columns midway at odd x.
void widenChroma(const PlaneView& plane, int row, int width, std::vector<int>& quarters,
                 std::vector<int>& eighths) {
    const int near = row / 2;
    const int far = std::clamp(row % 2 == 0 ? near - 1 : near + 1, 0, plane.height - 1);
    const std::uint8_t* a = plane.data + near * plane.stride;
    const std::uint8_t* b = plane.data + far * plane.stride;
    for (int i = 0; i < plane.width; ++i) {
        quarters[static_cast<std::size_t>(i)] = 3 * a[i] + b[i] - 4 * 128;
    }
    quarters[static_cast<std::size_t>(plane.width)] = quarters[static_cast<std::size_t>(plane.width - 1)];
    for (int i = 0; i < (width + 1) / 2; ++i) {
        const auto at = static_cast<std::size_t>(i);
        eighths[2 * at] = 2 * quarters[at];
        eighths[2 * at + 1] = quarters[at] + quarters[at + 1];
    }
}

} // namespace

RgbImage Frame::rgb() const {
    RgbImage image;
    if (empty()) {
        return image;
    }
    image.width = width();
    image.height = height();
    image.pixels.resize(static_cast<std::size_t>(image.width) * static_cast<std::size_t>(image.height) * 3);
    const FromYcc k(colour_);
    const auto chromaWidth = static_cast<std::size_t>((image.width + 1) / 2);
    std::vector<int> quarters(chromaWidth + 1), cbRow(2 * chromaWidth), crRow(2 * chromaWidth);
    for (int row = 0; row < image.height; ++row) {
        widenChroma(cb_, row, image.width, quarters, cbRow);
        widenChroma(cr_, row, image.width, quarters, crRow);
        const std::uint8_t* y = luma_.data + row * luma_.stride;
        const int* cb = cbRow.data();
        const int* cr = crRow.data();
        std::uint8_t* out =
            image.pixels.data() + static_cast<std::size_t>(row) * 3 * static_cast<std::size_t>(image.width);
        for (int x = 0; x < image.width; ++x) {
            const int l = (y[x] - k.offset) * k.luma + half;
            out[3 * x] = clampByte((l + k.crRed * cr[x]) >> fraction);
            out[3 * x + 1] = clampByte((l + k.cbGreen * cb[x] + k.crGreen * cr[x]) >> fraction);
            out[3 * x + 2] = clampByte((l + k.cbBlue * cb[x]) >> fraction);
        }
    }
    return image;
}

Frame Frame::fromRgb(const RgbImage& image, int index, base::Seconds time) {
    if (image.width <= 0 || image.height <= 0 ||
        image.pixels.size() <
            static_cast<std::size_t>(image.width) * static_cast<std::size_t>(image.height) * 3) {
        return {};
    }
    const auto w = static_cast<std::size_t>(image.width);
    const auto h = static_cast<std::size_t>(image.height);
    const std::size_t cw = (w + 1) / 2, ch = (h + 1) / 2;
    auto store = std::make_shared<std::vector<std::uint8_t>>(w * h + 2 * cw * ch);
    detail::Planes planes;
    planes.data[0] = store->data();
    planes.data[1] = store->data() + w * h;
    planes.data[2] = store->data() + w * h + cw * ch;
    planes.stride[0] = static_cast<std::ptrdiff_t>(w);
    planes.stride[1] = planes.stride[2] = static_cast<std::ptrdiff_t>(cw);
    const Colour colour{709, false};
    detail::rgbToPlanes(image.pixels.data(), image.width, image.height, colour, planes);
    const int chromaWidth = static_cast<int>(cw), chromaHeight = static_cast<int>(ch);
    return Frame(index, time, PlaneView{planes.data[0], image.width, image.height, planes.stride[0]},
                 PlaneView{planes.data[1], chromaWidth, chromaHeight, planes.stride[1]},
                 PlaneView{planes.data[2], chromaWidth, chromaHeight, planes.stride[2]}, colour, store);
}

namespace detail {

void rgbToPlanes(const std::uint8_t* rgb, int width, int height, Frame::Colour colour, const Planes& into) {
    const ToYcc k(colour);
    const std::ptrdiff_t stride = static_cast<std::ptrdiff_t>(width) * 3;
    for (int row = 0; row < height; ++row) {
        const std::uint8_t* in = rgb + row * stride;
        std::uint8_t* out = into.data[0] + row * into.stride[0];
        const int base = (k.offset << fraction) + half;
        for (int x = 0; x < width; ++x) {
            out[x] = static_cast<std::uint8_t>(
                (k.y[0] * in[3 * x] + k.y[1] * in[3 * x + 1] + k.y[2] * in[3 * x + 2] + base) >> fraction);
        }
    }
    // Chroma: two rows added, then columns weighted 1-2-1 around the even one: eight times the mean.
    const int chromaWidth = (width + 1) / 2, chromaHeight = (height + 1) / 2;
    std::vector<int> sums(static_cast<std::size_t>(width) * 3);
    for (int row = 0; row < chromaHeight; ++row) {
        const std::uint8_t* a = rgb + 2 * row * stride;
        const std::uint8_t* b = 2 * row + 1 < height ? a + stride : a;
        for (int i = 0; i < 3 * width; ++i) {
            sums[static_cast<std::size_t>(i)] = a[i] + b[i];
        }
        std::uint8_t* cb = into.data[1] + row * into.stride[1];
        std::uint8_t* cr = into.data[2] + row * into.stride[2];
        const int base = (128 << fraction) + half;
        for (int x = 0; x < chromaWidth; ++x) {
            const int* mid = sums.data() + 6 * x;
            const int* left = x > 0 ? mid - 3 : mid;
            const int* right = 2 * x + 1 < width ? mid + 3 : mid;
            int mean8[3];
            for (int c = 0; c < 3; ++c) {
                mean8[c] = left[c] + 2 * mid[c] + right[c];
            }
            cb[x] =
                clampByte((k.cb[0] * mean8[0] + k.cb[1] * mean8[1] + k.cb[2] * mean8[2] + base) >> fraction);
            cr[x] =
                clampByte((k.cr[0] * mean8[0] + k.cr[1] * mean8[1] + k.cr[2] * mean8[2] + base) >> fraction);
        }
    }
}

} // namespace detail
} // namespace plumbmark::video
