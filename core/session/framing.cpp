// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/framing.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace plumbmark::session {
namespace {

using body::Point;

struct Row {
    FramingFault fault;
    std::string_view name, advice;
};
constexpr std::array kRows{
    Row{FramingFault::nobody, "nobody", "Nobody is seen: stand at the ball, with the light on you."},
    Row{FramingFault::feetCut, "feet-cut", "Your feet are cut off: tilt the phone down or move it back."},
    Row{FramingFault::headCut, "head-cut",
        "There is too little room above your head: tilt the phone up or move it back."},
    Row{FramingFault::tooSmall, "too-small",
        "You are too small in the picture: move the phone nearer, to 4 to 5 metres."},
    Row{FramingFault::tooLarge, "too-large", "You fill the picture: move the phone back, to 4 to 5 metres."},
    Row{FramingFault::offLeft, "off-left",
        "You stand at the picture's left edge: turn the phone to its left."},
    Row{FramingFault::offRight, "off-right",
        "You stand at the picture's right edge: turn the phone to its right."},
    Row{FramingFault::notFaceOn, "not-face-on",
        "The phone sees you from the side: put it where your chest faces it."},
    Row{FramingFault::notDownTheLine, "not-down-the-line",
        "The phone sees your chest: put it behind you, on the line of your hands."},
};

} // namespace

std::string_view framingFaultName(FramingFault fault) {
    return kRows[static_cast<std::size_t>(fault)].name;
}

std::string_view framingAdvice(FramingFault fault) {
    return kRows[static_cast<std::size_t>(fault)].advice;
}

Framing judgeFraming(const std::optional<body::Observation>& seen, int width, int height, marks::View view) {
    Framing framing;
    if (!seen) {
        framing.faults.push_back(FramingFault::nobody);
        return framing;
    }
    const auto& o = *seen;
    const double w = width, h = height;
    const double feet = std::max({o[Point::left_heel].direct.y, o[Point::right_heel].direct.y,
                                  o[Point::left_toe].direct.y, o[Point::right_toe].direct.y});
    const auto eyes = base::midpoint(o[Point::left_eye].direct, o[Point::right_eye].direct);
    const auto hips = base::midpoint(o[Point::left_hip].direct, o[Point::right_hip].direct);
    const auto ankles = base::midpoint(o[Point::left_ankle].direct, o[Point::right_ankle].direct);
    // Eyes lie about half a head below the crown; the head is 0.13 of stature, the eyes at 0.936 of it
    // (Drillis & Contini 1966).
    const double seenHeight = feet - eyes.y;
    const double size = seenHeight / 0.93;
    const double crown = eyes.y - 0.06 * size;
    const double middle = (hips.x + ankles.x) / 2;
    framing.player = {middle / w - 0.15 * size / w, crown / h, 0.3 * size / w, (feet - crown) / h};
    const auto visible = [&](Point a, Point b) { return std::min(o[a].visibility, o[b].visibility); };
    if (feet > 0.985 * h || visible(Point::left_ankle, Point::right_ankle) < 0.2) {
        framing.faults.push_back(FramingFault::feetCut);
    }
    if (crown < 0.10 * size) {
        framing.faults.push_back(FramingFault::headCut);
    }
    if (size < 0.45 * h) {
        framing.faults.push_back(FramingFault::tooSmall);
    } else if (size > 0.85 * h) {
        framing.faults.push_back(FramingFault::tooLarge);
    }
    // The club reaches about 0.9 statures to each side; half a stature keeps hands and head inside.
    if (middle < std::min(0.45 * size, 0.4 * w)) {
        framing.faults.push_back(FramingFault::offLeft);
    } else if (middle > w - std::min(0.45 * size, 0.4 * w)) {
        framing.faults.push_back(FramingFault::offRight);
    }
    // Shoulder joints are 0.2 to 0.26 statures apart seen from the front (the lower bound leaves room for a
    // turned stance) and hardly at all from behind the line.
    const double across = std::abs(o[Point::left_shoulder].peak.x - o[Point::right_shoulder].peak.x) / size;
    if (view == marks::View::faceOn && across < 0.07) {
        framing.faults.push_back(FramingFault::notFaceOn);
    } else if (view == marks::View::downTheLine && across > 0.17) {
        framing.faults.push_back(FramingFault::notDownTheLine);
    }
    return framing;
}

base::Box standHere(int width, int height, marks::View view) {
    const double share = width > height ? 0.66 : 0.5; // of the picture's height
    const double aspect = static_cast<double>(height) / std::max(1, width);
    const double wide = (view == marks::View::faceOn ? 0.42 : 0.38) * share * aspect;
    return {0.5 - wide / 2, 0.92 - share, wide, share};
}

} // namespace plumbmark::session
