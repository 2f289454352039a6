// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "demo/raster.h"

#include <algorithm>
#include <cmath>

namespace plumbmark::demo {

void Raster::reset(int x0, int y0, int width, int height) {
    x0_ = x0;
    y0_ = y0;
    width_ = std::max(0, width);
    height_ = std::max(0, height);
    const std::size_t n = static_cast<std::size_t>(width_) * static_cast<std::size_t>(height_);
    depth_.assign(n, 0.0f);
    pixels_.assign(n, Pixel{0, 0, 0, 0});
}

void Raster::draw(const std::vector<Corner>& corners, const std::vector<Triangle>& triangles,
                  const std::vector<Texture>& textures, float shiftX, float shiftY) {
    const float ox = static_cast<float>(x0_) - shiftX, oy = static_cast<float>(y0_) - shiftY;
    for (const Triangle& t : triangles) {
        const Corner& a = corners[t.a];
        const Corner* b = &corners[t.b];
        const Corner* c = &corners[t.c];
        if ((a.away && b->away && c->away) || a.inverseDepth <= 0 || b->inverseDepth <= 0 ||
            c->inverseDepth <= 0) {
            continue;
        }
        float area = (b->x - a.x) * (c->y - a.y) - (b->y - a.y) * (c->x - a.x);
        if (area < 0) {
            std::swap(b, c);
            area = -area;
        }
        if (area < 1e-9f) {
            continue;
        }
        const float ax = a.x - ox, ay = a.y - oy, bx = b->x - ox, by = b->y - oy, cx = c->x - ox,
                    cy = c->y - oy;
        const int left = std::max(0, static_cast<int>(std::ceil(std::min({ax, bx, cx}) - 0.5f)));
        const int right = std::min(width_ - 1, static_cast<int>(std::floor(std::max({ax, bx, cx}) - 0.5f)));
        const int top = std::max(0, static_cast<int>(std::ceil(std::min({ay, by, cy}) - 0.5f)));
        const int bottom = std::min(height_ - 1, static_cast<int>(std::floor(std::max({ay, by, cy}) - 0.5f)));
        if (left > right || top > bottom) {
            continue;
        }
        const Texture& texture = textures[t.texture];
        const float inv = 1.0f / area;
        for (int y = top; y <= bottom; ++y) {
            const float py = static_cast<float>(y) + 0.5f;
            const std::size_t base = static_cast<std::size_t>(y) * static_cast<std::size_t>(width_);
            const float dxA = -(cy - by), dxB = -(ay - cy), dxC = -(by - ay);
            const float px0 = static_cast<float>(left) + 0.5f;
            float ea = (cx - bx) * (py - by) - (cy - by) * (px0 - bx);
            float eb = (ax - cx) * (py - cy) - (ay - cy) * (px0 - cx);
            float ec = (bx - ax) * (py - ay) - (by - ay) * (px0 - ax);
            for (int x = left; x <= right; ++x, ea += dxA, eb += dxB, ec += dxC) {
                if (ea < 0 || eb < 0 || ec < 0) {
                    continue;
                }
                const float wa = ea * inv, wb = eb * inv, wc = ec * inv;
                const float z = wa * a.inverseDepth + wb * b->inverseDepth + wc * c->inverseDepth;
                float& depth = depth_[base + static_cast<std::size_t>(x)];
                if (z <= depth) {
                    continue;
                }
                depth = z;
                const float u = wa * a.u + wb * b->u + wc * c->u, v = wa * a.v + wb * b->v + wc * c->v;
                const int tx =
                    std::min(texture.width - 1,
                             static_cast<int>((u - std::floor(u)) * static_cast<float>(texture.width)));
                const int ty = std::clamp(static_cast<int>(v * static_cast<float>(texture.height)), 0,
                                          texture.height - 1);
                const Rgb& tex =
                    texture.texels[static_cast<std::size_t>(ty) * static_cast<std::size_t>(texture.width) +
                                   static_cast<std::size_t>(tx)];
                const float shine = wa * a.shine + wb * b->shine + wc * c->shine;
                Pixel& pixel = pixels_[base + static_cast<std::size_t>(x)];
                pixel.r = tex.r * (wa * a.r + wb * b->r + wc * c->r) + shine;
                pixel.g = tex.g * (wa * a.g + wb * b->g + wc * c->g) + shine;
                pixel.b = tex.b * (wa * a.b + wb * b->b + wc * c->b) + shine;
                pixel.cover = 1;
            }
        }
    }
}

void see(const Mesh& mesh, const Camera& camera, const Light& light, marks::Hand hand,
         const std::vector<float>& gloss, std::vector<Corner>& out) {
    out.resize(mesh.vertices.size());
    const auto wrap = static_cast<float>(0.15 + 0.5 * light.softness);
    for (std::size_t i = 0; i < mesh.vertices.size(); ++i) {
        const Vertex& vertex = mesh.vertices[i];
        const V3 p = toWorld(vertex.p, hand), n = toWorld(vertex.n, hand);
        const V3 d = p - camera.position;
        const double z = dot(d, camera.forward);
        Corner& c = out[i];
        if (z < 0.05) {
            c.inverseDepth = 0;
            continue;
        }
        const double k = camera.focal / z;
        c.x = static_cast<float>(camera.width / 2.0 + k * dot(d, camera.right));
        c.y = static_cast<float>(camera.height / 2.0 - k * dot(d, camera.up));
        c.inverseDepth = static_cast<float>(1.0 / z);
        c.u = vertex.u;
        c.v = vertex.v;
        c.away = dot(n, d) > 0.25 * length(d);
        const auto facing = static_cast<float>(dot(n, light.toSun));
        const float lit = std::max(0.0f, (facing + wrap) / (1 + wrap));
        const auto high = static_cast<float>(0.5 + 0.5 * n.z);
        // Near the ground less sky is seen.
        const float open = 0.72f + 0.28f * static_cast<float>(std::min(1.0, std::max(0.0, p.z) / 0.5));
        c.r = light.sun.r * lit + (light.sky.r * high + light.ground.r * (1 - high)) * open;
        c.g = light.sun.g * lit + (light.sky.g * high + light.ground.g * (1 - high)) * open;
        c.b = light.sun.b * lit + (light.sky.b * high + light.ground.b * (1 - high)) * open;
        const float g = gloss[i];
        c.shine = 0;
        if (g > 0) {
            const V3 half = unit(light.toSun - d / length(d));
            const double s = std::max(0.0, dot(n, half));
            const double s4 = s * s * s * s, s16 = s4 * s4 * s4 * s4;
            c.shine = g * static_cast<float>(s16 * (1 - 0.6 * light.softness));
        }
    }
}

} // namespace plumbmark::demo
