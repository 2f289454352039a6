// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/result.h"
#include "records/value.h"

/// Where a sent-in lesson stands: one fact per change, the newest replaces the one before.
namespace plumbmark::records {

namespace kind {
inline constexpr std::string_view inbox = "inbox"; ///< belongs to a lesson
/// Belongs to a lesson: on the device to which an answer went it was opened.
inline constexpr std::string_view opened = "opened";
} // namespace kind

enum class InboxState {
    waiting,    ///< the student waits for the coach
    film_again, ///< the coach waits for better clips
    answered,
};
[[nodiscard]] std::string_view inboxStateName(InboxState state);

struct Inbox {
    InboxState state = InboxState::waiting;
    std::string since;   ///< ISO 8601 day on which this state began
    std::string due;     ///< ISO 8601 day of the promised answer; empty: none was promised
    std::string because; ///< film_again: what to do better
};
struct Opened {
    std::string answer; ///< id of the inbox fact that said "answered"
    std::string day;    ///< ISO 8601
};
[[nodiscard]] Object bodyOf(const Opened& value);
[[nodiscard]] std::optional<Opened> openedOf(const Object& body);

[[nodiscard]] Object bodyOf(const Inbox& value);
/// Nothing for a state or a day this version can't read.
[[nodiscard]] std::optional<Inbox> inboxOf(const Object& body);
/// Errors (input): "record.bad_value".
base::Result<void> check(const Inbox& value);

} // namespace plumbmark::records
