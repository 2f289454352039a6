// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "base/geometry.h"
#include "base/quantity.h"
#include "club/club.h"
#include "marks/landmark.h"
#include "marks/moment.h"
#include "marks/player.h"
#include "video/frame.h"

namespace plumbmark::club {

/// Where the hands are in a frame, upright picture pixels. Sparse body observations are interpolated to every
/// frame by the caller. A bias of several per cent of stature is expected and searched for.
struct Hands {
    base::Vec2 grip; ///< midpoint of both hands on the club
    std::optional<base::Vec2> leadWrist, trailWrist, leadElbow, trailElbow;
    double staturePixels = 0.0; ///< standing height in the picture, > 0; about the same in every frame
    double gripSigma = 0.0;     ///< px, one sigma per axis; 0 = not known
};

/// A line with sub-pixel fit through one frame's pixels that may be the shaft.
struct LineCandidate {
    float angleDegrees = 0.0F; ///< as ShaftSample::angleDegrees, in [-180, 180)
    float sigmaDegrees = 0.0F; ///< from the scatter of the line's own cross profiles
    float throughX = 0.0F;     ///< foot of the hands' point on the line, picture px
    float throughY = 0.0F;
    float near = 0.0F;        ///< where the supported part starts, px along the line from `through`
    float reach = 0.0F;       ///< where the supported part ends
    float sigmaPixels = 0.0F; ///< across the line at the middle of the supported part
    float bend = 0.0F;        ///< sagitta of the supported part, px, + = middle bulges toward larger angles
    float score = 0.0F;       ///< 0..1, the same scale as Evidence::score / 255
};

/// What one frame says about the shaft; about 1.5 kB. No pixel is needed once it is there.
struct Evidence {
    static constexpr int kBins = 360; ///< bin b covers the angle b - 180 degrees, one degree wide
    int frame = 0;
    base::Seconds time;
    std::optional<Hands> hands; ///< nothing: hands not known, nothing was searched
    /// Support of the best line of each direction near the hands (ridge and motion), 0..255. Not thresholded.
    std::array<std::uint8_t, kBins> score{};
    /// That line's sideways offset from the hands, units of 0.5 % of stature, + toward larger angles.
    std::array<std::int8_t, kBins> offset{};
    /// How far from the hands it is supported, units of 0.5 % of stature.
    std::array<std::uint8_t, kBins> reach{};
    std::vector<LineCandidate> lines; ///< the best few directions, refined on the full picture
};

struct SearchOptions {
    marks::TimeScale timeScale; ///< picks which neighbours in time a frame is compared with
    double framesPerSecond = 0; ///< presentation frames per second, for the same purpose
};

/// One streaming pass: push every frame in presentation order, collect the evidence.
/// Method: thin-ridge evidence (both sides of a thin line differ from it with the same sign, either sign,
/// several widths that grow with stature) and its counterpart in time (a pixel differs from both its past and
/// its future with the same sign), summed on rays from the hands to 0.68 statures, with the line free to pass
/// the estimated hands at up to 9 % of stature. Directions within 22 degrees of a forearm say nothing.
/// Memory: a handful of reduced luma planes. Not thread-safe; one object per clip.
class ShaftSearch {
  public:
    explicit ShaftSearch(const SearchOptions& options);
    ~ShaftSearch();
    ShaftSearch(ShaftSearch&&) noexcept;
    ShaftSearch& operator=(ShaftSearch&&) noexcept;

    /// `hands` empty: unknown in this frame (its evidence stays blank).
    void push(const video::Frame& frame, const std::optional<Hands>& hands);
    /// Evidence of every pushed frame, in order. Ends the pass.
    [[nodiscard]] std::vector<Evidence> finish();

  private:
    struct State;
    std::unique_ptr<State> state_;
};

struct FitContext {
    marks::ShotContext shot;
    marks::TimeScale timeScale;
    int pictureHeight = 0; ///< px; 0 = not known. For the rolling-shutter share of sigma.
};

/// The shaft over the whole clip: best path of angle over time (dynamic programming over all directions of
/// all frames with limits on turning speed, about 3,000 degrees a second of real time, and its change), then
/// the refined line of each frame, then a test whether the frame's own evidence carries it. Short gaps
/// between seen frames are bridged (origin interpolated, wider sigma); longer ones stay nothing. Hand marks
/// club_butt, club_head and grip are facts: a frame with both butt and head takes its line from them, the
/// path must pass through it, and neighbours follow.
[[nodiscard]] ShaftTrack fitShaft(std::span<const Evidence> evidence, const FitContext& context,
                                  std::span<const marks::HandMark> handMarks = {});

/// As fitShaft with the marks, but only frames near marked ones are fitted again; the rest is `before`
/// (a track that fitShaft made from the same evidence). For drags.
[[nodiscard]] ShaftTrack applyHandMarks(const ShaftTrack& before, std::span<const Evidence> evidence,
                                        const FitContext& context,
                                        std::span<const marks::HandMark> handMarks);

/// The shaft where the club meets the ball.
struct Hit {
    base::Seconds time; ///< sub-frame, presentation seconds: the fitted head reaches the ball
    base::Seconds sigma;
    ShaftSample shaft;             ///< at that time (origin interpolated), with its own sigma
    double degreesPerSecond = 0.0; ///< turning speed just before, per presentation second
};

/// One trajectory (angle and head) fitted to the evidence of +-45 ms of real time round the ball's gap, with
/// a change of speed allowed at the hit, read where the head reaches the ball. Nothing when the ball never
/// went, or too few frames before the hit carry the shaft.
[[nodiscard]] std::optional<Hit> fitHit(std::span<const Evidence> evidence, const ShaftTrack& track,
                                        const Ball& ball, const FitContext& context);

/// The shaft between frames: interpolated on the frames around `time` (angle by a local quadratic that never
/// reaches across `hit`), nothing where a neighbour is missing.
[[nodiscard]] std::optional<ShaftSample> shaftAt(const ShaftTrack& track, base::Seconds time,
                                                 std::optional<base::Seconds> hit = std::nullopt);

} // namespace plumbmark::club
