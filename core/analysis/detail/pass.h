// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <atomic>
#include <optional>
#include <span>
#include <thread>
#include <vector>

#include "analysis/detail/channel.h"
#include "analysis/detail/evidence.h"
#include "analysis/detail/hands.h"
#include "base/progress.h"
#include "body/observer.h"
#include "club/ball.h"
#include "club/shaft.h"
#include "scene/ground_watch.h"

namespace plumbmark::analysis {

/// The one pass over the pixels, three stages side by side: the caller decodes, one thread looks for the body
/// (on few frames) and the ground, one thread searches club and ball. Frames between two looks wait until
/// their hands are known. At most some 130 MB of frames are under way, whatever the picture's size.
class Pass {
  public:
    /// `observer` may be null (hand marks only). All arguments outlive the pass.
    Pass(Evidence& evidence, body::Observer* observer, const marks::Track& handTrack,
         const base::Progress& progress);
    ~Pass(); ///< stops at once where finish() was not called
    Pass(const Pass&) = delete;
    Pass& operator=(const Pass&) = delete;

    /// Frames in presentation order. False: cancelled, or a stage failed (finish() says how).
    bool add(const video::Frame& frame);
    /// Waits for the stages and fills the evidence. Errors are those of the pose network.
    base::Result<void> finish();
    [[nodiscard]] const club::BallEvidence& ballEvidence() const { return ballEvidence_; }

  private:
    struct Job {
        video::Frame frame;
        std::optional<club::Hands> hands;
        std::optional<club::Feet> feet;
        scene::GroundMotion::Step ground;
    };

    void looking();   ///< body and ground
    void searching(); ///< club and ball
    base::Result<void> look(const video::Frame& frame);
    void flush(const body::Observation* now);
    /// True vertical from the background, once, in the frame that the ground is held against: unless somebody
    /// told it.
    void seeVertical(const video::Frame& frame, std::span<const base::Box> moving);
    [[nodiscard]] bool stopped() const { return stop_ || progress_.cancelled(); }
    [[nodiscard]] std::optional<club::Hands> handsByHand(base::Seconds time) const;
    [[nodiscard]] base::Box reachOf(const body::Observation& seen) const;

    Evidence& e_;
    body::Observer* observer_;
    const marks::Track& handTrack_;
    const base::Progress& progress_;
    std::size_t room_; ///< frames under way, all stages together
    Channel<video::Frame> frames_;
    Channel<Job> jobs_;
    std::atomic<bool> stop_{false};

    // Looking stage.
    body::Cadence cadence_;
    scene::GroundWatch ground_;
    WorkingStature stature_;
    int groundStride_;
    int lastGround_ = -1;
    bool soughtVertical_ = false;
    double lastSearched_ = -1.0; ///< real seconds
    std::vector<video::Frame> waiting_;
    std::optional<base::Error> broken_;

    // Searching stage.
    club::ShaftSearch search_;
    club::BallWatch ball_;
    club::BallEvidence ballEvidence_;

    std::thread looker_;
    std::thread searcher_;
};

} // namespace plumbmark::analysis
