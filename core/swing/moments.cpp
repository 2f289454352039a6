// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "swing/moments.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <numbers>

#include "swing/detail/series.h"

namespace plumbmark::swing {
namespace {

using detail::Crossing;
using detail::Series;
using marks::Landmark;
using marks::MomentId;

constexpr double kDefaultDistanceMetres = 4.5; // the filming protocol's 4-5 m, common practice, no source
constexpr double kDefaultDistanceSigma = 1.6;
constexpr double kHeadCoversBall = 0.025; // s: the last 0.6 m of the head's way at 25-40 m/s
/// Measured on rendered swings: hands reverse 7 to 57 ms before the shaft does.
constexpr double kHandsBeforeShaft = 0.030;
/// Statures a second: the hands rest at the top for a moment and come down at 2 to 4; what the marks' noise
/// makes of rest is up to half a stature a second.
constexpr double kHandsAtTheTop = 0.9, kHandsComingDown = 1.5;
constexpr double kPause = 0.15; // s, the longest rest at the top that is looked for
/// The turn lies nearer to the rest's middle than anywhere in it: share of the rest's own spread (development
/// seeds 1-30).
constexpr double kMiddleOfRest = 0.6;
/// Hands and shaft turn within a tenth of a second of each other in every swing (above); twice that is a
/// contradiction, s.
constexpr double kTopsApart = 0.2;
/// Degrees of the shaft's turn back: what it takes 0.1 s for at a top, either way.
constexpr double kSameHeight = 6.0;
/// Seen from behind, the hands leave along the line of sight and their start shows late.
constexpr double kHandsStartLateBehind = 0.09;
/// Seen from behind, a club that starts back in the plane through lens and shaft does not turn in the
/// picture: its turn may show up to a fifth of a second late, s.
constexpr double kShaftLeavesInItsPlane = 0.08;
constexpr double kRecorderSoundSigma = 0.006; // sound against picture without a clap test of the device

/// Everything below runs in real seconds where the time scale is known (else in the working guess of it).
class Finder {
  public:
    explicit Finder(const Clues& clues) : c_(clues), r_(clues.timeScale.realPerShown), frame_(frameStep()) {
        collect();
    }

    Found run() {
        findCourse();
        findImpact();
        if (bottom_) {
            findTop();
            findLevels();
            findAddress();
            findLeadArm();
            findPelvis();
            findFinish();
        } else {
            miss("No full swing could be followed in this clip: film the whole swing, from before the club "
                 "moves "
                 "until the finish.");
        }
        applyFixes();
        std::stable_sort(found_.moments.begin(), found_.moments.end(),
                         [](const auto& a, const auto& b) { return a.time < b.time; });
        if (bottom_) {
            found_.bottom = base::Seconds{*bottom_ / r_};
        }
        return std::move(found_);
    }

  private:
    double frameStep() const {
        const auto& track = c_.track;
        if (track.size() < 2) {
            return 1.0 / 30.0;
        }
        return (track.back().time - track.front().time).value() * r_ / static_cast<double>(track.size() - 1);
    }

    base::Vec2 ground(std::size_t frame, base::Vec2 p) const {
        return c_.scene.ground.toReference(static_cast<int>(frame), p);
    }
    double along(base::Vec2 p) const {
        return base::dot(p, c_.scene.vertical.right()) * c_.context.sideSign();
    }
    double height(base::Vec2 p) const { return base::dot(p, c_.scene.vertical.up()); }

    void collect() {
        stature_ = std::max(c_.scene.scale.pixelsPerStature, 1.0);
        for (std::size_t i = 0; i < c_.track.size(); ++i) {
            const auto& frame = c_.track[i];
            const double t = frame.time.value() * r_;
            if (const auto& grip = frame[Landmark::grip]) {
                const base::Vec2 g = ground(i, grip->at);
                gripX_.add(t, along(g) / stature_, grip->sigma / stature_);
                gripY_.add(t, height(g) / stature_, grip->sigma / stature_);
            }
            const auto& lead = frame[Landmark::lead_hip];
            const auto& trail = frame[Landmark::trail_hip];
            if (lead && trail) {
                const base::Vec2 mid = ground(i, base::midpoint(lead->at, trail->at));
                pelvisX_.add(t, along(mid) / stature_, std::hypot(lead->sigma, trail->sigma) / 2 / stature_);
                pelvisY_.add(t, height(mid) / stature_, std::hypot(lead->sigma, trail->sigma) / 2 / stature_);
            }
            const auto& shoulder = frame[Landmark::lead_shoulder];
            const auto& wrist = frame[Landmark::lead_wrist];
            if (shoulder && wrist) {
                const base::Vec2 arm = wrist->at - shoulder->at;
                const double len = std::max(base::length(arm), 1.0);
                // Height of the wrist over the shoulder in arm lengths: 0 when the lead arm is level.
                leadArm_.add(t, height(arm) / len, std::hypot(shoulder->sigma, wrist->sigma) / len);
            }
            if (i < c_.shaft.size() && c_.shaft[i]) {
                const auto& s = *c_.shaft[i];
                turned_.add(t, turnedBack(s, c_.scene.vertical, c_.context.sideSign()), s.sigmaDegrees);
            }
        }
        normaliseTurns();
    }

    /// The track's turns count from an unknown full circle: put the quiet start between -180 and 180.
    void normaliseTurns() {
        if (turned_.empty() || c_.context.view != marks::View::faceOn) {
            return;
        }
        std::vector<double> early(
            turned_.v.begin(),
            turned_.v.begin() + static_cast<std::ptrdiff_t>(std::max<std::size_t>(1, turned_.size() / 6)));
        std::nth_element(early.begin(), early.begin() + static_cast<std::ptrdiff_t>(early.size() / 2),
                         early.end());
        const double shift = 360.0 * std::round(early[early.size() / 2] / 360.0);
        for (double& v : turned_.v) {
            v -= shift;
        }
    }

    bool faceOn() const { return c_.context.view == marks::View::faceOn; }
    double half(double seconds) const { return std::max(seconds, 2.6 * frame_); }

    /// Where the swing is: its bottom (club low and fastest) and roughly its top.
    /// Two witnesses go before one: where a ball left its place, a stretch fast enough to be a swing near
    /// that time is it, even when something else in the clip (a practice swing, a mark that jumped) was
    /// faster.
    void findCourse() {
        if (c_.ball && c_.ball->lastSeen && c_.ball->firstGone) {
            findCourseIn(c_.ball->lastSeen->value() * r_ - 0.35, c_.ball->firstGone->value() * r_ + 0.35);
        }
        if (!bottom_) {
            findCourseIn(-1e9, 1e9);
        }
    }

    void findCourseIn(double from, double to) {
        if (faceOn() && turned_.size() > 8) {
            const auto grid = detail::gridOf(turned_, std::max(frame_, 1.0 / 240.0), half(0.02));
            double steepest = -300.0; // degrees a second; slower than this is no swing through the ball
            std::optional<std::size_t> at;
            for (std::size_t i = 0; i < grid.at.size(); ++i) {
                if (grid.at[i] && grid.time(i) > from && grid.time(i) < to && grid.at[i]->b < steepest &&
                    grid.at[i]->a > -150.0 && grid.at[i]->a < 150.0) {
                    steepest = grid.at[i]->b;
                    at = i;
                }
            }
            if (at) {
                const double t = grid.time(*at);
                auto b = detail::crossing(turned_, 0.0, -1, t - 0.35, t + 0.25, half(0.012), 0.12, true);
                bottom_ = b ? b->t : t;
            }
        }
        if (!bottom_ && gripY_.size() > 8) {
            // Hands: the lowest point inside the fastest stretch.
            const double step = std::max(frame_, 1.0 / 240.0);
            const auto gx = detail::gridOf(gripX_, step, half(0.03));
            const auto gy = detail::gridOf(gripY_, step, half(0.03));
            double fastest = 0.9; // statures a second, well under any full swing's hand speed
            std::optional<double> at;
            for (std::size_t i = 0; i < std::min(gx.at.size(), gy.at.size()); ++i) {
                if (gx.at[i] && gy.at[i] && gx.time(i) > from && gx.time(i) < to) {
                    const double speed = std::hypot(gx.at[i]->b, gy.at[i]->b);
                    if (speed > fastest && cameDown(gy, gx.time(i))) {
                        fastest = speed;
                        at = gx.time(i);
                    }
                }
            }
            if (at) {
                Series low = gripY_;
                for (double& v : low.v) {
                    v = -v;
                }
                const auto lowest = detail::peak(low, *at - 0.2, *at + 0.2, half(0.04));
                bottom_ = lowest ? lowest->t : *at;
                bottomFromHands_ = true;
            }
        }
    }

    /// The hands were clearly higher within the last half second: without that, a fast hand is a waggle, a
    /// walk or a mark that jumped.
    bool cameDown(const detail::Grid& height, double t) const {
        double low = 1e9, high = -1e9;
        for (std::size_t i = 0; i < height.at.size(); ++i) {
            const double u = height.time(i);
            if (!height.at[i]) {
                continue;
            }
            if (std::abs(u - t) < 0.10) {
                low = std::min(low, height.at[i]->a);
            }
            if (u > t - 0.55 && u < t - 0.05) {
                high = std::max(high, height.at[i]->a);
            }
        }
        return high > low + 0.20; // statures
    }

    void findImpact() {
        if (!c_.ball || !c_.ball->lastSeen || !c_.ball->firstGone) {
            miss(c_.ball ? "Impact cannot be told: the ball did not leave its place in this clip."
                         : "Impact cannot be told: no ball was seen at address. A clean view of the ball "
                           "would help.");
            return;
        }
        const double a = c_.ball->lastSeen->value() * r_;
        double b = c_.ball->firstGone->value() * r_;
        if (!faceOn()) {
            b += kHeadCoversBall; // seen from behind, the head comes between lens and ball before it strikes
        }
        if (bottom_ && (b < *bottom_ - 0.25 || a > *bottom_ + 0.25)) {
            miss(
                "Impact cannot be told: the ball left its place at another time than the club came through.");
            return;
        }
        std::optional<Crossing> club;
        if (c_.headPassesBall && faceOn()) { // from behind, the shaft points at the ball all the way down
            club = Crossing{c_.headPassesBall->time.value() * r_,
                            std::max(c_.headPassesBall->sigma.value() * r_, 0.0005)};
        }
        const double distance = c_.context.cameraDistanceMetres.value_or(kDefaultDistanceMetres);
        const double distanceSigma = c_.context.cameraDistanceMetres ? 0.3 : kDefaultDistanceSigma;
        const double delay = distance / speedOfSound(20.0);
        const double soundSigma = std::hypot(distanceSigma / speedOfSound(20.0), kRecorderSoundSigma);
        // The loudest hit that fits the place; a neighbour's hit elsewhere in time is no candidate at all.
        const auto heardIn = [&](double first, double last) -> std::optional<double> {
            for (const Hit& hit : c_.hits) {
                const double t = hit.time.value() * r_ - delay;
                if (t > first - 2.0 * soundSigma && t < last + 2.0 * soundSigma) {
                    return t;
                }
            }
            return std::nullopt;
        };
        std::optional<double> sound = heardIn(a, b);
        bool ball = true;
        if (!club && bottom_ && faceOn()) {
            club = shaftMeetsBall();
        }
        if (club && club->t > a - 4 * club->sigma - 0.004 && club->t < b + 4 * club->sigma + 0.004) {
            if (!c_.headPassesBall) {
                club.reset(); // too coarse to narrow the ball's own time
            }
        } else if (club) {
            // Ball and club disagree, so one of them was seen wrong: the sound decides, or nobody.
            const auto withClub = heardIn(club->t, club->t);
            if (withClub && (!sound || std::abs(club->t - std::clamp(club->t, a, b)) > 4.0 * soundSigma)) {
                ball = false;
                sound = withClub;
            } else if (sound) {
                club.reset();
            } else {
                miss("Impact cannot be told: the ball left its place at another time than the club came "
                     "through.");
                return;
            }
        }
        std::string how = ball ? "ball" : "";
        for (const auto& [told, name] :
             {std::pair{club.has_value(), "shaft"}, {sound.has_value(), "sound"}}) {
            how += told ? (how.empty() ? "" : "+") + std::string(name) : "";
        }
        // Density over a grid: flat while the ball may have left, times what club and sound say.
        const double edge = 0.0015; // exposure smears the bracket's ends
        const int n = 801;
        const double from = ball ? a - 4 * edge : club->t - 8 * club->sigma;
        const double to = ball ? b + 4 * edge : club->t + 8 * club->sigma;
        auto soft = [](double x) { return 0.5 * (1.0 + std::erf(x / std::numbers::sqrt2)); };
        double sum = 0.0, mean = 0.0, square = 0.0;
        for (int i = 0; i < n; ++i) {
            const double t = from + (to - from) * i / (n - 1);
            double density = ball ? soft((t - a) / edge) * soft((b - t) / edge) : 1.0;
            if (club) {
                density *= std::exp(-0.5 * std::pow((t - club->t) / club->sigma, 2)) + 1e-6;
            }
            if (sound) {
                density *= std::exp(-0.5 * std::pow((t - *sound) / soundSigma, 2)) + 0.02;
            }
            sum += density, mean += density * t, square += density * t * t;
        }
        mean /= sum;
        const double sigma = std::sqrt(std::max(square / sum - mean * mean, 1e-8));
        bottom_ = mean;
        bottomFromHands_ = false;
        impact_ = mean;
        put(MomentId::impact, mean, sigma, how);
    }

    /// When the shaft's line comes over the ball on the way down, between two samples of it.
    std::optional<Crossing> shaftMeetsBall() const {
        std::optional<Crossing> found;
        double fastest = 0.0;
        const club::ShaftSample* before = nullptr;
        double offBefore = 0.0;
        for (const auto& shaft : c_.shaft) {
            if (!shaft || std::abs(shaft->time.value() * r_ - *bottom_) > 0.25) {
                continue;
            }
            const double off =
                std::remainder(shaft->angleDegrees - club::angleOf(c_.ball->centre - shaft->through), 360.0);
            if (before != nullptr) {
                const double t0 = before->time.value() * r_, step = shaft->time.value() * r_ - t0;
                const double turned = std::abs(off - offBefore);
                if (step > 0.0 && step < 0.06 && off * offBefore <= 0.0 && turned > 0.0 && turned < 150.0 &&
                    turned / step > fastest) {
                    fastest = turned / step;
                    found = Crossing{t0 + step * std::abs(offBefore) / turned, std::max(step / 4.0, 0.003)};
                }
            }
            before = &*shaft;
            offBefore = off;
        }
        return found;
    }

    void findTop() {
        const double from = *bottom_ - 1.2, to = *bottom_ - 0.08;
        std::optional<Crossing> fromShaft;
        bool lostThere = false; // the shaft is out of sight where it turns
        if (faceOn()) {
            // The last peak before the downswing, not a waggle: walk back from the bottom while turning back
            // grows.
            const auto grid = detail::gridOf(turned_, std::max(frame_, 1.0 / 240.0), half(0.025));
            double best = -1e9, at = 0.0;
            for (std::size_t i = grid.at.size(); i-- > 0;) {
                const double t = grid.time(i);
                if (t > to || t < from || !grid.at[i]) {
                    continue;
                }
                if (grid.at[i]->a > best) {
                    best = grid.at[i]->a;
                    at = t;
                } else if (grid.at[i]->a < best - 60.0) {
                    break;
                }
            }
            if (best > 60.0) {
                fromShaft = detail::peak(turned_, at - 0.08, at + 0.08, half(0.045));
                const auto fit = detail::fitAt(turned_, at, half(0.045));
                if (fromShaft && (!fit || fit->samples < 4 || fromShaft->sigma > 0.06)) {
                    fromShaft.reset();
                }
                if (at - turned_.t.front() < 0.04) {
                    fromShaft.reset(); // already on the way down when it is first seen
                } else if (const auto gap = gapAt(at)) {
                    fromShaft = turnInGap(gap->first, gap->second);
                    lostThere = true;
                }
            }
        }
        // Hands reverse: slowest instant while high.
        std::optional<Crossing> fromHands;
        const double step = std::max(frame_, 1.0 / 240.0);
        const auto gx = detail::gridOf(gripX_, step, half(0.05));
        const auto gy = detail::gridOf(gripY_, step, half(0.05));
        double high = -1e9;
        for (std::size_t i = 0; i < gy.at.size(); ++i) {
            if (gy.at[i] && gy.time(i) > from && gy.time(i) < to) {
                high = std::max(high, gy.at[i]->a);
            }
        }
        // Back from the downswing to where the hands were last slow: earlier pauses on the way up are none of
        // the top's, however slow they look.
        double weight = 0.0, mean = 0.0, square = 0.0;
        std::optional<double> latest; // of the rest
        bool down = false;
        for (std::size_t i = std::min(gx.at.size(), gy.at.size()); i-- > 0;) {
            const double t = gx.time(i);
            if (t > to + 0.06 || t < from || t < gx.start + 0.06 || !gx.at[i] || !gy.at[i]) {
                continue;
            }
            const double speed = std::hypot(gx.at[i]->b, gy.at[i]->b);
            down = down || speed > kHandsComingDown;
            if (latest && t < *latest - kPause) {
                break;
            }
            if (down && t < to && speed < kHandsAtTheTop && gy.at[i]->a > high - 0.12) {
                const double w = kHandsAtTheTop - speed;
                latest = latest.value_or(t);
                weight += w, mean += w * t, square += w * t * t;
            } else if (latest) {
                break;
            }
        }
        if (latest) {
            mean /= weight;
            const double run = std::sqrt(std::max(0.0, square / weight - mean * mean));
            fromHands = Crossing{mean + kHandsBeforeShaft,
                                 std::hypot(std::max(0.012, 1.5 * frame_), kMiddleOfRest * run)};
        }
        if (fromShaft && lostThere && fromHands && std::abs(fromShaft->t - fromHands->t) > kTopsApart) {
            miss("The top cannot be told: the club is lost there, and the hands turn at another time; film "
                 "with room for the club on all sides.");
        } else if (fromShaft) {
            top_ = fromShaft->t;
            put(MomentId::top, fromShaft->t, std::hypot(fromShaft->sigma, 0.004), "shaft");
        } else if (fromHands) {
            top_ = fromHands->t;
            put(MomentId::top, fromHands->t, fromHands->sigma, "hands");
        } else {
            miss("The top cannot be told: neither shaft nor hands could be followed there.");
        }
    }

    /// The dropout of the shaft that begins or ends at its greatest turn near `t`, where there is one:
    /// samples on one side alone do not tell when it turned.
    std::optional<std::pair<double, double>> gapAt(double t) const {
        std::optional<std::size_t> best;
        for (std::size_t i = 0; i < turned_.size(); ++i) {
            if (std::abs(turned_.t[i] - t) < 0.08 && (!best || turned_.v[i] > turned_.v[*best])) {
                best = i;
            }
        }
        if (!best) {
            return std::nullopt;
        }
        const double most = std::max(0.03, 2.5 * frame_);
        for (const std::size_t i :
             {*best, *best - 1}) { // (no sample before the first: wraps far beyond the end)
            if (i < turned_.size() - 1 && turned_.t[i + 1] - turned_.t[i] > most) {
                return std::pair{turned_.t[i], turned_.t[i + 1]};
            }
        }
        return std::nullopt;
    }

    /// Where a shaft that goes back into the gap and comes down out of it turned: the cubic through both ends
    /// with their speeds. A player may wait at the top or not, so a quarter of the gap either way is left
    /// open.
    std::optional<Crossing> turnInGap(double from, double to) const {
        const double span = to - from;
        // As far back where it was lost as where it came out again: it turned anywhere between.
        const auto in = detail::fitAt(turned_, from, half(0.03)),
                   out = detail::fitAt(turned_, to, half(0.03));
        if (span > 0.06 && span <= 0.25 && in && out && std::abs(in->a - out->a) < kSameHeight) {
            return Crossing{(from + to) / 2.0, span / std::sqrt(12.0)};
        }
        // Nearly at rest where it was lost: the turn is just beyond.
        for (const double edge : {from, to}) {
            const auto fit = detail::fitAt(turned_, edge, half(0.06));
            if (fit && fit->samples >= 5 && fit->c < 0.0 && std::abs(fit->b) < 60.0) {
                const double beyond = -fit->b / (2.0 * fit->c);
                // What the samples' noise leaves open of the slope at the end of a one-sided parabola.
                const double noise = 3.0 * fit->sigma / half(0.06) / (2.0 * std::abs(fit->c));
                if (std::abs(beyond) < 0.015 && noise < 0.015) {
                    return Crossing{edge + beyond, std::hypot(std::hypot(0.006, noise), 0.5 * beyond,
                                                              0.15 * std::min(span, 0.1))};
                }
            }
        }
        if (span > 0.25) {
            return std::nullopt;
        }
        const auto a = detail::fitAt(turned_, from, 0.03), b = detail::fitAt(turned_, to, 0.03);
        if (!a || !b || a->samples < 3 || b->samples < 3 || a->b < -100.0 || b->b > 0.0) {
            return std::nullopt;
        }
        const double va = std::max(a->b, 0.0) * span, vb = b->b * span, rise = b->a - a->a;
        // Derivative of the cubic over 0..1: va + 2 (3 rise - 2 va - vb) u + 3 (va + vb - 2 rise) u^2.
        double low = 0.0, high = 1.0; // it rises at 0 and falls at 1
        for (int i = 0; i < 40; ++i) {
            const double u = (low + high) / 2;
            const double slope = va + 2 * (3 * rise - 2 * va - vb) * u + 3 * (va + vb - 2 * rise) * u * u;
            (slope > 0.0 ? low : high) = u;
        }
        return Crossing{from + low * span, std::max(0.25 * span, 0.5 * frame_)};
    }

    void findLevels() {
        if (!faceOn()) {
            return; // along the target line a level shaft points at the lens
        }
        const double gap = std::max(0.06, 2.5 * frame_);
        const double top = top_.value_or(*bottom_ - 0.3);
        putCrossing(MomentId::shaft_level_back,
                    detail::crossing(turned_, 90.0, +1, top - 1.6, top, half(0.025), gap, true));
        putCrossing(MomentId::shaft_level_down,
                    detail::crossing(turned_, 90.0, -1, top, *bottom_, half(0.010), gap));
        if (impact_) {
            const double after = *impact_;
            putCrossing(MomentId::release,
                        detail::crossing(turned_, -45.0, -1, after, after + 0.4, half(0.010), gap));
            putCrossing(MomentId::shaft_level_through,
                        detail::crossing(turned_, -90.0, -1, after, after + 0.5, half(0.012), gap));
        } else {
            putCrossing(MomentId::shaft_level_through,
                        detail::crossing(turned_, -90.0, -1, *bottom_, *bottom_ + 0.5, half(0.012), gap));
        }
    }

    /// A level shaft is level against true vertical: what that leaves open is time, by how fast the shaft
    /// turns.
    void putCrossing(MomentId id, const std::optional<Crossing>& c) {
        if (c && c->sigma < 0.06) {
            const auto fit = detail::fitAt(turned_, c->t, half(0.025));
            const double speed = fit ? std::max(std::abs(fit->b), 60.0) : 60.0;
            put(id, c->t, std::hypot(c->sigma, 0.25 * frame_ * 0.5, c_.scene.vertical.sigmaDegrees / speed),
                "shaft");
        }
    }

    /// Back-extrapolated onset of the club's (else the hands') motion away from rest.
    void findAddress() {
        const double top = top_.value_or(*bottom_ - 0.3);
        std::optional<Crossing> onset;
        std::string how = "shaft";
        if (faceOn()) {
            onset = onsetBefore(turned_, top, 45.0, 2.0, 25.0, 6.0);
        } else {
            // The club leaves along the line of sight and the hands hardly show it, but a shaft at rest is
            // seen to a small part of a degree.
            double restEnds = top;
            const Series away = turnedAway(top, restEnds);
            if (!away.empty()) {
                onset = onsetBefore(away, std::min(top, restEnds + 0.06), 6.0, 0.3, 4.0, 2.5);
            }
            if (onset && onset->sigma > 0.1) {
                onset.reset(); // it did not leave in one piece
            }
            if (onset) {
                onset->sigma = std::hypot(onset->sigma, kShaftLeavesInItsPlane);
            }
        }
        if (!onset || !faceOn()) {
            if (const auto hands = handsLeave(top)) {
                const bool disagree =
                    onset && std::abs(onset->t - hands->t) > 2.5 * std::hypot(onset->sigma, hands->sigma);
                if (!onset) {
                    onset = hands;
                    how = "hands";
                } else if (!disagree) {
                    const double a = 1.0 / (onset->sigma * onset->sigma),
                                 h = 1.0 / (hands->sigma * hands->sigma);
                    onset = Crossing{(a * onset->t + h * hands->t) / (a + h), 1.0 / std::sqrt(a + h)};
                    how = "shaft+hands";
                }
            }
        }
        if (onset) {
            put(MomentId::address, onset->t, std::max(onset->sigma, 0.012), how);
            address_ = onset->t;
        } else {
            miss("Address cannot be told: the clip starts after the club began to move, or it never rested.");
        }
    }

    /// Onset of the hands' way from their place just before they leave.
    std::optional<Crossing> handsLeave(double top) const {
        const Series path = gripAway(top);
        if (path.empty()) {
            return std::nullopt;
        }
        auto onset = onsetBefore(path, top, 0.20, 0.015, 0.15, 0.03);
        if (onset) {
            onset->sigma = std::hypot(onset->sigma, 0.05);
            if (!faceOn()) {
                onset->t -= kHandsStartLateBehind;
                onset->sigma = std::hypot(onset->sigma, 0.13);
            }
        }
        return onset;
    }

    /// Turn of the shaft away from the direction it keeps longest before the top, either way, degrees.
    /// `restEnds`: the last time it lay there.
    Series turnedAway(double top, double& restEnds) const {
        std::vector<double> before;
        for (std::size_t i = 0; i < turned_.size() && turned_.t[i] < top - 0.4; ++i) {
            if (turned_.t[i] > top - 3.0) {
                before.push_back(turned_.v[i]);
            }
        }
        std::sort(before.begin(), before.end());
        constexpr double kWidth = 1.0;
        std::size_t most = 0, from = 0;
        for (std::size_t i = 0, j = 0; i < before.size(); ++i) {
            while (j < before.size() && before[j] < before[i] + kWidth) {
                ++j;
            }
            if (j - i > most) {
                most = j - i, from = i;
            }
        }
        Series out;
        if (static_cast<double>(most) * frame_ < 0.1) {
            return out; // never at rest
        }
        const double rest = before[from + most / 2];
        std::size_t run = 0;
        for (std::size_t i = 0; i < turned_.size(); ++i) {
            out.add(turned_.t[i], std::abs(turned_.v[i] - rest), turned_.s[i]);
            run = out.v.back() < kWidth ? run + 1 : 0;
            if (static_cast<double>(run) * frame_ >= 0.1 && turned_.t[i] < top - 0.4) {
                restEnds = turned_.t[i];
            }
        }
        return out;
    }

    Series gripAway(double top) const {
        Series out;
        if (gripX_.size() < 8) {
            return out;
        }
        // Rest place: median over the quietest 0.15 s before the top.
        const auto gx = detail::gridOf(gripX_, 1.0 / 60.0, half(0.06));
        const auto gy = detail::gridOf(gripY_, 1.0 / 60.0, half(0.06));
        double quiet = 1e9, rx = 0, ry = 0;
        for (std::size_t i = 0; i < std::min(gx.at.size(), gy.at.size()); ++i) {
            if (!gx.at[i] || !gy.at[i] || gx.time(i) > top - 0.4 || gx.time(i) < top - 2.0) {
                continue;
            }
            // low hands, slow hands
            const double speed =
                std::hypot(gx.at[i]->b, gy.at[i]->b) + 2.0 * std::max(0.0, gy.at[i]->a - lowHands(top));
            if (speed < quiet) {
                quiet = speed, rx = gx.at[i]->a, ry = gy.at[i]->a;
            }
        }
        if (quiet > 0.5) {
            return out;
        }
        for (std::size_t i = 0; i < gripX_.size(); ++i) {
            out.add(gripX_.t[i], std::hypot(gripX_.v[i] - rx, gripY_.v[i] - ry), gripX_.s[i]);
        }
        return out;
    }

    double lowHands(double top) const {
        double low = 1e9;
        for (std::size_t i = 0; i < gripY_.size(); ++i) {
            if (gripY_.t[i] < top) {
                low = std::min(low, gripY_.v[i]);
            }
        }
        return low;
    }

    /// `clear`: surely under way; `small..large`: the part that is extrapolated; `still`: slope per second
    /// that still counts as rest.
    std::optional<Crossing> onsetBefore(const Series& series, double top, double clear, double smallest,
                                        double largest, double still) const {
        const double step = 1.0 / 240.0;
        const auto grid = detail::gridOf(series, step, half(0.03));
        if (grid.at.empty()) {
            return std::nullopt;
        }
        auto indexOf = [&](double t) {
            return static_cast<std::ptrdiff_t>(
                std::clamp((t - grid.start) / step, 0.0, static_cast<double>(grid.at.size() - 1)));
        };
        // Back from the top to where the motion was surely under way, then on to rest.
        std::ptrdiff_t i = indexOf(top);
        double restLevel = 0.0;
        {
            std::vector<double> before;
            for (std::size_t k = 0; k < series.size() && series.t[k] < top - 0.35; ++k) {
                before.push_back(series.v[k]);
            }
            if (before.empty()) {
                return std::nullopt;
            }
            std::nth_element(before.begin(), before.begin() + static_cast<std::ptrdiff_t>(before.size() / 3),
                             before.end());
            restLevel = before[before.size() / 3];
        }
        while (i > 0 && (!grid.at[static_cast<std::size_t>(i)] ||
                         grid.at[static_cast<std::size_t>(i)]->a > restLevel + clear)) {
            --i;
        }
        const std::ptrdiff_t underWay = i;
        const auto quietSteps = static_cast<int>(std::lround(0.05 / step));
        int quiet = 0;
        while (i > 0) {
            const auto& g = grid.at[static_cast<std::size_t>(i)];
            quiet = g && g->b < still ? quiet + 1 : 0;
            if (quiet >= quietSteps) {
                break;
            }
            --i;
        }
        if (i <= 0) {
            return std::nullopt; // never at rest before it moved
        }
        const double quietTime = grid.time(static_cast<std::size_t>(i + quietSteps));
        // Level of rest: over what is told of the 0.12 s before the motion.
        std::vector<double> rest;
        double restSigma = 0.0;
        for (std::size_t k = 0; k < series.size(); ++k) {
            if (series.t[k] > quietTime - 0.12 && series.t[k] <= quietTime) {
                rest.push_back(series.v[k]);
                restSigma = std::max(restSigma, series.s[k]);
            }
        }
        if (rest.empty()) {
            return std::nullopt;
        }
        std::nth_element(rest.begin(), rest.begin() + static_cast<std::ptrdiff_t>(rest.size() / 2),
                         rest.end());
        const double level = rest[rest.size() / 2];
        std::vector<double> ts, ds;
        double farthest = 0.0;
        for (std::size_t k = 0; k < series.size(); ++k) {
            const double d = series.v[k] - level;
            if (series.t[k] <= quietTime - 0.03 ||
                series.t[k] > grid.time(static_cast<std::size_t>(underWay)) + 0.25) {
                continue;
            }
            farthest = std::max(farthest, d);
            if (farthest > 2.0 * smallest && d < 0.85 * farthest - 2.0 * restSigma) {
                break; // it turns back: no longer the start of one motion
            }
            if (d > std::max(smallest, 2.0 * restSigma) && d < largest) {
                ts.push_back(series.t[k]), ds.push_back(d);
            }
        }
        if (ts.size() < 3) {
            return Crossing{quietTime, faceOn() ? 0.05 : 0.2};
        }
        // A motion from rest grows like (t - t0)^p, p between 2 (constant push) and 4 (smooth start).
        double bestResidual = 1e9, bestOnset = quietTime;
        std::vector<double> onsets;
        for (const double p : {2.0, 2.5, 3.0, 3.5, 4.0}) {
            double n = 0, su = 0, st = 0, suu = 0, sut = 0;
            for (std::size_t k = 0; k < ts.size(); ++k) {
                const double u = std::pow(ds[k], 1.0 / p);
                n += 1, su += u, st += ts[k], suu += u * u, sut += u * ts[k];
            }
            const double slope = (n * sut - su * st) / std::max(n * suu - su * su, 1e-12);
            const double onset = (st - slope * su) / n;
            double residual = 0;
            for (std::size_t k = 0; k < ts.size(); ++k) {
                const double e = ts[k] - onset - slope * std::pow(ds[k], 1.0 / p);
                residual += e * e;
            }
            onsets.push_back(onset);
            if (residual < bestResidual) {
                bestResidual = residual, bestOnset = onset;
            }
        }
        const auto [lo, hi] = std::minmax_element(onsets.begin(), onsets.end());
        const double scatter = std::sqrt(bestResidual / static_cast<double>(ts.size()));
        return Crossing{
            std::clamp(bestOnset, quietTime - 0.15, grid.time(static_cast<std::size_t>(underWay))),
            std::hypot(scatter, 0.35 * (*hi - *lo), 0.5 * frame_)};
    }

    void findLeadArm() {
        const double top = top_.value_or(*bottom_ - 0.3);
        const double gap = std::max(0.09, 2.5 * frame_);
        // The likely bias of shoulder and wrist against each other in arm lengths, not jitter, so it cannot
        // average out: 0.017 statures of each across an arm of 0.33 (face-on, where the shoulders are held to
        // what bones and arms tell); more from behind, where one shoulder hides the other.
        auto put1 = [&](MomentId id, const std::optional<Crossing>& c, double bias) {
            if (!c) {
                return;
            }
            const auto fit = detail::fitAt(leadArm_, c->t, half(0.035));
            const double slope = fit ? std::max(std::abs(fit->b), 0.3) : 1.0;
            // With the bias, the arm is level where it now seems that much off. Near the top the arm hardly
            // moves, so that may be much farther away than the slope at the crossing says.
            double before = bias / slope, after = bias / slope;
            const int direction = id == MomentId::lead_arm_level_back ? +1 : -1;
            const double from = id == MomentId::lead_arm_level_back ? top - 1.2 : top;
            const double to = id == MomentId::lead_arm_level_back ? top : *bottom_;
            if (const auto earlier = detail::crossing(leadArm_, -direction * bias, direction, from, c->t,
                                                      half(0.035), gap, true)) {
                before = std::max(before, c->t - earlier->t);
            }
            const auto later =
                detail::crossing(leadArm_, direction * bias, direction, c->t, to, half(0.035), gap);
            after = std::max(after, later ? later->t - c->t : std::min(to - c->t, 0.25));
            put(id, c->t, std::hypot(c->sigma, std::hypot(before, after) / std::numbers::sqrt2), "arm");
        };
        put1(MomentId::lead_arm_level_back,
             detail::crossing(leadArm_, 0.0, +1, top - 1.2, top, half(0.035), gap, true),
             faceOn() ? 0.075 : 0.17);
        // Coming down the last passage counts: after it the arm stays below until the hit, while before it a
        // lost hand may have dipped. Where there was such a dip, the marks are that much less sure.
        auto down = detail::crossing(leadArm_, 0.0, -1, top, *bottom_, half(0.02), gap, true);
        const auto dip = detail::crossing(leadArm_, 0.0, -1, top, *bottom_, half(0.02), gap);
        if (down && dip) {
            down->sigma = std::hypot(down->sigma, (down->t - dip->t) / 3.0);
        }
        put1(MomentId::lead_arm_level_down, down, faceOn() ? 0.075 : 0.12);
    }

    /// The pelvis drifts away slowly and starts toward the target quickly, so the slow side's farthest point
    /// is drowned in any drift of the marks. The start is extrapolated back from the quick side instead: from
    /// rest the way grows with the square of the time.
    void findPelvis() {
        if (!faceOn() || !top_ || pelvisX_.size() < 8) {
            return;
        }
        const double step = 1.0 / 240.0;
        const auto grid = detail::gridOf(pelvisX_, step, half(0.06));
        double farthest = 1e9, nearest = -1e9, at = 0.0;
        for (std::size_t i = 0; i < grid.at.size(); ++i) {
            const double t = grid.time(i);
            if (!grid.at[i]) {
                continue;
            }
            if (t > *top_ - 0.35 && t < *top_ + 0.06 && grid.at[i]->a < farthest) {
                farthest = grid.at[i]->a, at = t;
            }
            if (t > *top_ && t < *bottom_) {
                nearest = std::max(nearest, grid.at[i]->a);
            }
        }
        const double way = nearest - farthest;
        if (way < 0.012) {
            return; // a pelvis that hardly moves has no start
        }
        // Level before the start: the middle of what is seen in the last quarter second before it moves.
        std::vector<double> before;
        for (std::size_t i = 0; i < grid.at.size(); ++i) {
            const double t = grid.time(i);
            if (grid.at[i] && t > *top_ - 0.35 && t < std::max(at, *top_ - 0.10) &&
                grid.at[i]->a < farthest + 0.25 * way) {
                before.push_back(grid.at[i]->a);
            }
        }
        if (before.size() < 6) {
            return;
        }
        std::nth_element(before.begin(), before.begin() + static_cast<std::ptrdiff_t>(before.size() / 2),
                         before.end());
        const double level = before[before.size() / 2];
        double n = 0, su = 0, st = 0, suu = 0, sut = 0, stt = 0;
        for (std::size_t i = 0; i < grid.at.size(); ++i) {
            const double t = grid.time(i);
            const double d = grid.at[i] ? grid.at[i]->a - level : 0.0;
            if (t < *top_ - 0.25 || t > *bottom_ || d < std::max(0.004, 0.12 * way) || d > 0.55 * way) {
                continue;
            }
            const double u = std::sqrt(d);
            n += 1, su += u, st += t, suu += u * u, sut += u * t, stt += t * t;
        }
        const double spread = n * suu - su * su;
        if (n < 4 || spread <= 0) {
            return;
        }
        const double slope = (n * sut - su * st) / spread;
        const double start = (st - slope * su) / n;
        if (slope <= 0 || start < *top_ - 0.40 || start > *top_ + 0.12) {
            return;
        }
        const double residual = std::max(0.0, stt - start * st - slope * sut) / n;
        // The level is known to about a fifth of a per cent of stature; its square root over the slope of the
        // way is time.
        const double fromLevel = slope * 0.5 * 0.003 / std::sqrt(std::max(0.2 * way, 0.004));
        put(MomentId::pelvis_starts_forward, start, std::hypot(std::sqrt(residual), fromLevel, 0.025),
            "pelvis");
    }

    /// First time after impact when hands and mid-hip are both slower than 5 % of their own peak for 0.15 s.
    void findFinish() {
        const double step = 1.0 / 120.0;
        const auto speedOf = [&](const Series& x, const Series& y) {
            const auto gx = detail::gridOf(x, step, half(0.11)), gy = detail::gridOf(y, step, half(0.11));
            Series out;
            for (std::size_t i = 0; i < std::min(gx.at.size(), gy.at.size()); ++i) {
                if (gx.at[i] && gy.at[i]) {
                    out.add(gx.time(i), std::hypot(gx.at[i]->b, gy.at[i]->b), 0.0);
                }
            }
            return out;
        };
        const Series hands = speedOf(gripX_, gripY_), pelvis = speedOf(pelvisX_, pelvisY_);
        if (hands.empty() || pelvis.empty()) {
            return;
        }
        auto peakOf = [&](const Series& s) {
            double top = 0.0;
            for (std::size_t i = 0; i < s.size(); ++i) {
                if (s.t[i] > *bottom_ - 0.4 && s.t[i] < *bottom_ + 0.6) {
                    top = std::max(top, s.v[i]);
                }
            }
            return top;
        };
        // The trackers' own restlessness must not hide a rest: what they show while the player stood still at
        // address is no movement at the finish either.
        auto restless = [&](const Series& v) {
            std::vector<double> still;
            for (std::size_t i = 0; i < v.size(); ++i) {
                if (address_ && v.t[i] > *address_ - 0.6 && v.t[i] < *address_ - 0.03) {
                    still.push_back(v.v[i]);
                }
            }
            if (still.size() < 5) {
                return 0.06;
            }
            std::sort(still.begin(), still.end());
            return 1.5 * still[still.size() * 9 / 10];
        };
        const double handsBar = std::max({0.05 * peakOf(hands), restless(hands), 0.05});
        const double pelvisBar = std::max({0.05 * peakOf(pelvis), restless(pelvis), 0.05});
        auto quietAt = [](const Series& s, double t, double bar) {
            const auto it = std::lower_bound(s.t.begin(), s.t.end(), t);
            return it != s.t.end() && s.v[static_cast<std::size_t>(it - s.t.begin())] < bar;
        };
        const double end = c_.track.back().time.value() * r_;
        // First as defined, then with a wider bar and a wider sigma: a player who sways in the hold still
        // finishes.
        for (const double wider : {1.0, 1.8, 3.0}) {
            std::optional<double> since;
            for (double t = *bottom_ + 0.25; t < end - 0.02; t += step) {
                if (quietAt(hands, t, wider * handsBar) && quietAt(pelvis, t, wider * pelvisBar)) {
                    if (!since) {
                        since = t;
                    }
                    if (t - *since >= 0.15) {
                        put(MomentId::finish, *since, 0.14 + 0.05 * wider, "hands+pelvis");
                        return;
                    }
                } else {
                    since.reset();
                }
            }
        }
        miss("The finish cannot be told: the clip ends before the player comes to rest. Hold the finish for "
             "a second.");
    }

    void put(MomentId id, double realTime, double realSigma, std::string how) {
        found_.moments.push_back(
            {id, base::Seconds{realTime / r_}, base::Seconds{realSigma / r_}, std::move(how)});
    }
    void miss(std::string sentence) { found_.missing.push_back(std::move(sentence)); }

    void applyFixes() {
        const auto byHand = [&](MomentId id) { return marks::find(c_.fixedByHand, id) != nullptr; };
        for (const auto& fix : c_.fixedByHand) {
            std::erase_if(found_.moments, [&](const auto& m) { return m.id == fix.id; });
            // A fact goes before a finding: what was found on its wrong side cannot be that moment.
            std::erase_if(found_.moments, [&](const auto& m) {
                if (byHand(m.id) || !contradicts(m, fix)) {
                    return false;
                }
                miss("The moment \"" + label(m.id) + "\" was found on the wrong side of \"" + label(fix.id) +
                     "\" as set by hand, so it is left out; set it by hand, too.");
                return true;
            });
        }
        found_.moments.insert(found_.moments.end(), c_.fixedByHand.begin(), c_.fixedByHand.end());
    }

    static bool contradicts(const marks::Moment& found, const marks::Moment& fix) {
        // The pelvis may start before or after the top.
        const bool free = (found.id == MomentId::pelvis_starts_forward && fix.id == MomentId::top) ||
                          (found.id == MomentId::top && fix.id == MomentId::pelvis_starts_forward);
        return !free && (found.id < fix.id) != (found.time < fix.time);
    }
    static std::string label(MomentId id) {
        std::string text(marks::momentName(id));
        std::replace(text.begin(), text.end(), '_', ' ');
        return text;
    }

    const Clues& c_;
    double r_, frame_, stature_ = 1.0;
    Series turned_, gripX_, gripY_, pelvisX_, pelvisY_, leadArm_;
    std::optional<double> bottom_, top_, impact_, address_;
    bool bottomFromHands_ = false;
    Found found_;
};

} // namespace

double turnedBack(const club::ShaftSample& shaft, const scene::Vertical& vertical, int sideSign) {
    // The picture's down turned by the vertical's angle is true down; counter-clockwise is positive there.
    return -(shaft.angleDegrees + vertical.angleDegrees) * sideSign;
}

Found findMoments(const Clues& clues) {
    return Finder(clues).run();
}

} // namespace plumbmark::swing
