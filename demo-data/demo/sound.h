// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "demo/spec.h"

namespace plumbmark::demo {

inline constexpr double kSoundRate = 48000;

/// The microphone's signal from presentation time 0 on. `hit`: when the ball is struck, presentation seconds,
/// nothing without a ball; it is heard distance / 343 m/s later (20 degrees Celsius).
[[nodiscard]] std::vector<float> makeSound(const Spec& spec, double seconds, std::optional<double> hit,
                                           double swish, double distance);

} // namespace plumbmark::demo
