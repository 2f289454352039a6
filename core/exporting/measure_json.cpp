// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/measure_json.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string_view>

#include <nlohmann/json.hpp>

namespace plumbmark::exporting {
namespace {
using Json = nlohmann::ordered_json;

/// Six decimals (a microsecond, a millionth of a degree) keep files small. What would become 0 stays as it
/// is, so that a sigma above 0 is above 0 in the file too.
Json number(double value) {
    if (!std::isfinite(value)) {
        return nullptr;
    }
    const double rounded = std::round(value * 1e6) / 1e6;
    return rounded == 0.0 && value != 0.0 ? value : rounded + 0.0; // + 0.0: no "-0.0"
}

Json momentOf(const std::optional<marks::MomentId>& moment) {
    return moment ? Json(marks::momentName(*moment)) : Json(nullptr);
}

std::optional<double> captureFps(const analysis::Outcome& outcome) {
    if (!outcome.timeScale.known) {
        return std::nullopt;
    }
    if (outcome.timeScale.source == "metadata" && outcome.clip.captureFps) {
        return outcome.clip.captureFps;
    }
    const double fps = outcome.clip.playbackFps / outcome.timeScale.realPerShown;
    return std::isfinite(fps) && fps > 0.0 ? std::optional(fps) : outcome.clip.captureFps;
}

Json clipJson(const analysis::Outcome& outcome) {
    const video::ClipInfo& clip = outcome.clip;
    const auto capture = captureFps(outcome);
    return Json{{"frames", clip.frames},
                {"width", clip.width},
                {"height", clip.height},
                {"duration_s", number(clip.duration.value())},
                {"rotation_deg", clip.rotationDegrees},
                // A single frame has no rate.
                {"playback_fps", clip.playbackFps > 0.0 ? number(clip.playbackFps) : Json(nullptr)},
                {"capture_fps", capture ? number(*capture) : Json(nullptr)}};
}

Json momentJson(const marks::Moment& moment, const marks::TimeScale& scale) {
    return Json{
        {"name", marks::momentName(moment.id)},
        {"time_s", number(moment.time.value())},
        {"real_time_s", scale.known ? number(moment.time.value() * scale.realPerShown) : Json(nullptr)},
        {"sigma_s", number(moment.sigma.value())},
        {"found_by", moment.foundBy}};
}

Json measurementJson(const measure::Measurement& m) {
    Json json{{"id", m.id}, {"moment", momentOf(m.moment)}};
    if (m.value && std::isfinite(m.value->value) && std::isfinite(m.value->sigma) && m.value->sigma > 0.0) {
        json["value"] = number(m.value->value);
        json["sigma"] = number(m.value->sigma);
        json["unit"] = base::unitName(m.value->unit);
        json["origin"] = base::originName(m.value->origin);
        json["method"] = m.method;
    } else {
        json["reason"] =
            !m.value && !m.reason.empty()
                ? m.reason
                : std::string("The marks did not give a usable number; check the marks at this moment.");
    }
    return json;
}

Json checkpointJson(const coaching::CheckpointResult& c) {
    const auto share = [](double s) { return number(std::isfinite(s) ? std::clamp(s, 0.0, 1.0) : 0.0); };
    return Json{
        {"id", c.id},
        {"moment", momentOf(c.moment)},
        {"state", coaching::stateName(c.state)},
        {"probabilities", {{"good", share(c.good)}, {"watch", share(c.watch)}, {"work", share(c.work)}}},
        {"help", c.help}};
}

Json cautionJson(const coaching::Caution& c) {
    return Json{{"id", c.id}, {"grade", c.grade}, {"seen", c.seen}, {"ease", c.ease}, {"words", c.words}};
}

Json swingJson(const analysis::Outcome& outcome, std::size_t index) {
    const analysis::SwingSeen& swing = outcome.swings[index];
    return Json{{"number", index + 1},
                {"time_s", number(swing.time.value())},
                {"hit_heard", swing.heard},
                {"from_s", number(swing.from.value())},
                {"to_s", number(swing.to.value())},
                {"measured", outcome.swing == index}};
}

Json warningsJson(const analysis::Outcome& outcome) {
    Json warnings = Json::array();
    for (const auto* list : {&outcome.clip.warnings, &outcome.warnings}) {
        for (const std::string& warning : *list) {
            if (std::find(warnings.begin(), warnings.end(), Json(warning)) == warnings.end()) {
                warnings.push_back(warning);
            }
        }
    }
    return warnings;
}

Json frameJson(const marks::FrameMarks& frame) {
    // A hundredth of a pixel is far below what any mark is worth.
    const auto pixel = [](double v) { return std::round(v * 100.0) / 100.0 + 0.0; };
    Json points = Json::array();
    for (const auto& mark : frame.points) {
        if (mark && std::isfinite(mark->at.x) && std::isfinite(mark->at.y) && std::isfinite(mark->sigma)) {
            points.push_back(
                Json::array({pixel(mark->at.x), pixel(mark->at.y), std::max(0.01, pixel(mark->sigma)),
                             base::originName(mark->origin)}));
        } else {
            points.push_back(nullptr);
        }
    }
    return Json{{"time_s", number(frame.time.value())}, {"points", std::move(points)}};
}

std::string compact(const Json& json) {
    // Texts may hold a file's name, and file names need not be UTF-8.
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

/// One line per member, one line per element of a list: readable, and easy to compare line by line.
class Lines {
  public:
    void member(std::string_view key, const Json& value) {
        begin(key);
        if (value.is_array()) {
            list(value, "  ");
        } else {
            text_ += compact(value);
        }
    }
    template <class Range, class ToJson>
    void landmarks(const Json& names, const Range& frames, const ToJson& toJson) {
        begin("landmarks");
        text_ += "{\n    \"names\": " + compact(names) + ",\n    \"frames\": [";
        bool first = true;
        for (const auto& frame : frames) { // never as one tree: a long clip has millions of points
            text_ += first ? "\n      " : ",\n      ";
            first = false;
            text_ += compact(toJson(frame));
        }
        text_ += first ? "]\n  }" : "\n    ]\n  }";
    }
    [[nodiscard]] std::string finish() && { return std::move(text_) + "\n}\n"; }

  private:
    void begin(std::string_view key) {
        text_ += text_.empty() ? "{\n" : ",\n";
        text_ += "  " + compact(Json(key)) + ": ";
    }
    void list(const Json& array, const std::string& indent) {
        text_ += "[";
        for (std::size_t i = 0; i < array.size(); ++i) {
            text_ += (i == 0 ? "\n" : ",\n") + indent + "  " + compact(array[i]);
        }
        text_ += array.empty() ? "]" : "\n" + indent + "]";
    }
    std::string text_;
};

template <class Items, class ToJson> Json listOf(const Items& items, const ToJson& toJson) {
    Json list = Json::array();
    for (const auto& item : items) {
        list.push_back(toJson(item));
    }
    return list;
}

} // namespace

std::string measureJson(const analysis::Outcome& outcome, const MeasureJsonOptions& options) {
    Lines lines;
    lines.member("clip", clipJson(outcome));
    const auto& vertical = outcome.scene.vertical;
    lines.member("vertical", Json{{"source", vertical.source},
                                  {"angle_deg", number(vertical.angleDegrees)},
                                  {"sigma_deg", number(vertical.sigmaDegrees)}});
    lines.member("moments",
                 listOf(outcome.moments, [&](const auto& m) { return momentJson(m, outcome.timeScale); }));
    lines.member("measurements", listOf(outcome.measurements, measurementJson));
    lines.member("checkpoints", listOf(outcome.checkpoints, checkpointJson));
    lines.member("cautions", listOf(outcome.cautions, cautionJson));
    lines.member("warnings", warningsJson(outcome));
    lines.member("film_advice", listOf(options.advice, [](const Advice& a) {
                     return Json{{"id", a.id}, {"limited", a.limited}, {"change", a.change}};
                 }));
    if (outcome.swing) {
        Json swings = Json::array();
        for (std::size_t i = 0; i < outcome.swings.size(); ++i) {
            swings.push_back(swingJson(outcome, i));
        }
        lines.member("swings", swings);
    }
    if (options.landmarks) {
        Json names = Json::array();
        for (std::size_t i = 0; i < marks::kLandmarkCount; ++i) {
            names.push_back(marks::landmarkName(static_cast<marks::Landmark>(i)));
        }
        lines.landmarks(names, outcome.track, frameJson);
    }
    return std::move(lines).finish();
}

} // namespace plumbmark::exporting
