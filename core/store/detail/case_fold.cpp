// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "store/detail/case_fold.h"

#include <cstdint>

namespace plumbmark::store::detail {
namespace {

std::uint32_t lower(std::uint32_t c) {
    if ((c >= 0xC0 && c <= 0xDE && c != 0xD7) || (c >= 0x391 && c <= 0x3AB && c != 0x3A2) ||
        (c >= 0x410 && c <= 0x42F)) {
        return c + 0x20;
    }
    if (c >= 0x400 && c <= 0x40F) {
        return c + 0x50;
    }
    // Latin Extended-A: capital and small letters alternate, with capitals odd in two stretches.
    if ((c >= 0x100 && c <= 0x137 && c != 0x130 && c != 0x131) || (c >= 0x14A && c <= 0x177)) {
        return c | 1U;
    }
    if ((c >= 0x139 && c <= 0x148) || (c >= 0x179 && c <= 0x17E)) {
        return c % 2 == 1 ? c + 1 : c;
    }
    return c == 0x178 ? 0xFF : c;
}

} // namespace

std::string foldCase(std::string_view utf8) {
    std::string out;
    out.reserve(utf8.size());
    for (std::size_t i = 0; i < utf8.size(); ++i) {
        const auto a = static_cast<unsigned char>(utf8[i]);
        if (a >= 'A' && a <= 'Z') {
            out += static_cast<char>(a + 32);
        } else if (a >= 0xC3 && a <= 0xDF && i + 1 < utf8.size()) {
            const auto b = static_cast<unsigned char>(utf8[++i]);
            const std::uint32_t c = lower(((a & 0x1FU) << 6) | (b & 0x3FU));
            out += static_cast<char>(0xC0 | (c >> 6));
            out += static_cast<char>(0x80 | (c & 0x3F));
        } else {
            out += static_cast<char>(a);
        }
    }
    return out;
}

} // namespace plumbmark::store::detail
