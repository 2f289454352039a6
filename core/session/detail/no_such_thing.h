// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/result.h"

namespace plumbmark::session::detail {

/// What was asked for by id has been erased, or never was here. Key "book.no_such_thing".
[[nodiscard]] inline base::Error noSuchThing() {
    return base::inputError("book.no_such_thing",
                            "It is not in the library (any more); choose again from the list.");
}

} // namespace plumbmark::session::detail
