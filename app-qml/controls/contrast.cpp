// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "controls/contrast.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace plumbmark::controls {

namespace {
double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}
} // namespace

double relativeLuminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrastRatio(const QColor& a, const QColor& b) {
    const double la = relativeLuminance(a);
    const double lb = relativeLuminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

double contrastInDaylight(const QColor& a, const QColor& b, double lux, double screenNits, double reflected) {
    // A diffuse reflector of reflectance r under E lux shines with r * E / pi cd/m2.
    const double veil = reflected * lux / std::numbers::pi;
    const double la = relativeLuminance(a) * screenNits + veil;
    const double lb = relativeLuminance(b) * screenNits + veil;
    // The same 5 % of full white for stray light as in the indoor formula.
    const double stray = 0.05 * screenNits;
    return (std::max(la, lb) + stray) / (std::min(la, lb) + stray);
}

} // namespace plumbmark::controls
