// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <optional>

#include "analysis/analysis.h"
#include "marks/landmark.h"
#include "marks/moment.h"
#include "marks/player.h"
#include "ports/places.h"

/// Words of the trade and numbers for the screen: translated, and in the person's own number format.
namespace plumbmark::bridge {

[[nodiscard]] QString momentLabel(marks::MomentId id);
/// The same inside a sentence: small where the language writes it small.
[[nodiscard]] QString momentInside(marks::MomentId id);
[[nodiscard]] QString landmarkLabel(marks::Landmark landmark);
[[nodiscard]] QString originLabel(base::Origin origin);
/// What placed a key moment ("shaft", "ball+sound", "hand mark", ...), in words.
[[nodiscard]] QString foundByLabel(const std::string& foundBy);
[[nodiscard]] QString viewLabel(marks::View view);
[[nodiscard]] QString handLabel(marks::Hand hand);
[[nodiscard]] QString shotLabel(marks::ShotKind kind);
[[nodiscard]] QString clubKindLabel(marks::ClubKind kind);
[[nodiscard]] QString clubLabel(const marks::Club& club);
[[nodiscard]] QString placeLabel(ports::Places::Kind kind);
[[nodiscard]] QString measurementLabel(const std::string& id);
/// 0 good, 1 watch, 2 work on it, 3 cannot tell.
[[nodiscard]] QString stateWord(int level);

/// "8.3 +-1.2" with the plus-minus sign, unit behind it; decimals follow the sigma.
struct NumberText {
    QString value;
    QString sigma;
    QString unit;
    [[nodiscard]] QString whole() const;
};
/// Lengths in statures are told as a share of height, or in centimetres where the stature is known.
[[nodiscard]] NumberText numberText(const base::Measured& measured, std::optional<double> statureMetres);
[[nodiscard]] QString rangeText(std::optional<double> low, std::optional<double> high, base::Unit unit,
                                std::optional<double> statureMetres);
/// What a number of this unit is multiplied by for the screen, as numberText does it.
[[nodiscard]] double shownFactor(base::Unit unit, std::optional<double> statureMetres);
/// A region of the body card ("lead_hip", ...), in words.
[[nodiscard]] QString regionLabel(const std::string& region);
[[nodiscard]] QString decimal(double value, int decimals);
[[nodiscard]] QString dayText(const std::string& isoDay);

} // namespace plumbmark::bridge
