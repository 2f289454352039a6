// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "records/coaching_kinds.h"

#include <algorithm>
#include <array>

#include "records/detail/body_fields.h"
#include "records/value.h"

namespace plumbmark::records {
namespace {

using detail::getText;
using detail::putText;

void put(Object& body, std::string_view key, const std::vector<std::string>& values) {
    if (!values.empty()) {
        body.emplace(key, Array(values.begin(), values.end()));
    }
}
void put(Object& body, std::string_view key, const std::optional<bool>& value) {
    if (value) {
        body.emplace(key, *value);
    }
}
void put(Object& body, std::string_view key, const std::optional<int>& value) {
    if (value) {
        body.emplace(key, *value);
    }
}

std::vector<std::string> texts(const Object& body, std::string_view key) {
    std::vector<std::string> out;
    const Value* list = member(body, key);
    if (list != nullptr && list->array() != nullptr) {
        for (const Value& v : *list->array()) {
            if (v.text() != nullptr) {
                out.push_back(*v.text());
            }
        }
    }
    return out;
}
std::optional<int> whole(const Object& body, std::string_view key, int low, int high) {
    const auto n = integerMember(body, key);
    return n && *n >= low && *n <= high ? std::optional(static_cast<int>(*n)) : std::nullopt;
}

} // namespace

Object bodyOf(const BodyCard& v) {
    Object body;
    putText(body, "day", v.day);
    put(body, "birth_year", v.birthYear);
    put(body, "pain_before", v.painBefore);
    put(body, "limited_joints", v.limitedJoints);
    put(body, "replaced_joints", v.replacedJoints);
    put(body, "surgery", v.surgery);
    put(body, "pregnant", v.pregnant);
    put(body, "bone_or_heart", v.boneOrHeart);
    put(body, "cleared", v.cleared);
    putText(body, "cleared_day", v.clearedDay);
    put(body, "most_balls", v.mostBalls);
    put(body, "guardian_consent", v.guardianConsent);
    putText(body, "note", v.note);
    putText(body, "warm_up_day", v.warmUpDay);
    return body;
}

BodyCard bodyCardOf(const Object& b) {
    BodyCard v;
    v.day = getText(b, "day");
    v.birthYear = whole(b, "birth_year", 1880, 2200);
    v.painBefore = texts(b, "pain_before");
    v.limitedJoints = texts(b, "limited_joints");
    v.replacedJoints = texts(b, "replaced_joints");
    v.surgery = texts(b, "surgery");
    v.pregnant = booleanMember(b, "pregnant");
    v.boneOrHeart = booleanMember(b, "bone_or_heart");
    v.cleared = booleanMember(b, "cleared");
    v.clearedDay = getText(b, "cleared_day");
    v.mostBalls = whole(b, "most_balls", 0, 10000);
    v.guardianConsent = booleanMember(b, "guardian_consent");
    v.note = getText(b, "note");
    v.warmUpDay = getText(b, "warm_up_day");
    return v;
}

Object bodyOf(const ExplanationFact& v) {
    Object body{{"verdict", v.verdict}, {"playbook", v.playbook}};
    put(body, "chain", v.chain);
    put(body, "clips", v.clips);
    Array rivals;
    for (const auto& r : v.rivals) {
        rivals.emplace_back(Object{{"node", r.node}, {"probability", r.probability}, {"share", r.share}});
    }
    if (!rivals.empty()) {
        body.emplace("causes", std::move(rivals));
    }
    return body;
}

ExplanationFact explanationOf(const Object& b) {
    ExplanationFact v;
    v.verdict = getText(b, "verdict");
    v.chain = texts(b, "chain");
    v.clips = texts(b, "clips");
    v.playbook = whole(b, "playbook", 0, 1 << 20).value_or(0);
    const Value* list = member(b, "causes");
    if (list != nullptr && list->array() != nullptr) {
        for (const Value& entry : *list->array()) {
            if (const Object* o = entry.object(); o != nullptr && !getText(*o, "node").empty()) {
                v.rivals.push_back({getText(*o, "node"), numberMember(*o, "probability").value_or(0.0),
                                    numberMember(*o, "share").value_or(0.0)});
            }
        }
    }
    return v;
}

Object bodyOf(const CoachWord& v) {
    Object body{{"word", v.word}};
    putText(body, "proposal", v.proposal);
    put(body, "nodes", v.nodes);
    putText(body, "note", v.note);
    return body;
}

std::optional<CoachWord> coachWordOf(const Object& b) {
    constexpr std::array<std::string_view, 3> known{"accept", "reorder", "overrule"};
    CoachWord v{getText(b, "word"), getText(b, "proposal"), texts(b, "nodes"), getText(b, "note")};
    return std::find(known.begin(), known.end(), v.word) == known.end() ? std::nullopt
                                                                        : std::optional(std::move(v));
}

Object bodyOf(const Trial& v) {
    Object body{{"node", v.node}, {"result", v.result}, {"guard_held", v.guardHeld}};
    put(body, "before", v.before);
    put(body, "tried", v.tried);
    put(body, "after", v.after);
    put(body, "moved", v.moved);
    return body;
}

std::optional<Trial> trialOf(const Object& b) {
    Trial v{getText(b, "node"), getText(b, "result"), booleanMember(b, "guard_held").value_or(true),
            texts(b, "before"), texts(b, "tried"),    texts(b, "after"),
            texts(b, "moved")};
    return v.node.empty() ? std::nullopt : std::optional(std::move(v));
}

} // namespace plumbmark::records
