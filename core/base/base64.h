// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <span>
#include <string>

namespace plumbmark::base {

/// RFC 4648, section 4: with padding, no line ends.
[[nodiscard]] std::string base64(std::span<const std::uint8_t> bytes);

} // namespace plumbmark::base
