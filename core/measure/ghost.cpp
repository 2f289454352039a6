// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/ghost.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <numbers>

namespace plumbmark::measure {
namespace {

using base::Vec2;
using marks::Landmark;
using marks::MomentId;

/// How the part that a number hangs on may move.
struct Way {
    enum class Kind { none, shift, spread, turn, shaft } kind = Kind::none;
    std::vector<Landmark> parts;           ///< spread: the lead ones
    std::vector<Landmark> others;          ///< spread: the trail ones, moved the other way
    std::optional<Landmark> pivot, pivotB; ///< turn: about the one, or about the middle of both
    bool up = false;                       ///< shift along the vertical instead of along the ground
};

const std::vector<Landmark> kHead{Landmark::head_centre, Landmark::nose,      Landmark::head_crown,
                                  Landmark::head_front,  Landmark::head_back, Landmark::lead_ear,
                                  Landmark::trail_ear};
const std::vector<Landmark> kShoulders{Landmark::lead_shoulder, Landmark::trail_shoulder,
                                       Landmark::neck_base};

Way wayOf(std::string_view id) {
    using Kind = Way::Kind;
    if (id == "stance_width_ratio") {
        return {Kind::spread,
                {Landmark::lead_ankle, Landmark::lead_heel, Landmark::lead_toe},
                {Landmark::trail_ankle, Landmark::trail_heel, Landmark::trail_toe},
                {},
                {},
                false};
    }
    if (id == "ball_position") {
        return {Kind::shift, {Landmark::ball}, {}, {}, {}, false};
    }
    if (id == "foot_flare_lead") {
        return {Kind::turn, {Landmark::lead_toe}, {}, Landmark::lead_heel, {}, false};
    }
    if (id == "foot_flare_trail") {
        return {Kind::turn, {Landmark::trail_toe}, {}, Landmark::trail_heel, {}, false};
    }
    if (id.starts_with("spine_tilt") || id.starts_with("forward_bend")) {
        return {Kind::turn, kShoulders, {}, Landmark::lead_hip, Landmark::trail_hip, false};
    }
    if (id.starts_with("head_to_trail_ankle") || id == "head_travel" || id == "finish_head_over_lead_ankle") {
        return {Kind::shift, kHead, {}, {}, {}, false};
    }
    if (id == "head_rise") {
        return {Kind::shift, kHead, {}, {}, {}, true};
    }
    if (id == "pelvis_shift" || id == "pelvis_depth_mid_hip") {
        return {Kind::shift, {Landmark::lead_hip, Landmark::trail_hip}, {}, {}, {}, false};
    }
    if (id == "pelvis_depth") {
        return {Kind::shift, {Landmark::pelvis_rear}, {}, {}, {}, false};
    }
    if (id == "chest_shift") {
        return {Kind::shift, kShoulders, {}, {}, {}, false};
    }
    if (id == "lead_line_tilt") {
        return {Kind::turn, {Landmark::lead_shoulder}, {}, Landmark::lead_ankle, {}, false};
    }
    if (id == "lead_hip_offset" || id == "lead_hip_over_ankle") {
        return {Kind::shift, {Landmark::lead_hip}, {}, {}, {}, false};
    }
    if (id == "trail_foot_pitch") {
        return {Kind::turn, {Landmark::trail_heel}, {}, Landmark::trail_toe, {}, false};
    }
    if (id == "shaft_lean") {
        return {Kind::shaft, {}, {}, {}, {}, false};
    }
    return {};
}

Vec2 turned(Vec2 p, Vec2 about, double radians) {
    const Vec2 d = p - about;
    const double c = std::cos(radians), s = std::sin(radians);
    return about + Vec2{d.x * c - d.y * s, d.x * s + d.y * c};
}

/// A swing whose part has been moved near one moment.
class Moved {
  public:
    Moved(const Input& input, const Way& way, MomentId moment) : in_(input), way_(way) {
        const marks::Moment* at = marks::find(input.moments, moment);
        frame_ = at == nullptr ? -1 : nearestFrame(input.track, at->time);
        if (frame_ < 0) {
            return;
        }
        // As far as half-way to the neighbouring moments: the number sees nothing else near its own moment,
        // however wide its filters are.
        double from = -1e9, to = 1e9;
        for (const marks::Moment& m : input.moments) {
            const double middle = 0.5 * (m.time + at->time).value();
            if (m.time < at->time) {
                from = std::max(from, middle);
            } else if (at->time < m.time) {
                to = std::min(to, middle);
            }
        }
        first_ = frame_;
        while (first_ > 0 && input.track[first_ - 1].time.value() > from) {
            --first_;
        }
        last_ = frame_;
        while (last_ + 1 < input.track.size() && input.track[last_ + 1].time.value() < to) {
            ++last_;
        }
        const double stature = input.scene.scale.pixelsPerStature;
        unit_ = stature > 0 ? stature : 0.5 * input.scene.height;
    }

    [[nodiscard]] int frame() const { return frame_; }
    /// What step moves by about a hundredth of a stature, or a degree.
    [[nodiscard]] double probe() const {
        return way_.kind == Way::Kind::turn ? std::numbers::pi / 180 : 0.01 * unit_;
    }

    void moveBy(double step) {
        track_ = in_.track;
        ball_ = in_.ball;
        const Vec2 along = way_.up ? in_.scene.vertical.up() : in_.scene.vertical.right();
        for (std::size_t i = first_; i <= last_; ++i) {
            marks::FrameMarks& frame = track_[i];
            if (way_.kind == Way::Kind::turn) {
                const auto& a = in_.track[i][*way_.pivot];
                const auto& b = way_.pivotB ? in_.track[i][*way_.pivotB] : a;
                if (a && b) {
                    for (const Landmark l : way_.parts) {
                        if (frame[l]) {
                            frame[l]->at = turned(frame[l]->at, base::midpoint(a->at, b->at), step);
                        }
                    }
                }
                continue;
            }
            for (const Landmark l : way_.parts) {
                if (frame[l]) {
                    frame[l]->at = frame[l]->at + along * step;
                }
            }
            for (const Landmark l : way_.others) {
                if (frame[l]) {
                    frame[l]->at = frame[l]->at - along * step;
                }
            }
        }
        if (ball_ && std::find(way_.parts.begin(), way_.parts.end(), Landmark::ball) != way_.parts.end()) {
            ball_->centre = ball_->centre + along * step;
        }
    }

    [[nodiscard]] Input input() const {
        return {track_, in_.moments, in_.shaft, ball_, in_.scene, in_.context, in_.timeScale, in_.hit};
    }

  private:
    const Input& in_;
    const Way& way_;
    int frame_ = -1;
    std::size_t first_ = 0, last_ = 0;
    double unit_ = 1.0;
    marks::Track track_;
    std::optional<club::Ball> ball_;
};

/// The shaft's lean is read between frames, but its unit is the degree: the line turns about the club head.
std::optional<Ghost> shaftGhost(const Input& in, std::optional<MomentId> moment, double by) {
    const Construction c = constructionOf(in, "shaft_lean", moment);
    const auto shaft = std::find_if(c.lines.begin(), c.lines.end(),
                                    [](const auto& l) { return l.kind == Construction::Kind::shaft; });
    if (shaft == c.lines.end()) {
        return std::nullopt;
    }
    const auto& marks = in.track[static_cast<std::size_t>(c.frame)];
    const auto& lead = marks[Landmark::lead_ankle];
    const auto& trail = marks[Landmark::trail_ankle];
    if (!lead || !trail) {
        return std::nullopt;
    }
    // More lean brings the grip toward the target, which lies on the lead foot's side.
    const bool targetOnRight = base::dot(lead->at - trail->at, in.scene.vertical.right()) > 0;
    const double radians = (targetOnRight ? by : -by) * std::numbers::pi / 180;
    Ghost ghost{c.frame, {}, marks};
    ghost.lines.push_back({turned(shaft->a, shaft->b, radians), shaft->b, Construction::Kind::shaft});
    return ghost;
}

} // namespace

std::optional<Ghost> ghostOf(const Input& input, std::string_view measurement, std::optional<MomentId> moment,
                             double target) {
    const Way way = wayOf(measurement);
    const auto valueIn = [&](const Input& in) -> std::optional<base::Measured> {
        const auto all = measureAll(in);
        const Measurement* m = find(all, measurement, moment);
        return m == nullptr ? std::nullopt : m->value;
    };
    if (way.kind == Way::Kind::none || !moment) {
        return std::nullopt;
    }
    const auto now = valueIn(input);
    if (!now) {
        return std::nullopt;
    }
    if (way.kind == Way::Kind::shaft) {
        return shaftGhost(input, moment, target - now->value);
    }
    Moved moved(input, way, *moment);
    if (moved.frame() < 0) {
        return std::nullopt;
    }
    // Secant steps: the numbers are nearly straight in the places of their marks.
    const double enough = std::max(0.02 * std::abs(target - now->value), 1e-6);
    double before = 0.0, beforeValue = now->value, step = moved.probe();
    bool there = false;
    for (int i = 0; i < 6 && !there; ++i) {
        moved.moveBy(step);
        const auto value = valueIn(moved.input());
        if (!value) {
            return std::nullopt;
        }
        there = std::abs(value->value - target) <= enough;
        const double slope = (value->value - beforeValue) / (step - before);
        if (!there) {
            if (!std::isfinite(slope) || std::abs(slope) < 1e-12) {
                return std::nullopt;
            }
            before = step;
            beforeValue = value->value;
            step += (target - value->value) / slope;
            if (!std::isfinite(step) || std::abs(step) > 200 * moved.probe()) {
                return std::nullopt;
            }
        }
    }
    if (!there) {
        return std::nullopt;
    }
    const Construction was = constructionOf(input, measurement, moment);
    const Construction is = constructionOf(moved.input(), measurement, moment);
    if (is.frame < 0 || was.lines.size() != is.lines.size()) {
        return std::nullopt;
    }
    Ghost ghost{is.frame, {}, moved.input().track[static_cast<std::size_t>(is.frame)]};
    for (std::size_t i = 0; i < is.lines.size(); ++i) {
        const auto far = [](Vec2 a, Vec2 b) { return base::length(a - b) > 0.5; };
        if (is.lines[i].kind != Construction::Kind::level &&
            (far(is.lines[i].a, was.lines[i].a) || far(is.lines[i].b, was.lines[i].b))) {
            ghost.lines.push_back(is.lines[i]);
        }
    }
    return ghost.lines.empty() ? std::nullopt : std::optional(ghost);
}

} // namespace plumbmark::measure
