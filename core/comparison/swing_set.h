// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "base/measured.h"
#include "measure/measurement.h"

namespace plumbmark::comparison {

/// Fewer swings than this prove little: no change is called on them.
inline constexpr int kFewestSwings = 3;

/// One number over several swings of one kind, club and view.
struct Spread {
    int swings = 0;
    double median = 0.0, low = 0.0, high = 0.0; ///< low and high: the range that was seen
    double mean = 0.0;
    double betweenSwings = 0.0; ///< standard deviation from swing to swing (n - 1), 0 for one swing
    double measurement = 0.0;   ///< root mean square of the single measurements' sigmas
};
/// Nothing of nothing. Sigmas must be > 0.
[[nodiscard]] std::optional<Spread> spreadOf(std::span<const base::Measured> values);

/// What two sets say about each other.
struct Change {
    double difference = 0.0;  ///< mean of the second minus mean of the first
    double sigma = 0.0;       ///< of the difference, see changeBetween
    double freedom = 0.0;     ///< degrees of freedom behind sigma
    double critical = 0.0;    ///< |difference| must exceed critical * sigma
    bool beyondDoubt = false; ///< at the two-sided 95 % level
};
/// Swing-to-swing spread and measurement error together:
///   sigma^2 = s1^2 / n1 + s2^2 / n2 + m1^2 + m2^2
/// with s the standard deviation between swings and m the measurement's own sigma. The error of software
/// marks is mostly bias that all swings of a set share (it does not shrink with their number and does not
/// show in their spread), so it enters whole, once a set. Where errors are in truth independent from swing
/// to swing they are counted twice: then fewer changes are called, never more. Degrees of freedom by Welch
/// (1947) and Satterthwaite (1946), the measurement's part taken as known. Nothing with fewer than
/// kFewestSwings swings on either side.
[[nodiscard]] std::optional<Change> changeBetween(const Spread& first, const Spread& second);

/// Two-sided 95 % point of Student's t: P(|T| < t) = 0.95. freedom >= 1, fractions allowed.
[[nodiscard]] double studentT95(double freedom);

/// One row of the table of two sets (or of one: then `second` is empty).
struct SetRow {
    std::string id;
    std::optional<marks::MomentId> moment;
    base::Unit unit = base::Unit::ratio;
    std::optional<Spread> first, second;
    std::optional<Change> change; ///< nothing: too few swings on a side
};
using SwingNumbers = std::vector<measure::Measurement>;
/// Rows for every number that at least one swing of the first set could tell, in its order; values of other
/// method versions or units than the first one met are left out.
[[nodiscard]] std::vector<SetRow> compareSets(std::span<const SwingNumbers> first,
                                              std::span<const SwingNumbers> second);

} // namespace plumbmark::comparison
