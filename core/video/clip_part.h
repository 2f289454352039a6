// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>

#include "video/clip.h"

namespace plumbmark::video {

/// Frames first..last of `whole` as a clip of its own: they are numbered from 0, while times (frames, sound)
/// stay those of the whole clip, so what is found at a time lies at that time in the file. What the file says
/// of itself (capture rate, rotation, warnings) is kept. Needs 0 <= first <= last < frames of `whole`.
[[nodiscard]] std::unique_ptr<Clip> partOf(std::unique_ptr<Clip> whole, int first, int last);

} // namespace plumbmark::video
