// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "cli/desktop_files.h"

#include <cstdlib>
#include <fstream>
#include <iterator>

namespace plumbmark::cli {
namespace fs = std::filesystem;
namespace {

std::optional<std::string> environment(const char* name) {
    const char* value = std::getenv(name);
    return value != nullptr && *value != 0 ? std::optional<std::string>(value) : std::nullopt;
}

} // namespace

std::optional<fs::path> networkFolder() {
    if (const auto told = environment("PLUMBMARK_NETWORK_DIR")) {
        return fs::path(*told);
    }
    if (const auto data = environment("XDG_DATA_HOME")) {
        return fs::path(*data) / "plumbmark" / "network";
    }
    if (const auto home = environment("HOME")) {
        return fs::path(*home) / ".local" / "share" / "plumbmark" / "network";
    }
    return std::nullopt;
}

base::Result<analysis::NetworkBytes> readNetwork() {
    const auto folder = networkFolder();
    if (!folder) {
        return analysis::NetworkBytes{};
    }
    for (const char* name :
         {"pose_landmark_full.tflite", "pose_landmark_heavy.tflite", "pose_landmark_lite.tflite"}) {
        const fs::path path = *folder / name;
        std::error_code error;
        if (!fs::exists(path, error)) {
            continue;
        }
        std::ifstream file(path, std::ios::binary);
        auto bytes = std::make_shared<std::vector<unsigned char>>(std::istreambuf_iterator<char>(file),
                                                                  std::istreambuf_iterator<char>());
        if (!file.is_open() || file.bad() || bytes->empty()) {
            return base::inputError("network.unreadable", "The pose network \"" + path.string() +
                                                              "\" can't be read; fetch it again with "
                                                              "platform/linux/fetch-network.sh.");
        }
        return analysis::NetworkBytes(std::move(bytes));
    }
    return analysis::NetworkBytes{};
}

std::string whereNetworkIsLookedFor() {
    const auto folder = networkFolder();
    return "looked for in " +
           (folder ? folder->string() : std::string("no folder, because HOME is not set")) +
           "; fetch it with platform/linux/fetch-network.sh";
}

bool terminalShowsUnicode() {
    for (const char* name : {"LC_ALL", "LC_CTYPE", "LANG"}) {
        if (auto locale = environment(name)) {
            for (char& c : *locale) {
                c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
            }
            return locale->find("UTF-8") != std::string::npos || locale->find("UTF8") != std::string::npos;
        }
    }
    return false;
}

} // namespace plumbmark::cli
