// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "analysis/analysis.h"
#include "base/geometry.h"
#include "base/ids.h"
#include "base/progress.h"
#include "base/result.h"
#include "exporting/page.h"
#include "records/review.h"
#include "video/clip.h"

/// A review as a film that plays anywhere: a script says what is to be seen at each instant, and rendering
/// draws it with the painter of the sheets and encodes it.
namespace plumbmark::exporting {

/// One swing in the picture.
struct FilmPane {
    std::size_t source = 0;        ///< which of the clips
    base::Seconds time;            ///< presentation time; the frame shown then, the last one beyond the end
    std::optional<base::Box> zoom; ///< upright picture pixels; nothing: the whole picture
    std::vector<std::vector<base::Vec2>> strokes; ///< what the coach drew, upright picture pixels
    bool marks = false;                           ///< landmarks, plumb line, shaft
    std::optional<marks::MomentId> moment;        ///< standing at this moment: its numbers are told too
    std::vector<records::LitCheck> lights;        ///< checkpoints that the coach lit, with their words
    friend bool operator==(const FilmPane&, const FilmPane&) = default;
};

/// One instant: a title card (no panes), one swing, or two side by side.
struct FilmView {
    std::vector<FilmPane> panes;
    friend bool operator==(const FilmView&, const FilmView&) = default;
};

struct FilmScript {
    std::string title, subtitle; ///< of the card
    double seconds = 0.0;
    std::function<FilmView(double seconds)> at;
    std::vector<records::ReviewCaption> captions;
    bool sideBySide = false; ///< at some time two swings are shown
};

/// Without anybody speaking: the card, the swing at its own speed, then slowed from key moment to key moment
/// with marks, standing at each with its numbers. `inSecond`: with a second swing beside, its time at the
/// same position (nothing outside the stretch that both show).
[[nodiscard]] FilmScript
swingTour(const analysis::Outcome& first,
          const std::function<std::optional<base::Seconds>(base::Seconds)>& inSecond = {},
          const analysis::Outcome* second = nullptr);

struct FilmSource {
    video::Clip* clip = nullptr;
    const analysis::Outcome* outcome = nullptr;
    const std::vector<base::Box>* cover = nullptr; ///< of the head, a box a frame (headCover); nothing: none
};

/// The coach's own acts. `places`: which clip is which of the sources. Where the film stands at a key moment
/// with its marks on, the moment's numbers are told too (needs `sources` with outcomes).
[[nodiscard]] FilmScript spokenScript(const records::Review& review,
                                      const std::map<base::Id, std::size_t>& places,
                                      std::span<const FilmSource> sources = {});

struct FilmOptions {
    int width = 0, height = 0; ///< px, even; 0: by the sources (see filmSize)
    double fps = 30.0;
};

/// One swing: its own shape with the longer side 1280 to 1920. Two: 1920 x 1080.
[[nodiscard]] std::pair<int, int> filmSize(std::span<const FilmSource> sources, bool sideBySide);

/// Where a picture lies in a frame: fitted to the whole frame, or side by side to the upper four fifths of
/// its half (the numbers stand below). A zoom is grown to that shape and kept inside the picture.
struct FilmPlacement {
    base::Box visible; ///< part of the source's picture that is shown, whole pixels
    base::Box box;     ///< where it lies in the frame, px
};
[[nodiscard]] FilmPlacement placementOf(const FilmPane& pane, std::size_t index, std::size_t panes,
                                        int sourceWidth, int sourceHeight, int width, int height);

/// Draws and writes an MP4 (H.264, with a voice AAC) that appears under its name only when whole. Frame k
/// shows the script at (k + 1/2) / fps, so a cut is at most half a frame (17 ms at 30 a second) from its
/// place in the voice. No place, device or time goes into the file. False when cancelled: nothing is left.
/// Errors: those of video::ClipWriter, video::Clip::frame and Painter::raster.
base::Result<bool> renderFilm(const FilmScript& script, std::span<const FilmSource> sources,
                              const video::Sound* voice, const Painter& painter, const FilmOptions& options,
                              const std::filesystem::path& target, const base::Progress& progress);

/// Which frame of which source an instant of the film shows, as renderFilm draws it; and where.
struct FilmShown {
    std::size_t source = 0, frame = 0;
    FilmPlacement placement;
};
[[nodiscard]] std::vector<FilmShown> shownAt(const FilmScript& script, std::span<const FilmSource> sources,
                                             double seconds, int width, int height);

/// Captions as WebVTT (W3C): markup escaped, control characters and line breaks that would end a cue taken
/// out.
[[nodiscard]] std::string captionsVtt(std::span<const records::ReviewCaption> captions);

} // namespace plumbmark::exporting
