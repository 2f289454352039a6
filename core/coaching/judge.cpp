// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "coaching/judge.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace plumbmark::coaching {
namespace {

constexpr double kDoubt = 0.15; // good and work both above this: cannot tell
/// Usual proportions, for advice in hand units only (the numbers themselves stay in their own unit).
constexpr double kUsualStature = 1.72, kShoulderJoints = 0.205, kHipJoints = 0.10, kUsualStance = 1.15;

double below(double edge, double value, double sigma) {
    return 0.5 * std::erfc((value - edge) / (sigma * std::numbers::sqrt2));
}

std::string whole(double x) {
    return std::to_string(std::lround(x));
}

/// Two decimals, one where the second is 0; always a point, whatever the locale.
std::string number(double x) {
    const long hundredths = std::lround(std::abs(x) * 100.0);
    std::string text = std::to_string(hundredths / 100);
    if (hundredths % 100 != 0) {
        text += "." + std::to_string(hundredths % 100 / 10);
        if (hundredths % 10 != 0) {
            text += std::to_string(hundredths % 10);
        }
    }
    return (x < 0 && hundredths != 0 ? "-" : "") + text;
}

std::string centimetres(double metres) {
    const double cm = std::max(1.0, metres * 100.0);
    const double told = cm < 10 ? std::round(cm) : std::round(cm / 5.0) * 5.0;
    const char* picture = cm < 3.0    ? "a finger's breadth"
                          : cm < 4.5  ? "two fingers"
                          : cm < 7.5  ? "about half a shoe's width"
                          : cm < 13.0 ? "about a shoe's width"
                          : cm < 22.0 ? "about half a shoe's length"
                                      : "about a shoe's length";
    return whole(told) + " cm (" + picture + ")";
}

/// How far from the value to the near edge of the good range, in words a hand understands.
std::string amount(double distance, const base::Measured& value, const Checkpoint& row,
                   const std::vector<measure::Measurement>& all, const BodyCard& card) {
    const double stature = card.statureMetres.value_or(kUsualStature);
    const auto stance = [&] {
        const auto* m = measure::find(all, "stance_width_ratio", marks::MomentId::address);
        return (m && m->value ? m->value->value : kUsualStance) * kShoulderJoints * stature;
    };
    switch (value.unit) {
    case base::Unit::degrees:
        return whole(std::max(1.0, distance)) + " degrees";
    case base::Unit::seconds:
        return number(distance) + " s";
    case base::Unit::statures:
        return centimetres(distance * stature);
    case base::Unit::stance_widths:
        return centimetres(distance * stance());
    case base::Unit::hip_joint_distances:
        return centimetres(distance * kHipJoints * stature);
    case base::Unit::metres:
        return centimetres(distance);
    case base::Unit::ratio:
        if (row.measurement == "stance_width_ratio") {
            return centimetres(distance * kShoulderJoints * stature);
        }
        if (row.measurement == "ball_position") {
            return centimetres(distance * stance());
        }
        return number(distance);
    case base::Unit::pixels:
        return whole(distance) + " pixels";
    }
    return number(distance);
}

std::string fill(std::string text, const std::string& what) {
    if (const auto at = text.find("{amount}"); at != std::string::npos) {
        text.replace(at, 8, what);
    }
    return text;
}

const Range* rangeFor(const Checkpoint& row, ClubGroup club) {
    for (const auto& r : row.ranges) {
        if (r.clubs.empty() || std::find(r.clubs.begin(), r.clubs.end(), club) != r.clubs.end()) {
            return &r;
        }
    }
    return nullptr;
}

} // namespace

std::string_view stateName(State state) {
    switch (state) {
    case State::good:
        return "good";
    case State::watch:
        return "watch";
    case State::work:
        return "work";
    case State::unknown:
        break;
    }
    return "unknown";
}

State stateFromName(std::string_view name) {
    for (const auto state : {State::good, State::watch, State::work}) {
        if (stateName(state) == name) {
            return state;
        }
    }
    return State::unknown;
}

Shares sharesOf(const Range& r, double value, double sigma) {
    const double underWork = r.workBelow ? below(*r.workBelow, value, sigma) : 0.0;
    const double underGood = r.goodLow ? below(*r.goodLow, value, sigma) : 0.0;
    const double overGood = r.goodHigh ? 1.0 - below(*r.goodHigh, value, sigma) : 0.0;
    const double overWork = r.workAbove ? 1.0 - below(*r.workAbove, value, sigma) : 0.0;
    Shares s;
    s.low = {underGood - underWork, underWork};
    s.high = {overGood - overWork, overWork};
    s.work = underWork + overWork;
    s.watch = (underGood - underWork) + (overGood - overWork);
    s.good = std::max(0.0, 1.0 - underGood - overGood);
    return s;
}

Widened widen(const Range& range, double sigma) {
    Widened w{range, false};
    Range& r = w.range;
    if (r.goodLow && r.goodHigh && *r.goodHigh - *r.goodLow < 2.0 * sigma) {
        const double middle = (*r.goodLow + *r.goodHigh) / 2.0;
        r.goodLow = middle - sigma;
        r.goodHigh = middle + sigma;
        w.changed = true;
    }
    if (r.workBelow && *r.goodLow - *r.workBelow < 2.0 * sigma) {
        r.workBelow = *r.goodLow - 2.0 * sigma;
        w.changed = true;
    }
    if (r.workAbove && *r.workAbove - *r.goodHigh < 2.0 * sigma) {
        r.workAbove = *r.goodHigh + 2.0 * sigma;
        w.changed = true;
    }
    return w;
}

std::vector<CheckpointResult> judge(const Playbook& playbook,
                                    const std::vector<measure::Measurement>& measurements,
                                    const marks::ShotContext& context, const BodyCard& card) {
    std::vector<CheckpointResult> out;
    BodyCard body = card;
    if (!body.statureMetres) {
        body.statureMetres = context.statureMetres;
    }
    for (const auto& row : playbook.checkpoints()) {
        if (row.view != context.view ||
            std::find(row.shots.begin(), row.shots.end(), context.shot) == row.shots.end()) {
            continue;
        }
        const Range* range = rangeFor(row, clubGroupOf(context.club));
        if (!range) {
            continue;
        }
        const auto* m = measure::find(measurements, row.measurement, row.moment);
        if (!m) {
            continue; // a measurement this program does not make: the row is for another one
        }
        CheckpointResult& result = out.emplace_back();
        result.id = row.id;
        result.label = row.label;
        result.moment = row.moment;
        result.measurement = row.measurement;
        result.rangeSource = range->source;
        result.goodLow = range->goodLow;
        result.goodHigh = range->goodHigh;
        if (!m->value) {
            result.help = m->reason.empty() ? row.whenUnknown : m->reason;
            continue;
        }
        result.value = m->value;
        if (body.child()) {
            result.goodLow = result.goodHigh = std::nullopt;
            result.help =
                "Adult ranges are not used for children; compare with this player's own good swings.";
            continue;
        }
        const auto limited = std::find_first_of(row.joints.begin(), row.joints.end(),
                                                body.limitedJoints.begin(), body.limitedJoints.end());
        if (limited != row.joints.end()) {
            std::string joint = *limited;
            std::replace(joint.begin(), joint.end(), '_', ' ');
            result.goodLow = result.goodHigh = std::nullopt;
            result.help = "The body card limits the " + joint +
                          ", so usual ranges are not used; compare with this player's own good swings.";
            continue;
        }
        const double value = m->value->value;
        const double sigma = m->value->sigma;
        const auto widened = widen(*range, sigma);
        const Range& used = widened.range;
        result.goodLow = used.goodLow;
        result.goodHigh = used.goodHigh;
        auto s = sharesOf(used, value, sigma);
        if (row.atMostWatch) {
            s.watch += s.work;
            s.work = 0.0;
            s.low = {s.low.watch + s.low.work, 0.0};
            s.high = {s.high.watch + s.high.work, 0.0};
        }
        result.good = s.good;
        result.watch = s.watch;
        result.work = s.work;
        result.low = s.low;
        result.high = s.high;
        result.judged = true;
        if (s.good > kDoubt && s.work > kDoubt) {
            result.state = State::unknown;
        } else if (s.good >= s.watch && s.good >= s.work) {
            result.state = State::good;
        } else if (s.watch >= s.work) {
            result.state = State::watch;
        } else {
            result.state = State::work;
        }
        if (result.state == State::unknown) {
            result.help = "This clip cannot tell good from not good here. " + row.whenUnknown;
        } else if (result.state == State::good) {
            result.help = row.whenGood;
        } else {
            // Which side: the nearer edge of the good range that the value lies beyond (or nearest to).
            const double low = used.goodLow ? *used.goodLow - value : -1e300;
            const double high = used.goodHigh ? value - *used.goodHigh : -1e300;
            const bool isLow = low >= high;
            result.help = fill(isLow ? row.whenLow : row.whenHigh,
                               amount(std::max(0.0, isLow ? low : high), *m->value, row, measurements, body));
        }
        if (widened.changed) {
            result.help += " The range was widened to what this clip can tell.";
        }
    }
    return out;
}

} // namespace plumbmark::coaching
