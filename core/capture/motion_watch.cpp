// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "capture/motion_watch.h"

#include <algorithm>
#include <cmath>

namespace plumbmark::capture {
namespace {

constexpr int kColumns = 96;
constexpr double kStepSeconds = 0.030;
constexpr double kMiddleShare = 0.75;

} // namespace

std::optional<MotionSample> MotionWatch::push(const video::Frame& frame) {
    const auto luma = frame.luma();
    const int cell = std::max(2, (luma.width + kColumns - 1) / kColumns);
    const int columns = luma.width / cell, rows = luma.height / cell;
    if (columns < 8 || rows < 6) {
        return std::nullopt;
    }
    if (columns != columns_ || rows != rows_) {
        before_.clear();
        columns_ = columns;
        rows_ = rows;
    }
    const auto count = static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows);
    Coarse now{frame.time(), std::vector<float>(count)};
    const int step = cell >= 8 ? 2 : 1; // a quarter of the pixels tells a cell's mean well enough
    const int n = (cell / step) * (cell / step);
    for (int r = 0; r < rows; ++r) {
        float* row = now.cells.data() + static_cast<std::ptrdiff_t>(r) * columns;
        for (int y = 0; y < cell / step; ++y) {
            const std::uint8_t* p =
                luma.data + static_cast<std::ptrdiff_t>(r * cell + y * step) * luma.stride;
            for (int c = 0; c < columns; ++c) {
                int sum = 0;
                for (int x = 0; x < cell / step; ++x) {
                    sum += p[c * cell + x * step];
                }
                row[c] += static_cast<float>(sum);
            }
        }
        for (int c = 0; c < columns; ++c) {
            row[c] /= static_cast<float>(n);
        }
    }
    // The youngest picture that is at least one step old; all older ones are of no more use.
    while (before_.size() >= 2 && (now.time - before_[1].time).value() >= kStepSeconds - 1e-4) {
        before_.pop_front();
    }
    std::optional<MotionSample> sample;
    if (!before_.empty() && (now.time - before_.front().time).value() >= kStepSeconds - 1e-4) {
        const auto& then = before_.front().cells;
        std::vector<float> change(count);
        for (std::size_t i = 0; i < count; ++i) {
            change[i] = now.cells[i] - then[i];
        }
        auto sorted = change;
        const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(count / 2);
        std::nth_element(sorted.begin(), middle, sorted.end());
        const float whole = *middle;
        for (auto& v : sorted) {
            v = std::abs(v - whole);
        }
        std::nth_element(sorted.begin(), middle, sorted.end());
        // Median absolute deviation of a normal distribution: 0.6745 sigma. Most cells never move.
        noise_ += 0.1 * (std::clamp(*middle / 0.6745, 0.2, 6.0) - noise_);
        const auto bar = static_cast<float>(std::max(3.5, 5.0 * noise_));
        const int left = static_cast<int>(columns * (1 - kMiddleShare) / 2), right = columns - left;
        int moved = 0, across = 0, x0 = columns, x1 = -1, y0 = rows, y1 = -1;
        for (int r = 0; r < rows; ++r) {
            for (int c = left; c < right; ++c) {
                if (std::abs(change[static_cast<std::size_t>(r * columns + c)] - whole) > bar) {
                    ++moved;
                    across += c;
                    x0 = std::min(x0, c);
                    x1 = std::max(x1, c);
                    y0 = std::min(y0, r);
                    y1 = std::max(y1, r);
                }
            }
        }
        MotionSample s;
        s.time = now.time;
        s.area = static_cast<double>(moved) / static_cast<double>(count);
        if (x1 >= x0) {
            s.centre = (static_cast<double>(across) / moved + 0.5) / columns;
            s.box = {static_cast<double>(x0) / columns, static_cast<double>(y0) / rows,
                     static_cast<double>(x1 - x0 + 1) / columns, static_cast<double>(y1 - y0 + 1) / rows};
        }
        sample = s;
    }
    before_.push_back(std::move(now));
    return sample;
}

} // namespace plumbmark::capture
