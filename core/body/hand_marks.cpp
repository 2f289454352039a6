// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "body/track.h"

namespace plumbmark::body {
namespace {

using base::Vec2;
using marks::Landmark;

constexpr double kFade = 0.12;   ///< seconds real: sigma of the bell by which a correction fades
constexpr double kBridge = 0.5;  ///< seconds real: two marks this near are joined straight
constexpr double kUnseen = 0.05; ///< seconds real: how far "not visible" reaches at most
constexpr double kLone = 0.02;   ///< seconds real: how far a mark with nothing automatic beside it is held

/// Things that lie still: one mark tells where they are all through the clip.
bool liesStill(Landmark l) {
    return l == Landmark::ball || l == Landmark::stick_near || l == Landmark::stick_far ||
           l == Landmark::ground_lead || l == Landmark::ground_trail;
}

/// A hand mark placed in the track, with what the automatic track had there.
struct Fact {
    std::size_t frame = 0;
    double time = 0.0; ///< real seconds
    Vec2 at;
    double sigma = 2.0;
    std::optional<Vec2> off; ///< mark minus automatic mark
};

double bell(double seconds) {
    return std::exp(-seconds * seconds / (2 * kFade * kFade));
}

/// Correction and how far it counts (0..1) at a time between / beside facts that have an automatic mark.
struct Correction {
    Vec2 move;
    double weight = 0.0;
    double markSigma = 0.0;
};
Correction correctionAt(const std::vector<Fact>& facts, double time) {
    const Fact* before = nullptr;
    const Fact* after = nullptr;
    for (const Fact& f : facts) {
        if (!f.off) {
            continue;
        }
        if (f.time <= time) {
            before = &f;
        } else if (after == nullptr) {
            after = &f;
        }
    }
    Correction c;
    if (before != nullptr && after != nullptr && after->time - before->time <= kBridge) {
        const double k = (time - before->time) / (after->time - before->time);
        c.move = *before->off + (*after->off - *before->off) * k;
        c.weight = std::max(bell(time - before->time), bell(after->time - time));
        c.markSigma = std::max(before->sigma, after->sigma);
        return c;
    }
    double weights = 0.0;
    for (const Fact* f : {before, after}) {
        if (f != nullptr) {
            const double w = bell(f->time - time);
            c.move = c.move + *f->off * w;
            c.markSigma = std::max(c.markSigma, f->sigma);
            c.weight = std::max(c.weight, w);
            weights += w;
        }
    }
    if (weights > 1.0) {
        c.move = c.move / weights;
    }
    return c;
}

void correct(marks::Track& track, Landmark landmark, const std::vector<Fact>& facts, double real,
             bool markFrames) {
    for (auto& frame : track) {
        auto& mark = frame[landmark];
        if (!mark) {
            continue;
        }
        const Correction c = correctionAt(facts, frame.time.value() * real);
        if (c.weight < 1e-3) {
            continue;
        }
        mark->at = mark->at + c.move;
        // Near the fact the mark is as good as the fact, far from it as good as the automatic one.
        mark->sigma =
            std::sqrt(c.weight * c.markSigma * c.markSigma + (1 - c.weight) * mark->sigma * mark->sigma);
    }
    if (!markFrames) {
        return;
    }
    for (const Fact& f : facts) {
        track[f.frame][landmark] = marks::Mark{f.at, f.sigma, base::Origin::hand};
    }
}

/// Where the automatic track has nothing: straight lines between near facts, a lone fact held for a moment.
void fillBetween(marks::Track& track, Landmark landmark, const std::vector<Fact>& facts, double real) {
    const auto put = [&](std::size_t i, Vec2 at, double sigma) {
        if (!track[i][landmark]) {
            track[i][landmark] = marks::Mark{at, sigma, base::Origin::interpolated};
        }
    };
    for (std::size_t k = 0; k + 1 < facts.size(); ++k) {
        const Fact& a = facts[k];
        const Fact& b = facts[k + 1];
        if (b.time - a.time > kBridge) {
            continue;
        }
        for (std::size_t i = a.frame + 1; i < b.frame; ++i) {
            const double s = (track[i].time.value() * real - a.time) / (b.time - a.time);
            // The true path bends away from the line by a share of the way between the marks.
            const double bow = 0.25 * base::length(b.at - a.at) * 4 * s * (1 - s);
            put(i, a.at + (b.at - a.at) * s, std::hypot(std::max(a.sigma, b.sigma), bow));
        }
    }
    for (const Fact& f : facts) {
        for (const int direction : {-1, 1}) {
            for (int step = 1;; ++step) {
                const auto i = static_cast<std::ptrdiff_t>(f.frame) + direction * step;
                if (i < 0 || i >= static_cast<std::ptrdiff_t>(track.size())) {
                    break;
                }
                const double away = std::abs(track[static_cast<std::size_t>(i)].time.value() * real - f.time);
                if (step > 1 &&
                    away >
                        kLone) { // the very next frame always, so that a moment between two frames finds it
                    break;
                }
                put(static_cast<std::size_t>(i), f.at, f.sigma * (1.0 + 2.0 * step));
            }
        }
    }
}

} // namespace

marks::Track applyHandMarks(const marks::Track& automatic, const marks::HandMarks& handMarks,
                            const Timing& timing) {
    marks::Track track = automatic;
    const double real = timing.realPerShown > 0 ? timing.realPerShown : 1.0;
    for (std::size_t l = 0; l < marks::kLandmarkCount; ++l) {
        const auto landmark = static_cast<Landmark>(l);
        std::vector<Fact> facts;
        std::vector<std::size_t> unseen;
        for (const marks::HandMark& m : handMarks) {
            if (m.landmark != landmark || m.frame < 0 || static_cast<std::size_t>(m.frame) >= track.size()) {
                continue;
            }
            const auto frame = static_cast<std::size_t>(m.frame);
            // The last word on a frame counts.
            std::erase_if(facts, [frame](const Fact& f) { return f.frame == frame; });
            std::erase(unseen, frame);
            if (!m.at) {
                unseen.push_back(frame);
                continue;
            }
            Fact fact{frame, automatic[frame].time.value() * real, *m.at, std::max(0.1, m.sigma),
                      std::nullopt};
            if (automatic[frame][landmark]) {
                fact.off = *m.at - automatic[frame][landmark]->at;
            }
            facts.push_back(fact);
        }
        if (facts.empty() && unseen.empty()) {
            continue;
        }
        std::sort(facts.begin(), facts.end(), [](const Fact& a, const Fact& b) { return a.frame < b.frame; });

        if (liesStill(landmark) && !facts.empty()) {
            for (std::size_t i = 0; i < track.size(); ++i) {
                const auto nearest =
                    std::min_element(facts.begin(), facts.end(), [i](const Fact& a, const Fact& b) {
                        const auto far = [i](const Fact& f) {
                            return f.frame > i ? f.frame - i : i - f.frame;
                        };
                        return far(a) < far(b);
                    });
                track[i][landmark] =
                    marks::Mark{nearest->at, nearest->sigma,
                                nearest->frame == i ? base::Origin::hand : base::Origin::interpolated};
            }
        } else {
            correct(track, landmark, facts, real, true);
            fillBetween(track, landmark, facts, real);
            if (landmark == Landmark::head_centre) {
                // The outline of the head goes with its centre, except where it is marked itself.
                for (const Landmark rim : {Landmark::head_crown, Landmark::head_front, Landmark::head_back}) {
                    const bool own =
                        std::any_of(handMarks.begin(), handMarks.end(),
                                    [rim](const marks::HandMark& m) { return m.landmark == rim; });
                    if (!own) {
                        correct(track, rim, facts, real, false);
                    }
                }
            }
        }

        for (const std::size_t frame : unseen) {
            const double time = track[frame].time.value() * real;
            double reach = kUnseen;
            for (const Fact& f : facts) { // half way to what is known otherwise
                reach = std::min(reach, std::abs(f.time - time) / 2);
            }
            for (auto& entry : track) {
                if (std::abs(entry.time.value() * real - time) <= reach) {
                    entry[landmark].reset();
                }
            }
            track[frame][landmark].reset();
        }
    }
    return track;
}

} // namespace plumbmark::body
