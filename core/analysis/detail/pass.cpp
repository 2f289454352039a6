// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "analysis/detail/pass.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "scene/estimates.h"

namespace plumbmark::analysis {
namespace {

using marks::Landmark;

constexpr double kBytesUnderWay = 130e6;
/// Hands nearly at rest, statures per real second: the shaft need not be searched more often than this.
constexpr double kRestingHands = 0.12;
constexpr double kRestingGap = 1.0 / 130.0;

std::size_t roomFor(const video::ClipInfo& clip) {
    const double frame = 1.5 * std::max(1, clip.width) * std::max(1, clip.height);
    return static_cast<std::size_t>(std::clamp(kBytesUnderWay / frame, 16.0, 96.0));
}

} // namespace

Pass::Pass(Evidence& evidence, body::Observer* observer, const marks::Track& handTrack,
           const base::Progress& progress)
    : e_(evidence), observer_(observer), handTrack_(handTrack), progress_(progress),
      room_(roomFor(evidence.clip)), frames_(room_ / 4), jobs_(room_ / 4),
      cadence_(evidence.timeScale.realPerShown),
      groundStride_(std::max(1, static_cast<int>(std::lround(evidence.clip.playbackFps /
                                                             evidence.timeScale.realPerShown / 15.0)))),
      search_({evidence.timeScale, evidence.clip.playbackFps}), ball_(evidence.clip.playbackFps) {
    if (observer_ != nullptr) {
        observer_->stopWhen([this] { return stopped(); });
    }
    looker_ = std::thread([this] { looking(); });
    searcher_ = std::thread([this] { searching(); });
}

Pass::~Pass() {
    if (looker_.joinable()) {
        stop_ = true;
        frames_.closeAtOnce();
        jobs_.closeAtOnce();
        looker_.join();
        searcher_.join();
    }
    if (observer_ != nullptr) {
        observer_->stopWhen({});
    }
}

bool Pass::add(const video::Frame& frame) {
    return frames_.put(frame, [this] { return stopped(); });
}

base::Result<void> Pass::finish() {
    frames_.close();
    looker_.join();
    searcher_.join();
    if (broken_) {
        return *broken_;
    }
    if (stopped()) {
        return {};
    }
    e_.shaftEvidence = search_.finish();
    e_.ground = ground_.finish(e_.clip.frames);
    if (e_.ground.moved() && ground_.placedShare() < 0.5) {
        e_.warnings.push_back("The camera moved and the ground could not be followed in half of the clip: "
                              "positions against address are less sure. A stand for the camera would help.");
    }
    ballEvidence_ = ball_.finish();
    return {};
}

void Pass::looking() {
    while (auto frame = frames_.take()) {
        if (stopped()) {
            frames_.closeAtOnce();
            break;
        }
        if (auto looked = look(*frame); !looked) {
            broken_ = looked.error();
            frames_.closeAtOnce();
            break;
        }
    }
    if (!stopped()) {
        flush(nullptr);
    }
    waiting_.clear();
    jobs_.close();
}

void Pass::searching() {
    while (auto job = jobs_.take()) {
        if (stopped()) {
            jobs_.closeAtOnce();
            break;
        }
        search_.push(job->frame, job->hands);
        ball_.push(job->frame, job->feet, job->ground);
    }
}

base::Result<void> Pass::look(const video::Frame& frame) {
    waiting_.push_back(frame);
    if (observer_ == nullptr) {
        seeVertical(frame, {});
        if (waiting_.size() >= 8) {
            flush(nullptr);
        }
        return {};
    }
    // A look is due by time, at the end, and before too many frames wait for one.
    if (!cadence_.due(frame.time()) && frame.index() + 1 < e_.clip.frames && waiting_.size() < room_ / 2) {
        return {};
    }
    auto looked = observer_->observe(frame);
    if (!looked) {
        return looked.error();
    }
    std::optional<body::Observation>& seen = looked.value();
    cadence_.seen(frame.time(), seen);
    if (seen) {
        stature_.add(*seen);
    }
    if (seen &&
        (seen->frame % groundStride_ == 0 || lastGround_ < 0 || seen->frame - lastGround_ >= groundStride_)) {
        lastGround_ = seen->frame;
        const std::array<base::Box, 1> moving{reachOf(*seen)};
        ground_.add(frame, moving);
        seeVertical(frame, moving);
    }
    flush(seen ? &*seen : nullptr);
    if (seen) {
        e_.observations.push_back(std::move(*seen));
    }
    return {};
}

void Pass::flush(const body::Observation* now) {
    const body::Observation* before = e_.observations.empty() ? nullptr : &e_.observations.back();
    const double size = stature_.pixels();
    const double real = e_.timeScale.realPerShown;
    const bool between =
        before != nullptr && now != nullptr && (now->time - before->time).value() * real < 0.25;
    bool resting = false;
    if (between && size > 0) {
        const auto a = handsBetween(*before, *before, before->time, e_.request.context, size);
        const auto b = handsBetween(*now, *now, now->time, e_.request.context, size);
        resting = base::length(b.grip - a.grip) <
                  kRestingHands * size * std::max(1e-3, (now->time - before->time).value() * real);
    }
    const auto step = ground_.still() ? scene::GroundMotion::Step{} : ground_.latest();
    for (auto& frame : waiting_) {
        Job job;
        const double time = frame.time().value() * real;
        if (between) {
            if (!resting || time - lastSearched_ >= kRestingGap - 1e-4) {
                job.hands = handsBetween(*before, *now, frame.time(), e_.request.context, size);
            }
        } else if (now != nullptr && now->frame == frame.index()) {
            job.hands = handsBetween(*now, *now, frame.time(), e_.request.context, size);
        } else if (observer_ == nullptr) {
            job.hands = handsByHand(frame.time());
        }
        if (job.hands) {
            lastSearched_ = time;
        }
        if (now != nullptr || before != nullptr) {
            job.feet = feetOf(now != nullptr ? *now : *before, e_.request.context, size);
        }
        job.ground = step;
        job.frame = std::move(frame);
        if (!jobs_.put(std::move(job), [this] { return stopped(); })) {
            break;
        }
    }
    waiting_.clear();
}

void Pass::seeVertical(const video::Frame& frame, std::span<const base::Box> moving) {
    if (!std::exchange(soughtVertical_, true) && e_.vertical.source == "assumed") {
        if (const auto seen = scene::verticalFromEdges(frame, moving)) {
            e_.vertical = *seen;
        }
    }
}

/// Player and club: the box of the silhouette grown by a club's length.
base::Box Pass::reachOf(const body::Observation& seen) const {
    const double grow = 0.25 * stature_.pixels();
    return {seen.box.x - grow, seen.box.y - grow, seen.box.width + 2 * grow, seen.box.height + 2 * grow};
}

std::optional<club::Hands> Pass::handsByHand(base::Seconds time) const {
    const auto grip = marks::markAt(handTrack_, Landmark::grip, time);
    const auto lead = marks::markAt(handTrack_, Landmark::lead_wrist, time);
    const auto head = marks::markAt(handTrack_, Landmark::head_centre, time);
    const auto ankle = marks::markAt(handTrack_, Landmark::lead_ankle, time);
    if ((!grip && !lead) || !head || !ankle) {
        return std::nullopt;
    }
    club::Hands hands;
    hands.grip = grip ? grip->at : lead->at;
    if (lead) {
        hands.leadWrist = lead->at;
    }
    // Head centre to ankle is about 0.87 of stature standing, 0.8 bent over (from memory, a search window
    // only).
    hands.staturePixels = base::length(head->at - ankle->at) / 0.82;
    hands.gripSigma = 0.02 * hands.staturePixels;
    return hands;
}

} // namespace plumbmark::analysis
