// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAccessible>
#include <QGuiApplication>
#include <QStringList>
#include <QtTest>
#include <cstdio>

#include "run_app.h"

namespace uitest {

/// What Qt and QML complained about since it was cleared; any of it fails a test.
inline QStringList g_warnings;

inline void keepWarnings(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    // The platform plug-in's own remarks are not about our pages.
    if (type != QtDebugMsg && type != QtInfoMsg && !QByteArray(context.category).startsWith("qt.qpa")) {
        g_warnings << message;
    }
    fprintf(stderr, "%s\n", qPrintable(message));
}

/// Runs the tests of one object on the screen that the environment names, else on Qt's offscreen one.
template <class Test> int run(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("DISPLAY") && qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QGuiApplication application(argc, argv);
    QAccessible::setActive(true);
    plumbmark::app::prepareApplication();
    Test test;
    return QTest::qExec(&test, argc, argv);
}

} // namespace uitest
