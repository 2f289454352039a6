// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <string>

#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

#include "body/observer.h"
#include "video/frame.h"

namespace plumbmark::test {

/// The folder that platform/linux/fetch-network.sh fills.
inline std::filesystem::path networkFolder() {
    if (const char* dir = std::getenv("PLUMBMARK_NETWORK_DIR")) {
        return dir;
    }
    if (const char* data = std::getenv("XDG_DATA_HOME")) {
        return std::filesystem::path(data) / "plumbmark/network";
    }
    const char* home = std::getenv("HOME");
    return std::filesystem::path(home != nullptr ? home : "") / ".local/share/plumbmark/network";
}

/// Nothing where the network was not fetched.
inline body::NetworkBytes network(const std::string& size = "full") {
    std::ifstream in(networkFolder() / ("pose_landmark_" + size + ".tflite"), std::ios::binary);
    if (!in) {
        return nullptr;
    }
    return std::make_shared<const std::vector<unsigned char>>(std::istreambuf_iterator<char>(in),
                                                              std::istreambuf_iterator<char>());
}

inline video::Frame frameOf(const cv::Mat& bgr, int index = 0, double seconds = 0.0) {
    cv::Mat rgb;
    cv::cvtColor(bgr, rgb, cv::COLOR_BGR2RGB);
    return video::Frame::fromRgb({rgb.cols, rgb.rows, {rgb.datastart, rgb.dataend}}, index,
                                 base::Seconds{seconds});
}

/// A photograph of an installed Debian package; empty where it is not installed.
inline cv::Mat photograph(const std::string& path) {
    return cv::imread(path);
}

} // namespace plumbmark::test
