// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <compare>
#include <numbers>

namespace plumbmark::base {

/// A number that carries its unit in its type. Quantities of different units do not mix; the bare number
/// comes out only by name. No implicit conversion from double: `Seconds{0.25}`.
template <class UnitTag> class Quantity {
  public:
    constexpr Quantity() = default;
    constexpr explicit Quantity(double value) : value_(value) {}
    [[nodiscard]] constexpr double value() const { return value_; }

    constexpr Quantity& operator+=(Quantity other) {
        value_ += other.value_;
        return *this;
    }
    constexpr Quantity& operator-=(Quantity other) {
        value_ -= other.value_;
        return *this;
    }
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity{a.value_ + b.value_}; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity{a.value_ - b.value_}; }
    friend constexpr Quantity operator-(Quantity a) { return Quantity{-a.value_}; }
    friend constexpr Quantity operator*(Quantity a, double k) { return Quantity{a.value_ * k}; }
    friend constexpr Quantity operator*(double k, Quantity a) { return Quantity{a.value_ * k}; }
    friend constexpr Quantity operator/(Quantity a, double k) { return Quantity{a.value_ / k}; }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.value_ / b.value_; }
    friend constexpr auto operator<=>(Quantity, Quantity) = default;

  private:
    double value_ = 0.0;
};

using Seconds = Quantity<struct SecondsUnit>;
using Degrees = Quantity<struct DegreesUnit>;
using Metres = Quantity<struct MetresUnit>;

[[nodiscard]] constexpr double radians(Degrees angle) {
    return angle.value() * std::numbers::pi / 180.0;
}
[[nodiscard]] constexpr Degrees degreesFromRadians(double angle) {
    return Degrees{angle * 180.0 / std::numbers::pi};
}

} // namespace plumbmark::base
