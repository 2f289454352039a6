// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "analysis/analysis.h"
#include "base/result.h"
#include "video/clip.h"

/// Plain words about what limited a clip and what to change next time. The protocol behind it (lens at hand
/// height, 4 to 5 m away, the ball or the hands in the middle, 120 to 240 frames a second, 1/1000 s, level,
/// light from behind the camera, a stick on the target line) is common practice without a source.
namespace plumbmark::exporting {

/// What a look at a few pictures tells; nothing where it can't be told. Brightness 0 (black) to 1 (white).
struct PictureQuality {
    std::optional<double> player; ///< median brightness of the player's trunk at address
    std::optional<double> around; ///< of what lies on both sides of the player
};
/// Decodes one frame. Errors: those of video::Clip::frame.
base::Result<PictureQuality> lookAtPictures(video::Clip& clip, const analysis::Outcome& outcome);

struct Advice {
    std::string id;      ///< "frame_rate", "level", ...: stable
    std::string limited; ///< what it cost here, one sentence
    std::string change;  ///< what to do, one sentence
    friend bool operator==(const Advice&, const Advice&) = default;
};

/// What cost most comes first; empty when the clip was filmed as it should be.
[[nodiscard]] std::vector<Advice> filmAdvice(const analysis::Outcome& outcome,
                                             const PictureQuality& quality = {});

/// "Please film it again, because ...": the advice as one message to the student; empty without advice.
[[nodiscard]] std::string filmAgainWords(std::span<const Advice> advice);

} // namespace plumbmark::exporting
