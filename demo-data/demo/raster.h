// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "demo/camera.h"
#include "demo/mesh.h"

namespace plumbmark::demo {

struct Light {
    V3 toSun{0.3, 0.4, 0.8}; ///< world, unit
    Rgb sun{1.0f, 0.96f, 0.88f};
    Rgb sky{0.42f, 0.48f, 0.58f};
    Rgb ground{0.18f, 0.19f, 0.14f};
    double softness = 0.0; ///< 0 hard sun .. 1 overcast
};

/// A vertex as the camera sees it.
struct Corner {
    float x = 0, y = 0, inverseDepth = 0;
    float r = 0, g = 0, b = 0; ///< light that falls on it
    float shine = 0;
    float u = 0, v = 0;
    bool away = false; ///< its normal points away from the camera
};

/// Colour, coverage and depth of one instant for a box of the picture.
class Raster {
  public:
    void reset(int x0, int y0, int width, int height);
    /// `shiftX`, `shiftY`: sub-pixel offset, px, for smoothing edges over several instants.
    void draw(const std::vector<Corner>& corners, const std::vector<Triangle>& triangles,
              const std::vector<Texture>& textures, float shiftX, float shiftY);
    [[nodiscard]] int x0() const { return x0_; }
    [[nodiscard]] int y0() const { return y0_; }
    [[nodiscard]] int width() const { return width_; }
    [[nodiscard]] int height() const { return height_; }
    struct Pixel {
        float r, g, b, cover;
    };
    [[nodiscard]] const Pixel* row(int y) const {
        return pixels_.data() + static_cast<std::size_t>(y) * static_cast<std::size_t>(width_);
    }
    [[nodiscard]] const float* depthRow(int y) const {
        return depth_.data() + static_cast<std::size_t>(y) * static_cast<std::size_t>(width_);
    }

  private:
    int x0_ = 0, y0_ = 0, width_ = 0, height_ = 0;
    std::vector<float> depth_; ///< 1 / depth
    std::vector<Pixel> pixels_;
};

/// Light on every vertex and its place in the picture. Vertices are canonical; `hand` says how they lie in
/// the world.
void see(const Mesh& mesh, const Camera& camera, const Light& light, marks::Hand hand,
         const std::vector<float>& gloss, std::vector<Corner>& out);

} // namespace plumbmark::demo
