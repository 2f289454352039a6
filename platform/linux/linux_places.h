// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <string>

#include "ports/places.h"

namespace plumbmark::platform {

/// Folders after the XDG base directory and user directory conventions.
class LinuxPlaces final : public ports::Places {
  public:
    using Environment = std::map<std::string, std::string>;
    /// The process's own environment (HOME, XDG_CONFIG_HOME, USER).
    LinuxPlaces();
    explicit LinuxPlaces(Environment environment) : environment_(std::move(environment)) {}

    [[nodiscard]] std::vector<Place> filmPlaces() const override;
    [[nodiscard]] std::filesystem::path settingsFile() const override;

  private:
    [[nodiscard]] std::filesystem::path configFolder() const;
    Environment environment_;
};

} // namespace plumbmark::platform
