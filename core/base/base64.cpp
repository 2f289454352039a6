// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "base/base64.h"

#include <sodium.h>

namespace plumbmark::base {

std::string base64(std::span<const std::uint8_t> bytes) {
    // The library's length counts the zero that ends its text; std::string keeps one of its own behind.
    std::string text(sodium_base64_ENCODED_LEN(bytes.size(), sodium_base64_VARIANT_ORIGINAL) - 1, '\0');
    sodium_bin2base64(text.data(), text.size() + 1, bytes.data(), bytes.size(),
                      sodium_base64_VARIANT_ORIGINAL);
    return text;
}

} // namespace plumbmark::base
