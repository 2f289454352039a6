// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/construction.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace plumbmark::measure {
namespace {

using base::Vec2;
using marks::Landmark;
using marks::MomentId;
using Kind = Construction::Kind;

class Draughtsman {
  public:
    Draughtsman(const Input& input, MomentId moment) : in_(input), moment_(moment) {
        frame_ = frameOf(moment);
        up_ = in_.scene.vertical.up();
        right_ = in_.scene.vertical.right();
        const double stature = in_.scene.scale.pixelsPerStature;
        unit_ = stature > 0 ? stature : 0.5 * in_.scene.height;
    }

    [[nodiscard]] int frameOf(MomentId id) const {
        const marks::Moment* m = marks::find(in_.moments, id);
        return m == nullptr ? -1 : nearestFrame(in_.track, m->time);
    }

    /// A mark at the construction's own moment, or at another one carried along with the ground.
    std::optional<Vec2> point(Landmark l, std::optional<MomentId> when = std::nullopt) {
        const MomentId id = when.value_or(moment_);
        use(l, id);
        const int frame = frameOf(id);
        if (frame < 0 || frame_ < 0) {
            return std::nullopt;
        }
        const auto& mark = in_.track[static_cast<std::size_t>(frame)][l];
        if (!mark) {
            return std::nullopt;
        }
        return frame == frame_
                   ? mark->at
                   : in_.scene.ground.fromReference(frame_, in_.scene.ground.toReference(frame, mark->at));
    }
    std::optional<Vec2> middle(Landmark a, Landmark b, std::optional<MomentId> when = std::nullopt) {
        const auto p = point(a, when), q = point(b, when);
        return p && q ? std::optional(base::midpoint(*p, *q)) : std::nullopt;
    }
    std::optional<Vec2> hips(std::optional<MomentId> when = std::nullopt) {
        return middle(Landmark::lead_hip, Landmark::trail_hip, when);
    }
    std::optional<Vec2> shoulders(std::optional<MomentId> when = std::nullopt) {
        return middle(Landmark::lead_shoulder, Landmark::trail_shoulder, when);
    }

    void line(std::optional<Vec2> a, std::optional<Vec2> b, Kind kind = Kind::line) {
        if (a && b) {
            c_.lines.push_back({*a, *b, kind});
        }
    }
    void join(Landmark a, Landmark b) { line(point(a), point(b)); }
    /// Through `at`, from `below` under it to `above` over it, in statures.
    void vertical(std::optional<Vec2> at, double above, double below = 0.0) {
        if (at) {
            line(*at - up_ * (below * unit_), *at + up_ * (above * unit_), Kind::vertical);
        }
    }
    /// Level from a point to the vertical through another one.
    void levelTo(std::optional<Vec2> from, std::optional<Vec2> through) {
        if (from && through) {
            line(*from, *from + right_ * base::dot(*through - *from, right_), Kind::level);
        }
    }
    void level(std::optional<Vec2> at, double half) {
        if (at) {
            line(*at - right_ * (half * unit_), *at + right_ * (half * unit_), Kind::level);
        }
    }
    void trunk(std::optional<MomentId> when, Kind kind) { line(hips(when), shoulders(when), kind); }
    void shaft(std::optional<MomentId> when = std::nullopt, Kind kind = Kind::shaft) {
        const int frame = frameOf(when.value_or(moment_));
        if (frame < 0 || frame >= static_cast<int>(in_.shaft.size()) ||
            !in_.shaft[static_cast<std::size_t>(frame)]) {
            return;
        }
        const auto& s = *in_.shaft[static_cast<std::size_t>(frame)];
        const Vec2 from = s.butt.value_or(s.through);
        line(from, s.head ? *s.head : from + club::directionOf(s.angleDegrees) * (0.4 * unit_), kind);
    }
    std::optional<Vec2> head(std::optional<MomentId> when = std::nullopt) {
        return point(Landmark::head_centre, when);
    }
    std::optional<Vec2> grip() { return point(Landmark::grip); }
    void need(Landmark l, MomentId when) { use(l, when); }

    /// How far a middle has come since address, sideways.
    void travel(std::optional<Vec2> before, std::optional<Vec2> now) {
        vertical(before, 0.14, 0.14);
        if (!c_.lines.empty()) {
            c_.lines.back().kind = Kind::before;
        }
        vertical(now, 0.1, 0.1);
        levelTo(now, before);
    }

    [[nodiscard]] Construction done() {
        c_.frame = c_.lines.empty() ? -1 : frame_;
        return std::move(c_);
    }

  private:
    void use(Landmark l, MomentId when) {
        const Construction::Use u{l, when};
        if (std::find(c_.uses.begin(), c_.uses.end(), u) == c_.uses.end()) {
            c_.uses.push_back(u);
        }
    }
    const Input& in_;
    MomentId moment_;
    int frame_ = -1;
    Vec2 up_, right_;
    double unit_ = 1.0;
    Construction c_;
};

void draw(Draughtsman& d, std::string_view id) {
    const auto starts = [&](std::string_view with) { return id.starts_with(with); };
    if (id == "stance_width_ratio") {
        d.join(Landmark::lead_ankle, Landmark::trail_ankle);
        d.join(Landmark::lead_shoulder, Landmark::trail_shoulder);
    } else if (id == "ball_position") {
        d.join(Landmark::lead_ankle, Landmark::trail_ankle);
        d.vertical(d.point(Landmark::lead_ankle), 0.12, 0.12);
        d.vertical(d.point(Landmark::trail_ankle), 0.12, 0.12);
        d.vertical(d.point(Landmark::ball), 0.2, 0.02);
    } else if (id == "foot_flare_lead") {
        d.join(Landmark::lead_heel, Landmark::lead_toe);
    } else if (id == "foot_flare_trail") {
        d.join(Landmark::trail_heel, Landmark::trail_toe);
    } else if (id == "spine_tilt" || id == "forward_bend") {
        d.trunk(std::nullopt, Kind::line);
        d.vertical(d.hips(), 0.36);
    } else if (id == "spine_tilt_change" || id == "forward_bend_change") {
        d.trunk(MomentId::address, Kind::before);
        d.trunk(std::nullopt, Kind::line);
        d.vertical(d.hips(), 0.36);
    } else if (starts("head_to_trail_ankle")) {
        const auto ankle = d.point(Landmark::trail_ankle);
        const auto head = id == "head_to_trail_ankle_nose" ? d.point(Landmark::nose) : d.head();
        d.vertical(ankle, 0.95);
        d.levelTo(head, ankle);
        d.need(Landmark::lead_ankle, MomentId::address);
        d.need(Landmark::trail_ankle, MomentId::address);
    } else if (id == "finish_head_over_lead_ankle") {
        const auto ankle = d.point(Landmark::lead_ankle);
        d.vertical(ankle, 0.95);
        d.levelTo(d.head(), ankle);
        d.need(Landmark::lead_ankle, MomentId::address);
        d.need(Landmark::trail_ankle, MomentId::address);
    } else if (id == "com_over_lead_ankle") {
        const auto ankle = d.point(Landmark::lead_ankle);
        d.vertical(ankle, 0.7);
        d.levelTo(d.hips(), ankle);
        d.shoulders();
        d.head();
    } else if (id == "head_travel") {
        d.travel(d.head(MomentId::address), d.head());
    } else if (id == "head_rise") {
        const auto before = d.head(MomentId::address);
        d.level(before, 0.14);
        d.level(d.head(), 0.1);
    } else if (id == "pelvis_shift" || id == "pelvis_depth_mid_hip") {
        d.travel(d.hips(MomentId::address), d.hips());
    } else if (id == "pelvis_depth") {
        d.travel(d.point(Landmark::pelvis_rear, MomentId::address), d.point(Landmark::pelvis_rear));
    } else if (id == "chest_shift") {
        d.travel(d.shoulders(MomentId::address), d.shoulders());
    } else if (id == "lead_line_tilt") {
        d.join(Landmark::lead_ankle, Landmark::lead_shoulder);
        d.vertical(d.point(Landmark::lead_ankle), 0.85);
    } else if (id == "lead_hip_offset") {
        const auto ankle = d.point(Landmark::lead_ankle), shoulder = d.point(Landmark::lead_shoulder);
        const auto hip = d.point(Landmark::lead_hip);
        d.line(ankle, shoulder);
        if (ankle && shoulder && hip && base::length(*shoulder - *ankle) > 1.0) {
            const Vec2 along = *shoulder - *ankle;
            const double k = base::dot(*hip - *ankle, along) / base::dot(along, along);
            d.line(hip, *ankle + along * k, Kind::level);
        }
    } else if (id == "lead_hip_over_ankle") {
        const auto ankle = d.point(Landmark::lead_ankle);
        d.vertical(ankle, 0.65);
        d.levelTo(d.point(Landmark::lead_hip), ankle);
    } else if (id == "pelvis_turn") {
        d.join(Landmark::lead_hip, Landmark::trail_hip);
    } else if (id == "shoulder_turn" || id == "chest_turn") {
        d.join(Landmark::lead_shoulder, Landmark::trail_shoulder);
    } else if (id == "separation") {
        d.join(Landmark::lead_hip, Landmark::trail_hip);
        d.join(Landmark::lead_shoulder, Landmark::trail_shoulder);
    } else if (id == "shaft_lean") {
        d.shaft();
        d.need(Landmark::club_butt, MomentId::impact);
        d.need(Landmark::club_head, MomentId::impact);
        d.vertical(d.point(Landmark::club_head), 0.45);
    } else if (id == "hands_ahead") {
        d.shaft();
        d.vertical(d.point(Landmark::ball, MomentId::address), 0.4);
        d.levelTo(d.grip(), d.point(Landmark::ball, MomentId::address));
    } else if (id == "shaft_plane" || id == "shaft_at_top") {
        d.shaft();
        d.level(d.grip(), 0.15);
    } else if (id == "wrist_set" || id == "wrist_set_corrected") {
        d.join(Landmark::lead_elbow, Landmark::lead_wrist);
        d.shaft();
    } else if (starts("wrist_set")) {
        for (const MomentId m : {MomentId::lead_arm_level_down, MomentId::shaft_level_down}) {
            d.need(Landmark::lead_elbow, m);
            d.need(Landmark::lead_wrist, m);
            d.need(Landmark::club_head, m);
        }
    } else if (id == "release_bisector_angle") {
        d.join(Landmark::lead_elbow, Landmark::lead_wrist);
        d.join(Landmark::trail_elbow, Landmark::trail_wrist);
        d.shaft();
    } else if (id == "takeaway_width") {
        d.line(d.grip(), d.point(Landmark::trail_shoulder));
    } else if (id == "lead_elbow_flex") {
        d.join(Landmark::lead_shoulder, Landmark::lead_elbow);
        d.join(Landmark::lead_elbow, Landmark::lead_wrist);
    } else if (id == "lead_knee_flex" || id == "trail_knee_flex") {
        const bool lead = id == "lead_knee_flex";
        d.join(lead ? Landmark::lead_hip : Landmark::trail_hip,
               lead ? Landmark::lead_knee : Landmark::trail_knee);
        d.join(lead ? Landmark::lead_knee : Landmark::trail_knee,
               lead ? Landmark::lead_ankle : Landmark::trail_ankle);
    } else if (id == "trail_foot_pitch") {
        d.join(Landmark::trail_heel, Landmark::trail_toe);
        d.level(d.point(Landmark::trail_toe), 0.08);
    } else if (id == "hand_path") {
        d.need(Landmark::grip, MomentId::lead_arm_level_back);
        d.need(Landmark::grip, MomentId::lead_arm_level_down);
    } else if (id == "aim_feet") {
        d.join(Landmark::trail_toe, Landmark::lead_toe);
        d.join(Landmark::stick_near, Landmark::stick_far);
    }
}

} // namespace

int nearestFrame(const marks::Track& track, base::Seconds time) {
    if (track.empty()) {
        return -1;
    }
    std::size_t frame = marks::frameAt(track, time);
    if (frame + 1 < track.size() &&
        std::abs((track[frame + 1].time - time).value()) < std::abs((track[frame].time - time).value())) {
        ++frame;
    }
    return static_cast<int>(frame);
}

Construction constructionOf(const Input& input, std::string_view measurement,
                            std::optional<MomentId> moment) {
    Draughtsman d(input, moment.value_or(MomentId::address));
    draw(d, measurement);
    return d.done();
}

} // namespace plumbmark::measure
