// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <vector>

#include "body/observation.h"
#include "video/frame.h"

namespace plumbmark::body::detail {

/// The region as `side` x `side` RGB, rows packed, straight from the frame's planes. Where the region leaves
/// the picture its border is repeated. Large regions are shrunk by area first, so fine texture does not
/// alias.
[[nodiscard]] std::vector<std::uint8_t> cropRgb(const video::Frame& frame, const Region& region, int side);

} // namespace plumbmark::body::detail
