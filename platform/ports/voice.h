// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <span>

#include "base/result.h"
#include "video/clip.h"

namespace plumbmark::ports {

/// What hears the coach speak.
class Microphone {
  public:
    virtual ~Microphone() = default;
    /// Mono samples, -1 .. 1, in the order they were heard; from any thread, one call at a time.
    using Heard = std::function<void(std::span<const float> mono)>;
    /// The rate in samples a second. Errors (input): "microphone.none", "microphone.denied".
    [[nodiscard]] virtual base::Result<double> start(Heard heard) = 0;
    /// No call comes after it has returned. May be called twice.
    virtual void stop() = 0;
};

/// What lets a voice be heard again.
class Speaker {
  public:
    virtual ~Speaker() = default;
    /// Plays from `from` on; what was playing stops. A device without a loudspeaker stays silent: no error.
    virtual void play(const video::Sound& sound, base::Seconds from) = 0;
    virtual void stop() = 0;
};

} // namespace plumbmark::ports
