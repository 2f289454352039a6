// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace plumbmark::cli {

struct Option {
    std::string_view name;  ///< "--view"
    std::string_view value; ///< what the value is ("CM"); empty: a switch without value
    std::string_view help;
};

/// One command as a row of a table: it drives reading and help alike, so that they cannot disagree.
struct CommandForm {
    std::string_view name;                  ///< "measure", "lesson export"
    std::string_view summary;               ///< one line
    std::vector<std::string_view> operands; ///< "CLIP"; one in [] may be left out; a last "[CLIP...]" takes many
    std::vector<Option> options;
    std::vector<std::string_view> examples;
};

class Arguments {
  public:
    /// Errors (input): "arguments.unknown", "arguments.missing", "arguments.twice", "arguments.extra". Takes
    /// "--name value" and "--name=value"; "--" ends the options; a value may begin with one minus sign.
    static base::Result<Arguments> read(const CommandForm& form, std::span<const std::string> args);

    [[nodiscard]] bool has(std::string_view option) const { return values_.contains(std::string(option)); }
    [[nodiscard]] std::optional<std::string> value(std::string_view option) const;
    /// nullopt where an operand in [] was left out.
    [[nodiscard]] std::optional<std::string> operand(std::size_t index) const;
    [[nodiscard]] std::size_t operands() const { return operands_.size(); }

    /// A number within low..high (both included), in the C notation whatever the locale. Error
    /// "arguments.number".
    [[nodiscard]] base::Result<std::optional<double>> number(std::string_view option, double low, double high,
                                                             std::string_view unit) const;

  private:
    std::map<std::string, std::string> values_;
    std::vector<std::string> operands_;
};

/// A number and nothing else, finite; point as decimal sign.
[[nodiscard]] std::optional<double> readNumber(std::string_view text);

/// Somebody's text made harmless for a terminal: control characters become '?', long text is cut.
[[nodiscard]] std::string shown(std::string_view text, std::size_t longest = 200);

} // namespace plumbmark::cli
