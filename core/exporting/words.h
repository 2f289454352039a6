// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/measured.h"
#include "coaching/checkpoint.h"
#include "exporting/page.h"
#include "marks/moment.h"
#include "marks/player.h"

/// Words of the trade for sheets and the terminal (English source texts), and numbers the way people read
/// them. Files for programs never use these.
namespace plumbmark::exporting {

[[nodiscard]] std::string_view momentLabel(marks::MomentId id); ///< "Top", "Takeaway", ...
/// "Spine tilt", ...; an id that is not known comes back with spaces for underscores and a capital.
[[nodiscard]] std::string measurementLabel(std::string_view id);
[[nodiscard]] std::string_view
stateWord(coaching::State state);                           ///< "good", "watch", "work on it", "cannot tell"
[[nodiscard]] Sign signOf(coaching::State state);           ///< the shape that goes with the word
[[nodiscard]] std::string_view viewLabel(marks::View view); ///< "Face-on", "Down-the-line"
[[nodiscard]] std::string
clubLabel(const marks::Club& club); ///< "7-iron", "56-degree wedge", "3-wood", "driver"
[[nodiscard]] std::string_view shotLabel(marks::ShotKind shot); ///< "full swing", "chip", ...
/// "Face-on, right-handed, 7-iron, full swing".
[[nodiscard]] std::string contextLine(const marks::ShotContext& context);

/// How texts are written where they go.
struct Writing {
    bool unicode = true; ///< false: a terminal that knows ASCII only ("+-", "deg")
};

/// A number with its sigma and unit, decimals by the sigma: "8.3 ± 1.2°", "-4 ± 3°", "2.4 ± 0.4 % of height".
/// With the player's stature known, lengths in statures are told in centimetres. Measurements whose sign has
/// a word say it instead of a minus: "6 ± 1° forward".
[[nodiscard]] std::string valueText(std::string_view measurement, const base::Measured& value,
                                    const std::optional<double>& statureMetres, Writing writing = {});
/// The range that a value is judged by, in the unit of valueText and with digits that suit its sigma: "2 to
/// 10°", "up to 0.45 hip-joint distances". Empty when both edges are open.
[[nodiscard]] std::string rangeText(std::optional<double> low, std::optional<double> high,
                                    const base::Measured& value, const std::optional<double>& statureMetres,
                                    Writing writing = {});
/// Seconds with three decimals: "0.842 s".
[[nodiscard]] std::string secondsText(base::Seconds time);

} // namespace plumbmark::exporting
