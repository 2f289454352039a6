// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "analysis/swings_in_clip.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <utility>

#include "analysis/detail/time_scale.h"
#include "capture/motion_watch.h"
#include "capture/sound_watch.h"
#include "capture/swing_watch.h"
#include "video/clip_part.h"

namespace plumbmark::analysis {
namespace {

// Real seconds. A swing from standing still to the held finish takes 3 to 4; two of them do not fit into the
// first number. Common sense, no source.
constexpr double kTwoSwings = 5.5;
constexpr double kBefore = 3.0, kAfter = 2.5; // what is measured round the hit
constexpr double kFinishAfter = 1.2;          // ... less what belongs to the swing before
constexpr double kBackBefore = 1.6;           // ... and to the one after
constexpr double kWholeAtMost = 60.0;         // longer than this no clip is measured without a swing seen

std::string secondsList(std::span<const SwingSeen> swings) {
    std::string text;
    for (std::size_t i = 0; i < swings.size(); ++i) {
        if (i == 8) {
            return text + " ...";
        }
        char number[32];
        std::snprintf(number, sizeof number, "%.1f", swings[i].time.value());
        text += (i == 0 ? "" : ", ") + std::string(number);
    }
    return text;
}

} // namespace

base::Result<std::optional<std::vector<SwingSeen>>> findSwings(video::Clip& clip, const Request& request,
                                                               const base::Progress& progress) {
    const double real = detail::timeScaleOf(clip.info(), request.captureFps).realPerShown;
    progress.tell(0.0, "Looking for swings");
    video::Sound sound;
    if (clip.info().hasSound) {
        if (auto read = clip.sound()) {
            sound = std::move(*read);
        } // a clip whose sound cannot be read is a clip without sound
    }
    capture::SoundWatch ear(sound.rate);
    capture::MotionWatch eye;
    capture::SwingWatch watch;
    std::vector<std::pair<base::Seconds, bool>> found; // real
    const auto note = [&](const std::optional<capture::SwingWatch::Event>& event) {
        if (event && event->kind == capture::SwingWatch::Kind::yes) {
            found.emplace_back(event->time, event->how == capture::How::soundAndMotion);
        }
    };
    std::size_t heard = 0;
    const auto hearUntil = [&](double shown) {
        const auto block = static_cast<std::size_t>(std::max(1.0, 0.1 * sound.rate));
        while (heard < sound.samples.size()) {
            const std::size_t n = std::min(block, sound.samples.size() - heard);
            const double at = sound.start.value() + static_cast<double>(heard) / sound.rate;
            if (at + static_cast<double>(n) / sound.rate > shown) {
                break;
            }
            for (const base::Seconds hit :
                 ear.push(std::span(sound.samples).subspan(heard, n), base::Seconds{at})) {
                watch.hit(base::Seconds{hit.value() * real});
            }
            heard += n;
        }
    };
    const int frames = clip.info().frames;
    const auto streamed = clip.stream(0, frames - 1, [&](const video::Frame& frame) {
        if (frame.index() % 64 == 0) {
            progress.tell(static_cast<double>(frame.index()) / std::max(1, frames), "Looking for swings");
        }
        hearUntil(frame.time().value());
        // The watch counts in real seconds.
        const video::Frame now(frame.index(), base::Seconds{frame.time().value() * real}, frame.luma(),
                               frame.cb(), frame.cr(), frame.colour(), nullptr);
        if (const auto sample = eye.push(now)) {
            note(watch.push(*sample));
        }
        return !progress.cancelled();
    });
    if (progress.cancelled()) {
        return std::optional<std::vector<SwingSeen>>{};
    }
    if (!streamed) {
        return streamed.error();
    }
    hearUntil(clip.info().duration.value() + 1.0);
    note(watch.finish());

    std::vector<SwingSeen> swings;
    const auto& times = clip.times();
    const auto frameAt = [&](double realTime) {
        const auto it = std::lower_bound(times.begin(), times.end(), base::Seconds{realTime / real});
        return std::min(static_cast<int>(it - times.begin()), frames - 1);
    };
    for (std::size_t i = 0; i < found.size(); ++i) {
        const double t = found[i].first.value();
        double from = t - kBefore, to = t + kAfter;
        if (i > 0) {
            from = std::max(from, found[i - 1].first.value() + kFinishAfter);
        }
        if (i + 1 < found.size()) {
            to = std::min(to, found[i + 1].first.value() - kBackBefore);
        }
        SwingSeen seen;
        seen.time = base::Seconds{t / real};
        seen.heard = found[i].second;
        seen.firstFrame = frameAt(std::min(from, t));
        seen.lastFrame = std::max(seen.firstFrame, frameAt(std::max(to, t)));
        seen.from = times[static_cast<std::size_t>(seen.firstFrame)];
        seen.to = times[static_cast<std::size_t>(seen.lastFrame)];
        swings.push_back(seen);
    }
    return std::optional(std::move(swings));
}

std::size_t usualSwing(std::span<const SwingSeen> swings) {
    for (std::size_t i = swings.size(); i-- > 0;) {
        if (swings[i].heard) {
            return i;
        }
    }
    return swings.empty() ? 0 : swings.size() - 1;
}

base::Result<std::optional<SwingTaken>> takeSwing(std::unique_ptr<video::Clip> clip, const Request& request,
                                                  std::optional<int> number, const base::Progress& progress) {
    SwingTaken taken;
    taken.whole = clip->info();
    const double seconds =
        taken.whole.duration.value() * detail::timeScaleOf(taken.whole, request.captureFps).realPerShown;
    if (!number && seconds < kTwoSwings) {
        taken.clip = std::move(clip);
        return std::optional(std::move(taken));
    }
    auto swings = findSwings(*clip, request, progress);
    if (!swings) {
        return swings.error();
    }
    if (!*swings) {
        return std::optional<SwingTaken>{};
    }
    taken.swings = std::move(**swings);
    if (taken.swings.empty()) {
        if (number) {
            return base::inputError("swing.none",
                                    "No swing could be told apart in this clip, so there is none "
                                    "to choose by number; measure it without.");
        }
        if (taken.whole.duration.value() > kWholeAtMost) {
            return base::inputError("swing.none",
                                    "No swing was seen in this clip, and it is too long to be measured as "
                                    "one; cut it to one swing, at most a minute.");
        }
        taken.clip = std::move(clip);
        return std::optional(std::move(taken));
    }
    if (number && (*number < 1 || static_cast<std::size_t>(*number) > taken.swings.size())) {
        return base::inputError("swing.number", taken.swings.size() == 1
                                                    ? std::string("This clip holds one swing; choose 1.")
                                                    : "This clip holds " +
                                                          std::to_string(taken.swings.size()) +
                                                          " swings; choose one from 1 to " +
                                                          std::to_string(taken.swings.size()) + ".");
    }
    taken.taken = number ? static_cast<std::size_t>(*number - 1) : usualSwing(taken.swings);
    const SwingSeen& swing = taken.swings[*taken.taken];
    taken.firstFrame = swing.firstFrame;
    taken.clip = video::partOf(std::move(clip), swing.firstFrame, swing.lastFrame);
    return std::optional(std::move(taken));
}

Request requestForPart(Request request, int firstFrame, int frames) {
    for (auto& mark : request.handMarks) {
        mark.frame -= firstFrame;
    }
    std::erase_if(request.handMarks, [&](const auto& m) { return m.frame < 0 || m.frame >= frames; });
    return request;
}

void noteSwings(Outcome& outcome, const SwingTaken& taken) {
    outcome.clip = taken.whole;
    outcome.swings = taken.swings;
    outcome.swing = taken.taken;
    if (taken.swings.size() < 2 || !taken.taken) {
        return;
    }
    const SwingSeen& swing = taken.swings[*taken.taken];
    outcome.warnings.push_back(
        "This clip holds " + std::to_string(taken.swings.size()) + " swings, at " +
        secondsList(taken.swings) + " seconds; number " + std::to_string(*taken.taken + 1) + " is measured" +
        (swing.heard ? ", in which a hit was heard" : "") + ". The others can be chosen by their number.");
}

} // namespace plumbmark::analysis
