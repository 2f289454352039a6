// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "base/result.h"
#include "club/club.h"
#include "marks/landmark.h"
#include "marks/moment.h"
#include "marks/player.h"
#include "scene/scene.h"

namespace plumbmark::comparison {

/// What makes two instants of two swings "the same position".
enum class Feature {
    hands,            ///< where the hands are, from the feet, in statures (the default)
    shaft,            ///< how far the shaft has turned back
    time_from_impact, ///< real time before and after the hit
    body,             ///< where pelvis, chest and head are, from the feet, in statures
};
[[nodiscard]] std::string_view featureName(Feature feature);
[[nodiscard]] std::optional<Feature> featureFromName(std::string_view name);

/// One swing as a comparison sees it. Borrowed values. A left-hander and a mirrored clip are mirrored here,
/// so that "toward the target" means the same on both sides.
struct Side {
    const marks::Track& track;
    const marks::Moments& moments;
    const club::ShaftTrack& shaft;
    const scene::Scene& scene;
    const marks::ShotContext& context;
    marks::TimeScale timeScale;
};

/// The same positions of two swings: a monotone map of time, piecewise between shared key moments.
class Match {
  public:
    struct Knot {
        base::Seconds first, second; ///< presentation seconds of each clip
    };
    Match(Feature feature, std::vector<Knot> knots) : feature_(feature), knots_(std::move(knots)) {}
    [[nodiscard]] Feature feature() const { return feature_; }
    /// Sub-frame; nothing outside the stretch that both swings show.
    [[nodiscard]] std::optional<base::Seconds> inSecond(base::Seconds first) const;
    [[nodiscard]] std::optional<base::Seconds> inFirst(base::Seconds second) const;
    [[nodiscard]] const std::vector<Knot>& knots() const { return knots_; }

  private:
    Feature feature_;
    std::vector<Knot> knots_; ///< both columns rise
};

/// Matches two swings. Between shared key moments (which are put together exactly) the feature's path of one
/// is laid on the other's by dynamic time warping on a 240-a-second grid and refined below the grid; where
/// the feature rests, time runs evenly. What cameras explain of a difference at a key moment that is put
/// together (up to 3 % of stature, 3 degrees of shaft) is taken out first. Errors (input): "compare.views" (one face-on, one down-the-line),
/// "compare.moments" (fewer than two key moments in common), "compare.feature" (the feature is missing in
/// one of them), "compare.impact" (time from impact without both impacts or without both time scales).
base::Result<Match> matchSwings(const Side& first, const Side& second, Feature feature);

/// Dynamic time warping of two sequences of equal-length vectors, Euclidean cost, steps (1,0), (0,1), (1,1),
/// both ends pinned (Sakoe & Chiba 1978, symmetric, without slope weights). Returns the path as index pairs
/// and its total cost. `evenness` adds a small cost for leaving the straight diagonal, so that rests run
/// evenly.
struct WarpPath {
    std::vector<std::pair<int, int>> path;
    double cost = 0.0;
};
[[nodiscard]] WarpPath warp(const std::vector<std::vector<double>>& a,
                            const std::vector<std::vector<double>>& b, double evenness = 0.0);

} // namespace plumbmark::comparison
