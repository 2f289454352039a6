// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "ports/camera.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace plumbmark::ports {
namespace {

using Formats = std::vector<CameraFormat>;

struct Row {
    const char* what;
    Formats formats;
    CameraFormat wanted;
};

// Invented lists in the ways in which cameras offer their formats.
TEST(Camera, TheFastestUsefulFormatIsTaken) {
    const std::vector<Row> rows{
        {"one format", {{640, 480, 30, false}}, {640, 480, 30, false}},
        {"the large slow one first", {{1920, 1080, 30, true}, {1280, 720, 60, true}}, {1280, 720, 60, true}},
        {"the fast one first", {{1280, 720, 120, false}, {3840, 2160, 30, false}}, {1280, 720, 120, false}},
        {"fast but tiny", {{640, 360, 240, true}, {1280, 720, 60, true}}, {1280, 720, 60, true}},
        {"same rate: nearest to 1280 x 720",
         {{1920, 1080, 60, true}, {1280, 720, 60, true}},
         {1280, 720, 60, true}},
        {"same rate and size: uncompressed",
         {{1280, 720, 60, true}, {1280, 720, 60, false}},
         {1280, 720, 60, false}},
        {"faster full picture", {{1920, 1080, 120, false}, {1280, 720, 60, false}}, {1920, 1080, 120, false}},
        {"beyond 240 nothing is gained",
         {{1920, 1080, 480, false}, {1280, 720, 240, false}},
         {1280, 720, 240, false}},
        {"29.97 is 30", {{1920, 1080, 30, false}, {1280, 720, 29.97, false}}, {1280, 720, 29.97, false}},
        {"upright phone", {{720, 1280, 240, false}, {1080, 1920, 60, false}}, {720, 1280, 240, false}},
        {"4K is left out", {{3840, 2160, 120, false}, {1920, 1080, 60, false}}, {1920, 1080, 60, false}},
        {"only small ones: the largest smooth one",
         {{320, 240, 60, false}, {640, 480, 30, false}},
         {640, 480, 30, false}},
        {"only small ones: not the slide show",
         {{800, 600, 10, false}, {640, 480, 30, false}},
         {640, 480, 30, false}},
        {"only 4K", {{3840, 2160, 30, true}, {4096, 2160, 24, true}}, {3840, 2160, 30, true}},
        {"nonsense is passed over",
         {{0, 0, 120, false}, {1280, 720, 0, false}, {1280, 720, 30, true}},
         {1280, 720, 30, true}},
    };
    ASSERT_GE(rows.size(), 12U);
    for (const auto& row : rows) {
        auto formats = row.formats;
        for (int order = 0; order < 2; ++order) { // the list's order must not matter
            const auto chosen = fastestUseful(formats);
            ASSERT_TRUE(chosen) << row.what;
            EXPECT_EQ(*chosen, row.wanted)
                << row.what << ": " << chosen->width << "x" << chosen->height << " at " << chosen->fps;
            std::reverse(formats.begin(), formats.end());
        }
    }
    EXPECT_FALSE(fastestUseful({}));
    EXPECT_FALSE(fastestUseful({{0, 0, 30, false}}));
}

} // namespace
} // namespace plumbmark::ports
