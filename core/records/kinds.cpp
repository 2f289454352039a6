// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "records/kinds.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/clock.h"
#include "base/hash.h"
#include "records/detail/body_fields.h"

namespace plumbmark::records {
namespace {

using detail::getText;
using detail::point;
using detail::pointOf;
using detail::putNumber;
using detail::putText;

template <class E> struct Words;
template <> struct Words<BallStart> {
    static constexpr std::array<std::string_view, 3> list{"lead", "straight", "trail"};
};
template <> struct Words<BallCurve> {
    static constexpr std::array<std::string_view, 3> list{"lead", "straight", "trail"};
};
template <> struct Words<BallHeight> {
    static constexpr std::array<std::string_view, 3> list{"low", "normal", "high"};
};
template <> struct Words<Contact> {
    static constexpr std::array<std::string_view, 8> list{"solid", "heavy", "thin",  "topped",
                                                          "heel",  "toe",   "shank", "missed"};
};
template <> struct Words<BallPlace> {
    static constexpr std::array<std::string_view, 3> list{"forward", "middle", "back"};
};
template <> struct Words<Surface> {
    static constexpr std::array<std::string_view, 4> list{"mat", "grass", "sand", "tee"};
};

template <> struct Words<Drawing::Shape> {
    static constexpr std::array<std::string_view, 7> list{"plumb",   "line",     "angle", "arrow",
                                                          "ellipse", "freehand", "text"};
};
template <> struct Words<Drawing::Tie> {
    static constexpr std::array<std::string_view, 3> list{"picture", "ground", "body"};
};

template <class E> std::string_view word(E value) {
    return Words<E>::list.at(static_cast<std::size_t>(value));
}

template <class E> std::optional<E> fromWord(std::string_view text) {
    const auto& list = Words<E>::list;
    const auto it = std::find(list.begin(), list.end(), text);
    return it == list.end() ? std::nullopt : std::optional(static_cast<E>(it - list.begin()));
}

template <class E> void putWord(Object& body, std::string_view key, const std::optional<E>& value) {
    if (value) {
        body.emplace(key, word(*value));
    }
}

template <class E> std::optional<E> getWord(const Object& body, std::string_view key) {
    const auto text = textMember(body, key);
    return text ? fromWord<E>(*text) : std::nullopt;
}

constexpr std::array kUnits{base::Unit::degrees,  base::Unit::seconds,       base::Unit::ratio,
                            base::Unit::statures, base::Unit::stance_widths, base::Unit::hip_joint_distances,
                            base::Unit::pixels,   base::Unit::metres};
constexpr std::array kOrigins{base::Origin::hand, base::Origin::network, base::Origin::tracked,
                              base::Origin::interpolated};

std::optional<base::Unit> unitFromName(std::string_view text) {
    const auto it =
        std::find_if(kUnits.begin(), kUnits.end(), [&](base::Unit u) { return unitName(u) == text; });
    return it == kUnits.end() ? std::nullopt : std::optional(*it);
}

std::optional<base::Origin> originFromName(std::string_view text) {
    const auto it =
        std::find_if(kOrigins.begin(), kOrigins.end(), [&](base::Origin o) { return originName(o) == text; });
    return it == kOrigins.end() ? std::nullopt : std::optional(*it);
}

std::optional<marks::MomentId> momentMember(const Object& object, std::string_view key) {
    const auto text = textMember(object, key);
    return text ? marks::momentFromName(*text) : std::nullopt;
}

const Array& arrayMember(const Object& object, std::string_view key) {
    static const Array none;
    const Value* value = member(object, key);
    return value == nullptr || value->array() == nullptr ? none : *value->array();
}

base::Error badValue(std::string sentence) {
    return base::inputError("record.bad_value", std::move(sentence));
}

base::Result<void> checkText(const std::string& text, std::string_view what) {
    constexpr std::size_t most = 10'000;
    if (text.size() > most) {
        return badValue("The " + std::string(what) + " is too long; keep it under 10,000 characters.");
    }
    if (!isUtf8(text)) {
        return badValue("The " + std::string(what) + " holds characters that cannot be read; type it again.");
    }
    return {};
}

base::Result<void> checkTexts(std::initializer_list<std::pair<const std::string*, std::string_view>> texts) {
    for (const auto& [text, what] : texts) {
        if (auto result = checkText(*text, what); !result) {
            return result;
        }
    }
    return {};
}

bool blank(const std::string& text) {
    return text.find_first_not_of(" \t\n\r") == std::string::npos;
}

} // namespace

std::string_view name(BallStart value) {
    return word(value);
}
std::string_view name(BallCurve value) {
    return word(value);
}
std::string_view name(BallHeight value) {
    return word(value);
}
std::string_view name(Contact value) {
    return word(value);
}
std::string_view name(BallPlace value) {
    return word(value);
}
std::string_view name(Surface value) {
    return word(value);
}

std::string_view name(Drawing::Shape value) {
    return word(value);
}
std::string_view name(Drawing::Tie value) {
    return word(value);
}

template <class E> std::optional<E> fromName(std::string_view text) {
    return fromWord<E>(text);
}
template std::optional<BallStart> fromName<BallStart>(std::string_view);
template std::optional<BallCurve> fromName<BallCurve>(std::string_view);
template std::optional<BallHeight> fromName<BallHeight>(std::string_view);
template std::optional<Contact> fromName<Contact>(std::string_view);
template std::optional<BallPlace> fromName<BallPlace>(std::string_view);
template std::optional<Surface> fromName<Surface>(std::string_view);

Object bodyOf(const Player& value) {
    Object body;
    putText(body, "name", value.name);
    if (value.hand) {
        body.emplace("hand", handName(*value.hand));
    }
    putNumber(body, "stature_m", value.statureMetres);
    putText(body, "note", value.note);
    putText(body, "group", value.group);
    return body;
}

Player playerOf(const Object& body) {
    Player player;
    player.name = getText(body, "name");
    player.hand = marks::handFromName(getText(body, "hand"));
    player.statureMetres = numberMember(body, "stature_m");
    player.note = getText(body, "note");
    player.group = getText(body, "group");
    return player;
}

Object bodyOf(const Lesson& value) {
    Object body;
    putText(body, "title", value.title);
    putText(body, "day", value.day);
    putText(body, "wish", value.wish);
    putText(body, "belief", value.belief);
    putText(body, "note", value.note);
    return body;
}

Lesson lessonOf(const Object& body) {
    return {getText(body, "title"), getText(body, "day"), getText(body, "wish"), getText(body, "belief"),
            getText(body, "note")};
}

Object bodyOf(const Shot& value) {
    Object body;
    body.emplace("shot", shotKindName(value.kind));
    if (value.club) {
        body.emplace("club", clubName(*value.club));
    }
    putWord(body, "start", value.start);
    putWord(body, "curve", value.curve);
    putWord(body, "height", value.height);
    putWord(body, "contact", value.contact);
    putWord(body, "ball_place", value.ballPlace);
    putWord(body, "surface", value.surface);
    putText(body, "note", value.note);
    if (value.star) {
        body.emplace("star", true);
    }
    if (!value.tags.empty()) {
        body.emplace("tags", Array(value.tags.begin(), value.tags.end()));
    }
    return body;
}

Shot shotOf(const Object& body) {
    Shot shot;
    shot.kind = marks::shotKindFromName(getText(body, "shot")).value_or(marks::ShotKind::full);
    shot.club = marks::clubFromName(getText(body, "club"));
    shot.start = getWord<BallStart>(body, "start");
    shot.curve = getWord<BallCurve>(body, "curve");
    shot.height = getWord<BallHeight>(body, "height");
    shot.contact = getWord<Contact>(body, "contact");
    shot.ballPlace = getWord<BallPlace>(body, "ball_place");
    shot.surface = getWord<Surface>(body, "surface");
    shot.note = getText(body, "note");
    shot.star = booleanMember(body, "star").value_or(false);
    if (const Value* tags = member(body, "tags"); tags != nullptr && tags->array() != nullptr) {
        for (const Value& tag : *tags->array()) {
            if (tag.text() != nullptr && !tag.text()->empty()) {
                shot.tags.push_back(*tag.text());
            }
        }
    }
    return shot;
}

Object bodyOf(const Clip& value) {
    Object body{{"sha256", value.sha256},
                {"bytes", value.bytes},
                {"view", viewName(value.view)},
                {"hand", handName(value.hand)},
                {"mirrored", value.mirrored},
                {"width", value.width},
                {"height", value.height},
                {"frames", value.frames},
                {"duration_s", value.durationSeconds},
                {"playback_fps", value.playbackFps}};
    putNumber(body, "capture_fps", value.captureFps);
    putNumber(body, "capture_fps_told", value.captureFpsTold);
    putNumber(body, "stature_m", value.statureMetres);
    putNumber(body, "distance_m", value.cameraDistanceMetres);
    putNumber(body, "roll_deg", value.rollDegrees);
    if (value.plumbEdge) {
        body.emplace("plumb", Array{point(value.plumbEdge->first), point(value.plumbEdge->second)});
    }
    return body;
}

std::optional<Clip> clipOf(const Object& body) {
    Clip clip;
    clip.sha256 = getText(body, "sha256");
    const auto view = marks::viewFromName(getText(body, "view"));
    const auto hand = marks::handFromName(getText(body, "hand"));
    if (!base::isSha256Hex(clip.sha256) || !view || !hand) {
        return std::nullopt;
    }
    clip.bytes = integerMember(body, "bytes").value_or(0);
    clip.view = *view;
    clip.hand = *hand;
    clip.mirrored = booleanMember(body, "mirrored").value_or(false);
    const auto whole = [&](std::string_view key) {
        return static_cast<int>(std::clamp<std::int64_t>(integerMember(body, key).value_or(0), 0, 1 << 30));
    };
    clip.width = whole("width");
    clip.height = whole("height");
    clip.frames = whole("frames");
    clip.durationSeconds = numberMember(body, "duration_s").value_or(0.0);
    clip.playbackFps = numberMember(body, "playback_fps").value_or(0.0);
    clip.captureFps = numberMember(body, "capture_fps");
    clip.captureFpsTold = numberMember(body, "capture_fps_told");
    clip.statureMetres = numberMember(body, "stature_m");
    clip.cameraDistanceMetres = numberMember(body, "distance_m");
    clip.rollDegrees = numberMember(body, "roll_deg");
    if (const Array& edge = arrayMember(body, "plumb"); edge.size() == 2) {
        const auto a = pointOf(&edge[0]);
        const auto b = pointOf(&edge[1]);
        if (a && b) {
            clip.plumbEdge = {*a, *b};
        }
    }
    return clip;
}

Object bodyOf(const MarkFact& value) {
    Object body{{"frame", value.frame}, {"landmark", landmarkName(value.landmark)}};
    if (value.removed) {
        body.emplace("removed", true);
    } else if (value.at) {
        body.emplace("at", point(*value.at));
        body.emplace("sigma_px", value.sigma);
    } else {
        body.emplace("hidden", true);
    }
    return body;
}

std::optional<MarkFact> markOf(const Object& body) {
    const auto frame = integerMember(body, "frame");
    const auto landmark = marks::landmarkFromName(getText(body, "landmark"));
    if (!frame || *frame < 0 || *frame > (1 << 30) || !landmark) {
        return std::nullopt;
    }
    MarkFact mark;
    mark.frame = static_cast<int>(*frame);
    mark.landmark = *landmark;
    mark.removed = booleanMember(body, "removed").value_or(false);
    if (mark.removed || booleanMember(body, "hidden").value_or(false)) {
        return mark;
    }
    mark.at = pointOf(member(body, "at"));
    mark.sigma = numberMember(body, "sigma_px").value_or(2.0);
    if (!mark.at || !(mark.sigma > 0.0)) {
        return std::nullopt;
    }
    return mark;
}

Object bodyOf(const MomentFact& value) {
    Object body{{"moment", momentName(value.id)}};
    if (value.removed) {
        body.emplace("removed", true);
    } else {
        body.emplace("time_s", value.time.value());
        body.emplace("sigma_s", value.sigma.value());
    }
    return body;
}

std::optional<MomentFact> momentOf(const Object& body) {
    const auto id = momentMember(body, "moment");
    if (!id) {
        return std::nullopt;
    }
    MomentFact moment;
    moment.id = *id;
    moment.removed = booleanMember(body, "removed").value_or(false);
    if (moment.removed) {
        return moment;
    }
    const auto time = numberMember(body, "time_s");
    const auto sigma = numberMember(body, "sigma_s");
    if (!time || !sigma || !(*sigma > 0.0)) {
        return std::nullopt;
    }
    moment.time = base::Seconds{*time};
    moment.sigma = base::Seconds{*sigma};
    return moment;
}

Object bodyOf(const Drawing& value) {
    Object body{{"drawing", value.name}};
    if (value.removed) {
        body.emplace("removed", true);
        return body;
    }
    body.emplace("shape", word(value.shape));
    body.emplace("tie", word(value.tie));
    if (value.tie == Drawing::Tie::body) {
        body.emplace("landmark", landmarkName(value.landmark));
    }
    body.emplace("frame", value.frame);
    Array points;
    for (const base::Vec2 p : value.points) {
        points.push_back(point(p));
    }
    body.emplace("points", std::move(points));
    if (value.shape == Drawing::Shape::plumb) {
        body.emplace("height_px", value.height);
    }
    putText(body, "text", value.text);
    return body;
}

std::optional<Drawing> drawingOf(const Object& body) {
    constexpr std::size_t mostPoints = 2000, mostText = 200;
    Drawing drawing;
    drawing.name = getText(body, "drawing");
    if (drawing.name.empty()) {
        return std::nullopt;
    }
    drawing.removed = booleanMember(body, "removed").value_or(false);
    if (drawing.removed) {
        return drawing;
    }
    const auto shape = getWord<Drawing::Shape>(body, "shape");
    const auto tie = getWord<Drawing::Tie>(body, "tie");
    const auto frame = integerMember(body, "frame");
    const auto landmark = marks::landmarkFromName(getText(body, "landmark"));
    if (!shape || !tie || !frame || *frame < 0 || *frame > (1 << 30) ||
        (*tie == Drawing::Tie::body && !landmark)) {
        return std::nullopt;
    }
    drawing.shape = *shape;
    drawing.tie = *tie;
    drawing.landmark = landmark.value_or(marks::Landmark::nose);
    drawing.frame = static_cast<int>(*frame);
    for (const Value& entry : arrayMember(body, "points")) {
        const auto p = pointOf(&entry);
        if (!p || !std::isfinite(p->x) || !std::isfinite(p->y)) {
            return std::nullopt;
        }
        drawing.points.push_back(*p);
    }
    drawing.height = numberMember(body, "height_px").value_or(0.0);
    drawing.text = getText(body, "text");
    static constexpr std::array<std::size_t, 7> kLeast{1, 2, 3, 2, 2, 2, 1};
    const std::size_t least = kLeast[static_cast<std::size_t>(drawing.shape)];
    const bool open = drawing.shape == Drawing::Shape::freehand;
    if (drawing.points.size() < least || (!open && drawing.points.size() > least) ||
        drawing.points.size() > mostPoints || drawing.text.size() > mostText) {
        return std::nullopt;
    }
    if ((drawing.shape == Drawing::Shape::plumb && !(drawing.height > 0.0)) ||
        (drawing.shape == Drawing::Shape::text && drawing.text.empty())) {
        return std::nullopt;
    }
    return drawing;
}

Object bodyOf(const Findings& value) {
    Array moments;
    for (const marks::Moment& moment : value.moments) {
        moments.emplace_back(Object{{"moment", momentName(moment.id)},
                                    {"time_s", moment.time.value()},
                                    {"sigma_s", moment.sigma.value()},
                                    {"found_by", moment.foundBy}});
    }
    Array measurements;
    for (const measure::Measurement& m : value.measurements) {
        Object item{{"id", m.id}, {"method", m.method}};
        if (m.moment) {
            item.emplace("moment", momentName(*m.moment));
        }
        if (m.value) {
            item.emplace("value", m.value->value);
            item.emplace("sigma", m.value->sigma);
            item.emplace("unit", unitName(m.value->unit));
            item.emplace("origin", originName(m.value->origin));
        } else {
            item.emplace("reason", m.reason);
        }
        measurements.emplace_back(std::move(item));
    }
    Array checkpoints;
    for (const CheckpointFinding& c : value.checkpoints) {
        Object item{{"id", c.id}, {"state", c.state}, {"good", c.good}, {"watch", c.watch}, {"work", c.work}};
        if (c.moment) {
            item.emplace("moment", momentName(*c.moment));
        }
        checkpoints.emplace_back(std::move(item));
    }
    return {{"moments", std::move(moments)},
            {"measurements", std::move(measurements)},
            {"checkpoints", std::move(checkpoints)}};
}

Findings findingsOf(const Object& body) {
    Findings findings;
    for (const Value& entry : arrayMember(body, "moments")) {
        const Object* item = entry.object();
        const auto id = item == nullptr ? std::nullopt : momentMember(*item, "moment");
        const auto time = item == nullptr ? std::nullopt : numberMember(*item, "time_s");
        const auto sigma = item == nullptr ? std::nullopt : numberMember(*item, "sigma_s");
        if (id && time && sigma) {
            findings.moments.push_back(
                {*id, base::Seconds{*time}, base::Seconds{*sigma}, getText(*item, "found_by")});
        }
    }
    for (const Value& entry : arrayMember(body, "measurements")) {
        const Object* item = entry.object();
        if (item == nullptr || getText(*item, "id").empty()) {
            continue;
        }
        if (item->count("moment") != 0 && !momentMember(*item, "moment")) {
            continue; // a moment this version does not know: not a number of the whole swing
        }
        measure::Measurement m;
        m.id = getText(*item, "id");
        m.moment = momentMember(*item, "moment");
        m.method = static_cast<int>(
            std::clamp<std::int64_t>(integerMember(*item, "method").value_or(1), 0, 1 << 30));
        const auto value = numberMember(*item, "value");
        const auto sigma = numberMember(*item, "sigma");
        const auto unit = unitFromName(getText(*item, "unit"));
        const auto origin = originFromName(getText(*item, "origin"));
        if (value && sigma && *sigma > 0.0 && unit && origin) {
            m.value = base::Measured{*value, *sigma, *unit, *origin};
        } else {
            m.reason = getText(*item, "reason");
            if (m.reason.empty()) {
                m.reason = "This number was made by a newer version of the program.";
            }
        }
        findings.measurements.push_back(std::move(m));
    }
    for (const Value& entry : arrayMember(body, "checkpoints")) {
        const Object* item = entry.object();
        if (item == nullptr || getText(*item, "id").empty()) {
            continue;
        }
        CheckpointFinding c;
        c.id = getText(*item, "id");
        c.moment = momentMember(*item, "moment");
        c.state = getText(*item, "state");
        c.good = numberMember(*item, "good").value_or(0.0);
        c.watch = numberMember(*item, "watch").value_or(0.0);
        c.work = numberMember(*item, "work").value_or(0.0);
        findings.checkpoints.push_back(std::move(c));
    }
    return findings;
}

Object bodyOf(const Plan& value) {
    Array items;
    for (const PlanItem& item : value.items) {
        Object object;
        putText(object, "feel", item.feel);
        putText(object, "drill", item.drill);
        putText(object, "dose", item.dose);
        putText(object, "checkpoint", item.checkpoint);
        putText(object, "guard", item.guard);
        putText(object, "trains", item.trains);
        putText(object, "node", item.node);
        putText(object, "amount", item.amount);
        putText(object, "conflict", item.conflict);
        putText(object, "look_again", item.lookAgain);
        putText(object, "demonstration", item.demonstration);
        items.emplace_back(std::move(object));
    }
    return {{"items", std::move(items)}};
}

Plan planOf(const Object& body) {
    Plan plan;
    for (const Value& entry : arrayMember(body, "items")) {
        if (const Object* item = entry.object()) {
            plan.items.push_back({getText(*item, "feel"), getText(*item, "drill"), getText(*item, "dose"),
                                  getText(*item, "checkpoint"), getText(*item, "guard"),
                                  getText(*item, "trains"), getText(*item, "node"), getText(*item, "amount"),
                                  getText(*item, "conflict"), getText(*item, "look_again"),
                                  getText(*item, "demonstration")});
        }
    }
    return plan;
}

Object bodyOf(const Practice& value) {
    Object body{{"day", value.day}, {"repetitions", value.repetitions}};
    putText(body, "drill", value.drill);
    putText(body, "note", value.note);
    putText(body, "what", value.what);
    return body;
}

std::optional<Practice> practiceOf(const Object& body) {
    const auto repetitions = integerMember(body, "repetitions");
    const std::string day = getText(body, "day");
    if (!repetitions || *repetitions < 0 || !base::fromIso(day)) {
        return std::nullopt;
    }
    return Practice{day, *repetitions, getText(body, "drill"), getText(body, "note"), getText(body, "what")};
}

Object bodyOf(const Pain& value) {
    Object body{{"day", value.day}, {"region", value.region}, {"level", value.level}};
    putText(body, "note", value.note);
    return body;
}

std::optional<Pain> painOf(const Object& body) {
    const auto level = integerMember(body, "level");
    const std::string day = getText(body, "day");
    if (!level || *level < 0 || *level > 10 || !base::fromIso(day)) {
        return std::nullopt;
    }
    return Pain{day, getText(body, "region"), *level, getText(body, "note")};
}

base::Result<void> check(const Player& value) {
    if (blank(value.name)) {
        return badValue("The player has no name; give one.");
    }
    if (value.statureMetres && !(*value.statureMetres >= 0.5 && *value.statureMetres <= 2.5)) {
        return badValue("The stature must lie between 50 and 250 cm; check the number.");
    }
    return checkTexts({{&value.name, "name"}, {&value.note, "note"}, {&value.group, "group"}});
}

base::Result<void> check(const Lesson& value) {
    if (value.day.size() != 10 || !base::fromIso(value.day)) {
        return badValue("The day of the lesson must look like 2026-11-25; check it.");
    }
    return checkTexts({{&value.title, "title"},
                       {&value.wish, "wish"},
                       {&value.belief, "student's explanation"},
                       {&value.note, "note"}});
}

base::Result<void> check(const Shot& value) {
    if (value.tags.size() > 50) {
        return badValue("More than 50 tags on one shot; take some away.");
    }
    for (const std::string& tag : value.tags) {
        if (auto result = checkText(tag, "tag"); !result) {
            return result;
        }
    }
    return checkText(value.note, "note");
}

base::Result<void> check(const Clip& value) {
    if (!base::isSha256Hex(value.sha256) || value.bytes <= 0 || value.frames <= 0 || value.width <= 0 ||
        value.height <= 0 || !std::isfinite(value.durationSeconds) || !std::isfinite(value.playbackFps)) {
        return badValue("The clip's own figures make no sense; bring it in again.");
    }
    if (value.statureMetres && !(*value.statureMetres >= 0.5 && *value.statureMetres <= 2.5)) {
        return badValue("The stature must lie between 50 and 250 cm; check the number.");
    }
    return {};
}

} // namespace plumbmark::records
