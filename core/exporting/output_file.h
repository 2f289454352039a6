// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <filesystem>
#include <span>
#include <string_view>

#include "base/result.h"

namespace plumbmark::exporting {

/// Whether writeWhole() will be able to put a file there; asked before long work. Looks only: nothing is
/// created that stays. Errors (input): "output.no_folder", "output.is_folder", "output.not_writable".
base::Result<void> checkWritable(const std::filesystem::path& path);

/// Writes the whole file or nothing: a new file beside the target, flushed to the disk, then renamed over it.
/// A link is followed; something that is no regular file (a pipe, /dev/null) is written straight into.
/// Errors: those of checkWritable, and (failure) "output.write" (disk full, ...).
base::Result<void> writeWhole(const std::filesystem::path& path, std::string_view bytes);
base::Result<void> writeWhole(const std::filesystem::path& path, std::span<const std::byte> bytes);

} // namespace plumbmark::exporting
