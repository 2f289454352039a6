// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <chrono>
#include <condition_variable>
#include <cstddef>
#include <deque>
#include <mutex>
#include <optional>
#include <utility>

namespace plumbmark::analysis {

/// Hands values from one thread to the next, at most `room` of them under way. Closing ends both sides: what
/// is inside can still be taken unless it was closed at once.
template <class T> class Channel {
  public:
    explicit Channel(std::size_t room) : room_(room) {}

    /// Waits for room; false when closed or when `stop()` says so (asked every 20 ms while waiting).
    template <class Stop> bool put(T value, const Stop& stop) {
        std::unique_lock lock(mutex_);
        while (!closed_ && values_.size() >= room_) {
            changed_.wait_for(lock, std::chrono::milliseconds(20));
            if (stop()) {
                return false;
            }
        }
        if (closed_) {
            return false;
        }
        values_.push_back(std::move(value));
        changed_.notify_all();
        return true;
    }

    /// Waits for a value; nothing when closed and empty.
    std::optional<T> take() {
        std::unique_lock lock(mutex_);
        changed_.wait(lock, [this] { return closed_ || !values_.empty(); });
        if (values_.empty()) {
            return std::nullopt;
        }
        std::optional<T> value(std::move(values_.front()));
        values_.pop_front();
        changed_.notify_all();
        return value;
    }

    void close() {
        const std::lock_guard lock(mutex_);
        closed_ = true;
        changed_.notify_all();
    }
    void closeAtOnce() {
        const std::lock_guard lock(mutex_);
        closed_ = true;
        values_.clear();
        changed_.notify_all();
    }

  private:
    std::mutex mutex_;
    std::condition_variable changed_;
    std::deque<T> values_;
    std::size_t room_;
    bool closed_ = false;
};

} // namespace plumbmark::analysis
