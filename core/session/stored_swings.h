// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/ids.h"
#include "base/result.h"
#include "comparison/swing_set.h"
#include "marks/player.h"
#include "measure/measurement.h"
#include "records/kinds.h"
#include "store/library.h"

namespace plumbmark::session {

/// A swing of the library with the numbers shown last (accepted ones first); no film is needed.
struct StoredSwing {
    base::Id shot, clip;
    int number = 0; ///< of the shot in its lesson, from 1
    marks::ShotContext context;
    records::Shot ball; ///< what the ball did
    std::vector<measure::Measurement> measurements;
};

/// Measured clips of a lesson in the order they were made; clips without findings are left out.
base::Result<std::vector<StoredSwing>> storedSwings(store::Library& library, const base::Id& lesson);

/// One kind of swing: only such swings may be put into one set.
struct SwingKind {
    marks::View view = marks::View::faceOn;
    marks::ShotKind shot = marks::ShotKind::full;
    std::optional<marks::Club> club;
    friend bool operator==(const SwingKind&, const SwingKind&) = default;
};
[[nodiscard]] SwingKind kindOf(const StoredSwing& swing);
[[nodiscard]] std::vector<StoredSwing> ofKind(const std::vector<StoredSwing>& swings, const SwingKind& kind);
/// The kind of which both lists hold most (by the smaller count; `second` may be the same list); nothing when
/// no kind is in both.
[[nodiscard]] std::optional<SwingKind> commonKind(const std::vector<StoredSwing>& first,
                                                  const std::vector<StoredSwing>& second);
[[nodiscard]] std::vector<comparison::SwingNumbers> numbersOf(const std::vector<StoredSwing>& swings);

} // namespace plumbmark::session
