// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "video/clip.h"

#include <algorithm>
#include <map>

#include "video/detail/decoder.h"
#include "video/detail/picture.h"
#include "video/detail/sound_track.h"
#include "video/detail/timing.h"
#include "video/detail/track_index.h"

namespace plumbmark::video {
namespace {

using namespace detail;

/// How many frames may come out of order before a missing one is given up; H.264 and HEVC reorder at most 16.
constexpr int reorderReach = 16;
/// Earlier key pictures tried before decoding from the very start.
constexpr int entryAttempts = 3;

std::size_t bytesOf(const Frame& frame) {
    const auto plane = [](const PlaneView& p) {
        return static_cast<std::size_t>(p.stride) * static_cast<std::size_t>(p.height);
    };
    return plane(frame.luma()) + plane(frame.cb()) + plane(frame.cr());
}

/// Frames around the last request, bounded in bytes: what lies farthest from it goes first.
class FrameCache {
  public:
    explicit FrameCache(std::size_t bound) : bound_(bound) {}
    /// How many frames like this one fit.
    [[nodiscard]] int room(const Frame& frame) const {
        return static_cast<int>(
            std::min<std::size_t>(bound_ / std::max<std::size_t>(1, bytesOf(frame)), 1U << 20));
    }
    [[nodiscard]] const Frame* find(int index) const {
        const auto at = frames_.find(index);
        return at == frames_.end() ? nullptr : &at->second;
    }
    void add(Frame frame, int centre) {
        const std::size_t size = bytesOf(frame);
        const int index = frame.index();
        if (frames_.emplace(index, std::move(frame)).second) {
            bytes_ += size;
        }
        while (bytes_ > bound_ && frames_.size() > 1) {
            const int low = frames_.begin()->first, high = frames_.rbegin()->first;
            const auto out = centre - low > high - centre ? frames_.begin() : std::prev(frames_.end());
            bytes_ -= bytesOf(out->second);
            frames_.erase(out);
        }
    }

  private:
    std::map<int, Frame> frames_;
    std::size_t bound_;
    std::size_t bytes_ = 0;
};

std::optional<double> statedCaptureRate(const Demuxer& demuxer) {
    for (const AVDictionary* tags : {demuxer.format()->metadata, demuxer.video()->metadata}) {
        if (const AVDictionaryEntry* entry = av_dict_get(tags, "com.android.capture.fps", nullptr, 0)) {
            if (const auto rate = parseRate(entry->value)) {
                return rate;
            }
        }
    }
    return std::nullopt;
}

class FfmpegClip final : public Clip {
  public:
    explicit FfmpegClip(const ClipOptions& options)
        : cache_(options.cacheBytes), threads_(options.decoderThreads) {}
    base::Result<void> load(std::unique_ptr<ByteSource> source);

    [[nodiscard]] const ClipInfo& info() const override { return info_; }
    [[nodiscard]] const std::vector<base::Seconds>& times() const override { return times_; }
    base::Result<Frame> frame(int index) override;
    base::Result<void> stream(int first, int last, const std::function<bool(const Frame&)>& visit) override;
    base::Result<Sound> sound() override;

  private:
    void settleByDecoding();
    bool takeFirstPicture();
    void describe();
    std::optional<int> identify(const Decoder::Output& output);
    std::optional<Frame> make(Decoder::Output output, int index) {
        return maker_.make(std::move(output.picture), index, times_[static_cast<std::size_t>(index)]);
    }
    bool enter(int index, int attempt);
    bool decodeInto(int target);
    [[nodiscard]] base::Error rangeError() const {
        return base::failure("clip.range", "The clip has " + std::to_string(info_.frames) +
                                               " frames; ask for one of those.");
    }

    std::unique_ptr<Demuxer> demuxer_;
    std::unique_ptr<Decoder> decoder_;
    TrackIndex index_;
    PictureMaker maker_;
    ClipInfo info_;
    std::vector<base::Seconds> times_;
    AVRational timeBase_{1, 1};
    FrameCache cache_;
    int threads_;
    int room_ = 1; ///< frames the cache holds
    bool brokenPictures_ = false;
    bool settled_ = false;
    int lastOut_ = -1;               ///< highest frame the decoder gave since it was entered
    std::int64_t floor_ = INT64_MIN; ///< pictures shown before the entry may lack what they refer to
    bool entryDoubtful_ = false;     ///< the key picture itself hasn't come out yet
    unsigned moves_ = 0;             ///< counts what moves the decoder, so that a stream notices
};

base::Result<void> FfmpegClip::load(std::unique_ptr<ByteSource> source) {
    auto demuxer = Demuxer::open(std::move(source));
    if (!demuxer) {
        return demuxer.error();
    }
    demuxer_ = std::move(demuxer).value();
    auto decoder = Decoder::open(*demuxer_, threads_);
    if (!decoder) {
        return decoder.error();
    }
    decoder_ = std::move(decoder).value();
    timeBase_ = demuxer_->video()->time_base;
    index_ = TrackIndex::scan(*demuxer_);
    if (index_.doubtful()) {
        settleByDecoding();
    }
    if (!takeFirstPicture()) {
        if (!settled_) {
            settleByDecoding(); // the first frames can't be decoded: keep those that can
        }
        if (!takeFirstPicture()) {
            if (index_.endsEarly() || index_.coded().empty()) {
                return base::inputError("clip.truncated",
                                        "The clip ends before any picture of it can be read; copy it "
                                        "again from the camera.");
            }
            return base::inputError("clip.unsupported",
                                    "The clip's pictures can't be read here; convert it to H.264 or HEVC.");
        }
    }
    describe();
    return {};
}

/// Decodes everything once to learn which frames there really are.
void FfmpegClip::settleByDecoding() {
    settled_ = true;
    std::vector<std::int64_t> decoded;
    std::vector<bool> broken;
    if (decoder_->restart()) {
        for (auto out = decoder_->next(); out.picture; out = decoder_->next()) {
            decoded.push_back(out.pts);
            broken.push_back(out.broken);
        }
    }
    // What a cut file ends with was guessed by the decoder; nothing that follows could mend it.
    while (!broken.empty() && broken.back()) {
        decoded.pop_back();
        broken.pop_back();
    }
    brokenPictures_ = std::find(broken.begin(), broken.end(), true) != broken.end();
    const AVRational rate = demuxer_->video()->avg_frame_rate;
    const double usual = rate.num > 0 && rate.den > 0 ? 1.0 / av_q2d(rate) : 1.0 / 30.0;
    index_.settle(decoded, usual / av_q2d(timeBase_));
}

/// Makes sure that the first frame can be decoded, and takes the stored size from it: the container's figure
/// may differ.
bool FfmpegClip::takeFirstPicture() {
    const auto& shown = index_.shown();
    if (shown.empty() || !decoder_->restart()) {
        return false;
    }
    times_.clear();
    for (const std::int64_t pts : shown) {
        times_.emplace_back(static_cast<double>(pts - shown.front()) * timeBase_.num / timeBase_.den);
    }
    lastOut_ = -1;
    floor_ = INT64_MIN;
    entryDoubtful_ = false;
    ++moves_;
    for (int tries = 0; tries <= reorderReach; ++tries) {
        auto out = decoder_->next();
        if (!out.picture) {
            return false;
        }
        const auto at = identify(out);
        if (!at) {
            --tries; // hidden: before an edit's first frame
            continue;
        }
        if (*at != 0) {
            continue;
        }
        Orientation orientation;
        const std::uint8_t* matrix =
            av_stream_get_side_data(demuxer_->video(), AV_PKT_DATA_DISPLAYMATRIX, nullptr);
        if (matrix != nullptr) {
            orientation = orientationOf(reinterpret_cast<const std::int32_t*>(matrix));
        }
        const AVRational aspect =
            av_guess_sample_aspect_ratio(demuxer_->format(), demuxer_->video(), nullptr);
        maker_ = PictureMaker(out.picture->width, out.picture->height, aspect, orientation);
        info_.rotationDegrees = orientation.clockwiseDegrees;
        info_.mirrored = orientation.mirrored;
        if (orientation.skewed) {
            info_.warnings.emplace_back(
                "The clip asks for an odd turn; it was turned by the nearest right angle.");
        }
        auto first = make(std::move(out), 0);
        if (!first) {
            return false;
        }
        lastOut_ = 0;
        room_ = cache_.room(*first);
        cache_.add(*first, 0);
        return true;
    }
    return false;
}

void FfmpegClip::describe() {
    info_.width = maker_.width();
    info_.height = maker_.height();
    info_.frames = static_cast<int>(times_.size());
    info_.playbackFps = playbackRate(times_);
    info_.uneven = unevenSpacing(times_);
    info_.hasSound = demuxer_->sound() != nullptr;
    info_.codec = avcodec_get_name(demuxer_->video()->codecpar->codec_id);

    double last = static_cast<double>(index_.lastDuration()) * av_q2d(timeBase_);
    if (last <= 0.0) {
        const AVRational rate = demuxer_->video()->avg_frame_rate;
        last = info_.playbackFps > 0.0        ? 1.0 / info_.playbackFps
               : rate.num > 0 && rate.den > 0 ? 1.0 / av_q2d(rate)
                                              : 0.0;
    }
    info_.duration = base::Seconds{times_.back().value() + last};

    if (const auto stated = statedCaptureRate(*demuxer_)) {
        info_.captureFps = stated;
        info_.captureSource = "metadata";
    } else if (info_.playbackFps >= 50.0) {
        info_.captureFps = info_.playbackFps;
        info_.captureSource = "playback";
    } else {
        info_.captureSource = "unknown";
    }

    if (index_.endsEarly()) {
        info_.warnings.push_back("The file ends early; " + std::to_string(info_.frames) +
                                 (info_.frames == 1 ? " frame" : " frames") + " could be read.");
    }
    if (brokenPictures_) {
        info_.warnings.emplace_back("Parts of the file are damaged; some frames may look wrong.");
    }
    if (info_.mirrored) {
        info_.warnings.emplace_back("The clip is shown mirrored; check that left and right are right.");
    }
    if (slowedInParts(times_)) {
        info_.warnings.emplace_back(
            "The clip was already slowed down in parts, so its times can't be used; choose the "
            "original recording.");
    }
}

std::optional<int> FfmpegClip::identify(const Decoder::Output& output) {
    if (index_.countedOnly()) {
        return output.ordinal < static_cast<std::int64_t>(index_.shown().size())
                   ? std::optional(static_cast<int>(output.ordinal))
                   : std::nullopt;
    }
    if (output.pts < floor_) {
        return std::nullopt;
    }
    if (entryDoubtful_) {
        // Some clips refresh their pictures stripe by stripe and call that a key picture: decoding from there
        // shows wrong stripes for a while. A real key picture comes first and refers to nothing.
        if (output.pts != floor_ || !output.intra) {
            decoder_->lose();
            return std::nullopt;
        }
        entryDoubtful_ = false;
    }
    return index_.frameAt(output.pts);
}

/// Puts the decoder before `index`: at its key picture, then at earlier ones, at last at the start of the
/// file.
bool FfmpegClip::enter(int index, int attempt) {
    ++moves_;
    lastOut_ = -1;
    std::size_t at = index_.entryFor(index);
    for (int i = 0; i < attempt; ++i) {
        if (at == 0) {
            return false; // the start of the file was tried already
        }
        at = index_.keyBefore(at);
    }
    if (at > 0 && attempt < entryAttempts && decoder_->enterAt(index_, at)) {
        floor_ = index_.coded()[at].pts;
        entryDoubtful_ = !index_.coded()[at].hidden;
        return true;
    }
    if (at > 0 && attempt < entryAttempts) {
        return false; // landed somewhere else; the next attempt starts earlier
    }
    floor_ = INT64_MIN;
    entryDoubtful_ = false;
    return decoder_->restart();
}

/// Decodes on until `target` is in the cache.
bool FfmpegClip::decodeInto(int target) {
    ++moves_;
    for (int late = 0; late <= reorderReach;) {
        auto out = decoder_->next();
        if (!out.picture) {
            return false;
        }
        const auto at = identify(out);
        if (!at) {
            continue;
        }
        lastOut_ = std::max(lastOut_, *at);
        if (*at == target ||
            target - *at < room_) { // what would be pushed out again before it is used needs no conversion
            if (auto made = make(std::move(out), *at)) {
                cache_.add(std::move(*made), target);
            }
        }
        if (*at == target) {
            return cache_.find(target) != nullptr;
        }
        late += *at > target ? 1 : 0;
    }
    return false;
}

base::Result<Frame> FfmpegClip::frame(int index) {
    if (index < 0 || index >= info_.frames) {
        return rangeError();
    }
    if (const Frame* hit = cache_.find(index)) {
        return *hit;
    }
    const bool onTheWay =
        !decoder_->lost() && lastOut_ < index && index_.entryFor(index) < decoder_->packetsRead();
    if (onTheWay && decodeInto(index)) {
        return *cache_.find(index);
    }
    for (int attempt = 0; attempt <= entryAttempts; ++attempt) {
        if (enter(index, attempt) && decodeInto(index)) {
            return *cache_.find(index);
        }
    }
    return base::failure("clip.damaged",
                         "Frame " + std::to_string(index + 1) +
                             " of the clip can't be read; go to another frame or copy the clip again.");
}

base::Result<void> FfmpegClip::stream(int first, int last, const std::function<bool(const Frame&)>& visit) {
    if (first < 0 || last >= info_.frames || first > last) {
        return rangeError();
    }
    std::map<int, Frame> waiting; // given before their turn
    int expected = first;
    int attempt = 0;
    bool any = false;
    bool entered = !decoder_->lost() && lastOut_ == first - 1 && first > 0;
    while (expected <= last) {
        while (!entered && attempt <= entryAttempts) {
            entered = enter(expected, attempt++);
        }
        if (!entered) {
            break;
        }
        const unsigned moves = moves_;
        auto out = decoder_->next();
        const bool end = !out.picture;
        if (!end) {
            const auto at = identify(out);
            if (!at) {
                continue;
            }
            lastOut_ = std::max(lastOut_, *at);
            if (*at < expected || *at > last + reorderReach) {
                continue;
            }
            if (auto made = make(std::move(out), *at)) {
                waiting.emplace(*at, std::move(*made));
            }
        }
        const bool givenUp = end || static_cast<int>(waiting.size()) > reorderReach;
        if (givenUp && !any && attempt <= entryAttempts && waiting.count(expected) == 0) {
            waiting.clear(); // the first frame didn't come: begin earlier
            entered = false;
            continue;
        }
        while (!waiting.empty() && expected <= last && (waiting.begin()->first == expected || givenUp)) {
            const Frame now = std::move(waiting.begin()->second);
            waiting.erase(waiting.begin());
            expected = now.index() + 1;
            if (now.index() > last) {
                break;
            }
            any = true;
            if (!visit(now)) {
                return {};
            }
        }
        if (end) {
            break;
        }
        if (moves != moves_) { // the visitor asked for another frame
            waiting.clear();
            entered = false;
            attempt = 0;
        }
    }
    if (!any) {
        return base::failure("clip.damaged", "These frames of the clip can't be read; copy the clip again.");
    }
    return {};
}

base::Result<Sound> FfmpegClip::sound() {
    const double zero = static_cast<double>(index_.shown().front()) * av_q2d(timeBase_);
    Sound decoded = decodeSound(*demuxer_, zero);
    decoder_->lose();
    ++moves_;
    return decoded;
}

} // namespace

base::Result<std::unique_ptr<Clip>> Clip::open(std::unique_ptr<ByteSource> source,
                                               const ClipOptions& options) {
    auto clip = std::make_unique<FfmpegClip>(options);
    if (auto loaded = clip->load(std::move(source)); !loaded) {
        return loaded.error();
    }
    return std::unique_ptr<Clip>(std::move(clip));
}

base::Result<std::unique_ptr<Clip>> Clip::open(const std::filesystem::path& path,
                                               const ClipOptions& options) {
    auto source = openFile(path);
    if (!source) {
        return source.error();
    }
    return open(std::move(source).value(), options);
}

} // namespace plumbmark::video
