// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "club/detail/line_fit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <vector>

namespace plumbmark::club::detail {

namespace {

/// Bilinear luma at a point in picture px (pixel centres at .5); false outside.
inline bool sample(const video::PlaneView& p, double x, double y, float& out) {
    const double u = x - 0.5;
    const double v = y - 0.5;
    const int iu = static_cast<int>(std::floor(u));
    const int iv = static_cast<int>(std::floor(v));
    if (iu < 0 || iv < 0 || iu + 1 >= p.width || iv + 1 >= p.height) {
        return false;
    }
    const auto fu = static_cast<float>(u - iu);
    const auto fv = static_cast<float>(v - iv);
    const std::uint8_t* a = p.data + iv * p.stride + iu;
    const std::uint8_t* b = a + p.stride;
    const float top = static_cast<float>(a[0]) + fu * static_cast<float>(a[1] - a[0]);
    const float low = static_cast<float>(b[0]) + fu * static_cast<float>(b[1] - b[0]);
    out = top + fv * (low - top);
    return true;
}

/// Grey values on a straight run of points, `values[k]` at (x, y) + k (dx, dy); false when any lies outside.
/// Steps in 1/65536 px: no rounding of coordinates inside the loop.
bool sampleRun(const video::PlaneView& p, double x, double y, double dx, double dy, int count,
               float* values) {
    const auto inside = [&](double px, double py) {
        return px >= 0.5 && py >= 0.5 && px - 0.5 < p.width - 1.01 && py - 0.5 < p.height - 1.01;
    };
    if (!inside(x, y) || !inside(x + dx * (count - 1), y + dy * (count - 1))) {
        return false;
    }
    constexpr double kOne = 65536.0;
    auto u = static_cast<std::int32_t>((x - 0.5) * kOne);
    auto v = static_cast<std::int32_t>((y - 0.5) * kOne);
    const auto du = static_cast<std::int32_t>(std::lround(dx * kOne));
    const auto dv = static_cast<std::int32_t>(std::lround(dy * kOne));
    for (int k = 0; k < count; ++k, u += du, v += dv) {
        const std::uint8_t* a = p.data + (v >> 16) * p.stride + (u >> 16);
        const std::uint8_t* b = a + p.stride;
        const int fu = (u >> 8) & 255;
        const int fv = (v >> 8) & 255;
        const int top = a[0] * (256 - fu) + a[1] * fu;
        const int low = b[0] * (256 - fu) + b[1] * fu;
        values[k] = static_cast<float>(top * (256 - fv) + low * fv) * (1.0F / 65536.0F);
    }
    return true;
}

struct Station {
    double along = 0.0;  ///< px from the foot of the hands
    double across = 0.0; ///< measured centre of the ridge, px from the first guess's line
    double weight = 0.0; ///< strength, 0..1
};

/// Weighted straight line across = a + b (along - mean).
struct Straight {
    double a = 0.0, b = 0.0, mean = 0.0;
    double weight = 0.0, spread = 0.0; ///< sum of weights, weighted sum of squared distances from the mean
    [[nodiscard]] double at(double along) const { return a + b * (along - mean); }
};

Straight solve(const std::vector<Station>& stations, const std::vector<double>& trust) {
    Straight s;
    double sy = 0.0;
    for (std::size_t i = 0; i < stations.size(); ++i) {
        const double w = stations[i].weight * trust[i];
        s.weight += w;
        s.mean += w * stations[i].along;
        sy += w * stations[i].across;
    }
    if (s.weight <= 0.0) {
        return s;
    }
    s.mean /= s.weight;
    s.a = sy / s.weight;
    double sxy = 0.0;
    for (std::size_t i = 0; i < stations.size(); ++i) {
        const double w = stations[i].weight * trust[i];
        const double d = stations[i].along - s.mean;
        s.spread += w * d * d;
        sxy += w * d * (stations[i].across - s.a);
    }
    s.b = s.spread > 0 ? sxy / s.spread : 0.0;
    return s;
}

constexpr int kProfile = 49; ///< at most, odd

/// How far the line goes on: presence of a ridge (or of motion) within a thickness of the fitted line, from
/// `start` to `limit`, px along. A stretch where the shaft hides against something of its own shade is
/// crossed when enough of the very same line comes after it.
double findEnd(const video::PlaneView& now, const video::PlaneView& past, const video::PlaneView& future,
               base::Vec2 origin, base::Vec2 d, double start, double limit, double shaft) {
    const bool moving = past.data != nullptr && future.data != nullptr;
    const base::Vec2 n{d.y, -d.x};
    const double step = std::max(1.0, 0.6 * shaft);
    const double wing = 1.1 * shaft;
    std::vector<float> answer;
    for (double along = start; along <= limit; along += step) {
        float most = 0.0F;
        bool inside = true;
        for (int k = -1; k <= 1 && inside; ++k) {
            const base::Vec2 q = origin + d * along + n * (k * 0.5 * shaft);
            float c = 0.0F;
            float a = 0.0F;
            float b = 0.0F;
            inside = sample(now, q.x, q.y, c) && sample(now, q.x + n.x * wing, q.y + n.y * wing, a) &&
                     sample(now, q.x - n.x * wing, q.y - n.y * wing, b);
            if (!inside) {
                break;
            }
            float value = std::min(30.0F, std::max({0.0F, c - std::max(a, b), std::min(a, b) - c}));
            if (moving && sample(past, q.x, q.y, a) && sample(future, q.x, q.y, b)) {
                value += std::min(30.0F, std::max({0.0F, c - std::max(a, b), std::min(a, b) - c}));
            }
            most = std::max(most, value);
        }
        if (!inside) {
            break;
        }
        answer.push_back(most);
    }
    if (answer.empty()) {
        return start;
    }
    std::vector<float> sorted = answer;
    const auto strong = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() * 6 / 10);
    std::nth_element(sorted.begin(), strong, sorted.end());
    const float enough = std::max(4.0F, 0.4F * *strong);
    double sum = 0.0;
    double best = 0.0;
    std::size_t end = 0;
    for (std::size_t i = 0; i < answer.size(); ++i) {
        sum += std::min(1.0F, answer[i] / enough) - 0.45;
        if (sum >= best) {
            best = sum;
            end = i + 1;
        }
    }
    return start + static_cast<double>(end) * step;
}

} // namespace

std::optional<LineCandidate> fitLine(video::PlaneView now, video::PlaneView past, video::PlaneView future,
                                     const LineGuess& guess, double stature) {
    const bool moving = past.data != nullptr && future.data != nullptr;
    const base::Vec2 d = directionOf(guess.angleDegrees);
    const base::Vec2 n{d.y, -d.x};
    const base::Vec2 origin = guess.hands + n * guess.offset;
    const double shaft = std::max(1.2, 0.006 * stature); ///< about the shaft's thickness on the picture, px
    const double length = guess.reach - guess.near;
    if (length < 0.05 * stature) {
        return std::nullopt;
    }
    const int count = std::clamp(static_cast<int>(length / std::max(2.0, 0.008 * stature)), 10, 64);

    std::vector<Station> stations;
    std::vector<double> trust;
    Straight line;
    double window = 0.016 * stature + 1.5; ///< half width of a profile, px
    for (int round = 0; round < 3; ++round) {
        stations.clear();
        const double step = std::max(0.5, 2 * window / (kProfile - 1));
        const int half = std::min((kProfile - 1) / 2, static_cast<int>(std::ceil(window / step)));
        for (int i = 0; i < count; ++i) {
            const double along = guess.near + length * (i + 0.5) / count;
            const double middle = round == 0 ? 0.0 : line.at(along);
            std::array<float, kProfile> p{};
            std::array<float, kProfile> t{};
            const base::Vec2 first = origin + d * along + n * (middle - half * step);
            if (!sampleRun(now, first.x, first.y, n.x * step, n.y * step, 2 * half + 1, p.data())) {
                continue;
            }
            std::array<float, kProfile> before;
            std::array<float, kProfile> after;
            if (moving &&
                sampleRun(past, first.x, first.y, n.x * step, n.y * step, 2 * half + 1, before.data()) &&
                sampleRun(future, first.x, first.y, n.x * step, n.y * step, 2 * half + 1, after.data())) {
                for (int k = 0; k <= 2 * half; ++k) {
                    t[k] = std::max(
                        {0.0F, p[k] - std::max(before[k], after[k]), std::min(before[k], after[k]) - p[k]});
                }
            }
            // Ridge in space: how far each point lies outside the band of the points one thickness beside it.
            const int wing = std::max(1, static_cast<int>(std::lround(1.1 * shaft / step)));
            double best = 0.0;
            int at = -1;
            std::array<float, kProfile> q{};
            for (int k = wing; k <= 2 * half - wing; ++k) {
                const float c = p[k];
                const float a = p[k - wing];
                const float b = p[k + wing];
                const float ridge = std::max({0.0F, c - std::max(a, b), std::min(a, b) - c});
                q[k] = std::min(ridge, 30.0F) + std::min(t[k], 30.0F);
                if (q[k] > best) {
                    best = q[k];
                    at = k;
                }
            }
            if (at < 0 || best < 2.5) {
                continue;
            }
            // Centroid of the connected answer round its peak.
            double sum = 0.0;
            double moment = 0.0;
            int lo = at;
            int hi = at;
            while (lo > 0 && q[lo - 1] > 0.35 * best) {
                --lo;
            }
            while (hi < 2 * half && q[hi + 1] > 0.35 * best) {
                ++hi;
            }
            for (int k = lo; k <= hi; ++k) {
                sum += q[k];
                moment += q[k] * (k - half);
            }
            stations.push_back({along, middle + moment / sum * step, std::min(1.0, best / 12.0)});
        }
        if (stations.size() < 6) {
            return std::nullopt;
        }
        // Robust line: start from the median of the offsets, let far stations fade out.
        trust.assign(stations.size(), 1.0);
        if (round == 0) {
            line = {};
            // The best-supported of the lines through pairs far apart: a dozen outliers must not tilt the
            // start.
            double bestVote = -1.0;
            const double agree = 0.6 * shaft + 0.5;
            for (std::size_t i = 0; i < stations.size(); i += 2) {
                for (std::size_t j = i + stations.size() / 3; j < stations.size(); j += 2) {
                    const double run = stations[j].along - stations[i].along;
                    if (run <= 0) {
                        continue;
                    }
                    const double slope = (stations[j].across - stations[i].across) / run;
                    double vote = 0.0;
                    for (const Station& s : stations) {
                        const double r =
                            s.across - stations[i].across - slope * (s.along - stations[i].along);
                        vote += std::abs(r) < agree ? s.weight * (1.0 - std::abs(r) / agree) : 0.0;
                    }
                    if (vote > bestVote) {
                        bestVote = vote;
                        line.a = stations[i].across;
                        line.b = slope;
                        line.mean = stations[i].along;
                    }
                }
            }
        }
        for (int it = 0; it < 4; ++it) {
            const double scale = it < 2 ? 1.5 * shaft + 1.0 : 0.9 * shaft + 0.7;
            for (std::size_t i = 0; i < stations.size(); ++i) {
                const double r = (stations[i].across - line.at(stations[i].along)) / scale;
                trust[i] = std::abs(r) < 1.0 ? (1 - r * r) * (1 - r * r) : 0.0;
            }
            const Straight next = solve(stations, trust);
            if (next.weight <= 0.0 || next.spread <= 0.0) {
                return std::nullopt;
            }
            line = next;
        }
        window = std::max(2.2 * shaft + 1.0, 3.0);
    }

    // What carries the line.
    int carriers = 0;
    double squares = 0.0;
    double low = 1e9;
    double high = -1e9;
    double bendTop = 0.0;
    double bendBottom = 0.0;
    const double middleOfRun = line.mean;
    const double variance = line.spread / line.weight;
    for (std::size_t i = 0; i < stations.size(); ++i) {
        const double w = stations[i].weight * trust[i];
        const double r = stations[i].across - line.at(stations[i].along);
        squares += w * r * r;
        const double x = stations[i].along - middleOfRun;
        const double curve = x * x - variance;
        bendTop += w * curve * r;
        bendBottom += w * curve * curve;
        if (trust[i] > 0.3) {
            ++carriers;
            low = std::min(low, stations[i].along);
            high = std::max(high, stations[i].along);
        }
    }
    if (carriers < 6 || carriers < static_cast<int>(0.3 * count) || high - low < 0.05 * stature) {
        return std::nullopt;
    }
    const double degrees = guess.angleDegrees + std::atan(line.b) * 180.0 / std::numbers::pi;
    if (std::abs(degrees - guess.angleDegrees) > 8.0) {
        return std::nullopt; // another line
    }
    // Neighbouring stations share pixels and coding blocks: count only a third of them as independent. Pixel
    // grid and shading along the shaft leave about a twentieth of a pixel even on perfect lines.
    const double perStation = std::sqrt(squares / line.weight);
    const double independent = std::max(2.0, carriers / 3.0);
    const double across = std::sqrt(perStation * perStation / independent + 0.05 * 0.05);
    const double slopeSigma = across / std::sqrt(std::max(1.0, variance));

    LineCandidate c;
    const base::Vec2 dir = directionOf(degrees);
    const base::Vec2 onLine = origin + d * line.mean + n * line.a;
    const base::Vec2 foot = onLine + dir * base::dot(guess.hands - onLine, dir);
    double wrapped = degrees;
    while (wrapped >= 180.0) {
        wrapped -= 360.0;
    }
    while (wrapped < -180.0) {
        wrapped += 360.0;
    }
    c.angleDegrees = static_cast<float>(wrapped);
    c.sigmaDegrees = static_cast<float>(slopeSigma * 180.0 / std::numbers::pi);
    c.throughX = static_cast<float>(foot.x);
    c.throughY = static_cast<float>(foot.y);
    const double shift = base::dot(origin - foot, dir);
    c.near = static_cast<float>(low + shift);
    const double end =
        findEnd(now, past, future, foot, dir, std::max(0.0, low + shift), 0.72 * stature, shaft);
    c.reach = static_cast<float>(std::max(end, 0.9 * (high + shift)));
    c.sigmaPixels = static_cast<float>(across);
    c.score =
        static_cast<float>(std::min(1.0, 1.2 * carriers / count)); // share of the way that carries the line
    const double run = (high - low) / 2;
    c.bend = bendBottom > 0 ? static_cast<float>(-bendTop / bendBottom * run * run) : 0.0F;
    return c;
}

} // namespace plumbmark::club::detail
