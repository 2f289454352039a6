// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// libx265 3.5 never frees some of its own settings. What it keeps is not ours; every other leak still counts.
// The leak checker looks for this function by name.
extern "C" const char* __lsan_default_suppressions();
extern "C" const char* __lsan_default_suppressions() { return "leak:libx265.so\n"; }
