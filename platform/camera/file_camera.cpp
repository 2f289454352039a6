// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "camera/file_camera.h"

#include <memory>

#include "capture/file_feed.h"

namespace plumbmark::platform {

base::Result<std::vector<ports::CameraDevice>> FileCamera::devices() {
    auto feed = capture::FileFeed::open(clips_);
    if (!feed) {
        return feed.error();
    }
    const auto& info = feed->info();
    ports::CameraDevice device;
    device.id = "file";
    device.name = clips_.front().filename().string();
    device.formats.push_back({info.width, info.height, info.playbackFps, true});
    return std::vector<ports::CameraDevice>{device};
}

base::Result<ports::Camera::Running> FileCamera::start(const std::string&,
                                                       const std::optional<ports::CameraFormat>&, Sink sink) {
    stop();
    auto opened = capture::FileFeed::open(clips_);
    if (!opened) {
        return opened.error();
    }
    auto feed = std::make_shared<capture::FileFeed>(std::move(*opened));
    Running running;
    running.asked = {feed->info().width, feed->info().height, feed->info().playbackFps, true};
    running.soundRate = feed->soundRate();
    running.deviceName = clips_.front().filename().string();
    stop_ = false;
    thread_ = std::thread([this, feed, sink = std::move(sink)] {
        const auto played = feed->play(pace_ == Pace::own ? capture::FileFeed::Pace::camera
                                                          : capture::FileFeed::Pace::asFastAsCan,
                                       {[&](const video::Frame& frame) {
                                            if (!stop_) {
                                                sink.frame(frame);
                                            }
                                            return !stop_;
                                        },
                                        [&](std::span<const float> mono, base::Seconds time) {
                                            if (!stop_ && sink.sound) {
                                                sink.sound(mono, time);
                                            }
                                        }});
        if (stop_) {
            return;
        }
        if (!played && sink.problem) {
            sink.problem(played.error());
        } else if (sink.ended) {
            sink.ended();
        }
    });
    return running;
}

void FileCamera::stop() {
    stop_ = true;
    if (thread_.joinable()) {
        thread_.join();
    }
}

} // namespace plumbmark::platform
