// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "capture/armed_recorder.h"

#include <algorithm>
#include <cmath>
#include <system_error>
#include <utility>

namespace plumbmark::capture {
namespace {

double medianGap(std::vector<double> times) {
    if (times.size() < 2) {
        return 0.0;
    }
    for (std::size_t i = 0; i + 1 < times.size(); ++i) {
        times[i] = times[i + 1] - times[i];
    }
    times.pop_back();
    const auto middle = times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2);
    std::nth_element(times.begin(), middle, times.end());
    return *middle;
}

} // namespace

ArmedRecorder::~ArmedRecorder() = default; // an open take stays as a part for recoverTakes()

std::size_t ArmedRecorder::keptBytes() const {
    return pictureBytes_ + soundSamples_ * sizeof(float);
}

base::Seconds ArmedRecorder::keptSeconds() const {
    return pictures_.empty() ? base::Seconds{0} : pictures_.back().time - pictures_.front().time;
}

double ArmedRecorder::measuredFps() const {
    if (pictures_.size() < 5 || keptSeconds().value() < 1.0) {
        return 0.0;
    }
    std::vector<double> times;
    times.reserve(pictures_.size());
    for (const auto& p : pictures_) {
        times.push_back(p.time.value());
    }
    return 1.0 / medianGap(std::move(times));
}

void ArmedRecorder::shorten() {
    // Whole groups go, so that the past always begins with a key picture.
    for (;;) {
        std::size_t next = 1;
        std::size_t bytes = pictures_.empty() ? 0 : pictures_.front().bytes.size();
        while (next < pictures_.size() && !pictures_[next].key) {
            bytes += pictures_[next].bytes.size();
            ++next;
        }
        if (next >= pictures_.size()) {
            break;
        }
        const double left = (pictures_.back().time - pictures_[next].time).value();
        if (left < options_.keepSeconds && pictureBytes_ <= options_.keepBytes) {
            break;
        }
        pictures_.erase(pictures_.begin(), pictures_.begin() + static_cast<std::ptrdiff_t>(next));
        pictureBytes_ -= bytes;
    }
    while (!blocks_.empty() && !pictures_.empty() &&
           blocks_.front().time.value() +
                   static_cast<double>(blocks_.front().samples.size()) / options_.soundRate <
               pictures_.front().time.value()) {
        soundSamples_ -= blocks_.front().samples.size();
        blocks_.pop_front();
    }
    // Sound without pictures must not grow either.
    while (soundSamples_ > static_cast<std::size_t>(2 * options_.keepSeconds * options_.soundRate)) {
        soundSamples_ -= blocks_.front().samples.size();
        blocks_.pop_front();
    }
}

base::Result<void> ArmedRecorder::begin(base::Seconds hit, How how, bool sure) {
    if (pictures_.empty()) {
        return {};
    }
    auto open = std::make_unique<Open>();
    open->take.hit = hit;
    open->take.how = how;
    open->take.hasSound = options_.soundRate > 0 && !blocks_.empty();
    open->sure = sure;
    open->end = hit + base::Seconds{options_.afterSeconds};
    // No name is used twice, whatever lies in the folder from earlier.
    std::error_code ignored;
    do {
        open->take.file = options_.folder / (options_.stem + "-" + std::to_string(++number_) + ".mp4");
    } while (std::filesystem::exists(open->take.file, ignored) ||
             std::filesystem::exists(open->take.file.string() + ".part", ignored));
    auto file = video::TakeFile::begin(open->take.file, encoder_->format(),
                                       open->take.hasSound ? options_.soundRate : 0.0);
    if (!file) {
        return file.error();
    }
    open->file = std::move(*file);
    const double from = hit.value() - options_.beforeSeconds;
    std::size_t first = 0;
    for (std::size_t i = 0; i < pictures_.size(); ++i) {
        if (pictures_[i].key && pictures_[i].time.value() <= from) {
            first = i;
        }
    }
    open_ = std::move(open);
    open_->take.begin = pictures_[first].time;
    // In time order, so that a part that ends early has both sound and pictures up to there.
    std::size_t heard = 0;
    const auto hearUntil = [&](base::Seconds time) -> base::Result<void> {
        for (; heard < blocks_.size() && blocks_[heard].time <= time; ++heard) {
            if (auto added = open_->file->addSound(blocks_[heard].samples, blocks_[heard].time); !added) {
                open_->file->abandon();
                open_.reset();
                return added;
            }
        }
        return {};
    };
    for (std::size_t i = first; i < pictures_.size(); ++i) {
        if (auto added = addPicture(pictures_[i]); !added) {
            return added;
        }
        if (auto added = hearUntil(pictures_[i].time); !added) {
            return added;
        }
    }
    return blocks_.empty() ? base::Result<void>() : hearUntil(blocks_.back().time);
}

base::Result<void> ArmedRecorder::addPicture(const video::CodedPicture& picture) {
    auto added = open_->file->add(picture);
    if (!added) {
        open_->file->abandon();
        open_.reset();
        return added;
    }
    open_->times.push_back(picture.time.value());
    return {};
}

base::Result<void> ArmedRecorder::finish() {
    const auto open = std::move(open_);
    Take& take = open->take;
    if (auto finished = open->file->finish(); !finished) {
        return finished;
    }
    const auto& times = open->times;
    take.frames = static_cast<int>(times.size());
    const double gap = medianGap(times);
    double longest = 0;
    for (std::size_t i = 1; i < times.size(); ++i) {
        const double d = times[i] - times[i - 1];
        longest = std::max(longest, d);
        if (d > 1.5 * gap) {
            take.dropped += static_cast<int>(std::lround(d / gap)) - 1;
        }
    }
    take.longestGap = base::Seconds{longest};
    take.measuredFps = gap > 0 ? 1.0 / gap : 0.0;
    const double mean =
        times.size() > 1 ? static_cast<double>(times.size() - 1) / (times.back() - times.front()) : 0;
    take.uneven = take.dropped > 0 || mean < 0.95 * options_.askedFps;
    if (take.dropped > 0) {
        take.warnings.push_back(
            std::to_string(take.dropped) +
            " pictures are missing in this take; times across a gap are less sure. Close other "
            "programs or choose a smaller picture.");
    }
    if (times.front() > take.hit.value() - 1.0) {
        take.warnings.emplace_back(
            "The camera was armed too late for this swing: its beginning is not in the take.");
    }
    done_.push_back(std::move(take));
    return {};
}

void ArmedRecorder::setWatching(bool watch) {
    if (watch != options_.watch) {
        options_.watch = watch;
        swings_.restart();
        if (open_ && !open_->sure) {
            drop();
        }
    }
}

void ArmedRecorder::drop() {
    open_->file->abandon();
    open_.reset();
    --number_;
}

base::Result<void> ArmedRecorder::follow(const SwingWatch::Event& event) {
    if (open_ && open_->take.how == How::byHand) {
        return {}; // the person's word counts
    }
    switch (event.kind) {
    case SwingWatch::Kind::maybe:
        if (open_) {
            drop();
        }
        return begin(event.time, event.how, false);
    case SwingWatch::Kind::no:
        if (open_) {
            drop();
        }
        return {};
    case SwingWatch::Kind::yes:
        if (open_) {
            open_->sure = true;
            open_->take.hit = event.time;
            open_->take.how = event.how;
            open_->end = event.time + base::Seconds{options_.afterSeconds};
        }
        return {};
    }
    return {};
}

base::Result<void> ArmedRecorder::frame(const video::Frame& frame) {
    if (last_ && frame.time().value() <= last_->value() + 1e-5) {
        ++leftOut_;
        return {};
    }
    last_ = frame.time();
    if (!encoder_) {
        video::LiveOptions o;
        o.width = frame.width() / 2 * 2;
        o.height = frame.height() / 2 * 2;
        o.fps = options_.askedFps;
        o.colour = frame.colour();
        o.quality = options_.quality;
        o.preset = options_.preset;
        auto made = video::LiveEncoder::create(o);
        if (!made) {
            return made.error();
        }
        encoder_ = std::move(*made);
    }
    auto coded = encoder_->push(frame);
    if (!coded) {
        return coded.error();
    }
    pictureBytes_ += coded->bytes.size();
    pictures_.push_back(std::move(*coded));
    shorten();
    if (open_) {
        if (auto added = addPicture(pictures_.back()); !added) {
            return added;
        }
    }
    motion_ = motionWatch_.push(frame);
    if (options_.watch && motion_) {
        if (const auto event = swings_.push(*motion_)) {
            if (auto followed = follow(*event); !followed) {
                return followed;
            }
        }
    }
    if (open_ && open_->sure && frame.time() >= open_->end) {
        return finish();
    }
    return {};
}

base::Result<void> ArmedRecorder::sound(std::span<const float> mono, base::Seconds time) {
    if (options_.soundRate <= 0 || mono.empty()) {
        return {};
    }
    for (const auto hit : sound_.push(mono, time)) {
        swings_.hit(hit);
    }
    blocks_.push_back({time, {mono.begin(), mono.end()}});
    soundSamples_ += mono.size();
    shorten();
    if (open_) {
        if (auto added = open_->file->addSound(mono, time); !added) {
            open_->file->abandon();
            open_.reset();
            return added;
        }
    }
    return {};
}

void ArmedRecorder::cut(std::optional<base::Seconds> time) {
    if (pictures_.empty()) {
        return;
    }
    const base::Seconds hit = time.value_or(pictures_.back().time);
    if (open_) {
        // The person confirms what is being written.
        open_->take.how = How::byHand;
        if (!open_->sure) {
            open_->sure = true;
            open_->take.hit = hit;
            open_->end = hit + base::Seconds{options_.afterSeconds};
        }
        return;
    }
    if (auto begun = begin(hit, How::byHand, true); !begun) {
        problem_ = begun.error();
        open_.reset();
    }
}

base::Result<void> ArmedRecorder::close() {
    if (const auto event = swings_.finish()) {
        if (auto followed = follow(*event); !followed) {
            return followed;
        }
    }
    if (!open_) {
        return {};
    }
    if (!open_->sure) {
        drop();
        return {};
    }
    return finish();
}

std::vector<Take> ArmedRecorder::takes() {
    return std::exchange(done_, {});
}

} // namespace plumbmark::capture
