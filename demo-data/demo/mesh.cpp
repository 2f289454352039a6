// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "demo/mesh.h"

#include <algorithm>
#include <cmath>

namespace plumbmark::demo {
namespace {

float linear(int display) {
    const double v = display / 255.0;
    return static_cast<float>(v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4)); // sRGB
}

/// Adds a grid of (rows x (columns + 1)) vertices and smooth normals that point away from the rows' centres.
void finishGrid(Mesh& mesh, std::uint32_t first, int rows, int columns, int texture,
                const std::vector<V3>& centres) {
    const auto stride = static_cast<std::uint32_t>(columns + 1);
    const auto at = [&](int r, int c) -> Vertex& {
        return mesh.vertices[first + static_cast<std::uint32_t>(r) * stride + static_cast<std::uint32_t>(c)];
    };
    for (int r = 0; r < rows; ++r) {
        for (int c = 0; c <= columns; ++c) {
            const int c0 = c == 0 ? columns - 1 : c - 1, c1 = c == columns ? 1 : c + 1;
            const V3 along = at(std::min(rows - 1, r + 1), c).p - at(std::max(0, r - 1), c).p;
            const V3 round = at(r, c1).p - at(r, c0).p;
            V3 n = cross(round, along);
            const double size = length(n);
            const V3 out = at(r, c).p - centres[static_cast<std::size_t>(r)];
            if (size < 1e-12) {
                n = unit(dot(out, out) > 1e-12 ? out : along);
            } else {
                n = n / size;
                if (dot(n, out) < 0) {
                    n = -n;
                }
            }
            at(r, c).n = n;
        }
    }
    for (int r = 0; r + 1 < rows; ++r) {
        for (int c = 0; c < columns; ++c) {
            const std::uint32_t i =
                first + static_cast<std::uint32_t>(r) * stride + static_cast<std::uint32_t>(c);
            mesh.triangles.push_back({i, i + 1, i + stride, static_cast<std::uint16_t>(texture)});
            mesh.triangles.push_back(
                {i + 1, i + stride + 1, i + stride, static_cast<std::uint16_t>(texture)});
        }
    }
}

void addCap(Mesh& mesh, std::uint32_t rowFirst, int columns, V3 centre, V3 outward, float v, int texture) {
    const auto tip = static_cast<std::uint32_t>(mesh.vertices.size());
    mesh.vertices.push_back({centre, outward, 0.5f, v});
    for (int c = 0; c < columns; ++c) {
        const std::uint32_t i = rowFirst + static_cast<std::uint32_t>(c);
        mesh.triangles.push_back({i, i + 1, tip, static_cast<std::uint16_t>(texture)});
    }
}

} // namespace

Rgb fromDisplay(int r, int g, int b) {
    return {linear(r), linear(g), linear(b)};
}

void addTube(Mesh& mesh, const std::vector<Ring>& rings, int segments, int texture, double v0, double v1,
             bool capStart, bool capEnd) {
    const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
    const int rows = static_cast<int>(rings.size());
    static thread_local std::vector<V3> centres;
    centres.clear();
    for (int r = 0; r < rows; ++r) {
        const Ring& ring = rings[static_cast<std::size_t>(r)];
        centres.push_back(ring.centre);
        const double v = v0 + (v1 - v0) * r / std::max(1, rows - 1);
        for (int c = 0; c <= segments; ++c) {
            const double a = 2 * std::numbers::pi * c / segments;
            double cs = std::cos(a), sn = std::sin(a);
            double k = 1;
            if (ring.bulge != 0) {
                k = ring.bulge > 0 ? (sn > 0 ? 1 + ring.bulge * sn * sn : 1)
                                   : (sn < 0 ? 1 - ring.bulge * sn * sn : 1);
            }
            if (ring.box != 1.0) {
                cs = std::copysign(std::pow(std::abs(cs), ring.box), cs);
                sn = std::copysign(std::pow(std::abs(sn), ring.box), sn);
            }
            Vertex vertex;
            vertex.p =
                ring.centre + ring.side * (ring.sideRadius * cs) + ring.front * (ring.frontRadius * sn * k);
            vertex.u = static_cast<float>(c) / static_cast<float>(segments);
            vertex.v = static_cast<float>(v);
            mesh.vertices.push_back(vertex);
        }
    }
    finishGrid(mesh, first, rows, segments, texture, centres);
    const auto stride = static_cast<std::uint32_t>(segments + 1);
    if (capStart && rows > 1) {
        addCap(mesh, first, segments, rings.front().centre, unit(rings[0].centre - rings[1].centre),
               static_cast<float>(v0), texture);
    }
    if (capEnd && rows > 1) {
        addCap(mesh, first + static_cast<std::uint32_t>(rows - 1) * stride, segments, rings.back().centre,
               unit(rings[static_cast<std::size_t>(rows - 1)].centre -
                    rings[static_cast<std::size_t>(rows - 2)].centre),
               static_cast<float>(v1), texture);
    }
}

void addEllipsoid(Mesh& mesh, V3 centre, V3 a, V3 b, V3 c, int around, int along, int texture) {
    const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
    std::vector<V3> centres(static_cast<std::size_t>(along + 1), centre);
    for (int r = 0; r <= along; ++r) {
        const double lat = std::numbers::pi * (static_cast<double>(r) / along - 0.5);
        for (int s = 0; s <= around; ++s) {
            const double lon = 2 * std::numbers::pi * s / around;
            Vertex v;
            v.p = centre + a * (std::cos(lat) * std::cos(lon)) + b * (std::cos(lat) * std::sin(lon)) +
                  c * std::sin(lat);
            v.u = static_cast<float>(s) / static_cast<float>(around);
            v.v = static_cast<float>(r) / static_cast<float>(along);
            mesh.vertices.push_back(v);
        }
    }
    finishGrid(mesh, first, along + 1, around, texture, centres);
}

void addBar(Mesh& mesh, V3 from, V3 to, double r0, double r1, int segments, int pieces, int texture) {
    const V3 d = unit(to - from);
    const V3 side = across(std::abs(d.z) < 0.9 ? V3{0, 0, 1} : V3{1, 0, 0}, d);
    const V3 front = cross(d, side);
    static thread_local std::vector<Ring> rings;
    rings.clear();
    for (int i = 0; i <= pieces; ++i) {
        const double k = static_cast<double>(i) / pieces;
        rings.push_back({lerp(from, to, k), side, front, lerp(r0, r1, k), lerp(r0, r1, k)});
    }
    addTube(mesh, rings, segments, texture);
}

void addBox(Mesh& mesh, V3 centre, V3 a, V3 b, V3 c, int texture) {
    const std::array<std::array<V3, 3>, 6> faces{
        {{a, b, c}, {-a, b, c}, {b, a, c}, {-b, a, c}, {c, a, b}, {-c, a, b}}};
    for (const auto& [n, s, t] : faces) {
        const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
        for (int i = 0; i < 4; ++i) {
            const double x = i == 1 || i == 2 ? 1 : -1, y = i >= 2 ? 1 : -1;
            mesh.vertices.push_back({centre + n + s * x + t * y, unit(n), static_cast<float>(x * 0.5 + 0.5),
                                     static_cast<float>(y * 0.5 + 0.5)});
        }
        mesh.triangles.push_back({first, first + 1, first + 2, static_cast<std::uint16_t>(texture)});
        mesh.triangles.push_back({first, first + 2, first + 3, static_cast<std::uint16_t>(texture)});
    }
}

} // namespace plumbmark::demo
