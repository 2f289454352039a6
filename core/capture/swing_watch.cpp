// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "capture/swing_watch.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace plumbmark::capture {
namespace {

constexpr double kKeep = 5.0;
constexpr double kAfter = 1.25; // s after the peak until it can be told
constexpr double kEarly = 0.15; // s after the peak until it may be one
constexpr double kRest = 1.6;   // s after a swing in which no other begins
constexpr double kLeastArea = 0.004;
constexpr double kLeastAreaWithHit = 0.0015;

} // namespace

std::string_view howName(How how) {
    return how == How::soundAndMotion ? "sound+motion" : how == How::motion ? "motion" : "by hand";
}

void SwingWatch::hit(base::Seconds time) {
    hits_.push_back(time.value());
    while (hits_.size() > 64) {
        hits_.pop_front();
    }
}

void SwingWatch::restart() {
    samples_.clear();
    raw_.clear();
    pending_.reset();
}

std::size_t SwingWatch::indexAt(double seconds) const {
    const auto it = std::lower_bound(samples_.begin(), samples_.end(), seconds,
                                     [](const MotionSample& s, double t) { return s.time.value() < t; });
    return static_cast<std::size_t>(it - samples_.begin());
}

SwingWatch::Shape SwingWatch::shapeAt(std::size_t peak) const {
    Shape shape;
    const double p = samples_[peak].time.value(), top = samples_[peak].area;
    for (const double h : hits_) {
        // The sound comes 3 ms a metre late, and the arms are fastest a little before or after the hit.
        if (h > p - 0.22 && h < p + 0.18 &&
            (!shape.hit || std::abs(h - p) < std::abs(shape.hit->value() - p))) {
            shape.hit = base::Seconds{h};
        }
    }
    const bool heard = shape.hit.has_value();
    if (top < (heard ? kLeastAreaWithHit : kLeastArea)) {
        return shape;
    }
    // The lull of the top.
    const std::size_t lullFrom = indexAt(p - 0.85), lullTo = indexAt(p - 0.12);
    if (lullFrom >= lullTo || samples_[lullFrom].time.value() > p - 0.7) {
        return shape;
    }
    std::size_t lull = lullFrom;
    for (std::size_t i = lullFrom; i < lullTo; ++i) {
        lull = samples_[i].area < samples_[lull].area ? i : lull;
    }
    if (samples_[lull].area > (heard ? 0.7 : 0.55) * top) {
        return shape;
    }
    // The way back.
    const double l = samples_[lull].time.value();
    double back = 0, seconds = 0, still = 1e9, firstCentre = -1;
    for (std::size_t i = indexAt(l - 2.2); i < lull; ++i) {
        const auto& s = samples_[i];
        if (s.time.value() > l - 1.7 && s.time.value() < l - 0.05) {
            back = std::max(back, s.area);
            if (i > 0 && s.area > 0.12 * top) {
                seconds += std::min(0.1, (s.time - samples_[i - 1].time).value());
                firstCentre = firstCentre < 0 ? s.centre : firstCentre;
            }
        }
        if (s.time.value() < l - 0.25) {
            still = std::min(still, s.area);
        }
    }
    if (back < 0.3 * top || seconds < (heard ? 0.15 : 0.3) || still > 0.3 * top || firstCentre < 0) {
        return shape;
    }
    // How far the motion reaches, from the way back to now: a full swing sweeps most of the player's height,
    // a chip at least some width. A tenth of the samples on each side is left out (somebody in the
    // background).
    std::vector<double> left, right, high, low;
    for (std::size_t k = indexAt(l - 1.2); k < samples_.size() && samples_[k].time.value() < p + 0.15; ++k) {
        const auto& b = samples_[k].box;
        // Without a sound the fast burst alone must reach that far: what came before may have been another
        // thing.
        if (samples_[k].area > 0.12 * top && b.width > 0 && (heard || samples_[k].time.value() > p - 0.25)) {
            left.push_back(b.x), right.push_back(b.x + b.width);
            high.push_back(b.y), low.push_back(b.y + b.height);
        }
    }
    const auto share = [](std::vector<double>& v, double at) {
        const auto it = v.begin() + static_cast<std::ptrdiff_t>(at * static_cast<double>(v.size() - 1));
        std::nth_element(v.begin(), it, v.end());
        return *it;
    };
    if (left.empty() || share(right, 0.9) - share(left, 0.1) < 0.12 ||
        share(low, 0.9) - share(high, 0.1) < (heard ? 0.15 : 0.3)) {
        return shape;
    }
    // The burst itself is short.
    double burst = 0;
    std::size_t i = peak;
    while (i > lull && samples_[i].area > 0.5 * top) {
        --i;
    }
    const double from = samples_[i].time.value();
    i = peak;
    while (i + 1 < samples_.size() && samples_[i].area > 0.5 * top) {
        ++i;
    }
    burst = samples_[i].time.value() - from;
    if (burst > 0.8 || burst < 0.1) { // a jump of the picture is over at once
        return shape;
    }
    shape.before = true;
    // Quiet again, and where it began: somebody who walks leaves the place.
    double quiet = 1e9, lastCentre = firstCentre;
    for (std::size_t k = indexAt(p + 0.3); k < samples_.size(); ++k) {
        quiet = std::min(quiet, samples_[k].area);
        if (samples_[k].area > 0.12 * top) {
            lastCentre = samples_[k].centre;
        }
    }
    shape.after = quiet < 0.35 * top && std::abs(lastCentre - firstCentre) < 0.17;
    return shape;
}

std::optional<SwingWatch::Event> SwingWatch::push(const MotionSample& sample) {
    raw_.push_back(sample);
    while (raw_.size() > 3) {
        raw_.pop_front();
    }
    // Mean of three, told at the middle one: a single jump of the picture is no burst.
    if (raw_.size() < 3) {
        return std::nullopt;
    }
    MotionSample smooth = raw_[1];
    std::array<double, 3> areas{raw_[0].area, raw_[1].area, raw_[2].area};
    std::sort(areas.begin(), areas.end());
    smooth.area = areas[1];
    samples_.push_back(smooth);
    const double now = smooth.time.value();
    while (!samples_.empty() && samples_.front().time.value() < now - kKeep) {
        samples_.pop_front();
    }
    if (quietUntil_ && now < *quietUntil_) {
        return std::nullopt;
    }
    if (!pending_) {
        const auto peak = peakIn(now - 0.6, now); // the fastest instant of the last stretch
        if (peak && samples_[*peak].time.value() <= now - kEarly &&
            samples_[*peak].time.value() > now - 0.5 && shapeAt(*peak).before) {
            pending_ = samples_[*peak].time.value();
            return Event{Kind::maybe, base::Seconds{*pending_}, How::motion};
        }
        return std::nullopt;
    }
    if (now < *pending_ + kAfter) {
        return std::nullopt;
    }
    return decide();
}

std::optional<std::size_t> SwingWatch::peakIn(double from, double to) const {
    std::optional<std::size_t> best;
    for (std::size_t i = indexAt(from); i < samples_.size() && samples_[i].time.value() <= to; ++i) {
        if (!best || samples_[i].area > samples_[*best].area) {
            best = i;
        }
    }
    return best;
}

std::optional<SwingWatch::Event> SwingWatch::finish() {
    if (!pending_ || samples_.empty()) {
        return std::nullopt;
    }
    auto event = decide();
    if (event && event->kind == Kind::maybe) {
        event = decide(); // the later burst is the last there is
    }
    return event;
}

std::optional<SwingWatch::Event> SwingWatch::decide() {
    const double now = samples_.back().time.value();
    // All is known now: the peak may have been a little later than first thought, or it was the way back and
    // the way down came after.
    auto peak = peakIn(*pending_ - 0.1, *pending_ + 0.4);
    const auto later = peakIn(*pending_ + 0.4, now);
    if (peak && later && samples_[*later].area > 0.6 * samples_[*peak].area &&
        samples_[*later].time.value() > *pending_ + 0.45) {
        const Shape first = shapeAt(*peak), second = shapeAt(*later);
        if (second.before && (second.hit || !first.hit)) {
            pending_ = samples_[*later].time.value();
            return Event{Kind::maybe, base::Seconds{*pending_}, How::motion};
        }
    }
    pending_.reset();
    if (peak) {
        const Shape shape = shapeAt(*peak);
        if (shape.before && shape.after) {
            const auto time = shape.hit.value_or(samples_[*peak].time);
            quietUntil_ = time.value() + kRest;
            return Event{Kind::yes, time, shape.hit ? How::soundAndMotion : How::motion};
        }
    }
    return Event{Kind::no, samples_.back().time, How::motion};
}

} // namespace plumbmark::capture
