// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <filesystem>
#include <span>
#include <string_view>

#include "base/result.h"

/// Output files whose names a person typed: base::AtomicFile plus what a person may name (a link, a pipe, a
/// folder that is not there), found out before the long work.
namespace plumbmark::exporting {

/// Whether writeWhole() will be able to put a file there. Looks only: nothing is created that stays.
/// Errors (input): "output.no_name", "output.no_folder", "output.is_folder", "output.not_writable".
base::Result<void> checkWritable(const std::filesystem::path& path);

/// Writes the whole file or nothing (see base::AtomicFile), with the permissions any new file of this user
/// gets, or those of the file that it replaces. A link is followed; what is no regular file (a pipe,
/// /dev/null) is written straight into. Errors: those of checkWritable and base::replaceFile; (failure)
/// "output.write".
base::Result<void> writeWhole(const std::filesystem::path& path, std::string_view bytes);
base::Result<void> writeWhole(const std::filesystem::path& path, std::span<const std::byte> bytes);

} // namespace plumbmark::exporting
