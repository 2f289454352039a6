// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/head_cover.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <optional>

namespace plumbmark::exporting {
namespace {

using marks::Landmark;

constexpr std::uint8_t kGrey = 40;

/// How far the head may reach from one of its points, as a share of the stature. From the nose to the back of
/// the head is about 0.12, from the centre to the crown 0.065; a cap and hair come on top.
/// `beside`: where the head's centre is known too and the point only widens what lies about that.
struct Reach {
    Landmark point;
    double share, beside;
};
constexpr std::array kHead{
    Reach{Landmark::head_centre, 0.085, 0.085}, Reach{Landmark::nose, 0.13, 0.03},
    Reach{Landmark::lead_ear, 0.11, 0.03},      Reach{Landmark::trail_ear, 0.11, 0.03},
    Reach{Landmark::head_crown, 0.12, 0.025},   Reach{Landmark::head_front, 0.12, 0.025},
    Reach{Landmark::head_back, 0.12, 0.025}};

struct Edges {
    double left, top, right, bottom;
    void take(const Edges& other) {
        left = std::min(left, other.left);
        top = std::min(top, other.top);
        right = std::max(right, other.right);
        bottom = std::max(bottom, other.bottom);
    }
    [[nodiscard]] Edges grown(double by) const { return {left - by, top - by, right + by, bottom + by}; }
};

/// The player's height in the picture: the ninth decile over the frames of head to feet, so that neither the
/// bent address nor a frame with a lost foot decides.
std::optional<double> statureIn(const marks::Track& track) {
    std::vector<double> heights;
    for (const marks::FrameMarks& frame : track) {
        std::optional<double> top, foot;
        for (const Reach& reach : kHead) {
            if (const auto& mark = frame[reach.point]) {
                top = std::min(top.value_or(mark->at.y), mark->at.y);
            }
        }
        for (const Landmark low : {Landmark::lead_ankle, Landmark::trail_ankle, Landmark::lead_heel,
                                   Landmark::trail_heel, Landmark::lead_toe, Landmark::trail_toe}) {
            if (const auto& mark = frame[low]) {
                foot = std::max(foot.value_or(mark->at.y), mark->at.y);
            }
        }
        if (top && foot && *foot > *top) {
            heights.push_back(*foot - *top);
        }
    }
    if (heights.empty()) {
        return std::nullopt;
    }
    const auto at = heights.begin() + static_cast<std::ptrdiff_t>((heights.size() - 1) * 9 / 10);
    std::nth_element(heights.begin(), at, heights.end());
    // From the eyes or ears down rather than from the crown, and bent over: never too small.
    return *at * 1.08;
}

std::optional<Edges> headIn(const marks::FrameMarks& frame, double stature) {
    std::optional<Edges> all;
    const bool centre = frame[Landmark::head_centre].has_value();
    for (const Reach& reach : kHead) {
        if (const auto& mark = frame[reach.point]) {
            const double r = (centre ? reach.beside : reach.share) * stature +
                             (centre && reach.point != Landmark::head_centre ? 1.0 : 3.0) * mark->sigma;
            const Edges one{mark->at.x - r, mark->at.y - r, mark->at.x + r, mark->at.y + r};
            if (all) {
                all->take(one);
            } else {
                all = one;
            }
        }
    }
    return all;
}

base::Box inPicture(const Edges& edges, int width, int height) {
    const double left = std::clamp(std::floor(edges.left), 0.0, width - 1.0);
    const double top = std::clamp(std::floor(edges.top), 0.0, height - 1.0);
    const double right = std::clamp(std::ceil(edges.right), left + 1.0, static_cast<double>(width));
    const double bottom = std::clamp(std::ceil(edges.bottom), top + 1.0, static_cast<double>(height));
    return {left, top, right - left, bottom - top};
}

} // namespace

std::vector<base::Box> headCover(const marks::Track& track, int width, int height) {
    const auto stature = statureIn(track);
    if (!stature || width < 1 || height < 1) {
        return {};
    }
    const std::size_t n = track.size();
    std::vector<std::optional<Edges>> known(n);
    std::vector<std::optional<std::size_t>> before(n), after(n); // nearest frames with a known head
    std::optional<std::size_t> last;
    for (std::size_t i = 0; i < n; ++i) {
        known[i] = headIn(track[i], *stature);
        last = known[i] ? i : last;
        before[i] = last;
    }
    last.reset();
    for (std::size_t i = n; i-- > 0;) {
        last = known[i] ? i : last;
        after[i] = last;
    }
    if (!last) {
        return {};
    }
    std::vector<Edges> own;
    own.reserve(n);
    for (std::size_t i = 0; i < n; ++i) {
        std::optional<Edges> edges;
        double away = 1e9; // s to the nearer frame with a known head
        for (const auto& near : {before[i], after[i]}) {
            if (near) {
                away = std::min(away, std::abs(track[i].time.value() - track[*near].time.value()));
            }
        }
        for (const auto& near : {before[i], after[i]}) {
            if (near) {
                const Edges grown = known[*near]->grown(away * *stature);
                if (edges) {
                    edges->take(grown);
                } else {
                    edges = grown;
                }
            }
        }
        own.push_back(*edges);
    }
    std::vector<base::Box> boxes;
    boxes.reserve(n);
    std::size_t from = 0, to = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const double now = track[i].time.value();
        while (from < i && i - from > 5 && now - track[from].time.value() > 0.03) {
            ++from;
        }
        to = std::max(to, i);
        while (to + 1 < n && (to + 1 - i <= 5 || track[to + 1].time.value() - now <= 0.03)) {
            ++to;
        }
        Edges edges = own[i];
        for (std::size_t j = from; j <= to; ++j) {
            edges.take(own[j]);
        }
        boxes.push_back(inPicture(edges, width, height));
    }
    return boxes;
}

std::vector<int> doubtfulFrames(const marks::Track& track) {
    const double stature = statureIn(track).value_or(0.0);
    std::vector<int> frames;
    for (std::size_t i = 0; i < track.size(); ++i) {
        double best = 1e9;
        for (const Reach& reach : kHead) {
            if (const auto& mark = track[i][reach.point]) {
                best = std::min(best, mark->sigma);
            }
        }
        if (best > 0.03 * stature) { // no point of the head is known to a quarter of its height
            frames.push_back(static_cast<int>(i));
        }
    }
    return frames;
}

void coverWith(video::RgbImage& picture, const base::Box& box) {
    const int left = std::max(0, static_cast<int>(box.x)), top = std::max(0, static_cast<int>(box.y));
    const int right = std::min(picture.width, static_cast<int>(box.x + box.width));
    const int bottom = std::min(picture.height, static_cast<int>(box.y + box.height));
    for (int y = top; y < bottom && left < right; ++y) {
        const auto row = picture.pixels.begin() + (static_cast<std::ptrdiff_t>(y) * picture.width + left) * 3;
        std::fill(row, row + static_cast<std::ptrdiff_t>(right - left) * 3, kGrey);
    }
}

bool isCovered(const video::RgbImage& picture, const base::Box& box) {
    // Coding leaves some single pixels off, above all along an edge that has just moved; an open face is
    // more.
    constexpr int kRim = 4, kCodingError = 24;
    constexpr double kMostOff = 0.02;
    const int left = std::max(0, static_cast<int>(box.x)) + kRim;
    const int top = std::max(0, static_cast<int>(box.y)) + kRim;
    const int right = std::min(picture.width, static_cast<int>(box.x + box.width)) - kRim;
    const int bottom = std::min(picture.height, static_cast<int>(box.y + box.height)) - kRim;
    long off = 0, all = 0;
    for (int y = top; y < bottom; ++y) {
        for (int x = left * 3; x < right * 3; ++x) {
            const int value = picture.pixels[static_cast<std::size_t>(y * picture.width * 3 + x)];
            off += std::abs(value - kGrey) > kCodingError ? 1 : 0;
            ++all;
        }
    }
    return static_cast<double>(off) <= kMostOff * static_cast<double>(all);
}

} // namespace plumbmark::exporting
