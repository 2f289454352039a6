// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "demo/render.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <fstream>
#include <future>
#include <memory>
#include <nlohmann/json.hpp>
#include <numbers>
#include <system_error>

#include "demo/raster.h"
#include "demo/sound.h"
#include "demo/truth.h"
#include "video/writer.h"

namespace plumbmark::demo {
namespace {

using Json = nlohmann::ordered_json;

/// Linear light to display values, with the sensor's soft shoulder.
struct Tone {
    std::array<std::uint8_t, 4096> table{};
    explicit Tone(double exposure) {
        for (std::size_t i = 0; i < table.size(); ++i) {
            double v = exposure * static_cast<double>(i) / 2048.0;
            v = v < 0.7 ? v : 0.7 + 0.3 * (1 - std::exp(-(v - 0.7) / 0.3));
            const double s = v <= 0.0031308 ? 12.92 * v : 1.055 * std::pow(v, 1 / 2.4) - 0.055; // sRGB
            table[i] = static_cast<std::uint8_t>(std::clamp(std::lround(255 * s), 0L, 255L));
        }
    }
    [[nodiscard]] int operator()(float v) const {
        return table[static_cast<std::size_t>(std::clamp(static_cast<int>(v * 2048.0f), 0, 4095))];
    }
};

/// Darkening of the ground by the player: full shade and nearness, on a grid of the ground around the feet.
struct Shade {
    static constexpr int kCells = 168;
    static constexpr double kCell = 0.025, kLow = -2.1;
    std::vector<float> sun = std::vector<float>(kCells * kCells), near = std::vector<float>(kCells * kCells);

    void build(const Pose& pose, const Light& light, marks::Hand hand) {
        std::fill(sun.begin(), sun.end(), 0.0f);
        std::fill(near.begin(), near.end(), 0.0f);
        const auto bone = [&](V3 a, V3 b, double r0, double r1, int n) {
            for (int i = 0; i <= n; ++i) {
                const double k = static_cast<double>(i) / n;
                blob(toWorld(lerp(a, b, k), hand), lerp(r0, r1, k), light);
            }
        };
        for (std::size_t s = 0; s < 2; ++s) {
            bone(pose.hip[s], pose.knee[s], 0.085, 0.06, 7);
            bone(pose.knee[s], pose.foot[s].ankle, 0.055, 0.04, 8);
            bone(pose.foot[s].heel, pose.foot[s].toe, 0.035, 0.03, 8);
            bone(pose.shoulder[s], pose.elbow[s], 0.05, 0.042, 6);
            bone(pose.elbow[s], pose.wrist[s], 0.04, 0.03, 6);
        }
        bone(pose.midHip, pose.midShoulder, 0.15, 0.15, 7);
        bone(pose.shoulder[0], pose.shoulder[1], 0.08, 0.08, 5);
        bone(pose.neckBase, pose.headCentre, 0.05, 0.09, 3);
        bone(pose.butt, pose.shaftEnd, 0.012, 0.012, 40);
        blob(toWorld(pose.headPoint, hand), 0.03, light);
    }
    void blob(V3 p, double r, const Light& light) {
        if (p.z < 0) {
            return;
        }
        const double up = std::max(0.2, light.toSun.z);
        const V3 c = p - light.toSun * (p.z / up);
        const double soft = 0.02 + p.z * (0.03 + 0.35 * light.softness);
        stamp(sun, c.x, c.y, r / std::sqrt(up), soft, 1.0f);
        const double reach = r + 0.35 * p.z;
        stamp(near, p.x, p.y, r * 0.8, reach, static_cast<float>(0.6 / (1 + 14 * p.z * p.z + 2 * p.z)));
    }
    static void stamp(std::vector<float>& grid, double x, double y, double r, double soft, float strength) {
        const int x0 = std::max(0, static_cast<int>((x - r - soft - kLow) / kCell)),
                  x1 = std::min(kCells - 1, static_cast<int>((x + r + soft - kLow) / kCell) + 1);
        const int y0 = std::max(0, static_cast<int>((y - r - soft - kLow) / kCell)),
                  y1 = std::min(kCells - 1, static_cast<int>((y + r + soft - kLow) / kCell) + 1);
        for (int j = y0; j <= y1; ++j) {
            for (int i = x0; i <= x1; ++i) {
                const double d = std::hypot(kLow + i * kCell - x, kLow + j * kCell - y);
                const double t = std::clamp((r + soft - d) / (2 * soft), 0.0, 1.0);
                const float k = strength * static_cast<float>(t * t * (3 - 2 * t));
                float& cell = grid[static_cast<std::size_t>(j) * kCells + static_cast<std::size_t>(i)];
                cell = std::max(cell, k);
            }
        }
    }
    /// Share of light left at a ground point.
    [[nodiscard]] float left(double x, double y, const Light& light) const {
        const double fx = (x - kLow) / kCell, fy = (y - kLow) / kCell;
        if (fx < 0 || fy < 0 || fx >= kCells - 1 || fy >= kCells - 1) {
            return 1;
        }
        const auto i = static_cast<std::size_t>(fx), j = static_cast<std::size_t>(fy);
        const auto u = static_cast<float>(fx - static_cast<double>(i)),
                   v = static_cast<float>(fy - static_cast<double>(j));
        const auto at = [&](const std::vector<float>& g) {
            const float* p = g.data() + j * kCells + i;
            return (p[0] * (1 - u) + p[1] * u) * (1 - v) + (p[kCells] * (1 - u) + p[kCells + 1] * u) * v;
        };
        const auto share = static_cast<float>(0.72 - 0.42 * light.softness);
        return (1 - share * at(sun)) * (1 - 0.75f * at(near));
    }
};

class Scene {
  public:
    Scene(const Spec& spec, int width, int height)
        : spec_(spec), width_(width), height_(height),
          motion_(spec.body, clubSize(spec.club, spec.body.stature), spec.swing, spec.seed),
          textures_(makeTextures(spec.look)), tone_(spec.filming.exposure) {
        moving_ = spec.filming.panDegrees != 0 || spec.filming.shakeDegrees != 0;
        wide_ = cameraAt(spec, motion_, width, height, motion_.start() - 1);
        if (moving_) {
            Spec still = spec;
            still.filming.panDegrees = still.filming.shakeDegrees = 0;
            wide_ = cameraAt(still, motion_, width, height, 0);
            const double reach =
                1.1 * std::abs(spec.filming.panDegrees) + 2.2 * std::abs(spec.filming.shakeDegrees) + 0.5;
            const int margin = static_cast<int>(std::ceil(std::tan(reach * kDeg) * wide_.focal * 1.45)) + 8;
            wide_.width += 2 * margin;
            wide_.height += 2 * margin;
        }
        backdrop_ = paintBackdrop(wide_, spec.around, spec.light, spec.hand);
        Random r(spec.seed + 99);
        noise_.resize(1 << 16);
        for (auto& n : noise_) {
            n = static_cast<std::int8_t>(std::clamp(std::lround(16 * r.normal()), -60L, 60L));
        }
        const double w = spec.filming.warmth;
        balance_ = {static_cast<float>(1 + 0.06 * w), 1.0f, static_cast<float>(1 - 0.08 * w)};
    }

    [[nodiscard]] const Motion& motion() const { return motion_; }

    /// The player at `t`. In an interlude `t` counts from the swing's own start, and the pose is a pose of
    /// the swing taken at another time, or moved along the target line.
    [[nodiscard]] Pose poseAt(double t) const {
        const double since = t - motion_.start();
        const auto ease = [](double k) {
            k = std::clamp(k, 0.0, 1.0);
            return k * k * (3 - 2 * k);
        };
        switch (spec_.interlude) {
        case Interlude::none:
            return motion_.at(t);
        case Interlude::standing:
            return motion_.at(motion_.start() - since);
        case Interlude::waggle:
            return motion_.at(std::min(t, -0.08));
        case Interlude::rehearsal: {
            const double all = interludeSeconds(Interlude::rehearsal);
            const double share = ease((since - 0.3) / (kRehearsalHeldFrom - 0.3)) -
                                 ease((since - kRehearsalHeldTo) / (all - 0.3 - kRehearsalHeldTo));
            return motion_.at(motion_.params().backswing * share);
        }
        case Interlude::walk:
            break;
        }
        const double all = interludeSeconds(Interlude::walk), far = 3.6;
        const double x = far * (ease((since - 0.2) / 2.8) - ease((since - (all - 3.0)) / 2.8));
        Pose pose = motion_.at(motion_.end());
        const double step = 2 * std::numbers::pi * x / 1.3; // two steps of 0.65 m
        const double swing = 0.22 * std::sin(std::numbers::pi * std::clamp(x / 0.5, 0.0, 1.0) / 2);
        for (std::size_t side = 0; side < 2; ++side) {
            const double phase = step + (side == 0 ? 0.0 : std::numbers::pi);
            const V3 move{swing * std::sin(phase), 0, 0.08 * swing / 0.22 * std::max(0.0, std::cos(phase))};
            Foot& f = pose.foot[side];
            f.heel += move, f.ball += move, f.toe += move, f.ankle += move;
            pose.knee[side] += move * 0.5;
        }
        const V3 by{x, 0, 0};
        for (V3* p : {&pose.midHip, &pose.midShoulder, &pose.neckBase, &pose.headCentre, &pose.butt,
                      &pose.grip, &pose.shaftEnd, &pose.headPoint}) {
            *p += by;
        }
        for (std::size_t side = 0; side < 2; ++side) {
            for (auto* part :
                 {&pose.shoulder, &pose.elbow, &pose.wrist, &pose.handCentre, &pose.hip, &pose.knee}) {
                (*part)[side] += by;
            }
            Foot& f = pose.foot[side];
            f.heel += by, f.ball += by, f.toe += by, f.ankle += by;
        }
        return pose;
    }

    [[nodiscard]] V3 ballAt(double t) const {
        const double gone = t - motion_.impact();
        if (gone <= 0 || spec_.interlude != Interlude::none) {
            return motion_.ball();
        }
        const double loft = std::clamp(motion_.club().loftDegrees * 0.55, 9.0, 26.0) * kDeg, v = 52;
        return motion_.ball() +
               V3{v * std::cos(loft) * gone, 0.4 * gone, v * std::sin(loft) * gone - 4.9 * gone * gone};
    }

    /// Memory of one thread.
    struct Bench {
        Mesh mesh;
        std::vector<float> gloss;
        std::vector<Corner> corners, before, after;
        Raster raster;
        std::vector<Raster::Pixel> sum;
        std::vector<Rgb> linear;
        Shade shade;
    };

    void meshAt(Bench& b, double t) const {
        b.mesh.clear();
        buildFigure(b.mesh, poseAt(t), motion_.body(), motion_.club(), spec_.look);
        if (spec_.hasBall) {
            const V3 ball = ballAt(t);
            if (ball.x < 60) {
                buildBall(b.mesh, ball, t <= motion_.impact() || spec_.interlude != Interlude::none,
                          motion_.club().teeHeight);
            }
        }
        b.gloss.assign(b.mesh.vertices.size(), 0.0f);
        for (const Triangle& tri : b.mesh.triangles) {
            const float g = textures_[tri.texture].gloss;
            b.gloss[tri.a] = b.gloss[tri.b] = b.gloss[tri.c] = g;
        }
    }

    [[nodiscard]] video::RgbImage picture(Bench& b, double t, int index) const {
        const Camera camera = cameraAt(spec_, motion_, width_, height_, t);
        const std::size_t n = static_cast<std::size_t>(width_) * static_cast<std::size_t>(height_);
        b.linear.resize(n);
        b.sum.resize(n, Raster::Pixel{0, 0, 0, 0});

        // How many instants: the fastest point moves about a pixel and a half from one to the next.
        const double shutter = spec_.filming.shutter;
        const auto headSpeed = [&] {
            const base::Vec2 a = camera.project(toWorld(poseAt(t - shutter / 2).headPoint, spec_.hand)).at;
            const base::Vec2 c = camera.project(toWorld(poseAt(t + shutter / 2).headPoint, spec_.hand)).at;
            return base::length(c - a);
        }();
        const int samples = std::clamp(static_cast<int>(std::ceil(headSpeed / 1.4)), 5, 26);
        int left = width_, right = -1, top = height_, bottom = -1;
        for (int s = 0; s < samples; ++s) {
            const double when = t + shutter * ((s + 0.5) / samples - 0.5);
            const Camera cam = moving_ ? cameraAt(spec_, motion_, width_, height_, when) : camera;
            meshAt(b, when);
            see(b.mesh, cam, spec_.light, spec_.hand, b.gloss, b.corners);
            if (spec_.filming.rollingReadout > 0) {
                roll(b, cam, when);
            }
            float x0 = 1e9f, x1 = -1e9f, y0 = 1e9f, y1 = -1e9f;
            for (const Corner& c : b.corners) {
                if (c.inverseDepth > 0) {
                    x0 = std::min(x0, c.x);
                    x1 = std::max(x1, c.x);
                    y0 = std::min(y0, c.y);
                    y1 = std::max(y1, c.y);
                }
            }
            const int bx0 = std::clamp(static_cast<int>(x0) - 2, 0, width_),
                      bx1 = std::clamp(static_cast<int>(x1) + 3, 0, width_);
            const int by0 = std::clamp(static_cast<int>(y0) - 2, 0, height_),
                      by1 = std::clamp(static_cast<int>(y1) + 3, 0, height_);
            if (bx1 <= bx0 || by1 <= by0) {
                continue;
            }
            b.raster.reset(bx0, by0, bx1 - bx0, by1 - by0);
            b.raster.draw(
                b.corners, b.mesh.triangles, textures_,
                static_cast<float>((s * 0.618034 + 0.1) - std::floor(s * 0.618034 + 0.1) - 0.5),
                static_cast<float>((s * 0.381966 * 1.7 + 0.3) - std::floor(s * 0.381966 * 1.7 + 0.3) - 0.5));
            for (int y = 0; y < b.raster.height(); ++y) {
                const Raster::Pixel* from = b.raster.row(y);
                Raster::Pixel* into = b.sum.data() +
                                      static_cast<std::size_t>(by0 + y) * static_cast<std::size_t>(width_) +
                                      static_cast<std::size_t>(bx0);
                for (int x = 0; x < b.raster.width(); ++x) {
                    into[x].r += from[x].r;
                    into[x].g += from[x].g;
                    into[x].b += from[x].b;
                    into[x].cover += from[x].cover;
                }
            }
            left = std::min(left, bx0);
            right = std::max(right, bx1);
            top = std::min(top, by0);
            bottom = std::max(bottom, by1);
        }

        paintGround(b, camera, t);

        const float share = 1.0f / static_cast<float>(samples);
        for (int y = top; y < bottom; ++y) {
            Raster::Pixel* from =
                b.sum.data() + static_cast<std::size_t>(y) * static_cast<std::size_t>(width_);
            Rgb* into = b.linear.data() + static_cast<std::size_t>(y) * static_cast<std::size_t>(width_);
            for (int x = left; x < right; ++x) {
                if (from[x].cover > 0) {
                    const float k = from[x].cover * share;
                    into[x] =
                        into[x] * (1 - k) + Rgb{from[x].r * share, from[x].g * share, from[x].b * share};
                    from[x] = {0, 0, 0, 0};
                }
            }
        }

        video::RgbImage image;
        image.width = width_;
        image.height = height_;
        image.pixels.resize(3 * n);
        const int strength = static_cast<int>(std::lround(spec_.filming.noise * 16));
        std::uint32_t z =
            static_cast<std::uint32_t>(index) * 2654435761u + static_cast<std::uint32_t>(spec_.seed);
        for (std::size_t i = 0; i < n; ++i) {
            z = z * 1664525u + 1013904223u;
            const int luma = noise_[z >> 16], c1 = noise_[(z >> 8) & 0xffff],
                      c2 = noise_[(z ^ (z >> 13)) & 0xffff];
            const Rgb& c = b.linear[i];
            const int g = tone_(c.g * balance_.g);
            const int k = strength * (24 + (255 - g) / 10); // dark parts are noisier
            const int r = tone_(c.r * balance_.r) + ((luma * 3 + c1 * 2) * k >> 15);
            const int bl = tone_(c.b * balance_.b) + ((luma * 3 + c2 * 2) * k >> 15);
            const int gr = g + (luma * 3 * k >> 15);
            image.pixels[3 * i] = static_cast<std::uint8_t>(std::clamp(r, 0, 255));
            image.pixels[3 * i + 1] = static_cast<std::uint8_t>(std::clamp(gr, 0, 255));
            image.pixels[3 * i + 2] = static_cast<std::uint8_t>(std::clamp(bl, 0, 255));
        }
        return image;
    }

    /// Where a moving point is seen: with a rolling shutter its row decides the instant.
    [[nodiscard]] Camera::Seen seenAt(double t, std::size_t landmark) const {
        double when = t;
        Camera::Seen seen{{0, 0}, -1};
        for (int i = 0; i < 4; ++i) {
            const Points points = pointsOf(spec_, motion_, when);
            if (!points[landmark]) {
                return {{0, 0}, -1};
            }
            seen = cameraAt(spec_, motion_, width_, height_, when)
                       .project(toWorld(*points[landmark], spec_.hand));
            if (spec_.filming.rollingReadout <= 0) {
                break;
            }
            when = t + spec_.filming.rollingReadout * (std::clamp(seen.at.y / height_, 0.0, 1.0) - 0.5);
        }
        return seen;
    }

    /// Which landmarks nothing of the figure hides, by the depth of the picture at the instant.
    void visible(Bench& b, double t, std::array<bool, marks::kLandmarkCount>& out) const {
        const Camera camera = cameraAt(spec_, motion_, width_, height_, t);
        meshAt(b, t);
        see(b.mesh, camera, spec_.light, spec_.hand, b.gloss, b.corners);
        b.raster.reset(0, 0, width_, height_);
        b.raster.draw(b.corners, b.mesh.triangles, textures_, 0, 0);
        const Points points = pointsOf(spec_, motion_, t);
        for (std::size_t i = 0; i < out.size(); ++i) {
            out[i] = false;
            if (!points[i]) {
                continue;
            }
            const Camera::Seen s = camera.project(toWorld(*points[i], spec_.hand));
            const int x = static_cast<int>(std::floor(s.at.x)), y = static_cast<int>(std::floor(s.at.y));
            if (s.depth <= 0 || x < 0 || y < 0 || x >= width_ || y >= height_) {
                continue;
            }
            const float front = b.raster.depthRow(y)[x];
            // Joint centres lie inside the body: up to 0.11 m of the part's own flesh is in front of them.
            out[i] = front <= 0 || s.depth - 1.0 / static_cast<double>(front) < 0.11;
        }
    }

  private:
    void roll(Bench& b, const Camera& cam, double when) const {
        const double half = spec_.filming.rollingReadout / 2;
        meshAt(b, when - half);
        see(b.mesh, cam, spec_.light, spec_.hand, b.gloss, b.before);
        meshAt(b, when + half);
        see(b.mesh, cam, spec_.light, spec_.hand, b.gloss, b.after);
        if (b.before.size() != b.corners.size() || b.after.size() != b.corners.size()) {
            return; // the ball left between the instants
        }
        for (std::size_t i = 0; i < b.corners.size(); ++i) {
            Corner& c = b.corners[i];
            const Corner &p = b.before[i], &q = b.after[i];
            if (c.inverseDepth <= 0 || p.inverseDepth <= 0 || q.inverseDepth <= 0) {
                continue;
            }
            // Place as a parabola of time through three instants; its own row says which time is meant.
            const float cx = c.x, cy = c.y;
            float y = cy;
            for (int k = 0; k < 4; ++k) {
                const float s = std::clamp(2 * y / static_cast<float>(height_) - 1, -1.0f, 1.0f);
                y = cy + 0.5f * s * (q.y - p.y) + 0.5f * s * s * (q.y + p.y - 2 * cy);
                c.x = cx + 0.5f * s * (q.x - p.x) + 0.5f * s * s * (q.x + p.x - 2 * cx);
            }
            c.y = y;
        }
    }

    void paintGround(Bench& b, const Camera& camera, double t) const {
        const std::size_t n = b.linear.size();
        const double ox = (wide_.width - width_) / 2.0, oy = (wide_.height - height_) / 2.0;
        if (!moving_) {
            std::copy(backdrop_.colour.begin(), backdrop_.colour.begin() + static_cast<std::ptrdiff_t>(n),
                      b.linear.begin());
        } else {
            // A camera that only turns sees the same far and near things: one map carries all of them.
            for (int y = 0; y < height_; ++y) {
                for (int x = 0; x < width_; ++x) {
                    const V3 d = camera.ray(x + 0.5, y + 0.5);
                    const double z = dot(d, wide_.forward);
                    const double u = wide_.width / 2.0 + wide_.focal * dot(d, wide_.right) / z - 0.5;
                    const double v = wide_.height / 2.0 - wide_.focal * dot(d, wide_.up) / z - 0.5;
                    const int i = std::clamp(static_cast<int>(u), 0, wide_.width - 2),
                              j = std::clamp(static_cast<int>(v), 0, wide_.height - 2);
                    const auto fu = static_cast<float>(std::clamp(u - i, 0.0, 1.0)),
                               fv = static_cast<float>(std::clamp(v - j, 0.0, 1.0));
                    const Rgb* p = backdrop_.colour.data() +
                                   static_cast<std::size_t>(j) * static_cast<std::size_t>(wide_.width) +
                                   static_cast<std::size_t>(i);
                    const Rgb* q = p + wide_.width;
                    b.linear[static_cast<std::size_t>(y) * static_cast<std::size_t>(width_) +
                             static_cast<std::size_t>(x)] = mix(mix(p[0], p[1], fu), mix(q[0], q[1], fu), fv);
                }
            }
        }
        b.shade.build(poseAt(t), spec_.light, spec_.hand);
        // The box of the picture that shows the shaded ground.
        double x0 = width_, x1 = 0, y0 = height_, y1 = 0;
        for (int i = 0; i < 9; ++i) {
            for (int j = 0; j < 9; ++j) {
                const double r = Shade::kCells * Shade::kCell;
                const Camera::Seen s = camera.project({Shade::kLow + r * i / 8, Shade::kLow + r * j / 8, 0});
                if (s.depth > 0.3) {
                    x0 = std::min(x0, s.at.x);
                    x1 = std::max(x1, s.at.x);
                    y0 = std::min(y0, s.at.y);
                    y1 = std::max(y1, s.at.y);
                }
            }
        }
        const int left = std::clamp(static_cast<int>(x0), 0, width_),
                  right = std::clamp(static_cast<int>(x1) + 1, 0, width_);
        const int top = std::clamp(static_cast<int>(y0), 0, height_),
                  bottom = std::clamp(static_cast<int>(y1) + 1, 0, height_);
        for (int y = top; y < bottom; ++y) {
            const V3 d0 = camera.ray(left + 0.5, y + 0.5), step = camera.right / camera.focal;
            for (int x = left; x < right; ++x) {
                const V3 d = d0 + step * (x - left);
                if (d.z >= -1e-4) {
                    continue;
                }
                if (!moving_) {
                    if (backdrop_.ground[static_cast<std::size_t>(y) * static_cast<std::size_t>(width_) +
                                         static_cast<std::size_t>(x)] == 0) {
                        continue;
                    }
                } else {
                    const double z = dot(d, wide_.forward);
                    const int i = std::clamp(
                        static_cast<int>(wide_.width / 2.0 + wide_.focal * dot(d, wide_.right) / z), 0,
                        wide_.width - 1);
                    const int j =
                        std::clamp(static_cast<int>(wide_.height / 2.0 - wide_.focal * dot(d, wide_.up) / z),
                                   0, wide_.height - 1);
                    if (backdrop_.ground[static_cast<std::size_t>(j) * static_cast<std::size_t>(wide_.width) +
                                         static_cast<std::size_t>(i)] == 0) {
                        continue;
                    }
                }
                const double k = camera.position.z / -d.z;
                const float light =
                    b.shade.left(camera.position.x + d.x * k, camera.position.y + d.y * k, spec_.light);
                Rgb& c = b.linear[static_cast<std::size_t>(y) * static_cast<std::size_t>(width_) +
                                  static_cast<std::size_t>(x)];
                c = c * light;
            }
        }
        static_cast<void>(ox);
        static_cast<void>(oy);
    }

    Spec spec_;
    int width_, height_;
    Motion motion_;
    std::vector<Texture> textures_;
    Tone tone_;
    Camera wide_;
    Backdrop backdrop_;
    std::vector<std::int8_t> noise_;
    Rgb balance_;
    bool moving_ = false;
};

double round3(double v, double unit = 1e-4) {
    return std::round(v / unit) * unit;
}

Json truthOf(const Spec& spec, const CaseOptions& options, const Scene& scene, int frames, double playback,
             double stretch, double start) {
    const Motion& motion = scene.motion();
    const auto moments = trueMoments(spec, motion);
    Json j;
    j["case"] = spec.name;
    j["seed"] = spec.seed;
    j["view"] = marks::viewName(spec.view);
    j["hand"] = marks::handName(spec.hand);
    j["club"] = marks::clubName(spec.club);
    j["shot"] = marks::shotKindName(spec.shot);
    j["ball"] = spec.hasBall;
    j["stature_m"] = spec.body.stature;
    j["distance_m"] = spec.filming.distance;
    const Camera camera = cameraAt(spec, motion, options.width, options.height, motion.start());
    const auto list = [](V3 v) { return Json::array({v.x, v.y, v.z}); };
    j["camera"] = {{"focal_px", camera.focal},           {"position_m", list(camera.position)},
                   {"right", list(camera.right)},        {"up", list(camera.up)},
                   {"forward", list(camera.forward)},    {"roll_deg", spec.filming.roll},
                   {"yaw_deg", spec.filming.yaw},        {"lens_height_m", spec.filming.lensHeight},
                   {"pan_deg", spec.filming.panDegrees}, {"shake_deg", spec.filming.shakeDegrees},
                   {"shutter_s", spec.filming.shutter},  {"rolling_readout_s", spec.filming.rollingReadout}};
    j["clip"] = {{"frames", frames},          {"width", options.width},
                 {"height", options.height},  {"duration_s", frames / playback},
                 {"rotation_deg", 0},         {"playback_fps", playback},
                 {"capture_fps", options.fps}};
    j["vertical"] = {{"angle_deg", -spec.filming.roll}};
    j["sound"] = {{"hit_heard_s", nullptr},
                  {"bang_from_next_bay_s", nullptr},
                  {"neighbour_hits_s", spec.sound.neighbourHits}};
    const auto shown = [&](double real) { return (real - start) * stretch; };
    if (spec.interlude != Interlude::none) {
        j["interlude"] = interludeName(spec.interlude);
    }
    if (spec.interlude == Interlude::rehearsal) {
        j["held_s"] = {kRehearsalHeldFrom, kRehearsalHeldTo};
    }
    j["moments"] = Json::array();
    for (const TrueMoment& m : moments) {
        if (spec.interlude != Interlude::none) {
            break; // nothing of a swing happens
        }
        j["moments"].push_back(
            {{"name", marks::momentName(m.id)}, {"time_s", shown(m.time)}, {"real_time_s", m.time - start}});
        if (m.id == marks::MomentId::impact && spec.hasBall && spec.sound.recorded && stretch == 1.0) {
            j["sound"]["hit_heard_s"] = shown(m.time) + spec.filming.distance / kSoundSpeed;
        }
    }
    if (spec.sound.bangFromNextBay >= 0) {
        j["sound"]["bang_from_next_bay_s"] = spec.sound.bangFromNextBay;
    }
    j["measurements"] = Json::array();
    for (const TrueValue& v : trueMeasurements(spec, motion, moments)) {
        Json row{{"id", v.id}, {"moment", nullptr}, {"value", round3(v.value, 1e-6)}, {"unit", v.unit}};
        if (v.moment) {
            row["moment"] = marks::momentName(*v.moment);
        }
        j["measurements"].push_back(row);
    }
    Json names = Json::array();
    for (std::size_t i = 0; i < marks::kLandmarkCount; ++i) {
        names.push_back(marks::landmarkName(static_cast<marks::Landmark>(i)));
    }
    j["landmarks"] = {{"names", names}, {"frames", Json::array()}};
    return j;
}

base::Error sizeError() {
    return base::inputError(
        "demo.size",
        "The picture size must be even and between 160x160 and 4096x4096; for example 1280x720.");
}

base::Result<void> check(const CaseOptions& o) {
    if (o.width < 160 || o.height < 160 || o.width > 4096 || o.height > 4096 || o.width % 2 != 0 ||
        o.height % 2 != 0) {
        return sizeError();
    }
    if (!(o.fps >= 10 && o.fps <= 1000) || o.playbackFps < 0 || o.playbackFps > 1000) {
        return base::inputError(
            "demo.rate", "The frame rate must lie between 10 and 1000 frames per second; for example 120.");
    }
    return {};
}

std::string stemOf(const CaseOptions& o, const Spec& s) {
    if (!o.fileStem.empty()) {
        return o.fileStem;
    }
    const std::string name =
        s.interlude == Interlude::none ? s.name : std::string(interludeName(s.interlude));
    return name + "-" + std::string(marks::viewName(s.view)) + "-" + std::to_string(s.seed) + "-" +
           std::to_string(static_cast<int>(std::lround(o.fps)));
}

} // namespace

base::Result<video::RgbImage> renderStill(const CaseOptions& options, double time) {
    if (auto ok = check(options); !ok) {
        return ok.error();
    }
    auto spec = makeSpec(options);
    if (!spec) {
        return spec.error();
    }
    const Scene scene(*spec, options.width, options.height);
    Scene::Bench bench;
    const double playback = options.playbackFps > 0 ? options.playbackFps : options.fps;
    return scene.picture(bench, scene.motion().start() + time * playback / options.fps, 0);
}

base::Result<RenderedSwing> renderCase(const CaseOptions& options, const std::filesystem::path& directory,
                                       const base::Progress& progress) {
    const auto began = std::chrono::steady_clock::now();
    if (auto ok = check(options); !ok) {
        return ok.error();
    }
    auto made = makeSpec(options);
    if (!made) {
        return made.error();
    }
    const Spec spec = *made;
    std::error_code ec;
    std::filesystem::create_directories(directory, ec);
    if (!std::filesystem::is_directory(directory, ec)) {
        return base::inputError("demo.directory", "The folder \"" + directory.string() +
                                                      "\" cannot be made; give a place where you may write.");
    }
    const Scene scene(spec, options.width, options.height);
    if (!scene.motion().solved()) {
        return base::failure("demo.unsolved",
                             "This player cannot reach the ball in this posture; try another seed.");
    }
    const double start = scene.motion().start();
    const bool swings = spec.interlude == Interlude::none;
    const double real = swings ? scene.motion().end() - start : interludeSeconds(spec.interlude);
    const int frames = static_cast<int>(std::floor(real * options.fps));
    const double playback = options.playbackFps > 0 ? options.playbackFps : options.fps;
    const double stretch = options.fps / playback; // shown seconds per real second

    RenderedSwing result;
    const std::string stem = stemOf(options, spec);
    result.clip = directory / (stem + ".mp4");
    result.truth = directory / (stem + ".truth.json");
    result.frames = frames;

    video::WriterOptions w;
    w.width = options.width;
    w.height = options.height;
    w.fps = playback;
    w.bitRate = options.bitRate;
    w.quality = 21;
    w.threads = 2;
    const bool withSound = spec.sound.recorded && stretch == 1.0;
    w.soundRate = withSound ? kSoundRate : 0;
    auto writer = video::ClipWriter::create(result.clip, w);
    if (!writer) {
        return writer.error();
    }

    Json truth = truthOf(spec, options, scene, frames, playback, stretch, start);
    if (withSound) {
        std::optional<double> hit;
        if (spec.hasBall && swings) {
            hit = scene.motion().impact() - start;
        }
        const double swish = swings ? scene.motion().impact() - start : -10.0;
        const auto sound = makeSound(spec, frames / playback, hit, swish, spec.filming.distance);
        if (auto ok = (*writer)->writeSound(sound); !ok) {
            return ok.error();
        }
    }

    std::array<Scene::Bench, 2> bench;
    const auto work = [&](std::size_t lane, int i) {
        return scene.picture(bench[lane], start + i / options.fps, i);
    };
    std::future<video::RgbImage> ahead = std::async(std::launch::async, work, 0, 0);
    std::future<video::RgbImage> behind =
        frames > 1 ? std::async(std::launch::async, work, 1, 1) : std::future<video::RgbImage>{};
    Scene::Bench look;
    for (int i = 0; i < frames; ++i) {
        const video::RgbImage picture = ahead.get();
        std::swap(ahead, behind);
        if (i + 2 < frames) {
            behind = std::async(std::launch::async, work, static_cast<std::size_t>(i % 2), i + 2);
        }
        if (progress.cancelled()) {
            if (ahead.valid()) {
                ahead.wait();
            }
            if (behind.valid()) {
                behind.wait();
            }
            return base::failure("demo.cancelled", "Rendering was stopped.");
        }
        if (auto ok = (*writer)->write(picture); !ok) {
            if (ahead.valid()) {
                ahead.wait();
            }
            if (behind.valid()) {
                behind.wait();
            }
            return ok.error();
        }
        const double t = start + i / options.fps;
        progress.tell(static_cast<double>(i + 1) / frames, "rendering");
        if (!swings) {
            continue; // landmarks are those of the swing's own motion
        }
        std::array<bool, marks::kLandmarkCount> seen{};
        scene.visible(look, t, seen);
        Json points = Json::array(), flags = Json::array();
        for (std::size_t k = 0; k < marks::kLandmarkCount; ++k) {
            const Camera::Seen s = scene.seenAt(t, k);
            if (s.depth > 0) {
                points.push_back(Json::array({round3(s.at.x, 1e-3), round3(s.at.y, 1e-3)}));
            } else {
                points.push_back(nullptr);
            }
            flags.push_back(seen[k]);
        }
        truth["landmarks"]["frames"].push_back(
            {{"time_s", i / playback}, {"points", points}, {"visible", flags}});
    }
    if (auto ok = (*writer)->finish(); !ok) {
        return ok.error();
    }
    {
        const std::filesystem::path part = result.truth.string() + ".part";
        std::ofstream out(part, std::ios::binary);
        out << truth.dump(-1) << "\n";
        out.close();
        if (!out) {
            std::filesystem::remove(part, ec);
            return base::failure("demo.truth", "The truth file could not be written; is the disk full?");
        }
        std::filesystem::rename(part, result.truth, ec);
        if (ec) {
            return base::failure("demo.truth", "The truth file could not be written; is the disk full?");
        }
    }
    result.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
    return result;
}

} // namespace plumbmark::demo
