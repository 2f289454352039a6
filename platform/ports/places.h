// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace plumbmark::ports {

/// Where films usually lie on this device, and where the app may keep its own settings.
class Places {
  public:
    enum class Kind { films, downloads, desktop, home, removable };
    struct Place {
        Kind kind = Kind::home;
        std::filesystem::path folder; ///< exists and is readable
    };

    virtual ~Places() = default;
    /// Most likely place first; at least one entry wherever the device has readable folders at all.
    [[nodiscard]] virtual std::vector<Place> filmPlaces() const = 0;
    /// Settings of this device (theme, text size, operator's hand); never anything about players.
    [[nodiscard]] virtual std::filesystem::path settingsFile() const = 0;
};

} // namespace plumbmark::ports
