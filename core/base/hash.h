// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string>

namespace plumbmark::base {

/// SHA-256 (FIPS 180-4) of the bytes, 64 lower-case hex digits.
[[nodiscard]] std::string sha256Hex(std::span<const unsigned char> bytes);

} // namespace plumbmark::base
