// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "base/ids.h"

#include <cstdlib>

#include <sodium.h>

namespace plumbmark::base {
namespace {

class RandomIds final : public IdSource {
  public:
    RandomIds() {
        // Without random numbers two devices could give one id to two things; there is nothing to fall back
        // on.
        if (sodium_init() < 0) {
            std::abort();
        }
    }
    Id next() override {
        Id::Bytes bytes;
        randombytes_buf(bytes.data(), bytes.size());
        return Id(bytes);
    }
};

int digitValue(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    if (c >= 'a' && c <= 'f') {
        return c - 'a' + 10;
    }
    return -1;
}

} // namespace

std::string Id::hex() const {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    text.reserve(32);
    for (const std::uint8_t byte : bytes_) {
        text += digits[byte >> 4];
        text += digits[byte & 15];
    }
    return text;
}

std::optional<Id> Id::fromHex(std::string_view text) {
    Bytes bytes{};
    if (text.size() != 2 * bytes.size()) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        const int high = digitValue(text[2 * i]);
        const int low = digitValue(text[2 * i + 1]);
        if (high < 0 || low < 0) {
            return std::nullopt;
        }
        bytes[i] = static_cast<std::uint8_t>(high * 16 + low);
    }
    return Id(bytes);
}

IdSource& randomIds() {
    static RandomIds source;
    return source;
}

Id SeededIds::next() {
    const std::lock_guard lock(mutex_);
    Id::Bytes bytes;
    for (std::size_t half = 0; half < 2; ++half) {
        // SplitMix64 (Steele, Lea, Flood 2014): spreads consecutive states over all 64 bits.
        state_ += 0x9e3779b97f4a7c15ULL;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
        z ^= z >> 31;
        for (std::size_t i = 0; i < 8; ++i) {
            bytes[half * 8 + i] = static_cast<std::uint8_t>(z >> (8 * i));
        }
    }
    return Id(bytes);
}

} // namespace plumbmark::base
