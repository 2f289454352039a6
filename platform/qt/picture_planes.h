// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVideoFrame>
#include <optional>

#include "base/quantity.h"
#include "video/frame.h"

namespace plumbmark::platform {

/// A camera's picture as the core wants it, copied. Planar and half-planar 4:2:0, packed 4:2:2 and everything
/// that Qt can turn into RGB; nothing where it can't be read.
[[nodiscard]] std::optional<video::Frame> toFrame(QVideoFrame picture, int index, base::Seconds time);

} // namespace plumbmark::platform
