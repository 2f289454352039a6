// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "club/detail/ridge_kernels.h"

#include <gtest/gtest.h>
#include <sys/mman.h>
#include <unistd.h>

#include <algorithm>
#include <new>
#include <random>
#include <vector>

namespace plumbmark::club::detail {
namespace {

/// A row that ends right before, or begins right after, a page that may not be touched: one byte too far ends
/// the test. (The kernels are built without sanitizers.)
class FencedRow {
  public:
    FencedRow(std::size_t n, bool atEnd) {
        const auto page = static_cast<std::size_t>(sysconf(_SC_PAGESIZE));
        const std::size_t room = (n + page - 1) / page * page;
        length_ = room + 2 * page;
        void* base = mmap(nullptr, length_, PROT_NONE, MAP_PRIVATE | MAP_ANONYMOUS, -1, 0);
        if (base == MAP_FAILED) {
            throw std::bad_alloc();
        }
        base_ = static_cast<std::uint8_t*>(base);
        if (room > 0 && mprotect(base_ + page, room, PROT_READ | PROT_WRITE) != 0) {
            throw std::bad_alloc();
        }
        row_ = base_ + page + (atEnd ? room - n : 0);
    }
    FencedRow(const FencedRow&) = delete;
    FencedRow& operator=(const FencedRow&) = delete;
    ~FencedRow() { munmap(base_, length_); }
    [[nodiscard]] std::uint8_t* get() const { return row_; }

  private:
    std::size_t length_ = 0;
    std::uint8_t* base_ = nullptr;
    std::uint8_t* row_ = nullptr;
};

int outsideBand(int c, int a, int b) {
    return std::max({0, c - std::max(a, b), std::min(a, b) - c});
}

TEST(RidgeKernels, AnswerAsDefinedAndTouchNothingBesideTheirRows) {
    std::mt19937 random(11);
    // Past the width of any vector register, with every remainder.
    for (std::size_t n = 0; n <= 100; ++n) {
        for (bool atEnd : {false, true}) {
            FencedRow dst(n, atEnd), c(n, atEnd), a(n, atEnd), b(n, atEnd), a2(n, atEnd), b2(n, atEnd);
            for (const FencedRow* row : {&c, &a, &b, &a2, &b2}) {
                std::generate(row->get(), row->get() + n,
                              [&] { return static_cast<std::uint8_t>(random() & 255U); });
            }
            outside(dst.get(), c.get(), a.get(), b.get(), n);
            for (std::size_t i = 0; i < n; ++i) {
                ASSERT_EQ(dst.get()[i], outsideBand(c.get()[i], a.get()[i], b.get()[i])) << n << ' ' << i;
            }
            outsideBoth(dst.get(), c.get(), a.get(), b.get(), a2.get(), b2.get(), n);
            for (std::size_t i = 0; i < n; ++i) {
                ASSERT_EQ(dst.get()[i], std::max(outsideBand(c.get()[i], a.get()[i], b.get()[i]),
                                                 outsideBand(c.get()[i], a2.get()[i], b2.get()[i])))
                    << n << ' ' << i;
            }
            const std::uint8_t floor = 12, cap = 90;
            combine(dst.get(), c.get(), a.get(), b.get(), floor, cap, n);
            for (std::size_t i = 0; i < n; ++i) {
                const int space = std::clamp(c.get()[i] - a.get()[i] - floor, 0, +cap);
                const int time = std::clamp(b.get()[i] - floor, 0, +cap);
                ASSERT_EQ(dst.get()[i], space + time) << n << ' ' << i;
            }
        }
    }
}

TEST(RidgeKernels, ARaysSumsAreTheBestRunFromTheCentre) {
    std::mt19937 random(12);
    constexpr int kSamples = 24, kStride = kSides;
    constexpr std::size_t kBytes = static_cast<std::size_t>(kSamples) * kStride;
    for (bool atEnd : {false, true}) {
        FencedRow picture(kBytes, atEnd);
        std::generate(picture.get(), picture.get() + kBytes,
                      [&] { return static_cast<std::uint8_t>(random() % 120U); });
        std::vector<std::int32_t> steps(kSamples), sides(kSides);
        for (int r = 0; r < kSamples; ++r) {
            steps[static_cast<std::size_t>(r)] = r * kStride;
        }
        for (int s = 0; s < kSides; ++s) {
            sides[static_cast<std::size_t>(s)] = s;
        }
        RaySums sums;
        walkRay(sums, picture.get(), steps.data(), kSamples, sides.data(), 50);
        for (int s = 0; s < kSides; ++s) {
            int sum = 0, best = 0, reach = 0;
            for (int r = 0; r < kSamples; ++r) {
                sum += picture.get()[r * kStride + s] - 50;
                if (sum > best) {
                    best = sum;
                    reach = r + 1;
                }
            }
            EXPECT_EQ(sums.best[s], best);
            EXPECT_EQ(sums.reach[s], reach);
        }
    }
}

TEST(RidgeKernels, ShrinkingIsTheRoundedMeanOfEachBlock) {
    std::mt19937 random(13);
    for (int factor : {2, 3, 4}) {
        for (int width : {1, 5, 33}) {
            constexpr int kRows = 3;
            const int across = width * factor;
            const auto bytes = static_cast<std::size_t>(across) * kRows * static_cast<std::size_t>(factor);
            for (bool atEnd : {false, true}) {
                FencedRow src(bytes, atEnd), dst(static_cast<std::size_t>(width) * kRows, atEnd);
                std::generate(src.get(), src.get() + bytes,
                              [&] { return static_cast<std::uint8_t>(random() & 255U); });
                shrink(dst.get(), width, width, kRows, src.get(), across, factor);
                for (int y = 0; y < kRows; ++y) {
                    for (int x = 0; x < width; ++x) {
                        int sum = 0;
                        for (int v = 0; v < factor; ++v) {
                            for (int u = 0; u < factor; ++u) {
                                sum += src.get()[(y * factor + v) * across + x * factor + u];
                            }
                        }
                        const int area = factor * factor;
                        ASSERT_EQ(dst.get()[y * width + x], (sum + area / 2) / area)
                            << factor << ' ' << width << ' ' << x << ' ' << y;
                    }
                }
            }
        }
    }
}

} // namespace
} // namespace plumbmark::club::detail
