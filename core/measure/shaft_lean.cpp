// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/shaft_lean.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace plumbmark::measure {
namespace {

using base::Vec2;
using marks::Landmark;
using marks::MomentId;

constexpr double kDegree = std::numbers::pi / 180.0;

constexpr double kButtBehindHands = 0.055; ///< statures

/// + when the grip is nearer the target than the head.
double leanOf(Vec2 gripToHead) {
    return std::atan2(-gripToHead.x, -gripToHead.y) / kDegree;
}

/// What a rolling shutter of unknown read-out (about 5 ms) bends a turning shaft by: half of speed x read-out
/// x the share of rows the shaft spans (published values, 6.4). `degreesPerSecond` in real time.
double rollingShutter(const Input& input, double degreesPerSecond) {
    const double rows = input.scene.height > 0 && input.scene.scale.pixelsPerStature > 0
                            ? std::min(0.5, 0.4 * input.scene.scale.pixelsPerStature / input.scene.height)
                            : 0.25;
    return 0.5 * std::abs(degreesPerSecond) * 0.005 * rows;
}

/// The lean where the club head is abreast of the ball's place, from the shaft in the frames around impact:
/// lean as a polynomial of the head's place along the target line, so that no time estimate enters.
std::optional<double> leanAtBall(Probe& p, Vec2 ball) {
    const auto& input = p.input();
    const auto* impact = marks::find(input.moments, MomentId::impact);
    if (impact == nullptr) {
        return p.fail("The moment \"impact\" was not found in this clip; mark it by hand.");
    }
    const double window = 0.045 / std::max(1e-3, input.timeScale.realPerShown);
    struct Point {
        double u, lean;
    };
    std::vector<Point> points;
    for (std::size_t i = 0; i < input.shaft.size() && points.size() < 48; ++i) {
        if (!input.shaft[i] || !input.shaft[i]->head ||
            std::abs((input.shaft[i]->time - impact->time).value()) > window) {
            continue;
        }
        const auto s = p.shaft(input.shaft[i]->time, 200 + static_cast<int>(points.size()), MomentId::impact);
        if (s && s->head) {
            points.push_back({s->head->x - ball.x, leanOf(s->direction)});
        }
    }
    // The nearest frames on both sides decide; the head must move toward the target between them.
    std::sort(points.begin(), points.end(), [](const Point& a, const Point& b) { return a.u < b.u; });
    const auto after = std::find_if(points.begin(), points.end(), [](const Point& q) { return q.u >= 0.0; });
    const auto before = std::distance(points.begin(), after);
    if (before < 2 || after == points.end()) {
        return p.fail("The shaft is not seen in enough frames around impact; film at 240 frames per second "
                      "with a short "
                      "shutter time.");
    }
    const auto from = std::max<std::ptrdiff_t>(0, before - 2);
    const auto to = std::min<std::ptrdiff_t>(static_cast<std::ptrdiff_t>(points.size()), before + 2);
    double lean = 0.0; // Lagrange through at most two frames before and two after
    for (auto i = from; i < to; ++i) {
        double weight = 1.0;
        for (auto j = from; j < to; ++j) {
            if (j != i) {
                const double gap =
                    points[static_cast<std::size_t>(i)].u - points[static_cast<std::size_t>(j)].u;
                if (std::abs(gap) < 1e-6) {
                    return p.fail(
                        "The club head does not move from frame to frame at impact; check the marks.");
                }
                weight *= -points[static_cast<std::size_t>(j)].u / gap;
            }
        }
        lean += weight * points[static_cast<std::size_t>(i)].lean;
    }
    const auto& a = points[static_cast<std::size_t>(before - 1)];
    const auto& b = points[static_cast<std::size_t>(before)];
    // Between frames the path is a model: a share of the turn between the two stays open.
    return lean + p.ownNoise(0, 0.08 * std::abs(b.lean - a.lean)) +
           p.ownNoise(1, rollingShutter(input, 2000.0));
}

std::optional<double> lean(Probe& p, MomentId m) {
    if (m != MomentId::impact) {
        const auto s = p.shaft(m);
        return s ? std::optional(leanOf(s->direction)) : std::nullopt;
    }
    if (p.input().hit) {
        const auto s = p.shaft(m);
        if (!s) {
            return std::nullopt;
        }
        const double real = p.input().hit->degreesPerSecond / std::max(1e-3, p.realPerShown());
        return leanOf(s->direction) + p.ownNoise(1, rollingShutter(p.input(), real));
    }
    const auto ball = p.ball();
    return ball ? leanAtBall(p, *ball) : std::nullopt;
}

/// Butt ahead of the ball, + toward the target.
std::optional<double> handsAhead(Probe& p, MomentId m) {
    const auto ball = p.ball();
    const auto stature = p.stature();
    if (!ball || !stature) {
        return std::nullopt;
    }
    const auto s = p.shaft(m);
    if (s && s->butt) {
        return (s->butt->x - ball->x) / *stature;
    }
    if (s && p.input().hit) {
        // Both hands cover the grip: its end lies about a hand's breadth behind their middle (hand breadth
        // 0.05 statures, from memory). The shaft's line passes the hands to within a tenth of that.
        const double behind = (kButtBehindHands + p.ownNoise(2, 0.015)) * *stature;
        return (s->grip.x - s->direction.x * behind - ball->x) / *stature + p.ownNoise(3, 0.006);
    }
    const auto butt = p.tryAt(Landmark::club_butt, m);
    if (!butt) {
        return p.fail("The grip end of the club could not be seen at impact; mark the butt by hand.");
    }
    return (butt->x - ball->x) / *stature;
}

/// How far the club has gone past level at the top, as it shows: + when the head is lower than the hands.
std::optional<double> pastLevel(Probe& p, MomentId m) {
    const auto s = p.shaft(m);
    return s ? std::optional(std::atan2(-s->direction.y, std::abs(s->direction.x)) / kDegree) : std::nullopt;
}

} // namespace

Definitions shaftLeanDefinitions() {
    const auto faceOn = marks::View::faceOn;
    return {
        {"shaft_lean",
         faceOn,
         base::Unit::degrees,
         2,
         {MomentId::address, MomentId::impact},
         lean,
         0.3,
         12.0,
         "The shaft at this moment is too blurred to tell its lean; film at 240 frames per second with a "
         "short shutter "
         "time."},
        {"hands_ahead", faceOn, base::Unit::statures, 2, {MomentId::impact}, handsAhead, 0.002},
        {"shaft_past_level", faceOn, base::Unit::degrees, 1, {MomentId::top}, pastLevel, 0.5},
    };
}

} // namespace plumbmark::measure
