// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/output_file.h"

#include <fstream>
#include <gtest/gtest.h>
#include <sstream>
#include <unistd.h>

using namespace plumbmark;
namespace fs = std::filesystem;

namespace {

class OutputFile : public testing::Test {
  protected:
    void SetUp() override {
        std::string name = (fs::temp_directory_path() / "plumbmark-test-XXXXXX").string();
        ASSERT_NE(mkdtemp(name.data()), nullptr);
        folder = name;
    }
    void TearDown() override { fs::remove_all(folder); }
    std::string content(const fs::path& path) {
        std::ostringstream text;
        text << std::ifstream(path).rdbuf();
        return text.str();
    }
    std::ptrdiff_t entries() {
        return std::distance(fs::directory_iterator(folder), fs::directory_iterator());
    }
    fs::path folder;
};

} // namespace

TEST_F(OutputFile, IsWholeAndAlone) {
    const fs::path file = folder / "a.json";
    ASSERT_TRUE(exporting::writeWhole(file, std::string_view("first")));
    ASSERT_TRUE(exporting::writeWhole(file, std::string_view("second, and longer")));
    EXPECT_EQ(content(file), "second, and longer");
    EXPECT_EQ(entries(), 1);
}

TEST_F(OutputFile, LookingLeavesNothingBehind) {
    EXPECT_TRUE(exporting::checkWritable(folder / "a.json"));
    EXPECT_EQ(entries(), 0);
}

TEST_F(OutputFile, WhatCantBeWrittenIsFoundBeforehand) {
    EXPECT_EQ(exporting::checkWritable(folder / "missing" / "a.json").error().key, "output.no_folder");
    EXPECT_EQ(exporting::checkWritable(folder).error().key, "output.is_folder");
    EXPECT_EQ(exporting::checkWritable("").error().key, "output.no_name");
    EXPECT_EQ(exporting::checkWritable(folder / std::string(300, 'a')).error().key, "output.not_writable");
    std::ofstream(folder / "file") << "x";
    EXPECT_EQ(exporting::checkWritable(folder / "file" / "a.json").error().key, "output.no_folder");
    EXPECT_EQ(exporting::checkWritable("/proc/a.json").error().key, "output.not_writable")
        << "holds for root too";
}

TEST_F(OutputFile, AFullDiskLeavesTheOldFile) {
    // /dev/full: every write fails with "no space left", also for root.
    auto result = exporting::writeWhole("/dev/full", std::string_view("x"));
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().key, "output.write");
    EXPECT_EQ(result.error().kind, base::ErrorKind::failure);
    EXPECT_TRUE(fs::is_character_file("/dev/full"));
}

TEST_F(OutputFile, HasThePermissionsOfAnyNewFileOrOfTheOldOne) {
    const fs::path usual = folder / "usual";
    std::ofstream(usual) << "x";
    ASSERT_TRUE(exporting::writeWhole(folder / "ours", std::string_view("x")));
    EXPECT_EQ(fs::status(folder / "ours").permissions(), fs::status(usual).permissions());
    fs::permissions(usual, fs::perms::owner_read | fs::perms::owner_write);
    ASSERT_TRUE(exporting::writeWhole(usual, std::string_view("y")));
    EXPECT_EQ(fs::status(usual).permissions(), fs::perms::owner_read | fs::perms::owner_write);
}

TEST_F(OutputFile, LinksAreFollowedAndDevicesStayDevices) {
    std::ofstream(folder / "real") << "old";
    fs::create_symlink(folder / "real", folder / "link");
    ASSERT_TRUE(exporting::writeWhole(folder / "link", std::string_view("new")));
    EXPECT_TRUE(fs::is_symlink(folder / "link"));
    EXPECT_EQ(content(folder / "real"), "new");
    ASSERT_TRUE(exporting::writeWhole("/dev/null", std::string_view("gone")));
    EXPECT_TRUE(fs::is_character_file("/dev/null"));
}
