// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "demo/swing.h"

#include <algorithm>
#include <cmath>

namespace plumbmark::demo {
namespace {

constexpr double kLeadHandFromButt = 0.055;
constexpr double kHandsApart = 0.082;
constexpr double kContactGap = 0.012; // club face to ball at address

double degrees(double radians) {
    return radians / kDeg;
}

/// min that never makes a corner; `width` is how far from the corner it still matters.
double softMin(double a, double b, double width) {
    const double d = (a - b) / width;
    if (d > 30) {
        return b;
    }
    if (d < -30) {
        return a;
    }
    return a - width * std::log1p(std::exp(d));
}

/// Middle joint of a two-link chain from a to c; bends toward `pole`.
V3 twoLink(V3 a, V3 c, double first, double second, V3 pole) {
    const V3 along = c - a;
    const double full = first + second;
    const double d = std::clamp(length(along), std::abs(first - second) + 1e-4, full - 1e-5);
    const V3 u = unit(along);
    const double x = (d * d + first * first - second * second) / (2 * d);
    const double y = std::sqrt(std::max(0.0, first * first - x * x));
    return a + u * x + across(pole, u) * y;
}

double chainLength(double first, double second, double flexDegrees) {
    return std::sqrt(first * first + second * second + 2 * first * second * std::cos(flexDegrees * kDeg));
}

/// Direction in a plane that leans `plane` degrees from the horizontal: 0 = down the plane's slope (toward
/// the ball), + = going back (away from the target), 90 = level, 180 = up the slope.
V3 inPlane(double angle, double plane) {
    const double a = angle * kDeg, p = plane * kDeg;
    return {-std::sin(a), std::cos(a) * std::cos(p), -std::cos(a) * std::sin(p)};
}

/// Axes of a body segment whose axis is tilted and bent and that is turned about that axis.
Axes segment(double tilt, double bend, double turn) {
    const V3 up = unit({-std::tan(tilt * kDeg), std::tan(bend * kDeg), 1.0});
    const V3 lead0 = across({1, 0, 0}, up);
    const V3 front0 = unit(V3{0, 1, 0} - up * dot(V3{0, 1, 0}, up) - lead0 * dot(V3{0, 1, 0}, lead0));
    const double c = std::cos(turn * kDeg), s = std::sin(turn * kDeg);
    return {lead0 * c - front0 * s, front0 * c + lead0 * s, up};
}

} // namespace

Body adultBody(double stature, bool woman, double girth) {
    const double h = stature;
    Body b;
    b.stature = h;
    b.woman = woman;
    b.girth = girth;
    b.thigh = 0.245 * h;
    b.shank = 0.246 * h;
    b.ankleHeight = 0.039 * h;
    b.footLength = 0.152 * h;
    b.hipDistance = (woman ? 0.104 : 0.100) * h;
    b.trunk = 0.288 * h;
    // Joint centres lie some 2 cm inside the acromion on each side: biacromial 0.232 / 0.2215 statures.
    b.shoulderDistance = (woman ? 0.199 : 0.209) * h;
    b.upperArm = 0.180 * h;
    b.forearm = 0.146 * h;
    b.hand = 0.108 * h;
    b.headHeight = 0.130 * h;
    b.neck = 0.052 * h;
    return b;
}

Body childBody(double stature) {
    Body b = adultBody(stature, false, 0.98);
    const double h = stature;
    b.headHeight = 0.158 * h;
    b.neck = 0.047 * h;
    b.thigh = 0.235 * h;
    b.shank = 0.235 * h;
    b.trunk = 0.285 * h;
    b.upperArm = 0.172 * h;
    b.forearm = 0.142 * h;
    b.hand = 0.105 * h;
    return b;
}

ClubSize clubSize(marks::Club club, double stature) {
    // Lengths and lies of ordinary sets: common practice, no source.
    ClubSize s;
    switch (club.kind) {
    case marks::ClubKind::driver:
        s = {1.13, 57, 0.038, true, 0.042, 10.5};
        break;
    case marks::ClubKind::wood:
        s = {1.08, 57.5, 0.0, true, 0.024, 15};
        break;
    case marks::ClubKind::hybrid:
        s = {1.02, 59, 0.0, true, 0.022, 21};
        break;
    case marks::ClubKind::iron: {
        const int n = club.number.value_or(7);
        s = {0.94 + 0.0127 * (7 - n), 62.0 - 0.5 * (7 - n), 0.0, false, 0.020, 34.0 + 4.0 * (n - 7)};
        break;
    }
    case marks::ClubKind::wedge:
        s = {0.895, 64, 0.0, false, 0.020, static_cast<double>(club.number.value_or(54))};
        break;
    case marks::ClubKind::putter:
        s = {0.86, 70, 0.0, false, 0.015, 3};
        break;
    }
    // Clubs are fitted to the player; only a share of the stature's difference goes into the length.
    s.length *= stature < 1.5 ? 0.25 + 0.75 * stature / 1.76 : 0.7 + 0.3 * stature / 1.76;
    return s;
}

Motion::Motion(const Body& body, const ClubSize& club, const SwingParams& params, std::uint64_t seed)
    : body_(body), club_(club), params_(params) {
    Random random(seed ^ 0x5157494eull);
    for (double& phase : swayPhase_) {
        phase = random.uniform(0, 2 * std::numbers::pi);
    }
    impact_ = params_.backswing + params_.downswing;
    start_ = -params_.stillBefore;
    end_ = impact_ + params_.followThrough + params_.holdAfter;
    const double half = params_.stanceRatio * body_.shoulderDistance / 2;
    ankleHome_ = {V3{half, 0, body_.ankleHeight}, V3{-half, 0, body_.ankleHeight}};
    buildBody();
    solveContact();
}

void Motion::buildBody() {
    const SwingParams& p = params_;
    const double tb = p.backswing, td = p.downswing, hit = impact_, h = body_.stature;
    const double ft = p.followThrough / 0.85;
    const double from = start_ - 0.5, to = end_ + 0.5, soft = 0.018;
    const double turnBack = tb - p.startDownLead; // the pelvis reverses before the club does
    const auto curve = [&](std::vector<Key> keys, double sigma) {
        return Curve(std::move(keys), from, to, sigma);
    };

    pelvisTurn_ = curve({{0.02, 0},
                         {0.40 * tb, p.pelvisTurnTop * 0.36},
                         {turnBack, p.pelvisTurnTop},
                         {tb + 0.30 * td, lerp(p.pelvisTurnTop, p.pelvisTurnImpact, 0.24)},
                         {tb + 0.65 * td, lerp(p.pelvisTurnTop, p.pelvisTurnImpact, 0.68)},
                         {hit, p.pelvisTurnImpact},
                         {hit + 0.10 * ft, lerp(p.pelvisTurnImpact, p.pelvisTurnFinish, 0.42)},
                         {hit + 0.30 * ft, lerp(p.pelvisTurnImpact, p.pelvisTurnFinish, 0.82)},
                         {hit + 0.70 * ft, p.pelvisTurnFinish}},
                        soft);
    chestTurn_ = curve({{0, 0},
                        {0.40 * tb, p.chestTurnTop * 0.40},
                        {0.72 * tb, p.chestTurnTop * 0.80},
                        {tb - 0.01, p.chestTurnTop},
                        {tb + 0.35 * td, lerp(p.chestTurnTop, p.chestTurnImpact, 0.22)},
                        {tb + 0.70 * td, lerp(p.chestTurnTop, p.chestTurnImpact, 0.65)},
                        {hit, p.chestTurnImpact},
                        {hit + 0.10 * ft, lerp(p.chestTurnImpact, p.chestTurnFinish, 0.44)},
                        {hit + 0.28 * ft, lerp(p.chestTurnImpact, p.chestTurnFinish, 0.80)},
                        {hit + 0.75 * ft, p.chestTurnFinish}},
                       soft);
    shoulderExtra_ = curve({{0, 0},
                            {0.45 * tb, p.shoulderExtraTop * 0.4},
                            {tb, p.shoulderExtraTop},
                            {tb + 0.5 * td, p.shoulderExtraTop * 0.8},
                            {hit, p.shoulderExtraTop * -0.1},
                            {hit + 0.25 * ft, 8},
                            {hit + 0.7 * ft, 4}},
                           soft);
    girdleSlant_ = curve(
        {{0.0, 8}, {tb, 0}, {tb + 0.5 * td, 2}, {hit, 5}, {hit + 0.1 * ft, 9}, {hit + 0.6 * ft, 0}}, soft);
    tilt_ = curve({{0.03, p.addressTilt},
                   {0.45 * tb, lerp(p.addressTilt, p.tiltTop, 0.6)},
                   {tb, p.tiltTop},
                   {tb + 0.4 * td, lerp(p.tiltTop, p.tiltImpact, 0.3)},
                   {hit, p.tiltImpact},
                   {hit + 0.09 * ft, p.tiltImpact + 3},
                   {hit + 0.28 * ft, lerp(p.tiltImpact, p.tiltFinish, 0.45)},
                   {hit + 0.75 * ft, p.tiltFinish}},
                  soft);
    bend_ = curve({{0.03, p.addressBend},
                   {tb, p.bendTop},
                   {tb + 0.5 * td, lerp(p.bendTop, p.bendImpact, 0.4) + 1},
                   {hit, p.bendImpact},
                   {hit + 0.10 * ft, lerp(p.bendImpact, p.bendFinish, 0.22)},
                   {hit + 0.30 * ft, lerp(p.bendImpact, p.bendFinish, 0.65)},
                   {hit + 0.75 * ft, p.bendFinish}},
                  soft);

    const double leadAnkleX = ankleHome_[0].x;
    const double back = p.pelvisShiftBack * h;
    // A pelvis slightly toward the target at address lets the hands hang under the chest.
    const double setUp = 0.45 * body_.trunk * std::tan(p.addressTilt * kDeg);
    pelvisX_ =
        curve({{0.0, setUp},
               {0.5 * tb, setUp + 0.8 * back},
               {turnBack, setUp + back},
               {tb + 0.35 * td, setUp + lerp(back, p.pelvisShiftImpact * h, 0.55)},
               {hit, setUp + p.pelvisShiftImpact * h},
               {hit + 0.12 * ft, lerp(setUp + p.pelvisShiftImpact * h, leadAnkleX * p.weightFinish, 0.35)},
               {hit + 0.65 * ft, leadAnkleX * p.weightFinish}},
              0.03);
    const double in = p.pelvisInImpact * h;
    pelvisY_ = curve({{0.0, 0},
                      {tb, 0.0},
                      {tb + 0.5 * td, 0.45 * in - 0.004 * h},
                      {hit, in - 0.004 * h},
                      {hit + 0.2 * ft, in + 0.008 * h},
                      {hit + 0.65 * ft, 0.045 * h}},
                     0.025);
    const double rise = p.riseImpact * h;
    pelvisRise_ = curve({{0.0, 0},
                         {0.6 * tb, -0.001 * h},
                         {tb, -0.004 * h},
                         {tb + 0.45 * td, -0.010 * h + 0.4 * rise},
                         {hit, -0.006 * h + rise},
                         {hit + 0.1, 0.012 * h + rise},
                         {hit + 0.6 * ft, 0.05 * h}},
                        0.025);
    pelvisBend_ = curve({{0.0, p.addressBend * 0.55},
                         {tb, p.bendTop * 0.50},
                         {hit, p.bendImpact * 0.36},
                         {hit + 0.2 * ft, 4},
                         {hit + 0.65 * ft, -4}},
                        0.025);
    pelvisTilt_ = curve({{0.0, 1}, {tb, 4}, {hit, 5}, {hit + 0.15 * ft, 5}, {hit + 0.65 * ft, 0}}, 0.025);

    headYaw_ = curve({{0.05, 2},
                      {0.5 * tb, -8},
                      {tb, -16},
                      {tb + 0.6 * td, -12},
                      {hit, -9},
                      {hit + 0.06, -6},
                      {hit + 0.16 * ft, 20},
                      {hit + 0.35 * ft, 62},
                      {hit + 0.75 * ft, 82}},
                     0.025);
    headPitch_ = curve(
        {{0.0, 31}, {tb, 31}, {hit, 31}, {hit + 0.10 * ft, 30}, {hit + 0.30 * ft, 20}, {hit + 0.7 * ft, -2}},
        0.03);

    const double late = std::clamp((p.trailPitchFinish - 40) / 40, 0.3, 1.1);
    trailPitch_ = curve({{hit - 0.10, 0},
                         {hit, 17 * late},
                         {hit + 0.10 * ft, 34 * late},
                         {hit + 0.30 * ft, p.trailPitchFinish * 0.80},
                         {hit + 0.62 * ft, p.trailPitchFinish}},
                        0.022);
    trailFootTurn_ =
        curve({{hit - 0.06, 0}, {hit, 6 * late}, {hit + 0.14 * ft, 26 * late}, {hit + 0.55 * ft, 74 * late}},
              0.022);
    leadKneeFlex_ = curve(
        {{0.0, 10}, {tb, 14}, {tb + 0.45 * td, 24}, {hit, p.leadKneeImpact}, {hit + 0.12, 3}, {hit + 0.6, 4}},
        0.02);
    leadRoll_ = curve({{hit, 0}, {hit + 0.5 * ft, 1}}, 0.03);

    // The face opens against its plane going back (toe up when the shaft is level) and closes through the
    // ball.
    faceTurn_ = curve({{0, 0},
                       {0.42 * tb, 52},
                       {tb, 62},
                       {tb + 0.6 * td, 70},
                       {hit - 0.02, 22},
                       {hit, 0},
                       {hit + 0.03, -28},
                       {hit + 0.08, -62},
                       {hit + 0.4, -70}},
                      0.008);
    handsOut_ = curve({{tb - 0.02, 0},
                       {tb + 0.35 * td, p.handsOut * h},
                       {tb + 0.72 * td, 0.6 * p.handsOut * h},
                       {hit - 0.004, 0}},
                      0.012);
}

void Motion::buildArms() {
    const SwingParams& p = params_;
    const double tb = p.backswing, td = p.downswing, hit = impact_;
    const double ft = p.followThrough / 0.85;
    const double from = start_ - 0.5, to = end_ + 0.5;
    const auto curve = [&](std::vector<Key> keys, double sigma) {
        return Curve(std::move(keys), from, to, sigma);
    };
    // The release takes nearly the same time for quick and slow downswings; it is what makes the club fast.
    const double k = std::clamp(std::pow(td / 0.28, 0.45), 0.85, 1.15);
    const double level = 0.62 * tb, early = p.setEarly;
    const double late = p.keptSet;

    const double shaftAddress =
        degrees(std::atan(std::tan(p.addressLean * kDeg) * std::sin(((club_.lieDegrees - 4)) * kDeg)));
    const double shaftImpact =
        degrees(std::atan(std::tan(p.leanImpact * kDeg) * std::sin(shaftPlaneImpact_ * kDeg)));

    armAngle_ = curve({{0, armAddress_},
                       {0.36 * tb, lerp(armAddress_, 90, 0.42)},
                       {level, 90},
                       {tb, p.armTop},
                       {tb + 0.25 * td, lerp(p.armTop, armImpact_, 0.11)},
                       {tb + 0.52 * td, lerp(p.armTop, armImpact_, 0.49)},
                       {tb + 0.76 * td, lerp(p.armTop, armImpact_, 0.78 + 0.006 * late)},
                       {hit, armImpact_, (-520 + 6 * late) / k},
                       {hit + 0.05, armImpact_ - 27},
                       {hit + 0.10 * ft, -56},
                       {hit + 0.20 * ft, -108},
                       {hit + 0.36 * ft, -138},
                       {hit + 0.70 * ft, -148}},
                      0.007);
    armPlane_ = curve({{0, armPlaneAddress_},
                       {0.4 * tb, 66},
                       {level, 56},
                       {tb, 46},
                       {tb + 0.4 * td, 48},
                       {tb + 0.75 * td, lerp(60, armPlaneImpact_, 0.35)},
                       {hit, armPlaneImpact_},
                       {hit + 0.08, 62},
                       {hit + 0.2 * ft, 56},
                       {hit + 0.7 * ft, 60}},
                      0.010);
    const double levelShaft = 90 + p.setAtLevel + 0.6 * early;
    shaftAngle_ = [&] {
        std::vector<Key> keys;
        // Waggles: the club goes up a little and comes back to rest, well before it starts.
        for (int i = 0; i < p.waggles; ++i) {
            const double t = -0.55 - 0.62 * (p.waggles - 1 - i);
            keys.push_back({t - 0.46, shaftAddress});
            keys.push_back({t - 0.23, shaftAddress + 17 - 4 * i});
            keys.push_back({t, shaftAddress});
        }
        keys.insert(keys.end(), {{0, shaftAddress},
                                 {0.42 * tb, 88 + early},
                                 {level, levelShaft},
                                 {0.82 * tb, lerp(levelShaft, p.shaftTop, 0.66)},
                                 {tb, p.shaftTop},
                                 {tb + 0.24 * td, lerp(p.shaftTop, 190, 0.10)},
                                 {tb + 0.53 * td, 192 + late * 0.5},
                                 {hit - 0.067 * k, 120 + late},
                                 {hit - 0.028 * k, 60 + late * 0.75},
                                 {hit, shaftImpact, -2280 / k},
                                 {hit + 0.022 * k, shaftImpact - 46, -1900 / k},
                                 {hit + 0.056 * k, -102},
                                 {hit + 0.11 * k, -172},
                                 {hit + 0.25 * ft, -248},
                                 {hit + 0.45 * ft, -286},
                                 {hit + 0.72 * ft, -298}});
        return curve(std::move(keys), 0.005);
    }();
    shaftPlane_ = curve({{0, (club_.lieDegrees - 4)},
                         {0.45 * tb, 59},
                         {level, 56},
                         {tb, 54},
                         {tb + 0.45 * td, 50},
                         {hit - 0.07, 53},
                         {hit, shaftPlaneImpact_},
                         {hit + 0.05, 58},
                         {hit + 0.12, 54},
                         {hit + 0.3 * ft, 46},
                         {hit + 0.7 * ft, 38}},
                        0.008);
    reach_ = curve({{0, p.leadElbowAddress},
                    {0.7 * tb, p.leadElbowTop},
                    {tb, p.leadElbowTop},
                    {tb + 0.5 * td, p.leadElbowTop},
                    {hit, p.leadElbowImpact},
                    {hit + 0.06, std::max(6.0, p.leadElbowImpact)},
                    {hit + 0.12 * ft, 26},
                    {hit + 0.22 * ft, 66},
                    {hit + 0.38 * ft, 104},
                    {hit + 0.7 * ft, 116}},
                   0.012);
}

void Motion::solveContact() {
    const V3 lead = ankleHome_[0], trail = ankleHome_[1];
    ball_.x = lerp(lead.x, trail.x, params_.ballPosition);
    ball_.z = club_.teeHeight + kBallRadius;
    const double faceX = ball_.x - kBallRadius;
    const double restHeight = std::min(club_.headCentreHeight, 0.034);
    const double atRest = -0.04;

    // Set-up: two free angles put the club face just behind the ball, on the ground.
    const auto setUp = [&] {
        armAddress_ = 12;
        armPlaneAddress_ = 70;
        for (int round = 0; round < 12; ++round) {
            const auto miss = [&](double a, double b) {
                armAddress_ = a;
                armPlaneAddress_ = b;
                buildArms();
                const V3 c = at(atRest).headPoint;
                return std::array<double, 2>{c.x - (faceX - kContactGap), c.z - restHeight};
            };
            const double a = armAddress_, b = armPlaneAddress_, step = 0.4;
            const auto f0 = miss(a, b), fa = miss(a + step, b), fb = miss(a, b + step);
            const double j00 = (fa[0] - f0[0]) / step, j01 = (fb[0] - f0[0]) / step;
            const double j10 = (fa[1] - f0[1]) / step, j11 = (fb[1] - f0[1]) / step;
            const double det = j00 * j11 - j01 * j10;
            if (std::abs(det) < 1e-12) {
                return false;
            }
            const double da = std::clamp(-(f0[0] * j11 - f0[1] * j01) / det, -15.0, 15.0);
            const double db = std::clamp(-(j00 * f0[1] - j10 * f0[0]) / det, -15.0, 15.0);
            const auto f1 = miss(a + da, std::clamp(b + db, 45.0, 92.0));
            if (std::abs(f1[0]) < 2e-4 && std::abs(f1[1]) < 2e-4) {
                return true;
            }
        }
        return false;
    };
    // Impact: three free angles bring the face to the ball at its height.
    const auto meet = [&] {
        const V3 want{faceX, ball_.y, club_.headCentreHeight};
        armImpact_ = 8;
        armPlaneImpact_ = 74;
        shaftPlaneImpact_ = club_.lieDegrees;
        double before = 1e9;
        for (int round = 0; round < 14; ++round) {
            const auto miss = [&](std::array<double, 3> q) {
                armImpact_ = q[0];
                armPlaneImpact_ = q[1];
                shaftPlaneImpact_ = q[2];
                buildArms();
                return at(impact_).headPoint - want;
            };
            const std::array<double, 3> q{armImpact_, armPlaneImpact_, shaftPlaneImpact_};
            const V3 f0 = miss(q);
            std::array<V3, 3> col;
            for (std::size_t i = 0; i < 3; ++i) {
                auto moved = q;
                moved[i] += 0.3;
                col[i] = (miss(moved) - f0) / 0.3;
            }
            const double det = dot(col[0], cross(col[1], col[2]));
            if (std::abs(det) < 1e-14) {
                return false;
            }
            const V3 r = -f0;
            const std::array<double, 3> d{dot(r, cross(col[1], col[2])) / det,
                                          dot(col[0], cross(r, col[2])) / det,
                                          dot(col[0], cross(col[1], r)) / det};
            auto next = q;
            for (std::size_t i = 0; i < 3; ++i) {
                next[i] += std::clamp(d[i], -5.0, 5.0);
            }
            next[1] = std::clamp(next[1], 40.0, 105.0);
            next[2] = std::clamp(next[2], club_.lieDegrees - 8, club_.lieDegrees + 16);
            const double left = length(miss(next));
            if (left < 3e-4) {
                return true;
            }
            if (round >= 6 && left > 0.02 && left > 0.7 * before) {
                return false; // out of reach
            }
            before = left;
        }
        return false;
    };
    // Where the arms are too short for the posture at impact, the player has stood nearer with softer elbows,
    // or bends a little more, as players do.
    bool met = false;
    const SwingParams wanted = params_;
    struct Try {
        double slack, most;
    };
    for (const auto& [slack, most] :
         {Try{0, 4.5}, Try{8, 4.5}, Try{16, 4.5}, Try{24, 4.5}, Try{8, 14}, Try{24, 18}}) {
        params_ = wanted;
        params_.leadElbowAddress = wanted.leadElbowAddress + slack;
        // A short club asks for a lower posture throughout.
        bool rested = false;
        for (const double lower : {0.0, 3.0, 6.0, 9.0}) {
            params_.addressBend = wanted.addressBend + lower;
            params_.bendTop = wanted.bendTop + lower;
            params_.bendImpact = wanted.bendImpact + lower;
            params_.kneeFlex = wanted.kneeFlex + 0.5 * lower;
            buildBody();
            rested = setUp();
            if (rested) {
                break;
            }
        }
        if (!rested) {
            continue;
        }
        ball_.y = at(atRest).headPoint.y;
        const double bend = params_.bendImpact, rise = params_.riseImpact;
        for (const double extra : {0.0, 1.5, 3.0, 4.5, -2.0, 6.5, 8.5, 11.0, 14.0, 18.0}) {
            if (extra > most) {
                break;
            }
            params_.bendImpact = bend + extra;
            params_.riseImpact = rise - 0.002 * std::max(0.0, extra);
            buildBody();
            met = meet();
            if (met) {
                break;
            }
        }
        if (met) {
            break;
        }
    }
    solved_ = met;
}

Pose Motion::at(double t) const {
    const SwingParams& p = params_;
    const Body& b = body_;
    const double h = b.stature;
    Pose out;

    // Nobody stands perfectly still: a few millimetres of sway, far under what a swing does.
    const auto sway = [&](std::size_t i, double hz) {
        return std::sin(2 * std::numbers::pi * hz * t + swayPhase_[i]);
    };
    const double swayX = 0.0012 * sway(0, 0.42) + 0.0006 * sway(1, 0.9);
    const double swayY = 0.0012 * sway(2, 0.36);
    const double breath = 0.25 * sway(3, 0.27);

    // Feet
    for (std::size_t side = 0; side < 2; ++side) {
        const bool isLead = side == 0;
        double flare = isLead ? p.leadFlare : -p.trailFlare;
        double pitch = 0;
        if (!isLead) {
            flare += trailFootTurn_.at(t);
            pitch = trailPitch_.at(t);
        } else {
            flare += 6 * leadRoll_.at(t);
        }
        const double home = (isLead ? p.leadFlare : -p.trailFlare) * kDeg;
        const V3 homeForward{std::sin(home), std::cos(home), 0};
        const V3 forward{std::sin(flare * kDeg), std::cos(flare * kDeg), 0};
        const double fl = b.footLength, toBall = 0.47 * fl, heelBack = 0.25 * fl;
        V3 pivot = ankleHome_[side] + homeForward * toBall;
        pivot.z = 0.014;
        if (!isLead) {
            pivot.x += 0.03 * h * std::clamp((pitch - 30) / 45.0, 0.0, 1.0) *
                       std::clamp((pitch - 30) / 45.0, 0.0, 1.0);
        }
        const double c = std::cos(pitch * kDeg), s = std::sin(pitch * kDeg);
        const auto hind = [&](double back, double high) {
            return pivot + forward * (-back * c + high * s) + V3{0, 0, back * s + high * c};
        };
        Foot& f = out.foot[side];
        f.ball = pivot;
        f.toe = pivot + forward * (fl - toBall - heelBack);
        f.heel = hind(toBall + heelBack, 0.0);
        f.ankle = hind(toBall, b.ankleHeight - 0.014);
        f.forward = unit(f.ball - f.heel);
    }

    // Pelvis: as high as the keyed height, but never higher than either leg allows.
    out.pelvis = segment(pelvisTilt_.at(t), pelvisBend_.at(t) + 0.3 * breath, pelvisTurn_.at(t));
    V3 mid{pelvisX_.at(t) + swayX, -0.068 * h + pelvisY_.at(t) + swayY, 0};
    const auto legHeight = [&](std::size_t side, double flex) {
        const V3 offset = out.pelvis.lead * ((side == 0 ? 0.5 : -0.5) * b.hipDistance);
        const V3 d = mid + offset - out.foot[side].ankle;
        const double reach = chainLength(b.thigh, b.shank, flex);
        const double flat = d.x * d.x + d.y * d.y;
        return out.foot[side].ankle.z + std::sqrt(std::max(1e-4, reach * reach - flat)) - offset.z;
    };
    {
        // Height at address from the wanted knee flex, on the same level for the whole swing.
        const double dx = ankleHome_[0].x - b.hipDistance / 2, dy = -0.068 * h;
        const double reach = chainLength(b.thigh, b.shank, p.kneeFlex);
        const double base = b.ankleHeight + std::sqrt(std::max(1e-4, reach * reach - dx * dx - dy * dy));
        mid.z = base + pelvisRise_.at(t);
        mid.z = softMin(mid.z, legHeight(0, leadKneeFlex_.at(t)), 0.005);
        mid.z = softMin(mid.z, legHeight(1, 8), 0.005);
    }
    out.midHip = mid;
    for (std::size_t side = 0; side < 2; ++side) {
        out.hip[side] = mid + out.pelvis.lead * ((side == 0 ? 0.5 : -0.5) * b.hipDistance);
        const V3 footFlat = unit({out.foot[side].forward.x, out.foot[side].forward.y, 0});
        const V3 front = unit({out.pelvis.front.x, out.pelvis.front.y, 0});
        const V3 pole = footFlat * 0.65 + front * 0.35 + V3{0, 0, 0.15};
        out.knee[side] = twoLink(out.hip[side], out.foot[side].ankle, b.thigh, b.shank, pole);
    }

    // Trunk: the line mid-hip to mid-shoulder carries tilt and bend; the chest is bent a little further.
    const double tilt = tilt_.at(t), bend = bend_.at(t) + 0.2 * breath;
    const V3 line = segment(tilt, bend, 0).up;
    out.midShoulder = mid + line * b.trunk;
    const double chestTurn = chestTurn_.at(t);
    const double extraBend = 0.35 * (bend - pelvisBend_.at(t)), extraTilt = 0.3 * (tilt - pelvisTilt_.at(t));
    out.thorax = segment(tilt + extraTilt, bend + extraBend, chestTurn);
    // The lower hand asks for a lower trail shoulder: the girdle slants against the trunk at address and
    // impact.
    const Axes girdle = segment(tilt, bend, chestTurn + shoulderExtra_.at(t));
    const double slant = girdleSlant_.at(t) * kDeg;
    const V3 shoulderLine = girdle.lead * std::cos(slant) + girdle.up * std::sin(slant);
    for (std::size_t side = 0; side < 2; ++side) {
        out.shoulder[side] = out.midShoulder + shoulderLine * ((side == 0 ? 0.5 : -0.5) * b.shoulderDistance);
    }

    // Neck and head
    const double yaw = headYaw_.at(t) * kDeg, pitch = headPitch_.at(t) * kDeg;
    out.neckBase = out.midShoulder + out.thorax.up * (0.026 * h) - out.thorax.front * (0.004 * h);
    const V3 gaze{std::sin(yaw) * std::cos(pitch), std::cos(yaw) * std::cos(pitch), -std::sin(pitch)};
    const V3 headUp = across(out.thorax.up * 0.5 + V3{0, 0, 1.0}, gaze);
    out.head.front = gaze;
    out.head.up = headUp;
    out.head.lead =
        unit(segment(0, 0, headYaw_.at(t)).lead - gaze * dot(segment(0, 0, headYaw_.at(t)).lead, gaze));
    out.head.lead = unit(out.head.lead - headUp * dot(out.head.lead, headUp));
    const double toCentre = b.neck + b.headHeight / 2 - 0.026 * h;
    out.headCentre =
        out.neckBase + unit(out.thorax.up * 0.85 + headUp * 0.75) * toCentre + gaze * (0.008 * h);

    // Arms and club
    const double wristToHand = 0.40 * b.hand;
    const double armAngle = armAngle_.at(t), armPlane = armPlane_.at(t);
    const double shaftAngle = shaftAngle_.at(t), shaftPlane = shaftPlane_.at(t);
    out.shaft = inPlane(shaftAngle, shaftPlane);
    const double leadMax = b.upperArm + b.forearm + wristToHand;
    const double reach = chainLength(b.upperArm, b.forearm, reach_.at(t)) + wristToHand * 0.97;
    V3 leadHand = out.shoulder[0] + inPlane(armAngle, armPlane) * reach;
    leadHand.y += handsOut_.at(t);
    // The trail shoulder blade slides a few centimetres toward the hands before the trail arm holds them
    // back.
    const double trailMax = leadMax * 0.996;
    {
        const V3 d = leadHand + out.shaft * kHandsApart - out.shoulder[1];
        const double over = length(d) - softMin(length(d), trailMax, 0.008);
        out.shoulder[1] += unit(d) * softMin(over, 0.040 * h, 0.006);
    }
    for (int pass = 0; pass < 2; ++pass) {
        const V3 trailHand = leadHand + out.shaft * kHandsApart;
        const V3 d = trailHand - out.shoulder[1];
        const double far = length(d);
        leadHand += unit(d) * (softMin(far, trailMax, 0.006) - far);
        const V3 e0 = leadHand - out.shoulder[0];
        const double over = length(e0) - softMin(length(e0), leadMax * 0.996, 0.003);
        out.shoulder[0] += unit(e0) * softMin(over, 0.040 * h, 0.004);
        const V3 e = leadHand - out.shoulder[0];
        const double farLead = length(e);
        leadHand += unit(e) * (softMin(farLead, leadMax * 0.997, 0.002) - farLead);
    }
    out.handCentre = {leadHand, leadHand + out.shaft * kHandsApart};
    for (std::size_t side = 0; side < 2; ++side) {
        const V3 outward = out.thorax.lead * (side == 0 ? 1.0 : -1.0);
        const V3 pole = out.thorax.front * -0.55 + outward * 0.45 + V3{0, 0, -0.75};
        V3 toward = out.shoulder[side];
        for (int pass = 0; pass < 3; ++pass) {
            out.wrist[side] = out.handCentre[side] + unit(toward - out.handCentre[side]) * wristToHand;
            out.elbow[side] = twoLink(out.shoulder[side], out.wrist[side], b.upperArm, b.forearm, pole);
            toward = out.elbow[side];
        }
    }
    out.butt = leadHand - out.shaft * kLeadHandFromButt;
    out.grip = leadHand + out.shaft * (kHandsApart / 2);
    out.shaftEnd = out.butt + out.shaft * (club_.length - 0.02);
    const double pl = shaftPlane * kDeg, sa = shaftAngle * kDeg, rho = faceTurn_.at(t) * kDeg;
    const V3 slope{0, std::cos(pl), -std::sin(pl)}, normal{0, std::sin(pl), std::cos(pl)};
    const V3 travel = slope * std::sin(sa) + V3{1, 0, 0} * std::cos(sa);
    out.toeDirection = normal * std::cos(rho) - travel * std::sin(rho);
    out.faceNormal = travel * std::cos(rho) + normal * std::sin(rho);
    out.headPoint = out.shaftEnd + out.toeDirection * (club_.wood ? 0.045 : 0.034);
    return out;
}

} // namespace plumbmark::demo
