// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "base/hash.h"

using plumbmark::base::sha256Hex;

namespace {
std::vector<unsigned char> bytes(const std::string& text) { return {text.begin(), text.end()}; }
} // namespace

// Source: FIPS 180-4 examples published by NIST ("abc", the 448-bit message) and the well-known empty digest.
TEST(Sha256, AgreesWithThePublishedExamples) {
    EXPECT_EQ(sha256Hex({}), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    EXPECT_EQ(sha256Hex(bytes("abc")), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256Hex(bytes("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq")),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}
