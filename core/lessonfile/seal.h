// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

#include "base/files.h"
#include "base/progress.h"
#include "base/result.h"

/// A lesson file behind a passphrase: one line of JSON with the numbers needed to make the key (Argon2id),
/// then the file in chunks of 64 KiB, each authenticated (libsodium's secretstream: XChaCha20-Poly1305). A
/// chunk that was changed, moved, doubled or cut off is found before a byte of it is released.
namespace plumbmark::lessonfile {

struct SealStrength {
    std::uint64_t memoryBytes =
        64ULL << 20; ///< Argon2id; RFC 9106 recommends 64 MiB with 3 passes as second choice
    std::uint64_t passes = 3;
};
/// What a reader accepts, so that a forged header cannot exhaust the device.
inline constexpr std::uint64_t kMostSealMemory = 1ULL << 30;
inline constexpr std::uint64_t kMostSealPasses = 10;

[[nodiscard]] bool isSealed(const std::filesystem::path& file);

/// Errors: those of writing; (input) "seal.passphrase_short" (under 8 characters), "file.missing";
/// "cancelled".
base::Result<void> seal(const std::filesystem::path& plain, const std::filesystem::path& sealed,
                        std::string_view passphrase, const SealStrength& strength = {},
                        const base::Progress& progress = {},
                        base::FileCalls& calls = base::systemFileCalls());

/// The opened file appears under its name only when everything was whole.
/// Errors (input): "seal.not_sealed", "seal.wrong" (wrong passphrase, or damaged at the very start),
/// "seal.damaged", "seal.truncated", "seal.newer"; those of writing; "cancelled".
base::Result<void> unseal(const std::filesystem::path& sealed, const std::filesystem::path& plain,
                          std::string_view passphrase, const base::Progress& progress = {},
                          base::FileCalls& calls = base::systemFileCalls());

/// Six words that can be read over the telephone: random syllables, together 75 bits.
[[nodiscard]] std::string suggestPassphrase();

} // namespace plumbmark::lessonfile
