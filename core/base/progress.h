// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <atomic>
#include <functional>
#include <string_view>

namespace plumbmark::base {

/// Handed down by whoever waits. `report(share, stage)` with share in 0..1 may be called from any thread;
/// `cancelled` is polled at least every 100 ms of work. Being cancelled is not an error.
struct Progress {
    std::function<void(double share, std::string_view stage)> report;
    const std::atomic<bool>* cancel = nullptr;

    [[nodiscard]] bool cancelled() const { return cancel != nullptr && cancel->load(std::memory_order_relaxed); }
    void tell(double share, std::string_view stage) const {
        if (report) {
            report(share, stage);
        }
    }
};

} // namespace plumbmark::base
