// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <cstdint>

namespace plumbmark::club::detail {

/// dst[i] = how far c[i] lies outside the band spanned by a[i] and b[i]: above both (bright ridge) or below
/// both (dark ridge), else 0. In space: a, b on both sides of a thin line. In time: past and future.
void outside(std::uint8_t* dst, const std::uint8_t* c, const std::uint8_t* a, const std::uint8_t* b,
             std::size_t n);

/// The larger answer of two widths: beside a and b, and beside a2 and b2.
void outsideBoth(std::uint8_t* dst, const std::uint8_t* c, const std::uint8_t* a, const std::uint8_t* b,
                 const std::uint8_t* a2, const std::uint8_t* b2, std::size_t n);

/// dst = min(max(along - across - floor, 0), cap) + min(max(inTime - floor, 0), cap): a line answers across
/// itself only, a speck answers both ways.
void combine(std::uint8_t* dst, const std::uint8_t* along, const std::uint8_t* across,
             const std::uint8_t* inTime, std::uint8_t floor, std::uint8_t cap, std::size_t n);

/// One ray of `samples` points, `kSides` parallel lines: running sums of (value - tau), their maxima and
/// where those are reached.
inline constexpr int kSides = 32;
struct RaySums {
    std::int16_t best[kSides];
    std::int16_t reach[kSides]; ///< samples up to the maximum
};
void walkRay(RaySums& out, const std::uint8_t* centre, const std::int32_t* steps, int samples,
             const std::int32_t* sides, std::int16_t tau);

/// Mean over 2 x 2, 3 x 3, ... pixels.
void shrink(std::uint8_t* dst, std::ptrdiff_t dstStride, int dstWidth, int dstHeight, const std::uint8_t* src,
            std::ptrdiff_t srcStride, int factor);

} // namespace plumbmark::club::detail
