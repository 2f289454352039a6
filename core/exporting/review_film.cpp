// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/review_film.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <memory>

#include "exporting/head_cover.h"
#include "exporting/lesson_story.h"
#include "exporting/picture_marks.h"
#include "exporting/words.h"
#include "video/still.h"
#include "video/voice.h"
#include "video/writer.h"

namespace plumbmark::exporting {
namespace {

constexpr Ink kDark{0x10, 0x18, 0x1e};
constexpr Ink kWhite{0xff, 0xff, 0xff};
constexpr Ink kStroke{0xff, 0xd8, 0x00};
constexpr double kDotsPerMm = 10.0; ///< a frame is a page of one tenth of a millimetre a pixel

/// Side by side the players fill their halves down to the feet: the numbers get a band of their own below,
/// share of the height.
constexpr double kBand = 0.22;

constexpr double kCardSeconds = 2.5;
constexpr double kStandSeconds = 1.6;
constexpr double kEndSeconds = 1.0;

std::size_t frameShownAt(const std::vector<base::Seconds>& times, base::Seconds time) {
    // Half a microsecond of grace: times go through decimal text and 90 kHz ticks.
    const auto after = std::upper_bound(times.begin(), times.end(), time + base::Seconds{5e-7});
    return after == times.begin() ? 0 : static_cast<std::size_t>(after - times.begin()) - 1;
}

/// The key moment that is nearest to the frame shown at `time`, if that frame is the nearest to it.
std::optional<marks::MomentId> momentShown(const FilmSource& source, base::Seconds time) {
    if (source.outcome == nullptr || source.clip == nullptr || source.clip->times().empty()) {
        return std::nullopt;
    }
    const auto& times = source.clip->times();
    const std::size_t frame = frameShownAt(times, time);
    for (const marks::Moment& moment : source.outcome->moments) {
        std::size_t nearest = frameShownAt(times, moment.time);
        if (nearest + 1 < times.size() && times[nearest + 1] - moment.time < moment.time - times[nearest]) {
            ++nearest;
        }
        if (nearest == frame) {
            return moment.id;
        }
    }
    return std::nullopt;
}

/// A stretch of a tour: film time runs evenly from one to the other.
struct Stretch {
    double from, to; ///< seconds of the tour
    base::Seconds filmFrom, filmTo;
    bool marks = false;
    std::optional<marks::MomentId> moment;
};

std::shared_ptr<const video::RgbImage> cutOut(video::RgbImage whole, const base::Box& box) {
    const int x = static_cast<int>(box.x);
    const int y = static_cast<int>(box.y);
    const int width = static_cast<int>(box.width);
    const int height = static_cast<int>(box.height);
    if (x == 0 && y == 0 && width == whole.width && height == whole.height) {
        return std::make_shared<const video::RgbImage>(std::move(whole));
    }
    return std::make_shared<const video::RgbImage>(video::partOf(whole, x, y, width, height));
}

PageBox onPage(const base::Box& pixels) {
    return {pixels.x / kDotsPerMm, pixels.y / kDotsPerMm, pixels.width / kDotsPerMm,
            pixels.height / kDotsPerMm};
}

/// Draws the views of one film.
class Stage {
  public:
    Stage(const FilmScript& script, std::span<const FilmSource> sources, const Painter& painter, int width,
          int height)
        : script_(script), sources_(sources), painter_(painter), width_(width), height_(height),
          unit_(std::min(width, height) / 1080.0) {}

    base::Result<video::RgbImage> draw(const FilmView& view) {
        Page page;
        page.width = width_ / kDotsPerMm;
        page.height = height_ / kDotsPerMm;
        Rectangle ground;
        ground.box = {0, 0, page.width, page.height};
        ground.fill = kDark;
        page.items.emplace_back(ground);
        if (view.panes.empty()) {
            card(page);
        }
        for (std::size_t i = 0; i < view.panes.size(); ++i) {
            if (auto drawn = pane(page, view.panes[i], i, view.panes.size()); !drawn) {
                return drawn.error();
            }
        }
        return painter_.raster(page, width_, height_);
    }

  private:
    /// A type size that reads alike on every size of film: `pixels` at 1080 lines.
    [[nodiscard]] TextStyle type(double pixels, Weight weight, Align align = Align::start) const {
        return {pixels * unit_ / kDotsPerMm * 72.0 / 25.4, weight, align, kWhite};
    }

    void card(Page& page) {
        const double margin = page.width * 0.08;
        const double width = page.width - 2 * margin;
        const TextStyle title = type(72, Weight::bold, Align::centre);
        const TextStyle quiet = type(44, Weight::regular, Align::centre);
        const double most = page.height * 0.42;
        const double first = std::min(most, painter_.textHeight(script_.title, title, width));
        const double second = std::min(most, painter_.textHeight(script_.subtitle, quiet, width));
        const double y = (page.height - first - second) / 2.0;
        page.items.emplace_back(Text{{margin, y, width, first + 0.2}, script_.title, title});
        page.items.emplace_back(
            Text{{margin, y + first + 2.0 * unit_, width, second + 0.2}, script_.subtitle, quiet});
    }

    base::Result<void> pane(Page& page, const FilmPane& pane, std::size_t index, std::size_t count) {
        const FilmSource& source = sources_[pane.source];
        const video::ClipInfo& info = source.clip->info();
        const std::size_t number = frameShownAt(source.clip->times(), pane.time);
        auto frame = source.clip->frame(static_cast<int>(number));
        if (!frame) {
            return frame.error();
        }
        const FilmPlacement place = placementOf(pane, index, count, info.width, info.height, width_, height_);
        const PageBox box = onPage(place.box);
        video::RgbImage whole = frame->rgb();
        if (source.cover != nullptr && number < source.cover->size()) {
            coverWith(whole, (*source.cover)[number]);
        }
        page.items.emplace_back(Picture{box, cutOut(std::move(whole), place.visible)});
        const base::Vec2 corner{place.visible.x, place.visible.y};
        const double scale = box.width / place.visible.width;
        if (pane.marks && source.outcome != nullptr) {
            drawMarks(marksAt(*source.outcome, number, pane.moment), corner, scale, box, page.items,
                      unit_ * 1.1);
        }
        for (const auto& stroke : pane.strokes) {
            for (std::size_t i = 1; i < stroke.size(); ++i) {
                const auto at = [&](base::Vec2 p) {
                    return base::Vec2{box.x + (p.x - corner.x) * scale, box.y + (p.y - corner.y) * scale};
                };
                if (const auto inside = clippedLine(at(stroke[i - 1]), at(stroke[i]), box)) {
                    Line line;
                    line.from = inside->first;
                    line.to = inside->second;
                    line.width = 0.8 * unit_;
                    line.edgeWidth = 0.3 * unit_;
                    line.ink = kStroke;
                    line.edge = kDark;
                    page.items.emplace_back(line);
                }
            }
        }
        if (pane.moment && source.outcome != nullptr) {
            const double column = page.width / static_cast<double>(count);
            numbers(page,
                    count > 1 ? PageBox{column * static_cast<double>(index), 0, column, page.height} : box,
                    *source.outcome, *pane.moment);
        }
        if (!pane.lights.empty()) {
            // Side by side they stand in the band below, so that nothing lies on a player.
            const double band = page.height * (1.0 - kBand);
            lights(page,
                   count > 1 ? PageBox{page.width / 2.0, band, page.width / 2.0, page.height - band} : box,
                   pane.lights);
        }
        return {};
    }

    /// What the coach lit, in the upper right corner: shape and words, never colour alone.
    void lights(Page& page, const PageBox& box, const std::vector<records::LitCheck>& lit) {
        const double pad = 1.6 * unit_;
        const double sign = 4.2 * unit_;
        const TextStyle style = type(34, Weight::bold);
        const double width = std::min(box.width - 2 * pad, 84.0 * unit_);
        const double left = box.x + box.width - width - pad;
        double y = box.y + pad;
        for (const records::LitCheck& light : lit) {
            const coaching::State state = coaching::stateFromName(light.state);
            const std::string words =
                light.words + (light.words.empty() ? "" : ": ") + std::string(stateWord(state));
            const double inner = width - sign - 3 * pad;
            const double height =
                std::max(sign, std::min(0.3 * box.height, painter_.textHeight(words, style, inner)));
            if (y + height + 2 * pad > box.y + box.height) {
                break;
            }
            Rectangle plate;
            plate.box = {left, y, width, height + pad};
            plate.cornerRadius = 1.2 * unit_;
            plate.fill = kDark;
            page.items.emplace_back(plate);
            page.items.emplace_back(
                Shape{signOf(state), {left + pad + sign / 2, y + (height + pad) / 2}, sign});
            page.items.emplace_back(
                Text{{left + sign + 2 * pad, y + pad / 2, inner, height + 0.2}, words, style});
            y += height + 1.6 * pad;
        }
    }

    /// The moment's name and numbers on a plate in the lower left corner.
    void numbers(Page& page, const PageBox& box, const analysis::Outcome& outcome, marks::MomentId moment) {
        const double pad = 1.6 * unit_;
        const double sign = 3.4 * unit_;
        const double width = std::min(box.width - 2 * pad, 78.0 * unit_);
        const TextStyle bold = type(40, Weight::bold);
        const TextStyle plain = type(31, Weight::regular);
        std::vector<Item> items;
        double y = pad;
        const auto put = [&](const std::string& words, const TextStyle& style, double indent) {
            const double height = painter_.textHeight(words, style, width - 2 * pad - indent);
            items.emplace_back(
                Text{{box.x + 2 * pad + indent, y, width - 2 * pad - indent, height + 0.2}, words, style});
            y += height;
        };
        put(std::string(momentLabel(moment)), bold, 0);
        for (const auto* m : tellingNumbers(outcome, moment, 3)) {
            const auto decides =
                std::find_if(outcome.checkpoints.begin(), outcome.checkpoints.end(),
                             [&](const auto& c) { return c.measurement == m->id && c.moment == m->moment; });
            if (decides != outcome.checkpoints.end()) {
                items.emplace_back(
                    Shape{signOf(decides->state),
                          {box.x + 2 * pad + sign / 2, y + painter_.textHeight("X", plain, width) / 2},
                          sign});
            }
            put(measurementLabel(m->id) + " " + valueText(m->id, *m->value, outcome.context.statureMetres),
                plain, sign + 1.2 * unit_);
        }
        const double top = box.y + box.height - y - 2 * pad;
        Rectangle plate;
        plate.box = {box.x + pad, top, width, y + pad};
        plate.cornerRadius = 1.2 * unit_;
        plate.fill = kDark;
        page.items.emplace_back(plate);
        for (Item& item : items) {
            moveDown(item, top);
            page.items.push_back(std::move(item));
        }
    }

    const FilmScript& script_;
    std::span<const FilmSource> sources_;
    const Painter& painter_;
    int width_, height_;
    double unit_;
};

/// The player over the whole swing with room around, upright picture pixels; nothing without marks.
std::optional<base::Box> playerBox(const analysis::Outcome& outcome) {
    base::Vec2 low{1e9, 1e9};
    base::Vec2 high{-1e9, -1e9};
    bool any = false;
    for (const marks::FrameMarks& frame : outcome.track) {
        for (std::size_t i = 0; i <= static_cast<std::size_t>(marks::Landmark::pelvis_rear); ++i) {
            const auto& mark = frame.points[i];
            if (mark && std::isfinite(mark->at.x) && std::isfinite(mark->at.y)) {
                low = {std::min(low.x, mark->at.x), std::min(low.y, mark->at.y)};
                high = {std::max(high.x, mark->at.x), std::max(high.y, mark->at.y)};
                any = true;
            }
        }
    }
    if (!any) {
        return std::nullopt;
    }
    const double room = 0.22 * std::max(high.x - low.x, high.y - low.y) + 8.0; // club, crown and soles
    return base::Box{low.x - room, low.y - room, high.x - low.x + 2 * room, high.y - low.y + 2 * room};
}

/// The map's value where the stretch that both show begins: it lies between `outside` and `inside`.
std::optional<base::Seconds>
nearestTold(const std::function<std::optional<base::Seconds>(base::Seconds)>& map, base::Seconds outside,
            base::Seconds inside) {
    for (int i = 0; i < 24; ++i) {
        const base::Seconds middle = (outside + inside) / 2.0;
        (map(middle) ? inside : outside) = middle;
    }
    return map(inside);
}

std::string vttTime(std::int64_t ms) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%02lld:%02lld:%02lld.%03lld",
                  static_cast<long long>(ms / 3600000), static_cast<long long>(ms / 60000 % 60),
                  static_cast<long long>(ms / 1000 % 60), static_cast<long long>(ms % 1000));
    return text.data();
}

} // namespace

FilmScript swingTour(const analysis::Outcome& first,
                     const std::function<std::optional<base::Seconds>(base::Seconds)>& inSecond,
                     const analysis::Outcome* second) {
    const marks::Moments& moments = first.moments;
    const base::Seconds last{std::max(0.0, first.clip.duration.value() - 1e-6)};
    const double real =
        first.timeScale.known && first.timeScale.realPerShown > 0.0 ? first.timeScale.realPerShown : 1.0;
    base::Seconds begin{0.0};
    base::Seconds end = last;
    if (!moments.empty()) {
        const base::Seconds around{0.4 / real};
        begin = std::max(begin, moments.front().time - around);
        end = std::min(end, moments.back().time + around);
    }
    std::vector<Stretch> stretches;
    double t = kCardSeconds;
    const auto run = [&](base::Seconds from, base::Seconds to, double filmPerSecond, bool marks) {
        const double length = std::max(0.0, (to - from).value()) / filmPerSecond;
        stretches.push_back({t, t + length, from, to, marks, std::nullopt});
        t += length;
    };
    run(begin, end, 1.0 / real, false);
    // Slow enough to see, not so slow that the film stands still between two frames of its own.
    const double captured = first.clip.playbackFps / real;
    const double slowed = (captured >= 100.0 ? 0.125 : 0.25) / real;
    std::vector<records::ReviewCaption> captions;
    base::Seconds at = begin;
    for (const marks::Moment& moment : moments) {
        const base::Seconds there = std::clamp(moment.time, at, std::max(at, end));
        run(at, there, slowed, true);
        stretches.push_back({t, t + kStandSeconds, there, there, true, moment.id});
        std::string words(momentLabel(moment.id));
        for (const auto* m : tellingNumbers(first, moment.id, 3)) {
            words += "\n" + measurementLabel(m->id) + " " +
                     valueText(m->id, *m->value, first.context.statureMetres);
        }
        captions.push_back(
            {std::llround(t * 1000.0), std::llround((t + kStandSeconds) * 1000.0), std::move(words)});
        t += kStandSeconds;
        at = there;
    }
    run(at, std::max(at, end), slowed, true);
    stretches.push_back({t, t + kEndSeconds, std::max(at, end), std::max(at, end), false, std::nullopt});
    FilmScript script;
    script.seconds = t + kEndSeconds;
    script.captions = std::move(captions);
    // Half a screen is narrow: side by side, both players fill their half.
    const auto zoom = inSecond ? playerBox(first) : std::nullopt;
    const auto otherZoom = inSecond && second != nullptr ? playerBox(*second) : std::nullopt;
    script.at = [stretches, inSecond, zoom, otherZoom](double seconds) {
        FilmView view;
        if (seconds < kCardSeconds) {
            return view;
        }
        const auto it = std::find_if(stretches.begin(), stretches.end(),
                                     [&](const Stretch& s) { return seconds < s.to; });
        const Stretch& s = it == stretches.end() ? stretches.back() : *it;
        const double share = s.to > s.from ? std::clamp((seconds - s.from) / (s.to - s.from), 0.0, 1.0) : 0.0;
        FilmPane pane;
        pane.time = s.filmFrom + (s.filmTo - s.filmFrom) * share;
        pane.marks = s.marks;
        pane.moment = s.moment;
        pane.zoom = zoom;
        view.panes.push_back(pane);
        if (inSecond) {
            FilmPane other = pane;
            other.source = 1;
            other.zoom = otherZoom;
            auto time = inSecond(pane.time);
            for (double step = 0.01; !time && step < 60.0; step *= 1.5) {
                for (const double way : {step, -step}) {
                    if (!time && inSecond(pane.time + base::Seconds{way})) {
                        time = nearestTold(inSecond, pane.time, pane.time + base::Seconds{way});
                    }
                }
            }
            other.time = time.value_or(base::Seconds{0.0});
            view.panes.push_back(other);
        }
        return view;
    };
    return script;
}

FilmScript spokenScript(const records::Review& review, const std::map<base::Id, std::size_t>& places,
                        std::span<const FilmSource> sources) {
    FilmScript script;
    script.seconds = static_cast<double>(review.lengthMs) / 1000.0;
    script.captions = review.captions;
    script.sideBySide =
        std::any_of(review.acts.begin(), review.acts.end(), [](const records::ReviewAct& act) {
            return act.act == records::Act::beside && act.clip;
        });
    const std::vector<FilmSource> known(sources.begin(), sources.end());
    script.at = [review, places, known](double seconds) {
        const records::ReviewStanding now = records::standingAt(review, seconds * 1000.0);
        FilmView view;
        const auto source = now.view.clip ? places.find(*now.view.clip) : places.end();
        if (source == places.end()) {
            return view;
        }
        FilmPane pane;
        pane.source = source->second;
        pane.time = now.view.time;
        pane.zoom = now.view.zoom;
        pane.strokes = now.view.strokes;
        pane.marks = now.view.marks;
        pane.lights = now.view.lights;
        if (pane.marks && now.speed == 0.0 && pane.source < known.size()) {
            pane.moment = momentShown(known[pane.source], pane.time);
        }
        view.panes.push_back(std::move(pane));
        const auto other = now.view.beside ? places.find(*now.view.beside) : places.end();
        if (other != places.end()) {
            FilmPane beside;
            beside.source = other->second;
            // Half a screen is narrow: both players fill their half where the coach did not magnify.
            if (!view.panes.front().zoom && view.panes.front().source < known.size() &&
                known[view.panes.front().source].outcome != nullptr) {
                view.panes.front().zoom = playerBox(*known[view.panes.front().source].outcome);
            }
            if (beside.source < known.size() && known[beside.source].outcome != nullptr) {
                beside.zoom = playerBox(*known[beside.source].outcome);
            }
            beside.time = now.view.besideTime;
            beside.marks = now.view.marks;
            view.panes.push_back(std::move(beside));
        }
        return view;
    };
    return script;
}

std::vector<FilmShown> shownAt(const FilmScript& script, std::span<const FilmSource> sources, double seconds,
                               int width, int height) {
    std::vector<FilmShown> shown;
    const FilmView view = script.at(seconds);
    for (std::size_t i = 0; i < view.panes.size(); ++i) {
        const FilmPane& pane = view.panes[i];
        const video::Clip& clip = *sources[pane.source].clip;
        shown.push_back(
            {pane.source, frameShownAt(clip.times(), pane.time),
             placementOf(pane, i, view.panes.size(), clip.info().width, clip.info().height, width, height)});
    }
    return shown;
}

std::pair<int, int> filmSize(std::span<const FilmSource> sources, bool sideBySide) {
    if (sideBySide || sources.empty()) {
        return {1920, 1080};
    }
    const video::ClipInfo& info = sources.front().clip->info();
    const double longer = std::max(info.width, info.height);
    const double scale = std::clamp(longer, 1280.0, 1920.0) / longer;
    const auto even = [](double v) { return std::max(2, static_cast<int>(std::lround(v / 2.0)) * 2); };
    return {even(info.width * scale), even(info.height * scale)};
}

FilmPlacement placementOf(const FilmPane& pane, std::size_t index, std::size_t panes, int sourceWidth,
                          int sourceHeight, int width, int height) {
    const double paneWidth =
        static_cast<double>(width) / static_cast<double>(std::max<std::size_t>(1, panes));
    const double paneHeight = panes > 1 ? std::round(height * (1.0 - kBand)) : height;
    const base::Box room{paneWidth * static_cast<double>(index), 0, paneWidth, paneHeight};
    FilmPlacement place;
    place.visible = {0, 0, static_cast<double>(sourceWidth), static_cast<double>(sourceHeight)};
    if (pane.zoom) {
        // Grown to the pane's shape so that it is filled, kept inside the picture.
        const base::Box& box = *pane.zoom;
        const double aspect = room.width / room.height;
        double w = std::max(box.width, box.height * aspect);
        double h = w / aspect;
        w = std::clamp(std::round(w), 8.0, static_cast<double>(sourceWidth));
        h = std::clamp(std::round(h), 8.0, static_cast<double>(sourceHeight));
        const double x = std::round(box.x + box.width / 2 - w / 2);
        const double y = std::round(box.y + box.height / 2 - h / 2);
        place.visible = {std::clamp(x, 0.0, sourceWidth - w), std::clamp(y, 0.0, sourceHeight - h), w, h};
    }
    const double scale = std::min(room.width / place.visible.width, room.height / place.visible.height);
    const double w = place.visible.width * scale;
    const double h = place.visible.height * scale;
    place.box = {room.x + (room.width - w) / 2, room.y + (room.height - h) / 2, w, h};
    return place;
}

base::Result<bool> renderFilm(const FilmScript& script, std::span<const FilmSource> sources,
                              const video::Sound* voice, const Painter& painter, const FilmOptions& options,
                              const std::filesystem::path& target, const base::Progress& progress) {
    const auto count = static_cast<std::int64_t>(std::llround(script.seconds * options.fps));
    const bool sideBySide =
        script.sideBySide || (sources.size() > 1 && script.at(script.seconds).panes.size() > 1);
    auto [width, height] = filmSize(sources, sideBySide);
    if (options.width > 0 && options.height > 0) {
        width = options.width;
        height = options.height;
    }
    video::WriterOptions writing;
    writing.width = width;
    writing.height = height;
    writing.fps = options.fps;
    writing.quality = 22;
    writing.soundRate = voice != nullptr ? voice->rate : 0.0;
    auto writer = video::ClipWriter::create(target, writing);
    if (!writer) {
        return writer.error();
    }
    const std::vector<float> sound = voice != nullptr
                                         ? video::fitted(*voice, static_cast<double>(count) / options.fps)
                                         : std::vector<float>();
    std::size_t told = 0;
    Stage stage(script, sources, painter, width, height);
    std::optional<FilmView> before;
    video::RgbImage picture;
    for (std::int64_t k = 0; k < std::max<std::int64_t>(1, count); ++k) {
        if (progress.cancelled()) {
            return false;
        }
        const double t = (static_cast<double>(k) + 0.5) / options.fps;
        FilmView view = script.at(t);
        // Pictures that stand still are drawn once. Times differ on their way through one frame: what counts
        // is the frame.
        for (FilmPane& pane : view.panes) {
            const auto& times = sources[pane.source].clip->times();
            pane.time = times[frameShownAt(times, pane.time)];
        }
        if (!before || !(*before == view)) {
            auto drawn = stage.draw(view);
            if (!drawn) {
                return drawn.error();
            }
            picture = std::move(*drawn);
            before = std::move(view);
        }
        if (auto written = (*writer)->write(picture); !written) {
            return written.error();
        }
        if (voice != nullptr) {
            const auto until =
                std::min(sound.size(), static_cast<std::size_t>(std::llround(static_cast<double>(k + 1) /
                                                                             options.fps * voice->rate)));
            if (auto written = (*writer)->writeSound(std::span(sound).subspan(told, until - told));
                !written) {
                return written.error();
            }
            told = until;
        }
        if (k % 15 == 0) {
            progress.tell(static_cast<double>(k) / static_cast<double>(std::max<std::int64_t>(1, count)),
                          "Making the film");
        }
    }
    if (auto finished = (*writer)->finish(); !finished) {
        return finished.error();
    }
    return true;
}

std::string captionsVtt(std::span<const records::ReviewCaption> captions) {
    std::string vtt = "WEBVTT\n";
    for (const records::ReviewCaption& caption : captions) {
        std::string words;
        for (const char c : caption.text) {
            if (c == '&') {
                words += "&amp;";
            } else if (c == '<') {
                words += "&lt;";
            } else if (c == '>') {
                words += "&gt;"; // so no "-->" can end a cue either
            } else if (c == '\n' && !words.empty() && words.back() != '\n') {
                words += '\n';
            } else if (static_cast<unsigned char>(c) >= 0x20 && c != 0x7f) {
                words += c;
            }
        }
        while (!words.empty() && words.back() == '\n') {
            words.pop_back();
        }
        if (!words.empty()) {
            vtt += "\n" + vttTime(caption.fromMs) + " --> " + vttTime(caption.toMs) + "\n" + words + "\n";
        }
    }
    return vtt;
}

} // namespace plumbmark::exporting
