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
    12.0; // degrees off the picture's axes that an edge may stand and still speak of roll

struct Edge {
    double roll = 0.0; ///< angle of the edge off the picture's vertical, clockwise, degrees
    double length = 0.0;
    bool standing = false;
    double x = 0.0; ///< where it stands across the picture, from its middle, shares of the half width
};

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
        const base::Vec2 along = a.x < b.x ? b - a : a - b;
        const double slope = std::atan2(along.y, along.x) / kDegree; // of level, clockwise
        if (std::abs(off) < kMostRoll) {
            edges.push_back({off, length, true, 2.0 * middle.x / full.cols - 1.0});
        } else if (std::abs(slope) < kMostRoll) {
            edges.push_back({slope, length, false, 0.0});
        }
    }
    // Level edges of the world slope in the picture when they run away from the camera, standing ones do not
    // (a level camera keeps them upright): only standing edges decide, level ones may only agree or
    // contradict.
    std::vector<Edge> standing;
    std::copy_if(edges.begin(), edges.end(), std::back_inserter(standing),
                 [](const Edge& e) { return e.standing; });
    double total = 0.0;
    for (const auto& e : standing) {
        total += e.length;
    }
    // Convincing: at least four long edges, together longer than the picture is high, standing on both sides
    // of the middle (a tilted camera makes the two sides lean against each other, which then shows in the
    // spread).
    const bool left =
        std::any_of(standing.begin(), standing.end(), [](const Edge& e) { return e.x < -0.15; });
    const bool right =
        std::any_of(standing.begin(), standing.end(), [](const Edge& e) { return e.x > 0.15; });
    if (standing.size() < 4 || total < 1.2 * work.rows || !left || !right) {
        return std::nullopt;
    }
    std::sort(standing.begin(), standing.end(), [](const Edge& a, const Edge& b) { return a.roll < b.roll; });
    double run = 0.0;
    double median = 0.0;
    for (const auto& e : standing) {
        run += e.length;
        if (run >= total / 2.0) {
            median = e.roll;
            break;
        }
    }
    double agreeing = 0.0, sum = 0.0, square = 0.0;
    int count = 0;
    for (const auto& e : standing) {
        if (std::abs(e.roll - median) < 1.5) {
            agreeing += e.length;
            sum += e.length * e.roll;
            square += e.length * e.roll * e.roll;
            ++count;
        }
    }
    if (count < 4 || agreeing < 0.7 * total) {
        return std::nullopt;
    }
    const double mean = sum / agreeing;
    const double spread = std::sqrt(std::max(0.0, square / agreeing - mean * mean));
    // Edges of one wall err together: the spread counts, not the spread over the root of their number.
    return Vertical{mean, std::hypot(0.3, spread), "edges"};
}

} // namespace plumbmark::scene
