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
    /// What is not answered: overdue first, then by promised day, then by how long it waits.
    base::Result<std::vector<Row>> open();

  private:
    base::Result<void> put(const base::Id& lesson, records::InboxState state, const std::string& due,
                           const std::string& because);
    store::Library* library_;
    const base::Clock* clock_;
};

} // namespace plumbmark::session
