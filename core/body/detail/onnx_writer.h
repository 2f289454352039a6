// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/result.h"
#include "body/detail/tflite_reader.h"

namespace plumbmark::body::detail {

/// The same network as an ONNX file in memory, written by hand (protocol buffers wire format), channels
/// first.
struct OnnxModel {
    std::string bytes;
    std::string input;                ///< name, shape 1 x channels x height x width
    std::vector<std::string> outputs; ///< names, in the order of Graph::outputs
};

/// Keeps to what OpenCV 4.6's reader understands: limits of Clip as attributes, no uneven padding inside a
/// convolution, small depthwise convolutions as an operator of our own (plane_layer.h), resize by
/// "pytorch_half_pixel" (its only half-pixel mode that samples like the original). Error (input):
/// "network.broken".
base::Result<OnnxModel> toOnnx(const Graph& graph);

/// IEEE 754 half precision to single.
[[nodiscard]] float fromHalf(std::uint16_t half);

} // namespace plumbmark::body::detail
