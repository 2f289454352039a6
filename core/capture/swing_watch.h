// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <deque>
#include <optional>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "capture/motion_watch.h"

namespace plumbmark::capture {

/// What told that a swing happened.
enum class How { soundAndMotion, motion, byHand };
[[nodiscard]] std::string_view howName(How how); ///< "sound+motion", "motion", "by hand"

/// Tells a swing from walking, waggling and slow rehearsals by the shape of the motion in time, and by the
/// sound of the hit where there is one. Shape of a swing: nearly still - a first burst (going back) - a short
/// lull (the top) - a second, shorter burst (down and through) - quiet again at the same place. With the
/// sound of a hit at the second burst the lull may be shallow and the motion small (chips and putts); without
/// it the motion must also reach as high and wide as a full swing. Thresholds: shares of the swing's own
/// peak, so that distance and size matter little. Common sense and the development swings; no source. Pure:
/// samples in, answers out.
class SwingWatch {
  public:
    enum class Kind {
        maybe, ///< a hit may just have happened; begin to keep it. Again: it was at `time` rather
        yes,   ///< it was a swing; `time` is the hit, or the fastest instant
        no,    ///< the last maybe was something else
    };
    struct Event {
        Kind kind = Kind::maybe;
        base::Seconds time;
        How how = How::motion;
    };

    /// Samples in time order. At most one event for each.
    std::optional<Event> push(const MotionSample& sample);
    /// A sharp onset in the sound; may come up to half a second late.
    void hit(base::Seconds time);
    /// No more samples come: decides an open maybe on what there is.
    std::optional<Event> finish();
    /// Forgets the last seconds (camera moved or was started again).
    void restart();

  private:
    struct Shape {
        bool before = false; ///< what comes before the peak fits
        bool after = false;  ///< and what comes after
        std::optional<base::Seconds> hit;
    };
    [[nodiscard]] Shape shapeAt(std::size_t peak) const;
    [[nodiscard]] std::size_t indexAt(double seconds) const;
    [[nodiscard]] std::optional<std::size_t> peakIn(double from, double to) const;
    std::optional<Event> decide();

    std::deque<MotionSample> samples_; ///< the last 5 s, area smoothed over three samples
    std::deque<MotionSample> raw_;
    std::deque<double> hits_;
    std::optional<double> pending_; ///< peak of the open maybe
    std::optional<double> quietUntil_;
};

} // namespace plumbmark::capture
