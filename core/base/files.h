// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/ids.h"
#include "base/progress.h"
#include "base/result.h"

namespace plumbmark::base {

/// The few system calls through which everything durable is written, so that a test can make any one of them
/// fail. Each returns 0 / the call's own value, or a negative errno.
class FileCalls {
  public:
    virtual ~FileCalls() = default;
    virtual int openNew(const std::filesystem::path& path);     ///< O_CREAT | O_EXCL | O_WRONLY, mode 0600
    virtual int openForSync(const std::filesystem::path& path); ///< O_RDONLY, file or folder
    virtual std::int64_t write(int fd, std::span<const std::uint8_t> bytes);
    virtual int sync(int fd);
    virtual int close(int fd);
    virtual int rename(const std::filesystem::path& from, const std::filesystem::path& to);
    virtual int remove(const std::filesystem::path& path);
    virtual int makeFolder(const std::filesystem::path& path); ///< mode 0700; an existing folder is fine
};
FileCalls& systemFileCalls();

/// A file that appears under its name only when commit() succeeded: a temporary file of mode 0600 in the same
/// folder, then write, sync, close, rename, sync of the folder. Without commit() nothing is left behind and
/// an older file of that name is untouched. A failed sync is a failed save; it is never tried again, because
/// the system may have dropped the unwritten pages. Errors (failure): "disk.full", "file.unwritable";
/// (input): "file.folder_missing".
class AtomicFile {
  public:
    static Result<AtomicFile> create(std::filesystem::path target, FileCalls& calls = systemFileCalls(),
                                     IdSource& ids = randomIds());
    AtomicFile(AtomicFile&& other) noexcept;
    AtomicFile& operator=(AtomicFile&&) = delete;
    ~AtomicFile();

    Result<void> write(std::span<const std::uint8_t> bytes);
    Result<void> write(std::string_view text);
    Result<void> commit();

  private:
    AtomicFile(std::filesystem::path target, std::filesystem::path temporary, int fd, FileCalls& calls)
        : target_(std::move(target)), temporary_(std::move(temporary)), fd_(fd), calls_(&calls) {}
    std::filesystem::path target_, temporary_;
    int fd_ = -1;
    FileCalls* calls_;
};

Result<void> replaceFile(const std::filesystem::path& target, std::string_view content,
                         FileCalls& calls = systemFileCalls());

/// Copies `from` to `to` the same careful way and tells the SHA-256 of what was really written.
struct CopiedFile {
    std::string sha256;
    std::int64_t size = 0;
};
Result<CopiedFile> copyFile(const std::filesystem::path& from, const std::filesystem::path& to,
                            const Progress& progress = {}, FileCalls& calls = systemFileCalls());

/// Moves a finished file (same file system) to its place: sync, rename, sync of the folder.
Result<void> moveIntoPlace(const std::filesystem::path& from, const std::filesystem::path& to,
                           FileCalls& calls = systemFileCalls());

/// Makes the folder and its parents with mode 0700 where missing.
Result<void> makeFolders(const std::filesystem::path& folder, FileCalls& calls = systemFileCalls());

/// What a folder holds, sorted by name, without what lies in its folders. One that is not there holds
/// nothing. (The standard's iterators end the program when memory gives out inside them, and an error in the
/// middle is easily overlooked: half a list would be half a backup.) Errors (failure):
/// "file.folder_unreadable".
Result<std::vector<std::filesystem::path>> listFolder(const std::filesystem::path& folder);

/// Removes a file, or a folder with everything in it; what cannot be removed stays. Links are not followed.
void removeAll(const std::filesystem::path& path) noexcept;

/// A private folder that goes away with everything in it when this object does.
class StagingFolder {
  public:
    static Result<StagingFolder> create(const std::filesystem::path& parent,
                                        FileCalls& calls = systemFileCalls(), IdSource& ids = randomIds());
    StagingFolder(StagingFolder&& other) noexcept;
    StagingFolder& operator=(StagingFolder&&) = delete;
    ~StagingFolder();
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

  private:
    explicit StagingFolder(std::filesystem::path path) : path_(std::move(path)) {}
    std::filesystem::path path_;
};

} // namespace plumbmark::base
