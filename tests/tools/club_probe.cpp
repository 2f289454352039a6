// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Developer's tool: finds shaft and ball in a clip whose truth is known and tells the errors; draws frames.
//   club_probe CLIP.mp4 CLIP.truth.json [--bias X,Y] [--draw DIR] [--every N] [--list]
// Hands and feet are the truth's, biased by X,Y pixels, so that only the club part is judged.
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <string>

#include "club/ball.h"
#include "club/shaft.h"
#include "video/clip.h"
#include "video/still.h"

using namespace plumbmark;

namespace {

void draw(video::RgbImage& image, base::Vec2 a, base::Vec2 b, std::array<int, 3> colour) {
    const double n = std::max(1.0, base::length(b - a) * 2);
    for (double i = 0; i <= n; i += 1.0) {
        const base::Vec2 p = a + (b - a) * (i / n);
        const int x = static_cast<int>(std::floor(p.x));
        const int y = static_cast<int>(std::floor(p.y));
        if (x >= 0 && y >= 0 && x < image.width && y < image.height) {
            for (int c = 0; c < 3; ++c) {
                image.pixels[(static_cast<std::size_t>(y) * image.width + x) * 3 + c] =
                    static_cast<std::uint8_t>(colour[c]);
            }
        }
    }
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 3) {
        std::puts("club_probe CLIP.mp4 CLIP.truth.json [--bias X,Y] [--draw DIR] [--every N] [--list]");
        return 2;
    }
    base::Vec2 bias;
    std::string folder;
    int every = 20;
    bool list = false;
    for (int i = 3; i < argc; ++i) {
        if (std::strcmp(argv[i], "--bias") == 0 && i + 1 < argc) {
            std::sscanf(argv[++i], "%lf,%lf", &bias.x, &bias.y);
        } else if (std::strcmp(argv[i], "--draw") == 0 && i + 1 < argc) {
            folder = argv[++i];
        } else if (std::strcmp(argv[i], "--every") == 0 && i + 1 < argc) {
            every = std::max(1, std::atoi(argv[++i]));
        } else if (std::strcmp(argv[i], "--list") == 0) {
            list = true;
        }
    }
    std::ifstream in(argv[2]);
    const auto truth = nlohmann::json::parse(in, nullptr, false);
    auto opened = video::Clip::open(argv[1]);
    if (truth.is_discarded() || !opened) {
        std::puts("The clip or its truth cannot be read.");
        return 2;
    }
    video::Clip& clip = **opened;
    std::map<std::string, std::size_t> place;
    for (std::size_t i = 0; i < truth["landmarks"]["names"].size(); ++i) {
        place[truth["landmarks"]["names"][i]] = i;
    }
    const auto& frames = truth["landmarks"]["frames"];
    const auto point = [&](int frame, const char* name) -> std::optional<base::Vec2> {
        if (frame < 0 || frame >= static_cast<int>(frames.size())) {
            return std::nullopt;
        }
        const auto& p = frames[frame]["points"][place.at(name)];
        if (p.is_null()) {
            return std::nullopt;
        }
        return base::Vec2{p[0].get<double>(), p[1].get<double>()};
    };
    // Standing height from crown to ankles at the first frame, ankles being 4 % of stature up.
    const double stature =
        ((point(0, "lead_ankle")->y + point(0, "trail_ankle")->y) / 2 - point(0, "head_crown")->y) / 0.93;

    club::FitContext context;
    context.shot.view = truth["view"] == "face-on" ? marks::View::faceOn : marks::View::downTheLine;
    context.shot.hand = truth["hand"] == "right" ? marks::Hand::right : marks::Hand::left;
    context.pictureHeight = clip.info().height;
    const double fps = clip.info().playbackFps;
    if (truth["clip"].contains("capture_fps") && truth["clip"]["capture_fps"].is_number()) {
        context.timeScale.realPerShown = fps / truth["clip"]["capture_fps"].get<double>();
    }
    club::ShaftSearch search({context.timeScale, fps});
    club::BallWatch watch(fps);
    double spent = 0.0;
    double spentBall = 0.0;
    const auto streamed = clip.stream(0, clip.info().frames - 1, [&](const video::Frame& f) {
        club::Hands h;
        const int i = f.index();
        if (const auto grip = point(i, "grip")) {
            h.grip = *grip + bias;
            const auto biased = [&](const char* name) {
                auto p = point(i, name);
                return p ? std::optional<base::Vec2>(*p + bias) : p;
            };
            h.leadElbow = biased("lead_elbow");
            h.trailElbow = biased("trail_elbow");
            h.staturePixels = stature;
            h.gripSigma = 0.03 * stature;
        }
        const auto t0 = std::chrono::steady_clock::now();
        search.push(f, h.staturePixels > 0 ? std::optional<club::Hands>(h) : std::nullopt);
        const auto t1 = std::chrono::steady_clock::now();
        watch.push(f, club::Feet{*point(i, "lead_ankle"), *point(i, "trail_ankle"), stature});
        const auto t2 = std::chrono::steady_clock::now();
        spent += std::chrono::duration<double>(t1 - t0).count();
        spentBall += std::chrono::duration<double>(t2 - t1).count();
        return true;
    });
    if (!streamed) {
        std::puts(streamed.error().sentence.c_str());
        return 1;
    }
    const auto evidence = search.finish();
    const auto t0 = std::chrono::steady_clock::now();
    const auto track = club::fitShaft(evidence, context);
    const double fitting = std::chrono::duration<double>(std::chrono::steady_clock::now() - t0).count();
    const auto ballEvidence = watch.finish();
    const auto ball = club::findBall(ballEvidence, track, context);
    std::printf(
        "%zu frames, stature %.0f px; search %.2f ms, ball %.2f ms a frame; path %.0f ms; %zu ball spots\n",
        evidence.size(), stature, 1e3 * spent / evidence.size(), 1e3 * spentBall / evidence.size(),
        1e3 * fitting, ballEvidence.spots.size());

    const auto trueAngle = [&](int i) { return club::angleOf(*point(i, "grip") - *point(i, "club_butt")); };
    const auto turn = [](double a) { return std::remainder(a, 360.0); };
    // Per stretch between moments. The head's middle lies beside the shaft's axis, so the axis is butt to
    // hands.
    std::vector<std::pair<std::string, double>> moments;
    for (const auto& m : truth["moments"]) {
        if (m["time_s"].is_number()) {
            moments.emplace_back(m["name"], m["time_s"].get<double>());
        }
    }
    std::size_t next = 0;
    std::string stretch = "start";
    std::vector<double> errors, heads, ratios;
    int missing = 0;
    const auto flush = [&](const std::string& to) {
        std::vector<double> e = errors, h = heads, r = ratios;
        std::sort(e.begin(), e.end());
        std::sort(h.begin(), h.end());
        const auto within = std::count_if(r.begin(), r.end(), [](double x) { return x < 1.0; });
        std::printf("%-22s -> %-22s seen %3zu missing %3d", stretch.c_str(), to.c_str(), e.size(), missing);
        if (!e.empty()) {
            std::printf("  error median %5.2f 90%% %6.2f worst %6.2f  within sigma %.2f", e[e.size() / 2],
                        e[e.size() * 9 / 10], e.back(), static_cast<double>(within) / e.size());
        }
        if (!h.empty()) {
            std::printf("  head median %.0f 90%% %.0f px", h[h.size() / 2], h[h.size() * 9 / 10]);
        }
        std::puts("");
        errors.clear();
        heads.clear();
        ratios.clear();
        missing = 0;
        stretch = to;
    };
    for (std::size_t i = 0; i < track.size(); ++i) {
        while (next < moments.size() && evidence[i].time.value() > moments[next].second) {
            flush(moments[next].first);
            ++next;
        }
        const double t = trueAngle(static_cast<int>(i));
        if (!track[i]) {
            ++missing;
        } else {
            errors.push_back(std::abs(turn(track[i]->angleDegrees - t)));
            ratios.push_back(errors.back() / track[i]->sigmaDegrees);
            if (track[i]->head) {
                heads.push_back(base::length(*track[i]->head - *point(static_cast<int>(i), "club_head")));
            }
        }
        if (list) {
            std::printf("%4zu %.3f true %7.2f ", i, evidence[i].time.value(), t);
            if (track[i]) {
                std::printf("found %8.2f +- %.2f error %7.2f head off %5.1f reach %.0f %s",
                            track[i]->angleDegrees, track[i]->sigmaDegrees, turn(track[i]->angleDegrees - t),
                            track[i]->head
                                ? base::length(*track[i]->head - *point(static_cast<int>(i), "club_head"))
                                : -1.0,
                            track[i]->head ? base::length(*track[i]->head - track[i]->through) : -1.0,
                            std::string(base::originName(track[i]->origin)).c_str());
            } else {
                std::printf("-");
            }
            std::printf("  lines:");
            for (const auto& l : evidence[i].lines) {
                std::printf(" %.1f(%.2f,%.0f)", l.angleDegrees, l.score, l.reach);
            }
            const int bin = static_cast<int>(std::lround(t + 180 + 360)) % 360;
            std::printf(" at truth %.2f offset %d reach %d", evidence[i].score[bin] / 255.0,
                        evidence[i].offset[bin], evidence[i].reach[bin]);
            std::puts("");
        }
    }
    flush("end");
    if (list) {
        for (const auto& spot : ballEvidence.spots) {
            std::printf("spot %.1f %.1f contrast %.0f from %d", spot.centre.x, spot.centre.y, spot.contrast,
                        spot.firstLooked);
            for (std::size_t i = 0; i < spot.likeness.size(); i += 20) {
                std::printf(" %d/%d", spot.likeness[i], spot.contrastShare[i]);
            }
            std::puts("");
        }
    }
    const auto trueBall = place.count("ball") != 0 ? point(0, "ball") : std::nullopt;
    if (ball) {
        std::printf("ball at %.1f %.1f", ball->centre.x, ball->centre.y);
        if (trueBall) {
            std::printf(" (off by %.2f px)", base::length(ball->centre - *trueBall));
        }
        std::printf(" last seen %.4f first gone %.4f\n", ball->lastSeen ? ball->lastSeen->value() : -1,
                    ball->firstGone ? ball->firstGone->value() : -1);
        if (const auto hit = club::fitHit(evidence, track, *ball, context)) {
            std::printf("hit at %.4f +- %.4f, shaft %.2f +- %.2f, %.0f degrees/s\n", hit->time.value(),
                        hit->sigma.value(), hit->shaft.angleDegrees, hit->shaft.sigmaDegrees,
                        hit->degreesPerSecond);
        } else {
            std::puts("hit: not told");
        }
    } else {
        std::printf("ball: none%s\n", trueBall ? " (there is one)" : "");
    }
    for (const auto& m : truth["moments"]) {
        if (m["name"] == "impact" && m["time_s"].is_number()) {
            std::printf("truth: impact at %.4f\n", m["time_s"].get<double>());
        }
    }
    for (const auto& m : truth["measurements"]) {
        if (m["id"] == "shaft_lean" && m["value"].is_number()) {
            std::printf("truth: shaft_lean at %s %.2f\n", m["moment"].get<std::string>().c_str(),
                        m["value"].get<double>());
        }
    }
    if (!folder.empty()) {
        for (int i = 0; i < static_cast<int>(track.size()); i += every) {
            auto f = clip.frame(i);
            if (!f) {
                continue;
            }
            auto image = f->rgb();
            if (track[i]) {
                const auto& s = *track[i];
                draw(image, s.through, s.head ? *s.head : s.through + club::directionOf(s.angleDegrees) * 100,
                     {255, 0, 0});
            }
            if (ball) {
                draw(image, ball->centre - base::Vec2{8, 0}, ball->centre + base::Vec2{8, 0}, {0, 255, 0});
            }
            const auto saved = video::savePng(folder + "/" + std::to_string(i) + ".png", image);
            if (!saved) {
                std::puts(saved.error().sentence.c_str());
            }
        }
    }
    return 0;
}
