// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "base/hash.h"

#include <array>

#include <sodium.h>

namespace plumbmark::base {

std::string sha256Hex(std::span<const unsigned char> bytes) {
    // crypto_hash_sha256 keeps no state, so sodium_init() is not needed here.
    std::array<unsigned char, crypto_hash_sha256_BYTES> digest{};
    crypto_hash_sha256(digest.data(), bytes.data(), bytes.size());
    std::array<char, crypto_hash_sha256_BYTES * 2 + 1> hex{};
    sodium_bin2hex(hex.data(), hex.size(), digest.data(), digest.size());
    return {hex.data(), hex.size() - 1};
}

} // namespace plumbmark::base
