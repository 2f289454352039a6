// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "base/result.h"
#include "video/frame.h"

namespace plumbmark::ports {

/// One way in which a camera can film.
struct CameraFormat {
    int width = 0, height = 0; ///< px
    double fps = 0.0;          ///< highest rate the camera offers for it
    bool compressed = false;   ///< pictures come as JPEG and the like: costs time to open
    friend bool operator==(const CameraFormat&, const CameraFormat&) = default;
};

struct CameraDevice {
    std::string id, name;
    bool front = false; ///< looks at the person who holds it: its picture may be mirrored
    std::vector<CameraFormat> formats;
};

/// The format for filming swings: the highest rate among those with 720 lines or more (up to 240 frames/s and
/// 1920 x 1080, beyond which no device here keeps up); of equal rates the one nearest to 1280 x 720, then the
/// uncompressed one. Where none has 720 lines, the largest picture that keeps the highest rate of 25 and
/// more. Nothing for an empty list.
[[nodiscard]] std::optional<CameraFormat> fastestUseful(const std::vector<CameraFormat>& formats);

/// What films. Frames and sound share one clock (seconds from start()); callbacks come from threads of the
/// camera's own, one at a time for each kind, and must return quickly.
class Camera {
  public:
    struct Sink {
        std::function<void(const video::Frame&)> frame;
        std::function<void(std::span<const float> mono, base::Seconds time)> sound; ///< may stay empty
        std::function<void(const base::Error&)> problem; ///< filming has ended: unplugged, taken away
        std::function<void()> ended;                     ///< a camera that plays files has come to their end
    };
    struct Running {
        CameraFormat asked;
        double soundRate = 0.0; ///< 0: no microphone
        std::string deviceName;
    };

    virtual ~Camera() = default;
    /// Errors (input): "camera.none", "camera.denied".
    [[nodiscard]] virtual base::Result<std::vector<CameraDevice>> devices() = 0;
    /// `format` nothing: fastestUseful(). Adds "camera.busy".
    [[nodiscard]] virtual base::Result<Running>
    start(const std::string& device, const std::optional<CameraFormat>& format, Sink sink) = 0;
    /// No callback comes after it has returned. May be called twice.
    virtual void stop() = 0;
};

} // namespace plumbmark::ports
