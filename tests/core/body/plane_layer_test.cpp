// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "body/detail/plane_layer.h"

#include <gtest/gtest.h>

#include <opencv2/core.hpp>
#include <opencv2/dnn/dnn.hpp>
#include <opencv2/imgproc.hpp>

namespace plumbmark::body {
namespace {

cv::Mat randomMat(std::vector<int> shape, unsigned seed) {
    cv::Mat m(shape, CV_32F);
    cv::RNG random(seed);
    random.fill(m, cv::RNG::UNIFORM, -1.0, 1.0);
    return m;
}

cv::Mat plane(const cv::Mat& m, int channel) {
    return {m.size[2], m.size[3], CV_32F, const_cast<float*>(m.ptr<float>(0, channel))};
}

/// Source: OpenCV's image filter (cv::filter2D, correlation with a border of zeros), another implementation
/// of the same definition, thinned out by the stride.
cv::Mat filtered(const cv::Mat& in, const cv::Mat& kernel, float bias, int stride) {
    cv::Mat full;
    cv::filter2D(in, full, CV_32F, kernel, {-1, -1}, bias, cv::BORDER_CONSTANT);
    cv::Mat out((in.rows + stride - 1) / stride, (in.cols + stride - 1) / stride, CV_32F);
    for (int y = 0; y < out.rows; ++y) {
        for (int x = 0; x < out.cols; ++x) {
            out.at<float>(y, x) = full.at<float>(y * stride, x * stride);
        }
    }
    return out;
}

cv::Mat run(const cv::Mat& input, const cv::Mat& weights, const cv::Mat& bias, int stride, bool limited) {
    detail::registerPlaneLayer();
    const int pad = weights.size[2] / 2;
    cv::dnn::LayerParams params;
    params.name = "planes";
    params.type = std::string(detail::kPlaneLayer);
    const int steps[2] = {stride, stride};
    const int border[4] = {pad, pad, pad, pad};
    params.set("steps", cv::dnn::DictValue::arrayInt(steps, 2));
    params.set("border", cv::dnn::DictValue::arrayInt(border, 4));
    if (limited) {
        params.set("ceiling", 0.5F);
    }
    params.blobs = {weights, bias};
    cv::dnn::Net net;
    net.addLayerToPrev(params.name, params.type, params);
    net.setInput(input);
    return net.forward().clone();
}

TEST(PlaneLayer, AnswersLikeAnImageFilterOfAnotherLibrary) {
    for (const int kernel : {3, 5}) {
        for (const int stride : {1, 2}) {
            for (const int width : {8, 19}) {
                constexpr int channels = 3;
                const cv::Mat input = randomMat({1, channels, 14, width}, 1);
                const cv::Mat weights = randomMat({channels, 1, kernel, kernel}, 2);
                const cv::Mat bias = randomMat({channels, 1}, 3);
                const cv::Mat out = run(input, weights, bias, stride, false);
                for (int c = 0; c < channels; ++c) {
                    const cv::Mat k(kernel, kernel, CV_32F, const_cast<float*>(weights.ptr<float>(c)));
                    const cv::Mat expected = filtered(plane(input, c), k, bias.at<float>(c), stride);
                    ASSERT_EQ(expected.size(), plane(out, c).size());
                    EXPECT_LT(cv::norm(expected, plane(out, c), cv::NORM_INF), 1e-5)
                        << kernel << " / " << stride << " / " << width;
                }
            }
        }
    }
}

TEST(PlaneLayer, OneResultPlaneIsMadeOfAllInputPlanes) {
    const cv::Mat input = randomMat({1, 4, 12, 17}, 4);
    const cv::Mat weights = randomMat({1, 4, 3, 3}, 5);
    const cv::Mat bias = randomMat({1, 1}, 6);
    cv::Mat expected = cv::Mat(12, 17, CV_32F, cv::Scalar(bias.at<float>(0)));
    for (int c = 0; c < 4; ++c) {
        const cv::Mat k(3, 3, CV_32F, const_cast<float*>(weights.ptr<float>(0, c)));
        expected += filtered(plane(input, c), k, 0.0F, 1);
    }
    EXPECT_LT(cv::norm(expected, plane(run(input, weights, bias, 1, false), 0), cv::NORM_INF), 1e-5);
    cv::min(cv::max(expected, 0.0), 0.5, expected);
    EXPECT_LT(cv::norm(expected, plane(run(input, weights, bias, 1, true), 0), cv::NORM_INF), 1e-5);
}

} // namespace
} // namespace plumbmark::body
