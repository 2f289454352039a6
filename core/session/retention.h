// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/clock.h"
#include "base/ids.h"
#include "base/result.h"
#include "store/library.h"

namespace plumbmark::session {

/// How long films are kept before a person is asked about them (our own choice, not a law's): of minors
/// sooner.
inline constexpr int kKeepMinorsFilmsDays = 90;
inline constexpr int kKeepFilmsDays = 365;

/// A clip whose time is over.
struct Overdue {
    base::Id clip{base::Id::Bytes{}};
    std::string playerName, lessonTitle;
    std::string day;         ///< of the lesson
    std::string since;       ///< ISO 8601: the first day on which it is overdue
    bool minor = false;      ///< see LessonExchange::ageOf
    bool ageUnknown = false; ///< then a minor's time holds
};

/// The review of what is kept: it proposes, a person decides; nothing is ever erased by itself.
class Retention {
  public:
    explicit Retention(store::Library& library, const base::Clock& clock = base::systemClock())
        : library_(&library), clock_(&clock) {}

    /// Clips whose film is here and whose time is over: minors' first, then the longest overdue. Of a player
    /// whose age nobody has told (no consent, no year of birth) films are kept as short as a minor's. Errors
    /// of store::Library.
    base::Result<std::vector<Overdue>> overdue();

  private:
    store::Library* library_;
    const base::Clock* clock_;
};

} // namespace plumbmark::session
