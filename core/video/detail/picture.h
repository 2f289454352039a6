// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "video/detail/ffmpeg.h"
#include "video/frame.h"

namespace plumbmark::video::detail {

/// How stored pictures become upright: swap axes first, then flip in the upright picture.
struct Orientation {
    bool transpose = false;
    bool flipX = false;
    bool flipY = false;
    int clockwiseDegrees = 0; ///< 0, 90, 180, 270; for a mirrored clip the turn after a left-right flip
    bool mirrored = false;
    bool skewed = false; ///< the clip asks for an angle that is no multiple of 90; the nearest one is used

    [[nodiscard]] bool identity() const { return !transpose && !flipX && !flipY; }
};

/// From the nine numbers of a display matrix (ISO/IEC 14496-12, track header).
Orientation orientationOf(const std::int32_t* matrix);

/// Turns decoded pictures into upright 8-bit 4:2:0 frames of one size; refers to the decoder's own planes
/// where nothing has to change.
class PictureMaker {
  public:
    PictureMaker() = default;
    /// Stored size before orientation; pixels that are not square are stretched sideways.
    PictureMaker(int width, int height, AVRational pixelAspect, Orientation orientation);

    [[nodiscard]] int width() const { return orientation_.transpose ? height_ : width_; }
    [[nodiscard]] int height() const { return orientation_.transpose ? width_ : height_; }

    /// Takes the picture's reference. Nothing where memory ran out or the coding can't be converted.
    std::optional<Frame> make(PicturePtr picture, int index, base::Seconds time);

  private:
    PicturePtr convert(const AVFrame& picture, Frame::Colour& colour);
    PicturePtr turn(const AVFrame& picture) const;

    int width_ = 0, height_ = 0;
    Orientation orientation_;
    ScalerPtr scaler_;
    int scalerFormat_ = -1, scalerWidth_ = 0, scalerHeight_ = 0;
    Frame::Colour scalerColour_;
};

} // namespace plumbmark::video::detail
