// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "body/detail/tflite_reader.h"

#include <algorithm>
#include <cstring>
#include <optional>

namespace plumbmark::body::detail {
namespace {

/// Set once, on the first read outside the bytes; all later reads give zeros, so callers check at the end of
/// each part instead of after every number.
class Bytes {
  public:
    explicit Bytes(std::span<const unsigned char> bytes) : bytes_(bytes) {}

    template <class T> [[nodiscard]] T number(std::size_t at) {
        T value{};
        if (at > bytes_.size() || bytes_.size() - at < sizeof(T)) {
            bad_ = true;
            return value;
        }
        std::memcpy(&value, bytes_.data() + at,
                    sizeof(T)); // the format and all our machines are little-endian
        return value;
    }
    [[nodiscard]] std::size_t follow(std::size_t at) { return at + number<std::uint32_t>(at); }
    [[nodiscard]] std::span<const unsigned char> piece(std::size_t at, std::size_t size) {
        if (at > bytes_.size() || bytes_.size() - at < size) {
            bad_ = true;
            return {};
        }
        return bytes_.subspan(at, size);
    }
    [[nodiscard]] bool bad() const { return bad_; }

  private:
    std::span<const unsigned char> bytes_;
    bool bad_ = false;
};

/// One FlatBuffers table: its fields are found through its own list of offsets; an absent field is 0.
class Table {
  public:
    Table(Bytes& bytes, std::size_t at) : bytes_(&bytes), at_(at) {
        list_ = at - static_cast<std::size_t>(static_cast<std::int64_t>(bytes.number<std::int32_t>(at)));
        listSize_ = bytes.number<std::uint16_t>(list_);
    }
    [[nodiscard]] std::optional<std::size_t> field(int index) const {
        const std::size_t entry = 4 + 2 * static_cast<std::size_t>(index);
        if (entry + 2 > listSize_) {
            return std::nullopt;
        }
        const auto offset = bytes_->number<std::uint16_t>(list_ + entry);
        return offset == 0 ? std::nullopt : std::optional{at_ + offset};
    }
    template <class T> [[nodiscard]] T scalar(int index, T absent) const {
        const auto at = field(index);
        return at ? bytes_->number<T>(*at) : absent;
    }
    [[nodiscard]] std::optional<Table> table(int index) const {
        const auto at = field(index);
        return at ? std::optional{Table{*bytes_, bytes_->follow(*at)}} : std::nullopt;
    }
    /// Start of the elements and their count, which is checked against the bytes that are there.
    struct Row {
        std::size_t at = 0, count = 0;
    };
    [[nodiscard]] Row row(int index, std::size_t elementSize) const {
        const auto at = field(index);
        if (!at) {
            return {};
        }
        const std::size_t start = bytes_->follow(*at);
        const std::size_t count = bytes_->number<std::uint32_t>(start);
        (void)bytes_->piece(start + 4, count * elementSize);
        return bytes_->bad() ? Row{} : Row{start + 4, count};
    }
    [[nodiscard]] std::vector<Table> tables(int index) const {
        const Row r = row(index, 4);
        std::vector<Table> all;
        all.reserve(r.count);
        for (std::size_t i = 0; i < r.count && !bytes_->bad(); ++i) {
            all.emplace_back(*bytes_, bytes_->follow(r.at + 4 * i));
        }
        return all;
    }
    [[nodiscard]] std::vector<int> integers(int index) const {
        const Row r = row(index, 4);
        std::vector<int> all(r.count);
        for (std::size_t i = 0; i < r.count; ++i) {
            all[i] = bytes_->number<std::int32_t>(r.at + 4 * i);
        }
        return all;
    }

  private:
    Bytes* bytes_;
    std::size_t at_;
    std::size_t list_ = 0;
    std::size_t listSize_ = 0;
};

base::Error broken(const std::string& what) {
    return base::inputError("network.broken",
                            "The pose network's file is damaged (" + what + "). Fetch it again.");
}

bool known(int op) {
    switch (static_cast<Operator>(op)) {
    case Operator::add:
    case Operator::conv2d:
    case Operator::depthwiseConv2d:
    case Operator::dequantize:
    case Operator::logistic:
    case Operator::maxPool2d:
    case Operator::reshape:
    case Operator::resizeBilinear:
    case Operator::pad:
        return true;
    }
    return false;
}

std::size_t bytesPerElement(ElementType type) {
    return type == ElementType::float16 ? 2 : 4;
}

/// Options of an operator; the numbers are the fields of its options table in the schema.
void readOptions(const Table& options, Step& step) {
    const auto padding = [&] { step.samePadding = options.scalar<std::int8_t>(0, 0) == 0; };
    const auto strides = [&] {
        step.strideX = options.scalar<std::int32_t>(1, 0);
        step.strideY = options.scalar<std::int32_t>(2, 0);
    };
    switch (step.op) {
    case Operator::conv2d:
        padding();
        strides();
        step.activation = options.scalar<std::int8_t>(3, 0);
        break;
    case Operator::depthwiseConv2d:
        padding();
        strides();
        step.activation = options.scalar<std::int8_t>(4, 0);
        break;
    case Operator::maxPool2d:
        padding();
        strides();
        step.windowX = options.scalar<std::int32_t>(3, 0);
        step.windowY = options.scalar<std::int32_t>(4, 0);
        step.activation = options.scalar<std::int8_t>(5, 0);
        break;
    case Operator::add:
        step.activation = options.scalar<std::int8_t>(0, 0);
        break;
    case Operator::resizeBilinear:
        step.alignCorners = options.scalar<std::uint8_t>(2, 0) != 0;
        step.halfPixel = options.scalar<std::uint8_t>(3, 0) != 0;
        break;
    default:
        break;
    }
}

/// What the operator must look like before anything is built from it.
std::string wrongWith(const Step& step, const std::vector<Tensor>& tensors) {
    const auto rank = [&](int i) { return tensors[static_cast<std::size_t>(i)].shape.size(); };
    const auto needs = [&](std::size_t count) { return step.inputs.size() < count; };
    switch (step.op) {
    case Operator::conv2d:
    case Operator::depthwiseConv2d:
        if (needs(3) || rank(step.inputs[0]) != 4 || rank(step.inputs[1]) != 4 || rank(step.inputs[2]) != 1) {
            return "a convolution has wrong inputs";
        }
        break;
    case Operator::add:
    case Operator::pad:
    case Operator::resizeBilinear:
    case Operator::reshape:
        if (needs(step.op == Operator::reshape ? 1 : 2)) {
            return "an operator lacks inputs";
        }
        break;
    default:
        if (needs(1)) {
            return "an operator lacks inputs";
        }
    }
    const bool strided =
        step.op == Operator::conv2d || step.op == Operator::depthwiseConv2d || step.op == Operator::maxPool2d;
    if (strided && (step.strideX < 1 || step.strideX > 8 || step.strideY < 1 || step.strideY > 8)) {
        return "a stride is out of range";
    }
    if (step.op == Operator::maxPool2d &&
        (step.windowX < 1 || step.windowX > 16 || step.windowY < 1 || step.windowY > 16)) {
        return "a window is out of range";
    }
    if (step.activation != 0 && step.activation != 1 && step.activation != 3) {
        return "an activation is unknown";
    }
    return {};
}

} // namespace

base::Result<Graph> readTflite(std::span<const unsigned char> file) {
    Bytes bytes(file);
    if (file.size() < 8 || std::memcmp(file.data() + 4, "TFL3", 4) != 0) {
        return broken("it does not start like a network");
    }
    // Model: 1 operator_codes, 2 subgraphs, 4 buffers.
    const Table model(bytes, bytes.number<std::uint32_t>(0));
    std::vector<int> codes;
    for (const Table& code : model.tables(1)) {
        // 0 is the old 8-bit field, 3 the wide one that replaced it.
        codes.push_back(std::max<int>(code.scalar<std::int8_t>(0, 0), code.scalar<std::int32_t>(3, 0)));
    }
    const auto buffers = model.tables(4);
    const auto subgraphs = model.tables(2);
    if (bytes.bad() || subgraphs.size() != 1) {
        return broken("its parts cannot be found");
    }
    const Table& main = subgraphs.front();

    Graph graph;
    // SubGraph: 0 tensors, 1 inputs, 2 outputs, 3 operators. Tensor: 0 shape, 1 type, 2 buffer, 6 sparsity.
    for (const Table& t : main.tables(0)) {
        Tensor tensor;
        tensor.shape = t.integers(0);
        const int type = t.scalar<std::int8_t>(1, 0);
        tensor.type = type >= 0 && type <= 2 ? static_cast<ElementType>(type) : ElementType::other;
        const auto buffer = t.scalar<std::uint32_t>(2, 0);
        if (buffer >= buffers.size() || t.field(6)) {
            return broken("its weights are stored in an unknown way");
        }
        if (buffer != 0) { // buffer 0 is by convention the empty one; others may be empty too
            const auto row = buffers[buffer].row(0, 1);
            tensor.data = bytes.piece(row.at, row.count);
        }
        std::size_t elements = 1;
        for (const int n : tensor.shape) {
            if (n < 1 || n > (1 << 20) || elements > (std::size_t{1} << 28)) {
                return broken("a size is out of range");
            }
            elements *= static_cast<std::size_t>(n);
        }
        if (!tensor.data.empty() && tensor.data.size() != elements * bytesPerElement(tensor.type)) {
            return broken("weights are missing");
        }
        graph.tensors.push_back(std::move(tensor));
    }
    const auto valid = [&](int i) { return i >= 0 && static_cast<std::size_t>(i) < graph.tensors.size(); };
    graph.inputs = main.integers(1);
    graph.outputs = main.integers(2);
    if (bytes.bad() || graph.inputs.size() != 1 ||
        !std::all_of(graph.inputs.begin(), graph.inputs.end(), valid) || graph.outputs.empty() ||
        !std::all_of(graph.outputs.begin(), graph.outputs.end(), valid)) {
        return broken("its inputs and outputs cannot be found");
    }
    // Operator: 0 opcode_index, 1 inputs, 2 outputs, 4 builtin_options.
    for (const Table& o : main.tables(3)) {
        Step step;
        const auto code = o.scalar<std::uint32_t>(0, 0);
        const auto outputs = o.integers(2);
        step.inputs = o.integers(1);
        if (bytes.bad() || code >= codes.size() || outputs.size() != 1 || !valid(outputs.front()) ||
            !std::all_of(step.inputs.begin(), step.inputs.end(), valid)) {
            return broken("an operator cannot be read");
        }
        if (!known(codes[code])) {
            return broken("it uses operator " + std::to_string(codes[code]) +
                          ", which is not one of the pose networks'");
        }
        step.op = static_cast<Operator>(codes[code]);
        step.output = outputs.front();
        if (const auto options = o.table(4)) {
            readOptions(*options, step);
        }
        if (auto wrong = wrongWith(step, graph.tensors); !wrong.empty()) {
            return broken(wrong);
        }
        graph.steps.push_back(std::move(step));
    }
    if (bytes.bad() || graph.steps.empty()) {
        return broken("it ends early");
    }
    return graph;
}

} // namespace plumbmark::body::detail
