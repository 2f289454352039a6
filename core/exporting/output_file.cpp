// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// POSIX calls, because the standard library can neither flush a file to the disk nor create it exclusively.
#include "exporting/output_file.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <random>
#include <string>
#include <system_error>
#include <unistd.h>

namespace plumbmark::exporting {
namespace fs = std::filesystem;
namespace {

std::string quoted(const fs::path& path) {
    return "\"" + path.string() + "\"";
}

fs::path folderOf(const fs::path& path) {
    return path.has_parent_path() ? path.parent_path() : fs::path(".");
}

/// Follows a link, so that a rename replaces the file and not the link.
fs::path resolved(const fs::path& path) {
    std::error_code error;
    if (!fs::is_symlink(fs::symlink_status(path, error))) {
        return path;
    }
    const fs::path target = fs::weakly_canonical(path, error);
    return error ? path : target;
}

class Descriptor {
  public:
    explicit Descriptor(int fd) : fd_(fd) {}
    ~Descriptor() { close(); }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    [[nodiscard]] bool valid() const { return fd_ >= 0; }
    [[nodiscard]] int get() const { return fd_; }
    bool close() {
        const int result = fd_ >= 0 ? ::close(fd_) : 0;
        fd_ = -1;
        return result == 0;
    }

  private:
    int fd_;
};

bool writeAll(int fd, std::span<const std::byte> bytes) {
    while (!bytes.empty()) {
        const ssize_t written = ::write(fd, bytes.data(), bytes.size());
        if (written < 0) {
            if (errno == EINTR) {
                continue;
            }
            return false;
        }
        bytes = bytes.subspan(static_cast<std::size_t>(written));
    }
    return true;
}

base::Error writeError(const fs::path& path, int code) {
    return base::failure("output.write",
                         "Writing " + quoted(path) + " failed (" + std::generic_category().message(code) +
                             "); nothing was left there. Free some space or choose another place.");
}

/// A name that nobody else uses, hidden, in the same folder so that the rename stays within one file system.
fs::path besideName(const fs::path& path) {
    std::random_device device;
    const auto number = (static_cast<unsigned long long>(device()) << 32) | device();
    char digits[17];
    for (int i = 0; i < 16; ++i) {
        digits[i] = "0123456789abcdef"[(number >> (4 * i)) & 15];
    }
    digits[16] = 0;
    return folderOf(path) / ("." + path.filename().string().substr(0, 100) + "." + digits + ".part");
}

} // namespace

base::Result<void> checkWritable(const fs::path& wanted) {
    std::error_code error;
    const fs::path path = resolved(wanted);
    if (path.empty()) {
        return base::inputError("output.not_writable",
                                "The name of an output file is empty; give it a name.");
    }
    const fs::file_status status = fs::status(path, error);
    if (fs::is_directory(status)) {
        return base::inputError("output.is_folder",
                                quoted(wanted) + " is a folder; give the name of a file to write.");
    }
    if (fs::exists(status) && !fs::is_regular_file(status)) {
        if (::access(path.c_str(), W_OK) != 0) {
            return base::inputError("output.not_writable",
                                    quoted(wanted) + " can't be written to; choose another name.");
        }
        return {};
    }
    const fs::path folder = folderOf(path);
    const fs::file_status folderStatus = fs::status(folder, error);
    if (!fs::is_directory(folderStatus)) {
        return base::inputError("output.no_folder",
                                "The folder " + quoted(folder) +
                                    " does not exist; make it first or choose another place.");
    }
    // A trial file tells more than permission bits do: read-only disks, quotas, names that are too long.
    const fs::path trial = besideName(path);
    Descriptor fd(::open(trial.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666));
    if (!fd.valid()) {
        const int code = errno;
        return base::inputError("output.not_writable",
                                "Nothing can be written to the folder " + quoted(folder) + " (" +
                                    std::generic_category().message(code) + "); choose another place.");
    }
    ::unlink(trial.c_str());
    if (path.filename().string().size() > 255) {
        return base::inputError("output.not_writable",
                                "The name of the output file is too long; choose a shorter one.");
    }
    return {};
}

base::Result<void> writeWhole(const fs::path& wanted, std::span<const std::byte> bytes) {
    if (auto possible = checkWritable(wanted); !possible) {
        return possible;
    }
    const fs::path path = resolved(wanted);
    std::error_code error;
    const fs::file_status status = fs::status(path, error);
    if (fs::exists(status) && !fs::is_regular_file(status)) {
        Descriptor fd(::open(path.c_str(), O_WRONLY | O_CLOEXEC));
        if (!fd.valid() || !writeAll(fd.get(), bytes)) {
            return writeError(wanted, errno);
        }
        return {};
    }
    const fs::path part = besideName(path);
    Descriptor fd(::open(part.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666));
    if (!fd.valid()) {
        return writeError(wanted, errno);
    }
    if (!writeAll(fd.get(), bytes) || ::fsync(fd.get()) != 0 || !fd.close() ||
        ::rename(part.c_str(), path.c_str()) != 0) {
        const int code = errno;
        ::unlink(part.c_str());
        return writeError(wanted, code);
    }
    // The new name itself must survive a power cut; a file system that can't do that is no reason to fail.
    const Descriptor folder(::open(folderOf(path).c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (folder.valid()) {
        ::fsync(folder.get());
    }
    return {};
}

base::Result<void> writeWhole(const fs::path& path, std::string_view bytes) {
    return writeWhole(path, std::as_bytes(std::span(bytes.data(), bytes.size())));
}

} // namespace plumbmark::exporting
