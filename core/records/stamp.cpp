// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "records/stamp.h"

#include <algorithm>
#include <tuple>

namespace plumbmark::records {

namespace {
constexpr std::int64_t kMostCounter = 0x7fffffff;
}

bool earlier(const Stamp& a, const Stamp& b) {
    return std::tie(a.ms, a.counter, a.device) < std::tie(b.ms, b.counter, b.device);
}

Stamp HybridClock::next() {
    const base::UnixMs wall = wall_->now();
    if (wall > ms_) {
        ms_ = wall;
        counter_ = 0;
    } else if (counter_ < kMostCounter) {
        ++counter_;
    } else {
        ++ms_;
        counter_ = 0;
    }
    return {ms_, counter_, device_, ms_ - wall > kUnsureBeyond};
}

void HybridClock::learn(const Stamp& other) {
    const base::UnixMs most = wall_->now() + kMostAhead;
    if (other.ms > most) {
        // Its facts merge all the same, and an edit that has seen them names them.
        if (most > ms_) {
            ms_ = most;
            counter_ = 0;
        }
        return;
    }
    if (other.ms > ms_) {
        ms_ = other.ms;
        counter_ = other.counter;
    } else if (other.ms == ms_) {
        counter_ = std::max(counter_, other.counter);
    }
}

void HybridClock::resume(base::UnixMs ms, std::int64_t counter) {
    if (ms > ms_ || (ms == ms_ && counter > counter_)) {
        ms_ = ms;
        counter_ = counter;
    }
}

} // namespace plumbmark::records
