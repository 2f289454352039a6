// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>

#include "base/clock.h"
#include "base/ids.h"

namespace plumbmark::records {

/// When and where a fact was made: a hybrid logical clock (wall time in ms and a counter) and the device.
/// Orders facts the same way everywhere. It never decides alone: an edit that has seen another one names it,
/// and then it follows it whatever the clocks say.
struct Stamp {
    base::UnixMs ms = 0;
    std::int64_t counter = 0; ///< 0 .. 2^31 - 1
    base::Id device{base::Id::Bytes{}};
    bool unsure = false; ///< the device's own clock stood more than 5 minutes behind this time
    friend bool operator==(const Stamp&, const Stamp&) = default;
};

/// Total order by (ms, counter, device).
[[nodiscard]] bool earlier(const Stamp& a, const Stamp& b);

/// One device's hybrid clock. Never goes back, not even when the wall clock does; what it learns from other
/// devices is limited to a day ahead of its own wall clock, so one tablet set to 2038 cannot drag the others
/// along.
class HybridClock {
  public:
    static constexpr base::UnixMs kMostAhead = 24 * 3600 * 1000LL;
    static constexpr base::UnixMs kUnsureBeyond = 5 * 60 * 1000LL;

    HybridClock(base::Id device, const base::Clock& wall) : device_(device), wall_(&wall) {}
    [[nodiscard]] Stamp next();
    void learn(const Stamp& other);                     ///< a stamp of another device
    void resume(base::UnixMs ms, std::int64_t counter); ///< what this device itself gave last
    [[nodiscard]] base::UnixMs lastMs() const { return ms_; }
    [[nodiscard]] std::int64_t lastCounter() const { return counter_; }
    [[nodiscard]] const base::Id& device() const { return device_; }

  private:
    base::Id device_;
    const base::Clock* wall_;
    base::UnixMs ms_ = 0;
    std::int64_t counter_ = 0;
};

} // namespace plumbmark::records
