// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "capture/sound_watch.h"

#include <algorithm>
#include <cmath>

#include "swing/hits.h"

namespace plumbmark::capture {
namespace {

constexpr double kWindow = 0.30;
constexpr double kOverlap = 0.15;
constexpr double kSettled = 0.01; // an onset this near the end may still grow

} // namespace

std::vector<base::Seconds> SoundWatch::push(std::span<const float> mono, base::Seconds time) {
    std::vector<base::Seconds> hits;
    if (rate_ <= 0) {
        return hits;
    }
    const double end = window_.start.value() + static_cast<double>(window_.samples.size()) / rate_;
    if (window_.samples.empty() || std::abs(time.value() - end) > 0.05) {
        window_ = {rate_, time, {}}; // the sound was interrupted
    }
    window_.samples.insert(window_.samples.end(), mono.begin(), mono.end());
    const auto length = static_cast<std::size_t>(kWindow * rate_);
    if (window_.samples.size() < length) {
        return hits;
    }
    const double last =
        window_.start.value() + static_cast<double>(window_.samples.size()) / rate_ - kSettled;
    for (const auto& hit : swing::findHits(window_)) {
        const double t = hit.time.value();
        // The first tenth of a second of a window has too little noise before it; it was the last window's.
        const bool fresh = !told_ || t > *told_ + 0.02;
        if (t < last && fresh && (t - window_.start.value() > 0.06 || !told_)) {
            hits.push_back(hit.time);
        }
    }
    std::sort(hits.begin(), hits.end(), [](auto a, auto b) { return a.value() < b.value(); });
    if (!hits.empty()) {
        told_ = hits.back().value();
    }
    const auto keep = static_cast<std::size_t>(kOverlap * rate_);
    const auto drop = static_cast<std::ptrdiff_t>(window_.samples.size() - keep);
    window_.samples.erase(window_.samples.begin(), window_.samples.begin() + drop);
    window_.start = window_.start + base::Seconds{static_cast<double>(drop) / rate_};
    return hits;
}

} // namespace plumbmark::capture
