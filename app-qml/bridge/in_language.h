// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <string>
#include <string_view>

namespace plumbmark::bridge {

/// A sentence of the core in the language in use: the core speaks English and knows no Qt. Sentences with
/// something filled in are found by their pattern, and what is filled in is told the same way. What has no
/// translation stays English. The list of sentences is made by app-qml/translations/collect.py.
[[nodiscard]] QString inLanguage(const QString& english);
[[nodiscard]] inline QString inLanguage(std::string_view english) {
    return inLanguage(QString::fromUtf8(english.data(), static_cast<qsizetype>(english.size())));
}

} // namespace plumbmark::bridge
