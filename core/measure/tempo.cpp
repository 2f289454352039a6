// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/tempo.h"

#include <cmath>

namespace plumbmark::measure {
namespace {

using marks::MomentId;

/// Frames between two moments.
double framesBetween(const Input& input, base::Seconds a, base::Seconds b) {
    if (input.track.size() < 2) {
        return 0.0;
    }
    const double gap = (input.track.back().time - input.track.front().time).value() /
                       static_cast<double>(input.track.size() - 1);
    return gap > 0.0 ? (b - a).value() / gap : 0.0;
}

/// Real frames per second, where the clip's speed is known.
std::optional<double> realRate(const Input& input) {
    if (!input.timeScale.known || input.track.size() < 2) {
        return std::nullopt;
    }
    const double shown = (input.track.back().time - input.track.front().time).value();
    const double real = shown * input.timeScale.realPerShown;
    return real > 0.0 ? std::optional(static_cast<double>(input.track.size() - 1) / real) : std::nullopt;
}

std::optional<double> tempoRatio(Probe& p, MomentId) {
    const auto address = p.time(MomentId::address);
    const auto top = p.time(MomentId::top);
    const auto impact = p.time(MomentId::impact);
    if (!address || !top || !impact) {
        return std::nullopt;
    }
    const double back = (*top - *address).value();
    const double down = (*impact - *top).value();
    if (!(back > 0.0) || !(down > 0.0)) {
        return p.fail("Address, top and impact are not in order in this clip; mark them by hand.");
    }
    // A ratio needs no clock, but it needs frames: at 30 frames/s one frame in the downswing moves it by an
    // eighth.
    const auto rate = realRate(p.input());
    if (rate && *rate < 35.0) {
        return p.fail(
            "At 30 frames per second the downswing is too few pictures for a tempo; film at 120 or more.");
    }
    if (!rate && framesBetween(p.input(), *top, *impact) < 12.0) {
        return p.fail(
            "The downswing is too few pictures for a tempo; film at 120 frames per second or more, or tell "
            "the rate the clip was captured at.");
    }
    return back / down;
}

std::optional<double> duration(Probe& p, MomentId from, MomentId to) {
    if (!p.input().timeScale.known) {
        return p.fail("The clip's real speed is not known; tell the frame rate it was captured at.");
    }
    const auto a = p.time(from);
    const auto b = p.time(to);
    if (!a || !b) {
        return std::nullopt;
    }
    const double seconds = (*b - *a).value() * p.realPerShown();
    if (!(seconds > 0.0)) {
        return p.fail("The moments are not in order in this clip; mark them by hand.");
    }
    return seconds;
}

} // namespace

Definitions tempoDefinitions() {
    Definitions all;
    for (const auto view : {marks::View::faceOn, marks::View::downTheLine}) {
        all.push_back({"tempo_ratio", view, base::Unit::ratio, 1, {}, tempoRatio, 0.01});
        all.push_back({"backswing_time",
                       view,
                       base::Unit::seconds,
                       1,
                       {},
                       [](Probe& p, MomentId) { return duration(p, MomentId::address, MomentId::top); },
                       0.001});
        all.push_back({"downswing_time",
                       view,
                       base::Unit::seconds,
                       1,
                       {},
                       [](Probe& p, MomentId) { return duration(p, MomentId::top, MomentId::impact); },
                       0.001});
    }
    return all;
}

} // namespace plumbmark::measure
