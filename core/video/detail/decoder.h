// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "video/detail/demuxer.h"
#include "video/detail/track_index.h"

namespace plumbmark::video::detail {

/// The picture track's decoder with its place in the container. It only ever moves forward; going anywhere
/// else is `enterAt` or `restart`.
class Decoder {
  public:
    /// Error "clip.unsupported".
    static base::Result<std::unique_ptr<Decoder>> open(Demuxer& demuxer, int threads);

    /// Decodes from the start of the file.
    bool restart();
    /// Jumps so that decoding begins with coded picture `at`, a key picture. False where the container
    /// doesn't land at or before it, which its packets' times prove.
    bool enterAt(const TrackIndex& index, std::size_t at);
    /// Called after somebody else has read from the container: nothing is known about its place any more.
    void lose() { lost_ = true; }
    [[nodiscard]] bool lost() const { return lost_; }

    struct Output {
        PicturePtr picture;
        std::int64_t pts = AV_NOPTS_VALUE;
        std::int64_t ordinal = 0; ///< pictures given since restart()
        bool intra = false;       ///< coded without reference to others
        bool broken = false;      ///< the decoder had to guess parts of it
    };
    /// The next picture in the decoder's order; no picture at the end.
    Output next();
    /// How far the packets have been read, as a place in decoding order.
    [[nodiscard]] std::size_t packetsRead() const { return nextPacket_; }

  private:
    explicit Decoder(Demuxer& demuxer) : demuxer_(demuxer) {}
    bool readPacket(); ///< the next packet of the picture track into packet_
    void feed();

    Demuxer& demuxer_;
    CodecPtr codec_;
    PacketPtr packet_{av_packet_alloc()};
    bool packetWaiting_ = false;
    bool draining_ = false;
    bool lost_ = true;
    std::size_t nextPacket_ = 0;
    std::int64_t ordinal_ = 0;
};

} // namespace plumbmark::video::detail
