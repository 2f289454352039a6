// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "demo/vec.h"

namespace plumbmark::demo {

struct Rgb {
    float r = 0, g = 0, b = 0; ///< linear light, 1 = white in full sun
    friend Rgb operator*(Rgb a, float k) { return {a.r * k, a.g * k, a.b * k}; }
    friend Rgb operator*(Rgb a, Rgb b) { return {a.r * b.r, a.g * b.g, a.b * b.b}; }
    friend Rgb operator+(Rgb a, Rgb b) { return {a.r + b.r, a.g + b.g, a.b + b.b}; }
};
/// From 8-bit display values.
[[nodiscard]] Rgb fromDisplay(int r, int g, int b);
[[nodiscard]] inline Rgb mix(Rgb a, Rgb b, float k) {
    return a * (1 - k) + b * k;
}

/// A small picture wrapped around a part of the figure; u and v in 0..1, both repeat.
struct Texture {
    int width = 1, height = 1;
    std::vector<Rgb> texels{Rgb{0.5f, 0.5f, 0.5f}};
    float gloss = 0.0f; ///< strength of the highlight
    void fill(int w, int h, Rgb colour) {
        width = w;
        height = h;
        texels.assign(static_cast<std::size_t>(w) * static_cast<std::size_t>(h), colour);
    }
    [[nodiscard]] Rgb& at(int x, int y) {
        x = ((x % width) + width) % width;
        y = y < 0 ? 0 : y >= height ? height - 1 : y;
        return texels[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
                      static_cast<std::size_t>(x)];
    }
};

struct Vertex {
    V3 p, n;
    float u = 0, v = 0;
};
struct Triangle {
    std::uint32_t a, b, c;
    std::uint16_t texture;
};

/// Triangles of one instant. Cleared and filled again for every instant; keeps its memory.
struct Mesh {
    std::vector<Vertex> vertices;
    std::vector<Triangle> triangles;
    void clear() {
        vertices.clear();
        triangles.clear();
    }
};

/// One cross-section of a tube: an ellipse (or rounded box) in the plane of `side` and `front`.
struct Ring {
    V3 centre, side, front;
    double sideRadius = 0.1, frontRadius = 0.1;
    double box = 1.0;   ///< 1 ellipse; under 1 more box-like
    double bulge = 0.0; ///< extra radius toward the front (+) or the back (-), share
};

/// A closed tube through rings with `segments` points around each. u runs round from the side axis through
/// the front, v along. Ends are closed by a point.
void addTube(Mesh& mesh, const std::vector<Ring>& rings, int segments, int texture, double v0 = 0,
             double v1 = 1, bool capStart = true, bool capEnd = true);
/// An ellipsoid with the given half axes.
void addEllipsoid(Mesh& mesh, V3 centre, V3 a, V3 b, V3 c, int around, int along, int texture);
/// A round bar between two points with radii at its ends.
void addBar(Mesh& mesh, V3 from, V3 to, double r0, double r1, int segments, int pieces, int texture);
/// A box with the given half axes.
void addBox(Mesh& mesh, V3 centre, V3 a, V3 b, V3 c, int texture);

} // namespace plumbmark::demo
