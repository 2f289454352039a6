// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <memory>
#include <numbers>
#include <optional>
#include <random>
#include <vector>

#include "club/ball.h"
#include "club/shaft.h"
#include "video/frame.h"

namespace plumbmark::club::synthetic {

/// A flat puppet swing in luma: enough picture to search a shaft in, with the exact truth beside it. It
/// shares nothing with the demo renderer, on purpose.
struct Swing {
    int width = 640, height = 720;
    double fps = 240.0;
    double stature = 430.0;  ///< px
    double exposure = 0.001; ///< seconds
    int side = 1;            ///< +1: target to the right
    double background = 0.0; ///< 0 plain .. 1 busy
    double shaftLuma = 210.0;
    double noise = 2.0; ///< grey levels, one sigma
    bool club = true;
    bool ball = true;
    bool ballStays = false;    ///< practice swing beside a ball
    double ballShare = 0.0125; ///< the ball's radius, statures
    double clubLength = 0.56;  ///< grip to head, statures
    unsigned seed = 1;

    static constexpr double kStill = 0.30, kBack = 0.80, kDown = 0.28, kAfter = 0.25;
    [[nodiscard]] double top() const { return kStill + kBack; }
    [[nodiscard]] double impact() const { return kStill + kBack + kDown; }
    [[nodiscard]] double length() const { return kStill + kBack + kDown + kAfter; }
    [[nodiscard]] int frames() const { return static_cast<int>(length() * fps); }

    /// Degrees, our convention, for side = +1: the backswing turns to the picture's left.
    [[nodiscard]] double shaft(double t) const { return side * turned(t, 265.0, 2.3, 5.0); }
    [[nodiscard]] double arm(double t) const { return side * turned(t, 150.0, 1.7, 4.0); }
    [[nodiscard]] base::Vec2 shoulder() const { return {width * 0.5, height * 0.33}; }
    [[nodiscard]] base::Vec2 hands(double t) const {
        return shoulder() + directionOf(arm(t)) * (0.36 * stature);
    }
    [[nodiscard]] base::Vec2 head(double t) const {
        return hands(t) + directionOf(shaft(t)) * (clubLength * stature);
    }
    [[nodiscard]] base::Vec2 butt(double t) const {
        return hands(t) - directionOf(shaft(t)) * (0.06 * stature);
    }
    [[nodiscard]] double ballRadius() const { return ballShare * stature; }
    [[nodiscard]] base::Vec2 ballAt() const {
        return head(impact()) + base::Vec2{side * (ballRadius() + 0.008 * stature), 0.0};
    }

    [[nodiscard]] Hands estimatedHands(double t, base::Vec2 bias = {}) const {
        Hands h;
        h.grip = hands(t) + bias;
        h.leadElbow = shoulder() + directionOf(arm(t)) * (0.17 * stature) + bias;
        h.trailElbow = shoulder() + directionOf(arm(t) - side * 14.0) * (0.19 * stature) + bias;
        h.staturePixels = stature;
        h.gripSigma = 12.0;
        return h;
    }

    /// Soft-edged thick line (a disc when both ends coincide).
    void stroke(std::vector<float>& p, base::Vec2 a, base::Vec2 b, float half, float luma) const {
        const auto lo = [&](double u, double v) {
            return static_cast<int>(std::floor(std::min(u, v) - half - 2));
        };
        const auto hi = [&](double u, double v) {
            return static_cast<int>(std::ceil(std::max(u, v) + half + 2));
        };
        const int x0 = std::clamp(lo(a.x, b.x), 0, width);
        const int x1 = std::clamp(hi(a.x, b.x), 0, width);
        const int y0 = std::clamp(lo(a.y, b.y), 0, height);
        const int y1 = std::clamp(hi(a.y, b.y), 0, height);
        const base::Vec2 d = b - a;
        const double dd = std::max(1e-9, base::dot(d, d));
        for (int y = y0; y < y1; ++y) {
            for (int x = x0; x < x1; ++x) {
                const base::Vec2 q = base::Vec2{x + 0.5, y + 0.5} - a;
                const double t = std::clamp(base::dot(q, d) / dd, 0.0, 1.0);
                const double away = base::length(q - d * t);
                const auto cover = static_cast<float>(std::clamp(half + 0.5 - away, 0.0, 1.0));
                float& v = p[static_cast<std::size_t>(y) * width + x];
                v += cover * (luma - v);
            }
        }
    }

    [[nodiscard]] std::vector<float> backdrop() const {
        std::vector<float> p(static_cast<std::size_t>(width) * height);
        std::mt19937 random(seed);
        std::uniform_real_distribution<double> any(0.0, 1.0);
        for (int y = 0; y < height; ++y) {
            const float base = y < height * 0.55 ? 150.0F : 105.0F;
            for (int x = 0; x < width; ++x) {
                p[static_cast<std::size_t>(y) * width + x] = base;
            }
        }
        const int posts = static_cast<int>(14 * background);
        for (int i = 0; i < posts; ++i) { // fence posts and mat lines
            const double x = any(random) * width;
            const double y = height * (0.6 + 0.4 * any(random));
            stroke(p, {x, height * 0.1}, {x + 10, height * 0.6}, 1.5F,
                   static_cast<float>(40 + 180 * any(random)));
            stroke(p, {0, y}, {static_cast<double>(width), y + 30 * (any(random) - 0.5)}, 1.5F,
                   static_cast<float>(40 + 180 * any(random)));
        }
        const int leaves = static_cast<int>(2500 * background);
        for (int i = 0; i < leaves; ++i) {
            const base::Vec2 c{any(random) * width, any(random) * height};
            const base::Vec2 e = c + base::Vec2{8 * any(random) - 4, 8 * any(random) - 4};
            stroke(p, c, e, static_cast<float>(0.5 + 2 * any(random)),
                   static_cast<float>(70 + 110 * any(random)));
        }
        return p;
    }

  private:
    [[nodiscard]] double turned(double t, double range, double power, double fade) const {
        if (t < kStill) {
            return 0.0;
        }
        if (t < top()) {
            const double u = (t - kStill) / kBack;
            return -range * u * u * (3 - 2 * u);
        }
        if (t < impact()) {
            const double u = (t - top()) / kDown;
            return -range * (1 - std::pow(u, power));
        }
        const double speed = 0.85 * range * power / kDown; // the hit takes some
        return speed * (1 - std::exp(-fade * (t - impact()))) / fade;
    }
};

/// Films a swing. What does not change from frame to frame is drawn once.
class Film {
  public:
    explicit Film(const Swing& swing)
        : swing_(swing), backdrop_(swing.backdrop()), grain_(backdrop_.size() + kGrainOffsets) {
        std::mt19937 random(swing.seed * 7919U);
        std::normal_distribution<float> grain(0.0F, static_cast<float>(swing.noise));
        for (float& g : grain_) {
            g = grain(random);
        }
    }

    [[nodiscard]] video::Frame frame(int index) const {
        const Swing& w = swing_;
        const double t = index / w.fps;
        std::vector<float> p = backdrop_;
        const auto s = static_cast<float>(w.stature);
        // Body: legs, trunk, head; then forearms over the club's grip.
        const base::Vec2 hip{w.width * 0.5, w.height * 0.33 + 0.30 * w.stature};
        for (int leg : {-1, 1}) {
            w.stroke(p, hip + base::Vec2{leg * 0.05 * w.stature, 0},
                     hip + base::Vec2{leg * 0.13 * w.stature, 0.47 * w.stature}, 0.045F * s, 60.0F);
        }
        w.stroke(p, w.shoulder(), hip, 0.10F * s, 130.0F);
        w.stroke(p, w.shoulder() - base::Vec2{0, 0.13 * w.stature},
                 w.shoulder() - base::Vec2{0, 0.10 * w.stature}, 0.05F * s, 170.0F);
        if (w.ball && (w.ballStays || t < w.impact())) {
            w.stroke(p, w.ballAt(), w.ballAt(), static_cast<float>(w.ballRadius()), 235.0F);
        }
        if (w.club) {
            blur(p, t);
        }
        const Hands h = w.estimatedHands(t);
        w.stroke(p, *h.leadElbow, w.hands(t), 0.024F * s, 165.0F);
        w.stroke(p, *h.trailElbow, w.hands(t), 0.024F * s, 155.0F);
        return grainy(p, index, t);
    }

  private:
    static constexpr std::size_t kGrainOffsets = 1 << 16;

    /// The moving club is the mean of sharp ones through the exposure, in the rows and columns it reaches.
    void blur(std::vector<float>& p, double t) const {
        constexpr int kParts = 5;
        const Swing& w = swing_;
        const double reach = (w.clubLength + 0.08) * w.stature + 4; // from the hands to beyond either end
        const base::Vec2 hands = w.hands(t);
        const int x0 = std::clamp(static_cast<int>(hands.x - reach), 0, w.width);
        const int x1 = std::clamp(static_cast<int>(hands.x + reach), x0, w.width);
        const int y0 = std::clamp(static_cast<int>(hands.y - reach), 0, w.height);
        const int y1 = std::clamp(static_cast<int>(hands.y + reach), y0, w.height);
        const auto eachRow = [&](auto&& work) {
            for (int y = y0; y < y1; ++y) {
                const std::size_t from = static_cast<std::size_t>(y) * w.width;
                work(from + x0, from + x1);
            }
        };
        std::vector<float> sharp = p, mean(p.size(), 0.0F);
        for (int k = 0; k < kParts; ++k) {
            const double tk = t + ((k + 0.5) / kParts - 0.5) * w.exposure;
            w.stroke(sharp, w.butt(tk), w.head(tk), static_cast<float>(std::max(0.8, 0.0032 * w.stature)),
                     static_cast<float>(w.shaftLuma));
            w.stroke(sharp, w.head(tk), w.head(tk) + base::Vec2{w.side * 0.01 * w.stature, 0.012 * w.stature},
                     0.016F * static_cast<float>(w.stature), 40.0F);
            eachRow([&](std::size_t from, std::size_t to) {
                for (std::size_t i = from; i < to; ++i) {
                    mean[i] += sharp[i] / kParts;
                    sharp[i] = p[i];
                }
            });
        }
        eachRow([&](std::size_t from, std::size_t to) {
            std::copy(mean.begin() + static_cast<std::ptrdiff_t>(from),
                      mean.begin() + static_cast<std::ptrdiff_t>(to),
                      p.begin() + static_cast<std::ptrdiff_t>(from));
        });
    }

    /// One field of grain is drawn and laid over every frame at another place.
    [[nodiscard]] video::Frame grainy(const std::vector<float>& p, int index, double t) const {
        struct Owned {
            std::vector<std::uint8_t> luma, chroma;
        };
        const int width = swing_.width, height = swing_.height;
        auto owned = std::make_shared<Owned>();
        owned->luma.resize(p.size());
        owned->chroma.assign(static_cast<std::size_t>((width + 1) / 2) * ((height + 1) / 2), 128);
        std::mt19937 random(swing_.seed * 104729U + static_cast<unsigned>(index));
        const float* grain = grain_.data() + random() % kGrainOffsets;
        for (std::size_t i = 0; i < p.size(); ++i) {
            owned->luma[i] = static_cast<std::uint8_t>(std::clamp(p[i] + grain[i], 0.0F, 255.0F));
        }
        const video::PlaneView y{owned->luma.data(), width, height, width};
        const video::PlaneView c{owned->chroma.data(), (width + 1) / 2, (height + 1) / 2, (width + 1) / 2};
        return {index, base::Seconds{t}, y, c, c, {}, owned};
    }

    Swing swing_;
    std::vector<float> backdrop_;
    std::vector<float> grain_;
};

/// Evidence of the whole swing.
inline std::vector<Evidence> search(const Swing& swing, base::Vec2 bias = {}, int first = 0,
                                    int last = 1 << 20) {
    SearchOptions options;
    options.framesPerSecond = swing.fps;
    ShaftSearch search(options);
    const Film film(swing);
    for (int i = first; i < std::min(last, swing.frames()); ++i) {
        search.push(film.frame(i), swing.estimatedHands(i / swing.fps, bias));
    }
    return search.finish();
}

} // namespace plumbmark::club::synthetic
