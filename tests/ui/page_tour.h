// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QStringList>
#include <functional>

#include "app_driver.h"

namespace uitest {

/// Visits every page of the app on a library made by makeMarkedLibrary, and calls `look` with the page's name
/// when it has come to rest. Returns what was in the way, or nothing. A new page gets its lines here.
[[nodiscard]] QString visitEveryPage(AppDriver& app, const std::function<void(const QString& page)>& look);

/// Texts on show that are cut, run out of their place, or leave the window where nothing scrolls.
[[nodiscard]] QStringList clippedTexts(const AppDriver& app);

/// Texts on show that never went through translation, in an app that runs in the "stretched" language; `data`
/// begins what people and devices have named.
[[nodiscard]] QStringList untranslatedTexts(const AppDriver& app, const QStringList& data);

} // namespace uitest
