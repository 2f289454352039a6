// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <optional>

#include "club/detail/angle_path.h"
#include "club/shaft.h"

namespace plumbmark::club {

namespace {

constexpr double kDegree = std::numbers::pi / 180.0;
constexpr double kBridgeSeconds = 0.035; ///< real time a gap may last and still be bridged
/// Shaft's turning change that a straight bridge may miss, degrees per second squared.
constexpr double kBendOfMotion = 12000.0;

double wrap180(double a) {
    a = std::fmod(a + 180.0, 360.0);
    return a < 0 ? a + 180.0 : a - 180.0;
}

/// What the person said about the shaft in one frame.
struct Told {
    int frame = 0;
    std::optional<base::Vec2> butt, head, grip;
    double sigma = 2.0;
    bool headHidden = false;
};

std::vector<Told> toldByHand(std::span<const marks::HandMark> handMarks) {
    std::vector<Told> all;
    for (const auto& m : handMarks) {
        if (m.landmark != marks::Landmark::club_butt && m.landmark != marks::Landmark::club_head &&
            m.landmark != marks::Landmark::grip) {
            continue;
        }
        auto it = std::find_if(all.begin(), all.end(), [&](const Told& t) { return t.frame == m.frame; });
        if (it == all.end()) {
            all.push_back({});
            it = all.end() - 1;
            it->frame = m.frame;
        }
        if (m.landmark == marks::Landmark::club_butt) {
            it->butt = m.at;
        } else if (m.landmark == marks::Landmark::grip) {
            it->grip = m.at;
        } else {
            it->head = m.at;
            it->headHidden = !m.at;
        }
        it->sigma = std::max(0.3, m.sigma);
    }
    return all;
}

const Told* toldIn(const std::vector<Told>& told, int frame) {
    const auto it = std::find_if(told.begin(), told.end(), [&](const Told& t) { return t.frame == frame; });
    return it == told.end() ? nullptr : &*it;
}

/// Direction told by hand marks: from both club ends, or from the head and the hands.
struct ToldDirection {
    double angle = 0.0;
    double sigma = 0.0;
    base::Vec2 from;
    bool exact = false; ///< both ends were marked
};
std::optional<ToldDirection> directionTold(const Told& t, const Evidence& e) {
    if (!t.head) {
        return std::nullopt;
    }
    std::optional<base::Vec2> from = t.butt ? t.butt : t.grip;
    double sigma = t.sigma * std::numbers::sqrt2;
    if (!from && e.hands) {
        from = e.hands->grip;
        sigma = std::hypot(t.sigma, std::max(e.hands->gripSigma, 0.03 * e.hands->staturePixels));
    }
    if (!from || base::length(*t.head - *from) < 5.0) {
        return std::nullopt;
    }
    const base::Vec2 d = *t.head - *from;
    return ToldDirection{angleOf(d), sigma / base::length(d) / kDegree, *from, t.butt.has_value()};
}

/// What each direction answers wherever the hands are: nets, fences, posts. 0..1 per bin.
using Clutter = std::array<float, Evidence::kBins>;

/// A percentile over the places the hands visit (not over time: a long address is one place), so that
/// the shaft, which keeps changing its direction from place to place, does not count as clutter of its own.
Clutter clutterOf(std::span<const Evidence> evidence, marks::View view) {
    // Down-the-line the shaft stays near one plane, seen as one direction, for most of the swing: there only
    // what answers nearly everywhere is clutter.
    const double share = view == marks::View::downTheLine ? 0.2 : 0.6;
    struct Place {
        int frames = 0;
        std::array<float, Evidence::kBins> sum{};
    };
    std::map<std::pair<int, int>, Place> places;
    for (const auto& e : evidence) {
        if (!e.hands) {
            continue;
        }
        const double cell = 0.12 * e.hands->staturePixels;
        Place& p = places[{static_cast<int>(std::floor(e.hands->grip.x / cell)),
                           static_cast<int>(std::floor(e.hands->grip.y / cell))}];
        ++p.frames;
        for (int b = 0; b < Evidence::kBins; ++b) {
            p.sum[b] += static_cast<float>(e.score[b]) / 255.0F;
        }
    }
    Clutter clutter{};
    if (places.size() < 6) {
        return clutter; // hands that hardly move show nothing about what stands still
    }
    std::vector<float> values;
    Clutter raw{};
    for (int b = 0; b < Evidence::kBins; ++b) {
        values.clear();
        for (const auto& [where, p] : places) {
            values.push_back(p.sum[b] / static_cast<float>(p.frames));
        }
        const auto at =
            values.begin() + static_cast<std::ptrdiff_t>(static_cast<double>(values.size()) * share);
        std::nth_element(values.begin(), at, values.end());
        raw[b] = *at;
    }
    for (int b = 0; b < Evidence::kBins; ++b) {
        for (int d = -1; d <= 1; ++d) {
            clutter[b] = std::max(clutter[b], raw[(b + d + Evidence::kBins) % Evidence::kBins]);
        }
    }
    return clutter;
}

int binOf(double angle) {
    return static_cast<int>(std::floor(wrap180(angle) + 180.0 + 0.5)) % Evidence::kBins;
}

float net(const LineCandidate& l, const Clutter& clutter) {
    return std::max(0.0F, l.score - clutter[binOf(l.angleDegrees)]);
}

std::array<float, Evidence::kBins> gainOf(const Evidence& e, const Told* told, const Clutter& clutter) {
    std::array<float, Evidence::kBins> gain{};
    if (e.hands) {
        std::array<std::uint8_t, Evidence::kBins> sorted = e.score;
        std::nth_element(sorted.begin(), sorted.begin() + Evidence::kBins / 2, sorted.end());
        const int middle = sorted[Evidence::kBins / 2];
        for (int b = 0; b < Evidence::kBins; ++b) {
            gain[b] = 0.5F * std::max(0.0F, static_cast<float>(std::max(0, e.score[b] - middle)) / 255.0F -
                                                clutter[b]);
        }
        // A line that proved straight and carried all along counts in full, at its own angle.
        for (const auto& l : e.lines) {
            const int at = binOf(l.angleDegrees);
            const float worth = net(l, clutter);
            for (int d = -2; d <= 2; ++d) {
                float& g = gain[((at + d) % Evidence::kBins + Evidence::kBins) % Evidence::kBins];
                g = std::max(g, worth * (1.0F - 0.2F * static_cast<float>(std::abs(d))));
            }
        }
    }
    if (told != nullptr) {
        if (const auto d = directionTold(*told, e)) {
            const double width = std::max(1.0, d->sigma);
            for (int b = 0; b < Evidence::kBins; ++b) {
                const double off = wrap180(b - 180 - d->angle) / width;
                gain[b] =
                    static_cast<float>((d->exact ? 0.0 : gain[b]) + 60.0 * std::exp(-0.5 * off * off) - 60.0);
            }
        }
    }
    return gain;
}

struct Timed {
    std::vector<double> real; ///< seconds of real time per frame
};

double frameStep(std::span<const Evidence> evidence, double realPerShown) {
    if (evidence.size() < 2) {
        return 1.0 / 30;
    }
    return std::max(1e-4, (evidence.back().time - evidence.front().time).value() * realPerShown /
                              static_cast<double>(evidence.size() - 1));
}

/// One frame's sample from its own evidence near the path, or nothing.
std::optional<ShaftSample> sampleOf(const Evidence& e, double pathAngle, double pathSpeed, double binDegrees,
                                    double step, const Clutter& clutter) {
    if (!e.hands) {
        return std::nullopt;
    }
    const double tolerance = 2.5 + binDegrees + 0.15 * std::abs(pathSpeed) * step;
    const LineCandidate* best = nullptr;
    double bestWorth = 0.0;
    for (const auto& l : e.lines) {
        const double off = std::abs(wrap180(l.angleDegrees - pathAngle));
        if (off > tolerance) {
            continue;
        }
        const double worth = net(l, clutter) * (1.0 - 0.5 * off / tolerance);
        if (worth > bestWorth) {
            bestWorth = worth;
            best = &l;
        }
    }
    std::array<std::uint8_t, Evidence::kBins> sorted = e.score;
    std::nth_element(sorted.begin(), sorted.begin() + Evidence::kBins / 2, sorted.end());
    const float middle = static_cast<float>(sorted[Evidence::kBins / 2]) / 255.0F;
    if (best == nullptr || net(*best, clutter) < 0.10F || best->score < middle + 0.07F) {
        return std::nullopt;
    }
    ShaftSample s;
    s.time = e.time;
    s.angleDegrees = pathAngle + wrap180(best->angleDegrees - pathAngle);
    s.sigmaDegrees = best->sigmaDegrees;
    s.through = {best->throughX, best->throughY};
    s.head = s.through + directionOf(s.angleDegrees) * best->reach;
    s.headSigma = std::max(3.0, 0.02 * e.hands->staturePixels);
    return s;
}

/// Straight bridges over short gaps.
void bridge(ShaftTrack& track, std::span<const Evidence> evidence, const std::vector<double>& real) {
    const auto n = track.size();
    std::size_t i = 0;
    while (i < n) {
        if (track[i]) {
            ++i;
            continue;
        }
        const std::size_t gap = i;
        while (i < n && !track[i]) {
            ++i;
        }
        if (gap == 0 || i == n) {
            continue;
        }
        const ShaftSample& a = *track[gap - 1];
        const ShaftSample& b = *track[i];
        const double span = real[i] - real[gap - 1];
        // The turning speed over the gap must be one that the shaft had beside it.
        const double across = std::abs(b.angleDegrees - a.angleDegrees) / span;
        double beside = 0.0;
        if (gap >= 2 && track[gap - 2]) {
            beside =
                std::abs(a.angleDegrees - track[gap - 2]->angleDegrees) / (real[gap - 1] - real[gap - 2]);
        }
        if (i + 1 < n && track[i + 1]) {
            beside = std::max(beside, std::abs(track[i + 1]->angleDegrees - b.angleDegrees) /
                                          (real[i + 1] - real[i]));
        }
        if (across > 1.4 * beside + 200.0) {
            continue;
        }
        if (span > kBridgeSeconds + 1e-9 && i - gap > 1) {
            continue;
        }
        for (std::size_t k = gap; k < i; ++k) {
            const double t = (real[k] - real[gap - 1]) / span;
            ShaftSample s;
            s.time = evidence[k].time;
            s.angleDegrees = a.angleDegrees + t * (b.angleDegrees - a.angleDegrees);
            const double missed = 0.5 * kBendOfMotion * t * (1 - t) * span * span;
            s.sigmaDegrees = std::hypot(std::max(a.sigmaDegrees, b.sigmaDegrees), missed);
            s.through = a.through * (1 - t) + b.through * t;
            if (a.head && b.head) {
                s.head = *a.head * (1 - t) + *b.head * t;
                const double chord = base::length(*b.head - *a.head);
                s.headSigma = std::hypot(std::max(a.headSigma, b.headSigma), 0.15 * chord);
            }
            s.origin = base::Origin::interpolated;
            track[k] = s;
        }
    }
}

/// A sample that leaves the line through its neighbours by more than its sigma and any real bend of the
/// motion is another line of the picture.
void dropStrays(ShaftTrack& track, const std::vector<double>& real) {
    const auto n = static_cast<int>(track.size());
    std::vector<bool> stray(track.size(), false);
    for (int i = 0; i < n; ++i) {
        if (!track[i] || track[i]->origin == base::Origin::hand) {
            continue;
        }
        const auto seen = [&](int from, int step) {
            for (int k = from + step; k >= 0 && k < n && std::abs(real[k] - real[from]) < 0.045; k += step) {
                if (track[k]) {
                    return k;
                }
            }
            return -1;
        };
        const int a = seen(i, -1);
        const int b = seen(i, 1);
        if (a < 0 && b < 0) {
            stray[i] = true; // alone in 90 ms
            continue;
        }
        if (a < 0 || b < 0) {
            continue;
        }
        const double t = (real[i] - real[a]) / (real[b] - real[a]);
        const double expected =
            track[a]->angleDegrees + t * (track[b]->angleDegrees - track[a]->angleDegrees);
        const double span = real[b] - real[a];
        const double room = 2.0 + 0.5 * 30000.0 * t * (1 - t) * span * span + 3.0 * track[i]->sigmaDegrees +
                            0.1 * std::abs(track[b]->angleDegrees - track[a]->angleDegrees);
        stray[i] = std::abs(track[i]->angleDegrees - expected) > room;
    }
    for (int i = 0; i < n; ++i) {
        if (stray[i]) {
            track[i].reset();
        }
    }
}

/// Several directions that answer as well as the chosen one: clothes, other clubs, posts. Such a frame counts
/// only where clear frames on both sides say the same.
bool ambiguous(const Evidence& e, const ShaftSample& s, const Clutter& clutter) {
    float chosen = 0.0F;
    for (const auto& l : e.lines) {
        if (std::abs(wrap180(l.angleDegrees - s.angleDegrees)) < 2.0) {
            chosen = std::max(chosen, net(l, clutter));
        }
    }
    int rivals = 0;
    for (const auto& l : e.lines) {
        rivals += std::abs(wrap180(l.angleDegrees - s.angleDegrees)) > 6.0 && net(l, clutter) > 0.75F * chosen
                      ? 1
                      : 0;
    }
    return rivals >= 2;
}

void dropAmbiguous(ShaftTrack& track, std::span<const Evidence> evidence, const std::vector<double>& real,
                   const Clutter& clutter) {
    const auto n = static_cast<int>(track.size());
    std::vector<char> unclear(track.size(), 0);
    for (int i = 0; i < n; ++i) {
        unclear[i] =
            track[i] && track[i]->origin != base::Origin::hand && ambiguous(evidence[i], *track[i], clutter)
                ? 1
                : 0;
    }
    for (int i = 0; i < n; ++i) {
        if (unclear[i] == 0) {
            continue;
        }
        const auto clear = [&](int step) {
            for (int k = i + step; k >= 0 && k < n && std::abs(real[k] - real[i]) < 0.04; k += step) {
                if (track[k] && unclear[k] == 0) {
                    return k;
                }
            }
            return -1;
        };
        const int a = clear(-1);
        const int b = clear(1);
        bool keep = false;
        if (a >= 0 && b >= 0) {
            const double span = real[b] - real[a];
            const double t = (real[i] - real[a]) / span;
            const double expected =
                track[a]->angleDegrees + t * (track[b]->angleDegrees - track[a]->angleDegrees);
            keep = std::abs(track[i]->angleDegrees - expected) <
                   1.5 + 0.5 * 20000.0 * t * (1 - t) * span * span + 2.0 * track[i]->sigmaDegrees;
        }
        unclear[i] = keep ? 1 : 2;
    }
    for (int i = 0; i < n; ++i) {
        if (unclear[i] == 2) {
            track[i].reset();
        }
    }
}

/// A shaft shows in one smooth motion. Shreds of one or two frames that join nothing are other lines.
void dropShreds(ShaftTrack& track, const std::vector<double>& real) {
    const auto n = static_cast<int>(track.size());
    const double usual = n > 1 ? (real.back() - real.front()) / (n - 1) : 0.0; // seconds a frame
    int i = 0;
    while (i < n) {
        if (!track[i]) {
            ++i;
            continue;
        }
        int last = i;
        int count = 1;
        double speed = 0.0;
        bool moving = false;
        bool byHand = track[i]->origin == base::Origin::hand;
        int k = i + 1;
        for (; k < n && real[k] - real[last] < std::max(0.03, 2.1 * usual); ++k) {
            if (!track[k]) {
                continue;
            }
            const double dt = real[k] - real[last];
            const double now = (track[k]->angleDegrees - track[last]->angleDegrees) / dt;
            if (std::abs(now) > 3600.0 || (moving && std::abs(now - speed) > 40000.0 * dt + 300.0)) {
                break;
            }
            speed = now;
            moving = true;
            last = k;
            ++count;
            byHand = byHand || track[k]->origin == base::Origin::hand;
        }
        if (count < 3 && !byHand) {
            for (int j = i; j <= last; ++j) {
                track[j].reset();
            }
        }
        i = last + 1;
    }
}

/// Stretches of smooth motion, told by the same rule as in dropShreds.
struct Stretch {
    int first = 0, last = 0, count = 0;
    double speedIn = 0.0, speedOut = 0.0; ///< degrees per real second in its first and last 25 ms
    bool byHand = false;
};

std::vector<Stretch> stretchesOf(const ShaftTrack& track, const std::vector<double>& real) {
    const auto n = static_cast<int>(track.size());
    const double usual = n > 1 ? (real.back() - real.front()) / (n - 1) : 0.0;
    std::vector<Stretch> all;
    double speed = 0.0;
    bool moving = false;
    for (int i = 0; i < n; ++i) {
        if (!track[i]) {
            continue;
        }
        bool joins = !all.empty() && real[i] - real[all.back().last] < std::max(0.03, 2.1 * usual);
        double now = 0.0;
        if (joins) {
            const int last = all.back().last;
            const double dt = real[i] - real[last];
            now = (track[i]->angleDegrees - track[last]->angleDegrees) / dt;
            joins = std::abs(now) <= 3600.0 && !(moving && std::abs(now - speed) > 40000.0 * dt + 300.0);
        }
        moving = joins;
        speed = now;
        if (!joins) {
            all.push_back({i, i, 0});
        }
        Stretch& s = all.back();
        s.last = i;
        ++s.count;
        s.byHand = s.byHand || track[i]->origin == base::Origin::hand;
    }
    for (Stretch& s : all) {
        const auto speedFrom = [&](int from, int step) {
            int to = from;
            for (int k = from; k >= s.first && k <= s.last && std::abs(real[k] - real[from]) < 0.026;
                 k += step) {
                to = track[k] ? k : to;
            }
            return to == from
                       ? 0.0
                       : (track[to]->angleDegrees - track[from]->angleDegrees) / (real[to] - real[from]);
        };
        s.speedIn = speedFrom(s.first, 1);
        s.speedOut = speedFrom(s.last, -1);
    }
    return all;
}

/// Across a dropout the path only guesses which way round the shaft went, and what it found inside may be
/// another line. The chain of stretches that fits together best as one motion is kept: each may be counted
/// full turns up or down, and a stretch between two that the shaft cannot have reached and left again goes.
void joinStretches(ShaftTrack& track, const std::vector<double>& real) {
    const std::vector<Stretch> all = stretchesOf(track, real);
    const auto n = static_cast<int>(all.size());
    if (n < 2) {
        return;
    }
    constexpr int kTurns = 2, kStates = 2 * kTurns + 1, kReach = 12;
    constexpr double kImpossible = 10.0; ///< of a turn no shaft makes; two of them outweigh 0.17 s of a line
    constexpr double kGain = 120.0;      ///< of each real second that is kept
    constexpr double kLong = 0.25;       ///< seconds: after that anything may have happened
    constexpr double kChange = 15000.0;  ///< degrees per second squared, as for the path
    struct Best {
        double value = 0.0;
        int stretch = -1, state = kTurns;
    };
    std::vector<std::array<Best, kStates>> best(static_cast<std::size_t>(n));
    const auto worth = [&](const Stretch& s) {
        return s.byHand ? 1e3 : kGain * (real[s.last] - real[s.first]) + 1.0;
    };
    for (int j = 0; j < n; ++j) {
        for (int v = 0; v < kStates; ++v) {
            Best& b = best[j][v];
            // As the first of the chain; what was left out before it is lost.
            b.value = worth(all[j]) - (v == kTurns ? 0.0 : 1.0);
            for (int i = std::max(0, j - kReach); i < j; ++i) {
                const double dt = real[all[j].first] - real[all[i].last];
                for (int u = 0; u < kStates; ++u) {
                    const double turn = track[all[j].first]->angleDegrees - track[all[i].last]->angleDegrees +
                                        360.0 * (v - u);
                    // Of turns that are equally (im)possible the shorter one, and the count as it was.
                    double cost = 0.0005 * std::abs(turn) + 0.05 * std::abs(v - u);
                    if (dt > kLong) {
                        cost += 0.95 * std::abs(v - u);
                    } else if (std::abs(turn) > 3600.0 * dt + 8.0) {
                        cost += kImpossible;
                    } else {
                        const double off = std::abs(turn / dt - 0.5 * (all[i].speedOut + all[j].speedIn));
                        const double usual = 300.0 + 0.5 * kChange * dt;
                        cost += std::min(kImpossible, (off / usual) * (off / usual));
                    }
                    const double value = best[i][u].value + worth(all[j]) - cost;
                    if (value > b.value) {
                        b = {value, i, u};
                    }
                }
            }
        }
    }
    int at = 0, state = kTurns;
    for (int j = 0; j < n; ++j) {
        for (int v = 0; v < kStates; ++v) {
            if (best[j][v].value > best[at][state].value) {
                at = j, state = v;
            }
        }
    }
    std::vector<std::optional<int>> turns(static_cast<std::size_t>(n));
    while (at >= 0) {
        turns[at] = state - kTurns;
        const Best& b = best[at][state];
        at = b.stretch, state = b.state;
    }
    for (int j = 0; j < n; ++j) {
        for (int k = all[j].first; k <= all[j].last; ++k) {
            if (!track[k]) {
                continue;
            }
            if (turns[j]) {
                track[k]->angleDegrees += 360.0 * *turns[j];
            } else if (!all[j].byHand) {
                track[k].reset();
            }
        }
    }
}

/// What the picture's own scatter cannot know: lens and shading, when in the exposure the frame's time lies,
/// and rows read one after the other.
void widen(ShaftTrack& track, const std::vector<double>& real, std::span<const Evidence> evidence,
           const FitContext& context) {
    const auto n = static_cast<int>(track.size());
    std::vector<double> speed(track.size(), 0.0);
    for (int i = 0; i < n; ++i) {
        if (!track[i]) {
            continue;
        }
        int a = i;
        int b = i;
        while (a > 0 && track[a - 1] && real[i] - real[a - 1] < 0.009) {
            --a;
        }
        while (b + 1 < n && track[b + 1] && real[b + 1] - real[i] < 0.009) {
            ++b;
        }
        if (a == b) {
            a = std::max(0, i - 1);
            b = std::min(n - 1, i + 1);
        }
        if (a != b && track[a] && track[b]) {
            speed[i] = std::abs(track[b]->angleDegrees - track[a]->angleDegrees) / (real[b] - real[a]);
        }
    }
    for (int i = 0; i < n; ++i) {
        if (!track[i] || track[i]->origin == base::Origin::hand) {
            continue;
        }
        ShaftSample& s = *track[i];
        constexpr double kStill = 0.12;      // degrees
        constexpr double kExposure = 0.0002; // seconds
        constexpr double kReadout = 0.0025;  // seconds for the whole picture: 0 to 10 ms on phones
        double rolling = 0.0;
        if (s.head && context.pictureHeight > 0) {
            const double rows = std::abs(s.head->y - s.through.y) / context.pictureHeight;
            rolling = speed[i] * kReadout * rows;
        }
        s.sigmaDegrees = std::sqrt(s.sigmaDegrees * s.sigmaDegrees + kStill * kStill +
                                   speed[i] * kExposure * speed[i] * kExposure + rolling * rolling);
        (void)evidence;
    }
}

/// Full turns are counted from where the club hangs down: at address and at the hit the angle is near 0, not
/// 360.
void countTurnsFromBelow(ShaftTrack& track) {
    std::vector<std::pair<int, int>> votes; // turn, frames
    for (const auto& s : track) {
        if (s && std::abs(wrap180(s->angleDegrees)) < 75.0) {
            const int turn = static_cast<int>(std::lround(s->angleDegrees / 360.0));
            auto it =
                std::find_if(votes.begin(), votes.end(), [&](const auto& v) { return v.first == turn; });
            if (it == votes.end()) {
                votes.emplace_back(turn, 1);
            } else {
                ++it->second;
            }
        }
    }
    const auto most = std::max_element(votes.begin(), votes.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    if (most == votes.end()) {
        return;
    }
    for (auto& s : track) {
        if (s) {
            s->angleDegrees -= 360.0 * most->first;
        }
    }
}

ShaftTrack fitRange(std::span<const Evidence> evidence, const FitContext& context,
                    const std::vector<Told>& told, const Clutter& clutter) {
    const double realPerShown = context.timeScale.realPerShown > 0 ? context.timeScale.realPerShown : 1.0;
    std::vector<detail::PathFrame> frames(evidence.size());
    std::vector<double> real(evidence.size());
    for (std::size_t i = 0; i < evidence.size(); ++i) {
        real[i] = evidence[i].time.value() * realPerShown;
        frames[i].realSeconds = real[i];
        frames[i].gain = gainOf(evidence[i], toldIn(told, evidence[i].frame), clutter);
    }
    const detail::Path path =
        detail::bestPath(frames, context.shot.view == marks::View::downTheLine ? 1.2 : 3.0);
    const double step = frameStep(evidence, realPerShown);
    ShaftTrack track(evidence.size());
    for (std::size_t i = 0; i < evidence.size(); ++i) {
        const Evidence& e = evidence[i];
        const Told* t = toldIn(told, e.frame);
        if (t != nullptr) {
            if (const auto d = directionTold(*t, e)) {
                ShaftSample s;
                s.time = e.time;
                s.angleDegrees = path.angle[i] + wrap180(d->angle - path.angle[i]);
                s.sigmaDegrees = d->sigma;
                s.through = d->from;
                s.butt = t->butt;
                s.head = t->head;
                s.headSigma = t->sigma;
                s.origin = base::Origin::hand;
                track[i] = s;
                continue;
            }
        }
        track[i] = sampleOf(e, path.angle[i], path.degreesPerSecond[i], path.binDegrees, step, clutter);
        if (track[i] && t != nullptr) {
            track[i]->butt = t->butt;
            if (t->headHidden) {
                track[i]->head.reset();
            }
        }
    }
    dropAmbiguous(track, evidence, real, clutter);
    dropStrays(track, real);
    dropShreds(track, real);
    if (context.shot.view == marks::View::faceOn) { // from behind, a shaft that points at the lens flips over
        joinStretches(track, real);
    }
    bridge(track, evidence, real);
    widen(track, real, evidence, context);
    return track;
}

} // namespace

ShaftTrack fitShaft(std::span<const Evidence> evidence, const FitContext& context,
                    std::span<const marks::HandMark> handMarks) {
    ShaftTrack track =
        fitRange(evidence, context, toldByHand(handMarks), clutterOf(evidence, context.shot.view));
    countTurnsFromBelow(track);
    return track;
}

ShaftTrack applyHandMarks(const ShaftTrack& before, std::span<const Evidence> evidence,
                          const FitContext& context, std::span<const marks::HandMark> handMarks) {
    const std::vector<Told> told = toldByHand(handMarks);
    if (told.empty() || before.size() != evidence.size() || evidence.empty()) {
        return before;
    }
    constexpr double kNear = 0.30; ///< real seconds around a marked frame that are fitted again
    const double step =
        frameStep(evidence, context.timeScale.realPerShown > 0 ? context.timeScale.realPerShown : 1.0);
    const int reach = std::max(2, static_cast<int>(std::lround(kNear / step)));
    const Clutter clutter = clutterOf(evidence, context.shot.view);
    ShaftTrack after = before;
    std::vector<int> frames;
    for (const Told& t : told) {
        if (t.frame >= 0 && t.frame < static_cast<int>(evidence.size())) {
            frames.push_back(t.frame);
        }
    }
    std::sort(frames.begin(), frames.end());
    for (std::size_t i = 0; i < frames.size();) {
        std::size_t j = i;
        while (j + 1 < frames.size() && frames[j + 1] - frames[j] <= reach) {
            ++j;
        }
        const int from = std::max(0, frames[i] - reach),
                  to = std::min(static_cast<int>(evidence.size()), frames[j] + reach + 1);
        const auto part =
            evidence.subspan(static_cast<std::size_t>(from), static_cast<std::size_t>(to - from));
        ShaftTrack fitted = fitRange(part, context, told, clutter);
        // Same count of full turns as before: most frames of the stretch still show the same line.
        double turns = 0.0;
        int votes = 0;
        for (int k = from; k < to; ++k) {
            if (fitted[static_cast<std::size_t>(k - from)] && before[static_cast<std::size_t>(k)]) {
                turns += std::round((before[static_cast<std::size_t>(k)]->angleDegrees -
                                     fitted[static_cast<std::size_t>(k - from)]->angleDegrees) /
                                    360.0);
                ++votes;
            }
        }
        const double shift = votes > 0 ? 360.0 * std::round(turns / votes) : 0.0;
        for (int k = from; k < to; ++k) {
            auto& s = fitted[static_cast<std::size_t>(k - from)];
            if (s) {
                s->angleDegrees += shift;
            }
            after[static_cast<std::size_t>(k)] = std::move(s);
        }
        i = j + 1;
    }
    return after;
}

} // namespace plumbmark::club
