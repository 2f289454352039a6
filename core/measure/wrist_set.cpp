// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/wrist_set.h"

#include <algorithm>
#include <cmath>
#include <numbers>

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

std::optional<double> setAt(Probe& p, MomentId m, bool corrected) {
    const auto elbow = p.at(Landmark::lead_elbow, m);
    const auto wrist = p.at(Landmark::lead_wrist, m);
    const auto shaft = p.shaft(m);
    if (!elbow || !wrist || !shaft) {
        return std::nullopt;
    }
    // Unsigned, as the trade defines it (180 minus the included angle): a club that has passed the forearm
    // reads like one that still lags. It does not lie in line with the forearm out of the plane either
    // (raised handle).
    return std::abs(lag(*wrist - *elbow, shaft->direction, stretchOf(p, corrected))) +
           p.ownNoise(12 + static_cast<int>(m), corrected ? 4.0 : 2.0);
}

std::optional<double> setAtTime(Probe& p, base::Seconds t, bool corrected) {
    const auto elbow = p.at(Landmark::lead_elbow, t, kCurveSlot);
    const auto wrist = p.at(Landmark::lead_wrist, t, kCurveSlot);
    const auto shaft = p.shaft(t, kCurveSlot, std::nullopt);
    if (!elbow || !wrist || !shaft) {
        return std::nullopt;
    }
    return lag(*wrist - *elbow, shaft->direction, stretchOf(p, corrected));
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
    double sigma = 0.0;
    double value = 0.0;
};

/// Greatest set between takeaway and delivery, on the smoothed curve; its time is as sure as the top of the
/// curve is narrow: half the span within the curve's own scatter of the peak.
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
    std::vector<double> times, values;
    for (const auto& frame : input.track) {
        if (frame.time < from->time || frame.time > to->time) {
            continue;
        }
        // The undisturbed curve: its sources are not recorded, the peak's sigma comes from its shape.
        Probe still(input);
        if (const auto v = setAtTime(still, frame.time, true)) {
            times.push_back(frame.time.value());
            values.push_back(*v);
        }
    }
    if (times.size() < 9 || (times.back() - times.front()) < 0.5 * (to->time - from->time).value()) {
        return p.fail("Lead forearm and shaft are seen together in too few frames to follow the wrist set.");
    }
    const double gap = (times.back() - times.front()) / static_cast<double>(times.size() - 1);
    int half = static_cast<int>(std::lround(0.04 / std::max(1e-3, input.timeScale.realPerShown) / gap));
    half = std::clamp(half, 2, std::min(15, (static_cast<int>(times.size()) - 1) / 2));
    const auto smooth = savitzkyGolay(values, half, 2, 0, 1.0);
    const auto best = std::max_element(smooth.begin(), smooth.end()) - smooth.begin();
    double scatter = 0.0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        scatter += (values[i] - smooth[i]) * (values[i] - smooth[i]);
    }
    scatter = std::max(1.5, std::sqrt(scatter / static_cast<double>(values.size())));
    const double peak = smooth[static_cast<std::size_t>(best)];
    auto first = best, last = best;
    while (first > 0 && smooth[static_cast<std::size_t>(first - 1)] > peak - scatter) {
        --first;
    }
    while (last + 1 < static_cast<std::ptrdiff_t>(smooth.size()) &&
           smooth[static_cast<std::size_t>(last + 1)] > peak - scatter) {
        ++last;
    }
    const double span = times[static_cast<std::size_t>(last)] - times[static_cast<std::size_t>(first)];
    return Peak{base::Seconds{times[static_cast<std::size_t>(best)]}, std::max(gap, span / 2.0), peak};
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
        {"wrist_set", faceOn, deg, 1, where, [](Probe& p, MomentId m) { return setAt(p, m, false); }, 0.5,
         30.0, unsure},
        {"wrist_set_corrected", faceOn, deg, 1, where, [](Probe& p, MomentId m) { return setAt(p, m, true); },
         1.0, 30.0, unsure},
        {"wrist_set_peak_time",
         faceOn,
         base::Unit::seconds,
         1,
         {},
         [](Probe& p, MomentId) { return peakAfter(p, MomentId::top); },
         0.002,
         0.25,
         "The wrist set stays near its greatest value for long, so its peak has no sharp time."},
        {"wrist_set_peak_after_arm_level",
         faceOn,
         base::Unit::seconds,
         1,
         {},
         [](Probe& p, MomentId) { return peakAfter(p, MomentId::lead_arm_level_back); },
         0.002,
         0.25,
         "The wrist set stays near its greatest value for long, so its peak has no sharp time."},
        {"wrist_set_kept_corrected",
         faceOn,
         base::Unit::ratio,
         1,
         {},
         [](Probe& p, MomentId) { return kept(p, true); },
         0.02,
         0.3,
         unsure},
        {"wrist_set_kept",
         faceOn,
         base::Unit::ratio,
         1,
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
