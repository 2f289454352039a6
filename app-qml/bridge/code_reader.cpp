// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/code_reader.h"

#include <algorithm>

#include "bridge/in_language.h"
#include "transfer/direct.h"
#include "transfer/qr.h"

namespace plumbmark::bridge {
namespace {

constexpr int kPictureWidth = 480;

/// Every n-th pixel is enough to aim by.
QImage thinned(const video::PlaneView& luma) {
    const int step = std::max(1, luma.width / kPictureWidth);
    QImage image(luma.width / step, luma.height / step, QImage::Format_Grayscale8);
    for (int y = 0; y < image.height(); ++y) {
        uchar* row = image.scanLine(y);
        for (int x = 0; x < image.width(); ++x) {
            row[x] = luma.data[y * step * luma.stride + x * step];
        }
    }
    return image;
}

} // namespace

CodeReader::CodeReader(ports::Camera& camera, QObject* parent) : QObject(parent), camera_(&camera) {}

CodeReader::~CodeReader() {
    if (active_) {
        camera_->stop();
    }
}

void CodeReader::start() {
    if (active_) {
        return;
    }
    problem_.clear();
    const auto devices = camera_->devices();
    if (!devices.ok()) {
        fail(devices.error());
        return;
    }
    // A code is on a screen in front of the device's back: the camera there, where there is one.
    const auto back =
        std::find_if(devices->begin(), devices->end(), [](const auto& device) { return !device.front; });
    const auto& device = back == devices->end() ? devices->front() : *back;
    ports::Camera::Sink sink;
    sink.frame = [this](const video::Frame& frame) { fromCamera(frame); };
    sink.problem = [this](const base::Error& error) {
        Worker::tell(this, [this, error] {
            stop();
            fail(error);
        });
    };
    sink.ended = [this] { Worker::tell(this, [this] { stop(); }); };
    looking_ = false;
    const auto running = camera_->start(device.id, ports::fastestUseful(device.formats), std::move(sink));
    if (!running.ok()) {
        fail(running.error());
        return;
    }
    active_ = true;
    emit activeChanged();
}

void CodeReader::stop() {
    if (!active_) {
        return;
    }
    camera_->stop();
    active_ = false;
    picture_ = {};
    emit pictureChanged();
    emit activeChanged();
}

void CodeReader::fail(const base::Error& error) {
    problem_ = inLanguage(error.sentence);
    emit activeChanged();
}

/// On the camera's thread: reading a code takes longer than a frame, so it is done on the worker's.
void CodeReader::fromCamera(const video::Frame& frame) {
    if (looking_.exchange(true)) {
        return;
    }
    worker_.post([this, frame] {
        const video::PlaneView luma = frame.luma();
        const auto text = transfer::textInQrCode({luma.data, luma.width, luma.height, luma.stride},
                                                 transfer::kTicketBeginning);
        Worker::tell(this, [this, image = thinned(luma), text] {
            looking_ = false;
            if (!active_) {
                return;
            }
            picture_ = image;
            emit pictureChanged();
            if (text && transfer::Ticket::fromText(*text)) {
                stop();
                emit found(QString::fromStdString(*text));
            }
        });
    });
}

} // namespace plumbmark::bridge
