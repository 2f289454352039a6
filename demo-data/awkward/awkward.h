// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "base/result.h"

namespace plumbmark::awkward {

/// A made clip and what is true about it by construction.
struct AwkwardClip {
    std::string name;
    std::filesystem::path path;
    int width = 0; ///< upright, square pixels
    int height = 0;
    int rotationDegrees = 0;
    bool mirrored = false;
    std::vector<int> numbers;  ///< strip number of every shown frame, in order
    std::vector<double> times; ///< s from the first shown frame
    double timeError = 0.0;    ///< s; how far the container's clock rounds
    std::optional<double> captureFps;
    std::string captureSource = "playback";
    bool uneven = false;
    std::optional<double> click; ///< s from the first shown frame; nothing: no sound
    /// 8-bit 4:2:0, unrotated, square pixels: planes must equal the decoder's own, byte for byte.
    bool plain = false;
};

/// Names of all clips, in the order they are made; no file is touched.
std::vector<std::string> names();

/// Writes one clip into a folder that exists. Errors (failure): "awkward.encoder", "awkward.write".
base::Result<AwkwardClip> make(const std::string& name, const std::filesystem::path& folder);

} // namespace plumbmark::awkward
