// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <string>
#include <vector>

#include "cli/commands.h"
#include "cli/text.h"
#include "exporting/words.h"

namespace plumbmark::cli {
namespace {

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

} // namespace

void printOutcome(std::ostream& out, const analysis::Outcome& outcome,
                  std::span<const exporting::Advice> advice, bool unicode) {
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
    if (!advice.empty()) {
        out << "\nFor the next film\n";
        for (const auto& one : advice) {
            wrapped(out, one.limited + " " + one.change, 2);
        }
    }
}

} // namespace plumbmark::cli
