// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The exact truth about a rendered swing, computed from the continuous motion in space.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "demo/spec.h"
#include "marks/landmark.h"
#include "marks/moment.h"

namespace plumbmark::demo {

/// Landmarks in space, canonical; nothing where there is none (no ball, no stick).
using Points = std::array<std::optional<V3>, marks::kLandmarkCount>;
[[nodiscard]] Points pointsOf(const Spec& spec, const Motion& motion, double time);

struct TrueMoment {
    marks::MomentId id;
    double time; ///< real seconds, 0 = the club starts back
};
/// Found by root finding on the definitions. A moment a swing does not have is absent.
[[nodiscard]] std::vector<TrueMoment> trueMoments(const Spec& spec, const Motion& motion);

struct TrueValue {
    std::string id;
    std::optional<marks::MomentId> moment;
    double value;
    std::string unit;
};
[[nodiscard]] std::vector<TrueValue> trueMeasurements(const Spec& spec, const Motion& motion,
                                                      const std::vector<TrueMoment>& moments);

/// The camera at a real time (it may pan or shake).
[[nodiscard]] Camera cameraAt(const Spec& spec, const Motion& motion, int width, int height, double time);

/// Centre of mass from landmark points: de Leva 1996, trunk from mid-shoulder to mid-hip.
[[nodiscard]] V3 centreOfMass(const Pose& pose, const Body& body);

} // namespace plumbmark::demo
