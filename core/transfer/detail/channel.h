// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include <sodium.h>

#include "base/progress.h"

namespace plumbmark::transfer::detail {

/// A file descriptor that is closed when it goes.
class Descriptor {
  public:
    explicit Descriptor(int fd = -1) : fd_(fd) {}
    Descriptor(Descriptor&& other) noexcept : fd_(std::exchange(other.fd_, -1)) {}
    Descriptor& operator=(Descriptor&& other) noexcept {
        std::swap(fd_, other.fd_);
        return *this;
    }
    ~Descriptor();
    [[nodiscard]] int get() const { return fd_; }
    [[nodiscard]] explicit operator bool() const { return fd_ >= 0; }

  private:
    int fd_;
};

enum class Wire { fine, closed, wrongKey, cancelled };

inline constexpr std::size_t kChunk = 65536;

/// An encrypted connection. Every call gives up after `kSilence` without a byte.
class Channel {
  public:
    static constexpr int kSilenceMs = 5000;
    Channel(Descriptor socket, const base::Progress& progress)
        : socket_(std::move(socket)), progress_(&progress) {}

    Wire shakeHandsAsServer(const std::array<std::uint8_t, 32>& key);
    Wire shakeHandsAsClient(const std::array<std::uint8_t, 32>& key);
    Wire send(std::span<const std::uint8_t> message, bool last = false);
    Wire receive(std::vector<std::uint8_t>& message, bool& last);

  private:
    Wire put(std::span<const std::uint8_t> bytes);
    Wire get(std::span<std::uint8_t> bytes);
    Wire begin(std::span<const std::uint8_t> sendKey, std::span<const std::uint8_t> receiveKey);
    Descriptor socket_;
    const base::Progress* progress_;
    crypto_secretstream_xchacha20poly1305_state out_{}, in_{};
};

} // namespace plumbmark::transfer::detail
