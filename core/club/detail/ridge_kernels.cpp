// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Byte loops kept branch-free and in one place so that the compiler turns them into 16-lane vector code; GCC
// does that reliably at O3 only, whatever the rest of the build uses.
#if defined(__GNUC__) && !defined(__clang__) && defined(__OPTIMIZE__)
#pragma GCC optimize("O3")
#endif
#include "club/detail/ridge_kernels.h"

#include <algorithm>

#include "base/vector_code.h"

namespace plumbmark::club::detail {

namespace {

PLUMBMARK_INLINE std::uint8_t outsideOne(std::uint8_t c, std::uint8_t a, std::uint8_t b) {
    const std::uint8_t hi = std::max(a, b);
    const std::uint8_t lo = std::min(a, b);
    const auto bright = static_cast<std::uint8_t>(std::max(c, hi) - hi);
    const auto dark = static_cast<std::uint8_t>(lo - std::min(c, lo));
    return std::max(bright, dark);
}

PLUMBMARK_INLINE void outsideRow(std::uint8_t* __restrict dst, const std::uint8_t* c, const std::uint8_t* a,
                                 const std::uint8_t* b, std::size_t n) {
    for (std::size_t i = 0; i < n; ++i) {
        dst[i] = outsideOne(c[i], a[i], b[i]);
    }
}
PLUMBMARK_INLINE void outsideBothRow(std::uint8_t* __restrict dst, const std::uint8_t* c,
                                     const std::uint8_t* a, const std::uint8_t* b, const std::uint8_t* a2,
                                     const std::uint8_t* b2, std::size_t n) {
    for (std::size_t i = 0; i < n; ++i) {
        dst[i] = std::max(outsideOne(c[i], a[i], b[i]), outsideOne(c[i], a2[i], b2[i]));
    }
}
PLUMBMARK_INLINE void combineRow(std::uint8_t* __restrict dst, const std::uint8_t* along,
                                 const std::uint8_t* across, const std::uint8_t* inTime, std::uint8_t floor,
                                 std::uint8_t cap, std::size_t n) {
    for (std::size_t i = 0; i < n; ++i) {
        const std::uint8_t line = static_cast<std::uint8_t>(std::max(along[i], across[i]) - across[i]);
        const std::uint8_t space =
            std::min<std::uint8_t>(static_cast<std::uint8_t>(std::max(line, floor) - floor), cap);
        const std::uint8_t time =
            std::min<std::uint8_t>(static_cast<std::uint8_t>(std::max(inTime[i], floor) - floor), cap);
        dst[i] = static_cast<std::uint8_t>(space + time);
    }
}

PLUMBMARK_WIDE void wideOutside(std::uint8_t* dst, const std::uint8_t* c, const std::uint8_t* a,
                                const std::uint8_t* b, std::size_t n) {
    outsideRow(dst, c, a, b, n);
}
PLUMBMARK_WIDE void wideOutsideBoth(std::uint8_t* dst, const std::uint8_t* c, const std::uint8_t* a,
                                    const std::uint8_t* b, const std::uint8_t* a2, const std::uint8_t* b2,
                                    std::size_t n) {
    outsideBothRow(dst, c, a, b, a2, b2, n);
}
PLUMBMARK_WIDE void wideCombine(std::uint8_t* dst, const std::uint8_t* along, const std::uint8_t* across,
                                const std::uint8_t* inTime, std::uint8_t floor, std::uint8_t cap,
                                std::size_t n) {
    combineRow(dst, along, across, inTime, floor, cap, n);
}

} // namespace

void outside(std::uint8_t* dst, const std::uint8_t* c, const std::uint8_t* a, const std::uint8_t* b,
             std::size_t n) {
    PLUMBMARK_HAS_WIDE ? wideOutside(dst, c, a, b, n) : outsideRow(dst, c, a, b, n);
}

void outsideBoth(std::uint8_t* dst, const std::uint8_t* c, const std::uint8_t* a, const std::uint8_t* b,
                 const std::uint8_t* a2, const std::uint8_t* b2, std::size_t n) {
    PLUMBMARK_HAS_WIDE ? wideOutsideBoth(dst, c, a, b, a2, b2, n) : outsideBothRow(dst, c, a, b, a2, b2, n);
}

void combine(std::uint8_t* dst, const std::uint8_t* along, const std::uint8_t* across,
             const std::uint8_t* inTime, std::uint8_t floor, std::uint8_t cap, std::size_t n) {
    PLUMBMARK_HAS_WIDE ? wideCombine(dst, along, across, inTime, floor, cap, n)
                       : combineRow(dst, along, across, inTime, floor, cap, n);
}

void walkRay(RaySums& out, const std::uint8_t* centre, const std::int32_t* steps, int samples,
             const std::int32_t* sides, std::int16_t tau) {
    std::int16_t sum[kSides] = {};
    std::int16_t best[kSides] = {};
    std::int16_t reach[kSides] = {};
    for (int r = 0; r < samples; ++r) {
        const std::uint8_t* p = centre + steps[r];
        std::int16_t value[kSides];
        for (int s = 0; s < kSides; ++s) {
            value[s] = p[sides[s]];
        }
        const auto here = static_cast<std::int16_t>(r + 1);
        for (int s = 0; s < kSides; ++s) {
            sum[s] = static_cast<std::int16_t>(sum[s] + value[s] - tau);
            const bool better = sum[s] > best[s];
            best[s] = better ? sum[s] : best[s];
            reach[s] = better ? here : reach[s];
        }
    }
    std::copy(best, best + kSides, out.best);
    std::copy(reach, reach + kSides, out.reach);
}

void shrink(std::uint8_t* __restrict dst, std::ptrdiff_t dstStride, int dstWidth, int dstHeight,
            const std::uint8_t* __restrict src, std::ptrdiff_t srcStride, int factor) {
    for (int y = 0; y < dstHeight; ++y) {
        std::uint8_t* out = dst + y * dstStride;
        const std::uint8_t* in = src + static_cast<std::ptrdiff_t>(y) * factor * srcStride;
        if (factor == 2) {
            const std::uint8_t* below = in + srcStride;
            for (int x = 0; x < dstWidth; ++x) {
                out[x] = static_cast<std::uint8_t>(
                    (in[2 * x] + in[2 * x + 1] + below[2 * x] + below[2 * x + 1] + 2) >> 2);
            }
            continue;
        }
        const int area = factor * factor;
        for (int x = 0; x < dstWidth; ++x) {
            int sum = area / 2;
            for (int v = 0; v < factor; ++v) {
                for (int u = 0; u < factor; ++u) {
                    sum += in[v * srcStride + x * factor + u];
                }
            }
            out[x] = static_cast<std::uint8_t>(sum / area);
        }
    }
}

} // namespace plumbmark::club::detail
