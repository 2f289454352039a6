// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "lessonfile/seal.h"

#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <set>

#include "base/files.h"
#include "lessonfile/lessonfile.h"
#include "lessonfile/signature.h"

using namespace plumbmark;
namespace fs = std::filesystem;

namespace {

std::string contentOf(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}
void put(const fs::path& path, const std::string& content) {
    std::ofstream(path, std::ios::binary) << content;
}

class Seal : public ::testing::Test {
  protected:
    std::string keyOf(const std::string& content, const std::string& passphrase = "six words are better") {
        put(dir_ / "changed", content);
        fs::remove(dir_ / "opened");
        const auto opened = lessonfile::unseal(dir_ / "changed", dir_ / "opened", passphrase);
        EXPECT_EQ(opened.ok(), fs::exists(dir_ / "opened")) << "what does not fit must leave nothing";
        return opened ? "" : opened.error().key;
    }
    base::StagingFolder stage_ = *base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test");
    fs::path dir_ = stage_.path();
    // The weakest the library takes: what is tested here is the stream, and sanitizers make memory slow.
    lessonfile::SealStrength quick_{1 << 16, 1};
};

} // namespace

TEST_F(Seal, OpensWithItsPassphraseAndWithNoOther) {
    for (const std::size_t size :
         {std::size_t{0}, std::size_t{1}, std::size_t{65536}, std::size_t{65537}, std::size_t{200000}}) {
        std::string plain(size, 'x');
        for (std::size_t i = 0; i < size; i += 7) {
            plain[i] = static_cast<char>(i);
        }
        put(dir_ / "plain", plain);
        ASSERT_TRUE(lessonfile::seal(dir_ / "plain", dir_ / "sealed", "six words are better", quick_));
        EXPECT_TRUE(lessonfile::isSealed(dir_ / "sealed"));
        EXPECT_FALSE(lessonfile::isSealed(dir_ / "plain"));
        const std::string sealed = contentOf(dir_ / "sealed");
        EXPECT_EQ(keyOf(sealed), "");
        EXPECT_EQ(contentOf(dir_ / "opened"), plain);
        EXPECT_EQ(keyOf(sealed, "six words are Better"), "seal.wrong");
        if (size > 1000) {
            EXPECT_EQ(sealed.find(plain.substr(100, 40)), std::string::npos);
        }
    }
    EXPECT_EQ(lessonfile::seal(dir_ / "plain", dir_ / "s2", "short").error().key, "seal.passphrase_short");
    EXPECT_FALSE(fs::exists(dir_ / "s2"));
}

TEST_F(Seal, FlippedBitsAndCutsAreFound) {
    put(dir_ / "plain", std::string(300, 'a') + std::string(300, 'b'));
    ASSERT_TRUE(lessonfile::seal(dir_ / "plain", dir_ / "sealed", "six words are better", quick_));
    const std::string good = contentOf(dir_ / "sealed");
    for (std::size_t i = 0; i < good.size(); i += 2) {
        // Digits of the memory size are left out: a flip there is refused too, but may cost a gigabyte first.
        const std::size_t memory = good.find("\"memory\":");
        if (i >= memory && i < memory + 20) {
            continue;
        }
        std::string bad = good;
        bad[i] = static_cast<char>(bad[i] ^ (1 << (i % 8)));
        EXPECT_NE(keyOf(bad), "") << i;
    }
    for (std::size_t size = 0; size < good.size(); size += 13) {
        EXPECT_NE(keyOf(good.substr(0, size)), "") << size;
    }
    EXPECT_NE(keyOf(good + "x"), "");
}

TEST_F(Seal, ChunksCannotBeMovedDoubledOrLeftOut) {
    put(dir_ / "plain", std::string(65536 * 3, 'c'));
    ASSERT_TRUE(lessonfile::seal(dir_ / "plain", dir_ / "sealed", "six words are better", quick_));
    const std::string good = contentOf(dir_ / "sealed");
    const std::size_t head = good.find('\n') + 1;
    const std::size_t chunk = 65536 + 17; // libsodium 1.0.18: crypto_secretstream_xchacha20poly1305_ABYTES
    ASSERT_EQ(good.size(), head + 3 * chunk);
    const auto piece = [&](std::size_t i) { return good.substr(head + i * chunk, chunk); };
    const std::string header = good.substr(0, head);
    EXPECT_EQ(keyOf(header + piece(0) + piece(1) + piece(2)), "");
    EXPECT_EQ(keyOf(header + piece(1) + piece(0) + piece(2)), "seal.wrong");
    EXPECT_EQ(keyOf(header + piece(0) + piece(2) + piece(1)), "seal.damaged");
    EXPECT_EQ(keyOf(header + piece(0) + piece(0) + piece(1) + piece(2)), "seal.damaged");
    EXPECT_EQ(keyOf(header + piece(0) + piece(2)), "seal.damaged");
    EXPECT_EQ(keyOf(header + piece(0) + piece(1)), "seal.truncated");
    // A header that asks for more than a device has is refused before anything is tried.
    std::string greedy = header;
    greedy.replace(greedy.find("\"memory\":65536"), 14, "\"memory\":9999999999");
    EXPECT_EQ(keyOf(greedy + piece(0)), "seal.damaged");
}

TEST_F(Seal, ASuggestedPassphraseIsLongEnough) {
    std::set<std::string> seen;
    for (int i = 0; i < 200; ++i) {
        const std::string phrase = lessonfile::suggestPassphrase();
        EXPECT_EQ(std::count(phrase.begin(), phrase.end(), ' '), 5);
        seen.insert(phrase);
    }
    EXPECT_EQ(seen.size(), 200U);
    EXPECT_GT(6 * 2 * std::log2(16 * 5), 64.0); // bits, by the way it is made
}

TEST_F(Seal, ASignatureFitsOneTextAndOneKey) {
    const auto key = lessonfile::DeviceKey::open(dir_ / "device.key");
    ASSERT_TRUE(key);
    const auto again = lessonfile::DeviceKey::open(dir_ / "device.key");
    EXPECT_EQ(again->publicKey(), key->publicKey());
    EXPECT_EQ(fs::status(dir_ / "device.key").permissions(), fs::perms::owner_read | fs::perms::owner_write);
    const auto other = lessonfile::DeviceKey::open(dir_ / "other.key");
    const std::string signature = key->sign("text");
    EXPECT_TRUE(lessonfile::signatureFits("text", key->publicKey(), signature));
    EXPECT_FALSE(lessonfile::signatureFits("Text", key->publicKey(), signature));
    EXPECT_FALSE(lessonfile::signatureFits("text", other->publicKey(), signature));
    EXPECT_FALSE(lessonfile::signatureFits("text", "", ""));
    // Published: RFC 8032, section 7.1, test 2.
    put(dir_ / "rfc.key", "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb\n");
    const auto published = lessonfile::DeviceKey::open(dir_ / "rfc.key");
    ASSERT_TRUE(published);
    EXPECT_EQ(published->publicKey(), "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c");
    EXPECT_EQ(published->sign("\x72"), "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac"
                                       "1e43e15996e458f3613d0f11d8c387b2eaeb4"
                                       "302aeeb00d291612bb0c00");
    put(dir_ / "bad.key", "nothing");
    EXPECT_EQ(lessonfile::DeviceKey::open(dir_ / "bad.key").error().key, "key.damaged");
}

TEST_F(Seal, ASignedFileTellsItsKeyAndAForgedSignatureIsDamage) {
    const auto key = lessonfile::DeviceKey::open(dir_ / "device.key");
    lessonfile::Contents contents;
    contents.title = "Signed";
    lessonfile::WriteOptions options;
    options.key = &*key;
    ASSERT_TRUE(lessonfile::write(dir_ / "signed", contents, options));
    const auto read = lessonfile::verify(dir_ / "signed");
    ASSERT_TRUE(read) << read.error().sentence;
    EXPECT_EQ(read->signedBy, key->publicKey());
    // Written by another device that claims this key: its parts are whole, the signature is not.
    const auto other = lessonfile::DeviceKey::open(dir_ / "other.key");
    lessonfile::Contents forged = contents;
    forged.title = "Forged";
    options.key = nullptr;
    put(dir_ / "stolen",
        R"({"key":")" + key->publicKey() + R"(","signature":")" + other->sign("x") + "\"}\n");
    forged.carried.push_back({{"signature.json", "signature", 0, ""}, dir_ / "stolen"});
    ASSERT_TRUE(lessonfile::write(dir_ / "forged", forged, options));
    const auto refused = lessonfile::verify(dir_ / "forged");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().key, "lessonfile.damaged");
}
