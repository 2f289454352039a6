// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "linux/linux_places.h"

#include <cstdlib>
#include <fstream>
#include <system_error>

namespace plumbmark::platform {

namespace fs = std::filesystem;

namespace {

bool readableFolder(const fs::path& path) {
    std::error_code error;
    if (path.empty() || !fs::is_directory(path, error)) {
        return false;
    }
    const fs::directory_iterator it(path, error);
    return !error;
}

} // namespace

LinuxPlaces::LinuxPlaces() {
    for (const char* name : {"HOME", "XDG_CONFIG_HOME", "USER"}) {
        if (const char* value = std::getenv(name); value != nullptr && *value != '\0') {
            environment_[name] = value;
        }
    }
}

fs::path LinuxPlaces::configFolder() const {
    if (const auto it = environment_.find("XDG_CONFIG_HOME"); it != environment_.end()) {
        return it->second;
    }
    const auto home = environment_.find("HOME");
    return home == environment_.end() ? fs::path("/tmp") : fs::path(home->second) / ".config";
}

std::vector<ports::Places::Place> LinuxPlaces::filmPlaces() const {
    std::vector<Place> places;
    const auto add = [&places](Kind kind, const fs::path& folder) {
        if (!readableFolder(folder)) {
            return;
        }
        for (const Place& known : places) {
            if (known.folder == folder) {
                return;
            }
        }
        places.push_back({kind, folder});
    };
    const auto homeEntry = environment_.find("HOME");
    const fs::path home = homeEntry == environment_.end() ? fs::path() : fs::path(homeEntry->second);

    // user-dirs.dirs: lines of the form XDG_VIDEOS_DIR="$HOME/Videos", in the user's language.
    std::map<std::string, fs::path> told;
    std::ifstream file(configFolder() / "user-dirs.dirs");
    for (std::string line; std::getline(file, line);) {
        const auto equals = line.find("=\"");
        const auto end = line.rfind('"');
        if (line.starts_with("XDG_") && equals != std::string::npos && end > equals + 1) {
            std::string value = line.substr(equals + 2, end - equals - 2);
            if (value.starts_with("$HOME")) {
                value = home.string() + value.substr(5);
            }
            told[line.substr(0, equals)] = fs::path(value).lexically_normal();
        }
    }
    const auto folder = [&](const char* key, const char* usual) {
        const auto it = told.find(key);
        return it != told.end() ? it->second : home.empty() ? fs::path() : home / usual;
    };
    add(Kind::films, folder("XDG_VIDEOS_DIR", "Videos"));
    add(Kind::downloads, folder("XDG_DOWNLOAD_DIR", "Downloads"));
    add(Kind::desktop, folder("XDG_DESKTOP_DIR", "Desktop"));
    add(Kind::home, home);
    if (const auto user = environment_.find("USER"); user != environment_.end()) {
        std::error_code error;
        for (const char* root : {"/media", "/run/media"}) {
            for (fs::directory_iterator it(fs::path(root) / user->second, error), end; !error && it != end;
                 it.increment(error)) {
                add(Kind::removable, it->path());
            }
            error.clear();
        }
    }
    if (places.empty()) {
        add(Kind::home, "/");
    }
    return places;
}

fs::path LinuxPlaces::settingsFile() const {
    return configFolder() / "plumbmark" / "app.ini";
}

} // namespace plumbmark::platform
