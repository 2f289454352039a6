// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/head.h"

#include <algorithm>
#include <cmath>

namespace plumbmark::measure {
namespace {

using base::Vec2;
using marks::Landmark;
using marks::MomentId;

/// How far a point stands inside (target side of) the vertical through the trail ankle, stance widths. The
/// ankle is read at the same moment: the foot may roll, and the vertical goes through where the ankle is now.
std::optional<double> insideTrailAnkle(Probe& p, const std::optional<Vec2>& point,
                                       const std::optional<Vec2>& ankle) {
    const auto width = p.stanceWidth();
    if (!width || !point || !ankle) {
        return std::nullopt;
    }
    return (point->x - ankle->x) / *width;
}

std::optional<double> headAtTop(Probe& p, MomentId m) {
    return insideTrailAnkle(p, p.head(m), p.at(Landmark::trail_ankle, m));
}

std::optional<double> noseAtTop(Probe& p, MomentId m) {
    return insideTrailAnkle(p, p.at(Landmark::nose, m), p.at(Landmark::trail_ankle, m));
}

std::optional<double> edgeAtTop(Probe& p, MomentId m) {
    // Seen from the front the trail edge of the head is the farthest outline point from the target.
    std::optional<Vec2> edge;
    for (const auto l : {Landmark::head_front, Landmark::head_back, Landmark::trail_ear}) {
        const auto q = p.tryAt(l, m);
        if (q && (!edge || q->x < edge->x)) {
            edge = q;
        }
    }
    if (!edge) {
        return p.fail("The outline of the head could not be seen at \"" + words(m) +
                      "\"; mark its edge by hand.");
    }
    return insideTrailAnkle(p, edge, p.at(Landmark::trail_ankle, m));
}

/// Least inside going back, over address to top.
std::optional<double> headWorst(Probe& p, MomentId) {
    const auto from = p.time(MomentId::address);
    const auto to = p.time(MomentId::top);
    if (!from || !to) {
        return std::nullopt;
    }
    constexpr int kSteps = 16;
    std::optional<double> worst;
    for (int i = 0; i <= kSteps; ++i) {
        const auto t = *from + (*to - *from) * (static_cast<double>(i) / kSteps);
        // One slot for the whole way: the software's error at the head is a bias that stays.
        const auto head = p.head(t, 100, MomentId::top);
        const auto ankle = p.at(Landmark::trail_ankle, t, 100, MomentId::top);
        if (!head || !ankle) {
            continue;
        }
        const auto inside = insideTrailAnkle(p, head, ankle);
        if (!inside) {
            return std::nullopt;
        }
        worst = worst ? std::min(*worst, *inside) : *inside;
    }
    if (!worst) {
        return p.fail("Head and trail ankle could not be followed going back; mark them by hand at the top.");
    }
    return worst;
}

std::optional<Vec2> headCentre(Probe& p, MomentId m) {
    return p.head(m);
}

std::optional<double> headTravel(Probe& p, MomentId m) {
    return p.travel(m, headCentre, &Vec2::x);
}

std::optional<double> headRise(Probe& p, MomentId m) {
    const auto rise = p.travel(m, headCentre, &Vec2::y);
    if (!rise) {
        return std::nullopt;
    }
    // The ears hold the software's head in height, and they ride up as the face turns away from the camera.
    return *rise +
           (p.origin() == base::Origin::hand ? 0.0 : p.ownNoise(21, m == MomentId::top ? 0.012 : 0.004));
}

} // namespace

Definitions headDefinitions() {
    const auto faceOn = marks::View::faceOn;
    const auto line = marks::View::downTheLine;
    const auto widths = base::Unit::stance_widths;
    const auto statures = base::Unit::statures;
    const std::vector<MomentId> top{MomentId::top};
    const std::vector<MomentId> both{MomentId::top, MomentId::impact};
    return {
        {"head_to_trail_ankle", faceOn, widths, 1, top, headAtTop, 0.005},
        {"head_to_trail_ankle_nose", faceOn, widths, 1, top, noseAtTop, 0.005},
        {"head_to_trail_ankle_edge", faceOn, widths, 1, top, edgeAtTop, 0.005},
        {"head_to_trail_ankle_worst", faceOn, widths, 1, {}, headWorst, 0.005},
        {"head_travel", faceOn, statures, 1, both, headTravel, 0.001},
        {"head_rise", faceOn, statures, 1, both, headRise, 0.001},
        {"head_travel", line, statures, 1, both, headTravel, 0.001},
        {"head_rise", line, statures, 1, both, headRise, 0.001},
    };
}

} // namespace plumbmark::measure
