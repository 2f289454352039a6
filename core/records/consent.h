// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "records/fact.h"

/// What a player agreed to, as a fact that hangs on the player; a newer one replaces the older. Not legal
/// advice: which agreement the law of a country asks for, and until what age a guardian gives it, a lawyer
/// tells.
namespace plumbmark::records {

namespace kind {
inline constexpr std::string_view consent = "consent";
} // namespace kind

namespace scope {
inline constexpr std::string_view film = "film";       ///< being filmed
inline constexpr std::string_view analyse = "analyse"; ///< being measured
inline constexpr std::string_view keep = "keep";       ///< being kept in the library
inline constexpr std::string_view share = "share";     ///< lessons going out to others
inline constexpr std::string_view teach = "teach";     ///< being shown to other students
/// The face being seen in films that go out. Asked of minors only: without it their heads are covered.
inline constexpr std::string_view face = "face";
} // namespace scope

struct Consent {
    std::set<std::string, std::less<>> scopes;
    std::string day;      ///< ISO 8601, given on
    std::string until;    ///< ISO 8601, last day it holds
    bool minor = false;   ///< then a guardian gives it
    std::string guardian; ///< who agreed for a minor
    bool withdrawn = false;
};
[[nodiscard]] Object bodyOf(const Consent& value);
[[nodiscard]] Consent consentOf(const Object& body);
/// Errors (input): "record.bad_value": no or unknown scope, impossible days, an end before the beginning or
/// more than two years after it (one year for minors), a minor without guardian.
base::Result<void> check(const Consent& value);

/// What is known of a player's age.
enum class Age {
    adult,
    minor,  ///< a consent says so, or the year in which the player turns 18 is not over
    unknown ///< no consent and no year of birth: where it matters the stricter rule holds
};
/// `birthYear` from the body card, where it was told; a consent of an adult is the word of that adult.
[[nodiscard]] Age ageOf(const std::vector<Fact>& standing, std::optional<int> birthYear,
                        std::string_view today);

/// Whether `what` may be done on `today`. `standing` are the consents that no other replaces; where two
/// devices disagree all of them must allow it; for a minor each must be a guardian's. Errors (input):
/// "consent.missing", "consent.withdrawn", "consent.expired", "consent.scope", "consent.guardian"; each
/// sentence says what is missing.
base::Result<void> allows(const std::vector<Fact>& standing, std::string_view what, std::string_view today,
                          std::optional<int> birthYear = std::nullopt);

/// Whether films that go to others may show the player's face: those of a minor only where the guardian
/// agreed to it. Where two devices disagree all must allow it.
[[nodiscard]] bool mayShowFace(const std::vector<Fact>& standing, std::string_view today,
                               std::optional<int> birthYear = std::nullopt);

/// Whether a fact tells about somebody's health: by its kind, or because its body says {"health":true}. Such
/// facts travel only when that is chosen.
[[nodiscard]] bool isHealthKind(std::string_view kind);
[[nodiscard]] bool tellsHealth(const Fact& fact);
/// The kinds of which isHealthKind is true.
[[nodiscard]] const std::vector<std::string_view>& healthKinds();

} // namespace plumbmark::records
