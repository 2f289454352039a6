// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "qt/qt_camera.h"

#include <QAudioDevice>
#include <QAudioSource>
#include <QCamera>
#include <QCameraDevice>
#include <QElapsedTimer>
#include <QMediaCaptureSession>
#include <QMediaDevices>
#include <QObject>
#include <QThread>
#include <QVideoFrame>
#include <QVideoSink>
#include <cmath>

#include "qt/picture_planes.h"

namespace plumbmark::platform {
namespace {

base::Error noCamera() {
    return base::inputError("camera.none",
                            "No camera was found on this device. Plug one in, or film with another "
                            "device and bring the clip in.");
}

/// Qt's other backend (GStreamer) falls over where some of its plug-ins are missing, which a desktop can't be
/// asked to prevent. Must be said before the first use; who set it knows better.
void chooseBackend() {
    if (!qEnvironmentVariableIsSet("QT_MEDIA_BACKEND")) {
        qputenv("QT_MEDIA_BACKEND", "ffmpeg");
    }
}

bool isCompressed(QVideoFrameFormat::PixelFormat format) {
    return format == QVideoFrameFormat::Format_Jpeg || format == QVideoFrameFormat::Format_Invalid;
}

ports::CameraFormat plain(const QCameraFormat& f) {
    return {f.resolution().width(), f.resolution().height(), static_cast<double>(f.maxFrameRate()),
            isCompressed(f.pixelFormat())};
}

} // namespace

/// Lives on its own thread; all of Qt Multimedia's objects of one filming belong to it.
class QtCamera::Studio : public QObject {
  public:
    Studio() {
        thread_.setObjectName(QStringLiteral("camera"));
        thread_.start();
        moveToThread(&thread_);
    }
    ~Studio() override {
        inThread([this] { close(); });
        // Back to the caller's thread to die there.
        QThread* const here = QThread::currentThread();
        inThread([this, here] { moveToThread(here); });
        thread_.quit();
        thread_.wait();
    }

    template <class Work> void inThread(Work work) {
        if (QThread::currentThread() == &thread_) {
            work();
        } else {
            QMetaObject::invokeMethod(this, work, Qt::BlockingQueuedConnection);
        }
    }

    base::Result<Running> open(const QCameraDevice& device, const std::optional<ports::CameraFormat>& wanted,
                               Sink sink) {
        close();
        sink_ = std::move(sink);
        index_ = 0;
        first_.reset();
        QCameraFormat chosen;
        std::vector<ports::CameraFormat> all;
        for (const QCameraFormat& f : device.videoFormats()) {
            all.push_back(plain(f));
        }
        const auto best = wanted ? wanted : ports::fastestUseful(all);
        for (const QCameraFormat& f : device.videoFormats()) {
            if (best && plain(f) == *best) {
                chosen = f;
                break;
            }
        }
        camera_ = std::make_unique<QCamera>(device);
        if (!chosen.isNull()) {
            camera_->setCameraFormat(chosen); // before it starts: Qt's own choice goes for size, not for rate
        }
        session_ = std::make_unique<QMediaCaptureSession>();
        videoSink_ = std::make_unique<QVideoSink>();
        session_->setCamera(camera_.get());
        session_->setVideoSink(videoSink_.get());
        // Pictures in the thread in which they come: the sink's signal may come from the backend's own.
        connect(videoSink_.get(), &QVideoSink::videoFrameChanged, this,
                [this](const QVideoFrame& frame) { take(frame); });
        connect(camera_.get(), &QCamera::errorOccurred, this, [this](QCamera::Error error, const QString&) {
            if (error != QCamera::NoError && sink_.problem) {
                sink_.problem(base::inputError(
                    "camera.busy", "The camera gave no picture: another program may use it, or it is not "
                                   "allowed here. Close the other program, allow the camera in the "
                                   "device's settings, or bring a clip in."));
            }
        });
        clock_.start();
        Running running;
        running.asked = best.value_or(ports::CameraFormat{});
        running.deviceName = device.description().toStdString();
        if (sink_.sound) {
            running.soundRate = openMicrophone();
        }
        camera_->start();
        if (camera_->error() != QCamera::NoError) {
            close();
            return base::inputError("camera.busy",
                                    "The camera can't be started: another program may use it, or it is "
                                    "not allowed here. Close the other program, allow the camera in "
                                    "the device's settings, or bring a clip in.");
        }
        return running;
    }

    void close() {
        if (source_) {
            source_->stop();
        }
        source_.reset();
        heard_ = nullptr;
        if (camera_) {
            camera_->stop();
        }
        if (videoSink_) {
            videoSink_->disconnect(this);
        }
        session_.reset();
        videoSink_.reset();
        camera_.reset();
        sink_ = {};
    }

  private:
    /// The microphone's rate, or 0 where there is none: swings are then told by their motion.
    double openMicrophone() {
        const QAudioDevice device = QMediaDevices::defaultAudioInput();
        if (device.isNull()) {
            return 0.0;
        }
        QAudioFormat format;
        format.setSampleRate(48000);
        format.setChannelCount(1);
        format.setSampleFormat(QAudioFormat::Int16);
        if (!device.isFormatSupported(format)) {
            format = device.preferredFormat();
        }
        if (format.sampleFormat() != QAudioFormat::Int16 && format.sampleFormat() != QAudioFormat::Float) {
            return 0.0;
        }
        source_ = std::make_unique<QAudioSource>(device, format);
        heard_ = source_->start();
        if (heard_ == nullptr) {
            source_.reset();
            return 0.0;
        }
        soundSamples_ = 0;
        soundBegan_.reset();
        connect(heard_, &QIODevice::readyRead, this, [this] { hear(); });
        return format.sampleRate();
    }

    void hear() {
        const QByteArray bytes = heard_->readAll();
        const QAudioFormat format = source_->format();
        const int channels = std::max(1, format.channelCount());
        const int size = format.bytesPerSample() * channels;
        const auto count = static_cast<std::size_t>(bytes.size() / std::max(1, size));
        std::vector<float> mono(count);
        for (std::size_t i = 0; i < count; ++i) {
            float sum = 0;
            for (int c = 0; c < channels; ++c) {
                const char* at =
                    bytes.constData() + static_cast<std::ptrdiff_t>(i) * size + c * format.bytesPerSample();
                sum += format.normalizedSampleValue(at);
            }
            mono[i] = sum / static_cast<float>(channels);
        }
        // The count of samples is the steadier clock; the first block sets where it stands.
        const double now = static_cast<double>(clock_.nsecsElapsed()) * 1e-9;
        if (!soundBegan_) {
            soundBegan_ = now - static_cast<double>(count) / format.sampleRate();
        }
        const double at = *soundBegan_ + static_cast<double>(soundSamples_) / format.sampleRate();
        soundSamples_ += static_cast<std::int64_t>(count);
        if (!mono.empty() && sink_.sound) {
            sink_.sound(mono, base::Seconds{at});
        }
    }

    void take(const QVideoFrame& picture) {
        // The picture's own time where the backend tells it (microseconds), on the clock of its arrival.
        const double arrived = static_cast<double>(clock_.nsecsElapsed()) * 1e-9;
        double time = arrived;
        if (picture.startTime() >= 0) {
            const double own = static_cast<double>(picture.startTime()) * 1e-6;
            if (!first_) {
                first_ = arrived - own;
            }
            // A clock that runs off (or is restarted) is not believed.
            time = std::abs(*first_ + own - arrived) < 0.5 ? *first_ + own : arrived;
        }
        if (const auto frame = toFrame(picture, index_++, base::Seconds{time}); frame && sink_.frame) {
            sink_.frame(*frame);
        }
    }

    QThread thread_;
    Sink sink_;
    std::unique_ptr<QCamera> camera_;
    std::unique_ptr<QMediaCaptureSession> session_;
    std::unique_ptr<QVideoSink> videoSink_;
    std::unique_ptr<QAudioSource> source_;
    QIODevice* heard_ = nullptr;
    QElapsedTimer clock_;
    int index_ = 0;
    std::optional<double> first_, soundBegan_;
    std::int64_t soundSamples_ = 0;
};

QtCamera::QtCamera() = default;
QtCamera::~QtCamera() = default;

base::Result<std::vector<ports::CameraDevice>> QtCamera::devices() {
    chooseBackend();
    std::vector<ports::CameraDevice> list;
    for (const QCameraDevice& device : QMediaDevices::videoInputs()) {
        ports::CameraDevice plainDevice;
        plainDevice.id = device.id().toStdString();
        plainDevice.name = device.description().toStdString();
        plainDevice.front = device.position() == QCameraDevice::FrontFace;
        for (const QCameraFormat& f : device.videoFormats()) {
            plainDevice.formats.push_back(plain(f));
        }
        list.push_back(std::move(plainDevice));
    }
    if (list.empty()) {
        return noCamera();
    }
    return list;
}

base::Result<ports::Camera::Running>
QtCamera::start(const std::string& device, const std::optional<ports::CameraFormat>& format, Sink sink) {
    chooseBackend();
    const auto all = QMediaDevices::videoInputs();
    if (all.isEmpty()) {
        return noCamera();
    }
    QCameraDevice chosen = QMediaDevices::defaultVideoInput();
    for (const QCameraDevice& d : all) {
        if (d.id().toStdString() == device) {
            chosen = d;
        }
    }
    if (!studio_) {
        studio_ = std::make_unique<Studio>();
    }
    base::Result<Running> running = noCamera();
    studio_->inThread([&] { running = studio_->open(chosen, format, std::move(sink)); });
    return running;
}

void QtCamera::stop() {
    if (studio_) {
        studio_->inThread([this] { studio_->close(); });
    }
}

} // namespace plumbmark::platform
