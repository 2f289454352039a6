// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "base/hash.h"

#include <algorithm>
#include <cstring>
#include <new>
#include <vector>

#include <fcntl.h>
#include <sodium.h>
#include <sys/stat.h>
#include <unistd.h>

namespace plumbmark::base {
namespace {

static_assert(sizeof(crypto_hash_sha256_state) <= 128, "Sha256 reserves room for the library's state");

crypto_hash_sha256_state* stateOf(std::array<unsigned char, 128>& room) {
    return std::launder(reinterpret_cast<crypto_hash_sha256_state*>(room.data()));
}

} // namespace

Sha256::Sha256() : state_{} {
    auto* state = new (state_.data()) crypto_hash_sha256_state;
    crypto_hash_sha256_init(state);
}

void Sha256::add(std::span<const std::uint8_t> bytes) {
    crypto_hash_sha256_update(stateOf(state_), bytes.data(), bytes.size());
}

void Sha256::add(std::string_view text) {
    crypto_hash_sha256_update(stateOf(state_), reinterpret_cast<const unsigned char*>(text.data()),
                              text.size());
}

std::string Sha256::finishHex() {
    std::array<unsigned char, crypto_hash_sha256_BYTES> digest;
    crypto_hash_sha256_final(stateOf(state_), digest.data());
    std::array<char, 2 * crypto_hash_sha256_BYTES + 1> text;
    sodium_bin2hex(text.data(), text.size(), digest.data(), digest.size());
    return text.data();
}

std::string sha256Hex(std::span<const std::uint8_t> bytes) {
    Sha256 hash;
    hash.add(bytes);
    return hash.finishHex();
}

std::string sha256OfText(std::string_view text) {
    Sha256 hash;
    hash.add(text);
    return hash.finishHex();
}

bool isSha256Hex(std::string_view text) {
    return text.size() == 64 && std::all_of(text.begin(), text.end(), [](char c) {
               return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
           });
}

Result<FileHash> sha256OfFile(const std::filesystem::path& path, const Progress& progress) {
    const int fd = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
    if (fd < 0) {
        return errno == ENOENT
                   ? inputError("file.missing",
                                "There is no file \"" + path.filename().string() + "\"; check the name.")
                   : inputError("file.unreadable", "The file \"" + path.filename().string() +
                                                       "\" cannot be read; check its permissions.");
    }
    struct stat info {};
    if (::fstat(fd, &info) != 0 || !S_ISREG(info.st_mode)) {
        ::close(fd);
        return inputError("file.unreadable",
                          "\"" + path.filename().string() + "\" is not a file; choose a file.");
    }
    Sha256 hash;
    FileHash result;
    std::vector<std::uint8_t> buffer(1 << 20);
    for (;;) {
        const ssize_t got = ::read(fd, buffer.data(), buffer.size());
        if (got < 0 && errno == EINTR) {
            continue;
        }
        if (got < 0) {
            ::close(fd);
            return failure("file.unreadable", "Reading \"" + path.filename().string() +
                                                  "\" failed; check the disk and try again.");
        }
        if (got == 0) {
            break;
        }
        hash.add(std::span<const std::uint8_t>(buffer.data(), static_cast<std::size_t>(got)));
        result.size += got;
        if (progress.cancelled()) {
            ::close(fd);
            return failure("cancelled", "Stopped on request.");
        }
        if (info.st_size > 0) {
            progress.tell(std::min(1.0, static_cast<double>(result.size) / static_cast<double>(info.st_size)),
                          "Reading the file");
        }
    }
    ::close(fd);
    result.sha256 = hash.finishHex();
    return result;
}

} // namespace plumbmark::base
