// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/tables.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <map>
#include <vector>

#include <nlohmann/json.hpp>

namespace plumbmark::exporting {
namespace {
using marks::Landmark;

/// Shortest digits with at most `decimals` behind the point, a point whatever the locale.
std::string number(double value, int decimals = 6) {
    if (!std::isfinite(value)) {
        return "";
    }
    std::array<char, 400> text{}; // the largest double has 309 digits before its point
    const auto [end, error] =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed, decimals);
    std::string digits(text.data(), error == std::errc{} ? end : text.data());
    if (digits.find('.') != std::string::npos) {
        digits.erase(digits.find_last_not_of('0') + 1);
        if (!digits.empty() && digits.back() == '.') {
            digits.pop_back();
        }
    }
    return digits == "-0" ? "0" : digits;
}

bool beginsAFormula(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t\r\n");
    if (!text.empty() && (text[0] == '\t' || text[0] == '\r' || text[0] == '\n')) {
        return true;
    }
    if (first == std::string_view::npos) {
        return false;
    }
    const std::string_view rest = text.substr(first);
    for (const std::string_view sign : {"=", "+", "-", "@", "\uff1d", "\uff0b", "\uff0d", "\uff20"}) {
        if (rest.starts_with(sign)) {
            return true;
        }
    }
    return false;
}

/// Which column pair a number goes to. Numbers of two methods are never put under each other.
struct Column {
    std::string id;
    std::optional<marks::MomentId> moment;
    int method = 1;
    base::Unit unit = base::Unit::degrees;
    friend bool operator==(const Column&, const Column&) = default;
    [[nodiscard]] std::string header() const {
        return id + (moment ? " at " + std::string(marks::momentName(*moment)) : std::string()) +
               " (method " + std::to_string(method) + ")";
    }
};

std::string clubText(const marks::ShotContext& context) {
    return context.club ? marks::clubName(*context.club) : std::string();
}

bool usable(const measure::Measurement& m) {
    return m.value && std::isfinite(m.value->value) && std::isfinite(m.value->sigma) && m.value->sigma > 0.0;
}

std::vector<Landmark> landmarksIn(const marks::Track& track) {
    std::vector<Landmark> found;
    for (std::size_t i = 0; i < marks::kLandmarkCount; ++i) {
        if (std::any_of(track.begin(), track.end(), [i](const auto& frame) {
                const auto& mark = frame.points[i];
                return mark && std::isfinite(mark->at.x) && std::isfinite(mark->at.y);
            })) {
            found.push_back(static_cast<Landmark>(i));
        }
    }
    return found;
}

} // namespace

std::string csvText(std::string_view utf8) {
    std::string cell = "\"";
    if (beginsAFormula(utf8)) {
        cell += '\'';
    }
    for (const char c : utf8) {
        if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) {
            cell += ' '; // a line break in a cell is allowed but breaks half of the readers
        } else if (c == '"') {
            cell += "\"\"";
        } else {
            cell += c;
        }
    }
    return cell + "\"";
}

std::string measurementsCsv(std::span<const TableRow> rows) {
    std::vector<Column> columns;
    std::vector<std::string> clips; // in the order they come
    std::map<std::string, std::vector<const TableRow*>> byClip;
    for (const TableRow& row : rows) {
        auto& list = byClip[row.clipId];
        if (list.empty()) {
            clips.push_back(row.clipId);
        }
        list.push_back(&row);
        if (usable(row.measurement)) {
            const Column column{row.measurement.id, row.measurement.moment, row.measurement.method,
                                row.measurement.value->unit};
            if (std::find(columns.begin(), columns.end(), column) == columns.end()) {
                columns.push_back(column);
            }
        }
    }
    std::string csv = "player,day,lesson,lesson id,shot,clip id,view,hand,club,kind of shot,stature [m]";
    for (const Column& column : columns) {
        const std::string unit = " [" + std::string(base::unitName(column.unit)) + "]";
        csv += "," + csvText(column.header() + unit) + "," + csvText(column.header() + " sigma" + unit);
    }
    csv += "\r\n";
    for (const std::string& clip : clips) {
        const auto& list = byClip[clip];
        const TableRow& first = *list.front();
        csv += csvText(first.player) + "," + csvText(first.day) + "," + csvText(first.lessonTitle) + "," +
               csvText(first.lessonId) + "," + std::to_string(first.shotNumber) + "," + csvText(clip) + "," +
               csvText(marks::viewName(first.context.view)) + "," +
               csvText(marks::handName(first.context.hand)) + "," + csvText(clubText(first.context)) + "," +
               csvText(marks::shotKindName(first.context.shot)) + "," +
               (first.context.statureMetres ? number(*first.context.statureMetres) : std::string());
        for (const Column& column : columns) {
            const auto it = std::find_if(list.begin(), list.end(), [&](const TableRow* row) {
                const auto& m = row->measurement;
                return usable(m) && m.id == column.id && m.moment == column.moment &&
                       m.method == column.method && m.value->unit == column.unit;
            });
            csv += it == list.end() ? std::string(",,")
                                    : "," + number((*it)->measurement.value->value) + "," +
                                          number((*it)->measurement.value->sigma);
        }
        csv += "\r\n";
    }
    return csv;
}

std::string measurementsJson(std::span<const TableRow> rows) {
    using Json = nlohmann::ordered_json;
    std::string text = "{\"rows\": [";
    bool first = true;
    for (const TableRow& row : rows) {
        const auto& m = row.measurement;
        Json json{{"player", row.player},
                  {"day", row.day},
                  {"lesson", row.lessonTitle},
                  {"lesson_id", row.lessonId},
                  {"shot", row.shotNumber},
                  {"clip_id", row.clipId},
                  {"view", marks::viewName(row.context.view)},
                  {"hand", marks::handName(row.context.hand)},
                  {"club", row.context.club ? Json(clubText(row.context)) : Json(nullptr)},
                  {"kind_of_shot", marks::shotKindName(row.context.shot)},
                  {"stature_m", row.context.statureMetres ? Json(*row.context.statureMetres) : Json(nullptr)},
                  {"id", m.id},
                  {"moment", m.moment ? Json(marks::momentName(*m.moment)) : Json(nullptr)},
                  {"method", m.method}};
        if (usable(m)) {
            json["value"] = m.value->value;
            json["sigma"] = m.value->sigma;
            json["unit"] = base::unitName(m.value->unit);
            json["origin"] = base::originName(m.value->origin);
        } else {
            json["reason"] = m.reason;
        }
        text += first ? "\n  " : ",\n  ";
        first = false;
        text += json.dump(-1, ' ', false, Json::error_handler_t::replace);
    }
    return text + (first ? "]}\n" : "\n]}\n");
}

std::string landmarksCsv(const analysis::Outcome& outcome) {
    const auto landmarks = landmarksIn(outcome.track);
    std::string csv = "frame,time [s],real time [s]";
    for (const Landmark landmark : landmarks) {
        const std::string name(marks::landmarkName(landmark));
        csv += "," + name + " x [px]," + name + " y [px]," + name + " sigma [px]," + name + " origin";
    }
    csv += "\r\n";
    for (std::size_t i = 0; i < outcome.track.size(); ++i) {
        const marks::FrameMarks& frame = outcome.track[i];
        csv += std::to_string(i) + "," + number(frame.time.value()) + "," +
               (outcome.timeScale.known ? number(frame.time.value() * outcome.timeScale.realPerShown)
                                        : std::string());
        for (const Landmark landmark : landmarks) {
            const auto& mark = frame[landmark];
            if (mark && std::isfinite(mark->at.x) && std::isfinite(mark->at.y) &&
                std::isfinite(mark->sigma)) {
                csv += "," + number(mark->at.x, 3) + "," + number(mark->at.y, 3) + "," +
                       number(mark->sigma, 3) + "," + std::string(base::originName(mark->origin));
            } else {
                csv += ",,,,";
            }
        }
        csv += "\r\n";
    }
    return csv;
}

base::Result<std::string> landmarksTrc(const analysis::Outcome& outcome, std::string_view fileName) {
    const auto landmarks = landmarksIn(outcome.track);
    if (landmarks.empty()) {
        return base::inputError("tables.no_landmarks",
                                "No landmark is known in this clip; mark some by hand or fetch the pose "
                                "network.");
    }
    const auto& scale = outcome.scene.scale;
    std::optional<double> pixelsPerMetre = scale.pixelsPerMetre;
    if (!pixelsPerMetre && outcome.context.statureMetres && scale.pixelsPerStature > 0.0) {
        pixelsPerMetre = scale.pixelsPerStature / *outcome.context.statureMetres;
    }
    if (!pixelsPerMetre || !(*pixelsPerMetre > 0.0)) {
        return base::inputError("tables.no_scale",
                                "A marker file is in millimetres; tell the player's standing height, which "
                                "gives the scale.");
    }
    if (!outcome.timeScale.known || !(outcome.clip.playbackFps > 0.0)) {
        return base::inputError("tables.no_rate",
                                "A marker file needs real time; tell how many frames a second were filmed "
                                "(--capture-fps).");
    }
    const auto onGround = [&](std::size_t frame, base::Vec2 p) {
        return outcome.scene.ground.toReference(static_cast<int>(frame), p);
    };
    // The origin: between the ankles, at address where that is known.
    const auto ankles = [&](std::size_t i) -> std::optional<base::Vec2> {
        const auto& lead = outcome.track[i][Landmark::lead_ankle];
        const auto& trail = outcome.track[i][Landmark::trail_ankle];
        return lead && trail ? std::optional(onGround(i, base::midpoint(lead->at, trail->at))) : std::nullopt;
    };
    std::optional<base::Vec2> origin;
    if (const auto* address = marks::find(outcome.moments, marks::MomentId::address)) {
        origin = ankles(marks::frameAt(outcome.track, address->time));
    }
    for (std::size_t i = 0; !origin && i < outcome.track.size(); ++i) {
        origin = ankles(i);
    }
    if (!origin) { // no ankles at all: the middle of the picture's lower edge
        origin = base::Vec2{outcome.clip.width / 2.0, static_cast<double>(outcome.clip.height)};
    }
    const base::Vec2 up = outcome.scene.vertical.up();
    const base::Vec2 right = outcome.scene.vertical.right() * outcome.context.sideSign();
    const double millimetres = 1000.0 / *pixelsPerMetre;
    const double rate = outcome.clip.playbackFps / outcome.timeScale.realPerShown;

    std::string name;
    for (const char c : fileName) { // the header is split at tabs and line ends
        name += static_cast<unsigned char>(c) < 0x20 || c == 0x7f ? '_' : c;
    }
    const std::string frames = std::to_string(outcome.track.size());
    std::string trc = "PathFileType\t4\t(X/Y/Z)\t" + name +
                      "\n"
                      "DataRate\tCameraRate\tNumFrames\tNumMarkers\tUnits\tOrigDataRate\tOrigDataStartFrame\t"
                      "OrigNumFrames\n" +
                      number(rate) + "\t" + number(rate) + "\t" + frames + "\t" +
                      std::to_string(landmarks.size()) + "\tmm\t" + number(rate) + "\t1\t" + frames + "\n";
    std::string names = "Frame#\tTime";
    std::string axes = "\t";
    for (std::size_t k = 0; k < landmarks.size(); ++k) {
        names += "\t" + std::string(marks::landmarkName(landmarks[k])) + "\t\t";
        const std::string n = std::to_string(k + 1);
        axes += "\tX" + n + "\tY" + n + "\tZ" + n;
    }
    trc += names + "\n" + axes + "\n\n";
    for (std::size_t i = 0; i < outcome.track.size(); ++i) {
        trc += std::to_string(i + 1) + "\t" +
               number(outcome.track[i].time.value() * outcome.timeScale.realPerShown);
        for (const Landmark landmark : landmarks) {
            const auto& mark = outcome.track[i][landmark];
            if (!mark || !std::isfinite(mark->at.x) || !std::isfinite(mark->at.y)) {
                trc += "\t\t\t";
                continue;
            }
            const base::Vec2 p = (onGround(i, mark->at) - *origin) * millimetres;
            trc += "\t" + number(base::dot(p, right), 3) + "\t" + number(base::dot(p, up), 3) + "\t0";
        }
        trc += "\n";
    }
    return trc;
}

} // namespace plumbmark::exporting
