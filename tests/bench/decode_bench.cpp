// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// plumbmark-bench make CLIP            writes the pinned clip: 1080p, 240 frames/s, H.264 at 46 Mbit/s
// plumbmark-bench decode CLIP [RUNS]   decoding against the program ffmpeg, and the latency of steps; JSON
// out
//
// Ours and ffmpeg's runs alternate, so that a busy machine disturbs both; the best run of each counts.
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <string>
#include <vector>

#include "video/clip.h"
#include "video/writer.h"

namespace {

using namespace plumbmark;
using Clock = std::chrono::steady_clock;

double secondsSince(Clock::time_point start) {
    return std::chrono::duration<double>(Clock::now() - start).count();
}

int complain(const base::Error& error) {
    std::fprintf(stderr, "%s\n", error.sentence.c_str());
    return error.kind == base::ErrorKind::input ? 2 : 1;
}

/// A grainy scene with slow and fast movement: about as hard to code as a filmed one at this rate.
int makeClip(const std::string& path) {
    video::WriterOptions options;
    options.width = 1920;
    options.height = 1080;
    options.fps = 240.0;
    options.bitRate = 46'000'000;
    options.keyFrameEvery = 30;
    auto writer = video::ClipWriter::create(path, options);
    if (!writer.ok()) {
        return complain(writer.error());
    }
    std::vector<std::uint8_t> grain(1 << 20);
    std::mt19937 random(2);
    std::generate(grain.begin(), grain.end(), [&] { return static_cast<std::uint8_t>(random() % 12); });
    video::RgbImage picture{1920, 1080, std::vector<std::uint8_t>(1920 * 1080 * 3)};
    for (int i = 0; i < 607; ++i) {
        const double angle = 0.02 * i;
        const double cx = 960 + 300 * std::cos(angle), cy = 500 + 300 * std::sin(angle);
        std::size_t noise = random() % grain.size();
        for (int y = 0; y < 1080; ++y) {
            std::uint8_t* row = picture.pixels.data() + static_cast<std::size_t>(y) * 1920 * 3;
            for (int x = 0; x < 1920; ++x) {
                const bool club = std::abs((x - 960) * std::sin(angle) - (y - 500) * std::cos(angle)) < 5 &&
                                  std::hypot(x - 960, y - 500) < 420;
                const bool body = std::hypot((x - cx) / 0.6, y - cy) < 160;
                const int texture =
                    ((x * 7) ^ (y * 5)) % 32 + grain[noise = (noise + 1) & (grain.size() - 1)];
                const int base = club ? 220 : body ? 60 : 90 + y / 18;
                row[3 * x] = static_cast<std::uint8_t>(base + texture / 2);
                row[3 * x + 1] = static_cast<std::uint8_t>(base + texture);
                row[3 * x + 2] = static_cast<std::uint8_t>(base / 2 + texture);
            }
        }
        if (auto written = (*writer)->write(picture); !written) {
            return complain(written.error());
        }
    }
    if (auto finished = (*writer)->finish(); !finished) {
        return complain(finished.error());
    }
    return 0;
}

struct Latency {
    std::vector<double> milliseconds;
    void print(const char* name, const char* end) {
        std::sort(milliseconds.begin(), milliseconds.end());
        const std::size_t n = milliseconds.size();
        std::printf("    \"%s\": {\"median_ms\": %.3f, \"p95_ms\": %.3f, \"count\": %zu}%s\n", name,
                    n > 0 ? milliseconds[n / 2] : 0.0, n > 0 ? milliseconds[n * 95 / 100] : 0.0, n, end);
    }
};

int decode(const std::string& path, int runs) {
    constexpr int threads = 2;
    video::ClipOptions options;
    options.decoderThreads = threads;
    std::vector<double> ours, theirs;
    int frames = 0;
    for (int run = 0; run < runs; ++run) {
        const auto start = Clock::now();
        auto clip = video::Clip::open(path, options);
        if (!clip.ok()) {
            return complain(clip.error());
        }
        frames = (*clip)->info().frames;
        int seen = 0;
        auto streamed = (*clip)->stream(0, frames - 1, [&](const video::Frame&) {
            ++seen;
            return true;
        });
        if (!streamed) {
            return complain(streamed.error());
        }
        ours.push_back(secondsSince(start));
        if (seen != frames) {
            std::fprintf(stderr, "%d of %d frames came.\n", seen, frames);
            return 1;
        }
        const std::string command = "ffmpeg -nostdin -v quiet -threads " + std::to_string(threads) +
                                    " -i \"" + path + "\" -map 0:v:0 -vsync passthrough -f null -";
        const auto plain = Clock::now();
        if (std::system(command.c_str()) != 0) {
            std::fprintf(stderr, "The program ffmpeg did not run; install the package ffmpeg.\n");
            return 1;
        }
        theirs.push_back(secondsSince(plain));
    }
    const double best = *std::min_element(ours.begin(), ours.end());
    const double plain = *std::min_element(theirs.begin(), theirs.end());

    auto opened = video::Clip::open(path, options);
    if (!opened.ok()) {
        return complain(opened.error());
    }
    video::Clip& clip = **opened;
    const auto timed = [&](int index, Latency& into) {
        const auto start = Clock::now();
        const bool ok = clip.frame(index).ok();
        into.milliseconds.push_back(ok ? 1000.0 * secondsSince(start) : 1e9);
    };
    Latency forward, backWarm, backRun, jump, backCold;
    const int reach = std::min(100, frames / 3);
    for (int i = 0; i <= reach; ++i) {
        timed(i, forward);
    }
    for (int i = reach - 1; i > reach - 30 && i >= 0; --i) { // inside the cache
        timed(i, backWarm);
    }
    for (int i = frames - 1; i >= 0 && i > frames - 240; --i) { // refills included
        timed(i, backRun);
    }
    std::mt19937 random(4);
    for (int i = 0; i < 60; ++i) { // a jump elsewhere, then one step back into what was never decoded
        const int target = static_cast<int>(random() % static_cast<unsigned>(frames));
        timed(target, jump);
        auto fresh = video::Clip::open(path, options);
        if (fresh.ok() && target > 0) {
            const auto start = Clock::now();
            const bool ok = (*fresh)->frame(target - 1).ok();
            backCold.milliseconds.push_back(ok ? 1000.0 * secondsSince(start) : 1e9);
        }
    }
    std::printf("{\n  \"clip\": {\"frames\": %d, \"width\": %d, \"height\": %d, \"playback_fps\": %.3f},\n",
                frames, clip.info().width, clip.info().height, clip.info().playbackFps);
    std::printf("  \"decode\": {\"threads\": %d, \"runs\": %d, \"ours_s\": %.3f, \"ours_fps\": %.1f, "
                "\"ffmpeg_s\": %.3f, "
                "\"ffmpeg_fps\": %.1f, \"speed_ratio\": %.3f},\n",
                threads, runs, best, frames / best, plain, frames / plain, plain / best);
    std::printf("  \"steps\": {\n");
    forward.print("forward", ",");
    backWarm.print("backward_warm", ",");
    backRun.print("backward_run_with_refills", ",");
    jump.print("jump", ",");
    backCold.print("backward_cold", "");
    std::printf("  }\n}\n");
    return 0;
}

} // namespace

int main(int argc, char** argv) {
    const std::string what = argc > 1 ? argv[1] : "";
    if (what == "make" && argc == 3) {
        return makeClip(argv[2]);
    }
    if (what == "decode" && (argc == 3 || argc == 4)) {
        return decode(argv[2], argc == 4 ? std::max(1, std::atoi(argv[3])) : 5);
    }
    std::fprintf(stderr, "plumbmark-bench make CLIP | plumbmark-bench decode CLIP [RUNS]\n");
    return 2;
}
