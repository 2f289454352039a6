// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "analysis/analysis.h"
#include "base/result.h"
#include "exporting/page.h"
#include "video/clip.h"

namespace plumbmark::exporting {

/// The player in the frame nearest to a key moment, cut out of the picture.
struct Still {
    marks::MomentId moment = marks::MomentId::address;
    std::size_t frame = 0;
    base::Vec2 corner; ///< of the cut-out, upright picture pixels (whole numbers)
    std::shared_ptr<const video::RgbImage> picture;
};

/// Up to eight stills in time order, all cut out with one size that holds the player at every one of them and
/// that stays on the same ground while the camera moves. Fewer where the clip lacks moments; one of the first
/// frame where it has none. Errors: those of video::Clip::frame.
base::Result<std::vector<Still>> takeStills(video::Clip& clip, const analysis::Outcome& outcome);

enum class SheetFormat {
    paper, ///< A4 landscape; grows in height when there is more to say than fits
    phone, ///< 100 mm wide, as high as it needs to be
};
struct SheetOptions {
    SheetFormat format = SheetFormat::paper;
    std::string heading; ///< player, lesson, day ...; may be empty
};

/// The swing at its key positions with marks and lines, values with one sigma, checkpoints with sign and word
/// (what is good first), cautions with the usual words.
[[nodiscard]] Page keyPositionSheet(const analysis::Outcome& outcome, const std::vector<Still>& stills,
                                    const Painter& painter, const SheetOptions& options = {});

} // namespace plumbmark::exporting
