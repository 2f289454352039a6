// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "body/network.h"

#include <opencv2/dnn/dnn.hpp>

#include "base/hash.h"
#include "body/detail/onnx_writer.h"
#include "body/detail/plane_layer.h"
#include "body/detail/tflite_reader.h"

namespace plumbmark::body {
namespace {

struct Pinned {
    std::string_view sha256, size;
};
/// Measured from the package named in the header; platform/linux/fetch-network.sh checks the same ones.
constexpr std::array<Pinned, 3> kPinned{{
    {"f17bfbecadb61c3be1baa8b8d851cc6619c870a87167b32848ad20db306b9d61", "lite"},
    {"e9a5c5cb17f736fafd4c2ec1da3b3d331d6edbe8a0d32395855aeb2cdfd64b9f", "full"},
    {"59e42d71bcd44cbdbabc419f0ff76686595fd265419566bd4009ef703ea8e1fe", "heavy"},
}};

class OpenCvNetwork final : public PoseNetwork {
  public:
    OpenCvNetwork(cv::dnn::Net net, std::string input, std::vector<std::string> outputs,
                  std::string_view size)
        : net_(std::move(net)), input_(std::move(input)), outputs_(outputs.begin(), outputs.end()),
          size_(size) {}

    [[nodiscard]] std::string_view size() const override { return size_; }

    base::Result<PoseOutput> run(std::span<const std::uint8_t> rgb) override {
        constexpr int n = PoseOutput::kSide;
        if (rgb.size() != static_cast<std::size_t>(n) * n * 3) {
            return base::failure("network.failed", "The pose network got a picture of the wrong size.");
        }
        try {
            const cv::Mat picture(n, n, CV_8UC3, const_cast<std::uint8_t*>(rgb.data()));
            cv::dnn::blobFromImage(picture, blob_, 1.0 / 255.0);
            net_.setInput(blob_, input_);
            std::vector<cv::Mat> all;
            net_.forward(all, outputs_);
            PoseOutput out;
            constexpr std::size_t points = PoseOutput::kPoints;
            constexpr std::size_t heat =
                static_cast<std::size_t>(PoseOutput::kHeatSide) * PoseOutput::kHeatSide;
            for (const cv::Mat& m : all) {
                if (m.type() != CV_32F || !m.isContinuous()) {
                    return base::failure("network.failed", "The pose network answered in an unknown form.");
                }
                const auto* data = m.ptr<float>();
                switch (
                    m.total()) { // the five answers differ in size, so the order of the file does not matter
                case 1:
                    out.presence = *data;
                    break;
                case points * 5:
                    out.landmarks.assign(data, data + m.total());
                    break;
                case points * 3:
                    out.metric.assign(data, data + m.total());
                    break;
                case static_cast<std::size_t>(n) * n:
                    out.mask.assign(data, data + m.total());
                    break;
                case points* heat:
                    out.heat.assign(data, data + m.total());
                    break;
                default:
                    return base::failure("network.failed", "The pose network answered in an unknown form.");
                }
            }
            if (out.landmarks.empty() || out.metric.empty() || out.mask.empty() || out.heat.empty()) {
                return base::failure("network.failed", "The pose network left an answer out.");
            }
            return out;
        } catch (const cv::Exception&) {
            return base::failure("network.failed", "The pose network could not be run. Fetch it again.");
        }
    }

  private:
    cv::dnn::Net net_;
    cv::Mat blob_;
    std::string input_;
    std::vector<cv::String> outputs_;
    std::string_view size_;
};

} // namespace

std::string_view pinnedNetwork(std::string_view sha256) {
    for (const Pinned& p : kPinned) {
        if (p.sha256 == sha256) {
            return p.size;
        }
    }
    return {};
}

base::Result<std::unique_ptr<PoseNetwork>> PoseNetwork::create(std::span<const unsigned char> bytes) {
    if (bytes.empty()) {
        return base::inputError("network.missing",
                                "The pose network is not there. Fetch it, or mark by hand.");
    }
    const std::string_view size = pinnedNetwork(base::sha256Hex(bytes));
    if (size.empty()) {
        return base::inputError(
            "network.unknown",
            "This is not one of the pose networks that the program knows. Fetch it again.");
    }
    auto graph = detail::readTflite(bytes);
    if (!graph) {
        return graph.error();
    }
    auto onnx = detail::toOnnx(*graph);
    if (!onnx) {
        return onnx.error();
    }
    detail::registerPlaneLayer();
    try {
        cv::dnn::Net net = cv::dnn::readNetFromONNX(onnx->bytes.data(), onnx->bytes.size());
        net.setPreferableBackend(cv::dnn::DNN_BACKEND_OPENCV);
        net.setPreferableTarget(cv::dnn::DNN_TARGET_CPU);
        return std::unique_ptr<PoseNetwork>(
            new OpenCvNetwork(std::move(net), onnx->input, onnx->outputs, size));
    } catch (const cv::Exception&) {
        return base::inputError("network.broken", "The pose network's file cannot be used. Fetch it again.");
    }
}

} // namespace plumbmark::body
