// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/phrases.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <cmath>
#include <map>

namespace plumbmark::bridge {

namespace {

struct Phrases {
    Q_DECLARE_TR_FUNCTIONS(Phrases)
};

/// Scale into what people read, and how it is called.
struct Shown {
    double factor = 1.0;
    QString unit;
};

Shown shownUnit(base::Unit unit, std::optional<double> statureMetres) {
    switch (unit) {
    case base::Unit::degrees:
        return {1.0, QStringLiteral("\u00b0")};
    case base::Unit::seconds:
        return {1.0, Phrases::tr("s")};
    case base::Unit::ratio:
        return {1.0, QString()};
    case base::Unit::statures:
        if (statureMetres) {
            return {100.0 * *statureMetres, Phrases::tr("cm")};
        }
        return {100.0, Phrases::tr("% of height")};
    case base::Unit::stance_widths:
        return {1.0, Phrases::tr("stance widths")};
    case base::Unit::hip_joint_distances:
        return {1.0, Phrases::tr("hip-joint distances")};
    case base::Unit::pixels:
        return {1.0, Phrases::tr("px")};
    case base::Unit::metres:
        return {1.0, Phrases::tr("m")};
    }
    return {};
}

/// Decimals so that the sigma shows one or two figures that mean something.
int decimalsFor(double sigma) {
    if (!(sigma > 0)) {
        return 2;
    }
    return std::clamp(static_cast<int>(std::ceil(-std::log10(sigma / 1.95))), 0, 3);
}

QString spaced(const QString& unit) {
    return unit.isEmpty() || unit == QStringLiteral("\u00b0") ? unit : QStringLiteral("\u00a0") + unit;
}

} // namespace

QString momentLabel(marks::MomentId id) {
    switch (id) {
    case marks::MomentId::address:
        return Phrases::tr("Address");
    case marks::MomentId::shaft_level_back:
        return Phrases::tr("Takeaway");
    case marks::MomentId::lead_arm_level_back:
        return Phrases::tr("Lead arm level, back");
    case marks::MomentId::pelvis_starts_forward:
        return Phrases::tr("Start down");
    case marks::MomentId::top:
        return Phrases::tr("Top");
    case marks::MomentId::lead_arm_level_down:
        return Phrases::tr("Lead arm level, down");
    case marks::MomentId::shaft_level_down:
        return Phrases::tr("Delivery");
    case marks::MomentId::impact:
        return Phrases::tr("Impact");
    case marks::MomentId::release:
        return Phrases::tr("Release");
    case marks::MomentId::shaft_level_through:
        return Phrases::tr("Follow-through");
    case marks::MomentId::finish:
        return Phrases::tr("Finish");
    }
    return {};
}

QString momentInside(marks::MomentId id) {
    const QString answer = Phrases::tr(
        "yes", "Are words like Address written with a small letter inside a sentence? Answer yes or no.");
    return answer == QStringLiteral("no") ? momentLabel(id) : momentLabel(id).toLower();
}

QString landmarkLabel(marks::Landmark landmark) {
    using marks::Landmark;
    switch (landmark) {
    case Landmark::nose:
        return Phrases::tr("Nose");
    case Landmark::head_centre:
        return Phrases::tr("Head centre");
    case Landmark::head_crown:
        return Phrases::tr("Crown of the head");
    case Landmark::head_front:
        return Phrases::tr("Head edge, target or ball side");
    case Landmark::head_back:
        return Phrases::tr("Head edge, other side");
    case Landmark::lead_ear:
        return Phrases::tr("Lead ear");
    case Landmark::trail_ear:
        return Phrases::tr("Trail ear");
    case Landmark::neck_base:
        return Phrases::tr("Neck base");
    case Landmark::lead_shoulder:
        return Phrases::tr("Lead shoulder");
    case Landmark::trail_shoulder:
        return Phrases::tr("Trail shoulder");
    case Landmark::lead_elbow:
        return Phrases::tr("Lead elbow");
    case Landmark::trail_elbow:
        return Phrases::tr("Trail elbow");
    case Landmark::lead_wrist:
        return Phrases::tr("Lead wrist");
    case Landmark::trail_wrist:
        return Phrases::tr("Trail wrist");
    case Landmark::lead_hip:
        return Phrases::tr("Lead hip");
    case Landmark::trail_hip:
        return Phrases::tr("Trail hip");
    case Landmark::lead_knee:
        return Phrases::tr("Lead knee");
    case Landmark::trail_knee:
        return Phrases::tr("Trail knee");
    case Landmark::lead_ankle:
        return Phrases::tr("Lead ankle");
    case Landmark::trail_ankle:
        return Phrases::tr("Trail ankle");
    case Landmark::lead_heel:
        return Phrases::tr("Lead heel");
    case Landmark::trail_heel:
        return Phrases::tr("Trail heel");
    case Landmark::lead_toe:
        return Phrases::tr("Lead toe");
    case Landmark::trail_toe:
        return Phrases::tr("Trail toe");
    case Landmark::grip:
        return Phrases::tr("Hands on the grip");
    case Landmark::belt_buckle:
        return Phrases::tr("Belt buckle");
    case Landmark::sternum:
        return Phrases::tr("Shirt buttons");
    case Landmark::pelvis_rear:
        return Phrases::tr("Rear of the pelvis");
    case Landmark::club_butt:
        return Phrases::tr("Butt of the club");
    case Landmark::club_head:
        return Phrases::tr("Club head");
    case Landmark::leading_edge:
        return Phrases::tr("Leading edge");
    case Landmark::ball:
        return Phrases::tr("Ball");
    case Landmark::stick_near:
        return Phrases::tr("Stick, near end");
    case Landmark::stick_far:
        return Phrases::tr("Stick, far end");
    case Landmark::ground_lead:
        return Phrases::tr("Ground, lead side");
    case Landmark::ground_trail:
        return Phrases::tr("Ground, trail side");
    }
    return {};
}

QString originLabel(base::Origin origin) {
    switch (origin) {
    case base::Origin::hand:
        return Phrases::tr("by hand");
    case base::Origin::network:
        return Phrases::tr("pose network");
    case base::Origin::tracked:
        return Phrases::tr("tracked");
    case base::Origin::interpolated:
        return Phrases::tr("interpolated");
    }
    return {};
}

QString foundByLabel(const std::string& foundBy) {
    static const std::map<std::string, const char*, std::less<>> kWords{
        {"shaft", QT_TRANSLATE_NOOP("Phrases", "shaft")},
        {"hands", QT_TRANSLATE_NOOP("Phrases", "hands")},
        {"ball", QT_TRANSLATE_NOOP("Phrases", "ball")},
        {"sound", QT_TRANSLATE_NOOP("Phrases", "sound")},
        {"pelvis", QT_TRANSLATE_NOOP("Phrases", "pelvis")},
        {"lead arm", QT_TRANSLATE_NOOP("Phrases", "lead arm")},
        {"hand mark", QT_TRANSLATE_NOOP("Phrases", "hand, by you")},
    };
    QStringList words;
    for (const QString& part : QString::fromStdString(foundBy).split(QLatin1Char('+'))) {
        const auto it = kWords.find(part.toStdString());
        words << (it == kWords.end() ? part : Phrases::tr(it->second));
    }
    return words.join(Phrases::tr(" and "));
}

QString viewLabel(marks::View view) {
    return view == marks::View::faceOn ? Phrases::tr("Face-on") : Phrases::tr("Down-the-line");
}

QString handLabel(marks::Hand hand) {
    return hand == marks::Hand::right ? Phrases::tr("right-handed") : Phrases::tr("left-handed");
}

QString shotLabel(marks::ShotKind kind) {
    switch (kind) {
    case marks::ShotKind::full:
        return Phrases::tr("Full swing");
    case marks::ShotKind::half:
        return Phrases::tr("Half swing");
    case marks::ShotKind::pitch:
        return Phrases::tr("Pitch");
    case marks::ShotKind::chip:
        return Phrases::tr("Chip");
    case marks::ShotKind::bunker:
        return Phrases::tr("Bunker");
    case marks::ShotKind::putt:
        return Phrases::tr("Putt");
    case marks::ShotKind::practice:
        return Phrases::tr("Practice swing");
    }
    return {};
}

QString clubKindLabel(marks::ClubKind kind) {
    switch (kind) {
    case marks::ClubKind::driver:
        return Phrases::tr("Driver");
    case marks::ClubKind::wood:
        return Phrases::tr("Wood");
    case marks::ClubKind::hybrid:
        return Phrases::tr("Hybrid");
    case marks::ClubKind::iron:
        return Phrases::tr("Iron");
    case marks::ClubKind::wedge:
        return Phrases::tr("Wedge");
    case marks::ClubKind::putter:
        return Phrases::tr("Putter");
    }
    return {};
}

QString clubLabel(const marks::Club& club) {
    if (!club.number) {
        return clubKindLabel(club.kind);
    }
    switch (club.kind) {
    case marks::ClubKind::wood:
        return Phrases::tr("%1-wood").arg(*club.number);
    case marks::ClubKind::hybrid:
        return Phrases::tr("%1-hybrid").arg(*club.number);
    case marks::ClubKind::iron:
        return Phrases::tr("%1-iron").arg(*club.number);
    case marks::ClubKind::wedge:
        return Phrases::tr("%1\u00b0 wedge").arg(*club.number);
    default:
        return clubKindLabel(club.kind);
    }
}

QString placeLabel(ports::Places::Kind kind) {
    switch (kind) {
    case ports::Places::Kind::films:
        return Phrases::tr("Videos");
    case ports::Places::Kind::downloads:
        return Phrases::tr("Downloads");
    case ports::Places::Kind::desktop:
        return Phrases::tr("Desktop");
    case ports::Places::Kind::home:
        return Phrases::tr("Home");
    case ports::Places::Kind::removable:
        return Phrases::tr("Memory card");
    }
    return {};
}

QString measurementLabel(const std::string& id) {
    static const std::map<std::string, const char*> kLabels{
        {"stance_width_ratio", QT_TRANSLATE_NOOP("Phrases", "Stance width")},
        {"ball_position", QT_TRANSLATE_NOOP("Phrases", "Ball position")},
        {"spine_tilt", QT_TRANSLATE_NOOP("Phrases", "Spine tilt")},
        {"spine_tilt_change", QT_TRANSLATE_NOOP("Phrases", "Spine tilt since address")},
        {"head_to_trail_ankle", QT_TRANSLATE_NOOP("Phrases", "Head inside trail ankle")},
        {"head_travel", QT_TRANSLATE_NOOP("Phrases", "Head travel")},
        {"head_rise", QT_TRANSLATE_NOOP("Phrases", "Head rise")},
        {"pelvis_shift", QT_TRANSLATE_NOOP("Phrases", "Pelvis shift")},
        {"chest_shift", QT_TRANSLATE_NOOP("Phrases", "Chest shift")},
        {"chest_share_of_shift", QT_TRANSLATE_NOOP("Phrases", "Chest's share of the shift")},
        {"start_down_lead", QT_TRANSLATE_NOOP("Phrases", "Pelvis starts before the top")},
        {"lead_line_tilt", QT_TRANSLATE_NOOP("Phrases", "Lead-side line")},
        {"lead_hip_offset", QT_TRANSLATE_NOOP("Phrases", "Lead hip off the line")},
        {"pelvis_turn", QT_TRANSLATE_NOOP("Phrases", "Pelvis turn")},
        {"shoulder_turn", QT_TRANSLATE_NOOP("Phrases", "Shoulder turn")},
        {"chest_turn", QT_TRANSLATE_NOOP("Phrases", "Chest turn")},
        {"separation", QT_TRANSLATE_NOOP("Phrases", "Chest against pelvis")},
        {"shaft_lean", QT_TRANSLATE_NOOP("Phrases", "Shaft lean")},
        {"hands_ahead", QT_TRANSLATE_NOOP("Phrases", "Hands ahead of the ball")},
        {"wrist_set", QT_TRANSLATE_NOOP("Phrases", "Wrist set")},
        {"wrist_set_kept", QT_TRANSLATE_NOOP("Phrases", "Wrist set kept")},
        {"release_bisector_angle", QT_TRANSLATE_NOOP("Phrases", "Shaft against the forearms")},
        {"takeaway_width", QT_TRANSLATE_NOOP("Phrases", "Takeaway width")},
        {"lead_elbow_flex", QT_TRANSLATE_NOOP("Phrases", "Lead elbow flex")},
        {"lead_knee_flex", QT_TRANSLATE_NOOP("Phrases", "Lead knee flex")},
        {"trail_knee_flex", QT_TRANSLATE_NOOP("Phrases", "Trail knee flex")},
        {"finish_head_over_lead_ankle", QT_TRANSLATE_NOOP("Phrases", "Head over lead ankle")},
        {"com_over_lead_ankle", QT_TRANSLATE_NOOP("Phrases", "Centre of mass over lead ankle")},
        {"trail_foot_pitch", QT_TRANSLATE_NOOP("Phrases", "Trail heel up")},
        {"tempo_ratio", QT_TRANSLATE_NOOP("Phrases", "Tempo")},
        {"backswing_time", QT_TRANSLATE_NOOP("Phrases", "Time back")},
        {"downswing_time", QT_TRANSLATE_NOOP("Phrases", "Time down")},
        {"forward_bend", QT_TRANSLATE_NOOP("Phrases", "Forward bend")},
        {"forward_bend_change", QT_TRANSLATE_NOOP("Phrases", "Forward bend since address")},
        {"pelvis_depth", QT_TRANSLATE_NOOP("Phrases", "Pelvis toward the ball")},
        {"shaft_plane", QT_TRANSLATE_NOOP("Phrases", "Shaft plane")},
        {"hand_path", QT_TRANSLATE_NOOP("Phrases", "Hands' path starting down")},
        {"aim_feet", QT_TRANSLATE_NOOP("Phrases", "Aim of the feet")},
        {"foot_flare_lead", QT_TRANSLATE_NOOP("Phrases", "Foot flare, lead foot")},
        {"foot_flare_trail", QT_TRANSLATE_NOOP("Phrases", "Foot flare, trail foot")},
        {"head_to_trail_ankle_worst", QT_TRANSLATE_NOOP("Phrases", "Head inside trail ankle, at worst")},
        {"head_to_trail_ankle_edge", QT_TRANSLATE_NOOP("Phrases", "Head edge inside trail ankle")},
        {"head_to_trail_ankle_nose", QT_TRANSLATE_NOOP("Phrases", "Nose inside trail ankle")},
        {"lead_hip_over_ankle", QT_TRANSLATE_NOOP("Phrases", "Lead hip over its ankle")},
        {"pelvis_depth_mid_hip", QT_TRANSLATE_NOOP("Phrases", "Middle of the hips toward the ball")},
        {"shaft_at_top", QT_TRANSLATE_NOOP("Phrases", "Shaft at the top")},
        {"shaft_past_level", QT_TRANSLATE_NOOP("Phrases", "Shaft past level")},
        {"wrist_set_corrected", QT_TRANSLATE_NOOP("Phrases", "Wrist set, without the lens")},
        {"wrist_set_kept_corrected", QT_TRANSLATE_NOOP("Phrases", "Wrist set kept, without the lens")},
        {"wrist_set_peak_time", QT_TRANSLATE_NOOP("Phrases", "Wrist set at its peak")},
        {"wrist_set_peak_after_arm_level",
         QT_TRANSLATE_NOOP("Phrases", "Wrist set peak after the arm is level")},
    };
    if (const auto it = kLabels.find(id); it != kLabels.end()) {
        return Phrases::tr(it->second);
    }
    QString text = QString::fromStdString(id).replace(QLatin1Char('_'), QLatin1Char(' '));
    if (!text.isEmpty()) {
        text[0] = text[0].toUpper();
    }
    return text;
}

QString stateWord(int level) {
    switch (level) {
    case 0:
        return Phrases::tr("good");
    case 1:
        return Phrases::tr("watch");
    case 2:
        return Phrases::tr("work on it");
    default:
        return Phrases::tr("cannot tell");
    }
}

QString decimal(double value, int decimals) {
    // Minus zero would read as a direction that is not there.
    const double unit = std::pow(10.0, -decimals);
    const double rounded = std::abs(value) < unit / 2 ? 0.0 : value;
    return QLocale().toString(rounded, 'f', decimals).replace(QLatin1Char('-'), QChar(0x2212));
}

QString NumberText::whole() const {
    return value + QStringLiteral("\u00a0\u00b1\u00a0") + sigma + spaced(unit);
}

NumberText numberText(const base::Measured& measured, std::optional<double> statureMetres) {
    const Shown shown = shownUnit(measured.unit, statureMetres);
    const double sigma = measured.sigma * shown.factor;
    const int decimals = decimalsFor(sigma);
    return {decimal(measured.value * shown.factor, decimals), decimal(sigma, decimals), shown.unit};
}

QString rangeText(std::optional<double> low, std::optional<double> high, base::Unit unit,
                  std::optional<double> statureMetres) {
    const Shown shown = shownUnit(unit, statureMetres);
    const auto text = [&](double value) {
        const double scaled = value * shown.factor;
        const double tenth = std::abs(scaled * 10 - std::round(scaled * 10));
        const int decimals = std::abs(scaled - std::round(scaled)) < 1e-6 ? 0 : tenth < 1e-6 ? 1 : 2;
        return decimal(scaled, decimals);
    };
    if (low && high) {
        return Phrases::tr("%1 to %2%3").arg(text(*low), text(*high), spaced(shown.unit));
    }
    if (low) {
        return Phrases::tr("from %1%2").arg(text(*low), spaced(shown.unit));
    }
    if (high) {
        return Phrases::tr("up to %1%2").arg(text(*high), spaced(shown.unit));
    }
    return {};
}

double shownFactor(base::Unit unit, std::optional<double> statureMetres) {
    return shownUnit(unit, statureMetres).factor;
}

QString regionLabel(const std::string& region) {
    static const std::map<std::string, const char*, std::less<>> kLabels{
        {"lead_hip", QT_TRANSLATE_NOOP("Phrases", "Lead hip")},
        {"trail_hip", QT_TRANSLATE_NOOP("Phrases", "Trail hip")},
        {"lower_back", QT_TRANSLATE_NOOP("Phrases", "Lower back")},
        {"lead_knee", QT_TRANSLATE_NOOP("Phrases", "Lead knee")},
        {"trail_knee", QT_TRANSLATE_NOOP("Phrases", "Trail knee")},
        {"lead_wrist", QT_TRANSLATE_NOOP("Phrases", "Lead wrist")},
        {"trail_wrist", QT_TRANSLATE_NOOP("Phrases", "Trail wrist")},
        {"lead_elbow", QT_TRANSLATE_NOOP("Phrases", "Lead elbow")},
        {"trail_elbow", QT_TRANSLATE_NOOP("Phrases", "Trail elbow")},
        {"lead_shoulder", QT_TRANSLATE_NOOP("Phrases", "Lead shoulder")},
        {"trail_shoulder", QT_TRANSLATE_NOOP("Phrases", "Trail shoulder")},
        {"neck", QT_TRANSLATE_NOOP("Phrases", "Neck")},
        {"lead_ankle", QT_TRANSLATE_NOOP("Phrases", "Lead ankle")},
        {"trail_ankle", QT_TRANSLATE_NOOP("Phrases", "Trail ankle")},
    };
    const auto it = kLabels.find(region);
    return it == kLabels.end() ? QString::fromStdString(region) : Phrases::tr(it->second);
}

QString dayText(const std::string& isoDay) {
    const QDate day = QDate::fromString(QString::fromStdString(isoDay), Qt::ISODate);
    return day.isValid() ? QLocale().toString(day, QLocale::ShortFormat) : QString::fromStdString(isoDay);
}

} // namespace plumbmark::bridge
