// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "records/consent.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "base/clock.h"

namespace plumbmark::records {
namespace {

constexpr std::array kScopes{scope::film,  scope::analyse, scope::keep,
                             scope::share, scope::teach,   scope::face};
constexpr base::UnixMs kDay = 24 * 3600 * 1000LL;

base::Error bad(std::string sentence) {
    return base::inputError("record.bad_value", std::move(sentence));
}

} // namespace

Object bodyOf(const Consent& value) {
    Array scopes;
    for (const std::string& word : value.scopes) {
        scopes.emplace_back(word);
    }
    Object body{{"scopes", std::move(scopes)}, {"day", value.day}, {"until", value.until}};
    if (value.minor) {
        body.emplace("minor", true);
    }
    if (!value.guardian.empty()) {
        body.emplace("guardian", value.guardian);
    }
    if (value.withdrawn) {
        body.emplace("withdrawn", true);
    }
    return body;
}

Consent consentOf(const Object& body) {
    Consent value;
    if (const Value* scopes = member(body, "scopes"); scopes != nullptr && scopes->array() != nullptr) {
        for (const Value& word : *scopes->array()) {
            if (word.text() != nullptr) {
                value.scopes.insert(*word.text());
            }
        }
    }
    value.day = textMember(body, "day").value_or("");
    value.until = textMember(body, "until").value_or("");
    value.minor = booleanMember(body, "minor").value_or(false);
    value.guardian = textMember(body, "guardian").value_or("");
    value.withdrawn = booleanMember(body, "withdrawn").value_or(false);
    return value;
}

base::Result<void> check(const Consent& value) {
    if (value.scopes.empty() && !value.withdrawn) {
        return bad("Say what the consent is for: film, analyse, keep, share, teach, face.");
    }
    for (const std::string& word : value.scopes) {
        if (std::find(kScopes.begin(), kScopes.end(), word) == kScopes.end()) {
            return bad("\"" + word +
                       "\" is nothing to consent to; there are film, analyse, keep, share, teach, face.");
        }
    }
    const auto from = base::fromIso(value.day);
    const auto until = base::fromIso(value.until);
    if (!from || value.day.size() != 10 || !until || value.until.size() != 10) {
        return bad("A consent needs the day it was given and its last day, as 2026-11-25.");
    }
    if (*until < *from) {
        return bad("The consent would end before it begins; check the days.");
    }
    if (*until - *from > (value.minor ? 366 : 731) * kDay) {
        return bad(value.minor ? "A minor's consent holds for a year at most; then ask again."
                               : "A consent holds for two years at most; then ask again.");
    }
    if (value.minor && value.guardian.empty()) {
        return bad("A minor's consent is given by a guardian; say who.");
    }
    if (value.guardian.size() > 10'000 || !isUtf8(value.guardian)) {
        return bad("The guardian's name is too long or no text; type it again.");
    }
    return {};
}

Age ageOf(const std::vector<Fact>& standing, std::optional<int> birthYear, std::string_view today) {
    constexpr int kOfAge = 18;
    const bool said = std::any_of(standing.begin(), standing.end(),
                                  [](const Fact& fact) { return consentOf(fact.body).minor; });
    int year = 0;
    (void)std::from_chars(today.data(), today.data() + std::min<std::size_t>(4, today.size()), year);
    if (said || (birthYear && year - *birthYear <= kOfAge)) {
        return Age::minor;
    }
    return standing.empty() && !birthYear ? Age::unknown : Age::adult;
}

base::Result<void> allows(const std::vector<Fact>& standing, std::string_view what, std::string_view today,
                          std::optional<int> birthYear) {
    if (standing.empty()) {
        return base::inputError("consent.missing",
                                "Nothing was shared: there is no consent on record. Ask for it and note it "
                                "(\"plumbmark consent\"), or share only with a device of your own.");
    }
    const bool minor = ageOf(standing, birthYear, today) == Age::minor;
    for (const Fact& fact : standing) {
        const Consent consent = consentOf(fact.body);
        if (consent.withdrawn) {
            return base::inputError("consent.withdrawn", "Nothing was shared: the consent was withdrawn.");
        }
        // A day that is no day counts as over.
        if (!base::fromIso(consent.until) || std::string_view(consent.until) < today) {
            return base::inputError("consent.expired", "Nothing was shared: the consent ended on " +
                                                           consent.until + "; ask again and note it.");
        }
        if (consent.scopes.count(what) == 0) {
            return base::inputError("consent.scope", "Nothing was shared: the consent is not for this (" +
                                                         std::string(what) + "); ask for it and note it.");
        }
        if (minor && (!consent.minor || consent.guardian.empty())) {
            return base::inputError("consent.guardian",
                                    "Nothing was shared: for a minor a guardian must agree; note who did.");
        }
    }
    return {};
}

bool mayShowFace(const std::vector<Fact>& standing, std::string_view today, std::optional<int> birthYear) {
    if (ageOf(standing, birthYear, today) != Age::minor) {
        return true;
    }
    return !standing.empty() && std::all_of(standing.begin(), standing.end(), [](const Fact& fact) {
        const Consent consent = consentOf(fact.body);
        return consent.minor && !consent.withdrawn && consent.scopes.count(scope::face) > 0;
    });
}

const std::vector<std::string_view>& healthKinds() {
    // One row per kind that tells about somebody's body or pain.
    static const std::vector<std::string_view> kinds{kind::pain, "body_card", "body", "screen", "caution"};
    return kinds;
}

bool isHealthKind(std::string_view kind) {
    const auto& kinds = healthKinds();
    return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

bool tellsHealth(const Fact& fact) {
    return isHealthKind(fact.kind) || booleanMember(fact.body, "health").value_or(false);
}

} // namespace plumbmark::records
