// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "analysis/analysis.h"

namespace plumbmark::analysis {

/// Names the evidence that this program would make of a film (SHA-256 of its bytes) with this network and
/// this request: 64 hex digits that change with every source file the pass is made of, so that evidence of
/// another version is never taken for this one's. What is decided after the pass (hand marks where a network
/// looks, moments set by hand, stature, distance) does not count.
[[nodiscard]] std::string evidenceName(std::string_view filmSha256, const NetworkBytes& network,
                                       const Request& request);

/// The evidence as bytes, for this program only: everything recompute() needs, without what the network saw
/// frame by frame. About 2.5 kB a frame. Ends with a SHA-256 of itself.
[[nodiscard]] std::vector<std::uint8_t> packEvidence(const Evidence& evidence);

/// Nothing where the bytes are not whole or not of this program's form; then the film is read again.
/// `request` says what has been told since (stature, distance, moments set by hand).
[[nodiscard]] std::shared_ptr<const Evidence> unpackEvidence(std::span<const std::uint8_t> bytes,
                                                             const Request& request);

} // namespace plumbmark::analysis
