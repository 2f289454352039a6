// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "measure/probe.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "body/track.h"

namespace plumbmark::measure {
namespace {

using base::Vec2;
using marks::Landmark;
using marks::MomentId;

constexpr double kDegree = std::numbers::pi / 180.0;
constexpr int kReach = 3; // frames either side that may stand in for a missing mark

// Assumptions about what one picture does not show; each has its line in docs/measurements.md.
constexpr double kUnknownDistanceStatures = 2.57; // 4.5 m for 1.75 m
constexpr double kPitchSigma = 3.0;               // degrees: a camera levelled by eye along its line of sight
constexpr std::uint64_t kWholeClip = 998;         // slot of what is the same at every moment
// A mark's one sigma is that of both axes together. Seen from the front an ankle stands between two clear
// edges of a narrow leg, so it errs little sideways; where along the leg it lies is the network's habit, and
// errs more. Shoulders end in an edge sideways, too.
constexpr double kAnkleSideways = 0.6, kAnkleAlong = 1.6, kShoulderSideways = 0.75;
// Error of a lead/trail pair's middle against that of one of them; measured on development swings.
constexpr double kHipsSideways = 0.20, kShouldersSideways = 0.29, kMiddleHeight = 0.87;
constexpr double kShouldersFromBehind =
    0.22; // down-the-line, where the near shoulder's arm hides the far one
/// What one joint's sigma holds beyond this many statures counts so much in the middle; that of shoulders
/// turned away from a camera in front more, because they are held together about a middle that strays itself.
constexpr double kPairUsual = 0.024, kMiddleBeyond = 0.15, kShouldersUsual = 0.018, kShouldersBeyond = 0.6;
/// Share of it that lasts through the clip: in height as much as a single joint's; sideways hardly any,
/// because there the middle is the silhouette's, whose edges err anew with every pose.
constexpr double kMiddleCommonShare = 0.70, kHeldCommonShare = 0.25;
constexpr double kShaftPlane = 58.0; // degrees to the ground; driver about 50, wedge about 63
constexpr double kHipJoints = 0.10, kHipJointsSigma = 0.010;

enum class Group : std::uint64_t { head, shoulder, elbow, hand, hip, knee, ankle, foot, front, ground };

Group groupOf(Landmark l) {
    switch (l) {
    case Landmark::nose:
    case Landmark::head_centre:
    case Landmark::head_crown:
    case Landmark::head_front:
    case Landmark::head_back:
    case Landmark::lead_ear:
    case Landmark::trail_ear:
        return Group::head;
    case Landmark::neck_base:
    case Landmark::lead_shoulder:
    case Landmark::trail_shoulder:
        return Group::shoulder;
    case Landmark::lead_elbow:
    case Landmark::trail_elbow:
        return Group::elbow;
    case Landmark::lead_wrist:
    case Landmark::trail_wrist:
    case Landmark::grip:
    case Landmark::club_butt:
    case Landmark::club_head:
    case Landmark::leading_edge:
        return Group::hand;
    case Landmark::lead_hip:
    case Landmark::trail_hip:
    case Landmark::pelvis_rear:
        return Group::hip;
    case Landmark::lead_knee:
    case Landmark::trail_knee:
        return Group::knee;
    case Landmark::lead_ankle:
    case Landmark::trail_ankle:
        return Group::ankle;
    case Landmark::lead_heel:
    case Landmark::trail_heel:
    case Landmark::lead_toe:
    case Landmark::trail_toe:
        return Group::foot;
    case Landmark::belt_buckle:
    case Landmark::sternum:
        return Group::front;
    default:
        return Group::ground;
    }
}

bool isLead(Landmark l) {
    return l == Landmark::lead_shoulder || l == Landmark::lead_hip || l == Landmark::lead_ankle ||
           l == Landmark::lead_knee || l == Landmark::lead_elbow || l == Landmark::lead_ear ||
           l == Landmark::lead_heel || l == Landmark::lead_toe || l == Landmark::lead_wrist;
}
bool isTrail(Landmark l) {
    return l == Landmark::trail_shoulder || l == Landmark::trail_hip || l == Landmark::trail_ankle ||
           l == Landmark::trail_knee || l == Landmark::trail_elbow || l == Landmark::trail_ear ||
           l == Landmark::trail_heel || l == Landmark::trail_toe || l == Landmark::trail_wrist;
}

/// Rough axial turn at a moment, degrees (- away): only to guess which side of a pair is nearer the lens.
double usualTurn(MomentId m) {
    switch (m) {
    case MomentId::shaft_level_back:
        return -25;
    case MomentId::lead_arm_level_back:
        return -60;
    case MomentId::pelvis_starts_forward:
    case MomentId::top:
        return -90;
    case MomentId::lead_arm_level_down:
        return -50;
    case MomentId::shaft_level_down:
        return -10;
    case MomentId::impact:
        return 25;
    case MomentId::release:
        return 45;
    case MomentId::shaft_level_through:
        return 55;
    case MomentId::finish:
        return 90;
    case MomentId::address:
        break;
    }
    return 0;
}

Depth faceOnDepth(Landmark l, std::optional<MomentId> moment) {
    const double turn = moment ? usualTurn(*moment) : 0.0;
    const double side = isLead(l) ? 1.0 : isTrail(l) ? -1.0 : 0.0;
    const double away = std::sin(-turn * kDegree); // + : the lead side comes nearer the lens
    switch (groupOf(l)) {
    case Group::head: // about 0.35 m nearer the lens than the ankles (domain contract)
        return {l == Landmark::nose ? 0.21 : 0.19, 0.05};
    case Group::shoulder:
        return {0.09 + side * 0.085 * away, side == 0.0 ? 0.05 : 0.06};
    case Group::elbow:
        return {0.15, 0.08};
    case Group::hand:
        return {0.22, 0.08};
    case Group::hip:
        return {-0.05 + side * 0.04 * away * (turn < 0 ? 0.7 : 1.0), 0.04};
    case Group::knee:
        return {0.03, 0.04};
    case Group::ankle:
        return {0.0, 0.01};
    case Group::foot:
        if (moment == MomentId::finish && (l == Landmark::trail_heel || l == Landmark::trail_toe)) {
            return {l == Landmark::trail_toe ? 0.08 : 0.05, 0.03}; // on its toes the heel stands over them
        }
        return {l == Landmark::lead_toe || l == Landmark::trail_toe ? 0.11 : -0.03, 0.02};
    case Group::front:
        return {l == Landmark::sternum ? 0.16 : 0.02, 0.05};
    case Group::ground:
        break;
    }
    return {0.45, 0.10};
}

/// Down-the-line the camera stands on the trail side: toward it is away from the target.
Depth downTheLineDepth(Landmark l, std::optional<MomentId> moment) {
    const double turn = moment ? usualTurn(*moment) : 0.0;
    const double side = isLead(l) ? -1.0 : isTrail(l) ? 1.0 : 0.0;
    const double square = std::cos(turn * kDegree);
    const bool late = moment && *moment >= MomentId::lead_arm_level_down && *moment <= MomentId::release;
    const double back = late ? 0.05 : moment && *moment == MomentId::top ? 0.02 : 0.01; // trunk tilted away
    switch (groupOf(l)) {
    case Group::head:
        return {back, 0.05};
    case Group::shoulder:
        return {back + side * 0.10 * square, 0.05};
    case Group::hip:
        return {(late ? -0.05 : 0.0) + side * 0.05, 0.03};
    case Group::knee:
        return {side * 0.09, 0.04};
    case Group::ankle:
    case Group::foot:
        return {side * 0.12, 0.03};
    case Group::elbow:
        return {side * 0.06, 0.10};
    case Group::hand:
        return {0.0, 0.12};
    case Group::front:
        return {back, 0.05};
    case Group::ground:
        break;
    }
    return {0.0, 0.10};
}

/// Places of the enclosing frames that hold the landmark, at most kReach frames away.
struct Enclosing {
    int left = -1, right = -1;
};

Enclosing enclosing(const marks::Track& track, Landmark l, base::Seconds time) {
    Enclosing e;
    if (track.empty()) {
        return e;
    }
    const int here = static_cast<int>(marks::frameAt(track, time));
    const int last = static_cast<int>(track.size()) - 1;
    for (int i = here; i >= std::max(0, here - kReach) && e.left < 0; --i) {
        if (track[static_cast<std::size_t>(i)][l]) {
            e.left = i;
        }
    }
    for (int i = here + 1; i <= std::min(last, here + 1 + kReach) && e.right < 0; ++i) {
        if (track[static_cast<std::size_t>(i)][l]) {
            e.right = i;
        }
    }
    return e;
}

double frameGap(const marks::Track& track) {
    if (track.size() < 2) {
        return 1.0 / 30.0;
    }
    return (track.back().time - track.front().time).value() / static_cast<double>(track.size() - 1);
}

} // namespace

Depth depthOf(Landmark landmark, marks::View view, std::optional<MomentId> moment) {
    return view == marks::View::faceOn ? faceOnDepth(landmark, moment) : downTheLineDepth(landmark, moment);
}

Depth ballDepth(const marks::ShotContext& context) {
    if (context.view == marks::View::downTheLine) {
        return {0.0, 0.06};
    }
    if (!context.club) {
        return {0.45, 0.07};
    }
    switch (
        context.club->kind) { // longer clubs push the ball away; from club length and lie (common practice)
    case marks::ClubKind::driver:
        return {0.54, 0.05};
    case marks::ClubKind::wood:
        return {0.50, 0.05};
    case marks::ClubKind::hybrid:
        return {0.46, 0.05};
    case marks::ClubKind::iron:
        return {0.44, 0.05};
    case marks::ClubKind::wedge:
        return {0.40, 0.05};
    case marks::ClubKind::putter:
        return {0.30, 0.06};
    }
    return {0.45, 0.07};
}

Probe::Probe(const Input& input) : input_(&input) {}

double Probe::noise(std::uint64_t key, double sigma, double step) {
    if (!(sigma > 0.0)) {
        return 0.0;
    }
    step = std::max(step, sigma);
    if (recording_) {
        if (std::none_of(sources_.begin(), sources_.end(), [key](const Source& s) { return s.key == key; })) {
            sources_.push_back({key, sigma, step});
        }
        return 0.0;
    }
    return key == moved_ ? movedBy_ * step : 0.0;
}

std::nullopt_t Probe::fail(std::string reason) {
    if (reason_.empty()) {
        reason_ = std::move(reason);
    }
    return std::nullopt;
}

std::optional<base::Seconds> Probe::time(MomentId id) {
    const marks::Moment* m = marks::find(input_->moments, id);
    if (m == nullptr) {
        return fail("The moment \"" + words(id) + "\" was not found in this clip; mark it by hand.");
    }
    // The slope is read over at least a frame: between two frames the marks' own noise would pose as motion.
    return m->time + base::Seconds{noise(keyOf(Kind::time, static_cast<std::uint64_t>(id)), m->sigma.value(),
                                         frameGap(input_->track))};
}

std::optional<base::Seconds> Probe::between(MomentId from, MomentId to, double share) {
    const auto a = time(from);
    const auto b = time(to);
    if (!a || !b) {
        return std::nullopt;
    }
    return *a + (*b - *a) * share;
}

std::optional<Probe::Raw> Probe::rawAt(Landmark landmark, base::Seconds time) const {
    const auto& track = input_->track;
    const auto e = enclosing(track, landmark, time);
    const auto& ground = input_->scene.ground;
    const auto read = [&](int i) {
        const auto& m = *track[static_cast<std::size_t>(i)][landmark];
        return Raw{ground.toReference(i, m.at), m.sigma, m.origin, i};
    };
    if (e.left < 0 && e.right < 0) {
        return std::nullopt;
    }
    if (e.left < 0 || e.right < 0) {
        const int only = e.left < 0 ? e.right : e.left;
        const double off = std::abs((track[static_cast<std::size_t>(only)].time - time).value());
        if (off > 1.01 * frameGap(track)) {
            return std::nullopt;
        }
        return read(only);
    }
    const Raw a = read(e.left);
    const double ta = track[static_cast<std::size_t>(e.left)].time.value();
    const double tb = track[static_cast<std::size_t>(e.right)].time.value();
    const double k = std::clamp((time.value() - ta) / (tb - ta), 0.0, 1.0);
    if (k == 0.0) {
        return a;
    }
    const Raw b = read(e.right);
    // Neighbouring frames err together, so interpolating does not shrink the sigma; and between them the
    // point ran on a curve, of which a tenth of the chord is a generous sagitta.
    const double sagitta = 0.1 * base::length(b.reference - a.reference) * 4.0 * k * (1.0 - k);
    return Raw{a.reference + (b.reference - a.reference) * k,
               std::hypot(a.sigma + (b.sigma - a.sigma) * k, sagitta), std::max(a.origin, b.origin), a.frame};
}

Vec2 Probe::level(Vec2 inPicture, int frame, double depth, double depthSigma, std::uint64_t depthKey) {
    return levelReference(input_->scene.ground.toReference(frame, inPicture), depth, depthSigma, depthKey);
}

Vec2 Probe::levelReference(Vec2 p, double depth, double depthSigma, std::uint64_t depthKey) {
    const auto& scene = input_->scene;
    const double focal = scene.focal();
    const double angle =
        (scene.vertical.angleDegrees + noise(keyOf(Kind::vertical, 0), scene.vertical.sigmaDegrees)) *
        kDegree;
    const Vec2 right{std::cos(angle), std::sin(angle)};
    const Vec2 up{std::sin(angle), -std::cos(angle)};
    const Vec2 fromAxis = p - Vec2{scene.width / 2.0, scene.height / 2.0};
    double u = base::dot(fromAxis, right);
    double v = base::dot(fromAxis, up);

    // A camera looking up or down by a little makes verticals off the axis converge.
    const double pitch = noise(keyOf(Kind::pitch, 0), kPitchSigma) * kDegree;
    u *= 1.0 + v * std::tan(pitch) / focal;
    const double horizon = focal * std::tan(pitch);

    // Depth in statures becomes a magnification through the distance in statures.
    double distance = kUnknownDistanceStatures;
    double distanceSigma = 0.15;
    const double stature = scene.scale.pixelsPerStature;
    if (scene.distanceMetres && input_->context.statureMetres) {
        distance = *scene.distanceMetres / *input_->context.statureMetres;
        distanceSigma = 0.04;
    } else if (stature > 0.0) {
        distance = focal / stature;
        distanceSigma = std::hypot(scene.focalRelativeSigma(), scene.scale.relativeSigma);
    } else if (scene.distanceMetres) {
        distance = *scene.distanceMetres / 1.75;
        distanceSigma = 0.08;
    }
    distance *= 1.0 + noise(keyOf(Kind::distance, 0), distanceSigma);
    distance = std::max(distance, 0.8);
    const double d = std::clamp(depth + noise(depthKey, depthSigma), -0.6 * distance, 0.6 * distance);
    const double shrink = 1.0 - d / distance;
    u *= shrink;
    v = horizon + (v - horizon) * shrink;

    // Seen from a camera turned off square, depth shows as a sideways shift.
    const double yaw = (scene.yawDegrees + noise(keyOf(Kind::yaw, 0), scene.yawSigmaDegrees)) * kDegree;
    const double perStature = stature > 0.0 ? stature : focal / distance;
    u -= d * perStature * std::tan(yaw);
    return {u * input_->context.sideSign(), v};
}

std::optional<Vec2> Probe::at(Landmark landmark, base::Seconds time, int slot,
                              std::optional<MomentId> depthAs) {
    const auto raw = rawAt(landmark, time);
    if (!raw) {
        return std::nullopt;
    }
    use(raw->origin);
    const auto what = static_cast<std::uint64_t>(landmark);
    const auto s = static_cast<std::uint64_t>(slot);
    const double ground = input_->scene.ground.steps().empty() ? 0.0 : input_->scene.ground.sigmaPixels();
    Vec2 p = raw->reference;
    // The software's marks err in the same way all through a clip (body/track.h says how much of the variance
    // that is); a person's marks and the tracked club do not.
    const bool networkMark =
        raw->origin == base::Origin::network || raw->origin == base::Origin::interpolated;
    if (quietMarks_) {
        const Depth still = depthOf(landmark, input_->context.view, depthAs);
        const auto part = static_cast<std::uint64_t>(groupOf(landmark));
        const double remains = noise(keyOf(Kind::depth, part, 999), 0.8 * still.sigma);
        return levelReference(p, still.mean + remains, 0.6 * still.sigma, keyOf(Kind::depth, part, s));
    }
    const double share = networkMark ? body::kCommonShare : 0.0;
    const double common = std::sqrt(share) * raw->sigma, own = std::sqrt(1.0 - share) * raw->sigma;
    double sideways = 1.0, along = 1.0;
    if (networkMark && faceOn()) {
        const Group group = groupOf(landmark);
        sideways = group == Group::ankle      ? kAnkleSideways
                   : group == Group::shoulder ? kShoulderSideways
                                              : 1.0;
        along = group == Group::ankle ? kAnkleAlong : 1.0;
    }
    p.x += noise(keyOf(Kind::markX, what, kWholeClip), sideways * common) +
           noise(keyOf(Kind::markX, what, s), sideways * own) + noise(keyOf(Kind::ground, 0, s), ground);
    p.y += noise(keyOf(Kind::markY, what, kWholeClip), along * common) +
           noise(keyOf(Kind::markY, what, s), along * own) + noise(keyOf(Kind::ground, 1, s), ground);
    const Depth depth = depthOf(landmark, input_->context.view, depthAs);
    const auto group = static_cast<std::uint64_t>(groupOf(landmark));
    // What a player's build shifts stays through the swing; a part changes from moment to moment.
    const double lasting = noise(keyOf(Kind::depth, group, 999), 0.8 * depth.sigma);
    return levelReference(p, depth.mean + lasting, 0.6 * depth.sigma, keyOf(Kind::depth, group, s));
}

std::optional<Vec2> Probe::tryAt(Landmark landmark, MomentId moment) {
    const auto t = time(moment);
    if (!t) {
        return std::nullopt;
    }
    return at(landmark, *t, static_cast<int>(moment), moment);
}

std::optional<Vec2> Probe::at(Landmark landmark, MomentId moment) {
    const auto t = time(moment);
    if (!t) {
        return std::nullopt;
    }
    const auto p = at(landmark, *t, static_cast<int>(moment), moment);
    if (!p) {
        return fail("The " + words(landmark) + " could not be seen at \"" + words(moment) +
                    "\"; mark it by hand in that frame.");
    }
    return p;
}

std::optional<Vec2> Probe::mid(Landmark lead, Landmark trail, base::Seconds time, int slot,
                               std::optional<MomentId> depthAs) {
    const auto ra = rawAt(lead, time);
    const auto rb = rawAt(trail, time);
    const bool automatic = ra && rb && ra->origin != base::Origin::hand && rb->origin != base::Origin::hand;
    quietMarks_ = automatic;
    const auto a = at(lead, time, slot, depthAs);
    const auto b = at(trail, time, slot, depthAs);
    quietMarks_ = false;
    if (!a || !b) {
        return std::nullopt;
    }
    Vec2 m = base::midpoint(*a, *b);
    if (automatic) {
        // The two do not err alone: sideways the silhouette's middle line holds the middle of hips and
        // shoulders while each joint strays, so their errors oppose each other; in height they err together.
        const bool held = lead == Landmark::lead_hip || lead == Landmark::lead_shoulder;
        const double each = std::sqrt((ra->sigma * ra->sigma + rb->sigma * rb->sigma) / 2.0);
        const auto what = static_cast<std::uint64_t>(lead);
        const auto s = static_cast<std::uint64_t>(slot);
        const double shareX = held ? kHeldCommonShare : kMiddleCommonShare;
        const double lasting = std::sqrt(shareX), own = std::sqrt(1.0 - shareX);
        const double lastingY = std::sqrt(kMiddleCommonShare), ownY = std::sqrt(1.0 - kMiddleCommonShare);
        // Turned away, the two shoulders hide each other and stray apart by as much: little of that is left
        // in their middle.
        const bool shouldersInFront = lead == Landmark::lead_shoulder && faceOn();
        const double usual =
            (shouldersInFront ? kShouldersUsual : kPairUsual) * input_->scene.scale.pixelsPerStature;
        const double beyond = usual > 0.0 ? std::max(0.0, each - usual) : 0.0;
        const double x = held ? (lead == Landmark::lead_hip ? kHipsSideways
                                 : faceOn()                 ? kShouldersSideways
                                                            : kShouldersFromBehind) *
                                        (each - beyond) +
                                    (shouldersInFront ? kShouldersBeyond : kMiddleBeyond) * beyond
                              : each * kMiddleHeight;
        const double y = each * kMiddleHeight;
        m.x += noise(keyOf(Kind::pair, 2 * what, kWholeClip), lasting * x) +
               noise(keyOf(Kind::pair, 2 * what, s), own * x);
        m.y += noise(keyOf(Kind::pair, 2 * what + 1, kWholeClip), lastingY * y) +
               noise(keyOf(Kind::pair, 2 * what + 1, s), ownY * y);
    }
    return m;
}

std::optional<Vec2> Probe::mid(Landmark lead, Landmark trail, MomentId moment) {
    const auto t = time(moment);
    if (!t || !at(lead, moment) || !at(trail, moment)) {
        return std::nullopt;
    }
    return mid(lead, trail, *t, static_cast<int>(moment), moment);
}

std::optional<Vec2> Probe::midHip(MomentId m) {
    return mid(Landmark::lead_hip, Landmark::trail_hip, m);
}
std::optional<Vec2> Probe::midShoulder(MomentId m) {
    return mid(Landmark::lead_shoulder, Landmark::trail_shoulder, m);
}

std::optional<Vec2> Probe::head(base::Seconds time, int slot, std::optional<MomentId> depthAs) {
    if (const auto c = at(Landmark::head_centre, time, slot, depthAs)) {
        return c;
    }
    if (const auto m = mid(Landmark::lead_ear, Landmark::trail_ear, time, slot, depthAs)) {
        return m;
    }
    const auto f = at(Landmark::head_front, time, slot, depthAs);
    const auto b = at(Landmark::head_back, time, slot, depthAs);
    if (f && b) {
        return base::midpoint(*f, *b);
    }
    return std::nullopt;
}

std::optional<Vec2> Probe::head(MomentId m) {
    const auto t = time(m);
    if (!t) {
        return std::nullopt;
    }
    const auto p = head(*t, static_cast<int>(m), m);
    if (!p) {
        return fail("The head could not be seen at \"" + words(m) +
                    "\"; mark its centre by hand in that frame.");
    }
    return p;
}

std::optional<double> Probe::travel(MomentId moment, const Place& place, double Vec2::*along) {
    const auto before = place(*this, MomentId::address);
    const auto now = place(*this, moment);
    const auto size = stature();
    if (!before || !now || !size) {
        return std::nullopt;
    }
    return ((*now).*along - (*before).*along) / *size;
}

std::optional<Vec2> Probe::ball() {
    const auto depth = ballDepth(input_->context);
    const auto depthKey = keyOf(Kind::depth, static_cast<std::uint64_t>(Group::ground), 500);
    const auto address = marks::find(input_->moments, MomentId::address);
    const auto t = address != nullptr ? address->time : base::Seconds{0.0};
    // A hand mark is a fact and goes before what the software found.
    if (const auto raw = rawAt(Landmark::ball, t); raw && raw->origin == base::Origin::hand) {
        use(raw->origin);
        Vec2 p = raw->reference;
        p.x += noise(keyOf(Kind::ball, 0), raw->sigma);
        p.y += noise(keyOf(Kind::ball, 1), raw->sigma);
        return levelReference(p, depth.mean, depth.sigma, depthKey);
    }
    if (input_->ball) {
        use(base::Origin::tracked);
        Vec2 p = input_->ball->centre; // already in the reference picture
        p.x += noise(keyOf(Kind::ball, 0), input_->ball->sigma);
        p.y += noise(keyOf(Kind::ball, 1), input_->ball->sigma);
        return levelReference(p, depth.mean, depth.sigma, depthKey);
    }
    if (const auto raw = rawAt(Landmark::ball, t)) {
        use(raw->origin);
        Vec2 p = raw->reference;
        p.x += noise(keyOf(Kind::ball, 0), raw->sigma);
        p.y += noise(keyOf(Kind::ball, 1), raw->sigma);
        return levelReference(p, depth.mean, depth.sigma, depthKey);
    }
    return fail("No ball was found at address; mark the ball by hand, or film with the ball in the picture.");
}

std::optional<Probe::Shaft> Probe::shaft(base::Seconds time, int slot, std::optional<MomentId> depthAs) {
    const auto& shaft = input_->shaft;
    const auto& ground = input_->scene.ground;
    const int count = static_cast<int>(shaft.size());
    if (count == 0 || input_->track.empty()) {
        return std::nullopt;
    }
    const int here = std::min(static_cast<int>(marks::frameAt(input_->track, time)), count - 1);
    // At the hit the club's own fit is the shaft: read at a place, never at a time estimate.
    const bool atHit =
        input_->hit && slot == static_cast<int>(MomentId::impact) && depthAs == MomentId::impact;
    int left = -1, right = -1;
    for (int i = here; i >= std::max(0, here - kReach) && left < 0; --i) {
        if (shaft[static_cast<std::size_t>(i)]) {
            left = i;
        }
    }
    for (int i = here + 1; i <= std::min(count - 1, here + 1 + kReach) && right < 0; ++i) {
        if (shaft[static_cast<std::size_t>(i)]) {
            right = i;
        }
    }
    double k = 0.0;
    if (atHit) {
        left = right =
            std::min(static_cast<int>(marks::frameAt(input_->track, input_->hit->time)), count - 1);
    } else if (left < 0 && right < 0) {
        return std::nullopt;
    } else if (left < 0 || right < 0) {
        const int only = left < 0 ? right : left;
        if (std::abs((shaft[static_cast<std::size_t>(only)]->time - time).value()) >
            1.01 * frameGap(input_->track)) {
            return std::nullopt;
        }
        left = right = only;
    } else {
        const double ta = shaft[static_cast<std::size_t>(left)]->time.value();
        const double tb = shaft[static_cast<std::size_t>(right)]->time.value();
        k = std::clamp((time.value() - ta) / (tb - ta), 0.0, 1.0);
    }
    const auto& a = atHit ? input_->hit->shaft : *shaft[static_cast<std::size_t>(left)];
    const auto& b = atHit ? input_->hit->shaft : *shaft[static_cast<std::size_t>(right)];
    use(std::max(a.origin, b.origin));
    const double sigma = a.sigmaDegrees + (b.sigmaDegrees - a.sigmaDegrees) * k;
    const auto s = static_cast<std::uint64_t>(slot);
    // + noise turns the shaft counter-clockwise in the picture.
    const double angle =
        (a.angleDegrees + (b.angleDegrees - a.angleDegrees) * k + noise(keyOf(Kind::shaft, 0, s), sigma)) *
        kDegree;
    const Vec2 direction{std::sin(angle), std::cos(angle)};
    const auto blend = [&](Vec2 p, Vec2 q) {
        return ground.toReference(left, p) + (ground.toReference(right, q) - ground.toReference(left, p)) * k;
    };
    const Vec2 through = blend(a.through, b.through);
    const double stature = input_->scene.scale.pixelsPerStature;
    double reach = 0.45 * (stature > 0.0 ? stature : 0.5 * input_->scene.height);
    double headSigma = 0.0;
    const bool hasHead = a.head && b.head;
    if (hasHead) {
        reach = base::length(*a.head - a.through) * (1.0 - k) + base::length(*b.head - b.through) * k;
        headSigma = a.headSigma + (b.headSigma - a.headSigma) * k;
    }
    reach = std::max(1.0, reach + noise(keyOf(Kind::shaftHead, 0, s), headSigma));

    // The club moves near a plane through the ball that leans toward the player: depth from height.
    const Depth ball = ballDepth(input_->context);
    const auto depthAt = [&](Vec2 reference) -> Depth {
        if (!faceOn()) {
            return {0.0, depthAs == MomentId::address ? 0.06 : 0.12};
        }
        if (stature <= 0.0) {
            return {0.25, 0.12};
        }
        double groundRow = input_->scene.height / 2.0 + 0.5 * stature;
        if (const auto t0 = marks::find(input_->moments, MomentId::address)) {
            const auto l = rawAt(Landmark::lead_ankle, t0->time);
            const auto r = rawAt(Landmark::trail_ankle, t0->time);
            if (l && r) {
                groundRow = (l->reference.y + r->reference.y) / 2.0 + 0.039 * stature;
            }
        }
        const double height = std::max(0.0, (groundRow - reference.y) / stature);
        return {std::clamp(ball.mean - height / std::tan(kShaftPlane * kDegree), -0.3, 0.6), 0.05};
    };
    const Vec2 headPoint = through + direction * reach;
    const auto hands = keyOf(Kind::depth, static_cast<std::uint64_t>(Group::hand), 600 + s);
    const auto clubEnd = keyOf(Kind::depth, static_cast<std::uint64_t>(Group::ground), 600 + s);
    const Depth gripDepth = depthAt(through);
    const Depth headDepth = depthAt(headPoint);
    Shaft out;
    out.grip = levelReference(through, gripDepth.mean, gripDepth.sigma, hands);
    const Vec2 head = levelReference(headPoint, headDepth.mean, headDepth.sigma, clubEnd);
    const Vec2 along = head - out.grip;
    const double len = base::length(along);
    if (!(len > 0.0)) {
        return std::nullopt;
    }
    out.direction = along / len;
    if (hasHead) {
        out.head = head;
    }
    if (a.butt && b.butt) {
        out.butt = levelReference(blend(*a.butt, *b.butt), gripDepth.mean, gripDepth.sigma, hands);
    }
    return out;
}

std::optional<Probe::Shaft> Probe::shaft(MomentId moment) {
    const auto t = time(moment);
    if (!t) {
        return std::nullopt;
    }
    const auto s = shaft(*t, static_cast<int>(moment), moment);
    if (!s) {
        return fail("The shaft could not be told at \"" + words(moment) +
                    "\"; mark butt and club head by hand, or film with a shorter shutter time.");
    }
    return s;
}

std::optional<double> Probe::stature() {
    const auto& scale = input_->scene.scale;
    if (!(scale.pixelsPerStature > 0.0)) {
        return fail(
            "The player's size in the picture is not known; mark hips, shoulders and ankles at address.");
    }
    return scale.pixelsPerStature * (1.0 + noise(keyOf(Kind::scale, 0), scale.relativeSigma));
}

std::optional<double> Probe::stanceWidth() {
    const auto lead = at(Landmark::lead_ankle, MomentId::address);
    const auto trail = at(Landmark::trail_ankle, MomentId::address);
    if (!lead || !trail) {
        return std::nullopt;
    }
    const double width = std::abs(lead->x - trail->x);
    const auto& scale = input_->scene.scale;
    if (width < 1.0 || (scale.pixelsPerStature > 0.0 && width < 0.03 * scale.pixelsPerStature)) {
        return fail("The feet are too close together in the picture to serve as a measure; check the view.");
    }
    return width;
}

std::optional<double> Probe::hipJointDistance() {
    const auto s = stature();
    if (!s) {
        return std::nullopt;
    }
    double share = kHipJoints + noise(keyOf(Kind::own, 900), kHipJointsSigma);
    // Hips marked by hand at address improve the guess; the network's hip width is its weakest part.
    const auto address = marks::find(input_->moments, MomentId::address);
    if (address != nullptr) {
        const auto a = rawAt(Landmark::lead_hip, address->time);
        const auto b = rawAt(Landmark::trail_hip, address->time);
        if (a && b && a->origin == base::Origin::hand && b->origin == base::Origin::hand) {
            const double seen =
                base::length(a->reference - b->reference) / input_->scene.scale.pixelsPerStature;
            const double sigma = std::hypot(a->sigma, b->sigma) / input_->scene.scale.pixelsPerStature;
            const double weight = 1.0 / (1.0 + sigma * sigma / (kHipJointsSigma * kHipJointsSigma));
            share = share * (1.0 - weight) + weight * (seen + noise(keyOf(Kind::own, 901), sigma));
        }
    }
    return *s * share;
}

std::optional<double> Probe::shoulderJointDistance() {
    const auto a = at(Landmark::lead_shoulder, MomentId::address);
    const auto b = at(Landmark::trail_shoulder, MomentId::address);
    if (!a || !b) {
        return std::nullopt;
    }
    // The line may stand up to about 10 degrees off square at address, which shortens it by up to 1.5 %.
    return base::length(*a - *b) * (1.008 + noise(keyOf(Kind::own, 902), 0.008));
}

double Probe::tilt(Vec2 a, Vec2 b) {
    return std::atan2(-(b.x - a.x), b.y - a.y) / kDegree;
}

/// The perturbing loop; a friend so that Probe's bookkeeping stays private.
struct Evaluator {
    static Measurement run(const Input& input, std::string id, std::optional<MomentId> moment,
                           base::Unit unit, int method, const Formula& formula, double floor) {
        Measurement out;
        out.id = std::move(id);
        out.moment = moment;
        out.method = method;
        Probe probe(input);
        const auto value = formula(probe);
        if (!value || !std::isfinite(*value)) {
            out.reason =
                probe.reason().empty() ? "This clip does not show enough for this number." : probe.reason();
            return out;
        }
        const base::Origin origin = probe.origin_;
        probe.recording_ = false;
        double variance = floor * floor;
        const auto difference = [unit](double d) {
            return unit == base::Unit::degrees ? std::remainder(d, 360.0) : d;
        };
        for (std::size_t i = 0; i < probe.sources_.size(); ++i) {
            const auto source = probe.sources_[i];
            probe.moved_ = source.key;
            probe.movedBy_ = 1.0;
            const auto plus = formula(probe);
            probe.movedBy_ = -1.0;
            const auto minus = formula(probe);
            double slope = 0.0;
            if (plus && minus) {
                slope = difference(*plus - *minus) / 2.0;
                // At a fold (a clamp, a turning point) both steps go the same way: take the larger one.
                const double bend =
                    std::max(std::abs(difference(*plus - *value)), std::abs(difference(*minus - *value)));
                if (std::abs(slope) < 0.1 * bend) {
                    slope = bend / std::numbers::sqrt2;
                }
            } else if (plus) {
                slope = difference(*plus - *value);
            } else if (minus) {
                slope = difference(*minus - *value);
            }
            const double share = slope * source.sigma / source.step;
            variance += share * share;
        }
        out.value = base::Measured{*value, std::sqrt(variance), unit, origin};
        return out;
    }
};

Measurement evaluate(const Input& input, std::string id, std::optional<MomentId> moment, base::Unit unit,
                     int method, const Formula& formula, double floor) {
    return Evaluator::run(input, std::move(id), moment, unit, method, formula, floor);
}

std::string words(Landmark landmark) {
    std::string text(marks::landmarkName(landmark));
    std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

std::string words(MomentId moment) {
    switch (moment) { // the labels of the trade
    case MomentId::address:
        return "address";
    case MomentId::shaft_level_back:
        return "takeaway";
    case MomentId::lead_arm_level_back:
        return "lead arm level, back";
    case MomentId::pelvis_starts_forward:
        return "start down";
    case MomentId::top:
        return "top";
    case MomentId::lead_arm_level_down:
        return "lead arm level, down";
    case MomentId::shaft_level_down:
        return "delivery";
    case MomentId::impact:
        return "impact";
    case MomentId::release:
        return "release";
    case MomentId::shaft_level_through:
        return "follow-through";
    case MomentId::finish:
        return "finish";
    }
    return {};
}

} // namespace plumbmark::measure
