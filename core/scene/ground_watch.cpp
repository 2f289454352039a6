// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "scene/ground_watch.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include <opencv2/calib3d.hpp>
#include <opencv2/core.hpp>
#include <opencv2/imgproc.hpp>
#include <opencv2/video/tracking.hpp>

namespace plumbmark::scene {
namespace {
constexpr double kWorkSide = 960.0;
constexpr int kCorners = 240;
constexpr int kFewest = 12; // inliers without which a frame's ground counts as lost

/// Spreads 0/255 over what does not move by itself.
cv::Mat groundMask(cv::Size size, std::span<const base::Box> moving, double shrink) {
    cv::Mat mask(size, CV_8U, cv::Scalar(255));
    for (const auto& b : moving) {
        const cv::Rect r(static_cast<int>(std::floor(b.x * shrink)) - 4,
                         static_cast<int>(std::floor(b.y * shrink)) - 4,
                         static_cast<int>(std::ceil(b.width * shrink)) + 8,
                         static_cast<int>(std::ceil(b.height * shrink)) + 8);
        const cv::Rect inside = r & cv::Rect({0, 0}, size);
        if (inside.area() > 0) {
            mask(inside).setTo(0);
        }
    }
    return mask;
}
} // namespace

struct GroundWatch::State {
    struct Placed {
        int frame;
        bool ok;
        GroundMotion::Step step;
    };
    double shrink = 1.0;
    cv::Size fullSize;
    std::vector<cv::Mat> reference; // pyramid
    std::vector<cv::Point2f> corners;
    cv::Mat guess; // 2x3, reference -> frame, work px
    std::vector<Placed> placed;
    double worst = 0.0; // px, full size
    double residual = 0.0;
    int residuals = 0;
    double loosest =
        0.0; // px, full size: how closely corners agreed where that was asked in a share of the way
};

GroundWatch::GroundWatch() : state_(std::make_unique<State>()) {}
GroundWatch::~GroundWatch() = default;
GroundWatch::GroundWatch(GroundWatch&&) noexcept = default;
GroundWatch& GroundWatch::operator=(GroundWatch&&) noexcept = default;

void GroundWatch::add(const video::Frame& frame, std::span<const base::Box> moving) {
    if (frame.empty()) {
        return;
    }
    auto& s = *state_;
    const auto luma = frame.luma();
    const cv::Mat full(luma.height, luma.width, CV_8U, const_cast<std::uint8_t*>(luma.data),
                       static_cast<std::size_t>(luma.stride));
    if (s.reference.empty()) {
        s.fullSize = full.size();
        s.shrink = std::min(1.0, kWorkSide / std::max(full.cols, full.rows));
    } else if (full.size() != s.fullSize) {
        return; // a change of picture size is a new clip's business
    }
    cv::Mat work;
    if (s.shrink < 1.0) {
        cv::resize(full, work, {}, s.shrink, s.shrink, cv::INTER_AREA);
    } else {
        work = full.clone();
    }
    const cv::Size window(15, 15);
    std::vector<cv::Mat> pyramid;
    cv::buildOpticalFlowPyramid(work, pyramid, window, 3);
    if (s.reference.empty()) {
        const cv::Mat mask = groundMask(work.size(), moving, s.shrink);
        // A few corners from every part of the picture: one busy tree must not speak for the whole ground.
        constexpr int kCells = 4;
        for (int cy = 0; cy < kCells; ++cy) {
            for (int cx = 0; cx < kCells; ++cx) {
                const cv::Rect cell(cx * work.cols / kCells, cy * work.rows / kCells, work.cols / kCells,
                                    work.rows / kCells);
                std::vector<cv::Point2f> found;
                cv::goodFeaturesToTrack(work(cell), found, kCorners / (kCells * kCells), 0.02, 8, mask(cell),
                                        5);
                for (auto p : found) {
                    s.corners.push_back(p +
                                        cv::Point2f(static_cast<float>(cell.x), static_cast<float>(cell.y)));
                }
            }
        }
        s.reference = std::move(pyramid);
        s.guess = (cv::Mat_<double>(2, 3) << 1, 0, 0, 0, 1, 0);
        s.placed.push_back({frame.index(), true, {}});
        return;
    }
    State::Placed here{frame.index(), false, {}};
    if (static_cast<int>(s.corners.size()) >= kFewest) {
        // Started from where the last frame put them; measured against the reference each time.
        std::vector<cv::Point2f> now;
        cv::transform(s.corners, now, s.guess);
        std::vector<unsigned char> found;
        std::vector<float> error;
        cv::calcOpticalFlowPyrLK(s.reference, pyramid, s.corners, now, found, error, window, 3,
                                 {cv::TermCriteria::COUNT | cv::TermCriteria::EPS, 20, 0.01},
                                 cv::OPTFLOW_USE_INITIAL_FLOW);
        const cv::Mat mask = groundMask(work.size(), moving, s.shrink);
        std::vector<cv::Point2f> from, to;
        for (std::size_t i = 0; i < s.corners.size(); ++i) {
            const cv::Point at(cvRound(now[i].x), cvRound(now[i].y));
            if (found[i] != 0 && cv::Rect({0, 0}, work.size()).contains(at) &&
                mask.at<unsigned char>(at) != 0) {
                from.push_back(s.corners[i]);
                to.push_back(now[i]);
            }
        }
        if (static_cast<int>(from.size()) >= kFewest) {
            cv::theRNG().state = 0x9E3779B9u; // the same clip gives the same answer
            cv::Mat inlier, m;
            int inliers = 0;
            // A camera that turns moves the picture's edges farther than its middle (by the square of the
            // tangent), which no similarity follows: where too few corners agree closely, agreement is asked
            // in a share of the way.
            std::vector<double> way;
            for (std::size_t i = 0; i < from.size(); ++i) {
                way.push_back(std::hypot(to[i].x - from[i].x, to[i].y - from[i].y));
            }
            std::nth_element(way.begin(), way.begin() + static_cast<std::ptrdiff_t>(way.size() / 2),
                             way.end());
            const double share = 0.06 * way[way.size() / 2];
            double loose = 0.0;
            for (const double more : {0.0, share}) {
                const double close = 0.8 + more;
                loose = more;
                m = cv::estimateAffinePartial2D(from, to, inlier, cv::RANSAC, close, 500, 0.995, 10);
                inliers = m.empty() ? 0 : cv::countNonZero(inlier);
                if (inliers >= kFewest && inliers * 3 >= static_cast<int>(from.size())) {
                    break;
                }
            }
            const double zoom = m.empty() ? 0.0 : std::hypot(m.at<double>(0, 0), m.at<double>(1, 0));
            if (inliers >= kFewest && inliers * 3 >= static_cast<int>(from.size()) && zoom > 0.8 &&
                zoom < 1.25) {
                s.guess = m;
                s.loosest = std::max(s.loosest, loose / s.shrink);
                cv::Mat back;
                cv::invertAffineTransform(m, back);
                // Pixel centres lie at half pixels in our coordinates, at whole ones in the library's.
                const double a = back.at<double>(0, 0), b = back.at<double>(1, 0);
                const double half = 0.5;
                const double tx = back.at<double>(0, 2) + half - (a * half - b * half);
                const double ty = back.at<double>(1, 2) + half - (b * half + a * half);
                here.ok = true;
                here.step = {a, b, tx / s.shrink, ty / s.shrink};
                for (std::size_t i = 0; i < from.size(); ++i) {
                    if (inlier.at<unsigned char>(static_cast<int>(i)) != 0) {
                        const cv::Point2f p = to[i];
                        const double rx = back.at<double>(0, 0) * p.x + back.at<double>(0, 1) * p.y +
                                          back.at<double>(0, 2) - from[i].x;
                        const double ry = back.at<double>(1, 0) * p.x + back.at<double>(1, 1) * p.y +
                                          back.at<double>(1, 2) - from[i].y;
                        s.residual += (rx * rx + ry * ry) / 2.0;
                        ++s.residuals;
                    }
                }
                const double w = s.fullSize.width, h = s.fullSize.height;
                const GroundMotion one({here.step}, 0.0);
                for (const base::Vec2 c : {base::Vec2{0, 0}, {w, 0}, {0, h}, {w, h}}) {
                    s.worst = std::max(s.worst, base::length(one.toReference(0, c) - c));
                }
            }
        }
    }
    s.placed.push_back(here);
}

bool GroundWatch::still() const {
    return state_->worst <= 1.0;
}

GroundMotion::Step GroundWatch::latest() const {
    const auto& p = state_->placed;
    const auto it = std::find_if(p.rbegin(), p.rend(), [](const auto& x) { return x.ok; });
    return it == p.rend() ? GroundMotion::Step{} : it->step;
}

double GroundWatch::placedShare() const {
    const auto& p = state_->placed;
    if (p.empty()) {
        return 0.0;
    }
    return static_cast<double>(std::count_if(p.begin(), p.end(), [](const auto& x) { return x.ok; })) /
           static_cast<double>(p.size());
}

GroundMotion GroundWatch::finish(int frames) const {
    const auto& s = *state_;
    if (frames <= 0 || still()) {
        return {};
    }
    std::vector<State::Placed> good;
    std::copy_if(s.placed.begin(), s.placed.end(), std::back_inserter(good),
                 [](const auto& p) { return p.ok; });
    if (good.size() < 2) {
        return {};
    }
    std::vector<GroundMotion::Step> steps(static_cast<std::size_t>(frames));
    std::size_t next = 0;
    for (int f = 0; f < frames; ++f) {
        while (next < good.size() && good[next].frame < f) {
            ++next;
        }
        auto& out = steps[static_cast<std::size_t>(f)];
        if (next == 0) {
            out = good.front().step;
        } else if (next == good.size()) {
            out = good.back().step;
        } else {
            const auto& a = good[next - 1];
            const auto& b = good[next];
            const double k = static_cast<double>(f - a.frame) / (b.frame - a.frame);
            const auto mix = [k](double x, double y) { return x + (y - x) * k; };
            out = {mix(a.step.a, b.step.a), mix(a.step.b, b.step.b), mix(a.step.tx, b.step.tx),
                   mix(a.step.ty, b.step.ty)};
        }
    }
    // A fit over many corners is far better than one corner; half a residual stays as what they share.
    const double each = s.residuals > 0 ? std::sqrt(s.residual / s.residuals) / s.shrink : 1.0;
    return {std::move(steps), std::max({0.05, 0.5 * each, s.loosest})};
}

} // namespace plumbmark::scene
