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
#include "lessonfile/lessonfile.h"
#include "records/consent.h"
#include "store/library.h"

namespace plumbmark::session {

/// Whom something goes to. A device of one's own needs no consent; everybody else does.
enum class Audience { someoneElse, ownDevice };

/// What a file's signature says. A file whose signature does not fit is damaged and never gets this far.
enum class Sender { known, unknown };

/// Lessons out to a file and in from one.
class LessonExchange {
  public:
    explicit LessonExchange(store::Library& library, const base::Clock& clock = base::systemClock())
        : library_(&library), clock_(&clock) {}

    struct ExportOptions {
        Audience audience = Audience::someoneElse;
        bool withFilms = true;
        bool withHealth = false; ///< pain, body cards: only when chosen
        /// Films go with the head covered (only released ones, see film_sharing.h); the page then has no
        /// stills, and no sheet and no unknown part of another version goes along: they may show the face.
        bool coverHeads = false;
        bool withPage = true; ///< the lesson as one HTML page, for people without the program
        std::optional<std::filesystem::path> sheet = std::nullopt; ///< key-position sheet, PNG, travels along
        std::string passphrase = {};                               ///< seals the file; empty: not sealed
    };
    /// Films for somebody else are copies without place, device and dates; those here stay as they are. Of a
    /// minor no face goes out unless the guardian agreed to it. Errors (input): "book.no_such_thing",
    /// "consent.*" (the sentence says what is missing), "cover.*", "sheet.face", "seal.*", those of
    /// video::writeBareCopy and of lessonfile::write.
    base::Result<lessonfile::Summary> exportLesson(const base::Id& lesson,
                                                   const std::filesystem::path& target,
                                                   const ExportOptions& options,
                                                   const base::Progress& progress);

    /// Checks every byte, changes nothing. Errors (input): "seal.passphrase_needed" and those of unseal and
    /// verify.
    base::Result<lessonfile::Summary> verify(const std::filesystem::path& file,
                                             const base::Progress& progress,
                                             const std::string& passphrase = {});

    struct Receipt {
        lessonfile::Summary file;
        store::MergeReceipt records;
        int filmsNew = 0, filmsSame = 0;
        std::vector<std::string> ignored; ///< films that no record names
        std::vector<std::string>
            carried; ///< parts this version does not know; they are passed on with the lesson
        std::vector<base::Id> lessons;  ///< lessons the file tells about
        std::vector<std::string> lines; ///< the records themselves
        Sender sender = Sender::unknown;
        std::string senderName; ///< of a known sender
        /// "12 new, 3 the same, 1 needs you."
        [[nodiscard]] std::string sentence() const;
        /// "Whole, from Kim's tablet." or "Whole, sender unknown."
        [[nodiscard]] std::string origin() const;
    };
    /// All or nothing: stage, check everything, films to their places, one transaction. Importing the same
    /// file again changes nothing. Errors (input): "seal.passphrase_needed" and those of unseal and readInto.
    base::Result<Receipt> import(const std::filesystem::path& file, const base::Progress& progress,
                                 const std::string& passphrase = {});

    /// A person says once whose device a key is.
    base::Result<void> rememberSender(const std::string& publicKey, const std::string& name);
    /// Nothing for a key that nobody has named.
    [[nodiscard]] std::optional<std::string> senderOf(const std::string& publicKey) const;

    /// Whether something of a player may go to somebody else today.
    base::Result<void> mayShare(const base::Id& player);
    /// What is known of a player's age today, from consents and body card.
    base::Result<records::Age> ageOf(const base::Id& player);
    /// Whether films of a player may go out with the face in them (see records::mayShowFace).
    base::Result<bool> mayShowFace(const base::Id& player);
    /// Errors (input): those of records::check, "consent.guardian" (by the year of birth a guardian must
    /// agree), "book.no_such_thing".
    base::Result<void> noteConsent(const base::Id& player, const records::Consent& consent);
    /// The consents that stand; more than one where two devices disagree.
    base::Result<std::vector<records::Fact>> consents(const base::Id& player);

  private:
    // The public calls without their border (see base/guarded.h).
    base::Result<lessonfile::Summary> exported(const base::Id& lesson, const std::filesystem::path& target,
                                               const ExportOptions& options, const base::Progress& progress);
    base::Result<Receipt> imported(const std::filesystem::path& file, const base::Progress& progress,
                                   const std::string& passphrase);
    struct Standing {
        std::vector<records::Fact> consents;
        std::optional<int> birthYear;
    };
    base::Result<Standing> standingOf(const base::Id& player);
    base::Result<void> noted(const base::Id& player, const records::Consent& consent);
    base::Result<void> readFrom(const std::filesystem::path& file, const std::filesystem::path& staging,
                                const std::string& passphrase, const base::Progress& progress,
                                std::filesystem::path& plain);
    base::Result<void> addFilms(const base::Id& lesson, const ExportOptions& options,
                                const std::filesystem::path& staging, const base::Progress& progress,
                                lessonfile::Contents& contents);
    store::Library* library_;
    const base::Clock* clock_;
};

} // namespace plumbmark::session
