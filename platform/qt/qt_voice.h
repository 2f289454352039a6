// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>

#include "ports/voice.h"

namespace plumbmark::platform {

/// The device's microphone through Qt Multimedia, which is started with the first call. Use on the thread of
/// the QCoreApplication.
class QtMicrophone final : public ports::Microphone {
  public:
    QtMicrophone();
    ~QtMicrophone() override;
    base::Result<double> start(Heard heard) override;
    void stop() override;

  private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

/// The device's loudspeaker, likewise.
class QtSpeaker final : public ports::Speaker {
  public:
    QtSpeaker();
    ~QtSpeaker() override;
    void play(const video::Sound& sound, base::Seconds from) override;
    void stop() override;

  private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

} // namespace plumbmark::platform
