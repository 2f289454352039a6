// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "analysis/detail/evidence.h"
#include "analysis/evidence_io.h"
#include "base/hash.h"

using namespace plumbmark;
using namespace plumbmark::analysis;

namespace {

/// Every kind of field away from its default.
Evidence made() {
    Evidence e;
    e.clip.width = 640, e.clip.height = 360, e.clip.frames = 3;
    e.clip.playbackFps = 120, e.clip.captureFps = 240.0, e.clip.captureSource = "metadata",
    e.clip.uneven = true;
    e.clip.warnings = {"The file ends early."};
    e.times = {base::Seconds{0}, base::Seconds{1.0 / 120}, base::Seconds{2.0 / 120}};
    e.timeScale = {0.5, true, "metadata"};
    e.body.track.resize(3);
    for (std::size_t i = 0; i < 3; ++i) {
        e.body.track[i].time = e.times[i];
        e.body.track[i][marks::Landmark::lead_hip] =
            marks::Mark{{10.0 + double(i), 20}, 1.5, base::Origin::network};
    }
    e.body.trunk = {{base::Seconds{0.1}, {1, 2}, {3, 4}, 5}};
    e.body.boxes = {{1, 2, 3, 4}};
    e.body.stature = body::StatureEstimate{250, 8};
    e.body.still = base::Seconds{0.2};
    club::Evidence frame;
    frame.frame = 1, frame.time = e.times[1];
    frame.hands = club::Hands{{5, 6}, base::Vec2{7, 8}, std::nullopt, std::nullopt, std::nullopt, 250, 2};
    frame.score[90] = 200, frame.offset[90] = -7, frame.reach[90] = 60;
    frame.lines.push_back({12.5F, 0.4F, 1, 2, 3, 4, 0.5F, 0.1F, 0.9F});
    e.shaftEvidence = {frame};
    club::ShaftSample shaft;
    shaft.angleDegrees = 12, shaft.sigmaDegrees = 0.5, shaft.head = base::Vec2{30, 40}, shaft.headSigma = 2;
    e.shaft = {std::nullopt, shaft, std::nullopt};
    e.ball = club::Ball{{50, 60}, 4, 0.7, base::Seconds{0.01}, std::nullopt};
    e.ground = scene::GroundMotion({{1.0, 0.01, 2, 3}, {1, 0, 0, 0}, {1, 0, -2, 1}}, 0.4);
    e.hits = {{base::Seconds{0.012}, 24}};
    e.vertical = {1.5, 0.3, "plumb"};
    e.warnings = {"a", ""};
    return e;
}

} // namespace

TEST(EvidenceIo, WhatIsPackedComesBackWhole) {
    const Evidence e = made();
    const auto bytes = packEvidence(e);
    Request request;
    request.context.statureMetres = 1.8;
    const auto back = unpackEvidence(bytes, request);
    ASSERT_NE(back, nullptr);
    EXPECT_EQ(packEvidence(*back), bytes);
    EXPECT_EQ(back->body.track[2][marks::Landmark::lead_hip]->at, (base::Vec2{12, 20}));
    EXPECT_FALSE(back->body.track[2][marks::Landmark::nose]);
    EXPECT_EQ(back->shaftEvidence[0].offset[90], -7);
    EXPECT_FALSE(back->shaftEvidence[0].hands->trailWrist);
    EXPECT_EQ(back->shaft[1]->head, (base::Vec2{30, 40}));
    EXPECT_EQ(back->ground.fromReference(0, {9, 9}), e.ground.fromReference(0, {9, 9}));
    EXPECT_EQ(back->vertical.source, "plumb");
    EXPECT_EQ(back->warnings, e.warnings);
    EXPECT_EQ(back->request.context.statureMetres, 1.8) << "what was told since";
    // The same answer without a pixel.
    const Outcome a = recompute(e, {}), b = recompute(*back, {});
    EXPECT_EQ(a.track.size(), b.track.size());
    EXPECT_EQ(a.moments.size(), b.moments.size());
    EXPECT_EQ(a.scene.scale.pixelsPerStature, b.scene.scale.pixelsPerStature);
}

TEST(EvidenceIo, DamagedBytesAreRefused) {
    const auto bytes = packEvidence(made());
    for (std::size_t size = 0; size < bytes.size(); size += 97) {
        EXPECT_EQ(unpackEvidence({bytes.data(), size}, {}), nullptr) << size;
    }
    for (std::size_t at = 0; at < bytes.size(); at += 61) {
        auto bad = bytes;
        bad[at] ^= 0x10;
        EXPECT_EQ(unpackEvidence(bad, {}), nullptr) << at;
    }
    // A list that claims to be longer than the file, with a hash that fits: refused, no memory taken.
    std::vector<std::uint8_t> long_(bytes.begin(), bytes.end() - 64);
    std::fill(long_.begin() + 12, long_.end(), 0xff);
    const std::string hash = base::sha256Hex(long_);
    long_.insert(long_.end(), hash.begin(), hash.end());
    EXPECT_EQ(unpackEvidence(long_, {}), nullptr);
}

TEST(EvidenceIo, TheNameFollowsWhatThePassIsMadeFrom) {
    const std::string film(64, 'a');
    Request request;
    const auto network = std::make_shared<const std::vector<unsigned char>>(10, 7);
    const std::string name = evidenceName(film, network, request);
    EXPECT_EQ(name, evidenceName(film, network, request));
    EXPECT_NE(name, evidenceName(std::string(64, 'b'), network, request));
    EXPECT_NE(name, evidenceName(film, nullptr, request));
    Request other = request;
    other.context.hand = marks::Hand::left;
    EXPECT_NE(name, evidenceName(film, network, other));
    other = request;
    other.captureFps = 240;
    EXPECT_NE(name, evidenceName(film, network, other));
    // Decided after the pass.
    other = request;
    other.context.statureMetres = 1.7;
    other.handMarks = {{3, marks::Landmark::nose, base::Vec2{1, 1}, 2}};
    other.momentFixes = {{marks::MomentId::top, base::Seconds{1}, base::Seconds{0.1}, ""}};
    EXPECT_EQ(name, evidenceName(film, network, other));
    EXPECT_NE(evidenceName(film, nullptr, request), evidenceName(film, nullptr, other)) << "hands by hand";
}
