// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "club/shaft.h"

#include <gtest/gtest.h>

#include "synthetic_swing.h"

namespace plumbmark::club {
namespace {

using synthetic::Swing;

TEST(Shaft, DISABLED_Report) {
    for (double background : {0.0, 0.6}) {
        for (double fps : {120.0}) {
            Swing swing;
            swing.fps = fps;
            swing.background = background;
            const auto evidence = synthetic::search(swing, {14, -8});
            const auto track = fitShaft(evidence, {});
            std::vector<double> errors;
            int within = 0;
            int missing = 0;
            std::vector<double> heads;
            for (std::size_t i = 0; i < track.size(); ++i) {
                const double t = static_cast<double>(i) / fps;
                if (!track[i]) {
                    ++missing;
                    continue;
                }
                errors.push_back(std::abs(track[i]->angleDegrees - swing.shaft(t)));
                within += errors.back() < track[i]->sigmaDegrees ? 1 : 0;
                heads.push_back(base::length(*track[i]->head - swing.head(t)));
            }
            const auto share = static_cast<double>(within) / static_cast<double>(errors.size());
            std::sort(errors.begin(), errors.end());
            std::sort(heads.begin(), heads.end());
            std::printf("fps %.0f background %.1f missing %d of %zu: median %.3f 90%% %.3f worst %.2f within sigma %.2f  "
                        "head median %.1f 90%% %.1f\n",
                        fps, background, missing, track.size(), errors[errors.size() / 2],
                        errors[errors.size() * 9 / 10], errors.back(), share, heads[heads.size() / 2],
                        heads[heads.size() * 9 / 10]);
        }
    }
}

} // namespace
} // namespace plumbmark::club
