// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/clock.h"
#include "base/ids.h"
#include "base/result.h"
#include "records/inbox.h"
#include "store/library.h"

namespace plumbmark::session {

/// The desk for swings that were sent in: who waits, how long, what was promised.
class InboxDesk {
  public:
    explicit InboxDesk(store::Library& library, const base::Clock& clock = base::systemClock())
        : library_(&library), clock_(&clock) {}

    /// One fact each, from today (UTC) on; a promised day stays until it is answered. Errors (input):
    /// "book.no_such_thing", "record.bad_value".
    base::Result<void> wait(const base::Id& lesson, const std::string& due = {});
    base::Result<void> filmAgain(const base::Id& lesson, const std::string& because);
    base::Result<void> answered(const base::Id& lesson);

    struct Row {
        store::LessonRow lesson;
        records::Inbox inbox;
        int days = 0;                ///< whole days in this state
        std::optional<int> daysLeft; ///< to the promised day; negative: overdue; nothing: none promised
    };
    /// Called when a person opens a lesson: where it holds an answer that another device gave, that it was
    /// opened becomes a fact (once), which goes back with the lesson. Does nothing else. True when it was
    /// noted.
    base::Result<bool> noteOpened(const base::Id& lesson);

    struct Answer {
        store::LessonRow lesson;
        std::string day;                   ///< of the answer
        std::optional<std::string> opened; ///< first day on which it was opened; nothing: not told (yet)
    };
    /// What was answered here, the newest first.
    base::Result<std::vector<Answer>> answers();

    /// What is not answered: overdue first, then by promised day, then by how long it waits.
    base::Result<std::vector<Row>> open();

  private:
    base::Result<void> put(const base::Id& lesson, records::InboxState state, const std::string& due,
                           const std::string& because);
    store::Library* library_;
    const base::Clock* clock_;
};

} // namespace plumbmark::session
