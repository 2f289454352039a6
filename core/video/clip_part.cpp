// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/clip_part.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace plumbmark::video {
namespace {

class Part final : public Clip {
  public:
    Part(std::unique_ptr<Clip> whole, int first, int last)
        : whole_(std::move(whole)), first_(first), info_(whole_->info()),
          times_(whole_->times().begin() + first, whole_->times().begin() + last + 1) {
        const base::Seconds end = static_cast<std::size_t>(last) + 1 < whole_->times().size()
                                      ? whole_->times()[static_cast<std::size_t>(last) + 1]
                                      : info_.duration;
        info_.frames = last - first + 1;
        info_.duration = end - times_.front();
        const double span = (times_.back() - times_.front()).value();
        info_.playbackFps = span > 0 ? (info_.frames - 1) / span : 0.0;
    }

    const ClipInfo& info() const override { return info_; }
    const std::vector<base::Seconds>& times() const override { return times_; }

    base::Result<Frame> frame(int index) override {
        if (index < 0 || index >= info_.frames) {
            return base::inputError("clip.range", "There is no such frame in this part of the clip.");
        }
        auto got = whole_->frame(first_ + index);
        if (!got) {
            return got;
        }
        return renumbered(*got);
    }

    base::Result<void> stream(int first, int last, const std::function<bool(const Frame&)>& visit) override {
        if (first < 0 || last < first || last >= info_.frames) {
            return base::inputError("clip.range", "There are no such frames in this part of the clip.");
        }
        return whole_->stream(first_ + first, first_ + last,
                              [&](const Frame& frame) { return visit(renumbered(frame)); });
    }

    base::Result<Sound> sound() override {
        auto all = whole_->sound();
        if (!all || all->samples.empty()) {
            return all;
        }
        const auto at = [&](double time) {
            const double index = std::round((time - all->start.value()) * all->rate);
            return static_cast<std::ptrdiff_t>(
                std::clamp(index, 0.0, static_cast<double>(all->samples.size())));
        };
        const auto from = at(times_.front().value());
        const auto to = std::max(from, at((times_.front() + info_.duration).value()));
        Sound part;
        part.rate = all->rate;
        part.start = all->start + base::Seconds{static_cast<double>(from) / all->rate};
        part.samples.assign(all->samples.begin() + from, all->samples.begin() + to);
        return part;
    }

  private:
    [[nodiscard]] Frame renumbered(const Frame& frame) const {
        return {
            frame.index() - first_,        frame.time(), frame.luma(), frame.cb(), frame.cr(), frame.colour(),
            std::make_shared<Frame>(frame)};
    }

    std::unique_ptr<Clip> whole_;
    int first_;
    ClipInfo info_;
    std::vector<base::Seconds> times_;
};

} // namespace

std::unique_ptr<Clip> partOf(std::unique_ptr<Clip> whole, int first, int last) {
    return std::make_unique<Part>(std::move(whole), first, last);
}

} // namespace plumbmark::video
