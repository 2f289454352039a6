// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// plumbmark-render: demo swings from the shell.
#include <charconv>
#include <cstdio>
#include <fstream>
#include <string>
#include <string_view>

#include "demo/render.h"

namespace {

using namespace plumbmark;

constexpr std::string_view kHelp =
    "plumbmark-render: renders a three-dimensional golfer with exact truth\n"
    "\n"
    "  plumbmark-render --list\n"
    "  plumbmark-render --case sound --view face-on --fps 120 --size 1280x720 --seed 1 --out DIR\n"
    "\n"
    "  --case NAME        one of --list (sound)\n"
    "  --interlude WHAT   instead of the swing: standing, waggle, rehearsal (held at the top) or walk\n"
    "  --seed N           looks, place, light and small differences; 1-999 are for development (1)\n"
    "  --view V           face-on or down-the-line (the case's own)\n"
    "  --hand H           right or left (the case's own)\n"
    "  --club C           driver, wood-3, hybrid-4, iron-7, wedge-56 (the case's own)\n"
    "  --fps N            captured frames per second (120)\n"
    "  --playback N       stored frames per second, for slow motion (as captured)\n"
    "  --size WxH         picture (1280x720); 720x1280 for an upright phone\n"
    "  --bitrate N        bits per second instead of constant quality\n"
    "  --shutter S        exposure, seconds\n"
    "  --rolling S        readout of a rolling shutter, seconds\n"
    "  --roll D, --pan D, --yaw D   camera, degrees;  --distance M\n"
    "  --name STEM        file name without extension\n"
    "  --still T FILE     one picture at T seconds as PPM instead of a clip\n"
    "  --out DIR          where to write (.)\n";

bool number(std::string_view text, double& out) {
    const auto [end, ec] = std::from_chars(text.data(), text.data() + text.size(), out);
    return ec == std::errc{} && end == text.data() + text.size();
}

int bad(const std::string& sentence) {
    std::fprintf(stderr, "%s\n", sentence.c_str());
    return 2;
}

} // namespace

int main(int argc, char** argv) {
    demo::CaseOptions o;
    std::string out = ".";
    double stillAt = -1;
    std::string stillFile;
    for (int i = 1; i < argc; ++i) {
        const std::string_view a = argv[i];
        if (a == "--help" || a == "-h") {
            std::fputs(kHelp.data(), stdout);
            return 0;
        }
        if (a == "--list") {
            for (const auto& c : demo::cases()) {
                std::printf("%-16s %s\n", std::string(c.name).c_str(), std::string(c.sentence).c_str());
            }
            return 0;
        }
        if (i + 1 >= argc) {
            return bad("The option " + std::string(a) +
                       " is unknown or needs a value; --help shows all options.");
        }
        const std::string_view v = argv[++i];
        double n = 0;
        const bool isNumber = number(v, n);
        const auto need = [&] {
            return bad("\"" + std::string(v) + "\" is not a number for " + std::string(a) + ".");
        };
        if (a == "--case") {
            o.name = v;
        } else if (a == "--interlude") {
            const auto interlude = demo::interludeFromName(v);
            if (!interlude) {
                return bad("The interlude must be standing, waggle, rehearsal or walk.");
            }
            o.interlude = *interlude;
        } else if (a == "--out") {
            out = v;
        } else if (a == "--name") {
            o.fileStem = v;
        } else if (a == "--view") {
            o.view = marks::viewFromName(v);
            if (!o.view) {
                return bad("The view must be face-on or down-the-line.");
            }
        } else if (a == "--hand") {
            o.hand = marks::handFromName(v);
            if (!o.hand) {
                return bad("The hand must be right or left.");
            }
        } else if (a == "--club") {
            o.club = marks::clubFromName(v);
            if (!o.club) {
                return bad("The club must be one such as driver, wood-3, hybrid-4, iron-7 or wedge-56.");
            }
        } else if (a == "--size") {
            const auto x = v.find('x');
            double w = 0, h = 0;
            if (x == std::string_view::npos || !number(v.substr(0, x), w) || !number(v.substr(x + 1), h)) {
                return bad("The size must look like 1280x720.");
            }
            o.width = static_cast<int>(w);
            o.height = static_cast<int>(h);
        } else if (a == "--still") {
            if (!isNumber || i + 1 >= argc) {
                return bad("--still needs a time and a file.");
            }
            stillAt = n;
            stillFile = argv[++i];
        } else if (!isNumber) {
            const bool known = a == "--seed" || a == "--fps" || a == "--playback" || a == "--bitrate" ||
                               a == "--shutter" || a == "--rolling" || a == "--roll" || a == "--pan" ||
                               a == "--yaw" || a == "--distance";
            return known ? need()
                         : bad("The option " + std::string(a) + " is unknown; --help shows all options.");
        } else if (a == "--seed") {
            o.seed = static_cast<std::uint64_t>(n);
        } else if (a == "--fps") {
            o.fps = n;
        } else if (a == "--playback") {
            o.playbackFps = n;
        } else if (a == "--bitrate") {
            o.bitRate = static_cast<std::int64_t>(n);
        } else if (a == "--shutter") {
            o.shutter = n;
        } else if (a == "--rolling") {
            o.rollingReadout = n;
        } else if (a == "--roll") {
            o.roll = n;
        } else if (a == "--pan") {
            o.pan = n;
        } else if (a == "--yaw") {
            o.yaw = n;
        } else if (a == "--distance") {
            o.distance = n;
        } else {
            return bad("The option " + std::string(a) + " is unknown; --help shows all options.");
        }
    }
    if (!stillFile.empty()) {
        auto picture = demo::renderStill(o, stillAt);
        if (!picture) {
            return bad(picture.error().sentence);
        }
        std::ofstream file(stillFile, std::ios::binary);
        file << "P6\n" << picture->width << " " << picture->height << "\n255\n";
        file.write(reinterpret_cast<const char*>(picture->pixels.data()),
                   static_cast<std::streamsize>(picture->pixels.size()));
        return file ? 0 : 1;
    }
    auto made = demo::renderCase(o, out);
    if (!made) {
        std::fprintf(stderr, "%s\n", made.error().sentence.c_str());
        return made.error().kind == base::ErrorKind::input ? 2 : 1;
    }
    std::printf("%s\n%s\n%d frames in %.1f s\n", made->clip.c_str(), made->truth.c_str(), made->frames,
                made->seconds);
    return 0;
}
