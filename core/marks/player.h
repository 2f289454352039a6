// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace plumbmark::marks {

enum class View { faceOn, downTheLine };
/// The player's hand; of a mirrored clip still the player's true hand (mirroring is a separate attribute).
enum class Hand { right, left };
enum class ShotKind { full, half, pitch, chip, bunker, putt, practice };
enum class ClubKind { driver, wood, hybrid, iron, wedge, putter };

/// Club with its number or loft where told: iron-7, wedge-56, wood-3, driver.
struct Club {
    ClubKind kind = ClubKind::iron;
    std::optional<int> number; ///< iron/wood/hybrid number, or a wedge's loft in degrees
    friend bool operator==(const Club&, const Club&) = default;
};

/// Stable texts of the command line and of files: "face-on", "down-the-line", "right", "iron-7", ...
[[nodiscard]] std::string_view viewName(View view);
[[nodiscard]] std::string_view handName(Hand hand);
[[nodiscard]] std::string_view shotKindName(ShotKind kind);
[[nodiscard]] std::string clubName(Club club);
[[nodiscard]] std::optional<View> viewFromName(std::string_view name);
[[nodiscard]] std::optional<Hand> handFromName(std::string_view name);
[[nodiscard]] std::optional<ShotKind> shotKindFromName(std::string_view name);
[[nodiscard]] std::optional<Club> clubFromName(std::string_view name);

/// What the coach tells about a clip; nothing here comes from the picture.
struct ShotContext {
    View view = View::faceOn;
    Hand hand = Hand::right;
    ShotKind shot = ShotKind::full;
    std::optional<Club> club;
    bool mirrored = false; ///< the clip is a mirror image (front camera)
    std::optional<double> statureMetres;
    std::optional<double> cameraDistanceMetres;

    /// Face-on: +1 when the target is toward the picture's right (a right-hander's lead side, the left, is
    /// on the picture's right). Down-the-line: +1 when the ball is to the picture's right of the player.
    /// Right-handed and not mirrored give +1; each of left-handed and mirrored flips it.
    [[nodiscard]] int sideSign() const {
        int sign = hand == Hand::right ? 1 : -1;
        return mirrored ? -sign : sign;
    }
};

} // namespace plumbmark::marks
