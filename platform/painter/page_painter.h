// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exporting/page.h"

namespace plumbmark::platform {

/// exporting::Painter on Qt Gui. Text is shaped by Qt, right-to-left included, set in Noto Sans or what the
/// system has in its place, and never read as markup. Where the process has no QGuiApplication yet, the first
/// call makes an offscreen one that lives until the process ends, so that no display is needed; call it on
/// the main thread then.
class PagePainter final : public exporting::Painter {
  public:
    [[nodiscard]] double textHeight(const std::string& text, const exporting::TextStyle& style,
                                    double width) const override;
    [[nodiscard]] base::Result<std::vector<std::byte>> png(const exporting::Page& page,
                                                           double dotsPerMm) const override;
    [[nodiscard]] base::Result<video::RgbImage> raster(const exporting::Page& page, int width,
                                                       int height) const override;
    [[nodiscard]] base::Result<std::vector<std::byte>>
    pdf(std::span<const exporting::Page> pages) const override;
};

} // namespace plumbmark::platform
