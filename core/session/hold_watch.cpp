// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/hold_watch.h"

#include <algorithm>
#include <cmath>

#include "analysis/quick_look.h"

namespace plumbmark::session {
namespace {

using body::Point;

constexpr double kKeepSeconds = 20.0;
constexpr double kStillShare = 0.020; ///< statures between two looks, per 0.1 s: above the network's jitter
constexpr double kPlaceShare = 0.060; ///< statures from where the hold began

base::Vec2 handsOf(const body::Observation& o) {
    return base::midpoint(o[Point::left_wrist].direct, o[Point::right_wrist].direct);
}

/// Trunk length / stature: 0.288 (Drillis & Contini 1966).
double sizeOf(const body::Observation& o) {
    const auto shoulders = base::midpoint(o[Point::left_shoulder].direct, o[Point::right_shoulder].direct);
    const auto ankles = base::midpoint(o[Point::left_ankle].direct, o[Point::right_ankle].direct);
    return std::max(1.0, base::length(shoulders - ankles) / 0.78);
}

bool raised(const body::Observation& o, const marks::ShotContext& context) {
    const auto shoulders = base::midpoint(o[Point::left_shoulder].direct, o[Point::right_shoulder].direct);
    const auto hips = base::midpoint(o[Point::left_hip].direct, o[Point::right_hip].direct);
    const auto hands = handsOf(o);
    if (hands.y > (shoulders.y + hips.y) / 2) {
        return false;
    }
    // Only seen from the front does the side tell the top from the finish.
    return context.view != marks::View::faceOn || (hands.x - hips.x) * context.sideSign() < 0.0;
}

} // namespace

std::optional<Hold> HoldWatch::push(const body::Observation& seen, int width, int height,
                                    std::span<const base::Seconds> swings) {
    std::optional<Hold> told;
    const bool up = raised(seen, context_);
    bool still = false;
    if (!looks_.empty()) {
        const auto& last = looks_.back();
        const double dt = (seen.time - last.time).value();
        const double move = base::length(handsOf(seen) - handsOf(last)) / sizeOf(seen);
        still = dt > 0 && dt < 0.6 && move < kStillShare * std::max(1.0, dt / 0.1);
        if (since_ && base::length(handsOf(seen) - handsOf(looks_[*since_])) > kPlaceShare * sizeOf(seen)) {
            still = false;
        }
    }
    if (since_ && !(up && still)) {
        const auto first = *since_;
        since_.reset();
        const auto from = looks_[first].time, to = looks_.back().time;
        const bool ofSwing = std::any_of(swings.begin(), swings.end(), [&](base::Seconds t) {
            return t.value() > from.value() - 1.5 && t.value() < to.value() + 2.0;
        });
        if ((to - from).value() >= kLeastSeconds && !ofSwing) {
            // Address: the last look before the way up in which the hands were low and still.
            std::optional<std::size_t> address;
            for (std::size_t i = 1; i < first; ++i) {
                const auto& o = looks_[i];
                const auto hips = base::midpoint(o[Point::left_hip].direct, o[Point::right_hip].direct);
                const double dt = (o.time - looks_[i - 1].time).value();
                const double move = base::length(handsOf(o) - handsOf(looks_[i - 1])) / sizeOf(o);
                if (handsOf(o).y > hips.y - 0.05 * sizeOf(o) && dt < 0.6 &&
                    move < 0.015 * std::max(1.0, dt / 0.1)) {
                    address = i;
                }
            }
            Hold hold;
            hold.from = from;
            hold.to = to;
            std::vector<body::Observation> looks(
                looks_.begin() +
                    static_cast<std::ptrdiff_t>(address ? (*address > 3 ? *address - 3 : 0) : first),
                looks_.end());
            marks::Moments moments;
            if (address) {
                moments.push_back(
                    {marks::MomentId::address, looks_[*address].time, base::Seconds{0.1}, "hands"});
            }
            moments.push_back({marks::MomentId::top, (from + to) / 2.0, (to - from) / 4.0, "held"});
            analysis::Request request;
            request.context = context_;
            request.rollDegrees = roll_;
            hold.outcome = analysis::concludeHeld(looks, moments, request, width, height);
            told = std::move(hold);
        }
    } else if (!since_ && up && still) {
        since_ = looks_.size(); // this one
    }
    looks_.push_back(seen);
    while (!looks_.empty() && (seen.time - looks_.front().time).value() > kKeepSeconds) {
        looks_.pop_front();
        if (since_) {
            since_ = *since_ > 0 ? *since_ - 1 : 0;
        }
    }
    return told;
}

} // namespace plumbmark::session
