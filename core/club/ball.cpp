// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "club/ball.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <opencv2/core.hpp>
#include <opencv2/imgproc.hpp>

namespace plumbmark::club {
namespace {

/// A ball is at least 42.67 mm across (R&A/USGA Equipment Rules); statures run about 1.45-2.0 m.
constexpr double kRadiusPerStature = 0.02134 / 1.72;
/// A child is smaller and the ball lies up to a fifth nearer to the lens than a player seen from the front,
/// so it may look up to two thirds larger against the player.
constexpr std::array<double, 3> kSizes{1.0, 1.3, 1.69};
constexpr std::size_t kMostSpots = 48;
constexpr std::size_t kSpotsAtFirst = 22, kSpotsPerLook = 2; ///< room is left for what comes later
constexpr double kLookSeconds = 0.12; ///< shown time between two searches for new spots
constexpr std::size_t kMostLooks = 14;

/// A disc bends down about as much along as across; a line on the mat or an edge only across. The bound on
/// the ratio of the two is the usual one of blob detectors, a little tighter (Lowe 2004 has 10).
bool round(const cv::Mat& blob, int x, int y) {
    const auto at = [&](int dx, int dy) { return blob.at<float>(y + dy, x + dx); };
    const float xx = at(1, 0) + at(-1, 0) - 2 * at(0, 0);
    const float yy = at(0, 1) + at(0, -1) - 2 * at(0, 0);
    const float xy = 0.25F * (at(1, 1) + at(-1, -1) - at(1, -1) - at(-1, 1));
    constexpr float kRatio = 7.0F;
    const float det = xx * yy - xy * xy;
    return xx + yy < 0 && det > 0 && (xx + yy) * (xx + yy) * kRatio < (kRatio + 1) * (kRatio + 1) * det;
}

struct DiscAndRing {
    double disc = 0, ring = 0;
    bool inside = false;
};

/// Mean of the disc and median of the ring around it.
DiscAndRing readDisc(const video::PlaneView& luma, base::Vec2 c, double radius) {
    DiscAndRing out;
    const double outer = 2.1 * radius + 1.0, inner = 1.35 * radius + 0.5, core = std::max(0.75 * radius, 0.8);
    const int x0 = static_cast<int>(std::floor(c.x - outer)), x1 = static_cast<int>(std::ceil(c.x + outer));
    const int y0 = static_cast<int>(std::floor(c.y - outer)), y1 = static_cast<int>(std::ceil(c.y + outer));
    if (x0 < 0 || y0 < 0 || x1 >= luma.width || y1 >= luma.height) {
        return out;
    }
    const auto core2 = static_cast<float>(core * core), inner2 = static_cast<float>(inner * inner),
               outer2 = static_cast<float>(outer * outer);
    int sum = 0, n = 0;
    std::array<std::uint16_t, 256> histogram{};
    int ring = 0;
    for (int y = y0; y <= y1; ++y) {
        const std::uint8_t* row = luma.data + static_cast<std::ptrdiff_t>(y) * luma.stride;
        const auto dy = static_cast<float>(y + 0.5 - c.y);
        auto dx = static_cast<float>(x0 + 0.5 - c.x);
        for (int x = x0; x <= x1; ++x, dx += 1.0F) {
            const float d2 = dx * dx + dy * dy;
            if (d2 <= core2) {
                sum += row[x], ++n;
            } else if (d2 >= inner2 && d2 <= outer2) {
                ++histogram[row[x]], ++ring;
            }
        }
    }
    if (n == 0 || ring == 0) {
        return out;
    }
    out.disc = static_cast<double>(sum) / n;
    int seen = 0;
    for (int v = 0; v < 256; ++v) {
        seen += histogram[static_cast<std::size_t>(v)];
        if (2 * seen >= ring) {
            out.ring = v;
            break;
        }
    }
    out.inside = true;
    return out;
}

constexpr int kSurelyThere = 60, kThereAgain = 75; // likeness, hundredths
constexpr double kFarthestDrift = 8.0;             // radii

using Patch = std::vector<std::uint8_t>;

/// The square round `c`; empty when it leaves the picture.
void readPatch(Patch& patch, const video::PlaneView& luma, base::Vec2 c, int half) {
    patch.clear();
    const int cx = static_cast<int>(std::floor(c.x)), cy = static_cast<int>(std::floor(c.y));
    if (cx - half < 0 || cy - half < 0 || cx + half >= luma.width || cy + half >= luma.height) {
        return;
    }
    for (int y = cy - half; y <= cy + half; ++y) {
        const std::uint8_t* row = luma.data + static_cast<std::ptrdiff_t>(y) * luma.stride;
        patch.insert(patch.end(), row + cx - half, row + cx + half + 1);
    }
}

double correlation(const Patch& a, const Patch& b) {
    if (a.size() != b.size() || a.empty()) {
        return 0.0;
    }
    std::int64_t sa = 0, sb = 0, saa = 0, sbb = 0, sab = 0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        const int p = a[i], q = b[i];
        sa += p, sb += q, saa += p * p, sbb += q * q, sab += p * q;
    }
    const auto n = static_cast<double>(a.size());
    const auto fa = static_cast<double>(sa), fb = static_cast<double>(sb);
    const double va = static_cast<double>(saa) - fa * fa / n, vb = static_cast<double>(sbb) - fb * fb / n;
    // A patch without texture is like nothing.
    return va < n || vb < n ? 0.0 : (static_cast<double>(sab) - fa * fb / n) / std::sqrt(va * vb);
}

} // namespace

struct BallWatch::State {
    double fps = 30;
    BallEvidence evidence;
    /// Of each spot, beside the evidence.
    struct Watched {
        Patch patch; ///< what it showed when found, `half` px to every side
        int half = 0;
        base::Vec2 drift;               ///< px, what the ground's motion leaves of the spot's own
        std::optional<base::Vec2> last; ///< where it was seen in the frame before, while it is followed
        base::Vec2 step;                ///< px a frame
    };
    std::vector<Watched> watched;
    Patch now;
    std::size_t looks = 0;
    double nextLook = 0.0;

    /// Small bright discs of about a ball's size on the ground.
    void look(const video::Frame& frame, const Feet& feet, const scene::GroundMotion& ground) {
        const double s = feet.staturePixels;
        const double usual = kRadiusPerStature * s;
        if (usual < 1.2) {
            return; // a ball of two pixels cannot be told from noise
        }
        const double left = std::min(feet.leadAnkle.x, feet.trailAnkle.x) - 0.75 * s;
        const double right = std::max(feet.leadAnkle.x, feet.trailAnkle.x) + 0.75 * s;
        const double top = std::min(feet.leadAnkle.y, feet.trailAnkle.y) - 0.10 * s;
        const double bottom = std::max(feet.leadAnkle.y, feet.trailAnkle.y) + 0.34 * s;
        const cv::Rect box = cv::Rect(cv::Point(static_cast<int>(left), static_cast<int>(top)),
                                      cv::Point(static_cast<int>(right), static_cast<int>(bottom))) &
                             cv::Rect(0, 0, frame.width(), frame.height());
        if (box.width < 8 || box.height < 8) {
            return;
        }
        const auto luma = frame.luma();
        const cv::Mat whole(luma.height, luma.width, CV_8UC1, const_cast<std::uint8_t*>(luma.data),
                            static_cast<std::size_t>(luma.stride));
        cv::Mat grey;
        whole(box).convertTo(grey, CV_32F);
        std::array<cv::Mat, kSizes.size()> blobs;
        struct Peak {
            float value;
            int x, y;
            std::size_t size;
        };
        std::vector<Peak> peaks;
        for (std::size_t k = 0; k < kSizes.size(); ++k) {
            const double radius = kSizes[k] * usual;
            cv::Mat small, wide;
            cv::GaussianBlur(grey, small, {}, 0.55 * radius);
            cv::GaussianBlur(grey, wide, {}, 1.5 * radius);
            blobs[k] = small - wide;
            const cv::Mat& blob = blobs[k];
            cv::Mat most; // greatest value within a radius: a peak equals it
            const int reach = std::max(1, static_cast<int>(radius));
            cv::dilate(blob, most, cv::Mat::ones(2 * reach + 1, 2 * reach + 1, CV_8U));
            for (int y = 1; y + 1 < blob.rows; ++y) {
                const auto* value = blob.ptr<float>(y);
                const auto* greatest = most.ptr<float>(y);
                for (int x = 1; x + 1 < blob.cols; ++x) {
                    if (value[x] >= 4.0F && value[x] >= greatest[x] && round(blob, x, y)) {
                        peaks.push_back({value[x], x, y, k});
                    }
                }
            }
        }
        std::sort(peaks.begin(), peaks.end(), [](const Peak& a, const Peak& b) { return a.value > b.value; });
        for (const Peak& p : peaks) {
            if (evidence.spots.size() >= std::min(kMostSpots, kSpotsAtFirst + kSpotsPerLook * looks)) {
                break;
            }
            const cv::Mat& blob = blobs[p.size];
            const double radius = kSizes[p.size] * usual;
            // Sub-pixel by parabolas.
            auto parabola = [](float l, float c, float r) {
                return std::abs(l - 2 * c + r) < 1e-6F ? 0.0 : 0.5 * (l - r) / (l - 2 * c + r);
            };
            const double fx = parabola(blob.at<float>(p.y, p.x - 1), p.value, blob.at<float>(p.y, p.x + 1));
            const double fy = parabola(blob.at<float>(p.y - 1, p.x), p.value, blob.at<float>(p.y + 1, p.x));
            const base::Vec2 here{box.x + p.x + 0.5 + std::clamp(fx, -0.5, 0.5),
                                  box.y + p.y + 0.5 + std::clamp(fy, -0.5, 0.5)};
            const base::Vec2 at = ground.toReference(0, here);
            // Known, unless it looks otherwise by now: a ball first seen half hidden by the club head.
            bool known = false;
            for (std::size_t k = 0; k < evidence.spots.size() && !known; ++k) {
                const BallSpot& o = evidence.spots[k];
                const Watched& w = watched[k];
                const base::Vec2 lies = w.last ? *w.last : ground.fromReference(0, o.centre) + w.drift;
                known = base::length(lies - here) < 1.5 * std::max(radius, o.radius) &&
                        (o.likeness.empty() || o.likeness.back() >= kSurelyThere);
            }
            if (known) {
                continue;
            }
            const auto read = readDisc(luma, here, radius);
            if (!read.inside || read.disc - read.ring < 8.0) {
                continue;
            }
            BallSpot spot;
            spot.centre = at;
            spot.radius = radius;
            spot.contrast = read.disc - read.ring;
            spot.firstLooked = static_cast<int>(evidence.times.size()) - 1;
            Watched watch;
            watch.half = std::max(2, static_cast<int>(std::lround(1.3 * radius)));
            readPatch(watch.patch, luma, here, watch.half);
            if (watch.patch.empty()) {
                continue;
            }
            evidence.spots.push_back(std::move(spot));
            watched.push_back(std::move(watch));
        }
    }

    /// Where spot `k` is in a picture whose camera moved. The ground's motion is told some frames late and
    /// comes mostly from what lies far behind the ball, and a camera that turns moves near and far, middle
    /// and edge unlike. So the ball is followed by its own look while it is there, from where it was and how
    /// it moved, or from where the ground puts it; what the ground leaves over is remembered meanwhile.
    base::Vec2 follow(std::size_t k, base::Vec2 predicted, const video::PlaneView& luma) {
        Watched& w = watched[k];
        const BallSpot& spot = evidence.spots[k];
        const bool sure = !spot.likeness.empty() && spot.likeness.back() >= kSurelyThere;
        double best = sure ? kSurelyThere / 100.0 : kThereAgain / 100.0;
        std::optional<base::Vec2> found;
        const auto tryAround = [&](base::Vec2 middle) {
            for (int y = -2; y <= 2; ++y) {
                for (int x = -2; x <= 2; ++x) {
                    const base::Vec2 tried =
                        middle + base::Vec2{static_cast<double>(x), static_cast<double>(y)};
                    if (base::length(tried - predicted) > kFarthestDrift * spot.radius) {
                        continue;
                    }
                    readPatch(now, luma, tried, w.half);
                    // As good in the middle is better: noise must not walk.
                    const double likeness = correlation(now, w.patch) - 0.01 * (std::abs(x) + std::abs(y));
                    if (likeness > best) {
                        best = likeness;
                        found = tried;
                    }
                }
            }
        };
        if (sure && w.last) {
            tryAround(*w.last + w.step);
        }
        tryAround(predicted + w.drift);
        if (!found) {
            w.last.reset();
            w.step = {};
            return predicted + w.drift;
        }
        w.step = w.last ? *found - *w.last : base::Vec2{};
        w.last = found;
        w.drift = *found - predicted;
        return *found;
    }
};

BallWatch::BallWatch(double framesPerSecond) : state_(std::make_unique<State>()) {
    state_->fps = framesPerSecond;
}
BallWatch::~BallWatch() = default;
BallWatch::BallWatch(BallWatch&&) noexcept = default;
BallWatch& BallWatch::operator=(BallWatch&&) noexcept = default;

void BallWatch::push(const video::Frame& frame, const std::optional<Feet>& feet,
                     const scene::GroundMotion::Step& step) {
    State& s = *state_;
    s.evidence.times.push_back(frame.time());
    const scene::GroundMotion ground({step}, 0.0);
    if (feet && !s.evidence.feet) {
        s.evidence.feet = feet;
        s.evidence.staturePixels = feet->staturePixels;
    }
    if (feet && s.looks < kMostLooks && frame.time().value() >= s.nextLook) {
        s.look(frame, *feet, ground);
        ++s.looks;
        // Close looks first, then rarer ones: a ball may be put down while the camera runs.
        s.nextLook = frame.time().value() + kLookSeconds * (1.0 + 0.5 * static_cast<double>(s.looks));
    }
    const auto luma = frame.luma();
    for (std::size_t k = 0; k < s.evidence.spots.size(); ++k) {
        BallSpot& spot = s.evidence.spots[k];
        base::Vec2 here = ground.fromReference(0, spot.centre);
        if (base::length(here - spot.centre) > 0.75 || base::length(s.watched[k].drift) > 0.0) {
            here = s.follow(k, here, luma);
        }
        const auto read = readDisc(luma, here, spot.radius);
        const double share = read.inside ? 100.0 * (read.disc - read.ring) / spot.contrast : 0.0;
        readPatch(s.now, luma, here, s.watched[k].half);
        spot.contrastShare.push_back(static_cast<std::int16_t>(std::clamp(share, -999.0, 999.0)));
        spot.likeness.push_back(
            static_cast<std::int8_t>(std::lround(100.0 * correlation(s.now, s.watched[k].patch))));
    }
}

BallEvidence BallWatch::finish() {
    return std::move(state_->evidence);
}

std::optional<Ball> findBall(const BallEvidence& evidence, const ShaftTrack& track, const FitContext& context,
                             std::optional<base::Seconds> through) {
    const double r = context.timeScale.realPerShown > 0 ? context.timeScale.realPerShown : 1.0;
    // When the club hangs down while turning fastest: the hit cannot be far from it.
    std::optional<double> bottom;
    double fastest = 250.0;
    // Down-the-line the shaft hardly turns in the picture while it passes the ball: nothing to go by there.
    const bool turns = context.shot.view == marks::View::faceOn;
    for (std::size_t i = 2; turns && i < track.size(); ++i) {
        if (!track[i] || !track[i - 2]) {
            continue;
        }
        const double dt = (track[i]->time - track[i - 2]->time).value() * r;
        const double speed =
            std::abs(track[i]->angleDegrees - track[i - 2]->angleDegrees) / std::max(dt, 1e-4);
        const double down = std::remainder(track[i]->angleDegrees, 360.0);
        if (dt < 0.12 && speed > fastest && std::abs(down) < 75.0) {
            fastest = speed;
            bottom = track[i]->time.value() * r;
        }
    }
    // Where the head stood while it was still: the ball lies beside it.
    std::optional<base::Vec2> restingHead;
    {
        std::vector<double> xs, ys;
        for (const auto& s : track) {
            if (s && s->head && (!bottom || s->time.value() * r < *bottom - 0.6) &&
                std::abs(std::remainder(s->angleDegrees, 360.0)) < 60.0) {
                xs.push_back(s->head->x), ys.push_back(s->head->y);
            }
        }
        if (xs.size() >= 5) {
            const auto mid = static_cast<std::ptrdiff_t>(xs.size() / 2);
            std::nth_element(xs.begin(), xs.begin() + mid, xs.end());
            std::nth_element(ys.begin(), ys.begin() + mid, ys.end());
            restingHead = base::Vec2{xs[xs.size() / 2], ys[ys.size() / 2]};
        }
    }
    // Shoes and socks are bright, round and leave the ground when the heel rises through the ball. From the
    // front the ball lies nearer the camera than the toes, so below them in the picture; from behind, well
    // beside.
    const auto onAFoot = [&](base::Vec2 at) {
        if (!evidence.feet || evidence.staturePixels <= 0) {
            return false;
        }
        const double beside = context.shot.view == marks::View::faceOn ? 0.17 : 0.24;
        for (const base::Vec2 ankle : {evidence.feet->leadAnkle, evidence.feet->trailAnkle}) {
            const double dx = (at.x - ankle.x) / evidence.staturePixels;
            const double dy = (at.y - ankle.y) / evidence.staturePixels;
            if (std::abs(dx) < beside && dy < 0.085) {
                return true;
            }
        }
        return false;
    };
    std::optional<Ball> best;
    double bestWorth = 0.0;
    const auto& times = evidence.times;
    for (const BallSpot& spot : evidence.spots) {
        if (onAFoot(spot.centre)) {
            continue;
        }
        const auto n = static_cast<int>(spot.likeness.size());
        auto time = [&](int i) { return times[static_cast<std::size_t>(spot.firstLooked + i)].value() * r; };
        auto there = [&](int i) {
            const auto k = static_cast<std::size_t>(i);
            return spot.contrastShare[k] >= 50 && spot.contrastShare[k] <= 190 && spot.likeness[k] >= 45;
        };
        auto gone = [&](int i) {
            const auto k = static_cast<std::size_t>(i);
            return spot.contrastShare[k] < 40 || spot.likeness[k] < 20;
        };
        // Gone for good: the last frame that shows it, with next to nothing of it afterwards.
        int last = -1;
        int later = 0, laterThere = 0;
        for (int i = n - 1; i >= 0; --i) {
            if (there(i)) {
                // A single likeness among many frames without is the club's head or a shadow passing over.
                int company = 0, span = 0;
                for (int k = std::max(0, i - 6); k < i; ++k) {
                    company += there(k), ++span;
                }
                if (2 * company >= span && span > 0) {
                    last = i;
                    break;
                }
                ++laterThere;
            }
            ++later;
        }
        if (last < 3 || later < 3 || laterThere > 0.08 * later + 2) {
            continue;
        }
        int first = last + 1;
        while (first < n && !gone(first)) {
            ++first;
        }
        if (first >= n || time(first) - time(last) > 0.08) {
            continue; // faded: a shadow or the light
        }
        // It lay there before.
        int before = 0, beforeThere = 0;
        for (int i = 0; i <= last; ++i) {
            if (time(last) - time(i) < 0.8) {
                beforeThere += there(i), ++before;
            }
        }
        const double steady = static_cast<double>(beforeThere) / before;
        if (steady < 0.6) {
            continue;
        }
        double worth = steady * std::min(1.0, spot.contrast / 40.0);
        if (bottom) {
            const double off = std::abs((time(last) + time(first)) / 2 - *bottom);
            if (off > 0.20) {
                continue;
            }
            worth *= std::exp(-off / 0.08);
        }
        if (!turns && through) {
            // Not more than a preference: the fastest hands may be those of a practice swing.
            const double off = std::abs((time(last) + time(first)) / 2 - through->value() * r);
            worth *= std::max(0.1, std::exp(-off / 0.15));
        }
        if (restingHead) {
            const double off =
                base::length(spot.centre - *restingHead) / std::max(evidence.staturePixels, 1.0);
            worth *= std::exp(-std::pow(off / 0.22, 2));
        }
        if (worth > bestWorth && worth > 0.02) {
            bestWorth = worth;
            Ball ball;
            ball.centre = spot.centre;
            ball.radius = spot.radius;
            ball.sigma =
                std::max(0.7, 0.35 * spot.radius); // light from above moves the bright spot off the middle
            ball.lastSeen = times[static_cast<std::size_t>(spot.firstLooked + last)];
            ball.firstGone = times[static_cast<std::size_t>(spot.firstLooked + first)];
            best = ball;
        }
    }
    return best;
}

} // namespace plumbmark::club
