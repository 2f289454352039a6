// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/equipment.h"

#include <cmath>

namespace plumbmark::measure {

std::vector<std::string> scaleWarnings(const Input& input, const std::vector<Measurement>& measurements) {
    std::vector<std::string> out;
    const auto& scale = input.scene.scale;
    const bool putter = input.context.club && input.context.club->kind == marks::ClubKind::putter;
    const auto* address = marks::find(input.moments, marks::MomentId::address);
    if (address != nullptr && scale.pixelsPerMetre && *scale.pixelsPerMetre > 0.0 && !putter &&
        !input.track.empty()) {
        const auto butt = marks::markAt(input.track, marks::Landmark::club_butt, address->time);
        const auto head = marks::markAt(input.track, marks::Landmark::club_head, address->time);
        if (butt && head) {
            const double pixels = base::length(butt->at - head->at);
            const double metres = pixels / *scale.pixelsPerMetre;
            const double sigma =
                metres * std::hypot(scale.relativeSigma, std::hypot(butt->sigma, head->sigma) / pixels);
            if (metres - 2.0 * sigma > kLongestClubMetres) {
                out.push_back(
                    "The club measures " + std::to_string(std::lround(metres * 100.0)) +
                    " cm in this clip, longer than the rules allow (122 cm): the scale is wrong. Check the "
                    "stature and the marks on butt and club head.");
            }
        }
    }
    const auto* lean = find(measurements, "shaft_lean", marks::MomentId::address);
    if (lean != nullptr && lean->value) {
        const double over =
            std::max(lean->value->value - kMostForwardLean, kMostBackwardLean - lean->value->value);
        if (over > 2.0 * lean->value->sigma) {
            out.push_back(
                "The shaft leans " + std::to_string(std::lround(lean->value->value)) +
                " degrees at address, more than any club's design allows: check the view, the hand and the "
                "marks on the shaft.");
        }
    }
    return out;
}

} // namespace plumbmark::measure
