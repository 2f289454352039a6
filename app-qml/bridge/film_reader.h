// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QImage>
#include <QObject>
#include <condition_variable>
#include <deque>
#include <filesystem>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "video/clip.h"

namespace plumbmark::bridge {

/// Reads pictures of one film on its own thread. Requests for the stage are a mailbox of one: a newer request
/// takes the place of one not yet begun, so that a fast finger never queues work. Stills are read when the
/// stage is quiet.
class FilmReader : public QObject {
    Q_OBJECT

  public:
    explicit FilmReader(QObject* parent = nullptr);
    ~FilmReader() override;

    void open(const std::filesystem::path& film);
    void request(int frame);
    /// The frame that is shown at this presentation time: the last one not after it.
    void requestTime(double seconds);
    /// A small picture, `height` px high, of `part` of the frame (empty: the whole).
    void requestStill(int frame, int height, QRectF part = {});

  signals:
    void opened();
    void failed(const QString& sentence);
    void pictureReady(int frame, double seconds, const QImage& picture);
    void stillReady(int frame, const QImage& picture);

  private:
    struct Still {
        int frame = 0;
        int height = 0;
        QRectF part;
    };
    void run();

    std::mutex mutex_;
    std::condition_variable wake_;
    bool stop_ = false;
    std::optional<std::filesystem::path> film_;
    std::optional<int> wanted_;
    std::optional<double> wantedTime_; ///< instead of a frame
    std::deque<Still> stills_;
    std::thread thread_;
};

} // namespace plumbmark::bridge
