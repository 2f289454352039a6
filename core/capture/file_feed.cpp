// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "capture/file_feed.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <thread>

namespace plumbmark::capture {

base::Result<FileFeed> FileFeed::open(const std::vector<std::filesystem::path>& clips) {
    FileFeed feed;
    for (const auto& path : clips) {
        video::ClipOptions options;
        options.cacheBytes = 0; // played once, forward
        auto clip = video::Clip::open(path, options);
        if (!clip) {
            return clip.error();
        }
        feed.clips_.push_back(std::move(*clip));
    }
    if (feed.clips_.empty()) {
        return base::inputError("feed.none", "No clip was given; name at least one.");
    }
    for (const auto& clip : feed.clips_) {
        if (clip->info().hasSound) {
            if (auto sound = clip->sound(); sound && !sound->samples.empty()) {
                feed.soundRate_ = sound->rate;
                break;
            }
        }
    }
    return feed;
}

base::Result<FileFeed::Counts> FileFeed::play(Pace pace, const Sink& sink) {
    using Clock = std::chrono::steady_clock;
    const auto began = Clock::now();
    Counts counts;
    double offset = 0.0;
    bool stopped = false;
    for (const auto& clip : clips_) {
        // The whole sound of a ten-minute clip is some 100 MB; it is the file's, not the session's memory.
        video::Sound sound;
        if (clip->info().hasSound && sink.sound) {
            if (auto read = clip->sound(); read && read->rate == soundRate_) {
                sound = std::move(*read);
            }
        }
        std::size_t heard = 0;
        const auto block = static_cast<std::size_t>(std::max(1.0, 0.02 * sound.rate));
        const auto hearUntil = [&](double time) {
            while (heard < sound.samples.size()) {
                const std::size_t n = std::min(block, sound.samples.size() - heard);
                const double at = sound.start.value() + static_cast<double>(heard) / sound.rate;
                if (at + static_cast<double>(n) / sound.rate > time + 1e-9) {
                    break;
                }
                sink.sound(std::span(sound.samples).subspan(heard, n), base::Seconds{offset + at});
                heard += n;
            }
        };
        const auto played = clip->stream(0, clip->info().frames - 1, [&](const video::Frame& frame) {
            const double time = offset + frame.time().value();
            if (pace == Pace::camera) {
                const auto due =
                    began + std::chrono::duration_cast<Clock::duration>(std::chrono::duration<double>(time));
                std::this_thread::sleep_until(due);
                counts.late += Clock::now() - due > std::chrono::milliseconds(50) ? 1 : 0;
            }
            hearUntil(frame.time().value());
            const video::Frame shown(counts.frames, base::Seconds{time}, frame.luma(), frame.cb(), frame.cr(),
                                     frame.colour(), std::make_shared<video::Frame>(frame));
            ++counts.frames;
            stopped = !sink.frame(shown);
            return !stopped;
        });
        if (!played) {
            return played.error();
        }
        if (stopped) {
            break;
        }
        offset += clip->info().duration.value();
        hearUntil(clip->info().duration.value());
    }
    counts.seconds = base::Seconds{offset};
    return counts;
}

} // namespace plumbmark::capture
