// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "body/detail/onnx_writer.h"

#include <bit>
#include <cstring>
#include <map>
#include <optional>

#include "body/detail/plane_layer.h"

namespace plumbmark::body::detail {
namespace {

// ---- protocol buffers: a message is a run of (field number, wire type, payload) ----

void putVarint(std::string& out, std::uint64_t value) {
    while (value >= 0x80) {
        out.push_back(static_cast<char>(value | 0x80));
        value >>= 7;
    }
    out.push_back(static_cast<char>(value));
}
void putNumber(std::string& out, int field, std::int64_t value) {
    putVarint(out, static_cast<std::uint64_t>(field) << 3);
    putVarint(out, static_cast<std::uint64_t>(value));
}
void putBytes(std::string& out, int field, std::string_view bytes) {
    putVarint(out, (static_cast<std::uint64_t>(field) << 3) | 2);
    putVarint(out, bytes.size());
    out.append(bytes);
}
void putFloat(std::string& out, int field, float value) {
    putVarint(out, (static_cast<std::uint64_t>(field) << 3) | 5);
    char raw[4];
    std::memcpy(raw, &value, 4);
    out.append(raw, 4);
}

// ---- ONNX messages; field numbers from the public onnx.proto ----

std::string attribute(std::string_view name, std::int64_t value) {
    std::string a;
    putBytes(a, 1, name);
    putNumber(a, 3, value);
    putNumber(a, 20, 2); // INT
    return a;
}
std::string attribute(std::string_view name, float value) {
    std::string a;
    putBytes(a, 1, name);
    putFloat(a, 2, value);
    putNumber(a, 20, 1); // FLOAT
    return a;
}
std::string attribute(std::string_view name, std::string_view value) {
    std::string a;
    putBytes(a, 1, name);
    putBytes(a, 4, value);
    putNumber(a, 20, 3); // STRING
    return a;
}
std::string attribute(std::string_view name, const std::vector<std::int64_t>& values) {
    std::string a;
    putBytes(a, 1, name);
    for (const auto v : values) {
        putNumber(a, 8, v);
    }
    putNumber(a, 20, 7); // INTS
    return a;
}

enum class OnnxType : int { float32 = 1, int64 = 7 };

std::string tensorProto(std::string_view name, const std::vector<std::int64_t>& dims, OnnxType type,
                        std::string_view raw) {
    std::string t;
    for (const auto d : dims) {
        putNumber(t, 1, d);
    }
    putNumber(t, 2, static_cast<int>(type));
    putBytes(t, 8, name);
    putBytes(t, 9, raw);
    return t;
}
std::string valueInfo(std::string_view name, const std::vector<std::int64_t>& dims) {
    std::string shape;
    for (const auto d : dims) {
        std::string dim;
        putNumber(dim, 1, d);
        putBytes(shape, 1, dim);
    }
    std::string tensorType;
    putNumber(tensorType, 1, static_cast<int>(OnnxType::float32));
    putBytes(tensorType, 2, shape);
    std::string type;
    putBytes(type, 1, tensorType);
    std::string info;
    putBytes(info, 1, name);
    putBytes(info, 2, type);
    return info;
}

base::Error broken(const std::string& what) {
    return base::inputError("network.broken",
                            "The pose network's file is damaged (" + what + "). Fetch it again.");
}

/// Channels last -> channels first.
std::vector<std::int64_t> channelsFirst(const std::vector<int>& shape) {
    if (shape.size() == 4) {
        return {shape[0], shape[3], shape[1], shape[2]};
    }
    return {shape.begin(), shape.end()};
}

class Writer {
  public:
    explicit Writer(const Graph& graph)
        : graph_(graph), constant_(graph.tensors.size()), source_(graph.tensors.size()) {}

    base::Result<OnnxModel> write() {
        const auto inShape = channelsFirst(tensor(graph_.inputs[0]).shape);
        if (inShape.size() != 4) {
            return broken("its input is not a picture");
        }
        for (std::size_t i = 0; i < graph_.tensors.size(); ++i) {
            const Tensor& t = graph_.tensors[i];
            if (t.data.empty() || t.type == ElementType::other) {
                continue;
            }
            if (t.type == ElementType::float32) {
                constant_[i] = floats(t);
            }
        }
        for (const Step& step : graph_.steps) {
            for (const int input : step.inputs) {
                ++uses_[input];
            }
        }
        known_.assign(graph_.tensors.size(), false);
        known_[static_cast<std::size_t>(graph_.inputs[0])] = true;
        source_[static_cast<std::size_t>(graph_.inputs[0])] = "input";
        for (const Step& step : graph_.steps) {
            if (auto wrong = add(step); !wrong.empty()) {
                return broken(wrong);
            }
        }
        OnnxModel model;
        model.input = "input";
        putBytes(graphBytes_, 2, "pose");
        putBytes(graphBytes_, 11, valueInfo("input", inShape));
        for (const int out : graph_.outputs) {
            if (!known_[static_cast<std::size_t>(out)]) {
                return broken("an output is never computed");
            }
            const std::string& name = source_[static_cast<std::size_t>(out)];
            putBytes(graphBytes_, 12, valueInfo(name, channelsFirst(tensor(out).shape)));
            model.outputs.push_back(name);
        }
        std::string opset;
        putBytes(opset, 1, "");
        putNumber(opset, 2, 11);
        putNumber(model.bytes, 1, 6); // ir_version
        putBytes(model.bytes, 8, opset);
        putBytes(model.bytes, 7, graphBytes_);
        return model;
    }

  private:
    [[nodiscard]] const Tensor& tensor(int i) const { return graph_.tensors[static_cast<std::size_t>(i)]; }

    static std::vector<float> floats(const Tensor& t) {
        std::vector<float> values(t.data.size() / (t.type == ElementType::float16 ? 2 : 4));
        if (t.type == ElementType::float16) {
            for (std::size_t i = 0; i < values.size(); ++i) {
                std::uint16_t half = 0;
                std::memcpy(&half, t.data.data() + 2 * i, 2);
                values[i] = fromHalf(half);
            }
        } else {
            std::memcpy(values.data(), t.data.data(), t.data.size());
        }
        return values;
    }
    [[nodiscard]] std::vector<std::int32_t> integers(int i) const {
        const Tensor& t = tensor(i);
        if (t.type != ElementType::int32) {
            return {};
        }
        std::vector<std::int32_t> values(t.data.size() / 4);
        std::memcpy(values.data(), t.data.data(), values.size() * 4);
        return values;
    }

    void node(std::string_view op, const std::vector<std::string>& inputs, const std::string& output,
              const std::vector<std::string>& attributes) {
        std::string n;
        for (const auto& in : inputs) {
            putBytes(n, 1, in);
        }
        putBytes(n, 2, output);
        putBytes(n, 3, output);
        putBytes(n, 4, op);
        for (const auto& a : attributes) {
            putBytes(n, 5, a);
        }
        putBytes(graphBytes_, 1, n);
    }
    void initializer(const std::string& name, const std::vector<std::int64_t>& dims,
                     const std::vector<float>& values) {
        putBytes(graphBytes_, 5,
                 tensorProto(name, dims, OnnxType::float32,
                             {reinterpret_cast<const char*>(values.data()), values.size() * sizeof(float)}));
    }
    void initializer(const std::string& name, const std::vector<std::int64_t>& values) {
        putBytes(graphBytes_, 5,
                 tensorProto(
                     name, {static_cast<std::int64_t>(values.size())}, OnnxType::int64,
                     {reinterpret_cast<const char*>(values.data()), values.size() * sizeof(std::int64_t)}));
    }

    /// Names the tensor; with a fused activation the raw result gets a name of its own and one more node.
    std::string finish(const Step& step, const std::string& raw) {
        if (step.activation == 1) {
            node("Relu", {raw}, raw + "r", {});
            return raw + "r";
        }
        if (step.activation == 3) {
            node("Clip", {raw}, raw + "r", {attribute("min", 0.0F), attribute("max", 6.0F)});
            return raw + "r";
        }
        return raw;
    }

    /// Empty when fine.
    std::string add(const Step& step) {
        const auto out = static_cast<std::size_t>(step.output);
        const std::string name = "t" + std::to_string(step.output);
        if (step.op == Operator::dequantize) {
            const Tensor& t = tensor(step.inputs[0]);
            if (t.data.empty() || t.type != ElementType::float16) {
                return "weights of an unknown kind";
            }
            constant_[out] = floats(t);
            return {};
        }
        const auto in = static_cast<std::size_t>(step.inputs[0]);
        if (!known_[in]) {
            return "an operator comes before its input";
        }
        known_[out] = true;
        switch (step.op) {
        case Operator::pad:
            return pad(step, name);
        case Operator::conv2d:
        case Operator::depthwiseConv2d:
            return convolution(step, name);
        case Operator::add: {
            const auto other = static_cast<std::size_t>(step.inputs[1]);
            if (!known_[other]) {
                return "an operator comes before its input";
            }
            node("Add", {source_[in], source_[other]}, name, {});
            source_[out] = finish(step, name);
            return {};
        }
        case Operator::maxPool2d: {
            const auto& shape = tensor(step.inputs[0]).shape;
            if (shape.size() != 4 ||
                (step.samePadding && (shape[1] % step.strideY != 0 || shape[2] % step.strideX != 0 ||
                                      step.windowX != step.strideX || step.windowY != step.strideY))) {
                return "a pooling that would need padding";
            }
            node("MaxPool", {source_[in]}, name,
                 {attribute("kernel_shape", std::vector<std::int64_t>{step.windowY, step.windowX}),
                  attribute("strides", std::vector<std::int64_t>{step.strideY, step.strideX})});
            source_[out] = finish(step, name);
            return {};
        }
        case Operator::resizeBilinear: {
            const auto size = integers(step.inputs[1]);
            const auto& shape = tensor(step.inputs[0]).shape;
            if (size.size() != 2 || shape.size() != 4 || !step.halfPixel || step.alignCorners ||
                size[0] < 1 || size[0] > 4096 || size[1] < 1 || size[1] > 4096) {
                return "a resize of an unknown kind";
            }
            initializer(name + "s", {shape[0], shape[3], size[0], size[1]});
            initializer(name + "e", {}); // the region and the scales, both unused
            node("Resize", {source_[in], name + "e", name + "e", name + "s"}, name,
                 {attribute("mode", std::string_view{"linear"}),
                  attribute("coordinate_transformation_mode", std::string_view{"pytorch_half_pixel"})});
            source_[out] = name;
            return {};
        }
        case Operator::logistic:
            node("Sigmoid", {source_[in]}, name, {});
            source_[out] = name;
            return {};
        case Operator::reshape: {
            // Only 1 x 1 x 1 x n -> 1 x n occurs: there the order of the numbers is the same channels first.
            const auto& shape = tensor(step.inputs[0]).shape;
            const auto& to = tensor(step.output).shape;
            if (shape.size() != 4 || shape[0] != 1 || shape[1] != 1 || shape[2] != 1 || to.size() != 2 ||
                to[0] != 1 || to[1] != shape[3]) {
                return "a reshape of an unknown kind";
            }
            initializer(name + "s", {1, to[1]});
            node("Reshape", {source_[in], name + "s"}, name, {});
            source_[out] = name;
            return {};
        }
        case Operator::dequantize:
            break;
        }
        return "an unknown operator";
    }

    std::string pad(const Step& step, const std::string& name) {
        const auto amounts = integers(step.inputs[1]);
        if (amounts.size() != 8 || amounts[0] != 0 || amounts[1] != 0 || amounts[6] != 0 || amounts[7] != 0) {
            return "a padding of an unknown kind";
        }
        for (const auto a : amounts) {
            if (a < 0 || a > 64) {
                return "a padding out of range";
            }
        }
        const auto in = static_cast<std::size_t>(step.inputs[0]);
        const auto out = static_cast<std::size_t>(step.output);
        const bool even = amounts[2] == amounts[3] && amounts[4] == amounts[5];
        if (even && uses_[step.output] == 1) {
            // The one convolution behind it pads itself, which saves a copy.
            evenPad_[step.output] = {amounts[2], amounts[4]};
            source_[out] = source_[in];
            return {};
        }
        padNode(source_[in], name, amounts[2], amounts[4], amounts[3], amounts[5]);
        source_[out] = name;
        return {};
    }
    void padNode(const std::string& from, const std::string& to, std::int64_t top, std::int64_t left,
                 std::int64_t bottom, std::int64_t right) {
        node("Pad", {from}, to,
             {attribute("pads", std::vector<std::int64_t>{0, 0, top, left, 0, 0, bottom, right}),
              attribute("mode", std::string_view{"constant"})});
    }

    std::string convolution(const Step& step, const std::string& name) {
        const auto in = static_cast<std::size_t>(step.inputs[0]);
        const auto& weights = constant_[static_cast<std::size_t>(step.inputs[1])];
        const auto& bias = constant_[static_cast<std::size_t>(step.inputs[2])];
        const auto& shape =
            tensor(step.inputs[1]).shape; // out, height, width, in; depthwise: 1, height, width, channels
        const auto& inShape = tensor(step.inputs[0]).shape;
        const bool depthwise = step.op == Operator::depthwiseConv2d;
        const int height = shape[1];
        const int width = shape[2];
        const int channelsIn = inShape[3];
        const int channelsOut = depthwise ? shape[3] : shape[0];
        const std::size_t count = static_cast<std::size_t>(height) * static_cast<std::size_t>(width) *
                                  static_cast<std::size_t>(shape[3]) * static_cast<std::size_t>(shape[0]);
        if (weights.size() != count || bias.size() != static_cast<std::size_t>(channelsOut) ||
            (depthwise ? shape[0] != 1 || channelsOut != channelsIn : shape[3] != channelsIn)) {
            return "a convolution's weights do not fit";
        }
        std::vector<float> turned(count);
        const auto area = static_cast<std::size_t>(height) * static_cast<std::size_t>(width);
        if (depthwise) {
            for (std::size_t c = 0; c < static_cast<std::size_t>(channelsOut); ++c) {
                for (std::size_t p = 0; p < area; ++p) {
                    turned[c * area + p] = weights[p * static_cast<std::size_t>(channelsOut) + c];
                }
            }
        } else {
            const auto ci = static_cast<std::size_t>(channelsIn);
            for (std::size_t o = 0; o < static_cast<std::size_t>(channelsOut); ++o) {
                for (std::size_t p = 0; p < area; ++p) {
                    for (std::size_t c = 0; c < ci; ++c) {
                        turned[(o * ci + c) * area + p] = weights[(o * area + p) * ci + c];
                    }
                }
            }
        }
        initializer(name + "w", {channelsOut, depthwise ? 1 : channelsIn, height, width}, turned);
        initializer(name + "b", {channelsOut}, bias);

        std::string from = source_[in];
        std::int64_t padY = 0;
        std::int64_t padX = 0;
        const bool byPlane =
            (depthwise || channelsOut == 1) && planeLayerCan(height, width, step.strideY, step.strideX);
        if (const auto it = evenPad_.find(step.inputs[0]); it != evenPad_.end()) {
            if (step.samePadding) {
                return "a convolution that is padded twice";
            }
            padY = it->second.first;
            padX = it->second.second;
        } else if (step.samePadding) {
            // As much as gives ceil(size / stride) results; an odd rest goes below and to the right.
            const auto total = [](int size, int stride, int window) {
                const int results = (size + stride - 1) / stride;
                return std::max(0, (results - 1) * stride + window - size);
            };
            const int y = total(inShape[1], step.strideY, height);
            const int x = total(inShape[2], step.strideX, width);
            if (byPlane) {
                planes(step, name, from, {y / 2, x / 2, y - y / 2, x - x / 2});
                return {};
            }
            if (y % 2 == 0 && x % 2 == 0) {
                padY = y / 2;
                padX = x / 2;
            } else {
                padNode(from, name + "p", y / 2, x / 2, y - y / 2, x - x / 2);
                from = name + "p";
            }
        }
        if (byPlane) {
            planes(step, name, from, {padY, padX, padY, padX});
            return {};
        }
        node("Conv", {from, name + "w", name + "b"}, name,
             {attribute("kernel_shape", std::vector<std::int64_t>{height, width}),
              attribute("strides", std::vector<std::int64_t>{step.strideY, step.strideX}),
              attribute("pads", std::vector<std::int64_t>{padY, padX, padY, padX}),
              attribute("dilations", std::vector<std::int64_t>{1, 1}),
              attribute("group", static_cast<std::int64_t>(depthwise ? channelsOut : 1))});
        source_[static_cast<std::size_t>(step.output)] = finish(step, name);
        return {};
    }

    /// The operator of our own, its activation included.
    void planes(const Step& step, const std::string& name, const std::string& from,
                const std::vector<std::int64_t>& pads) {
        std::vector<std::string> attributes{
            attribute("steps", std::vector<std::int64_t>{step.strideY, step.strideX}),
            attribute("border", pads)};
        const bool limited = step.activation == 3;
        if (limited) {
            attributes.push_back(attribute("ceiling", 6.0F));
        }
        node(kPlaneLayer, {from, name + "w", name + "b"}, name, attributes);
        source_[static_cast<std::size_t>(step.output)] = limited ? name : finish(step, name);
    }

    const Graph& graph_;
    std::vector<std::vector<float>> constant_; ///< by tensor; empty where not a constant
    std::vector<std::string> source_;          ///< by tensor: the ONNX value that holds it
    std::vector<bool> known_;                  ///< by tensor: computed by an earlier node
    std::map<int, int> uses_;
    std::map<int, std::pair<int, int>> evenPad_; ///< tensors whose padding the next convolution does
    std::string graphBytes_;
};

} // namespace

float fromHalf(std::uint16_t half) {
    const std::uint32_t sign = static_cast<std::uint32_t>(half & 0x8000U) << 16;
    std::uint32_t exponent = (half >> 10) & 0x1FU;
    std::uint32_t fraction = half & 0x3FFU;
    if (exponent == 0x1F) { // infinity, not a number
        return std::bit_cast<float>(sign | 0x7F800000U | (fraction << 13));
    }
    if (exponent == 0) {
        if (fraction == 0) {
            return std::bit_cast<float>(sign);
        }
        exponent = 1; // below the normal range: shift until the leading one is in place
        while ((fraction & 0x400U) == 0) {
            fraction <<= 1;
            --exponent;
        }
        fraction &= 0x3FFU;
    }
    return std::bit_cast<float>(sign | ((exponent + 112U) << 23) | (fraction << 13));
}

base::Result<OnnxModel> toOnnx(const Graph& graph) {
    return Writer(graph).write();
}

} // namespace plumbmark::body::detail
