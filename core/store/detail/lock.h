// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <utility>

#include "base/result.h"

namespace plumbmark::store::detail {

/// Held for as long as a library is open. Whoever gets it alone knows that nobody else is at work.
class Lock {
  public:
    /// Errors (input): "library.folder"; (failure): "library.busy".
    static base::Result<Lock> take(const std::filesystem::path& file);
    Lock(Lock&& other) noexcept : fd_(std::exchange(other.fd_, -1)), alone_(other.alone_) {}
    Lock& operator=(Lock&&) = delete;
    ~Lock();
    [[nodiscard]] bool alone() const { return alone_; }
    bool share();

  private:
    explicit Lock(int fd) : fd_(fd) {}
    int fd_;
    bool alone_ = false;
};

} // namespace plumbmark::store::detail
