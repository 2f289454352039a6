// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "exporting/page.h"

namespace plumbmark::exporting {

/// What a student gets who is going to send swings in: where to put the phone, how to lay the sticks, three
/// swings from two views, what to write, and what they agree to.
struct RequestCard {
    std::string player;   ///< may be empty
    std::string coach;    ///< who asks; may be empty
    std::string due;      ///< day by which to send it, as people write it; may be empty
    std::string question; ///< what the coach wants to see, in the coach's words; may be empty
};

/// One A4 page with lines to fill in.
[[nodiscard]] Page requestCardPage(const RequestCard& card, const Painter& painter);
/// The same as one HTML page that needs nothing else.
[[nodiscard]] std::string requestCardHtml(const RequestCard& card);

} // namespace plumbmark::exporting
