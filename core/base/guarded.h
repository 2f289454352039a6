// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <new>
#include <optional>
#include <type_traits>
#include <utility>

#include "base/result.h"

namespace plumbmark::base {

inline constexpr const char* kMemoryOut = "memory.out";

[[nodiscard]] inline Error outOfMemory() {
    return failure(kMemoryOut, "There is not enough memory; close other programs and try again.");
}

/// The border of a public operation: memory that gives out inside `work` (a callable that returns a Result)
/// comes out as the Error (failure) "memory.out". Whatever `work` had begun is undone by its destructors.
template <class Work> [[nodiscard]] std::invoke_result_t<Work&> guarded(Work&& work) {
    std::optional<Error> told;
    try {
        told = outOfMemory(); // made while there is memory: telling it later must not need any
        return work();
    } catch (const std::bad_alloc&) {
        if (told) {
            return *std::move(told);
        }
        return failure(kMemoryOut, "Out of memory."); // short enough to need none
    }
}

} // namespace plumbmark::base
