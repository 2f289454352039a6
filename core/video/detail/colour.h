// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "video/frame.h"

namespace plumbmark::video::detail {

/// Writable planes of the caller's; chroma planes are (width+1)/2 x (height+1)/2.
struct Planes {
    std::uint8_t* data[3] = {nullptr, nullptr, nullptr};
    std::ptrdiff_t stride[3] = {0, 0, 0};
};

/// 8-bit RGB to YCbCr 4:2:0, chroma sited as H.264 and HEVC default to (left, midway between two rows).
void rgbToPlanes(const std::uint8_t* rgb, int width, int height, Frame::Colour colour, const Planes& into);

} // namespace plumbmark::video::detail
