// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Developer's tool: what the body part sees, drawn onto pictures and written as numbers.
//   body_probe NETWORK PICTURE OUT.png                   one still
//   body_probe NETWORK CLIP OUTDIR face-on|down-the-line right|left [every]
//     writes OUTDIR/frame-NNNN.png for every n-th observed frame and OUTDIR/track.tsv
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <string>

#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

#include "body/observer.h"
#include "body/track.h"
#include "video/clip.h"

using namespace plumbmark;

namespace {

body::NetworkBytes readNetwork(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return std::make_shared<const std::vector<unsigned char>>(std::istreambuf_iterator<char>(in),
                                                              std::istreambuf_iterator<char>());
}

cv::Mat paint(const video::Frame& frame) {
    const video::RgbImage rgb = frame.rgb();
    cv::Mat out;
    cv::cvtColor(cv::Mat(rgb.height, rgb.width, CV_8UC3, const_cast<std::uint8_t*>(rgb.pixels.data())), out,
                 cv::COLOR_RGB2BGR);
    return out;
}

void draw(cv::Mat& canvas, const body::Observation& o) {
    const auto at = [](base::Vec2 p) {
        return cv::Point(static_cast<int>(p.x * 8), static_cast<int>(p.y * 8));
    };
    for (int row = 0; row < body::Silhouette::kRows; ++row) {
        for (const auto* s = o.silhouette.begin(row); s != o.silhouette.end(row); ++s) {
            for (const float x : {s->from, s->to}) {
                cv::circle(canvas, at(o.region.toPicture({x / 256.0, (row + 0.5) / 256.0})), 8, {0, 255, 0},
                           -1, 8, 3);
            }
        }
    }
    for (std::size_t i = 0; i < body::kPointCount; ++i) {
        cv::circle(canvas, at(o.points[i].direct), 3 * 8, {0, 0, 255}, -1, cv::LINE_AA, 3);
        cv::circle(canvas, at(o.points[i].peak), 4 * 8, {255, 255, 0}, 1, cv::LINE_AA, 3);
    }
    const base::Vec2 corners[4]{{0, 0}, {1, 0}, {1, 1}, {0, 1}};
    for (int i = 0; i < 4; ++i) {
        cv::line(canvas, at(o.region.toPicture(corners[i])), at(o.region.toPicture(corners[(i + 1) % 4])),
                 i == 0 ? cv::Scalar(0, 165, 255) : cv::Scalar(180, 180, 180), 1, cv::LINE_AA, 3);
    }
}

int still(const body::NetworkBytes& network, const std::string& picture, const std::string& out) {
    cv::Mat bgr = cv::imread(picture);
    if (bgr.empty()) {
        std::cerr << "cannot read " << picture << "\n";
        return 2;
    }
    cv::Mat rgb;
    cv::cvtColor(bgr, rgb, cv::COLOR_BGR2RGB);
    const video::RgbImage image{rgb.cols, rgb.rows, {rgb.datastart, rgb.dataend}};
    const auto frame = video::Frame::fromRgb(image, 0, base::Seconds{0});
    auto observer = body::Observer::create(network);
    if (!observer) {
        std::cerr << observer.error().sentence << "\n";
        return 1;
    }
    auto seen = (*observer)->observe(frame);
    if (!seen || !*seen) {
        std::cout << "nobody\n";
        return 1;
    }
    const auto& o = **seen;
    std::printf("presence %.3f region %.0f %.0f %.0f turn %.1f\n", o.presence, o.region.centre.x,
                o.region.centre.y, o.region.size, o.region.turn * 57.2958);
    cv::Mat canvas = paint(frame);
    draw(canvas, o);
    cv::imwrite(out, canvas);
    return 0;
}

int clip(const body::NetworkBytes& network, int argc, char** argv) {
    auto opened = video::Clip::open(argv[2]);
    if (!opened) {
        std::cerr << opened.error().sentence << "\n";
        return 2;
    }
    marks::ShotContext context;
    context.view = *marks::viewFromName(argv[4]);
    context.hand = *marks::handFromName(argv[5]);
    const int every = argc > 6 ? std::stoi(argv[6]) : 0;
    auto observer = body::Observer::create(network, context.view);
    if (!observer) {
        std::cerr << observer.error().sentence << "\n";
        return 1;
    }
    const std::filesystem::path dir = argv[3];
    std::filesystem::create_directories(dir);
    std::vector<body::Observation> all;
    body::Cadence cadence;
    auto& c = **opened;
    auto done = c.stream(0, c.info().frames - 1, [&](const video::Frame& frame) {
        if (!cadence.due(frame.time())) {
            return true;
        }
        auto seen = (*observer)->observe(frame);
        if (!seen) {
            std::cerr << seen.error().sentence << "\n";
            return false;
        }
        cadence.seen(frame.time(), *seen);
        if (*seen) {
            if (every > 0 && all.size() % static_cast<std::size_t>(every) == 0) {
                cv::Mat canvas = paint(frame);
                draw(canvas, **seen);
                char name[40];
                std::snprintf(name, sizeof name, "frame-%04d.png", frame.index());
                cv::imwrite((dir / name).string(), canvas);
            }
            all.push_back(std::move(**seen));
        }
        return true;
    });
    if (!done) {
        std::cerr << done.error().sentence << "\n";
        return 1;
    }
    const body::AutoTrack made = body::autoTrack(all, c.times(), context);
    std::ofstream table(dir / "track.tsv");
    table << "frame\ttime_s\tlandmark\tx\ty\tsigma\torigin\n";
    for (std::size_t i = 0; i < made.track.size(); ++i) {
        for (std::size_t l = 0; l < marks::kLandmarkCount; ++l) {
            if (const auto& m = made.track[i].points[l]) {
                table << i << '\t' << made.track[i].time.value() << '\t'
                      << marks::landmarkName(static_cast<marks::Landmark>(l)) << '\t' << m->at.x << '\t'
                      << m->at.y << '\t' << m->sigma << '\t' << base::originName(m->origin) << '\n';
            }
        }
    }
    std::printf("%zu observations of %d frames", all.size(), c.info().frames);
    if (made.stature) {
        std::printf(", stature %.0f +- %.0f px", made.stature->pixels, made.stature->sigma);
    }
    std::printf("\n");
    return 0;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 4) {
        std::cerr << "body_probe NETWORK PICTURE OUT.png | NETWORK CLIP OUTDIR VIEW HAND [every]\n";
        return 2;
    }
    const auto network = readNetwork(argv[1]);
    return argc == 4 ? still(network, argv[2], argv[3]) : clip(network, argc, argv);
}
