// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "base/result.h"

namespace plumbmark::body::detail {

/// The few operators of the pose networks, by their number in the TensorFlow Lite schema.
enum class Operator : int {
    add = 0,
    conv2d = 3,
    depthwiseConv2d = 4,
    dequantize = 6,
    logistic = 14,
    maxPool2d = 17,
    reshape = 22,
    resizeBilinear = 23,
    pad = 34,
};

enum class ElementType : int { float32 = 0, float16 = 1, int32 = 2, other = -1 };

struct Tensor {
    std::vector<int> shape;
    ElementType type = ElementType::other;
    std::span<const unsigned char> data; ///< empty: computed while running; borrowed from the file's bytes
};

struct Step {
    Operator op{};
    std::vector<int> inputs; ///< places in Graph::tensors
    int output = 0;
    bool samePadding = false;
    int strideX = 1, strideY = 1;
    int windowX = 0, windowY = 0; ///< pooling
    int activation = 0;           ///< 0 none, 1 ReLU, 3 ReLU6
    bool alignCorners = false, halfPixel = false;
};

struct Graph {
    std::vector<Tensor> tensors;
    std::vector<Step> steps; ///< in running order
    std::vector<int> inputs, outputs;
};

/// Reads a .tflite file (FlatBuffers, identifier "TFL3", one subgraph, stored weights). Every offset is
/// checked against the bytes, so broken or hostile bytes give an error, never a crash.
/// Error (input): "network.broken" with what is wrong.
/// Layout from the public schema of TensorFlow Lite, version 3 (field numbers in the .cpp).
base::Result<Graph> readTflite(std::span<const unsigned char> bytes);

} // namespace plumbmark::body::detail
