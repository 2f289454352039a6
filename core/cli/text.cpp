// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "cli/text.h"

#include <algorithm>

namespace plumbmark::cli {

std::size_t columns(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

std::string padded(const std::string& text, std::size_t width) {
    const std::size_t used = columns(text);
    return used < width ? text + std::string(width - used, ' ') : text;
}

void wrapped(std::ostream& out, std::string_view text, std::size_t indent, std::size_t width) {
    std::string line;
    const auto flush = [&] {
        if (!line.empty()) {
            out << std::string(indent, ' ') << line << "\n";
            line.clear();
        }
    };
    while (!text.empty()) {
        const std::size_t space = text.find_first_of(" \n");
        const std::string_view word = text.substr(0, space);
        if (!line.empty() && indent + columns(line) + 1 + columns(word) > width) {
            flush();
        }
        if (!word.empty()) {
            line += (line.empty() ? "" : " ") + std::string(word);
        }
        text.remove_prefix(space == std::string_view::npos ? text.size() : space + 1);
    }
    flush();
}

std::string plural(int n, const std::string& one, const std::string& many) {
    return std::to_string(n) + " " + (n == 1 ? one : many);
}

} // namespace plumbmark::cli
