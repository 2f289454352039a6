// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "marks/moment.h"

#include <algorithm>
#include <array>

namespace plumbmark::marks {
namespace {
constexpr std::array<std::string_view, kMomentCount> kNames{"address",
                                                            "shaft_level_back",
                                                            "lead_arm_level_back",
                                                            "pelvis_starts_forward",
                                                            "top",
                                                            "lead_arm_level_down",
                                                            "shaft_level_down",
                                                            "impact",
                                                            "release",
                                                            "shaft_level_through",
                                                            "finish"};
static_assert(!kNames.back().empty(), "one name per moment");
} // namespace

std::string_view momentName(MomentId id) {
    return kNames[static_cast<std::size_t>(id)];
}

std::optional<MomentId> momentFromName(std::string_view name) {
    const auto it = std::find(kNames.begin(), kNames.end(), name);
    if (it == kNames.end()) {
        return std::nullopt;
    }
    return static_cast<MomentId>(it - kNames.begin());
}

const Moment* find(const Moments& moments, MomentId id) {
    const auto it =
        std::find_if(moments.begin(), moments.end(), [id](const Moment& m) { return m.id == id; });
    return it == moments.end() ? nullptr : &*it;
}

} // namespace plumbmark::marks
