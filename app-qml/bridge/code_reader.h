// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QImage>
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>
#include <atomic>

#include "bridge/worker.h"
#include "ports/camera.h"

namespace plumbmark::bridge {

/// Reads the code of a sending with this device's camera. Pictures are looked at and forgotten; nothing is
/// recorded. Ends by itself with the first code that is one of ours.
class CodeReader : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the exchange model")
    Q_PROPERTY(bool active READ active NOTIFY activeChanged)
    Q_PROPERTY(QImage picture READ picture NOTIFY pictureChanged) ///< grey, what the camera sees
    Q_PROPERTY(QString problem READ problem NOTIFY activeChanged)

  public:
    explicit CodeReader(ports::Camera& camera, QObject* parent = nullptr);
    ~CodeReader() override;

    [[nodiscard]] bool active() const { return active_; }
    [[nodiscard]] QImage picture() const { return picture_; }
    [[nodiscard]] QString problem() const { return problem_; }

    Q_INVOKABLE void start();
    Q_INVOKABLE void stop();

  signals:
    void activeChanged();
    void pictureChanged();
    void found(const QString& ticket);

  private:
    void fromCamera(const video::Frame& frame);
    void fail(const base::Error& error);

    ports::Camera* camera_;
    bool active_ = false;
    QImage picture_;
    QString problem_;
    std::atomic<bool> looking_{
        false};     ///< a picture is being looked at: those that come meanwhile are passed over
    Worker worker_; ///< last: ends first
};

} // namespace plumbmark::bridge
