// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

namespace plumbmark::store::detail {

/// Lower case for searching, independent of the system's locale: ASCII, Latin-1, Latin Extended-A, Greek and
/// Cyrillic letters (simple mappings of the Unicode character database); everything else stays as it is.
[[nodiscard]] std::string foldCase(std::string_view utf8);

} // namespace plumbmark::store::detail
