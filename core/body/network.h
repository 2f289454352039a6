// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <span>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace plumbmark::body {

/// What the pose network answers for one 256 x 256 picture. Coordinates are pixels of that picture.
struct PoseOutput {
    static constexpr int kSide = 256;    ///< picture and mask
    static constexpr int kHeatSide = 64; ///< heat maps
    static constexpr int kPoints =
        39;                       ///< 33 body points, then 33 = mid-hip, 34 = rim of the body's circle, ...
    float presence = 0.0F;        ///< 0..1
    std::vector<float> landmarks; ///< kPoints x (x, y, z, visibility, presence); the last two as log odds
    std::vector<float> metric;    ///< kPoints x (x, y, z), metres about the mid-hip
    std::vector<float> mask;      ///< kSide x kSide, log odds of "person"
    std::vector<float> heat;      ///< kPoints x kHeatSide x kHeatSide, log odds
};

/// The pose network "pose landmark" of the npm package @mediapipe/pose 0.5.1675469404 (Apache-2.0) in any of
/// its three sizes, read from its .tflite file, rewritten to ONNX in memory and run by OpenCV.
class PoseNetwork {
  public:
    /// Only the pinned files are taken: the hash tells that the numbers mean what the code thinks they mean.
    /// Errors (input): "network.missing", "network.unknown", "network.broken".
    static base::Result<std::unique_ptr<PoseNetwork>> create(std::span<const unsigned char> bytes);
    virtual ~PoseNetwork() = default;

    /// "lite", "full" or "heavy".
    [[nodiscard]] virtual std::string_view size() const = 0;
    /// `rgb`: 256 x 256 x 3 bytes, rows packed. Error (failure): "network.failed".
    virtual base::Result<PoseOutput> run(std::span<const std::uint8_t> rgb) = 0;
};

/// Size of the pinned network with this SHA-256, or empty.
[[nodiscard]] std::string_view pinnedNetwork(std::string_view sha256);

} // namespace plumbmark::body
