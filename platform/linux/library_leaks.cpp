// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Linked only where the sanitizers are on: what the font library keeps until the process ends is not ours.
// Nothing of our own code is named here.
extern "C" const char* __lsan_default_suppressions() { return "leak:libfontconfig.so\n"; }
/// A program that was asked for an answer says nothing else.
extern "C" const char* __lsan_default_options() { return "print_suppressions=0"; }
