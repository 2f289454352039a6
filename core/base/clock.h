// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace plumbmark::base {

/// Milliseconds since 1970-01-01T00:00:00Z, leap seconds not counted; may be negative.
using UnixMs = std::int64_t;

class Clock {
  public:
    virtual ~Clock() = default;
    [[nodiscard]] virtual UnixMs now() const = 0;
};

/// The device's clock.
const Clock& systemClock();

/// For tests.
class FixedClock final : public Clock {
  public:
    explicit FixedClock(UnixMs at) : at_(at) {}
    [[nodiscard]] UnixMs now() const override { return at_; }
    void set(UnixMs at) { at_ = at; }

  private:
    UnixMs at_;
};

/// ISO 8601 in UTC with milliseconds, "2026-11-25T09:30:00.000Z"; years 0000 to 9999 (clamped).
[[nodiscard]] std::string isoTime(UnixMs at);
/// Only the day, "2026-11-25" (UTC).
[[nodiscard]] std::string isoDate(UnixMs at);
/// Reads exactly the two forms above (milliseconds may be left out); impossible dates give nothing.
[[nodiscard]] std::optional<UnixMs> fromIso(std::string_view text);

} // namespace plumbmark::base
