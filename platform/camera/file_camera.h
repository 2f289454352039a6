// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <atomic>
#include <filesystem>
#include <thread>
#include <vector>

#include "ports/camera.h"

namespace plumbmark::platform {

/// A camera that plays clips: at their own pace, or as fast as it is asked for its frames.
class FileCamera final : public ports::Camera {
  public:
    enum class Pace { own, asFastAsCan };
    FileCamera(std::vector<std::filesystem::path> clips, Pace pace) : clips_(std::move(clips)), pace_(pace) {}
    ~FileCamera() override { stop(); }

    base::Result<std::vector<ports::CameraDevice>> devices() override;
    base::Result<Running> start(const std::string& device, const std::optional<ports::CameraFormat>& format,
                                Sink sink) override;
    void stop() override;

  private:
    std::vector<std::filesystem::path> clips_;
    Pace pace_;
    std::atomic<bool> stop_ = false;
    std::thread thread_;
};

} // namespace plumbmark::platform
