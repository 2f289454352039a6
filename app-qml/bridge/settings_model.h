// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QSettings>
#include <QtQml/qqmlregistration.h>
#include <algorithm>

#include "bridge/language.h"

namespace plumbmark::bridge {

/// How this person likes the app on this device. Nothing about players.
class SettingsModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    Q_PROPERTY(bool dark READ dark WRITE setDark NOTIFY changed)
    Q_PROPERTY(bool leftHanded READ leftHanded WRITE setLeftHanded NOTIFY changed)
    /// 1 to 2.
    Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY changed)
    /// As Language takes it; empty: the device's.
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY changed)
    Q_PROPERTY(QVariantList languageChoices READ languageChoices NOTIFY changed)

  public:
    explicit SettingsModel(const QString& file, QObject* parent = nullptr)
        : QObject(parent), settings_(file, QSettings::IniFormat) {}

    [[nodiscard]] bool dark() const { return settings_.value("screen/dark", false).toBool(); }
    [[nodiscard]] bool leftHanded() const { return settings_.value("screen/leftHanded", false).toBool(); }
    [[nodiscard]] double textScale() const {
        return std::clamp(settings_.value("screen/textScale", 1.0).toDouble(), 1.0, 2.0);
    }
    [[nodiscard]] QString language() const { return settings_.value("screen/language").toString(); }
    [[nodiscard]] QVariantList languageChoices() const { return Language::choices(); }
    void setDark(bool dark) { set("screen/dark", dark); }
    void setLeftHanded(bool left) { set("screen/leftHanded", left); }
    void setTextScale(double scale) { set("screen/textScale", scale); }
    void setLanguage(const QString& code) {
        if (code != language()) {
            settings_.setValue("screen/language", code);
            emit languageChanged(); // before the pages read any text again
            emit changed();
        }
    }

    /// Through which lessons are exchanged; empty: none is chosen.
    [[nodiscard]] QString sharedFolder() const { return settings_.value("exchange/folder").toString(); }
    void setSharedFolder(const QString& folder) { settings_.setValue("exchange/folder", folder); }

    /// Answers given last when a clip was brought in.
    [[nodiscard]] QString lastAnswer(const QString& question, const QString& otherwise) const {
        return settings_.value("bringIn/" + question, otherwise).toString();
    }
    void remember(const QString& question, const QString& answer) {
        settings_.setValue("bringIn/" + question, answer);
    }

  signals:
    void changed();
    void languageChanged();

  private:
    void set(const char* key, const QVariant& value) {
        settings_.setValue(key, value);
        emit changed();
    }
    QSettings settings_;
};

} // namespace plumbmark::bridge
