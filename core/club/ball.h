// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "base/geometry.h"
#include "base/quantity.h"
#include "club/club.h"
#include "club/shaft.h"
#include "marks/player.h"
#include "scene/scene.h"
#include "video/frame.h"

namespace plumbmark::club {

/// The ground near the player, upright picture pixels.
struct Feet {
    base::Vec2 leadAnkle, trailAnkle;
    double staturePixels = 0.0;
};

/// What the pass kept about one small round thing on the ground.
struct BallSpot {
    base::Vec2 centre;     ///< reference picture (see GroundMotion), px
    double radius = 0.0;   ///< px
    double contrast = 0.0; ///< grey levels against its surroundings
    int firstLooked = 0;   ///< index into `BallEvidence::times`
    /// Per frame from firstLooked on: likeness of the place to what it showed when found, -100..100
    /// (normalised correlation), and the disc's contrast against its ring as a share of the one when found,
    /// in per cent.
    std::vector<std::int8_t> likeness;
    std::vector<std::int16_t> contrastShare;
};

struct BallEvidence {
    std::vector<base::Seconds> times; ///< of every pushed frame
    std::vector<BallSpot> spots;      ///< at most 48
    double staturePixels = 0.0;
    std::optional<Feet> feet; ///< first known
};

/// Streaming: watches every small disc on the ground near the feet. Bounded memory (about 0.2 kB a frame).
class BallWatch {
  public:
    explicit BallWatch(double framesPerSecond);
    ~BallWatch();
    BallWatch(BallWatch&&) noexcept;
    BallWatch& operator=(BallWatch&&) noexcept;
    /// `ground` carries this frame's points to the reference frame (identity for a still camera).
    void push(const video::Frame& frame, const std::optional<Feet>& feet,
              const scene::GroundMotion::Step& ground = {});
    [[nodiscard]] BallEvidence finish();

  private:
    struct State;
    std::unique_ptr<State> state_;
};

/// The ball that was hit: a disc of a ball's size at the ground near the club head at address, lying there
/// until it goes for good while the club passes. Nothing when no such thing is there (practice swing): a disc
/// that never goes is no hit ball. `centre` is in the reference picture. `through`: presentation time at
/// which the hands were fastest; from behind, where the shaft does not tell when the club comes through, a
/// ball that goes near it is preferred to one that goes as the club is set down or lifted beside it.
[[nodiscard]] std::optional<Ball> findBall(const BallEvidence& evidence, const ShaftTrack& track,
                                           const FitContext& context,
                                           std::optional<base::Seconds> through = std::nullopt);

} // namespace plumbmark::club
