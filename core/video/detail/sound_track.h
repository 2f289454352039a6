// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "video/clip.h"
#include "video/detail/demuxer.h"

namespace plumbmark::video::detail {

/// Decodes the whole sound track as mono. Priming samples and what an edit list cuts away are left out.
/// `zero` is the presentation time that counts as 0. Moves the container's place.
Sound decodeSound(Demuxer& demuxer, double zero);

} // namespace plumbmark::video::detail
