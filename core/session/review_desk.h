// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "analysis/analysis.h"
#include "base/ids.h"
#include "base/progress.h"
#include "base/result.h"
#include "exporting/lesson_story.h"
#include "exporting/page.h"
#include "exporting/request_card.h"
#include "exporting/tables.h"
#include "marks/player.h"
#include "records/fact.h"
#include "records/review.h"
#include "session/film_sharing.h"
#include "store/library.h"
#include "video/clip.h"

namespace plumbmark::session {

/// What a lesson gives to take home: tables, sheets, films. Reads the library, changes nothing in it.
class ReviewDesk {
  public:
    ReviewDesk(store::Library& library, analysis::NetworkBytes network)
        : library_(&library), network_(std::move(network)) {}

    /// The numbers that stand (the accepted ones, else the newest), oldest lesson first: of one lesson, of
    /// one player, or of the whole library. No film is read. Errors of store::Library.
    base::Result<std::vector<exporting::TableRow>> numbers(std::optional<base::Id> player,
                                                           std::optional<base::Id> lesson);

    /// One clip of a lesson.
    struct Choice {
        int shotNumber = 0; ///< from 1
        base::Id clip;
        marks::View view = marks::View::faceOn;
        bool filmHere = false;
        bool demonstration = false; ///< shows what the plan asks for; no swing of the student
    };
    /// The lesson's clips in the order they were made.
    base::Result<std::vector<Choice>> clips(const base::Id& lesson);

    /// The clip measured anew with its hand marks (blocks; seconds to minutes), told with the numbers that
    /// stand in the library. Nothing when cancelled. Errors: those of SwingDesk::open.
    base::Result<std::optional<analysis::Outcome>> measured(const base::Id& clip,
                                                            const base::Progress& progress);

    struct StoryOptions {
        bool measureAgain = false; ///< marks over the pictures, at the price of measuring every clip anew
        int mostSwings = 4;        ///< more clips are only counted
        std::size_t mostStills = 8;
        bool withHealth = true; ///< false: what tells about health (see records::tellsHealth) stays out
        /// With measureAgain: an opaque box over the player's head in every picture; where the head is not
        /// known there is no picture.
        bool coverHeads = false;
    };
    /// Everything the lesson tells at home. Without measureAgain from records and single frames of the films
    /// alone (moments): numbers and lights as they stand, marks only where a hand put them. Nothing when
    /// cancelled. Errors (input): "book.no_such_thing"; with measureAgain those of measured().
    base::Result<std::optional<exporting::LessonStory>>
    story(const base::Id& lesson, const StoryOptions& options, const base::Progress& progress);

    /// Keeps a spoken review of the lesson in place of the one before, with the voice of a sound file
    /// (nothing: the voice of the review before stays, where there is one). One transaction. Errors (input):
    /// "record.bad_value", "review.no_clip", "review.voice_long", those of video::loadSound.
    base::Result<base::Id> keep(const base::Id& lesson, records::Review review,
                                const std::optional<std::filesystem::path>& voice);
    /// The same with a voice that was just heard; its samples count from the review's beginning, none make a
    /// silent review. `voice` nothing: the voice before stays.
    base::Result<base::Id> keepHeard(const base::Id& lesson, records::Review review,
                                     const std::optional<video::Sound>& voice);
    /// What is heard with a review, from its pieces where it was cut; at a joint the voices fade within 4 ms.
    /// Nothing where none of it is in the library. Errors: those of video::loadSound.
    base::Result<std::optional<video::Sound>> voice(const records::Review& review);

    /// An edit of the review that stands: one fact, which undo takes back. Errors (input): "review.none",
    /// those of the edit, of keep().
    using Edit = std::function<base::Result<records::Review>(const records::Review&)>;
    base::Result<base::Id> edit(const base::Id& lesson, const Edit& how);
    /// A stretch of the review done again, with its own voice. Errors: those of edit() and keepHeard().
    base::Result<base::Id> recordAgain(const base::Id& lesson, std::int64_t fromMs, std::int64_t toMs,
                                       const records::Review& again,
                                       const std::optional<video::Sound>& voice);
    /// What stood before the last change (kept, edited, noted) stands again; may be said again and again.
    /// Errors (input): "review.nothing_before".
    base::Result<base::Id> undo(const base::Id& lesson);
    base::Result<bool> canUndo(const base::Id& lesson);
    /// The checkpoints that can be told of a clip as words to be lit, from records alone.
    base::Result<std::vector<records::LitCheck>> checks(const base::Id& clip);

    /// The coach stars an instant of a clip, or takes its star away; within half a frame it is the same
    /// instant. Errors (input): "book.no_such_thing", "record.bad_value" (a time outside the film).
    base::Result<void> star(const base::Id& clip, base::Seconds time, bool on);
    struct Star {
        base::Id clip{base::Id::Bytes{}};
        int shotNumber = 0; ///< from 1
        base::Seconds time;
        std::optional<marks::MomentId> moment; ///< within half a frame of this key moment
    };
    /// In the order of the lesson's clips, then by time.
    base::Result<std::vector<Star>> stars(const base::Id& lesson);
    /// A silent review of the starred instants, three seconds each, with marks and a caption: to be handed
    /// out at once or finished later. Errors (input): "review.no_stars"; those of keep().
    base::Result<base::Id> lessonSoFar(const base::Id& lesson);

    /// Before a lesson goes to somebody else: what was cut out of the voice must not go along. Where words of
    /// the voice are heard nowhere in the review that stands, that is kept anew with what is heard alone
    /// (coded anew once). Errors: those of voice() and keepHeard().
    base::Result<void> forgetCutWords(const base::Id& lesson);
    /// The review that stands, the newest where two devices made one; nothing where there is none.
    base::Result<std::optional<records::Review>> review(const base::Id& lesson);

    /// The lesson sheet as PDF (A4), every swing measured anew (blocks). False when cancelled: nothing is
    /// left. Errors: those of story(), Painter::pdf and exporting::writeWhole.
    base::Result<bool> sheet(const base::Id& lesson, const exporting::Painter& painter,
                             const std::filesystem::path& target, const base::Progress& progress);

    /// "Please film it again, because ...": what limited the lesson's clips, measured anew (blocks); empty
    /// where they were filmed as they should be. Nothing when cancelled. Errors: those of story().
    base::Result<std::optional<std::string>> filmAgainWords(const base::Id& lesson,
                                                            const base::Progress& progress);

    /// Whether the player's face stays out of what goes home: that of a minor, unless the guardian agreed to
    /// it (see records::mayShowFace).
    base::Result<bool> coversHeads(const base::Id& lesson);

    struct FilmRequest {
        std::optional<base::Id> clip;   ///< a tour of this swing; nothing: the spoken review
        std::optional<base::Id> beside; ///< with this one next to it at the same position
        bool coverHeads = false;        ///< opaque, whatever the consent; without it as the consent says
    };
    struct FilmMade {
        double seconds = 0.0;
        std::vector<records::ReviewCaption> captions;
        bool covered = false;
        /// Where heads are covered: stills from the finished film, to be looked at by a person before it goes
        /// anywhere. Those where the head was uncertain are among them.
        std::vector<HeadCovering::Still> strip;
    };
    /// Renders the film (blocks). Nothing when cancelled; then no file is left. Errors (input):
    /// "review.none" (no spoken review), "film.missing", "cover.no_head", those of comparison::matchSwings;
    /// and those of exporting::renderFilm.
    base::Result<std::optional<FilmMade>> film(const base::Id& lesson, const FilmRequest& request,
                                               const exporting::Painter& painter,
                                               const std::filesystem::path& target,
                                               const base::Progress& progress);

  private:
    base::Result<base::Id> put(const base::Id& lesson, const records::Review& review,
                               std::vector<records::Fact> with, std::optional<base::Id> restores);
    base::Result<records::Fact> voiceFact(const base::Id& lesson, const video::Sound& sound);
    base::Result<std::optional<records::Fact>> before(const base::Id& lesson);
    base::Result<analysis::Outcome> fromRecords(const store::ClipRow& clip);

    store::Library* library_;
    analysis::NetworkBytes network_;
};

/// The card for a student who sends swings in, by the target's ending: .html, or .pdf (needs a painter).
/// Errors (input): "record.bad_value" for a text over 500 bytes or not UTF-8, "output.no_painter"; those of
/// exporting::writeWhole.
base::Result<void> writeRequestCard(const exporting::RequestCard& card, const exporting::Painter* painter,
                                    const std::filesystem::path& target);

} // namespace plumbmark::session
