// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "stage/stage_content.h"

#include <array>
#include <cstring>
#include <utility>

namespace plumbmark::stage {

using marks::Landmark;

std::vector<StageLine> bodyLines(const marks::FrameMarks& marks) {
    static constexpr std::array<std::pair<Landmark, Landmark>, 14> kBones{{
        {Landmark::lead_shoulder, Landmark::trail_shoulder},
        {Landmark::lead_shoulder, Landmark::lead_elbow},
        {Landmark::lead_elbow, Landmark::lead_wrist},
        {Landmark::trail_shoulder, Landmark::trail_elbow},
        {Landmark::trail_elbow, Landmark::trail_wrist},
        {Landmark::lead_hip, Landmark::trail_hip},
        {Landmark::lead_hip, Landmark::lead_knee},
        {Landmark::lead_knee, Landmark::lead_ankle},
        {Landmark::trail_hip, Landmark::trail_knee},
        {Landmark::trail_knee, Landmark::trail_ankle},
        {Landmark::lead_heel, Landmark::lead_toe},
        {Landmark::trail_heel, Landmark::trail_toe},
        {Landmark::lead_shoulder, Landmark::lead_hip},
        {Landmark::trail_shoulder, Landmark::trail_hip},
    }};
    std::vector<StageLine> lines;
    for (const auto& [from, to] : kBones) {
        if (marks[from] && marks[to]) {
            lines.push_back({marks[from]->at, marks[to]->at, StageLine::Kind::body});
        }
    }
    return lines;
}

bool isMainHandle(Landmark landmark) {
    switch (landmark) {
    case Landmark::head_centre:
    case Landmark::lead_shoulder:
    case Landmark::trail_shoulder:
    case Landmark::lead_elbow:
    case Landmark::trail_elbow:
    case Landmark::grip:
    case Landmark::lead_hip:
    case Landmark::trail_hip:
    case Landmark::lead_knee:
    case Landmark::trail_knee:
    case Landmark::lead_ankle:
    case Landmark::trail_ankle:
    case Landmark::club_head:
    case Landmark::ball:
    case Landmark::pelvis_rear:
        return true;
    default:
        return false;
    }
}

QImage toImage(const video::Frame& frame) {
    const video::RgbImage rgb = frame.rgb();
    if (rgb.width <= 0 || rgb.height <= 0) {
        return {};
    }
    const QImage view(rgb.pixels.data(), rgb.width, rgb.height, rgb.width * 3, QImage::Format_RGB888);
    return view.convertToFormat(QImage::Format_RGB32);
}

} // namespace plumbmark::stage
