// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/picture_marks.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace plumbmark::exporting {
namespace {
using marks::Landmark;
using marks::MomentId;

constexpr Ink kDark{0x10, 0x18, 0x1e};
constexpr Ink kWhite{0xff, 0xff, 0xff};
constexpr Ink kSpine{0xf0, 0xe4, 0x42};
constexpr Ink kShaft{0x56, 0xb4, 0xe9};
constexpr Ink kLeadLine{0xff, 0xa0, 0x50};

constexpr std::array kShown{Landmark::head_centre, Landmark::lead_shoulder, Landmark::trail_shoulder,
                            Landmark::lead_hip,    Landmark::trail_hip,     Landmark::lead_knee,
                            Landmark::trail_knee,  Landmark::lead_ankle,    Landmark::trail_ankle,
                            Landmark::lead_elbow,  Landmark::trail_elbow,   Landmark::grip};

} // namespace

std::optional<std::pair<base::Vec2, base::Vec2>> clippedLine(base::Vec2 a, base::Vec2 b,
                                                             const base::Box& box) {
    double from = 0.0;
    double to = 1.0;
    const base::Vec2 d = b - a;
    const std::array<std::pair<double, double>, 4> edges{{{-d.x, a.x - box.x},
                                                          {d.x, box.x + box.width - a.x},
                                                          {-d.y, a.y - box.y},
                                                          {d.y, box.y + box.height - a.y}}};
    for (const auto& [p, q] : edges) {
        if (p == 0.0) {
            if (q < 0.0) {
                return std::nullopt;
            }
        } else if (p < 0.0) {
            from = std::max(from, q / p);
        } else {
            to = std::min(to, q / p);
        }
    }
    if (!(from < to)) { // also when a number is not finite
        return std::nullopt;
    }
    return std::pair{a + d * from, a + d * to};
}

PictureMarks marksAt(const analysis::Outcome& outcome, std::size_t frameIndex,
                     std::optional<MomentId> moment) {
    PictureMarks found;
    if (frameIndex >= outcome.track.size()) {
        return found;
    }
    const marks::FrameMarks& frame = outcome.track[frameIndex];
    const auto line = [&](base::Vec2 a, base::Vec2 b, Ink ink, bool dashed) {
        found.lines.push_back({a, b, ink, dashed});
    };
    const auto at = [&](Landmark l) -> std::optional<base::Vec2> {
        return frame[l] ? std::optional(frame[l]->at) : std::nullopt;
    };
    const auto middle = [&](Landmark a, Landmark b) -> std::optional<base::Vec2> {
        return at(a) && at(b) ? std::optional(base::midpoint(*at(a), *at(b))) : std::nullopt;
    };
    const bool faceOn = outcome.context.view == marks::View::faceOn;
    const base::Vec2 up = outcome.scene.vertical.up();
    const double stature = outcome.scene.scale.pixelsPerStature > 0.0 ? outcome.scene.scale.pixelsPerStature
                                                                      : 0.7 * outcome.clip.height;
    if (const auto ankle = at(Landmark::trail_ankle); ankle && faceOn) {
        line(*ankle - up * (0.07 * stature), *ankle + up * (1.3 * stature), kWhite, true);
    }
    if (frameIndex < outcome.shaft.size() && outcome.shaft[frameIndex]) {
        const club::ShaftSample& shaft = *outcome.shaft[frameIndex];
        const double angle = shaft.angleDegrees * std::numbers::pi / 180.0;
        const base::Vec2 direction{std::sin(angle), std::cos(angle)};
        // Where an end is not seen: a shaft is about half a standing height long (a driver 1.15 m, a wedge
        // 0.9 m).
        const base::Vec2 butt = shaft.butt.value_or(shaft.through);
        line(butt, shaft.head.value_or(butt + direction * (0.55 * stature)), kShaft, false);
    }
    const auto hips = middle(Landmark::lead_hip, Landmark::trail_hip);
    const auto shoulders = middle(Landmark::lead_shoulder, Landmark::trail_shoulder);
    if (moment == MomentId::impact && faceOn && at(Landmark::lead_ankle) && at(Landmark::lead_shoulder)) {
        line(*at(Landmark::lead_ankle), *at(Landmark::lead_shoulder), kLeadLine, false);
    }
    if (hips && shoulders) {
        line(*hips, *shoulders, kSpine, false);
    }
    for (const Landmark l : kShown) {
        if (const auto p = at(l); p && std::isfinite(p->x) && std::isfinite(p->y)) {
            found.points.push_back(*p);
        }
    }
    return found;
}

std::string linesLegend(marks::View view) {
    std::string words = "Lines: yellow from mid-hip to mid-shoulder";
    if (view == marks::View::faceOn) {
        words += ", dashed plumb line through the trail ankle, orange at impact from lead ankle to lead "
                 "shoulder";
    }
    return words + ", blue the shaft.";
}

void drawMarks(const PictureMarks& marks, base::Vec2 corner, double scale, const PageBox& box,
               std::vector<Item>& items, double size) {
    const auto onPage = [&](base::Vec2 p) {
        return base::Vec2{box.x + (p.x - corner.x) * scale, box.y + (p.y - corner.y) * scale};
    };
    for (const MarkLine& line : marks.lines) {
        if (const auto inside = clippedLine(onPage(line.from), onPage(line.to), box)) {
            Line drawn;
            drawn.from = inside->first;
            drawn.to = inside->second;
            drawn.width = 0.45 * size;
            drawn.edgeWidth = 0.28 * size;
            drawn.ink = line.ink;
            drawn.edge = kDark;
            drawn.dashed = line.dashed;
            items.emplace_back(drawn);
        }
    }
    for (const base::Vec2 point : marks.points) {
        const base::Vec2 place = onPage(point);
        if (box.contains(place)) {
            items.emplace_back(Shape{Sign::mark, place, 1.7 * size});
        }
    }
}

} // namespace plumbmark::exporting
