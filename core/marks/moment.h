// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/quantity.h"

namespace plumbmark::marks {

/// Key moments in their order in a swing (pelvis_starts_forward is usually, not always, before top).
enum class MomentId {
    address,
    shaft_level_back,
    lead_arm_level_back,
    pelvis_starts_forward,
    top,
    lead_arm_level_down,
    shaft_level_down,
    impact,
    release,
    shaft_level_through,
    finish,
};
inline constexpr int kMomentCount = static_cast<int>(MomentId::finish) + 1;

[[nodiscard]] std::string_view momentName(MomentId id);
[[nodiscard]] std::optional<MomentId> momentFromName(std::string_view name);

struct Moment {
    MomentId id = MomentId::address;
    base::Seconds time;  ///< presentation seconds from the first frame, sub-frame
    base::Seconds sigma; ///< one sigma, presentation seconds
    std::string foundBy; ///< "shaft", "hands", "ball+shaft", "ball+sound", "hand mark", ...
};

/// The moments that could be told, in time order. A clip may lack any of them.
using Moments = std::vector<Moment>;
[[nodiscard]] const Moment* find(const Moments& moments, MomentId id);

/// How presentation time relates to the world's time: real seconds = presentation seconds * realPerShown.
struct TimeScale {
    double realPerShown = 1.0;       ///< 0.125 for a clip captured at 240 and played at 30 frames/s
    bool known = true;               ///< false: no times, speeds or tempo verdict may be shown
    std::string source = "playback"; ///< "metadata", "told", "playback", "assumed"
};

} // namespace plumbmark::marks
