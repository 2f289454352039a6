// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/measured.h"
#include "club/club.h"
#include "club/shaft.h"
#include "marks/landmark.h"
#include "marks/moment.h"
#include "marks/player.h"
#include "scene/scene.h"

namespace plumbmark::measure {

/// One number about one swing, or the reason why it cannot be told. Exactly one of value / reason is set.
struct Measurement {
    std::string id;                        ///< "spine_tilt", ...
    std::optional<marks::MomentId> moment; ///< nothing for numbers of the whole swing
    std::optional<base::Measured> value;
    std::string reason; ///< one plain sentence: what is missing and what would help
    int method = 1;     ///< version of the method that made it
};

/// Everything a measurement may look at. Values only; no pixels.
struct Input {
    const marks::Track& track;
    const marks::Moments& moments;
    const club::ShaftTrack& shaft;
    const std::optional<club::Ball>& ball;
    const scene::Scene& scene;
    const marks::ShotContext& context;
    marks::TimeScale timeScale;
    /// The shaft where the fitted head reaches the ball, where the club's own fit could tell it.
    std::optional<club::Hit> hit = std::nullopt;
};

/// Every measurement that belongs to the view, in the order of the trade's list.
[[nodiscard]] std::vector<Measurement> measureAll(const Input& input);

[[nodiscard]] const Measurement* find(const std::vector<Measurement>& all, std::string_view id,
                                      std::optional<marks::MomentId> moment = std::nullopt);

} // namespace plumbmark::measure
