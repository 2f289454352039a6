// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"

/// The narrow ZIP that lesson files use: every entry stored, no extra fields, no comments, no encryption, no
/// 64-bit extension, one fixed date, local headers and data back to back, then the directory. There is
/// exactly one sequence of bytes for given names and contents. The reader builds that sequence and compares,
/// so there is no room for overlaps, doubled directories, hidden data or a changed bit anywhere.
namespace plumbmark::lessonfile::detail {

/// CRC-32 as ZIP uses it (polynomial 0xEDB88320, reflected).
class Crc32 {
  public:
    void add(std::span<const std::uint8_t> bytes);
    [[nodiscard]] std::uint32_t value() const { return ~state_; }

  private:
    std::uint32_t state_ = 0xFFFFFFFFU;
};

struct ZipEntry {
    std::string name;
    std::uint32_t size = 0;
    std::uint32_t crc = 0;
    std::uint32_t offset = 0; ///< of the local header
};

constexpr std::int64_t kLocalHeader = 30, kCentralHeader = 46, kEnd = 22;

[[nodiscard]] std::string localHeader(const ZipEntry& entry);
[[nodiscard]] std::string centralHeader(const ZipEntry& entry);
[[nodiscard]] std::string endRecord(std::size_t entries, std::uint32_t directorySize,
                                    std::uint32_t directoryOffset);

/// Reads exactly `into.size()` bytes at `offset`; false when it cannot.
using ReadAt = std::function<bool(std::int64_t offset, std::span<std::uint8_t> into)>;

/// Why an archive is not one of ours.
enum class ZipTrouble {
    none,
    unreadable, ///< a read failed
    notZip,     ///< no ZIP at all
    truncated,  ///< begins as one of ours but the end is missing
    unsafe,     ///< a ZIP, but with something a lesson file never has
};
struct ZipDirectory {
    ZipTrouble trouble = ZipTrouble::none;
    std::string what; ///< for `unsafe`: what was found, in plain words
    std::vector<ZipEntry> entries;
};
/// Reads and checks the directory and every local header against the one allowed form. Memory is bounded by
/// `mostEntries`; contents are not read (their CRC is the caller's to check).
[[nodiscard]] ZipDirectory readDirectory(std::int64_t fileSize, const ReadAt& read, std::int64_t mostEntries);

} // namespace plumbmark::lessonfile::detail
