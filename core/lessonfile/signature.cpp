// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "lessonfile/signature.h"

#include <array>
#include <fstream>
#include <iterator>

#include <sodium.h>

namespace plumbmark::lessonfile {
namespace {

std::string hexOf(const unsigned char* bytes, std::size_t size) {
    std::string text(size * 2 + 1, '\0');
    sodium_bin2hex(text.data(), text.size(), bytes, size);
    text.pop_back();
    return text;
}

bool fromHex(std::string_view hex, unsigned char* bytes, std::size_t size) {
    std::size_t got = 0;
    return hex.size() == 2 * size &&
           sodium_hex2bin(bytes, size, hex.data(), hex.size(), nullptr, &got, nullptr) == 0 && got == size;
}

const unsigned char* bytesOf(std::string_view text) {
    return reinterpret_cast<const unsigned char*>(text.data());
}

} // namespace

struct DeviceKey::Secret {
    std::array<unsigned char, crypto_sign_SECRETKEYBYTES> bytes{};
    Secret() = default;
    Secret(const Secret&) = delete;
    Secret& operator=(const Secret&) = delete;
    ~Secret() { sodium_memzero(bytes.data(), bytes.size()); }
};

base::Result<DeviceKey> DeviceKey::open(const std::filesystem::path& file, base::FileCalls& calls) {
    if (sodium_init() < 0) {
        return base::failure("key.failed", "The encryption library cannot start; restart the program.");
    }
    std::array<unsigned char, crypto_sign_SEEDBYTES> seed{};
    std::error_code error;
    if (std::filesystem::exists(file, error)) {
        std::ifstream in(file, std::ios::binary);
        std::string text{std::istreambuf_iterator<char>(in), {}};
        if (text.size() != 2 * seed.size() + 1 || text.back() != '\n' ||
            !fromHex(std::string_view(text).substr(0, 2 * seed.size()), seed.data(), seed.size())) {
            return base::failure(
                "key.damaged", "The device's key is damaged; remove the file \"" + file.filename().string() +
                                   "\" and a new one is made (others then see a new device).");
        }
        sodium_memzero(text.data(), text.size());
    } else {
        randombytes_buf(seed.data(), seed.size());
        if (auto written = base::replaceFile(file, hexOf(seed.data(), seed.size()) + "\n", calls); !written) {
            return written.error();
        }
    }
    auto secret = std::make_shared<Secret>();
    std::array<unsigned char, crypto_sign_PUBLICKEYBYTES> publicKey{};
    crypto_sign_seed_keypair(publicKey.data(), secret->bytes.data(), seed.data());
    sodium_memzero(seed.data(), seed.size());
    DeviceKey key;
    key.publicHex_ = hexOf(publicKey.data(), publicKey.size());
    key.secret_ = std::move(secret);
    return key;
}

std::string DeviceKey::sign(std::string_view text) const {
    std::array<unsigned char, crypto_sign_BYTES> signature{};
    crypto_sign_detached(signature.data(), nullptr, bytesOf(text), text.size(), secret_->bytes.data());
    return hexOf(signature.data(), signature.size());
}

bool signatureFits(std::string_view text, const std::string& publicKey, const std::string& signature) {
    std::array<unsigned char, crypto_sign_PUBLICKEYBYTES> key{};
    std::array<unsigned char, crypto_sign_BYTES> bytes{};
    return sodium_init() >= 0 && fromHex(publicKey, key.data(), key.size()) &&
           fromHex(signature, bytes.data(), bytes.size()) &&
           crypto_sign_verify_detached(bytes.data(), bytesOf(text), text.size(), key.data()) == 0;
}

std::string keyForPeople(std::string_view publicKey) {
    std::string text;
    for (std::size_t at = 0; at < 16 && at + 4 <= publicKey.size(); at += 4) {
        text += (at == 0 ? "" : "-") + std::string(publicKey.substr(at, 4));
    }
    return text;
}

} // namespace plumbmark::lessonfile
