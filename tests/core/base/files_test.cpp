// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <random>

#include <sys/stat.h>

#include "base/files.h"
#include "base/hash.h"

using namespace plumbmark::base;
namespace fs = std::filesystem;

namespace {

/// Makes the n-th call fail (from then on, or once) with a given errno.
class FailingCalls final : public FileCalls {
  public:
    FailingCalls(int failAt, int error, bool forEver) : failAt_(failAt), error_(error), forEver_(forEver) {}
    int count() const { return count_; }
    bool failed() const { return failed_; }

    int openNew(const fs::path& p) override { return fail() ? -error_ : FileCalls::openNew(p); }
    int openForSync(const fs::path& p) override { return fail() ? -error_ : FileCalls::openForSync(p); }
    std::int64_t write(int fd, std::span<const std::uint8_t> b) override {
        if (fail()) {
            FileCalls::write(fd, b.first(b.size() / 2)); // a torn write, as on a full disk
            return -error_;
        }
        return FileCalls::write(fd, b.first(std::min<std::size_t>(b.size(), 1000))); // short writes are legal
    }
    int sync(int fd) override { return fail() ? -error_ : FileCalls::sync(fd); }
    int close(int fd) override {
        const int done = FileCalls::close(fd); // the descriptor is gone either way
        return fail() ? -error_ : done;
    }
    int rename(const fs::path& a, const fs::path& b) override {
        return fail() ? -error_ : FileCalls::rename(a, b);
    }
    int makeFolder(const fs::path& p) override { return fail() ? -error_ : FileCalls::makeFolder(p); }

  private:
    bool fail() {
        ++count_;
        const bool now = count_ == failAt_ || (forEver_ && count_ > failAt_);
        failed_ = failed_ || now;
        return now;
    }
    int failAt_, error_;
    bool forEver_;
    int count_ = 0;
    bool failed_ = false;
};

std::string contentOf(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

std::size_t filesIn(const fs::path& folder) {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

class Files : public testing::Test {
  protected:
    Files()
        : stage_(*StagingFolder::create(fs::temp_directory_path() / "plumbmark-files-test")),
          dir_(stage_.path()) {}
    StagingFolder stage_;
    fs::path dir_;
};

} // namespace

TEST_F(Files, ReplaceGivesTheNewContentAndNothingElse) {
    ASSERT_TRUE(replaceFile(dir_ / "a.txt", "old"));
    ASSERT_TRUE(replaceFile(dir_ / "a.txt", "new"));
    EXPECT_EQ(contentOf(dir_ / "a.txt"), "new");
    EXPECT_EQ(filesIn(dir_), 1U);
    struct stat info {};
    ASSERT_EQ(::stat((dir_ / "a.txt").c_str(), &info), 0);
    EXPECT_EQ(info.st_mode & 0777U, 0600U);
}

TEST_F(Files, WithoutCommitNothingIsLeft) {
    {
        auto file = AtomicFile::create(dir_ / "a.txt");
        ASSERT_TRUE(file);
        ASSERT_TRUE(file->write("half a sen"));
    }
    EXPECT_EQ(filesIn(dir_), 0U);
}

// Each call in turn fails, once and from then on: the old content or the new, an error whenever it is not
// surely on the disk, never a third state, never a leftover.
TEST_F(Files, AnyFailingCallLeavesTheOldOrTheNewFile) {
    const std::string old(3000, 'o');
    const std::string fresh(5000, 'n');
    for (const bool forEver : {false, true}) {
        for (const int error : {ENOSPC, EIO, EACCES}) {
            int failures = 0;
            for (int n = 1;; ++n) {
                ASSERT_TRUE(replaceFile(dir_ / "a.txt", old));
                FailingCalls calls(n, error, forEver);
                const auto result = replaceFile(dir_ / "a.txt", fresh, calls);
                const std::string now = contentOf(dir_ / "a.txt");
                ASSERT_TRUE(now == old || now == fresh) << "call " << n;
                ASSERT_EQ(filesIn(dir_), 1U) << "call " << n;
                if (!calls.failed()) {
                    ASSERT_TRUE(result);
                    ASSERT_EQ(now, fresh);
                    break;
                }
                ++failures;
                ASSERT_FALSE(result) << "call " << n << " failed and nobody was told";
                EXPECT_FALSE(result.error().sentence.empty());
                if (error == ENOSPC) {
                    EXPECT_EQ(result.error().key, "disk.full");
                }
            }
            EXPECT_GE(failures, 9); // open, 5 writes, sync, close, rename, and three for the folder
        }
    }
}

TEST_F(Files, AFullDeviceIsReportedInPlainWords) {
    if (!fs::exists("/dev/full")) {
        GTEST_SKIP() << "this system has no /dev/full";
    }
    class FullDevice final : public FileCalls {
      public:
        std::int64_t write(int, std::span<const std::uint8_t> bytes) override {
            std::FILE* full = std::fopen("/dev/full", "wb");
            std::setvbuf(full, nullptr, _IONBF, 0);
            errno = 0;
            const auto done = std::fwrite(bytes.data(), 1, bytes.size(), full);
            const int error = errno;
            std::fclose(full);
            return done == bytes.size() ? static_cast<std::int64_t>(done) : -error;
        }
    } calls;
    const auto result = replaceFile(dir_ / "a.txt", "text", calls);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().key, "disk.full");
    EXPECT_EQ(filesIn(dir_), 0U);
}

TEST_F(Files, BadTargetsGetASentence) {
    const auto missing = replaceFile(dir_ / "no" / "a.txt", "x");
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().key, "file.folder_missing");
    EXPECT_EQ(missing.error().kind, ErrorKind::input);
    const auto folder = replaceFile(dir_, "x");
    ASSERT_FALSE(folder);
    EXPECT_EQ(folder.error().kind, ErrorKind::input);
}

TEST_F(Files, CopyTellsTheHashOfWhatItWrote) {
    std::mt19937 random(5);
    std::string content(3'500'000, '\0');
    for (char& c : content) {
        c = static_cast<char>(random());
    }
    ASSERT_TRUE(replaceFile(dir_ / "a", content));
    const auto copied = copyFile(dir_ / "a", dir_ / "b");
    ASSERT_TRUE(copied);
    EXPECT_EQ(copied->size, 3'500'000);
    EXPECT_EQ(copied->sha256, sha256OfText(content));
    EXPECT_EQ(contentOf(dir_ / "b"), content);

    std::atomic<bool> stop{true};
    const auto cancelled = copyFile(dir_ / "a", dir_ / "c", Progress{{}, &stop});
    ASSERT_FALSE(cancelled);
    EXPECT_EQ(cancelled.error().key, "cancelled");
    EXPECT_FALSE(fs::exists(dir_ / "c"));
    EXPECT_FALSE(copyFile(dir_ / "none", dir_ / "d"));
    EXPECT_FALSE(copyFile(dir_, dir_ / "d"));
    EXPECT_EQ(filesIn(dir_), 2U);
}

// Outside check: coreutils' sha256sum (Debian package coreutils) on a file of awkward length.
TEST_F(Files, HashAgreesWithSha256sum) {
    for (const std::size_t length : {0U, 1U, 55U, 56U, 63U, 64U, 65U, 1'048'575U, 1'048'576U, 1'048'577U}) {
        std::string content(length, '\0');
        for (std::size_t i = 0; i < length; ++i) {
            content[i] = static_cast<char>(i * 31 + i / 251);
        }
        const fs::path path = dir_ / "file";
        ASSERT_TRUE(replaceFile(path, content));
        std::FILE* pipe = ::popen(("sha256sum '" + path.string() + "'").c_str(), "r");
        ASSERT_NE(pipe, nullptr);
        char line[65] = {};
        ASSERT_EQ(std::fread(line, 1, 64, pipe), 64U);
        ::pclose(pipe);
        const auto hash = sha256OfFile(path);
        ASSERT_TRUE(hash);
        EXPECT_EQ(hash->sha256, line) << length;
        EXPECT_EQ(hash->size, static_cast<std::int64_t>(length));
    }
}

TEST_F(Files, FoldersAreMadeWithTheirParents) {
    ASSERT_TRUE(makeFolders(dir_ / "a" / "b" / "c"));
    EXPECT_TRUE(fs::is_directory(dir_ / "a" / "b" / "c"));
    ASSERT_TRUE(makeFolders(dir_ / "a" / "b" / "c"));
    ASSERT_TRUE(replaceFile(dir_ / "file", "x"));
    EXPECT_FALSE(makeFolders(dir_ / "file" / "d"));
}
