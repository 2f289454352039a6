// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <array>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "base/geometry.h"
#include "cli/commands.h"
#include "exporting/hand_marks_json.h"
#include "video/clip.h"

namespace plumbmark::cli {
namespace {

constexpr std::size_t kLargestMarksFile = std::size_t{256} << 20; // every landmark of a 10-minute clip fits

template <class Value>
base::Result<Value> word(const Arguments& args, std::string_view option, const std::string& known,
                         std::optional<Value> (*fromName)(std::string_view), std::optional<Value> otherwise) {
    const auto text = args.value(option);
    if (!text) {
        if (otherwise) {
            return *otherwise;
        }
        return base::inputError("arguments.missing", "Tell " + std::string(option) + " too: " + known + ".");
    }
    if (const auto value = fromName(*text)) {
        return *value;
    }
    return base::inputError("arguments.word",
                            std::string(option) + " knows " + known + ", not \"" + shown(*text, 40) + "\".");
}

base::Result<std::pair<base::Vec2, base::Vec2>> readPlumb(const std::string& text) {
    const auto wrong = [&](const std::string& what) {
        return base::inputError("arguments.plumb",
                                "--plumb needs the two ends of a plumb edge as X0,Y0,X1,Y1 in upright "
                                "picture pixels" +
                                    what);
    };
    std::array<double, 4> numbers{};
    std::size_t from = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        const std::size_t comma = text.find(',', from);
        if ((comma == std::string::npos) != (i == 3)) {
            return wrong(", not \"" + shown(text, 60) + "\".");
        }
        const auto number =
            readNumber(std::string_view(text).substr(from, i == 3 ? std::string::npos : comma - from));
        if (!number) {
            return wrong(", not \"" + shown(text, 60) + "\".");
        }
        numbers[i] = *number;
        from = comma + 1;
    }
    const base::Vec2 a{numbers[0], numbers[1]};
    const base::Vec2 b{numbers[2], numbers[3]};
    if (base::length(b - a) < 20.0) {
        return wrong("; the ends must lie at least 20 pixels apart.");
    }
    if (std::abs(b.x - a.x) > std::abs(b.y - a.y)) {
        return wrong("; these two points lie nearer to level than to upright.");
    }
    return std::pair{a, b};
}

} // namespace

std::vector<Option> swingOptions() {
    return {
        {"--view", "face-on|down-the-line", "from where it was filmed (needed)"},
        {"--hand", "right|left", "the player's hand (needed)"},
        {"--club", "CLUB",
         "driver, wood, hybrid, iron, wedge or putter; with number or loft: iron-7, wedge-56"},
        {"--shot", "KIND",
         "full, half, pitch, chip, bunker, putt or practice; without it full (putt with a putter)"},
        {"--stature", "CM", "the player's standing height, 50 to 250: travel is then told in centimetres"},
        {"--distance", "M", "camera to player, 0.5 to 50"},
        {"--roll", "DEG", "the camera's tilt, clockwise seen from behind it, -45 to 45"},
        {"--plumb", "X0,Y0,X1,Y1", "or the two ends of an edge that is plumb, in upright picture pixels"},
        {"--capture-fps", "N", "frames a second while filming, where the clip was stored in slow motion"},
        {"--mirrored", "", "the clip is a mirror image (front camera)"},
        {"--marks", "FILE", "marks placed by hand, as JSON in the form that --landmarks writes"},
    };
}

base::Result<std::string> readText(const std::filesystem::path& path, std::size_t most) {
    namespace fs = std::filesystem;
    std::error_code error;
    const std::string name = "\"" + path.string() + "\"";
    const auto status = fs::status(path, error);
    if (!fs::exists(status)) {
        return base::inputError("file.missing", "There is no file " + name + "; check the name.");
    }
    if (fs::is_directory(status)) {
        return base::inputError("file.is_folder", name + " is a folder; give the name of a file.");
    }
    std::ifstream file(path, std::ios::binary);
    std::string text;
    std::array<char, 65536> piece{};
    while (file && text.size() <= most) {
        file.read(piece.data(), piece.size());
        text.append(piece.data(), static_cast<std::size_t>(file.gcount()));
    }
    if (!file.is_open() || file.bad() || (!file.eof() && text.size() <= most)) {
        return base::inputError("file.unreadable", name + " can't be read; check that you may open it.");
    }
    if (text.size() > most) {
        return base::inputError("file.too_large", name + " is too large to be such a file; check the name.");
    }
    return text;
}

base::Result<analysis::Request> readSwing(const Arguments& args) {
    analysis::Request request;
    marks::ShotContext& context = request.context;
    const auto view = word<marks::View>(args, "--view", "face-on or down-the-line", marks::viewFromName, {});
    if (!view) {
        return view.error();
    }
    const auto hand = word<marks::Hand>(args, "--hand", "right or left", marks::handFromName, {});
    if (!hand) {
        return hand.error();
    }
    context.view = *view;
    context.hand = *hand;
    if (args.has("--club")) {
        const auto club =
            word<marks::Club>(args, "--club",
                              "driver, wood, hybrid, iron, wedge or putter, with number or loft as in "
                              "iron-7 or wedge-56",
                              marks::clubFromName, {});
        if (!club) {
            return club.error();
        }
        context.club = *club;
    }
    const bool putter = context.club && context.club->kind == marks::ClubKind::putter;
    const auto shot = word<marks::ShotKind>(
        args, "--shot", "full, half, pitch, chip, bunker, putt or practice", marks::shotKindFromName,
        putter ? marks::ShotKind::putt : marks::ShotKind::full);
    if (!shot) {
        return shot.error();
    }
    context.shot = *shot;
    context.mirrored = args.has("--mirrored");

    const auto stature = args.number("--stature", 50, 250, "cm");
    const auto distance = args.number("--distance", 0.5, 50, "m");
    const auto roll = args.number("--roll", -45, 45, "degrees");
    const auto captureFps = args.number("--capture-fps", 1, 10000, "frames a second");
    for (const auto* number : {&stature, &distance, &roll, &captureFps}) {
        if (!*number) {
            return number->error();
        }
    }
    if (*stature) {
        context.statureMetres = **stature / 100.0;
    }
    context.cameraDistanceMetres = *distance;
    request.rollDegrees = *roll;
    request.captureFps = *captureFps;
    if (const auto plumb = args.value("--plumb")) {
        if (request.rollDegrees) {
            return base::inputError("arguments.plumb",
                                    "--roll and --plumb both tell what is upright; give one of them.");
        }
        const auto edge = readPlumb(*plumb);
        if (!edge) {
            return edge.error();
        }
        request.plumbEdge = *edge;
    }
    return request;
}

base::Result<void> completeRequest(const Arguments& args, video::Clip& clip, analysis::Request& request,
                                   Streams streams) {
    const video::ClipInfo& info = clip.info();
    if (request.plumbEdge) {
        const base::Box picture{0, 0, info.width + 1.0, info.height + 1.0};
        if (!picture.contains(request.plumbEdge->first) || !picture.contains(request.plumbEdge->second)) {
            return base::inputError("arguments.plumb", "--plumb lies outside the picture of " +
                                                           std::to_string(info.width) + " x " +
                                                           std::to_string(info.height) +
                                                           " pixels; tell pixels of the upright picture.");
        }
    }
    const auto marksFile = args.value("--marks");
    if (!marksFile) {
        return {};
    }
    const auto text = readText(*marksFile, kLargestMarksFile);
    if (!text) {
        return text.error();
    }
    const auto read = exporting::readHandMarks(*text);
    if (!read) {
        return read.error();
    }
    auto placed = exporting::placeHandMarks(*read, clip.times(), info.width, info.height);
    if (!placed) {
        return placed.error();
    }
    if (placed->empty()) {
        streams.err
            << "plumbmark: Note: the marks file holds no mark placed by hand, so it changes nothing.\n";
    }
    request.handMarks = std::move(*placed);
    return {};
}

} // namespace plumbmark::cli
