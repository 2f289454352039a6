// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <vector>

#include "base/quantity.h"

namespace plumbmark::video {

/// A borrowed 8-bit plane; valid as long as the Frame it came from.
struct PlaneView {
    const std::uint8_t* data = nullptr;
    int width = 0;
    int height = 0;
    std::ptrdiff_t stride = 0; ///< bytes from row to row
};

/// 8-bit RGB, interleaved, rows packed (stride = 3 * width).
struct RgbImage {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> pixels;
};

/// One decoded picture, upright (rotation applied), 8-bit YCbCr 4:2:0 whatever the clip's coding.
/// Cheap to copy: planes are shared and immutable. `colour` tells how to get RGB.
class Frame {
  public:
    struct Colour {
        int matrix = 709;       ///< 601, 709 or 2020
        bool fullRange = false; ///< luma 0..255 instead of 16..235
    };

    Frame() = default;
    [[nodiscard]] int index() const { return index_; }         ///< place in presentation order, from 0
    [[nodiscard]] base::Seconds time() const { return time_; } ///< from the first frame
    [[nodiscard]] int width() const { return luma_.width; }
    [[nodiscard]] int height() const { return luma_.height; }
    [[nodiscard]] PlaneView luma() const { return luma_; }
    [[nodiscard]] PlaneView cb() const { return cb_; } ///< (width+1)/2 x (height+1)/2
    [[nodiscard]] PlaneView cr() const { return cr_; }
    [[nodiscard]] Colour colour() const { return colour_; }
    [[nodiscard]] bool empty() const { return luma_.data == nullptr; }

    /// Whole picture as RGB; colour matrix and range honoured.
    [[nodiscard]] RgbImage rgb() const;

    /// For decoders and tests. `owner` keeps the planes alive.
    Frame(int index, base::Seconds time, PlaneView luma, PlaneView cb, PlaneView cr, Colour colour,
          std::shared_ptr<const void> owner)
        : index_(index), time_(time), luma_(luma), cb_(cb), cr_(cr), colour_(colour),
          owner_(std::move(owner)) {}

    /// A frame made from RGB (BT.709, limited range): tests, stills and photographs.
    static Frame fromRgb(const RgbImage& image, int index, base::Seconds time);

  private:
    int index_ = 0;
    base::Seconds time_;
    PlaneView luma_, cb_, cr_;
    Colour colour_;
    std::shared_ptr<const void> owner_;
};

} // namespace plumbmark::video
