// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

/// Wider vector code where this processor has it. A loop is written once as an inline template or function
/// marked PLUMBMARK_INLINE, wrapped twice (plain, and marked PLUMBMARK_WIDE), and PLUMBMARK_HAS_WIDE picks at
/// run time. Where the compiler cannot do that, both wrappers are the same code.
#if defined(__GNUC__) && !defined(__clang__) && defined(__x86_64__)
#define PLUMBMARK_WIDE __attribute__((target("avx2,fma")))
#define PLUMBMARK_INLINE inline __attribute__((always_inline))
#define PLUMBMARK_HAS_WIDE (__builtin_cpu_supports("avx2") && __builtin_cpu_supports("fma"))
#else
#define PLUMBMARK_WIDE
#define PLUMBMARK_INLINE inline
#define PLUMBMARK_HAS_WIDE false
#endif
