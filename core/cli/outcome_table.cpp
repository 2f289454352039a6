// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <string>
#include <vector>

#include "cli/commands.h"
#include "exporting/words.h"

namespace plumbmark::cli {
namespace {

/// Columns that a UTF-8 text takes on a terminal, for the letters our own words are made of (one column
/// each).
std::size_t columns(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

std::string padded(const std::string& text, std::size_t width) {
    const std::size_t used = columns(text);
    return used < width ? text + std::string(width - used, ' ') : text;
}

std::string_view sign(coaching::State state, bool unicode) {
    switch (state) {
    case coaching::State::good:
        return unicode ? "\u25cf" : "[+]";
    case coaching::State::watch:
        return unicode ? "\u25b2" : "[!]";
    case coaching::State::work:
        return unicode ? "\u25c6" : "[x]";
    case coaching::State::unknown:
        break;
    }
    return unicode ? "\u25cb" : "[?]";
}

/// Wrapped at spaces; continuation lines are indented like the first.
void wrapped(std::ostream& out, std::string_view text, std::size_t indent, std::size_t width = 100) {
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

} // namespace

void printOutcome(std::ostream& out, const analysis::Outcome& outcome, bool unicode) {
    const exporting::Writing writing{unicode};
    const auto& stature = outcome.context.statureMetres;
    out << exporting::contextLine(outcome.context) << "\n";

    out << "\nKey moments\n";
    if (outcome.moments.empty()) {
        out << "  none could be told\n";
    }
    for (const auto& moment : outcome.moments) {
        // Shown as the position in the clip, which holds whatever the capture rate was.
        out << "  " << padded(std::string(exporting::momentLabel(moment.id)), 24)
            << exporting::secondsText(moment.time) << (unicode ? " \u00b1 " : " +- ")
            << exporting::secondsText(moment.sigma) << "  (" << moment.foundBy << ")\n";
    }

    std::vector<const coaching::CheckpointResult*> rows;
    for (const auto& checkpoint : outcome.checkpoints) {
        rows.push_back(&checkpoint);
    }
    // What is good comes first; inside a state the playbook's own order.
    std::stable_sort(rows.begin(), rows.end(),
                     [](const auto* a, const auto* b) { return a->state < b->state; });
    out << "\nCheckpoints\n";
    if (rows.empty()) {
        out << "  none for this view, club and kind of shot\n";
    }
    for (const auto* row : rows) {
        const std::string value =
            row->value ? exporting::valueText(row->measurement, *row->value, stature, writing) : "";
        const std::string range =
            row->value ? exporting::rangeText(row->goodLow, row->goodHigh, *row->value, stature, writing)
                       : "";
        std::string line = "  " + std::string(sign(row->state, unicode)) + " " +
                           padded(std::string(exporting::stateWord(row->state)), 12) +
                           padded(row->label.empty() ? row->id : row->label, 36) + " " + padded(value, 28);
        if (!range.empty()) {
            line += " good: " + range;
        }
        line.erase(line.find_last_not_of(' ') + 1);
        out << line << "\n";
        if (row->state != coaching::State::good && !row->help.empty()) {
            wrapped(out, row->help, unicode ? 16 : 18);
        }
    }
    if (!outcome.cautions.empty()) {
        out << "\nBody cautions\n";
        for (const auto& caution : outcome.cautions) {
            wrapped(out, caution.seen + " " + caution.ease + " (" + caution.grade + ")", 2);
            wrapped(out, caution.words, 2);
        }
    }
    std::vector<std::string> warnings = outcome.clip.warnings;
    for (const auto& warning : outcome.warnings) {
        if (std::find(warnings.begin(), warnings.end(), warning) == warnings.end()) {
            warnings.push_back(warning);
        }
    }
    if (!warnings.empty()) {
        out << "\nAbout this clip\n";
        for (const auto& warning : warnings) {
            wrapped(out, warning, 2);
        }
    }
}

} // namespace plumbmark::cli
