// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "base/files.h"

#include <algorithm>
#include <cerrno>
#include <memory>
#include <utility>
#include <vector>

#include <dirent.h>
#include <fcntl.h>
#include <ftw.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/guarded.h"
#include "base/hash.h"

namespace plumbmark::base {
namespace {

namespace fs = std::filesystem;

Error writeError(int negativeErrno, const fs::path& path) {
    const std::string name = "\"" + path.filename().string() + "\"";
    switch (-negativeErrno) {
    case ENOSPC:
    case EDQUOT:
        return failure("disk.full",
                       "The disk is full, so " + name + " was not saved; free some space and save again.");
    case ENOENT:
    case ENOTDIR:
        return inputError("file.folder_missing",
                          "The folder for " + name + " does not exist; choose another folder.");
    case EACCES:
    case EPERM:
    case EROFS:
        return failure("file.unwritable",
                       name + " cannot be written there; choose a folder you may write to.");
    default:
        return failure("file.unwritable", "Saving " + name + " failed; check the disk and try again.");
    }
}

fs::path folderOf(const fs::path& path) {
    const fs::path parent = path.parent_path();
    return parent.empty() ? fs::path(".") : parent;
}

Result<void> syncPath(const fs::path& path, FileCalls& calls) {
    const int fd = calls.openForSync(path);
    if (fd < 0) {
        return writeError(fd, path);
    }
    const int synced = calls.sync(fd);
    const int closed = calls.close(fd);
    if (synced < 0 || closed < 0) {
        return writeError(synced < 0 ? synced : closed, path);
    }
    return {};
}

} // namespace

int FileCalls::openNew(const fs::path& path) {
    const int fd = ::open(path.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC | O_NOFOLLOW, 0600);
    return fd < 0 ? -errno : fd;
}
int FileCalls::openForSync(const fs::path& path) {
    const int fd = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    return fd < 0 ? -errno : fd;
}
std::int64_t FileCalls::write(int fd, std::span<const std::uint8_t> bytes) {
    const ssize_t done = ::write(fd, bytes.data(), bytes.size());
    return done < 0 ? -errno : done;
}
int FileCalls::sync(int fd) {
    return ::fsync(fd) < 0 ? -errno : 0;
}
int FileCalls::close(int fd) {
    return ::close(fd) < 0 ? -errno : 0;
}
int FileCalls::rename(const fs::path& from, const fs::path& to) {
    return ::rename(from.c_str(), to.c_str()) < 0 ? -errno : 0;
}
int FileCalls::remove(const fs::path& path) {
    return ::unlink(path.c_str()) < 0 ? -errno : 0;
}
int FileCalls::makeFolder(const fs::path& path) {
    if (::mkdir(path.c_str(), 0700) == 0) {
        return 0;
    }
    const int why = errno;
    std::error_code ignored;
    return why == EEXIST && fs::is_directory(path, ignored) ? 0 : -why;
}

FileCalls& systemFileCalls() {
    static FileCalls calls;
    return calls;
}

Result<AtomicFile> AtomicFile::create(fs::path target, FileCalls& calls, IdSource& ids) {
    std::error_code ignored;
    if (target.filename().empty() || fs::is_directory(target, ignored)) {
        return inputError("file.is_folder",
                          "\"" + target.string() + "\" is a folder; give the name of a file to write.");
    }
    fs::path temporary = folderOf(target) / (".plumbmark-" + ids.next().hex() + ".part");
    const int fd = calls.openNew(temporary);
    if (fd < 0) {
        return writeError(fd, target);
    }
    // From here on nothing may be left behind: moving takes no memory.
    return AtomicFile(std::move(target), std::move(temporary), fd, calls);
}

AtomicFile::AtomicFile(AtomicFile&& other) noexcept
    : target_(std::move(other.target_)), temporary_(std::exchange(other.temporary_, {})),
      fd_(std::exchange(other.fd_, -1)), calls_(other.calls_) {}

AtomicFile::~AtomicFile() {
    if (fd_ >= 0) {
        calls_->close(fd_);
    }
    if (!temporary_.empty()) {
        calls_->remove(temporary_);
    }
}

Result<void> AtomicFile::write(std::span<const std::uint8_t> bytes) {
    while (!bytes.empty()) {
        const std::int64_t done = calls_->write(fd_, bytes);
        if (done == -EINTR) {
            continue;
        }
        if (done <= 0) {
            return writeError(done == 0 ? -EIO : static_cast<int>(done), target_);
        }
        bytes = bytes.subspan(static_cast<std::size_t>(done));
    }
    return {};
}

Result<void> AtomicFile::write(std::string_view text) {
    return write(std::span(reinterpret_cast<const std::uint8_t*>(text.data()), text.size()));
}

Result<void> AtomicFile::commit() {
    const int synced = calls_->sync(fd_);
    const int closed = calls_->close(std::exchange(fd_, -1));
    if (synced < 0 || closed < 0) {
        return writeError(synced < 0 ? synced : closed, target_);
    }
    if (const int renamed = calls_->rename(temporary_, target_); renamed < 0) {
        return writeError(renamed, target_);
    }
    temporary_.clear();
    return syncPath(folderOf(target_), *calls_);
}

Result<void> replaceFile(const fs::path& target, std::string_view content, FileCalls& calls) {
    auto file = AtomicFile::create(target, calls);
    if (!file) {
        return file.error();
    }
    if (auto written = file->write(content); !written) {
        return written;
    }
    return file->commit();
}

Result<CopiedFile> copyFile(const fs::path& from, const fs::path& to, const Progress& progress,
                            FileCalls& calls) {
    const int in = ::open(from.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
    if (in < 0) {
        return inputError("file.unreadable",
                          "The file \"" + from.filename().string() +
                              "\" cannot be read; check that it is there and may be read.");
    }
    struct Closer {
        int fd;
        ~Closer() { ::close(fd); }
    } const closer{in};
    struct stat info {};
    if (::fstat(in, &info) != 0 || !S_ISREG(info.st_mode)) {
        return inputError("file.unreadable",
                          "\"" + from.filename().string() + "\" is not a file; choose a file.");
    }
    auto out = AtomicFile::create(to, calls);
    if (!out) {
        return out.error();
    }
    CopiedFile result;
    Sha256 hash;
    std::vector<std::uint8_t> buffer(1 << 20);
    for (;;) {
        const ssize_t got = ::read(in, buffer.data(), buffer.size());
        if (got < 0 && errno == EINTR) {
            continue;
        }
        if (got < 0) {
            return failure("file.unreadable", "Reading \"" + from.filename().string() +
                                                  "\" failed; check the disk and try again.");
        }
        if (got == 0) {
            break;
        }
        const std::span<const std::uint8_t> piece(buffer.data(), static_cast<std::size_t>(got));
        hash.add(piece);
        result.size += got;
        if (auto written = out->write(piece); !written) {
            return written.error();
        }
        if (progress.cancelled()) {
            return failure("cancelled", "Stopped on request.");
        }
        if (info.st_size > 0) {
            progress.tell(std::min(1.0, static_cast<double>(result.size) / static_cast<double>(info.st_size)),
                          "Copying the file");
        }
    }
    if (auto done = out->commit(); !done) {
        return done.error();
    }
    result.sha256 = hash.finishHex();
    return result;
}

Result<void> moveIntoPlace(const fs::path& from, const fs::path& to, FileCalls& calls) {
    if (auto synced = syncPath(from, calls); !synced) {
        return synced;
    }
    if (const int renamed = calls.rename(from, to); renamed < 0) {
        return writeError(renamed, to);
    }
    return syncPath(folderOf(to), calls);
}

Result<void> makeFolders(const fs::path& folder, FileCalls& calls) {
    std::error_code ignored;
    if (folder.empty() || fs::is_directory(folder, ignored)) {
        return {};
    }
    if (folder.has_parent_path() && folder.parent_path() != folder) {
        if (auto parent = makeFolders(folder.parent_path(), calls); !parent) {
            return parent;
        }
    }
    if (const int made = calls.makeFolder(folder); made < 0) {
        return writeError(made, folder);
    }
    return syncPath(folderOf(folder), calls);
}

Result<std::vector<fs::path>> listFolder(const fs::path& folder) {
    const std::unique_ptr<DIR, int (*)(DIR*)> open(::opendir(folder.c_str()), ::closedir);
    std::vector<fs::path> entries;
    if (open == nullptr && errno == ENOENT) {
        return entries;
    }
    errno = open == nullptr ? errno : 0;
    if (open != nullptr) {
        while (const dirent* entry = ::readdir(open.get())) {
            const std::string_view name = entry->d_name;
            if (name != "." && name != "..") {
                entries.push_back(folder / name);
            }
            errno = 0;
        }
    }
    if (errno == ENOMEM) {
        return outOfMemory();
    }
    if (errno != 0) {
        return failure("file.folder_unreadable", "The folder \"" + folder.filename().string() +
                                                     "\" cannot be read; check the disk and try again.");
    }
    std::sort(entries.begin(), entries.end());
    return entries;
}

void removeAll(const fs::path& path) noexcept {
    const auto remove = [](const char* name, const struct stat*, int kind, FTW*) {
        (void)(kind == FTW_DP || kind == FTW_D || kind == FTW_DNR ? ::rmdir(name) : ::unlink(name));
        return 0;
    };
    ::nftw(path.c_str(), remove, 16, FTW_DEPTH | FTW_PHYS);
}

Result<StagingFolder> StagingFolder::create(const fs::path& parent, FileCalls& calls, IdSource& ids) {
    if (auto made = makeFolders(parent, calls); !made) {
        return made.error();
    }
    fs::path path = parent / ids.next().hex();
    if (const int made = calls.makeFolder(path); made < 0) {
        return writeError(made, path);
    }
    return StagingFolder(std::move(path));
}

StagingFolder::StagingFolder(StagingFolder&& other) noexcept : path_(std::exchange(other.path_, {})) {}

StagingFolder::~StagingFolder() {
    if (!path_.empty()) {
        removeAll(path_);
    }
}

} // namespace plumbmark::base
