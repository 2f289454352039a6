// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The moving golfer: pure kinematics, no picture.
//
// Canonical coordinates, metres: x along the target line (+ toward the target), y from the player toward the
// ball, z up, origin on the ground midway between the ankles. They describe right- and left-handers alike;
// handedness is applied where the camera looks (see camera.h).
// Time in real seconds, 0 = the club starts back.
#pragma once

#include <array>
#include <vector>

#include "demo/curve.h"
#include "demo/vec.h"
#include "marks/player.h"

namespace plumbmark::demo {

/// Segment lengths, metres. Fractions of stature: Drillis & Contini 1966 (joint heights, segment lengths);
/// breadths from Heinz et al. 2003 instead of the drawn ones, which are 11-17 % too wide.
struct Body {
    double stature = 1.78;
    bool woman = false;
    double girth = 1.0; ///< breadths and depths against the average
    double thigh = 0, shank = 0, ankleHeight = 0, footLength = 0;
    double hipDistance = 0;      ///< hip joint to hip joint
    double trunk = 0;            ///< mid-hip to mid-shoulder
    double shoulderDistance = 0; ///< shoulder joint to shoulder joint
    double upperArm = 0, forearm = 0, hand = 0;
    double headHeight = 0; ///< chin to vertex
    double neck = 0;       ///< mid-shoulder to chin, upright
};
[[nodiscard]] Body adultBody(double stature, bool woman, double girth);
/// About 9 years old: larger head, shorter legs (common growth charts, from memory).
[[nodiscard]] Body childBody(double stature);

struct ClubSize {
    double length = 0.94;   ///< butt to sole, m
    double lieDegrees = 62; ///< shaft against the ground at address
    double teeHeight = 0;   ///< of the ball's lowest point
    bool wood = false;      ///< bulky head
    double headCentreHeight = 0.020;
    double loftDegrees = 34;
};
[[nodiscard]] ClubSize clubSize(marks::Club club, double stature);

/// What a swing is like. Angles in degrees, signs of the trade: tilt + away from the target, bend + toward
/// the ball, turn + open toward the target, lean + forward. Shifts in statures along the target line. Each
/// fault is one small set of these.
struct SwingParams {
    // set-up
    double stanceRatio = 1.15;  ///< ankle distance / shoulder-joint distance
    double ballPosition = 0.45; ///< 0 lead ankle, 1 trail ankle
    double leadFlare = 22, trailFlare = 8;
    double kneeFlex = 22;
    double addressBend = 35, addressTilt = 5, addressLean = 2;
    // rhythm, s
    double backswing = 0.85, downswing = 0.28, followThrough = 0.85;
    double stillBefore = 0.6, holdAfter = 0.45;
    int waggles = 0;
    // top
    double pelvisTurnTop = -44, chestTurnTop = -84, shoulderExtraTop = -11;
    double tiltTop = 7.5, bendTop = 35, pelvisShiftBack = -0.010, headDriftBack = 0;
    double armTop = 152;     ///< lead arm's angle in its plane, 90 = level going back
    double shaftTop = 252;   ///< shaft's angle in its plane, 270 = level again, past it = over-long
    double setAtLevel = 76;  ///< wrist set (in plane) when the lead arm is level going back
    double setEarly = 0;     ///< extra set in the takeaway
    double leadElbowTop = 4; ///< flex beyond straight, degrees
    // downswing and impact
    double startDownLead = 0.07; ///< pelvis reverses this long before the top, s
    double pelvisTurnImpact = 40, chestTurnImpact = 22;
    double tiltImpact = 15, bendImpact = 33, pelvisShiftImpact = 0.045;
    double leanImpact = 7;
    double keptSet = 22;       ///< + holds the wrist set longer (later release)
    double handsOut = 0;       ///< statures outward in the first half of the downswing
    double pelvisInImpact = 0; ///< statures toward the ball (hips move in, bend is lost)
    double riseImpact = 0;     ///< statures: standing up through the ball
    double leadKneeImpact = 8; ///< flex, degrees
    double leadElbowImpact = 4;
    double leadElbowAddress = 4;
    // finish
    double pelvisTurnFinish = 88, chestTurnFinish = 108;
    double weightFinish = 0.90; ///< mid-hip between mid-stance (0) and lead ankle (1)
    double tiltFinish = 4, bendFinish = 3;
    double trailPitchFinish = 76; ///< heel up, degrees
};

struct Foot {
    V3 heel, ball, toe, ankle;
    V3 forward; ///< sole direction of the hind foot, unit
};

/// The whole figure at one instant.
struct Pose {
    V3 midHip, midShoulder, neckBase, headCentre;
    Axes pelvis, thorax, head;
    // index 0 lead, 1 trail
    std::array<V3, 2> shoulder, elbow, wrist, handCentre, hip, knee;
    std::array<Foot, 2> foot;
    V3 butt, grip, shaftEnd, shaft; ///< shaft: unit, grip to head
    V3 headPoint;                   ///< middle of the club face
    V3 toeDirection, faceNormal;    ///< of the club head, unit
};

class Motion {
  public:
    Motion(const Body& body, const ClubSize& club, const SwingParams& params, std::uint64_t seed);
    [[nodiscard]] Pose at(double time) const;
    [[nodiscard]] const Body& body() const { return body_; }
    [[nodiscard]] const ClubSize& club() const { return club_; }
    [[nodiscard]] const SwingParams& params() const { return params_; }
    [[nodiscard]] double start() const { return start_; }
    [[nodiscard]] double end() const { return end_; }
    /// Where the ball lies (its centre), whether or not one is there.
    [[nodiscard]] V3 ball() const { return ball_; }
    /// When the club face reaches the ball.
    [[nodiscard]] double impact() const { return impact_; }
    /// Address and impact could be solved to less than a millimetre.
    [[nodiscard]] bool solved() const { return solved_; }

  private:
    void buildBody();
    void buildArms();
    void solveContact();
    Body body_;
    ClubSize club_;
    SwingParams params_;
    double start_ = 0, end_ = 0, impact_ = 0;
    V3 ball_;
    bool solved_ = false;
    std::array<V3, 2> ankleHome_;
    // free key values found by solveContact, degrees
    double armAddress_ = 12, armPlaneAddress_ = 70;
    double armImpact_ = 10, armPlaneImpact_ = 74, shaftPlaneImpact_ = 64;
    std::array<double, 6> swayPhase_{};

    Curve pelvisTurn_, pelvisX_, pelvisY_, pelvisRise_, pelvisBend_, pelvisTilt_;
    Curve chestTurn_, shoulderExtra_, girdleSlant_, tilt_, bend_;
    Curve headYaw_, headPitch_;
    Curve trailPitch_, trailFootTurn_, leadKneeFlex_, leadRoll_;
    Curve armAngle_, armPlane_, reach_, shaftAngle_, shaftPlane_, faceTurn_, handsOut_;
};

inline constexpr double kBallRadius = 0.04267 / 2; ///< R&A/USGA Equipment Rules: not under 42.67 mm
inline constexpr double kSoundSpeed = 343.0;       ///< m/s at 20 degrees Celsius

} // namespace plumbmark::demo
