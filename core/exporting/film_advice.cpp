// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/film_advice.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace plumbmark::exporting {
namespace {
using marks::Landmark;

/// The shaft turns some 2.4 degrees a millisecond at the hit: 80 degrees between two frames at 30 a second.
constexpr double kShaftDegreesPerSecond = 2400.0;
/// A ball half a metre off the middle at 4 m makes 3.4 to 3.9 degrees of false shaft lean.
constexpr double kFalseLeanPerMetre = 7.3;
constexpr double kUsualStature = 1.75; ///< m, where nobody told it

std::string whole(double value) {
    return std::to_string(std::llround(value));
}

std::string oneDecimal(double value) {
    const long long tenths = std::llround(value * 10.0);
    return std::to_string(tenths / 10) + "." + std::to_string(std::llabs(tenths % 10));
}

std::size_t addressFrame(const analysis::Outcome& outcome) {
    const auto* address = marks::find(outcome.moments, marks::MomentId::address);
    return address != nullptr && !outcome.track.empty() ? marks::frameAt(outcome.track, address->time) : 0;
}

double medianLuma(const video::Frame& frame, base::Box box) {
    const video::PlaneView luma = frame.luma();
    std::array<int, 256> histogram{};
    int n = 0;
    for (int y = std::max(0, static_cast<int>(box.y)); y < std::min<double>(luma.height, box.y + box.height);
         ++y) {
        for (int x = std::max(0, static_cast<int>(box.x));
             x < std::min<double>(luma.width, box.x + box.width); ++x) {
            ++histogram[luma.data[y * luma.stride + x]];
            ++n;
        }
    }
    int value = 0;
    for (int below = 0; value < 255 && (below += histogram[static_cast<std::size_t>(value)]) * 2 < n;
         ++value) {
    }
    return std::clamp(frame.colour().fullRange ? value / 255.0 : (value - 16) / 219.0, 0.0, 1.0);
}

/// Parts of the body that lie at or beyond the picture's edge in some frames.
std::string partsCut(const analysis::Outcome& outcome) {
    const double edgeX = 0.005 * outcome.clip.width;
    const double edgeY = 0.005 * outcome.clip.height;
    const auto cut = [&](std::initializer_list<Landmark> landmarks) {
        const auto frames = std::count_if(outcome.track.begin(), outcome.track.end(), [&](const auto& frame) {
            return std::any_of(landmarks.begin(), landmarks.end(), [&](Landmark l) {
                const auto& mark = frame[l];
                return mark &&
                       (mark->at.x < edgeX || mark->at.y < edgeY || mark->at.x > outcome.clip.width - edgeX ||
                        mark->at.y > outcome.clip.height - edgeY);
            });
        });
        return frames >= 3; // one or two may be a slip of the tracker
    };
    std::vector<std::string> cutOff;
    const auto add = [&](const char* part) { cutOff.emplace_back(part); };
    if (cut({Landmark::head_crown, Landmark::head_centre, Landmark::nose})) {
        add("the head");
    }
    if (cut({Landmark::grip, Landmark::lead_wrist, Landmark::trail_wrist})) {
        add("the hands");
    }
    if (cut({Landmark::club_head})) {
        add("the club");
    }
    if (cut({Landmark::lead_ankle, Landmark::trail_ankle, Landmark::lead_toe, Landmark::trail_toe})) {
        add("the feet");
    }
    std::string parts;
    for (std::size_t i = 0; i < cutOff.size(); ++i) {
        parts += (i == 0 ? "" : i + 1 < cutOff.size() ? ", " : " and ") + cutOff[i];
    }
    return parts;
}

} // namespace

base::Result<PictureQuality> lookAtPictures(video::Clip& clip, const analysis::Outcome& outcome) {
    PictureQuality quality;
    const std::size_t index = addressFrame(outcome);
    if (index >= outcome.track.size() || static_cast<int>(index) >= clip.info().frames) {
        return quality;
    }
    const marks::FrameMarks& marks = outcome.track[index];
    std::array<base::Vec2, 4> corners{};
    std::size_t n = 0;
    for (const Landmark l :
         {Landmark::lead_shoulder, Landmark::trail_shoulder, Landmark::lead_hip, Landmark::trail_hip}) {
        if (!marks[l] || !std::isfinite(marks[l]->at.x) || !std::isfinite(marks[l]->at.y)) {
            return quality;
        }
        corners[n++] = marks[l]->at;
    }
    const auto frame = clip.frame(static_cast<int>(index));
    if (!frame) {
        return frame.error();
    }
    const auto [left, right] =
        std::minmax_element(corners.begin(), corners.end(), [](auto a, auto b) { return a.x < b.x; });
    const auto [top, bottom] =
        std::minmax_element(corners.begin(), corners.end(), [](auto a, auto b) { return a.y < b.y; });
    const base::Box trunk{left->x, top->y, std::max(2.0, right->x - left->x),
                          std::max(2.0, bottom->y - top->y)};
    quality.player = medianLuma(*frame, trunk);
    // Beside the player, well clear of arms and club.
    const double reach = 1.2 * trunk.height;
    const base::Box before{trunk.x - 2.0 * reach, trunk.y, reach, trunk.height};
    const base::Box behind{trunk.x + trunk.width + reach, trunk.y, reach, trunk.height};
    std::vector<double> sides;
    for (const base::Box& side : {before, behind}) {
        if (side.x + side.width > 4.0 && side.x < clip.info().width - 4.0) {
            sides.push_back(medianLuma(*frame, side));
        }
    }
    if (!sides.empty()) {
        quality.around = *std::max_element(sides.begin(), sides.end());
    }
    return quality;
}

std::vector<Advice> filmAdvice(const analysis::Outcome& outcome, const PictureQuality& quality) {
    std::vector<Advice> all;
    const double pixelsPerStature = outcome.scene.scale.pixelsPerStature;
    const double stature = outcome.context.statureMetres.value_or(kUsualStature);
    const bool faceOn = outcome.context.view == marks::View::faceOn;
    if (const std::string parts = partsCut(outcome); !parts.empty()) {
        all.push_back({"framing", "The picture cuts off " + parts + ", so what needs them can't be told.",
                       "Leave an arm and a club's length of room on all sides, from address to finish."});
    }
    if (!outcome.timeScale.known) {
        all.push_back({"rate_unknown", "Nothing tells how fast this was filmed, so there are no times.",
                       "Send the camera's own file, or say how many frames a second were filmed."});
    } else if (outcome.clip.playbackFps > 0.0 && outcome.timeScale.realPerShown > 0.0) {
        const double fps = outcome.clip.playbackFps / outcome.timeScale.realPerShown;
        if (fps < 100.0) {
            all.push_back({"frame_rate",
                           "At " + whole(fps) + " frames a second the shaft turns about " +
                               whole(kShaftDegreesPerSecond / fps) +
                               " degrees between two pictures near the hit.",
                           "Film in slow motion, 120 to 240 frames a second."});
        }
    }
    if (quality.player && *quality.player < 0.30 && quality.around &&
        *quality.around > *quality.player + 0.35) {
        all.push_back({"backlight", "The light comes from behind the player, who is dark against it.",
                       "Film with the sun or the lamps behind the camera."});
    } else if (quality.player && quality.around && *quality.player < 0.12 && *quality.around < 0.25) {
        all.push_back({"light", "It is dark, so edges are unclear and moving parts smear.",
                       "Film in more light, with an exposure of 1/1000 s or shorter."});
    }
    if (outcome.scene.ground.moved()) {
        all.push_back({"camera_moved", "The camera moved; that is taken out, but positions are less sure.",
                       "Put the phone on a stand or against a bag."});
    }
    if (pixelsPerStature > 0.0 && outcome.clip.height > 0) {
        const double share = pixelsPerStature / outcome.clip.height;
        if (share < 0.40) {
            all.push_back({"distance",
                           "The player fills only " + whole(share * 100.0) +
                               " % of the picture's height, so a pixel is worth " +
                               oneDecimal(stature * 1000.0 / pixelsPerStature) + " mm.",
                           "Stand 4 to 5 m away with the main lens, the phone upright."});
        }
    }
    if (outcome.scene.distanceMetres && *outcome.scene.distanceMetres < 3.0) {
        all.push_back({"too_near",
                       "From " + oneDecimal(*outcome.scene.distanceMetres) +
                           " m near parts of the body look larger than far ones.",
                       "Stand 4 to 5 m away with the main lens."});
    }
    if (pixelsPerStature > 0.0) {
        std::optional<double> x;
        if (faceOn && outcome.ball) {
            x = outcome.ball->centre.x;
        } else if (!faceOn && addressFrame(outcome) < outcome.track.size()) {
            if (const auto& grip = outcome.track[addressFrame(outcome)][Landmark::grip]) {
                x = grip->at.x;
            }
        }
        if (x) {
            const double metres = std::abs(*x - outcome.clip.width / 2.0) / pixelsPerStature * stature;
            if (metres > 0.35) {
                const std::string what = faceOn ? "ball" : "hands";
                all.push_back(
                    {"off_middle",
                     "The " + what + (faceOn ? " lies " : " are ") + oneDecimal(metres) +
                         " m off the picture's middle; the slanted look makes up to " +
                         whole(metres * kFalseLeanPerMetre) + " degrees of false lean.",
                     "Point the camera so that the " + what + (faceOn ? " is" : " are") + " in the middle."});
            }
        }
    }
    if (outcome.scene.vertical.source == "assumed") {
        all.push_back(
            {"level",
             "Nothing tells how level the camera stood: every tilt carries " +
                 oneDecimal(outcome.scene.vertical.sigmaDegrees) + " degrees of doubt.",
             "Use the level of the camera, or film something plumb (a post, a door frame) and mark it."});
    }
    if (outcome.scene.yawSigmaDegrees >= 4.0) {
        all.push_back({"stick",
                       "Nothing shows where the target line runs: the camera's turn is known to " +
                           whole(outcome.scene.yawSigmaDegrees) + " degrees only.",
                       "Lay an alignment stick on the target line, in view."});
    }
    return all;
}

std::string filmAgainWords(std::span<const Advice> advice) {
    if (advice.empty()) {
        return "";
    }
    std::string words = "Please film it again:";
    for (const Advice& one : advice) {
        words += "\n- " + one.limited + " " + one.change;
    }
    return words;
}

} // namespace plumbmark::exporting
