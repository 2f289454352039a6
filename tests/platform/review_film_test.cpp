// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Rendered films, decoded again: which source frame is shown when (a number is burnt into every source
// frame), where marks land, when the voice is heard; ffprobe and ffmpeg (Debian package ffmpeg) as second
// readers.
#include "exporting/review_film.h"

#include <array>
#include <atomic>
#include <cmath>
#include <csignal>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <sys/resource.h>

#include "awkward/awkward.h"
#include "awkward/strip.h"
#include "base/files.h"
#include "exporting/head_cover.h"
#include "hostile.h"
#include "painter/page_painter.h"
#include "story_for_tests.h"
#include "video/voice.h"
#include "video/writer.h"

using namespace plumbmark;
using namespace plumbmark::exporting;
using testing::HasSubstr;
using testing::Not;
namespace fs = std::filesystem;

namespace {

const base::Id kClip = *base::Id::fromHex("000102030405060708090a0b0c0d0e0f");

std::string answerOf(const std::string& command) {
    FILE* pipe = popen((command + " 2>&1").c_str(), "r");
    std::string answer;
    std::array<char, 4096> piece{};
    while (const std::size_t n = fread(piece.data(), 1, piece.size(), pipe)) {
        answer.append(piece.data(), n);
    }
    EXPECT_EQ(pclose(pipe), 0) << command << ": " << answer;
    return answer;
}

records::ReviewAct act(std::int64_t at, records::Act what) {
    records::ReviewAct a;
    a.atMs = at;
    a.act = what;
    return a;
}

/// Frozen at a time, then jumps and runs: every kind of act. Cuts lie off the 30 Hz grid on purpose.
records::Review cuts(std::int64_t length) {
    records::Review r;
    r.lengthMs = length;
    auto go = act(0, records::Act::go);
    go.clip = kClip;
    auto jump = act(713, records::Act::go);
    jump.time = base::Seconds{0.2021};
    auto play = act(1300, records::Act::play);
    play.speed = 0.1;
    auto back = act(2111, records::Act::go);
    back.time = base::Seconds{0.0531};
    r.acts = {go, jump, play, back, act(2111, records::Act::freeze)};
    return r;
}

/// Silence with a click of 5 ms at each time.
video::Sound clicks(const std::vector<double>& at, double seconds, double rate = 48'000) {
    video::Sound sound;
    sound.rate = rate;
    sound.samples.assign(static_cast<std::size_t>(seconds * rate), 0.0F);
    for (const double t : at) {
        for (int i = 0; i < static_cast<int>(0.005 * rate); ++i) {
            sound.samples[static_cast<std::size_t>(t * rate) + static_cast<std::size_t>(i)] =
                0.9F * static_cast<float>(std::sin(2.0 * 3.14159265 * 2000.0 * i / rate));
        }
    }
    return sound;
}

/// First sample louder than a quarter after `from`.
double loudAfter(const video::Sound& sound, double from) {
    for (auto i = static_cast<std::size_t>(std::max(0.0, (from - sound.start.value()) * sound.rate));
         i < sound.samples.size(); ++i) {
        if (std::abs(sound.samples[i]) > 0.25F) {
            return sound.start.value() + static_cast<double>(i) / sound.rate;
        }
    }
    return -1.0;
}

class ReviewFilm : public testing::Test {
  protected:
    ReviewFilm()
        : stage_(*base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test")),
          dir_(stage_.path()) {}
    std::unique_ptr<video::Clip> opened(const fs::path& path) {
        auto clip = video::Clip::open(path);
        EXPECT_TRUE(clip) << clip.error().sentence;
        return std::move(*clip);
    }
    void render(const FilmScript& script, const std::vector<FilmSource>& sources, const fs::path& target,
                const video::Sound* voice = nullptr, const FilmOptions& options = {}) {
        const auto made = renderFilm(script, sources, voice, painter_, options, target, {});
        ASSERT_TRUE(made) << made.error().sentence;
        ASSERT_TRUE(*made);
    }
    base::StagingFolder stage_;
    fs::path dir_;
    platform::PagePainter painter_;
};

} // namespace

// The burnt-in number of every output frame is that of the source frame which the container's own times
// (known by construction) show at that instant of the review.
TEST_F(ReviewFilm, ShowsTheRightFrameOfEverySource) {
    for (const char* name : {"plain", "variable-timing", "slow-text", "rotated-90"}) {
        SCOPED_TRACE(name);
        const auto source = awkward::make(name, dir_);
        ASSERT_TRUE(source) << source.error().sentence;
        const auto clip = opened(source->path);
        const records::Review review = cuts(3000);
        const fs::path file = dir_ / (std::string(name) + "-film.mp4");
        FilmOptions options;
        options.width = source->width / 2 * 2;
        options.height = source->height / 2 * 2;
        render(spokenScript(review, {{kClip, 0}}), {{clip.get(), nullptr, nullptr}}, file, nullptr, options);
        const auto film = opened(file);
        EXPECT_EQ(film->info().frames, 90);
        EXPECT_NEAR(film->info().playbackFps, 30.0, 1e-6);
        int read = 0;
        for (int k = 0; k < film->info().frames; ++k) {
            const double t = (k + 0.5) / 30.0;
            const double wanted = t < 0.713   ? 0.0
                                  : t < 1.3   ? 0.2021
                                  : t < 2.111 ? 0.2021 + 0.1 * (t - 1.3)
                                              : 0.0531;
            // A container's clock may round a frame's time either way.
            std::size_t frame = 0;
            bool close = false;
            for (std::size_t i = 0; i < source->times.size(); ++i) {
                if (source->times[i] <= wanted) {
                    frame = i;
                }
                close = close || std::abs(source->times[i] - wanted) < source->timeError + 1e-4;
            }
            const auto number = awkward::readStrip(film->frame(k)->luma());
            ASSERT_TRUE(number) << "output frame " << k;
            if (!close) {
                EXPECT_EQ(*number, source->numbers[frame]) << "output frame " << k;
                ++read;
            }
        }
        EXPECT_GT(read, 60);
    }
}

TEST_F(ReviewFilm, TheVoiceIsInStepAtEveryCut) {
    const auto source = awkward::make("variable-timing", dir_);
    const auto clip = opened(source->path);
    const std::vector<double> at{0.713, 1.3, 2.111};
    // The voice goes the whole way: kept small, decoded, put into the film.
    const auto kept = video::encodeVoice(clicks(at, 3.0));
    ASSERT_TRUE(kept) << kept.error().sentence;
    EXPECT_LT(kept->size(), 25'000U) << "3 seconds at 5 kB a second";
    const auto voice = video::loadSound(video::fromBytes(*kept));
    ASSERT_TRUE(voice) << voice.error().sentence;
    for (const double t : at) {
        EXPECT_NEAR(loudAfter(*voice, t - 0.1), t, 0.003);
    }
    const fs::path file = dir_ / "film.mp4";
    FilmOptions options;
    options.width = source->width / 2 * 2;
    options.height = source->height / 2 * 2;
    render(spokenScript(cuts(3000), {{kClip, 0}}), {{clip.get(), nullptr, nullptr}}, file, &*voice, options);
    const auto film = opened(file);
    const auto sound = film->sound();
    ASSERT_TRUE(sound);
    // Where the picture changes: at the two jumps.
    std::optional<int> before;
    std::vector<double> changes;
    for (int k = 0; k < film->info().frames; ++k) {
        const auto number = awkward::readStrip(film->frame(k)->luma());
        if (before && std::abs(*number - *before) > 5) {
            changes.push_back(film->times()[static_cast<std::size_t>(k)].value());
        }
        before = number;
    }
    ASSERT_EQ(changes.size(), 2U);
    EXPECT_NEAR(changes[0], loudAfter(*sound, 0.6), 0.020);
    EXPECT_NEAR(changes[1], loudAfter(*sound, 2.0), 0.020);
    for (const double t : at) {
        EXPECT_NEAR(loudAfter(*sound, t - 0.1), t, 0.004);
    }
    // Outside check: what ffprobe says about the file.
    const std::string told = answerOf("ffprobe -v error -show_format -show_streams '" + file.string() + "'");
    EXPECT_THAT(told, HasSubstr("codec_name=h264"));
    EXPECT_THAT(told, HasSubstr("codec_name=aac"));
    EXPECT_THAT(told, HasSubstr("pix_fmt=yuv420p"));
    EXPECT_THAT(told, HasSubstr("duration=3.0"));
    for (const char* word : {"location", "com.apple", "com.android", "creation_time", "make", "model"}) {
        EXPECT_THAT(told, Not(HasSubstr(std::string("TAG:") + word)));
    }
}

TEST_F(ReviewFilm, MarksAndStrokesLandWhereTheyBelong) {
    // A grey source with a red square of 40 px at (400, 200) and a green one at (100, 300).
    const fs::path file = dir_ / "squares.mp4";
    {
        video::WriterOptions options;
        options.width = 640;
        options.height = 360;
        options.fps = 30;
        options.quality = 10;
        auto writer = video::ClipWriter::create(file, options);
        video::RgbImage picture{640, 360, std::vector<std::uint8_t>(640 * 360 * 3, 110)};
        const auto square = [&](int x0, int y0, std::uint8_t r, std::uint8_t g) {
            for (int y = y0; y < y0 + 40; ++y) {
                for (int x = x0; x < x0 + 40; ++x) {
                    auto* p = &picture.pixels[static_cast<std::size_t>(3 * (640 * y + x))];
                    p[0] = r;
                    p[1] = g;
                    p[2] = 20;
                }
            }
        };
        square(400, 200, 230, 20);
        square(100, 300, 20, 200);
        for (int i = 0; i < 30; ++i) {
            ASSERT_TRUE((*writer)->write(picture));
        }
        ASSERT_TRUE((*writer)->finish());
    }
    const auto clip = opened(file);
    records::Review review;
    review.lengthMs = 3000;
    auto go = act(0, records::Act::go);
    go.clip = kClip;
    auto zoom = act(1000, records::Act::zoom);
    zoom.zoom = base::Box{360, 160, 160, 90};
    auto stroke = act(2000, records::Act::draw);
    stroke.points = {{380, 180}, {500, 180}};
    review.acts = {go, zoom, stroke};
    analysis::Outcome outcome = test::madeUpOutcome();
    const fs::path target = dir_ / "film.mp4";
    render(spokenScript(review, {{kClip, 0}}), {{clip.get(), &outcome, nullptr}}, target);
    const auto film = opened(target);
    ASSERT_EQ(film->info().width, 1280);
    const auto is = [&](int frame, double x, double y, int red, int green, int blue) {
        const video::RgbImage picture = film->frame(frame)->rgb();
        const auto* p = &picture.pixels[static_cast<std::size_t>(
            3 * (picture.width * static_cast<int>(y) + static_cast<int>(x)))];
        return std::abs(p[0] - red) < 40 && std::abs(p[1] - green) < 40 && std::abs(p[2] - blue) < 40;
    };
    // Whole picture at twice its size: just inside and just outside each edge of the red square.
    EXPECT_TRUE(is(10, 804, 420, 230, 20, 20));
    EXPECT_TRUE(is(10, 794, 420, 110, 110, 110));
    EXPECT_TRUE(is(10, 876, 476, 230, 20, 20));
    EXPECT_TRUE(is(10, 886, 476, 110, 110, 110));
    EXPECT_TRUE(is(10, 204, 604, 20, 200, 20));
    // Zoomed: 160 px fill 1280, eight to one. The square begins at ((400 - 360) * 8, (200 - 160) * 8).
    EXPECT_TRUE(is(45, 330, 330, 230, 20, 20));
    EXPECT_TRUE(is(45, 310, 330, 110, 110, 110));
    EXPECT_TRUE(is(45, 330, 310, 110, 110, 110));
    EXPECT_TRUE(is(45, 630, 630, 230, 20, 20));
    EXPECT_TRUE(is(45, 650, 630, 110, 110, 110));
    // The stroke: ((440 - 360) * 8, (180 - 160) * 8), yellow; not there a second earlier.
    EXPECT_TRUE(is(75, 640, 160, 255, 216, 0));
    EXPECT_FALSE(is(45, 640, 160, 255, 216, 0));
    EXPECT_TRUE(is(75, 640, 190, 110, 110, 110));
}

TEST_F(ReviewFilm, ATourStandsAtTheMomentsWithTheirNumbers) {
    const auto source = awkward::make("plain", dir_);
    const auto clip = opened(source->path);
    analysis::Outcome outcome = test::madeUpOutcome();
    outcome.clip = clip->info();
    outcome.timeScale = {1.0, true, "playback"};
    outcome.moments = {{marks::MomentId::address, base::Seconds{0.1}, base::Seconds{0.01}, "shaft"},
                       {marks::MomentId::impact, base::Seconds{0.3}, base::Seconds{0.01}, "shaft"}};
    FilmScript script = swingTour(outcome);
    script.title = test::hostileText(1);
    script.subtitle = "Kim";
    EXPECT_TRUE(script.at(1.0).panes.empty()) << "the card";
    int standing = 0;
    double last = -1.0;
    for (double t = 2.6; t < script.seconds; t += 1.0 / 30.0) {
        const FilmView view = script.at(t);
        ASSERT_EQ(view.panes.size(), 1U);
        if (view.panes[0].moment) {
            ++standing;
            const double there = view.panes[0].moment == marks::MomentId::address ? 0.1 : 0.3;
            EXPECT_DOUBLE_EQ(view.panes[0].time.value(), there);
        }
        if (view.panes[0].marks) {
            EXPECT_GE(view.panes[0].time.value(), last);
            last = view.panes[0].time.value();
        }
    }
    EXPECT_NEAR(standing / 30.0, 3.2, 0.2);
    ASSERT_EQ(script.captions.size(), 2U);
    EXPECT_EQ(script.captions[1].text, "Impact");
    EXPECT_EQ(script.captions[0].text, "Address\nSpine tilt 8.3 \u00b1 1.5\u00b0 from target")
        << "with its numbers";
    const fs::path file = dir_ / "tour.mp4";
    FilmOptions small;
    small.width = 320;
    small.height = 240;
    small.fps = 10;
    render(script, {{clip.get(), &outcome, nullptr}}, file, nullptr, small);
    EXPECT_THAT(answerOf("ffprobe -v error -show_streams '" + file.string() + "'"), Not(HasSubstr("audio")));
    // Side by side: the second swing runs on its own clock.
    const FilmScript two = swingTour(outcome, [](base::Seconds t) {
        return t.value() <= 0.3 ? std::optional(t + base::Seconds{0.1}) : std::nullopt;
    });
    for (double t = 2.6; t < two.seconds; t += 0.1) {
        const FilmView view = two.at(t);
        ASSERT_EQ(view.panes.size(), 2U);
        EXPECT_EQ(view.panes[1].source, 1U);
        EXPECT_NEAR(view.panes[1].time.value(), std::min(view.panes[0].time.value(), 0.3) + 0.1, 1e-5);
    }
}

TEST_F(ReviewFilm, SideBySideNothingLiesOnThePlayers) {
    FilmPane pane;
    pane.zoom = base::Box{300, 100, 200, 600};
    for (std::size_t i = 0; i < 2; ++i) {
        const FilmPlacement place = placementOf(pane, i, 2, 1280, 720, 1920, 1080);
        EXPECT_GE(place.box.x, 960.0 * static_cast<double>(i) - 1e-9);
        EXPECT_LE(place.box.x + place.box.width, 960.0 * static_cast<double>(i + 1) + 1e-9);
        EXPECT_LE(place.box.y + place.box.height, 842.0 + 1e-9) << "the band below is for the numbers";
        EXPECT_NEAR(place.visible.width / place.visible.height, 960.0 / 842.0, 0.01) << "the half is filled";
        EXPECT_LE(place.visible.x, 300.0);
        EXPECT_GE(place.visible.x + place.visible.width, 500.0);
        EXPECT_GE(place.visible.y, 0.0);
        EXPECT_LE(place.visible.y + place.visible.height, 720.0);
    }
}

TEST_F(ReviewFilm, StoppedOrWithoutSpaceItLeavesNothing) {
    const auto source = awkward::make("plain", dir_);
    const auto clip = opened(source->path);
    const FilmScript script = spokenScript(cuts(3000), {{kClip, 0}});
    const std::vector<FilmSource> sources{{clip.get(), nullptr, nullptr}};
    const auto files = [&] { return std::distance(fs::directory_iterator(dir_), fs::directory_iterator()); };
    const auto before = files();

    std::atomic<bool> cancel = false;
    const base::Progress progress{[&](double share, std::string_view) { cancel = share > 0.3; }, &cancel};
    const auto stopped = renderFilm(script, sources, nullptr, painter_, {}, dir_ / "film.mp4", progress);
    ASSERT_TRUE(stopped) << stopped.error().sentence;
    EXPECT_FALSE(*stopped);
    EXPECT_EQ(files(), before);

    // A disk that takes no more: the limit on a file's size makes the system refuse the writing.
    const auto usual = std::signal(SIGXFSZ, SIG_IGN);
    rlimit limit{};
    getrlimit(RLIMIT_FSIZE, &limit);
    rlimit tight = limit;
    tight.rlim_cur = 4096;
    setrlimit(RLIMIT_FSIZE, &tight);
    const auto full = renderFilm(script, sources, nullptr, painter_, {}, dir_ / "film.mp4", {});
    setrlimit(RLIMIT_FSIZE, &limit);
    std::signal(SIGXFSZ, usual);
    ASSERT_FALSE(full);
    EXPECT_EQ(full.error().key, "writer.disk");
    EXPECT_EQ(full.error().kind, base::ErrorKind::failure);
    EXPECT_EQ(files(), before);

    const auto nowhere = renderFilm(script, sources, nullptr, painter_, {}, dir_ / "no" / "film.mp4", {});
    ASSERT_FALSE(nowhere);
    EXPECT_EQ(nowhere.error().kind, base::ErrorKind::input);
}

/// The part of a picture where a pane lies.
video::PlaneView partOf(const video::PlaneView& luma, const base::Box& box) {
    const auto x = static_cast<int>(std::lround(box.x));
    const auto y = static_cast<int>(std::lround(box.y));
    video::PlaneView part = luma;
    part.data += y * luma.stride + x;
    part.width = static_cast<int>(std::lround(box.width));
    part.height = static_cast<int>(std::lround(box.height));
    return part;
}

// Two films side by side, one with uneven frame times, one in slow motion: both burnt-in numbers are those
// that the acts ask for, also after a jump and while they run.
TEST_F(ReviewFilm, BesideItTheOtherFilmStandsAtTheSamePosition) {
    const auto uneven = awkward::make("variable-timing", dir_);
    const auto slow = awkward::make("slow-text", dir_);
    ASSERT_TRUE(uneven && slow);
    const auto first = opened(uneven->path);
    const auto second = opened(slow->path);
    const base::Id other = *base::Id::fromHex("100102030405060708090a0b0c0d0e0f");
    records::Review review;
    review.lengthMs = 2000;
    auto go = act(0, records::Act::go);
    go.clip = kClip;
    go.time = base::Seconds{0.0213};
    auto beside = act(400, records::Act::beside);
    beside.clip = other;
    beside.same = {{base::Seconds{0.0}, base::Seconds{0.1037}}, {base::Seconds{0.4}, base::Seconds{0.9037}}};
    auto jump = act(800, records::Act::go);
    jump.time = base::Seconds{0.1571};
    auto play = act(1200, records::Act::play);
    play.speed = 0.125;
    auto alone = act(1800, records::Act::beside);
    review.acts = {go, beside, jump, play, alone};
    ASSERT_TRUE(check(review));
    const fs::path file = dir_ / "beside.mp4";
    const std::vector<FilmSource> sources{{first.get(), nullptr, nullptr}, {second.get(), nullptr, nullptr}};
    const FilmScript script = spokenScript(review, {{kClip, 0}, {other, 1}});
    FilmOptions small;
    small.width = 1280;
    small.height = 720;
    EXPECT_EQ(filmSize(sources, script.sideBySide), std::pair(1920, 1080));
    render(script, sources, file, nullptr, small);
    const auto film = opened(file);
    int read = 0;
    for (int k = 0; k < film->info().frames; ++k) {
        const double t = (k + 0.5) / 30.0;
        const double here = t < 0.8 ? 0.0213 : 0.1571 + 0.125 * std::max(0.0, t - 1.2);
        const double there = 0.1037 + 2.0 * here;
        const auto shown = shownAt(script, sources, t, small.width, small.height);
        ASSERT_EQ(shown.size(), t < 0.4 || t >= 1.8 ? 1U : 2U) << t;
        const auto picture = film->frame(k);
        for (std::size_t i = 0; i < shown.size(); ++i) {
            const auto& made = i == 0 ? *uneven : *slow;
            const double wanted = i == 0 ? here : there;
            std::size_t frame = 0;
            bool close = false;
            for (std::size_t n = 0; n < made.times.size(); ++n) {
                frame = made.times[n] <= wanted ? n : frame;
                close = close || std::abs(made.times[n] - wanted) < made.timeError + 1e-4;
            }
            const auto number = awkward::readStrip(partOf(picture->luma(), shown[i].placement.box));
            ASSERT_TRUE(number) << "output frame " << k << " pane " << i;
            if (!close) {
                EXPECT_EQ(*number, made.numbers[frame]) << "output frame " << k << " pane " << i;
                ++read;
            }
        }
    }
    EXPECT_GT(read, 70);
}

TEST_F(ReviewFilm, CoveredHeadsAreCoveredInEveryFrame) {
    const auto source = awkward::make("variable-timing", dir_);
    const auto clip = opened(source->path);
    const video::ClipInfo& info = clip->info();
    std::vector<base::Box> cover; // wanders, below the burnt-in number
    for (int i = 0; i < info.frames; ++i) {
        cover.push_back({20.0 + i % 60, std::round(info.height * 0.45), 64, 60});
    }
    records::Review review = cuts(3000);
    auto zoom = act(2500, records::Act::zoom);
    zoom.zoom = base::Box{0, info.height * 0.3, info.width * 0.6, info.height * 0.5};
    review.acts.push_back(zoom);
    const std::vector<FilmSource> sources{{clip.get(), nullptr, &cover}};
    const FilmScript script = spokenScript(review, {{kClip, 0}});
    FilmOptions options;
    options.width = info.width / 2 * 2;
    options.height = info.height / 2 * 2;
    const fs::path file = dir_ / "covered.mp4";
    render(script, sources, file, nullptr, options);
    const auto film = opened(file);
    for (int k = 0; k < film->info().frames; ++k) {
        const auto shown = shownAt(script, sources, (k + 0.5) / 30.0, options.width, options.height).at(0);
        const FilmPlacement& place = shown.placement;
        const double scale = place.box.width / place.visible.width;
        const base::Box& box = cover[shown.frame];
        const base::Box there{place.box.x + (box.x - place.visible.x) * scale,
                              place.box.y + (box.y - place.visible.y) * scale, box.width * scale,
                              box.height * scale};
        const auto picture = film->frame(k)->rgb();
        EXPECT_TRUE(isCovered(picture, there)) << "output frame " << k;
        EXPECT_FALSE(isCovered(picture, {there.x + there.width, there.y, there.width, there.height}))
            << "and nothing else is: output frame " << k;
    }
}

TEST_F(ReviewFilm, LitChecksAndNumbersAreTold) {
    const auto source = awkward::make("plain", dir_);
    const auto clip = opened(source->path);
    analysis::Outcome outcome = test::madeUpOutcome();
    outcome.track.assign(static_cast<std::size_t>(clip->info().frames), outcome.track.front());
    outcome.moments = {{marks::MomentId::address, base::Seconds{0.2001}, base::Seconds{0.01}, "shaft"}};
    records::Review review;
    review.lengthMs = 1500;
    auto go = act(0, records::Act::go);
    go.clip = kClip;
    go.time = base::Seconds{0.2001};
    auto marks = act(500, records::Act::marks);
    auto light = act(700, records::Act::light);
    light.lit = {"spine_tilt_address", "good", "Spine tilt at address 8.3 \u00b1 1.5\u00b0"};
    auto hostile = act(800, records::Act::light);
    hostile.lit = {"x", "<b>", test::hostileText(1)};
    auto away = act(1000, records::Act::go);
    away.time = base::Seconds{0.4};
    review.acts = {go, marks, light, hostile, away};
    ASSERT_TRUE(check(review)) << check(review).error().sentence;
    const std::vector<FilmSource> sources{{clip.get(), &outcome, nullptr}};
    const FilmScript script = spokenScript(review, {{kClip, 0}}, sources);
    EXPECT_EQ(script.at(0.3).panes[0].moment, std::nullopt) << "marks are off";
    EXPECT_EQ(script.at(0.6).panes[0].moment, marks::MomentId::address);
    EXPECT_EQ(script.at(1.2).panes[0].moment, std::nullopt) << "another instant";
    EXPECT_EQ(script.at(0.75).panes[0].lights.size(), 1U);
    EXPECT_EQ(script.at(0.9).panes[0].lights.size(), 2U);
    const fs::path file = dir_ / "lit.mp4";
    render(script, sources, file);
    const auto film = opened(file);
    const int width = film->info().width;
    const auto changed = [&](int a, int b, const base::Box& box) { // share of the pixels that differ
        const auto one = film->frame(a)->rgb();
        const auto two = film->frame(b)->rgb();
        int n = 0;
        int all = 0;
        for (int y = static_cast<int>(box.y); y < static_cast<int>(box.y + box.height); ++y) {
            for (int x = static_cast<int>(box.x); x < static_cast<int>(box.x + box.width); ++x, ++all) {
                const auto at = static_cast<std::size_t>(3 * (y * width + x));
                n += std::abs(one.pixels[at] - two.pixels[at]) > 30;
            }
        }
        return n / std::max(1.0, static_cast<double>(all));
    };
    const base::Box upperRight{width * 0.6, 12, width * 0.38, 30};
    const base::Box lowerLeft{12, film->info().height - 60.0, width * 0.3, 40};
    EXPECT_GT(changed(10, 22, upperRight), 0.2) << "the light";
    EXPECT_LT(changed(10, 18, upperRight), 0.02) << "not yet";
    EXPECT_GT(changed(10, 18, lowerLeft), 0.2) << "the numbers";
}

// Outside check: FFmpeg's WebVTT reader finds the cues.
TEST_F(ReviewFilm, CaptionsAreReadByOthers) {
    const std::vector<records::ReviewCaption> captions{
        {0, 1500, "Stand wider"},
        {1500, 3723004, "a <b>bold</b> & --> \n\n00:00:01.000 --> 00:00:02.000\nb\x01\u05e9\u05dc\U0001f3cc"},
        {3723004, 3724000, ""}};
    const std::string vtt = captionsVtt(captions);
    EXPECT_THAT(vtt, testing::StartsWith("WEBVTT\n\n00:00:00.000 --> 00:00:01.500\nStand wider\n"));
    const fs::path file = dir_ / "captions.vtt";
    std::ofstream(file, std::ios::binary) << vtt;
    const std::string srt = answerOf("ffmpeg -v error -i '" + file.string() + "' -f srt -");
    EXPECT_THAT(srt, HasSubstr("00:00:00,000 --> 00:00:01,500\nStand wider"));
    EXPECT_THAT(srt, HasSubstr("00:00:01,500 --> 01:02:03,004"));
    EXPECT_THAT(srt, HasSubstr("\u05e9\u05dc\U0001f3cc"));
    EXPECT_THAT(srt, Not(HasSubstr("\n3\n"))) << "two cues only";
}

// One list for everything that people type (tests/hostile): one cue each, none forged, none lost.
TEST_F(ReviewFilm, EveryHostileTextIsOneCue) {
    std::vector<records::ReviewCaption> captions;
    for (const std::string& text : test::hostileTexts()) {
        const auto n = static_cast<std::int64_t>(captions.size());
        captions.push_back({n * 1000, n * 1000 + 900, "x" + text + " END" + std::to_string(n) + "."});
    }
    ASSERT_GT(captions.size(), 30U);
    const fs::path file = dir_ / "captions.vtt";
    std::ofstream(file, std::ios::binary) << captionsVtt(captions);
    // Outside check: FFmpeg's WebVTT reader.
    const std::string cues = answerOf(
        "ffprobe -v error -show_entries packet=pts_time,duration_time -of csv=p=0 '" + file.string() + "'");
    EXPECT_EQ(std::count(cues.begin(), cues.end(), '\n'), static_cast<std::ptrdiff_t>(captions.size()))
        << cues;
    const std::string srt = answerOf("ffmpeg -v error -i '" + file.string() + "' -f srt -");
    for (std::size_t n = 0; n < captions.size(); ++n) {
        EXPECT_THAT(srt, HasSubstr("END" + std::to_string(n) + "."));
        char time[32];
        std::snprintf(time, sizeof(time), "00:00:%02d,000 --> 00:00:%02d,900", static_cast<int>(n),
                      static_cast<int>(n));
        EXPECT_THAT(srt, HasSubstr(time));
    }
}

TEST_F(ReviewFilm, SoundFilesOfAllSortsAreHeard) {
    const fs::path wav = dir_ / "voice.wav";
    answerOf("ffmpeg -v error -f lavfi -i \"aevalsrc=0.8*sin(2*PI*1000*t)*gt(t\\,0.5):d=1\" '" +
             wav.string() + "'");
    for (const char* ending : {"wav", "m4a", "mp3", "flac", "ogg", "aiff", "mka"}) {
        const fs::path file = dir_ / (std::string("voice.") + ending);
        if (std::string(ending) != "wav") {
            answerOf("ffmpeg -v error -y -i '" + wav.string() + "' '" + file.string() + "'");
        }
        const auto sound = video::loadSound(file);
        ASSERT_TRUE(sound) << ending << ": " << sound.error().sentence;
        EXPECT_NEAR(loudAfter(*sound, 0.0), 0.5, std::string(ending) == "mp3" ? 0.06 : 0.005) << ending;
    }
    std::ofstream(dir_ / "text.wav") << "no sound";
    EXPECT_EQ(video::loadSound(dir_ / "text.wav").error().kind, base::ErrorKind::input);
    EXPECT_EQ(video::loadSound(dir_ / "nothing.wav").error().kind, base::ErrorKind::input);
    std::ofstream(dir_ / "empty.wav");
    EXPECT_FALSE(video::loadSound(dir_ / "empty.wav"));
}
