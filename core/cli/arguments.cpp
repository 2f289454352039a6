// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "cli/arguments.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdio>
#include <numeric>

namespace plumbmark::cli {
namespace {

std::string plain(double value) {
    char text[40];
    std::snprintf(text, sizeof text, "%g", value);
    return text;
}

/// Edits (insert, drop, change one letter) that turn a into b.
std::size_t edits(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t change = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
            diagonal = row[j];
            row[j] = std::min({row[j] + 1, row[j - 1] + 1, change});
        }
    }
    return row.back();
}

std::string seeHelp(const CommandForm& form) {
    return " See \"plumbmark " + std::string(form.name) + " --help\".";
}

base::Error unknownOption(const CommandForm& form, const std::string& name) {
    std::string hint = seeHelp(form);
    std::size_t best = 3; // more than two letters off is another word
    for (const Option& option : form.options) {
        if (const std::size_t d = edits(name.substr(0, 40), option.name); d < best) {
            best = d;
            hint = " Did you mean " + std::string(option.name) + "?";
        }
    }
    return base::inputError("arguments.unknown",
                            "The option " + shown(name, 60) + " is not known here." + hint);
}

bool optional(std::string_view operand) {
    return operand.starts_with('[');
}

bool takesMany(const CommandForm& form) {
    return !form.operands.empty() && form.operands.back().find("...") != std::string_view::npos;
}

} // namespace

base::Result<Arguments> Arguments::read(const CommandForm& form, std::span<const std::string> args) {
    Arguments read;
    bool optionsOver = false;
    for (std::size_t i = 0; i < args.size(); ++i) {
        const std::string& arg = args[i];
        if (!optionsOver && arg == "--") {
            optionsOver = true;
            continue;
        }
        if (optionsOver || arg.size() < 2 || arg[0] != '-') {
            if (read.operands_.size() >= form.operands.size() && !takesMany(form)) {
                return base::inputError("arguments.extra",
                                        "\"" + shown(arg, 60) + "\" is one word too many." + seeHelp(form));
            }
            read.operands_.push_back(arg);
            continue;
        }
        const std::size_t equals = arg.find('=');
        const std::string name = arg.substr(0, equals);
        const auto option = std::find_if(form.options.begin(), form.options.end(),
                                         [&](const Option& o) { return o.name == name; });
        if (option == form.options.end()) {
            return unknownOption(form, name);
        }
        std::string value;
        if (option->value.empty()) {
            if (equals != std::string::npos) {
                return base::inputError("arguments.extra", name + " is a switch and takes no value.");
            }
        } else if (equals != std::string::npos) {
            value = arg.substr(equals + 1);
        } else if (i + 1 < args.size() && !args[i + 1].starts_with("--")) {
            value = args[++i];
        }
        if (!option->value.empty() && value.empty()) {
            return base::inputError("arguments.missing", name + " needs a value: " + name + " " +
                                                             std::string(option->value) + ".");
        }
        if (!read.values_.emplace(name, value).second) {
            return base::inputError("arguments.twice", name + " is given twice; keep one of them.");
        }
    }
    for (std::size_t i = read.operands_.size(); i < form.operands.size(); ++i) {
        if (!optional(form.operands[i])) {
            return base::inputError("arguments.missing",
                                    "Tell " + std::string(form.operands[i]) + " too." + seeHelp(form));
        }
    }
    for (std::size_t i = 0; i < read.operands_.size(); ++i) {
        if (read.operands_[i].empty()) {
            const auto& operand = form.operands[std::min(i, form.operands.size() - 1)];
            return base::inputError("arguments.missing",
                                    std::string(operand) + " is empty; give a name." + seeHelp(form));
        }
    }
    return read;
}

std::optional<std::string> Arguments::value(std::string_view option) const {
    const auto it = values_.find(std::string(option));
    return it == values_.end() ? std::nullopt : std::optional(it->second);
}

std::optional<std::string> Arguments::operand(std::size_t index) const {
    return index < operands_.size() ? std::optional(operands_[index]) : std::nullopt;
}

base::Result<std::optional<double>> Arguments::number(std::string_view option, double low, double high,
                                                      std::string_view unit) const {
    const auto text = value(option);
    if (!text) {
        return std::optional<double>{};
    }
    const auto number = readNumber(*text);
    if (!number || *number < low || *number > high) {
        return base::inputError("arguments.number", std::string(option) + " needs a number from " +
                                                        plain(low) + " to " + plain(high) + " " +
                                                        std::string(unit) + ", not \"" + shown(*text, 40) +
                                                        "\".");
    }
    return number;
}

std::optional<double> readNumber(std::string_view text) {
    if (text.starts_with('+')) {
        text.remove_prefix(1);
        if (text.starts_with('-')) {
            return std::nullopt;
        }
    }
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value)) {
        return std::nullopt;
    }
    return value;
}

std::string shown(std::string_view text, std::size_t longest) {
    std::string safe;
    for (const char c : text.substr(0, longest)) {
        safe += static_cast<unsigned char>(c) < 0x20 || c == 0x7f ? '?' : c;
    }
    return text.size() > longest ? safe + "..." : safe;
}

} // namespace plumbmark::cli
