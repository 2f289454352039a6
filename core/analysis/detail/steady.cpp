// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "analysis/detail/steady.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace plumbmark::analysis {
namespace {

using marks::Landmark;

constexpr double kWindow = 0.60; ///< real seconds
constexpr double kFade = 0.06;

constexpr std::array kStill{Landmark::nose,           Landmark::head_centre, Landmark::head_crown,
                            Landmark::head_front,     Landmark::head_back,   Landmark::lead_ear,
                            Landmark::trail_ear,      Landmark::neck_base,   Landmark::lead_shoulder,
                            Landmark::trail_shoulder, Landmark::lead_hip,    Landmark::trail_hip,
                            Landmark::lead_knee,      Landmark::trail_knee,  Landmark::lead_ankle,
                            Landmark::trail_ankle,    Landmark::lead_heel,   Landmark::trail_heel,
                            Landmark::lead_toe,       Landmark::trail_toe,   Landmark::pelvis_rear};

double median(std::vector<double>& values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

} // namespace

void steadyAddress(marks::Track& track, base::Seconds address, double realPerShown, double staturePixels,
                   const scene::GroundMotion& ground) {
    const double end = address.value() * realPerShown, start = end - kWindow;
    for (const Landmark landmark : kStill) {
        std::vector<double> xs, ys, sigmas;
        for (std::size_t i = 0; i < track.size(); ++i) {
            const auto& frame = track[i];
            const double t = frame.time.value() * realPerShown;
            const auto& mark = frame[landmark];
            if (t >= start && t <= end + 0.5 * kFade && mark && mark->origin == base::Origin::network) {
                const base::Vec2 at = ground.toReference(static_cast<int>(i), mark->at);
                xs.push_back(at.x), ys.push_back(at.y), sigmas.push_back(mark->sigma);
            }
        }
        if (xs.size() < 4) {
            continue;
        }
        const base::Vec2 middle{median(xs), median(ys)};
        std::vector<double> away;
        for (std::size_t i = 0; i < xs.size(); ++i) {
            away.push_back(std::hypot(xs[i] - middle.x, ys[i] - middle.y));
        }
        if (median(away) > 0.04 * staturePixels) {
            continue;
        }
        const double sigma = median(sigmas);
        for (std::size_t i = 0; i < track.size(); ++i) {
            auto& frame = track[i];
            const double t = frame.time.value() * realPerShown;
            auto& mark = frame[landmark];
            if (t < start || t > end + kFade || !mark || mark->origin == base::Origin::hand) {
                continue;
            }
            const double k = t <= end ? 1.0 : 1.0 - (t - end) / kFade;
            mark->at = ground.fromReference(static_cast<int>(i), middle) * k + mark->at * (1.0 - k);
            mark->sigma = sigma * k + mark->sigma * (1.0 - k);
        }
    }
}

} // namespace plumbmark::analysis
