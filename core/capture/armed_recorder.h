// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <deque>
#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "base/quantity.h"
#include "base/result.h"
#include "capture/motion_watch.h"
#include "capture/sound_watch.h"
#include "capture/swing_watch.h"
#include "video/frame.h"
#include "video/live.h"

namespace plumbmark::capture {

struct RecorderOptions {
    std::filesystem::path folder; ///< where takes go; must exist
    std::string stem = "take";    ///< takes are called STEM-1.mp4, ...
    double soundRate = 0.0;       ///< 0: no sound
    double keepSeconds = 8.0;     ///< how long the past stays at hand
    double beforeSeconds = 2.5;   ///< a take begins this long before the hit (up to half a second earlier)
    double afterSeconds = 1.5;    ///< and ends this long after it
    std::size_t keepBytes = std::size_t{48} << 20; ///< the past is shortened rather than going beyond this
    bool watch = true;                             ///< false: only cut() makes takes
    int quality = 23;                              ///< of the H.264 coding, lower is better
    std::string preset = "superfast";
    double askedFps = 60.0; ///< what the camera was asked for
};

/// One swing cut out.
struct Take {
    std::filesystem::path file;
    base::Seconds begin; ///< camera time of the clip's first picture
    base::Seconds hit;   ///< camera time of the hit, or of the fastest instant
    How how = How::motion;
    int frames = 0;
    double measuredFps = 0.0; ///< 1 / median distance of the pictures
    base::Seconds longestGap; ///< largest distance of two pictures
    int dropped = 0;          ///< pictures missing by the median distance
    bool uneven = false;      ///< a gap over 1.5 distances, or under 95 % of the asked rate
    bool hasSound = false;
    std::vector<std::string> warnings; ///< plain sentences
};

/// The armed camera: frames and sound in at the camera's pace, takes out. Keeps the last seconds in coded
/// form in memory, notices a swing (or is told by cut()) and writes it to a clip with the camera's own times.
/// A take begins to be written as soon as something may have been a hit, so that a killed process leaves it
/// for recover(). Not thread-safe: one thread feeds it.
class ArmedRecorder {
  public:
    explicit ArmedRecorder(RecorderOptions options)
        : options_(std::move(options)), sound_(options_.soundRate) {}
    ~ArmedRecorder();
    ArmedRecorder(const ArmedRecorder&) = delete;
    ArmedRecorder& operator=(const ArmedRecorder&) = delete;

    /// Times must rise; a frame that is not later than the one before is left out and counted. Errors
    /// (failure): those of video::LiveEncoder and video::TakeFile. After an error the recorder can go on: the
    /// take it was writing is lost.
    base::Result<void> frame(const video::Frame& frame);
    base::Result<void> sound(std::span<const float> mono, base::Seconds time);
    /// Whether swings are noticed; cut() works all the same.
    void setWatching(bool watch);
    /// The coach's key, remote control or finger: the hit was at `time` (nothing: now).
    void cut(std::optional<base::Seconds> time = std::nullopt);
    /// Why the last cut() could not begin a take; told once.
    [[nodiscard]] std::optional<base::Error> problem() { return std::exchange(problem_, std::nullopt); }
    /// Ends all: a take being written is finished with what there is.
    base::Result<void> close();

    /// Takes finished since the last call.
    [[nodiscard]] std::vector<Take> takes();

    [[nodiscard]] bool writing() const { return open_ != nullptr; }
    [[nodiscard]] double measuredFps() const; ///< over the kept past; 0 before the first second
    [[nodiscard]] int framesLeftOut() const { return leftOut_; }
    [[nodiscard]] std::size_t keptBytes() const; ///< coded pictures and sound at hand
    [[nodiscard]] base::Seconds keptSeconds() const;
    [[nodiscard]] const std::optional<MotionSample>& motion() const { return motion_; }

  private:
    struct Block {
        base::Seconds time;
        std::vector<float> samples;
    };
    struct Open {
        std::unique_ptr<video::TakeFile> file;
        Take take;
        bool sure = false;
        base::Seconds end;
        std::vector<double> times;
    };
    base::Result<void> begin(base::Seconds hit, How how, bool sure);
    base::Result<void> addPicture(const video::CodedPicture& picture);
    base::Result<void> finish();
    base::Result<void> follow(const SwingWatch::Event& event);
    void drop();
    void shorten();

    RecorderOptions options_;
    std::unique_ptr<video::LiveEncoder> encoder_;
    MotionWatch motionWatch_;
    SwingWatch swings_;
    SoundWatch sound_;
    std::deque<video::CodedPicture> pictures_;
    std::deque<Block> blocks_;
    std::size_t pictureBytes_ = 0, soundSamples_ = 0;
    std::optional<base::Seconds> last_;
    std::optional<MotionSample> motion_;
    std::unique_ptr<Open> open_;
    std::vector<Take> done_;
    std::optional<base::Error> problem_;
    int number_ = 0, leftOut_ = 0;
};

} // namespace plumbmark::capture
