// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/wrist_set.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include "measure/curve.h"
#include "measure/filters.h"

namespace plumbmark::measure {
namespace {

using base::Vec2;
using marks::Landmark;
using marks::MomentId;

constexpr double kDegree = std::numbers::pi / 180.0;
constexpr int kCurveSlot = 120;

/// Inclination of the swing's plane to the ground by club (shaft lie and a little more; common practice, no
/// source).
double planeOf(const marks::ShotContext& context) {
    if (!context.club) {
        return 58.0;
    }
    switch (context.club->kind) {
    case marks::ClubKind::driver:
        return 50.0;
    case marks::ClubKind::wood:
        return 54.0;
    case marks::ClubKind::hybrid:
        return 57.0;
    case marks::ClubKind::iron:
        return 59.0;
    case marks::ClubKind::wedge:
        return 62.0;
    case marks::ClubKind::putter:
        return 70.0;
    }
    return 58.0;
}

/// Signed angle by which the shaft lags behind the forearm. Going back and coming down alike, a set wrist
/// holds the club turned farther away from the target side of the forearm: clockwise in (u, v).
double lag(Vec2 forearm, Vec2 shaft, double stretch) {
    const double f = std::atan2(forearm.y * stretch, forearm.x);
    const double s = std::atan2(shaft.y * stretch, shaft.x);
    return std::remainder(f - s, 2.0 * std::numbers::pi) / kDegree;
}

/// In the picture heights of the plane are shortened by the sine of its inclination.
double stretchOf(Probe& p, bool corrected) {
    return corrected ? 1.0 / std::sin((planeOf(p.input().context) + p.ownNoise(10, 6.0)) * kDegree) : 1.0;
}

/// Elbow of a lead arm that swings: bent this much, which turns the forearm against the straight line from
/// shoulder to wrist by its share of the arm (upper arm 0.186, forearm 0.146 of stature, Drillis and Contini
/// 1966), hand toward the head. Spread between players as wide as the mean; common practice, no source.
constexpr double kElbowBent = 14.0 * 0.56, kElbowBentSigma = 7.0;

double sigmaAt(const Probe& p, Landmark l, base::Seconds t) {
    const auto& track = p.input().track;
    const auto i = marks::frameAt(track, t);
    for (const std::size_t k : {i, i + 1, i > 0 ? i - 1 : i}) {
        if (k < track.size() && track[k][l]) {
            return std::max(0.5, track[k][l]->sigma);
        }
    }
    return 1e6;
}

struct Forearm {
    Vec2 direction;     ///< unit vector elbow -> wrist
    double sigma = 0.0; ///< degrees, from the marks alone
};

/// Direction of the lead forearm. With the arm up it is short in the picture and the elbow is the worst mark
/// of all, while shoulder and hands are known and the arm is nearly straight: then most of it is the whole
/// arm's direction, by how sure either is. An elbow marked by hand outweighs it.
template <class At> std::optional<Forearm> forearmOf(Probe& p, base::Seconds t, const At& at) {
    const auto elbow = at(Landmark::lead_elbow);
    const auto wrist = at(Landmark::lead_wrist);
    if (!elbow || !wrist) {
        return std::nullopt;
    }
    const Vec2 fore = *wrist - *elbow;
    const double length = std::max(base::length(fore), 1.0);
    const double wristSigma = sigmaAt(p, Landmark::lead_wrist, t);
    const double bySelf = std::hypot(sigmaAt(p, Landmark::lead_elbow, t), wristSigma) / length / kDegree;
    const auto shoulder = at(Landmark::lead_shoulder);
    const auto hip = at(Landmark::lead_hip);
    const double stature = p.input().scene.scale.pixelsPerStature;
    if (!shoulder || !hip || !(stature > 0.0)) {
        return Forearm{fore / length, bySelf};
    }
    const Vec2 arm = *wrist - *shoulder;
    const double reach = std::max(base::length(arm), 1.0);
    const double byArm = std::hypot(
        std::hypot(sigmaAt(p, Landmark::lead_shoulder, t), wristSigma) / reach / kDegree, kElbowBentSigma);
    const double up = std::clamp((wrist->y - hip->y) / (0.15 * stature), 0.0, 1.0);
    const double share = up * bySelf * bySelf / (bySelf * bySelf + byArm * byArm);
    // The hand bends toward the head: clockwise in (u, v) while the arm is on the trail side.
    const double bend = -(kElbowBent + p.ownNoise(13 + marks::kMomentCount, kElbowBentSigma)) * kDegree;
    const Vec2 turned{arm.x * std::cos(bend) - arm.y * std::sin(bend),
                      arm.x * std::sin(bend) + arm.y * std::cos(bend)};
    const Vec2 mean = fore * ((1.0 - share) / length) + turned * (share / reach);
    const double size = base::length(mean);
    if (!(size > 0.05)) {
        return Forearm{fore / length, bySelf};
    }
    return Forearm{mean / size, std::hypot((1.0 - share) * bySelf, share * byArm)};
}

std::optional<double> setAt(Probe& p, MomentId m, bool corrected) {
    const auto t = p.time(m);
    if (!t) {
        return std::nullopt;
    }
    const auto forearm = forearmOf(p, *t, [&](Landmark l) { return p.at(l, m); });
    const auto shaft = p.shaft(m);
    if (!forearm || !shaft) {
        return std::nullopt;
    }
    // Unsigned, as the trade defines it (180 minus the included angle): a club that has passed the forearm
    // reads like one that still lags. It does not lie in line with the forearm out of the plane either
    // (raised handle).
    return std::abs(lag(forearm->direction, shaft->direction, stretchOf(p, corrected))) +
           p.ownNoise(12 + static_cast<int>(m), corrected ? 4.0 : 2.0);
}

std::optional<double> setAtTime(Probe& p, base::Seconds t, bool corrected) {
    const auto forearm = forearmOf(p, t, [&](Landmark l) { return p.at(l, t, kCurveSlot); });
    const auto shaft = p.shaft(t, kCurveSlot, std::nullopt);
    if (!forearm || !shaft) {
        return std::nullopt;
    }
    return lag(forearm->direction, shaft->direction, stretchOf(p, corrected));
}

std::optional<double> kept(Probe& p, bool corrected) {
    const auto before = setAt(p, MomentId::lead_arm_level_down, corrected);
    const auto after = setAt(p, MomentId::shaft_level_down, corrected);
    if (!before || !after) {
        return std::nullopt;
    }
    if (*before < 25.0) {
        return p.fail("The wrists are hardly set when the lead arm is level, so a kept share says nothing.");
    }
    return *after / *before;
}

struct Peak {
    base::Seconds time;
    double sigma = 0.0; ///< presentation seconds
};

/// No wrist sets farther than this, whatever the club: beyond it the marks are wrong, degrees. The hand bends
/// some 25 degrees to the thumb's side (common clinical norm, from memory) and the club lies across the palm
/// at up to 110 degrees to the forearm, so 135 is reached and 155 is not; hardly anything is below straight
/// before delivery.
constexpr double kMostSet = 155.0, kLeastSet = -25.0;
/// Directions less sure than this say nothing about the curve, degrees.
constexpr double kBlind = 60.0;
/// The marks' errors at instants closer than this are the same error, real seconds: they belong to the pose.
constexpr double kSameError = 0.20;
/// How far the set may stray from the straight line across a gap, degrees for each real second from its
/// nearer edge: wrists set and unset at up to some 400 degrees a second before delivery.
constexpr double kStrayInGap = 400.0;

/// The set from takeaway to delivery, one value a frame, with one sigma each, gaps filled by straight lines.
struct SetCurve {
    std::vector<double> times, values, sigmas; ///< presentation seconds, degrees, degrees
    double seen = 0.0;                         ///< share of the frames that show it
};

SetCurve setCurve(const Input& input, base::Seconds from, base::Seconds to) {
    SetCurve c;
    std::vector<bool> known;
    for (std::size_t i = 0; i < input.track.size(); ++i) {
        const auto& frame = input.track[i];
        if (frame.time < from || frame.time > to) {
            continue;
        }
        double value = 0.0, sigma = 1e9;
        Probe still(input); // the undisturbed curve: its own sigma is told apart below
        const auto forearm =
            forearmOf(still, frame.time, [&](Landmark l) { return still.at(l, frame.time, kCurveSlot); });
        const auto shaft = still.shaft(frame.time, kCurveSlot, std::nullopt);
        if (forearm && shaft) {
            const double line = i < input.shaft.size() && input.shaft[i] ? input.shaft[i]->sigmaDegrees : 5.0;
            value = lag(forearm->direction, shaft->direction, stretchOf(still, true));
            sigma = std::hypot(forearm->sigma, line, 4.0);
        }
        c.times.push_back(frame.time.value());
        c.values.push_back(value);
        c.sigmas.push_back(sigma);
        known.push_back(sigma < kBlind && value < kMostSet && value > kLeastSet);
    }
    const std::size_t n = c.times.size();
    const auto count = std::count(known.begin(), known.end(), true);
    c.seen = n > 0 ? static_cast<double>(count) / static_cast<double>(n) : 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        if (known[i]) {
            continue;
        }
        std::size_t left = i, right = i;
        while (left > 0 && !known[left]) {
            --left;
        }
        while (right + 1 < n && !known[right]) {
            ++right;
        }
        if (!known[left]) {
            left = right;
        }
        if (!known[right]) {
            right = left;
        }
        if (!known[left]) {
            break; // nothing is seen at all
        }
        const double span = c.times[right] - c.times[left];
        const double k = span > 0.0 ? (c.times[i] - c.times[left]) / span : 0.0;
        const double off =
            std::min(std::abs(c.times[i] - c.times[left]), std::abs(c.times[right] - c.times[i]));
        c.values[i] = c.values[left] + (c.values[right] - c.values[left]) * k;
        c.sigmas[i] = std::hypot(c.sigmas[left] + (c.sigmas[right] - c.sigmas[left]) * k,
                                 kStrayInGap * off * input.timeScale.realPerShown);
    }
    return c;
}

/// Greatest set between takeaway and delivery. Near its peak the curve is flat and the forearm short in the
/// picture, so where the peak lies is asked of many curves that the marks would allow as well: the seen one
/// plus errors of its own sigma that change over kSameError. Their peaks' mean and spread are the answer. The
/// draws are the same every time.
std::optional<Peak> peakOf(Probe& p) {
    const auto& input = p.input();
    const auto* from = marks::find(input.moments, MomentId::shaft_level_back);
    const auto* to = marks::find(input.moments, MomentId::shaft_level_down);
    if (from == nullptr) {
        from = marks::find(input.moments, MomentId::address);
    }
    if (to == nullptr) {
        to = marks::find(input.moments, MomentId::impact);
    }
    if (from == nullptr || to == nullptr) {
        return p.fail("Takeaway and delivery were not found in this clip; mark them by hand.");
    }
    const SetCurve curve = setCurve(input, from->time, to->time);
    if (curve.times.size() < 9 || curve.seen < 0.4) {
        return p.fail("Lead forearm and shaft are seen together in too few frames to follow the wrist set.");
    }
    const double real = std::max(1e-3, input.timeScale.realPerShown);
    const double gap =
        (curve.times.back() - curve.times.front()) / static_cast<double>(curve.times.size() - 1);
    int half = static_cast<int>(std::lround(0.04 / real / gap));
    half = std::clamp(half, 2, std::min(15, (static_cast<int>(curve.times.size()) - 1) / 2));
    const auto smooth = savitzkyGolay(curve.values, half, 2, 0, 1.0);
    const double knot = kSameError / real;
    const auto knots = static_cast<std::size_t>((curve.times.back() - curve.times.front()) / knot) + 2;
    std::mt19937 draw(20);       // NOLINT: the same draws every time are wanted
    const auto gauss = [&draw] { // sum of uniform numbers: near enough, and the same on every system
        double sum = 0.0;
        for (int k = 0; k < 6; ++k) {
            sum += static_cast<double>(draw()) / 4294967296.0;
        }
        return (sum - 3.0) * std::numbers::sqrt2;
    };
    // Between two knots the error is their mix, of the same sigma everywhere.
    struct Share {
        std::size_t knot;
        double here, next; ///< degrees for a knot of one sigma
    };
    std::vector<Share> shares;
    for (std::size_t i = 0; i < smooth.size(); ++i) {
        const double s = (curve.times[i] - curve.times.front()) / knot;
        const auto k = std::min(static_cast<std::size_t>(s), knots - 1);
        const double b = s - static_cast<double>(k), a = 1.0 - b, scale = curve.sigmas[i] / std::hypot(a, b);
        shares.push_back({k, a * scale, b * scale});
    }
    constexpr int kDraws = 200;
    double mean = 0.0, square = 0.0;
    std::vector<double> at(knots + 1);
    for (int d = 0; d < kDraws; ++d) {
        std::generate(at.begin(), at.end(), gauss);
        double highest = -1e9, where = 0.0;
        for (std::size_t i = 0; i < smooth.size(); ++i) {
            const Share& share = shares[i];
            const double value = smooth[i] + share.here * at[share.knot] + share.next * at[share.knot + 1];
            if (value > highest) {
                highest = value, where = curve.times[i] - curve.times.front();
            }
        }
        mean += where / kDraws;
        square += where * where / kDraws;
    }
    return Peak{base::Seconds{curve.times.front() + mean},
                std::max(gap, std::sqrt(std::max(0.0, square - mean * mean)))};
}

std::optional<double> peakAfter(Probe& p, MomentId reference) {
    if (!p.input().timeScale.known) {
        return p.fail("The clip's real speed is not known; tell the frame rate it was captured at.");
    }
    const auto t = p.time(reference);
    const auto peak = peakOf(p);
    if (!t || !peak) {
        return std::nullopt;
    }
    return ((peak->time - *t).value() + p.ownNoise(11, peak->sigma)) * p.realPerShown();
}

/// Shaft against the bisector of the forearms, + when the shaft has passed them toward the target.
std::optional<double> releaseAngle(Probe& p, MomentId m) {
    const auto le = p.at(Landmark::lead_elbow, m);
    const auto lw = p.at(Landmark::lead_wrist, m);
    const auto te = p.at(Landmark::trail_elbow, m);
    const auto tw = p.at(Landmark::trail_wrist, m);
    const auto shaft = p.shaft(m);
    if (!le || !lw || !te || !tw || !shaft) {
        return std::nullopt;
    }
    const Vec2 a = *lw - *le;
    const Vec2 b = *tw - *te;
    if (base::length(a) < 1.0 || base::length(b) < 1.0) {
        return p.fail("A forearm points at the camera at \"release\", so its direction cannot be told.");
    }
    const Vec2 middle = a / base::length(a) + b / base::length(b);
    return -lag(middle, shaft->direction, 1.0);
}

} // namespace

Curve wristSetCurve(const Input& input, bool corrected) {
    Curve curve;
    curve.id = corrected ? "wrist_set_corrected" : "wrist_set";
    const auto* from = marks::find(input.moments, MomentId::address);
    const auto* to = marks::find(input.moments, MomentId::impact);
    for (const auto& frame : input.track) {
        if ((from != nullptr && frame.time < from->time) || (to != nullptr && frame.time > to->time)) {
            continue;
        }
        const auto m = evaluate(
            input, curve.id, std::nullopt, base::Unit::degrees, 1,
            [&](Probe& p) { return setAtTime(p, frame.time, corrected); }, 0.5);
        if (m.value) {
            curve.times.push_back(frame.time);
            curve.values.push_back(m.value->value);
            curve.sigmas.push_back(m.value->sigma);
        }
    }
    return curve;
}

Definitions wristSetDefinitions() {
    const auto faceOn = marks::View::faceOn;
    const auto deg = base::Unit::degrees;
    const std::vector<MomentId> where{MomentId::lead_arm_level_back, MomentId::top,
                                      MomentId::lead_arm_level_down, MomentId::shaft_level_down,
                                      MomentId::impact};
    const std::string_view unsure = "Lead forearm and shaft are not seen well enough here; mark lead elbow, "
                                    "lead wrist and the shaft by hand.";
    return {
        {"wrist_set", faceOn, deg, 2, where, [](Probe& p, MomentId m) { return setAt(p, m, false); }, 0.5,
         30.0, unsure},
        {"wrist_set_corrected", faceOn, deg, 2, where, [](Probe& p, MomentId m) { return setAt(p, m, true); },
         1.0, 30.0, unsure},
        {"wrist_set_peak_time",
         faceOn,
         base::Unit::seconds,
         2,
         {},
         [](Probe& p, MomentId) { return peakAfter(p, MomentId::top); },
         0.002,
         0.25,
         "The wrist set stays near its greatest value for long, so its peak has no sharp time."},
        {"wrist_set_peak_after_arm_level",
         faceOn,
         base::Unit::seconds,
         2,
         {},
         [](Probe& p, MomentId) { return peakAfter(p, MomentId::lead_arm_level_back); },
         0.002,
         0.25,
         "The wrist set stays near its greatest value for long, so its peak has no sharp time."},
        {"wrist_set_kept_corrected",
         faceOn,
         base::Unit::ratio,
         2,
         {},
         [](Probe& p, MomentId) { return kept(p, true); },
         0.02,
         0.3,
         unsure},
        {"wrist_set_kept",
         faceOn,
         base::Unit::ratio,
         2,
         {},
         [](Probe& p, MomentId) { return kept(p, false); },
         0.02,
         0.3,
         unsure},
        {"release_bisector_angle",
         faceOn,
         deg,
         1,
         {MomentId::release},
         releaseAngle,
         1.0,
         25.0,
         "Forearms and shaft are not seen well enough after impact; mark elbows, wrists and the shaft by "
         "hand."},
    };
}

} // namespace plumbmark::measure
