// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "records/value.h"

namespace plumbmark::test {

/// Words that somebody could type to do harm, one list for everything that shows or writes what people type:
/// markup, scripts, formulas, forged cues, marks that reorder text, right-to-left letters, emoji, endless
/// words, control characters, format signs, paths (tests/hostile/texts.json).
inline std::vector<std::string> hostileTexts() {
    std::ifstream file(PLUMBMARK_SOURCE_DIR "/tests/hostile/texts.json");
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    std::vector<std::string> list;
    const auto parsed = records::parseJson(text);
    if (parsed && parsed->array() != nullptr) {
        for (const records::Value& value : *parsed->array()) {
            list.push_back(value.text() != nullptr ? *value.text() : std::string());
        }
    }
    return list;
}

} // namespace plumbmark::test
