// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/film_sharing.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "base/files.h"
#include "base/hash.h"
#include "exporting/head_cover.h"
#include "records/film_copy.h"
#include "session/detail/no_such_thing.h"
#include "session/swing_desk.h"
#include "video/bare_copy.h"
#include "video/clip.h"
#include "video/writer.h"

namespace plumbmark::session {

namespace fs = std::filesystem;

namespace {

constexpr int kStills = 12, kMostStills = 96, kStillSide = 480;

/// Named after the film at hand, so that it goes with it (see cache/ in docs/library.md).
fs::path coveredFile(const store::Library& library, const store::ClipRow& clip) {
    return library.folder() / "cache" / (clip.film + "-head-covered");
}

struct Released {
    records::Fact fact;
    records::FilmCopy copy;
    fs::path file;
};
/// The newest released copy with the head covered that is here.
base::Result<std::optional<Released>> releasedCopy(store::Library& library, const base::Id& clip) {
    const auto facts = library.factsOf(clip, records::kind::filmCopy);
    if (!facts) {
        return facts.error();
    }
    std::optional<Released> found;
    for (const records::Fact& fact : *facts) {
        const auto copy = records::filmCopyOf(fact.body);
        std::error_code ignored;
        if (copy && copy->headCovered && fs::is_regular_file(library.filmPath(copy->sha256), ignored)) {
            found = Released{fact, *copy, library.filmPath(copy->sha256)};
        }
    }
    return found;
}

/// The encoder wants even sides: an odd one gets its last row or column twice.
video::RgbImage evenSided(video::RgbImage picture) {
    const int width = picture.width + picture.width % 2, height = picture.height + picture.height % 2;
    if (width == picture.width && height == picture.height) {
        return picture;
    }
    video::RgbImage out{width, height, {}};
    out.pixels.reserve(static_cast<std::size_t>(width) * static_cast<std::size_t>(height) * 3);
    for (int y = 0; y < height; ++y) {
        const int row = std::min(y, picture.height - 1);
        for (int x = 0; x < width; ++x) {
            const auto at =
                picture.pixels.begin() +
                (static_cast<std::ptrdiff_t>(row) * picture.width + std::min(x, picture.width - 1)) * 3;
            out.pixels.insert(out.pixels.end(), at, at + 3);
        }
    }
    return out;
}

std::set<int> chosenFrames(int frames, const std::vector<int>& doubtful) {
    std::set<int> chosen;
    for (int i = 0; i <= kStills; ++i) {
        chosen.insert(std::clamp(i * (frames - 1) / kStills, 0, frames - 1));
    }
    const auto room = static_cast<std::size_t>(kMostStills) - chosen.size();
    const std::size_t step = doubtful.size() / room + 1;
    for (std::size_t i = 0; i < doubtful.size(); i += step) {
        chosen.insert(std::min(doubtful[i], frames - 1));
    }
    return chosen;
}

/// False when cancelled.
base::Result<bool> writeCovered(video::Clip& film, const std::vector<base::Box>& cover,
                                const fs::path& target, const base::Progress& progress) {
    const video::ClipInfo& info = film.info();
    video::WriterOptions options;
    options.width = info.width + info.width % 2;
    options.height = info.height + info.height % 2;
    options.fps = info.playbackFps > 0.0 ? info.playbackFps : 30.0;
    if (info.captureSource == "metadata") {
        options.captureFps = info.captureFps;
    }
    auto writer = video::ClipWriter::create(target, options);
    if (!writer) {
        return writer.error();
    }
    base::Result<void> wrote;
    bool stopped = false;
    int next = 0, lastIndex = 0;
    video::RgbImage last;
    const auto put = [&](int index) {
        video::RgbImage picture = last;
        // Also where the head was in the frame that stands in for one that could not be decoded.
        exporting::coverWith(picture, cover[static_cast<std::size_t>(lastIndex)]);
        exporting::coverWith(picture, cover[static_cast<std::size_t>(index)]);
        wrote =
            (*writer)->write(evenSided(std::move(picture)), film.times()[static_cast<std::size_t>(index)]);
        return wrote.ok();
    };
    const auto read = film.stream(0, info.frames - 1, [&](const video::Frame& frame) {
        stopped = progress.cancelled();
        const bool first = last.pixels.empty();
        if (first) {
            last = frame.rgb();
            lastIndex = frame.index();
        }
        // A frame that could not be decoded stands as the one before it, so that every number stays right.
        while (!stopped && next < frame.index()) {
            if (!put(next++)) {
                return false;
            }
        }
        last = frame.rgb();
        lastIndex = frame.index();
        progress.tell(0.5 + 0.3 * frame.index() / info.frames, "cover");
        return !stopped && put(next++);
    });
    if (stopped) {
        return false;
    }
    if (!read || !wrote) {
        return !read ? read.error() : wrote.error();
    }
    while (next < info.frames) {
        if (!put(next++)) {
            return wrote.error();
        }
    }
    if (auto finished = (*writer)->finish(); !finished) {
        return finished.error();
    }
    return true;
}

/// Looks every frame of the covered film through and takes the stills. False when cancelled.
base::Result<bool> lookThrough(video::Clip& covered, const std::vector<base::Box>& cover,
                               const std::vector<int>& doubtful, HeadCovering::Strip& strip,
                               const base::Progress& progress) {
    const int frames = static_cast<int>(cover.size());
    const auto open =
        base::failure("cover.open", "A frame came out uncovered, so nothing was kept; try again, "
                                    "or share without the clips.");
    if (covered.info().frames != frames) {
        return open;
    }
    const std::set<int> chosen = chosenFrames(frames, doubtful);
    int seen = 0;
    bool stopped = false;
    auto read = covered.stream(0, frames - 1, [&](const video::Frame& frame) {
        stopped = progress.cancelled();
        const video::RgbImage picture = frame.rgb();
        if (stopped || !exporting::isCovered(picture, cover[static_cast<std::size_t>(frame.index())])) {
            return false;
        }
        ++seen;
        if (chosen.count(frame.index()) > 0) {
            strip.stills.push_back({frame.index(),
                                    std::binary_search(doubtful.begin(), doubtful.end(), frame.index()),
                                    smaller(picture, kStillSide)});
        }
        progress.tell(0.8 + 0.2 * frame.index() / frames, "look through");
        return true;
    });
    if (stopped) {
        return false;
    }
    if (!read || seen != frames) {
        return open;
    }
    return true;
}

} // namespace

video::RgbImage smaller(const video::RgbImage& picture, int side) {
    const int step = std::max(1, (std::max(picture.width, picture.height) + side - 1) / side);
    video::RgbImage out{picture.width / step, picture.height / step, {}};
    out.pixels.reserve(static_cast<std::size_t>(out.width) * static_cast<std::size_t>(out.height) * 3);
    for (int y = 0; y < out.height; ++y) {
        for (int x = 0; x < out.width; ++x) {
            for (int channel = 0; channel < 3; ++channel) {
                int sum = 0;
                for (int v = 0; v < step; ++v) {
                    for (int u = 0; u < step; ++u) {
                        sum += picture.pixels[static_cast<std::size_t>(
                            ((y * step + v) * picture.width + x * step + u) * 3 + channel)];
                    }
                }
                out.pixels.push_back(static_cast<std::uint8_t>(sum / (step * step)));
            }
        }
    }
    return out;
}

base::Result<std::optional<SharedFilm>> filmForSomebody(store::Library& library, const store::ClipRow& clip,
                                                        bool headCovered, const fs::path& staging,
                                                        const base::Progress& progress) {
    if (headCovered) {
        const auto released = releasedCopy(library, clip.id);
        if (!released) {
            return released.error();
        }
        if (*released) {
            return std::optional(SharedFilm{{(*released)->copy.sha256, (*released)->file}, std::nullopt});
        }
        if (!clip.filmHere) {
            return std::optional<SharedFilm>();
        }
        return base::inputError(
            "cover.not_released",
            "The head is not covered yet in a film of this lesson; make the cover and look "
            "it through first (\"plumbmark lesson cover\"), or leave the clips out.");
    }
    if (!clip.filmHere) {
        return std::optional<SharedFilm>();
    }
    if (clip.film != clip.clip.sha256) {
        return std::optional(SharedFilm{{clip.film, clip.file}, std::nullopt});
    }
    const fs::path bare = staging / ("bare-" + clip.film);
    if (auto copied = video::writeBareCopy(clip.file, bare, progress); !copied) {
        return copied.error();
    }
    const auto hash = base::sha256OfFile(bare, progress);
    if (!hash) {
        return hash.error();
    }
    SharedFilm shared{{hash->sha256, bare}, std::nullopt};
    if (hash->sha256 != clip.clip.sha256) {
        const auto maker = library.fact(clip.id);
        if (!maker) {
            return maker.error();
        }
        if (!*maker) {
            return detail::noSuchThing();
        }
        shared.copy = records::bareCopyFact(**maker, {clip.clip.sha256, hash->sha256, hash->size, false});
    }
    return std::optional(std::move(shared));
}

base::Result<std::optional<HeadCovering::Strip>> HeadCovering::make(const base::Id& id,
                                                                    const base::Progress& progress) {
    SwingDesk desk(*library_, network_);
    const base::Progress first{
        [&](double share, std::string_view stage) { progress.tell(share * 0.5, stage); }, progress.cancel};
    const auto opened = desk.open(id, first);
    if (!opened) {
        return opened.error();
    }
    if (!*opened) {
        return std::optional<Strip>();
    }
    auto film = video::Clip::open(desk.film());
    if (!film) {
        return film.error();
    }
    const video::ClipInfo& info = (*film)->info();
    const marks::Track& track = desk.outcome().track;
    const auto cover = exporting::headCover(track, info.width, info.height);
    if (cover.size() != static_cast<std::size_t>(info.frames)) {
        return base::inputError(
            "cover.no_head", "The player's head was not found in this film, so it cannot be covered; place "
                             "the head by hand in a few frames, or share without the clips.");
    }
    auto stage = library_->staging();
    if (!stage) {
        return stage.error();
    }
    const fs::path staged = stage->path() / "covered.mp4";
    const auto wrote = writeCovered(**film, cover, staged, progress);
    if (!wrote) {
        return wrote.error();
    }
    Strip strip;
    strip.clip = id;
    strip.frames = info.frames;
    const auto doubtful = exporting::doubtfulFrames(track);
    strip.doubtful = static_cast<int>(doubtful.size());
    bool whole = *wrote;
    if (whole) {
        // What goes out is looked at, not what was meant to go out.
        auto covered = video::Clip::open(staged);
        if (!covered) {
            return covered.error();
        }
        const auto looked = lookThrough(**covered, cover, doubtful, strip, progress);
        if (!looked) {
            return looked.error();
        }
        whole = *looked;
    }
    if (!whole) {
        return std::optional<Strip>();
    }
    const fs::path kept = coveredFile(*library_, *desk.clip());
    if (auto made = base::makeFolders(kept.parent_path()); !made) {
        return made.error();
    }
    if (auto moved = base::moveIntoPlace(staged, kept); !moved) {
        return moved.error();
    }
    return std::optional(std::move(strip));
}

base::Result<void> HeadCovering::release(const base::Id& id) {
    const auto row = library_->clip(id);
    const auto maker = library_->fact(id);
    if (!row || !maker) {
        return !row ? row.error() : maker.error();
    }
    if (!*row || !*maker) {
        return detail::noSuchThing();
    }
    const fs::path kept = coveredFile(*library_, **row);
    std::error_code ignored;
    if (!fs::is_regular_file(kept, ignored)) {
        return base::inputError("cover.not_made", "There is no covered copy to release; make it and look it "
                                                  "through first (\"plumbmark lesson cover\").");
    }
    const auto film = library_->addFilm(kept);
    if (!film) {
        return film.error();
    }
    std::vector<base::Id> path = (*maker)->path;
    path.push_back(id);
    const records::FilmCopy copy{(*row)->clip.sha256, film->sha256, film->bytes, true};
    if (auto added = library_->add({library_->make(records::kind::filmCopy, path, bodyOf(copy))}); !added) {
        return added;
    }
    fs::remove(kept, ignored);
    return {};
}

base::Result<HeadCovering::State> HeadCovering::state(const base::Id& id) {
    const auto row = library_->clip(id);
    if (!row) {
        return row.error();
    }
    if (!*row) {
        return detail::noSuchThing();
    }
    std::error_code ignored;
    if (fs::is_regular_file(coveredFile(*library_, **row), ignored)) {
        return State::made;
    }
    const auto released = releasedCopy(*library_, id);
    if (!released) {
        return released.error();
    }
    return *released ? State::released : State::none;
}

video::RgbImage contactSheet(const std::vector<HeadCovering::Still>& stills) {
    if (stills.empty()) {
        return {};
    }
    constexpr int gap = 6;
    const int width = stills.front().picture.width, height = stills.front().picture.height;
    const int columns = std::max(1, std::min(static_cast<int>(stills.size()), 2400 / (width + gap)));
    const int rows = (static_cast<int>(stills.size()) + columns - 1) / columns;
    video::RgbImage sheet{columns * (width + gap) + gap, rows * (height + gap) + gap, {}};
    sheet.pixels.assign(static_cast<std::size_t>(sheet.width) * static_cast<std::size_t>(sheet.height) * 3,
                        255);
    for (std::size_t i = 0; i < stills.size(); ++i) {
        const video::RgbImage& picture = stills[i].picture;
        const int left = gap + static_cast<int>(i) % columns * (width + gap);
        const int top = gap + static_cast<int>(i) / columns * (height + gap);
        for (int y = 0; y < std::min(height, picture.height); ++y) {
            const auto from = picture.pixels.begin() + static_cast<std::ptrdiff_t>(y) * picture.width * 3;
            std::copy(from, from + static_cast<std::ptrdiff_t>(std::min(width, picture.width)) * 3,
                      sheet.pixels.begin() + (static_cast<std::ptrdiff_t>(top + y) * sheet.width + left) * 3);
        }
    }
    return sheet;
}

} // namespace plumbmark::session
