// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>

#include "base/geometry.h"
#include "marks/landmark.h"
#include "marks/player.h"
#include "scene/scene.h"
#include "video/frame.h"

namespace plumbmark::scene {

/// Roll from long straight background edges that stand within 12 degrees of the picture's vertical (walls,
/// posts, net poles), freed of how they converge when the camera looks up or down. Nothing unless several long
/// edges agree: a leaning tree is no plumb line; nor where the camera set up by eye is as good (sigma beyond 0.9
/// degrees). `moving`: boxes of player and club, full-size px.
[[nodiscard]] std::optional<Vertical> verticalFromEdges(const video::Frame& frame,
                                                        std::span<const base::Box> moving);

/// Length of a stature in the picture from body lines at address. Face-on: the leg (hip centre to ankle
/// centre) and the trunk under an assumed bend; down-the-line: leg and trunk as they show. Fractions of
/// stature after Drillis & Contini 1966 (hip 0.530, ankle 0.039, shoulder 0.818). Nothing when hips or ankles
/// are missing.
[[nodiscard]] std::optional<Scale> scaleFromBody(const marks::FrameMarks& address, marks::View view,
                                                 const Vertical& vertical);
/// With stature, camera distance and focal length told, no body line is needed.
[[nodiscard]] Scale scaleFromDistance(double statureMetres, double distanceMetres, const Scene& scene);
/// Adds pixelsPerMetre to a scale where the player's stature is known.
[[nodiscard]] Scale withStature(Scale scale, double statureMetres);

/// Camera turn from a stick lying on the ground along the target line: direction of the two marked ends on
/// the ground, seen by a level camera whose horizon is the picture's middle row (+-3 degrees of pitch in the
/// sigma).
struct Yaw {
    double degrees = 0.0; ///< as Scene::yawDegrees
    double sigmaDegrees = 6.0;
};
/// Nothing when an end lies above the horizon or the ends coincide.
[[nodiscard]] std::optional<Yaw> yawFromStick(const marks::Mark& nearEnd, const marks::Mark& farEnd,
                                              marks::View view, const Scene& scene);

} // namespace plumbmark::scene
