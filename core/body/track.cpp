// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "body/track.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <tuple>

#include "body/detail/carry.h"
#include "body/detail/known.h"
#include "body/detail/pelvis.h"
#include "body/detail/shape.h"
#include "body/detail/smooth.h"

namespace plumbmark::body {
namespace {

using base::Vec2;
using marks::Landmark;

constexpr std::size_t index(Landmark l) {
    return static_cast<std::size_t>(l);
}

constexpr std::array kArms{Landmark::lead_elbow, Landmark::trail_elbow, Landmark::lead_wrist,
                           Landmark::trail_wrist, Landmark::grip};

/// Joints in the order lead, trail after the sides are told apart.
struct Pair {
    Landmark lead, trail;
    Point left, right;
};
constexpr std::array<Pair, 9> kPairs{{
    {Landmark::lead_ear, Landmark::trail_ear, Point::left_ear, Point::right_ear},
    {Landmark::lead_shoulder, Landmark::trail_shoulder, Point::left_shoulder, Point::right_shoulder},
    {Landmark::lead_elbow, Landmark::trail_elbow, Point::left_elbow, Point::right_elbow},
    {Landmark::lead_wrist, Landmark::trail_wrist, Point::left_wrist, Point::right_wrist},
    {Landmark::lead_hip, Landmark::trail_hip, Point::left_hip, Point::right_hip},
    {Landmark::lead_knee, Landmark::trail_knee, Point::left_knee, Point::right_knee},
    {Landmark::lead_ankle, Landmark::trail_ankle, Point::left_ankle, Point::right_ankle},
    {Landmark::lead_heel, Landmark::trail_heel, Point::left_heel, Point::right_heel},
    {Landmark::lead_toe, Landmark::trail_toe, Point::left_toe, Point::right_toe},
}};
constexpr std::array kUpper{1, 2};       ///< places in kPairs: shoulders, elbows
constexpr std::array kLower{4, 5, 6, 7}; ///< hips, knees, ankles, heels

/// One observation with its sides settled: what every landmark looks like before smoothing.
struct Pose {
    std::array<std::optional<detail::Sample>, marks::kLandmarkCount> points;
    /// px: how far the network's two answers for the landmark lie apart; a sign of being lost.
    std::array<double, marks::kLandmarkCount> doubt{};
    [[nodiscard]] std::optional<detail::Sample>& operator[](Landmark l) { return points[index(l)]; }
    [[nodiscard]] const std::optional<detail::Sample>& operator[](Landmark l) const {
        return points[index(l)];
    }
    [[nodiscard]] Vec2 middle(Landmark a, Landmark b) const {
        return base::midpoint(points[index(a)]->at, points[index(b)]->at);
    }
    [[nodiscard]] Vec2 midHip() const { return middle(Landmark::lead_hip, Landmark::trail_hip); }
    [[nodiscard]] Vec2 midShoulder() const {
        return middle(Landmark::lead_shoulder, Landmark::trail_shoulder);
    }
    [[nodiscard]] Vec2 hands() const { return middle(Landmark::lead_wrist, Landmark::trail_wrist); }
};

/// How much of the distance between the network's two answers counts as one sigma.
constexpr double kDoubtShare = 0.3;

double median(std::vector<double> v) {
    const auto mid = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
    std::nth_element(v.begin(), mid, v.end());
    return *mid;
}

// ---- left and right ---------------------------------------------------------------------------------------

/// For a group of joint pairs: in which observations the network has them the wrong way round. Two-state best
/// path: staying costs the pairs' travel, being swapped costs `against[i]` more.
std::vector<bool> swaps(std::span<const Observation> seen, std::span<const int> group,
                        const std::vector<double>& against) {
    const std::size_t n = seen.size();
    std::vector<std::array<double, 2>> cost(n);
    std::vector<std::array<int, 2>> from(n);
    const auto point = [&](std::size_t i, int pair, bool lead, int state) {
        const Pair& p = kPairs[static_cast<std::size_t>(pair)];
        return seen[i][(lead != (state == 1)) ? p.left : p.right].peak;
    };
    for (std::size_t i = 0; i < n; ++i) {
        for (int s = 0; s < 2; ++s) {
            const auto us = static_cast<std::size_t>(s);
            const double own = s == 1 ? against[i] : 0.0;
            if (i == 0) {
                cost[i][us] = own;
                continue;
            }
            double best = 1e300;
            for (int b = 0; b < 2; ++b) {
                double travel = 0.0;
                for (const int pair : group) {
                    travel += base::length(point(i, pair, true, s) - point(i - 1, pair, true, b)) +
                              base::length(point(i, pair, false, s) - point(i - 1, pair, false, b));
                }
                const double total = cost[i - 1][static_cast<std::size_t>(b)] + travel / seen[i].region.size;
                if (total < best) {
                    best = total;
                    from[i][us] = b;
                }
            }
            cost[i][us] = best + own;
        }
    }
    std::vector<bool> swapped(n);
    int s = n > 0 && cost[n - 1][1] < cost[n - 1][0] ? 1 : 0;
    for (std::size_t i = n; i-- > 0;) {
        swapped[i] = s == 1;
        s = from[i][static_cast<std::size_t>(s)];
    }
    return swapped;
}

/// The hand beyond the wrist, along the forearm: 0.108 of stature against the forearm's 0.146 (Drillis and
/// Contini 1966), and closed about a grip some two thirds of that.
detail::Limb handOf(const Pose& p, Landmark elbow, Landmark wrist, double thick) {
    const Vec2 at = p[wrist]->at;
    return {at, at + (at - p[elbow]->at) * 0.45, thick};
}

// ---- one observation to one pose -------------------------------------------------------------------------

double sigmaOf(const PosePoint& p) {
    // Spread of the heat, wider where the network itself says that it cannot see the point.
    return p.spread * (1.0 + 2.0 * (1.0 - p.visibility));
}

/// `upper`, `lower`: the sides of trunk and arms / legs are the other way round than the network says.
Pose poseOf(const Observation& o, const std::array<Vec2, kPointCount>& joints, double time, bool leadIsLeft,
            bool upper, bool lower) {
    Pose pose;
    const auto put = [&](Landmark l, Vec2 at, double sigma) { pose[l] = detail::Sample{time, at, sigma}; };
    for (std::size_t i = 0; i < kPairs.size(); ++i) {
        const Pair& p = kPairs[i];
        const bool swapped = i >= 4 ? lower : i >= 1 && upper;
        const bool left = leadIsLeft != swapped;
        const PosePoint& lead = o[left ? p.left : p.right];
        const PosePoint& trail = o[left ? p.right : p.left];
        const bool face = i == 0;
        // Joints by the heat's centroid, points of the face by the direct answer: each is the better one
        // there.
        if (!face) {
            pose.doubt[index(p.lead)] = base::length(lead.peak - lead.direct);
            pose.doubt[index(p.trail)] = base::length(trail.peak - trail.direct);
        }
        const auto joint = [&](Point which) { return joints[static_cast<std::size_t>(which)]; };
        put(p.lead, face ? lead.direct : joint(leadIsLeft ? p.left : p.right), sigmaOf(lead));
        put(p.trail, face ? trail.direct : joint(leadIsLeft ? p.right : p.left), sigmaOf(trail));
    }
    put(Landmark::nose, o[Point::nose].direct, sigmaOf(o[Point::nose]));
    return pose;
}

/// Which of the two hands shows where the club is held.
enum class Holds { both, left, right };

/// Hands on the club: the middle of the knuckles, each hand counted as far as it is seen.
void putGrip(const Observation& o, Pose& pose, double time, Holds holds) {
    Vec2 sum;
    double weights = 0.0;
    for (const auto& [index, pinky, other] :
         {std::tuple{Point::left_index, Point::left_pinky, Holds::right},
          std::tuple{Point::right_index, Point::right_pinky, Holds::left}}) {
        if (holds == other) {
            continue;
        }
        const double w = 0.1 + std::min(o[index].visibility, o[pinky].visibility);
        sum = sum + base::midpoint(o[index].direct, o[pinky].direct) * w;
        weights += w;
    }
    const double sigma = (sigmaOf(o[Point::left_index]) + sigmaOf(o[Point::right_index])) / 2;
    pose[Landmark::grip] = detail::Sample{time, sum / weights, sigma};
}

/// Both hands hold one club, so the wrists lie next to each other in every frame of a swing: seen some 0.05
/// statures apart. Farther apart than this one of them is somewhere else (the network lost it before the dark
/// trousers, behind the trunk or against the background).
constexpr double kWristsApart = 0.11;
/// How sure a wrist is that was put back beside the other, and the elbow between it and its shoulder,
/// statures.
constexpr double kPutBack = 0.03, kElbowPutBack = 0.045;

/// Puts a hand that the network lost back to the other one. Which of the two is lost is told by the hands'
/// way: of all ways through the looks, where each lost one may be at either wrist, the one of least speed
/// squared over time; a false place lies off it, or is reached sooner than hands can. Returns which hand
/// holds in each look (lead: true).
std::vector<std::optional<bool>> holdTogether(std::vector<Pose>& poses, const std::vector<double>& time,
                                              double stature) {
    const std::size_t n = poses.size();
    std::vector<std::optional<bool>> leadHolds(n);
    std::vector<bool> lost(n);
    std::vector<std::array<Vec2, 2>> place(n); // at the lead wrist, at the trail wrist
    for (std::size_t i = 0; i < n; ++i) {
        const Vec2 lead = poses[i][Landmark::lead_wrist]->at, trail = poses[i][Landmark::trail_wrist]->at;
        lost[i] = base::length(lead - trail) >= kWristsApart * stature;
        place[i] = {lost[i] ? lead : base::midpoint(lead, trail),
                    lost[i] ? trail : base::midpoint(lead, trail)};
    }
    const auto effort = [&](std::size_t i, std::size_t k, std::size_t a, std::size_t b) {
        const Vec2 way = place[k][b] - place[i][a];
        return base::dot(way, way) / std::max(time[k] - time[i], 1e-3);
    };
    std::vector<std::array<double, 2>> cost(n);
    std::vector<std::array<std::size_t, 2>> from(n);
    for (std::size_t i = 1; i < n; ++i) {
        for (std::size_t b = 0; b < 2; ++b) {
            const double viaLead = cost[i - 1][0] + effort(i - 1, i, 0, b);
            const double viaTrail = cost[i - 1][1] + effort(i - 1, i, 1, b);
            cost[i][b] = std::min(viaLead, viaTrail);
            from[i][b] = viaLead <= viaTrail ? 0 : 1;
        }
    }
    std::vector<std::size_t> at(n);
    for (std::size_t i = n; i-- > 0;) {
        at[i] = i + 1 < n ? from[i + 1][at[i + 1]] : cost[i][0] <= cost[i][1] ? 0 : 1;
    }
    std::vector<std::size_t> agreed; // looks that show both hands together
    for (std::size_t i = 0; i < n; ++i) {
        if (!lost[i]) {
            agreed.push_back(i);
        }
    }
    for (std::size_t i = 0; i < n && !agreed.empty(); ++i) {
        if (!lost[i]) {
            continue;
        }
        Pose& p = poses[i];
        const auto around = [&](std::size_t state) {
            return (i > 0 ? effort(i - 1, i, at[i - 1], state) : 0.0) +
                   (i + 1 < n ? effort(i, i + 1, state, at[i + 1]) : 0.0);
        };
        if (around(at[i]) > 0.5 * around(1 - at[i])) { // it may be either
            const double apart = base::length(place[i][0] - place[i][1]);
            for (const Landmark l : {Landmark::lead_wrist, Landmark::trail_wrist, Landmark::grip,
                                     Landmark::lead_elbow, Landmark::trail_elbow}) {
                p.doubt[index(l)] = std::max(p.doubt[index(l)], 0.5 * apart / kDoubtShare);
            }
            continue;
        }
        const bool leadIsRight = at[i] == 0;
        leadHolds[i] = leadIsRight;
        const std::size_t like = *std::min_element(agreed.begin(), agreed.end(), [&](auto a, auto b) {
            return std::abs(time[a] - time[i]) < std::abs(time[b] - time[i]);
        });
        const Vec2 apart = poses[like][Landmark::lead_wrist]->at - poses[like][Landmark::trail_wrist]->at;
        const Landmark wrist = leadIsRight ? Landmark::trail_wrist : Landmark::lead_wrist;
        const Landmark elbow = leadIsRight ? Landmark::trail_elbow : Landmark::lead_elbow;
        p[wrist]->at =
            leadIsRight ? p[Landmark::lead_wrist]->at - apart : p[Landmark::trail_wrist]->at + apart;
        p.doubt[index(wrist)] = kPutBack * stature / kDoubtShare;
        if (!leadIsRight) {
            // The lead arm is nearly straight; upper arm 0.186, forearm 0.146 (Drillis and Contini 1966).
            const Vec2 shoulder = p[Landmark::lead_shoulder]->at;
            p[elbow]->at = shoulder + (p[wrist]->at - shoulder) * (0.186 / (0.186 + 0.146));
        }
        p.doubt[index(elbow)] = std::max(p.doubt[index(elbow)], kElbowPutBack * stature / kDoubtShare);
    }
    return leadHolds;
}

/// Joints: the direct answers are steady but biased, the heat's peaks are less biased but jump to a neighbour
/// now and then. So: the direct answer plus the difference to the peaks, taken as the median over the looks
/// around.
std::vector<std::array<Vec2, kPointCount>> steadyJoints(std::span<const Observation> seen,
                                                        const std::vector<double>& time,
                                                        const std::vector<bool>& upper,
                                                        const std::vector<bool>& lower) {
    constexpr double around = 0.12; // seconds to either side
    constexpr double cells = 9.5;   // a peak farther off than this is somebody else's
    // The place of the point once the sides are repaired: otherwise both sides would be mixed in the median.
    const auto mine = [&](std::size_t k, std::size_t p) {
        const auto first = static_cast<std::size_t>(Point::left_shoulder);
        const auto legs = static_cast<std::size_t>(Point::left_hip);
        const bool swapped = p >= legs ? lower[k] : p >= first && upper[k];
        return !swapped ? p : p % 2 == 1 ? p + 1 : p - 1;
    };
    std::vector<std::array<Vec2, kPointCount>> out(seen.size());
    std::vector<double> x;
    std::vector<double> y;
    for (std::size_t p = 0; p < kPointCount; ++p) {
        for (std::size_t i = 0; i < seen.size(); ++i) {
            x.clear();
            y.clear();
            const auto take = [&](std::size_t k) {
                const PosePoint& q = seen[k].points[mine(k, p)];
                const Vec2 d = q.peak - q.direct;
                if (base::length(d) < cells / 64 * seen[k].region.size) {
                    x.push_back(d.x);
                    y.push_back(d.y);
                }
            };
            for (std::size_t k = i + 1; k-- > 0 && time[i] - time[k] < around;) {
                take(k);
            }
            for (std::size_t k = i + 1; k < seen.size() && time[k] - time[i] < around; ++k) {
                take(k);
            }
            out[i][p] = seen[i].points[mine(i, p)].direct + (x.empty() ? Vec2{} : Vec2{median(x), median(y)});
        }
    }
    return out;
}

// ---- honest uncertainty ----------------------------------------------------------------------------------

/// Error of a landmark, one sigma per axis in statures: face-on at rest, face-on with the shoulders turned
/// away (they hide each other), down-the-line near and far side. Measured on rendered players with known
/// joints.
struct Error {
    double open, turned, near, far;
};
constexpr Error errorOf(Landmark l) {
    switch (l) {
    case Landmark::nose:
        return {0.025, 0.035, 0.045, 0.045};
    case Landmark::head_centre:
        return {0.017, 0.014, 0.020, 0.020};
    case Landmark::head_crown:
        return {0.030, 0.034, 0.024, 0.024};
    case Landmark::head_front:
    case Landmark::head_back:
        return {0.025, 0.030, 0.025, 0.025};
    case Landmark::lead_ear:
    case Landmark::trail_ear:
        return {0.040, 0.045, 0.024, 0.024};
    case Landmark::neck_base:
        return {0.011, 0.018, 0.018, 0.018};
    case Landmark::lead_shoulder:
    case Landmark::trail_shoulder:
        return {0.016, 0.034, 0.028, 0.036};
    case Landmark::lead_elbow:
    case Landmark::trail_elbow:
        return {0.020, 0.058, 0.034, 0.036};
    case Landmark::lead_wrist:
    case Landmark::trail_wrist:
        return {0.022, 0.026, 0.026, 0.036};
    case Landmark::grip:
        return {0.015, 0.017, 0.022, 0.022};
    case Landmark::lead_hip:
    case Landmark::trail_hip:
        return {0.022, 0.024, 0.022, 0.022};
    case Landmark::lead_knee:
    case Landmark::trail_knee:
        return {0.016, 0.022, 0.016, 0.028};
    case Landmark::lead_ankle:
    case Landmark::trail_ankle:
        return {0.012, 0.019, 0.010, 0.024};
    case Landmark::lead_heel:
    case Landmark::trail_heel:
        return {0.023, 0.022, 0.027, 0.036};
    case Landmark::lead_toe:
    case Landmark::trail_toe:
        return {0.017, 0.028, 0.020, 0.032};
    case Landmark::pelvis_rear:
        return {0.010, 0.010, 0.004, 0.004};
    default:
        return {0.02, 0.03, 0.02, 0.03};
    }
}

/// Spread of the heat (widened by what the network does not see), shares of the crop's side, that nine looks
/// of ten stay under: the table above holds up to there. A blurred, tiny or half hidden player spreads it
/// more, and the error is taken to grow with it. Medians are some 15 % lower. Measured on development swings.
double usualSpread(Landmark l, bool faceOn) {
    switch (l) {
    case Landmark::lead_shoulder:
    case Landmark::trail_shoulder:
    case Landmark::neck_base:
        return 0.0225;
    case Landmark::lead_elbow:
    case Landmark::trail_elbow:
    case Landmark::lead_wrist:
    case Landmark::trail_wrist:
    case Landmark::grip:
        return 0.066;
    case Landmark::lead_hip:
    case Landmark::trail_hip:
        return 0.019;
    case Landmark::lead_knee:
    case Landmark::trail_knee:
        return faceOn ? 0.0215 : 0.042;
    case Landmark::lead_ankle:
    case Landmark::trail_ankle:
        return faceOn ? 0.016 : 0.029;
    case Landmark::lead_heel:
    case Landmark::trail_heel:
    case Landmark::lead_toe:
    case Landmark::trail_toe:
        return faceOn ? 0.023 : 0.031;
    default:
        return 0.023; // the face and what hangs on it
    }
}

/// A picture's own grain, px: nothing is placed better than to half of one.
constexpr double kGrain = 0.5;

/// Seconds of real time to either side over which a landmark is smoothed.
double reachOf(Landmark l) {
    switch (l) {
    case Landmark::lead_wrist:
    case Landmark::trail_wrist:
    case Landmark::grip:
        return 0.045;
    case Landmark::lead_elbow:
    case Landmark::trail_elbow:
        return 0.055;
    case Landmark::lead_ankle:
    case Landmark::trail_ankle:
    case Landmark::lead_heel:
    case Landmark::trail_heel:
    case Landmark::lead_toe:
    case Landmark::trail_toe:
        return 0.12;
    default:
        return 0.09;
    }
}

bool joltedByImpact(Landmark l) {
    return l == Landmark::lead_wrist || l == Landmark::trail_wrist || l == Landmark::grip;
}

/// Where in the swing we are, told from the hands alone (shaft and ball refine the moments later, elsewhere).
struct Course {
    std::optional<double> still; ///< real seconds: middle of the stillest stretch before the hands go up
    std::optional<double> fast;  ///< fastest hands
};

Course courseOf(const std::vector<Pose>& poses, const std::vector<double>& time, double stature) {
    Course course;
    const std::size_t n = poses.size();
    if (n < 6) {
        return course;
    }
    std::vector<double> speed(n, 0.0); // statures per second
    for (std::size_t i = 1; i + 1 < n; ++i) {
        const double gap = time[i + 1] - time[i - 1];
        speed[i] =
            gap > 1e-6 ? base::length(poses[i + 1].hands() - poses[i - 1].hands()) / gap / stature : 0.0;
    }
    const auto fastest =
        static_cast<std::size_t>(std::max_element(speed.begin(), speed.end()) - speed.begin());
    if (speed[fastest] < 1.0) { // no full motion in the clip
        return course;
    }
    course.fast = time[fastest];
    // The last stretch of at least 0.12 s before the hands' swing in which they hardly move. Start from the
    // time the hands left their low place for good: going backward from the fastest hands, skip the downswing
    // and the backswing (fast), take the first slow stretch with the hands low.
    const double low = [&] {
        std::vector<double> y;
        for (std::size_t i = 0; i <= fastest; ++i) {
            y.push_back(poses[i].hands().y);
        }
        std::sort(y.begin(), y.end());
        return y[y.size() * 8 / 10];
    }();
    const double limit = std::max(0.12, 0.04 * speed[fastest]);
    std::size_t end = fastest;
    while (end > 0 && !(speed[end] < limit && std::abs(poses[end].hands().y - low) < 0.06 * stature)) {
        --end;
    }
    std::size_t begin = end;
    while (begin > 1 && speed[begin - 1] < limit && time[end] - time[begin] < 0.30) {
        --begin;
    }
    course.still = end > 0 ? (time[begin] + time[end]) / 2 : time.front();
    return course;
}

/// Seen from the front the hands of every full swing pass the trail side on their way up and down. True where
/// they pass the other one: the clip is a mirror image, or the player swings from the other side.
bool swingsTheOtherWay(const std::vector<Pose>& poses, const std::vector<double>& time, const Course& course,
                       int side, double stature) {
    if (!course.still || !course.fast) {
        return false;
    }
    int up = 0, wrong = 0;
    for (std::size_t i = 0; i < poses.size(); ++i) {
        if (time[i] < *course.still || time[i] > *course.fast) {
            continue;
        }
        const Vec2 offset = poses[i].hands() - poses[i].midHip();
        if (offset.y < -0.1 * stature) {
            ++up;
            wrong += side * offset.x > 0.1 * stature ? 1 : 0;
        }
    }
    return up >= 5 && 2 * wrong > up;
}

/// Down-the-line at rest: how much the back's direction counts against the network's.
constexpr double kBackShare = 0.6;

/// Face-on the network's mid-shoulder, statures: scatter from look to look; its bias with the shoulders open
/// and what comes on top with them turned away, where one hides the other; how long that lasts, seconds; and
/// the shoulders' sideways acceleration (statures^2 / s^3: some 6 statures / s^2 for a twentieth of a
/// second).
constexpr double kShouldersGrain = 0.004, kOpenBias = 0.005, kTurnedBias = 0.016, kBiasLasts = 0.1,
                 kShouldersJerk = 2.0;

/// The middle of the network's ears, statures: scatter, bias as the face turns away; and the head's sideways
/// acceleration (it is the quietest part of the swing).
constexpr double kEarsGrain = 0.004, kEarsBias = 0.015, kHeadJerk = 0.5;

/// Face-on, where the middle of the head stands across the picture in every look, px: the ears', whose bias
/// grows as the face turns away, and the outline's middle. Whichever way a round head turns, its outline
/// stays over its axis; where arms lie at one edge (the trail side at the top) the other edge and the width
/// of clean looks tell it.
std::vector<double> headMiddles(std::span<const Observation> seen, const std::vector<Pose>& poses,
                                const std::vector<double>& time, double stature) {
    const std::size_t n = poses.size();
    struct Sides {
        std::optional<double> left, right; // px across the picture
    };
    std::vector<Sides> sides(n);
    std::vector<detail::TwoTold> looks(n);
    std::vector<double> widths;
    detail::Known width; // of the outline: longer from the side than from the front, and hats more so
    for (std::size_t i = 0; i < n; ++i) {
        const Pose& p = poses[i];
        const Vec2 ears = p.middle(Landmark::lead_ear, Landmark::trail_ear);
        const Vec2 neck = p.midShoulder();
        looks[i] = {time[i], ears.x, kEarsBias * stature, std::nullopt};
        const double reach = base::length(ears - neck);
        if (reach < 0.03 * stature) {
            continue;
        }
        const auto seenSides = detail::headSides(seen[i], ears, (ears - neck) / reach, stature);
        const auto clear = [&](const std::optional<Vec2>& edge) {
            return edge && std::none_of(kArms.begin(), kArms.end(), [&](Landmark l) {
                       return base::length(p[l]->at - *edge) < 0.075 * stature;
                   });
        };
        if (clear(seenSides.left)) {
            sides[i].left = seenSides.left->x;
        }
        if (clear(seenSides.right)) {
            sides[i].right = seenSides.right->x;
        }
        if (sides[i].left && sides[i].right) {
            widths.push_back(*sides[i].right - *sides[i].left);
        }
    }
    // From the side a head looks a quarter wider than from the front (from memory of body surveys); what is
    // wider still has something behind it.
    const double usual = widths.size() >= 3 ? median(widths) : 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        const auto& [left, right] = sides[i];
        if (left && right && *right - *left > 0.8 * usual && *right - *left < 1.35 * usual) {
            width.time.push_back(time[i]);
            width.value.push_back(*right - *left);
            looks[i].outline = detail::TwoTold::Outline{(*left + *right) / 2, 0.008 * stature};
        }
    }
    for (std::size_t i = 0; i < n; ++i) {
        const auto& [left, right] = sides[i];
        const auto now = width.at(time[i]);
        if (now && left.has_value() != right.has_value()) {
            // The face may have turned since the width was seen.
            looks[i].outline =
                detail::TwoTold::Outline{left ? *left + now->value / 2 : *right - now->value / 2,
                                         std::hypot(0.012, std::min(0.03, 0.06 * now->gap)) * stature};
        }
    }
    return detail::carryMiddle(looks, {kEarsGrain * stature, kBiasLasts, kHeadJerk * stature * stature});
}

/// Where the hips stand between ankles and shoulders, in height, of somebody bent over a ball: segment
/// lengths of Drillis and Contini 1966 (shank and thigh 0.491, trunk 0.288) at 15 degrees of shank and thigh
/// and 33 of trunk. 6 degrees of trunk and 3 % of each segment between players leave 0.013 statures open; the
/// network's own mid-hip is off in height by 0.019 (errorOf, nearly the same for both hips), so the ratio
/// counts by kBuildShare.
constexpr double kHipShare = 0.474 / (0.474 + 0.242);
constexpr double kBuildShare = 0.019 * 0.019 / (0.019 * 0.019 + 0.013 * 0.013);

/// px by which the network's hips lie too low at address, against the build of people. It is a bias that
/// lasts.
template <class AtRest> double hipsTooLow(const std::vector<Pose>& poses, const AtRest& atRest) {
    std::vector<double> low;
    for (std::size_t i = 0; i < poses.size(); ++i) {
        const double ankles = poses[i].middle(Landmark::lead_ankle, Landmark::trail_ankle).y;
        const double shoulders = poses[i].midShoulder().y;
        if (atRest(i) && ankles > shoulders) {
            low.push_back(poses[i].midHip().y - (ankles - kHipShare * (ankles - shoulders)));
        }
    }
    return low.empty() ? 0.0 : kBuildShare * median(low);
}

/// How far the shoulders have turned, told by the arms, degrees (- away from the target, + open). `arms`:
/// from hanging straight down, + toward the trail side, of the line from the middle of the shoulders to the
/// hands. The arms swing about before the chest: it has turned 60 with the lead arm level going back, 90 at
/// the top, 50 with it level coming down, 20 at the hit and goes on to beyond square (common practice, no
/// source); in between evenly with the arms. Good to some 12 degrees, which is the spread of full swings.
double turnByArms(double arms, bool comingDown) {
    constexpr double perArms = 0.65, openAtHit = 20.0, levelArms = 140.0;
    const double down = comingDown ? std::clamp(1.0 - arms / levelArms, 0.0, 1.0) : 0.0;
    return std::clamp(-perArms * arms + openAtHit * down, -100.0, 110.0);
}
constexpr double kTurnByArmsSigma = 12.0; ///< degrees
constexpr double kArmsFold = 105.0;       ///< degrees past hanging straight down, on the target side
/// Bend of the trunk toward the ball and what a tilted shoulder girdle leaves open on top, degrees.
constexpr double kTrunkBend = 33.0, kGirdleSigma = 10.0;
/// The network's shoulders against each other, statures: with the shoulders open, and what comes on top with
/// them edge-on, where one hides the other and the network draws them apart.
constexpr double kSpanOpen = 0.025, kSpanHidden = 0.10;

/// Face-on: lead minus trail shoulder, px, from the network's and from what bones and arms tell. Turned away
/// the network keeps the two apart where they hide each other, so there the arms tell more: the line of the
/// shoulders is as long as at address, and turned as far as the arms say about the trunk's own axis. Per axis
/// by how sure either is.
Vec2 shoulderSpan(Vec2 network, Vec2 trunk, double turnDegrees, double openSpan, int side, double stature) {
    constexpr double degree = std::numbers::pi / 180.0;
    const double t = turnDegrees * degree, bend = kTrunkBend * degree;
    const Vec2 up = trunk / base::length(trunk);
    const Vec2 across = Vec2{-up.y, up.x} * static_cast<double>(side); // toward the target, standing upright
    const double open = kTurnByArmsSigma * degree, girdle = kGirdleSigma * degree;
    const double hidden = kSpanOpen + kSpanHidden * std::sin(t) * std::sin(t);
    const auto blend = [&](double seen, double told, double sigma) {
        const double s = sigma * openSpan / stature;
        const double weight = hidden * hidden / (hidden * hidden + s * s);
        return seen + weight * (told - seen);
    };
    const double toTarget =
        blend(base::dot(network, across), openSpan * std::cos(t),
              std::hypot(std::sin(t) * open, 0.5 * open * open, std::sin(t) * std::sin(bend) * girdle));
    const double upward = blend(base::dot(network, up), openSpan * std::sin(t) * std::sin(bend),
                                std::hypot(std::cos(t) * std::sin(bend) * open, girdle));
    return across * toTarget + up * upward;
}

/// Crown to sole of somebody bent over a ball, as a share of stature: segment lengths of Drillis and Contini
/// 1966 (shank 0.246, thigh 0.245, trunk 0.288, neck and head 0.182, ankle height 0.039) at 15 degrees of
/// shank and thigh, 38 of trunk, 25 of neck (common practice for a mid-iron). Ankle to crown leaves the ankle
/// out.
constexpr double kAnkleToCrown = 0.246 * 0.966 + 0.245 * 0.966 + 0.288 * 0.788 + 0.182 * 0.906;

} // namespace

AutoTrack autoTrack(std::span<const Observation> seen, std::span<const base::Seconds> times,
                    const marks::ShotContext& context, const Timing& timing) {
    AutoTrack out;
    out.track.resize(times.size());
    out.boxes.resize(times.size());
    for (std::size_t i = 0; i < times.size(); ++i) {
        out.track[i].time = times[i];
    }
    if (seen.empty() || times.empty()) {
        out.warnings.emplace_back("No player was found in the clip; place the marks by hand.");
        return out;
    }
    const std::size_t n = seen.size();
    const double real = timing.realPerShown > 0 ? timing.realPerShown : 1.0;
    const bool faceOn = context.view == marks::View::faceOn;
    const int side = context.sideSign();

    // -- sides. The network's left is the player's left unless the clip is mirrored; the lead side is the
    // left of a right-hander: together that is sideSign. What the view demands breaks ties.
    const bool leadIsLeft = side > 0;
    const auto against = [&](const auto& group) {
        std::vector<double> cost(n);
        for (std::size_t i = 0; i < n; ++i) {
            double evidence = 0.0; // > 0: the network's sides fit the view
            for (const int place : group) {
                const Pair& p = kPairs[static_cast<std::size_t>(place)];
                const PosePoint& lead = seen[i][leadIsLeft ? p.left : p.right];
                const PosePoint& trail = seen[i][leadIsLeft ? p.right : p.left];
                // Face-on the lead side is the target's; down-the-line it is the far one.
                evidence += faceOn ? side * (lead.peak.x - trail.peak.x) : 0.5 * (lead.depth - trail.depth);
            }
            cost[i] = 0.4 * std::clamp(evidence / seen[i].region.size, -0.5, 0.5);
        }
        return cost;
    };
    // A shoulder pair may truly cross in the picture (a full turn), so there only the steadier part of the
    // clip speaks; the path through time carries it over the rest.
    const auto lower = swaps(seen, kLower, against(kLower));
    auto upperEvidence = against(kUpper);
    for (std::size_t i = 0; i < n; ++i) {
        const double handsUp = std::min(seen[i][Point::left_hip].peak.y, seen[i][Point::right_hip].peak.y) -
                               (seen[i][Point::left_wrist].peak.y + seen[i][Point::right_wrist].peak.y) / 2;
        if (handsUp > 0) {
            upperEvidence[i] *= 0.1;
        }
    }
    const auto upper = swaps(seen, kUpper, upperEvidence);

    std::vector<double> time(n);
    for (std::size_t i = 0; i < n; ++i) {
        time[i] = seen[i].time.value() * real;
    }
    const auto joints = steadyJoints(seen, time, upper, lower);
    std::vector<Pose> poses(n);
    for (std::size_t i = 0; i < n; ++i) {
        poses[i] = poseOf(seen[i], joints[i], time[i], leadIsLeft, upper[i], lower[i]);
    }

    // -- size and course
    std::vector<double> sides;
    for (const Observation& o : seen) {
        sides.push_back(o.region.size);
    }
    double stature = median(sides) / 1.35;
    const auto leadHolds = holdTogether(poses, time, stature);
    for (std::size_t i = 0; i < n; ++i) {
        const bool leftIsLead = leadIsLeft != upper[i];
        putGrip(seen[i], poses[i], time[i],
                !leadHolds[i]                 ? Holds::both
                : *leadHolds[i] == leftIsLead ? Holds::left
                                              : Holds::right);
    }
    const Course course = courseOf(poses, time, stature);
    const auto atRest = [&](std::size_t i) {
        return course.still && std::abs(time[i] - *course.still) < 0.2;
    };

    // -- head: ears, outline
    const std::vector<double> headsX =
        faceOn ? headMiddles(seen, poses, time, stature) : std::vector<double>{};
    for (std::size_t i = 0; i < n; ++i) {
        Pose& p = poses[i];
        const Vec2 ears = p.middle(Landmark::lead_ear, Landmark::trail_ear);
        const Vec2 neck = p.midShoulder();
        const double reach = base::length(ears - neck);
        if (reach < 0.03 * stature) {
            continue;
        }
        const Vec2 up = (ears - neck) / reach;
        const double sigma = (p[Landmark::lead_ear]->sigma + p[Landmark::trail_ear]->sigma) / 2;
        Vec2 centre = ears;
        if (const auto head = detail::headOutline(seen[i], ears, up, stature)) {
            const Vec2 across{-up.y, up.x};
            // Across the head the outline's middle, along it the ears: hair and hats lengthen the outline
            // upward.
            const Vec2 middle = base::midpoint(head->left, head->right);
            // At the top hands and arms lie at the head's edge: then the ears tell more.
            const double clear = 0.075 * stature;
            const bool arms = std::any_of(kArms.begin(), kArms.end(), [&](Landmark l) {
                return std::min(base::length(p[l]->at - head->left), base::length(p[l]->at - head->right)) <
                       clear;
            });
            if (!faceOn) {
                centre = ears + across * ((arms ? 0.25 : 0.65) * base::dot(middle - ears, across));
            }
            p[Landmark::head_crown] = detail::Sample{time[i], head->crown, sigma};
            // Face-on: front = toward the target; down-the-line: front = toward the ball.
            p[Landmark::head_front] = detail::Sample{time[i], side > 0 ? head->right : head->left, sigma};
            p[Landmark::head_back] = detail::Sample{time[i], side > 0 ? head->left : head->right, sigma};
        }
        if (faceOn) {
            centre.x = headsX[i];
        }
        p[Landmark::head_centre] = detail::Sample{time[i], centre, sigma};
    }

    // -- stature, while standing at the ball: from the crown (hats and hair lengthen it) and from the middle
    // of the head (the ears sit a little below it), the mean of both
    {
        std::vector<double> told;
        for (std::size_t i = 0; i < n; ++i) {
            if (!atRest(i) || !poses[i][Landmark::head_centre]) {
                continue;
            }
            const double ankles = poses[i].middle(Landmark::lead_ankle, Landmark::trail_ankle).y;
            const double byMiddle =
                (ankles - poses[i][Landmark::head_centre]->at.y) / (kAnkleToCrown - 0.065 * 0.906);
            const auto& crown = poses[i][Landmark::head_crown];
            told.push_back(crown ? (byMiddle + (ankles - crown->at.y) / kAnkleToCrown) / 2 : byMiddle);
        }
        if (!told.empty() && median(told) > 0) {
            stature = median(told);
            out.stature = StatureEstimate{stature, 0.04 * stature};
        }
    }
    if (course.still) {
        out.still = base::Seconds{*course.still / real};
    }

    // -- pelvis, face-on: across the picture the outline's middle
    std::vector<std::optional<detail::PelvisMiddle>> pelvis(n);
    if (faceOn) {
        std::vector<detail::PelvisLook> looks(n);
        for (std::size_t i = 0; i < n; ++i) {
            const Pose& p = poses[i];
            looks[i] = {time[i],   &seen[i],        p.midHip(),
                        p.hands(), p.midShoulder(), p.middle(Landmark::lead_knee, Landmark::trail_knee),
                        {}};
            for (const auto& [shoulder, elbow, wrist] :
                 {std::tuple{Landmark::lead_shoulder, Landmark::lead_elbow, Landmark::lead_wrist},
                  std::tuple{Landmark::trail_shoulder, Landmark::trail_elbow, Landmark::trail_wrist}}) {
                for (const auto& [a, b] : {std::pair{shoulder, elbow}, std::pair{elbow, wrist},
                                           std::pair{wrist, Landmark::grip}}) {
                    looks[i].arms.push_back({p[a]->at, p[b]->at, 0.0});
                }
                looks[i].arms.push_back(handOf(p, elbow, wrist, 0.0));
            }
        }
        pelvis = detail::pelvisMiddles(looks, stature);
    }

    // -- trunk: the silhouette corrects where the network pulls the shoulders
    std::vector<detail::TrunkShape> shapes(n);
    std::vector<double> span;
    for (std::size_t i = 0; i < n; ++i) {
        const Pose& p = poses[i];
        // Face-on both arms hang before the trunk and widen it evenly; leaving one out would tilt the line.
        std::vector<detail::Limb> arms;
        for (const auto& [shoulder, elbow, wrist] :
             {std::tuple{Landmark::lead_shoulder, Landmark::lead_elbow, Landmark::lead_wrist},
              std::tuple{Landmark::trail_shoulder, Landmark::trail_elbow, Landmark::trail_wrist}}) {
            // The first part of the upper arm covers the shoulder, which belongs to the trunk.
            const Vec2 start = p[shoulder]->at + (p[elbow]->at - p[shoulder]->at) * 0.35;
            arms.push_back({start, p[elbow]->at, 0.05 * stature});
            arms.push_back({p[elbow]->at, p[wrist]->at, 0.045 * stature});
        }
        if (faceOn) {
            arms.clear();
        }
        shapes[i] = detail::trunkShape(seen[i], p.midHip(), p.midShoulder(), arms);
        if (!faceOn) {
            // The middle needs both edges at every height: better with an arm in it than with too few
            // heights.
            shapes[i].middle = detail::trunkShape(seen[i], p.midHip(), p.midShoulder(), {}).middle;
        }
        if (atRest(i)) {
            span.push_back(base::length(p[Landmark::lead_shoulder]->at - p[Landmark::trail_shoulder]->at));
        }
        if (const auto& m = shapes[i].middle) {
            const Vec2 low = p.midHip();
            const Vec2 high = p.midShoulder();
            const Vec2 axis = (high - low) / base::length(high - low);
            const Vec2 across{-axis.y, axis.x};
            out.trunk.push_back({seen[i].time, low + across * m->low, high + across * m->high,
                                 std::max(0.006 * stature, m->scatter)});
        }
    }
    const double openSpan = span.empty() ? 0.2 * stature : std::max(0.02 * stature, median(span));
    // Shoulder joints of a standing adult lie some 0.2 statures apart (0.22 to 0.23 over the acromions: Heinz
    // et al. 2003, J Stat Educ 11(2)). Much less, seen from the front, means that the network mixes the two
    // up.
    if (faceOn && out.stature && !span.empty() && openSpan < 0.14 * stature) {
        for (Pose& p : poses) {
            for (const Landmark l : {Landmark::lead_shoulder, Landmark::trail_shoulder}) {
                p.doubt[index(l)] = std::max(p.doubt[index(l)], (0.2 * stature - openSpan) / 2 / kDoubtShare);
            }
        }
        out.warnings.emplace_back(
            "The two shoulders could not be told apart well at address; mark them by hand.");
    }
    std::vector<double> turned(n, 0.0); // 0: as at address .. 1: shoulders edge-on
    for (std::size_t i = 0; i < n && faceOn; ++i) {
        const double now =
            base::length(poses[i][Landmark::lead_shoulder]->at - poses[i][Landmark::trail_shoulder]->at);
        turned[i] = std::clamp(1.3 * (1.0 - now / openSpan), 0.0, 1.0);
    }
    // Which outline speaks: face-on the middle line, down-the-line the back's edge (arms hang before the
    // chest).
    const auto line = [&](std::size_t i) -> const std::optional<detail::TrunkShape::Line>& {
        return faceOn ? shapes[i].middle : side > 0 ? shapes[i].left : shapes[i].right;
    };
    std::vector<double> highAtRest;
    std::vector<double> lowAtRest;
    for (std::size_t i = 0; i < n; ++i) {
        if (atRest(i) && line(i)) {
            highAtRest.push_back(line(i)->high);
            lowAtRest.push_back(line(i)->low);
        }
    }
    // Face-on the middle of the shoulders: the network's, whose bias grows as the shoulders turn away, and
    // the trunk's middle line where the arms leave it free.
    std::vector<double> shouldersX;
    if (faceOn) {
        std::vector<detail::TwoTold> looks(n);
        for (std::size_t i = 0; i < n; ++i) {
            const Pose& p = poses[i];
            const Vec2 shoulders = p.midShoulder();
            std::vector<double> around; // the network's spans jump from look to look
            for (std::size_t k = i < 2 ? 0 : i - 2; k < std::min(n, i + 3); ++k) {
                around.push_back(turned[k]);
            }
            looks[i] = {time[i], shoulders.x, (kOpenBias + kTurnedBias * median(around)) * stature,
                        std::nullopt};
            std::vector<detail::Limb> limbs;
            for (const auto& [shoulder, elbow, wrist] :
                 {std::tuple{Landmark::lead_shoulder, Landmark::lead_elbow, Landmark::lead_wrist},
                  std::tuple{Landmark::trail_shoulder, Landmark::trail_elbow, Landmark::trail_wrist}}) {
                const Vec2 start = p[shoulder]->at + (p[elbow]->at - p[shoulder]->at) * 0.35;
                limbs.push_back({start, p[elbow]->at, 0.05 * stature});
                limbs.push_back({p[elbow]->at, p[wrist]->at, 0.05 * stature});
                limbs.push_back(handOf(p, elbow, wrist, 0.05 * stature));
            }
            if (const auto top = detail::trunkTop(seen[i], p.midHip(), shoulders, limbs, stature)) {
                looks[i].outline = detail::TwoTold::Outline{top->x, top->sigma};
            }
        }
        shouldersX = detail::carryMiddle(
            looks, {kShouldersGrain * stature, kBiasLasts, kShouldersJerk * stature * stature});
    }
    const double hipsUp = faceOn ? hipsTooLow(poses, atRest) : 0.0;
    for (std::size_t i = 0; i < n && (faceOn || !highAtRest.empty()); ++i) {
        Pose& p = poses[i];
        const Vec2 hips = p.midHip();
        const Vec2 shoulders = p.midShoulder();
        const double length = base::length(shoulders - hips);
        if (length < 0.1 * stature) {
            continue;
        }
        const Vec2 axis = (shoulders - hips) / length;
        const Vec2 across{-axis.y, axis.x};
        Vec2 high, low;
        if (faceOn) {
            high = {shouldersX[i] - shoulders.x, 0.0};
            low = {pelvis[i] ? pelvis[i]->x - hips.x : 0.0, -hipsUp};
        } else if (line(i)) {
            // The trunk's direction is the back's; how far the joints lie before the back is kept from the
            // hips. With the hands high the turned chest and the folded trail arm spoil the back's edge, but
            // no arm hangs before the chest any more: there the middle line tells more.
            double direction = line(i)->high - line(i)->low;
            if (const auto& m = shapes[i].middle) {
                const double handsUp = std::clamp((hips.y - p.hands().y) / (0.25 * stature), 0.0, 1.0);
                direction += handsUp * (m->high - m->low - direction);
            }
            const double atRestDirection = median(highAtRest) - median(lowAtRest);
            high = across * (kBackShare * direction + (1 - kBackShare) * (direction - atRestDirection));
        }
        for (const Landmark l : {Landmark::lead_shoulder, Landmark::trail_shoulder}) {
            p[l]->at = p[l]->at + high;
        }
        for (const Landmark l : {Landmark::lead_hip, Landmark::trail_hip}) {
            if (pelvis[i]) {
                // Less of the outline seen than both edges: the joints are as much less sure as their middle.
                const double more =
                    std::max(0.0, pelvis[i]->sigma * pelvis[i]->sigma - 25e-6 * stature * stature);
                p.doubt[index(l)] = std::hypot(p.doubt[index(l)], std::sqrt(more) / 0.25 / kDoubtShare);
            }
            p[l]->at = p[l]->at + low;
        }
    }

    // -- shoulders, face-on: about their middle as the arms swing
    if (faceOn && course.still && course.fast) {
        // Until the fastest hands they hang down or are up on the trail side, after it on the other.
        std::vector<double> arms(n);
        for (std::size_t i = 0; i < n; ++i) {
            const Vec2 arm = poses[i].hands() - poses[i].midShoulder();
            const double middle = time[i] < *course.fast ? 100.0 : -100.0;
            const double angle = std::atan2(-side * arm.x, arm.y) * 180.0 / std::numbers::pi;
            arms[i] = middle + std::remainder(angle - middle, 360.0);
        }
        std::size_t highest = 0;
        double most = -1e9;
        for (std::size_t i = 0; i < n; ++i) {
            if (time[i] > *course.still && time[i] < *course.fast && arms[i] > most) {
                most = arms[i], highest = i;
            }
        }
        bool folded = false; // for good: later the hands may come down behind the neck
        for (std::size_t i = 0; i < n; ++i) {
            Pose& p = poses[i];
            const Vec2 middle = p.midShoulder();
            const Vec2 trunk = middle - p.midHip();
            // Up on the target side the trunk rises and the arms fold about the neck: then they tell nothing.
            folded = folded || arms[i] < -kArmsFold;
            const double tells = folded ? 0.0 : std::clamp((kArmsFold + arms[i]) / 50.0, 0.0, 1.0);
            if (time[i] < *course.still || base::length(trunk) < 0.1 * stature || tells == 0.0) {
                continue;
            }
            const Vec2 seenSpan = p[Landmark::lead_shoulder]->at - p[Landmark::trail_shoulder]->at;
            const Vec2 told =
                shoulderSpan(seenSpan, trunk, turnByArms(arms[i], i > highest), openSpan, side, stature);
            const Vec2 half = (seenSpan + (told - seenSpan) * tells) * 0.5;
            p[Landmark::lead_shoulder]->at = middle + half;
            p[Landmark::trail_shoulder]->at = middle - half;
        }
    }

    // -- what follows from the corrected joints
    for (std::size_t i = 0; i < n; ++i) {
        Pose& p = poses[i];
        if (p[Landmark::head_centre]) {
            const Vec2 shoulders = p.midShoulder();
            p[Landmark::neck_base] =
                detail::Sample{time[i], shoulders + (p[Landmark::head_centre]->at - shoulders) * 0.3,
                               (p[Landmark::lead_shoulder]->sigma + p[Landmark::trail_shoulder]->sigma) / 2};
        }
        if (!faceOn) {
            if (const auto edge =
                    detail::pelvisEdge(seen[i], p.midHip(), -side, 0.06 * stature, 0.3 * stature)) {
                p[Landmark::pelvis_rear] =
                    detail::Sample{time[i], *edge, seen[i].region.size / Silhouette::kRows};
            }
        }
    }

    // -- every landmark into every frame
    std::vector<double> frameTime(times.size());
    for (std::size_t i = 0; i < times.size(); ++i) {
        frameTime[i] = times[i].value() * real;
    }
    std::optional<double> cut = course.fast;
    if (timing.impact) {
        cut = timing.impact->value() * real;
    }
    std::vector<double> gapTo(times.size(), 1e9); // to the nearest observation
    std::vector<double> turnedAt(times.size(), 0.0);
    std::vector<bool> looked(times.size(), false);
    std::vector<std::size_t> nearest(times.size(), 0);
    for (std::size_t i = 0, k = 0; i < times.size(); ++i) {
        while (k + 1 < n && std::abs(time[k + 1] - frameTime[i]) <= std::abs(time[k] - frameTime[i])) {
            ++k;
        }
        gapTo[i] = std::abs(time[k] - frameTime[i]);
        nearest[i] = k;
        turnedAt[i] = turned[k];
        looked[i] = static_cast<std::size_t>(seen[k].frame) == i;
        const std::size_t next = time[k] < frameTime[i] && k + 1 < n ? k + 1
                                 : k > 0 && time[k] > frameTime[i]   ? k - 1
                                                                     : k;
        const base::Box& a = seen[k].box;
        const base::Box& b = seen[next].box;
        if (gapTo[i] < 0.2) {
            const double left = std::min(a.x, b.x);
            const double top = std::min(a.y, b.y);
            out.boxes[i] = {left, top, std::max(a.x + a.width, b.x + b.width) - left,
                            std::max(a.y + a.height, b.y + b.height) - top};
        }
    }
    for (std::size_t l = 0; l < marks::kLandmarkCount; ++l) {
        std::vector<detail::Sample> samples;
        for (const Pose& p : poses) {
            if (p.points[l]) {
                samples.push_back(*p.points[l]);
            }
        }
        const auto landmark = static_cast<Landmark>(l);
        detail::SmoothOptions options;
        options.reach = reachOf(landmark);
        if (joltedByImpact(landmark)) {
            options.cut = cut;
        }
        const auto smoothed = detail::smooth(samples, frameTime, options);
        const Error error = errorOf(landmark);
        const bool lead = marks::landmarkName(landmark).starts_with("lead_"); // down-the-line the far side
        for (std::size_t i = 0; i < times.size(); ++i) {
            if (!smoothed[i]) {
                continue;
            }
            const auto& sample = poses[nearest[i]].points[l];
            const double usual = usualSpread(landmark, faceOn) * seen[nearest[i]].region.size;
            const double worse = sample ? std::max(1.0, sample->sigma / usual) : 1.0;
            const double own = worse * stature *
                               (faceOn ? error.open + (error.turned - error.open) * turnedAt[i]
                                : lead ? error.far
                                       : error.near);
            const double far =
                0.3 * stature * std::max(0.0, gapTo[i] - 0.02); // what it may do between two looks
            const double doubt = kDoubtShare * poses[nearest[i]].doubt[l];
            const double sigma = std::sqrt(own * own + 0.25 * smoothed[i]->sigma * smoothed[i]->sigma +
                                           far * far + doubt * doubt + kGrain * kGrain);
            out.track[i][landmark] =
                marks::Mark{smoothed[i]->at, std::max(0.5, sigma),
                            looked[i] ? base::Origin::network : base::Origin::interpolated};
        }
    }
    if (faceOn && swingsTheOtherWay(poses, time, course, side, stature)) {
        out.warnings.emplace_back(
            "The hands go back on the target side: this clip is a mirror image, or the player swings from "
            "the "
            "other side. Tell which, and measure again; until then the numbers are not to be trusted.");
    }
    if (n < 3) {
        out.warnings.emplace_back("The player was seen in very few frames; place the marks by hand.");
    }
    return out;
}

marks::Track bodyTrack(std::span<const Observation> observations, std::span<const base::Seconds> times,
                       const marks::ShotContext& context, const marks::HandMarks& handMarks,
                       const Timing& timing) {
    return applyHandMarks(autoTrack(observations, times, context, timing).track, handMarks, timing);
}

} // namespace plumbmark::body
