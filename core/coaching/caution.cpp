// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "coaching/caution.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>
#include <optional>

namespace plumbmark::coaching {
namespace {

using marks::MomentId;

constexpr std::size_t kWindow = 5; // swings looked at
constexpr std::size_t kEnough = 3; // of them that must show the sign

constexpr std::string_view kWords = "This is no diagnosis: a video shows posture, not load. Stop at sharp or "
                                    "sudden pain, numbness, weakness, pain "
                                    "running down a limb, locking, swelling, night pain, chest pain or "
                                    "dizziness; if it is still there tomorrow go "
                                    "lighter and see a physician or licensed physiotherapist.";

std::string number(double x, int decimals) {
    const double scale = std::pow(10.0, decimals);
    const long n = std::lround(std::abs(x) * scale);
    std::string digits = std::to_string(n);
    if (decimals > 0) {
        while (digits.size() <= static_cast<std::size_t>(decimals)) {
            digits.insert(digits.begin(), '0');
        }
        digits.insert(digits.size() - static_cast<std::size_t>(decimals), ".");
    }
    return (x < 0 && n != 0 ? "-" : "") + digits;
}

std::string told(const base::Measured& m, int decimals, std::string_view unit) {
    return number(m.value, decimals) + " +- " + number(m.sigma, decimals) + " " + std::string(unit);
}

/// Probability that the true value lies above / below an edge.
double above(const base::Measured& m, double edge) {
    return 0.5 * std::erfc((edge - m.value) / (m.sigma * std::numbers::sqrt2));
}
double under(const base::Measured& m, double edge) {
    return 1.0 - above(m, edge);
}

std::optional<base::Measured> valueOf(const SwingNumbers& s, std::string_view id,
                                      std::optional<MomentId> moment) {
    const auto* m = measure::find(s.measurements, id, moment);
    return m ? m->value : std::nullopt;
}

bool listed(const std::vector<std::string>& list, std::string_view name) {
    return std::find(list.begin(), list.end(), name) != list.end();
}

/// What one swing shows of a sign: its words, or nothing when the sign is less likely than not.
using Sign = std::function<std::optional<std::string>(const SwingNumbers&)>;

struct Seen {
    std::size_t swings = 0; ///< that could be judged at all
    std::size_t shown = 0;
    std::string last; ///< words of the newest swing that shows it
};

Seen look(std::span<const SwingNumbers> swings, const Sign& sign,
          const std::function<bool(const SwingNumbers&)>& can) {
    Seen seen;
    const std::size_t from = swings.size() > kWindow ? swings.size() - kWindow : 0;
    for (std::size_t i = from; i < swings.size(); ++i) {
        if (!can(swings[i])) {
            continue;
        }
        ++seen.swings;
        if (auto words = sign(swings[i])) {
            ++seen.shown;
            seen.last = std::move(*words);
        }
    }
    return seen;
}

/// The sentence about how often it was seen; nothing when that is too seldom to mention.
std::optional<std::string> seenText(const Seen& s) {
    if (s.shown == 0) {
        return std::nullopt;
    }
    if (s.swings >= kEnough) {
        if (s.shown < kEnough) {
            return std::nullopt;
        }
        return "Seen in " + std::to_string(s.shown) + " of " + std::to_string(s.swings) +
               " swings, last: " + s.last + ".";
    }
    if (s.swings == 1) {
        return "Seen in one swing: " + s.last +
               ". One swing proves little; look at three to five before changing "
               "anything.";
    }
    if (s.shown == s.swings) {
        return "Seen in two swings, last: " + s.last + ". Look at three to five before changing anything.";
    }
    return std::nullopt;
}

struct PainWords {
    std::string_view region, words;
};

} // namespace

std::vector<Caution> cautions(std::span<const SwingNumbers> swings, const BodyCard& card) {
    std::vector<Caution> out;
    const auto add = [&](std::string id, std::string grade, std::string seen, std::string ease) {
        out.push_back(
            {std::move(id), std::move(grade), std::move(seen), std::move(ease), std::string(kWords)});
    };
    const auto join = [](std::string a, const std::string& b) { return a.empty() ? b : a + " " + b; };

    { // Lead hip: pushed over the leg's line AND beyond the ankle.
        const auto offset = [](const SwingNumbers& s) {
            return valueOf(s, "lead_hip_offset", MomentId::impact);
        };
        const auto over = [](const SwingNumbers& s) {
            return valueOf(s, "lead_hip_over_ankle", MomentId::impact);
        };
        const auto seen = look(
            swings,
            [&](const SwingNumbers& s) -> std::optional<std::string> {
                const auto a = offset(s);
                const auto b = over(s);
                // The two share the hip's mark; the weaker of the two decides.
                if (std::min(above(*a, 0.6), above(*b, 0.0)) < 0.5) {
                    return std::nullopt;
                }
                return "at impact the lead hip stands " + told(*a, 2, "hip-joint distances") +
                       " off the line from ankle to shoulder and " + told(*b, 2, "hip-joint distances") +
                       " on the target side of the ankle";
            },
            [&](const SwingNumbers& s) { return offset(s) && over(s); });
        std::string text = seenText(seen).value_or("");
        if (listed(card.painNow, "lead_hip")) {
            text = join(text, "Pain in the lead hip is logged.");
        }
        if (!text.empty()) {
            add("lead_hip", "coach's experience", text,
                "Turn the lead hip back and around instead of pushing it toward the target; turn the lead "
                "foot out a "
                "little; fewer full swings today.");
        }
    }

    { // Lower back.
        std::string text;
        const auto tilt = [](const SwingNumbers& s) { return valueOf(s, "spine_tilt", MomentId::top); };
        if (const auto t = seenText(look(
                swings,
                [&](const SwingNumbers& s) -> std::optional<std::string> {
                    const auto m = tilt(s);
                    if (under(*m, -2.0) < 0.5) {
                        return std::nullopt;
                    }
                    return "at the top the spine leans toward the target (" + told(*m, 0, "degrees") + ")";
                },
                [&](const SwingNumbers& s) { return tilt(s).has_value(); }))) {
            text = join(text, *t);
        }
        const auto side = [](const SwingNumbers& s) { return valueOf(s, "spine_tilt", MomentId::impact); };
        const auto fast = [](const SwingNumbers& s) { return valueOf(s, "downswing_time", std::nullopt); };
        if (const auto t = seenText(look(
                swings,
                [&](const SwingNumbers& s) -> std::optional<std::string> {
                    const auto m = side(s);
                    const auto d = fast(s);
                    // "Large" and "fast" have no published edge; 35 degrees is the upper end of convention,
                    // 0.30 s a brisk downswing (both common practice, no source).
                    if (std::min(above(*m, 35.0), under(*d, 0.30)) < 0.5) {
                        return std::nullopt;
                    }
                    return "large side bend at impact (" + told(*m, 0, "degrees") +
                           ") in a fast downswing (" + told(*d, 2, "s") + ")";
                },
                [&](const SwingNumbers& s) { return side(s) && fast(s); }))) {
            text = join(text, *t);
        }
        const auto bend = [](const SwingNumbers& s) {
            return valueOf(s, "forward_bend_change", MomentId::impact);
        };
        if (const auto t = seenText(look(
                swings,
                [&](const SwingNumbers& s) -> std::optional<std::string> {
                    const auto m = bend(s);
                    if (under(*m, -14.0) < 0.5) {
                        return std::nullopt;
                    }
                    return "the forward bend is lost before the ball (" + told(*m, 0, "degrees") + ")";
                },
                [&](const SwingNumbers& s) { return bend(s).has_value(); }))) {
            text = join(text, *t);
        }
        const bool pain = listed(card.painNow, "lower_back");
        const bool before = listed(card.painBefore, "lower_back");
        if (pain) {
            text = join(text, "Pain in the lower back is logged.");
        }
        if (before) {
            text = join(text, "Earlier trouble of the lower back is on the body card.");
        }
        if (!text.empty()) {
            add("lower_back",
                pain || before ? "several studies (earlier back pain); swing mechanics: weak, contested"
                               : "weak (swing mechanics are contested)",
                text,
                "Shorter backswing, let the trail heel and the pelvis turn more, warm up for ten minutes, "
                "fewer full "
                "swings today.");
        }
    }

    // Lead knee: only with pain or history.
    if (listed(card.painNow, "lead_knee") || listed(card.painBefore, "lead_knee")) {
        add("lead_knee", "weak",
            listed(card.painNow, "lead_knee") ? "Pain in the lead knee is logged."
                                              : "Earlier trouble of the lead knee is on the body card.",
            "Turn the lead foot out, let it turn with the finish, straighten the knee later and softer.");
    }
    static constexpr PainWords kOveruse[] = {{"lead_wrist", "lead wrist"},
                                             {"trail_wrist", "trail wrist"},
                                             {"lead_elbow", "lead elbow"},
                                             {"trail_elbow", "trail elbow"},
                                             {"lead_shoulder", "lead shoulder"},
                                             {"trail_shoulder", "trail shoulder"},
                                             {"neck", "neck"}};
    for (const auto& [region, words] : kOveruse) {
        if (listed(card.painNow, region)) {
            add(std::string(region), "several studies (overuse)",
                "Pain in the " + std::string(words) + " is logged.",
                "Softer ground or a tee, lighter grip, fewer balls, rest between sets.");
        }
    }
    // Both numbers are shown; either one beyond the marker is enough. Marker: Gosheger et al. 2003, Am J
    // Sports Med 31:438, as a clinic's summary tells it (weak): more than 200 balls or 4 rounds a week, more
    // injuries.
    if (card.ballsThisWeek.value_or(0) > 200 || card.roundsThisWeek.value_or(0) > 4) {
        const auto told = [](const std::optional<int>& n, const char* what) {
            return n ? std::to_string(*n) + " " + what : std::string("no ") + what;
        };
        add("volume", "weak",
            told(card.ballsThisWeek, "full swings") + " and " + told(card.roundsThisWeek, "rounds") +
                " are logged in seven days; more than 200 balls or 4 "
                "rounds a week is the only published marker.",
            "Fewer full swings and more short game or slow rehearsals this week.");
    }
    return out;
}

std::string_view cautionsFooter() {
    return "No caution is not a clean bill of health. With pain or doubt see a physician or licensed "
           "physiotherapist.";
}

} // namespace plumbmark::coaching
