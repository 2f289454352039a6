// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>

namespace plumbmark::controls {

/// Relative luminance of an opaque sRGB colour, 0..1, after the Web Content Accessibility Guidelines 2.x.
[[nodiscard]] double relativeLuminance(const QColor& colour);

/// Contrast ratio of two opaque colours, 1..21, same source: (lighter + 0.05) / (darker + 0.05).
[[nodiscard]] double contrastRatio(const QColor& a, const QColor& b);

/// What is left of a contrast on a screen of `screenNits` (cd/m2 at full white) in daylight of `lux` on the
/// glass, of which `reflected` (0..1) comes back diffusely: both colours get the same veil of light added.
[[nodiscard]] double contrastInDaylight(const QColor& a, const QColor& b, double lux,
                                        double screenNits = 500.0, double reflected = 0.045);

} // namespace plumbmark::controls
