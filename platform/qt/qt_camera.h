// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>

#include "ports/camera.h"

namespace plumbmark::platform {

/// The device's own camera and microphone through Qt Multimedia, on a thread of its own so that a slow window
/// drops no picture. Multimedia is started with the first call, never before. Needs a QCoreApplication.
/// Qt asks the camera for the rate; what it gives only the pictures' own times tell.
class QtCamera final : public ports::Camera {
  public:
    QtCamera();
    ~QtCamera() override;

    base::Result<std::vector<ports::CameraDevice>> devices() override;
    base::Result<Running> start(const std::string& device, const std::optional<ports::CameraFormat>& format,
                                Sink sink) override;
    void stop() override;

  private:
    class Studio;
    std::unique_ptr<Studio> studio_;
};

} // namespace plumbmark::platform
