// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "coaching/body_card.h"
#include "coaching/checkpoint.h"
#include "measure/measurement.h"

namespace plumbmark::coaching {

/// The numbers of one swing, as far as cautions look at them.
struct SwingNumbers {
    std::vector<measure::Measurement> measurements;
};

/// Body cautions over the swings of one session, oldest first; the last five count. A sign of a swing counts
/// when it is at least as likely as not, by the measurement's sigma. A sign seen in 3 of 5 swings raises its
/// caution; with fewer than three swings it is only worded as seen in one swing (or two), with the advice to
/// look at more. Logged pain raises its region's caution by itself. Nothing here is a diagnosis: every
/// caution carries the usual words, and an empty list is no clean bill (cautionsFooter belongs under it).
[[nodiscard]] std::vector<Caution> cautions(std::span<const SwingNumbers> swings, const BodyCard& card);

/// The sentence that belongs under every list of cautions, empty lists too.
[[nodiscard]] std::string_view cautionsFooter();

} // namespace plumbmark::coaching
