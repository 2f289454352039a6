// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/detail/track_index.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

namespace plumbmark::video::detail {
namespace {

/// Codecs whose every packet in MP4 or Matroska is one shown picture. Others (VP8's invisible pictures,
/// packed MPEG-4) are decoded once to know.
bool onePacketOnePicture(const AVCodecParameters& codec) {
    switch (codec.codec_id) {
    case AV_CODEC_ID_H264:
        // A packet may be a single field.
        return codec.field_order == AV_FIELD_UNKNOWN || codec.field_order == AV_FIELD_PROGRESSIVE;
    case AV_CODEC_ID_HEVC:
    case AV_CODEC_ID_MJPEG:
    case AV_CODEC_ID_PRORES:
        return true;
    default:
        return false;
    }
}

/// MP4's index tells every packet's place in the file, so a cut file shows without decoding.
bool indexPointsBeyond(AVStream* stream, std::int64_t bytes) {
    const int entries = avformat_index_get_entries_count(stream);
    for (int i = 0; i < entries; ++i) {
        const AVIndexEntry* entry = avformat_index_get_entry(stream, i);
        if (entry->pos + entry->size > bytes) {
            return true;
        }
    }
    return false;
}

/// Gives frames without a time one in step with their neighbours; the result rises strictly.
std::vector<std::int64_t> fillTimes(const std::vector<std::int64_t>& decoded, double usualGap) {
    std::vector<std::size_t> known;
    for (std::size_t i = 0; i < decoded.size(); ++i) {
        const bool later = known.empty() || decoded[i] > decoded[known.back()];
        if (decoded[i] != AV_NOPTS_VALUE && later) {
            known.push_back(i);
        }
    }
    double gap = std::max(1.0, usualGap);
    if (known.size() > 1) {
        std::vector<double> gaps;
        for (std::size_t k = 1; k < known.size(); ++k) {
            gaps.push_back(static_cast<double>(decoded[known[k]] - decoded[known[k - 1]]) /
                           static_cast<double>(known[k] - known[k - 1]));
        }
        std::nth_element(gaps.begin(), gaps.begin() + static_cast<std::ptrdiff_t>(gaps.size() / 2),
                         gaps.end());
        const double middle = gaps[gaps.size() / 2];
        const double mean = static_cast<double>(decoded[known.back()] - decoded[known.front()]) /
                            static_cast<double>(known.back() - known.front());
        // Coarse clocks round every gap; the mean of an even clip is finer than the median.
        gap = std::max(1.0, std::abs(mean - middle) < 0.2 * middle ? mean : middle);
    }
    std::vector<std::int64_t> times;
    std::size_t next = 0; // first known frame at or after i
    for (std::size_t i = 0; i < decoded.size(); ++i) {
        while (next < known.size() && known[next] < i) {
            ++next;
        }
        double time = gap * static_cast<double>(i);
        if (next < known.size() && known[next] == i) {
            time = static_cast<double>(decoded[i]);
        } else if (next < known.size() && next > 0) {
            const auto before = static_cast<double>(decoded[known[next - 1]]);
            const auto after = static_cast<double>(decoded[known[next]]);
            time = before + (after - before) * static_cast<double>(i - known[next - 1]) /
                                static_cast<double>(known[next] - known[next - 1]);
        } else if (next < known.size()) {
            time = static_cast<double>(decoded[known[next]]) - gap * static_cast<double>(known[next] - i);
        } else if (next > 0) {
            time = static_cast<double>(decoded[known[next - 1]]) +
                   gap * static_cast<double>(i - known[next - 1]);
        }
        const std::int64_t ticks = std::llround(time);
        times.push_back(times.empty() || ticks > times.back() ? ticks : times.back() + 1);
    }
    return times;
}

} // namespace

TrackIndex TrackIndex::scan(Demuxer& demuxer) {
    TrackIndex index;
    const bool mp4 = demuxer.isMp4(), matroska = demuxer.isMatroska();
    // Matroska states its length but has no list of packets: sound counts there as well.
    demuxer.readOnly(matroska ? -1 : demuxer.video()->index);
    PacketPtr packet{av_packet_alloc()};
    double end = 0.0;
    int reading = 0;
    while ((reading = av_read_frame(demuxer.format(), packet.get())) >= 0) {
        const AVStream* stream = demuxer.format()->streams[packet->stream_index];
        if (packet->pts != AV_NOPTS_VALUE) {
            end = std::max(end,
                           static_cast<double>(packet->pts + packet->duration) * av_q2d(stream->time_base));
        }
        const bool torn = (packet->flags & AV_PKT_FLAG_CORRUPT) != 0 && (mp4 || matroska);
        index.endsEarly_ = index.endsEarly_ || torn;
        if (stream == demuxer.video() && !torn && packet->size > 0) {
            index.coded_.push_back({packet->pts, packet->dts, packet->duration,
                                    (packet->flags & AV_PKT_FLAG_KEY) != 0,
                                    (packet->flags & AV_PKT_FLAG_DISCARD) != 0});
        }
        av_packet_unref(packet.get());
    }
    if (mp4) {
        index.endsEarly_ = index.endsEarly_ || indexPointsBeyond(demuxer.video(), demuxer.bytes());
    } else if (matroska && demuxer.format()->duration > 0) {
        const double stated = static_cast<double>(demuxer.format()->duration) / AV_TIME_BASE;
        const double start = demuxer.format()->start_time != AV_NOPTS_VALUE
                                 ? static_cast<double>(demuxer.format()->start_time) / AV_TIME_BASE
                                 : 0.0;
        index.endsEarly_ = index.endsEarly_ || end < std::min(stated, stated + start) - 0.1;
    }
    index.endsEarly_ = index.endsEarly_ || (reading != AVERROR_EOF && reading < 0);

    const auto& coded = index.coded_;
    index.doubtful_ = index.endsEarly_ || !(mp4 || matroska) ||
                      !onePacketOnePicture(*demuxer.video()->codecpar) || coded.empty() || !coded.front().key;
    for (const auto& picture : coded) {
        index.countedOnly_ = index.countedOnly_ || picture.pts == AV_NOPTS_VALUE;
    }
    index.doubtful_ = index.doubtful_ || index.countedOnly_;
    // Shown before the first key picture but coded after it: needs pictures the file doesn't hold.
    if (!coded.empty()) {
        index.doubtful_ =
            index.doubtful_ || std::any_of(coded.begin(), coded.end(), [&](const CodedPicture& p) {
                return !p.hidden && p.pts < coded.front().pts;
            });
    }
    if (!index.countedOnly_) {
        for (const auto& picture : coded) {
            if (!picture.hidden) {
                index.shown_.push_back(picture.pts);
            }
        }
        std::sort(index.shown_.begin(), index.shown_.end());
        const auto twice = std::unique(index.shown_.begin(), index.shown_.end());
        index.doubtful_ = index.doubtful_ || twice != index.shown_.end();
        index.shown_.erase(twice, index.shown_.end());
    }
    index.order();
    return index;
}

void TrackIndex::settle(const std::vector<std::int64_t>& decoded, double usualGap) {
    shown_.clear();
    if (countedOnly_) {
        shown_ = fillTimes(decoded, usualGap);
    } else {
        shown_ = decoded;
        std::sort(shown_.begin(), shown_.end());
        shown_.erase(std::unique(shown_.begin(), shown_.end()), shown_.end());
    }
    doubtful_ = false;
    order();
}

void TrackIndex::order() {
    byPts_.resize(coded_.size());
    std::iota(byPts_.begin(), byPts_.end(), std::size_t{0});
    std::sort(byPts_.begin(), byPts_.end(), [&](std::size_t a, std::size_t b) {
        return std::tie(coded_[a].pts, coded_[a].dts, a) < std::tie(coded_[b].pts, coded_[b].dts, b);
    });
    codedOf_.assign(shown_.size(), 0);
    if (!countedOnly_) {
        for (std::size_t at = coded_.size(); at-- > 0;) {
            if (!coded_[at].hidden) {
                if (const auto frame = frameAt(coded_[at].pts)) {
                    codedOf_[static_cast<std::size_t>(*frame)] = at;
                }
            }
        }
    }
    lastDuration_ = 0;
    if (!shown_.empty() && !countedOnly_ && !coded_.empty()) {
        lastDuration_ = coded_[codedOf_.back()].duration;
    }
}

std::optional<int> TrackIndex::frameAt(std::int64_t pts) const {
    const auto at = std::lower_bound(shown_.begin(), shown_.end(), pts);
    if (at == shown_.end() || *at != pts) {
        return std::nullopt;
    }
    return static_cast<int>(at - shown_.begin());
}

std::optional<std::size_t> TrackIndex::codedAt(std::int64_t pts, std::int64_t dts) const {
    const auto first =
        std::lower_bound(byPts_.begin(), byPts_.end(), pts,
                         [&](std::size_t place, std::int64_t wanted) { return coded_[place].pts < wanted; });
    const auto same = [&](auto at) { return at != byPts_.end() && coded_[*at].pts == pts; };
    if (!same(first)) {
        return std::nullopt;
    }
    if (!same(first + 1)) {
        return *first;
    }
    // Only repeated edits show the same time twice. Containers without decoding times let FFmpeg guess them,
    // and it guesses differently after a seek: that is why they are looked at only here.
    for (auto at = first; same(at); ++at) {
        if (coded_[*at].dts == dts) {
            return *at;
        }
    }
    return std::nullopt;
}

std::size_t TrackIndex::entryFor(int frame) const {
    if (countedOnly_) {
        return 0;
    }
    const auto wanted = static_cast<std::size_t>(frame);
    for (std::size_t at = codedOf_[wanted] + 1; at-- > 0;) {
        if (coded_[at].key && coded_[at].pts <= shown_[wanted]) {
            return at;
        }
    }
    return 0;
}

std::size_t TrackIndex::keyBefore(std::size_t at) const {
    while (at > 0) {
        if (coded_[--at].key) {
            return at;
        }
    }
    return 0;
}

} // namespace plumbmark::video::detail
