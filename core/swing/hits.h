// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "base/quantity.h"
#include "video/clip.h"

namespace plumbmark::swing {

/// A sharp onset in the sound: a ball struck here or in the next bay, a bang, a clap.
struct Hit {
    base::Seconds time;    ///< presentation time of the first rise above the noise
    double strength = 0.0; ///< dB of its first 3 ms above the noise before it, high-passed at 1.5 kHz
};

/// Every onset at least 12 dB above its surroundings, strongest first; two within 20 ms count as one.
/// A research detector's grid is coarser than a frame, so the grid finds only the candidate and the raw
/// high-passed samples are walked back to the first rise (error well below 1 ms on clean clicks).
[[nodiscard]] std::vector<Hit> findHits(const video::Sound& sound);

/// Speed of sound in dry air, m/s, from the air's temperature in degrees Celsius: 331.3 sqrt(1 + T / 273.15).
[[nodiscard]] double speedOfSound(double celsius);

} // namespace plumbmark::swing
