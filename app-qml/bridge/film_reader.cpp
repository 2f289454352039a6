// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/film_reader.h"

#include "bridge/in_language.h"
#include <algorithm>

#include "stage/stage_content.h"

namespace plumbmark::bridge {

FilmReader::FilmReader(QObject* parent) : QObject(parent), thread_([this] { run(); }) {}

FilmReader::~FilmReader() {
    {
        const std::lock_guard lock(mutex_);
        stop_ = true;
    }
    wake_.notify_one();
    thread_.join();
}

void FilmReader::open(const std::filesystem::path& film) {
    const std::lock_guard lock(mutex_);
    film_ = film;
    wanted_.reset();
    wantedTime_.reset();
    stills_.clear();
    wake_.notify_one();
}

void FilmReader::request(int frame) {
    const std::lock_guard lock(mutex_);
    wanted_ = frame;
    wantedTime_.reset();
    wake_.notify_one();
}

void FilmReader::requestTime(double seconds) {
    const std::lock_guard lock(mutex_);
    wantedTime_ = seconds;
    wanted_.reset();
    wake_.notify_one();
}

void FilmReader::requestStill(int frame, int height, QRectF part) {
    const std::lock_guard lock(mutex_);
    stills_.push_back({frame, height, part});
    wake_.notify_one();
}

void FilmReader::run() {
    std::unique_ptr<video::Clip> clip;
    std::unique_lock lock(mutex_);
    for (;;) {
        wake_.wait(lock, [this] { return stop_ || film_ || wanted_ || wantedTime_ || !stills_.empty(); });
        if (stop_) {
            return;
        }
        if (film_) {
            const std::filesystem::path film = *std::exchange(film_, std::nullopt);
            lock.unlock();
            auto result = video::Clip::open(film);
            if (result.ok()) {
                clip = std::move(*result);
                emit opened();
            } else {
                clip.reset();
                emit failed(inLanguage(result.error().sentence));
            }
            lock.lock();
            continue;
        }
        if (wantedTime_) {
            const base::Seconds time{*std::exchange(wantedTime_, std::nullopt)};
            if (clip && !clip->times().empty()) {
                const auto& times = clip->times();
                const auto after = std::upper_bound(times.begin(), times.end(), time);
                wanted_ = static_cast<int>(std::max<std::ptrdiff_t>(0, after - times.begin() - 1));
            }
        }
        if (wanted_) {
            const int frame = *std::exchange(wanted_, std::nullopt);
            lock.unlock();
            if (clip && frame >= 0 && frame < clip->info().frames) {
                auto picture = clip->frame(frame);
                if (picture.ok()) {
                    emit pictureReady(picture->index(), picture->time().value(), stage::toImage(*picture));
                } else {
                    emit failed(inLanguage(picture.error().sentence));
                }
            }
            lock.lock();
            continue;
        }
        const Still still = stills_.front();
        stills_.pop_front();
        lock.unlock();
        if (clip && still.frame >= 0 && still.frame < clip->info().frames) {
            if (auto picture = clip->frame(still.frame); picture.ok()) {
                QImage image = stage::toImage(*picture);
                if (!still.part.isEmpty()) {
                    image = image.copy(still.part.toRect().intersected(image.rect()));
                }
                emit stillReady(still.frame, image.scaledToHeight(still.height, Qt::SmoothTransformation));
            }
        }
        lock.lock();
    }
}

} // namespace plumbmark::bridge
