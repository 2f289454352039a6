// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/byte_source.h"

#include <algorithm>
#include <cstring>
#include <fstream>
#include <string>
#include <system_error>
#include <vector>

namespace plumbmark::video {
namespace {

std::string nameOf(const std::filesystem::path& path) {
    return "\"" + path.string() + "\"";
}

base::Error unreadable(const std::filesystem::path& path) {
    return base::inputError("clip.unreadable",
                            "The file " + nameOf(path) +
                                " can't be read; check its access rights or copy it again.");
}

class FileSource final : public ByteSource {
  public:
    FileSource(std::filesystem::path path, std::ifstream stream, std::int64_t size)
        : path_(std::move(path)), stream_(std::move(stream)), size_(size) {}

    base::Result<std::size_t> read(std::span<std::uint8_t> into) override {
        stream_.read(reinterpret_cast<char*>(into.data()), static_cast<std::streamsize>(into.size()));
        const auto got = static_cast<std::size_t>(stream_.gcount());
        if (stream_.bad()) {
            return unreadable(path_);
        }
        stream_.clear(); // the end of the file is an ordinary answer
        return got;
    }
    base::Result<void> seek(std::int64_t position) override {
        stream_.seekg(position);
        if (!stream_) {
            stream_.clear();
            return unreadable(path_);
        }
        return {};
    }
    [[nodiscard]] std::int64_t size() const override { return size_; }

  private:
    std::filesystem::path path_;
    std::ifstream stream_;
    std::int64_t size_;
};

class MemorySource final : public ByteSource {
  public:
    explicit MemorySource(std::span<const std::uint8_t> bytes) : bytes_(bytes.begin(), bytes.end()) {}

    base::Result<std::size_t> read(std::span<std::uint8_t> into) override {
        const std::size_t count = std::min(into.size(), bytes_.size() - place_);
        if (count > 0) {
            std::memcpy(into.data(), bytes_.data() + place_, count);
        }
        place_ += count;
        return count;
    }
    base::Result<void> seek(std::int64_t position) override {
        if (position < 0) {
            return base::inputError("clip.unreadable", "The clip can't be read; copy it again.");
        }
        place_ = std::min(static_cast<std::size_t>(position), bytes_.size());
        return {};
    }
    [[nodiscard]] std::int64_t size() const override { return static_cast<std::int64_t>(bytes_.size()); }

  private:
    std::vector<std::uint8_t> bytes_;
    std::size_t place_ = 0;
};

} // namespace

base::Result<std::unique_ptr<ByteSource>> openFile(const std::filesystem::path& path) {
    std::error_code failed;
    const auto status = std::filesystem::status(path, failed);
    if (status.type() == std::filesystem::file_type::not_found) {
        return base::inputError("clip.missing",
                                "There is no file " + nameOf(path) + "; check the name and the folder.");
    }
    if (std::filesystem::is_directory(status)) {
        return base::inputError("clip.directory", nameOf(path) + " is a folder; choose a video file in it.");
    }
    if (failed || !std::filesystem::is_regular_file(status)) {
        return unreadable(path);
    }
    const auto size = std::filesystem::file_size(path, failed);
    std::ifstream stream(path, std::ios::binary);
    if (failed || !stream) {
        return unreadable(path);
    }
    if (size == 0) {
        return base::inputError("clip.empty",
                                "The file " + nameOf(path) + " is empty; copy it again from the camera.");
    }
    return std::unique_ptr<ByteSource>(
        std::make_unique<FileSource>(path, std::move(stream), static_cast<std::int64_t>(size)));
}

std::unique_ptr<ByteSource> fromBytes(std::span<const std::uint8_t> bytes) {
    return std::make_unique<MemorySource>(bytes);
}

} // namespace plumbmark::video
