// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include <opencv2/core.hpp>
#include <opencv2/imgproc.hpp>

#include "scene/estimates.h"

namespace plumbmark::scene {
namespace {

constexpr double kDegree = std::numbers::pi / 180.0;
constexpr double kWorkSide = 960.0;
constexpr double kMostRoll =
    12.0; ///< degrees off the picture's up that an edge may stand and still speak of roll
/// Degrees per half picture width: what 3 degrees of pitch (a camera levelled by eye) make of standing edges
/// seen through a phone's main lens (half width 0.66 of the focal length).
constexpr double kConverging = 2.0;
constexpr double kEdge = 0.5; ///< degrees: a post or a wall's corner off true, and its edge off the post
constexpr double kWorthTelling = 0.9; ///< degrees of sigma: beyond, a camera set up by eye is as good

struct Edge {
    double roll = 0.0; ///< angle of the edge off the picture's vertical, clockwise, degrees
    double length = 0.0;
    double x = 0.0; ///< where it stands across the picture, from its middle, shares of the half width
};

/// Standing edges lean by roll + converging x.
struct Lean {
    double roll = 0.0;       ///< degrees, in the picture's middle
    double converging = 0.0; ///< degrees per half picture width
    double sigma = 0.0;      ///< of roll
    double length = 0.0;     ///< of the edges that agree
    int count = 0;
};

/// Least squares over the edges at most `most` degrees off `start`, each as heavy as it is long.
Lean fit(const std::vector<Edge>& edges, const Lean& start, double most) {
    Lean out;
    double sx = 0.0, sxx = 0.0, sy = 0.0, sxy = 0.0;
    std::vector<const Edge*> agreeing;
    for (const Edge& e : edges) {
        if (std::abs(e.roll - start.roll - start.converging * e.x) >= most) {
            continue;
        }
        agreeing.push_back(&e);
        out.length += e.length;
        sx += e.length * e.x;
        sxx += e.length * e.x * e.x;
        sy += e.length * e.roll;
        sxy += e.length * e.x * e.roll;
    }
    out.count = static_cast<int>(agreeing.size());
    if (agreeing.empty()) {
        return out;
    }
    // In units of the mean edge: its lean is good to kEdge, the converging is known to kConverging
    // beforehand.
    const double held = kEdge * kEdge / (kConverging * kConverging);
    const double mx = sx / out.length, my = sy / out.length;
    const double vxx = sxx / out.length + held / out.count, vxy = sxy / out.length;
    const double det = vxx - mx * mx;
    out.converging = det > 1e-9 ? (vxy - mx * my) / det : 0.0;
    out.roll = my - out.converging * mx;
    double square = 0.0;
    for (const Edge* e : agreeing) {
        const double off = e->roll - out.roll - out.converging * e->x;
        square += e->length * off * off;
    }
    const double spread = std::sqrt(square / out.length);
    // Edges of one wall err together: the spread counts, not the spread over the root of their number. Where
    // they all stand on one side, what the converging leaves open comes on top.
    const double open = mx * kEdge / std::sqrt(std::max(1e-9, det * out.count));
    out.sigma = std::sqrt(0.3 * 0.3 + spread * spread + open * open);
    return out;
}

} // namespace

std::optional<Vertical> verticalFromEdges(const video::Frame& frame, std::span<const base::Box> moving) {
    if (frame.empty()) {
        return std::nullopt;
    }
    const auto luma = frame.luma();
    const cv::Mat full(luma.height, luma.width, CV_8U, const_cast<std::uint8_t*>(luma.data),
                       static_cast<std::size_t>(luma.stride));
    const double shrink = std::min(1.0, kWorkSide / std::max(full.cols, full.rows));
    cv::Mat work;
    cv::resize(full, work, {}, shrink, shrink, cv::INTER_AREA);
    auto detector = cv::createLineSegmentDetector(cv::LSD_REFINE_STD);
    std::vector<cv::Vec4f> segments;
    detector->detect(work, segments);

    const double longEnough = 0.12 * std::min(work.cols, work.rows);
    std::vector<Edge> edges;
    for (const auto& s : segments) {
        const base::Vec2 a{s[0], s[1]};
        const base::Vec2 b{s[2], s[3]};
        const double length = base::length(b - a);
        const base::Vec2 middle = base::midpoint(a, b) / shrink;
        if (length < longEnough || std::any_of(moving.begin(), moving.end(),
                                               [&](const base::Box& m) { return m.contains(middle); })) {
            continue;
        }
        // The picture's own border is no edge of the world.
        const double border = 3.0;
        if ((std::max(a.x, b.x) < border) || (std::min(a.x, b.x) > work.cols - border) ||
            (std::max(a.y, b.y) < border) || (std::min(a.y, b.y) > work.rows - border)) {
            continue;
        }
        const base::Vec2 up = a.y > b.y ? b - a : a - b;
        const double off = std::atan2(up.x, -up.y) / kDegree; // of vertical, clockwise
        if (std::abs(off) < kMostRoll) {
            edges.push_back({off, length, 2.0 * middle.x / full.cols - 1.0});
        }
    }
    // Level edges of the world slope in the picture when they run away from the camera; standing ones do not,
    // so only they decide.
    double total = 0.0;
    for (const auto& e : edges) {
        total += e.length;
    }
    // Convincing: at least four long edges, together longer than the picture is high.
    if (edges.size() < 4 || total < 1.2 * work.rows) {
        return std::nullopt;
    }
    std::sort(edges.begin(), edges.end(), [](const Edge& a, const Edge& b) { return a.roll < b.roll; });
    Lean lean;
    double run = 0.0;
    for (const auto& e : edges) {
        run += e.length;
        if (run >= total / 2.0) {
            lean.roll = e.roll;
            break;
        }
    }
    // A camera that looks up or down makes standing edges lean in proportion to how far they stand from the
    // middle: both are fitted, the leaning held near a camera levelled by eye. What lies off the fit (a
    // leaning bag, a branch) is left out; the first look for it is wider, before the leaning is known.
    Lean fitted = lean;
    for (const double most : {2.5, 1.5, 1.5}) {
        fitted = fit(edges, fitted, most);
    }
    if (fitted.count < 4 || fitted.length < 0.7 * total || fitted.sigma > kWorthTelling) {
        return std::nullopt;
    }
    return Vertical{fitted.roll, fitted.sigma, "edges"};
}

} // namespace plumbmark::scene
