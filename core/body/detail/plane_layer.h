// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>

namespace plumbmark::body::detail {

/// Name of an operator of our own for OpenCV's network reader: a 3 x 3 or 5 x 5 convolution in which every
/// result plane comes from one input plane (depthwise), or the only result plane from all of them. OpenCV 4.6
/// rolls out a matrix for each such plane, which made these few multiplications half of the network's time.
/// Inputs: values 1 x c x h x w, weights [out, in per group, k, k], bias [out]. Attributes: "steps" [y, x]
/// (equal, 1 or 2), "border" [top, left, bottom, right], "ceiling" (results clamped to 0..ceiling where
/// given).
inline constexpr std::string_view kPlaneLayer = "PlaneConvolution";

/// Whether the operator can do it.
[[nodiscard]] bool planeLayerCan(int kernelHeight, int kernelWidth, int strideY, int strideX);

/// Makes the operator known to OpenCV's network reader; once is enough, more often does no harm. Thread-safe.
void registerPlaneLayer();

} // namespace plumbmark::body::detail
