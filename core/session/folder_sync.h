// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "base/ids.h"
#include "base/progress.h"
#include "base/result.h"
#include "session/film_sharing.h"
#include "session/lesson_exchange.h"
#include "store/library.h"

namespace plumbmark::session {

/// Exchange through a folder that several devices reach: a stick, a network drive, a folder that another
/// program carries around. Every file has a name of its own made from its bytes and is never written again,
/// so there is nothing two devices could overwrite. A file counts only when all of it is there and its hashes
/// fit; until then it is looked at again the next time. The folder is never needed: what it missed is caught
/// up with later.
class FolderSync {
  public:
    explicit FolderSync(store::Library& library, const base::Clock& clock = base::systemClock())
        : library_(&library), clock_(&clock) {}

    struct Options {
        std::filesystem::path folder;
        /// Only this player's lessons go out, and only with a consent to share; nothing: everything, to a
        /// device of one's own.
        std::optional<base::Id> player;
        bool withHealth = false; ///< with `player`; a device of one's own gets everything
        bool withFilms = true;
        /// With `player`: films go only with the head covered and released (see film_sharing.h); those of a
        /// minor whose guardian did not agree to the face always do.
        bool coverHeads = false;
        std::string passphrase; ///< seals what goes out and opens what comes in
    };
    struct Receipt {
        bool away = false; ///< the folder is not there: nothing was done, nothing is lost
        int filesTaken = 0, filesSent = 0, filesTakenBack = 0;
        int recordsNew = 0, recordsSent = 0, needsYou = 0;
        std::vector<std::string> notes; ///< a sentence for each file that was left alone
    };
    /// Errors: those of the library, of writing, "consent.*".
    base::Result<Receipt> run(const Options& options, const base::Progress& progress = {});

  private:
    base::Result<Receipt> exchanged(const Options& options, const base::Progress& progress);
    base::Result<base::Id> placeOf(const Options& options);
    base::Result<void> takeIn(const Options& options, const base::Id& place, const base::Progress& progress,
                              Receipt& receipt);
    base::Result<void> takeBack(const Options& options, const base::Id& place, Receipt& receipt);
    base::Result<std::optional<SharedFilm>> copyFor(const base::Id& clip,
                                                    const std::filesystem::path& staging,
                                                    const base::Progress& progress, Receipt& receipt);
    base::Result<void> send(const Options& options, const base::Id& place, const base::Progress& progress,
                            Receipt& receipt);
    store::Library* library_;
    const base::Clock* clock_;
};

} // namespace plumbmark::session
