// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "base/clock.h"
#include "base/files.h"
#include "base/progress.h"
#include "base/result.h"

/// The file in which lessons travel: a plain ZIP that any unzip tool opens (docs/lesson-file.md).
namespace plumbmark::lessonfile {

class DeviceKey;

inline constexpr std::string_view kExtension = ".plumbmark";
inline constexpr int kFormatVersion = 1; ///< what this program writes
inline constexpr int kReadableFrom = 1;  ///< oldest program version of the format that can read what we write

struct Limits {
    std::int64_t mostEntries = 2000;
    std::int64_t mostManifestBytes = 4LL << 20;
    std::int64_t mostRecordBytes = 32LL << 20;    ///< all records together
    std::int64_t mostFileBytes = 4'294'967'295LL; ///< plain ZIP, no 64-bit extension: every tool reads it
    std::int64_t keepFreeBytes = 1LL << 30;       ///< free disk space that an import leaves alone
};

struct Film {
    std::string sha256;
    std::filesystem::path file;
};

/// One file of the archive as its manifest lists it.
struct Part {
    std::string path;
    std::string role; ///< "records", "film", "sheet", "page", "signature"; others are kept and passed on
    std::int64_t size = 0;
    std::string sha256;
};
/// A part of a role this version does not know.
struct Carried {
    Part part;
    std::filesystem::path file;
};

struct Contents {
    std::string title;                ///< for people
    std::vector<std::string> records; ///< canonical lines, sorted
    std::vector<Film> films;
    std::optional<std::filesystem::path> sheet; ///< key-position sheet, PNG
    std::vector<Carried> carried;               ///< passed on as they came
    std::string page; ///< the lesson as one HTML page for people without the program; empty: none
};

struct Summary {
    int version = 0, readableFrom = 0;
    std::string title, created; ///< ISO 8601
    std::string madeBy;         ///< program and version
    std::vector<Part> parts;    ///< in the order of the archive
    std::int64_t bytes = 0;     ///< whole file
    std::string signedBy; ///< public key of the device that signed, the signature fits; empty: not signed
    int records = 0;
};

struct WriteOptions {
    const base::Clock* clock = &base::systemClock();
    base::FileCalls* calls = &base::systemFileCalls();
    std::string madeBy = "plumbmark";
    const DeviceKey* key = nullptr; ///< signs the file
};

/// Writes the file; it appears under its name only when whole and on the disk.
/// Errors (input): "lessonfile.too_large", "file.missing", "file.folder_missing"; (failure): "disk.full",
/// "film.changed" (a film no longer has the bytes its name says), "cancelled".
base::Result<Summary> write(const std::filesystem::path& target, const Contents& contents,
                            const WriteOptions& options = {}, const base::Progress& progress = {});

/// Reads every byte and checks everything; changes nothing. Errors (input): "lessonfile.missing",
/// "lessonfile.empty", "lessonfile.not_ours", "lessonfile.truncated", "lessonfile.damaged" (the sentence
/// names the part), "lessonfile.unsafe" (tricks: foreign paths, doubles, compression, encryption, sizes
/// beyond the limits), "lessonfile.newer", "cancelled".
base::Result<Summary> verify(const std::filesystem::path& file, const Limits& limits = {},
                             const base::Progress& progress = {});

/// As verify, and puts films into `staging` under their SHA-256, never under a name from the archive. Nothing
/// outside `staging` is touched; on an error the staging folder holds leftovers to be thrown away.
struct Staged {
    Summary summary;
    std::vector<std::string> records;
    std::vector<Film> films;
    std::optional<std::filesystem::path> sheet;
    std::vector<Carried>
        carried; ///< parts of roles this version does not know, in staging under their SHA-256
};
base::Result<Staged> readInto(const std::filesystem::path& file, const std::filesystem::path& staging,
                              const Limits& limits = {}, const base::Progress& progress = {},
                              base::FileCalls& calls = base::systemFileCalls());

} // namespace plumbmark::lessonfile
