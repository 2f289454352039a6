// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <functional>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>

namespace plumbmark::base {

/// 128 random bits that name one thing for ever, on every device. Text form: 32 lowercase hex digits.
/// There is no "empty" id: where an id may be missing, std::optional<Id> says so.
class Id {
  public:
    using Bytes = std::array<std::uint8_t, 16>;
    constexpr explicit Id(const Bytes& bytes) : bytes_(bytes) {}
    [[nodiscard]] const Bytes& bytes() const { return bytes_; }
    [[nodiscard]] std::string hex() const;
    /// Exactly 32 lowercase hex digits, else nothing.
    [[nodiscard]] static std::optional<Id> fromHex(std::string_view text);
    friend constexpr auto operator<=>(const Id&, const Id&) = default;

  private:
    Bytes bytes_;
};

/// Where new ids come from. Implementations are safe to call from several threads.
class IdSource {
  public:
    virtual ~IdSource() = default;
    virtual Id next() = 0;
};

/// The operating system's random numbers (through libsodium).
IdSource& randomIds();

/// For tests: the same ids in every run. Not for real libraries: two devices with one seed would collide.
class SeededIds final : public IdSource {
  public:
    explicit SeededIds(std::uint64_t seed) : state_(seed) {}
    Id next() override;

  private:
    std::mutex mutex_;
    std::uint64_t state_;
};

} // namespace plumbmark::base

template <> struct std::hash<plumbmark::base::Id> {
    std::size_t operator()(const plumbmark::base::Id& id) const noexcept {
        std::size_t value = 0; // the bytes are random already
        for (std::size_t i = 0; i < sizeof value; ++i) {
            value = (value << 8) | id.bytes()[i];
        }
        return value;
    }
};
