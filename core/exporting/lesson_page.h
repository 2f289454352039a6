// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "exporting/lesson_story.h"

namespace plumbmark::exporting {

/// The lesson as one HTML page that needs nothing else: pictures inside as data, marks as vector lines over
/// them, no script, nothing loaded from anywhere (its content security policy forbids all of it), every text
/// escaped and kept in its own reading direction. Opens on any phone and prints.
[[nodiscard]] std::string lessonPage(const LessonStory& story);

/// Text for HTML, in element content and in quoted attributes alike: markup escaped, control characters and
/// marks that reorder text taken out, what is no UTF-8 replaced. Line ends become <br>.
[[nodiscard]] std::string htmlText(std::string_view utf8);

/// The frame around a page of ours: doctype, language, character set, content security policy that allows
/// this style sheet and pictures as data and nothing else. `title` and `body`: title is escaped here, body is
/// HTML.
[[nodiscard]] std::string htmlDocument(std::string_view title, std::string_view style, std::string_view body);

} // namespace plumbmark::exporting
