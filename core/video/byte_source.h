// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <span>

#include "base/result.h"

namespace plumbmark::video {

/// Where a clip's bytes come from: a file here, a content provider on a phone, memory in a test.
class ByteSource {
  public:
    virtual ~ByteSource() = default;
    /// Reads up to into.size() bytes at the current place; 0 at the end.
    virtual base::Result<std::size_t> read(std::span<std::uint8_t> into) = 0;
    virtual base::Result<void> seek(std::int64_t position) = 0;
    [[nodiscard]] virtual std::int64_t size() const = 0;
};

/// Errors (input): "clip.missing", "clip.directory", "clip.unreadable", "clip.empty".
base::Result<std::unique_ptr<ByteSource>> openFile(const std::filesystem::path& path);
std::unique_ptr<ByteSource> fromBytes(std::span<const std::uint8_t> bytes);

} // namespace plumbmark::video
