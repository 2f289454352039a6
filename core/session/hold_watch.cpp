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
constexpr double kStillShare = 0.020; ///< statures between two looks, per 0.1 s
constexpr double kPlaceShare = 0.060; ///< statures from where the hold began
constexpr double kStandShare = 0.25;  ///< statures the hips may be off between address and hold

base::Vec2 handsOf(const body::Observation& o) {
    return base::midpoint(o[Point::left_wrist].direct, o[Point::right_wrist].direct);
}

base::Vec2 hipsOf(const body::Observation& o) {
    return base::midpoint(o[Point::left_hip].direct, o[Point::right_hip].direct);
}

/// The hands without the network's jitter of some 0.015 statures from look to look, which would end a hold
/// that goes on: the middle one of three looks, in each direction.
base::Vec2 calm(base::Vec2 a, base::Vec2 b, base::Vec2 c) {
    const auto middle = [](double x, double y, double z) {
        return std::max(std::min(x, y), std::min(std::max(x, y), z));
    };
    return {middle(a.x, b.x, c.x), middle(a.y, b.y, c.y)};
}

/// Trunk length / stature: 0.288 (Drillis & Contini 1966).
double sizeOf(const body::Observation& o) {
    const auto shoulders = base::midpoint(o[Point::left_shoulder].direct, o[Point::right_shoulder].direct);
    const auto ankles = base::midpoint(o[Point::left_ankle].direct, o[Point::right_ankle].direct);
    return std::max(1.0, base::length(shoulders - ankles) / 0.78);
}

bool raised(const body::Observation& o, const marks::ShotContext& context) {
    const auto shoulders = base::midpoint(o[Point::left_shoulder].direct, o[Point::right_shoulder].direct);
    const auto hips = hipsOf(o);
    const auto hands = handsOf(o);
    if (hands.y > (shoulders.y + hips.y) / 2) {
        return false;
    }
    // Only seen from the front does the side tell the top from the finish.
    return context.view != marks::View::faceOn || (hands.x - hips.x) * context.sideSign() < 0.0;
}

} // namespace

/// The last look before the way up in which the hands were low and still, by the same player at the same
/// place: who walked in or away is another figure.
std::optional<std::size_t> HoldWatch::addressBefore(std::size_t held) const {
    std::optional<std::size_t> address;
    const double tall = sizeOf(looks_[held]);
    const auto stood = hipsOf(looks_[held]);
    for (std::size_t i = 1; i < held; ++i) {
        const auto& o = looks_[i];
        const auto hips = hipsOf(o);
        if (base::length(hips - stood) > kStandShare * tall ||
            std::abs(sizeOf(o) / tall - 1.0) > kStandShare) {
            continue;
        }
        const double dt = (o.time - looks_[i - 1].time).value();
        const double move = base::length(handsOf(o) - handsOf(looks_[i - 1])) / sizeOf(o);
        if (handsOf(o).y > hips.y - 0.05 * sizeOf(o) && dt < 0.6 && move < 0.015 * std::max(1.0, dt / 0.1)) {
            address = i;
        }
    }
    return address;
}

Hold HoldWatch::conclude(std::size_t held, std::size_t address, int width, int height) const {
    const std::vector<body::Observation> looks(
        looks_.begin() + static_cast<std::ptrdiff_t>(address > 3 ? address - 3 : 0), looks_.end());
    Hold hold;
    hold.from = looks_[held].time;
    hold.to = looks_.back().time;
    marks::Moments moments;
    moments.push_back({marks::MomentId::address, looks_[address].time, base::Seconds{0.1}, "hands"});
    moments.push_back(
        {marks::MomentId::top, (hold.from + hold.to) / 2.0, (hold.to - hold.from) / 4.0, "held"});
    analysis::Request request;
    request.context = context_;
    request.rollDegrees = roll_;
    hold.outcome = analysis::concludeHeld(looks, moments, request, width, height);
    return hold;
}

std::optional<Hold> HoldWatch::push(const body::Observation& seen, int width, int height) {
    std::optional<Hold> told;
    const bool up = raised(seen, context_);
    bool still = false;
    base::Vec2 hands = handsOf(seen);
    if (looks_.size() >= 2) {
        hands = calm(handsOf(looks_[looks_.size() - 2]), handsOf(looks_.back()), hands);
    }
    if (!looks_.empty()) {
        const double dt = (seen.time - looks_.back().time).value();
        const double move = base::length(hands - hands_) / sizeOf(seen);
        still = dt > 0 && dt < 0.6 && move < kStillShare * std::max(1.0, dt / 0.1);
        if (since_ && base::length(hands - heldAt_) > kPlaceShare * sizeOf(seen)) {
            still = false;
        }
    }
    hands_ = hands;
    if (since_ && !(up && still)) {
        const auto first = *since_;
        since_.reset();
        if ((looks_.back().time - looks_[first].time).value() >= kLeastSeconds) {
            if (const auto address = addressBefore(first)) {
                told = conclude(first, *address, width, height);
            }
        }
    } else if (!since_ && up && still) {
        since_ = looks_.size(); // this one
        heldAt_ = hands;
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

void HoldSorter::hit(base::Seconds time) {
    constexpr std::size_t kKept = 8;
    hits_.push_back({time, std::nullopt});
    if (hits_.size() > kKept) {
        hits_.erase(hits_.begin());
    }
}

void HoldSorter::judged(base::Seconds hit, bool isSwing) {
    for (Hit& h : hits_) {
        if (h.time == hit) {
            h.isSwing = isSwing;
        }
    }
}

std::vector<Hold> HoldSorter::rehearsals(std::optional<base::Seconds> now) {
    std::vector<Hold> sure;
    std::erase_if(holds_, [&](Hold& hold) {
        bool open = now && now->value() < hold.to.value() + kHitAfter + kToldAfter;
        for (const Hit& hit : hits_) {
            const double t = hit.time.value();
            if (t < hold.from.value() - kHitBefore || t > hold.to.value() + kHitAfter) {
                continue;
            }
            if (hit.isSwing.value_or(false)) {
                return true; // that swing's
            }
            open = open || !hit.isSwing;
        }
        if (!open) {
            sure.push_back(std::move(hold));
        }
        return !open;
    });
    return sure;
}

} // namespace plumbmark::session
