// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <vector>

#include "demo/camera.h"
#include "demo/mesh.h"
#include "demo/raster.h"

namespace plumbmark::demo {

enum class Place { range, parkland, bays, indoor };

/// What stands and lies around the player.
struct Surroundings {
    Place place = Place::range;
    bool mat = true;        ///< the player stands on a mat
    bool stick = false;     ///< an alignment stick lies on the target line's parallel through the toes
    bool neighbour = false; ///< somebody in the next bay
    bool clutter = true;    ///< bag, basket, spare balls
    double haze = 0.2;
    std::uint64_t seed = 1;
};

/// Everything that does not move, linear light, and which pixels show bare ground.
struct Backdrop {
    int width = 0, height = 0;
    std::vector<Rgb> colour;
    std::vector<std::uint8_t> ground;
};
[[nodiscard]] Backdrop paintBackdrop(const Camera& camera, const Surroundings& around, const Light& light,
                                     marks::Hand hand);

/// Ends of the alignment stick, canonical.
inline constexpr V3 kStickNear{-0.62, 0.44, 0.008}, kStickFar{0.60, 0.44, 0.008};

} // namespace plumbmark::demo
