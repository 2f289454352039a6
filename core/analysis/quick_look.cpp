// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "analysis/quick_look.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "analysis/detail/steady.h"
#include "body/track.h"
#include "coaching/judge.h"
#include "scene/estimates.h"
#include "swing/moments.h"

namespace plumbmark::analysis {
namespace {

/// Everything that follows from the body's track; moments are found where none are given.
Outcome concludeBody(std::span<const body::Observation> observations, const std::vector<base::Seconds>& times,
                     const Request& request, const marks::TimeScale& timeScale, int width, int height,
                     const marks::Moments* known) {
    Outcome out;
    out.context = request.context;
    out.timeScale = timeScale;
    body::Timing timing{timeScale.realPerShown, std::nullopt};
    auto body = body::autoTrack(observations, times, request.context, timing);
    out.track = body.track;
    out.warnings = body.warnings;
    out.shaft.resize(times.size());
    out.scene.width = width;
    out.scene.height = height;
    out.scene.vertical = request.plumbEdge
                             ? scene::fromPlumbEdge(request.plumbEdge->first, request.plumbEdge->second)
                         : request.rollDegrees ? scene::fromRoll(base::Degrees{*request.rollDegrees})
                                               : scene::assumedVertical();
    out.scene.distanceMetres = request.context.cameraDistanceMetres;
    if (body.stature) {
        out.scene.scale = {body.stature->pixels, body.stature->sigma / body.stature->pixels, std::nullopt,
                           "body"};
    }
    if (request.context.statureMetres && out.scene.scale.pixelsPerStature > 0) {
        out.scene.scale = scene::withStature(out.scene.scale, *request.context.statureMetres);
    }
    if (known != nullptr) {
        out.moments = *known;
    } else {
        auto found = swing::findMoments(
            {out.track, out.shaft, out.ball, out.scene, out.context, out.timeScale, {}, std::nullopt, {}});
        out.moments = std::move(found.moments);
        if (found.bottom) {
            // The jolt of the hit must not be smoothed.
            timing.impact = *found.bottom;
            out.track = body::autoTrack(observations, times, request.context, timing).track;
        }
    }
    if (const auto* address = marks::find(out.moments, marks::MomentId::address)) {
        steadyAddress(out.track, address->time, timeScale.realPerShown, out.scene.scale.pixelsPerStature);
    }
    out.measurements = measure::measureAll(
        {out.track, out.moments, out.shaft, out.ball, out.scene, out.context, out.timeScale, std::nullopt});
    out.checkpoints = coaching::judge(coaching::Playbook::standard(), out.measurements, out.context, {});
    return out;
}

} // namespace

base::Result<std::optional<QuickLook>> quickLook(video::Clip& clip, body::Observer& observer,
                                                 const Request& request, const QuickOptions& options,
                                                 const base::Progress& progress) {
    const auto& times = clip.times();
    const auto indexOf = [&](base::Seconds t) {
        return static_cast<int>(std::lower_bound(times.begin(), times.end(), t) - times.begin());
    };
    const int first = std::min(indexOf(options.from), std::max(0, clip.info().frames - 1));
    const int last =
        options.to ? std::clamp(indexOf(*options.to), first, clip.info().frames - 1) : clip.info().frames - 1;
    QuickLook look;
    std::optional<base::Error> broken;
    bool cancelled = false;
    std::optional<base::Seconds> looked;
    if (options.near) {
        observer.restartNear(*options.near);
    } else {
        observer.restart();
    }
    const auto streamed = clip.stream(first, last, [&](const video::Frame& frame) {
        if (progress.cancelled()) {
            cancelled = true;
            return false;
        }
        if (looked && frame.time() - *looked < options.lookEvery - base::Seconds{1e-4}) {
            return true;
        }
        looked = frame.time();
        auto seen = observer.observe(frame);
        if (!seen) {
            broken = seen.error();
            return false;
        }
        if (*seen) {
            look.observations.push_back(std::move(**seen));
        }
        return true;
    });
    if (cancelled) {
        return std::optional<QuickLook>{};
    }
    if (broken) {
        return *broken;
    }
    if (!streamed) {
        return streamed.error();
    }
    marks::TimeScale scale;
    if (look.observations.empty()) {
        look.outcome.context = request.context;
        look.outcome.warnings.emplace_back(
            "No player was found in this clip: the whole body should be in the "
            "picture, upright and not too small.");
    } else {
        look.outcome = concludeBody(look.observations, times, request, scale, clip.info().width,
                                    clip.info().height, nullptr);
        if (const auto* address = marks::find(look.outcome.moments, marks::MomentId::address)) {
            for (std::size_t i = 0; i < look.observations.size(); ++i) {
                const auto off = [&](std::size_t k) {
                    return std::abs((look.observations[k].time - address->time).value());
                };
                if (!look.address || off(i) < off(*look.address)) {
                    look.address = i;
                }
            }
        }
    }
    look.outcome.clip = clip.info();
    return std::optional<QuickLook>{std::move(look)};
}

Outcome concludeHeld(std::span<const body::Observation> observations, const marks::Moments& moments,
                     const Request& request, int width, int height) {
    std::vector<base::Seconds> times;
    times.reserve(observations.size());
    // Marks lie in frames by their place: the looks themselves are the frames here.
    std::vector<body::Observation> numbered(observations.begin(), observations.end());
    for (std::size_t i = 0; i < numbered.size(); ++i) {
        numbered[i].frame = static_cast<int>(i);
        times.push_back(numbered[i].time);
    }
    return concludeBody(numbered, times, request, {}, width, height, &moments);
}

} // namespace plumbmark::analysis
