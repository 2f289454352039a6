// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The inner loops must become vector code; GCC does that reliably at O3 only, whatever the rest uses.
#if defined(__GNUC__) && !defined(__clang__) && defined(__OPTIMIZE__)
#pragma GCC optimize("O3")
#endif
#include "body/detail/plane_layer.h"

#include <algorithm>
#include <mutex>
#include <vector>

#include <opencv2/core/utility.hpp>
#include <opencv2/dnn/dnn.hpp>
#include <opencv2/dnn/layer.details.hpp>

#include "base/vector_code.h"

namespace plumbmark::body::detail {
namespace {

/// One input plane with its border, columns sorted by their remainder to the stride, so that each tap of the
/// kernel reads neighbours for neighbouring results.
struct Bordered {
    std::vector<float> values;
    int stride = 1;
    std::size_t row = 0;   ///< floats from row to row
    std::size_t phase = 0; ///< floats from one remainder's plane to the next

    void shape(int height, int width, const int (&pads)[4], int step) {
        stride = step;
        // A result row may read a few floats past its last tap's column: room for a whole vector.
        row = static_cast<std::size_t>((width + pads[1] + pads[3] + step - 1) / step) + 8;
        phase = row * static_cast<std::size_t>(height + pads[0] + pads[2]);
        values.assign(phase * static_cast<std::size_t>(step), 0.0F);
    }
    /// The border stays as `shape` left it.
    void fill(const float* in, int height, int width, int top, int left) {
        for (int y = 0; y < height; ++y) {
            const float* from = in + static_cast<std::ptrdiff_t>(y) * width;
            float* to = values.data() + static_cast<std::size_t>(y + top) * row;
            if (stride == 1) {
                std::copy(from, from + width, to + left);
                continue;
            }
            for (int first = 0; first < 2; ++first) { // columns first, first + 2, ...
                const int at = first + left;
                float* __restrict half = to + static_cast<std::size_t>(at % 2) * phase + at / 2;
                const int count = (width - first + 1) / 2;
                for (int i = 0; i < count; ++i) {
                    half[i] = from[first + 2 * i];
                }
            }
        }
    }
    [[nodiscard]] const float* at(int y, int x) const {
        return values.data() + static_cast<std::size_t>(x % stride) * phase +
               static_cast<std::size_t>(y) * row + static_cast<std::size_t>(x / stride);
    }
};

/// out[y][x] += sum over the kernel. K x K weights.
template <int K>
PLUMBMARK_INLINE void addPlane(float* __restrict out, int outHeight, int outWidth, const Bordered& in,
                               const float* weights) {
    float w[K * K];
    std::copy(weights, weights + K * K, w);
    for (int y = 0; y < outHeight; ++y) {
        const float* taps[K * K];
        for (int ky = 0; ky < K; ++ky) {
            for (int kx = 0; kx < K; ++kx) {
                taps[ky * K + kx] = in.at(y * in.stride + ky, kx);
            }
        }
        float* __restrict to = out + static_cast<std::ptrdiff_t>(y) * outWidth;
        for (int x = 0; x < outWidth; ++x) {
            float sum = to[x];
#pragma GCC unroll 25
            for (int k = 0; k < K * K; ++k) {
                sum += w[k] * taps[k][x];
            }
            to[x] = sum;
        }
    }
}

using Adder = void (*)(float*, int, int, const Bordered&, const float*);

void add3(float* out, int h, int w, const Bordered& in, const float* weights) {
    addPlane<3>(out, h, w, in, weights);
}
void add5(float* out, int h, int w, const Bordered& in, const float* weights) {
    addPlane<5>(out, h, w, in, weights);
}
PLUMBMARK_WIDE void wideAdd3(float* out, int h, int w, const Bordered& in, const float* weights) {
    addPlane<3>(out, h, w, in, weights);
}
PLUMBMARK_WIDE void wideAdd5(float* out, int h, int w, const Bordered& in, const float* weights) {
    addPlane<5>(out, h, w, in, weights);
}

Adder adderFor(int kernel) {
    if (PLUMBMARK_HAS_WIDE) {
        return kernel == 3 ? wideAdd3 : wideAdd5;
    }
    return kernel == 3 ? add3 : add5;
}

class PlaneLayer final : public cv::dnn::Layer {
  public:
    explicit PlaneLayer(const cv::dnn::LayerParams& params) : cv::dnn::Layer(params) {
        const auto strides = params.get("steps");
        stride_ = strides.get<int>(0);
        const auto pads = params.get("border");
        for (int i = 0; i < 4; ++i) {
            pads_[i] = pads.get<int>(i);
        }
        if (params.has("ceiling")) {
            ceiling_ = params.get<float>("ceiling");
            clamped_ = true;
        }
        CV_Assert(blobs.size() == 2 && blobs[0].dims == 4 && blobs[0].size[2] == blobs[0].size[3]);
        kernel_ = blobs[0].size[2];
        CV_Assert(planeLayerCan(kernel_, kernel_, stride_, stride_));
    }

    static cv::Ptr<cv::dnn::Layer> create(cv::dnn::LayerParams& params) {
        return cv::makePtr<PlaneLayer>(params);
    }

    bool getMemoryShapes(const std::vector<cv::dnn::MatShape>& inputs, const int /*requiredOutputs*/,
                         std::vector<cv::dnn::MatShape>& outputs,
                         std::vector<cv::dnn::MatShape>& /*internals*/) const override {
        const auto& in = inputs.at(0);
        CV_Assert(in.size() == 4 && in[0] == 1);
        const int results = blobs[0].size[0];
        CV_Assert(results == 1 ? blobs[0].size[1] == in[1] : blobs[0].size[1] == 1 && results == in[1]);
        outputs.assign(1, {1, results, (in[2] + pads_[0] + pads_[2] - kernel_) / stride_ + 1,
                           (in[3] + pads_[1] + pads_[3] - kernel_) / stride_ + 1});
        return false;
    }

    void forward(cv::InputArrayOfArrays inputs, cv::OutputArrayOfArrays outputs,
                 cv::OutputArrayOfArrays /*internals*/) override {
        std::vector<cv::Mat> in;
        std::vector<cv::Mat> out;
        inputs.getMatVector(in);
        outputs.getMatVector(out);
        const cv::Mat& from = in[0];
        cv::Mat& to = out[0];
        const int height = from.size[2];
        const int width = from.size[3];
        const int outHeight = to.size[2];
        const int outWidth = to.size[3];
        const int results = to.size[1];
        const int perResult = blobs[0].size[1]; // input planes that each result plane is made of
        const auto area = static_cast<std::ptrdiff_t>(kernel_) * kernel_;
        const Adder add = adderFor(kernel_);
        const auto* weights = blobs[0].ptr<float>();
        const auto* bias = blobs[1].ptr<float>();
        cv::parallel_for_(cv::Range(0, results), [&](const cv::Range& range) {
            Bordered plane;
            plane.shape(height, width, pads_, stride_);
            for (int c = range.start; c < range.end; ++c) {
                auto* result = to.ptr<float>(0, c);
                const std::ptrdiff_t count = static_cast<std::ptrdiff_t>(outHeight) * outWidth;
                std::fill(result, result + count, bias[c]);
                for (int k = 0; k < perResult; ++k) {
                    plane.fill(from.ptr<float>(0, results == 1 ? k : c), height, width, pads_[0], pads_[1]);
                    add(result, outHeight, outWidth, plane, weights + (c * perResult + k) * area);
                }
                if (clamped_) {
                    for (std::ptrdiff_t i = 0; i < count; ++i) {
                        result[i] = std::min(std::max(result[i], 0.0F), ceiling_);
                    }
                }
            }
        });
    }

  private:
    int kernel_ = 3;
    int stride_ = 1;
    int pads_[4] = {0, 0, 0, 0};
    bool clamped_ = false;
    float ceiling_ = 0.0F;
};

} // namespace

bool planeLayerCan(int kernelHeight, int kernelWidth, int strideY, int strideX) {
    return kernelHeight == kernelWidth && (kernelHeight == 3 || kernelHeight == 5) && strideY == strideX &&
           (strideX == 1 || strideX == 2);
}

void registerPlaneLayer() {
    static std::once_flag once;
    std::call_once(
        once, [] { cv::dnn::LayerFactory::registerLayer(std::string(kPlaneLayer), PlaneLayer::create); });
}

} // namespace plumbmark::body::detail
