// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <ostream>
#include <string>
#include <string_view>

/// Laying out text on a terminal.
namespace plumbmark::cli {

/// Columns that a UTF-8 text takes on a terminal, for the letters our own words are made of (one column
/// each).
[[nodiscard]] std::size_t columns(std::string_view text);
/// Filled with spaces to `width` columns; longer text stays as it is.
[[nodiscard]] std::string padded(const std::string& text, std::size_t width);
/// Wrapped at spaces; continuation lines are indented like the first.
void wrapped(std::ostream& out, std::string_view text, std::size_t indent, std::size_t width = 100);
/// "1 swing", "3 swings".
[[nodiscard]] std::string plural(int n, const std::string& one, const std::string& many);

} // namespace plumbmark::cli
