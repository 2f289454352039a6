// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "base/result.h"
#include "body/observation.h"
#include "marks/player.h"
#include "video/frame.h"

namespace plumbmark::body {

/// The pose network's file as fetched (pose_landmark_lite/full/heavy.tflite).
using NetworkBytes = std::shared_ptr<const std::vector<unsigned char>>;

/// Looks for the player and follows them from frame to frame. Frames may be skipped; they must come in time
/// order (call restart() after a jump). Not thread-safe; may use both cores inside.
class Observer {
  public:
    /// Errors (input): "network.missing" (no bytes), "network.unknown" (not one of the pinned files),
    /// "network.broken" (cannot be read as a network).
    /// `view` decides how the crop is turned: down-the-line the bent trunk is stood upright in it (the
    /// network pulls bent trunks upright), face-on only while the hands are below the shoulders.
    static base::Result<std::unique_ptr<Observer>> create(const NetworkBytes& bytes,
                                                          marks::View view = marks::View::faceOn);
    virtual ~Observer() = default;

    /// Nothing where no person can be told. The first call (and the first after a loss) searches the picture,
    /// which costs some 20 to 60 network runs; later calls one or two.
    virtual base::Result<std::optional<Observation>> observe(const video::Frame& frame) = 0;

    /// Others of about the player's size seen in the first search, upright picture pixels. Whether the right
    /// one is followed is then the coach's to say.
    [[nodiscard]] virtual std::vector<Region> others() const = 0;

    /// The first search saw somebody clearly only with the picture on its head. Nobody is followed then.
    [[nodiscard]] virtual bool upsideDown() const = 0;

    /// Asked between network runs; true ends a search early with nobody found. May be empty.
    virtual void stopWhen(std::function<bool()> stop) = 0;

    /// Forgets where the player was.
    virtual void restart() = 0;

    /// The same, but the first look goes where somebody is known to stand (the region of an earlier
    /// observation, upright picture pixels); the picture is searched only when nobody is there.
    virtual void restartNear(const Region& region) = 0;
};

/// Which frames deserve a look: one every 33 ms of real time, one every 12 ms while the hands move fast (the
/// downswing and the hit), one every 100 ms while nobody is there. Cheap; ask for every frame in order.
class Cadence {
  public:
    explicit Cadence(double realPerShown = 1.0) : realPerShown_(realPerShown) {}
    [[nodiscard]] bool due(base::Seconds time) const;
    /// Tell it what the look gave.
    void seen(base::Seconds time, const std::optional<Observation>& observation);

  private:
    double realPerShown_;
    std::optional<base::Seconds> last_;
    std::optional<base::Vec2> hands_;
    bool fast_ = false;
};

} // namespace plumbmark::body
