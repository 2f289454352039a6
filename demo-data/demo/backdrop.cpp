// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "demo/backdrop.h"

#include <algorithm>
#include <cmath>
#include <thread>

#include "demo/figure.h"

namespace plumbmark::demo {
namespace {

double cell(int i, int j, std::uint64_t seed) {
    std::uint64_t z = static_cast<std::uint64_t>(static_cast<std::uint32_t>(i)) * 0x9E3779B97F4A7C15ull ^
                      static_cast<std::uint64_t>(static_cast<std::uint32_t>(j)) * 0xC2B2AE3D27D4EB4Full ^
                      (seed + 77) * 0x165667B19E3779F9ull;
    z = (z ^ (z >> 29)) * 0xBF58476D1CE4E5B9ull;
    z ^= z >> 32;
    return static_cast<double>(z & 0xffffff) / 16777215.0;
}

double noise(double x, double y, std::uint64_t seed) {
    const int i = static_cast<int>(std::floor(x)), j = static_cast<int>(std::floor(y));
    const double fx = x - i, fy = y - j;
    const double u = fx * fx * (3 - 2 * fx), v = fy * fy * (3 - 2 * fy);
    return lerp(lerp(cell(i, j, seed), cell(i + 1, j, seed), u),
                lerp(cell(i, j + 1, seed), cell(i + 1, j + 1, seed), u), v);
}

double clouds(double x, double y, std::uint64_t seed) {
    return 0.5 * noise(x, y, seed) + 0.25 * noise(2 * x, 2 * y, seed + 1) +
           0.15 * noise(4 * x, 4 * y, seed + 2) + 0.1 * noise(9 * x, 9 * y, seed + 3);
}

enum class Kind { trees, hedge, fence, net, wall, building, posts, people, divider, flags };

/// An upright sheet across the camera's view.
struct Sheet {
    Kind kind;
    double depth;  ///< from the camera along its heading, m
    double height; ///< m
    double at = 0; ///< some sideways place
    Rgb colour;
    std::uint64_t seed;
};

struct Painted {
    Rgb colour;
    double cover = 0;
};

Painted paint(const Sheet& sheet, double x, double z) {
    const auto sd = sheet.seed;
    switch (sheet.kind) {
    case Kind::trees: {
        const double scale = sheet.height * 0.5;
        const double top = sheet.height * (0.45 + 0.55 * clouds(x / scale, 3.7, sd)) +
                           0.4 * (noise(x * 2.2, z * 2.2, sd + 4) - 0.5) * scale * 0.3;
        if (z > top) {
            return {};
        }
        const double leaf =
            0.35 * clouds(x * 1.1, z * 1.1, sd + 5) +
            0.65 * noise(x * 5.0 / std::max(1.0, scale * 0.3), z * 5.0 / std::max(1.0, scale * 0.3), sd + 6);
        const double trunk = z < sheet.height * 0.14 ? 0.45 : 1.0;
        return {sheet.colour * static_cast<float>((0.35 + 1.1 * leaf) * trunk), 1};
    }
    case Kind::hedge:
        if (z > sheet.height + 0.08 * (noise(x * 6, 1, sd) - 0.5)) {
            return {};
        }
        return {sheet.colour * static_cast<float>(0.4 + 0.9 * noise(x * 22, z * 22, sd) *
                                                            (0.5 + 0.5 * noise(x * 3, z * 3, sd + 1))),
                1};
    case Kind::fence: {
        if (z > sheet.height) {
            return {};
        }
        const double post = std::abs(std::remainder(x + 0.3, 2.4));
        const bool rail =
            std::abs(z - sheet.height * 0.9) < 0.045 || std::abs(z - sheet.height * 0.5) < 0.045;
        if (post < 0.06 || rail) {
            return {sheet.colour * static_cast<float>(0.8 + 0.3 * noise(x * 3, z * 20, sd)), 1};
        }
        return {};
    }
    case Kind::net: {
        if (z > sheet.height) {
            return {};
        }
        const double pole = std::abs(std::remainder(x + sheet.at, 6.0));
        if (pole < 0.07) {
            return {fromDisplay(90, 92, 90), 1};
        }
        const double grid = std::min(std::abs(std::remainder(x, 0.06)), std::abs(std::remainder(z, 0.06)));
        return {sheet.colour, grid < 0.0035 ? 0.75 : 0.06};
    }
    case Kind::wall: {
        if (z > sheet.height) {
            return {};
        }
        const double course = std::floor(z / 0.22);
        const double seam = std::min(std::abs(std::remainder(z, 0.22)),
                                     std::abs(std::remainder(x + 0.3 * std::fmod(course, 2.0), 0.6)));
        const double k = (seam < 0.006 ? 0.7 : 1.0) * (0.86 + 0.2 * clouds(x * 2, z * 2, sd));
        const double skirting = z < 0.12 ? 0.5 : 1.0;
        return {sheet.colour * static_cast<float>(k * skirting), 1};
    }
    case Kind::building: {
        const double left = sheet.at - 7, right = sheet.at + 7;
        if (x < left || x > right || z > sheet.height + (std::min(x - left, right - x)) * 0.25) {
            return {};
        }
        if (z > sheet.height) {
            return {fromDisplay(120, 74, 60) * static_cast<float>(0.8 + 0.3 * noise(x * 6, z * 12, sd)), 1};
        }
        const bool window =
            std::abs(std::remainder(x, 2.0)) < 0.45 && std::fmod(z, 2.6) > 1.0 && std::fmod(z, 2.6) < 2.1;
        return {window ? fromDisplay(50, 60, 74)
                       : sheet.colour * static_cast<float>(0.9 + 0.15 * noise(x, z, sd)),
                1};
    }
    case Kind::posts: {
        if (z > sheet.height) {
            return {};
        }
        const double p = std::abs(std::remainder(x - sheet.at, 2.7));
        return p < 0.055 ? Painted{sheet.colour * static_cast<float>(0.7 + 6.0 * (0.055 - p)), 1} : Painted{};
    }
    case Kind::people: {
        Painted out;
        for (int i = 0; i < 7; ++i) {
            const double px = sheet.at + (cell(i, 1, sd) - 0.5) * 26, h = 1.55 + 0.35 * cell(i, 2, sd);
            const double dx = x - px;
            if (std::abs(dx) > 0.4 || z > h) {
                continue;
            }
            const Rgb shirt{static_cast<float>(0.1 + 0.6 * cell(i, 3, sd)),
                            static_cast<float>(0.1 + 0.5 * cell(i, 4, sd)),
                            static_cast<float>(0.1 + 0.6 * cell(i, 5, sd))};
            const double head = std::hypot(dx, z - h * 0.93) / (0.065 * h);
            if (head < 1) {
                out = {head < 1 && z > h * 0.95 ? fromDisplay(60, 44, 36) : fromDisplay(204, 158, 128), 1};
            } else if (z > h * 0.5 && z < h * 0.83 && std::abs(dx) < 0.125 * h * (0.85 + 0.2 * (z / h))) {
                out = {shirt, 1};
            } else if (z <= h * 0.5 && std::abs(std::abs(dx) - 0.05 * h) < 0.045 * h) {
                out = {Rgb{shirt.b * 0.25f, shirt.b * 0.25f, shirt.r * 0.3f}, 1};
            }
        }
        return out;
    }
    case Kind::divider: {
        if (z > sheet.height || std::abs(std::remainder(x - sheet.at, 3.2)) > 1.15) {
            return {};
        }
        const bool frame = z > sheet.height - 0.06 || std::abs(std::remainder(x - sheet.at, 3.2)) > 1.09;
        return {frame ? fromDisplay(84, 84, 88)
                      : sheet.colour * static_cast<float>(0.9 + 0.15 * noise(x * 3, z * 3, sd)),
                1};
    }
    case Kind::flags: {
        Painted out;
        for (int i = 0; i < 5; ++i) {
            const double dx = x - (cell(i, 8, sd) - 0.5) * 90;
            if (std::abs(dx) < 0.05 && z < 2.6) {
                out = {fromDisplay(230, 230, 220), 1};
            } else if (dx > 0 && dx < 1.0 && z > 1.8 && z < 2.6) {
                out = {fromDisplay(206, 48, 40), 1};
            }
        }
        return out;
    }
    }
    return {};
}

struct World {
    V3 heading, side; ///< level axes of the view
    std::vector<Sheet> sheets;
    Rgb grass, grassDark, mat, matEdge, horizon, zenith, floor;
    double cloudiness = 0.5, stripe = 0, haze = 0.2;
    bool indoor = false, onMat = true;
    std::uint64_t seed = 1;
    marks::Hand hand = marks::Hand::right;
    Light light;
};

Rgb groundColour(const World& w, V3 p, double distance) {
    const double fade = std::clamp(6.0 / distance, 0.0, 1.0); // far texture melts away instead of flickering
    Rgb c;
    const double cx = w.hand == marks::Hand::right ? -p.x : p.x; // along the target line
    const bool inMat = w.onMat && std::abs(cx) < 0.95 && p.y > -0.75 && p.y < 1.45;
    if (inMat) {
        const bool edge = std::abs(cx) > 0.91 || p.y < -0.71 || p.y > 1.41;
        c = (edge ? w.matEdge : w.mat) *
            static_cast<float>(0.86 + 0.28 * (noise(p.x * 160, p.y * 160, w.seed) - 0.5) * fade +
                               0.16 * clouds(p.x * 4, p.y * 4, w.seed + 1));
        const bool strip = p.y > 0.62 && p.y < 1.02;
        if (!edge && strip) {
            c = c * 0.86f;
        }
        if (!edge && std::abs(p.y - 0.62) < 0.008) {
            c = fromDisplay(226, 226, 220);
        }
    } else if (w.indoor) {
        c = w.floor * static_cast<float>(0.9 + 0.2 * clouds(p.x * 3, p.y * 3, w.seed + 3) +
                                         0.12 * (noise(p.x * 90, p.y * 90, w.seed) - 0.5) * fade);
    } else {
        const double blades = noise(p.x * 75, p.y * 75, w.seed) - 0.5,
                     tuft = noise(p.x * 17, p.y * 17, w.seed + 1) - 0.5;
        const double patch = clouds(p.x * 0.45, p.y * 0.45, w.seed + 2);
        c = mix(w.grass, w.grassDark, static_cast<float>(std::clamp(1.6 * patch - 0.3, 0.0, 1.0)));
        c = c * static_cast<float>(1 + 0.55 * blades * fade + 0.28 * tuft * std::min(1.0, 2 * fade));
        if (w.stripe > 0 && std::fmod(std::abs(p.x * 0.8 + p.y * 0.2), 2 * w.stripe) < w.stripe) {
            c = c * 0.87f;
        }
        // Old divots and stray leaves: corners for whoever wants to hold on to the ground.
        const double divot = noise(p.x * 3.1, p.y * 6.0, w.seed + 9);
        if (divot > 0.86 && distance < 25) {
            c = mix(c, fromDisplay(128, 104, 74), static_cast<float>((divot - 0.86) * 5));
        }
    }
    return c;
}

Rgb lookAlong(const World& w, const Camera& camera, V3 d, bool& bare) {
    bare = false;
    Rgb sum;
    float left = 1;
    const double along = dot(d, w.heading);
    for (const Sheet& sheet : w.sheets) {
        if (along < 1e-3) {
            break;
        }
        const V3 p = camera.position + d * (sheet.depth / along);
        if (p.z < 0) {
            break;
        }
        const Painted hit = paint(sheet, dot(p, w.side), p.z);
        if (hit.cover > 0) {
            Rgb c = hit.colour;
            const double foot = sheet.depth < 40 ? 0.7 + 0.3 * std::min(1.0, p.z / 0.4) : 1.0;
            c = c * (w.light.sun * 0.55f + w.light.sky) * static_cast<float>(foot);
            c = mix(c, w.horizon,
                    static_cast<float>(w.indoor ? 0 : w.haze * (1 - std::exp(-sheet.depth / 120))));
            sum = sum + c * (left * static_cast<float>(hit.cover));
            left *= 1 - static_cast<float>(hit.cover);
            if (left < 0.01f) {
                return sum;
            }
        }
    }
    if (d.z < -1e-6) {
        const double t = -camera.position.z / d.z;
        const V3 p = camera.position + d * t;
        const double distance = length(p - camera.position);
        Rgb c = groundColour(w, p, distance);
        c = c * (w.light.sun * static_cast<float>(std::max(0.15, w.light.toSun.z)) + w.light.sky);
        if (!w.indoor) {
            c = mix(c, w.horizon * 0.8f, static_cast<float>(w.haze * (1 - std::exp(-distance / 150))));
        }
        bare = left > 0.6f;
        return sum + c * left;
    }
    if (w.indoor) { // a ceiling with lamps
        const double t = (3.4 - camera.position.z) / std::max(1e-3, d.z);
        const V3 p = camera.position + d * t;
        const bool lamp =
            std::abs(std::remainder(p.x, 2.0)) < 0.12 && std::abs(std::remainder(p.y, 1.6)) < 0.6;
        return sum + (lamp ? Rgb{1.6f, 1.6f, 1.5f} : fromDisplay(140, 140, 142) * w.light.sky) * left;
    }
    const double up = unit(d).z;
    Rgb c = mix(w.horizon, w.zenith, static_cast<float>(std::clamp(up * 2.2, 0.0, 1.0)));
    const double q = clouds(d.x / (d.z + 0.12) * 0.9 + 7, d.y / (d.z + 0.12) * 0.9, w.seed + 20);
    c = mix(c, Rgb{0.92f, 0.93f, 0.95f},
            static_cast<float>(std::clamp((q - 1 + w.cloudiness) * 2.4, 0.0, 0.9)));
    return sum + c * left;
}

void paintStill(Backdrop& out, const Mesh& mesh, const std::vector<Texture>& textures, const Camera& camera,
                const Light& light, marks::Hand hand) {
    std::vector<float> gloss(mesh.vertices.size(), 0.0f);
    std::vector<Corner> corners;
    see(mesh, camera, light, hand, gloss, corners);
    Raster raster;
    std::vector<Raster::Pixel> sum(static_cast<std::size_t>(out.width) * static_cast<std::size_t>(out.height),
                                   Raster::Pixel{0, 0, 0, 0});
    const int n = 6;
    for (int i = 0; i < n; ++i) {
        raster.reset(0, 0, out.width, out.height);
        raster.draw(corners, mesh.triangles, textures, static_cast<float>((i + 0.5) / n - 0.5),
                    static_cast<float>(std::fmod((i + 0.5) * 0.618, 1.0) - 0.5));
        for (int y = 0; y < out.height; ++y) {
            const Raster::Pixel* row = raster.row(y);
            Raster::Pixel* into =
                sum.data() + static_cast<std::size_t>(y) * static_cast<std::size_t>(out.width);
            for (int x = 0; x < out.width; ++x) {
                if (row[x].cover > 0) {
                    into[x].r += row[x].r;
                    into[x].g += row[x].g;
                    into[x].b += row[x].b;
                    into[x].cover += 1;
                }
            }
        }
    }
    for (std::size_t i = 0; i < sum.size(); ++i) {
        if (sum[i].cover > 0) {
            const float k = sum[i].cover / static_cast<float>(n);
            out.colour[i] =
                out.colour[i] * (1 - k) + Rgb{sum[i].r, sum[i].g, sum[i].b} * (1.0f / static_cast<float>(n));
            if (k > 0.5f) {
                out.ground[i] = 0;
            }
        }
    }
}

} // namespace

Backdrop paintBackdrop(const Camera& camera, const Surroundings& around, const Light& light,
                       marks::Hand hand) {
    Random r(around.seed ^ 0xBACDull);
    World w;
    w.seed = around.seed;
    w.hand = hand;
    w.light = light;
    w.heading = unit({camera.forward.x, camera.forward.y, 0});
    w.side = cross(w.heading, V3{0, 0, 1});
    w.haze = around.haze;
    w.indoor = around.place == Place::indoor;
    w.onMat = around.mat;
    const double dry = r.uniform(0, 1);
    w.grass = mix(fromDisplay(96, 134, 62), fromDisplay(142, 146, 84), static_cast<float>(0.7 * dry));
    w.grassDark = mix(fromDisplay(66, 106, 48), fromDisplay(118, 122, 66), static_cast<float>(0.7 * dry));
    w.mat = r.chance(0.6)   ? fromDisplay(62, 118, 72)
            : r.chance(0.5) ? fromDisplay(84, 92, 96)
                            : fromDisplay(46, 92, 60);
    w.matEdge = r.chance(0.5) ? fromDisplay(40, 40, 42) : w.mat * 0.6f;
    w.floor = r.chance(0.5) ? fromDisplay(110, 108, 104) : fromDisplay(84, 78, 72);
    const bool grey = light.softness > 0.6;
    w.horizon = grey ? Rgb{0.66f, 0.68f, 0.71f} : Rgb{0.62f, 0.74f, 0.88f};
    w.zenith = grey ? Rgb{0.52f, 0.55f, 0.60f} : Rgb{0.18f, 0.36f, 0.72f};
    w.cloudiness = grey ? 0.75 : r.uniform(0.25, 0.6);
    w.stripe = r.chance(0.35) ? r.uniform(1.2, 2.4) : 0;
    const Rgb leaf = mix(fromDisplay(58, 86, 44), fromDisplay(96, 92, 48), static_cast<float>(r.uniform()));
    const auto sheet = [&](Kind kind, double depth, double height, Rgb colour) {
        w.sheets.push_back(
            {kind, depth, height, r.uniform(-6, 6), colour, around.seed * 31 + w.sheets.size()});
    };
    const double behind = length(V3{camera.position.x, camera.position.y, 0}); // the player's own depth
    switch (around.place) {
    case Place::range:
        sheet(Kind::trees, behind + r.uniform(60, 140), r.uniform(9, 16), leaf);
        if (r.chance(0.6)) {
            sheet(Kind::net, behind + r.uniform(14, 40), r.uniform(6, 14), fromDisplay(40, 52, 44));
        }
        if (r.chance(0.6)) {
            sheet(Kind::posts, behind + r.uniform(5, 12), r.uniform(1.0, 3.5), fromDisplay(150, 150, 146));
        }
        if (r.chance(0.7)) {
            sheet(Kind::people, behind + r.uniform(9, 22), 2, {});
        }
        sheet(Kind::flags, behind + r.uniform(60, 90), 3, {});
        if (r.chance(0.4)) {
            sheet(Kind::building, behind + r.uniform(40, 80), r.uniform(3, 6), fromDisplay(206, 198, 180));
        }
        break;
    case Place::parkland:
        sheet(Kind::trees, behind + r.uniform(25, 60), r.uniform(8, 15), leaf);
        sheet(Kind::trees, behind + r.uniform(70, 120), r.uniform(10, 18), leaf * 0.8f);
        if (r.chance(0.6)) {
            sheet(Kind::hedge, behind + r.uniform(8, 18), r.uniform(0.9, 1.8), leaf);
        }
        if (r.chance(0.5)) {
            sheet(Kind::fence, behind + r.uniform(6, 15), r.uniform(0.9, 1.3), fromDisplay(196, 188, 172));
        }
        if (r.chance(0.5)) {
            sheet(Kind::people, behind + r.uniform(12, 30), 2, {});
        }
        if (r.chance(0.4)) {
            sheet(Kind::building, behind + r.uniform(30, 60), r.uniform(3, 6), fromDisplay(216, 206, 190));
        }
        break;
    case Place::bays:
        sheet(Kind::divider, behind + r.uniform(2.2, 3.0), r.uniform(0.8, 1.3),
              r.chance(0.5) ? fromDisplay(66, 92, 74) : fromDisplay(96, 100, 110));
        sheet(Kind::posts, behind + r.uniform(3.0, 4.0), 3.2, fromDisplay(170, 168, 160));
        if (r.chance(0.7)) {
            sheet(Kind::people, behind + r.uniform(5, 9), 2, {});
        }
        sheet(Kind::trees, behind + r.uniform(40, 100), r.uniform(8, 14), leaf);
        if (r.chance(0.5)) {
            sheet(Kind::net, behind + r.uniform(10, 30), r.uniform(5, 12), fromDisplay(44, 56, 46));
        }
        break;
    case Place::indoor:
        sheet(Kind::wall, behind + r.uniform(2.2, 3.6), 3.4,
              r.chance(0.5) ? fromDisplay(150, 148, 142) : fromDisplay(96, 104, 118));
        if (r.chance(0.6)) {
            sheet(Kind::net, behind + r.uniform(1.5, 2.0), 3.4, fromDisplay(24, 26, 26));
        }
        if (r.chance(0.5)) {
            sheet(Kind::posts, behind + 1.9, 3.4, fromDisplay(60, 60, 64));
        }
        break;
    }
    std::sort(w.sheets.begin(), w.sheets.end(),
              [](const Sheet& a, const Sheet& b) { return a.depth < b.depth; });

    Backdrop out;
    out.width = camera.width;
    out.height = camera.height;
    out.colour.resize(static_cast<std::size_t>(out.width) * static_cast<std::size_t>(out.height));
    out.ground.resize(out.colour.size());
    const auto rows = [&](int from, int to) {
        for (int y = from; y < to; ++y) {
            for (int x = 0; x < out.width; ++x) {
                Rgb sum;
                int bareCount = 0;
                for (int s = 0; s < 4; ++s) {
                    bool bare = false;
                    const Rgb c = lookAlong(
                        w, camera, camera.ray(x + 0.25 + 0.5 * (s & 1), y + 0.25 + 0.5 * (s >> 1)), bare);
                    sum = sum + c;
                    bareCount += bare ? 1 : 0;
                }
                const std::size_t i = static_cast<std::size_t>(y) * static_cast<std::size_t>(out.width) +
                                      static_cast<std::size_t>(x);
                out.colour[i] = sum * 0.25f;
                out.ground[i] = bareCount >= 2 ? 1 : 0;
            }
        }
    };
    std::thread second(rows, out.height / 2, out.height);
    rows(0, out.height / 2);
    second.join();

    // Things with volume that stand still.
    Look look = randomLook(around.seed + 4711, r.chance(0.4), false);
    std::vector<Texture> textures = makeTextures(look);
    Mesh mesh;
    if (around.stick) {
        addBar(mesh, kStickNear, kStickFar, 0.006, 0.006, 8, 6, hatSurface);
        textures[hatSurface].fill(4, 4,
                                  r.chance(0.5) ? fromDisplay(236, 120, 30) : fromDisplay(230, 226, 60));
    }
    if (around.clutter) {
        const double bx = r.chance(0.5) ? r.uniform(1.2, 1.7) : -r.uniform(1.3, 1.8),
                     by = r.uniform(-1.4, -0.5);
        addBar(mesh, {bx, by, 0.02}, {bx + 0.12, by - 0.22, 0.85}, 0.13, 0.14, 16, 6, trouserSurface); // bag
        for (int i = 0; i < 6; ++i) {
            const double a = i;
            const V3 from{bx + 0.12 + 0.05 * std::cos(a), by - 0.22 + 0.05 * std::sin(a), 0.8};
            const V3 to{bx + 0.17 + 0.10 * std::cos(a), by - 0.30 + 0.10 * std::sin(a), 1.04 + 0.03 * i};
            addBar(mesh, from, to, 0.005, 0.005, 6, 1, shaftSurface);
            addEllipsoid(mesh, to, {0.03, 0, 0}, {0, 0.02, 0}, {0, 0, 0.035}, 8, 6, headSurface);
        }
        const double kx = r.uniform(-0.7, 0.7), ky = r.uniform(1.5, 1.9);
        const int balls = r.whole(0, 9);
        for (int i = 0; i < balls; ++i) {
            addEllipsoid(mesh, {kx + r.uniform(-0.35, 0.35), ky + r.uniform(-0.1, 0.2), kBallRadius},
                         {kBallRadius, 0, 0}, {0, kBallRadius, 0}, {0, 0, kBallRadius}, 10, 8, ballSurface);
        }
    }
    if (around.neighbour) {
        const Body body = adultBody(r.uniform(1.62, 1.86), r.chance(0.4), r.uniform(0.9, 1.15));
        const ClubSize club = clubSize({marks::ClubKind::iron, 7}, body.stature);
        SwingParams p;
        const Motion motion(body, club, p, around.seed + 5);
        const std::size_t before = mesh.vertices.size();
        buildFigure(mesh, motion.at(-0.1), body, club, look);
        const V3 shift{r.chance(0.5) ? r.uniform(1.3, 2.2) : -r.uniform(1.3, 2.2), -r.uniform(3.0, 5.5), 0};
        for (std::size_t i = before; i < mesh.vertices.size(); ++i) {
            mesh.vertices[i].p += shift;
        }
    }
    if (!mesh.triangles.empty()) {
        paintStill(out, mesh, textures, camera, light, hand);
    }
    return out;
}

} // namespace plumbmark::demo
