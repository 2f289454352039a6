// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "club/shaft.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <numbers>

#include "club/detail/line_fit.h"
#include "club/detail/ridge_kernels.h"

namespace plumbmark::club {

namespace {

// All lengths as shares of stature. A club's shaft is 9 to 15 mm thick, its grip 25 mm, the longest club
// shows some 1.05 m beyond the middle of the hands; a player is 1.75 m give or take (equipment rules: 1.219 m
// at most).
constexpr double kNearest = 0.03;
constexpr double kFarthest = 0.68;
constexpr double kLongest = 0.69; ///< 1.22 m less the grip's end, nearer the lens, on a small player
constexpr double kRadialStep = 0.013;
constexpr int kRadial = static_cast<int>((kFarthest - kNearest) / kRadialStep) + 1;
constexpr double kSideStep = 0.006; ///< 31 lines within +-9 %
constexpr int kSideLines = 31;
constexpr double kBehindFrom = 0.16, kBehindTo = 0.42; ///< past the butt: a club does not go on there
constexpr double kForbidDegrees = 22.0;
constexpr int kKeepLines = 8;
/// Grey levels beyond which contrast adds nothing: how much of the length answers counts, not how brightly.
constexpr std::uint8_t kCap = 9;
constexpr std::uint8_t kFloor = 2;

struct Plane {
    std::vector<std::uint8_t> own; ///< empty: the frame's own luma
    const std::uint8_t* data = nullptr;
    int width = 0, height = 0;
    std::ptrdiff_t stride = 0;
};

struct Item {
    video::Frame frame;
    std::optional<Hands> hands;
    Plane plane;
};

double wrap180(double a) {
    a = std::fmod(a + 180.0, 360.0);
    return a < 0 ? a + 180.0 : a - 180.0;
}

} // namespace

struct ShaftSearch::State {
    SearchOptions options;
    int lag = 1;
    std::deque<Item> ring; ///< frames first .. first + ring.size() - 1
    std::size_t first = 0; ///< index of ring.front()
    std::size_t done = 0;  ///< frames whose evidence is made
    std::size_t pushed = 0;
    std::vector<Evidence> out;

    int factor = 0;       ///< reduction of the working picture; 0 = not chosen yet
    double stature = 0.0; ///< working px the tables were made for
    int side = 0;         ///< of the square maps, working px
    int half = 0;
    std::array<std::vector<std::uint8_t>, 4> maps;
    std::vector<std::int32_t> steps; ///< kBins x kRadial
    std::vector<std::int32_t> sides; ///< kBins x kSides
    std::vector<std::int32_t> behind;
    int behindSamples = 0;
    std::vector<std::uint8_t> rows; ///< scratch: 4 orientations + time

    void makeTables(double statureWork) {
        stature = statureWork;
        half = static_cast<int>(std::ceil(stature * (kFarthest + kSideLines / 2 * kSideStep))) + 3;
        side = 2 * half + 1;
        for (auto& m : maps) {
            m.assign(static_cast<std::size_t>(side) * side, 0);
        }
        rows.assign(static_cast<std::size_t>(side) * 5, 0);
        steps.resize(Evidence::kBins * kRadial);
        sides.assign(Evidence::kBins * detail::kSides, 0);
        behindSamples = static_cast<int>((kBehindTo - kBehindFrom) / kRadialStep);
        behind.resize(static_cast<std::size_t>(Evidence::kBins) * behindSamples);
        const auto at = [&](double x, double y) {
            return static_cast<std::int32_t>(std::lround(y)) * side +
                   static_cast<std::int32_t>(std::lround(x));
        };
        for (int b = 0; b < Evidence::kBins; ++b) {
            const base::Vec2 d = directionOf(b - 180);
            const base::Vec2 n{d.y, -d.x};
            for (int r = 0; r < kRadial; ++r) {
                const double l = stature * (kNearest + r * kRadialStep);
                steps[b * kRadial + r] = at(d.x * l, d.y * l);
            }
            for (int r = 0; r < behindSamples; ++r) {
                const double l = -stature * (kBehindFrom + r * kRadialStep);
                behind[b * behindSamples + r] = at(d.x * l, d.y * l);
            }
            for (int s = 0; s < kSideLines; ++s) {
                const double o = stature * (s - kSideLines / 2) * kSideStep;
                sides[b * detail::kSides + s] = at(n.x * o, n.y * o);
            }
            sides[b * detail::kSides + kSideLines] = sides[b * detail::kSides + kSideLines - 1];
        }
    }

    void makePlane(Item& item) const {
        const video::PlaneView luma = item.frame.luma();
        Plane& p = item.plane;
        if (factor <= 1) {
            p.data = luma.data;
            p.width = luma.width;
            p.height = luma.height;
            p.stride = luma.stride;
            return;
        }
        p.width = luma.width / factor;
        p.height = luma.height / factor;
        p.stride = p.width;
        p.own.resize(static_cast<std::size_t>(p.width) * p.height);
        detail::shrink(p.own.data(), p.stride, p.width, p.height, luma.data, luma.stride, factor);
        p.data = p.own.data();
    }

    /// Line maps round (cx, cy), working px. Returns the mean answer, which is the noise a line must beat.
    double makeMaps(const Plane& now, const Plane* past, const Plane* future, int cx, int cy) {
        // Widths: just outside the shaft, and outside grip, blur and head end.
        const double d1 = std::max(2.0, 0.0065 * stature);
        const double d2 = std::max(d1 + 1.5, 0.0125 * stature);
        struct Step {
            int x, y;
        };
        const auto make = [](double d) {
            const int a = static_cast<int>(std::lround(d));
            const int g = std::max(1, static_cast<int>(std::lround(d * std::numbers::sqrt2 / 2)));
            return std::array<Step, 4>{{{a, 0}, {g, -g}, {0, a}, {g, g}}};
        };
        // Orientation o: lines along 0, 45, 90, 135 degrees of our angle; the step is across them.
        const std::array<std::array<Step, 4>, 2> widths{make(d1), make(d2)};
        const int margin = static_cast<int>(std::lround(d2)) + 1;
        const int x0 = std::max(cx - half, margin);
        const int x1 = std::min(cx + half + 1, now.width - margin);
        const int y0 = std::max(cy - half, margin);
        const int y1 = std::min(cy + half + 1, now.height - margin);
        for (auto& m : maps) {
            if (x0 > cx - half || x1 < cx + half + 1 || y0 > cy - half || y1 < cy + half + 1) {
                std::fill(m.begin(), m.end(), std::uint8_t{0});
            }
        }
        if (x1 <= x0 || y1 <= y0) {
            return 0.0;
        }
        const auto n = static_cast<std::size_t>(x1 - x0);
        std::array<std::uint8_t*, 5> row;
        for (int k = 0; k < 5; ++k) {
            row[k] = rows.data() + static_cast<std::size_t>(k) * side;
        }
        if (past == nullptr || future == nullptr) {
            std::fill(row[4], row[4] + side, std::uint8_t{0});
        }
        std::uint64_t total = 0;
        std::size_t counted = 0;
        for (int y = y0; y < y1; ++y) {
            const std::uint8_t* c = now.data + y * now.stride + x0;
            for (int o = 0; o < 4; ++o) {
                const auto& s1 = widths[0][o];
                const auto& s2 = widths[1][o];
                const std::ptrdiff_t k1 = s1.y * now.stride + s1.x;
                const std::ptrdiff_t k2 = s2.y * now.stride + s2.x;
                detail::outsideBoth(row[o], c, c + k1, c - k1, c + k2, c - k2, n);
            }
            if (past != nullptr && future != nullptr) {
                detail::outside(row[4], c, past->data + y * past->stride + x0,
                                future->data + y * future->stride + x0, n);
            }
            const std::size_t to = static_cast<std::size_t>(y - (cy - half)) * side + (x0 - (cx - half));
            for (int o = 0; o < 4; ++o) {
                detail::combine(maps[o].data() + to, row[o], row[(o + 2) % 4], row[4], kFloor, kCap, n);
            }
            if ((y & 7) == 0) {
                for (int o = 0; o < 4; ++o) {
                    const std::uint8_t* m = maps[o].data() + to;
                    for (std::size_t i = 0; i < n; ++i) {
                        total += m[i];
                    }
                }
                counted += 4 * n;
            }
        }
        return counted == 0 ? 0.0 : static_cast<double>(total) / static_cast<double>(counted);
    }

    void search(Evidence& e, const Item& now, const Item* past, const Item* future) {
        const Hands& hands = *now.hands;
        if (factor == 0 || std::abs(hands.staturePixels / factor / stature - 1.0) > 0.15) {
            makeTables(hands.staturePixels / factor);
        }
        const double wx = hands.grip.x / factor;
        const double wy = hands.grip.y / factor;
        const int cx = static_cast<int>(std::floor(wx));
        const int cy = static_cast<int>(std::floor(wy));
        if (cx < -half || cy < -half || cx > now.plane.width + half || cy > now.plane.height + half) {
            return; // hands far outside the picture
        }
        const double noise = makeMaps(now.plane, past == nullptr ? nullptr : &past->plane,
                                      future == nullptr ? nullptr : &future->plane, cx, cy);
        const auto tau = static_cast<std::int16_t>(std::clamp(std::lround(1.0 + 1.5 * noise), 2L, 6L));

        std::array<bool, Evidence::kBins> forbidden{};
        for (const auto& elbow : {hands.leadElbow, hands.trailElbow}) {
            if (!elbow || base::length(*elbow - hands.grip) < 0.04 * hands.staturePixels) {
                continue;
            }
            const double away = angleOf(*elbow - hands.grip);
            for (int b = 0; b < Evidence::kBins; ++b) {
                // Three degrees more: the flank of a line inside is no line outside.
                forbidden[b] = forbidden[b] || std::abs(wrap180(b - 180 - away)) < kForbidDegrees + 3.0;
            }
        }
        const double full = kRadial * 0.5 * kCap; // a line that answers at half the cap all along
        for (int b = 0; b < Evidence::kBins; ++b) {
            if (forbidden[b]) {
                continue;
            }
            const int orientation = ((b - 180 + 360 + 22) / 45) % 4;
            const std::uint8_t* centre =
                maps[orientation].data() + static_cast<std::size_t>(half) * side + half;
            detail::RaySums sums;
            const std::int32_t* side0 = sides.data() + b * detail::kSides;
            detail::walkRay(sums, centre, steps.data() + b * kRadial, kRadial, side0, tau);
            int at = 0;
            for (int s = 1; s < kSideLines; ++s) {
                if (sums.best[s] > sums.best[at]) {
                    at = s;
                }
            }
            // What goes on behind the hands is no club: posts, sticks, mat edges.
            int beyond = 0;
            const std::int32_t* back = behind.data() + static_cast<std::size_t>(b) * behindSamples;
            for (int r = 0; r < behindSamples; ++r) {
                beyond += std::min<int>(centre[back[r] + side0[at]], kCap) - tau;
            }
            const double net = sums.best[at] - 1.0 * std::max(0, beyond);
            e.score[b] = static_cast<std::uint8_t>(std::clamp(255.0 * net / full, 0.0, 255.0));
            e.offset[b] = static_cast<std::int8_t>(std::lround((at - kSideLines / 2) * kSideStep / 0.005));
            e.reach[b] = static_cast<std::uint8_t>(
                std::lround((kNearest + (sums.reach[at] - 1) * kRadialStep) / 0.005));
        }
        refine(e, now, past, future, forbidden);
    }

    void refine(Evidence& e, const Item& now, const Item* past, const Item* future,
                const std::array<bool, Evidence::kBins>& forbidden) const {
        // Peaks, strongest first, at least five degrees apart.
        std::array<bool, Evidence::kBins> taken{};
        const Hands& hands = *now.hands;
        for (int k = 0; k < kKeepLines; ++k) {
            int at = -1;
            for (int b = 0; b < Evidence::kBins; ++b) {
                if (!taken[b] && (at < 0 || e.score[b] > e.score[at])) {
                    at = b;
                }
            }
            if (at < 0 || e.score[at] < 8) {
                break;
            }
            for (int d = -4; d <= 4; ++d) {
                taken[(at + d + Evidence::kBins) % Evidence::kBins] = true;
            }
            const detail::LineGuess guess{
                hands.grip, static_cast<double>(at - 180), e.offset[at] * 0.005 * hands.staturePixels,
                kNearest * hands.staturePixels, e.reach[at] * 0.005 * hands.staturePixels};
            auto line = detail::fitLine(
                now.frame.luma(), past == nullptr ? video::PlaneView{} : past->frame.luma(),
                future == nullptr ? video::PlaneView{} : future->frame.luma(), guess, hands.staturePixels);
            const int bin = line ? static_cast<int>(std::floor(line->angleDegrees)) + 180 : 0;
            if (line && !forbidden[std::clamp(bin, 0, Evidence::kBins - 1)]) {
                line->score *= e.score[at] / 255.0F;
                if (line->reach > kLongest * hands.staturePixels) {
                    line->score *= 0.5F; // longer than a club, unless something behind it happens to go on
                }
                e.lines.push_back(*line);
            }
        }
    }

    void make(std::size_t index) {
        const Item& now = ring[index - first];
        Evidence& e = out.emplace_back();
        e.frame = now.frame.index();
        e.time = now.frame.time();
        e.hands = now.hands;
        if (!now.hands || now.frame.empty() || now.hands->staturePixels < 40.0) {
            e.hands.reset();
            return;
        }
        const auto l = static_cast<std::size_t>(lag);
        const auto same = [&](const Item& other) {
            return other.frame.width() == now.frame.width() && other.frame.height() == now.frame.height();
        };
        const Item* past = index >= first + l ? &ring[index - l - first] : nullptr;
        const Item* future = index + l < first + ring.size() ? &ring[index + l - first] : nullptr;
        if (past != nullptr && (!same(*past) || past->plane.data == nullptr)) {
            past = nullptr;
        }
        if (future != nullptr && (!same(*future) || future->plane.data == nullptr)) {
            future = nullptr;
        }
        search(e, now, past, future);
    }
};

ShaftSearch::ShaftSearch(const SearchOptions& options) : state_(std::make_unique<State>()) {
    state_->options = options;
    if (options.framesPerSecond > 0 && options.timeScale.realPerShown > 0) {
        // Some 8 ms apart: long enough for a slow shaft to leave its own width, short enough for a fast one.
        const double step = options.timeScale.realPerShown / options.framesPerSecond;
        state_->lag = static_cast<int>(std::clamp(std::lround(0.008 / step), 1L, 4L));
    }
}
ShaftSearch::~ShaftSearch() = default;
ShaftSearch::ShaftSearch(ShaftSearch&&) noexcept = default;
ShaftSearch& ShaftSearch::operator=(ShaftSearch&&) noexcept = default;

void ShaftSearch::push(const video::Frame& frame, const std::optional<Hands>& hands) {
    State& s = *state_;
    if (s.factor == 0 && hands && hands->staturePixels >= 40.0) {
        s.factor = std::max(1, static_cast<int>(std::ceil(hands->staturePixels / 600.0)));
        s.makeTables(hands->staturePixels / s.factor);
        for (auto& item : s.ring) {
            s.makePlane(item);
        }
    }
    s.ring.push_back({frame, hands, {}});
    if (s.factor != 0) {
        s.makePlane(s.ring.back());
    }
    ++s.pushed;
    const auto lag = static_cast<std::size_t>(s.lag);
    while (s.done + lag < s.pushed) {
        s.make(s.done);
        ++s.done;
        while (s.done > s.first + lag) {
            s.ring.pop_front();
            ++s.first;
        }
    }
}

std::vector<Evidence> ShaftSearch::finish() {
    State& s = *state_;
    while (s.done < s.pushed) {
        s.make(s.done);
        ++s.done;
    }
    s.ring.clear();
    s.first = s.pushed;
    return std::move(s.out);
}

} // namespace plumbmark::club
