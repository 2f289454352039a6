// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#if defined(__GNUC__) && !defined(__clang__) && defined(__OPTIMIZE__)
#pragma GCC optimize("O3")
#endif
#include "club/detail/angle_path.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace plumbmark::club::detail {

namespace {

// Peak shaft speed of professionals is 2413 +- 442 degrees a second (Zheng and others 2008, Int J Sports Med
// 29); a projected angle can turn faster than the club itself.
constexpr double kFastest = 3300.0;
constexpr double kUsualAcceleration = 15000.0; ///< degrees per second squared, real time
constexpr double kNodeSeconds = 0.008;

/// out[i] = max over the two, with a note which won.
void keepBetter(float* __restrict best, std::int8_t* __restrict who, const float* __restrict other,
                float cost, std::int8_t label, int n) {
    for (int i = 0; i < n; ++i) {
        const float v = other[i] - cost;
        const bool better = v > best[i];
        best[i] = better ? v : best[i];
        who[i] = better ? label : who[i];
    }
}

} // namespace

Path bestPath(std::span<const PathFrame> frames, double jumpCost, int blockNodes) {
    Path path;
    const auto count = static_cast<int>(frames.size());
    path.angle.resize(frames.size());
    path.degreesPerSecond.resize(frames.size());
    if (count == 0) {
        return path;
    }
    double step = 1.0 / 30;
    if (count > 1) {
        std::vector<double> gaps;
        for (int i = 1; i < count; ++i) {
            gaps.push_back(frames[i].realSeconds - frames[i - 1].realSeconds);
        }
        std::nth_element(gaps.begin(), gaps.begin() + static_cast<std::ptrdiff_t>(gaps.size() / 2),
                         gaps.end());
        step = std::max(1e-4, gaps[gaps.size() / 2]);
    }
    const int group = std::max(1, static_cast<int>(std::lround(kNodeSeconds / step)));
    const double nodeStep = group * step;
    int width = std::clamp(static_cast<int>(std::ceil(kFastest * nodeStep / 40.0)), 1, 4);
    while (360 % width != 0) {
        ++width;
    }
    const int bins = 360 / width;
    const int fastest =
        std::clamp(static_cast<int>(std::lround(kFastest * nodeStep / width)), 3, bins / 2 - 1);
    const int speeds = 2 * fastest + 1;
    const double usual = 1.0 + kUsualAcceleration * nodeStep * nodeStep / width;
    const int change = std::min({fastest, 126, static_cast<int>(std::ceil(3.0 * usual)) + 1});
    path.binDegrees = width;

    const int nodes = (count + group - 1) / group;
    const auto states = static_cast<std::size_t>(speeds) * bins;
    constexpr float kNever = -1e9F;
    std::vector<float> now(states, 0.0F);
    std::vector<float> before(states);
    std::vector<float> merged(states);
    // The way back needs, for every node, which change of step led to each state: 20 kB a node. So that a
    // long clip does not need gigabytes, they are kept for one block of nodes at a time, and a block that is
    // needed again is made again from the values at its start.
    std::vector<std::vector<std::int8_t>> from(static_cast<std::size_t>(std::min(nodes, blockNodes)));
    std::vector<std::vector<float>> starts; // values before the first node of each block
    std::vector<std::size_t> peak(static_cast<std::size_t>(nodes), 0); // best state of the node before: where
                                                                       // a jump starts
    constexpr std::int8_t kJump = 127;
    std::vector<float> gain(static_cast<std::size_t>(group) * bins);
    std::vector<float> costs(2 * change + 1);
    for (int a = -change; a <= change; ++a) {
        const double beyond = std::max(0.0, std::abs(a) - 1.0) / usual;
        costs[a + change] = static_cast<float>(0.02 * std::min(std::abs(a), 1) + 0.25 * beyond * beyond);
    }
    const auto advance = [&](int node) {
        const int first = node * group;
        const int last = std::min(count, first + group);
        for (int f = first; f < last; ++f) {
            float* g = gain.data() + static_cast<std::size_t>(f - first) * bins;
            for (int b = 0; b < bins; ++b) {
                float most = frames[f].gain[b * width];
                for (int k = 1; k < width; ++k) {
                    most = std::max(most, frames[f].gain[b * width + k]);
                }
                g[b] = most / static_cast<float>(group); // costs are per node
            }
        }
        before.swap(now);
        if (node == 0) {
            std::fill(now.begin(), now.end(), 0.0F);
        } else {
            auto& led = from[static_cast<std::size_t>(node % blockNodes)];
            led.assign(states, 0);
            std::fill(merged.begin(), merged.end(), kNever);
            peak[node] =
                static_cast<std::size_t>(std::max_element(before.begin(), before.end()) - before.begin());
            const float jumped = before[peak[node]] - static_cast<float>(jumpCost);
            for (int v = 0; v < speeds; ++v) {
                float* best = merged.data() + static_cast<std::size_t>(v) * bins;
                std::int8_t* who = led.data() + static_cast<std::size_t>(v) * bins;
                for (int a = -change; a <= change; ++a) {
                    const int u = v - a;
                    if (u < 0 || u >= speeds) {
                        continue;
                    }
                    keepBetter(best, who, before.data() + static_cast<std::size_t>(u) * bins,
                               costs[a + change], static_cast<std::int8_t>(a), bins);
                }
                if (v == fastest) { // a jump lands at rest
                    for (int b = 0; b < bins; ++b) {
                        const bool better = jumped > best[b];
                        best[b] = better ? jumped : best[b];
                        who[b] = better ? kJump : who[b];
                    }
                }
            }
            for (int v = 0; v < speeds; ++v) {
                const int shift = ((v - fastest) % bins + bins) % bins; // now[b] comes from merged[b - shift]
                const float* m = merged.data() + static_cast<std::size_t>(v) * bins;
                float* out = now.data() + static_cast<std::size_t>(v) * bins;
                std::copy(m, m + (bins - shift), out + shift);
                std::copy(m + (bins - shift), m + bins, out);
                const float turning = 0.002F * static_cast<float>(std::abs(v - fastest) * width);
                for (int b = 0; b < bins; ++b) {
                    out[b] -= turning;
                }
            }
        }
        // Each frame of the node is looked up where the state's speed puts it.
        for (int v = 0; v < speeds; ++v) {
            float* out = now.data() + static_cast<std::size_t>(v) * bins;
            for (int f = first; f < last; ++f) {
                const double back = static_cast<double>(last - 1 - f) / group;
                const int shift =
                    static_cast<int>(std::lround((v - fastest) * back) % bins + bins) % bins; // g[b - shift]
                const float* g = gain.data() + static_cast<std::size_t>(f - first) * bins;
                for (int b = shift; b < bins; ++b) {
                    out[b] += g[b - shift];
                }
                for (int b = 0; b < shift; ++b) {
                    out[b] += g[b - shift + bins];
                }
            }
        }
    };
    for (int node = 0; node < nodes; ++node) {
        if (node % blockNodes == 0) {
            starts.push_back(now);
        }
        advance(node);
    }
    int block = (nodes - 1) / blockNodes; // the one `from` holds
    // Back from the best end.
    auto at = static_cast<std::size_t>(std::max_element(now.begin(), now.end()) - now.begin());
    std::vector<int> angle(nodes);
    std::vector<int> speed(nodes);
    int unwrapped = static_cast<int>(at % bins);
    int v = static_cast<int>(at / bins);
    for (int node = nodes - 1; node >= 0; --node) {
        angle[node] = unwrapped;
        speed[node] = v - fastest;
        if (node == 0) {
            break;
        }
        if (node / blockNodes != block) {
            block = node / blockNodes;
            now = starts[static_cast<std::size_t>(block)];
            for (int k = block * blockNodes; k < std::min(nodes, (block + 1) * blockNodes); ++k) {
                advance(k);
            }
        }
        const int previous = unwrapped - (v - fastest);
        const int wrapped = (previous % bins + bins) % bins;
        const int a =
            from[static_cast<std::size_t>(node % blockNodes)][static_cast<std::size_t>(v) * bins + wrapped];
        unwrapped = previous;
        if (a == kJump) {
            const int start = static_cast<int>(peak[node] % bins);
            int shorter = ((start - wrapped) % bins + bins) % bins;
            shorter = shorter > bins / 2 ? shorter - bins : shorter;
            unwrapped += shorter;
            v = static_cast<int>(peak[node] / bins);
        } else {
            v -= a;
        }
    }
    for (int f = 0; f < count; ++f) {
        const int node = f / group;
        const int last = std::min(count, node * group + group);
        const double back = static_cast<double>(last - 1 - f) / group;
        path.angle[f] = (angle[node] - speed[node] * back) * width + (width - 1) / 2.0 - 180.0;
        path.degreesPerSecond[f] = speed[node] * width / nodeStep;
    }
    return path;
}

} // namespace plumbmark::club::detail
