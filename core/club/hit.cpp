// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "club/shaft.h"

namespace plumbmark::club {
namespace {

constexpr double kDegree = std::numbers::pi / 180.0;
constexpr double kWindow = 0.045; ///< real seconds each side of the hit
constexpr double kAfterHit = 0.2; ///< weight of the frames after it
/// A rolling shutter reads the ball's rows so much later than the picture's middle, for each of their share
/// of its height: read-outs of phones lie between 0 and 10 ms (published values, 6.4); one sigma, real
/// seconds.
constexpr double kReadOutSigma = 0.003;

/// Least squares with up to five unknowns and one right-hand side per signal.
template <int Unknowns> struct LeastSquares {
    std::array<std::array<double, Unknowns>, Unknowns> normal{};
    std::array<double, Unknowns> right{};
    void add(const std::array<double, Unknowns>& row, double value, double weight) {
        for (int r = 0; r < Unknowns; ++r) {
            for (int c = 0; c < Unknowns; ++c) {
                normal[r][c] += weight * row[r] * row[c];
            }
            right[r] += weight * row[r] * value;
        }
    }
    /// Solution, and the first unknown's variance in `variance`. A small ridge keeps unseen unknowns at 0.
    std::array<double, Unknowns> solve(double& variance) const {
        std::array<std::array<double, Unknowns + 2>, Unknowns> m{};
        for (int r = 0; r < Unknowns; ++r) {
            for (int c = 0; c < Unknowns; ++c) {
                m[r][c] = normal[r][c];
            }
            m[r][r] += 1e-9 * (1.0 + normal[r][r]);
            m[r][Unknowns] = right[r];
            m[r][Unknowns + 1] = r == 0 ? 1.0 : 0.0;
        }
        for (int col = 0; col < Unknowns; ++col) {
            int pivot = col;
            for (int r = col + 1; r < Unknowns; ++r) {
                if (std::abs(m[r][col]) > std::abs(m[pivot][col])) {
                    pivot = r;
                }
            }
            std::swap(m[pivot], m[col]);
            const double d = m[col][col];
            for (double& x : m[col]) {
                x /= d;
            }
            for (int r = 0; r < Unknowns; ++r) {
                if (r != col) {
                    const double f = m[r][col];
                    for (int c = 0; c < Unknowns + 2; ++c) {
                        m[r][c] -= f * m[col][c];
                    }
                }
            }
        }
        std::array<double, Unknowns> x{};
        for (int r = 0; r < Unknowns; ++r) {
            x[r] = m[r][Unknowns];
        }
        variance = std::max(m[0][Unknowns + 1], 0.0);
        return x;
    }
};

} // namespace

std::optional<ShaftSample> shaftAt(const ShaftTrack& track, base::Seconds time,
                                   std::optional<base::Seconds> hit) {
    // Neighbours: the two told samples around `time`, and one more on each side where no hit lies between.
    int before = -1, after = -1;
    for (std::size_t i = 0; i < track.size(); ++i) {
        if (!track[i]) {
            continue;
        }
        if (track[i]->time <= time) {
            before = static_cast<int>(i);
        } else {
            after = static_cast<int>(i);
            break;
        }
    }
    if (before >= 0 && track[static_cast<std::size_t>(before)]->time == time) {
        return track[static_cast<std::size_t>(before)];
    }
    if (before < 0 || after != before + 1) {
        return std::nullopt;
    }
    const ShaftSample& a = *track[static_cast<std::size_t>(before)];
    const ShaftSample& b = *track[static_cast<std::size_t>(after)];
    const double span = (b.time - a.time).value();
    const double k = (time - a.time).value() / span;
    ShaftSample s = k < 0.5 ? a : b;
    s.time = time;
    s.origin = std::max({a.origin, b.origin, base::Origin::tracked});
    s.angleDegrees = a.angleDegrees + k * (b.angleDegrees - a.angleDegrees);
    s.sigmaDegrees = std::max(a.sigmaDegrees, b.sigmaDegrees);
    const bool across = hit && a.time < *hit && *hit < b.time;
    // The bend of the motion, from the second differences on both sides.
    double bend = 0.0;
    int bends = 0;
    auto second = [&](int i) {
        if (i < 1 || i + 1 >= static_cast<int>(track.size())) {
            return;
        }
        const auto &p = track[static_cast<std::size_t>(i) - 1], &q = track[static_cast<std::size_t>(i)],
                   &r = track[static_cast<std::size_t>(i) + 1];
        if (p && q && r && !(hit && p->time < *hit && *hit < r->time)) {
            bend += p->angleDegrees - 2 * q->angleDegrees + r->angleDegrees;
            ++bends;
        }
    };
    second(before);
    second(after);
    if (bends > 0 && !across) {
        s.angleDegrees -= 0.5 * (bend / bends) * k * (1 - k);
    } else {
        s.sigmaDegrees = std::hypot(s.sigmaDegrees, 0.1 * std::abs(b.angleDegrees - a.angleDegrees));
    }
    s.through = a.through * (1 - k) + b.through * k;
    if (a.butt && b.butt) {
        s.butt = *a.butt * (1 - k) + *b.butt * k;
    }
    if (a.head && b.head) {
        const double reach =
            base::length(*a.head - a.through) * (1 - k) + base::length(*b.head - b.through) * k;
        s.head = s.through + directionOf(s.angleDegrees) * reach;
        s.headSigma = std::max(a.headSigma, b.headSigma);
    }
    return s;
}

std::optional<Hit> fitHit(std::span<const Evidence> /*evidence*/, const ShaftTrack& track, const Ball& ball,
                          const FitContext& context) {
    if (!ball.lastSeen || !ball.firstGone) {
        return std::nullopt;
    }
    const double r = context.timeScale.realPerShown > 0 ? context.timeScale.realPerShown : 1.0;
    const double from = ball.lastSeen->value() * r, to = ball.firstGone->value() * r;
    double t0 = (from + to) / 2;
    Hit hit;
    double sigmaTime = 0.0;
    // The face meets the ball when the shaft's line has come to within the ball's radius of its centre: line
    // geometry alone, so the uncertain end of the club does not enter. The face lies up to 2 cm off the
    // shaft's line; at 40 m/s that is half a millisecond.
    for (int round = 0; round < 6; ++round) {
        LeastSquares<5> angle, distance, tx, ty;
        int earlier = 0;
        double residual = 0.0, weights = 0.0;
        struct Row {
            std::array<double, 5> x;
            double d, w;
        };
        std::vector<Row> rows;
        double lever = 0.0;
        for (const auto& s : track) {
            if (!s) {
                continue;
            }
            const double tau = s->time.value() * r - t0;
            if (std::abs(tau) > kWindow) {
                continue;
            }
            const double scale = tau / kWindow;
            const std::array<double, 5> row{1.0, scale < 0 ? scale : 0.0, scale < 0 ? scale * scale : 0.0,
                                            scale >= 0 ? scale : 0.0, scale >= 0 ? scale * scale : 0.0};
            // Far samples carry the curvature of the whole downswing that a parabola lacks.
            // After the hit the head is held back and the shaft rings, so those speak less of the hit's
            // place.
            const double taper = (1.0 - 0.8 * scale * scale) * (scale > 0 ? kAfterHit : 1.0);
            const double w = taper / std::max(0.04, s->sigmaDegrees * s->sigmaDegrees);
            const base::Vec2 toBall = ball.centre - s->through;
            lever = std::max(lever, base::length(toBall));
            const double d = base::cross(directionOf(s->angleDegrees), toBall);
            angle.add(row, s->angleDegrees, w);
            distance.add(row, d, w);
            tx.add(row, s->through.x, w);
            ty.add(row, s->through.y, w);
            rows.push_back({row, d, w});
            earlier += tau < 0.25 * (to - from) ? 1 : 0;
        }
        if (earlier < 3 || rows.size() < 4) {
            return std::nullopt;
        }
        double va = 0, vd = 0, ignore = 0;
        const auto a = angle.solve(va);
        const auto d = distance.solve(vd);
        for (const Row& row : rows) {
            double e = row.d;
            for (int k = 0; k < 5; ++k) {
                e -= d[k] * row.x[k];
            }
            residual += row.w * e * e;
            weights += row.w;
        }
        const double slope = d[1] / kWindow; // px per real second before the hit
        if (std::abs(slope) < 1.0) {
            return std::nullopt;
        }
        const double rms = std::sqrt(residual / weights * static_cast<double>(rows.size()) /
                                     std::max<double>(1.0, static_cast<double>(rows.size()) - 4.0));
        const double sigmaDistance = std::max(rms, lever * kDegree * std::sqrt(va));
        const double lower =
            context.pictureHeight > 0 ? std::abs(ball.centre.y / context.pictureHeight - 0.5) : 0.3;
        sigmaTime = std::hypot(sigmaDistance / std::abs(slope), std::hypot(0.0006, kReadOutSigma * lower));
        hit.degreesPerSecond = a[1] / kWindow * r;
        const auto x = tx.solve(ignore), y = ty.solve(ignore);
        hit.shaft.through = {x[0], y[0]};
        const double angleNoise = std::max(std::sqrt(va), rms / std::max(lever, 1.0) / kDegree);
        // The lean is read at the ball, not at a time: an error in time moves line and ball alike and cancels
        // to first order. The blurred line's own direction is the weaker witness; the stronger is the line
        // from the hands to where the face touches the ball, which no blur turns: it is as sure as the hands
        // (a hundredth of their way to the ball), the face's place before the shaft, and the hands' way
        // within the time left open.
        const double touching = std::copysign(ball.radius, slope);
        const base::Vec2 toBall = ball.centre - hit.shaft.through;
        const double way = std::max(base::length(toBall), 1.0);
        const double straight = angleOf(toBall) - std::asin(std::clamp(touching / way, -0.5, 0.5)) / kDegree;
        const double handsMove = std::hypot(x[1], y[1]) / kWindow * sigmaTime;
        const double straightNoise =
            std::hypot(0.012 * way, handsMove, std::hypot(ball.sigma, 0.5 * ball.radius)) / way / kDegree;
        const double own = 1.0 / (angleNoise * angleNoise), line = 1.0 / (straightNoise * straightNoise);
        hit.shaft.angleDegrees = a[0] + std::remainder(straight - a[0], 360.0) * line / (own + line);
        hit.shaft.sigmaDegrees = std::sqrt(1.0 / (own + line));
        const double move = std::clamp(-(d[0] + touching) / slope, -0.006, 0.006);
        const double next = std::clamp(t0 + move, from - 0.003, to + 0.003);
        const bool settled = std::abs(next - t0) < 1e-5;
        t0 = next;
        if (settled) {
            break;
        }
    }
    hit.time = base::Seconds{t0 / r};
    hit.sigma = base::Seconds{sigmaTime / r};
    hit.shaft.time = hit.time;
    hit.shaft.head = ball.centre;
    hit.shaft.headSigma = ball.sigma + ball.radius;
    hit.shaft.origin = base::Origin::interpolated;
    return hit;
}

} // namespace plumbmark::club
