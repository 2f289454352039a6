// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstdint>
#include <filesystem>
#include <span>
#include <string>
#include <string_view>

#include "base/progress.h"
#include "base/result.h"

namespace plumbmark::base {

/// SHA-256 (FIPS 180-4) over bytes that arrive in pieces.
class Sha256 {
  public:
    Sha256();
    void add(std::span<const std::uint8_t> bytes);
    void add(std::string_view text);
    /// 64 lowercase hex digits. Ends this hash: start a new object for the next one.
    [[nodiscard]] std::string finishHex();

  private:
    alignas(64) std::array<unsigned char, 128> state_; ///< the library's own state, opaque
};

[[nodiscard]] std::string sha256Hex(std::span<const std::uint8_t> bytes);
[[nodiscard]] std::string sha256OfText(std::string_view text);

/// Exactly 64 lowercase hex digits.
[[nodiscard]] bool isSha256Hex(std::string_view text);

struct FileHash {
    std::string sha256;
    std::int64_t size = 0; ///< bytes that were really read
};
/// Reads the file once, with bounded memory. Errors: "file.missing", "file.unreadable" (input), "cancelled".
Result<FileHash> sha256OfFile(const std::filesystem::path& path, const Progress& progress = {});

} // namespace plumbmark::base
