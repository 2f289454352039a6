// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "exporting/key_position_sheet.h"
#include "exporting/lesson_story.h"
#include "exporting/page.h"

namespace plumbmark::exporting {

/// The lesson to take home: what is good first, the plan (feel, drill, how much, what decides, what must not
/// get worse), what to work on and to watch, every swing at its key moments with marks and numbers, cautions
/// with the usual words, what comes next. Paper: A4 upright, as many pages as it needs, numbered. Phone: one
/// page 100 mm wide. No piece of text or picture is cut in two by a page's end.
[[nodiscard]] std::vector<Page> lessonSheet(const LessonStory& story, const Painter& painter,
                                            SheetFormat format = SheetFormat::paper);

} // namespace plumbmark::exporting
