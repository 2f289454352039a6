// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/hand_marks_json.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <limits>
#include <optional>
#include <set>
#include <utility>

#include <nlohmann/json.hpp>

namespace plumbmark::exporting {
namespace {
using Json = nlohmann::json;

base::Error formError(const std::string& what) {
    return base::inputError("marks.form", "The marks file can't be used: " + what +
                                              " The form is described in docs/command-line.md.");
}

std::string frameWords(std::size_t index) {
    return "frame " + std::to_string(index + 1) + " of the list";
}

std::string shown(double value) {
    char text[40];
    std::snprintf(text, sizeof text, "%.6g", value);
    return text;
}

/// Own words shown back to a person: short, and nothing that could move a terminal's cursor.
std::string shown(std::string_view text) {
    std::string safe;
    for (const char c : text.substr(0, 40)) {
        safe += static_cast<unsigned char>(c) < 0x20 || c == 0x7f ? '?' : c;
    }
    return "\"" + safe + (text.size() > 40 ? "...\"" : "\"");
}

std::optional<double> finite(const Json& json) {
    if (!json.is_number()) {
        return std::nullopt;
    }
    const double value = json.get<double>();
    return std::isfinite(value) ? std::optional(value) : std::nullopt;
}

base::Result<std::vector<marks::Landmark>> readNames(const Json& root) {
    const auto names = root.find("names");
    if (names == root.end() || !names->is_array()) {
        return formError("it has no list \"names\".");
    }
    std::vector<marks::Landmark> landmarks;
    for (const Json& name : *names) {
        if (!name.is_string()) {
            return formError("every entry of \"names\" must be a text.");
        }
        const auto& text = name.get_ref<const std::string&>();
        const auto landmark = marks::landmarkFromName(text);
        if (!landmark) {
            return formError("it names the landmark " + shown(text) + ", which is not known here.");
        }
        if (std::find(landmarks.begin(), landmarks.end(), *landmark) != landmarks.end()) {
            return formError("it names the landmark " + shown(text) + " twice.");
        }
        landmarks.push_back(*landmark);
    }
    return landmarks;
}

/// Nothing: a point that is no hand mark.
base::Result<std::optional<marks::HandMark>> readPoint(const Json& point, marks::Landmark landmark,
                                                       const std::string& where) {
    if (point.is_null()) {
        return std::optional<marks::HandMark>{};
    }
    if (!point.is_array() || point.size() < 2 || point.size() > 4) {
        return formError(where + " must be null or [x, y, sigma_px, origin].");
    }
    if (point.size() == 4 && !point[3].is_null()) {
        if (!point[3].is_string()) {
            return formError(where + " has an origin that is no text.");
        }
        const auto& origin = point[3].get_ref<const std::string&>();
        if (origin != base::originName(base::Origin::hand)) {
            for (const auto known :
                 {base::Origin::network, base::Origin::tracked, base::Origin::interpolated}) {
                if (origin == base::originName(known)) {
                    return std::optional<marks::HandMark>{};
                }
            }
            return formError(where + " has the origin " + shown(origin) +
                             "; known are hand, network, tracked and interpolated.");
        }
    }
    const auto x = finite(point[0]);
    const auto y = finite(point[1]);
    if (!x || !y) {
        return formError(where + " needs two numbers for x and y.");
    }
    marks::HandMark mark;
    mark.landmark = landmark;
    mark.at = base::Vec2{*x, *y};
    if (point.size() >= 3 && !point[2].is_null()) {
        const auto sigma = finite(point[2]);
        if (!sigma || *sigma <= 0.0) {
            return formError(where + " needs a sigma above 0.");
        }
        mark.sigma = *sigma;
    }
    return std::optional(mark);
}

base::Result<HandMarksFile> readRoot(const Json& whole) {
    const Json* root = &whole;
    if (whole.is_object()) {
        if (const auto inner = whole.find("landmarks"); inner != whole.end()) {
            root = &*inner;
        }
    }
    if (!root->is_object()) {
        return formError("it must be an object with \"names\" and \"frames\".");
    }
    auto names = readNames(*root);
    if (!names) {
        return names.error();
    }
    const auto frames = root->find("frames");
    if (frames == root->end() || !frames->is_array()) {
        return formError("it has no list \"frames\".");
    }
    HandMarksFile file;
    for (std::size_t i = 0; i < frames->size(); ++i) {
        const Json& frame = (*frames)[i];
        if (!frame.is_object()) {
            return formError(frameWords(i) + " is no object.");
        }
        const auto time = frame.find("time_s");
        const auto seconds = time == frame.end() ? std::nullopt : finite(*time);
        if (!seconds) {
            return formError(frameWords(i) + " has no number \"time_s\".");
        }
        const auto points = frame.find("points");
        if (points == frame.end() || !points->is_array()) {
            return formError(frameWords(i) + " has no list \"points\".");
        }
        if (points->size() != names->size()) {
            return formError(frameWords(i) + " has " + std::to_string(points->size()) + " points for " +
                             std::to_string(names->size()) + " names.");
        }
        for (std::size_t k = 0; k < points->size(); ++k) {
            const marks::Landmark landmark = (*names)[k];
            auto mark = readPoint((*points)[k], landmark,
                                  "point " + shown(marks::landmarkName(landmark)) + " in " + frameWords(i));
            if (!mark) {
                return mark.error();
            }
            if (*mark) {
                file.entries.push_back({base::Seconds{*seconds}, **mark});
            }
        }
    }
    return file;
}

} // namespace

base::Result<HandMarksFile> readHandMarks(std::string_view text) {
    try {
        return readRoot(Json::parse(text));
    } catch (const Json::parse_error& error) {
        const std::size_t end = std::min(text.size(), error.byte);
        const auto line = 1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(end), '\n');
        return base::inputError("marks.not_json", "The marks file is not JSON: line " + std::to_string(line) +
                                                      " can't be read. Check that the file is whole.");
    } catch (const std::exception&) {
        return base::inputError(
            "marks.not_json", "The marks file holds a number that is too large to be used; check the file.");
    }
}

base::Result<marks::HandMarks> placeHandMarks(const HandMarksFile& file, std::span<const base::Seconds> times,
                                              int width, int height) {
    marks::HandMarks placed;
    std::set<std::pair<int, marks::Landmark>> seen;
    for (const auto& entry : file.entries) {
        const auto after = std::lower_bound(times.begin(), times.end(), entry.time);
        std::size_t best = static_cast<std::size_t>(after - times.begin());
        if (best == times.size() || (best > 0 && entry.time - times[best - 1] < times[best] - entry.time)) {
            best = best == 0 ? 0 : best - 1;
        }
        const double off = times.empty() ? std::numeric_limits<double>::infinity()
                                         : std::abs((entry.time - times[best]).value());
        // The gap on the side where the time lies; at the ends the only gap there is. A one-frame clip has
        // none.
        double gap = 1.0 / 30.0;
        if (times.size() > 1) {
            const bool later = entry.time >= times[best];
            const std::size_t a = later ? std::min(best, times.size() - 2) : (best == 0 ? 0 : best - 1);
            gap = (times[a + 1] - times[a]).value();
        }
        const std::string name = shown(marks::landmarkName(entry.mark.landmark));
        if (off > 0.5 * gap + 1e-6) { // files carry microseconds
            return base::inputError(
                "marks.time", "The marks file has a mark for " + name + " at " + shown(entry.time.value()) +
                                  " s, where the clip has no frame; use the times of the clip's "
                                  "frames, in seconds from the first.");
        }
        marks::HandMark mark = entry.mark;
        mark.frame = static_cast<int>(best);
        if (mark.at &&
            (std::abs(mark.at->x - 0.5 * width) > width || std::abs(mark.at->y - 0.5 * height) > height)) {
            return base::inputError("marks.outside",
                                    "The marks file puts " + name + " at " + shown(mark.at->x) + ", " +
                                        shown(mark.at->y) + ", far outside the picture of " +
                                        std::to_string(width) + " x " + std::to_string(height) +
                                        " pixels; use upright picture pixels.");
        }
        if (!seen.insert({mark.frame, mark.landmark}).second) {
            return base::inputError("marks.twice", "The marks file marks " + name +
                                                       " twice in the frame at " +
                                                       shown(times[best].value()) + " s; keep one of them.");
        }
        placed.push_back(mark);
    }
    return placed;
}

} // namespace plumbmark::exporting
