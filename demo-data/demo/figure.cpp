// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "demo/figure.h"

#include <algorithm>
#include <cmath>

namespace plumbmark::demo {
namespace {

double smooth(double a, double b, double x) {
    const double t = std::clamp((x - a) / (b - a), 0.0, 1.0);
    return t * t * (3 - 2 * t);
}

/// Half breadth, half depth and bulge of the trunk at share s from the hip joints (0) to the shoulder joints
/// (1), in statures. Breadths: Heinz et al. 2003 (bitrochanteric 0.183 / 0.191, bi-iliac 0.158 / 0.167),
/// depths from memory.
struct TrunkRow {
    double s, side, depth, bulge;
};
constexpr std::array<TrunkRow, 11> kMan{{{-0.20, 0.080, 0.060, -0.10},
                                         {-0.06, 0.092, 0.064, -0.22},
                                         {0.06, 0.092, 0.063, -0.20},
                                         {0.20, 0.085, 0.060, -0.04},
                                         {0.36, 0.079, 0.058, 0.06},
                                         {0.54, 0.081, 0.060, 0.04},
                                         {0.72, 0.088, 0.064, 0.04},
                                         {0.86, 0.092, 0.062, 0.02},
                                         {0.97, 0.088, 0.050, 0},
                                         {1.06, 0.058, 0.040, 0},
                                         {1.13, 0.034, 0.034, 0}}};
constexpr std::array<TrunkRow, 11> kWoman{{{-0.20, 0.084, 0.062, -0.12},
                                           {-0.06, 0.097, 0.066, -0.26},
                                           {0.06, 0.096, 0.064, -0.22},
                                           {0.20, 0.084, 0.058, -0.04},
                                           {0.36, 0.072, 0.051, 0.02},
                                           {0.54, 0.074, 0.053, 0.04},
                                           {0.72, 0.080, 0.060, 0.28},
                                           {0.86, 0.083, 0.056, 0.10},
                                           {0.97, 0.080, 0.045, 0},
                                           {1.06, 0.052, 0.036, 0},
                                           {1.13, 0.030, 0.031, 0}}};

TrunkRow trunkRow(double s, bool woman) {
    const auto& table = woman ? kWoman : kMan;
    if (s <= table.front().s) {
        return table.front();
    }
    for (std::size_t i = 1; i < table.size(); ++i) {
        if (s <= table[i].s) {
            const double k = smooth(table[i - 1].s, table[i].s, s);
            return {s, lerp(table[i - 1].side, table[i].side, k), lerp(table[i - 1].depth, table[i].depth, k),
                    lerp(table[i - 1].bulge, table[i].bulge, k)};
        }
    }
    return table.back();
}

/// Cross-section of the trunk at share s.
Ring trunkRing(const Pose& pose, const Body& body, double s, double loose) {
    const double h = body.stature;
    const TrunkRow row = trunkRow(s, body.woman);
    const V3 p0 = pose.midHip, p3 = lerp(pose.shoulder[0], pose.shoulder[1], 0.5);
    const V3 p1 = p0 + pose.pelvis.up * (0.36 * body.trunk), p2 = p3 - pose.thorax.up * (0.36 * body.trunk);
    Ring ring;
    if (s < 0) {
        ring.centre = p0 + pose.pelvis.up * (s * body.trunk);
    } else if (s > 1) {
        ring.centre =
            lerp(p3, pose.neckBase, 0.5 * smooth(1, 1.13, s)) + pose.thorax.up * ((s - 1) * body.trunk * 0.6);
    } else {
        const double q = 1 - s;
        ring.centre = p0 * (q * q * q) + p1 * (3 * q * q * s) + p2 * (3 * q * s * s) + p3 * (s * s * s);
    }
    const double k = smooth(0.05, 0.85, s);
    V3 up = unit(lerp(pose.pelvis.up, pose.thorax.up, k));
    V3 side = lerp(pose.pelvis.lead, pose.thorax.lead, k);
    const V3 girdle = unit(pose.shoulder[0] - pose.shoulder[1]);
    side = lerp(side, girdle, smooth(0.78, 1.0, s));
    ring.side = across(side, up);
    V3 front = lerp(pose.pelvis.front, pose.thorax.front, k);
    front = front - up * dot(front, up);
    ring.front = across(front, ring.side);
    const double belly = s > 0.1 && s < 0.75 ? 1 + (body.girth - 1) * 0.9 : 1.0;
    ring.sideRadius = row.side * h * (1 + (body.girth - 1) * 0.75) * loose;
    ring.frontRadius = row.depth * h * body.girth * belly * loose;
    ring.bulge = row.bulge;
    ring.box = 0.88;
    return ring;
}

struct Profile {
    double at, radius;
};

/// A limb of two bones with a rounded joint. Positions 0..1 first bone, 1..2 second; radii in metres.
void addLimb(Mesh& mesh, V3 a, V3 b, V3 c, V3 frontHint, const std::vector<Profile>& profile, int segments,
             int texture, double v0, double v1, double flatness = 1.0) {
    static thread_local std::vector<Ring> rings;
    rings.clear();
    const V3 d0 = unit(b - a), d1 = unit(c - b);
    for (const Profile& p : profile) {
        const double t = p.at;
        Ring ring;
        ring.centre = t <= 1 ? lerp(a, b, t) : lerp(b, c, t - 1);
        const double k = smooth(0.80, 1.20, t);
        const V3 d = unit(lerp(d0, d1, k));
        ring.front = across(frontHint, d);
        ring.side = cross(d, ring.front);
        ring.sideRadius = p.radius;
        ring.frontRadius = p.radius * flatness;
        rings.push_back(ring);
    }
    addTube(mesh, rings, segments, texture, v0, v1);
}

struct HeadShape {
    double half, side, depth;
};
HeadShape headShape(const Body& body) {
    const double k = body.headHeight / 0.130;
    return {body.headHeight / 2, 0.0435 * k, 0.0545 * k};
}

/// A point of the head's surface; lat and lon in radians, lon 90 degrees = front.
V3 headPoint(const Pose& pose, const HeadShape& shape, double lat, double lon, double grow) {
    const double cl = std::cos(lat), sl = std::sin(lat);
    double x = cl * std::cos(lon), y = cl * std::sin(lon);
    const double z = sl;
    // Jaw: narrower and further forward below the middle; flat back of the neck.
    if (z < 0) {
        const double t = -z;
        x *= 1 - 0.30 * t * t;
        y = y > 0 ? y * (1 - 0.08 * t) + 0.10 * t * t : y * (1 - 0.38 * t);
    } else {
        x *= 1 + 0.10 * z * (1 - z) * 2;
        y *= 1 + 0.06 * z;
    }
    const double front = lon - std::numbers::pi / 2;
    const auto bump = [&](double atLat, double atLon, double wLat, double wLon) {
        const double p = (lat - atLat) / wLat, q = (front - atLon) / wLon;
        return std::exp(-0.5 * (p * p + q * q));
    };
    double out = 0;
    out += 0.235 * bump(-0.24, 0, 0.15, 0.11);                                           // nose
    out += 0.10 * bump(0.0, 0, 0.22, 0.09);                                              // bridge
    out -= 0.075 * bump(0.03, 0.40, 0.10, 0.16) + 0.075 * bump(0.03, -0.40, 0.10, 0.16); // eyes
    out += 0.05 * bump(0.22, 0, 0.12, 0.5);                                              // brow
    out += 0.05 * bump(-0.62, 0, 0.10, 0.22);                                            // lips
    out += 0.07 * bump(-1.05, 0, 0.18, 0.35);                                            // chin
    y += out;
    return pose.headCentre + pose.head.lead * (x * shape.side * grow) +
           pose.head.front * (y * shape.depth * grow) + pose.head.up * (z * shape.half * grow);
}

template <class Grow>
void addHeadGrid(Mesh& mesh, const Pose& pose, const HeadShape& shape, int around, int along, double from,
                 double to, int texture, Grow grow) {
    const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
    const auto stride = static_cast<std::uint32_t>(around + 1);
    for (int r = 0; r <= along; ++r) {
        const double lat = from + (to - from) * r / along;
        for (int s = 0; s <= around; ++s) {
            const double lon = 2 * std::numbers::pi * s / around;
            Vertex v;
            v.p = headPoint(pose, shape, lat, lon, grow(lat, lon));
            v.u = static_cast<float>(s) / static_cast<float>(around);
            v.v = static_cast<float>(lat / std::numbers::pi + 0.5);
            mesh.vertices.push_back(v);
        }
    }
    const auto at = [&](int r, int c) -> Vertex& {
        return mesh.vertices[first + static_cast<std::uint32_t>(r) * stride + static_cast<std::uint32_t>(c)];
    };
    for (int r = 0; r <= along; ++r) {
        for (int c = 0; c <= around; ++c) {
            const V3 up = at(std::min(along, r + 1), c).p - at(std::max(0, r - 1), c).p;
            const V3 round = at(r, c == around ? 1 : c + 1).p - at(r, c == 0 ? around - 1 : c - 1).p;
            V3 n = cross(round, up);
            const V3 outward = at(r, c).p - pose.headCentre;
            n = length(n) > 1e-10 ? unit(n) : unit(outward);
            at(r, c).n = dot(n, outward) < 0 ? -n : n;
        }
    }
    for (int r = 0; r < along; ++r) {
        for (int c = 0; c < around; ++c) {
            const std::uint32_t i =
                first + static_cast<std::uint32_t>(r) * stride + static_cast<std::uint32_t>(c);
            mesh.triangles.push_back({i, i + 1, i + stride, static_cast<std::uint16_t>(texture)});
            mesh.triangles.push_back(
                {i + 1, i + stride + 1, i + stride, static_cast<std::uint16_t>(texture)});
        }
    }
}

/// True where hair grows, soft at the edge.
double hairHere(double lat, double lon, bool longHair) {
    const double front =
        std::abs(std::remainder(lon - std::numbers::pi / 2, 2 * std::numbers::pi)); // 0 front .. pi back
    // Hairline: high on the forehead, down to the ears at the sides, to the neck at the back.
    const double line = front < 0.9   ? 0.62
                        : front < 1.5 ? lerp(0.62, 0.05, smooth(0.9, 1.5, front))
                                      : lerp(0.05, longHair ? -0.95 : -0.6, smooth(1.5, 2.2, front));
    return smooth(line - 0.08, line + 0.08, lat);
}

void addHead(Mesh& mesh, const Pose& pose, const Body& body, const Look& look) {
    const double h = body.stature;
    HeadShape shape = headShape(body);
    shape.side *= h;
    shape.depth *= h;
    const double pi = std::numbers::pi;
    // Neck
    const V3 up = unit(pose.headCentre - pose.neckBase);
    const V3 front = across(pose.thorax.front, up), side = cross(front, up);
    const double neckRadius = (body.woman ? 0.0275 : 0.032) * h * (0.6 + 0.4 * body.girth);
    const V3 top =
        pose.headCentre - pose.head.front * (0.18 * shape.depth) - pose.head.up * (0.35 * shape.half);
    addTube(mesh,
            {{pose.neckBase - up * (0.02 * h), side, front, neckRadius * 1.25, neckRadius * 1.2},
             {lerp(pose.neckBase, top, 0.4), side, front, neckRadius, neckRadius * 1.05},
             {top, side, front, neckRadius, neckRadius * 1.1}},
            14, skinSurface);
    addHeadGrid(mesh, pose, shape, 32, 24, -pi / 2, pi / 2, faceSurface, [](double, double) { return 1.0; });
    if (!look.bald) {
        addHeadGrid(mesh, pose, shape, 28, 16, -1.2, pi / 2, hairSurface, [&](double lat, double lon) {
            return 0.93 + (look.longHair ? 0.165 : 0.145) * hairHere(lat, lon, look.longHair);
        });
    }
    if (look.longHair) { // a tail that hangs from the back of the head
        const V3 root =
            pose.headCentre - pose.head.front * (0.95 * shape.depth) + pose.head.up * (0.1 * shape.half);
        const V3 mid = root - pose.head.front * (0.03 * h) - V3{0, 0, 0.04 * h};
        const V3 end = root - pose.head.front * (0.015 * h) - V3{0, 0, 0.115 * h};
        const V3 d = unit(end - root), s0 = across(pose.head.lead, d), f0 = cross(d, s0);
        addTube(mesh,
                {{root, s0, f0, 0.012 * h, 0.012 * h},
                 {mid, s0, f0, 0.017 * h, 0.015 * h},
                 {end, s0, f0, 0.006 * h, 0.006 * h}},
                10, hairSurface);
    }
    for (const double side2 : {1.0, -1.0}) { // ears
        const V3 c = pose.headCentre + pose.head.lead * (side2 * shape.side * 1.03) -
                     pose.head.front * (0.06 * shape.depth) - pose.head.up * (0.06 * shape.half);
        addEllipsoid(mesh, c, pose.head.lead * (0.0055 * h), pose.head.front * (0.010 * h),
                     pose.head.up * (0.018 * h), 8, 6, skinSurface);
    }
    const double brimWidth = shape.side * 0.92;
    switch (look.hatKind) {
    case Hat::none:
        break;
    case Hat::cap:
    case Hat::visor: {
        if (look.hatKind == Hat::cap) {
            addHeadGrid(mesh, pose, shape, 28, 10, 0.40, pi / 2, hatSurface,
                        [](double lat, double) { return 1.13 - 0.02 * lat; });
        } else {
            addHeadGrid(mesh, pose, shape, 28, 3, 0.40, 0.72, hatSurface,
                        [](double, double) { return 1.12; });
        }
        const V3 c =
            pose.headCentre + pose.head.up * (0.43 * shape.half) + pose.head.front * (1.22 * shape.depth);
        addEllipsoid(mesh, c, pose.head.lead * brimWidth,
                     unit(pose.head.front + pose.head.up * 0.05) * (0.52 * shape.depth),
                     pose.head.up * (0.003 * h), 18, 6, hatSurface);
        break;
    }
    case Hat::bucket: {
        addHeadGrid(mesh, pose, shape, 28, 10, 0.36, pi / 2, hatSurface,
                    [](double lat, double) { return 1.13 - 0.02 * lat; });
        const V3 c = pose.headCentre + pose.head.up * (0.42 * shape.half);
        const V3 down = pose.head.up * (-0.03 * h);
        addTube(mesh,
                {{c, pose.head.lead, pose.head.front, shape.side * 1.1, shape.depth * 1.08},
                 {c + down, pose.head.lead, pose.head.front, shape.side * 1.75, shape.depth * 1.62}},
                28, hatSurface, 0, 1, false, false);
        break;
    }
    case Hat::beanie:
        addHeadGrid(mesh, pose, shape, 28, 12, 0.30, pi / 2, hatSurface,
                    [](double lat, double) { return 1.12 + 0.05 * smooth(0.9, 1.5, lat); });
        break;
    }
}

void addShoe(Mesh& mesh, const Foot& foot, const Body& body, int texture) {
    const double h = body.stature;
    const V3 fwd = foot.forward;
    const V3 flat = unit({foot.toe.x - foot.ball.x, foot.toe.y - foot.ball.y, 0});
    const V3 side = unit(cross(flat, V3{0, 0, 1}));
    const V3 upHind = unit(cross(side, fwd));
    const double hind = length(foot.ball - foot.heel);
    const auto ring = [&](double along, double width, double height) {
        const V3 base = foot.heel + fwd * (along * hind);
        return Ring{base + upHind * (height / 2), side, upHind, width * h, height / 2, 0.75};
    };
    const auto front = [&](double along, double width, double height) {
        return Ring{foot.ball + flat * along + V3{0, 0, height / 2 - 0.002},
                    side,
                    V3{0, 0, 1},
                    width * h,
                    height / 2,
                    0.8};
    };
    const double toe = length(foot.toe - foot.ball);
    addTube(mesh,
            {ring(-0.03, 0.012, 0.030 * h), ring(0.03, 0.0205, 0.043 * h), ring(0.18, 0.0225, 0.052 * h),
             ring(0.40, 0.0225, 0.050 * h), ring(0.62, 0.0245, 0.040 * h), ring(0.84, 0.0275, 0.031 * h),
             front(0.0, 0.029, 0.026 * h), front(0.5 * toe, 0.026, 0.021 * h),
             front(0.86 * toe, 0.019, 0.016 * h), front(1.02 * toe, 0.008, 0.010 * h)},
            14, texture);
    // Sole edge
    const auto soleHind = [&](double along, double width) {
        return Ring{foot.heel + fwd * (along * hind) + upHind * 0.003, side, upHind, width * h, 0.007};
    };
    const auto soleFront = [&](double along, double width) {
        return Ring{foot.ball + flat * along - V3{0, 0, 0.006}, side, V3{0, 0, 1}, width * h, 0.007};
    };
    addTube(mesh,
            {soleHind(-0.05, 0.014), soleHind(0.05, 0.0225), soleHind(0.40, 0.0235), soleHind(0.84, 0.0290),
             soleFront(0, 0.0305), soleFront(0.6 * toe, 0.026), soleFront(1.04 * toe, 0.009)},
            12, soleSurface);
}

void addHand(Mesh& mesh, const Pose& pose, const Body& body, std::size_t side, int texture) {
    const double h = body.stature;
    const V3 c = pose.handCentre[side], w = pose.wrist[side];
    const V3 along = pose.shaft;
    const V3 arm = unit(w - c);
    const V3 across1 = across(arm, along), third = cross(along, across1);
    const double k = h / 1.78 * (body.woman ? 0.9 : 1.0);
    // Palm, the wrist's bridge, four fingers round the grip, thumb along it.
    addBar(mesh, w, lerp(w, c, 0.75), 0.024 * k, 0.030 * k, 10, 2, texture);
    addEllipsoid(mesh, c + across1 * (0.006 * k), along * (0.043 * k), across1 * (0.034 * k),
                 third * (0.030 * k), 14, 8, texture);
    for (int f = 0; f < 4; ++f) {
        const V3 at = c + along * ((f - 1.5) * 0.0195 * k) - across1 * (0.020 * k);
        addEllipsoid(mesh, at, along * (0.0105 * k), across1 * (0.018 * k), third * (0.027 * k), 8, 6,
                     texture);
    }
    const V3 thumb = c + third * (side == 0 ? 0.012 : -0.012);
    addBar(mesh, thumb + across1 * (0.02 * k), thumb + along * (0.05 * k) - across1 * (0.004 * k), 0.012 * k,
           0.009 * k, 8, 2, texture);
}

void addClub(Mesh& mesh, const Pose& pose, const ClubSize& club) {
    const V3 gripEnd = pose.butt + pose.shaft * 0.27;
    addBar(mesh, pose.butt, gripEnd, 0.0135, 0.0105, 8, 4, gripSurface);
    addBar(mesh, gripEnd, pose.shaftEnd, 0.0072, club.wood ? 0.0052 : 0.0056, 8, 14, shaftSurface);
    const V3 toe = pose.toeDirection, face = pose.faceNormal;
    const V3 up = cross(toe, face) * (dot(cross(toe, face), pose.shaft) > 0 ? -1.0 : 1.0);
    if (club.wood) {
        addEllipsoid(mesh, pose.headPoint - face * 0.042 + up * 0.002, toe * 0.056, face * 0.046, up * 0.030,
                     16, 10, headSurface);
        addBox(mesh, pose.headPoint - face * 0.010, toe * 0.046, face * 0.008, up * 0.024, headSurface);
    } else {
        const double loft = club.loftDegrees * kDeg;
        const V3 tall = up * std::cos(loft) - face * std::sin(loft),
                 thick = face * std::cos(loft) + up * std::sin(loft);
        addBox(mesh, pose.headPoint - thick * 0.006 + tall * 0.004, toe * 0.037, thick * 0.006, tall * 0.024,
               headSurface);
        addBox(mesh, pose.headPoint - thick * 0.008 - tall * 0.012, toe * 0.036, thick * 0.011, tall * 0.008,
               headSurface);
        addBar(mesh, pose.shaftEnd - pose.shaft * 0.05, pose.shaftEnd, 0.0068, 0.0075, 8, 2, headSurface);
    }
}

/// Smooth noise in 0..1, repeating every `period` cells.
double softNoise(double x, double y, std::uint64_t seed, int period = 1 << 20) {
    const auto cell = [&](int i, int j) {
        const auto m = [&](int a) { return ((a % period) + period) % period; };
        std::uint64_t z = static_cast<std::uint64_t>(m(i)) * 0x9E3779B97F4A7C15ull ^
                          static_cast<std::uint64_t>(j + 100000) * 0xC2B2AE3D27D4EB4Full ^
                          seed * 0x165667B19E3779F9ull;
        z = (z ^ (z >> 29)) * 0xBF58476D1CE4E5B9ull;
        z ^= z >> 32;
        return static_cast<double>(z & 0xffffff) / 16777215.0;
    };
    const int i = static_cast<int>(std::floor(x)), j = static_cast<int>(std::floor(y));
    const double fx = x - i, fy = y - j;
    const double u = fx * fx * (3 - 2 * fx), v = fy * fy * (3 - 2 * fy);
    return lerp(lerp(cell(i, j), cell(i + 1, j), u), lerp(cell(i, j + 1), cell(i + 1, j + 1), u), v);
}

void addFolds(Texture& t, double strength, std::uint64_t seed) {
    for (int y = 0; y < t.height; ++y) {
        for (int x = 0; x < t.width; ++x) {
            const double u = static_cast<double>(x) / t.width, v = static_cast<double>(y) / t.height;
            const double n = softNoise(u * 8, v * 5 + u * 3, seed, 8) * 0.6 +
                             softNoise(u * 16, v * 12, seed + 1, 16) * 0.4;
            t.at(x, y) = t.at(x, y) * static_cast<float>(1 + strength * (n - 0.5));
        }
    }
}

void paintCloth(Texture& t, const Look& look, Pattern pattern, double scale) {
    t.fill(192, 192, look.shirt);
    for (int y = 0; y < t.height; ++y) {
        for (int x = 0; x < t.width; ++x) {
            const double u = static_cast<double>(x) / t.width, v = static_cast<double>(y) / t.height * scale;
            bool second = false;
            switch (pattern) {
            case Pattern::plain:
                break;
            case Pattern::stripes:
                second = std::fmod(v * 11, 1.0) < 0.38;
                break;
            case Pattern::band:
                second = v > 0.52 && v < 0.68;
                break;
            case Pattern::check:
                second = (std::fmod(v * 12, 1.0) < 0.25) != (std::fmod(u * 18, 1.0) < 0.25);
                break;
            case Pattern::blocks:
                second = v > 0.58;
                break;
            case Pattern::dots:
                second = std::hypot(std::fmod(u * 22, 1.0) - 0.5, std::fmod(v * 15, 1.0) - 0.5) < 0.22;
                break;
            }
            if (second) {
                t.at(x, y) = look.shirtSecond;
            }
        }
    }
}

} // namespace

Look randomLook(std::uint64_t seed, bool woman, bool child) {
    Random r(seed ^ 0x10001ull);
    Look k;
    k.seed = seed;
    const std::array<Rgb, 7> skins{fromDisplay(236, 198, 172), fromDisplay(224, 178, 146),
                                   fromDisplay(206, 156, 122), fromDisplay(178, 126, 92),
                                   fromDisplay(142, 96, 66),   fromDisplay(104, 68, 48),
                                   fromDisplay(78, 52, 40)};
    k.skin = skins[static_cast<std::size_t>(r.whole(0, 6))];
    const std::array<Rgb, 6> hairs{fromDisplay(32, 26, 22),    fromDisplay(62, 42, 28),
                                   fromDisplay(104, 72, 44),   fromDisplay(176, 140, 88),
                                   fromDisplay(150, 148, 146), fromDisplay(128, 60, 34)};
    k.hair = hairs[static_cast<std::size_t>(r.whole(0, 5))];
    const auto colour = [&](double low, double high) {
        // A hue, more or less washed out, more or less dark.
        const double hue = r.uniform(0, 6), sat = r.uniform(0.1, 0.85), light = r.uniform(low, high);
        const auto part = [&](double o) {
            return 1 - sat * std::clamp(std::abs(std::remainder(hue - o, 6.0)) - 1.0, 0.0, 1.0);
        };
        return Rgb{static_cast<float>(light * part(0)), static_cast<float>(light * part(2)),
                   static_cast<float>(light * part(4))};
    };
    k.shirt = r.chance(0.25) ? fromDisplay(232, 232, 230) : colour(0.05, 0.75);
    k.shirtSecond = r.chance(0.4) ? fromDisplay(238, 238, 238) : colour(0.04, 0.7);
    const std::array<Rgb, 7> trousers{fromDisplay(38, 42, 52),    fromDisplay(70, 72, 76),
                                      fromDisplay(190, 176, 150), fromDisplay(216, 214, 208),
                                      fromDisplay(44, 56, 92),    fromDisplay(110, 92, 72),
                                      fromDisplay(60, 74, 62)};
    k.trousers = trousers[static_cast<std::size_t>(r.whole(0, 6))];
    k.trousersSecond = k.trousers * 0.7f;
    k.checkedTrousers = r.chance(0.12);
    k.shoe = r.chance(0.6)   ? fromDisplay(228, 228, 226)
             : r.chance(0.5) ? fromDisplay(40, 40, 44)
                             : colour(0.1, 0.5);
    k.sole = r.chance(0.5) ? fromDisplay(60, 60, 62) : fromDisplay(210, 210, 208);
    k.hat = r.chance(0.35)  ? fromDisplay(236, 236, 236)
            : r.chance(0.4) ? fromDisplay(28, 30, 36)
                            : colour(0.05, 0.6);
    k.belt = r.chance(0.5)   ? fromDisplay(30, 28, 28)
             : r.chance(0.5) ? fromDisplay(222, 222, 220)
                             : fromDisplay(96, 60, 36);
    k.glove = r.chance(0.8) ? fromDisplay(236, 236, 234) : fromDisplay(40, 40, 44);
    k.socks = r.chance(0.7) ? fromDisplay(230, 230, 230) : fromDisplay(50, 50, 56);
    k.gloved = r.chance(0.75);
    k.shirtPattern = static_cast<Pattern>(r.whole(0, 8) > 5 ? 0 : r.whole(0, 5));
    k.sleeve = r.chance(0.62) ? r.uniform(0.60, 0.92) : r.chance(0.75) ? 1.94 : woman ? 0.18 : 0.7;
    k.legs = woman && r.chance(0.35)        ? Legs::skirt
             : r.chance(child ? 0.6 : 0.36) ? Legs::shorts
                                            : Legs::trousers;
    k.hatKind = static_cast<Hat>(r.chance(0.3) ? 0 : r.chance(0.65) ? 1 : r.whole(2, 4));
    k.longHair = woman && r.chance(0.7);
    k.bald = !woman && !child && r.chance(0.08);
    k.looseness = r.uniform(0.98, 1.12);
    return k;
}

std::vector<Texture> makeTextures(const Look& look) {
    std::vector<Texture> t(surfaceCount);
    const auto plain = [&](int s, Rgb c, float gloss = 0) {
        t[static_cast<std::size_t>(s)].fill(8, 8, c);
        t[static_cast<std::size_t>(s)].gloss = gloss;
    };
    t[skinSurface].fill(64, 64, look.skin);
    addFolds(t[skinSurface], 0.10, look.seed + 5);
    t[skinSurface].gloss = 0.06f;
    plain(hairSurface, look.hair, 0.05f);
    t[hairSurface].fill(128, 64, look.hair);
    for (int x = 0; x < 128; ++x) {
        for (int y = 0; y < 64; ++y) {
            t[hairSurface].at(x, y) =
                look.hair * static_cast<float>(0.7 + 0.6 * softNoise(x * 0.5, y * 0.08, look.seed + 9, 64));
        }
    }
    t[hairSurface].gloss = 0.05f;
    paintCloth(t[shirtSurface], look, look.shirtPattern, 1.0);
    addFolds(t[shirtSurface], 0.22, look.seed + 1);
    { // placket and collar
        Texture& s = t[shirtSurface];
        for (int y = s.height * 60 / 100; y < s.height * 92 / 100; ++y) {
            for (int x = -2; x <= 2; ++x) {
                s.at(s.width / 4 + x, y) = s.at(s.width / 4 + x, y) * (std::abs(x) == 2 ? 0.62f : 0.95f);
            }
        }
        for (int y = s.height * 93 / 100; y < s.height; ++y) {
            for (int x = 0; x < s.width; ++x) {
                s.at(x, y) = mix(look.shirt, look.shirtSecond, 0.35f) * 0.9f;
            }
        }
    }
    paintCloth(t[sleeveSurface], look,
               look.shirtPattern == Pattern::band || look.shirtPattern == Pattern::blocks ? Pattern::plain
                                                                                          : look.shirtPattern,
               look.sleeve > 1 ? 1.4 : 0.6);
    if (look.shirtPattern == Pattern::blocks) {
        t[sleeveSurface].fill(64, 64, look.shirtSecond);
    }
    addFolds(t[sleeveSurface], 0.26, look.seed + 2);
    t[trouserSurface].fill(96, 160, look.trousers);
    if (look.checkedTrousers) {
        for (int y = 0; y < 160; ++y) {
            for (int x = 0; x < 96; ++x) {
                if ((y % 16 < 3) != (x % 16 < 3)) {
                    t[trouserSurface].at(x, y) = look.trousersSecond;
                }
            }
        }
    }
    addFolds(t[trouserSurface], 0.28, look.seed + 3);
    t[shoeSurface].fill(64, 64, look.shoe);
    addFolds(t[shoeSurface], 0.18, look.seed + 4);
    t[shoeSurface].gloss = 0.12f;
    plain(soleSurface, look.sole);
    plain(gloveSurface, look.gloved ? look.glove : look.skin, 0.04f);
    plain(beltSurface, look.belt, 0.1f);
    plain(buckleSurface, fromDisplay(206, 200, 184), 0.7f);
    plain(hatSurface, look.hat);
    t[hatSurface].fill(64, 64, look.hat);
    addFolds(t[hatSurface], 0.12, look.seed + 6);
    plain(shaftSurface, look.seed % 3 == 0 ? fromDisplay(52, 54, 60) : fromDisplay(176, 178, 182), 0.6f);
    plain(gripSurface, fromDisplay(36, 36, 38));
    plain(headSurface, fromDisplay(120, 122, 128), 0.7f);
    plain(ballSurface, look.ball, 0.2f);
    plain(teeSurface, fromDisplay(226, 206, 160));
    plain(sockSurface, look.socks);
    plain(buttonSurface, mix(look.shirt, fromDisplay(245, 245, 240), 0.8f), 0.1f);

    // The face: u round the head (0.25 = front), v from chin to crown.
    Texture& f = t[faceSurface];
    f.fill(256, 256, look.skin);
    addFolds(f, 0.05, look.seed + 7);
    f.gloss = 0.05f;
    const auto blot = [&](double u, double v, double ru, double rv, Rgb c, double strength) {
        for (int y = static_cast<int>((v - rv * 1.6) * 256); y <= static_cast<int>((v + rv * 1.6) * 256);
             ++y) {
            for (int x = static_cast<int>((u - ru * 1.6) * 256); x <= static_cast<int>((u + ru * 1.6) * 256);
                 ++x) {
                const double p = (x / 256.0 - u) / ru, q = (y / 256.0 - v) / rv;
                const double k = strength * (1 - smooth(0.75, 1.25, std::sqrt(p * p + q * q)));
                f.at(x, y) = mix(f.at(x, y), c, static_cast<float>(k));
            }
        }
    };
    const Rgb lip = look.skin * Rgb{0.82f, 0.55f, 0.55f}, shade = look.skin * 0.72f;
    for (const double side : {-1.0, 1.0}) {
        blot(0.25 + side * 0.064, 0.512, 0.036, 0.034, shade, 0.6);                       // socket
        blot(0.25 + side * 0.064, 0.508, 0.022, 0.014, fromDisplay(238, 236, 232), 0.95); // white
        blot(0.25 + side * 0.064, 0.508, 0.0095, 0.014, fromDisplay(52, 38, 28), 1.0);    // iris
        blot(0.25 + side * 0.064, 0.522, 0.024, 0.0045, fromDisplay(30, 24, 20), 0.9);    // lid
        blot(0.25 + side * 0.066, 0.556, 0.031, 0.008, mix(look.hair, fromDisplay(40, 30, 24), 0.4f),
             0.85);                                                                           // brow
        blot(0.25 + side * 0.012, 0.396, 0.008, 0.006, look.skin * 0.4f, 0.8);                // nostril
        blot(0.25 + side * 0.10, 0.40, 0.04, 0.05, look.skin * Rgb{1.0f, 0.86f, 0.84f}, 0.5); // cheek
    }
    blot(0.25, 0.407, 0.020, 0.014, look.skin * Rgb{1.0f, 0.92f, 0.9f}, 0.5);
    blot(0.25, 0.385, 0.028, 0.006, shade, 0.5);
    blot(0.25, 0.318, 0.050, 0.016, lip, 0.85);
    blot(0.25, 0.318, 0.048, 0.003, look.skin * 0.35f, 0.9);
    for (int y = 0; y < 40; ++y) {
        for (int x = 0; x < 256; ++x) {
            f.at(x, y) = f.at(x, y) * 0.82f; // under the chin
        }
    }
    return t;
}

void buildFigure(Mesh& mesh, const Pose& pose, const Body& body, const ClubSize& club, const Look& look) {
    const double h = body.stature;
    static thread_local std::vector<Ring> rings;
    const double g = 0.45 + 0.55 * body.girth, loose = look.looseness;

    // Trunk: trousers up to the belt, shirt above.
    rings.clear();
    const bool skirt = look.legs == Legs::skirt;
    for (const double s : {-0.19, -0.12, -0.05, 0.03, 0.11, 0.18, 0.25}) {
        Ring ring = trunkRing(pose, body, s, 1.02 * (0.5 + 0.5 * loose));
        if (s < -0.15) {
            ring.sideRadius *= 0.93;
            ring.frontRadius *= 0.8;
        }
        rings.push_back(ring);
    }
    addTube(mesh, rings, 28, trouserSurface, 0, 0.3);
    rings.clear();
    for (const double s : {0.215, 0.24, 0.265, 0.29}) {
        rings.push_back(trunkRing(pose, body, s, 1.045 * (0.5 + 0.5 * loose)));
    }
    addTube(mesh, rings, 28, beltSurface, 0, 1, false, false);
    {
        const Ring ring = trunkRing(pose, body, 0.25, 1.05 * (0.5 + 0.5 * loose));
        const V3 c = ring.centre + ring.front * (ring.frontRadius * (1 + std::max(0.0, ring.bulge)));
        const V3 up = cross(ring.side, ring.front);
        addBox(mesh, c, ring.side * (0.013 * h), ring.front * 0.004, up * (0.0115 * h), buckleSurface);
    }
    rings.clear();
    for (const double s :
         {0.27, 0.33, 0.40, 0.48, 0.57, 0.66, 0.74, 0.82, 0.89, 0.95, 1.0, 1.05, 1.09, 1.13}) {
        rings.push_back(trunkRing(pose, body, s, 1 + 0.045 * loose * (s < 0.9 ? 1.0 : 0.4)));
    }
    addTube(mesh, rings, 32, shirtSurface, 0, 1);
    for (const double s : {0.70, 0.78, 0.86, 0.93}) { // buttons
        const Ring ring = trunkRing(pose, body, s, 1 + 0.045 * loose * (s < 0.9 ? 1.0 : 0.4));
        const V3 c = ring.centre + ring.front * (ring.frontRadius * (1 + std::max(0.0, ring.bulge)));
        addEllipsoid(mesh, c, ring.side * 0.0065, ring.front * 0.003, cross(ring.side, ring.front) * 0.0065,
                     8, 4, buttonSurface);
    }

    // Arms
    for (std::size_t side = 0; side < 2; ++side) {
        const V3 s = pose.shoulder[side], e = pose.elbow[side], w = pose.wrist[side];
        const V3 hint = pose.thorax.front;
        const double k = h * g * (body.woman ? 0.88 : 1.0);
        addLimb(mesh, s, e, w, hint,
                {{0.0, 0.028 * k},
                 {0.15, 0.029 * k},
                 {0.35, 0.0275 * k},
                 {0.6, 0.0255 * k},
                 {0.85, 0.0225 * k},
                 {1.0, 0.0218 * k},
                 {1.15, 0.0235 * k},
                 {1.3, 0.0240 * k},
                 {1.5, 0.0215 * k},
                 {1.75, 0.0175 * k},
                 {1.92, 0.0155 * k},
                 {2.0, 0.0158 * k}},
                14, skinSurface, 0, 1, 0.95);
        const V3 inward = unit(pose.midShoulder - s);
        const V3 along = unit(e - s), round = across(inward, along);
        addEllipsoid(mesh, s + inward * (0.006 * h), round * (0.035 * k), cross(along, round) * (0.034 * k),
                     along * (0.036 * k), 14, 10, look.sleeve > 0.05 ? sleeveSurface : skinSurface);
        if (look.sleeve > 0.05) {
            std::vector<Profile> p;
            const double end = look.sleeve;
            const int n = end > 1 ? 12 : 6;
            for (int i = 0; i <= n; ++i) {
                const double at = end * i / n;
                const double arm = at < 1     ? lerp(0.031, 0.0245, at)
                                   : at < 1.3 ? 0.0255
                                              : lerp(0.0255, 0.0185, (at - 1.3) / 0.7);
                p.push_back({at, (arm + 0.0035 * loose + (end < 1 ? 0.004 * at : 0.0)) * k});
            }
            addLimb(mesh, s, e, w, hint, p, 16, sleeveSurface, 0, 1, 0.97);
        }
        addHand(mesh, pose, body, side, side == 0 ? gloveSurface : skinSurface);
    }

    // Legs
    for (std::size_t side = 0; side < 2; ++side) {
        const V3 hip = pose.hip[side] + pose.pelvis.up * (0.01 * h), knee = pose.knee[side],
                 ankle = pose.foot[side].ankle;
        const V3 hint = unit(pose.foot[side].forward + V3{0, 0, 0.3} + pose.pelvis.front * 0.3);
        const double k = h * g * (body.woman ? 0.98 : 1.0);
        const bool bare = look.legs != Legs::trousers;
        if (bare) {
            addLimb(mesh, hip, knee, ankle, hint,
                    {{0.0, 0.048 * k},
                     {0.3, 0.047 * k},
                     {0.6, 0.040 * k},
                     {0.85, 0.033 * k},
                     {1.0, 0.0315 * k},
                     {1.12, 0.0300 * k},
                     {1.3, 0.0325 * k},
                     {1.5, 0.0290 * k},
                     {1.75, 0.0205 * k},
                     {1.95, 0.0190 * k},
                     {2.0, 0.021 * k}},
                    16, skinSurface, 0, 1);
            addLimb(mesh, hip, knee, ankle, hint,
                    {{1.80, 0.0225 * k}, {1.9, 0.0215 * k}, {2.0, 0.0235 * k}, {2.06, 0.023 * k}}, 14,
                    sockSurface, 0, 1);
            if (!skirt) {
                addLimb(mesh, hip, knee, ankle, hint,
                        {{-0.05, 0.049 * k},
                         {0.1, 0.051 * k},
                         {0.35, 0.0500 * k * loose},
                         {0.6, 0.0480 * k * loose},
                         {0.82, 0.0460 * k * loose}},
                        18, trouserSurface, 0.2, 0.7);
            }
        } else {
            addLimb(mesh, hip, knee, ankle, hint,
                    {{-0.05, 0.049 * k},
                     {0.1, 0.0505 * k},
                     {0.3, 0.0485 * k * loose},
                     {0.6, 0.0430 * k * loose},
                     {0.85, 0.0375 * k * loose},
                     {1.0, 0.0365 * k * loose},
                     {1.15, 0.0355 * k * loose},
                     {1.4, 0.0345 * k * loose},
                     {1.7, 0.0305 * k * loose},
                     {1.93, 0.0295 * k * loose},
                     {2.02, 0.030 * k * loose}},
                    20, trouserSurface, 0.2, 1);
        }
        addShoe(mesh, pose.foot[side], body, shoeSurface);
    }
    if (skirt) {
        rings.clear();
        for (int i = 0; i <= 6; ++i) {
            const double q = i / 6.0;
            const Ring top = trunkRing(pose, body, 0.02, 1.06);
            const V3 thigh = lerp(lerp(pose.hip[0], pose.knee[0], q * 0.72),
                                  lerp(pose.hip[1], pose.knee[1], q * 0.72), 0.5);
            const V3 apart =
                lerp(pose.hip[0], pose.knee[0], q * 0.72) - lerp(pose.hip[1], pose.knee[1], q * 0.72);
            const V3 down = unit(lerp(pose.knee[0], pose.knee[1], 0.5) - pose.midHip);
            Ring ring{lerp(top.centre, thigh, smooth(0, 0.4, q)),
                      across(lerp(top.side, unit(apart), q * 0.7), down),
                      {},
                      0,
                      0};
            ring.front = cross(down, ring.side) * (dot(cross(down, ring.side), top.front) > 0 ? 1.0 : -1.0);
            ring.sideRadius = lerp(top.sideRadius, length(apart) / 2 + 0.058 * h, q);
            ring.frontRadius = lerp(top.frontRadius * 1.1, 0.078 * h, q);
            rings.push_back(ring);
        }
        addTube(mesh, rings, 30, trouserSurface, 0.25, 0.8, false, false);
    }
    addHead(mesh, pose, body, look);
    addClub(mesh, pose, club);
}

void buildBall(Mesh& mesh, V3 centre, bool teed, double teeHeight) {
    addEllipsoid(mesh, centre, {kBallRadius, 0, 0}, {0, kBallRadius, 0}, {0, 0, kBallRadius}, 16, 10,
                 ballSurface);
    if (teed && teeHeight > 0.005) {
        addBar(mesh, {centre.x, centre.y, 0}, {centre.x, centre.y, teeHeight}, 0.002, 0.004, 8, 1,
               teeSurface);
    }
}

SurfacePoints surfacePoints(const Pose& pose, const Body& body, const ClubSize& club, const Look& look) {
    const double h = body.stature;
    HeadShape shape = headShape(body);
    shape.side *= h;
    shape.depth *= h;
    const double pi = std::numbers::pi;
    SurfacePoints out;
    out.nose = headPoint(pose, shape, -0.24, pi / 2, 1.0);
    out.crown = headPoint(pose, shape, pi / 2, pi / 2, 1.0);
    // Where the bare head ends along x (seen square to the target line) and along y (seen along it).
    out.headLow = out.headHigh = pose.headCentre;
    for (int i = -6; i <= 6; ++i) {
        for (int k = 0; k < 48; ++k) {
            const V3 q = headPoint(pose, shape, i * pi / 14, k * pi / 24, 1.0);
            out.headLow.x = std::min(out.headLow.x, q.x), out.headLow.y = std::min(out.headLow.y, q.y);
            out.headHigh.x = std::max(out.headHigh.x, q.x), out.headHigh.y = std::max(out.headHigh.y, q.y);
        }
    }
    const auto ear = [&](double side) {
        return pose.headCentre + pose.head.lead * (side * shape.side * 1.05) -
               pose.head.front * (0.06 * shape.depth) - pose.head.up * (0.06 * shape.half);
    };
    out.leadEar = ear(1);
    out.trailEar = ear(-1);
    const auto front = [&](double s, double grow) {
        const Ring ring = trunkRing(pose, body, s, grow);
        return ring.centre + ring.front * (ring.frontRadius * (1 + std::max(0.0, ring.bulge)));
    };
    out.buckle = front(0.25, 1.05 * (0.5 + 0.5 * look.looseness));
    out.sternum = front(0.82, 1 + 0.045 * look.looseness);
    // Rear outline: the point of the seat farthest from the ball.
    out.pelvisRear = pose.midHip;
    for (int i = 0; i <= 12; ++i) {
        const Ring ring = trunkRing(pose, body, -0.14 + 0.02 * i, 1.02 * (0.5 + 0.5 * look.looseness));
        for (int c = 0; c < 72; ++c) {
            const double a = 2 * pi * c / 72;
            const double k =
                std::sin(a) < 0 && ring.bulge < 0 ? 1 - ring.bulge * std::sin(a) * std::sin(a) : 1;
            const auto power = [&](double v) { return std::copysign(std::pow(std::abs(v), ring.box), v); };
            const V3 p = ring.centre + ring.side * (ring.sideRadius * power(std::cos(a))) +
                         ring.front * (ring.frontRadius * power(std::sin(a)) * k);
            if (p.y < out.pelvisRear.y) {
                out.pelvisRear = p;
            }
        }
    }
    const V3 up = cross(pose.toeDirection, pose.faceNormal) *
                  (dot(cross(pose.toeDirection, pose.faceNormal), pose.shaft) > 0 ? -1.0 : 1.0);
    out.leadingEdge = pose.headPoint + pose.faceNormal * 0.004 - up * std::min(0.018, club.headCentreHeight);
    return out;
}

} // namespace plumbmark::demo
