// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <filesystem>
#include <span>
#include <vector>

#include "base/result.h"
#include "video/frame.h"

namespace plumbmark::video {

/// A PNG or JPEG picture, upright (a photograph's orientation tag is applied); transparency is dropped.
/// Errors (input): "still.missing", "still.directory", "still.unreadable", "still.empty",
/// "still.not_picture", "still.damaged", "still.too_large" (over 8192 pixels a side).
base::Result<RgbImage> loadStill(const std::filesystem::path& path);
base::Result<RgbImage> decodeStill(std::span<const std::uint8_t> bytes);

/// PNG, lossless. Errors (failure): "still.encode".
base::Result<std::vector<std::uint8_t>> encodePng(const RgbImage& image);
/// JPEG (JFIF, full-range BT.601, no colour subsampling, nothing but the picture in it). `quality` 1..31,
/// lower is better. Errors (failure): "still.encode".
base::Result<std::vector<std::uint8_t>> encodeJpeg(const RgbImage& image, int quality = 4);
/// A part of a picture; it must lie inside.
[[nodiscard]] RgbImage partOf(const RgbImage& whole, int x, int y, int width, int height);
/// The file appears under its name only when it is complete. Errors: "still.encode", "still.folder" (input).
base::Result<void> savePng(const std::filesystem::path& path, const RgbImage& image);

} // namespace plumbmark::video
