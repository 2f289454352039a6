// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cerrno>
#include <cstdint>
#include <filesystem>
#include <span>
#include <string>
#include <string_view>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/result.h"

namespace plumbmark::lessonfile::detail {

/// An ordinary file, read only.
class Input {
  public:
    static base::Result<Input> open(const std::filesystem::path& path, std::string_view missing,
                                    std::string_view what) {
        const std::string name = "\"" + path.filename().string() + "\"";
        const int fd = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
        if (fd < 0) {
            return base::inputError(std::string(missing),
                                    errno == ENOENT
                                        ? "There is no file " + name + "; check the name."
                                        : "The file " + name + " cannot be read; check its permissions.");
        }
        Input input(fd);
        struct stat info {};
        if (::fstat(fd, &info) != 0 || !S_ISREG(info.st_mode)) {
            return base::inputError(std::string(missing),
                                    name + " is not a file; choose " + std::string(what) + ".");
        }
        input.size_ = info.st_size;
        return input;
    }
    Input(Input&& other) noexcept : fd_(std::exchange(other.fd_, -1)), size_(other.size_) {}
    Input& operator=(Input&&) = delete;
    ~Input() {
        if (fd_ >= 0) {
            ::close(fd_);
        }
    }
    [[nodiscard]] std::int64_t size() const { return size_; }
    [[nodiscard]] bool readAt(std::int64_t offset, std::span<std::uint8_t> into) const {
        while (!into.empty()) {
            const ssize_t got = ::pread(fd_, into.data(), into.size(), offset);
            if (got < 0 && errno == EINTR) {
                continue;
            }
            if (got <= 0) {
                return false;
            }
            offset += got;
            into = into.subspan(static_cast<std::size_t>(got));
        }
        return true;
    }

  private:
    explicit Input(int fd) : fd_(fd) {}
    int fd_;
    std::int64_t size_ = 0;
};

} // namespace plumbmark::lessonfile::detail
