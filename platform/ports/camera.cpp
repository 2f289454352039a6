// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "ports/camera.h"

#include <algorithm>
#include <cmath>

namespace plumbmark::ports {
namespace {

constexpr double kUsefulFps = 240.0;

int shortSide(const CameraFormat& f) {
    return std::min(f.width, f.height);
}
int longSide(const CameraFormat& f) {
    return std::max(f.width, f.height);
}
double area(const CameraFormat& f) {
    return static_cast<double>(f.width) * f.height;
}
/// 29.97 and 30 are one rate.
double rate(const CameraFormat& f) {
    return std::min(kUsefulFps, std::round(f.fps));
}

} // namespace

std::optional<CameraFormat> fastestUseful(const std::vector<CameraFormat>& formats) {
    std::vector<CameraFormat> real;
    std::copy_if(formats.begin(), formats.end(), std::back_inserter(real),
                 [](const CameraFormat& f) { return f.width > 0 && f.height > 0 && f.fps > 0; });
    if (real.empty()) {
        return std::nullopt;
    }
    std::vector<CameraFormat> useful;
    std::copy_if(real.begin(), real.end(), std::back_inserter(useful), [](const CameraFormat& f) {
        return shortSide(f) >= 720 && shortSide(f) <= 1080 && longSide(f) <= 1920;
    });
    const auto better = [](const CameraFormat& a, const CameraFormat& b) {
        if (rate(a) != rate(b)) {
            return rate(a) > rate(b);
        }
        const double hd = 1280.0 * 720.0, da = std::abs(area(a) - hd), db = std::abs(area(b) - hd);
        return da != db ? da < db : !a.compressed && b.compressed;
    };
    if (!useful.empty()) {
        return *std::min_element(useful.begin(), useful.end(), better);
    }
    // Too small or too large for choice: a picture in which a body can be told counts for more than the rate.
    const auto fallback = [](const CameraFormat& a, const CameraFormat& b) {
        const bool smoothA = a.fps >= 24.5, smoothB = b.fps >= 24.5;
        if (smoothA != smoothB) {
            return smoothA;
        }
        const bool fitsA = longSide(a) <= 1920, fitsB = longSide(b) <= 1920;
        if (fitsA != fitsB) {
            return fitsA;
        }
        if (area(a) != area(b)) {
            return fitsA ? area(a) > area(b) : area(a) < area(b);
        }
        return rate(a) != rate(b) ? rate(a) > rate(b) : !a.compressed && b.compressed;
    };
    return *std::min_element(real.begin(), real.end(), fallback);
}

} // namespace plumbmark::ports
