// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "records/inbox.h"

#include <array>

#include "base/clock.h"

namespace plumbmark::records {
namespace {

constexpr std::array kStates{InboxState::waiting, InboxState::film_again, InboxState::answered};

bool isDay(const std::string& text) {
    return text.size() == 10 && base::fromIso(text);
}

} // namespace

std::string_view inboxStateName(InboxState state) {
    switch (state) {
    case InboxState::waiting:
        return "waiting";
    case InboxState::film_again:
        return "film_again";
    case InboxState::answered:
        break;
    }
    return "answered";
}

Object bodyOf(const Inbox& value) {
    Object body{{"state", inboxStateName(value.state)}, {"since", value.since}};
    if (!value.due.empty()) {
        body.emplace("due", value.due);
    }
    if (!value.because.empty()) {
        body.emplace("because", value.because);
    }
    return body;
}

Object bodyOf(const Opened& value) {
    return {{"answer", value.answer}, {"day", value.day}};
}

std::optional<Opened> openedOf(const Object& body) {
    Opened opened{textMember(body, "answer").value_or(""), textMember(body, "day").value_or("")};
    return opened.answer.empty() || !isDay(opened.day) ? std::nullopt : std::optional(std::move(opened));
}

std::optional<Inbox> inboxOf(const Object& body) {
    Inbox inbox;
    inbox.since = textMember(body, "since").value_or("");
    inbox.due = textMember(body, "due").value_or("");
    inbox.because = textMember(body, "because").value_or("");
    const std::string state = textMember(body, "state").value_or("");
    for (const InboxState known : kStates) {
        if (inboxStateName(known) == state && check(Inbox{known, inbox.since, inbox.due, inbox.because})) {
            inbox.state = known;
            return inbox;
        }
    }
    return std::nullopt;
}

base::Result<void> check(const Inbox& value) {
    if (!isDay(value.since) || (!value.due.empty() && !isDay(value.due))) {
        return base::inputError("record.bad_value", "A day must look like 2026-11-25; check it.");
    }
    if (value.because.size() > 10'000 || !isUtf8(value.because)) {
        return base::inputError("record.bad_value",
                                "The reason is too long or cannot be read; keep it under 10,000 characters.");
    }
    return {};
}

} // namespace plumbmark::records
