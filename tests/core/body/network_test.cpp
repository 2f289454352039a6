// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>
#include <cstring>
#include <random>

#include "body/detail/onnx_writer.h"
#include "body/detail/tflite_reader.h"
#include "body/network.h"
#include "body/observer.h"
#include "fixtures.h"

using namespace plumbmark;
using namespace plumbmark::body;

// Source: IEEE 754-2008 half precision, worked values (1, 65504 = the largest, 2^-14 = the smallest normal,
// 2^-24 = the smallest of all).
TEST(HalfPrecision, ReadsTheWorkedValues) {
    EXPECT_EQ(detail::fromHalf(0x3C00), 1.0F);
    EXPECT_EQ(detail::fromHalf(0xC000), -2.0F);
    EXPECT_EQ(detail::fromHalf(0x7BFF), 65504.0F);
    EXPECT_EQ(detail::fromHalf(0x0400), std::ldexp(1.0F, -14));
    EXPECT_EQ(detail::fromHalf(0x0001), std::ldexp(1.0F, -24));
    EXPECT_EQ(detail::fromHalf(0x03FF), std::ldexp(1023.0F, -24));
    EXPECT_EQ(detail::fromHalf(0x3555), 0.333251953125F); // the nearest half to 1/3
    EXPECT_TRUE(std::signbit(detail::fromHalf(0x8000)));
    EXPECT_TRUE(std::isinf(detail::fromHalf(0x7C00)));
    EXPECT_TRUE(std::isnan(detail::fromHalf(0x7E00)));
}

TEST(TfliteReader, RefusesWhatIsNotANetworkInOnePlainSentence) {
    for (const std::string& text :
         {std::string(), std::string("TFL3"), std::string(200, 'x'), std::string(64, '\0')}) {
        const std::vector<unsigned char> bytes(text.begin(), text.end());
        const auto graph = detail::readTflite(bytes);
        ASSERT_FALSE(graph.ok());
        EXPECT_EQ(graph.error().key, "network.broken");
        EXPECT_EQ(graph.error().kind, base::ErrorKind::input);
        EXPECT_NE(graph.error().sentence.find("Fetch it again"), std::string::npos);
    }
}

TEST(Observer, SaysThatTheNetworkIsMissingOrUnknown) {
    EXPECT_EQ(Observer::create(nullptr).error().key, "network.missing");
    EXPECT_EQ(Observer::create(std::make_shared<const std::vector<unsigned char>>()).error().key,
              "network.missing");
    const auto other =
        std::make_shared<const std::vector<unsigned char>>(1000, static_cast<unsigned char>('T'));
    EXPECT_EQ(Observer::create(other).error().key, "network.unknown");
}

class WithNetwork : public ::testing::Test {
  protected:
    void SetUp() override {
        bytes = test::network();
        if (!bytes) {
            GTEST_SKIP() << "the pose network is not there: bash platform/linux/fetch-network.sh";
        }
    }
    NetworkBytes bytes;
};

TEST_F(WithNetwork, TruncatedAnywhereIsAnErrorAndNeverACrash) {
    const std::span<const unsigned char> whole(*bytes);
    ASSERT_TRUE(detail::readTflite(whole).ok());
    for (std::size_t share = 0; share < 40; ++share) {
        const auto graph = detail::readTflite(whole.first(whole.size() * share / 40));
        ASSERT_FALSE(graph.ok()) << share;
        EXPECT_EQ(graph.error().key, "network.broken");
    }
}

TEST_F(WithNetwork, SpoiledBytesNeverCrashTheReaderOrTheWriter) {
    // The tables sit at the end of the file; weights (most of the bytes) cannot be wrong, only different.
    std::mt19937 random(7);
    int refused = 0;
    for (int round = 0; round < 60; ++round) {
        std::vector<unsigned char> spoiled = *bytes;
        for (int i = 0; i < 40; ++i) {
            const bool head = i == 0;
            const std::size_t at = head ? random() % 64 : spoiled.size() - 1 - random() % 120000;
            spoiled[at] = static_cast<unsigned char>(random());
        }
        const auto graph = detail::readTflite(spoiled);
        if (!graph) {
            EXPECT_EQ(graph.error().key, "network.broken");
            ++refused;
            continue;
        }
        if (const auto onnx = detail::toOnnx(*graph); !onnx) {
            EXPECT_EQ(onnx.error().key, "network.broken");
            ++refused;
        }
    }
    EXPECT_GT(refused, 20) << "spoiling the tables must be noticed";
}

// Source: the graph as architecture figures give it (operators, five outputs) for this package version.
TEST_F(WithNetwork, HasTheFiveKnownOutputs) {
    const auto graph = detail::readTflite(*bytes);
    ASSERT_TRUE(graph.ok());
    std::vector<std::vector<int>> shapes;
    for (const int out : graph->outputs) {
        shapes.push_back(graph->tensors[static_cast<std::size_t>(out)].shape);
    }
    const std::vector<std::vector<int>> expected{
        {1, 195}, {1, 1}, {1, 256, 256, 1}, {1, 64, 64, 39}, {1, 117}};
    EXPECT_EQ(shapes, expected);
}

TEST_F(WithNetwork, AnEvenlyGreyPictureHoldsNobody) {
    auto network = PoseNetwork::create(*bytes);
    ASSERT_TRUE(network.ok()) << network.error().sentence;
    const std::vector<std::uint8_t> grey(256 * 256 * 3, 128);
    const auto out = (*network)->run(grey);
    ASSERT_TRUE(out.ok());
    EXPECT_LT(out->presence, 0.1F);
    EXPECT_FALSE((*network)->run(std::vector<std::uint8_t>(10)).ok())
        << "a picture of the wrong size is refused";
}
