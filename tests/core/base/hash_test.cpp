// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "base/hash.h"

using plumbmark::base::sha256Hex;

namespace {
std::vector<unsigned char> bytes(const std::string& text) {
    return {text.begin(), text.end()};
}
} // namespace

// Source: FIPS 180-4 examples published by NIST ("abc", the 448-bit message) and the well-known empty digest.
TEST(Sha256, AgreesWithThePublishedExamples) {
    EXPECT_EQ(sha256Hex({}), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    EXPECT_EQ(sha256Hex(bytes("abc")), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256Hex(bytes("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq")),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}

// Source: FIPS 180-4 examples published by NIST: one million times "a", and the 896-bit message.
TEST(Sha256, AgreesWithTheLongExamplesInPieces) {
    plumbmark::base::Sha256 million;
    const std::string piece(977, 'a');
    for (std::size_t left = 1'000'000; left > 0;) {
        const std::size_t now = std::min(left, piece.size());
        million.add(std::string_view(piece).substr(0, now));
        left -= now;
    }
    EXPECT_EQ(million.finishHex(), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    EXPECT_EQ(plumbmark::base::sha256OfText("abcdefghbcdefghicdefghijdefghijkefghijklfghijklmghijklmnhijklmno"
                                            "ijklmnopjklmnopqklmnopqrlmnopqrsmnopqrstnopqrstu"),
              "cf5b16a778af8380036ce59e7b0492370b249b11e8f07a51afac45037afee9d1");
}

TEST(Sha256, OnlySixtyFourLowercaseHexDigitsAreAHash) {
    using plumbmark::base::isSha256Hex;
    EXPECT_TRUE(isSha256Hex(std::string(64, '0')));
    EXPECT_FALSE(isSha256Hex(std::string(63, '0')));
    EXPECT_FALSE(isSha256Hex(std::string(64, 'A')));
    EXPECT_FALSE(isSha256Hex(std::string(60, 'a') + "/../"));
}
