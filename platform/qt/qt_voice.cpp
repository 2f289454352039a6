// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "qt/qt_voice.h"

#include <QAudioDevice>
#include <QAudioSink>
#include <QAudioSource>
#include <QBuffer>
#include <QMediaDevices>
#include <algorithm>
#include <cmath>
#include <vector>

namespace plumbmark::platform {
namespace {

bool canRead(const QAudioFormat& format) {
    return format.sampleFormat() == QAudioFormat::Int16 || format.sampleFormat() == QAudioFormat::Float;
}

/// One channel of 16 bits at this rate, else what the device likes best.
QAudioFormat formatFor(const QAudioDevice& device, int rate) {
    QAudioFormat format;
    format.setSampleRate(rate);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    return device.isFormatSupported(format) ? format : device.preferredFormat();
}

} // namespace

struct QtMicrophone::Parts {
    std::unique_ptr<QAudioSource> source;
    QMetaObject::Connection reading;
};

QtMicrophone::QtMicrophone() : parts_(std::make_unique<Parts>()) {}

QtMicrophone::~QtMicrophone() {
    stop();
}

base::Result<double> QtMicrophone::start(Heard heard) {
    stop();
    const auto none = [] {
        return base::inputError("microphone.none",
                                "No microphone is there: the review is kept without a voice. Plug one in and "
                                "record again.");
    };
    const QAudioDevice device = QMediaDevices::defaultAudioInput();
    if (device.isNull()) {
        return none();
    }
    const QAudioFormat format = formatFor(device, 48000);
    if (!canRead(format)) {
        return none();
    }
    parts_->source = std::make_unique<QAudioSource>(device, format);
    QIODevice* stream = parts_->source->start();
    if (stream == nullptr) {
        parts_->source.reset();
        return base::inputError(
            "microphone.denied",
            "The microphone cannot be used; allow it in the system's settings. The review "
            "is kept without a voice.");
    }
    parts_->reading = QObject::connect(stream, &QIODevice::readyRead, stream, [stream, format, heard] {
        const QByteArray bytes = stream->readAll();
        const int channels = std::max(1, format.channelCount());
        const int size = format.bytesPerSample() * channels;
        std::vector<float> mono(static_cast<std::size_t>(bytes.size() / std::max(1, size)));
        for (std::size_t i = 0; i < mono.size(); ++i) {
            float sum = 0;
            for (int c = 0; c < channels; ++c) {
                sum += format.normalizedSampleValue(
                    bytes.constData() + static_cast<std::ptrdiff_t>(i) * size + c * format.bytesPerSample());
            }
            mono[i] = sum / static_cast<float>(channels);
        }
        if (!mono.empty()) {
            heard(mono);
        }
    });
    return static_cast<double>(format.sampleRate());
}

void QtMicrophone::stop() {
    QObject::disconnect(parts_->reading);
    if (parts_->source) {
        parts_->source->stop();
        parts_->source.reset();
    }
}

struct QtSpeaker::Parts {
    std::unique_ptr<QAudioSink> sink;
    QByteArray bytes;
    QBuffer buffer;
};

QtSpeaker::QtSpeaker() : parts_(std::make_unique<Parts>()) {}

QtSpeaker::~QtSpeaker() {
    stop();
}

void QtSpeaker::play(const video::Sound& sound, base::Seconds from) {
    stop();
    const QAudioDevice device = QMediaDevices::defaultAudioOutput();
    if (device.isNull() || sound.rate <= 0) {
        return;
    }
    const QAudioFormat format = formatFor(device, static_cast<int>(std::lround(sound.rate)));
    if (!canRead(format)) {
        return;
    }
    // Linear between samples is enough for speech; most devices take the voice's own rate anyway.
    const int channels = std::max(1, format.channelCount());
    const double length = static_cast<double>(sound.samples.size()) / sound.rate + sound.start.value();
    const auto count = static_cast<qsizetype>(std::max(0.0, (length - from.value()) * format.sampleRate()));
    parts_->bytes.resize(count * channels * format.bytesPerSample());
    for (qsizetype i = 0; i < count; ++i) {
        const double at =
            (from.value() + static_cast<double>(i) / format.sampleRate() - sound.start.value()) * sound.rate;
        const auto k = static_cast<std::ptrdiff_t>(std::floor(at));
        float value = 0.0F;
        if (k >= 0 && k + 1 < static_cast<std::ptrdiff_t>(sound.samples.size())) {
            const auto share = static_cast<float>(at - static_cast<double>(k));
            value = sound.samples[static_cast<std::size_t>(k)] * (1 - share) +
                    sound.samples[static_cast<std::size_t>(k) + 1] * share;
        }
        for (int c = 0; c < channels; ++c) {
            char* to = parts_->bytes.data() + (i * channels + c) * format.bytesPerSample();
            if (format.sampleFormat() == QAudioFormat::Float) {
                *reinterpret_cast<float*>(to) = value;
            } else {
                *reinterpret_cast<qint16*>(to) =
                    static_cast<qint16>(std::lround(std::clamp(value, -1.0F, 1.0F) * 32767.0F));
            }
        }
    }
    parts_->buffer.setBuffer(&parts_->bytes);
    parts_->buffer.open(QIODevice::ReadOnly);
    parts_->sink = std::make_unique<QAudioSink>(device, format);
    parts_->sink->start(&parts_->buffer);
}

void QtSpeaker::stop() {
    if (parts_->sink) {
        parts_->sink->stop();
        parts_->sink.reset();
    }
    parts_->buffer.close();
}

} // namespace plumbmark::platform
