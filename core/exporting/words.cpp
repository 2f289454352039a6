// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/words.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace plumbmark::exporting {
namespace {

struct MeasurementWords {
    std::string_view id;
    std::string_view label;
    std::string_view plus; ///< word after the number where its sign means a side; empty: keep the sign
    std::string_view minus;
};

constexpr std::array kMeasurements{
    MeasurementWords{"stance_width_ratio", "Stance width / shoulders", "", ""},
    MeasurementWords{"ball_position", "Ball position", "", ""},
    MeasurementWords{"foot_flare", "Foot flare", "out", "in"},
    MeasurementWords{"foot_flare_lead", "Lead foot flare", "out", "in"},
    MeasurementWords{"foot_flare_trail", "Trail foot flare", "out", "in"},
    MeasurementWords{"spine_tilt", "Spine tilt", "from target", "to target"},
    MeasurementWords{"spine_tilt_change", "Tilt since address", "more", "less"},
    MeasurementWords{"head_to_trail_ankle", "Head to trail ankle", "inside", "outside"},
    MeasurementWords{"head_to_trail_ankle_nose", "Nose to trail ankle", "inside", "outside"},
    MeasurementWords{"head_to_trail_ankle_edge", "Head's trail edge to trail ankle", "inside", "outside"},
    MeasurementWords{"head_to_trail_ankle_worst", "Head to trail ankle, least going back", "inside",
                     "outside"},
    MeasurementWords{"head_travel", "Head travel", "to target", "from target"},
    MeasurementWords{"head_rise", "Head rise", "up", "down"},
    MeasurementWords{"pelvis_shift", "Pelvis shift", "to target", "from target"},
    MeasurementWords{"chest_shift", "Chest shift", "to target", "from target"},
    MeasurementWords{"chest_share_of_shift", "Chest share of shift", "", ""},
    MeasurementWords{"start_down_lead", "Pelvis starts before top", "", ""},
    MeasurementWords{"lead_line_tilt", "Lead-side line", "from target", "to target"},
    MeasurementWords{"lead_hip_offset", "Lead hip off the line", "to target", "from target"},
    MeasurementWords{"lead_hip_over_ankle", "Lead hip from over its ankle", "to target", "from target"},
    MeasurementWords{"pelvis_turn", "Pelvis turn", "open", "turned away"},
    MeasurementWords{"shoulder_turn", "Shoulder turn", "open", "turned away"},
    MeasurementWords{"chest_turn", "Chest turn", "open", "turned away"},
    MeasurementWords{"separation", "Chest minus pelvis", "", ""},
    MeasurementWords{"shaft_lean", "Shaft lean", "forward", "back"},
    MeasurementWords{"shaft_past_level", "Shaft at the top", "past level", "short of level"},
    MeasurementWords{"hands_ahead", "Hands ahead of ball", "", ""},
    MeasurementWords{"wrist_set", "Wrist set", "", ""},
    MeasurementWords{"wrist_set_kept", "Wrist set kept", "", ""},
    MeasurementWords{"release_bisector_angle", "Shaft past forearms", "", ""},
    MeasurementWords{"takeaway_width", "Width", "", ""},
    MeasurementWords{"lead_elbow_flex", "Lead elbow flex", "", ""},
    MeasurementWords{"lead_knee_flex", "Lead knee flex", "", ""},
    MeasurementWords{"trail_knee_flex", "Trail knee flex", "", ""},
    MeasurementWords{"finish_head_over_lead_ankle", "Head from lead ankle", "to target", "from target"},
    MeasurementWords{"com_over_lead_ankle", "Body from lead ankle", "to target", "from target"},
    MeasurementWords{"trail_foot_pitch", "Trail heel up", "", ""},
    MeasurementWords{"tempo_ratio", "Tempo, back to down", "", ""},
    MeasurementWords{"backswing_time", "Time back", "", ""},
    MeasurementWords{"downswing_time", "Time down", "", ""},
    MeasurementWords{"forward_bend", "Forward bend", "", ""},
    MeasurementWords{"forward_bend_change", "Bend since address", "more", "less"},
    MeasurementWords{"pelvis_depth", "Pelvis toward ball", "", ""},
    MeasurementWords{"shaft_plane", "Shaft plane", "", ""},
    MeasurementWords{"hand_path", "Hands' path", "outward", "inward"},
};

const MeasurementWords* wordsOf(std::string_view id) {
    const auto it =
        std::find_if(kMeasurements.begin(), kMeasurements.end(), [id](const auto& m) { return m.id == id; });
    return it == kMeasurements.end() ? nullptr : &*it;
}

/// How a unit is shown: factor on the number and the text after it.
struct Shown {
    double factor;
    std::string after;
};

Shown shownUnit(base::Unit unit, const std::optional<double>& statureMetres, Writing writing) {
    switch (unit) {
    case base::Unit::degrees:
        return {1.0, writing.unicode ? "\u00b0" : " deg"};
    case base::Unit::seconds:
        return {1.0, " s"};
    case base::Unit::ratio:
        return {1.0, ""};
    case base::Unit::statures:
        return statureMetres ? Shown{*statureMetres * 100.0, " cm"} : Shown{100.0, " % of height"};
    case base::Unit::stance_widths:
        return {1.0, " stance widths"};
    case base::Unit::hip_joint_distances:
        return {1.0, " hip-joint distances"};
    case base::Unit::pixels:
        return {1.0, " px"};
    case base::Unit::metres:
        return {1.0, " m"};
    }
    return {1.0, ""};
}

/// Decimals so that sigma keeps one digit, two when it begins with 1 (usual practice for stating
/// uncertainty).
int decimalsFor(double sigma) {
    const int magnitude = static_cast<int>(std::floor(std::log10(sigma)));
    const double lead = sigma / std::pow(10.0, magnitude);
    return std::clamp((lead < 1.95 ? 1 : 0) - magnitude, 0, 4);
}

/// Digits with a point whatever the locale of the process.
std::string fixed(double value, int decimals, Writing writing) {
    const double scale = std::pow(10.0, decimals);
    const auto whole = static_cast<long long>(std::llround(std::abs(value) * scale));
    std::string digits = std::to_string(whole);
    if (decimals > 0) {
        if (digits.size() <= static_cast<std::size_t>(decimals)) {
            digits.insert(0, static_cast<std::size_t>(decimals) + 1 - digits.size(), '0');
        }
        digits.insert(digits.size() - static_cast<std::size_t>(decimals), ".");
    }
    return value < 0 && whole != 0 ? (writing.unicode ? "\u2212" : "-") + digits : digits;
}

} // namespace

std::string_view momentLabel(marks::MomentId id) {
    switch (id) {
    case marks::MomentId::address:
        return "Address";
    case marks::MomentId::shaft_level_back:
        return "Takeaway";
    case marks::MomentId::lead_arm_level_back:
        return "Lead arm level, back";
    case marks::MomentId::pelvis_starts_forward:
        return "Start down";
    case marks::MomentId::top:
        return "Top";
    case marks::MomentId::lead_arm_level_down:
        return "Lead arm level, down";
    case marks::MomentId::shaft_level_down:
        return "Delivery";
    case marks::MomentId::impact:
        return "Impact";
    case marks::MomentId::release:
        return "Release";
    case marks::MomentId::shaft_level_through:
        return "Follow-through";
    case marks::MomentId::finish:
        return "Finish";
    }
    return "";
}

std::string measurementLabel(std::string_view id) {
    if (const auto* words = wordsOf(id)) {
        return std::string(words->label);
    }
    std::string label(id);
    std::replace(label.begin(), label.end(), '_', ' ');
    if (!label.empty() && label[0] >= 'a' && label[0] <= 'z') {
        label[0] = static_cast<char>(label[0] - 'a' + 'A');
    }
    return label;
}

std::string_view stateWord(coaching::State state) {
    switch (state) {
    case coaching::State::good:
        return "good";
    case coaching::State::watch:
        return "watch";
    case coaching::State::work:
        return "work on it";
    case coaching::State::unknown:
        return "cannot tell";
    }
    return "cannot tell";
}

Sign signOf(coaching::State state) {
    switch (state) {
    case coaching::State::good:
        return Sign::good;
    case coaching::State::watch:
        return Sign::watch;
    case coaching::State::work:
        return Sign::work;
    case coaching::State::unknown:
        break;
    }
    return Sign::unknown;
}

std::string_view viewLabel(marks::View view) {
    return view == marks::View::faceOn ? "Face-on" : "Down-the-line";
}

std::string clubLabel(const marks::Club& club) {
    const std::string number = club.number ? std::to_string(*club.number) : "";
    switch (club.kind) {
    case marks::ClubKind::driver:
        return "driver";
    case marks::ClubKind::wood:
        return number.empty() ? "fairway wood" : number + "-wood";
    case marks::ClubKind::hybrid:
        return number.empty() ? "hybrid" : number + "-hybrid";
    case marks::ClubKind::iron:
        return number.empty() ? "iron" : number + "-iron";
    case marks::ClubKind::wedge:
        return number.empty() ? "wedge" : number + "-degree wedge";
    case marks::ClubKind::putter:
        return "putter";
    }
    return "";
}

std::string_view shotLabel(marks::ShotKind shot) {
    switch (shot) {
    case marks::ShotKind::full:
        return "full swing";
    case marks::ShotKind::half:
        return "half swing";
    case marks::ShotKind::pitch:
        return "pitch";
    case marks::ShotKind::chip:
        return "chip";
    case marks::ShotKind::bunker:
        return "bunker shot";
    case marks::ShotKind::putt:
        return "putt";
    case marks::ShotKind::practice:
        return "practice swing";
    }
    return "";
}

std::string contextLine(const marks::ShotContext& context) {
    std::string line(viewLabel(context.view));
    line += context.hand == marks::Hand::right ? ", right-handed" : ", left-handed";
    if (context.club) {
        line += ", " + clubLabel(*context.club);
    }
    line += ", " + std::string(shotLabel(context.shot));
    if (context.mirrored) {
        line += ", mirrored clip";
    }
    return line;
}

std::string valueText(std::string_view measurement, const base::Measured& value,
                      const std::optional<double>& statureMetres, Writing writing) {
    if (!std::isfinite(value.value) || !std::isfinite(value.sigma) || value.sigma <= 0.0) {
        return "no usable number";
    }
    const Shown shown = shownUnit(value.unit, statureMetres, writing);
    const double number = value.value * shown.factor;
    const double sigma = value.sigma * shown.factor;
    const int decimals = decimalsFor(sigma);
    std::string side;
    double told = number;
    if (const auto* words = wordsOf(measurement); words != nullptr && !words->plus.empty()) {
        const double scale = std::pow(10.0, decimals);
        if (std::llround(std::abs(number) * scale) != 0) { // 0 has no side
            side = " " + std::string(number < 0 ? words->minus : words->plus);
        }
        told = std::abs(number);
    }
    return fixed(told, decimals, writing) + (writing.unicode ? " \u00b1 " : " +- ") +
           fixed(sigma, decimals, writing) + shown.after + side;
}

std::string rangeText(std::optional<double> low, std::optional<double> high, const base::Measured& value,
                      const std::optional<double>& statureMetres, Writing writing) {
    if (!std::isfinite(value.sigma) || value.sigma <= 0.0) {
        return "";
    }
    const Shown shown = shownUnit(value.unit, statureMetres, writing);
    const double sigma = value.sigma * shown.factor;
    // One digit finer than a small sigma, so that an edge of 0.45 stays one; no digits where sigma is a whole
    // number.
    const int decimals = std::min(4, decimalsFor(sigma) + (sigma < 1.0 ? 1 : 0));
    const auto edge = [&](double v) {
        std::string text = fixed(v * shown.factor, decimals, writing);
        if (text.find('.') != std::string::npos) {
            text.erase(text.find_last_not_of('0') + 1);
            if (text.back() == '.') {
                text.pop_back();
            }
        }
        return text;
    };
    if (low && high) {
        return edge(*low) + " to " + edge(*high) + shown.after;
    }
    if (low) {
        return edge(*low) + shown.after + " or more";
    }
    return high ? "up to " + edge(*high) + shown.after : "";
}

std::string secondsText(base::Seconds time) {
    return fixed(time.value(), 3, {}) + " s";
}

} // namespace plumbmark::exporting
