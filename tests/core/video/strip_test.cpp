// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The reader that judges all other tests here must not accept what it should not.
#include <bit>
#include <vector>

#include <gtest/gtest.h>

#include "awkward/strip.h"

namespace plumbmark::awkward {
namespace {

constexpr int width = 256, height = 192;

std::vector<std::uint8_t> draw(std::uint32_t bits) {
    std::vector<std::uint8_t> luma(width * height, 90);
    const StripPlace place = stripPlace(width, height);
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            const double block = (x + 0.5 - place.left) / place.block;
            if (y >= place.top && y < place.top + place.height && block >= 0.0 && block < stripBlocks) {
                luma[static_cast<std::size_t>(y * width + x)] =
                    (bits >> (stripBlocks - 1 - static_cast<int>(block))) & 1U ? 220 : 30;
            }
        }
    }
    return luma;
}

std::optional<int> read(const std::vector<std::uint8_t>& luma) {
    return readStrip({luma.data(), width, height, width});
}

TEST(Strip, EveryNumberIsReadBack) {
    for (int number = 0; number < 1024; ++number) {
        ASSERT_EQ(read(draw(stripPattern(number))), number);
    }
}

TEST(Strip, OneOrTwoNeighbouringWrongBlocksAreNoticed) {
    for (int number = 0; number < 1024; number += 7) {
        for (int block = 0; block < stripBlocks; ++block) {
            EXPECT_FALSE(read(draw(stripPattern(number) ^ (1U << block)))) << number << " block " << block;
            if (block + 1 < stripBlocks) {
                EXPECT_FALSE(read(draw(stripPattern(number) ^ (3U << block))))
                    << number << " blocks " << block;
            }
        }
    }
}

TEST(Strip, GreyOrMissingOrMirroredStripsAreNotRead) {
    auto luma = draw(stripPattern(300));
    const StripPlace place = stripPlace(width, height);
    for (int y = 0; y < height; ++y) { // one block half-way between light and dark
        for (int x = static_cast<int>(place.left + 5 * place.block); x < place.left + 6 * place.block; ++x) {
            luma[static_cast<std::size_t>(y * width + x)] = 125;
        }
    }
    EXPECT_FALSE(read(luma));
    EXPECT_FALSE(read(std::vector<std::uint8_t>(width * height, 128)));
    for (int number = 0; number < 1024; ++number) {
        std::uint32_t turned = 0;
        for (int i = 0; i < stripBlocks; ++i) {
            turned |= ((stripPattern(number) >> i) & 1U) << (stripBlocks - 1 - i);
        }
        ASSERT_FALSE(read(draw(turned))) << number;
    }
    EXPECT_FALSE(readStrip({}));
}

} // namespace
} // namespace plumbmark::awkward
