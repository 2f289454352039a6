// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "video/detail/demuxer.h"

namespace plumbmark::video::detail {

/// One coded picture, in decoding order.
struct CodedPicture {
    std::int64_t pts = AV_NOPTS_VALUE;
    std::int64_t dts = AV_NOPTS_VALUE;
    std::int64_t duration = 0;
    bool key = false;
    bool hidden = false; ///< the container says: decode, but don't show (before an edit's first frame)
};

/// Everything known about the picture track before decoding: which frames there are and where to enter it.
/// A frame's identity is its place among the shown frames in presentation order.
class TrackIndex {
  public:
    /// Reads every packet once; the container's place is moved.
    static TrackIndex scan(Demuxer& demuxer);

    [[nodiscard]] const std::vector<CodedPicture>& coded() const { return coded_; }
    [[nodiscard]] const std::vector<std::int64_t>& shown() const { return shown_; } ///< pts, strictly rising
    [[nodiscard]] bool endsEarly() const { return endsEarly_; }
    /// The packets alone don't settle which frames a decoder will give: decode once and call `settle`.
    [[nodiscard]] bool doubtful() const { return doubtful_; }
    /// The times on packets are missing, so a frame is known only by counting decoded pictures.
    [[nodiscard]] bool countedOnly() const { return countedOnly_; }
    [[nodiscard]] std::int64_t lastDuration() const { return lastDuration_; } ///< 0: unknown

    /// What decoding everything from the start gave, in the order it came; AV_NOPTS_VALUE where a picture had
    /// no time. `usualGap` in ticks is used only where no two pictures have one.
    void settle(const std::vector<std::int64_t>& decoded, double usualGap);

    [[nodiscard]] std::optional<int> frameAt(std::int64_t pts) const;
    /// Place in decoding order of the packet with these times.
    [[nodiscard]] std::optional<std::size_t> codedAt(std::int64_t pts, std::int64_t dts) const;
    /// The last key picture from which `frame` can be decoded rightly: not later than the frame in decoding
    /// order nor in presentation order (pictures that follow a key picture but are shown before it may need
    /// what came earlier: open groups of pictures).
    [[nodiscard]] std::size_t entryFor(int frame) const;
    /// The key picture before coded picture `at`; 0 where there is none.
    [[nodiscard]] std::size_t keyBefore(std::size_t at) const;

  private:
    void order();

    std::vector<CodedPicture> coded_;
    std::vector<std::int64_t> shown_;
    std::vector<std::size_t> byPts_;   ///< coded places sorted by (pts, dts)
    std::vector<std::size_t> codedOf_; ///< shown frame -> coded place
    std::int64_t lastDuration_ = 0;
    bool endsEarly_ = false;
    bool doubtful_ = false;
    bool countedOnly_ = false;
};

} // namespace plumbmark::video::detail
