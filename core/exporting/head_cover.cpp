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
/// the head is about 0.12, from the centre to the crown 0.065; a cap and hair come on top, and what the centre
/// is off by where the face is turned away.
/// `beside`: where the head's centre is known too and the point only widens what lies about that.
struct Reach {
    Landmark point;
    double share, beside;
};
constexpr std::array kHead{
    Reach{Landmark::head_centre, 0.10, 0.10}, Reach{Landmark::nose, 0.13, 0.03},
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

/// Outwards to the grid of macroblocks.
base::Box inPicture(const Edges& edges, int width, int height) {
    constexpr double kGrid = 16.0;
    const auto down = [](double value, int size) {
        return std::floor(std::clamp(value, 0.0, size - 1.0) / kGrid) * kGrid;
    };
    const auto up = [](double value, double from, int size) {
        return std::min(static_cast<double>(size), std::ceil(std::max(value, from + 1.0) / kGrid) * kGrid);
    };
    const double left = down(edges.left, width), top = down(edges.top, height);
    const double right = up(edges.right, left, width), bottom = up(edges.bottom, top, height);
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

double worstBlock(const video::RgbImage& picture, const base::Box& box) {
    constexpr int kRim = 4, kBlock = 8;
    const auto inside = [&](double from, double to, int end) {
        const int a = std::clamp(static_cast<int>(from), 0, end),
                  b = std::clamp(static_cast<int>(to), 0, end);
        return std::pair(a == 0 ? 0 : a + kRim, b == end ? end : b - kRim); // no filter at the picture's end
    };
    const auto [left, right] = inside(box.x, box.x + box.width, picture.width);
    const auto [top, bottom] = inside(box.y, box.y + box.height, picture.height);
    double worst = 0.0;
    for (int y = top; y < bottom; y = (y / kBlock + 1) * kBlock) {
        const int low = std::min(bottom, (y / kBlock + 1) * kBlock);
        for (int x = left; x < right; x = (x / kBlock + 1) * kBlock) {
            const int far = std::min(right, (x / kBlock + 1) * kBlock);
            double squares = 0.0;
            for (int v = y; v < low; ++v) {
                for (int u = x * 3; u < far * 3; ++u) {
                    const int off =
                        picture.pixels[static_cast<std::size_t>(v * picture.width * 3 + u)] - kGrey;
                    squares += off * off;
                }
            }
            worst = std::max(worst, squares / (3.0 * (low - y) * (far - x)));
        }
    }
    return std::sqrt(worst);
}

bool isCovered(const video::RgbImage& picture, const base::Box& box) {
    return worstBlock(picture, box) <= kMostCodingError;
}

} // namespace plumbmark::exporting
