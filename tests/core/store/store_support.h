// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <memory>
#include <string>

#include "base/files.h"
#include "base/hash.h"
#include "store/library.h"

namespace plumbmark::testing_support {

namespace fs = std::filesystem;

inline base::StagingFolder tempFolder() {
    auto stage = base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test");
    return std::move(*stage);
}

inline std::string contentOf(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

inline void put(const fs::path& path, const std::string& content) {
    fs::create_directories(path.parent_path());
    std::ofstream(path, std::ios::binary) << content;
}

/// Output of a shell command, and its exit code in `code`.
inline std::string run(const std::string& command, int* code = nullptr) {
    std::FILE* pipe = ::popen((command + " 2>&1").c_str(), "r");
    std::string text;
    char buffer[4096];
    for (std::size_t got = 0; (got = std::fread(buffer, 1, sizeof buffer, pipe)) > 0;) {
        text.append(buffer, got);
    }
    const int status = ::pclose(pipe);
    if (code != nullptr) {
        *code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    return text;
}

inline std::unique_ptr<store::Library> openLibrary(const fs::path& folder) {
    store::LibraryOptions options;
    options.folder = folder;
    auto library = store::Library::open(options);
    if (!library) {
        ADD_FAILURE() << library.error().key << ": " << library.error().sentence;
        return nullptr;
    }
    return std::move(*library);
}

/// A player with one lesson, one shot and one clip of the given film.
struct Made {
    base::Id player, lesson, shot, clip;
};
inline Made fill(store::Library& library, const std::string& film, const std::string& name = "Kim") {
    const fs::path file = library.folder() / "film-to-bring";
    put(file, film);
    const auto added = library.addFilm(file);
    EXPECT_TRUE(added);
    fs::remove(file);
    records::Clip clip;
    clip.sha256 = added->sha256;
    clip.bytes = added->bytes;
    clip.width = 1920;
    clip.height = 1080;
    clip.frames = 240;
    clip.durationSeconds = 2;
    clip.playbackFps = 120;
    const auto player =
        library.make(records::kind::player, {}, bodyOf(records::Player{name, marks::Hand::right, 1.8, ""}));
    const auto lesson =
        library.make(records::kind::lesson, {player.id},
                     bodyOf(records::Lesson{"First lesson", "2026-11-25", "less slice", "", ""}));
    const auto shot = library.make(records::kind::shot, {player.id, lesson.id}, bodyOf(records::Shot{}));
    const auto clipFact = library.make(records::kind::clip, {player.id, lesson.id, shot.id}, bodyOf(clip));
    records::Findings findings;
    findings.measurements = {{"spine_tilt", marks::MomentId::address,
                              base::Measured{4.5, 1.5, base::Unit::degrees, base::Origin::network}, "", 1}};
    const auto found =
        library.make(records::kind::findings, {player.id, lesson.id, shot.id, clipFact.id}, bodyOf(findings));
    const auto stored = library.add({player, lesson, shot, clipFact, found});
    EXPECT_TRUE(stored) << stored.error().sentence;
    return {player.id, lesson.id, shot.id, clipFact.id};
}

inline std::vector<records::Record> recordsOf(const std::vector<std::string>& lines) {
    std::vector<records::Record> records;
    for (const std::string& line : lines) {
        auto record = records::recordFromText(line);
        EXPECT_TRUE(record) << line;
        records.push_back(std::move(*record));
    }
    return records;
}

} // namespace plumbmark::testing_support
