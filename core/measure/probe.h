// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "measure/measurement.h"

namespace plumbmark::measure {

/// How a measurement sees its input, and where its uncertainty comes from.
///
/// A measurement is a plain function of a Probe. Everything uncertain it reads through the Probe (a
/// landmark's two coordinates, a moment's time, the vertical, the scale, the camera, a depth that the picture
/// does not show) is a named noise source. evaluate() first calls the function undisturbed, which records the
/// sources, then once with each source moved by plus and minus one sigma; half the difference is that
/// source's share of the result's sigma (first-order propagation with a numerical Jacobian). The same source
/// moves every use of it, so what two moments have in common (vertical, yaw, scale) cancels in their
/// difference as it should.
///
/// Level coordinates: u toward the target (face-on) or toward the ball (down-the-line), v up, in pixels at
/// the depth of the ankles, origin at the optical axis. They are freed of camera motion, roll, known yaw, and
/// of perspective by an assumed depth for each landmark (depthOf): a point d nearer the lens than the ankles
/// shows 1 / (1 - d / Z) too far from the axis.
class Probe {
  public:
    explicit Probe(const Input& input);

    [[nodiscard]] const Input& input() const { return *input_; }
    [[nodiscard]] bool faceOn() const { return input_->context.view == marks::View::faceOn; }

    /// Present deviation of a noise source of this sigma (0 in the undisturbed call). `step` > sigma makes
    /// the numerical slope from a wider step: wanted where the value comes from neighbouring frames.
    double noise(std::uint64_t key, double sigma, double step = 0.0);
    /// A source of the measurement's own, told apart by `slot` (0..255).
    double ownNoise(int slot, double sigma) {
        return noise(keyOf(Kind::own, static_cast<std::uint64_t>(slot)), sigma);
    }

    /// Why there is no answer; the first reason told is kept. Returns nothing, for `return probe.fail(...)`.
    std::nullopt_t fail(std::string reason);
    [[nodiscard]] const std::string& reason() const { return reason_; }
    [[nodiscard]] base::Origin origin() const { return origin_; }

    /// A key moment in presentation seconds, moved by its own noise.
    std::optional<base::Seconds> time(marks::MomentId moment);
    /// Share of the way from one moment to another (0..1), as a time.
    std::optional<base::Seconds> between(marks::MomentId from, marks::MomentId to, double share);
    /// Real seconds per presentation second.
    [[nodiscard]] double realPerShown() const { return input_->timeScale.realPerShown; }

    /// A landmark in level coordinates; fails with a reason naming landmark and moment.
    std::optional<base::Vec2> at(marks::Landmark landmark, marks::MomentId moment);
    /// The same at any time. Uses with equal `slot` share their noise.
    std::optional<base::Vec2> at(marks::Landmark landmark, base::Seconds time, int slot,
                                 std::optional<marks::MomentId> depthAs = std::nullopt);
    /// As at(), but says nothing when the landmark is missing.
    std::optional<base::Vec2> tryAt(marks::Landmark landmark, marks::MomentId moment);
    /// Midpoint of a lead/trail pair. Marks of the software err together, so averaging two of them does not
    /// halve the variance: a common part is added (correlation 0.5).
    std::optional<base::Vec2> mid(marks::Landmark lead, marks::Landmark trail, marks::MomentId moment);
    std::optional<base::Vec2> mid(marks::Landmark lead, marks::Landmark trail, base::Seconds time, int slot,
                                  std::optional<marks::MomentId> depthAs = std::nullopt);
    std::optional<base::Vec2> midHip(marks::MomentId m);
    std::optional<base::Vec2> midShoulder(marks::MomentId m);
    /// head_centre, or the middle of head_front and head_back, or of the ears.
    std::optional<base::Vec2> head(marks::MomentId m);
    std::optional<base::Vec2> head(base::Seconds time, int slot, std::optional<marks::MomentId> depthAs);

    /// How far a place of the body has travelled since address, statures: along u (toward the target or the
    /// ball) with &Vec2::x, upward with &Vec2::y. `place` reads it at a moment; what the two readings have in
    /// common (vertical, yaw, the lasting part of the marks' error) cancels.
    using Place = std::function<std::optional<base::Vec2>(Probe&, marks::MomentId)>;
    std::optional<double> travel(marks::MomentId moment, const Place& place, double base::Vec2::*along);

    /// Ball at address in level coordinates: the ball found in the picture, else a hand-marked ball.
    std::optional<base::Vec2> ball();

    /// Shaft between frames, level: unit vector grip -> head, freed of the depth between grip and head.
    struct Shaft {
        base::Vec2 direction; ///< unit vector, level coordinates
        base::Vec2 grip;      ///< a point of the shaft near the hands
        std::optional<base::Vec2> head, butt;
    };
    std::optional<Shaft> shaft(marks::MomentId moment);
    std::optional<Shaft> shaft(base::Seconds time, int slot, std::optional<marks::MomentId> depthAs);

    /// Pixels per stature; fails where no scale is known.
    std::optional<double> stature();
    /// Ankle distance along the ground at address, px.
    std::optional<double> stanceWidth();
    /// Distance between the hip joint centres in space, px: 0.10 statures (see docs/measurements.md).
    std::optional<double> hipJointDistance();
    /// Shoulder joint centre to shoulder joint centre in space, px, read at address where the line is square.
    std::optional<double> shoulderJointDistance();

    /// Angle of a -> b against true up, degrees in (-180, 180]; + when b lies on the -u side of a (face-on:
    /// away from the target). Down-the-line callers flip the sign.
    [[nodiscard]] static double tilt(base::Vec2 a, base::Vec2 b);

    /// Picture point (frame `frame`) to level coordinates, for values that are no landmark. `depth` in
    /// statures toward the camera, counted from the ankles.
    base::Vec2 level(base::Vec2 inPicture, int frame, double depth, double depthSigma,
                     std::uint64_t depthKey);

    struct Source {
        std::uint64_t key;
        double sigma;
        double step;
    };

    enum class Kind : std::uint64_t {
        own = 1,
        markX,
        markY,
        pair,
        time,
        vertical,
        yaw,
        pitch,
        horizon,
        distance,
        depth,
        scale,
        ground,
        shaft,
        shaftHead,
        ball,
        roll
    };
    [[nodiscard]] static constexpr std::uint64_t keyOf(Kind kind, std::uint64_t what,
                                                       std::uint64_t slot = 0) {
        return (static_cast<std::uint64_t>(kind) << 56) | (what << 32) | slot;
    }

  private:
    friend struct Evaluator;
    bool quietMarks_ = false; ///< mid() tells the marks' noise itself
    struct Raw {
        base::Vec2 reference;
        double sigma;
        base::Origin origin;
        int frame;
    };
    std::optional<Raw> rawAt(marks::Landmark landmark, base::Seconds time) const;
    base::Vec2 levelReference(base::Vec2 inReference, double depth, double depthSigma,
                              std::uint64_t depthKey);
    void use(base::Origin origin) { origin_ = std::max(origin_, origin); }

    const Input* input_;
    std::vector<Source> sources_;
    bool recording_ = true;
    std::uint64_t moved_ = 0;
    double movedBy_ = 0.0; // in steps: -1, +1
    std::string reason_;
    base::Origin origin_ = base::Origin::hand;
};

/// Assumed depth of a landmark, statures toward the camera counted from the ankles' midpoint, with sigma.
struct Depth {
    double mean = 0.0;
    double sigma = 0.03;
};
[[nodiscard]] Depth depthOf(marks::Landmark landmark, marks::View view,
                            std::optional<marks::MomentId> moment);
/// Of the ball, by club.
[[nodiscard]] Depth ballDepth(const marks::ShotContext& context);

using Formula = std::function<std::optional<double>(Probe&)>;

/// Runs a formula with first-order propagation; see Probe. Never gives a sigma of 0: at least `floor`.
[[nodiscard]] Measurement evaluate(const Input& input, std::string id, std::optional<marks::MomentId> moment,
                                   base::Unit unit, int method, const Formula& formula, double floor = 1e-6);

/// "lead shoulder", "start down": words for sentences.
[[nodiscard]] std::string words(marks::Landmark landmark);
[[nodiscard]] std::string words(marks::MomentId moment);

} // namespace plumbmark::measure
